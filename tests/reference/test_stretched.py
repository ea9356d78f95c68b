"""Scale and squareness corrected on an explicit choice, inside the one kind of fit."""

import numpy as np
import pytest
from skimage.transform import AffineTransform

from drypoint.errors import InputError
from drypoint.geometry.rigid import Rigid
from drypoint.reference.affine import fit_affine, stretched
from drypoint.reference.fit import fit_rigid

HOLES = np.array([(4.0, 4.0), (96.0, 5.0), (50.0, 75.0), (5.0, 70.0), (90.0, 66.0)])
SKEW = np.array([(1.002, 0.0015), (0.0, 0.999)])


@pytest.mark.parametrize("mirror", [False, True])
def test_the_map_is_the_affine_one_of_a_reference_library(mirror):
    """scikit-image's AffineTransform, estimated by total least squares; exact data have one answer."""
    touched = Rigid(0.2, (7.0, -3.0), mirror).apply(HOLES) @ SKEW.T
    fit = stretched(fit_rigid(HOLES, touched, mirror=mirror, sigma=0.02))
    reference = AffineTransform.from_estimate(HOLES, touched)
    spots = np.random.default_rng(0).uniform((0, 0), (100, 80), (20, 2))
    assert np.allclose(fit.apply(spots), reference(spots), atol=1e-9)
    assert np.abs(fit.residuals).max() < 1e-9
    assert np.allclose(fit.stretch, fit.stretch.T)
    assert fit.freedom == 4
    assert np.allclose(fit.apply(np.column_stack((spots, spots[:, 0])))[:, 2], spots[:, 0])


@pytest.mark.parametrize("mirror", [False, True])
def test_its_covariance_is_that_of_the_affine_fit(mirror):
    rng = np.random.default_rng(1)
    touched = Rigid(-1.2, (7.0, -3.0), mirror).apply(HOLES) @ SKEW.T + rng.normal(0, 0.02, HOLES.shape)
    fit = stretched(fit_rigid(HOLES, touched, mirror=mirror, sigma=0.02))
    flip = np.array([-1.0 if mirror else 1.0, 1.0])
    plain = fit_affine(HOLES * flip, touched, sigma=0.02)
    assert np.allclose(fit.apply(HOLES), plain.apply(HOLES * flip))
    assert np.allclose(fit.covariance_at(HOLES), plain.covariance_at(HOLES * flip))


def test_it_covers_what_it_says():
    rng = np.random.default_rng(2)
    truth = Rigid(0.4, (3.0, 4.0)).apply(HOLES) @ SKEW.T
    inside = 0
    for _ in range(2000):
        fit = stretched(fit_rigid(HOLES, truth + rng.normal(0, 0.02, HOLES.shape), sigma=0.02))
        error = fit.apply([HOLES[2]])[0] - truth[2]
        inside += error @ np.linalg.solve(fit.covariance_at([HOLES[2]])[0], error) < 5.991464547107979
    assert 0.93 < inside / 2000 < 0.97


def test_three_holes_are_too_few():
    with pytest.raises(InputError, match="four holes"):
        stretched(fit_rigid(HOLES[:3], HOLES[:3]))
