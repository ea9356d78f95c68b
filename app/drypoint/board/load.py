"""Design files to one `Board`, in the board frame: the front door of the program.

Everything is read in the design's coordinates, put together there, and brought into the board
frame in one place: seen from the milled side (the bottom is mirrored here, once), origin at the
lower left of the outline.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import Path

from shapely import Geometry, Polygon

from drypoint.board.archive import gather
from drypoint.board.copper import NetCopper, net_copper
from drypoint.board.frame import Frame
from drypoint.board.gerber import GerberLayer, read_gerber
from drypoint.board.hole_nets import NetFinder, with_nets
from drypoint.board.layers import Layers, drawn_outline, read_layers
from drypoint.board.links import link_wires
from drypoint.board.model import Board, Finding, Hole, LayerFile, LinkWire, Role, Side, Slot
from drypoint.board.netlist_check import netlist_findings
from drypoint.board.outline import MARGIN, Outline, hull_outline, outline_of, stated_outline
from drypoint.board.programs import board_of_programs
from drypoint.board.registration import fit_findings
from drypoint.board.roles import recognise_files
from drypoint.board.through import joining_holes
from drypoint.errors import InputError
from drypoint.progress import Progress
from drypoint.wording import say


def recognise(paths: Sequence[Path]) -> tuple[LayerFile, ...]:
    """The role of every file found under the paths, and why; nothing is read further.

    Raises
    ------
    InputError
        Nothing there, unreadable, or too much.
    """
    return recognise_files(gather(paths))


def load_board(
    paths: Sequence[Path],
    *,
    side: Side = Side.BOTTOM,
    both: bool = False,
    roles: Mapping[str, Role] | None = None,
    name: str | None = None,
    progress: Progress | None = None,
) -> Board:
    """Read a board from folders, files or zips.

    Parameters
    ----------
    paths : sequence of Path
        Folders, files and zips; everything in them is looked at.
    side : Side
        The copper to mill.
    both : bool
        Whether the other side is milled too: then no link wires replace it, and the holes that join
        the sides are told.
    roles : mapping of str to Role, optional
        The user's choice for files by name; it overrules what is recognised.
    name : str, optional
        Of the board; else from the files.
    progress : Progress, optional
        Told how far it is; may cancel.

    Raises
    ------
    InputError
        What is wrong, with file and line.
    """
    chosen = [Path(path) for path in paths]
    return load_board_from_bytes(
        gather(chosen), side=side, both=both, roles=roles, name=name or name_of(chosen), progress=progress
    )


def load_board_from_bytes(
    files: Mapping[str, bytes],
    *,
    side: Side = Side.BOTTOM,
    both: bool = False,
    roles: Mapping[str, Role] | None = None,
    name: str | None = None,
    progress: Progress | None = None,
) -> Board:
    """Read a board from the contents of its files by name; see `load_board`."""
    if files and not any(data.strip() for data in files.values()):
        raise InputError("The file is empty.", next(iter(files)), "Export it again from the CAD program.")
    recognised = tuple(_overruled(item, roles or {}) for item in recognise_files(files))
    try:
        layers = read_layers(files, recognised, side, progress)
    except InputError as error:
        raise _placed(error, files, recognised, side) from error
    if layers.milled is None:
        return board_of_programs(name or "board", files, recognised, layers, side)
    if progress is not None:
        progress.step(0.45, "Joining copper to nets")
    inner = progress.part(0.45, 0.8) if progress is not None else None
    copper = net_copper(layers.milled, layers.other, layers.netlist, layers.holes, side, inner)
    outline = _outline(layers, layers.milled, copper, files)
    if progress is not None:
        progress.step(0.8, "Putting the board together")
    board = _assemble(name or "board", side, layers, copper, outline, recognised, both=both)
    if progress is not None:
        progress.step(1.0, "")
    return board


def _placed(
    error: InputError, files: Mapping[str, bytes], recognised: Sequence[LayerFile], side: Side
) -> InputError:
    """The same error with its place in the board frame; without one where the outline is not known."""
    outline = None if error.at is None else _edge_alone(files, recognised)
    at = None
    if error.at is not None and outline is not None:
        at = Frame(outline.polygon, mirror=side is Side.BOTTOM).place(error.at)
    return InputError(error.what, error.where, error.hint, at=at)


def _edge_alone(files: Mapping[str, bytes], recognised: Sequence[LayerFile]) -> Outline | None:
    """The outline by itself, where it can be read."""
    name = next((item.name for item in recognised if item.role is Role.OUTLINE), None)
    try:
        return None if name is None else outline_of(read_gerber(files[name], name=name))
    except InputError:
        return None


def _overruled(item: LayerFile, roles: Mapping[str, Role]) -> LayerFile:
    role = roles.get(item.name) or roles.get(item.name.rsplit("/", 1)[-1])
    return item if role is None else LayerFile(item.name, role, "chosen by hand")


def name_of(paths: Sequence[Path]) -> str:
    """What a board from these paths is called: the folder, the file, or what the files have in common."""
    first = paths[0].resolve() if paths else Path("board")
    if first.is_dir() or len(paths) == 1:
        return first.name if first.is_dir() else first.stem
    common = _common([path.stem for path in paths]).strip("-_. ")
    return common or first.parent.name or "board"


def _common(names: Sequence[str]) -> str:
    """What all names begin with."""
    first, last = min(names), max(names)
    same = [a == b for a, b in zip(first, last, strict=False)]
    return first[: same.index(False) if False in same else len(same)]


def _outline(layers: Layers, milled: GerberLayer, copper: NetCopper, files: Mapping[str, bytes]) -> Outline:
    found = drawn_outline(layers)
    if found is not None:
        return found
    stated = stated_outline(files[milled.name].decode("latin-1"))
    if stated is not None:
        what = "There is no outline layer; the size is the one the copper layer states in a comment."
        return Outline(stated, (Finding("no outline", what, milled.name),))
    hull = hull_outline([*copper.milled.values(), *copper.other.values()])
    if hull is None:
        raise InputError("The copper layer is empty and there is no outline.", milled.name)
    what = say("There is no outline: a rectangle {margin:g} mm round the copper is used.", margin=MARGIN)
    return Outline(hull, (Finding("no outline", what, hint="Choose the outline's file, or keep this."),))


def _assemble(
    name: str,
    side: Side,
    layers: Layers,
    copper: NetCopper,
    outline: Outline,
    files: tuple[LayerFile, ...],
    *,
    both: bool,
) -> Board:
    frame = Frame(outline.polygon, mirror=side is Side.BOTTOM)
    nets = frame.shapes(copper.milled)
    other = frame.shapes(copper.other)
    edge = frame.shape(outline.polygon)
    finder = NetFinder(nets, other)
    holes, slots, hole_findings = with_nets(frame.holes(layers.holes), frame.slots(layers.slots), finder)
    links, rivets, joined = _joined(nets, other, holes, slots, both=both)
    design = (*layers.findings, *outline.findings, *copper.findings)
    findings = [replace(item, at=frame.place(item.at)) if item.at else item for item in design]
    findings += hole_findings
    findings += fit_findings(holes, nets, other, edge)
    if layers.netlist is not None and copper.source == "attributes":
        findings += netlist_findings(layers.netlist, layers.netlist_name, finder, frame.place)
    if not holes and not slots:
        findings.append(
            Finding("no holes", "No drill file with holes was found.", hint="Add it if there is one.")
        )
    findings += joined
    return Board(
        name=name,
        side=side,
        outline=edge if isinstance(edge, Polygon) else outline.polygon,
        nets=nets,
        net_source=copper.source,
        holes=holes,
        slots=slots,
        other_copper=other,
        legend=frame.shape(layers.legend.shape) if layers.legend is not None else None,
        links=links,
        rivets=rivets,
        files=files,
        findings=tuple(findings),
        to_design=frame.to_design,
    )


def _joined(
    nets: Mapping[str, Geometry],
    other: Mapping[str, Geometry],
    holes: Sequence[Hole],
    slots: Sequence[Slot],
    *,
    both: bool,
) -> tuple[tuple[LinkWire, ...], tuple[Hole, ...], tuple[Finding, ...]]:
    """Link wires, holes that join both sides, and what to know of them."""
    if both and other:
        joining = joining_holes(nets, other, holes, slots)
        return (), (*joining.leads, *joining.others), joining.findings
    links = link_wires(nets, other, holes)
    return links.wires, links.through, links.findings
