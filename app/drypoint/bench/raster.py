"""A picture of the copper: what is left, scratched, cut through, or bored, cell by cell."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

import numpy as np
from numpy.typing import NDArray

from drypoint.bench.copper import Copper

Floats = NDArray[np.float64]

FINE = 0.01
"""Radii are told apart to this many mm."""


class Cell(IntEnum):
    """What a cell of the picture shows; a higher one hides a lower."""

    COPPER = 0
    SCRATCHED = 1
    THROUGH = 2
    BORED = 3


@dataclass(frozen=True, slots=True, eq=False)
class Picture:
    """(rows, columns) of `Cell`, row 0 at the lower edge; ``pitch`` mm a cell, sheet frame."""

    cells: NDArray[np.uint8]
    pitch: float


class Raster:
    """Keeps a picture of one face; only what was cut since the last look is drawn anew.

    Parameters
    ----------
    copper : Copper
    board : float
        Thickness of the laminate, mm.
    pitch : float
        Side of a cell, mm.
    """

    def __init__(self, copper: Copper, board: float, pitch: float = 0.05) -> None:
        x0, y0, x1, y1 = copper.blank.bounds
        self._copper, self._board, self._pitch = copper, board, pitch
        self._origin = np.array((x0, y0))
        shape = (int(np.ceil((y1 - y0) / pitch)), int(np.ceil((x1 - x0) / pitch)))
        self._cells = np.zeros(shape, dtype=np.uint8)
        self._drawn = 0

    def picture(self) -> Picture:
        """The copper as it is now."""
        sweeps = self._copper.sweeps
        for sweep in sweeps[self._drawn :]:
            for cell, level in (
                (Cell.SCRATCHED, 0.0),
                (Cell.THROUGH, self._copper.thickness),
                (Cell.BORED, self._board),
            ):
                width = sweep.shape.width(sweep.depth - level)
                self._stamp(sweep.path, width / 2.0, int(cell))
        self._drawn = len(sweeps)
        return Picture(self._cells.copy(), self._pitch)

    def _stamp(self, path: Floats, radius: Floats, value: int) -> None:
        """Draw discs: all offsets of a disc at once for all centres of about one radius."""
        rank = np.round(radius / FINE).astype(np.int64)
        for step in np.unique(rank[rank > 0]):
            size = float(step) * FINE / self._pitch
            reach = int(np.ceil(size))
            dy, dx = np.mgrid[-reach : reach + 1, -reach : reach + 1]
            inside = np.hypot(dx, dy) <= max(size, 0.5)
            centres = np.unique(
                np.floor((path[rank == step] - self._origin) / self._pitch).astype(np.int64), axis=0
            )
            columns = centres[:, 0, None] + dx[inside][None, :]
            rows = centres[:, 1, None] + dy[inside][None, :]
            height, width = self._cells.shape
            on = (columns >= 0) & (columns < width) & (rows >= 0) & (rows < height)
            at = (rows[on], columns[on])
            self._cells[at] = np.maximum(self._cells[at], value)
