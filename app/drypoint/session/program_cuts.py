"""What ready-made programs do in a job: grooves in our passes, the outline, programs of their own."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import shapely
from numpy.typing import ArrayLike

from drypoint.board.model import Board
from drypoint.board.programs import SOURCE, edge_is_rectangle
from drypoint.cuts.grooves import in_travel_order
from drypoint.cuts.model import GroovePlan
from drypoint.errors import InputError, PlanError
from drypoint.gcode.reader_paths import ToolUse
from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.program.imported import place_imported
from drypoint.program.model import Program
from drypoint.program.settings import FitLike, HeightLike, ProgramSettings
from drypoint.session.boards import Placed, moves_by_design
from drypoint.session.imported import ReadyProgram, has_outline
from drypoint.session.plans import GivenCuts
from drypoint.session.settings import ImportedSettings, ProgramUse
from drypoint.wording import say

BESIDE = 0.5
"""mm; nets this near a ready-made groove lie beside it."""


def kept_choices(chosen: ImportedSettings, names: Mapping[str, str]) -> ImportedSettings:
    """The choices for files that stay; ``names`` gives each of them its new name by the present one."""
    return replace(
        chosen,
        uses=tuple(replace(one, file=names[one.file]) for one in chosen.uses if one.file in names),
        bits=tuple(replace(one, file=names[one.file]) for one in chosen.bits if one.file in names),
    )


@dataclass(frozen=True, slots=True)
class _Chained:
    """First a place on the board, then wherever the board lies."""

    first: Rigid
    then: FitLike

    def apply(self, points: ArrayLike, /) -> Points:
        return self.then.apply(self.first.apply(points))


def require_chosen(ready: Sequence[ReadyProgram], chosen: ImportedSettings) -> None:
    """Refuse uses that cannot be.

    Raises
    ------
    InputError
        A program chosen for the grooves is not there, or was not understood.
    PlanError
        It engraves nothing.
    """
    by_name = {one.name: one for one in ready}
    for choice in chosen.uses:
        if choice.use is not ProgramUse.GROOVES:
            continue
        one = by_name.get(choice.file)
        if one is None:
            raise InputError("The program chosen for the grooves is not among the files.", choice.file)
        if one.trouble is not None:
            raise one.trouble
        if not one.grooves:
            raise PlanError("This program engraves nothing.", one.name, "Choose another for the grooves.")


def given_cuts(
    ready: Sequence[ReadyProgram], board: Board, placed: Sequence[Placed], *, cut_edge: bool = False
) -> GivenCuts:
    """What the programs do in place of our own grooves and outlines.

    The engraved paths of those taken for grooves are cut in our passes above the touched surface; the
    depths of the files are not used. ``cut_edge``: a rectangle that stands for a missing outline is cut
    here.
    """
    own = {name: [one for one in ready if one.board == name] for name in {one.design for one in placed}}
    designs = {one.design: one.place.board for one in placed}
    grooved = {
        name
        for name, programs in own.items()
        if any(one.grooves for one in programs) or designs[name].net_source == SOURCE
    }
    cut_out = {name for name, programs in own.items() if _cut_out(programs, designs[name], cut_edge)}
    lines = tuple(
        one.place.then(copy).apply(path.path)
        for one in ready
        for copy in moves_by_design(placed).get(one.board, ())
        for tool in one.grooves
        for path in tool.paths
        if len(path.path) > 1
    )
    grooves = GroovePlan(lines, _beside(board, lines), ())
    return GivenCuts(
        in_travel_order(grooves) if lines else grooves,
        frozenset(number for number, one in enumerate(placed, 1) if one.design in grooved),
        frozenset(number for number, one in enumerate(placed, 1) if one.design in cut_out),
    )


def _cut_out(ready: Sequence[ReadyProgram], design: Board, cut_edge: bool) -> bool:
    """Whether programs cut a board out, so that no outline of ours is planned.

    Without copper data and outline layer the edge is only what the programs cut, unless its rectangle is
    to be cut; with that layer a program that mills is taken for it.
    """
    if any(one.use is ProgramUse.OUTLINE for one in ready):
        return True
    if design.net_source != SOURCE:
        return False
    if cut_edge and edge_is_rectangle(design):
        return False
    run = [one for one in ready if one.use is not ProgramUse.LEFT_OUT]
    mills = any(tool.use is ToolUse.MILLING for one in run for tool in one.tools)
    return mills or not has_outline(design)


def ready_programs(
    ready: Sequence[ReadyProgram],
    copies: Mapping[str, Sequence[Rigid]],
    fit: FitLike,
    surface: HeightLike | None,
    shared: ProgramSettings,
    chosen: ImportedSettings,
    *,
    first: int,
) -> tuple[Program, ...]:
    """Programs to run, board by board, numbered from ``first``.

    What is cut in our passes, and what is left out, is not among them.

    Parameters
    ----------
    copies : mapping of str to sequence of Rigid
        For each design each board's own frame to the frame of the whole blank.

    Raises
    ------
    PlanError
        A cutting move has no feed, or the program chosen for the outline cannot be run.
    """
    _require_outline(ready, chosen)
    made: list[Program] = []
    several = sum(map(len, copies.values())) > 1
    for one in ready:
        if not one.usable or one.use is ProgramUse.LEFT_OUT:
            continue
        for number, copy in enumerate(copies.get(one.board, ()), 1):
            many = several and len(copies[one.board]) > 1
            where = say(" on board {number}", number=number) if many else ""
            made += place_imported(
                one.program.moves,
                one.bits,
                _Chained(one.place.then(copy), fit),
                surface,
                shared,
                title=f"{one.name}{where}",
                first=first + len(made),
                leave_out={tool.number for tool in one.grooves},
            )
    return tuple(made)


def _require_outline(ready: Sequence[ReadyProgram], chosen: ImportedSettings) -> None:
    usable = {one.name for one in ready if one.usable}
    for choice in chosen.uses:
        if choice.use is ProgramUse.OUTLINE and choice.file not in usable:
            raise PlanError(
                "The program chosen for the outline cannot be run.",
                choice.file,
                "Choose its bits, choose another program, or none to cut the outline as planned here.",
            )


def _beside(board: Board, lines: Sequence[Points]) -> tuple[tuple[str, ...], ...]:
    """The nets beside each line, nearest first, two at most."""
    names, shapes = list(board.nets), list(board.nets.values())
    if not shapes or not lines:
        return ((),) * len(lines)
    tree = shapely.STRtree(shapes)
    drawn = [shapely.LineString(line) for line in lines]
    found: list[list[tuple[float, str]]] = [[] for _ in lines]
    for line, net in zip(*tree.query(drawn, predicate="dwithin", distance=BESIDE), strict=True):
        found[line].append((float(shapely.distance(drawn[line], shapes[net])), names[net]))
    return tuple(tuple(name for _, name in sorted(near)[:2]) for near in found)
