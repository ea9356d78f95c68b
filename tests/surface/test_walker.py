"""Kriging of the Walker Lake samples, against the exhaustive truth they were taken from.

Data: Isaaks & Srivastava, "Applied Geostatistics" (1989), as carried by the R package gstat
(Debian r-cran-gstat, `walker.rda`): 470 samples and all 78,000 values of the quantity V.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy.interpolate import RBFInterpolator
from scipy.spatial import cKDTree

from drypoint.surface.kriging import Conditioned

RANGE, SILL, NUGGET = 35.0, 70_000.0, 22_000.0
"""A plain exponential model near the samples' variogram: an input of the method, not a check."""


def _exponential(a, b):
    return SILL * np.exp(-np.hypot(*(a[:, None] - b[None]).transpose(2, 0, 1)) / RANGE)


@pytest.fixture(scope="module")
def walker(r_data):
    found = r_data("gstat", "walker.rda")
    samples, truth = found["walker"], found["walker.exh"]
    places = samples["coords"].reshape(2, -1).T
    columns, rows = truth["grid"]["cells.dim"]
    values = truth["data"]["V"].reshape(rows, columns)[::-1]  # stored from the top row down
    return places, samples["data"]["V"], values


def _truth(values):
    x, y = np.meshgrid(np.arange(3, 260, 6), np.arange(3, 300, 6))
    return np.column_stack((x.ravel(), y.ravel())).astype(float), values[y - 1, x - 1].ravel()


def test_the_data_are_the_published_ones(walker):
    places, values, truth = walker
    assert len(values) == 470
    # means, spreads and quartiles published with the data set (Isaaks & Srivastava 1989)
    assert values.mean() == pytest.approx(435.30, abs=0.005)
    assert truth.size == 78_000
    assert truth.mean() == pytest.approx(277.98, abs=0.005)
    assert truth.std(ddof=1) == pytest.approx(249.85, abs=0.01)
    assert np.quantile(truth, (0.25, 0.5, 0.75)) == pytest.approx((67.80, 221.25, 429.34), abs=0.1)
    at = places.astype(int)
    same = np.abs(truth[at[:, 1] - 1, at[:, 0] - 1] - values) < 0.06  # samples are given to a tenth
    assert same.mean() > 0.97  # a few samples are stored otherwise than the truth they came from


def test_kriging_comes_nearer_to_the_truth_than_neighbours_and_splines(walker):
    places, values, everything = walker
    at, true = _truth(everything)
    middle = values.mean()
    own = _exponential(places, places) + NUGGET * np.eye(470) + 1e8  # unknown mean: a wide prior
    cross = _exponential(at, places) + 1e8
    given = Conditioned.on(own, values - middle)
    kriged = given.mean(cross) + middle

    def rms(guess):
        return np.sqrt(np.mean((guess - true) ** 2))

    distance, near = cKDTree(places).query(at, k=8)
    weight = 1.0 / np.maximum(distance, 0.5) ** 2
    assert rms(kriged) < rms(values[near[:, 0]])
    assert rms(kriged) < rms((weight * values[near]).sum(axis=1) / weight.sum(axis=1))
    assert rms(kriged) < rms(RBFInterpolator(places, values)(at))
    assert rms(kriged) < 0.75 * rms(np.full(len(true), true.mean()))
    # declustered: the samples lie where the values are high, their mean is 57 % too large
    assert abs(kriged.mean() - true.mean()) < 0.15 * abs(values.mean() - true.mean())
    spread = np.sqrt(given.variance(cross, SILL + NUGGET + 1e8))
    assert 0.85 < np.mean(np.abs(kriged - true) <= 1.6449 * spread) < 0.97
