"""The error between the second side's pads and the holes, predicted and drawn."""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy.stats import chi2

from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import fit_rigid
from drypoint.reference.registration import across, registration, turned

HOLES = np.array([(3.0, 4.0), (66.0, 6.0), (60.0, 45.0), (10.0, 40.0), (35.0, 25.0), (50.0, 12.0)])
TRUTH = Rigid(0.03, (12.0, -7.0), True)


def draw(rng, used, touch=0.02, wander=0.05):
    """One set-up: (fit, (M, 2) hole minus pad)."""
    real = TRUTH.apply(HOLES) + rng.normal(0, wander, HOLES.shape)
    touched = real[used] + rng.normal(0, touch, (len(used), 2))
    fit = fit_rigid(HOLES[used], touched, mirror=True, sigma=touch, hole_sigma=wander)
    return fit, real - fit.apply(HOLES)


def test_prediction_agrees_with_drawn_setups_at_every_hole():
    rng = np.random.default_rng(3)
    used = [0, 1, 2]
    drawn = [draw(rng, used) for _ in range(3000)]
    errors = np.stack([error for _, error in drawn])
    told = registration(drawn[0][0], HOLES)
    real = np.einsum("nmi,nmj->mij", errors, errors) / len(drawn)
    assert np.sqrt(np.trace(real, axis1=1, axis2=2)) == pytest.approx(told.rms, rel=0.05)
    size = np.hypot(errors[..., 0], errors[..., 1])
    assert (size <= told.radius(0.95)).mean(axis=0) == pytest.approx(0.95, abs=0.02)
    assert (size <= told.overall(0.95)).mean() == pytest.approx(0.95, abs=0.01)
    assert told.rms[:3].max() < told.rms[3:].min()


def test_round_errors_have_the_radius_of_the_tables():
    """Two-dimensional normal, equal axes: the 95 % radius is √χ²(0.95, 2) = 2.448 standard deviations."""
    fit = fit_rigid(HOLES[:3], TRUTH.apply(HOLES[:3]), mirror=True, sigma=1e-9)
    told = registration(fit, HOLES[3:], touch=0.0, wander=0.05)
    assert told.radius(0.95) == pytest.approx(0.05 * math.sqrt(chi2.ppf(0.95, 2)), rel=1e-3)
    assert told.within(0.05 * math.sqrt(chi2.ppf(0.5, 2))) == pytest.approx(0.5, abs=1e-3)


def test_more_holes_are_better():
    rng = np.random.default_rng(4)
    three, five = draw(rng, [0, 1, 2])[0], draw(rng, [0, 1, 2, 3, 5])[0]
    assert registration(five, HOLES).overall() < registration(three, HOLES).overall()


@pytest.mark.parametrize(("axis", "expected"), [("y", (77.0, 5.0)), ("x", (3.0, 45.0))])
def test_turning_over_keeps_the_corner(axis, expected):
    assert turned(80.0, 50.0, axis).apply([(3.0, 5.0)])[0] == pytest.approx(expected)


def test_the_way_across_is_its_own_way_back():
    there = across(70.0)
    assert there.then(there).apply(HOLES) == pytest.approx(HOLES)
    assert there.apply([(10.0, 3.0)])[0] == pytest.approx((60.0, 3.0))


def test_an_unknown_axis_is_a_fault():
    with pytest.raises(ValueError, match="axis"):
        turned(1.0, 1.0, "z")
