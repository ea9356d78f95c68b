"""Apertures as the file defines them, and as tools: mirrored, turned and scaled, ready to place."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import TypeAlias

import shapely
from shapely import affinity
from shapely.geometry.base import BaseGeometry

from drypoint.board.aperture_shapes import NOTHING, convex_outline
from drypoint.board.attributes import NO_ATTRIBUTES, Attributes
from drypoint.board.gerber_arcs import circle_points
from drypoint.geometry.points import Points

Matrix: TypeAlias = tuple[float, float, float, float]
"""a b c d of x' = a x + b y, y' = c x + d y; a similarity (mirror, turn and scale only)."""

IDENTITY: Matrix = (1.0, 0.0, 0.0, 1.0)


def product(outer: Matrix, inner: Matrix) -> Matrix:
    """The matrix that applies ``inner`` first."""
    a, b, c, d = outer
    e, f, g, h = inner
    return (a * e + b * g, a * f + b * h, c * e + d * g, c * f + d * h)


def scale_of(matrix: Matrix) -> float:
    """By how much lengths grow."""
    return math.sqrt(abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]))


@dataclass(frozen=True, slots=True, eq=False)
class Aperture:
    """What an AD command defines.

    Attributes
    ----------
    build : callable
        Chord tolerance in mm to the shape round the origin, mm.
    diameter : float or None
        Of a plain round aperture, mm; it may be zero.
    attributes : Attributes
        Attached when it was defined.
    """

    build: Callable[[float], BaseGeometry]
    diameter: float | None = None
    attributes: Attributes = NO_ATTRIBUTES


@dataclass(frozen=True, slots=True, eq=False)
class Tool:
    """An aperture in one orientation and size.

    ``outline`` is the convex hull, counter-clockwise, for sweeping; ``diameter`` is None unless it
    is a plain disc.
    """

    shape: BaseGeometry
    outline: Points
    diameter: float | None
    vertices: int


class Toolbox:
    """Builds each tool once; tools are known by number."""

    def __init__(self, tolerance: float) -> None:
        self.tolerance = tolerance
        self.tools: list[Tool] = []
        self._sources: list[tuple[Aperture, Matrix]] = []
        self._numbers: dict[tuple[int, Matrix], int] = {}

    def number(self, aperture: Aperture, matrix: Matrix = IDENTITY) -> int:
        """The number of the tool for an aperture seen through ``matrix``.

        Raises
        ------
        InputError
            If the aperture's parameters are impossible.
        """
        key = (id(aperture), matrix)
        found = self._numbers.get(key)
        if found is None:
            found = self._numbers[key] = len(self.tools)
            self.tools.append(_tool(aperture, matrix, self.tolerance))
            self._sources.append((aperture, matrix))  # keeps the aperture alive: its id is the key
        return found

    def turned(self, number: int, matrix: Matrix) -> int:
        """The number of the tool that is another one seen through ``matrix``."""
        if matrix == IDENTITY:
            return number
        aperture, inner = self._sources[number]
        return self.number(aperture, product(matrix, inner))


def _tool(aperture: Aperture, matrix: Matrix, tolerance: float) -> Tool:
    scale = scale_of(matrix)
    if aperture.diameter is not None:
        diameter = aperture.diameter * scale
        points = circle_points(diameter / 2.0, tolerance)[: None if diameter > 0.0 else 0]
        shape: BaseGeometry = shapely.Polygon(points) if diameter > 0.0 else NOTHING
        return Tool(shape, points, diameter, len(points) + 1)
    shape = aperture.build(tolerance / scale if scale > 0.0 else tolerance)
    if matrix != IDENTITY:
        a, b, c, d = matrix
        shape = affinity.affine_transform(shape, [a, b, c, d, 0.0, 0.0])
    return Tool(shape, convex_outline(shape), None, int(shapely.get_num_coordinates(shape)))
