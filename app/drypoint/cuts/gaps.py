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
from scipy.spatial import Delaunay

from drypoint.cuts.parts import Shapes
from drypoint.progress import Progress

OVERSHOOT = 4e-3
"""mm of clearance past the radius that centre lines run on, so that they meet the loops."""
JITTER = 2e-5
"""mm. Samples are moved by as much (seeded), since boards are full of points on one circle."""
LONGEST_STEP = 0.02
"""mm. A place is moved no farther at once while it is brought to the middle of a gap."""
MOST_CELLS = 2.0e7
"""Cells of the grid that finds samples near foreign nets: 160 MB."""
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
    """Samples every ``pitch`` mm at most, vertices included, of ``rings`` (``net`` (R,) owners)."""
    points, ring = shapely.get_coordinates(rings, return_index=True)
    inside = ring[1:] == ring[:-1]
    start, stop, of = points[:-1][inside], points[1:][inside], ring[:-1][inside]
    count = len(of)
    first = np.searchsorted(of, np.arange(len(rings)))
    last = np.searchsorted(of, np.arange(len(rings)), side="right") - 1
    before, after = np.arange(count) - 1, np.arange(count) + 1
    before[first], after[last] = last, first
    steps = np.maximum(1, np.ceil(np.hypot(*(stop - start).T) / pitch - 1e-9).astype(np.intp))
    segment = np.repeat(np.arange(count), steps)
    share = (np.arange(len(segment)) - np.repeat(np.cumsum(steps) - steps, steps)) / steps[segment]
    samples = start[segment] + share[:, None] * (stop - start)[segment]
    return Boundary(start, stop, before, after, net[of], samples, segment)


def near_foreign(points: NDArray[np.float64], net: NDArray[np.intp], reach: float) -> NDArray[np.intp]:
    """Indices of samples that may be within ``reach`` mm of a sample of another net.

    Coarse, but never misses one: nets are spread two cells each way on a grid of half the reach.
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


def trace_ridges(boundary: Boundary, reach: float, progress: Progress | None = None) -> Ridges:
    """Voronoi edges between samples of different nets where the clearance is below ``reach`` mm."""
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
    place, clearance = _recentre(places[first], sides_flat[first], boundary)
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
    places: NDArray[np.float64], sides: NDArray[np.intp], boundary: Boundary
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Places moved (Newton) until both boundaries are equally far; and that distance, mm."""
    at = places.copy()
    for _ in range(4):
        one, near = _nearest(at, sides[:, 0], boundary)
        two, far = _nearest(at, sides[:, 1], boundary)
        turn = (at - near) / np.maximum(one, 1e-9)[:, None] - (at - far) / np.maximum(two, 1e-9)[:, None]
        step = ((one - two) / np.maximum((turn**2).sum(axis=1), 0.1))[:, None] * turn
        size = np.hypot(*step.T)
        at -= step * np.minimum(1.0, LONGEST_STEP / np.maximum(size, 1e-12))[:, None]
    one, _ = _nearest(at, sides[:, 0], boundary)
    two, _ = _nearest(at, sides[:, 1], boundary)
    return at, np.minimum(one, two)


def _nearest(
    places: NDArray[np.float64], segment: NDArray[np.intp], boundary: Boundary
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Distance to the boundary near a segment (it and both neighbours), and the nearest point."""
    best = np.full(len(places), np.inf)
    foot = np.empty_like(places)
    for index in (segment, boundary.before[segment], boundary.after[segment]):
        start, span = boundary.start[index], boundary.stop[index] - boundary.start[index]
        square = np.maximum((span**2).sum(axis=1), 1e-18)
        share = np.clip(((places - start) * span).sum(axis=1) / square, 0.0, 1.0)
        point = start + share[:, None] * span
        distance = np.hypot(*(places - point).T)
        nearer = distance < best
        best[nearer], foot[nearer] = distance[nearer], point[nearer]
    return best, foot
