"""Executed is proven, never guessed."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from drypoint.machine.tracker import PLANNER_MARGIN, LineTracker, PathTracker


@pytest.fixture
def long_groove(groove):
    return groove([(i * 0.5, 0.0) for i in range(101)])


def test_an_answer_alone_proves_nothing(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 2.0), 15)
    tracker.acknowledged(15 + PLANNER_MARGIN)
    assert tracker.executed == 0


def test_the_planners_depth_proves_what_lies_behind_it(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 5.0), 15)
    tracker.acknowledged(60)
    assert 0 < tracker.executed <= 60 - 15 - PLANNER_MARGIN


def test_a_position_proves_the_lines_before_its_move(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 2.0), 15)
    tracker.acknowledged(20)
    line = next(i for i, text in enumerate(long_groove.lines) if text == "X3")
    assert tracker.position((2.9, 0.0, -0.1), 20).away == 0.0
    assert tracker.executed == line


def test_a_position_never_proves_more_than_was_answered(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 2.0), 15)
    tracker.acknowledged(8)
    tracker.position((5.0, 0.0, -0.1), 40)
    assert tracker.executed <= 8


def test_a_place_off_the_path_is_told(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 2.0), 15)
    tracker.acknowledged(20)
    assert tracker.position((2.0, 3.0, -0.1), 20).away == pytest.approx(3.0, abs=0.05)


def test_the_start_may_be_anywhere(groove):
    program = groove([(10.0, 0.0), (20.0, 0.0)])
    tracker = PathTracker(program.lines, (-30.0, 7.0, 0.5), 15)
    assert tracker.position((-30.0, 7.0, 1.2), 2).away == 0.0  # Z first, straight up
    assert tracker.position((-10.0, 3.5, 2.0), 5).away == 0.0  # then across


def test_a_drain_proves_all(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 2.0), 15)
    tracker.drained(50)
    assert tracker.executed == 50


@given(st.integers(0, 400), st.integers(0, 400))
def test_without_a_path_only_the_depth_counts(taken, more):
    tracker = LineTracker(400, 15)
    tracker.acknowledged(taken)
    tracker.acknowledged(min(400, taken + more))
    # twice the depth: any other line may make no block
    assert tracker.executed == max(0, min(400, taken + more) - 2 * (15 + PLANNER_MARGIN))


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(data=st.data())
def test_a_report_never_proves_a_line_that_is_not_done(groove, data):
    """Closed and crossing paths: wherever the machine truly is, no later line is called executed."""
    steps = data.draw(st.lists(st.sampled_from([(1, 0), (-1, 0), (0, 1), (0, -1)]), min_size=2, max_size=40))
    path = np.vstack(((0, 0), np.cumsum(np.array(steps, dtype=float), axis=0)))
    program = groove(path)
    at = data.draw(st.integers(1, len(path) - 1))
    share = data.draw(st.floats(0.0, 1.0))
    place = path[at - 1] + share * (path[at] - path[at - 1])
    true_line = int(np.flatnonzero(program.line_move == at + 2)[0])
    tracker = PathTracker(program.lines, (0.0, 0.0, 2.0), 15)
    tracker.acknowledged(min(len(program.lines), true_line + 10))
    tracker.position((place[0], place[1], -0.1), len(program.lines))
    assert tracker.executed <= true_line + (share >= 0.95)


def test_arcs_are_followed():
    lines = ("G0X1Y0Z1", "G1Z0F100", "G3X-1Y0I-1J0", "G2X1Y0I1J0")
    tracker = PathTracker(lines, (1.0, 0.0, 1.0), 15)
    tracker.acknowledged(3)
    assert tracker.position((0.0, 1.0, 0.0), 4).away == 0.0
    assert tracker.executed == 2


@pytest.mark.parametrize(("code", "side"), [("G2", -1.0), ("G3", 1.0)])
def test_a_quarter_turn_goes_the_short_way_round(code, side):
    """From (1, 0) to (0, ±1) about the origin: clockwise is downwards (RS-274)."""
    lines = ("G0X1Y0Z0", f"{code}X0Y{side:g}I-1J0F100")
    at, far = (0.6, side * 0.8, 0.0), (-1.0, 0.0, 0.0)
    assert PathTracker(lines, (1.0, 0.0, 0.0), 15).position(at, 2).away == 0.0
    assert PathTracker(lines, (1.0, 0.0, 0.0), 15).position(far, 2).away > 0.9


@pytest.mark.parametrize("line", ["G92X0", "G10L20P1X0", "G4P2"])
def test_words_that_set_or_wait_are_no_way(line):
    tracker = PathTracker(("G0X5Y0Z0", line, "G1X7F100"), (5.0, 0.0, 0.0), 15)
    assert tracker.position((2.0, 0.0, 0.0), 3).away == pytest.approx(3.0, abs=0.05)


def test_a_report_may_be_off_by_a_step_of_each_axis_and_rounding(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 2.0), 15, step=0.02)
    tracker.acknowledged(20)
    assert tracker.position((2.0, 0.045, -0.1), 20).away == 0.0
    assert tracker.position((2.0, 0.055, -0.1), 20).away == pytest.approx(0.005)


def test_a_header_that_moves_is_part_of_the_path():
    tracker = PathTracker(("G21", "G1Z2F600", "M3S8000", "G0X5Y5"), (1.0, 1.0, 12.0), 15)
    assert tracker.position((1.0, 1.0, 7.0), 3).away == 0.0


def test_a_wrong_depth_of_a_few_hundredths_is_seen(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 2.0), 15, step=0.00125)
    tracker.acknowledged(20)
    assert tracker.position((2.0, 0.0, -0.1), 20).away == 0.0
    assert tracker.position((2.0, 0.0, -0.05), 20).away > 0.0


def test_the_highest_feed_that_can_be_under_way_is_told(long_groove):
    tracker = PathTracker(long_groove.lines, (0.0, 0.0, 2.0), 15)
    assert tracker.position((0.0, 0.0, 2.0), 20).limit == np.inf  # rapids are among the first lines
    tracker.acknowledged(60)
    assert tracker.position((25.0, 0.0, -0.1), 60).limit == 300.0
