"""How much of a program is proven executed.

An answer to a line means buffered, no more. Executed is proven in three ways: by a drain (the
controller has stood still with nothing buffered), by the depth of the planner (a block must have left
it for a later one to enter), and by a position report that lies on a later piece of the path.
"""

from __future__ import annotations

import math
import re
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points
from drypoint.machine.protocol import Vec
from drypoint.program.model import MoveKind, Program

PLANNER_MARGIN = 7
"""Blocks beyond the planner's own that may have left it without being done: the one being executed
and the steps prepared ahead, at most six pieces (from memory)."""

_SHORTEST_BLOCK = 0.01
"""Moves shorter than this may round to no step at all and then make no block, mm."""

ON_PATH = 0.05
"""A report within this of a move lies on it, mm: rounding and inches reporting, no more."""

OFF_PATH = 0.5
"""A report farther than this from every move that can be under way is astray, mm."""


class Tracker(Protocol):
    """What a stream tells; counts are of lines from the start of what is streamed."""

    @property
    def executed(self) -> int:
        """Lines proven executed."""

    def acknowledged(self, lines: int) -> None:
        """The first ``lines`` lines were taken."""

    def position(self, work: Vec, sent: int) -> float:
        """The machine was seen at ``work`` with ``sent`` lines sent: distance from the path, mm."""

    def drained(self, lines: int) -> None:
        """The controller has done the first ``lines`` lines and holds nothing."""


class PathTracker:
    """Follows a program along its moves.

    Parameters
    ----------
    program : Program
    start : Vec
        Where the machine stands before the first line, work coordinates, mm.
    blocks : int
        Blocks of the planner, as the controller states.
    """

    def __init__(self, program: Program, start: Vec, blocks: int) -> None:
        self._lines = len(program.lines)
        self._chains, self._line_of = _chains(program, start)
        lengths = np.array([_length(chain) for chain in self._chains])
        real = np.flatnonzero(lengths > _SHORTEST_BLOCK)
        self._real_lines = self._line_of[real] if len(real) else np.zeros(0, dtype=np.int64)
        self._depth = blocks + PLANNER_MARGIN
        self._executed = 0
        self._taken = 0
        self._base = 0

    def begin(self, line: int) -> None:
        """A stream begins that starts at ``line`` of the program; all before it is executed."""
        self._base = line
        self._advance(line)

    @property
    def executed(self) -> int:
        """Lines of the stream proven executed."""
        return self._executed - self._base

    def acknowledged(self, lines: int) -> None:
        """The first ``lines`` lines were taken: those a full planner deeper are executed."""
        lines += self._base
        self._taken = max(self._taken, lines)
        rank = int(np.searchsorted(self._real_lines, lines))
        if rank > self._depth:
            self._advance(int(self._real_lines[rank - self._depth]))

    def position(self, work: Vec, sent: int) -> float:
        """Distance of a report from the moves that can be under way, mm.

        The earliest move it lies on counts: all lines before that are executed.
        """
        sent += self._base
        first = int(np.searchsorted(self._line_of, self._executed))
        last = int(np.searchsorted(self._line_of, max(sent, self._executed + 1)))
        place = np.asarray(work)
        nearest = math.inf
        for index in range(max(0, first - 1), last):
            distance = _distance(self._chains[index], place)
            nearest = min(nearest, distance)
            if distance <= ON_PATH:
                self._advance(min(int(self._line_of[index]), self._taken))
                return distance
        return nearest if last > first else 0.0

    def drained(self, lines: int) -> None:
        """The first ``lines`` lines are done."""
        self._advance(lines + self._base)

    def _advance(self, lines: int) -> None:
        self._executed = max(self._executed, min(lines, self._lines))


class LineTracker:
    """Counts lines without knowing their path: only a drain and the planner's depth prove anything."""

    def __init__(self, total: int, blocks: int) -> None:
        self._total = total
        self._depth = 2 * (blocks + PLANNER_MARGIN)  # some lines may make no block
        self._executed = 0

    @property
    def executed(self) -> int:
        """Lines proven executed."""
        return self._executed

    def acknowledged(self, lines: int) -> None:
        """The first ``lines`` lines were taken."""
        self._executed = max(self._executed, lines - self._depth)

    def position(self, work: Vec, sent: int) -> float:
        """Nothing is known of the path: never astray."""
        return 0.0

    def drained(self, lines: int) -> None:
        """The first ``lines`` lines are done."""
        self._executed = max(self._executed, min(lines, self._total))


_AXIS = re.compile(r"([XYZ])(-?[\d.]+)")


def _chains(program: Program, start: Vec) -> tuple[list[Points], NDArray[np.int64]]:
    """One polyline per move that a line makes, and the line of each; dwells are left out.

    Ends are read from the lines: an axis that a line does not name stays where it is, wherever the
    machine was when the program began.
    """
    moves = program.moves
    chains: list[Points] = []
    lines: list[int] = []
    at = np.asarray(start, dtype=np.float64)
    for line, move in enumerate(program.line_move):
        if move < 0 or moves.kind[move] == MoveKind.DWELL:
            continue
        end = at.copy()
        for axis, value in _AXIS.findall(program.lines[line]):
            end["XYZ".index(axis)] = float(value)
        if moves.kind[move] in (MoveKind.ARC_CW, MoveKind.ARC_CCW):
            chains.append(_arc(at, end, moves.centre[move], bool(moves.kind[move] == MoveKind.ARC_CW)))
        else:
            chains.append(np.array([at, end]))
        lines.append(line)
        at = end
    return chains, np.asarray(lines, dtype=np.int64)


_ARC_STEP = 0.2
"""Angle of one piece of an arc, rad: its sagitta at 1 mm radius is 5 µm."""


def _arc(start: Points, end: Points, centre: Points, clockwise: bool) -> Points:
    """(M, 3) points along an arc in the plane, height changing evenly."""
    middle = start[:2] + centre
    radius = float(np.hypot(*centre))
    first = math.atan2(*(start[:2] - middle)[::-1])
    turn = (math.atan2(*(end[:2] - middle)[::-1]) - first) % (2.0 * math.pi)
    if turn < 1e-9:
        turn = 2.0 * math.pi
    if clockwise:
        turn = turn - 2.0 * math.pi if turn < 2.0 * math.pi else -turn
    count = max(2, math.ceil(abs(turn) / _ARC_STEP) + 1)
    share = np.linspace(0.0, 1.0, count)
    angle = first + turn * share
    return np.column_stack(
        (
            middle[0] + radius * np.cos(angle),
            middle[1] + radius * np.sin(angle),
            start[2] + (end[2] - start[2]) * share,
        )
    )


def _length(chain: Points) -> float:
    return float(np.sqrt((np.diff(chain, axis=0) ** 2).sum(axis=1)).sum())


def _distance(chain: Points, place: Points) -> float:
    """Shortest distance from ``place`` to a polyline, mm."""
    start, step = chain[:-1], np.diff(chain, axis=0)
    square = np.maximum((step**2).sum(axis=1), 1e-18)
    share = np.clip(((place - start) * step).sum(axis=1) / square, 0.0, 1.0)
    foot = start + share[:, None] * step
    return float(np.sqrt(((place - foot) ** 2).sum(axis=1)).min())
