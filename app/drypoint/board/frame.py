"""From the design's coordinates to the board frame: mirrored once, origin at the outline's lower left."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, Polygon

from drypoint.board.model import Hole, Slot
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid


class Frame:
    """The way of one board into its frame.

    Attributes
    ----------
    to_design : Rigid
        The way back.
    """

    def __init__(self, outline: Polygon, *, mirror: bool) -> None:
        x0, y0, x1, _ = outline.bounds
        self._scale = np.array([-1.0 if mirror else 1.0, 1.0])
        self._shift = np.array([x1 if mirror else -x0, -y0])
        self.to_design = Rigid(0.0, (x1 if mirror else x0, y0), mirror)

    def points(self, points: NDArray[np.float64]) -> NDArray[np.float64]:
        """(N, 2) points."""
        moved: NDArray[np.float64] = points * self._scale + self._shift
        return moved

    def place(self, at: tuple[float, float]) -> tuple[float, float]:
        """One place."""
        x, y = self.points(np.array([at]))[0]
        return float(x), float(y)

    def shape(self, shape: Geometry) -> Geometry:
        """A geometry."""
        moved: Callable[[NDArray[np.float64]], NDArray[np.float64]] = self.points
        return shapely.transform(shape, moved)

    def shapes(self, shapes: Mapping[str, Geometry]) -> dict[str, Geometry]:
        """Geometries by name."""
        return {name: self.shape(shape) for name, shape in shapes.items()}

    def holes(self, holes: Sequence[Hole]) -> list[Hole]:
        """Holes."""
        if not holes:
            return []
        places = self.points(np.array([(hole.x, hole.y) for hole in holes])).tolist()
        return [replace(hole, x=x, y=y) for hole, (x, y) in zip(holes, places, strict=True)]

    def slots(self, slots: Sequence[Slot]) -> list[Slot]:
        """Slots."""
        return [replace(slot, path=as_points(self.points(slot.path))) for slot in slots]
