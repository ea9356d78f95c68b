"""Taking copper away: slivers that belong to no net, and whole areas on request."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
import shapely
from numpy.typing import ArrayLike
from shapely import Geometry

from drypoint.cuts.grooves import SHORTEST, loop_rings
from drypoint.cuts.islands import pieces
from drypoint.cuts.offsets import QUAD_SEGS, as_paths, clip_lines
from drypoint.cuts.parts import Shapes, copper_parts, explode
from drypoint.errors import PlanError
from drypoint.geometry.points import Points
from drypoint.progress import Progress

ROUNDS = 400
"""Times that what is left of a sliver is cut round again at most."""
MOST_LOOPS = 2000
"""Loops of clearing at most: more means the cut is far too narrow for the area."""
INSET = 0.3
"""Widths inside the edge of a sliver where it is cut round: near enough to reach into its corners."""
DUST = 1e-4
"""mm². Smaller copper is dust of the computation."""


def sliver_paths(
    nets: Mapping[str, Geometry],
    lines: Sequence[Points],
    widths: ArrayLike,
    width: float,
    *,
    largest: float,
    window: Geometry,
    keep: Geometry | None = None,
    progress: Progress | None = None,
) -> tuple[Points, ...]:
    """Paths that mill away the pieces of copper without net that ``lines`` leave standing.

    All lie inside those pieces, so that they come no nearer to a net.

    Parameters
    ----------
    widths : float or (len(lines),) array
        Width of what is cut already, at the copper's underside, mm.
    width : float
        Width of the new cut there, mm.
    largest : float
        Pieces up to this area are removed, mm².
    window : geometry
        The blank or board within which copper is looked at.
    keep : geometry, optional
        Copper that stays though it has no net.
    """
    loose = pieces(lines, widths, window)
    area = shapely.area(loose)
    loose = loose[(area <= largest) & (area > DUST)]
    parts = copper_parts(nets, simplify=0.0)
    held = np.unique(shapely.STRtree(parts.shapes).query(loose, predicate="intersects")[0])
    loose = np.delete(loose, held)
    if keep is not None and len(loose):
        loose = loose[~shapely.intersects(loose, keep)]
    found: list[Points] = []
    for number in range(ROUNDS):
        if progress is not None:
            progress.step(min(0.9, number / 20.0), "slivers")
        if len(loose) == 0:
            break
        rings, of = _rounds(loose, width)
        found += as_paths(rings)
        cut = shapely.buffer(rings, width / 2.0, quad_segs=QUAD_SEGS)
        gone = np.array([shapely.union_all(cut[of == k]) for k in range(len(loose))], dtype=object)
        loose = explode(shapely.difference(loose, gone))[0]
        loose = loose[shapely.area(loose) > DUST]
    return tuple(found)


def _rounds(loose: Shapes, width: float) -> tuple[Shapes, np.ndarray[tuple[int], np.dtype[np.intp]]]:
    """Rings a little inside of each piece, or its own edge where it is too thin, and the piece of each."""
    inner, of = explode(shapely.buffer(loose, -INSET * width, quad_segs=2))
    rings, index = shapely.get_rings(inner, return_index=True)
    thin = np.setdiff1d(np.arange(len(loose)), of)
    edges = shapely.get_exterior_ring(loose[thin])
    every = shapely.simplify(np.concatenate((rings, edges)), 1e-3)
    return every, np.concatenate((of[index], thin))


def clear_area(
    nets: Mapping[str, Geometry],
    width: float,
    area: Geometry,
    *,
    overlap: float = 0.3,
    clearance: float | None = None,
    done: Sequence[Points] = (),
    progress: Progress | None = None,
) -> tuple[Points, ...]:
    """Paths that take away all copper of ``area`` that belongs to no net.

    Loops lie ``width * (1 - overlap)`` apart, from the nets outwards; with an overlap of half or
    more they cover everything, with less what stays between them is found and cut too.

    Parameters
    ----------
    width : float
        Of the cut at the copper's underside, mm.
    clearance : float, optional
        Least distance of a path from the nets, mm; half of the width if not given.
    done : sequence of Points
        The loops at that distance, if they are cut already.

    Raises
    ------
    PlanError
        If the width is far too small for the area.
    """
    parts = copper_parts(nets)
    pitch = width * (1.0 - overlap)
    least = width / 2.0 if clearance is None else clearance
    distance = least + pitch if done else least
    found: list[Shapes] = []
    for number in range(MOST_LOOPS):
        if progress is not None:
            progress.step(min(0.8, number / 50.0), "clearing")
        rings = clip_lines(loop_rings(parts, distance)[0], area)[0]
        rings = rings[shapely.length(rings) > SHORTEST]
        if len(rings) == 0:
            break
        found.append(rings)
        distance += pitch
    else:
        raise PlanError("The cut is too narrow to clear this area.", "clearing", "Use a wider bit.")
    loops = as_paths(np.concatenate(found)) if found else ()
    window = shapely.difference(area, shapely.buffer(shapely.union_all(parts.shapes), least))
    inner = None if progress is None else progress.part(0.8, 1.0)
    every = (*done, *loops)
    return (*loops, *sliver_paths({}, every, width, width, largest=np.inf, window=window, progress=inner))
