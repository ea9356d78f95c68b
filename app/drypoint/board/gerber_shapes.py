"""Objects to shapely geometry, many at a time.

A swept aperture is the convex hull of its outline at both ends, built with numpy for all draws of
one tool at once. Because every draw of a round tool uses the same polygon as its flash, the ends of
a track and the pads on them share their vertices, which keeps unions small and clean.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeAlias

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from drypoint.board.aperture_shapes import NOTHING
from drypoint.board.aperture_tools import Tool
from drypoint.board.gerber_picture import EXTRA, KIND, TOOL, X0, X1, Y0, Arc, Contours, Kind
from drypoint.geometry.points import Points

Shapes: TypeAlias = NDArray[np.object_]
Rows: TypeAlias = NDArray[np.float64]

_CHUNK = 2_000_000  # vertices built in one go; bounds the memory of the arrays between


def build_shapes(rows: Rows, tools: Sequence[Tool], extras: Sequence[Arc | Contours]) -> Shapes:
    """(N,) shapes of the rows of a picture, mm. Draws of a tool without area are empty."""
    shapes = np.full(len(rows), NOTHING, dtype=object)
    kinds = rows[:, KIND].astype(int)
    numbers = rows[:, TOOL].astype(int)
    still = (rows[:, X0] == rows[:, X1]) & (rows[:, Y0] == rows[:, Y0 + 2])
    flashes = (kinds == Kind.FLASH) | ((kinds == Kind.LINE) & still)
    lines = (kinds == Kind.LINE) & ~still
    arcs = kinds == Kind.ARC
    for number in np.unique(numbers[numbers >= 0]):
        tool = tools[number]
        mine = numbers == number
        for chosen, build in ((flashes, flashed), (lines, swept)):
            index = np.flatnonzero(chosen & mine)
            size = max(1, _CHUNK // max(1, tool.vertices))
            for first in range(0, len(index), size):
                part = index[first : first + size]
                shapes[part] = build(tool, rows[part, X0 : X1 + 2])
        index = np.flatnonzero(arcs & mine)
        if len(index):
            shapes[index] = _arcs(tool, [extras[int(item)] for item in rows[index, EXTRA]])
    index = np.flatnonzero(kinds == Kind.REGION)
    if len(index):
        shapes[index] = regions([extras[int(item)] for item in rows[index, EXTRA]])
    return shapes


def flashed(tool: Tool, ends: Rows) -> Shapes:
    """The tool's shape at each (x, y) of ``ends`` (N, 4)."""
    if tool.shape.is_empty:
        return np.full(len(ends), NOTHING, dtype=object)
    at = ends[:, :2]
    if len(tool.outline) and shapely.get_num_interior_rings(tool.shape) == 0 and tool.diameter is not None:
        return _polygons(tool.outline[None, :, :] + at[:, None, :])
    shifts = np.repeat(at, shapely.get_num_coordinates(tool.shape), axis=0)
    copies = np.full(len(ends), tool.shape, dtype=object)
    moved: Shapes = shapely.transform(copies, lambda points: points + shifts)
    return moved


def swept(tool: Tool, ends: Rows) -> Shapes:
    """The hull of the tool at both ends of each line of ``ends`` (N, 4): x0, y0, x1, y1.

    Seen along the line, the outline's vertices from the rightmost counter-clockwise to the leftmost
    belong to the far end, the others to the near one; the two extreme ones belong to both.
    """
    corners = tool.outline
    count = len(corners)
    if count == 0:
        return np.full(len(ends), NOTHING, dtype=object)
    start, end = ends[:, :2], ends[:, 2:]
    along = end - start
    across = np.column_stack((-along[:, 1], along[:, 0])) @ corners.T
    right = across.argmin(axis=1)
    left = across.argmax(axis=1)
    front = (left - right) % count
    step = np.arange(count + 2)
    far = step[None, :] <= front[:, None]
    index = (right[:, None] + step[None, :] - ~far) % count
    base = np.where(far[:, :, None], end[:, None, :], start[:, None, :])
    return _polygons(corners[index] + base)


def _polygons(rings: NDArray[np.float64]) -> Shapes:
    """(N,) polygons of (N, K, 2) rings that are not closed."""
    closed = np.concatenate((rings, rings[:, :1]), axis=1)
    return geometries(shapely.polygons(shapely.linearrings(closed)))


def geometries(made: object) -> Shapes:
    """An array of what shapely made, even of a single geometry."""
    return np.atleast_1d(np.asarray(made, dtype=object))


def _arcs(tool: Tool, extras: Sequence[Arc | Contours]) -> Shapes:
    result = np.empty(len(extras), dtype=object)
    for index, extra in enumerate(extras):
        assert isinstance(extra, Arc)
        result[index] = arc_shape(tool, extra)
    return result


def arc_shape(tool: Tool, arc: Arc) -> BaseGeometry:
    """The tool moved along an arc."""
    if len(tool.outline) == 0:
        return NOTHING
    if tool.diameter is not None and arc.centre is not None:
        band = _band(arc.points, arc.centre, tool)
        if band is not None:
            return band
    if tool.diameter is not None:  # thousands of hulls that overlap take minutes to unite
        quarter = max(1, len(tool.outline) // 4)
        return shapely.LineString(arc.points).buffer(tool.diameter / 2.0, quad_segs=quarter)
    chords = np.column_stack((arc.points[:-1], arc.points[1:]))
    return shapely.union_all(swept(tool, chords))


def _band(points: Points, centre: tuple[float, float], tool: Tool) -> BaseGeometry | None:
    """A ring sector with round ends; None where it would touch itself."""
    radius = (tool.diameter or 0.0) / 2.0
    rays = points - centre
    reach = np.hypot(rays[:, 0], rays[:, 1])
    if reach.min() <= radius * 1.0001:
        return None
    unit = rays / reach[:, None]
    outer, inner = points + unit * radius, points - unit * radius
    if (points[0] == points[-1]).all():
        return shapely.Polygon(outer, [inner])
    counter = unit[0, 0] * unit[1, 1] - unit[0, 1] * unit[1, 0] > 0.0
    ends = []
    for side, at in ((1.0, -1), (-1.0, 0)):
        first = np.arctan2(side * unit[at, 1], side * unit[at, 0])
        half = len(tool.outline) // 2
        angles = first + np.linspace(0.0, np.pi, half + 1)[1:-1] * (1.0 if counter else -1.0)
        ends.append(points[at] + radius * np.column_stack((np.cos(angles), np.sin(angles))))
    band = shapely.Polygon(np.vstack((outer, ends[0], inner[::-1], ends[1])))
    return band if band.is_valid else None


def regions(extras: Sequence[Arc | Contours]) -> Shapes:
    """Each region: its contours filled one by one, then united.

    A contour that touches itself (a cut-in) is put in order by its rings' structure.
    """
    groups: list[Contours] = [extra for extra in extras if not isinstance(extra, Arc)]
    contours = [contour for group in groups for contour in group]
    sizes = np.array([len(contour) for contour in contours])
    rings = shapely.linearrings(np.vstack(contours), indices=np.repeat(np.arange(len(contours)), sizes))
    filled = geometries(shapely.polygons(rings))
    broken = np.flatnonzero(~shapely.is_valid(filled))
    if len(broken):
        filled[broken] = shapely.make_valid(filled[broken], method="structure", keep_collapsed=False)
    result = np.empty(len(groups), dtype=object)
    first = 0
    for index, group in enumerate(groups):
        last = first + len(group)
        result[index] = filled[first] if last == first + 1 else shapely.union_all(filled[first:last])
        first = last
    return result
