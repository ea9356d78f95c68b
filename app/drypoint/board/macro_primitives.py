"""The primitives of aperture macros, as shapes round the macro's origin.

Parameters as in The Gerber Layer Format Specification, revision 2021.02, chapter 4; the
deprecated ones (2, 6, 22) as in its chapter 8. Every primitive turns about the macro's origin, not
about its own centre.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

import numpy as np
import shapely
from shapely import affinity
from shapely.geometry.base import BaseGeometry

from drypoint.board.aperture_shapes import NOTHING, check_size, circle, polygon, rectangle
from drypoint.errors import InputError
from drypoint.geometry.points import Points
from drypoint.wording import say

_VERTEX_LIMIT = 5000
_RING_LIMIT = 100


class Reader:
    """The parameters of one primitive, taken in order: lengths become mm, numbers stay."""

    def __init__(self, values: Sequence[float], unit: float, tolerance: float) -> None:
        self._values = list(values)
        self._unit = unit
        self._next = 0
        self.tolerance = tolerance

    def number(self, default: float | None = None) -> float:
        """The next parameter as it is."""
        if self._next < len(self._values):
            self._next += 1
            return self._values[self._next - 1]
        if default is None:
            raise InputError("A macro primitive has too few parameters.", hint="Export the file again.")
        return default

    def count(self, lowest: int, highest: int, what: str) -> int:
        """The next parameter as a whole number between limits."""
        value = self.number()
        if not lowest <= value <= highest or abs(value - round(value)) > 1e-6:
            raise InputError(
                say("{what} cannot be {value:g}.", what=what, value=value),
                hint=say("{lowest} to {highest} is possible.", lowest=lowest, highest=highest),
            )
        return round(value)

    def size(self) -> float:
        """The next parameter as a length that is not negative, mm."""
        return check_size(self.number() * self._unit, "A macro primitive")

    def place(self) -> tuple[float, float]:
        """The next two parameters as a point, mm."""
        return self._coordinate(), self._coordinate()

    def _coordinate(self) -> float:
        value = self.number() * self._unit
        check_size(abs(value), "A macro coordinate")
        return value

    def places(self, count: int) -> list[tuple[float, float]]:
        """The next ``count`` points, mm."""
        return [self.place() for _ in range(count)]


def turned(shape: BaseGeometry, angle_deg: float) -> BaseGeometry:
    """The shape turned about the macro's origin; quarter turns are exact."""
    if angle_deg == 0.0 or shape.is_empty:
        return shape
    cosine, sine = exact_turn(angle_deg)
    return affinity.affine_transform(shape, [cosine, -sine, sine, cosine, 0.0, 0.0])


def exact_turn(angle_deg: float) -> tuple[float, float]:
    """Cosine and sine of an angle, without rounding at quarter turns."""
    quarters = {0.0: (1.0, 0.0), 90.0: (0.0, 1.0), 180.0: (-1.0, 0.0), 270.0: (0.0, -1.0)}
    angle_deg = math.fmod(angle_deg, 360.0)
    angle_deg += 360.0 if angle_deg < 0.0 else 0.0
    exact = quarters.get(angle_deg)
    return exact or (math.cos(math.radians(angle_deg)), math.sin(math.radians(angle_deg)))


def _circle(read: Reader) -> BaseGeometry:
    diameter = read.size()
    shape = circle(diameter, read.tolerance, read.place())
    return turned(shape, read.number(0.0))


def _vector_line(read: Reader) -> BaseGeometry:
    width = read.size()
    (x0, y0), (x1, y1) = read.places(2)
    reach = math.hypot(x1 - x0, y1 - y0)
    if reach == 0.0 or width == 0.0:
        return NOTHING
    nx, ny = (y0 - y1) / reach * width / 2.0, (x1 - x0) / reach * width / 2.0
    corners = [(x0 - nx, y0 - ny), (x1 - nx, y1 - ny), (x1 + nx, y1 + ny), (x0 + nx, y0 + ny)]
    return turned(shapely.Polygon(corners), read.number(0.0))


def _centre_line(read: Reader) -> BaseGeometry:
    width, height = read.size(), read.size()
    return turned(rectangle(width, height, read.place()), read.number(0.0))


def _lower_left_line(read: Reader) -> BaseGeometry:
    width, height = read.size(), read.size()
    x, y = read.place()
    return turned(rectangle(width, height, (x + width / 2.0, y + height / 2.0)), read.number(0.0))


def _outline(read: Reader) -> BaseGeometry:
    count = read.count(2, _VERTEX_LIMIT, "The number of corners of an outline")
    points = read.places(count + 1)
    return turned(filled(np.array(points)), read.number(0.0))


def filled(points: Points) -> BaseGeometry:
    """The area inside a contour; one that touches or crosses itself is put in order."""
    if len(points) < 3 or (points == points[0]).all():
        return NOTHING
    shape = shapely.Polygon(points)
    return shape if shape.is_valid else shapely.make_valid(shape, method="structure", keep_collapsed=False)


def _polygon(read: Reader) -> BaseGeometry:
    vertices = read.count(3, 100, "The number of corners of a polygon")
    at = read.place()
    shape = affinity.translate(polygon(read.size(), vertices, 0.0), *at)
    return turned(shape, read.number(0.0))


def _ring(outer: float, inner: float, read: Reader) -> BaseGeometry:
    disc = circle(outer, read.tolerance)
    return disc.difference(circle(inner, read.tolerance)) if inner > 0.0 else disc


def _moire(read: Reader) -> BaseGeometry:
    x, y = read.place()
    outer, thickness, gap = read.size(), read.size(), read.size()
    rings = read.count(0, _RING_LIMIT, "The number of rings")
    width, reach = read.size(), read.size()
    parts: list[BaseGeometry] = [rectangle(reach, width), rectangle(width, reach)]
    for ring in range(rings):
        diameter = outer - 2.0 * ring * (thickness + gap)
        if diameter <= 0.0 or thickness <= 0.0:
            break
        parts.append(_ring(diameter, diameter - 2.0 * thickness, read))
    return turned(affinity.translate(shapely.union_all(parts), x, y), read.number(0.0))


def _thermal(read: Reader) -> BaseGeometry:
    x, y = read.place()
    outer, inner, gap = read.size(), read.size(), read.size()
    bars = [rectangle(2.0 * outer, gap), rectangle(gap, 2.0 * outer)]
    shape = _ring(outer, inner, read).difference(shapely.union_all(bars))
    return turned(affinity.translate(shape, x, y), read.number(0.0))


PRIMITIVES: dict[int, Callable[[Reader], BaseGeometry]] = {
    1: _circle,
    2: _vector_line,
    4: _outline,
    5: _polygon,
    6: _moire,
    7: _thermal,
    20: _vector_line,
    21: _centre_line,
    22: _lower_left_line,
}
"""By code. All but 6 and 7 have the exposure before the parameters their function takes."""

ALWAYS_EXPOSED = frozenset((6, 7))
