"""Bend paths onto the surface with as few extra points as a proven chord error allows.

Every segment is sampled exactly where it crosses the borders of the height grid's cells; inside a
cell the height along it is a quadratic, whose distance from its chord is greatest in the middle.
Points are then left out greedily: a chord grows as long as its slope stays within the cone of
slopes that pass every sample within the tolerance.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.errors import PlanError
from drypoint.geometry.points import Points, as_points
from drypoint.program.heights import HeightGrid
from drypoint.wording import say

IN_CELL = 0.2
"""Share of the tolerance that the quadratic inside a cell may use."""
LEAST = 0.25
"""Share of the tolerance that must be left for leaving points out."""


@dataclass(frozen=True, slots=True, eq=False)
class Warped:
    """Paths bent onto the surface.

    Attributes
    ----------
    points : (M, 3) machine frame
    source : (M,) int
        Vertex of the given path at which the segment a point lies on ends (its own index for a
        vertex).
    bound : float
        Proven bound on the error of height between points, mm, before rounding.
    """

    points: Points
    source: NDArray[np.int64]
    bound: float


def warp(
    path: Points, depth: NDArray[np.float64], first: NDArray[np.bool_], grid: HeightGrid, chord: float
) -> Warped:
    """Heights along paths: surface minus depth.

    Parameters
    ----------
    path : (N, 2) vertices of one or more paths behind each other, machine frame
    depth : (N,) below the copper, mm, linear between vertices
    first : (N,) whether a vertex starts a path (no segment leads to it)
    chord : float
        Tolerance, mm. The grid's own error comes out of it.

    Raises
    ------
    PlanError
        The surface is too rough for the tolerance.
    """
    inner, shares, bound = _extra_points(path, first, grid, chord)
    source = np.concatenate((np.arange(len(path)), inner))
    share = np.concatenate((np.ones(len(path)), shares))
    order = np.argsort(2.0 * source + share, kind="stable")
    source, share = source[order], share[order]
    before = np.where(first[source], source, source - 1)
    xy = path[before] + share[:, None] * (path[source] - path[before])
    below = depth[before] + share * (depth[source] - depth[before])
    z = grid.mean(xy) - below
    return Warped(as_points(np.column_stack((xy, z)), 3), source, bound)


def _extra_points(
    path: Points, first: NDArray[np.bool_], grid: HeightGrid, chord: float
) -> tuple[NDArray[np.int64], NDArray[np.float64], float]:
    """Vertex before which each extra point comes, its share of the segment, and the bound."""
    ends = np.flatnonzero(~first)
    budget = chord - grid.error
    if budget < LEAST * chord:
        raise PlanError(
            say("The surface is too rough to follow within {chord:.1f} µm.", chord=chord * 1000),
            "warp",
            say("Allow at least {error:.1f} µm of chord error.", error=2 * grid.error * 1000),
        )
    if not len(ends) or not np.ptp(grid.nodes):
        return np.zeros(0, dtype=np.int64), np.zeros(0), 0.0
    units = grid.units(path)
    segment, share = _samples(units[ends - 1], units[ends], grid, IN_CELL * budget)
    a, b = units[ends - 1][segment], units[ends][segment]
    height = grid.at_units(a + share[:, None] * (b - a))
    keep = _thin(segment, share, height, (1 - IN_CELL) * budget)
    return ends[segment[keep]], share[keep], chord


def _samples(
    a: NDArray[np.float64], b: NDArray[np.float64], grid: HeightGrid, tolerance: float
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Samples, sorted by segment and share, between which the height is linear to ``tolerance``."""
    count = len(a)
    segments, shares = [np.repeat(np.arange(count), 2)], [np.tile([0.0, 1.0], count)]
    for axis in (0, 1):
        index, share = _crossings(a[:, axis], b[:, axis])
        segments.append(index)
        shares.append(share)
    segment, share = np.concatenate(segments), np.concatenate(shares)
    order = np.argsort(2.0 * segment + share, kind="stable")
    segment, share = segment[order], share[order]
    # inside a cell: the quadratic's deviation is that of its middle; n parts divide it by n²
    same = segment[1:] == segment[:-1]
    piece = np.flatnonzero(same)
    ends = [share[piece], (share[piece] + share[piece + 1]) / 2, share[piece + 1]]
    start, way = a[segment[piece]], (b - a)[segment[piece]]
    low, middle, high = (grid.at_units(start + t[:, None] * way) for t in ends)
    parts = np.ceil(np.sqrt(np.abs(middle - (low + high) / 2) / tolerance)).astype(np.int64)
    more = np.flatnonzero(parts > 1)
    repeat = parts[more] - 1
    which = np.repeat(more, repeat)
    step = np.arange(len(which)) - np.repeat(np.cumsum(repeat) - repeat, repeat) + 1
    fraction = step / parts[which]
    extra = ends[0][which] + fraction * (ends[2][which] - ends[0][which])
    segment = np.concatenate((segment, segment[piece[which]]))
    share = np.concatenate((share, extra))
    order = np.argsort(2.0 * segment + share, kind="stable")
    return segment[order], share[order]


def _crossings(
    a: NDArray[np.float64], b: NDArray[np.float64]
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Where each segment crosses whole numbers strictly inside: segment and share."""
    low, high = np.minimum(a, b), np.maximum(a, b)
    start = np.floor(low).astype(np.int64) + 1
    counts = np.maximum(0, np.ceil(high).astype(np.int64) - start)
    index = np.repeat(np.arange(len(a)), counts)
    step = np.arange(len(index)) - np.repeat(np.cumsum(counts) - counts, counts)
    line = start[index] + step
    return index, (line - a[index]) / (b[index] - a[index])


def _thin(
    segment: NDArray[np.int64], share: NDArray[np.float64], height: NDArray[np.float64], tolerance: float
) -> NDArray[np.int64]:
    """Indices of the samples inside segments that must stay."""
    begin = np.flatnonzero(np.concatenate(([True], segment[1:] != segment[:-1])))
    stop = np.concatenate((begin[1:], [len(segment)]))
    straight = height[begin][segment] + share * (height[stop - 1] - height[begin])[segment]
    worst = np.maximum.reduceat(np.abs(height - straight), begin)
    kept: list[int] = []
    for index in np.flatnonzero(worst > tolerance):
        i, j = int(begin[index]), int(stop[index])
        kept.extend(i + k for k in _cone(share[i:j].tolist(), height[i:j].tolist(), tolerance))
    return np.array(kept, dtype=np.int64)


def _cone(share: list[float], height: list[float], tolerance: float) -> list[int]:
    """Samples to keep of one segment, its ends left out: greedy, one pass."""
    kept: list[int] = []
    anchor, low, high = 0, -np.inf, np.inf
    k = 1
    while k < len(share):
        run = share[k] - share[anchor]
        if run <= 0:
            k += 1
            continue
        slope = (height[k] - height[anchor]) / run
        if low <= slope <= high:
            low = max(low, slope - tolerance / run)
            high = min(high, slope + tolerance / run)
            k += 1
        else:
            # the sample before was still inside the cone, so the chord may end there
            anchor, low, high = k - 1, -np.inf, np.inf
            kept.append(anchor)
    return kept
