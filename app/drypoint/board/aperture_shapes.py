"""Shapes of apertures round the origin, mm: standard ones, with holes that are transparent.

Source of the parameters: The Gerber Layer Format Specification, revision 2021.02, chapter 4.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from drypoint.board.gerber_arcs import circle_points
from drypoint.errors import InputError
from drypoint.geometry.points import Points
from drypoint.wording import say

SIZE_LIMIT = 1.0e4
"""mm. No aperture is ten metres wide."""

NOTHING = Polygon()


def check_size(value: float, what: str) -> float:
    """``value`` if it is a usable size in mm.

    Raises
    ------
    InputError
        If it is negative, not finite or absurdly large.
    """
    if not 0.0 <= value <= SIZE_LIMIT:
        raise InputError(
            say("{what} of {value:g} mm is impossible.", what=what, value=value),
            hint="Check the aperture's parameters.",
        )
    return value


def circle(diameter: float, tolerance: float, at: tuple[float, float] = (0.0, 0.0)) -> Polygon:
    """A disc; empty where the diameter is zero."""
    if diameter <= 0.0:
        return NOTHING
    return Polygon(circle_points(diameter / 2.0, tolerance) + at)


def rectangle(width: float, height: float, at: tuple[float, float] = (0.0, 0.0)) -> Polygon:
    """A rectangle round ``at``; empty where a side is zero."""
    if width <= 0.0 or height <= 0.0:
        return NOTHING
    x, y = at
    return shapely.box(x - width / 2.0, y - height / 2.0, x + width / 2.0, y + height / 2.0)


def obround(width: float, height: float, tolerance: float) -> Polygon:
    """A rectangle whose shorter sides are half circles."""
    if width <= 0.0 or height <= 0.0:
        return NOTHING
    radius = min(width, height) / 2.0
    points = circle_points(radius, tolerance)
    if width == height:
        return Polygon(points)
    reach = (width / 2.0 - radius, height / 2.0 - radius)
    corners = [points + np.array(reach) * side for side in (1.0, -1.0)]
    hull = shapely.MultiPoint(np.vstack(corners)).convex_hull
    return hull if isinstance(hull, Polygon) else NOTHING


def polygon(diameter: float, vertices: int, rotation_deg: float) -> Polygon:
    """A regular polygon; its first vertex on +x before it is turned."""
    if diameter <= 0.0:
        return NOTHING
    angles = np.arange(vertices) * (2.0 * math.pi / vertices) + math.radians(rotation_deg)
    return Polygon(diameter / 2.0 * np.column_stack((np.cos(angles), np.sin(angles))))


def standard_shape(kind: str, values: tuple[float, ...], unit: float, tolerance: float) -> BaseGeometry:
    """The shape of a C, R, O or P aperture.

    Parameters
    ----------
    kind : str
        C, R, O or P.
    values : tuple of float
        Its parameters in file units (a polygon's vertices and rotation in degrees as they are).
    unit : float
        mm per file unit.
    tolerance : float
        Chord tolerance, mm.

    Raises
    ------
    InputError
        If parameters are missing, too many or impossible.
    """
    needed = {"C": 1, "R": 2, "O": 2, "P": 2}[kind]
    own = 3 if kind == "P" else needed
    if not needed <= len(values) <= own + 2:
        raise InputError(
            say("An aperture {kind} cannot have {count} parameters.", kind=kind, count=len(values))
        )
    hole = [check_size(value * unit, "An aperture hole") for value in values[own:]]
    if kind == "P":
        if not 3 <= values[1] <= 12 or values[1] != int(values[1]):
            raise InputError(
                say("A polygon aperture cannot have {values:g} corners.", values=values[1]),
                hint="3 to 12 are allowed.",
            )
        rotation = values[2] if len(values) > 2 else 0.0
        outer = polygon(check_size(values[0] * unit, "An aperture"), int(values[1]), rotation)
    else:
        size = [check_size(value * unit, "An aperture") for value in values[:own]]
        outer = _outer(kind, size, tolerance)
    return _without_hole(outer, hole, tolerance)


def _outer(kind: str, size: list[float], tolerance: float) -> Polygon:
    if kind == "C":
        return circle(size[0], tolerance)
    if kind == "R":
        return rectangle(size[0], size[1])
    return obround(size[0], size[1], tolerance)


def _without_hole(outer: Polygon, hole: list[float], tolerance: float) -> BaseGeometry:
    if not hole or outer.is_empty:
        return outer
    inner = circle(hole[0], tolerance) if len(hole) == 1 else rectangle(hole[0], hole[1])
    return outer.difference(inner)


def convex_outline(shape: BaseGeometry) -> Points:
    """(N, 2) vertices of the convex hull, counter-clockwise, not closed; (0, 2) if it has no area."""
    hull = shape.convex_hull
    if not isinstance(hull, Polygon) or hull.is_empty:
        return np.zeros((0, 2))
    points = shapely.get_coordinates(hull)[:-1]
    x, y = points.T
    area = float((x * np.roll(y, -1) - y * np.roll(x, -1)).sum())
    return points if area > 0.0 else points[::-1].copy()
