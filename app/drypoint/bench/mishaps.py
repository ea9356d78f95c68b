"""What should never happen, looked for in what the tip did."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from drypoint.bench.imperfect import Mishap
from drypoint.bench.sheet import Sheet

Floats = NDArray[np.float64]

DRAG = 0.02
"""A still bit dragged sideways deeper than this in copper is a mishap, mm."""
DRIVEN = 0.3
"""A still bit driven deeper than this is one, mm."""
FITS = 0.05
"""A bit that presses on the wall of a hole by less than this is none, mm."""
STEP = 1e-4
"""Motion smaller than this is none, mm."""


def look(
    sheet: Sheet,
    tips: Floats,
    at: NDArray[np.int64],
    depth: Floats,
    rapid: NDArray[np.bool_],
    still: float | None,
) -> list[Mishap]:
    """Mishaps, one of each kind at most.

    Parameters
    ----------
    tips : (N, 3) space
    at : (M,) which of them are low; ``depth`` (M,) below the copper's top and ``rapid`` (M,) are of these
    still : diameter of a bit that does not turn, mm; None while it turns
    """
    step = tips[at] - tips[np.maximum(at - 1, 0)]
    sideways = np.hypot(step[:, 0], step[:, 1]) > STEP
    down = step[:, 2] < -STEP
    deep = depth > DRAG
    found = [(rapid & deep & (sideways | down), "a rapid move in the copper")]
    if still is not None:
        dragged, driven = deep & sideways, deep & down & (depth > DRIVEN)
        if dragged.any() or driven.any():
            free = _in_a_hole(sheet, tips[at], float(depth.max()), still)
            dragged, driven = dragged & ~free, driven & ~free
        found.append((dragged, "a still bit was dragged through the copper"))
        found.append((driven, "a still bit was driven into the copper"))
    first = [(tips[at[int(mask.argmax())]].tolist(), what) for mask, what in found if mask.any()]
    return [Mishap(what, (x, y, z)) for (x, y, z), what in first]


def _in_a_hole(sheet: Sheet, tips: Floats, depth: float, shank: float) -> NDArray[np.bool_]:
    """(N,) whether the bit stands freely in a hole that goes down this far."""
    free = np.zeros(len(tips), dtype=bool)
    where = sheet.to_sheet(tips[:, :2])
    for x, y, diameter in sheet.up.holes(min(depth, sheet.board)):
        free |= np.hypot(where[:, 0] - x, where[:, 1] - y) <= (diameter - shank) / 2.0 + FITS
    return free
