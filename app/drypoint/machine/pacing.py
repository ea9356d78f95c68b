"""Which lines are sent alone, so that a lost one cannot lead the machine astray.

Character counting keeps the machine fed, but a line that vanishes among others is missed only after
those behind it have been executed: without its corner, or without its lift. A line that is sent when
nothing else is in flight can be missed at no cost, since nothing follows it before its answer is in;
the planner, which still holds the lines before, bridges the round trip. So lines that last long, that
lift, sink, jump or switch go alone; only quick lines in a crowd are counted, and a gap of one of those
is shorter than `LONG`.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.ndimage import uniform_filter1d

LONG = 0.1
"""A line that takes at least so long is sent alone, s: half a millimetre at 300 mm/min."""

UNHURRIED = 0.03
"""Where lines take so long on average they are sent alone, s: well above the round trip of a line and
its answer over a USB serial converter (up to about 16 ms; common practice, no source)."""

WINDOW = 15
"""Lines over which the average is taken: about what a planner holds."""


def sent_alone(seconds: ArrayLike) -> NDArray[np.bool_]:
    """(L,) whether each line is sent with nothing else in flight.

    Parameters
    ----------
    seconds : (L,) array
        Least time that each line takes, s; infinite for whatever is no plain cut.
    """
    least = np.asarray(seconds, dtype=np.float64)
    if not len(least):
        return np.zeros(0, dtype=bool)
    average = uniform_filter1d(np.minimum(least, LONG), WINDOW, mode="nearest")
    return np.asarray((least >= LONG) | (average >= UNHURRIED), dtype=bool)
