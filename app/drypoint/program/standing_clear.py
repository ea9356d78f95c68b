"""Where the bit of a program stands clear of the copper: on the clearance plane, or on a hop below it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from drypoint.program.builder import BETWEEN
from drypoint.program.model import MoveKind, Moves

_SAME = 1e-6
"""mm; heights nearer to each other than this are one."""


def stands_clear(moves: Moves) -> NDArray[np.bool_]:
    """(N,) whether the bit is clear of the copper at the end of each move.

    It is where it may go across: at the height of the lowest way that belongs to no cut, or higher.
    """
    height = moves.end[:, 2]
    if not len(height):
        return np.zeros(0, dtype=bool)
    top = float(height.max())
    between = moves.tag == BETWEEN
    across = np.zeros(len(height), dtype=bool)
    across[1:] = (np.abs(np.diff(moves.end[:, :2], axis=0)) > _SAME).any(axis=1)
    across[1:] &= np.abs(np.diff(height)) <= _SAME
    ways = height[across & between & (moves.kind != MoveKind.DWELL)]
    level = min(top, float(ways.min())) if len(ways) else top
    free: NDArray[np.bool_] = (height >= top - _SAME) | (between & (height >= level - _SAME))
    return free
