"""The true height of a sheet of laminate: drawn from a seed, from kinds no smooth model assumes.

Sheet frame: mm, seen from the copper side, origin at the lower left corner of the blank.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.geometry.points import Points, as_points

Floats = NDArray[np.float64]


class Kind(StrEnum):
    """What the sheet is like."""

    FLAT = "flat"
    BOWED = "bowed"
    RIPPLED = "rippled"
    DENTED = "dented"
    CREASED = "creased"
    MIXED = "mixed"


@dataclass(frozen=True, slots=True)
class Amounts:
    """Sizes of each irregularity, mm: bow and crease from edge to middle, ripple as rms."""

    bow: float = 0.0
    ripple: float = 0.0
    dent: float = 0.0
    crease: float = 0.0
    weave: float = 0.0


KINDS: dict[Kind, Amounts] = {
    Kind.FLAT: Amounts(weave=0.001),
    Kind.BOWED: Amounts(bow=0.15, ripple=0.004, weave=0.001),
    Kind.RIPPLED: Amounts(bow=0.05, ripple=0.014, weave=0.002),
    Kind.DENTED: Amounts(bow=0.05, ripple=0.004, dent=0.03, weave=0.001),
    Kind.CREASED: Amounts(bow=0.05, ripple=0.004, crease=0.05, weave=0.001),
    Kind.MIXED: Amounts(bow=0.12, ripple=0.008, dent=0.015, crease=0.015, weave=0.001),
}


@dataclass(frozen=True, slots=True, eq=False)
class Truth:
    """One sheet's height above its mean plane, mm.

    Attributes
    ----------
    bounds : (x0, y0, x1, y1), mm
    waves : (K, 4)
        Sinusoids: wave vector (1/mm, times 2π), phase, amplitude.
    dents : (D, 4)
        Compact dents: centre, radius, depth.
    creases : (C, 4)
        Folds along a line: unit normal, distance from the origin, rise per mm beyond it.
    bow : (6,)
        Coefficients of u², uv, v², u³, u²v, v⁴ with u, v in -1..1 over the sheet.
    """

    seed: int
    bounds: tuple[float, float, float, float]
    waves: Points
    dents: Points
    creases: Points
    bow: tuple[float, ...]

    @classmethod
    def draw(
        cls, seed: int, bounds: tuple[float, float, float, float], kind: Kind | str = Kind.MIXED
    ) -> Truth:
        """A sheet of a kind, the same for the same seed."""
        rng = np.random.default_rng((seed, 0x7A17))
        amounts = KINDS[Kind(kind)]
        waves = np.vstack(
            (
                _waves(rng, 24, (4.0, 18.0), amounts.ripple),
                _waves(rng, 8, (1.2, 2.5), amounts.weave),
            )
        )
        bow = rng.normal(0.0, amounts.bow / 2.0, 6) * np.array([1.0, 0.5, 1.0, 0.3, 0.3, 0.3])
        return cls(
            seed,
            bounds,
            as_points(waves, 4),
            _dents(rng, bounds, amounts.dent),
            _creases(rng, bounds, amounts.crease),
            tuple(float(c) for c in bow),
        )

    def height(self, points: ArrayLike) -> Floats:
        """(N,) height of the copper's top at (N, 2) sheet points, mm, nothing pressing on it."""
        p = np.atleast_2d(np.asarray(points, dtype=np.float64))[:, :2]
        x0, y0, x1, y1 = self.bounds
        u = (p[:, 0] - (x0 + x1) / 2.0) / max((x1 - x0) / 2.0, 1e-9)
        v = (p[:, 1] - (y0 + y1) / 2.0) / max((y1 - y0) / 2.0, 1e-9)
        a, b, c, d, e, f = self.bow
        total = a * u**2 + b * u * v + c * v**2 + d * u**3 + e * u**2 * v + f * v**4
        for kx, ky, phase, size in self.waves:
            if size:
                total += size * np.sin(kx * p[:, 0] + ky * p[:, 1] + phase)
        for x, y, radius, depth in self.dents:
            r2 = ((p[:, 0] - x) ** 2 + (p[:, 1] - y) ** 2) / radius**2
            total -= depth * np.maximum(0.0, 1.0 - r2) ** 2
        for nx, ny, distance, rise in self.creases:
            total += rise * np.maximum(0.0, p[:, 0] * nx + p[:, 1] * ny - distance)
        return np.asarray(total, dtype=np.float64)


def _waves(rng: np.random.Generator, count: int, lengths: tuple[float, float], rms: float) -> Floats:
    """Sinusoids with random direction; wavelengths even in their logarithm; ``rms`` in all."""
    wavelength = np.exp(rng.uniform(math.log(lengths[0]), math.log(lengths[1]), count))
    angle = rng.uniform(0.0, math.pi, count)
    weight = rng.rayleigh(1.0, count) * np.sqrt(wavelength / lengths[1])
    size = weight * rms * math.sqrt(2.0) / math.sqrt(float((weight**2).sum()))
    k = 2.0 * math.pi / wavelength
    return np.column_stack(
        (k * np.cos(angle), k * np.sin(angle), rng.uniform(0.0, 2.0 * math.pi, count), size)
    )


def _dents(rng: np.random.Generator, bounds: tuple[float, float, float, float], depth: float) -> Points:
    if not depth:
        return as_points([], 4)
    count = int(rng.integers(3, 9))
    x0, y0, x1, y1 = bounds
    return as_points(
        np.column_stack(
            (
                rng.uniform(x0, x1, count),
                rng.uniform(y0, y1, count),
                rng.uniform(3.0, 12.0, count),
                depth * rng.uniform(-0.5, 1.5, count),
            )
        ),
        4,
    )


def _creases(rng: np.random.Generator, bounds: tuple[float, float, float, float], rise: float) -> Points:
    if not rise:
        return as_points([], 4)
    x0, y0, x1, y1 = bounds
    size = max(x1 - x0, y1 - y0)
    angle = rng.uniform(0.0, 2.0 * math.pi, 2)
    nx, ny = np.cos(angle), np.sin(angle)
    distance = nx * rng.uniform(x0, x1, 2) + ny * rng.uniform(y0, y1, 2)
    return as_points(np.column_stack((nx, ny, distance, rng.uniform(-1.0, 1.0, 2) * rise / size * 2.0)), 4)
