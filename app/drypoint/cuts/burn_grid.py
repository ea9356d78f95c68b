"""A grid of small burnt fields, power against dwell: which of them marks best is seen, not computed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.errors import InputError
from drypoint.geometry.points import Points, as_points
from drypoint.wording import say

FIELD = 1.2
"""mm, side of a field."""
APART = 0.9
"""mm between fields."""
TICKS = 0.3
"""mm between the pulses of the line that marks the first field."""


@dataclass(frozen=True, slots=True)
class Cell:
    """One field: counted from the lower left; share of full power; dwell, s; middle, board frame, mm."""

    row: int
    column: int
    power: float
    dwell: float
    at: tuple[float, float]


@dataclass(frozen=True, slots=True, eq=False)
class BurnGrid:
    """What is burnt.

    Attributes
    ----------
    cells : tuple of Cell
        Power grows upwards, dwell to the right.
    rows : tuple of (N, 2)
        Pulses, weakest field first; the last row underlines the first field.
    power, dwell : (M,)
        Of every pulse, all rows one after the other.
    size : (width, height) mm
    """

    cells: tuple[Cell, ...]
    rows: tuple[Points, ...]
    power: NDArray[np.float64]
    dwell: NDArray[np.float64]
    size: tuple[float, float]

    def cell(self, row: int, column: int) -> Cell:
        """A field by its place.

        Raises
        ------
        InputError
            If there is none.
        """
        for one in self.cells:
            if (one.row, one.column) == (row, column):
                return one
        raise InputError(
            say("The grid has no field in row {row}, column {column}.", row=row + 1, column=column + 1),
            "burn grid",
        )


def plan_burn_grid(
    corner: tuple[float, float] = (0.0, 0.0),
    *,
    powers: Sequence[float] = (0.1, 0.2, 0.3, 0.4, 0.6, 0.8),
    dwells: Sequence[float] = (0.005, 0.01, 0.02, 0.04, 0.08),
    pitch: float = 0.1,
) -> BurnGrid:
    """Fields of pulses, lower left at ``corner`` (board frame).

    Parameters
    ----------
    powers : shares of full power, above 0, up to 1
    dwells : s
    pitch : of the pulses in a field, mm

    Raises
    ------
    InputError
        A power, dwell or pitch makes no sense.
    """
    strong, long = sorted(set(powers)), sorted(set(dwells))
    if not strong or not long or strong[0] <= 0 or strong[-1] > 1 or long[0] <= 0 or not 0 < pitch <= FIELD:
        raise InputError(
            "A burn grid needs powers above 0 up to 100 %, dwells above 0 and a pitch above 0.", "burn grid"
        )
    x0, y0 = corner
    step = FIELD + APART
    cells = [
        Cell(r, c, p, d, (x0 + c * step + FIELD / 2, y0 + APART + r * step + FIELD / 2))
        for r, p in enumerate(strong)
        for c, d in enumerate(long)
    ]
    order = sorted(cells, key=lambda one: (one.power * one.dwell, one.power))
    rows = [row for one in order for row in _field(one.at, pitch)]
    counts = [len(rows) // len(order)] * len(order)
    per_row = len(rows[0])
    power = np.repeat([one.power for one in order], np.array(counts) * per_row)
    dwell = np.repeat([one.dwell for one in order], np.array(counts) * per_row)
    ticks = as_points([(x, y0 + APART / 3) for x in np.arange(x0, x0 + FIELD + 1e-9, TICKS)])
    middle = order[len(order) // 2]
    return BurnGrid(
        tuple(cells),
        (*rows, ticks),
        np.concatenate((power, np.full(len(ticks), middle.power))),
        np.concatenate((dwell, np.full(len(ticks), middle.dwell))),
        (len(long) * step - APART, len(strong) * step),
    )


def _field(middle: tuple[float, float], pitch: float) -> list[Points]:
    """Rows of pulses to and fro over a square."""
    count = max(2, round(FIELD / pitch) + 1)
    offsets = (np.arange(count) - (count - 1) / 2.0) * (FIELD / (count - 1))
    rows = []
    for k, dy in enumerate(offsets.tolist()):
        along = offsets if k % 2 == 0 else offsets[::-1]
        rows.append(as_points(np.column_stack((middle[0] + along, np.full(count, middle[1] + dy)))))
    return rows
