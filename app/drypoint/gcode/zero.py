"""Where a ready-made program has its z = 0: on the copper, or on the backing below the laminate.

Programs do not say. On the copper, what is cut lies below zero; on the backing nearly all of it lies
above, and only holes and outlines reach below. What moves in between at clearance height may be driven
by feed too, so lengths decide, not single moves.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from drypoint.gcode.moves import GMove, GProgram

THICKEST = 3.5
"""mm; no laminate that is milled is thicker (common practice, no source): above it nothing is cut."""
BELOW_TRAVEL = 0.1
"""mm; what is cut lies this far below the highest place a program goes to, at least."""
ABOVE_CUT = 0.2
"""The copper is taken to lie this far above the highest cut, mm: engraving goes no deeper than twice that."""
PLUNGE = 1e-3
"""Weight of a move straight down, mm: it tells only where nothing moves across."""


@dataclass(frozen=True, slots=True)
class ZeroGuess:
    """What the lengths of the cuts tell.

    Attributes
    ----------
    above, below : float
        Length moved by feed above and below z = 0, mm.
    highest : float
        The highest cut above z = 0, mm; 0 where there is none.
    """

    above: float
    below: float
    highest: float

    @property
    def on_backing(self) -> bool:
        """Whether most is cut above z = 0."""
        return self.above > self.below

    @property
    def copper(self) -> float:
        """z of the copper's top in the programs' coordinates, mm, roughly where it is on the backing."""
        return self.highest + ABOVE_CUT if self.on_backing else 0.0


def guess_zero(programs: Sequence[Sequence[GMove]]) -> ZeroGuess:
    """What programs with one common zero tell of it, each given by its moves."""
    above = below = highest = 0.0
    for moves in programs:
        top = max((move.end[2] for move in moves), default=0.0)
        limit = min(top - BELOW_TRAVEL, THICKEST)
        at = (0.0, 0.0, top)
        for move in moves:
            if move.kind not in ("rapid", "dwell"):
                level = move.end[2]
                across = math.hypot(move.end[0] - at[0], move.end[1] - at[1])
                way = across if abs(level - at[2]) < BELOW_TRAVEL and across > 0.0 else PLUNGE
                if level < 0.0:
                    below += way
                elif level <= limit and (level < at[2] or across > 0.0):
                    above += way
                    highest = max(highest, level)
            if move.kind != "dwell":
                at = move.end
    return ZeroGuess(above, below, highest)


def lowered(program: GProgram, by: float) -> GProgram:
    """The same with z = 0 moved from the backing to the copper, ``by`` mm above it."""
    if by == 0.0:
        return program
    moves = tuple(replace(move, end=(move.end[0], move.end[1], move.end[2] - by)) for move in program.moves)
    return replace(program, moves=moves)
