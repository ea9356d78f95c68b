"""Ordinary kriging of the meuse zinc data, against the values gstat publishes for it.

Model: spherical variogram, nugget 0.05066, partial sill 0.59061, range 897.02 (gstat documentation,
fit of log zinc); leave-one-out RMSE and predictions at grid nodes computed with the same model.
"""

from __future__ import annotations

from importlib.util import find_spec
from pathlib import Path

import numpy as np
import pytest

from drypoint.surface.kriging import Conditioned


def _spherical(a, b):
    h = np.minimum(np.hypot(*(a[:, None] - b[None]).transpose(2, 0, 1)) / 897.0209, 1.0)
    return 0.59060780 * (1.0 - 1.5 * h + 0.5 * h**3)


@pytest.fixture
def meuse():
    spec = find_spec("skgstat")
    file = Path(str(spec.origin)).parent / "data/samples/meuse.txt" if spec else None
    if file is None or not file.exists():
        pytest.skip("the meuse data come with scikit-gstat, which is not installed")
    return np.loadtxt(file, skiprows=1, delimiter=",", usecols=(0, 1, 5))


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
