"""Rows of marks that cover a drawn shape as wide as it is drawn.

A stroke is covered from its edge inwards: a row half its own width inside the edge, the next one a
row's distance further in, until nothing is left. Where no such row fits, since the stroke is hardly wider
than a row, one row runs along its middle; so it does where a strip is left between two rows.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from shapely import Geometry

from drypoint.cuts.medial import centre_lines_of
from drypoint.geometry.points import Points, along, as_points

NARROWEST = 0.1
"""Strokes narrower than this, mm, are not looked for: finer than any legend that can be read."""
SHORTEST = 0.5
"""Centre lines shorter than this many of its width are twigs, unless nothing else marks their shape."""
APART = 0.1
"""Two rows nearer to each other than this share of a row's width are one row along the middle."""
LEFT = 0.12
"""A strip between rows that is narrower than this share of a row's width is covered well enough."""
MEET = 0.75
"""A hatch ends this share of a row's distance before the outline: its slanting ends leave corners."""
LEAN = 0.005
"""mm by which rows along edges are simplified."""


def row_width(spot: float, pitch: float) -> float:
    """Mean width of a row of pulses, mm: the area of overlapping discs over the row's length.

    Discs of diameter ``spot`` every ``pitch`` mm; less their lenses (plane geometry of two circles).
    Of rows whose discs do not meet, as much as of those that just do.
    """
    radius, half = spot / 2.0, min(pitch, spot) / 2.0
    lens = 2.0 * (radius**2 * math.acos(half / radius) - half * math.sqrt(radius**2 - half**2))
    return (math.pi * radius**2 - lens) / (2.0 * half)


def stroke_rows(part: Geometry, width: float, apart: float, *, single: bool = False) -> list[Points]:
    """Rows that cover one polygon; closed where first equals last.

    Parameters
    ----------
    part : polygon, any frame, mm
    width : of a row, mm
    apart : distance of rows, mm
    single : one row along the middle, however wide the stroke
    """
    if single:
        return _middles(part, part, width)
    rows = _edges(part, width, apart)
    covered = shapely.buffer(_as_one(rows), width / 2.0) if rows else None
    left = part if covered is None else _strips(shapely.difference(part, covered), width)
    return rows if shapely.is_empty(left) else rows + _middles(part, left, width)


def fill_rows(shape: Geometry, width: float, apart: float, angle: float) -> list[Points]:
    """Outline half a row inside, and a hatch within it at ``angle`` rad."""
    inner = shapely.buffer(shape, -width / 2.0)
    return _rings(inner) + _hatch(shapely.buffer(inner, -MEET * apart), apart, angle)


def _edges(part: Geometry, width: float, apart: float) -> list[Points]:
    """Rows along the edge, from outside in."""
    thin = APART * width / 2.0
    inner = _shrunk(part, width / 2.0, thin)
    rows: list[Points] = []
    while not shapely.is_empty(inner):
        rows += _rings(inner)
        inner = _shrunk(inner, apart, thin)
    return rows


def _shrunk(shape: Geometry, by: float, thin: float) -> Geometry:
    """A shape smaller by ``by`` all round, without what is thinner than twice ``thin`` then."""
    return shapely.buffer(shapely.buffer(shape, -by - thin), thin)


def _strips(left: Geometry, width: float) -> Geometry:
    """What of uncovered ground is wide enough to matter, with room round it for a row."""
    thin = LEFT * width / 2.0
    return shapely.buffer(shapely.buffer(left, -thin), thin + width / 4.0)


def _middles(part: Geometry, where: Geometry, width: float) -> list[Points]:
    """Rows along the middle of ``part`` as far as they lie in ``where``; else a mark in the middle of it."""
    lines: list[Points] = []
    for line in centre_lines_of(part, NARROWEST):
        if where is part:
            lines.append(line)
            continue
        inside = shapely.line_merge(shapely.intersection(shapely.LineString(line), where))
        pieces = [p for p in shapely.get_parts(inside) if p.geom_type == "LineString"]
        lines += [as_points(shapely.get_coordinates(p)) for p in pieces]
    kept = [line for line in lines if along(line)[-1] >= SHORTEST * width]
    met = _as_one(kept) if kept else None
    lone = [one for one in shapely.get_parts(where) if met is None or not shapely.intersects(one, met)]
    return kept + [row for one in lone for row in _lone(shapely.intersection(one, part), width)]


def _as_one(rows: list[Points]) -> Geometry:
    """All rows as one geometry."""
    return shapely.multilinestrings([shapely.LineString(row) for row in rows])


def _lone(strip: Geometry, width: float) -> list[Points]:
    """Rows for what no middle was found of: round it a little inside, or one mark in its middle."""
    rows = _rings(_shrunk(strip, width / 3.0, 0.15 * width))
    whole = shapely.get_parts(strip)
    areas = shapely.area(whole)
    if rows or not len(areas) or areas.max() <= 0.0:
        return rows
    return [as_points(shapely.get_coordinates(shapely.maximum_inscribed_circle(whole[areas.argmax()]))[:1])]


def _rings(shape: Geometry) -> list[Points]:
    """All rings of polygons."""
    parts = [p for p in shapely.get_parts(shape) if p.geom_type == "Polygon" and not p.is_empty]
    rings = [ring for part in parts for ring in (part.exterior, *part.interiors)]
    return [as_points(shapely.get_coordinates(ring.simplify(LEAN))) for ring in rings]


def _hatch(shape: Geometry, apart: float, angle: float) -> list[Points]:
    """Parallel rows through a shape."""
    if shapely.is_empty(shape):
        return []
    x0, y0, x1, y1 = shapely.bounds(shape).tolist()
    centre, reach = np.array([(x0 + x1) / 2.0, (y0 + y1) / 2.0]), math.hypot(x1 - x0, y1 - y0) / 2.0 + 1.0
    way = np.array([math.cos(angle), math.sin(angle)])
    side = np.array([-way[1], way[0]])
    count = math.ceil(reach / apart)
    offsets = np.arange(-count, count + 1)[:, None] * apart * side + centre
    ends = np.stack((offsets - reach * way, offsets + reach * way), axis=1)
    lines = np.asarray(shapely.linestrings(ends), dtype=object)
    shapely.prepare(shape)
    crossing = lines[shapely.intersects(lines, shape)]
    parts = shapely.get_parts(shapely.intersection(crossing, shape))
    return [as_points(shapely.get_coordinates(p)) for p in parts if p.geom_type == "LineString"]
