"""What a fit means for the rings, and which hole helps most."""

import math

import numpy as np
import pytest
import shapely

from drypoint.board.model import Hole
from drypoint.reference.fit import fit_rigid
from drypoint.reference.worth import choose_holes, next_hole, pad_radii, worth

HOLES = [Hole(5, 5, 0.8), Hole(90, 70, 0.8), Hole(50, 40, 1.0)]
PADS = {
    "A": shapely.Point(5, 5).buffer(0.9, quad_segs=64),
    "B": shapely.Point(90, 70).buffer(0.7, quad_segs=64).difference(shapely.Point(90, 70).buffer(0.4)),
}


def test_pad_radii():
    radii = pad_radii(HOLES, PADS)
    assert radii[0] == pytest.approx(0.9, abs=1e-3)
    assert radii[1] == pytest.approx(0.7, abs=1e-3)  # the gap in the copper is the hole itself
    assert math.isnan(radii[2])


def test_a_slit_in_the_copper_counts_as_an_edge():
    copper = shapely.box(0, 0, 10, 10).difference(shapely.box(6, 2, 7, 8))
    assert pad_radii([Hole(5, 5, 0.8)], {"A": copper})[0] == pytest.approx(1.0)


def test_ring_left_is_the_closed_form():
    """(pad - hole)/2 less 2.448 standard deviations across the arm, equal weights."""
    design = np.array([(0.0, 0.0), (20.0, 0.0)])
    fit = fit_rigid(design, design, sigma=0.02)
    found = worth(fit, [Hole(100.0, 0.0, 0.8)], [0.7])
    sigma = 0.02 * math.sqrt(1 / 2 + 90**2 / 200)
    assert found.worst is not None
    assert found.worst.left == pytest.approx(0.7 - 0.4 - 2.4477 * sigma, abs=1e-5)
    assert found.worst.designed == pytest.approx(0.3)
    assert found.worst.expected == pytest.approx(math.hypot(sigma, 0.02 / math.sqrt(2)))


def test_the_worst_hole_is_named():
    design = np.array([(0.0, 0.0), (20.0, 0.0)])
    fit = fit_rigid(design, design, sigma=0.02)
    found = worth(fit, HOLES, pad_radii(HOLES, PADS))
    assert [ring.hole for ring in found.rings] == [0, 1]
    assert found.worst is not None
    assert found.worst.hole == 1
    assert worth(fit, [], []).worst is None


def test_the_next_hole_is_the_one_that_makes_the_worst_best():
    """Predicted by information agrees with fitting the hole for real."""
    design = np.array([(0.0, 0.0), (20.0, 0.0)])
    targets = [(0, 0), (100, 0), (100, 80), (0, 80)]
    candidates = np.array([(10.0, 1.0), (100.0, 80.0), (50.0, 40.0)])
    advice = next_hole(fit_rigid(design, design, sigma=0.02), candidates, targets, sigma=0.02)
    assert [a.hole for a in advice] == [1, 2, 0]
    assert advice[0].gain > advice[1].gain > advice[2].gain > 0
    for one in advice:
        more = np.vstack((design, candidates[one.hole]))
        covariance = fit_rigid(more, more, sigma=0.02).covariance_at(targets)
        actual = math.sqrt(5.991464547) * math.sqrt(np.linalg.eigvalsh(covariance)[:, 1].max())
        assert one.then == pytest.approx(actual, rel=1e-6)


def test_rings_change_the_advice():
    """With no ring to lose at the far end, the near pad decides."""
    design = np.array([(0.0, 0.0), (20.0, 0.0)])
    fit = fit_rigid(design, design, sigma=0.02)
    targets, candidates = [(100, 0), (0, 60)], [(100, 0), (0, 60)]
    far = next_hole(fit, candidates, targets, rings=[0.0, 10.0])
    near = next_hole(fit, candidates, targets, rings=[10.0, 0.0])
    assert (far[0].hole, near[0].hole) == (0, 1)


def test_the_pair_chosen_is_the_best_of_all():
    rng = np.random.default_rng(5)
    places = rng.uniform((0, 0), (100, 80), (9, 2))
    corners = [(0, 0), (100, 0), (100, 80), (0, 80)]

    def worst(pair):
        holes = places[list(pair)]
        return np.linalg.eigvalsh(fit_rigid(holes, holes, sigma=0.02).covariance_at(corners))[:, 1].max()

    chosen = choose_holes(places, corners, 2, sigma=0.02)
    best = min(((i, j) for i in range(9) for j in range(i)), key=worst)
    assert worst(chosen) == pytest.approx(worst(best))
    three = choose_holes(places, corners, 3)
    assert len(set(three)) == 3
    assert worst(three) < worst(chosen)


def test_nothing_to_choose_from():
    assert choose_holes([], [(0, 0)]) == ()
    assert choose_holes([(1, 1)], [(0, 0)]) == (0,)
    assert next_hole(fit_rigid([(0, 0), (9, 0)], [(0, 0), (9, 0)]), [], [(0, 0)]) == ()


def test_three_holes_are_exchanged_until_no_single_change_helps():
    rng = np.random.default_rng(8)
    corners = [(0, 0), (100, 0), (100, 80), (0, 80)]

    def worst(three):
        holes = places[list(three)]
        return np.linalg.eigvalsh(fit_rigid(holes, holes, sigma=0.02).covariance_at(corners))[:, 1].max()

    for _ in range(5):
        places = rng.uniform((0, 0), (100, 80), (14, 2))
        chosen = choose_holes(places, corners, 3, sigma=0.02)
        for at in range(3):
            for other in set(range(14)) - set(chosen):
                changed = [*chosen[:at], other, *chosen[at + 1 :]]
                assert worst(changed) >= worst(chosen) - 1e-9


def test_a_hole_that_lies_surely_is_preferred():
    places = [(0.0, 0.0), (100.0, 80.0), (0.0, 80.0), (1.0, 79.0)]
    chosen = choose_holes(places, places, 3, hole_sigma=[0.02, 0.02, 0.3, 0.02])
    assert 2 not in chosen
