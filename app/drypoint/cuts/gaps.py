"""Centre lines of gaps narrower than the cut: the path of least bite, shared by both nets.

The line of equal distance from two nets is traced by a Voronoi diagram of samples of their
boundaries and then moved onto the true line, whose distance is measured from the boundary's
segments themselves. Half the gap is the clearance; radius minus clearance is the bite.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.ndimage import maximum_filter, minimum_filter
from scipy.spatial import Delaunay, cKDTree

from drypoint.cuts.parts import Shapes
from drypoint.progress import Progress

OVERSHOOT = 4e-3
"""mm of clearance past the radius that centre lines run on, so that they meet the loops."""
JITTER = 2e-5
"""mm. Samples are moved by as much (seeded), since boards are full of points on one circle."""
CROWDED = 0.6
"""Share of the pitch below which neighbouring samples are thinned out."""
SETTLED = 1e-7
"""mm. A place that would move less stays."""
MOST_SEGMENTS = 12
"""Segments looked at on either side of a sample for the nearest spot."""
LONGEST_STEP = 0.02
"""mm. A place is moved no farther at once while it is brought to the middle of a gap."""
MOST_CELLS = 2.0e7
"""Cells of the grid that finds samples near foreign nets: 160 MB."""
MOST_PAIRS = 20_000_000
"""Pairs of samples near each other that are all looked at: 320 MB."""
FARTHEST = 1e3
"""mm. Length of a Voronoi edge that would run to infinity; it is clipped to the radius anyway."""


@dataclass(frozen=True, slots=True, eq=False)
class Boundary:
    """Boundary segments and samples on them.

    ``start``, ``stop`` (S, 2) segment ends; ``before``, ``after`` (S,) neighbours in the ring;
    ``net`` (S,) owner; ``points`` (N, 2) samples and ``segment`` (N,) the segment of each.
    """

    start: NDArray[np.float64]
    stop: NDArray[np.float64]
    before: NDArray[np.intp]
    after: NDArray[np.intp]
    net: NDArray[np.intp]
    points: NDArray[np.float64]
    segment: NDArray[np.intp]


@dataclass(frozen=True, slots=True, eq=False)
class Ridges:
    """Edges of equal distance between two nets.

    ``nodes`` (K, 2) places with ``clearance`` (K,) mm to both nets; ``edges`` (E, 2) node
    indices; ``pair`` (E, 2) sorted net indices.
    """

    nodes: NDArray[np.float64]
    clearance: NDArray[np.float64]
    edges: NDArray[np.intp]
    pair: NDArray[np.intp]

    def edge_clearance(self) -> NDArray[np.float64]:
        """(E,) smallest clearance of each edge."""
        return np.minimum(self.clearance[self.edges[:, 0]], self.clearance[self.edges[:, 1]])


def sample_boundary(rings: Shapes, net: NDArray[np.intp], pitch: float) -> Boundary:
    """Samples of ``rings`` (``net`` (R,) owners) along their edges.

    Edges longer than ``pitch`` mm are divided; of vertices closer together than `CROWDED` of it
    (the chords of arcs) only some are kept. No two neighbouring samples are more than
    ``(1 + CROWDED) * pitch`` apart.
    """
    points, ring = shapely.get_coordinates(rings, return_index=True)
    inside = ring[1:] == ring[:-1]
    start, stop, of = points[:-1][inside], points[1:][inside], ring[:-1][inside]
    count = len(of)
    first = np.searchsorted(of, np.arange(len(rings)))
    last = np.searchsorted(of, np.arange(len(rings)), side="right") - 1
    before, after = np.arange(count) - 1, np.arange(count) + 1
    before[first], after[last] = last, first
    size = np.hypot(*(stop - start).T)
    steps = np.maximum(1, np.ceil(size / pitch - 1e-9).astype(np.intp))
    segment = np.repeat(np.arange(count), steps)
    share = (np.arange(len(segment)) - np.repeat(np.cumsum(steps) - steps, steps)) / steps[segment]
    along = (np.cumsum(size) - size)[segment] + share * size[segment]
    stretch = np.floor(along / (CROWDED * pitch))
    new = np.concatenate(([True], (stretch[1:] != stretch[:-1]) | (of[segment[1:]] != of[segment[:-1]])))
    segment, share = segment[new], share[new]
    samples = start[segment] + share[:, None] * (stop - start)[segment]
    return Boundary(start, stop, before, after, net[of], samples, segment)


def near_foreign(points: NDArray[np.float64], net: NDArray[np.intp], reach: float) -> NDArray[np.intp]:
    """Indices of samples within ``reach`` mm of a sample of another net, and perhaps some more.

    First coarsely, never missing one: nets are spread two cells each way on a grid of half the
    reach. Then exactly, unless there are too many pairs.
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
    return _within(points, net, np.flatnonzero(first[key] < last[key]), reach)


def _within(
    points: NDArray[np.float64], net: NDArray[np.intp], chosen: NDArray[np.intp], reach: float
) -> NDArray[np.intp]:
    """Those of the chosen samples that are within ``reach`` mm of one of another net."""
    tree = cKDTree(points[chosen])
    if tree.count_neighbors(tree, reach) > MOST_PAIRS:
        return chosen
    pairs = tree.query_pairs(reach, output_type="ndarray")
    foreign = net[chosen[pairs[:, 0]]] != net[chosen[pairs[:, 1]]]
    return np.asarray(chosen[np.unique(pairs[foreign])])


def trace_ridges(boundary: Boundary, reach: float, pitch: float, progress: Progress | None = None) -> Ridges:
    """Voronoi edges between samples of different nets where the clearance is below ``reach`` mm.

    ``pitch`` is that of the samples, mm: the nearest spot of a boundary lies no farther than that
    from the nearest sample.
    """
    chosen = near_foreign(boundary.points, boundary.net[boundary.segment], 2.0 * reach)
    empty = Ridges(np.empty((0, 2)), np.empty(0), np.empty((0, 2), np.intp), np.empty((0, 2), np.intp))
    if len(chosen) < 4:
        return empty
    samples = boundary.points[chosen]
    samples = samples + np.random.default_rng(1).uniform(-JITTER, JITTER, samples.shape)
    if progress is not None:
        progress.step(0.1, "narrow gaps")
    mesh = Delaunay(samples)
    if progress is not None:
        progress.step(0.6, "narrow gaps")
    segment = boundary.segment[chosen]
    edges = _mesh_edges(mesh, boundary.net[segment])
    if len(edges) == 0:
        return empty
    ends, sides, nodes, ok = _clip_edges(mesh, samples, edges, reach)
    nodes_at, inverse = np.unique(nodes[ok].reshape(-1), return_inverse=True)
    places = ends[ok].reshape(-1, 2)
    sides_flat = np.repeat(segment[sides[ok]], 2, axis=0)
    first = np.full(len(nodes_at), -1, dtype=np.intp)
    first[inverse[::-1]] = np.arange(len(inverse))[::-1]
    place, clearance = _recentre(places[first], sides_flat[first], boundary, pitch)
    pair = np.sort(boundary.net[segment[sides[ok]]], axis=1)
    return Ridges(place, clearance, inverse.reshape(-1, 2), pair)


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
) -> tuple[NDArray[np.float64], NDArray[np.intp], NDArray[np.intp], NDArray[np.bool_]]:
    """Ends (E, 2, 2) of Voronoi edges clipped to ``reach``, their samples, node numbers, and which remain.

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
    return ends, np.column_stack((a, b)), nodes, ok


def _recentre(
    places: NDArray[np.float64], sides: NDArray[np.intp], boundary: Boundary, span: float
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Places moved (Newton) until both boundaries are equally far; and that distance, mm.

    Vectors are complex numbers here: half the work of arrays with two columns.
    """
    edges = _Edges.of(boundary)
    at = _complex(places)
    one, two = edges.nearest_segment(at, sides[:, 0], span), edges.nearest_segment(at, sides[:, 1], span)
    clearance = np.empty(len(at))
    moving = np.arange(len(at))
    for _ in range(5):
        here = at[moving]
        from_one, one[moving] = edges.from_nearest(here, one[moving])
        from_two, two[moving] = edges.from_nearest(here, two[moving])
        near, far = np.abs(from_one), np.abs(from_two)
        clearance[moving] = np.minimum(near, far)
        turn = from_one / np.maximum(near, 1e-9) - from_two / np.maximum(far, 1e-9)
        step = turn * ((near - far) / np.maximum(turn.real**2 + turn.imag**2, 0.1))
        size = np.abs(step)
        further = size > SETTLED
        moving = moving[further]
        at[moving] -= step[further] * np.minimum(1.0, LONGEST_STEP / size[further])
    return np.column_stack((at.real, at.imag)), clearance


def _complex(points: NDArray[np.float64]) -> NDArray[np.complex128]:
    return np.ascontiguousarray(points, dtype=np.float64).view(np.complex128).reshape(-1)


@dataclass(frozen=True, slots=True, eq=False)
class _Edges:
    """Boundary segments as complex numbers, with what their distances need."""

    start: NDArray[np.complex128]
    span: NDArray[np.complex128]
    square: NDArray[np.float64]
    before: NDArray[np.intp]
    after: NDArray[np.intp]

    @classmethod
    def of(cls, boundary: Boundary) -> _Edges:
        start = _complex(boundary.start)
        span = _complex(boundary.stop) - start
        square = np.maximum(span.real**2 + span.imag**2, 1e-18)
        return cls(start, span, square, boundary.before, boundary.after)

    def offset(self, at: NDArray[np.complex128], segment: NDArray[np.intp]) -> NDArray[np.complex128]:
        """Vectors from the nearest spots of the segments to the places."""
        span, off = self.span[segment], at - self.start[segment]
        share = np.clip((off.real * span.real + off.imag * span.imag) / self.square[segment], 0.0, 1.0)
        return off - share * span

    def nearest_segment(
        self, at: NDArray[np.complex128], segment: NDArray[np.intp], span: float
    ) -> NDArray[np.intp]:
        """The nearest of the segments within ``span`` mm along the boundary of each place's own."""
        found = segment.copy()
        best = np.abs(self.offset(at, segment))
        for beside in (self.before, self.after):
            row, index = np.arange(len(at)), beside[segment]
            covered = np.zeros(len(at))
            for _ in range(MOST_SEGMENTS):
                away = np.abs(self.offset(at[row], index))
                nearer = away < best[row]
                best[row[nearer]], found[row[nearer]] = away[nearer], index[nearer]
                covered = covered + np.sqrt(self.square[index])
                more = covered < span
                row, index, covered = row[more], beside[index[more]], covered[more]
                if len(row) == 0:
                    break
        return found

    def from_nearest(
        self, at: NDArray[np.complex128], segment: NDArray[np.intp]
    ) -> tuple[NDArray[np.complex128], NDArray[np.intp]]:
        """Vector from the nearest spot of a segment or its neighbours, and which of them it is on."""
        best, found = self.offset(at, segment), segment
        for index in (self.before[segment], self.after[segment]):
            other = self.offset(at, index)
            nearer = np.abs(other) < np.abs(best)
            best, found = np.where(nearer, other, best), np.where(nearer, index, found)
        return best, found
