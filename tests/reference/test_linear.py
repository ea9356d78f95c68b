"""Least squares with covariance against a published worked example and exact algebra."""

import numpy as np
import pytest

from drypoint.errors import InputError
from drypoint.reference.linear import fit_line, solve

# JCGM 100:2008 (GUM), H.3, table H.6: thermometer readings and corrections, deg C
READINGS = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511]
CORRECTIONS = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160]


def test_gum_h3():
    """JCGM 100:2008 (GUM), H.3: calibration of a thermometer. Input as in table H.6 (printed too in
    the documentation of the package GTC 1.5.1, type_a.merge); results as published."""
    line = fit_line(READINGS, CORRECTIONS, origin=20.0)
    assert line.intercept == pytest.approx(-0.1712, abs=5e-5)
    assert line.intercept_sigma == pytest.approx(0.0029, abs=5e-5)
    assert line.slope == pytest.approx(0.00218, abs=5e-6)
    assert line.slope_sigma == pytest.approx(0.00067, abs=5e-6)
    assert line.correlation == pytest.approx(-0.930, abs=5e-4)
    assert line.scatter == pytest.approx(0.0035, abs=5e-5)
    value, sigma = line.at(30.0)
    assert value == pytest.approx(-0.1494, abs=5e-5)
    assert sigma == pytest.approx(0.0041, abs=5e-5)


def test_norris():
    """NIST StRD, linear regression, Norris (certified values; data as shipped with scipy's tests)."""
    from pathlib import Path

    import scipy.stats

    source = Path(scipy.stats.__file__).parent / "tests/data/nist_linregress/Norris.dat"
    lines = source.read_text().splitlines()[60:]
    y, x = np.array([[float(v) for v in line.split()] for line in lines if line.strip()]).T
    assert len(x) == 36
    line = fit_line(x, y)
    assert line.intercept == pytest.approx(-0.262323073774029, rel=1e-9)
    assert line.slope == pytest.approx(1.00211681802045, rel=1e-12)
    assert line.intercept_sigma == pytest.approx(0.232818234301152, rel=1e-9)
    assert line.slope_sigma == pytest.approx(0.429796848199937e-3, rel=1e-9)
    assert line.scatter == pytest.approx(0.884796396144373, rel=1e-9)


def test_weights_and_covariance_of_a_mean():
    found = solve(np.ones((2, 1)), [1.0, 4.0], [1.0, 2.0])
    assert found.values == pytest.approx([(1 + 4 / 4) / (1 + 1 / 4)])
    assert found.sigma == pytest.approx([1 / np.sqrt(1.25)])
    assert found.freedom == 1


def test_undetermined_is_refused():
    with pytest.raises(InputError, match="do not determine"):
        solve([[1, 1], [2, 2], [3, 3]], [1, 2, 3], 1.0)
    with pytest.raises(InputError, match="Too few"):
        solve([[1, 1]], [1], 1.0)
    with pytest.raises(InputError, match="three points"):
        fit_line([0, 1], [0, 1])
