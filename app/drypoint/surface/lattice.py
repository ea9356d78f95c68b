"""A field on a regular lattice, read between its nodes: how a million points are answered fast.

Nodes computed exactly on a coarse lattice are refined by a natural cubic spline, then read
bilinearly in blocks that stay in the processor's cache.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.interpolate import make_interp_spline

_BLOCK = 16384
"""Points read at once: their temporaries fit the cache."""


@dataclass(frozen=True, slots=True, eq=False)
class Lattice:
    """Values on nodes ``origin + pitch · (i, j)``; machine frame, mm.

    Attributes
    ----------
    values : (columns, rows, fields) float64
        First index along x, second along y, one or more fields last.
    """

    origin: tuple[float, float]
    pitch: float
    values: NDArray[np.float64]

    @property
    def bounds(self) -> tuple[float, float, float, float]:
        """x0, y0, x1, y1 covered, mm."""
        columns, rows = self.values.shape[:2]
        x0, y0 = self.origin
        return x0, y0, x0 + (columns - 1) * self.pitch, y0 + (rows - 1) * self.pitch

    def covers(self, bounds: tuple[float, float, float, float]) -> bool:
        """Whether a box lies inside."""
        x0, y0, x1, y1 = self.bounds
        return x0 <= bounds[0] and y0 <= bounds[1] and x1 >= bounds[2] and y1 >= bounds[3]

    def nodes(self) -> NDArray[np.float64]:
        """(columns · rows, 2) places of the nodes, x slowest."""
        columns, rows = self.values.shape[:2]
        x = self.origin[0] + self.pitch * np.arange(columns)
        y = self.origin[1] + self.pitch * np.arange(rows)
        return np.stack(np.meshgrid(x, y, indexing="ij"), axis=-1).reshape(-1, 2)

    def refined(self, times: int) -> Lattice:
        """The same field with nodes ``times`` closer, by cubic splines along both axes."""
        values = self.values
        for axis in (0, 1):
            count = values.shape[axis]
            if count < 4:
                return self
            fine = np.linspace(0.0, count - 1.0, (count - 1) * times + 1)
            values = make_interp_spline(np.arange(count), values, k=3, axis=axis)(fine)
        return Lattice(self.origin, self.pitch / times, np.ascontiguousarray(values))

    def read(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N, fields) values at ``points`` (N, 2), bilinear; the edge's value beyond the edge."""
        places = np.asarray(points, dtype=np.float64)
        columns, rows, fields = self.values.shape
        result = np.empty((len(places), fields))
        flat = [np.ascontiguousarray(self.values[:, :, k]).ravel() for k in range(fields)]
        for start in range(0, len(places), _BLOCK):
            block = places[start : start + _BLOCK]
            i, fx = _cell(block[:, 0], self.origin[0], self.pitch, columns)
            j, fy = _cell(block[:, 1], self.origin[1], self.pitch, rows)
            corner = i * rows + j
            for k, field in enumerate(flat):
                low = field[corner]
                low += fy * (field[corner + 1] - low)
                corner_up = corner + rows
                high = field[corner_up]
                high += fy * (field[corner_up + 1] - high)
                result[start : start + _BLOCK, k] = low + fx * (high - low)
        return result


def _cell(
    values: NDArray[np.float64], origin: float, pitch: float, count: int
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Index of the cell each value lies in and its share of the way through, both clamped."""
    scaled = np.clip((values - origin) * (1.0 / pitch), 0.0, count - 1.0)
    index = np.minimum(scaled.astype(np.int64), count - 2)
    return index, scaled - index


def spanning(
    bounds: tuple[float, float, float, float], pitch: float, fields: int, most: int = 40_000
) -> Lattice:
    """An empty lattice over a box, with a wider pitch where it would have too many nodes."""
    x0, y0, x1, y1 = bounds
    while True:
        columns = max(2, int(np.ceil((x1 - x0) / pitch)) + 1)
        rows = max(2, int(np.ceil((y1 - y0) / pitch)) + 1)
        if columns * rows <= most:
            return Lattice((x0, y0), pitch, np.zeros((columns, rows, fields)))
        pitch *= 1.25
