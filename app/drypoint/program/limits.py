"""Does a placed program stay inside the machine and off the clamps?

Checked after mapping, because a board that was turned or moved may no longer fit. All places are
in the machine frame.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
import shapely.ops
from numpy.typing import NDArray
from shapely import Polygon

from drypoint.bits.model import VBit
from drypoint.board.model import Finding
from drypoint.errors import PlanError
from drypoint.geometry.points import Points
from drypoint.program.model import MoveKind, Program
from drypoint.wording import say

SHANK = 3.175
"""Diameter of the usual shank, 1/8 inch, mm (common practice, no source): it follows the bit."""
CHORDS = 32
"""Straight pieces an arc is looked at as, when distances to clamps are measured."""


@dataclass(frozen=True, slots=True)
class TravelBox:
    """Where the bit's tip may go: lowest and highest x, y, z, mm, in work coordinates.

    Use infinities for directions whose limit is not known.
    """

    low: tuple[float, float, float]
    high: tuple[float, float, float]


@dataclass(frozen=True, slots=True, eq=False)
class Clamp:
    """A thing on the bed that the bit must not touch: its shape seen from above, and how high it
    stands, mm, in work coordinates."""

    shape: Polygon
    height: float
    name: str = "clamp"


def extent(program: Program) -> tuple[Points, Points]:
    """Lowest and highest (3,) place of all moves, arcs followed, mm."""
    moves = program.moves
    if not len(moves):
        nothing = np.zeros(3)
        return nothing, nothing
    low, high = moves.end.min(axis=0), moves.end.max(axis=0)
    for index in _arcs(program):
        path = arc_points(program, index, CHORDS)
        # the chords' ends lie on the arc; the bulge between them is below r (1 - cos)
        bulge = math.hypot(*moves.centre[index]) * (1 - math.cos(math.pi / CHORDS))
        low[:2] = np.minimum(low[:2], path.min(axis=0) - bulge)
        high[:2] = np.maximum(high[:2], path.max(axis=0) + bulge)
    return low, high


def _arcs(program: Program) -> list[int]:
    kind = program.moves.kind
    found: list[int] = np.flatnonzero((kind == MoveKind.ARC_CW) | (kind == MoveKind.ARC_CCW)).tolist()
    return found


def arc_points(program: Program, index: int, chords: int) -> NDArray[np.float64]:
    """(chords + 1, 2) points along an arc move; a whole circle where it ends as it starts."""
    moves = program.moves
    start = moves.end[index - 1, :2] if index else moves.end[index, :2]
    middle = start + moves.centre[index]
    a, b = start - middle, moves.end[index, :2] - middle
    sign = 1.0 if moves.kind[index] == MoveKind.ARC_CCW else -1.0
    sweep = sign * math.atan2(a[0] * b[1] - a[1] * b[0], float(a @ b))
    sweep = sign * (sweep if sweep > 1e-9 else sweep + 2 * math.pi)
    turn = math.atan2(a[1], a[0]) + np.linspace(0.0, sweep, chords + 1)
    path: NDArray[np.float64] = middle + math.hypot(*a) * np.column_stack((np.cos(turn), np.sin(turn)))
    return path


def check_limits(
    program: Program, box: TravelBox | None = None, clamps: Sequence[Clamp] = (), *, margin: float = 1.0
) -> tuple[Finding, ...]:
    """What stands in the way of a program; empty if nothing does.

    Parameters
    ----------
    margin : kept between the bit and a clamp, mm, sideways and in height
    """
    findings = [] if box is None else _outside(program, box)
    for clamp in clamps:
        hit = _hits(program, clamp, margin)
        if hit is not None:
            findings.append(hit)
    return tuple(findings)


def require_limits(
    programs: Sequence[Program],
    box: TravelBox | None = None,
    clamps: Sequence[Clamp] = (),
    *,
    margin: float = 1.0,
) -> None:
    """Refuse programs that leave the machine or meet a clamp.

    Raises
    ------
    PlanError
        With the first finding.
    """
    for program in programs:
        for finding in check_limits(program, box, clamps, margin=margin):
            raise PlanError(finding.what, program.title, finding.hint)


def _outside(program: Program, box: TravelBox) -> list[Finding]:
    low, high = extent(program)
    findings = []
    for axis, letter in enumerate("XYZ"):
        under, over = box.low[axis] - low[axis], high[axis] - box.high[axis]
        if max(under, over) > 0:
            end = "low" if under >= over else "high"
            findings.append(
                Finding(
                    "travel",
                    say(
                        "The program goes {max:.2f} mm past the {end} end of {letter}.",
                        max=max(under, over),
                        end=end,
                        letter=letter,
                    ),
                    program.title,
                    "Move or turn the blank, or set the work's zero elsewhere.",
                )
            )
    return findings


def _hits(program: Program, clamp: Clamp, margin: float) -> Finding | None:
    moves = program.moves
    if not len(moves):
        return None
    start = np.vstack((moves.end[:1], moves.end[:-1]))
    lowest = np.minimum(start[:, 2], moves.end[:, 2])
    below = lowest < clamp.height + margin
    ways = np.asarray(shapely.linestrings(np.stack((start[:, :2], moves.end[:, :2]), axis=1)))
    for index in _arcs(program):
        if below[index]:
            ways[index] = shapely.linestrings(arc_points(program, index, CHORDS))
    reach = _reach(program) + margin
    near = np.flatnonzero(below & shapely.dwithin(ways, clamp.shape, reach))
    if not len(near):
        return None
    first = int(near[0])
    x, y = shapely.get_coordinates(shapely.ops.nearest_points(ways[first], clamp.shape)[0])[0]
    return Finding(
        "clamp",
        say(
            "{count} moves come closer than {margin:g} mm to {name}, the first near "
            "({x:.1f}, {y:.1f}) at {lowest:.2f} mm height.",
            count=len(near),
            margin=margin,
            name=clamp.name,
            x=x,
            y=y,
            lowest=lowest[first],
        ),
        program.title,
        "Move the clamp, or raise the clearance above it.",
        at=(float(x), float(y)),
    )


def _reach(program: Program) -> float:
    """Radius of the widest part of bit and shank, mm."""
    bit = program.bit
    return max(SHANK if isinstance(bit, VBit) else bit.diameter, SHANK) / 2
