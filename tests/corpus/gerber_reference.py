"""An independent library's idea of a Gerber layer, as shapely geometry, to hold ours against.

gerbonara (Apache-2.0) parses the file and gives primitives; here they become polygons, circles at
the chord tolerance asked for, with the fastest call shapely has for each kind.
"""

from __future__ import annotations

import math
import warnings
from pathlib import Path

import numpy as np
import shapely
import shapely.affinity
from gerbonara import rs274x
from gerbonara.graphic_primitives import Arc, ArcPoly, Circle, Line, Rectangle
from gerbonara.utils import MM


def parse(path: Path) -> rs274x.GerberFile:
    """The library's own parse; its remarks about old syntax are not ours to show."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        return rs274x.GerberFile.open(path)


def primitives(layer: rs274x.GerberFile, tolerance: float) -> tuple[list, list]:
    """Polygons in file order, and whether each is dark."""
    shapes, dark = [], []
    for item in layer.objects:
        for primitive in item.to_primitives(MM):
            shapes.append(_shape(primitive, tolerance))
            dark.append(bool(primitive.polarity_dark))
    return shapes, dark


def outlines(layer: rs274x.GerberFile, tolerance: float) -> tuple[list, list]:
    """The same from the library's own outlines of its primitives."""
    shapes, dark = [], []
    for item in layer.objects:
        for primitive in item.to_primitives(MM):
            outline = primitive.to_arc_poly() if not _still(primitive) else _disc(primitive)
            shapes.append(_filled(outline, tolerance))
            dark.append(bool(primitive.polarity_dark))
    return shapes, dark


def _still(primitive: object) -> bool:
    """A line without length, for whose outline the library would divide by zero."""
    return isinstance(primitive, Line) and (primitive.x1, primitive.y1) == (primitive.x2, primitive.y2)


def _disc(line: Line) -> ArcPoly:
    return Circle(line.x1, line.y1, line.width / 2).to_arc_poly()


def image(shapes: list, dark: list) -> shapely.Geometry:
    """Runs of equal polarity united, then added or taken away in file order."""
    result = shapely.Polygon()
    changes = np.flatnonzero(np.diff(np.array(dark, dtype=int))) + 1
    for run in np.split(np.arange(len(dark)), changes) if dark else []:
        part = shapely.union_all([shapes[index] for index in run])
        result = result.union(part) if dark[run[0]] else result.difference(part)
    return result


def _shape(primitive: object, tolerance: float) -> shapely.Geometry:
    if isinstance(primitive, Circle):
        return shapely.buffer(
            shapely.Point(primitive.x, primitive.y), primitive.r, quad_segs=_quarter(primitive.r, tolerance)
        )
    if isinstance(primitive, Line):
        line = shapely.LineString([(primitive.x1, primitive.y1), (primitive.x2, primitive.y2)])
        return shapely.buffer(line, primitive.width / 2, quad_segs=_quarter(primitive.width / 2, tolerance))
    if isinstance(primitive, Arc):
        start, end, centre = (
            (primitive.x1, primitive.y1),
            (primitive.x2, primitive.y2),
            (primitive.cx, primitive.cy),
        )
        line = shapely.LineString(_arc(start, end, centre, primitive.clockwise, tolerance))
        return shapely.buffer(line, primitive.width / 2, quad_segs=_quarter(primitive.width / 2, tolerance))
    if isinstance(primitive, Rectangle):  # the library's own outline of it is wrong once it is turned
        x, y, w, h = primitive.x, primitive.y, primitive.w / 2, primitive.h / 2
        box = shapely.box(x - w, y - h, x + w, y + h)
        return shapely.affinity.rotate(box, primitive.rotation, origin=(x, y), use_radians=True)
    polygon = primitive.to_arc_poly()
    return _filled(polygon, tolerance)


def _filled(polygon: ArcPoly, tolerance: float) -> shapely.Geometry:
    points: list[tuple[float, float]] = []
    for start, end, (clockwise, centre) in polygon.segments:
        points.append(start)
        if clockwise is not None:
            points.extend(_arc(start, end, centre, clockwise, tolerance)[1:-1])
    if len(points) < 3:
        return shapely.Polygon()
    shape = shapely.Polygon(points)
    return shape if shape.is_valid else shapely.make_valid(shape, method="structure", keep_collapsed=False)


def _quarter(radius: float, tolerance: float) -> int:
    if radius <= tolerance:
        return 4
    return max(4, math.ceil(math.pi / math.acos(1 - tolerance / radius) / 4))


def _arc(start, end, centre, clockwise, tolerance):
    radius = math.dist(start, centre)
    first = math.atan2(start[1] - centre[1], start[0] - centre[0])
    last = math.atan2(end[1] - centre[1], end[0] - centre[0])
    sweep = (first - last if clockwise else last - first) % (2 * math.pi) or 2 * math.pi
    count = max(2, math.ceil(sweep / (2 * math.acos(max(1 - tolerance / max(radius, 1e-9), 0.5)))))
    angles = first + np.linspace(0, sweep, count + 1) * (-1 if clockwise else 1)
    return [(centre[0] + radius * math.cos(a), centre[1] + radius * math.sin(a)) for a in angles]
