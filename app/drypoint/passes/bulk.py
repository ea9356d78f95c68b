"""Reach of a million spots at once: the same probabilities from tables, in cache-sized blocks.

The spread comes from a lattice, G(x) = xΦ(x) + φ(x) from a table of values and slopes whose end
cells extrapolate exactly (G is 0 far to the left and x far to the right).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points
from drypoint.passes.chance import hinge, through
from drypoint.surface.lattice import Lattice

_BLOCK = 8192
_HALF = 6.5
"""Table's half range in standard deviations: beyond it G differs from its limit by 1e-12."""
_PER_UNIT = 512.0
_LEAST_PLAY = 0.05
"""Play below this share of the smallest spread: the table's error of 2e-7 would grow too much."""


@dataclass(frozen=True, slots=True, eq=False)
class HingeTable:
    """G(x) by linear interpolation; error at most 2e-7."""

    value: NDArray[np.float64]
    slope: NDArray[np.float64]

    @classmethod
    def make(cls) -> HingeTable:
        """The table over ±6.5."""
        count = int(2 * _HALF * _PER_UNIT)
        nodes = -_HALF + np.arange(count + 1) / _PER_UNIT
        values = hinge(nodes)
        values[0], values[-1] = 0.0, _HALF
        slope = np.diff(values)
        slope[0], slope[-1] = 0.0, 1.0 / _PER_UNIT
        return cls(values[:-1], slope)

    def at(self, scaled: NDArray[np.float64]) -> NDArray[np.float64]:
        """G at x = scaled/512 − 6.5; ``scaled`` is used up."""
        index = np.maximum(scaled, 0.0)
        np.minimum(index, len(self.value) - 1.0, out=index)
        cell = index.astype(np.intp)
        scaled -= cell
        scaled *= self.slope.take(cell)
        scaled += self.value.take(cell)
        return scaled


def reach_from_lattice(
    places: Points,
    depths: Sequence[NDArray[np.float64]],
    spread: Lattice,
    *,
    copper: float,
    play: float,
) -> NDArray[np.float64]:
    """(N,) probability to be through at ``places`` after passes to ``depths``.

    Parameters
    ----------
    places : (N, 2) machine frame, mm
    depths : one (N,) array per pass, mm below the copper's top; −inf where it did not go
    spread : lattice whose last field is the spread of the height, mm
    copper, play : mm

    Equal to `chance.through` at the lattice's spread within 2e-5.
    """
    field = np.ascontiguousarray(spread.values[:, :, -1])
    lowest = float(field.min())
    rows = field.shape[1]
    flat = field.ravel()
    exact = play < _LEAST_PLAY * max(float(field.max()), 1e-9) or lowest <= 0.0
    table = HingeTable.make()
    result = np.empty(len(places))
    inverse = 1.0 / spread.pitch
    limit = (field.shape[0] - 1.0 - 1e-9, rows - 1.0 - 1e-9)
    x, y = places[:, 0], places[:, 1]
    for start in range(0, len(places), _BLOCK):
        part = slice(start, start + _BLOCK)
        fx = _scaled(x[part], spread.origin[0], inverse, limit[0])
        fy = _scaled(y[part], spread.origin[1], inverse, limit[1])
        i, j = fx.astype(np.intp), fy.astype(np.intp)
        fx -= i
        fy -= j
        i *= rows
        i += j
        sigma = _bilinear(flat, i, rows, fx, fy)
        margin = depths[0][part] - copper
        for deeper in depths[1:]:
            np.maximum(margin, deeper[part] - copper, out=margin)
        if exact:
            result[part] = through(margin, sigma, play)
        else:
            result[part] = _through(margin, sigma, play, table)
    return result


def _scaled(values: NDArray[np.float64], origin: float, inverse: float, limit: float) -> NDArray[np.float64]:
    scaled = values - origin
    scaled *= inverse
    np.maximum(scaled, 0.0, out=scaled)
    np.minimum(scaled, limit, out=scaled)
    return scaled


def _bilinear(
    flat: NDArray[np.float64],
    corner: NDArray[np.intp],
    rows: int,
    fx: NDArray[np.float64],
    fy: NDArray[np.float64],
) -> NDArray[np.float64]:
    low = flat.take(corner)
    corner += 1
    step = flat.take(corner)
    step -= low
    step *= fy
    low += step
    corner += rows
    high_end = flat.take(corner)
    corner -= 1
    high = flat.take(corner)
    high_end -= high
    high_end *= fy
    high += high_end
    high -= low
    high *= fx
    low += high
    return low


def _through(
    margin: NDArray[np.float64], sigma: NDArray[np.float64], play: float, table: HingeTable
) -> NDArray[np.float64]:
    """P = (σ/B)[G(m/σ) − G((m − B)/σ)] from the table."""
    per = _PER_UNIT / sigma
    np.maximum(margin, -1e3, out=margin)  # −inf, where no pass went
    upper = margin * per
    per *= play
    lower = upper - per
    upper += _HALF * _PER_UNIT
    lower += _HALF * _PER_UNIT
    chance = table.at(upper)
    chance -= table.at(lower)
    chance *= _PER_UNIT
    chance /= per
    np.maximum(chance, 0.0, out=chance)
    np.minimum(chance, 1.0, out=chance)
    return chance
