"""Whether a place called impossible is joined indeed, once all grooves are laid.

A centre line stops where its bite would pass the limit; on both sides of a short place other
grooves run near, and their round ends may part it all the same. What is left there is looked at.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from drypoint.cuts.carve import Sweep, make_sweep, standing
from drypoint.cuts.enclosed import SHAVING
from drypoint.cuts.model import Narrow
from drypoint.cuts.parts import Parts, Shapes
from drypoint.geometry.points import Points

FARTHEST = 1.5
"""Places longer than this many widths of the cut are not parted by the ends of others."""


def joined_places(
    places: Sequence[Narrow], parts: Parts, lines: Sequence[Points], width: float
) -> tuple[Narrow, ...]:
    """Those of the places where copper still holds both nets after cutting ``lines`` as wide as ``width``."""
    short = [place for place in places if place.length < FARTHEST * width]
    if not short:
        return tuple(places)
    sweep = make_sweep(list(lines), np.full(len(lines), width))
    tree = shapely.STRtree(parts.shapes)
    parted = {place for place in short if not _joined(place, parts, tree, sweep, width)}
    return tuple(place for place in places if place not in parted)


def _joined(place: Narrow, parts: Parts, tree: shapely.STRtree, sweep: Sweep, width: float) -> bool:
    by = place.length + width
    window = shapely.box(place.at[0] - by, place.at[1] - by, place.at[0] + by, place.at[1] + by)
    left = standing(window, sweep.area(window))
    near = np.sort(tree.query(window, predicate="intersects"))
    first, second = (
        _holding(left, parts.shapes[near[parts.owner[near] == parts.names.index(name)]])
        for name in place.nets
    )
    return bool(first & second)


def _holding(pieces: Shapes, copper: Shapes) -> set[int]:
    """Which of the pieces hold some of the copper."""
    part, piece = shapely.STRtree(pieces).query(copper, predicate="intersects")
    common = shapely.intersection(copper[part], pieces[piece])
    thick = 2.0 * shapely.area(common) > SHAVING * np.maximum(shapely.length(common), 1e-9)
    return set(piece[thick].tolist())
