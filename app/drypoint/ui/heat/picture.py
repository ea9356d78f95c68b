"""A height model made ready to be drawn; may run in any thread."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.geometry.points import Points
from drypoint.ui.heat.contours import contour

Floats = NDArray[np.float64]
Field = Callable[[ArrayLike], Floats]
"""(N, 2) places, mm → (N,) mm."""

CONTOUR = 0.010
"""Distance of contours, mm."""
SIDE = 160
"""Columns or rows along the longer side of the picture."""


@dataclass(frozen=True, slots=True, eq=False)
class HeatPicture:
    """Heights over a rectangle; µm, places in mm.

    Attributes
    ----------
    x, y : (W,), (H,)
    mean, spread : (H, W) µm; spread is one standard deviation
    give : (H, W) µm or None where no place was touched twice
    touches : (N, 2) mm
    contours : (S, 2, 2) every 10 µm
    zero : (S, 2, 2) the contour of height zero
    """

    x: Floats
    y: Floats
    mean: Floats
    spread: Floats
    give: Floats | None
    touches: Points
    contours: Floats
    zero: Floats

    @property
    def bounds(self) -> tuple[float, float, float, float]:
        """x0, y0, x1, y1, mm."""
        return float(self.x[0]), float(self.y[0]), float(self.x[-1]), float(self.y[-1])

    def along(
        self, line: tuple[tuple[float, float], tuple[float, float]], count: int = 160
    ) -> tuple[Floats, Floats, Floats]:
        """Distance (mm), mean and spread (µm) along a line, by linear interpolation."""
        a, b = np.asarray(line[0]), np.asarray(line[1])
        share = np.linspace(0.0, 1.0, count)
        spots = a + share[:, None] * (b - a)
        mean = _between(self.mean, self.x, self.y, spots)
        spread = _between(self.spread, self.x, self.y, spots)
        return share * float(np.hypot(*(b - a))), mean, spread


def draw_heat(
    mean: Field,
    std: Field,
    bounds: tuple[float, float, float, float],
    touches: ArrayLike = (),
    give: ArrayLike | None = None,
) -> HeatPicture:
    """Make a height model ready to be drawn.

    Parameters
    ----------
    mean, std : callables
        Of (N, 2) places in the frame of ``bounds``, mm; give (N,) mm.
    bounds : x0, y0, x1, y1, mm
    touches : (N, 2) or (N, 3), mm
    give : (N,) mm, optional
        How far the laminate yielded at each touch.
    """
    x0, y0, x1, y1 = bounds
    pitch = max(x1 - x0, y1 - y0) / SIDE
    x = np.linspace(x0, x1, max(8, round((x1 - x0) / pitch) + 1))
    y = np.linspace(y0, y1, max(8, round((y1 - y0) / pitch) + 1))
    grid = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
    shape = (len(y), len(x))
    heights = np.asarray(mean(grid)).reshape(shape)
    spots = np.asarray(touches, dtype=np.float64)
    spots = spots.reshape(0, 2) if spots.size == 0 else spots[:, :2]
    low, high = np.ceil(heights.min() / CONTOUR), np.floor(heights.max() / CONTOUR)
    levels = [n * CONTOUR for n in np.arange(low, high + 1) if n != 0]
    lines = [contour(x, y, heights, level) for level in levels]
    return HeatPicture(
        x=x,
        y=y,
        mean=heights * 1e3,
        spread=np.asarray(std(grid)).reshape(shape) * 1e3,
        give=None if give is None else _spread_out(spots, np.asarray(give) * 1e3, grid).reshape(shape),
        touches=spots,
        contours=np.concatenate(lines) if lines else np.zeros((0, 2, 2)),
        zero=contour(x, y, heights, 0.0),
    )


def _between(field: Floats, x: Floats, y: Floats, spots: Points) -> Floats:
    """Values of an even grid at any place, bilinear; the edge's outside."""
    column = np.clip((spots[:, 0] - x[0]) / (x[-1] - x[0]) * (len(x) - 1), 0, len(x) - 1 - 1e-9)
    row = np.clip((spots[:, 1] - y[0]) / (y[-1] - y[0]) * (len(y) - 1), 0, len(y) - 1 - 1e-9)
    c, r = column.astype(int), row.astype(int)
    u, v = column - c, row - r
    low = field[r, c] * (1 - u) + field[r, c + 1] * u
    high = field[r + 1, c] * (1 - u) + field[r + 1, c + 1] * u
    mixed: Floats = low * (1 - v) + high * v
    return mixed


def _spread_out(spots: Points, values: Floats, grid: Points) -> Floats:
    """Values at scattered places carried to a grid: means weighted by the inverse square distance."""
    if len(spots) == 0:
        return np.zeros(len(grid))
    square = ((grid[:, None, :] - spots[None]) ** 2).sum(axis=2)
    weight = 1.0 / (square + 1e-6)
    carried: Floats = (weight @ values) / weight.sum(axis=1)
    return carried
