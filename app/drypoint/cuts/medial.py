"""Centre lines of drawn strokes, from nothing but the filled shape they make together.

The Voronoi diagram of samples of the boundary holds the line of equal distance from both sides of
every stroke. An edge of it belongs to the centre line where the two boundary samples beside it lie
nearly opposite; where they lie on the same side, or round a corner, it is a twig.
"""

from __future__ import annotations

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import Voronoi
from shapely import Geometry

from drypoint.geometry.points import Points, as_points

OPPOSITE = 0.85
"""Distance of the two samples beside an edge over the local width: 1 opposite each other, 0.71 in a
right corner."""
JITTER = 2e-5
"""mm. Samples are moved by as much (seeded), since drawings are full of points on one circle."""
SAMPLES_ACROSS = 3.0
"""Samples along the boundary per width of the narrowest stroke that is looked for."""
LEAN = 0.005
"""mm by which centre lines are simplified."""


def centre_lines_of(shape: Geometry, narrowest: float) -> tuple[Points, ...]:
    """Centre lines of the strokes of a filled shape.

    Parameters
    ----------
    shape : (multi)polygon, any frame, mm
    narrowest : float
        Width of the narrowest stroke that matters, mm.

    Returns
    -------
    (N, 2) lines, closed when first equals last. Blobs that are no longer than they are wide have none.
    """
    samples = _samples(shape, narrowest / SAMPLES_ACROSS)
    if len(samples) < 4:
        return ()
    diagram = Voronoi(samples)
    ends = np.asarray(diagram.ridge_vertices, dtype=np.intp)
    sides = diagram.ridge_points
    finite = (ends >= 0).all(axis=1)
    ends, sides = ends[finite], sides[finite]
    places = diagram.vertices
    first, second = samples[sides[:, 0]], samples[sides[:, 1]]
    middle = (places[ends[:, 0]] + places[ends[:, 1]]) / 2.0
    across = np.hypot(*(first - second).T)
    width = 2.0 * np.hypot(*(middle - first).T)
    good = np.flatnonzero((across > OPPOSITE * width) & (across > narrowest / 2.0))
    shapely.prepare(shape)
    ends = ends[good]
    within = shapely.contains_xy(shape, places[ends[:, 0]]) & shapely.contains_xy(shape, places[ends[:, 1]])
    return _joined(places[ends[within]])


def _samples(shape: Geometry, pitch: float) -> NDArray[np.float64]:
    """(N, 2) different places on the boundary, ``pitch`` mm apart at most, a little scattered."""
    dense = shapely.segmentize(shape, pitch)
    points = np.unique(np.round(shapely.get_coordinates(dense), 6), axis=0)
    scatter = np.random.default_rng(1).uniform(-JITTER, JITTER, points.shape)
    return np.asarray(points + scatter, dtype=np.float64)


def _joined(edges: NDArray[np.float64]) -> tuple[Points, ...]:
    """(E, 2, 2) edges joined end to end."""
    if not len(edges):
        return ()
    moved = (edges[:, 0] != edges[:, 1]).any(axis=1)
    merged = shapely.line_merge(shapely.multilinestrings(shapely.linestrings(edges[moved])))
    lines = shapely.simplify(shapely.get_parts(merged), LEAN)
    return tuple(as_points(shapely.get_coordinates(line)) for line in lines if not line.is_empty)
