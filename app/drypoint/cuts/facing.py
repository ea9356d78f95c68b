"""Lines of equal distance between samples of different nets, as far as they lie near both.

Where few samples lie near each other these edges of the Voronoi diagram are found one by one: what
lies nearer to a place than the two samples beside it is near them too, so that every other
neighbour just cuts off one end of their bisector. That needs no mesh of all samples, which takes
several times as long; the mesh is made where samples are many within the reach.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import maximum_filter, minimum_filter
from scipy.sparse import csr_array
from scipy.spatial import Delaunay, cKDTree

MOST_CELLS = 2.0e7
"""Cells of the grid that finds samples near foreign nets: 160 MB."""
MOST_PAIRS = 20_000_000
"""Pairs of samples near each other that are all looked at: 320 MB."""
MOST_NEIGHBOURS = 40.0
"""Neighbours of a sample, on average, up to which the edges are found one by one."""
MOST_SAMPLES = 2_000_000
"""Samples up to which three of their numbers make one of 64 bits."""
LOOKED_AT = 1000
"""Samples whose neighbours are counted to tell how many there are on average."""
AT_ONCE = 50_000
"""Neighbours of edges looked at together: they stay in the processor's cache."""
FARTHEST = 1e3
"""mm. Length of a Voronoi edge that would run to infinity; it is clipped to the radius anyway."""


@dataclass(frozen=True, slots=True, eq=False)
class Facing:
    """Voronoi edges between samples of different nets, clipped to a reach.

    ``ends`` (E, 2, 2) mm; ``sides`` (E, 2) the samples beside each; ``nodes`` (E, 2) numbers of
    the ends: equal where edges meet, an own one where an edge was clipped.
    """

    ends: NDArray[np.float64]
    sides: NDArray[np.intp]
    nodes: NDArray[np.intp]


def near_foreign(points: NDArray[np.float64], net: NDArray[np.intp], reach: float) -> NDArray[np.intp]:
    """Indices of samples within ``reach`` mm of a sample of another net, and some more.

    Coarsely, never missing one: nets are spread two cells each way on a grid of half the reach.
    """
    low = points.min(axis=0)
    size = points.max(axis=0) - low
    cell = max(reach / 2.0, float(np.sqrt(size[0] * size[1] / MOST_CELLS)))
    place = np.floor((points - low) / cell).astype(np.intp)
    shape = tuple(place.max(axis=0) + 1)
    first = np.full(shape, np.iinfo(np.int32).max, dtype=np.int32)
    last = np.full(shape, -1, dtype=np.int32)
    key = (place[:, 0], place[:, 1])
    order = np.argsort(net, kind="stable")
    last[place[order, 0], place[order, 1]] = net[order]
    first[place[order[::-1], 0], place[order[::-1], 1]] = net[order[::-1]]
    first = minimum_filter(first, size=5, mode="nearest")
    last = maximum_filter(last, size=5, mode="nearest")
    return np.flatnonzero(first[key] < last[key])


def facing_edges(samples: NDArray[np.float64], net: NDArray[np.intp], reach: float) -> Facing:
    """Voronoi edges between ``samples`` (N, 2) of different ``net`` (N,) within ``reach`` mm of them.

    No two samples may be in one place, and no four on one circle: scatter them a little.
    """
    if len(samples) < 2:
        return Facing(np.empty((0, 2, 2)), np.empty((0, 2), np.intp), np.empty((0, 2), np.intp))
    tree = cKDTree(samples, balanced_tree=False, compact_nodes=False)
    some = samples[:: max(1, len(samples) // LOOKED_AT)]
    crowd = float(np.mean(tree.query_ball_point(some, 2.0 * reach, return_length=True))) - 1.0
    if crowd * len(samples) > 2 * MOST_PAIRS:
        return _of_mesh(samples, net, reach)
    if crowd > MOST_NEIGHBOURS:
        pairs = tree.query_pairs(2.0 * reach, output_type="ndarray")
        chosen = np.unique(pairs[net[pairs[:, 0]] != net[pairs[:, 1]]])
        if len(chosen) > 3:
            found = _of_mesh(samples[chosen], net[chosen], reach)
            return Facing(found.ends, chosen[found.sides], found.nodes)
    return _one_by_one(samples, net, reach, tree)


@dataclass(slots=True, eq=False)
class _Bisectors:
    """Bisectors of samples ``a`` and ``b`` (E,): places ``middle + s * along`` from ``low`` to ``high``.

    ``square`` is half of their distance squared, ``limit`` the s at the reach, ``below`` and
    ``above`` the samples that cut the ends off, -1 for none.
    """

    a: NDArray[np.intp]
    b: NDArray[np.intp]
    middle: NDArray[np.complex128]
    along: NDArray[np.complex128]
    square: NDArray[np.float64]
    limit: NDArray[np.float64]
    low: NDArray[np.float64]
    high: NDArray[np.float64]
    below: NDArray[np.intp]
    above: NDArray[np.intp]

    @classmethod
    def of(
        cls, z: NDArray[np.complex128], a: NDArray[np.intp], b: NDArray[np.intp], reach: float
    ) -> _Bisectors:
        way = z[b] - z[a]
        apart = np.abs(way)
        square = apart**2 / 4.0
        limit = np.sqrt(np.maximum(reach**2 - square, 0.0))
        none = np.full(len(a), -1, dtype=np.intp)
        return cls(
            a,
            b,
            (z[a] + z[b]) / 2.0,
            1j * way / apart,
            square,
            limit,
            -limit,
            limit.copy(),
            none,
            none.copy(),
        )

    def some(self, chosen: NDArray[np.intp] | slice) -> _Bisectors:
        """Those that are chosen."""
        return _Bisectors(*(getattr(self, name)[chosen] for name in self.__slots__))

    def cut(
        self, row: NDArray[np.intp] | slice, other: NDArray[np.complex128]
    ) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """Slopes and the s at which samples at ``other`` become nearer: above where the slope is positive."""
        way, along = other - self.middle[row], self.along[row]
        slope = 2.0 * (way.real * along.real + way.imag * along.imag)
        excess = way.real**2 + way.imag**2 - self.square[row]
        return slope, excess / np.where(slope == 0.0, 1e-300, slope)


def _one_by_one(samples: NDArray[np.float64], net: NDArray[np.intp], reach: float, tree: cKDTree) -> Facing:
    """Edges between near samples of different nets, each cut by all samples near it."""
    count = len(samples)
    z = np.ascontiguousarray(samples).view(np.complex128).reshape(-1)
    foreign, near = _neighbours(tree, net, reach)
    lines = _Bisectors.of(z, foreign[:, 0], foreign[:, 1], reach)
    _cut_by_next(lines, z)  # most are gone after those next to their samples have cut them
    lines = lines.some(np.flatnonzero(lines.low < lines.high))
    first, beside = near.indptr.astype(np.intp), np.asarray(near.indices, dtype=np.int32)
    crowd = np.minimum(np.diff(first)[lines.a], np.diff(first)[lines.b])
    stops = np.searchsorted(np.cumsum(crowd), np.arange(AT_ONCE, crowd.sum() + AT_ONCE, AT_ONCE))
    start = 0
    for stop in (stops + 1).tolist():
        _cut_by_all(lines.some(slice(start, stop)), z, first, beside)
        start = stop
    lines = lines.some(np.flatnonzero(lines.low < lines.high))
    return _as_facing(lines, count)


def _neighbours(tree: cKDTree, net: NDArray[np.intp], reach: float) -> tuple[NDArray[np.intp], csr_array]:
    """Pairs (M, 2) of samples of different nets twice the reach apart at most, and all neighbours of each."""
    pairs = tree.query_pairs(2.0 * reach, output_type="ndarray")
    foreign = pairs[net[pairs[:, 0]] != net[pairs[:, 1]]]
    pairs = pairs.astype(np.int32)  # half of the memory of a large board is theirs
    count = len(net)
    both = (pairs.T.reshape(-1), pairs[:, ::-1].T.reshape(-1))
    return foreign, csr_array((np.ones(2 * len(pairs), dtype=np.int8), both), shape=(count, count))


def _cut_by_next(lines: _Bisectors, z: NDArray[np.complex128]) -> None:
    last = len(z) - 1
    for own in (lines.a, lines.b):
        for other in (np.minimum(own + 1, last), np.maximum(own - 1, 0)):
            slope, at = lines.cut(slice(None), z[other])
            real = (other != lines.a) & (other != lines.b)
            np.minimum(lines.high, at, out=lines.high, where=real & (slope > 0.0))
            np.maximum(lines.low, at, out=lines.low, where=real & (slope < 0.0))


def _cut_by_all(
    lines: _Bisectors, z: NDArray[np.complex128], first: NDArray[np.intp], beside: NDArray[np.int32]
) -> None:
    """Cut each line by every neighbour of that of its two samples that has fewer."""
    if len(lines.a) == 0:
        return
    size = np.diff(first)
    own = np.where(size[lines.b] < size[lines.a], lines.b, lines.a)
    crowd = size[own]
    start = np.cumsum(crowd) - crowd
    row = np.repeat(np.arange(len(own)), crowd)
    other = beside[np.arange(len(row)) + np.repeat(first[own] - start, crowd)]
    slope, at = lines.cut(row, z[other])
    real = (other != lines.a[row]) & (other != lines.b[row])
    above = np.where(real & (slope > 0.0), at, np.inf)
    below = np.where(real & (slope < 0.0), at, -np.inf)
    high, low = np.minimum.reduceat(above, start), np.maximum.reduceat(below, start)
    for value, extreme, by in ((above, high, lines.above), (below, low, lines.below)):
        hit = np.flatnonzero((value == extreme[row]) & np.isfinite(value))
        by[row[hit]] = other[hit]
    lines.above[high >= lines.limit] = -1
    lines.below[low <= -lines.limit] = -1
    lines.high[:] = np.minimum(high, lines.limit)
    lines.low[:] = np.maximum(low, -lines.limit)


def _as_facing(lines: _Bisectors, count: int) -> Facing:
    """Edges with numbered nodes: a node is known by the three samples that are equally near to it."""
    s = np.column_stack((lines.low, lines.high))
    ends = lines.middle[:, None] + s * lines.along[:, None]
    third = np.column_stack((lines.below, lines.above))
    three = np.sort(
        np.stack(np.broadcast_arrays(lines.a[:, None], lines.b[:, None], third), axis=-1).reshape(-1, 3),
        axis=1,
    )
    pair = three[:, 0] * count + three[:, 1]
    if count > MOST_SAMPLES:
        pair = np.unique(pair, return_inverse=True)[1].reshape(-1)
    node = np.unique(pair * count + three[:, 2], return_inverse=True)[1].reshape(-1)
    cut = third.reshape(-1) < 0
    node[cut] = len(node) + np.flatnonzero(cut)
    return Facing(
        np.ascontiguousarray(ends).view(np.float64).reshape(-1, 2, 2),
        np.column_stack((lines.a, lines.b)),
        node.reshape(-1, 2),
    )


def _of_mesh(samples: NDArray[np.float64], net: NDArray[np.intp], reach: float) -> Facing:
    """The same from a mesh of all samples."""
    mesh = Delaunay(samples)
    return _clip_edges(mesh, samples, _mesh_edges(mesh, net), reach)


def _mesh_edges(mesh: Delaunay, net: NDArray[np.intp]) -> NDArray[np.intp]:
    """(E, 5): triangle, neighbour (-1 outside), sample a, sample b, third sample of the triangle.

    Each edge between samples of different nets once.
    """
    corners, neighbours = mesh.simplices.astype(np.intp), mesh.neighbors.astype(np.intp)
    found = []
    triangle = np.arange(len(corners))
    for apex in range(3):
        a, b = corners[:, (apex + 1) % 3], corners[:, (apex + 2) % 3]
        other = neighbours[:, apex]
        keep = (net[a] != net[b]) & (other < triangle)
        found.append(np.column_stack((triangle[keep], other[keep], a[keep], b[keep], corners[keep, apex])))
    return np.concatenate(found)


def _centres(points: NDArray[np.float64], corners: NDArray[np.intp]) -> NDArray[np.float64]:
    """Circumcentres of triangles."""
    a = points[corners[:, 0]]
    b, c = points[corners[:, 1]] - a, points[corners[:, 2]] - a
    double = 2.0 * (b[:, 0] * c[:, 1] - b[:, 1] * c[:, 0])
    double = np.where(np.abs(double) < 1e-18, 1e-18, double)
    bb, cc = (b**2).sum(axis=1), (c**2).sum(axis=1)
    x = (c[:, 1] * bb - b[:, 1] * cc) / double
    y = (b[:, 0] * cc - c[:, 0] * bb) / double
    return np.asarray(a + np.column_stack((x, y)))


def _clip_edges(
    mesh: Delaunay, samples: NDArray[np.float64], edges: NDArray[np.intp], reach: float
) -> Facing:
    """Voronoi edges clipped to ``reach``.

    An end that is a circumcentre keeps its triangle's number, so that edges meet there; an end
    made by clipping gets a number of its own.
    """
    corners = mesh.simplices.astype(np.intp)
    triangle, other, a, b, third = edges.T
    centre = (samples[a] + samples[b]) / 2.0
    across = samples[b] - samples[a]
    half = np.hypot(*across.T) / 2.0
    along = np.column_stack((-across[:, 1], across[:, 0])) / (2.0 * half)[:, None]
    one = ((_centres(samples, corners[triangle]) - centre) * along).sum(axis=1)
    away = -np.sign(((samples[third] - centre) * along).sum(axis=1)) * FARTHEST
    two = np.where(other >= 0, ((_centres(samples, corners[other]) - centre) * along).sum(axis=1), away)
    limit = np.sqrt(np.maximum(reach**2 - half**2, 0.0))
    ok = (half < reach) & (np.minimum(one, two) < limit) & (np.maximum(one, two) > -limit)
    s = np.clip(np.column_stack((one, two)), -limit[:, None], limit[:, None])
    cut = s != np.column_stack((one, two))
    own = len(corners) + np.arange(2 * len(edges)).reshape(-1, 2)
    nodes = np.where(cut, own, np.column_stack((triangle, other)))
    ends = centre[:, None, :] + s[:, :, None] * along[:, None, :]
    return Facing(ends[ok], np.column_stack((a, b))[ok], nodes[ok])
