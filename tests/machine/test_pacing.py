"""Which lines go alone."""

from __future__ import annotations

import math

import numpy as np

from drypoint.machine.pacing import LONG, UNHURRIED, sent_alone
from drypoint.machine.tracker import PathTracker


def test_quick_lines_in_a_crowd_are_counted():
    assert not sent_alone(np.full(50, 0.5 * UNHURRIED)).any()


def test_where_there_is_time_every_line_goes_alone():
    assert sent_alone(np.full(50, 1.2 * UNHURRIED)).all()


def test_a_long_line_or_a_lift_goes_alone_among_quick_ones():
    seconds = np.full(101, 0.005)
    seconds[[30, 70]] = LONG, math.inf
    assert np.flatnonzero(sent_alone(seconds)).tolist() == [30, 70]


def test_nothing_is_nothing():
    assert len(sent_alone(())) == 0


def test_the_tracker_tells_how_long_each_line_takes_at_least():
    lines = ("G21", "G0X1Y1Z2", "G1Z-0.1F60", "X4Y5F300", "Y5.5", "G2X5Y6.5I1J0", "Z2", "M5")
    tracker = PathTracker(lines, (0.0, 0.0, 5.0), 15)
    quarter = math.pi / 2.0
    expected = [math.inf, math.inf, math.inf, 1.0, 0.1, quarter / 5.0, math.inf, math.inf]
    np.testing.assert_allclose(tracker.seconds(8), expected, rtol=2e-3)
    tracker.begin(3)
    np.testing.assert_allclose(tracker.seconds(2), [1.0, 0.1])
