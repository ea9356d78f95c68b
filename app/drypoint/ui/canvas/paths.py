"""Very many polylines made ready to be drawn at any scale.

A million segments cannot be stroked anew for each frame. So the paths are kept at several levels
of detail, each coarser level without the vertices that cannot be told apart at the scale it
serves, and every level is cut into short chunks with boxes, so that a tile of the picture finds
what crosses it in one vectorised comparison. Nothing here knows Qt; building may run in any thread.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.geometry.points import Points

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

FINEST = 0.008
"""Tolerance of the first simplified level, mm; each further one doubles it."""
LEVELS = 10
CHUNK = 96
"""Segments in a chunk."""
SEEN = 0.4
"""Largest error of a drawn line, px."""


@dataclass(frozen=True, slots=True, eq=False)
class Level:
    """All paths at one level of detail.

    Attributes
    ----------
    points : (N, 2) mm
    along : (N,) mm
        Length travelled up to each vertex, counted over all paths one after the other.
    starts, stops : (C,)
        Vertices of each chunk; neighbours share one vertex.
    boxes : (C, 4)
        x0, y0, x1, y1 of each chunk, mm.
    line : (C,)
        Path each chunk belongs to.
    """

    tolerance: float
    points: Points
    along: Floats
    starts: Ints
    stops: Ints
    boxes: Floats
    line: Ints

    def crossing(self, x0: float, y0: float, x1: float, y1: float) -> Ints:
        """Chunks whose boxes meet a rectangle."""
        box = self.boxes
        meets = (box[:, 0] <= x1) & (box[:, 2] >= x0) & (box[:, 1] <= y1) & (box[:, 3] >= y0)
        return np.flatnonzero(meets)

    def runs(self, chunks: Ints) -> list[tuple[int, int]]:
        """First and last-but-one vertices of the chunks, neighbours joined into one run."""
        if not len(chunks):
            return []
        broken = (np.diff(chunks) != 1) | (np.diff(self.line[chunks]) != 0)
        first = np.concatenate(([0], np.flatnonzero(broken) + 1))
        last = np.concatenate((np.flatnonzero(broken), [len(chunks) - 1]))
        return list(zip(self.starts[chunks[first]].tolist(), self.stops[chunks[last]].tolist(), strict=True))


@dataclass(frozen=True, slots=True, eq=False)
class PathSet:
    """Polylines ready to be drawn; see `path_set`.

    Attributes
    ----------
    levels : tuple of Level
        Finest (nothing left out) first.
    values : mapping of str to (N,) array
        What is known at each vertex of the finest level, by name (depth, probability...).
    labels : tuple of str
        A name for each path, or empty.
    """

    levels: tuple[Level, ...]
    offsets: Ints
    values: Mapping[str, Floats] = field(default_factory=dict)
    labels: tuple[str, ...] = ()

    @property
    def length(self) -> float:
        """Length of all paths, mm."""
        along = self.levels[0].along
        return float(along[-1]) if len(along) else 0.0

    @property
    def segments(self) -> int:
        """Number of segments at full detail."""
        return int(len(self.levels[0].points) - max(len(self.offsets) - 1, 0))

    @property
    def bounds(self) -> tuple[float, float, float, float] | None:
        """x0, y0, x1, y1, mm; None if empty."""
        box = self.levels[0].boxes
        if not len(box):
            return None
        low, high = box[:, :2].min(axis=0), box[:, 2:].max(axis=0)
        return float(low[0]), float(low[1]), float(high[0]), float(high[1])

    def level(self, scale: float) -> Level:
        """The coarsest level that looks the same at ``scale`` px/mm."""
        chosen = self.levels[0]
        for level in self.levels[1:]:
            if level.tolerance * scale > SEEN:
                break
            chosen = level
        return chosen

    def starts_at(self, line: int) -> float:
        """Length travelled when path ``line`` begins, mm."""
        return float(self.levels[0].along[self.offsets[line]])

    def line_at(self, travelled: float) -> int:
        """Path that is being drawn after ``travelled`` mm."""
        begin = self.levels[0].along[self.offsets[:-1]]
        return int(np.clip(np.searchsorted(begin, travelled, side="right") - 1, 0, len(begin) - 1))

    def place_at(self, travelled: float) -> tuple[float, float]:
        """Where the drawing is after ``travelled`` mm."""
        level = self.levels[0]
        x = np.interp(travelled, level.along, level.points[:, 0])
        y = np.interp(travelled, level.along, level.points[:, 1])
        return float(x), float(y)


def path_set(
    lines: Sequence[ArrayLike],
    *,
    values: Mapping[str, Floats] | None = None,
    labels: Sequence[str] = (),
) -> PathSet:
    """Make polylines ready to be drawn.

    Parameters
    ----------
    lines : sequence of (N, 2) arrays
        mm, board frame; those with fewer than two vertices are left out of the drawing.
    values : mapping of str to array, optional
        One value per vertex of all lines, concatenated.
    labels : sequence of str, optional
        One per line.
    """
    arrays = [np.asarray(line, dtype=np.float64)[:, :2] for line in lines]
    counts = np.array([len(a) for a in arrays], dtype=np.int64)
    points = np.concatenate(arrays) if arrays else np.zeros((0, 2))
    return path_set_flat(points, np.concatenate(([0], np.cumsum(counts))), values=values, labels=labels)


def path_set_flat(
    points: Points,
    offsets: Ints,
    *,
    values: Mapping[str, Floats] | None = None,
    labels: Sequence[str] = (),
) -> PathSet:
    """The same from one (N, 2) array and the (L + 1,) vertices at which the paths begin and end."""
    points = np.ascontiguousarray(points, dtype=np.float64)
    line = np.repeat(np.arange(len(offsets) - 1), np.diff(offsets))
    steps = np.zeros(len(points))
    if len(points) > 1:
        steps[1:] = np.hypot(*np.diff(points, axis=0).T)
        steps[offsets[1:-1][offsets[1:-1] < len(points)]] = 0.0  # no length between paths
    along = np.cumsum(steps)
    levels = [_level(0.0, points, along, line)]
    tolerance = FINEST
    for _ in range(LEVELS):
        kept = _simplified(points, line, tolerance)
        if kept.sum() < 0.8 * len(points):
            points, along, line = points[kept], along[kept], line[kept]
            levels.append(_level(tolerance, points, along, line))
        tolerance *= 2.0
    return PathSet(tuple(levels), np.asarray(offsets), dict(values or {}), tuple(labels))


def _ends(line: Ints) -> NDArray[np.bool_]:
    """First and last vertices of each path."""
    ends = np.ones(len(line), dtype=bool)
    ends[1:-1] = (line[1:-1] != line[:-2]) | (line[1:-1] != line[2:])
    return ends


def _simplified(points: Points, line: Ints, tolerance: float) -> NDArray[np.bool_]:
    """Which vertices to keep: none that shares its cell with the one before, none near a chord."""
    if len(points) < 3:
        return np.ones(len(points), dtype=bool)
    kept = _ends(line)
    cell = np.floor(points / tolerance)
    kept[1:] |= (np.diff(cell, axis=0) != 0.0).any(axis=1)
    index = np.flatnonzero(kept)
    for _ in range(3):
        if len(index) < 3:
            break
        p, ends = points[index], _ends(line[index])
        chord, arm = p[2:] - p[:-2], p[1:-1] - p[:-2]
        area = np.abs(chord[:, 0] * arm[:, 1] - chord[:, 1] * arm[:, 0])
        square, share = (chord**2).sum(axis=1), (arm * chord).sum(axis=1)
        near = area <= 0.25 * tolerance * np.sqrt(square)
        inside = (share >= 0.0) & (share <= square) & (square > 0.0)  # else a spike would be lost
        drop = np.zeros(len(index), dtype=bool)
        drop[1:-1] = near & inside & ~ends[1:-1]
        drop[::2] = False  # neighbours never go at once, so no chord spans more than two steps
        if not drop.any():
            break
        index = index[~drop]
    kept[:] = False
    kept[index] = True
    return kept


def _level(tolerance: float, points: Points, along: Floats, line: Ints) -> Level:
    none = np.zeros(0, dtype=np.int64)
    if not len(points):
        return Level(tolerance, points, along, none, none, np.zeros((0, 4)), none)
    begin = np.concatenate(([0], np.flatnonzero(np.diff(line)) + 1))
    end = np.concatenate((begin[1:], [len(points)]))
    usable = end - begin >= 2
    begin, end = begin[usable], end[usable]
    if not len(begin):
        return Level(tolerance, points, along, none, none, np.zeros((0, 4)), none)
    pieces = -(-(end - begin - 1) // CHUNK)
    owner = np.repeat(np.arange(len(begin)), pieces)
    number = np.arange(len(owner)) - np.repeat(np.cumsum(pieces) - pieces, pieces)
    starts = begin[owner] + number * CHUNK
    stops = np.minimum(starts + CHUNK + 1, end[owner])
    low = np.minimum(np.minimum.reduceat(points, starts), points[stops - 1])
    high = np.maximum(np.maximum.reduceat(points, starts), points[stops - 1])
    return Level(tolerance, points, along, starts, stops, np.hstack((low, high)), line[starts])
