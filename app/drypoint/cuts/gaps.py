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

from drypoint.cuts.facing import facing_edges, near_foreign
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


@dataclass(frozen=True, slots=True, eq=False)
class Boundary:
    """Boundary segments and samples on them.

    ``start``, ``stop`` (S, 2) segment ends; ``before``, ``after`` (S,) neighbours in the ring;
    ``part`` and ``net`` (S,) whose they are; ``points`` (N, 2) samples and ``segment`` (N,) the segment
    of each.
    """

    start: NDArray[np.float64]
    stop: NDArray[np.float64]
    before: NDArray[np.intp]
    after: NDArray[np.intp]
    part: NDArray[np.intp]
    net: NDArray[np.intp]
    points: NDArray[np.float64]
    segment: NDArray[np.intp]


@dataclass(frozen=True, slots=True, eq=False)
class Ridges:
    """Edges of equal distance between two nets.

    ``nodes`` (K, 2) places with ``clearance`` (K,) mm to both nets; ``spots`` (K, 2, 2) the nearest
    places on two boundaries, and ``parts`` (K, 2) whose those are; ``edges`` (E, 2) node indices;
    ``pair`` (E, 2) sorted net indices.
    """

    nodes: NDArray[np.float64]
    clearance: NDArray[np.float64]
    spots: NDArray[np.float64]
    parts: NDArray[np.intp]
    edges: NDArray[np.intp]
    pair: NDArray[np.intp]

    def edge_clearance(self) -> NDArray[np.float64]:
        """(E,) smallest clearance of each edge."""
        return np.minimum(self.clearance[self.edges[:, 0]], self.clearance[self.edges[:, 1]])


def sample_boundary(rings: Shapes, part: NDArray[np.intp], owner: NDArray[np.intp], pitch: float) -> Boundary:
    """Samples of ``rings`` along their edges; each is of ``part`` (R,), whose net is its ``owner`` (P,).

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
    return Boundary(start, stop, before, after, part[of], owner[part[of]], samples, segment)


def trace_ridges(boundary: Boundary, reach: float, pitch: float, progress: Progress | None = None) -> Ridges:
    """Voronoi edges between samples of different nets where the clearance is below ``reach`` mm.

    ``pitch`` is that of the samples, mm: the nearest spot of a boundary lies no farther than that
    from the nearest sample.
    """
    net = boundary.net[boundary.segment]
    chosen = near_foreign(boundary.points, net, 2.0 * reach)
    if progress is not None:
        progress.step(0.1, "narrow gaps")
    samples = boundary.points[chosen]
    samples = samples + np.random.default_rng(1).uniform(-JITTER, JITTER, samples.shape)
    found = facing_edges(samples, net[chosen], reach)
    if len(found.sides) == 0:
        none = np.empty((0, 2), np.intp)
        return Ridges(np.empty((0, 2)), np.empty(0), np.empty((0, 2, 2)), none, none, none)
    if progress is not None:
        progress.step(0.6, "narrow gaps")
    sides = boundary.segment[chosen][found.sides]
    _, first, inverse = np.unique(found.nodes, return_index=True, return_inverse=True)
    settled = _recentre(found.ends.reshape(-1, 2)[first], sides[first // 2], boundary, pitch)
    return Ridges(*settled, inverse.reshape(-1, 2), np.sort(boundary.net[sides], axis=1))


def _recentre(
    places: NDArray[np.float64], sides: NDArray[np.intp], boundary: Boundary, span: float
) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64], NDArray[np.intp]]:
    """Places moved (Newton) until both boundaries are equally far, and what else `Ridges` says of nodes.

    Vectors are complex numbers here: half the work of arrays with two columns.
    """
    edges = _Edges.of(boundary)
    at = _complex(places).copy()
    one, two = edges.nearest_segment(at, sides[:, 0], span), edges.nearest_segment(at, sides[:, 1], span)
    spots = np.empty((len(at), 2), dtype=np.complex128)
    moving = np.arange(len(at))
    for turn in range(5):
        here = at[moving]
        if turn == 0:  # these are the nearest already
            from_one, from_two = edges.offset(here, one), edges.offset(here, two)
        else:
            from_one, one[moving] = edges.from_nearest(here, one[moving])
            from_two, two[moving] = edges.from_nearest(here, two[moving])
        spots[moving, 0], spots[moving, 1] = here - from_one, here - from_two
        near, far = np.abs(from_one), np.abs(from_two)
        lean = from_one / np.maximum(near, 1e-9) - from_two / np.maximum(far, 1e-9)
        step = lean * ((near - far) / np.maximum(lean.real**2 + lean.imag**2, 0.1))
        size = np.abs(step)
        further = size > SETTLED
        moving = moving[further]
        at[moving] -= step[further] * np.minimum(1.0, LONGEST_STEP / size[further])
    clearance = np.abs(spots - at[:, None]).min(axis=1)
    found = spots.view(np.float64).reshape(-1, 2, 2)
    return at.view(np.float64).reshape(-1, 2), clearance, found, boundary.part[np.column_stack((one, two))]


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
