"""The files of a board read, each as what it is; still in the design's own coordinates."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from drypoint.board.drill import DrillFile, read_drill
from drypoint.board.drill_companions import companion_of
from drypoint.board.gerber import GerberLayer, read_gerber
from drypoint.board.hole_nets import pad_hits
from drypoint.board.model import Finding, Hole, LayerFile, Role, Side, Slot
from drypoint.board.netlist import Netlist, read_netlist
from drypoint.board.outline import Outline, loose_end, outline_of
from drypoint.board.roles import ASKED, kind_of
from drypoint.errors import InputError
from drypoint.progress import Progress
from drypoint.wording import say

CHORD = 0.002
"""mm; how far chords of pads may lie from their circles on a board to be milled."""
LEGEND_CHORD = 0.01
_DRILLS = (Role.DRILL, Role.DRILL_PLATED, Role.DRILL_UNPLATED)


@dataclass(slots=True, eq=False)
class Layers:
    """What was read, and what there is to say about it; ``milled`` is None for programs alone."""

    milled: GerberLayer | None = None
    other: GerberLayer | None = None
    outline: GerberLayer | None = None
    legend: GerberLayer | None = None
    netlist: Netlist | None = None
    netlist_name: str = ""
    holes: list[Hole] = field(default_factory=list)
    slots: list[Slot] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)


def read_layers(
    files: Mapping[str, bytes], roles: Sequence[LayerFile], side: Side, progress: Progress | None = None
) -> Layers:
    """Read the files that have a role.

    Raises
    ------
    InputError
        With file and line; also where the copper of the milled side is missing, unless there is no
        copper at all but a ready-made program.
    """
    step = progress.step if progress is not None else _no_step
    findings: list[Finding] = []
    near = Role.COPPER_BOTTOM if side is Side.BOTTOM else Role.COPPER_TOP
    far = Role.COPPER_TOP if side is Side.BOTTOM else Role.COPPER_BOTTOM
    copper = _one(roles, near, findings)
    layers = Layers(findings=findings)
    if copper is not None:
        step(0.05, say("Reading {copper}", copper=copper))
        layers.milled = _gerber(files, copper, findings, CHORD, progress)
    elif not _programs_alone(roles):
        raise _no_copper(roles, side)
    if (name := _one(roles, far, findings)) is not None:
        step(0.2, say("Reading {name}", name=name))
        layers.other = _gerber(files, name, findings, CHORD, progress)
    if (name := _one(roles, Role.OUTLINE, findings)) is not None:
        layers.outline = _gerber(files, name, findings, CHORD, progress)
    name = _one(roles, Role.LEGEND_TOP, findings) or _one(roles, Role.LEGEND_BOTTOM, findings)
    if name is not None:
        layers.legend = _gerber(files, name, findings, LEGEND_CHORD, progress)
    if (name := _one(roles, Role.NETLIST, findings)) is not None:
        layers.netlist, layers.netlist_name = read_netlist(files[name], name=name), name
        findings += [Finding("note", text, name) for text in layers.netlist.warnings]
    step(0.35, "Reading the drill files")
    _read_drills(files, roles, layers)
    findings += [
        Finding("role", "It is not clear what this file is.", item.name, "Choose its role if it is needed.")
        for item in roles
        if item.reason == ASKED
    ]
    return layers


def drawn_outline(layers: Layers) -> Outline | None:
    """The outline that the outline layer draws; a finding where it draws none."""
    if layers.outline is None:
        return None
    found = outline_of(layers.outline)
    if found is None:
        what = "The outline layer holds no closed loop."
        at = loose_end(layers.outline)
        layers.findings.append(Finding("outline open", what, layers.outline.name, at=at))
    return found


def _programs_alone(roles: Sequence[LayerFile]) -> bool:
    """Whether there are ready-made programs and no copper."""
    found = {item.role for item in roles}
    return Role.GCODE in found and not found & {Role.COPPER_TOP, Role.COPPER_BOTTOM, Role.COPPER_INNER}


def _no_step(done: float, text: str = "") -> None:
    """Nobody wants to know."""


def _no_copper(roles: Sequence[LayerFile], side: Side) -> InputError:
    opposite = Role.COPPER_TOP if side is Side.BOTTOM else Role.COPPER_BOTTOM
    hint = "Choose the file that is the copper, or give it its role."
    if any(item.role is opposite for item in roles):
        hint = say(
            "There is copper of the {value}: mill that, or choose another file.",
            value=opposite.value.split()[-1],
        )
    return InputError(
        say("No file is the copper of the {value}.", value=side.value),
        ", ".join(i.name for i in roles)[:200],
        hint,
    )


def _one(roles: Sequence[LayerFile], role: Role, findings: list[Finding]) -> str | None:
    found = [item for item in roles if item.role is role]
    if len(found) > 1:
        found.sort(key=lambda item: item.reason.startswith("of its"))
        names = ", ".join(item.name for item in found)
        what = say("Several files are {value}: {names}. The first is used.", value=role.value, names=names)
        findings.append(Finding("role", what, found[0].name, "Choose the right one by its role."))
    return found[0].name if found else None


def _gerber(
    files: Mapping[str, bytes], name: str, findings: list[Finding], chord: float, progress: Progress | None
) -> GerberLayer:
    inner = progress.part(0.05, 0.3) if progress is not None else None
    layer = read_gerber(files[name], name=name, tolerance=chord, progress=inner)
    findings += [Finding("note", text, name) for text in layer.warnings]
    return layer


def _read_drills(files: Mapping[str, bytes], roles: Sequence[LayerFile], layers: Layers) -> None:
    copper = [layer for layer in (layers.milled, layers.other) if layer is not None]
    hits = pad_hits(copper)
    for item in roles:
        if item.role not in _DRILLS:
            continue
        if kind_of(files[item.name]) == "gerber":
            _drill_gerber(files, item, layers)
            continue
        beside = companion_of(item.name, files)
        drill = read_drill(
            files[item.name],
            layer_hits=hits,
            name=item.name,
            tools=beside.tools,
            number_format=beside.number_format,
        )
        _take_drill(drill, item, layers)


def _take_drill(drill: DrillFile, item: LayerFile, layers: Layers) -> None:
    for text in drill.warnings:
        kind = "number format" if "read as" in text else "note"
        layers.findings.append(Finding(kind, text, item.name))
    plated = {Role.DRILL_PLATED: True, Role.DRILL_UNPLATED: False}.get(item.role)
    for hole in drill.holes:
        layers.holes.append(
            hole
            if hole.plated is not None
            else Hole(hole.x, hole.y, hole.diameter, plated, None, hole.function)
        )
    for slot in drill.slots:
        layers.slots.append(slot if slot.plated is not None else Slot(slot.path, slot.diameter, plated))


def _drill_gerber(files: Mapping[str, bytes], item: LayerFile, layers: Layers) -> None:
    """A drill file in Gerber form: round flashes are holes, draws are slots."""
    layer = read_gerber(files[item.name], name=item.name)
    plated = {Role.DRILL_PLATED: True, Role.DRILL_UNPLATED: False}.get(item.role)
    for entry in layer.objects:
        if entry.diameter is None or entry.diameter <= 0.0:
            what = "An opening in a drill file is not round."
            raise InputError(
                what,
                say("{name}, line {line}", name=item.name, line=entry.line),
                "Only round tools make holes and slots.",
                at=(float(entry.path[0][0]), float(entry.path[0][1])),
            )
        if entry.kind == "flash":
            x, y = (float(v) for v in entry.path[0])
            layers.holes.append(Hole(x, y, entry.diameter, plated, None, entry.function))
        else:
            layers.slots.append(Slot(entry.path, entry.diameter, plated))
