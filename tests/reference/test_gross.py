"""Wrong, swapped and other holes are named; right ones are not accused."""

import numpy as np
import pytest
from scipy.stats import binom

from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import fit_rigid
from drypoint.reference.gross import Verdict, check, symmetries

HOLES = np.array([(4.0, 5.0), (95.0, 8.0), (60.0, 72.0), (9.0, 66.0)])
MOTION = Rigid(0.13, (7.0, -4.0))


def _simulate(count, trials, offset, seed):
    """How often the wrong hole is named first, and how often a right one is called wrong."""
    rng = np.random.default_rng(seed)
    named = accused = 0
    for _ in range(trials):
        touched = MOTION.apply(HOLES[:count]) + rng.normal(0, 0.02, (count, 2))
        bad = int(rng.integers(count))
        angle = rng.uniform(0, 2 * np.pi)
        touched[bad] += offset * np.array([np.cos(angle), np.sin(angle)])
        found = check(fit_rigid(HOLES[:count], touched, sigma=0.02))
        named += found.holes[:1] == (bad,)
        accused += found.verdict is Verdict.SWAPPED or (
            found.verdict is Verdict.WRONG and found.holes != (bad,)
        )
    return named, accused


@pytest.mark.parametrize(("count", "share"), [(3, 0.85), (4, 0.99)])
def test_a_hole_off_by_ten_sigma_is_named(count, share):
    """0.2 mm at 20 µm noise. The number named must not be so small that a true share of ``share``
    would give it less than once in a thousand; accusations not so many that 1 % would."""
    trials = 500
    named, accused = _simulate(count, trials, 0.2, seed=count)
    assert named >= binom.ppf(0.001, trials, share)
    assert accused <= binom.ppf(0.999, trials, 0.01)


def test_among_three_two_may_be_suspected():
    """Hole 3 is off square to the line from hole 1: that distance stays, so hole 2 explains it too."""
    along = (HOLES[2] - HOLES[0]) / np.hypot(*(HOLES[2] - HOLES[0]))
    touched = HOLES[:3] + np.array([(0, 0), (0, 0), (-0.2 * along[1], 0.2 * along[0])])
    found = check(fit_rigid(HOLES[:3], touched, sigma=0.02))
    assert found.verdict is Verdict.SUSPECT
    assert set(found.holes) == {1, 2}
    assert "may also be" in found.what


@pytest.mark.parametrize("count", [3, 4])
def test_right_holes_raise_the_alarm_at_the_stated_level(count):
    rng = np.random.default_rng(count)
    trials = 1500
    alarms = sum(
        check(fit_rigid(HOLES[:count], MOTION.apply(HOLES[:count]) + rng.normal(0, 0.02, (count, 2)))).verdict
        is not Verdict.FITS
        for _ in range(trials)
    )
    assert binom.ppf(0.001, trials, 0.01) <= alarms <= binom.ppf(0.999, trials, 0.01)


def test_two_holes_show_their_one_check():
    touched = MOTION.apply(HOLES[:2])
    fine = check(fit_rigid(HOLES[:2], touched, sigma=0.02))
    assert fine.verdict is Verdict.FITS
    assert fine.distance_error == pytest.approx(0.0, abs=1e-9)
    along = (touched[1] - touched[0]) / np.hypot(*(touched[1] - touched[0]))
    off = check(fit_rigid(HOLES[:2], touched + np.array([(0, 0), 0.3 * along]), sigma=0.02))
    assert off.verdict is Verdict.UNCLEAR
    assert off.distance_error == pytest.approx(0.3)
    assert "0.300 mm too far apart" in off.what


def test_two_holes_suspect_another_hole_by_distance():
    everything = np.vstack((HOLES, [(80.0, 30.0)]))
    touched = MOTION.apply([HOLES[0], (80.0, 30.0)])
    found = check(fit_rigid(HOLES[:2], touched, sigma=0.02), holes=everything)
    assert (1, 4) in found.maybe


@pytest.mark.parametrize("count", [3, 4])
def test_swapped_holes_are_said_to_be(count):
    touched = MOTION.apply(HOLES[:count])[[1, 0, *range(2, count)]]
    found = check(fit_rigid(HOLES[:count], touched, sigma=0.02), names=["A", "B", "C", "D"][:count])
    assert found.verdict is Verdict.SWAPPED
    assert found.holes == (0, 1)
    assert "A and B" in found.what


def test_another_hole_touched_instead_is_suspected():
    everything = np.vstack((HOLES, [(95.0, 40.0), (20.0, 20.0)]))
    design = HOLES
    touched = MOTION.apply(np.vstack((HOLES[:1], [(95.0, 40.0)], HOLES[2:])))
    found = check(fit_rigid(design, touched, sigma=0.02), holes=everything)
    assert found.verdict is Verdict.WRONG
    assert found.holes == (1,)
    assert found.maybe == ((1, 4),)


def test_a_rectangle_fits_itself_turned_half():
    corners = [(0, 0), (60, 0), (60, 40), (0, 40)]
    assert symmetries(corners) == ((2, 3, 0, 1),)
    assert symmetries(HOLES) == ()
    assert symmetries([(0, 0), (50, 0)]) == ((1, 0),)
