"""The surface as a bilinear grid with a known error, so that warping can be exact on it.

Along a straight line inside one cell a bilinear grid is a quadratic, so the largest deviation from
a chord is known in closed form; only the borders of cells and the grid's own error remain.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points
from drypoint.program.settings import HeightLike
from drypoint.progress import Progress
from drypoint.surface.model import Surface

FIRST_PITCH = 1.0
"""Pitch tried first, mm: ripples of laminate are a few millimetres long."""
FINEST_PITCH = 0.1
"""Never finer than this, mm."""
MOST_NODES = 3_000_000
"""Never more nodes than this, for memory and time."""
GRID_SHARE = 0.2
"""Share of the chord error that the grid's own error may use."""
BATCH = 50_000
"""Points asked of the surface at once."""


@dataclass(frozen=True, slots=True, eq=False)
class HeightGrid:
    """Heights on a regular grid, machine frame.

    Attributes
    ----------
    origin : (x, y) of the first node, mm
    pitch : mm
    nodes : (ny, nx) heights, mm
    error : float
        Bound on the difference to the surface it was sampled from, mm.
    """

    origin: tuple[float, float]
    pitch: float
    nodes: NDArray[np.float64]
    error: float

    @property
    def highest(self) -> float:
        """Highest copper, mm, the grid's error included."""
        return float(self.nodes.max()) + self.error

    def units(self, points: Points) -> NDArray[np.float64]:
        """(N, 2) points counted in pitches from the first node."""
        scaled: NDArray[np.float64] = (points[:, :2] - np.asarray(self.origin)) / self.pitch
        return scaled

    def at_units(self, units: NDArray[np.float64]) -> NDArray[np.float64]:
        """(N,) heights at positions in pitches; held constant outside."""
        rows, columns = self.nodes.shape
        u = np.clip(units[:, 0], 0.0, columns - 1.0)
        v = np.clip(units[:, 1], 0.0, rows - 1.0)
        i = np.minimum(u.astype(np.int64), columns - 2)
        j = np.minimum(v.astype(np.int64), rows - 2)
        fu, fv = u - i, v - j
        below = self.nodes[j, i] * (1 - fu) + self.nodes[j, i + 1] * fu
        above = self.nodes[j + 1, i] * (1 - fu) + self.nodes[j + 1, i + 1] * fu
        heights: NDArray[np.float64] = below * (1 - fv) + above * fv
        return heights

    def mean(self, points: Points) -> NDArray[np.float64]:
        """(N,) heights at (N, 2) points, mm."""
        return self.at_units(self.units(points))


def flat_grid() -> HeightGrid:
    """The plane z = 0."""
    return HeightGrid((0.0, 0.0), 1.0, np.zeros((2, 2)), 0.0)


def sample(
    surface: HeightLike | None,
    points: Points,
    tolerance: float,
    progress: Progress | None = None,
) -> HeightGrid:
    """A grid over the extent of (N, 2) ``points`` whose error is below ``tolerance`` if possible.

    The pitch is halved until the grid before the last predicts the last one's new nodes (middles
    of its cells and of their edges) to twice the tolerance. Halving at least halves the error of
    linear interpolation (it quarters it where the surface is smooth), so half the difference seen
    is taken as the error of the last grid. Where the tolerance is not met at the finest pitch,
    ``error`` says by how much. A fitted `Surface` is read through its own lattice, the one that is
    shown and planned with, so no error is added.
    """
    if surface is None or not len(points):
        return flat_grid()
    low = points[:, :2].min(axis=0) - FIRST_PITCH
    high = points[:, :2].max(axis=0) + FIRST_PITCH
    if isinstance(surface, Surface):
        bounds = (float(low[0]), float(low[1]), float(high[0]), float(high[1]))
        lattice = surface.field(bounds, progress)
        return HeightGrid(lattice.origin, lattice.pitch, lattice.values[:, :, 0].T, 0.0)
    pitch = FIRST_PITCH / 2
    while True:
        nodes = _nodes(surface, low, high, pitch, progress)
        error = _difference(nodes) / 2
        count = nodes.size * 4
        if error <= tolerance or pitch / 2 < FINEST_PITCH or count > MOST_NODES:
            return HeightGrid((float(low[0]), float(low[1])), pitch, nodes, error)
        pitch /= 2


def _nodes(
    surface: HeightLike,
    low: NDArray[np.float64],
    high: NDArray[np.float64],
    pitch: float,
    progress: Progress | None,
) -> NDArray[np.float64]:
    """Heights on a grid with an even number of cells each way."""
    cells = 2 * np.ceil((high - low) / (2 * pitch) + 1e-9).astype(int)
    x = low[0] + pitch * np.arange(cells[0] + 1)
    y = low[1] + pitch * np.arange(cells[1] + 1)
    grid = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
    values = np.empty(len(grid))
    for start in range(0, len(grid), BATCH):
        if progress is not None:
            progress.step(start / len(grid), "Sampling the surface")
        values[start : start + BATCH] = surface.mean(grid[start : start + BATCH])
    return values.reshape(len(y), len(x))


def _difference(nodes: NDArray[np.float64]) -> float:
    """Largest difference between the nodes and what every other node predicts for them."""
    coarse = nodes[::2, ::2]
    across = (coarse[:, 1:] + coarse[:, :-1]) / 2
    up = (coarse[1:] + coarse[:-1]) / 2
    middle = (across[1:] + across[:-1]) / 2
    return float(
        max(
            np.abs(nodes[::2, 1::2] - across).max(),
            np.abs(nodes[1::2, ::2] - up).max(),
            np.abs(nodes[1::2, 1::2] - middle).max(),
        )
    )
