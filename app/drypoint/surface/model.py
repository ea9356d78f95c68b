"""The copper's height with its uncertainty, from a few dozen touches.

A Gaussian process with trend, averaged over samples of its parameters, so that the spread it
states holds: nine of ten heights lie in the 90 % interval. Machine frame (work coordinates), mm.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.errors import InputError
from drypoint.geometry.points import Points, as_points
from drypoint.progress import Progress
from drypoint.surface import evidence as ev
from drypoint.surface.draws import Draws
from drypoint.surface.explain import explained
from drypoint.surface.kernel import Prior, covariance, trend
from drypoint.surface.kriging import Conditioned
from drypoint.surface.lattice import Lattice, spanning
from drypoint.surface.waves import Waves
from drypoint.wording import say

SAMPLES = 10
"""Parameter samples a prediction is averaged over."""
_EXACT = 3000
"""Up to so many points are predicted exactly, more through a lattice."""
_COARSE = 1.0
"""mm between exact nodes of the lattice; widened for a very long ripple, never finer."""
_REFINE = 4
"""Nodes added by cubic splines between exact ones."""
_CHUNK = 2048


@dataclass(frozen=True, slots=True)
class Summary:
    """A surface in numbers, mm.

    ``rms`` is the residual of each touch predicted from the others, ``spread`` the typical stated
    spread at the touches' places when each is left out; a calibrated model has the two alike.
    """

    touches: int
    rejected: int
    rms: float
    spread: float
    noise: float
    ripple: float
    ripple_length: float
    lowest: float
    highest: float


@dataclass(frozen=True, slots=True, eq=False)
class Member:
    """One sample of the parameters with the process conditioned on the touches."""

    theta: NDArray[np.float64]
    weight: float
    given: Conditioned


class Surface:
    """Height of the copper with its spread, machine frame, mm.

    Attributes
    ----------
    touches : Points
        (N, 3) touches used, rejected ones included.
    rejected : (R,) int
        Indices of touches left out as wrong.
    noise : float
        Spread of a repeated touch, mm.
    prior : Prior
        What the parameters were expected to be.
    waves : Waves
        Ripple of one period all over the board, where the touches show some.
    """

    def __init__(self, touches: Points, rejected: NDArray[np.int64], members: tuple[Member, ...],
                 centre: NDArray[np.float64], level: float, prior: Prior, waves: Waves) -> None:  # fmt: skip
        self.touches = touches
        self.rejected = rejected
        self.prior = prior
        self.waves = waves
        self._members = members
        self._centre = centre
        self._level = level
        self._used = np.delete(touches, rejected, axis=0)[:, :2]
        self._lattice: Lattice | None = None

    @property
    def noise(self) -> float:
        """Spread of a repeated touch, mm."""
        return self._average(5)

    @property
    def ripple_length(self) -> float:
        """Length scale of the ripple, mm: the geometric mean of both axes."""
        return float(np.sqrt(self._average(1) * self._average(2)))

    @property
    def ripple(self) -> float:
        """Standard deviation of the ripple, mm."""
        return self._average(0)

    @property
    def members(self) -> tuple[Member, ...]:
        """Parameter samples the predictions are averaged over."""
        return self._members

    def learnt_prior(self, share: float = 0.6) -> Prior:
        """Priors for the next piece of the same stock: these parameters, ``share`` as wide."""
        logs = np.array([m.theta for m in self._members])
        weights = np.array([m.weight for m in self._members])
        spread = tuple(share * s for s in self.prior.spread)
        return Prior(tuple(float(v) for v in np.exp(weights @ logs)), spread)

    def mean(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N,) expected heights at ``points`` (N, 2), mm."""
        return self.predict(points)[:, 0]

    def std(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N,) spread (one standard deviation) of the height, without touch noise, mm."""
        return self.predict(points)[:, 1]

    def predict(self, points: ArrayLike, progress: Progress | None = None) -> NDArray[np.float64]:
        """(N, 2) mean and spread; through a lattice where there are many points.

        The lattice's error stays well below a micrometre for ripples longer than two of its
        pitches (1 mm); `exact` never uses it.
        """
        places = _plane_points(points)
        if len(places) <= _EXACT:
            return self.exact(places, progress)
        return self.field(bounds_of(places), progress).read(places)

    def exact(self, points: ArrayLike, progress: Progress | None = None) -> NDArray[np.float64]:
        """(N, 2) mean and spread at every point without a lattice."""
        places = _plane_points(points)
        told = progress or Progress()
        result = np.empty((len(places), 2))
        for start in range(0, len(places), _CHUNK):
            told.step(start / len(places), "predicting the surface")
            result[start : start + _CHUNK] = self._exact_block(places[start : start + _CHUNK], told)
        return result

    def field(self, bounds: tuple[float, float, float, float], progress: Progress | None = None) -> Lattice:
        """Mean and spread on the fine lattice that covers ``bounds``; made once and kept."""
        known = self._lattice
        if known is None or not known.covers(bounds):
            all_bounds = _join(bounds, bounds_of(self.touches[:, :2])) if len(self.touches) else bounds
            if known is not None:
                all_bounds = _join(all_bounds, known.bounds)
            coarse = self.lattice(all_bounds, _COARSE, progress)
            known = _fine(coarse)
            self._lattice = known
        return known

    def lattice(
        self, bounds: tuple[float, float, float, float], pitch: float, progress: Progress | None = None
    ) -> Lattice:
        """Exact mean and spread on nodes ``pitch`` mm apart over ``bounds`` (x0, y0, x1, y1).

        The pitch is widened where it would give more than 40,000 nodes.
        """
        empty = spanning(bounds, pitch, 2)
        values = self.exact(empty.nodes(), progress)
        return Lattice(empty.origin, empty.pitch, values.reshape(empty.values.shape))

    def covariance(self, a: ArrayLike, b: ArrayLike) -> NDArray[np.float64]:
        """(len(a), len(b)) posterior covariance of the heights at two sets of places, mm²."""
        first, second = _plane_points(a), _plane_points(b)
        terms_a, terms_b = trend(first, self._centre), trend(second, self._centre)
        own = trend(self._used, self._centre)
        common_a = terms_a @ own.T + self.waves.covariance(first, self._used)
        common_b = terms_b @ own.T + self.waves.covariance(second, self._used)
        total = terms_a @ terms_b.T + self.waves.covariance(first, second)
        means_a, means_b = [], []
        for m in self._members:
            cross_a = covariance(m.theta, first, self._used) + common_a
            cross_b = covariance(m.theta, second, self._used) + common_b
            prior = covariance(m.theta, first, second)
            total += m.weight * (prior - m.given.half(cross_a).T @ m.given.half(cross_b))
            means_a.append(m.given.mean(cross_a))
            means_b.append(m.given.mean(cross_b))
        weights = np.array([m.weight for m in self._members])
        ma, mb = np.array(means_a), np.array(means_b)
        ma, mb = ma - weights @ ma, mb - weights @ mb
        return np.asarray(total + (weights[:, None] * ma).T @ mb)

    def joint_samples(self, points: ArrayLike, count: int, seed: int = 0) -> NDArray[np.float64]:
        """(count, N) heights drawn jointly at ``points`` (N, 2), mm: each is one possible surface."""
        draws = Draws(self._members, self._used, self._heights(), self._centre, self.waves)
        return draws.at(_plane_points(points), count, seed) + self._level

    @property
    def summary(self) -> Summary:
        """The surface in numbers."""
        heights = self.touches[:, 2]
        errors, spreads = self.leave_one_out()
        return Summary(
            touches=len(self.touches),
            rejected=len(self.rejected),
            rms=float(np.sqrt(np.mean(errors**2))) if len(errors) else 0.0,
            spread=float(np.sqrt(np.mean(spreads**2))) if len(errors) else 0.0,
            noise=self.noise,
            ripple=self.ripple,
            ripple_length=self.ripple_length,
            lowest=float(heights.min()) if len(heights) else 0.0,
            highest=float(heights.max()) if len(heights) else 0.0,
        )

    def leave_one_out(self) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """(U,) error of each used touch predicted from the others, and its stated spread."""
        if not len(self._used):
            return np.zeros(0), np.zeros(0)
        parts = [m.given.leave_one_out() for m in self._members]
        weights = np.array([m.weight for m in self._members])
        errors = np.array([p[0] for p in parts])
        spreads = np.array([p[1] for p in parts])
        middle = weights @ errors
        return middle, np.sqrt(weights @ (spreads**2 + (errors - middle) ** 2))

    def _heights(self) -> NDArray[np.float64]:
        return np.delete(self.touches, self.rejected, axis=0)[:, 2] - self._level

    def _average(self, index: int) -> float:
        return float(np.exp(sum(m.weight * m.theta[index] for m in self._members)))

    def _exact_block(self, places: Points, progress: Progress) -> NDArray[np.float64]:
        terms = trend(places, self._centre)
        common = terms @ trend(self._used, self._centre).T + self.waves.covariance(places, self._used)
        prior_common = (terms * terms).sum(axis=1) + self.waves.variance
        means = np.empty((len(self._members), len(places)))
        variances = np.empty_like(means)
        for k, m in enumerate(self._members):
            progress.step(0.0, "predicting the surface")
            cross = covariance(m.theta, places, self._used) + common
            sizes = np.exp(m.theta)
            means[k] = m.given.mean(cross)
            variances[k] = m.given.variance(cross, sizes[0] ** 2 + sizes[3] ** 2 + prior_common)
        weights = np.array([m.weight for m in self._members])
        mean = weights @ means
        variance = weights @ (variances + (means - mean) ** 2)
        return np.column_stack((mean + self._level, np.sqrt(variance)))


def fit_surface(
    touches: ArrayLike,
    *,
    give: ArrayLike | None = None,
    prior: Prior | None = None,
    seed: int = 0,
    progress: Progress | None = None,
) -> Surface:
    """Fit the copper's height to touches.

    Wrong touches (a chip under the bit, a missed contact) are found by predicting each from the
    others and left out. With fewer than about a dozen touches the priors carry the spread, which
    is then wide; with none the surface is z = 0 with the spread of an unmeasured blank.

    Parameters
    ----------
    touches : (N, 3) x, y, z of the slow touches, machine frame, mm
    give : (N,), optional
        How far the laminate yielded at each touch, mm; a touch is trusted less by a tenth of it.
    prior : Prior, optional
        What to expect of the parameters, such as those of an earlier piece of the same stock.
    seed : int
        Same seed, same surface.

    Raises
    ------
    InputError
        If a touch is not finite or ``give`` has another length.
    Cancelled
        If the work was asked to stop.
    """
    try:
        points = as_points(touches, 3)
    except ValueError as error:
        raise InputError(
            say("The touches cannot be used: {error}.", error=error),
            hint="Each needs x, y and z in millimetres.",
        ) from error
    told = progress or Progress()
    expected = prior or Prior()
    extra = _give_variance(give, len(points))
    if not len(points):
        return _unmeasured(expected)
    centre = 0.5 * (points[:, :2].min(axis=0) + points[:, :2].max(axis=0))
    level = float(np.median(points[:, 2]))
    told.step(0.0, "fitting the surface")
    told_of = ev.Told(points, level, centre, expected, extra)
    rejected, evidence, best, waves = explained(told_of, told)
    thetas, weights = ev.samples(evidence, best, SAMPLES, seed, told)
    members = tuple(
        Member(theta, float(weight), evidence.condition(theta))
        for theta, weight in zip(thetas, weights, strict=True)
    )
    told.step(1.0, "surface fitted")
    return Surface(points, rejected, members, centre, level, expected, waves)


def _unmeasured(prior: Prior) -> Surface:
    """No touches: z = 0 with the spread the priors give."""
    empty = Conditioned(np.zeros((0, 0)), np.zeros(0))
    member = Member(prior.start, 1.0, empty)
    nothing = np.zeros(0, dtype=np.int64)
    return Surface(as_points([], 3), nothing, (member,), np.zeros(2), 0.0, prior, Waves.none())


def _give_variance(give: ArrayLike | None, count: int) -> NDArray[np.float64]:
    """(N,) variance added to each touch because the laminate yielded there, mm²."""
    if give is None:
        return np.zeros(count)
    values = np.asarray(give, dtype=np.float64)
    if values.shape != (count,):
        raise InputError(
            say("There are {count} touches but {size} values of give.", count=count, size=values.size)
        )
    return np.asarray((0.1 * values) ** 2)


def _plane_points(points: ArrayLike) -> Points:
    places = np.asarray(points, dtype=np.float64)
    if places.size == 0:
        return np.zeros((0, 2))
    if places.ndim != 2 or places.shape[1] < 2:
        raise ValueError(f"points must be (N, 2), not {places.shape}")
    return np.ascontiguousarray(places[:, :2])


def bounds_of(points: Points) -> tuple[float, float, float, float]:
    """x0, y0, x1, y1 of (N, 2) points."""
    x0, y0 = points.min(axis=0)
    x1, y1 = points.max(axis=0)
    return float(x0), float(y0), float(x1), float(y1)


def _join(
    a: tuple[float, float, float, float], b: tuple[float, float, float, float]
) -> tuple[float, float, float, float]:
    return min(a[0], b[0]), min(a[1], b[1]), max(a[2], b[2]), max(a[3], b[3])


def _fine(coarse: Lattice) -> Lattice:
    """Refined in mean and variance (which is smoother than its root near a touch)."""
    squared = coarse.values.copy()
    squared[:, :, 1] **= 2
    fine = Lattice(coarse.origin, coarse.pitch, squared).refined(_REFINE)
    lowest = float(squared[:, :, 1].min())
    values = fine.values.copy()
    values[:, :, 1] = np.sqrt(np.maximum(values[:, :, 1], 0.5 * lowest))
    return Lattice(fine.origin, fine.pitch, values)
