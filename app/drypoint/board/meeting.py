"""Which small shapes (holes, places) meet which areas of copper, quickly."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from shapely import Geometry, STRtree

Indices = NDArray[np.intp]
Shapes = Sequence[Geometry] | NDArray[np.object_]


def meeting(small: Shapes, areas: Shapes) -> tuple[Indices, Indices]:
    """Indices of every pair of a small shape and an area that touch, in the order of the small ones.

    The areas ask the tree, not the small shapes: what asks is prepared once, and a ground plane of
    many thousand corners is then searched in little time for each hole.
    """
    area, which = STRtree(small).query(areas, predicate="intersects")
    order = np.lexsort((area, which))
    return which[order], area[order]
