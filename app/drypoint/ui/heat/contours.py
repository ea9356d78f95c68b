"""Contour lines of a height field by marching squares, all cells at once."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

# Edges of a cell: 0 low, 1 right, 2 high, 3 left. Which two are joined for each of the 16 cases,
# corners counted from the lower left anticlockwise; cases 5 and 10 (saddles) have two lines.
_CASES = np.full((16, 2, 2), -1)
for _case, _pairs in {
    1: [(3, 0)],
    2: [(0, 1)],
    3: [(3, 1)],
    4: [(1, 2)],
    5: [(3, 0), (1, 2)],
    6: [(0, 2)],
    7: [(3, 2)],
    8: [(2, 3)],
    9: [(2, 0)],
    10: [(0, 1), (2, 3)],
    11: [(2, 1)],
    12: [(1, 3)],
    13: [(1, 0)],
    14: [(0, 3)],
}.items():
    _CASES[_case, : len(_pairs)] = _pairs


def contour(x: Floats, y: Floats, z: Floats, height: float) -> Floats:
    """Segments of one contour.

    Parameters
    ----------
    x, y : (W,), (H,) places of the columns and rows
    z : (H, W) heights
    height : float

    Returns
    -------
    (S, 2, 2) array
        Two ends (x, y) of each segment.
    """
    corners = np.stack((z[:-1, :-1], z[:-1, 1:], z[1:, 1:], z[1:, :-1]))
    case = ((corners >= height) * np.array([1, 2, 4, 8])[:, None, None]).sum(axis=0)
    found = []
    for line in (0, 1):
        joined = _CASES[case, line]
        rows, columns = np.nonzero(joined[..., 0] >= 0)
        ends = [
            _crossing(x, y, corners[:, rows, columns], rows, columns, joined[rows, columns, k], height)
            for k in (0, 1)
        ]
        found.append(np.stack(ends, axis=1))
    return np.concatenate(found)


def _crossing(
    x: Floats,
    y: Floats,
    corners: Floats,
    rows: NDArray[np.int64],
    columns: NDArray[np.int64],
    edge: NDArray[np.int64],
    height: float,
) -> Floats:
    """Where the height is met on one edge of each cell, linearly between its corners."""
    each = np.arange(len(rows))
    a, b = corners[edge, each], corners[(edge + 1) % 4, each]
    step = np.where(a == b, 1.0, b - a)
    share = np.clip((height - a) / step, 0.0, 1.0)
    corner_x = np.stack((x[columns], x[columns + 1], x[columns + 1], x[columns]))
    corner_y = np.stack((y[rows], y[rows], y[rows + 1], y[rows + 1]))
    px = corner_x[edge, each] + share * (corner_x[(edge + 1) % 4, each] - corner_x[edge, each])
    py = corner_y[edge, each] + share * (corner_y[(edge + 1) % 4, each] - corner_y[edge, each])
    return np.stack((px, py), axis=1)
