"""The rigid fit against closed form, published examples, a reference library and simulation."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import binom
from skimage.transform import EuclideanTransform, SimilarityTransform

from drypoint.errors import InputError
from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import ellipses, fit_rigid

coordinate = st.floats(-200, 200)
point = st.tuples(coordinate, coordinate)


@given(
    points=st.lists(point, min_size=2, max_size=8),
    angle=st.floats(-math.pi, math.pi),
    offset=point,
    mirror=st.booleans(),
)
def test_exact_motions_come_back(points, angle, offset, mirror):
    design = np.array(points)
    if np.ptp(design, axis=0).max() < 1e-2:
        return
    truth = Rigid(angle, offset, mirror)
    fit = fit_rigid(design, truth.apply(design), mirror=mirror)
    assert np.abs(fit.residuals).max() < 1e-9
    assert np.allclose(fit.apply([(0, 0), (50, 80)]), truth.apply([(0, 0), (50, 80)]), atol=1e-6)
    assert fit.scale == pytest.approx(1.0, abs=1e-9)


def _random_case(rng):
    count = rng.integers(2, 9)
    design = rng.uniform(-80, 80, (count, 2))
    touched = Rigid(rng.uniform(-3, 3), tuple(rng.uniform(-50, 50, 2))).apply(design)
    return design, touched + rng.normal(0, rng.choice([0.02, 1.0, 10.0]), design.shape)


@pytest.mark.parametrize("seed", range(100))
def test_equals_the_reference_library(seed):
    """scikit-image's EuclideanTransform (Umeyama 1991), to 1e-9; its SimilarityTransform's scale."""
    design, touched = _random_case(np.random.default_rng(seed))
    fit = fit_rigid(design, touched)
    reference = EuclideanTransform.from_estimate(design, touched)
    assert np.abs(fit.apply(design) - reference(design)).max() < 1e-9
    assert abs(math.remainder(fit.angle - reference.rotation, 2 * math.pi)) < 1e-9
    assert np.abs(fit.offset - reference.translation).max() < 1e-9


def test_umeyamas_example():
    """Umeyama, IEEE TPAMI 13(4):376-380 (1991), worked example: rotation and scale as published."""
    fit = fit_rigid([(0, 0), (1, 0), (0, 2)], [(0, 0), (-1, 0), (0, 2)])
    assert fit.rigid.matrix() == pytest.approx(np.array([[0.832, 0.555], [-0.555, 0.832]]), abs=5e-4)
    assert fit.scale == pytest.approx(0.721, abs=5e-4)
    similarity = SimilarityTransform.from_estimate(
        np.array([(0, 0), (1, 0), (0, 2.0)]), np.array([(0, 0), (-1, 0), (0, 2.0)])
    )
    assert fit.scale == pytest.approx(similarity.scale, abs=1e-9)


def test_mirrored_points_are_fitted_as_a_turned_over_board():
    truth = Rigid(0.4, (60.0, 12.0), mirror=True)
    design = np.array([(3.0, 4.0), (55.0, 6.0), (30.0, 44.0)])
    fit = fit_rigid(design, truth.apply(design), mirror=True)
    assert fit.rigid.angle == pytest.approx(0.4)
    assert fit_rigid(design, truth.apply(design)).rms > 1.0  # unmirrored it cannot fit


def test_weights_trust_the_better_hole():
    """With one poor hole among three, the good two decide."""
    design = np.array([(0.0, 0.0), (50.0, 0.0), (0.0, 40.0)])
    touched = design + np.array([(0, 0), (0, 0), (1.0, 0)])
    fit = fit_rigid(design, touched, sigma=[0.01, 0.01, 10.0])
    assert np.abs(fit.apply(design[:2]) - design[:2]).max() < 1e-4


def test_weighted_fit_is_the_minimum():
    """No small turn or shift lowers the weighted sum of squares (first-order optimality)."""
    rng = np.random.default_rng(4)
    design = rng.uniform(0, 80, (5, 2))
    touched = Rigid(0.2, (3, 4)).apply(design) + rng.normal(0, 0.1, (5, 2))
    fit = fit_rigid(design, touched, sigma=rng.uniform(0.01, 0.1, 5), hole_sigma=0.02)

    def cost(angle, x, y):
        moved = Rigid(fit.angle + angle, (fit.offset[0] + x, fit.offset[1] + y)).apply(design)
        return float((((touched - moved) / fit.sigma[:, None]) ** 2).sum())

    assert cost(0, 0, 0) == pytest.approx(fit.misfit)
    for step in ((1e-5, 0, 0), (-1e-5, 0, 0), (0, 1e-4, 0), (0, -1e-4, 0), (0, 0, 1e-4), (0, 0, -1e-4)):
        assert cost(*step) > fit.misfit


def test_covariance_closed_form():
    """Equal weights, axes at the middle: sigma/sqrt(n) along the arm, sigma sqrt(1/n + r²/S) across."""
    design = np.array([(-40.0, 0.0), (40.0, 0.0)])
    covariance = fit_rigid(design, design, sigma=0.02).covariance_at([(90.0, 0.0)])[0]
    assert covariance[0, 0] == pytest.approx(0.02**2 / 2)
    assert covariance[1, 1] == pytest.approx(0.02**2 * (1 / 2 + 90**2 / 3200))
    assert covariance[0, 1] == pytest.approx(0.0, abs=1e-15)


def test_covariance_turns_with_the_board():
    design = np.array([(0.0, 0.0), (60.0, 10.0), (20.0, 45.0)])
    turn = Rigid(1.1, (5.0, -3.0))
    still = fit_rigid(design, design, sigma=0.03).covariance_at([(70.0, 40.0)])[0]
    turned = fit_rigid(design, turn.apply(design), sigma=0.03).covariance_at([(70.0, 40.0)])[0]
    matrix = turn.matrix()
    assert turned == pytest.approx(matrix @ still @ matrix.T, rel=1e-9)


@pytest.mark.parametrize("count", [2, 3, 4])
def test_ellipses_hold_what_they_promise(count):
    """Coverage of the 95 % ellipses at points all over the board, weights by touch and hole.

    One point per simulated set-up, so hits are independent: their number is binomial(4000, 0.95).
    The bounds leave out one chance in a thousand on each side.
    """
    rng = np.random.default_rng(count)
    design = np.array([(4.0, 4.0), (96.0, 5.0), (50.0, 75.0), (5.0, 70.0)])[:count]
    sigma, wander = np.array([0.02, 0.05, 0.03, 0.04])[:count], 0.05
    total, hits = 4000, 0
    for _ in range(total):
        truth = Rigid(rng.uniform(-0.2, 0.2), tuple(rng.uniform(-5, 5, 2)))
        wandered = design + rng.normal(0, wander, design.shape)
        touched = truth.apply(wandered) + rng.normal(0, 1, design.shape) * sigma[:, None]
        fit = fit_rigid(design, touched, sigma=sigma, hole_sigma=wander)
        spot = rng.uniform((0, 0), (100, 80), (1, 2))
        error = (fit.apply(spot) - truth.apply(spot))[0]
        hits += error @ np.linalg.solve(fit.covariance_at(spot)[0], error) <= 5.991464547107979
    assert binom.ppf(0.001, total, 0.95) <= hits <= binom.ppf(0.999, total, 0.95)


def test_ellipse_axes():
    """2.448 standard deviations hold 95 % in the plane: sqrt of the chi-squared quantile 5.991,
    two degrees of freedom (printed in every table of chi-squared)."""
    axes = ellipses(np.array([np.diag([4.0, 1.0]), np.diag([1.0, 9.0])]))
    assert axes[0, :2] == pytest.approx([2 * 2.4477, 2.4477], abs=1e-3)
    assert abs(math.remainder(axes[0, 2], math.pi)) < 1e-9
    assert abs(abs(axes[1, 2]) - math.pi / 2) < 1e-9


@settings(max_examples=30)
@given(st.floats(0.001, 0.1), st.integers(2, 6))
def test_scale_uncertainty_is_the_closed_form(sigma, count):
    design = np.column_stack((np.linspace(0, 90, count), np.linspace(0, 30, count) ** 1.1))
    fit = fit_rigid(design, design, sigma=sigma)
    spread = ((design - design.mean(axis=0)) ** 2).sum()
    assert fit.scale_sigma == pytest.approx(sigma / math.sqrt(spread))


@pytest.mark.parametrize(
    ("design", "touched", "part"),
    [
        ([(0, 0)], [(0, 0)], "two holes"),
        ([(0, 0), (1, 1)], [(0, 0)], "2 holes in the design but 1"),
        ([(5, 5), (5, 5)], [(0, 0), (1, 1)], "one place"),
        ([(0, 0), (float("nan"), 1)], [(0, 0), (1, 1)], "finite"),
        ([], [], "two holes"),
    ],
)
def test_bad_input_is_refused_in_words(design, touched, part):
    with pytest.raises(InputError, match=part):
        fit_rigid(design, touched)


def test_uncertainties_must_be_there():
    with pytest.raises(InputError, match="above zero"):
        fit_rigid([(0, 0), (9, 0)], [(0, 0), (9, 0)], sigma=0.0)
    with pytest.raises(InputError, match="zero or more"):
        fit_rigid([(0, 0), (9, 0)], [(0, 0), (9, 0)], sigma=-0.1)
