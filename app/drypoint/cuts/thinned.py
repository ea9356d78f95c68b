"""Traces that the cut leaves thinner than allowed, with what they still carry."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry

from drypoint.cuts.carve import Sweep, make_sweep
from drypoint.cuts.model import Flaw
from drypoint.cuts.parts import Shapes, copper_parts, explode
from drypoint.cuts.ratings import current
from drypoint.geometry.points import Points, as_points
from drypoint.progress import Progress
from drypoint.wording import say

NOTICE = 2e-3
"""mm. Bites below this are the chords of arcs, not thinning."""
CORNER = 0.5
"""Squares of the disc's radius: what a disc cannot reach in a corner is smaller (0.21 in a right
angle)."""


def thinned(
    nets: Mapping[str, Geometry],
    lines: Sequence[Points],
    top_width: ArrayLike,
    least: float,
    *,
    copper: float = 0.035,
    rise: float = 10.0,
    progress: Progress | None = None,
) -> tuple[Flaw, ...]:
    """Places where copper as wide as ``least`` mm in the design is narrower after the cut.

    A place is as wide as the largest disc that covers it (opening by a disc): thin is what a disc
    of ``least`` covers in the design but no longer after the cut, and what is left there.

    Parameters
    ----------
    top_width : float or (len(lines),) array
        Width at the copper's top, mm.
    copper, rise : float
        Copper thickness (mm) and warming (K) for the current stated in words (IPC-2221).
    """
    parts = copper_parts(nets, simplify=0.0)
    paths = [as_points(line) for line in lines]
    width = np.broadcast_to(np.asarray(top_width, dtype=np.float64), (len(paths),))
    sweep = make_sweep(paths, width)
    found: list[Flaw] = []
    for index, shape in enumerate(parts.shapes):
        if progress is not None and index % 20 == 0:
            progress.step(index / len(parts.shapes), "thinned traces")
        left = bitten(shape, sweep)
        if left is None:
            continue
        name = parts.names[parts.owner[index]]
        for place in _thin_places(shape, left, least):
            wide = 2.0 * float(shapely.area(place)) / max(float(shapely.length(place)), 1e-9)
            spot = shapely.point_on_surface(place)
            text = say(
                "{name} is about {wide:.2f} mm wide here: {current:.2f} A",
                name=name,
                wide=wide,
                current=current(wide, thickness=copper, rise=rise),
            )
            found.append(
                Flaw(
                    (name,),
                    (float(spot.x), float(spot.y)),
                    say("{text} for {rise:.0f} K (estimate)", text=text, rise=rise),
                )
            )
    return tuple(found)


def bitten(shape: Geometry, sweep: Sweep) -> Geometry | None:
    """What the grooves leave of a part; None where they take nothing worth naming."""
    near = np.sort(
        sweep.tree.query(shape, predicate="dwithin", distance=float(sweep.radius.max(initial=0.0)))
    )
    if len(near) == 0:
        return None
    lean = np.maximum(sweep.radius[near] - NOTICE, 1e-6)
    apart = shapely.distance(sweep.lines[near], shape)
    deep: NDArray[np.intp] = near[apart < lean]
    if len(deep) == 0:
        return None
    return shapely.difference(shape, shapely.union_all(shapely.buffer(sweep.lines[deep], sweep.radius[deep])))


def _thin_places(before: Geometry, after: Geometry, least: float) -> Shapes:
    radius = least / 2.0
    wide = _opened(before, radius)
    thin = shapely.difference(
        shapely.intersection(after, wide), shapely.buffer(_opened(after, radius), NOTICE)
    )
    places = explode(np.array([thin], dtype=object))[0]
    large = shapely.area(places) > CORNER * radius**2
    return np.array(
        [p for p, wide in zip(places, large, strict=True) if wide or _parts(after, p)], dtype=object
    )


def _parts(copper: Geometry, place: Geometry) -> bool:
    """Whether copper falls apart without this place: a neck, however small, and no corner."""
    rest = shapely.difference(copper, shapely.buffer(place, 2.0 * NOTICE))
    return int(shapely.get_num_geometries(rest)) > int(shapely.get_num_geometries(copper))


def _opened(shape: Geometry, radius: float) -> Geometry:
    return shapely.buffer(shapely.buffer(shape, -radius), radius)
