"""What part of the plane is seen, and how large."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

LEAST_SCALE, MOST_SCALE = 0.2, 4000.0
"""Limits of the zoom, px/mm."""


@dataclass(frozen=True, slots=True)
class Viewport:
    """A window of ``width`` × ``height`` px on the plane; y goes up in mm and down in px.

    Attributes
    ----------
    x, y : float
        Place shown in the middle, mm.
    scale : float
        px/mm (pixels at 100 %).
    """

    width: float
    height: float
    x: float = 0.0
    y: float = 0.0
    scale: float = 8.0

    def to_px(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N, 2) places in mm as (N, 2) px from the upper left."""
        given = np.asarray(points, dtype=np.float64).reshape(-1, 2)
        return (given - (self.x, self.y)) * (self.scale, -self.scale) + (self.width / 2, self.height / 2)

    def spot(self, x: float, y: float) -> tuple[float, float]:
        """One place in mm as px."""
        return (
            (x - self.x) * self.scale + self.width / 2,
            (self.y - y) * self.scale + self.height / 2,
        )

    def to_mm(self, px: float, py: float) -> tuple[float, float]:
        """One place in px as mm."""
        return (
            self.x + (px - self.width / 2) / self.scale,
            self.y - (py - self.height / 2) / self.scale,
        )

    @property
    def bounds(self) -> tuple[float, float, float, float]:
        """x0, y0, x1, y1 seen, mm."""
        dx, dy = self.width / 2 / self.scale, self.height / 2 / self.scale
        return self.x - dx, self.y - dy, self.x + dx, self.y + dy

    def resized(self, width: float, height: float) -> Viewport:
        """The same middle and scale in another size."""
        return replace(self, width=max(width, 1.0), height=max(height, 1.0))

    def panned(self, dx: float, dy: float) -> Viewport:
        """Moved so that what is drawn shifts by (dx, dy) px."""
        return replace(self, x=self.x - dx / self.scale, y=self.y + dy / self.scale)

    def zoomed(self, factor: float, px: float, py: float) -> Viewport:
        """Enlarged so that the place under (px, py) stays there."""
        scale = min(MOST_SCALE, max(LEAST_SCALE, self.scale * factor))
        x, y = self.to_mm(px, py)
        return replace(
            self,
            scale=scale,
            x=x - (px - self.width / 2) / scale,
            y=y + (py - self.height / 2) / scale,
        )

    def fitted(self, bounds: tuple[float, float, float, float], margin: float = 28.0) -> Viewport:
        """Showing all of ``bounds`` (x0, y0, x1, y1 mm) with ``margin`` px around."""
        x0, y0, x1, y1 = bounds
        wide = max(self.width - 2 * margin, 10.0) / max(x1 - x0, 1e-3)
        high = max(self.height - 2 * margin, 10.0) / max(y1 - y0, 1e-3)
        scale = min(MOST_SCALE, max(LEAST_SCALE, min(wide, high)))
        return replace(self, x=(x0 + x1) / 2, y=(y0 + y1) / 2, scale=scale)

    def centred(self, x: float, y: float) -> Viewport:
        """The same scale with (x, y) mm in the middle."""
        return replace(self, x=x, y=y)
