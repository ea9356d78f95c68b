"""Possible surfaces: heights drawn jointly at many places, in time linear in their number.

A prior surface is drawn from random Fourier features (Rahimi & Recht 2007; the spectral density
of a Matérn-5/2 process is a Student distribution with 5 degrees of freedom, Rasmussen & Williams
2006, section 4.2.1) and moved onto the touches by Matheron's rule (Wilson et al., "Efficiently
sampling functions from Gaussian process posteriors", 2020).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points
from drypoint.surface.kernel import covariance, trend
from drypoint.surface.kriging import Conditioned
from drypoint.surface.waves import Waves

_FEATURES = 384
"""Waves per part: draws are Gaussian to within a few per cent in their far tails."""


class Conditional(Protocol):
    """A sample of the parameters with the process given the touches."""

    @property
    def theta(self) -> NDArray[np.float64]:
        """Logarithms of the parameters."""
        ...

    @property
    def weight(self) -> float:
        """Share of the samples."""
        ...

    @property
    def given(self) -> Conditioned:
        """The process given the touches."""
        ...


@dataclass(frozen=True, slots=True, eq=False)
class Draws:
    """Draws possible surfaces; heights are above the touches' level."""

    members: Sequence[Conditional]
    touched: Points
    heights: NDArray[np.float64]
    centre: NDArray[np.float64]
    waves: Waves

    def at(self, places: Points, count: int, seed: int) -> NDArray[np.float64]:
        """(count, N) heights at ``places`` (N, 2)."""
        rng = np.random.default_rng(seed)
        weights = np.array([m.weight for m in self.members])
        shares = _apportion(weights, count)
        parts = [self._of_member(m, places, k, rng) for m, k in zip(self.members, shares, strict=True) if k]
        return np.vstack(parts) if parts else np.zeros((0, len(places)))

    def _of_member(
        self, member: Conditional, places: Points, count: int, rng: np.random.Generator
    ) -> NDArray[np.float64]:
        everywhere = np.vstack((places, self.touched))
        prior = _prior_draws(member.theta, everywhere, count, rng) + self.waves.draws(everywhere, count, rng)
        terms = trend(everywhere, self.centre)
        prior += (terms @ rng.standard_normal((terms.shape[1], count))).T
        here, there = prior[:, : len(places)], prior[:, len(places) :]
        if not len(self.touched):
            return here
        noise = np.exp(member.theta[5]) * rng.standard_normal(there.shape)
        missing = self.heights - there - noise
        inner = member.given.half(missing)
        own = terms[len(places) :]
        cross = covariance(member.theta, places, self.touched) + terms[: len(places)] @ own.T
        cross += self.waves.covariance(places, self.touched)
        return np.asarray(here + inner.T @ member.given.half(cross))


def _prior_draws(
    theta: NDArray[np.float64], places: Points, count: int, rng: np.random.Generator
) -> NDArray[np.float64]:
    """(count, N) draws of ripple plus smooth part without trend."""
    ripple, length_x, length_y, smooth, reach, _ = np.exp(theta)
    total = np.zeros((count, len(places)))
    for size, scale in ((ripple, (length_x, length_y)), (smooth, (reach, reach))):
        stretch = np.sqrt(5.0 / rng.chisquare(5.0, _FEATURES))
        waves = rng.standard_normal((2, _FEATURES)) * stretch / np.asarray(scale)[:, None]
        turn = places @ waves
        amplitude = size / np.sqrt(_FEATURES)
        total += amplitude * rng.standard_normal((count, _FEATURES)) @ np.cos(turn).T
        total += amplitude * rng.standard_normal((count, _FEATURES)) @ np.sin(turn).T
    return total


def _apportion(weights: NDArray[np.float64], count: int) -> list[int]:
    """Whole numbers that sum to ``count`` in proportion to ``weights`` (largest remainders)."""
    exact = weights / weights.sum() * count
    whole = np.floor(exact).astype(int)
    for index in np.argsort(whole - exact)[: count - int(whole.sum())]:
        whole[index] += 1
    return [int(k) for k in whole]
