"""Waves: ripple that keeps its period over the whole board.

A bent lead screw lifts the axis once a turn, a rolled or pressed sheet carries the pattern of its
tools. To a process that forgets its height after some millimetres such a wave is noise; once its
period and direction are known it is foretold everywhere. Each wave is a cosine of the distance
times a slow Gaussian decay, with amplitude and phase left to the touches; a spectral component
as in Wilson & Adams, "Gaussian process kernels for pattern discovery and extrapolation" (2013).

They are looked for one after another: the one that makes the touches most likely is taken up if
its evidence outweighs the number of waves that could have been picked by chance.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points
from drypoint.progress import Progress
from drypoint.surface.kriging import Conditioned

SIZE = 0.010
"""mm, expected height of a wave before it is seen (standard deviation of each of its halves)."""
KEEPS = 100.0
"""mm over which a wave keeps in step."""
_SHORTEST, _LONGEST = 3.0, 15.0
"""mm; shorter ones than half the usual way between touches cannot be told from longer ones."""
MOST = 6
"""Waves looked for at most."""
_ENOUGH = 24
"""Fewer touches are explained by some wave whatever they are."""
_FEATURES = 256
"""Random features a drawn wave is made of."""
_REFINED = 6
"""Candidates whose period is refined before the best is chosen."""


@dataclass(frozen=True, slots=True, eq=False)
class Waves:
    """Waves by their wave vectors, machine frame.

    Attributes
    ----------
    vectors : (W, 2)
        rad/mm.
    blur : (W, 2, 2)
        Covariance of the vectors: how well period and direction are known, (rad/mm)². Averaged
        over it a cosine becomes a cosine with Gaussian decay.
    """

    vectors: NDArray[np.float64]
    blur: NDArray[np.float64]

    @classmethod
    def none(cls) -> Waves:
        """No wave."""
        return cls(np.zeros((0, 2)), np.zeros((0, 2, 2)))

    def __len__(self) -> int:
        return len(self.vectors)

    @property
    def lengths(self) -> NDArray[np.float64]:
        """(W,) crest to crest, mm."""
        return np.asarray(2.0 * np.pi / np.hypot(*self.vectors.T))

    @property
    def variance(self) -> float:
        """Of all together before any touch, mm²."""
        return len(self) * SIZE**2

    def heights(self, touches: Points) -> NDArray[np.float64]:
        """(W,) crest to trough, mm: the waves and a plane laid through touches (N, 3) by least squares."""
        x, y, z = touches.T
        turn = touches[:, :2] @ self.vectors.T
        terms = np.column_stack((np.ones(len(x)), x, y, np.cos(turn), np.sin(turn)))
        found = np.linalg.lstsq(terms, z, rcond=None)[0][3:]
        return np.asarray(2.0 * np.hypot(found[: len(self)], found[len(self) :]))

    def joined(self, other: Waves) -> Waves:
        """These and the others."""
        return Waves(np.vstack((self.vectors, other.vectors)), np.vstack((self.blur, other.blur)))

    def covariance(self, a: Points, b: Points) -> NDArray[np.float64]:
        """(len(a), len(b)) covariance, mm²."""
        total = np.zeros((len(a), len(b)))
        if not len(self):
            return total
        dx = a[:, None, 0] - b[None, :, 0]
        dy = a[:, None, 1] - b[None, :, 1]
        for (kx, ky), blur in zip(self.vectors, self.blur, strict=True):
            far = blur[0, 0] * dx * dx + 2.0 * blur[0, 1] * dx * dy + blur[1, 1] * dy * dy
            total += np.cos(kx * dx + ky * dy) * np.exp(-0.5 * far)
        return np.asarray(SIZE**2 * total)

    def draws(self, places: Points, count: int, rng: np.random.Generator) -> NDArray[np.float64]:
        """(count, N) waves drawn from the prior at ``places``, from random features."""
        total = np.zeros((count, len(places)))
        for vector, blur in zip(self.vectors, self.blur, strict=True):
            turn = places @ rng.multivariate_normal(vector, blur, _FEATURES).T
            total += rng.standard_normal((count, _FEATURES)) @ np.cos(turn).T
            total += rng.standard_normal((count, _FEATURES)) @ np.sin(turn).T
        return np.asarray(total * (SIZE / np.sqrt(_FEATURES)))


def next_wave(given: Conditioned, places: Points, progress: Progress) -> tuple[Waves, float] | None:
    """The one wave that the touches speak for most and how many were tried; None with few touches.

    Parameters
    ----------
    given : the process given the touches, without the wave
    places : (N, 2) where they were made
    """
    extent = np.maximum(np.ptp(places, axis=0), 1.0)
    if len(places) < _ENOUGH:
        return None
    step = np.pi / extent
    trial = _trials(step)
    gain = np.empty(len(trial))
    inverse = given.inverse()
    for start in range(0, len(trial), 2048):
        progress.step(0.4, "looking for waves")
        gain[start : start + 2048] = _gain(inverse, given.weights, places, trial[start : start + 2048])
    best, most = trial[0], -np.inf
    for index in np.argsort(gain)[-_REFINED:]:
        vector, value = _refined(inverse, given.weights, places, trial[index], step)
        if value > most:
            best, most = vector, value
    # trials lie half a cell apart along both axes
    return _known(inverse, given.weights, places, best, step), len(trial) / 4.0


def _known(
    inverse: NDArray[np.float64],
    weights: NDArray[np.float64],
    places: Points,
    vector: NDArray[np.float64],
    step: NDArray[np.float64],
) -> Waves:
    """The wave with the spread its vector has by the curvature of the evidence (Laplace)."""
    h = 0.05 * step
    around = vector + np.array([(i, j) for i in (-1, 0, 1) for j in (-1, 0, 1)]) * h
    g = _gain(inverse, weights, places, around).reshape(3, 3)
    xx = (g[2, 1] - 2.0 * g[1, 1] + g[0, 1]) / h[0] ** 2
    yy = (g[1, 2] - 2.0 * g[1, 1] + g[1, 0]) / h[1] ** 2
    xy = (g[2, 2] - g[2, 0] - g[0, 2] + g[0, 0]) / (4.0 * h[0] * h[1])
    values, turn = np.linalg.eigh(-np.array([(xx, xy), (xy, yy)]))
    # not sharper than a wave keeps in step, not wider than half a cell
    spread = np.clip(1.0 / np.maximum(values, 1e-9), 0.0, float(step.min()) ** 2 / 4.0) + 1.0 / KEEPS**2
    return Waves(vector[None], ((turn * spread) @ turn.T)[None])


def _trials(step: NDArray[np.float64]) -> NDArray[np.float64]:
    """(K, 2) wave vectors over a half plane, ``step`` apart along x and y."""
    most = 2.0 * np.pi / _SHORTEST
    x = np.arange(0.0, most, step[0])
    y = np.arange(-most, most, step[1])
    trial = np.stack(np.meshgrid(x, y, indexing="ij"), axis=-1).reshape(-1, 2)
    size = np.hypot(*trial.T)
    return np.asarray(trial[(size < most) & (size > 2.0 * np.pi / _LONGEST)])


def _gain(
    inverse: NDArray[np.float64], weights: NDArray[np.float64], places: Points, vectors: NDArray[np.float64]
) -> NDArray[np.float64]:
    """(K,) what each wave adds to the log marginal likelihood (R&W eq. 2.30, rank-two update)."""
    turn = places @ vectors.T
    even, odd = np.cos(turn), np.sin(turn)
    own = 1.0 / SIZE**2
    a = own + np.einsum("ij,ij->j", even, inverse @ even)
    half = inverse @ odd
    b = np.einsum("ij,ij->j", even, half)
    d = own + np.einsum("ij,ij->j", odd, half)
    u, v = even.T @ weights, odd.T @ weights
    det = a * d - b * b
    return np.asarray(0.5 * (d * u * u - 2.0 * b * u * v + a * v * v) / det - 0.5 * np.log(det / own**2))


def _refined(
    inverse: NDArray[np.float64],
    weights: NDArray[np.float64],
    places: Points,
    vector: NDArray[np.float64],
    step: NDArray[np.float64],
) -> tuple[NDArray[np.float64], float]:
    """The best vector within a cell of ``vector`` and its gain."""
    width, value = 1.0, -np.inf
    for _ in range(4):
        offsets = np.stack(np.meshgrid(*[np.linspace(-width, width, 5)] * 2), axis=-1).reshape(-1, 2)
        near = vector + offsets * step
        gain = _gain(inverse, weights, places, near)
        vector, value = near[int(np.argmax(gain))], float(gain.max())
        width /= 2.5
    return vector, value
