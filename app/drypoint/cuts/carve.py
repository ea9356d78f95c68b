"""Copper after milling, exactly and tile by tile, so that memory stays small on any board.

In every tile the grooves' swept area is taken from the copper; the pieces left are joined to
those of neighbouring tiles where they share some length of the border.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components
from shapely import Geometry

from drypoint.cuts.offsets import QUAD_SEGS
from drypoint.cuts.parts import Parts, Shapes, explode
from drypoint.geometry.points import Points
from drypoint.progress import Progress

TOUCH = 1e-7
"""mm. Pieces must share more of a tile's border than this to be one: no zero-length contacts."""
MOST_THREADS = 4
ODD = (0.2718281828, 0.3141592653)
"""mm. Tiles start this far off the board's corner, so that borders avoid the design's grid."""


@dataclass(frozen=True, slots=True, eq=False)
class Sweep:
    """Grooves: ``lines`` (M,) and half of their width ``radius`` (M,), mm, with a tree over them."""

    lines: Shapes
    radius: NDArray[np.float64]
    tree: shapely.STRtree

    def area(self, box: Geometry) -> Geometry:
        """What the grooves sweep inside the rectangle round ``box`` (and some way past it).

        Paths are clipped a little more than a radius outside, which changes nothing inside, and
        all of one width are swept at once.
        """
        reach = float(self.radius.max(initial=0.0)) * 1.05 + 1e-3
        bounds = shapely.bounds(box) + np.array([-reach, -reach, reach, reach])
        near = np.sort(self.tree.query(shapely.box(*bounds)))
        clipped, index = shapely.get_parts(
            shapely.clip_by_rect(self.lines[near], *bounds.tolist()), return_index=True
        )
        kept = ~shapely.is_empty(clipped)
        clipped, radius = clipped[kept], self.radius[near[index[kept]]]
        swept = [
            shapely.buffer(shapely.geometrycollections(clipped[radius == r]), r, quad_segs=QUAD_SEGS)
            for r in np.unique(radius)
        ]
        return shapely.union_all(swept) if len(swept) != 1 else swept[0]


def make_sweep(lines: list[Points], width: NDArray[np.float64]) -> Sweep:
    """Paths (N, 2) cut with ``width`` (N,) mm. A single point sweeps a disc; width 0 sweeps nothing."""
    size = np.array([len(line) for line in lines], dtype=np.intp)
    cut = (width > 0.0) & (size > 0)
    points = np.concatenate(
        [line for line, kept in zip(lines, cut, strict=True) if kept] or [np.empty((0, 2))]
    )
    size, radius = size[cut], width[cut] / 2.0
    shapes = np.empty(len(size), dtype=object)
    several, of = size > 1, np.repeat(np.arange(len(size)), size)
    shapes[~several] = shapely.points(points[~several[of]])
    if several.any():
        row = np.cumsum(several) - 1
        shapes[several] = shapely.linestrings(points[several[of]], indices=row[of][several[of]])
    return Sweep(shapes, radius, shapely.STRtree(shapes))


@dataclass(frozen=True, slots=True, eq=False)
class Fragments:
    """Copper of parts in pieces: rows (part, piece) with area, own boundary length and a place.

    ``count`` is the number of separate pieces of copper, with or without net.
    """

    part: NDArray[np.intp]
    piece: NDArray[np.intp]
    area: NDArray[np.float64]
    edge: NDArray[np.float64]
    at: NDArray[np.float64]
    count: int


def tiles(bounds: tuple[float, float, float, float], size: float) -> Iterator[tuple[int, int, Geometry]]:
    """Column, row and box of tiles that cover ``bounds``."""
    x0, y0 = bounds[0] - ODD[0], bounds[1] - ODD[1]
    columns = int((bounds[2] - x0) // size) + 1
    rows = int((bounds[3] - y0) // size) + 1
    for column in range(columns):
        for row in range(rows):
            left, low = x0 + column * size, y0 + row * size
            yield column, row, shapely.box(left, low, x0 + (column + 1) * size, y0 + (row + 1) * size)


class _Borders:
    """Joins pieces over the borders of tiles."""

    def __init__(self) -> None:
        self._open: dict[tuple[str, int, int], list[tuple[float, float, int]]] = {}
        self.joined: list[tuple[int, int]] = []

    def add(self, column: int, row: int, box: Geometry, pieces: Shapes, first: int) -> None:
        """Take the pieces (numbered from ``first``) of one tile."""
        points, index = shapely.get_coordinates(pieces, return_index=True)
        same = index[1:] == index[:-1]
        a, b, owner = points[:-1][same], points[1:][same], index[:-1][same] + first
        x0, y0, x1, y1 = shapely.bounds(box).tolist()
        sides: tuple[tuple[str, int, int, int, float], ...] = (
            ("x", column, row, 0, x0),
            ("x", column + 1, row, 0, x1),
        )
        sides += (("y", column, row, 1, y0), ("y", column, row + 1, 1, y1))
        for word, i, j, axis, value in sides:
            on = (np.abs(a[:, axis] - value) < TOUCH) & (np.abs(b[:, axis] - value) < TOUCH)
            low = np.minimum(a[on, 1 - axis], b[on, 1 - axis])
            high = np.maximum(a[on, 1 - axis], b[on, 1 - axis])
            found = [
                (float(s), float(e), int(k))
                for s, e, k in zip(low, high, owner[on], strict=True)
                if e - s > TOUCH
            ]
            self._meet((word, i, j), found)

    def _meet(self, key: tuple[str, int, int], found: list[tuple[float, float, int]]) -> None:
        if key not in self._open:
            self._open[key] = found
            return
        for low, high, piece in self._open.pop(key):
            for start, stop, other in found:
                if min(high, stop) - max(low, start) > TOUCH:
                    self.joined.append((piece, other))


def carve(
    parts: Parts,
    sweep: Sweep,
    area: Geometry,
    *,
    within: Shapes | None = None,
    tile: float = 20.0,
    progress: Progress | None = None,
) -> Fragments:
    """What is left of every part, and which pieces of copper hold it.

    Where polygons are given to stay ``within``, only what lies in them is right: each must hold all
    of every piece that it holds some of.

    Tiles are worked on by several threads (the geometry library lets go of the interpreter) and
    gathered in their order, so the answer does not depend on how many there are.
    """
    borders = _Borders()
    tree = shapely.STRtree(parts.shapes)
    table: list[tuple[NDArray[np.intp], NDArray[np.intp], NDArray[np.float64]]] = []
    total = 0
    work = _windows(area, tile, within)
    for index in (tree, sweep.tree):  # built by the first use: not in a thread
        index.query(area)
    pool = ThreadPoolExecutor(min(MOST_THREADS, os.cpu_count() or 1), "island check")
    try:
        done = pool.map(lambda one: _carve_tile(parts, tree, sweep, one.box, one.left), work)
        for number, (one, (pieces, rows)) in enumerate(zip(work, done, strict=True)):
            if progress is not None:
                progress.step(number / len(work), "island check")
            if len(pieces) == 0:
                continue
            borders.add(one.column, one.row, one.box, pieces, total)
            table.append((rows[0], rows[1] + total, rows[2]))
            total += len(pieces)
    finally:
        pool.shutdown(cancel_futures=True)
    return _gather(table, borders.joined, total)


@dataclass(frozen=True, slots=True, eq=False)
class _Window:
    """A tile, and what of the copper's outline lies in it."""

    column: int
    row: int
    box: Geometry
    left: Geometry


def _windows(area: Geometry, tile: float, within: Shapes | None) -> list[_Window]:
    shapely.prepare(area)
    tree = None if within is None else shapely.STRtree(within)
    found = []
    for column, row, box in tiles(tuple(shapely.bounds(area).tolist()), tile):
        part = box
        if within is not None and tree is not None:
            near = tree.query(box, predicate="intersects")
            if len(near) == 0:
                continue
            part = shapely.intersection(box, shapely.box(*shapely.total_bounds(within[near]).tolist()))
        if shapely.intersects(area, part):
            left = part if shapely.contains(area, part) else shapely.intersection(area, part)
            found.append(_Window(column, row, box, left))
    return found


def _carve_tile(
    parts: Parts, tree: shapely.STRtree, sweep: Sweep, box: Geometry, left: Geometry
) -> tuple[Shapes, tuple[NDArray[np.intp], NDArray[np.intp], NDArray[np.float64]]]:
    """The pieces left in one tile, and the fragments in them (see `_meet`)."""
    pieces = standing(left, sweep.area(left))
    near = np.sort(tree.query(box, predicate="intersects"))
    if len(pieces) == 0 or len(near) == 0:
        none = np.empty(0, np.intp)
        return pieces, (none, none, np.empty((0, 4)))
    return pieces, _meet(parts.shapes, near, pieces, box)


def standing(left: Geometry, swept: Geometry) -> Shapes:
    """The polygons of ``left`` minus ``swept``.

    Most are holes of what is swept: those inside ``left`` that hold no other groove are taken as
    they are, and only the rest is cut out.
    """
    polygons = explode(np.array([swept], dtype=object))[0]
    rings, of = shapely.get_rings(polygons, return_index=True)
    inner = np.zeros(len(rings), dtype=bool)
    inner[1:] = of[1:] == of[:-1]
    holes = np.asarray(shapely.polygons(rings[inner]))
    if len(holes) == 0:
        return explode(np.array([shapely.difference(left, swept)], dtype=object))[0]
    shapely.prepare(left)
    whole = shapely.contains_properly(left, holes)
    outside = shapely.get_point(rings[~inner], 0)
    whole[shapely.STRtree(outside).query(holes, predicate="contains")[0]] = False
    stay = ~inner
    stay[np.flatnonzero(inner)[~whole]] = True
    filled = np.asarray(shapely.polygons(rings[stay], indices=of[stay]))
    rest = shapely.difference(left, shapely.multipolygons(filled))
    return np.concatenate((holes[whole], explode(np.array([rest], dtype=object))[0]))


def _meet(
    shapes: Shapes, near: NDArray[np.intp], pieces: Shapes, box: Geometry
) -> tuple[NDArray[np.intp], NDArray[np.intp], NDArray[np.float64]]:
    """Fragments in one tile: part, piece, and columns area, boundary, x, y."""
    part, piece = shapely.STRtree(pieces).query(shapes[near], predicate="intersects")
    inside = _common(shapes[near], part, pieces, piece, box)
    area = shapely.area(inside)
    kept = area > 1e-12
    part, piece, inside, area = part[kept], piece[kept], inside[kept], area[kept]
    edge = shapely.length(inside) - _along_border(inside, box)
    at = shapely.get_coordinates(shapely.point_on_surface(inside))
    return near[part], piece, np.column_stack((area, edge, at))


def _common(
    shapes: Shapes, part: NDArray[np.intp], pieces: Shapes, piece: NDArray[np.intp], box: Geometry
) -> Shapes:
    """What each part and piece have in common: the part where a piece holds all of it in the box."""
    within = shapes.copy()
    low, high = shapely.bounds(shapes), shapely.bounds(box)
    out = (low[:, :2] < high[:2]).any(axis=1) | (low[:, 2:] > high[2:]).any(axis=1)
    within[out] = shapely.clip_by_rect(shapes[out], *high.tolist())
    within[out] = np.where(shapely.get_type_id(within[out]) == 3, within[out], shapes[out])
    shapely.prepare(pieces)
    covered = shapely.covers(pieces[piece], within[part])
    found = within[part]
    found[~covered] = shapely.intersection(shapes[part[~covered]], pieces[piece[~covered]])
    return found


def _along_border(shapes: Shapes, box: Geometry) -> NDArray[np.float64]:
    """Length of each shape's boundary that lies on the tile's border."""
    points, index = shapely.get_coordinates(shapes, return_index=True)
    same = index[1:] == index[:-1]
    a, b, owner = points[:-1][same], points[1:][same], index[:-1][same]
    on = np.zeros(len(a), dtype=bool)
    for axis, value in zip((0, 1, 0, 1), shapely.bounds(box), strict=True):
        on |= (np.abs(a[:, axis] - value) < TOUCH) & (np.abs(b[:, axis] - value) < TOUCH)
    size = np.hypot(*(b - a).T) * on
    return np.bincount(owner, weights=size, minlength=len(shapes)).astype(np.float64)


def _gather(
    table: list[tuple[NDArray[np.intp], NDArray[np.intp], NDArray[np.float64]]],
    joined: list[tuple[int, int]],
    total: int,
) -> Fragments:
    pairs = np.array(joined, dtype=np.intp).reshape(-1, 2)
    graph = coo_matrix(
        (np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(max(total, 1), max(total, 1))
    )
    count, label = connected_components(graph, directed=False)
    if not table:
        none = np.empty(0, np.intp)
        return Fragments(none, none, np.empty(0), np.empty(0), np.empty((0, 2)), count)
    part = np.concatenate([row[0] for row in table])
    piece = label[np.concatenate([row[1] for row in table])]
    values = np.concatenate([row[2] for row in table])
    key, inverse = np.unique(np.column_stack((part, piece)), axis=0, return_inverse=True)
    inverse = inverse.reshape(-1)
    area = np.bincount(inverse, weights=values[:, 0]).astype(np.float64)
    edge = np.bincount(inverse, weights=values[:, 1]).astype(np.float64)
    order = np.lexsort((-values[:, 0], inverse))
    first = order[np.searchsorted(inverse[order], np.arange(len(key)))]
    return Fragments(key[:, 0], key[:, 1], area, edge, values[first, 2:4], count)
