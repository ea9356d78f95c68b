"""The chance that one spot is cut through, and how wide its groove is expected to be.

The tip ends at depth d + e − u below the copper's top: planned depth d, the surface's error
e ~ N(0, σ²) and the play u ~ U(0, B) by which Z lags. With margin m = d − t below the underside
of copper t thick and G(x) = xΦ(x) + φ(x), integrating Φ over the play gives

    P(through) = (σ/B) [G(m/σ) − G((m − B)/σ)]        (B = 0: Φ(m/σ))
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import ndtr

from drypoint.passes.model import THROUGH

_LITTLE = 1e-2
"""Play below this share of σ is taken as its mean: the formula would lose digits."""
_NEVER = -1e3
"""mm; a margin that is never through."""
_TINY = 1e-9
"""mm; a smaller spread is none."""
_DENSITY = 1.0 / np.sqrt(2.0 * np.pi)


def hinge(x: NDArray[np.float64]) -> NDArray[np.float64]:
    """G(x) = xΦ(x) + φ(x), the mean of max(0, x + z) for z ~ N(0, 1)."""
    return np.asarray(x * ndtr(x) + _DENSITY * np.exp(-0.5 * x * x))


def through(margin: ArrayLike, sigma: ArrayLike, play: ArrayLike = 0.0) -> NDArray[np.float64]:
    """Probability that a spot is cut through.

    Parameters
    ----------
    margin : array
        Mean planned depth below the copper's underside before play is taken off, mm.
    sigma : array
        Spread of the depth, mm; 0 for a height that is known.
    play : array
        Largest lag of Z, mm; uniform between 0 and this.

    Returns
    -------
    Array of the shape the arguments broadcast to, 0..1.
    """
    m, s, b = np.broadcast_arrays(
        np.asarray(margin, dtype=np.float64),
        np.asarray(sigma, dtype=np.float64),
        np.asarray(play, dtype=np.float64),
    )
    m = np.maximum(m, _NEVER)  # −inf, where no pass went
    safe = np.maximum(s, _TINY)
    wide = b > _LITTLE * safe
    span = np.where(wide, b, 1.0)
    with_play = safe / span * (hinge(m / safe) - hinge((m - b) / safe))
    result = np.where(wide, with_play, ndtr((m - 0.5 * b) / safe))
    return np.asarray(np.clip(result, 0.0, 1.0))


def margin_for(target: float, sigma: ArrayLike, play: float = 0.0) -> NDArray[np.float64]:
    """Margin (mm below the underside) at which P(through) is ``target``; shape of ``sigma``.

    Solved by bisection on a table of spreads and read between its entries (relative error below
    1e-3 of σ).
    """
    s = np.maximum(np.asarray(sigma, dtype=np.float64), _TINY)
    if s.size == 0:
        return np.zeros_like(s)
    table = np.geomspace(s.min(), s.max() * (1.0 + 1e-9), 96) if s.max() > s.min() else np.array([s.max()])
    low = -8.0 * table
    high = play + 8.0 * table
    for _ in range(60):
        middle = 0.5 * (low + high)
        enough = through(middle, table, play) >= target
        high = np.where(enough, middle, high)
        low = np.where(enough, low, middle)
    return np.interp(s, table, 0.5 * (low + high))


def doubtful(
    depth: float, copper: float, play: float = 0.0
) -> Callable[[NDArray[np.float64]], NDArray[np.float64]]:
    """From spreads of the height to how much of a spot would be doubtful at ``depth``.

    All of it where P(through) is below `THROUGH`; above, in proportion to the chance of not being
    through, so that every step towards certainty counts. For weighing further touches: ``depth``
    is what the grooves were laid out for, below the copper's top, mm.
    """

    def share(sigma: NDArray[np.float64]) -> NDArray[np.float64]:
        missing = 1.0 - through(depth - copper, sigma, play)
        return np.asarray(np.minimum(missing / (1.0 - THROUGH), 1.0))

    return share


def expected_width(
    depth: ArrayLike, sigma: ArrayLike, flat: float, slope: float, play: float = 0.0
) -> NDArray[np.float64]:
    """Expected groove width at the copper's top, mm.

    E[w] = flat · Φ(d/σ) + slope · σ G(d/σ), with the mean play taken off the depth.

    Parameters
    ----------
    depth, sigma : arrays
        Planned depth below the copper's top and its spread, mm.
    flat : float
        Width of the bit's flat tip plus run-out, mm.
    slope : float
        Width gained per depth, 2 tan(α/2).
    """
    d = np.asarray(depth, dtype=np.float64) - 0.5 * play
    s = np.maximum(np.asarray(sigma, dtype=np.float64), _TINY)
    return np.asarray(flat * ndtr(d / s) + slope * s * hinge(d / s))
