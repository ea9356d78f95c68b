"""The copper of the nets as flat arrays of polygons: what every geometric step works on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry

from drypoint.errors import InputError

Shapes = NDArray[np.object_]
"""(N,) array of shapely geometries."""

SIMPLIFY = 1e-3
"""mm. Vertices that change a boundary by less are dropped: board data is exact to 0.5 µm at best,
and arcs whose radius is near the offset's stall the offsetting."""

SLACK = 5e-4
"""mm by which a bite may pass its limit: the accuracy of board data (Gerber layer format
specification, rev. 2021.02, section 4.14, allows ±0.5 µm)."""


@dataclass(frozen=True, slots=True, eq=False)
class Parts:
    """Connected copper: ``shapes`` (N,) polygons, ``owner`` (N,) index into ``names``."""

    names: tuple[str, ...]
    shapes: Shapes
    owner: NDArray[np.intp]


def copper_parts(nets: Mapping[str, Geometry], simplify: float = SIMPLIFY) -> Parts:
    """Every connected piece of every net.

    Invalid polygons are mended; lines and points have no copper and are dropped.

    Raises
    ------
    InputError
        If a value is not a geometry.
    """
    names = tuple(nets)
    given = np.empty(len(names), dtype=object)
    for index, name in enumerate(names):
        if not isinstance(nets[name], Geometry):
            raise InputError("The copper of a net is not a shape.", name)
        given[index] = nets[name]
    shapes, owner = explode(given)
    bad = ~shapely.is_valid(shapes)
    if bad.any():
        shapes[bad] = shapely.make_valid(shapes[bad])
        shapes, inner = explode(shapes)
        owner = owner[inner]
    if simplify > 0.0 and len(shapes):
        lean = shapely.simplify(shapes, simplify, preserve_topology=False)
        sound = shapely.is_valid(lean) & ~shapely.is_empty(lean) & (shapely.get_type_id(lean) == 3)
        shapes = np.where(sound, lean, shapes)
    return Parts(names, shapes, owner)


def explode(shapes: Shapes) -> tuple[Shapes, NDArray[np.intp]]:
    """The polygons of ``shapes`` and the index each came from; everything else is dropped."""
    pieces, index = shapely.get_parts(shapes, return_index=True)
    while len(pieces) and (shapely.get_type_id(pieces) > 3).any():
        pieces, inner = shapely.get_parts(pieces, return_index=True)
        index = index[inner]
    keep = (shapely.get_type_id(pieces) == 3) & ~shapely.is_empty(pieces)
    return pieces[keep], index[keep]


def foreign_pairs(parts: Parts, distance: float) -> NDArray[np.intp]:
    """(M, 2) pairs i < j of parts of different nets that are nearer than ``distance``, mm."""
    if len(parts.shapes) < 2:
        return np.empty((0, 2), dtype=np.intp)
    tree = shapely.STRtree(parts.shapes)
    first, second = tree.query(parts.shapes, predicate="dwithin", distance=distance)
    keep = (first < second) & (parts.owner[first] != parts.owner[second])
    return np.column_stack((first[keep], second[keep]))
