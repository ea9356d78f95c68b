"""Ripple of one period: found where it is, left alone where it is not."""

from __future__ import annotations

import numpy as np
import pytest

from drypoint.surface.kernel import Prior, covariance
from drypoint.surface.kriging import Conditioned
from drypoint.surface.model import fit_surface
from drypoint.surface.waves import KEEPS, SIZE, Waves

LENGTH, TURN = 5.0, 0.4
"""mm from crest to crest, and the direction of the wave, rad."""


def _places(count, seed=0):
    return np.random.default_rng(seed).random((count, 2)) * (100.0, 80.0)


def _wave(p):
    direction = np.array((np.cos(TURN), np.sin(TURN)))
    return 0.012 * np.cos(2.0 * np.pi / LENGTH * (p @ direction) + 1.0)


def _touched(height, count, seed=0):
    places = _places(count, seed)
    return np.column_stack((places, height(places) + 0.003 * np.random.default_rng(9).standard_normal(count)))


def test_a_wave_is_found_with_its_period_and_direction():
    surface = fit_surface(_touched(lambda p: _wave(p) + 0.001 * p[:, 0], 80))
    assert len(surface.waves) == 1
    assert surface.waves.lengths[0] == pytest.approx(LENGTH, rel=0.01)
    x, y = surface.waves.vectors[0]
    assert np.arctan(y / x) == pytest.approx(TURN, abs=0.01)
    assert surface.waves.heights(surface.touches) == pytest.approx([2 * 0.012], rel=0.1)


def test_the_wave_is_foretold_between_touches_farther_apart_than_it_is_long():
    at = _places(500, 7)
    surface = fit_surface(_touched(_wave, 80))  # about 10 mm apart
    error = surface.mean(at) - _wave(at)
    assert np.sqrt(np.mean(error**2)) < 0.3 * np.std(_wave(at))
    assert np.mean(np.abs(error) <= 1.6449 * surface.std(at)) > 0.8


def test_no_wave_is_seen_in_ripple_that_forgets():
    seen = 0
    for seed in range(6):
        places = _places(100, seed)
        own = covariance(Prior().start, places, places) + 0.003**2 * np.eye(100)
        z = np.linalg.cholesky(own) @ np.random.default_rng(seed).standard_normal(100)
        seen += len(fit_surface(np.column_stack((places, z))).waves)
    assert seen == 0


def test_wrong_touches_in_a_wave_are_named():
    touches = _touched(_wave, 90)
    touches[[5, 50], 2] += (0.05, -0.06)
    surface = fit_surface(touches)
    assert set(surface.rejected) == {5, 50}


def test_drawn_waves_have_the_covariance_they_claim():
    blur = np.array([np.eye(2), [(2.0, 0.5), (0.5, 1.0)]]) / KEEPS**2
    waves = Waves(np.array([(1.2, 0.3), (0.0, 0.8)]), blur)
    at = _places(12, 3)
    drawn = waves.draws(at, 6000, np.random.default_rng(0))
    claimed = waves.covariance(at, at)
    assert np.abs(drawn.T @ drawn / 6000 - claimed).max() < 0.12 * waves.variance
    assert np.diag(claimed) == pytest.approx(2 * SIZE**2)
    far = waves.covariance(np.zeros((1, 2)), np.array([(3.0 * KEEPS, 0.0)]))
    assert abs(far[0, 0]) < 0.02 * waves.variance


def test_drawn_surfaces_agree_with_the_stated_mean_and_spread():
    surface = fit_surface(_touched(_wave, 80))
    at = _places(20, 4)
    drawn = surface.joint_samples(at, 3000, seed=2)
    assert np.abs(drawn.mean(axis=0) - surface.mean(at)).max() < 0.2 * surface.std(at).max()
    assert np.allclose(drawn.std(axis=0), surface.std(at), rtol=0.15)
    assert np.allclose(np.diag(surface.covariance(at, at)), surface.std(at) ** 2, rtol=1e-6)


def test_evidence_for_the_true_wave_equals_that_of_the_full_covariance():
    """The rank-two update of the marginal likelihood against two full ones (R&W eq. 2.30)."""
    from drypoint.surface.waves import _gain

    places = _places(40)
    z = _wave(places)
    own = covariance(Prior().start, places, places) + 0.003**2 * np.eye(40)
    vector = 2.0 * np.pi / LENGTH * np.array([(np.cos(TURN), np.sin(TURN))])
    turn = places @ vector[0]
    wave = SIZE**2 * np.cos(turn[:, None] - turn[None])

    def evidence(cov):
        return -0.5 * z @ np.linalg.solve(cov, z) - 0.5 * np.linalg.slogdet(cov)[1]

    given = Conditioned.on(own, z)
    gain = _gain(given.inverse(), given.weights, places, vector)
    assert gain[0] == pytest.approx(evidence(own + wave) - evidence(own), rel=1e-6)
