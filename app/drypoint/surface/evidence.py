"""How likely the parameters are given the touches: mode and a handful of weighted samples.

Marginal likelihood and gradient: Rasmussen & Williams (2006), eq. 2.30 and 5.9. One best set of
parameters makes the intervals too narrow, so predictions are averaged over samples drawn from
the Laplace approximation at the mode with heavier tails, weighted by the true density.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import LinAlgError
from scipy.optimize import minimize

from drypoint.geometry.points import Points
from drypoint.progress import Progress
from drypoint.surface.kernel import Gaps, Prior, trend
from drypoint.surface.kriging import Conditioned
from drypoint.surface.waves import Waves

_DRAWS = 64
_TAIL = 6.0
"""Degrees of freedom of the proposal: heavier tails than normal."""
_LIMIT = 3.0
"""The mode is looked for within so many prior spreads of the median."""


@dataclass(frozen=True, slots=True, eq=False)
class Evidence:
    """Log density of the parameters given the touches."""

    gaps: Gaps
    fixed: NDArray[np.float64]
    """Covariance that no parameter changes: trend, waves, what single touches are trusted less."""
    heights: NDArray[np.float64]
    prior: Prior

    @classmethod
    def of(
        cls,
        points: Points,
        heights: NDArray[np.float64],
        centre: NDArray[np.float64],
        prior: Prior,
        extra: NDArray[np.float64] | None = None,
        waves: Waves | None = None,
    ) -> Evidence:
        """For touches at ``points`` (N, 2) of ``heights`` (N,), mm, with ``extra`` variance (N,)."""
        terms = trend(points, centre)
        fixed = terms @ terms.T
        if waves is not None:
            fixed += waves.covariance(points, points)
        if extra is not None:
            fixed[np.diag_indices_from(fixed)] += extra
        return cls(Gaps.of(points), fixed, heights, prior)

    def condition(self, theta: NDArray[np.float64]) -> Conditioned:
        """The process with these parameters given the touches."""
        return Conditioned.on(self.gaps.covariance(theta) + self.fixed, self.heights)

    def log_density(self, theta: NDArray[np.float64]) -> float:
        """Log of prior times marginal likelihood, up to a constant; −inf where it fails."""
        try:
            given = self.condition(theta)
        except LinAlgError:
            return -np.inf
        likelihood = -0.5 * self.heights @ given.weights - np.log(np.diag(given.factor)).sum()
        return float(likelihood) + self.prior.log_density(theta)[0]

    def descent(self, theta: NDArray[np.float64]) -> tuple[float, NDArray[np.float64]]:
        """Minus the log density and minus its gradient (R&W eq. 5.9)."""
        try:
            given = self.condition(theta)
        except LinAlgError:
            return 1e10, np.zeros_like(theta)
        likelihood = -0.5 * self.heights @ given.weights - np.log(np.diag(given.factor)).sum()
        weight = np.outer(given.weights, given.weights) - given.inverse()
        density, slope = self.prior.log_density(theta)
        return -float(likelihood) - density, -0.5 * self.gaps.slopes(theta, weight) - slope


@dataclass(frozen=True, slots=True, eq=False)
class Told:
    """All that is given when a surface is fitted.

    Attributes
    ----------
    points : (N, 3) touches, machine frame, mm
    level : float
        Height taken off before fitting, mm.
    centre : (2,) where the trend's terms are zero, mm
    prior : Prior
    extra : (N,) variance added per touch, mm²
    """

    points: Points
    level: float
    centre: NDArray[np.float64]
    prior: Prior
    extra: NDArray[np.float64]

    def evidence(self, kept: NDArray[np.int64], waves: Waves) -> Evidence:
        """Of the touches with the indices ``kept``, with the waves that were found."""
        heights = self.points[kept, 2] - self.level
        return Evidence.of(self.points[kept, :2], heights, self.centre, self.prior, self.extra[kept], waves)


def mode(
    evidence: Evidence, start: NDArray[np.float64], progress: Progress, rounds: int = 60
) -> NDArray[np.float64]:
    """Most likely parameters, searched from ``start``.

    Raises
    ------
    Cancelled
        If the work was asked to stop.
    """

    def cost(theta: NDArray[np.float64]) -> tuple[float, NDArray[np.float64]]:
        progress.step(0.5, "fitting the surface")
        return evidence.descent(theta)

    reach = _LIMIT * np.asarray(evidence.prior.spread)
    middle = evidence.prior.start
    bounds = list(zip(middle - reach, middle + reach, strict=True))
    found = minimize(
        cost,
        start,
        jac=True,
        method="L-BFGS-B",
        bounds=bounds,
        options={"maxiter": rounds, "ftol": 1e-7, "gtol": 1e-2},
    )
    return np.asarray(found.x, dtype=np.float64)


def _curvature(evidence: Evidence, theta: NDArray[np.float64], progress: Progress) -> NDArray[np.float64]:
    """(P, P) Hessian of minus the log density, made safely positive."""
    size = len(theta)
    step = 0.05
    rows = np.empty((size, size))
    for i in range(size):
        progress.step(0.7, "fitting the surface")
        shift = np.zeros(size)
        shift[i] = step
        rows[i] = (evidence.descent(theta + shift)[1] - evidence.descent(theta - shift)[1]) / (2 * step)
    values, vectors = np.linalg.eigh(0.5 * (rows + rows.T))
    # no direction wider than the prior allows, none infinitely sharp
    floor = 1.0 / float(np.max(evidence.prior.spread)) ** 2
    return np.asarray((vectors * np.clip(values, 0.7 * floor, None)) @ vectors.T)


def samples(
    evidence: Evidence, best: NDArray[np.float64], count: int, seed: int, progress: Progress
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Parameter vectors (K ≤ count, P) and their weights (K,), which sum to 1.

    Drawn from a Student proposal at the mode, weighted by importance and thinned systematically.
    """
    rng = np.random.default_rng(seed)
    size = len(best)
    root = np.linalg.inv(np.linalg.cholesky(_curvature(evidence, best, progress))).T
    normal = rng.standard_normal((_DRAWS, size))
    stretch = np.sqrt(_TAIL / rng.chisquare(_TAIL, _DRAWS))
    z = normal * stretch[:, None]
    drawn = best + z @ root.T
    density = np.empty(_DRAWS)
    for k, theta in enumerate(drawn):
        progress.step(0.75 + 0.2 * k / _DRAWS, "weighing the surface's parameters")
        density[k] = evidence.log_density(theta)
    proposal = -0.5 * (_TAIL + size) * np.log1p((z * z).sum(axis=1) / _TAIL)
    log_weight = density - proposal
    weight = np.exp(log_weight - log_weight.max())
    ladder = (np.arange(count) + rng.random()) / count
    picks = np.searchsorted(np.cumsum(weight / weight.sum()), ladder)
    kept, times = np.unique(np.minimum(picks, _DRAWS - 1), return_counts=True)
    return drawn[kept], times / count
