"""How much of a program is proven executed.

An answer to a line means buffered, no more. Executed is proven in three ways: by a drain (the
controller has stood still with nothing buffered), by the depth of the planner (a block must have left
it for a later one to enter), and by a position report that lies on a later piece of the path.
"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points
from drypoint.machine.guard import bare
from drypoint.machine.protocol import Vec

PLANNER_MARGIN = 7
"""Blocks beyond the planner's own that may have left it without being done: the one being executed
and the steps prepared ahead, at most six pieces (from memory)."""

_SHORTEST_BLOCK = 0.01
"""Moves shorter than this may round to no step at all and then make no block, mm."""

_ON_PATH = 0.01
"""A report within this, and a step of each axis, of a move lies on it, mm: reports come from the step
counters and are rounded to 1 µm, the offset too, and arcs are cut into pieces 2 µm off by the
controller and 5 µm off by us."""


@dataclass(frozen=True, slots=True)
class Sight:
    """What a report says about the path.

    Attributes
    ----------
    away : float
        Distance of the report from every move that can be under way, beyond what rounding explains, mm.
    limit : float
        Highest feed that those moves allow, mm/min; infinite with a rapid move among them.
    """

    away: float = 0.0
    limit: float = math.inf


class Tracker(Protocol):
    """What a stream tells; counts are of lines from the start of what is streamed."""

    @property
    def executed(self) -> int:
        """Lines proven executed."""

    def acknowledged(self, lines: int) -> None:
        """The first ``lines`` lines were taken."""

    def position(self, work: Vec, sent: int) -> Sight:
        """The machine was seen at ``work`` with ``sent`` lines sent."""

    def drained(self, lines: int) -> None:
        """The controller has done the first ``lines`` lines and holds nothing."""

    def seconds(self, count: int) -> NDArray[np.float64]:
        """(count,) least time that each line of the stream takes, s; infinite for all but plain cuts."""


class PathTracker:
    """Follows a program along its moves.

    Parameters
    ----------
    lines : sequence of str
        The whole program: absolute, mm.
    start : Vec
        Where the machine stands before the first line, work coordinates, mm.
    blocks : int
        Blocks of the planner, as the controller states.
    step : float
        Length of the coarsest axis's step, mm.
    """

    def __init__(self, lines: Sequence[str], start: Vec, blocks: int, *, step: float = 0.004) -> None:
        self._lines = len(lines)
        self._slack = _ON_PATH + 2.0 * step
        self._chains, self._line_of, self._feeds = _chains(lines, start)
        self._lengths = np.array([_length(chain) for chain in self._chains])
        real = np.flatnonzero(self._lengths > _SHORTEST_BLOCK)
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

    def position(self, work: Vec, sent: int) -> Sight:
        """Compare a report with the moves that can be under way.

        The earliest move it lies on counts: all lines before that are executed.
        """
        if not self._chains:
            return Sight()
        sent += self._base
        first = max(0, int(np.searchsorted(self._line_of, self._executed)) - 1)
        last = max(1, int(np.searchsorted(self._line_of, max(sent, self._executed + 1))))
        place = np.asarray(work)
        limit = float(self._feeds[first:last].max())
        nearest = math.inf
        for index in range(first, last):
            nearest = min(nearest, _distance(self._chains[index], place))
            if nearest <= self._slack:
                self._advance(min(int(self._line_of[index]), self._taken))
                return Sight(0.0, limit)
        return Sight(nearest - self._slack, limit)

    def drained(self, lines: int) -> None:
        """The first ``lines`` lines are done."""
        self._advance(lines + self._base)

    def seconds(self, count: int) -> NDArray[np.float64]:
        """Length over feed of what goes along a groove; infinite for lifts, plunges, rapids, switches."""
        least = np.full(self._lines, math.inf)
        across = np.array([_length(chain[:, :2]) for chain in self._chains])
        cuts = np.isfinite(self._feeds) & (across > _SHORTEST_BLOCK)
        least[self._line_of[cuts]] = self._lengths[cuts] / self._feeds[cuts] * 60.0
        return least[self._base : self._base + count]

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

    def position(self, work: Vec, sent: int) -> Sight:
        """Nothing is known of the path: never astray."""
        return Sight()

    def drained(self, lines: int) -> None:
        """The first ``lines`` lines are done."""
        self._executed = max(self._executed, min(lines, self._total))

    def seconds(self, count: int) -> NDArray[np.float64]:
        """Nothing is known: all lines are in a hurry."""
        return np.zeros(count)


_WORD = re.compile(r"([A-Z])(-?[\d.]+)")


def _chains(lines: Sequence[str], start: Vec) -> tuple[list[Points], NDArray[np.int64], NDArray[np.float64]]:
    """One polyline per line that moves, the number of that line, and its feed (infinite for rapids).

    Read from the text itself, since that is what the controller goes by: an axis that a line does
    not name stays where it is, wherever the machine was when the program began.
    """
    chains: list[Points] = []
    numbers: list[int] = []
    feeds: list[float] = []
    feed = math.inf
    at = np.asarray(start, dtype=np.float64)
    mode = 0
    for number, line in enumerate(lines):
        words = [(letter, float(value)) for letter, value in _WORD.findall(bare(line))]
        codes = [value for letter, value in words if letter == "G"]
        mode = next((int(code) for code in codes if code in _MODES), mode)
        feed = next((value for letter, value in words if letter == "F"), feed)
        named = {letter: value for letter, value in words if letter in "XYZIJ"}
        if not named or any(code in _NO_MOTION for code in codes):
            continue
        end = np.array([named.get(axis, at[index]) for index, axis in enumerate("XYZ")])
        if mode in _ARCS:
            centre = np.array([named.get("I", 0.0), named.get("J", 0.0)])
            chains.append(_arc(at, end, centre, mode == _CLOCKWISE))
        else:
            chains.append(np.array([at, end]))
        numbers.append(number)
        feeds.append(feed if mode else math.inf)
        at = end
    return chains, np.asarray(numbers, dtype=np.int64), np.asarray(feeds)


_MODES = (0.0, 1.0, 2.0, 3.0)
_ARCS = (2, 3)
_CLOCKWISE = 2
_NO_MOTION = (4.0, 10.0, 92.0)

_SAGITTA = 0.005
"""Farthest that our pieces of an arc stay inside it, mm."""


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
    piece = 2.0 * math.acos(1.0 - min(1.0, _SAGITTA / max(radius, _SAGITTA)))
    count = max(2, math.ceil(abs(turn) / piece) + 1)
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
