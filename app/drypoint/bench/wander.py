"""Where a drill really goes in: it slips a little before it bites, every time another way."""

from __future__ import annotations

import numpy as np
from numpy.random import Generator
from numpy.typing import NDArray

Floats = NDArray[np.float64]

SAME = 0.1
"""Strokes nearer to each other than this are in one hole, mm."""


class Wander:
    """Draws how far each hole lies from where it was meant, and keeps to it stroke by stroke.

    Parameters
    ----------
    spread : float
        Standard deviation per axis, mm; 0 for drills that never slip.
    """

    def __init__(self, rng: Generator, spread: float) -> None:
        self._rng, self._spread = rng, spread
        self._holes: list[tuple[Floats, Floats]] = []

    def off(self, place: Floats) -> Floats:
        """(2,) how far the hole at ``place`` (sheet frame, mm) lies from it, mm."""
        if self._spread <= 0.0:
            return np.zeros(2)
        for meant, off in self._holes:
            if float(np.abs(meant - place).max()) < SAME:
                return off
        off = self._rng.normal(0.0, self._spread, 2)
        self._holes.append((place.copy(), off))
        return off
