"""Dark and clear objects in file order to the copper that is left.

What is left of a dark object is what no later clear object covers; the image is the union of all
that is left. So each piece only meets the clear objects that lie on it and come after it, and nets
can be composed one by one.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, STRtree

from drypoint.board.aperture_shapes import NOTHING
from drypoint.board.gerber_shapes import Shapes
from drypoint.errors import InputError
from drypoint.progress import Progress

_GRID = 1e-6
"""mm. The snapping that a union falls back to where full precision fails: a nanometre."""


def union(shapes: Shapes) -> Geometry:
    """The union of shapes of any kind; polygons or empty.

    Raises
    ------
    InputError
        If the shapes are so damaged that no union can be made.
    """
    if len(shapes) == 1:
        return shapes[0]  # type: ignore[no-any-return]
    return _robust(lambda grid: shapely.union_all(shapes, grid_size=grid))


def _robust(make: Callable[[float | None], Geometry]) -> Geometry:
    try:
        return make(None)
    except shapely.errors.GEOSException:
        try:
            return make(_GRID)
        except shapely.errors.GEOSException as error:
            raise InputError("The shapes cannot be united.", hint="The file may be damaged.") from error


def compose(
    shapes: Shapes, dark: NDArray[np.bool_], groups: NDArray[np.intp], progress: Progress | None = None
) -> dict[int, Geometry]:
    """What is left of the dark objects, by group.

    Parameters
    ----------
    shapes : (N,) geometries
        All objects in file order.
    dark : (N,) bool
        False for clear objects, which clear every group.
    groups : (N,) int
        The group of each dark object; negative leaves it out.
    progress : Progress, optional
        Told of every group.

    Returns
    -------
    dict of int to geometry
        Groups without any area are left out.
    """
    cleared = np.flatnonzero(~dark & ~shapely.is_empty(shapes))
    wanted = np.flatnonzero(dark & (groups >= 0) & ~shapely.is_empty(shapes))
    before = np.zeros(len(shapes), dtype=np.intp)  # clear runs that came before
    before[1:] = np.cumsum(dark[:-1] & ~dark[1:]) if len(shapes) > 1 else 0
    before += 0 if len(dark) and dark[0] else 1
    pieces, keys, runs = _united(shapes, groups, before, wanted, progress)
    if len(cleared) and len(pieces):
        _clear(pieces, runs, shapes[cleared], before[cleared])
    return _by_group(pieces, keys)


def _united(
    shapes: Shapes,
    groups: NDArray[np.intp],
    before: NDArray[np.intp],
    wanted: NDArray[np.intp],
    progress: Progress | None,
) -> tuple[Shapes, NDArray[np.intp], NDArray[np.intp]]:
    """Connected pieces of each group and run of dark objects, with their group and run."""
    order = wanted[np.lexsort((before[wanted], groups[wanted]))]
    changes = np.flatnonzero((np.diff(groups[order]) != 0) | (np.diff(before[order]) != 0)) + 1
    pieces, keys, runs = [], [], []
    for members in np.split(order, changes) if len(order) else []:
        if progress is not None:
            progress.step(len(pieces) / (len(changes) + 1), "Uniting copper")
        pieces.append(union(shapes[members]))
        keys.append(groups[members[0]])
        runs.append(before[members[0]])
    parts, owner = shapely.get_parts(np.array(pieces, dtype=object), return_index=True)
    return parts, np.array(keys, dtype=np.intp)[owner], np.array(runs, dtype=np.intp)[owner]


def _clear(pieces: Shapes, runs: NDArray[np.intp], cleared: Shapes, clear_runs: NDArray[np.intp]) -> None:
    """Take from each piece, in place, the clear objects that come after it."""
    piece, clear = STRtree(cleared).query(pieces, predicate="intersects")
    later = clear_runs[clear] > runs[piece]
    piece, clear = piece[later], clear[later]
    order = np.argsort(piece, kind="stable")
    piece, clear = piece[order], clear[order]
    changes = np.flatnonzero(np.diff(piece)) + 1
    for members in np.split(np.arange(len(piece)), changes) if len(piece) else []:
        index = piece[members[0]]
        cut = union(cleared[clear[members]])
        pieces[index] = _difference(pieces[index], cut)


def _difference(shape: Geometry, cut: Geometry) -> Geometry:
    return _robust(lambda grid: shapely.difference(shape, cut, grid_size=grid))


def _by_group(pieces: Shapes, keys: NDArray[np.intp]) -> dict[int, Geometry]:
    """The pieces of each group united once more; they may have grown together over other runs."""
    result = {}
    for key in np.unique(keys):
        mine = pieces[keys == key]
        mine = mine[~shapely.is_empty(mine)]
        if len(mine):
            result[int(key)] = union(mine)
    return result


def subtract_from_box(shape: Geometry) -> Geometry:
    """The complement of an image inside its own bounds: what a negative image shows."""
    return NOTHING if shape.is_empty else _difference(shapely.box(*shape.bounds), shape)
