"""The surface: against outside references, and as a promise about its own spread."""

from __future__ import annotations

import numpy as np
import pytest
from sklearn.gaussian_process import GaussianProcessRegressor
from sklearn.gaussian_process.kernels import ConstantKernel, Matern

from drypoint.errors import InputError
from drypoint.progress import Cancelled, Progress
from drypoint.surface.evidence import Evidence
from drypoint.surface.kernel import Prior, covariance, trend
from drypoint.surface.kriging import Conditioned
from drypoint.surface.model import fit_surface


def _places(count, seed=0):
    return np.random.default_rng(seed).random((count, 2)) * (100.0, 80.0)


def _touches(height, count, noise=0.003, seed=0):
    places = _places(count, seed)
    z = height(places) + noise * np.random.default_rng(seed + 1).standard_normal(count)
    return np.column_stack((places, z))


def test_prediction_equals_scikit_learn_with_the_same_kernel():
    theta = np.log([0.012, 3.0, 2.0, 0.03, 22.0, 0.004])
    places, targets = _places(60), _places(40, 9)
    heights = 0.02 * np.random.default_rng(5).standard_normal(60)
    kernel = ConstantKernel(0.012**2) * Matern([3.0, 2.0], nu=2.5) + ConstantKernel(0.03**2) * Matern(
        22.0, nu=2.5
    )
    reference = GaussianProcessRegressor(kernel, alpha=0.004**2, optimizer=None).fit(places, heights)
    mean, std = reference.predict(targets, return_std=True)
    own = covariance(theta, places, places) + 0.004**2 * np.eye(60)
    given = Conditioned.on(own, heights)
    cross = covariance(theta, targets, places)
    assert np.allclose(given.mean(cross), mean, atol=1e-9)
    assert np.allclose(np.sqrt(given.variance(cross, 0.012**2 + 0.03**2)), std, atol=1e-8)


def test_marginal_likelihood_differs_from_scikit_learn_by_the_same_constant():
    places = _places(40)
    heights = 0.02 * np.random.default_rng(5).standard_normal(40)
    evidence = Evidence.of(places, heights, np.array([50.0, 40.0]), Prior())
    evidence = Evidence(evidence.gaps, np.zeros((40, 40)), heights, Prior())
    gaps = []
    for ripple, length in ((0.01, 2.0), (0.02, 4.0), (0.03, 9.0)):
        kernel = ConstantKernel(ripple**2) * Matern(length, nu=2.5) + ConstantKernel(0.01**2) * Matern(
            30.0, nu=2.5
        )
        reference = GaussianProcessRegressor(kernel, alpha=0.004**2, optimizer=None).fit(places, heights)
        theta = np.log([ripple, length, length, 0.01, 30.0, 0.004])
        ours = evidence.log_density(theta) - Prior().log_density(theta)[0]
        gaps.append(ours - reference.log_marginal_likelihood_value_)
    assert np.ptp(gaps) < 1e-6


def test_slope_of_the_evidence_is_its_derivative():
    places = _places(30)
    evidence = Evidence.of(places, 0.01 * np.sin(places[:, 0]), np.array([50.0, 40.0]), Prior())
    theta = Prior().start + 0.1
    slope = evidence.descent(theta)[1]
    for k, step in enumerate(1e-5 * np.eye(6)):
        numeric = (evidence.descent(theta + step)[0] - evidence.descent(theta - step)[0]) / 2e-5
        assert slope[k] == pytest.approx(numeric, rel=1e-4, abs=1e-4)


def test_leave_one_out_equals_leaving_one_out():
    places = _places(15)
    heights = 0.01 * np.random.default_rng(1).standard_normal(15)
    theta = Prior().start
    terms = trend(places, np.array([50.0, 40.0]))
    full = covariance(theta, places, places) + terms @ terms.T + 0.004**2 * np.eye(15)
    errors, spreads = Conditioned.on(full, heights).leave_one_out()
    for k in range(15):
        others = np.delete(np.arange(15), k)
        given = Conditioned.on(full[np.ix_(others, others)], heights[others])
        cross = full[k, others][None, :]
        assert errors[k] == pytest.approx(heights[k] - given.mean(cross)[0], abs=1e-8)
        assert spreads[k] == pytest.approx(np.sqrt(given.variance(cross, full[k, k])[0]), abs=1e-8)


def test_a_plane_is_found_to_the_noise():
    surface = fit_surface(_touches(lambda p: 0.01 * p[:, 0] - 0.004 * p[:, 1] + 1.0, 30, 0.001))
    at = _places(200, 4)
    assert np.abs(surface.mean(at) - (0.01 * at[:, 0] - 0.004 * at[:, 1] + 1.0)).max() < 0.006


def test_interval_holds_nine_of_ten():
    inside = []
    for seed in range(4):
        rng = np.random.default_rng(100 + seed)
        places, at = _places(80, 10 * seed), _places(600, seed + 50)
        both = np.vstack((places, at))
        own = covariance(np.log([0.010 + 0.003 * seed, 3.0, 2.4, 0.02, 22.0, 1.0]), both, both)
        heights = np.linalg.cholesky(own + 1e-10 * np.eye(680)) @ rng.standard_normal(680)
        z = heights[:80] + 0.003 * rng.standard_normal(80)
        surface = fit_surface(np.column_stack((places, z)), seed=seed)
        inside.append(np.mean(np.abs(surface.mean(at) - heights[80:]) <= 1.6449 * surface.std(at)))
    assert 0.84 <= np.mean(inside) <= 0.96


def test_wrong_touches_are_named_and_cost_little(rippled):
    touches = _touches(rippled, 100, 0.002)
    bad = touches.copy()
    bad[[7, 40, 77], 2] += (0.15, 0.12, -0.2)
    surface = fit_surface(bad)
    assert set(surface.rejected) >= {7, 40, 77}
    assert len(surface.rejected) <= 5
    at = _places(300, 8)
    clean = np.sqrt(np.mean((fit_surface(touches).mean(at) - rippled(at)) ** 2))
    assert np.sqrt(np.mean((surface.mean(at) - rippled(at)) ** 2)) < 1.15 * clean


@pytest.mark.parametrize("count", [0, 1, 2, 3, 5])
def test_few_touches_give_a_wide_honest_spread(count):
    surface = fit_surface(_touches(lambda p: 0.001 * p[:, 0], count))
    assert np.isfinite(surface.mean(_places(5))).all()
    wide = surface.std(_places(50, 3)).mean()
    many = fit_surface(_touches(lambda p: 0.001 * p[:, 0], 40)).std(_places(50, 3)).mean()
    assert wide > 2.0 * many


def test_many_points_go_through_a_lattice_of_small_error(rippled):
    surface = fit_surface(_touches(rippled, 60))
    at = _places(5000, 2)
    gap = np.abs(surface.predict(at) - surface.exact(at))
    assert gap.mean() < 1e-4
    assert gap.max() < 2e-3


def test_drawn_surfaces_have_the_stated_mean_and_covariance(rippled):
    surface = fit_surface(_touches(rippled, 40))
    at = _places(25, 6)
    drawn = surface.joint_samples(at, 3000, seed=1)
    assert np.abs(drawn.mean(axis=0) - surface.mean(at)).max() < 0.12 * surface.std(at).max()
    assert np.allclose(drawn.std(axis=0), surface.std(at), rtol=0.12)
    assert np.allclose(np.diag(surface.covariance(at, at)), surface.std(at) ** 2, rtol=1e-6)


def test_same_seed_same_surface(rippled):
    touches = _touches(rippled, 30)
    at = _places(20, 1)
    assert np.array_equal(fit_surface(touches, seed=4).std(at), fit_surface(touches, seed=4).std(at))


def test_fitting_can_be_cancelled(rippled):
    progress = Progress()
    progress.cancel()
    with pytest.raises(Cancelled):
        fit_surface(_touches(rippled, 30), progress=progress)


def test_touches_that_are_no_numbers_are_refused():
    with pytest.raises(InputError, match="touches"):
        fit_surface([(0.0, 0.0, np.nan)])
    with pytest.raises(InputError, match="give"):
        fit_surface([(0.0, 0.0, 0.0)], give=[0.1, 0.2])


def test_a_touch_on_yielding_laminate_is_trusted_less(rippled):
    touches = _touches(rippled, 30)
    surface = fit_surface(touches, give=[0.5] + [0.0] * 29)
    assert surface.std(touches[:1, :2])[0] > 1.2 * fit_surface(touches).std(touches[:1, :2])[0]
