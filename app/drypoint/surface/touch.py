"""Touches: electrical contacts of bit and copper, machine frame (work coordinates), mm."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points, as_points


@dataclass(frozen=True, slots=True)
class Touch:
    """One place touched twice: fast, then slow after backing off.

    ``first`` and ``second`` are the heights of contact. ``first`` is None where only one touch was
    made. The first touch pushes a loose laminate down, so ``give`` = second - first.
    """

    x: float
    y: float
    second: float
    first: float | None = None

    @property
    def give(self) -> float:
        """How far the laminate yielded to the fast touch, mm; 0 if unknown."""
        return 0.0 if self.first is None else self.second - self.first


@dataclass(frozen=True, slots=True, eq=False)
class Touches:
    """All touches of one surface.

    Attributes
    ----------
    touches : tuple of Touch
    """

    touches: tuple[Touch, ...]

    @property
    def points(self) -> Points:
        """(N, 3) x, y and height of the slow touch."""
        return as_points([(t.x, t.y, t.second) for t in self.touches], 3)

    @property
    def give(self) -> NDArray[np.float64]:
        """(N,) give of each, mm."""
        return np.array([t.give for t in self.touches], dtype=np.float64)
