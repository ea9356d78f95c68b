"""The corners of the blank, as places to choose."""

from __future__ import annotations

from enum import StrEnum

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry


class Corner(StrEnum):
    """The corner of the blank that a trial cut lies nearest to."""

    LOWER_LEFT = "lower left"
    LOWER_RIGHT = "lower right"
    UPPER_LEFT = "upper left"
    UPPER_RIGHT = "upper right"

    def place(self, room: Geometry) -> NDArray[np.float64]:
        """(x, y) of that corner of a shape's extent."""
        x0, y0, x1, y1 = shapely.bounds(room).tolist()
        upper, right = self.startswith("upper"), self.endswith("right")
        return np.array([x1 if right else x0, y1 if upper else y0])

    @classmethod
    def nearest(cls, at: tuple[float, float], room: Geometry) -> Corner:
        """The corner of a shape's extent that a place lies nearest to."""
        return min(cls, key=lambda one: float(np.hypot(*(one.place(room) - at))))
