"""The probability to be through: against numerical integration and simulation."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.stats import norm

from drypoint.passes.bulk import reach_from_lattice
from drypoint.passes.chance import expected_width, margin_for, through
from drypoint.surface.lattice import Lattice

MM = st.floats(-0.1, 0.1)
SIGMA = st.floats(0.001, 0.05)
PLAY = st.floats(0.0, 0.06)


@given(MM, SIGMA, st.floats(0.002, 0.06))
def test_equals_the_integral_over_the_play(margin, sigma, play):
    value, _ = quad(lambda u: norm.cdf((margin - u) / sigma) / play, 0.0, play, epsabs=1e-12)
    assert through(margin, sigma, play) == pytest.approx(value, abs=1e-7)


def test_without_play_it_is_the_normal_distribution():
    # Φ(1.2816) = 0.9, Φ(2.3263) = 0.99: any table of the normal distribution
    assert through([0.0, 0.012816, 0.023263], 0.01) == pytest.approx([0.5, 0.9, 0.99], abs=1e-5)


def test_known_height_without_play_is_sure():
    assert list(through([0.001, -0.001], 0.0)) == [1.0, 0.0]
    assert through(0.005, 0.0, 0.01) == pytest.approx(0.5, abs=1e-6)


@given(MM, SIGMA, PLAY)
def test_more_depth_never_hurts_and_play_never_helps(margin, sigma, play):
    assert through(margin + 0.001, sigma, play) >= through(margin, sigma, play) - 1e-12
    assert through(margin, sigma, play) <= through(margin, sigma, 0.0) + 1e-9


@given(st.floats(0.05, 0.9995), st.lists(SIGMA, min_size=1, max_size=5), PLAY)
def test_margin_reaches_its_target(target, sigma, play):
    found = margin_for(target, np.array(sigma), play)
    assert np.allclose(through(found, np.array(sigma), play), target, atol=1e-3)


def test_expected_width_equals_simulation():
    rng = np.random.default_rng(0)
    depth = 0.02 + 0.015 * rng.standard_normal(400_000)
    width = np.where(depth > 0, 0.1 + 0.5 * depth, 0.0)
    assert expected_width(0.02, 0.015, 0.1, 0.5) == pytest.approx(width.mean(), abs=3e-4)


@pytest.mark.parametrize("play", [0.0, 0.0001, 0.015, 0.08])
def test_tables_equal_the_formula(play):
    rng = np.random.default_rng(1)
    field = 0.004 + 0.02 * rng.random((12, 9, 1))
    lattice = Lattice((1.0, 2.0), 0.5, field)
    places = rng.random((30_000, 2)) * (8.0, 7.0)
    depths = [np.where(rng.random(30_000) < 0.3, -np.inf, 0.15 * rng.random(30_000)) for _ in range(3)]
    ours = reach_from_lattice(places, depths, lattice, copper=0.035, play=play)
    deepest = np.maximum(np.max(depths, axis=0), -10.0)
    wanted = through(deepest - 0.035, lattice.read(places)[:, 0], play)
    assert np.abs(ours - wanted).max() < 2e-5


@pytest.mark.parametrize("play", [0.00005, 0.00009, 0.0001])
@pytest.mark.parametrize("margin", [-0.005, 0.0, 0.01])
def test_little_play_counts_by_its_mean(margin, play):
    value, _ = quad(lambda u: norm.cdf((margin - u) / 0.01) / play, 0.0, play, epsabs=1e-12)
    assert through(margin, 0.01, play) == pytest.approx(value, abs=2e-6)


def test_expected_width_lacks_half_of_the_play():
    rng = np.random.default_rng(0)
    depth = 0.03 + 0.015 * rng.standard_normal(400_000) - 0.006 * rng.random(400_000)
    width = np.where(depth > 0, 0.1 + 0.5 * depth, 0.0)
    assert expected_width(0.03, 0.015, 0.1, 0.5, 0.006) == pytest.approx(width.mean(), abs=3e-4)
