"""Ready-made programs among a job's files: understood, placed like the board, and run like our own.

A program is read for the board itself: zero at the lower left of its outline, or the design's own
coordinates; whichever has its cuts on the board. It is made for every copy on the blank. Without
copper data the programs are all there is: what they engrave is cut in our passes.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely

from drypoint.bits.model import Bit
from drypoint.board.model import Board, Finding, Role
from drypoint.board.programs import SOURCE
from drypoint.errors import InputError
from drypoint.gcode.moves import GMove, GProgram
from drypoint.gcode.reader import read_program
from drypoint.gcode.reader_paths import CutPath, ToolUse, cut_paths, use_of
from drypoint.gcode.zero import guess_zero, lowered
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.session.settings import BitSettings, ImportedSettings, ProgramUse, ZeroOfZ
from drypoint.wording import say

AROUND = 5.0
"""mm; cuts this far outside the outline still belong to the board: the mill's way round it."""
ON_HOLE = 0.15
"""mm; a drilled place this near a hole's middle is meant for it."""
MOSTLY = 0.8
"""Share of places on holes of the board from which those holes tell the drill."""
DRILL_ROOM = 0.1
"""mm a drill may differ from the holes it is for (common practice, no source)."""


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
    board : str
        Name of the design it belongs to.
    use : ProgramUse
        What it is taken for.
    trouble : InputError or None
        Why it cannot be used; then there are no moves.
    as_written : tuple of GMove
        Its moves with z as in the file; those of ``program`` have z = 0 on the copper.
    """

    name: str
    program: GProgram
    tools: tuple[ReadyTool, ...]
    place: Rigid
    why: str
    trouble: InputError | None = None
    board: str = ""
    use: ProgramUse = ProgramUse.OWN
    as_written: tuple[GMove, ...] = ()

    @property
    def grooves(self) -> tuple[ReadyTool, ...]:
        """Tools whose paths are cut in our passes."""
        if self.use is not ProgramUse.GROOVES or self.trouble is not None:
            return ()
        return tuple(tool for tool in self.tools if tool.use is ToolUse.ENGRAVING)

    @property
    def bits(self) -> dict[int, Bit]:
        """By number of the tool; those without a bit are missing."""
        return {tool.number: tool.bit for tool in self.tools if tool.bit is not None}

    @property
    def usable(self) -> bool:
        """Whether it can be run: it was understood and every tool has its bit."""
        return self.trouble is None and bool(self.tools) and len(self.bits) == len(self.tools)


@dataclass(frozen=True, slots=True, eq=False)
class _Reading:
    """What all programs of a job are read with."""

    bits: BitSettings
    chosen: ImportedSettings
    thickness: float
    """Of the laminate, mm."""

    def use_of(self, name: str, tools: Sequence[ReadyTool], design: Board) -> ProgramUse:
        """What a program is taken for: as chosen, else as is usual."""
        for one in self.chosen.uses:
            if one.file == name:
                return one.use
        engraves = any(tool.use is ToolUse.ENGRAVING for tool in tools)
        return ProgramUse.GROOVES if design.net_source == SOURCE and engraves else ProgramUse.OWN


def read_ready(
    files: Mapping[str, bytes],
    designs: Mapping[str, Board],
    bits: BitSettings,
    chosen: ImportedSettings,
    thickness: float,
) -> tuple[ReadyProgram, ...]:
    """Every file of the designs that is a program; ``thickness`` is the laminate's, mm."""
    reading = _Reading(bits, chosen, thickness)
    return tuple(
        replace(_read(file.name, files[file.name], design, reading), board=name)
        for name, design in designs.items()
        for file in design.files
        if file.role is Role.GCODE
    )


def _read(name: str, content: bytes, design: Board, reading: _Reading) -> ReadyProgram:
    try:
        program = read_program(content.decode("latin-1"), name=name)
    except InputError as trouble:
        return ReadyProgram(name, GProgram((), ()), (), Rigid(), "", trouble)
    written = program.moves
    if reading.chosen.zero is ZeroOfZ.BACKING:
        program = lowered(program, reading.thickness)
    paths = cut_paths(program.moves)
    place, why = _placing(paths, design, reading.chosen)
    tools = []
    for number in dict.fromkeys(path.tool for path in paths):
        own = tuple(path for path in paths if path.tool == number)
        use = use_of(own)
        bit = _bit(name, number, use, own, place, design, reading.bits, reading.chosen)
        tools.append(ReadyTool(number, use, own, bit))
    use_as = reading.use_of(name, tools, design)
    return ReadyProgram(name, program, tuple(tools), place, why, use=use_as, as_written=written)


def _placing(paths: Sequence[CutPath], design: Board, chosen: ImportedSettings) -> tuple[Rigid, str]:
    """Where the program lies on the board, by how much of it lies on the board."""
    shift = Rigid(0.0, (chosen.x, chosen.y))
    corner = "zero is the lower left of the board"
    if not paths:
        return shift, corner
    if design.net_source == SOURCE and not has_outline(design):
        return design.to_design.inverse().then(shift), "all programs have one zero"
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


def has_outline(design: Board) -> bool:
    """Whether a file draws the board's edge."""
    return any(file.role is Role.OUTLINE for file in design.files)


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


def ready_findings(
    ready: Sequence[ReadyProgram], zero: ZeroOfZ = ZeroOfZ.COPPER, *, both: bool = False
) -> tuple[Finding, ...]:
    """What there is to know about the programs: how they were understood, and what is still asked.

    ``zero`` is what was chosen for their z = 0; they are given as read with it. ``both``: both sides are
    milled.
    """
    found = _zero_findings(ready, zero)
    if both and ready:
        what = "Ready-made programs are run while the first side looks up, and only then."
        hint = "Leave out one that cuts the board out: it would come loose before it is turned over."
        found.append(Finding("program", what, say("Ready-made programs"), hint))
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


def _zero_findings(ready: Sequence[ReadyProgram], zero: ZeroOfZ) -> list[Finding]:
    """Whether the programs look as if their z = 0 were elsewhere than chosen."""
    guess = guess_zero([one.as_written for one in ready if one.trouble is None])
    hint = say("Choose what z = 0 is (page Cuts, or --program-zero): wrong, all is cut too high or too deep.")
    if zero is ZeroOfZ.COPPER and guess.on_backing:
        what = say("Most of what the programs cut lies above z = 0, as if that were on the backing.")
        return [Finding("zero", what, say("Ready-made programs"), hint)]
    if zero is ZeroOfZ.BACKING and guess.below > 0.0 and guess.above == 0.0:
        what = say("All that the programs cut lies below z = 0, as if that were on the copper.")
        return [Finding("zero", what, say("Ready-made programs"), hint)]
    return []


def ready_facts(ready: Sequence[ReadyProgram]) -> list[dict[str, Any]]:
    """What is known of each program, as plain values for scripts."""
    return [
        {
            "name": one.name,
            "moves": len(one.program.moves),
            "why": one.why,
            "used_as": _used_as(one),
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


def _used_as(one: ReadyProgram) -> str:
    if one.grooves:
        return "grooves"
    if not one.usable or one.use is ProgramUse.LEFT_OUT:
        return "not run"
    return "outline" if one.use is ProgramUse.OUTLINE else "program of its own"
