"""Dark and clear objects in file order to the copper that is left.

What is left of a dark object is what no later clear object covers; the image is the union of all
that is left. So each piece only meets the clear objects that lie on it and come after it, and nets
can be composed one by one.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from drypoint.board.aperture_shapes import NOTHING
from drypoint.board.aperture_tools import Tool
from drypoint.board.gerber_picture import DARK, KIND, TOOL, X0, X1, Y0, Y1, Arc, Contours, Kind
from drypoint.board.gerber_shapes import Rows, Shapes, build_shapes
from drypoint.board.gerber_strokes import Index, chains, strokes
from drypoint.errors import InputError
from drypoint.progress import Progress

_GRID = 1e-6
"""mm. The snapping that a union falls back to where full precision fails: a nanometre."""

_MANY = 200
"""Shapes from which it pays to look for separate islands before uniting (measured)."""


def union(shapes: Shapes) -> BaseGeometry:
    """The union of areas of any kind.

    Raises
    ------
    InputError
        If the shapes are so damaged that no union can be made.
    """
    if len(shapes) == 1:
        return shapes[0]  # type: ignore[no-any-return]
    if len(shapes) > _MANY:
        return _robust(
            lambda grid: (
                shapely.disjoint_subset_union_all(shapes)
                if grid is None
                else shapely.union_all(shapes, grid_size=grid)
            )
        )
    return _robust(lambda grid: shapely.union_all(shapes, grid_size=grid))


def _robust(make: Callable[[float | None], BaseGeometry]) -> BaseGeometry:
    try:
        return make(None)
    except shapely.errors.GEOSException:
        try:
            return make(_GRID)
        except shapely.errors.GEOSException as error:
            raise InputError("The shapes cannot be united.", hint="The file may be damaged.") from error


def compose(
    rows: Rows,
    tools: Sequence[Tool],
    extras: Sequence[Arc | Contours],
    groups: Index,
    progress: Progress | None = None,
) -> dict[int, BaseGeometry]:
    """What is left of the dark objects, by group.

    Parameters
    ----------
    rows, tools, extras
        A picture's objects in file order.
    groups : (N,) int
        The group of each dark object; negative leaves it out. Clear objects clear every group.
    progress : Progress, optional
        Told of every group.

    Returns
    -------
    dict of int to geometry
        Groups without any area are left out.
    """
    dark = rows[:, DARK] > 0.0
    runs = _runs(dark)
    count = int(runs[-1]) + 1 if len(runs) else 1
    wanted = dark & (groups >= 0)
    shapes, cells = cover(rows[wanted], tools, extras, groups[wanted] * count + runs[wanted])
    pieces, cells = _united(shapes, cells, progress)
    if count > 1 and len(pieces):
        pieces, owner = shapely.get_parts(pieces, return_index=True)
        cells = cells[owner]
        holes, hole_runs = cover(rows[~dark], tools, extras, runs[~dark])
        _clear(pieces, cells % count, holes, hole_runs)
        solid = ~shapely.is_empty(pieces)
        pieces, cells = _united(pieces[solid], cells[solid] // count, None)
    return {int(cell): piece for cell, piece in zip(cells, pieces, strict=True)}


def _runs(dark: NDArray[np.bool_]) -> Index:
    """The number of clear runs that began before or at each object."""
    begins = ~dark & np.concatenate(([True], dark[:-1]))[: len(dark)]
    return np.cumsum(begins)


def cover(
    rows: Rows, tools: Sequence[Tool], extras: Sequence[Arc | Contours], cells: Index
) -> tuple[Shapes, Index]:
    """Shapes that together cover the objects of each cell, and their cells; empty ones left out.

    Draws of round tools become whole strokes; everything else is built one by one.
    """
    kinds = rows[:, KIND]
    numbers = rows[:, TOOL].astype(np.intp)
    usable = np.array([tool.diameter is not None and len(tool.outline) > 0 for tool in tools] + [False])
    moving = (rows[:, X0] != rows[:, X1]) | (rows[:, Y0] != rows[:, Y1])
    drawn = (kinds == Kind.LINE) & moving & usable[numbers]
    shapes = [build_shapes(rows[~drawn], tools, extras)]
    owners = [cells[~drawn]]
    for number in np.unique(numbers[drawn]):
        mine = drawn & (numbers == number)
        points, chain, keys = chains(rows[mine, X0 : X1 + 2], cells[mine])
        made, chain_of = strokes(tools[number], points, chain)
        shapes.append(made)
        owners.append(keys[chain_of])
    merged, cell = np.concatenate(shapes), np.concatenate(owners)
    solid = ~shapely.is_empty(merged)
    return merged[solid], cell[solid]


def _united(shapes: Shapes, cells: Index, progress: Progress | None) -> tuple[Shapes, Index]:
    """One area for each cell."""
    order = np.argsort(cells, kind="stable")
    changes = np.flatnonzero(np.diff(cells[order])) + 1
    groups = np.split(order, changes) if len(order) else []
    pieces = np.empty(len(groups), dtype=object)
    for index, members in enumerate(groups):
        if progress is not None:
            progress.step(index / len(groups), "Uniting copper")
        pieces[index] = union(shapes[members])
    return pieces, cells[order][np.concatenate(([0], changes)).astype(np.intp)[: len(groups)]]


def _clear(pieces: Shapes, runs: Index, holes: Shapes, hole_runs: Index) -> None:
    """Take from each piece, in place, the clear objects that come after it."""
    piece, hole = STRtree(holes).query(pieces, predicate="intersects")
    later = hole_runs[hole] > runs[piece]
    piece, hole = piece[later], hole[later]
    order = np.argsort(piece, kind="stable")
    piece, hole = piece[order], hole[order]
    changes = np.flatnonzero(np.diff(piece)) + 1
    for members in np.split(np.arange(len(piece)), changes) if len(piece) else []:
        index = piece[members[0]]
        pieces[index] = _difference(pieces[index], union(holes[hole[members]]))


def _difference(shape: BaseGeometry, cut: BaseGeometry) -> BaseGeometry:
    return _robust(lambda grid: shapely.difference(shape, cut, grid_size=grid))


def subtract_from_box(shape: BaseGeometry) -> BaseGeometry:
    """The complement of an image inside its own bounds: what a negative image shows."""
    return NOTHING if shape.is_empty else _difference(shapely.box(*shape.bounds), shape)
