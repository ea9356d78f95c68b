"""What a surface is averaged over, and that nothing of its spread is left out."""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest

from drypoint.progress import Progress
from drypoint.surface import evidence
from drypoint.surface.kernel import Prior, covariance, trend
from drypoint.surface.kriging import Conditioned
from drypoint.surface.lattice import Lattice
from drypoint.surface.model import _fine, fit_surface
from drypoint.surface.waves import KEEPS, SIZE, next_wave


class _Normal:
    """A standard normal density of the parameters; ``flat`` ones are not narrowed by it at all."""

    def __init__(self, spread: tuple[float, ...], flat: int = 0) -> None:
        self.prior = SimpleNamespace(spread=spread)
        self.pull = np.array([0.0] * flat + [1.0] * (len(spread) - flat))

    def descent(self, theta):
        return 0.5 * float(self.pull @ theta**2), self.pull * theta

    def log_density(self, theta):
        return -0.5 * float(self.pull @ theta**2)


def _touches(count: int, seed: int = 0):
    rng = np.random.default_rng(seed)
    return np.column_stack((rng.random((count, 2)) * (60.0, 40.0), 0.01 * rng.standard_normal(count)))


def test_weighted_samples_have_the_spread_of_the_density():
    """Importance weights take the proposal's heavy tails off again (any textbook on Monte Carlo)."""
    target, found = _Normal((2.0,) * 6), []
    for seed in range(200):
        thetas, weights = evidence.samples(target, np.zeros(6), 10, seed, Progress())
        assert weights.sum() == pytest.approx(1.0)
        found.append(weights @ thetas**2)
    assert np.mean(found) == pytest.approx(1.0, abs=0.06)


def test_where_touches_say_nothing_the_prior_bounds_the_search():
    spread = (0.5, 2.0, 1.0)
    rows = evidence._curvature(_Normal(spread, flat=1), np.zeros(3), Progress())
    assert np.linalg.eigvalsh(rows) == pytest.approx([0.7 / 2.0**2, 1.0, 1.0])


def test_a_touch_is_trusted_less_by_a_tenth_of_what_the_laminate_gave():
    touches = _touches(12)
    give = np.linspace(0.0, 0.11, 12)
    surface = fit_surface(touches, give=give)
    assert not len(surface.rejected)
    places = touches[:, :2]
    centre = 0.5 * (places.min(axis=0) + places.max(axis=0))
    for member in surface.members:
        terms = trend(places, centre)
        known = covariance(member.theta, places, places) + terms @ terms.T
        known += np.exp(member.theta[5]) ** 2 * np.eye(12)
        left = member.given.factor @ member.given.factor.T - known
        assert np.allclose(left, np.diag((0.1 * give) ** 2), atol=1e-9)


def test_the_spread_of_a_touch_left_out_is_that_of_the_mixture():
    surface = fit_surface(_touches(20, 3))
    middle, spread = surface.leave_one_out()
    rng = np.random.default_rng(0)
    weights = np.array([one.weight for one in surface.members])
    chosen = rng.choice(len(weights), 200_000, p=weights / weights.sum())
    parts = np.array([one.given.leave_one_out() for one in surface.members])
    assert np.ptp(parts[:, 0], axis=0).max() > 0.1 * spread.max(), "members differ, or nothing is tested"
    for k in range(20):
        drawn = parts[chosen, 0, k] + parts[chosen, 1, k] * rng.standard_normal(len(chosen))
        assert middle[k] == pytest.approx(drawn.mean(), abs=0.02 * spread[k])
        assert spread[k] == pytest.approx(drawn.std(), rel=0.01)


def test_between_nodes_the_spread_is_never_nothing():
    """A cubic spline swings below zero beside a peak of the variance."""
    values = np.full((9, 9, 2), 0.001)
    values[4, 4, 1] = 0.1
    fine = _fine(Lattice((0.0, 0.0), 1.0, values))
    assert fine.values[:, :, 1].min() == pytest.approx(0.001 * np.sqrt(0.5))


def test_the_lattice_grows_and_keeps_what_it_had():
    surface = fit_surface(_touches(15))
    surface.field((0.0, 0.0, 10.0, 10.0))
    surface.field((80.0, 0.0, 90.0, 10.0))
    assert surface.field((80.0, 0.0, 90.0, 10.0)).covers((0.0, 0.0, 10.0, 10.0))
    before = surface.field((-70.0, -70.0, -60.0, -60.0))
    after = surface.field((100.0, 100.0, 110.0, 110.0))
    assert after.covers(before.bounds)


def test_what_one_piece_taught_narrows_the_prior_of_the_next():
    surface = fit_surface(_touches(30), prior=Prior())
    learnt = surface.learnt_prior()
    assert learnt.spread == pytest.approx([0.6 * one for one in Prior().spread])
    assert learnt.median[0] == pytest.approx(surface.ripple)
    assert learnt.median[5] == pytest.approx(surface.noise)
    assert surface.learnt_prior(0.3).spread == pytest.approx([0.3 * one for one in Prior().spread])


def test_a_wave_known_exactly_still_falls_out_of_step():
    """However sharp the touches make its vector: over `KEEPS` mm it is not taken to repeat for ever."""
    places = _touches(150, 5)[:, :2]
    heights = SIZE * np.cos(places @ (0.9, 0.4))
    found, _ = next_wave(Conditioned.on(1e-8 * np.eye(150), heights), places, Progress())
    assert found.vectors[0] == pytest.approx((0.9, 0.4), abs=1e-3)
    assert np.linalg.eigvalsh(found.blur[0]) == pytest.approx([KEEPS**-2] * 2, rel=0.05)
