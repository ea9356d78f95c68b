"""The copper that is left, as exact polygons in tiles, and which of them hang together.

A raster would miss bridges narrower than its cells; polygons do not. Only tiles that were cut since
the last question are computed again.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components
from shapely import Geometry, Polygon, STRtree

TILE = 8.0
"""Side of a tile, mm."""
ON_BORDER = 1e-7
"""A vertex this close to a tile's border lies on it, mm."""
JOINT = 1e-6
"""Parts that share less than this length of a tile's border are not joined, mm."""

Tile = tuple[int, int]


class Pieces:
    """Copper left of a blank.

    Parameters
    ----------
    blank : Polygon
        The whole of it.
    """

    def __init__(self, blank: Polygon) -> None:
        self._blank = blank
        self._parts: dict[Tile, list[Polygon]] = {}
        x0, y0, x1, y1 = blank.bounds
        # borders off the grid that designs are drawn on
        self._origin = (x0 - 0.3717, y0 - 0.2913)
        for i in range(math.ceil((x1 - self._origin[0]) / TILE)):
            for j in range(math.ceil((y1 - self._origin[1]) / TILE)):
                self._parts[i, j] = _polygons(blank.intersection(self._box((i, j))))
        self._tree: STRtree | None = None
        self._labels = np.zeros(0, dtype=np.int64)

    def _box(self, tile: Tile) -> Polygon:
        i, j = tile
        return shapely.box(self._edge(0, i), self._edge(1, j), self._edge(0, i + 1), self._edge(1, j + 1))

    def _edge(self, axis: int, index: int) -> float:
        """The same float for both tiles that share the border."""
        return self._origin[axis] + index * TILE

    def remove(self, areas: Sequence[Geometry]) -> None:
        """Take areas away."""
        by_tile: dict[Tile, list[Geometry]] = {}
        for area in areas:
            x0, y0, x1, y1 = shapely.bounds(area)
            ox, oy = self._origin
            for i in range(math.floor((x0 - ox) / TILE), math.floor((x1 - ox) / TILE) + 1):
                for j in range(math.floor((y0 - oy) / TILE), math.floor((y1 - oy) / TILE) + 1):
                    by_tile.setdefault((i, j), []).append(area)
        for tile, cut in by_tile.items():
            if self._parts.get(tile):
                left = shapely.difference(shapely.MultiPolygon(self._parts[tile]), shapely.union_all(cut))
                self._parts[tile] = _polygons(left)
        if by_tile:
            self._tree = None

    @property
    def polygons(self) -> NDArray[np.object_]:
        """(P,) polygons, one or more per piece: tile borders cut them."""
        return self._ready().geometries

    @property
    def labels(self) -> NDArray[np.int64]:
        """(P,) number of the piece each polygon belongs to."""
        self._ready()
        return self._labels

    def label_near(self, place: tuple[float, float], within: float = 1.0) -> int | None:
        """The piece at a place, or the nearest within ``within`` mm; None if there is none."""
        tree = self._ready()
        found = np.atleast_1d(
            tree.query_nearest(shapely.Point(place), max_distance=within, all_matches=False)
        )
        return int(self._labels[found[0]]) if len(found) else None

    def covers(self, points: ArrayLike) -> NDArray[np.bool_]:
        """(N,) whether copper is left at (N, 2) points."""
        p = np.atleast_2d(np.asarray(points, dtype=np.float64))
        covered = np.zeros(len(p), dtype=bool)
        covered[self._ready().query(shapely.points(p), predicate="intersects")[0]] = True
        return covered

    def distance(self, points: ArrayLike, label: int, within: float) -> NDArray[np.float64]:
        """(N,) distance from (N, 2) points to one piece, mm; infinite beyond ``within``."""
        at = np.atleast_2d(np.asarray(points, dtype=np.float64))
        tree = self._ready()
        (x0, y0), (x1, y1) = at.min(axis=0) - within, at.max(axis=0) + within
        area = shapely.box(x0, y0, x1, y1)
        near = tree.query(area, predicate="intersects")
        near = near[self._labels[near] == label]
        if not len(near):
            return np.full(len(at), np.inf)
        whole = shapely.MultiPolygon(list(tree.geometries[near]))
        shapely.prepare(whole)
        return np.asarray(shapely.distance(shapely.points(at), whole), dtype=np.float64)

    def _ready(self) -> STRtree:
        if self._tree is None:
            self._tree = STRtree([polygon for parts in self._parts.values() for polygon in parts])
            self._labels = self._join()
        return self._tree

    def _join(self) -> NDArray[np.int64]:
        """Union across tile borders: parts that share a length of border hang together."""
        first: dict[Tile, int] = {}
        count = 0
        for tile, parts in self._parts.items():
            first[tile] = count
            count += len(parts)
        pairs: list[tuple[int, int]] = []
        for (i, j), parts in self._parts.items():
            for axis, other in ((0, (i + 1, j)), (1, (i, j + 1))):
                if other not in self._parts:
                    continue
                edge = self._edge(axis, other[axis])
                here = [_along_border(part, axis, edge) for part in parts]
                there = [_along_border(part, axis, edge) for part in self._parts[other]]
                for a, one in enumerate(here):
                    for b, two in enumerate(there):
                        if _overlap(one, two):
                            pairs.append((first[i, j] + a, first[other] + b))
        rows = np.array([a for a, _ in pairs], dtype=np.int64)
        columns = np.array([b for _, b in pairs], dtype=np.int64)
        graph = coo_matrix((np.ones(len(pairs), dtype=np.int8), (rows, columns)), (count, count))
        return np.asarray(connected_components(graph, directed=False)[1], dtype=np.int64)


def _along_border(polygon: Polygon, axis: int, edge: float) -> list[tuple[float, float]]:
    """Stretches of a polygon's boundary that lie on a tile border, as ranges along it."""
    found: list[tuple[float, float]] = []
    for ring in (polygon.exterior, *polygon.interiors):
        points = shapely.get_coordinates(ring)
        on = np.abs(points[:, axis] - edge) < ON_BORDER
        at = np.flatnonzero(on[:-1] & on[1:])
        for a, b in zip(points[at, 1 - axis], points[at + 1, 1 - axis], strict=True):
            found.append((float(min(a, b)), float(max(a, b))))
    return found


def _overlap(one: list[tuple[float, float]], two: list[tuple[float, float]]) -> bool:
    return any(min(a[1], b[1]) - max(a[0], b[0]) > JOINT for a in one for b in two)


def _polygons(shape: Geometry) -> list[Polygon]:
    return [part for part in shapely.get_parts(shape) if isinstance(part, Polygon) and part.area > 0.0]
