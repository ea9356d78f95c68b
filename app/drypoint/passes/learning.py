"""Learning from passes: through or not, said by the operator or by the island touch.

What is not known of the depth has two parts: an offset common to the whole board (the zero, the
tip's true shape, a nut that lifts under load) and the surface's own error from place to place.
Every answer tells of both. They are joined as one Gaussian and updated by expectation
propagation for a probit likelihood (Rasmussen & Williams 2006, section 3.6).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Protocol

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import ndtr

from drypoint.errors import PlanError
from drypoint.geometry.points import Points, as_points
from drypoint.passes.model import Pass
from drypoint.passes.spots import FitLike, depth_along
from drypoint.wording import say

OFFSET_SPREAD = 0.008
"""mm, spread of the depth's offset before any pass: the step and scatter of touching off Z."""
WRONG = 0.01
"""Chance that an answer is wrong."""
SCALES = np.exp(np.linspace(np.log(0.6), np.log(2.0), 9))
SCALE_SPREAD = 0.25
_SWEEPS = 30
_EDGE = 0.002
"""mm over which a cut turns from not through to through: the copper's own roughness."""


class Covarying(Protocol):
    """A surface that knows how its errors hang together, machine frame."""

    def covariance(self, a: ArrayLike, b: ArrayLike) -> NDArray[np.float64]:
        """(len(a), len(b)) covariance of the heights' errors, mm²."""
        ...


@dataclass(frozen=True, slots=True)
class Observation:
    """A place looked at after a pass.

    ``x`` and ``y`` in the machine frame, mm; ``margin`` the deepest planned depth there below the
    copper's underside, mm (before play).
    """

    x: float
    y: float
    margin: float
    through: bool


@dataclass(frozen=True, slots=True, eq=False)
class Sites:
    """What the answers have left: places (K, 2) and the pull (K,) of each on the depth there."""

    surface: Covarying
    places: Points
    pull: NDArray[np.float64]
    hold: NDArray[np.float64]
    """(K, K) inverse of prior covariance plus the answers' own variance."""


@dataclass(frozen=True, slots=True, eq=False)
class Belief:
    """What is believed of the depth beyond the plan.

    Attributes
    ----------
    offset, spread : float
        Mean and spread of how much deeper than planned the tip goes all over, mm.
    scale : float
        The surface's spread is taken as this times what it states.
    observations : tuple of Observation
        All answers so far.
    prior_offset, prior_spread, prior_scale : float
        What was believed before those answers: from a coupon, or from island touches.
    """

    offset: float = 0.0
    spread: float = 0.0
    scale: float = 1.0
    observations: tuple[Observation, ...] = ()
    prior_offset: float = 0.0
    prior_spread: float = OFFSET_SPREAD
    prior_scale: float = 1.0
    sites: Sites | None = field(default=None, repr=False)

    def at(
        self, places: Points, sigma: NDArray[np.float64]
    ) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """Expected extra depth (N,) and spread of the depth (N,) at ``places``, machine frame.

        ``sigma`` (N,) is the surface's stated spread there.
        """
        own = (self.scale * sigma) ** 2
        if self.sites is None:
            return np.full(len(places), self.offset), np.sqrt(own + self.spread**2)
        shift = np.empty(len(places))
        variance = np.empty(len(places))
        for start in range(0, len(places), 4096):
            part = slice(start, start + 4096)
            cross = self.scale**2 * self.sites.surface.covariance(places[part], self.sites.places)
            cross = cross + self.prior_spread**2
            shift[part] = self.prior_offset + cross @ self.sites.pull
            taken = np.einsum("ij,jk,ik->i", cross, self.sites.hold, cross)
            variance[part] = own[part] + self.prior_spread**2 - taken
        floor = (0.05 * self.scale * sigma) ** 2
        return shift, np.sqrt(np.maximum(variance, floor))


def observe(
    at: tuple[float, float],
    is_through: bool,
    passes: Sequence[Pass],
    fit: FitLike,
    *,
    copper: float,
    nearest: float = 0.5,
) -> Observation:
    """An answer about the groove nearest to ``at`` (board frame).

    Raises
    ------
    PlanError
        If no pass went within ``nearest`` mm of the place.
    """
    place = np.asarray(at, dtype=np.float64)
    best: tuple[float, NDArray[np.float64]] = (nearest, place)
    for one in passes:
        for run in one.runs:
            spot = _nearest(np.asarray(run.path), place)
            gap = float(np.hypot(*(spot - place)))
            if gap < best[0]:
                best = (gap, spot)
    spot = as_points([best[1]], 2)
    depths = [float(depth_along(run, spot)[0]) for one in passes for run in one.runs]
    deepest = max(depths, default=-np.inf)
    if not np.isfinite(deepest):
        raise PlanError(
            "No pass went there yet.",
            say("x {at:.2f}, y {at2:.2f} mm", at=at[0], at2=at[1]),
            "Pick a place on a groove that has been cut.",
        )
    x, y = fit.apply(spot)[0][:2]
    return Observation(float(x), float(y), deepest - copper, is_through)


def update(
    belief: Belief,
    observations: Sequence[Observation],
    surface: Covarying,
    *,
    play: float = 0.0,
) -> Belief:
    """The belief after more answers; all answers so far are weighed together."""
    known = (*belief.observations, *observations)
    if not known:
        return belief
    places = as_points([(o.x, o.y) for o in known], 2)
    margins = np.array([o.margin for o in known]) - 0.5 * play + belief.prior_offset
    signs = np.array([1.0 if o.through else -1.0 for o in known])
    width = np.sqrt(play**2 / 12.0 + _EDGE**2)
    local = surface.covariance(places, places)
    common = belief.prior_spread**2
    log_weights = np.empty(len(SCALES))
    scales = belief.prior_scale * SCALES
    for k, scale in enumerate(scales):
        _, _, log_weights[k] = _propagate(scale**2 * local + common, margins, signs, width)
    log_weights -= 0.5 * (np.log(SCALES) / SCALE_SPREAD) ** 2
    weights = np.exp(log_weights - log_weights.max())
    scale = float(np.exp(weights @ np.log(scales) / weights.sum()))
    prior = scale**2 * local + common
    precision, value, _ = _propagate(prior, margins, signs, width)
    hold = np.asarray(np.linalg.inv(prior + np.diag(1.0 / precision)), dtype=np.float64)
    pull = hold @ (value / precision)
    offset = belief.prior_offset + common * float(pull.sum())
    spread = float(np.sqrt(max(common - common**2 * hold.sum(), 1e-12)))
    return Belief(
        offset, spread, scale, known, belief.prior_offset, belief.prior_spread, belief.prior_scale,
        Sites(surface, places, pull, hold),
    )  # fmt: skip


def _propagate(
    prior: NDArray[np.float64],
    margins: NDArray[np.float64],
    signs: NDArray[np.float64],
    width: float,
) -> tuple[NDArray[np.float64], NDArray[np.float64], float]:
    """Expectation propagation: site precisions and precision-times-means, log evidence.

    Latent g ~ N(0, prior); P(answer) = (1 − w)Φ(s (m + g)/width) + w(1 − Φ) with w the chance of
    a wrong answer. Moments as in Rasmussen & Williams (2006), eq. 3.58 and 3.82.
    """
    size = len(margins)
    precision, value = np.full(size, 1e-6), np.zeros(size)
    evidence = 0.0
    for _ in range(_SWEEPS):
        before = value.copy()
        inverse = np.linalg.inv(np.diag(1.0 / precision) + prior)
        cov = prior - prior @ inverse @ prior
        mean = cov @ value
        own = np.maximum(np.diag(cov), 1e-18)
        cavity_p = np.maximum(1.0 / own - precision, 1e-9)
        cavity_m = (mean / own - value) / cavity_p
        cavity_v = 1.0 / cavity_p
        root = np.sqrt(cavity_v + width**2)
        z = signs * (margins + cavity_m) / root
        good = ndtr(z)
        norm = WRONG + (1.0 - 2.0 * WRONG) * good
        density = (1.0 - 2.0 * WRONG) * np.exp(-0.5 * z * z) / np.sqrt(2.0 * np.pi)
        ratio = density / norm
        new_m = cavity_m + signs * cavity_v * ratio / root
        new_v = cavity_v - cavity_v**2 * ratio * (z + ratio) / root**2
        new_v = np.clip(new_v, 1e-9 * cavity_v, 0.999999 * cavity_v)
        aim_p = np.maximum(1.0 / new_v - cavity_p, 1e-6)
        aim_v = new_m / new_v - cavity_m * cavity_p
        precision = 0.5 * precision + 0.5 * aim_p
        value = 0.5 * value + 0.5 * aim_v
        evidence = float(np.log(norm).sum()) + _overlap(prior, precision, value, cavity_m, cavity_v)
        if np.abs(value - before).max() <= 1e-4 * max(1.0, float(np.abs(value).max())):
            break
    return precision, value, evidence


def _overlap(
    prior: NDArray[np.float64],
    precision: NDArray[np.float64],
    value: NDArray[np.float64],
    cavity_mean: NDArray[np.float64],
    cavity_variance: NDArray[np.float64],
) -> float:
    """The part of the log evidence that joins prior and sites (R&W eq. 3.65)."""
    site_v = 1.0 / precision
    site_m = value * site_v
    total = prior + np.diag(site_v)
    _, logdet = np.linalg.slogdet(total)
    apart = cavity_mean - site_m
    joined = cavity_variance + site_v
    return float(
        -0.5 * logdet
        - 0.5 * site_m @ np.linalg.solve(total, site_m)
        + 0.5 * np.log(joined).sum()
        + 0.5 * (apart**2 / joined).sum()
    )


def _nearest(path: NDArray[np.float64], place: NDArray[np.float64]) -> NDArray[np.float64]:
    """Point of a polyline nearest to ``place``."""
    if len(path) < 2:
        return np.asarray(path[0])
    step = np.diff(path, axis=0)
    t = ((place - path[:-1]) * step).sum(axis=1) / np.maximum((step**2).sum(axis=1), 1e-18)
    feet = path[:-1] + np.clip(t, 0.0, 1.0)[:, None] * step
    return np.asarray(feet[np.argmin(((feet - place) ** 2).sum(axis=1))])
