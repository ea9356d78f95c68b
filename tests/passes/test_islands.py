"""What island touches say of grooves: where, and how deep all was cut."""

from __future__ import annotations

import numpy as np
import pytest
from shapely import box

from drypoint.geometry.rigid import Rigid
from drypoint.passes.depth import uniform_pass
from drypoint.passes.island_learning import update_from_islands
from drypoint.passes.isolation import (
    IslandAnswer,
    after_answers,
    island_answers,
    net_chances,
    uncut_spots,
)
from drypoint.passes.learning import Belief, observe, update
from drypoint.passes.model import ReachMap
from drypoint.passes.reach import reach_map

SET = {"copper": 0.035, "play": 0.0}
LOOPS = 24


@pytest.fixture
def rough(known):
    """A surface of 8 µm spread that knows its ripple's length."""
    surface = known(0.008)
    surface.ripple_length = 2.0
    return surface


@pytest.fixture
def loops():
    """Small loops in a row, 10 mm apart."""
    turn = np.linspace(0.0, 2.0 * np.pi, 33)
    ring = np.column_stack((2.0 * np.cos(turn), 2.0 * np.sin(turn)))
    ring[-1] = ring[0]
    return [ring + np.array((10.0 * k, 0.0)) for k in range(LOOPS)]


@pytest.fixture
def squares():
    """Three squares of copper side by side, 0.2 mm apart, and the grooves between them."""
    copper = {name: box(5.0 * k, 0.0, 5.0 * k + 4.8, 5.0) for k, name in enumerate("ABC")}
    lines = [np.array([(4.9, 0.0), (4.9, 5.0)]), np.array([(9.9, 0.0), (9.9, 5.0)])]
    return copper, lines


def test_pairs_apart_and_joined_become_answers_about_the_groove_between(squares):
    copper, lines = squares
    said = island_answers(lines, copper, 0.25, proved=[("A", "B")], joined=[("B", "C")], after=2)
    assert [(one.grooves, one.isolated, one.after) for one in said] == [((0,), True, 2), ((1,), False, 2)]


def test_joined_nets_that_hang_together_are_blamed_together(squares):
    copper, lines = squares
    said = island_answers(lines, copper, 0.25, proved=[], joined=[("A", "B"), ("B", "C")], after=1)
    assert [(one.grooves, one.isolated) for one in said] == [((0, 1), False)]


def test_a_line_past_several_nets_is_cleared_only_between_those_proved_apart(squares):
    copper, _ = squares
    round_all = np.array([(4.9, 0.0), (4.9, 5.2), (9.9, 5.2), (9.9, 0.0)])
    said = island_answers([round_all], copper, 0.25, proved=[("A", "B")], joined=[], after=1)
    points = np.array([(4.9, 2.0), (7.0, 5.2), (9.9, 2.0)])
    chance = np.full(3, 0.9)
    after = after_answers(ReachMap((points,), (chance,), (chance,)), said, 2.0)
    assert after.probability[0] == pytest.approx([1.0, 0.9, 0.9])


def test_unknown_copper_makes_no_answer(squares):
    copper, lines = squares
    assert island_answers(lines, copper, 0.25, proved=[("A", "scrap 1")], joined=[], after=1) == ()


def test_many_joined_loops_mean_that_all_was_cut_less_deep(loops, fit, bit, rough):
    passes = [uniform_pass(loops, bit, 0.060)]

    def learnt(isolated):
        answers = [IslandAnswer((k,), k < isolated) for k in range(LOOPS)]
        return update_from_islands(Belief(), answers, loops, passes, fit, rough, **SET)

    few, half, all_of_them = learnt(1), learnt(12), learnt(LOOPS)
    assert few.offset < half.offset < all_of_them.offset
    assert few.offset < -0.003
    assert all_of_them.offset > 0.0
    assert few.spread < Belief().prior_spread


def test_learning_finds_the_true_depth(loops, bit, rough):
    """Loops are whole or not by a drawn surface; the offset it was cut with is found again."""
    rng = np.random.default_rng(4)
    passes = [uniform_pass(loops, bit, 0.055)]
    spots = np.vstack([line[:-1] for line in loops])
    root = np.linalg.cholesky(rough.covariance(spots, spots) + 1e-9 * np.eye(len(spots)))
    error = []
    for true in np.linspace(-0.008, 0.008, 9):
        height = (root @ rng.standard_normal(len(spots))).reshape(LOOPS, -1)
        whole = (0.055 - 0.035 + true + height > 0.0).all(axis=1)
        answers = [IslandAnswer((k,), bool(v)) for k, v in enumerate(whole)]
        rough.ripple_length = 3.0 / np.sqrt(2.0) * np.sqrt(5.0 / 3.0)  # as steep as its covariance
        found = update_from_islands(Belief(), answers, loops, passes, Rigid(), rough, **SET)
        error.append((found.offset - true) / found.spread)
    assert np.sqrt(np.mean(np.square(error))) < 1.5
    assert abs(np.mean(error)) < 1.0


def test_a_second_pass_after_joined_is_weighed_with_its_own_depth(loops, fit, bit, rough):
    passes = [uniform_pass(loops, bit, 0.05), uniform_pass(loops, bit, 0.11, number=2)]
    before = [IslandAnswer((k,), False, after=1) for k in range(LOOPS)]
    joined = [*before, *(IslandAnswer((k,), False, after=2) for k in range(LOOPS))]
    cleared = [*before, *(IslandAnswer((k,), True, after=2) for k in range(LOOPS))]
    low = update_from_islands(Belief(), joined, loops, passes, fit, rough, **SET)
    high = update_from_islands(Belief(), cleared, loops, passes, fit, rough, **SET)
    assert low.offset < high.offset


def test_answers_about_places_are_weighed_on_top(loops, fit, bit, rough):
    passes = [uniform_pass(loops, bit, 0.05)]
    seen = [observe(tuple(loops[k][0]), False, passes, fit, copper=0.035) for k in range(6)]
    islands = [IslandAnswer((k,), False) for k in range(LOOPS)]
    places = update(Belief(), seen, rough)
    both = update_from_islands(places, islands, loops, passes, fit, rough, **SET)
    assert both.observations == places.observations
    assert both.offset < places.offset
    assert both.sites is not None


def test_nothing_asked_nothing_learnt(loops, fit, bit, rough):
    before = Belief()
    assert update_from_islands(before, [], loops, [], fit, rough, **SET) is before


def test_a_net_is_apart_where_all_grooves_beside_it_are_through(loops, fit, bit, rough):
    reach = reach_map(loops[:3], [uniform_pass(loops, bit, 0.06)], fit, rough, **SET)
    chances = net_chances(reach, [("A",), ("A", "B"), ("B", "C")], 2.0)
    one = np.exp(-uncut_spots(reach.probability[0], np.asarray(reach.points[0]), 2.0))
    assert chances == pytest.approx({"A": one**2, "B": one**2, "C": one}, rel=1e-6)
