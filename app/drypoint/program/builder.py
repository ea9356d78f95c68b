"""Collects moves one after the other and keeps the rules of safe travel: rapids happen on the
clearance plane only, and the way down and up is made of feed moves. So is a hop, the short way from
one place to the next that stays lower."""

from __future__ import annotations

import math

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray

from drypoint.geometry.points import as_points
from drypoint.program.model import MoveKind, Moves
from drypoint.program.settings import ProgramSettings

BETWEEN = -1
"""Tag of moves that belong to no cut."""
FARTHEST_HOP = 30.0
"""mm; a longer way goes over the clearance plane, where the time for going up matters little."""
AWAY = 8.0
"""mm that the middle of the bit keeps from any obstacle on a hop: a wide shank and a margin."""


class MoveBuilder:
    """Builds `Moves`, machine frame. Starts on the clearance plane at an unknown place.

    Parameters
    ----------
    plane : float
        Height of the clearance plane, mm.
    low : float or None
        Height at which hops are made, mm; None where the copper's height is not known.
    """

    def __init__(self, plane: float, settings: ProgramSettings, low: float | None = None) -> None:
        self.plane = plane
        self.settings = settings
        self.low = low if low is not None and low < plane else None
        self.hops = 0
        self._ends: list[NDArray[np.float64]] = []
        self._feeds: list[float | NDArray[np.float64]] = []
        self._blocks: list[tuple[int, int, int, float, float]] = []
        """Moves, kind, tag and arc centre of each block that was added."""
        self._waits: dict[int, float] = {}
        self.at: tuple[float, float, float] | None = None

    def _add(
        self,
        kind: MoveKind,
        end: NDArray[np.float64],
        feed: float | NDArray[np.float64],
        tag: int,
        centre: tuple[float, float] = (0.0, 0.0),
    ) -> None:
        if not len(end):
            return
        self._ends.append(end)
        self._feeds.append(feed)
        self._blocks.append((len(end), int(kind), tag, *centre))
        x, y, z = end[-1].tolist()
        self.at = (x, y, z)

    def _to(self, kind: MoveKind, x: float, y: float, z: float, feed: float, tag: int) -> None:
        """One straight move."""
        self._add(kind, np.array([[x, y, z]]), feed, tag)

    def travel(self, x: float, y: float) -> None:
        """Go to a place above the copper, taking up the play on the way if that is set.

        On the clearance plane; by a hop where the bit comes from a cut nearby and nothing is in the way.
        """
        back = self.settings.take_up
        stops = [(x - back, y - back), (x, y)] if back > 0 else [(x, y)]
        kind, level, feed = MoveKind.RAPID, self.plane, 0.0
        if self.low is not None and self._may_hop(stops):
            kind, level, feed = MoveKind.FEED, self.low, math.hypot(*self.settings.motion.max_rate[:2])
            self.hops += 1
        if self.at is not None and self.at[2] < level:
            self._to(MoveKind.FEED, self.at[0], self.at[1], level, self.settings.retract_feed, BETWEEN)
        for stop in stops:
            self._to(kind, *stop, level, feed, BETWEEN)

    def _may_hop(self, stops: list[tuple[float, float]]) -> bool:
        """Whether the way over ``stops`` is short and clear of everything that stands up."""
        if self.at is None or self.at[2] >= self.plane:
            return False
        if math.dist(self.at[:2], stops[-1]) > FARTHEST_HOP:
            return False
        way = shapely.LineString([self.at[:2], *stops])
        return not any(shapely.dwithin(way, one, AWAY) for one in self.settings.obstacles)

    def lift(self) -> None:
        """Straight up to the clearance plane."""
        if self.at is not None:
            x, y, _ = self.at
            self._to(MoveKind.FEED, x, y, self.plane, self.settings.retract_feed, BETWEEN)

    def enter(self, x: float, y: float, top: float, z: float, plunge: float, tag: int) -> None:
        """Down at one place: quickly to just above the copper (``top``), then slowly to ``z``."""
        start = min(self.plane if self.at is None else self.at[2], top + self.settings.approach)
        self._to(MoveKind.FEED, x, y, start, self.settings.approach_feed, tag)
        self._to(MoveKind.FEED, x, y, z, plunge, tag)

    def feed(self, ends: ArrayLike, feed: float | NDArray[np.float64], tag: int) -> None:
        """Along (N, 3) points at one feed or (N,) feeds."""
        self._add(MoveKind.FEED, np.asarray(ends, dtype=np.float64).reshape(-1, 3), feed, tag)

    def arc(
        self,
        end: tuple[float, float, float],
        centre: tuple[float, float],
        feed: float,
        tag: int,
        *,
        clockwise: bool,
    ) -> None:
        """One arc to ``end``; ``centre`` is the offset from where the arc starts."""
        kind = MoveKind.ARC_CW if clockwise else MoveKind.ARC_CCW
        self._add(kind, np.array([end]), feed, tag, centre)

    def dwell(self, seconds: float) -> None:
        """Wait where the bit is."""
        if self.at is not None:
            self._waits[len(self._blocks)] = seconds
            self._to(MoveKind.DWELL, *self.at, 0.0, BETWEEN)

    def build(self) -> Moves:
        """The moves, rounded to the decimals that will be written; moves that go nowhere left out."""
        if not self._blocks:
            return empty_moves()
        table = np.array(self._blocks)
        counts = table[:, 0].astype(np.int64)
        kind, tag, *centre = (np.repeat(table[:, k], counts) for k in range(1, 5))
        feed = np.repeat([0.0 if isinstance(f, np.ndarray) else f for f in self._feeds], counts)
        starts = np.cumsum(counts) - counts
        for start, given in zip(starts.tolist(), self._feeds, strict=True):
            if isinstance(given, np.ndarray):
                feed[start : start + len(given)] = given
        wait = np.zeros(len(kind))
        wait[starts[list(self._waits)]] = list(self._waits.values())
        end = np.round(np.concatenate(self._ends), self.settings.decimals) + 0.0
        moved = np.ones(len(kind), dtype=bool)
        moved[1:] = (end[1:] != end[:-1]).any(axis=1)
        keep = moved | (kind >= MoveKind.ARC_CW)  # whole circles and dwells end where they start
        middle = np.round(np.column_stack(centre), self.settings.decimals) + 0.0
        return make_moves(kind[keep], end[keep], feed[keep], middle[keep], tag[keep], wait[keep])


def make_moves(
    kind: ArrayLike,
    end: ArrayLike,
    feed: ArrayLike,
    centre: ArrayLike,
    tag: ArrayLike,
    dwell: ArrayLike | None = None,
) -> Moves:
    """`Moves` of checked, read-only arrays."""
    kinds = np.array(kind, dtype=np.int8)
    feeds, tags = np.array(feed, dtype=np.float64), np.array(tag, dtype=np.int32)
    dwells = np.zeros(len(kinds)) if dwell is None else np.array(dwell, dtype=np.float64)
    for array in (kinds, feeds, tags, dwells):
        array.flags.writeable = False
    return Moves(kinds, as_points(end, 3), feeds, as_points(centre), tags, dwells)


def empty_moves() -> Moves:
    """No moves."""
    return make_moves([], [], [], [], [])


def plane_above(highest: float, settings: ProgramSettings) -> float:
    """Height of the clearance plane, mm: above zero and above the highest copper, rounded up."""
    step = 10.0**-settings.decimals
    return math.ceil((max(0.0, highest) + settings.clearance) / step - 1e-6) * step


def hop_above(highest: float, settings: ProgramSettings) -> float | None:
    """Height of hops, mm: above the highest copper, rounded up; None where none are wanted."""
    step = 10.0**-settings.decimals
    if settings.hop <= 0:
        return None
    return round(math.ceil((highest + settings.hop) / step - 1e-6) * step, settings.decimals)


def append(moves: Moves, kind: MoveKind, end: tuple[float, float, float], feed: float = 0.0) -> Moves:
    """One more straight move that belongs to no cut."""
    return make_moves(
        np.append(moves.kind, np.int8(kind)),
        np.vstack((moves.end, end)),
        np.append(moves.feed, feed),
        np.vstack((moves.centre, (0.0, 0.0))),
        np.append(moves.tag, BETWEEN),
        np.append(moves.dwell, 0.0),
    )
