"""Ready-made programs among a job's files: understood, placed like the board, and run like our own.

A program is read for the board itself: zero at the lower left of its outline, or the design's own
coordinates; whichever has its cuts on the board. It is made for every copy on the blank.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely
from numpy.typing import ArrayLike

from drypoint.bits.model import Bit
from drypoint.board.model import Board, Finding, Role
from drypoint.cuts.grooves import in_travel_order
from drypoint.cuts.model import GroovePlan
from drypoint.errors import InputError, PlanError
from drypoint.gcode.reader import GProgram, read_program
from drypoint.gcode.reader_paths import CutPath, ToolUse, cut_paths, use_of
from drypoint.geometry.points import Points, as_points
from drypoint.geometry.rigid import Rigid
from drypoint.program.imported import place_imported
from drypoint.program.model import Program
from drypoint.program.settings import FitLike, HeightLike, ProgramSettings
from drypoint.session.settings import BitSettings, ImportedSettings
from drypoint.wording import say

AROUND = 5.0
"""mm; cuts this far outside the outline still belong to the board: the mill's way round it."""
ON_HOLE = 0.15
"""mm; a drilled place this near a hole's middle is meant for it."""
MOSTLY = 0.8
"""Share of places on holes of the board from which those holes tell the drill."""
DRILL_ROOM = 0.1
"""mm a drill may differ from the holes it is for (common practice, no source)."""
BESIDE = 0.5
"""mm; nets this near a ready-made groove lie beside it."""


@dataclass(frozen=True, slots=True, eq=False)
class ReadyTool:
    """One tool of a program: what it does, how deep, and the bit that is taken for it, if one is."""

    number: int
    use: ToolUse
    paths: tuple[CutPath, ...]
    bit: Bit | None

    @property
    def depth(self) -> float:
        """Deepest place, mm below the copper."""
        return max(one.depth for one in self.paths)


@dataclass(frozen=True, slots=True, eq=False)
class ReadyProgram:
    """A file that was read.

    Attributes
    ----------
    place : Rigid
        The program's coordinates to the board frame of one board.
    why : str
        What that was decided by.
    trouble : InputError or None
        Why it cannot be used; then there are no moves.
    """

    name: str
    program: GProgram
    tools: tuple[ReadyTool, ...]
    place: Rigid
    why: str
    trouble: InputError | None = None

    @property
    def bits(self) -> dict[int, Bit]:
        """By number of the tool; those without a bit are missing."""
        return {tool.number: tool.bit for tool in self.tools if tool.bit is not None}

    @property
    def usable(self) -> bool:
        """Whether it can be run: it was understood and every tool has its bit."""
        return self.trouble is None and bool(self.tools) and len(self.bits) == len(self.tools)


def read_ready(
    files: Mapping[str, bytes], design: Board, bits: BitSettings, chosen: ImportedSettings
) -> tuple[ReadyProgram, ...]:
    """Every file of the design that is a program."""
    named = [file.name for file in design.files if file.role is Role.GCODE]
    return tuple(_read(name, files[name], design, bits, chosen) for name in named)


def _read(
    name: str, content: bytes, design: Board, bits: BitSettings, chosen: ImportedSettings
) -> ReadyProgram:
    try:
        program = read_program(content.decode("latin-1"), name=name)
    except InputError as trouble:
        return ReadyProgram(name, GProgram((), ()), (), Rigid(), "", trouble)
    paths = cut_paths(program.moves)
    place, why = _placing(paths, design, chosen)
    numbers = dict.fromkeys(path.tool for path in paths)
    tools = []
    for number in numbers:
        own = tuple(path for path in paths if path.tool == number)
        use = use_of(own)
        tools.append(ReadyTool(number, use, own, _bit(name, number, use, own, place, design, bits, chosen)))
    return ReadyProgram(name, program, tuple(tools), place, why)


def _placing(paths: Sequence[CutPath], design: Board, chosen: ImportedSettings) -> tuple[Rigid, str]:
    """Where the program lies on the board, by how much of it lies on the board."""
    shift = Rigid(0.0, (chosen.x, chosen.y))
    corner = "zero is the lower left of the board"
    if not paths:
        return shift, corner
    spots = as_points(np.vstack([path.path for path in paths]))
    room = design.outline.buffer(AROUND)
    shapely.prepare(room)

    def share(place: Rigid) -> float:
        return float(shapely.contains_xy(room, place.apply(spots)).mean())

    from_corner, from_design = share(Rigid()), share(design.to_design.inverse())
    if from_design > from_corner:
        return design.to_design.inverse().then(shift), "its places are those of the design files"
    if from_corner == from_design == 0.0:
        return shift, say("{corner}; nothing of it lies on the board", corner=corner)
    return shift, corner


def _bit(
    name: str,
    number: int,
    use: ToolUse,
    paths: Sequence[CutPath],
    place: Rigid,
    design: Board,
    bits: BitSettings,
    chosen: ImportedSettings,
) -> Bit | None:
    every: tuple[Bit, ...] = (bits.vbit, bits.mill, *bits.drills)
    for choice in chosen.bits:
        if choice.file == name and choice.tool == number:
            return next((bit for bit in every if bit.name == choice.bit), None)
    if use is ToolUse.ENGRAVING:
        return bits.vbit
    if use is ToolUse.MILLING:
        return bits.mill
    diameter = _drilled_diameter(paths, place, design)
    fitting = [
        drill
        for drill in bits.drills
        if diameter is not None and abs(drill.diameter - diameter) <= DRILL_ROOM + 1e-9
    ]
    return min(fitting, key=lambda drill: abs(drill.diameter - (diameter or 0.0)), default=None)


def _drilled_diameter(paths: Sequence[CutPath], place: Rigid, design: Board) -> float | None:
    """Diameter of the board's holes at these places, where nearly all lie on holes of one size."""
    if not design.holes:
        return None
    holes = np.array([(hole.x, hole.y, hole.diameter) for hole in design.holes])
    spots = place.apply([path.path[0] for path in paths])
    away = np.hypot(*(spots[:, None, :] - holes[None, :, :2]).transpose(2, 0, 1))
    hit = away.min(axis=1) <= ON_HOLE
    if hit.mean() < MOSTLY:
        return None
    diameters = holes[away.argmin(axis=1)[hit], 2]
    return float(np.median(diameters)) if np.ptp(diameters) <= DRILL_ROOM else None


def ready_findings(ready: Sequence[ReadyProgram]) -> tuple[Finding, ...]:
    """What there is to know about the programs: how they were understood, and what is still asked."""
    found = []
    for one in ready:
        if one.trouble is not None:
            what = say("This program is not used: {what}", what=one.trouble.what)
            found.append(Finding("program", what, one.trouble.where, one.trouble.hint))
            continue
        found += [
            Finding("program", f"{text[0].upper()}{text[1:]}.", one.name) for text in one.program.warnings
        ]
        if not one.tools:
            found.append(Finding("program", "This program cuts nothing.", one.name))
        for tool in one.tools:
            if tool.bit is None:
                what = say(
                    "No bit is chosen for tool {number} ({value}); the program is not run.",
                    number=tool.number,
                    value=tool.use.value,
                )
                found.append(Finding("program", what, one.name, "Choose a bit of the job for it."))
    return tuple(found)


@dataclass(frozen=True, slots=True)
class _Chained:
    """First a place on the board, then wherever the board lies."""

    first: Rigid
    then: FitLike

    def apply(self, points: ArrayLike, /) -> Points:
        return self.then.apply(self.first.apply(points))


def ready_programs(
    ready: Sequence[ReadyProgram],
    copies: Sequence[Rigid],
    fit: FitLike,
    surface: HeightLike | None,
    shared: ProgramSettings,
    chosen: ImportedSettings,
    *,
    first: int,
) -> tuple[Program, ...]:
    """Programs to run, copy by copy, numbered from ``first``.

    Files whose grooves or outline stand for ours (`ImportedSettings`), and those left out, are not
    among them.

    Parameters
    ----------
    copies : sequence of Rigid
        Each copy's own frame to the frame of the whole blank.

    Raises
    ------
    PlanError
        A cutting move has no feed, or the program chosen for the outline cannot be run.
    """
    _require_outline(ready, chosen)
    made: list[Program] = []
    for one in ready:
        if not one.usable or one.name in chosen.left_out or one.name == chosen.grooves:
            continue
        for number, copy in enumerate(copies, 1):
            where = say(" on board {number}", number=number) if len(copies) > 1 else ""
            made += place_imported(
                one.program.moves,
                one.bits,
                _Chained(one.place.then(copy), fit),
                surface,
                shared,
                title=f"{one.name}{where}",
                first=first + len(made),
            )
    return tuple(made)


def _require_outline(ready: Sequence[ReadyProgram], chosen: ImportedSettings) -> None:
    usable = [one.name for one in ready if one.usable and one.name not in chosen.left_out]
    if chosen.outline and chosen.outline not in usable:
        raise PlanError(
            "The program chosen for the outline cannot be run.",
            chosen.outline,
            "Choose its bits, choose another program, or none to cut the outline as planned here.",
        )


def ready_grooves(
    ready: Sequence[ReadyProgram], board: Board, copies: Sequence[Rigid], chosen: ImportedSettings
) -> GroovePlan | None:
    """The engraved paths of the chosen file as grooves, or None where none is chosen.

    They are cut in our passes above the touched surface; the depths of the file are not used.

    Raises
    ------
    InputError
        The chosen file is not there, or was not understood.
    PlanError
        It engraves nothing.
    """
    if not chosen.grooves:
        return None
    one = next((one for one in ready if one.name == chosen.grooves), None)
    if one is None:
        raise InputError("The program chosen for the grooves is not among the files.", chosen.grooves)
    if one.trouble is not None:
        raise one.trouble
    own = [
        path.path
        for tool in one.tools
        if tool.use is ToolUse.ENGRAVING
        for path in tool.paths
        if len(path.path) > 1
    ]
    if not own:
        raise PlanError("This program engraves nothing.", one.name, "Choose another for the grooves.")
    lines = tuple(one.place.then(copy).apply(path) for copy in copies for path in own)
    return in_travel_order(GroovePlan(lines, _beside(board, lines), ()))


def _beside(board: Board, lines: Sequence[Points]) -> tuple[tuple[str, ...], ...]:
    """The nets beside each line, nearest first, two at most."""
    names, shapes = list(board.nets), list(board.nets.values())
    tree = shapely.STRtree(shapes)
    drawn = [shapely.LineString(line) for line in lines]
    found: list[list[tuple[float, str]]] = [[] for _ in lines]
    for line, net in zip(*tree.query(drawn, predicate="dwithin", distance=BESIDE), strict=True):
        found[line].append((float(shapely.distance(drawn[line], shapes[net])), names[net]))
    return tuple(tuple(name for _, name in sorted(near)[:2]) for near in found)


def ready_facts(ready: Sequence[ReadyProgram], chosen: ImportedSettings) -> list[dict[str, Any]]:
    """What is known of each program, as plain values for scripts."""
    return [
        {
            "name": one.name,
            "moves": len(one.program.moves),
            "why": one.why,
            "used_as": _used_as(one, chosen),
            "tools": [
                {
                    "tool": tool.number,
                    "use": tool.use.value,
                    "depth_mm": round(tool.depth, 4),
                    "bit": None if tool.bit is None else tool.bit.name,
                }
                for tool in one.tools
            ],
        }
        for one in ready
    ]


def _used_as(one: ReadyProgram, chosen: ImportedSettings) -> str:
    if one.trouble is None and one.name == chosen.grooves:
        return "grooves"
    if not one.usable or one.name in chosen.left_out:
        return "not run"
    return "outline" if one.name == chosen.outline else "program of its own"
