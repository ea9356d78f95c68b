"""Taking copper away: slivers that belong to no net, and whole areas on request."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

import numpy as np
import shapely
from shapely import Geometry

from drypoint.cuts.grooves import loop_rings
from drypoint.cuts.islands import pieces
from drypoint.cuts.model import GroovePlan
from drypoint.cuts.offsets import as_paths, clip_lines
from drypoint.cuts.parts import Shapes, copper_parts
from drypoint.errors import PlanError
from drypoint.geometry.points import Points
from drypoint.progress import Progress

ROUNDS = 30
"""Times that what is left of a sliver is cut round again at most."""
MOST_LOOPS = 2000
"""Loops of clearing at most: more means the cut is far too narrow for the area."""


def remove_slivers(
    nets: Mapping[str, Geometry],
    plan: GroovePlan,
    width: float,
    *,
    largest: float,
    window: Geometry,
    keep: Geometry | None = None,
    progress: Progress | None = None,
) -> GroovePlan:
    """The plan with paths that mill away pieces of copper without net.

    Parameters
    ----------
    width : float
        Width of the cut, mm.
    largest : float
        Pieces up to this area are removed, mm².
    window : geometry
        The blank or board within which copper is looked at.
    keep : geometry, optional
        Copper that stays though it has no net (text).
    """
    lines = list(plan.lines)
    first = len(lines)
    parts = copper_parts(nets, simplify=0.0)
    tree = shapely.STRtree(parts.shapes)
    for number in range(ROUNDS):
        if progress is not None:
            progress.step(number / ROUNDS, "slivers")
        left = pieces(lines, width, window)
        left = left[shapely.area(left) <= largest]
        held = np.unique(tree.query(left, predicate="intersects")[0])
        loose = np.delete(left, held)
        if keep is not None and len(loose):
            loose = loose[~shapely.intersects(loose, keep)]
        if len(loose) == 0:
            break
        lines.extend(as_paths(shapely.get_exterior_ring(shapely.simplify(loose, 1e-3))))
    added = len(lines) - first
    return replace(plan, lines=tuple(lines), line_nets=plan.line_nets + ((),) * added)


def clear_area(
    nets: Mapping[str, Geometry],
    width: float,
    area: Geometry,
    *,
    overlap: float = 0.3,
    from_clearance: float | None = None,
    progress: Progress | None = None,
) -> tuple[Points, ...]:
    """Paths that take away all copper of ``area`` that belongs to no net.

    Loops lie ``width * (1 - overlap)`` apart, from the nets outwards; with an overlap of half or
    more they cover everything, with less what stays between them is found and cut too.

    Parameters
    ----------
    from_clearance : float, optional
        Distance of the first loop from the nets, mm; half of the width if not given.

    Raises
    ------
    PlanError
        If the width is far too small for the area.
    """
    parts = copper_parts(nets)
    distance = width / 2.0 if from_clearance is None else from_clearance
    found: list[Shapes] = []
    for number in range(MOST_LOOPS):
        if progress is not None:
            progress.step(min(0.9, number / 50.0), "clearing")
        rings = clip_lines(loop_rings(parts, distance)[0], area)[0]
        if len(rings) == 0:
            break
        found.append(rings)
        distance += width * (1.0 - overlap)
    else:
        raise PlanError("The cut is too narrow to clear this area.", "clearing", "Use a wider bit.")
    if not found:
        return ()
    lines = as_paths(np.concatenate(found))
    plan = GroovePlan(lines, ((),) * len(lines), ())
    window = shapely.difference(area, shapely.buffer(shapely.union_all(parts.shapes), width))
    return remove_slivers({}, plan, width, largest=np.inf, window=window, progress=progress).lines
