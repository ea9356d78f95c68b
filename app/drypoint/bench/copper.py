"""The copper of one face of a sheet, and what has been cut from it.

The path each bit really took is kept, sampled finely, with the tip's depth below the true local top
of the copper; everything else (grooves, pieces, pictures) is computed from that.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, LineString, Point, Polygon

from drypoint.bench.pieces import Pieces
from drypoint.bench.shape import CutShape
from drypoint.geometry.points import Points, as_points

Floats = NDArray[np.float64]

COPPER = 0.035
"""Thickness of common copper cladding, mm."""
BOARD = 1.6
"""Thickness of common laminate, mm."""
WIDTH_STEP = 0.002
"""Grooves are chopped into pieces whose width varies by no more than this, mm."""
STILL = 0.02
"""A bit that stays within this has only gone up and down, mm."""
ROUND = 0.05
"""So much off a circle still looks round, mm."""
SECTORS = 12
"""A milled hole is open all round: its rim is seen in every one of so many directions."""
LARGEST_HOLE = 8.0
"""Way across of a bit that mills a hole; what is larger is no hole to aim at, mm."""
LONGEST_PIECE = 64
"""Samples in one piece; short pieces keep the exact geometry local and quick."""
ARC_SEGMENTS = 8
"""Segments a quarter turn of the ends of a groove."""


@dataclass(frozen=True, slots=True, eq=False)
class Sweep:
    """A stretch of executed path with its tip below the copper's top.

    ``path`` (N, 2) sheet frame; ``depth`` (N,) mm below the local top, all positive.
    """

    path: Points
    depth: Floats
    shape: CutShape


@dataclass(frozen=True, slots=True, eq=False)
class Groove:
    """A piece of a cut with one width at some level: (N, 2) path (N = 1: a spot) and width, mm."""

    path: Points
    width: float
    top: float
    """Width at the copper's top, mm."""


class Copper:
    """One face.

    Parameters
    ----------
    blank : Polygon
        Extent of the copper, sheet frame.
    thickness : float
        mm; 0 for a face without copper.
    """

    def __init__(self, blank: Polygon, thickness: float = COPPER) -> None:
        self.blank = blank
        self.thickness = thickness
        self.sweeps: list[Sweep] = []
        self._pieces = Pieces(blank)
        self._counted = 0

    def carve(self, path: Points, depth: Floats, shape: CutShape) -> None:
        """A bit has run along ``path`` (N, 2) with its tip ``depth`` (N,) below the top (any sign)."""
        for first, last in _stretches(depth > 0.0):
            self.sweeps.append(Sweep(as_points(path[first:last]), depth[first:last], shape))

    def grooves(self, level: float | None = None, start: int = 0) -> list[Groove]:
        """Pieces of nearly constant width at ``level`` below the top (default: the underside)."""
        below = self.thickness if level is None else level
        return [groove for sweep in self.sweeps[start:] for groove in _chop(sweep, below)]

    @property
    def pieces(self) -> Pieces:
        """The copper that is left at its underside, with everything cut so far taken away."""
        if self._counted < len(self.sweeps):
            self._pieces.remove([swept(groove) for groove in self.grooves(start=self._counted)])
            self._counted = len(self.sweeps)
        return self._pieces

    def holes(self, depth: float) -> list[tuple[float, float, float]]:
        """Centre and diameter of every hole drilled or milled in circles, at least ``depth`` mm deep."""
        deep = [sweep for sweep in self.sweeps if float(sweep.depth.max()) >= depth]
        found = [_round_hole(sweep, depth) for sweep in deep]
        return [hole for hole in found if hole is not None]


def swept(groove: Groove) -> Geometry:
    """The area a groove takes away."""
    line: Geometry = Point(groove.path[0]) if len(groove.path) == 1 else LineString(groove.path)
    return shapely.buffer(line, groove.width / 2.0, quad_segs=ARC_SEGMENTS)


def _round_hole(sweep: Sweep, depth: float) -> tuple[float, float, float] | None:
    """Centre and diameter of what a sweep has opened at ``depth``; None where that is no round hole."""
    low = sweep.depth >= depth
    path, width = sweep.path[low], float(sweep.shape.width(sweep.depth[low]).max())
    least, most = path.min(axis=0), path.max(axis=0)
    x, y = (least + most) / 2.0
    size = float((most - least).max())
    if size < STILL:
        return float(x), float(y), width
    away = np.hypot(path[:, 0] - x, path[:, 1] - y)
    rim = path[away > size / 2.0 - ROUND]
    way = np.arctan2(rim[:, 1] - y, rim[:, 0] - x)
    sectors = np.unique(np.floor(way / (2.0 * np.pi) * SECTORS))
    if size > LARGEST_HOLE or away.max() > size / 2.0 + ROUND or len(sectors) < SECTORS:
        return None
    return float(x), float(y), size + width


def _stretches(mask: NDArray[np.bool_]) -> list[tuple[int, int]]:
    """Half-open index ranges in which ``mask`` holds."""
    edges = np.flatnonzero(np.diff(np.concatenate(([0], mask.astype(np.int8), [0]))))
    return [(int(a), int(b)) for a, b in zip(edges[::2], edges[1::2], strict=True)]


def _chop(sweep: Sweep, level: float) -> list[Groove]:
    """One sweep at one level, as pieces that share their end points."""
    under = sweep.depth - level
    if not (under >= 0.0).any():
        return []
    if float(np.ptp(sweep.path, axis=0).max()) < 1e-6:
        deepest = np.array([under.max(), under.max() + level])
        width, top = (float(value) for value in sweep.shape.width(deepest))
        return [Groove(as_points(sweep.path[:1]), width, top)] if width else []
    path, under = _with_crossings(sweep.path, under)
    found: list[Groove] = []
    for first, last in _stretches(under >= 0.0):
        widths = sweep.shape.width(under[first:last])
        tops = sweep.shape.width(under[first:last] + level)
        for start, stop in _even(widths):
            piece = as_points(path[first + start : first + stop + 1])
            part = slice(start, stop + 1)
            found.append(Groove(piece, float(widths[part].mean()), float(tops[part].mean())))
    return [groove for groove in found if groove.width > 0.0]


def _even(widths: Floats) -> list[tuple[int, int]]:
    """First and last index of runs of nearly one width; runs share their ends."""
    last = len(widths) - 1
    if last == 0:
        return [(0, 0)]
    steps = np.flatnonzero(np.diff(np.round(widths / WIDTH_STEP))) + 1
    cuts = {0, last, *steps.tolist(), *range(LONGEST_PIECE, last, LONGEST_PIECE)}
    return list(itertools.pairwise(sorted(cuts)))


def _with_crossings(path: Points, under: Floats) -> tuple[Floats, Floats]:
    """The samples plus the spots between them where the tip crosses the level."""
    signs = under >= 0.0
    at = np.flatnonzero(signs[:-1] != signs[1:])
    if not len(at):
        return path, under
    share = under[at] / (under[at] - under[at + 1])
    spots = path[at] + share[:, None] * (path[at + 1] - path[at])
    return np.insert(path, at + 1, spots, axis=0), np.insert(under, at + 1, 0.0)
