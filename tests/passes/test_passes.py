"""First pass, reach map and re-cut: what was planned is what the map says."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from shapely import LineString, box

from drypoint.errors import PlanError
from drypoint.geometry.points import along, length
from drypoint.passes.chance import doubtful
from drypoint.passes.depth import plan_first_pass, uniform_pass
from drypoint.passes.isolation import IslandAnswer, after_answers, uncut_spots, whole_chance
from drypoint.passes.learning import Belief, Observation, observe, update
from drypoint.passes.model import NOT_THROUGH, THROUGH, Pass, ReachMap
from drypoint.passes.options import options
from drypoint.passes.reach import in_words, per_net, reach_map, totals
from drypoint.passes.recut import pieces, plan_recut, recut_painted
from drypoint.passes.spots import Spots, run_on
from drypoint.surface.model import fit_surface

SET = {"copper": 0.035, "play": 0.015}


def test_first_pass_meets_its_target_everywhere(lines, fit, known, bit):
    surface = known(0.01)
    one = plan_first_pass(lines, fit, surface, bit, target=0.99, deepest=0.3, **SET)
    reach = reach_map(lines, [one], fit, surface, **SET)
    assert np.allclose(np.concatenate(reach.probability), 0.99, atol=2e-3)
    assert one.length == pytest.approx(sum(length(line) for line in lines))
    assert all((run.depth > 0.035).all() for run in one.runs)


def test_never_deeper_than_allowed(lines, fit, known, bit):
    one = plan_first_pass(lines, fit, known(0.05), bit, target=0.999, deepest=0.08, **SET)
    assert one.deepest <= 0.08
    with pytest.raises(PlanError, match="copper"):
        plan_first_pass(lines, fit, known(0.01), bit, target=0.99, deepest=0.03, **SET)
    with pytest.raises(PlanError, match="probability"):
        plan_first_pass(lines, fit, known(0.01), bit, target=1.0, deepest=0.3, **SET)


def test_uncut_grooves_are_not_through(lines, fit, known, bit):
    only = Pass(1, bit, uniform_pass(lines, bit, 0.1).runs[:1])
    reach = reach_map(lines, [only], fit, known(0.005), **SET)
    assert reach.probability[0].min() > 0.99
    assert reach.probability[1].max() == 0.0
    assert reach.width[1].max() == 0.0
    found = totals(reach)
    assert found.not_through == pytest.approx(length(lines[1]))
    assert per_net(reach, [("A",), ("A", "B")])["B"].through == 0.0


def test_recut_goes_only_where_doubt_is(lines, fit, known, bit):
    surface = known(0.008)
    line = np.column_stack((np.linspace(0, 30, 61), np.zeros(61)))
    depth = np.where((line[:, 0] > 10) & (line[:, 0] < 14), 0.04, 0.1)
    one = Pass(1, bit, (run_on(0, line, depth),))
    reach = reach_map([line], [one], fit, surface, **SET)
    again = plan_recut([line], reach, [one], fit, surface, bit, target=0.99, overlap=0.5, **SET)
    assert again is not None
    assert again.number == 2
    assert len(again.runs) == 1
    x = again.runs[0].path[:, 0]
    assert 8.5 < x.min() < 10.5
    assert 13.5 < x.max() < 15.5
    after = reach_map([line], [one, again], fit, surface, **SET)
    assert after.probability[0].min() > 0.95
    assert plan_recut([line], after, [one, again], fit, surface, bit, target=0.99, **SET) is None


def test_recut_round_the_seam_of_a_loop_is_one_run(lines, fit, known, bit):
    ring = lines[0]
    depth = np.where(ring[:, 0] > 7, 0.04, 0.12)  # the seam lies in the middle of the shallow part
    one = Pass(1, bit, (run_on(0, ring, depth),))
    reach = reach_map([ring], [one], fit, known(0.006), **SET)
    again = plan_recut([ring], reach, [one], fit, known(0.006), bit, target=0.99, **SET)
    assert again is not None
    assert len(again.runs) == 1
    path = again.runs[0].path
    assert LineString(ring).hausdorff_distance(LineString(path)) > 1.0
    assert max(LineString(ring).distance(LineString([p, p + 1e-9])) for p in path) < 1e-6


def test_recut_is_deeper_than_what_was_cut(lines, fit, known, bit):
    one = uniform_pass(lines, bit, 0.12)
    reach = reach_map(lines, [one], fit, known(0.004), **SET)
    again = plan_recut(lines, reach, [one], fit, known(0.004), bit, target=0.95, grooves=[1], **SET)
    assert again is not None
    assert {run.groove for run in again.runs} == {1}
    assert all((run.depth >= 0.1299).all() for run in again.runs)


def test_painted_places_are_cut_again(lines, fit, known, bit):
    one = uniform_pass(lines, bit, 0.12)
    reach = reach_map(lines, [one], fit, known(0.004), **SET)
    again = plan_recut(lines, reach, [one], fit, known(0.004), bit, painted=box(11, 5, 13, 9), **SET)
    assert again is not None
    assert 4.0 < again.length < 5.5


def test_only_what_was_painted_is_cut(lines, fit, known, bit):
    one = uniform_pass(lines, bit, 0.05)
    brush = [box(11, 5, 13, 8), box(11, 7, 13, 9), box(7, 4, 9, 6)]
    again = recut_painted(lines, brush, [one], fit, known(0.004), bit, **SET)
    assert again.number == 2
    assert sorted(run.groove for run in again.runs) == [0, 1]
    straight = next(run for run in again.runs if run.groove == 1)
    assert length(straight.path) == pytest.approx(4.0, abs=0.11)
    assert straight.path[:, 1].min() == pytest.approx(5.0, abs=0.06)
    assert all((run.depth >= 0.06 - 1e-9).all() for run in again.runs)


def test_painting_beside_every_groove_is_refused(lines, fit, known, bit):
    with pytest.raises(PlanError, match="painted"):
        recut_painted(lines, box(40, 40, 50, 50), [], fit, known(0.004), bit, **SET)


def test_doubt_grows_with_the_spread_and_is_full_below_the_limit():
    share = doubtful(0.055, 0.035)(np.array([0.001, 0.008, 0.01, 0.02, 0.05]))
    assert (np.diff(share) >= 0.0).all()
    assert share[0] == pytest.approx(0.0, abs=1e-6)
    assert share[2] == pytest.approx((1.0 - 0.97724987) / 0.05, rel=1e-6)  # Φ(2), any table
    assert share[-1] == 1.0


def test_pieces_join_over_short_gaps_only():
    line = np.column_stack((np.linspace(0, 20, 201), np.zeros(201)))
    x = line[:, 0]
    near = ((x > 3) & (x < 4)) | ((x > 5) & (x < 6)) | ((x > 15) & (x < 16))
    assert len(pieces(line, near, 1.5, 0.2)) == 2
    assert len(pieces(line, near, 0.1, 0.2)) == 3
    assert pieces(line, np.zeros(201, dtype=bool), 1.5, 0.2) == []


def test_spots_share_the_length(lines):
    spots = Spots.on(lines, 0.3)
    assert spots.share().sum() == pytest.approx(sum(length(line) for line in lines))


def test_answers_move_the_belief_their_way(lines, fit, known, bit):
    surface = known(0.008)
    one = uniform_pass(lines, bit, 0.05)

    def belief(answer):
        seen = [
            observe(tuple(lines[1][0] + (0, 4.0 * k)), answer, [one], fit, copper=0.035) for k in range(5)
        ]
        return update(Belief(), seen, surface, play=0.015)

    low, high = belief(False), belief(True)
    assert low.offset < 0 < high.offset
    assert low.spread < Belief().prior_spread
    before = reach_map(lines, [one], fit, surface, belief=Belief(spread=0.008), **SET)
    after = reach_map(lines, [one], fit, surface, belief=low, **SET)
    assert after.probability[1].min() < before.probability[1].min()
    assert totals(after).expected < totals(before).expected


def test_belief_about_one_place_equals_sampling(known):
    """One answer: the posterior mean of the depth by plain Monte Carlo."""
    surface = known(0.01)
    seen = [observe((0.0, 0.0), False, [_spot_pass()], _Same(), copper=0.035)]
    found = update(Belief(), seen, surface, play=0.0)
    rng = np.random.default_rng(0)
    common = Belief().prior_spread * rng.standard_normal(400_000)
    local = 0.01 * rng.standard_normal(400_000)
    chance = 1.0 / (1.0 + np.exp(1.702 * (0.005 + common + local) / 0.002))
    weight = 0.01 + 0.98 * chance
    expected = (weight * (common + found.scale / 1.0 * 0 + local)).sum() / weight.sum()
    shift, _ = found.at(np.zeros((1, 2)), np.array([0.01]))
    assert shift[0] == pytest.approx(expected, rel=0.2)


class _Same:
    def apply(self, points):
        return np.asarray(points)


def _spot_pass():
    from drypoint.bits.model import Speeds, VBit

    line = np.array([(-1.0, 0.0), (0.0, 0.0), (1.0, 0.0)])
    return Pass(1, VBit("V", 0.1, 0.5, Speeds(1, 1, 1)), (run_on(0, line, np.full(3, 0.04)),))


def test_an_answer_where_nothing_was_cut_is_refused(lines, fit, bit):
    with pytest.raises(PlanError, match="No pass"):
        observe((50.0, 50.0), True, [uniform_pass(lines, bit, 0.1)], fit, copper=0.035)


def test_uncut_spots_equal_counting():
    """Rice (1944) on a smooth stationary process: the count is exact where −ρ″(0) = 1/l²."""
    rng = np.random.default_rng(2)
    x = np.arange(0.0, 400.0, 0.1)
    count = 0
    wave = rng.standard_normal(300) / np.sqrt(1.0) * np.sqrt(5.0 / 3.0) / 2.0
    for _ in range(60):
        phase = rng.uniform(0, 2 * np.pi, 300)
        f = np.sqrt(2.0 / 300) * np.cos(np.outer(x, wave) + phase).sum(axis=1)
        below = f < -2.0
        count += int((np.diff(below.astype(int)) == 1).sum())
    level = np.full(4001, 0.97724987)  # Φ(2)
    path = np.column_stack((np.linspace(0, 400, 4001), np.zeros(4001)))
    expected = (uncut_spots(level, path, 2.0) - 0.0228) / 1.15
    assert count / 60 == pytest.approx(expected, rel=0.15)


def test_sure_spots_do_not_make_a_sure_groove():
    path = np.column_stack((np.linspace(0, 400, 2001), np.zeros(2001)))
    reach = ReachMap((path,), (np.full(2001, 0.995),), (np.full(2001, 0.15),))
    assert 0.1 < whole_chance(reach, 2.0)[0] < 0.4


def test_island_answers_clear_or_blame():
    path = np.column_stack((np.linspace(0, 20, 101), np.zeros(101)))
    chance = np.full(101, 0.999)
    chance[40:45] = 0.9
    reach = ReachMap((path, path), (chance, chance), (chance, chance))
    after = after_answers(reach, [IslandAnswer((0,), True), IslandAnswer((1,), False)], 2.0)
    assert after.probability[0].min() == 1.0
    assert after.probability[1][42] < 0.6
    assert after.probability[1][10] > 0.98


def test_options_show_what_they_cost(lines, fit, known, bit):
    found = options(lines, fit, known(0.008), bit, deepest=0.3, **SET)
    careful, ladder = found[:-1], found[-1]
    assert [c.through for c in careful] == pytest.approx([0.95, 0.995, 0.999], abs=1e-3)
    assert careful[0].width < careful[1].width < careful[2].width
    assert ladder.passes > 1
    assert ladder.seconds > careful[-1].seconds
    assert all(0 < c.gap < c.width for c in found)
    assert options([], fit, known(0.008), bit, deepest=0.3, **SET) == ()


def test_many_spots_give_the_same_map_as_few(lines, fit, bit):
    rng = np.random.default_rng(0)
    touches = np.column_stack((rng.random((40, 2)) * 30, 0.01 * rng.standard_normal(40)))
    surface = fit_surface(touches)
    one = uniform_pass(lines, bit, 0.06)
    few = reach_map(lines, [one], fit, surface, pitch=0.5, **SET)
    many = reach_map(lines, [one], fit, surface, pitch=0.002, **SET)
    for k, line in enumerate(lines):
        ours = np.interp(0.5 * length(line), along(many.points[k]), many.probability[k])
        theirs = np.interp(0.5 * length(line), along(few.points[k]), few.probability[k])
        assert ours == pytest.approx(theirs, abs=0.02)


def test_no_probability_is_shown_as_certain():
    assert in_words(1.0) == "over 99.5 %"
    assert in_words(0.0) == "under 0.5 %"
    assert in_words(0.9) == "90 %"
    assert in_words(0.03) == "3 %"
    assert in_words(0.991) == "99.1 %"


def test_bounds_of_the_states_belong_to_the_better_one():
    path = np.column_stack((np.arange(5.0), np.zeros(5)))
    for probability, state in ((THROUGH, "through"), (NOT_THROUGH, "doubtful")):
        found = totals(ReachMap((path,), (np.full(5, probability),), (np.zeros(5),)))
        assert getattr(found, state) == found.length == 4.0


def test_a_groove_stays_as_wide_as_its_deepest_pass_made_it(lines, fit, known, bit):
    deep, shallow = uniform_pass(lines, bit, 0.15), uniform_pass(lines, bit, 0.06)
    once = reach_map(lines, [deep], fit, known(0.002), **SET)
    both = reach_map(lines, [deep, shallow], fit, known(0.002), **SET)
    assert np.allclose(both.width[0], once.width[0])
    assert np.allclose(both.probability[0], once.probability[0])


def test_width_takes_run_out_and_what_is_believed_of_the_depth(lines, fit, known, bit):
    def width(used, belief=None):
        one = uniform_pass(lines, used, 0.12)
        return reach_map(lines, [one], fit, known(0.001), belief=belief, **SET).width[0]

    plain = width(bit)
    assert np.allclose(width(replace(bit, runout=0.03)), plain + 0.03)
    deeper = width(bit, Belief(offset=0.02))
    assert np.allclose(deeper, plain + 0.02 * bit.slope, atol=1e-6)


@pytest.mark.parametrize("prior", [0.0, 0.012])
def test_at_even_odds_both_answers_move_the_belief_alike(known, prior):
    """Even odds are where planned depth, half of the play and what was believed before make up the copper."""
    play = 0.02
    place = {"x": 0.0, "y": 0.0, "margin": 0.5 * play - prior}
    start = Belief(offset=prior, prior_offset=prior)
    up = update(start, [Observation(**place, through=True)], known(0.01), play=play)
    down = update(start, [Observation(**place, through=False)], known(0.01), play=play)
    assert up.offset - prior == pytest.approx(prior - down.offset, rel=1e-6)
    assert up.offset > prior


def test_far_from_all_answers_only_the_offset_is_better_known(known):
    seen = [Observation(0.0, 0.0, 0.004, True), Observation(1.0, 0.0, 0.002, False)]
    found = update(Belief(), seen, known(0.01))
    shift, spread = found.at(np.array([(500.0, 0.0)]), np.array([0.01]))
    assert shift[0] == pytest.approx(found.offset)
    assert spread[0] == pytest.approx(np.hypot(found.scale * 0.01, found.spread))


def test_an_answer_belongs_to_the_nearest_groove(bit):
    near, far = (np.array([(0.0, y), (10.0, y)]) for y in (0.0, 0.5))
    for rows in ([near, far], [far, near]):
        passed = uniform_pass(rows, bit, 0.1)
        seen = observe((5.0, 0.2), True, [passed], _Same(), copper=0.035)
        assert (seen.x, seen.y) == (5.0, 0.0)
        assert seen.margin == pytest.approx(0.065)
    with pytest.raises(PlanError, match="No pass"):
        observe((5.0, -0.6), True, [uniform_pass([near], bit, 0.1)], _Same(), copper=0.035)
