"""A hole's centre from contacts with its rim."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.errors import InputError
from drypoint.reference.rim import rim_centre


def _contacts(angles_deg, centre=(12.0, -7.0), radius=0.6):
    turn = np.radians(angles_deg)
    return np.array(centre) + radius * np.column_stack((np.cos(turn), np.sin(turn)))


def test_four_contacts_are_the_means():
    """NISTIR 6556 (2000), straight probe, its code for a hole (table 6, the number from memory): centre =
    means, diameter = distance plus the tip's own."""
    points = np.array([(12.62, -7.0), (11.42, -7.0), (12.02, -6.41), (12.02, -7.61)])
    found = rim_centre(points)
    assert found.centre[0] == pytest.approx((12.62 + 11.42) / 2, abs=1e-4)
    assert found.centre[1] == pytest.approx((-6.41 - 7.61) / 2, abs=1e-4)
    assert found.diameter(0.8) == pytest.approx(1.2 + 0.8, abs=2e-3)


@pytest.mark.parametrize(
    ("angles", "factor"), [((0, 90, 180, 270), 1 / math.sqrt(2)), ((90, 210, 330), math.sqrt(2 / 3))]
)
def test_uncertainty_of_the_centre(angles, factor):
    """Contacts evenly round: information about each coordinate is n/2 contacts' worth."""
    assert rim_centre(_contacts(angles), sigma=0.01).sigma == pytest.approx(0.01 * factor, rel=1e-6)


@given(
    st.lists(st.floats(0, 359), min_size=3, max_size=8, unique=True),
    st.floats(0.2, 5),
    st.tuples(st.floats(-100, 100), st.floats(-100, 100)),
)
def test_exact_circles_come_back(angles, radius, centre):
    around = np.sort(angles)
    if np.diff([*around, around[0] + 360]).min() < 15 or np.diff([*around, around[0] + 360]).max() > 250:
        return
    found = rim_centre(_contacts(around, centre, radius))
    assert found.centre == pytest.approx(centre, abs=1e-7)
    assert found.radius == pytest.approx(radius, abs=1e-7)


def test_simulated_errors_agree_with_the_covariance():
    rng = np.random.default_rng(1)
    errors = []
    for _ in range(2000):
        away = rng.normal(0, 0.01, 4)
        turn = np.radians([0, 90, 180, 270])
        points = (0.6 + away)[:, None] * np.column_stack((np.cos(turn), np.sin(turn)))
        errors.append(rim_centre(points, sigma=0.01).centre)
    # variance of 2000 draws: relative spread sqrt(2/2000) = 3.2 %, five of them allowed
    assert np.var(errors, axis=0) == pytest.approx(np.full(2, 0.01**2 / 2), rel=0.16)


def test_a_known_radius_helps_three_contacts_on_one_side():
    points = _contacts((-40, 0, 40))
    free, known = rim_centre(points, sigma=0.01), rim_centre(points, sigma=0.01, radius=0.6)
    assert known.sigma < free.sigma / 2
    assert known.centre == pytest.approx((12.0, -7.0), abs=1e-9)
    assert known.radius_sigma == 0.0


def test_a_bad_contact_is_seen_with_four():
    points = _contacts((0, 90, 180, 270))
    assert rim_centre(points, sigma=0.01).round
    points[0] += (0.2, 0.0)
    points[2] += (0.2, 0.0)  # shifts both: still a circle's worth in x
    points[1] += (0.0, 0.1)
    assert not rim_centre(points, sigma=0.01).round


def test_too_few_or_in_line():
    with pytest.raises(InputError, match="Three contacts"):
        rim_centre([(0, 0), (1, 0)])
    with pytest.raises(InputError, match="one line"):
        rim_centre([(0, 0), (1, 0), (2, 0)])
