"""Ordinary kriging of the meuse zinc data, against the values gstat publishes for it.

Variogram: the 15 bins of log zinc and the spherical model fitted to them (nugget 0.05066, partial
sill 0.59061, range 897.02) are printed in the documentation of the R package gstat (`variogram`,
`fit.variogram`). Predictions at single nodes and the leave-one-out error were computed with that
model by a solver of another kind (2 digits more than the documentation prints of the whole grid).
"""

from __future__ import annotations

from importlib.util import find_spec
from pathlib import Path

import numpy as np
import pytest
from scipy.optimize import curve_fit

from drypoint.surface.kernel import Gaps
from drypoint.surface.kriging import Conditioned

PAIRS = (57, 299, 419, 457, 547, 533, 574, 564, 589, 543, 500, 477, 452, 457, 415)
GAMMA = (
    0.1234479, 0.2162185, 0.3027859, 0.4121448, 0.4634128, 0.5646933, 0.5689683, 0.6186769,
    0.6471479, 0.6915705, 0.7033984, 0.6038770, 0.6517158, 0.5665318, 0.5748227,
)  # fmt: skip
WIDTH = 106.44150773
"""Published bins: pairs, semivariance and width, m (gstat documentation, log zinc ~ 1)."""


def _spherical(a, b):
    h = np.minimum(np.hypot(*(a[:, None] - b[None]).transpose(2, 0, 1)) / 897.0209, 1.0)
    return 0.59060780 * (1.0 - 1.5 * h + 0.5 * h**3)


@pytest.fixture
def meuse(r_data):
    """(155, 3) place and zinc content, from scikit-gstat's or the R package sp's copy of the data."""
    spec = find_spec("skgstat")
    file = Path(str(spec.origin)).parent / "data/samples/meuse.txt" if spec else None
    if file is not None and file.exists():
        return np.loadtxt(file, skiprows=1, delimiter=",", usecols=(0, 1, 5))
    table = r_data("sp", "meuse.rda")["meuse"]
    return np.column_stack([table[name] for name in ("x", "y", "zinc")])


def test_kriging_of_log_zinc(meuse):
    places, heights = meuse[:, :2], np.log(meuse[:, 2])
    assert len(places) == 155
    middle = heights.mean()
    own = _spherical(places, places) + 0.05066243 * np.eye(155) + 1e4  # unknown mean: a wide prior
    given = Conditioned.on(own, heights - middle)
    errors, _ = given.leave_one_out()
    assert np.sqrt(np.mean(errors**2)) == pytest.approx(0.391804, abs=2e-4)
    at = np.array([(181180.0, 333740.0), (181140.0, 333700.0), (180300.0, 331300.0)])
    cross = _spherical(at, places) + 1e4
    assert np.allclose(given.mean(cross) + middle, (6.499624, 6.622356, 4.965503), atol=2e-3)
    variance = given.variance(cross, 0.59060780 + 0.05066243 + 1e4)
    assert np.allclose(variance, (0.319808, 0.252020, 0.202676), atol=2e-3)


def test_variogram_and_its_fit_are_the_published_ones(meuse):
    places, heights = meuse[:, :2], np.log(meuse[:, 2])
    gaps = Gaps.of(places)
    upper = np.triu_indices(len(places), 1)
    distance = np.sqrt(gaps.x2 + gaps.y2)[upper]
    half = 0.5 * (heights[:, None] - heights[None])[upper] ** 2
    bins = np.ceil(distance / WIDTH).astype(int) - 1
    near = bins < 15
    count = np.bincount(bins[near], minlength=15)
    mean = np.bincount(bins[near], distance[near], minlength=15) / count
    gamma = np.bincount(bins[near], half[near], minlength=15) / count
    assert tuple(count) == PAIRS
    assert np.allclose(gamma, GAMMA, atol=1e-6)

    def model(h, nugget, sill, reach):
        s = np.minimum(h / reach, 1.0)
        return nugget + sill * (1.5 * s - 0.5 * s**3)

    # gstat weighs a bin by pairs / distance²; its stop leaves the last digits open
    fit, _ = curve_fit(model, mean, gamma, (0.1, 0.5, 900.0), sigma=mean / np.sqrt(count))
    assert fit == pytest.approx((0.05066243, 0.59060780, 897.0209), rel=2e-4)


def test_the_whole_grid_of_predictions(meuse, r_data):
    """Least, mean and largest prediction and variance over the 3,103 nodes (gstat's tutorial)."""
    grid = r_data("sp", "meuse.grid.rda")["meuse.grid"]
    at = np.column_stack((grid["x"], grid["y"]))
    places, heights = meuse[:, :2], np.log(meuse[:, 2])
    middle = heights.mean()
    given = Conditioned.on(_spherical(places, places) + 0.05066243 * np.eye(155) + 1e4, heights - middle)
    cross = _spherical(at, places) + 1e4
    mean = given.mean(cross) + middle
    variance = given.variance(cross, 0.59060780 + 0.05066243 + 1e4)
    assert len(mean) == 3103
    assert (mean.min(), mean.mean(), mean.max()) == pytest.approx((4.776555, 5.707229, 7.439991), abs=1e-4)
    assert (variance.min(), variance.max()) == pytest.approx((0.085495, 0.500276), abs=1e-4)
