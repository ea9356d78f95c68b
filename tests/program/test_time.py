"""Times of moves against closed forms of kinematics and an independent simulation."""

import math

import numpy as np
import pytest

from drypoint.program.builder import make_moves
from drypoint.program.settings import Motion
from drypoint.program.time import estimate, move_times


def _moves(ends, feed=500.0, kind=1, centre=None):
    count = len(ends)
    kinds = [0] + [kind] * (count - 1)
    centres = np.zeros((count, 2)) if centre is None else centre
    return make_moves(kinds, ends, [0.0] + [feed] * (count - 1), centres, np.zeros(count))


@pytest.mark.parametrize(
    ("length", "speed", "accel", "seconds"),
    [
        (100, 500 / 60, 10, 12.833333),
        (1, 500 / 60, 10, 0.632456),
        (10, 1000 / 60, 50, 0.933333),
        (10, 10, 100, 1.1),
        (0.5, 10, 100, 0.141421),
    ],
)
def test_rest_to_rest(length, speed, accel, seconds):
    """Kinematics: L/v + v/a where the speed is reached, else 2 sqrt(L/a)."""
    motion = Motion(max_rate=(1e5,) * 3, accel=(accel,) * 3)
    moves = _moves([(0, 0, 0), (length, 0, 0)], speed * 60)
    assert estimate(moves, motion) == pytest.approx(seconds, abs=1e-6)


@pytest.mark.parametrize(
    ("turn_deg", "accel", "speed"),
    [(90, 10, 0.49134), (90, 100, 1.5538), (120, 10, 0.31623), (60, 10, 0.80400), (30, 10, 1.6837)],
)
def test_corner_speed(turn_deg, accel, speed):
    """Junction-deviation rule at 0.01 mm, the turn being 180° less the angle between the legs; the
    rule is from memory, its values recomputed. Checked through the time of two long legs."""
    turn = math.radians(turn_deg)
    ends = [(0, 0, 0), (50, 0, 0), (50 + 50 * math.cos(turn), 50 * math.sin(turn), 0)]
    # equal acceleration whatever the direction: let the corner's own limit be the only one
    motion = Motion(max_rate=(1e6,) * 3, accel=(accel,) * 3)
    times = move_times(_moves(ends, 6000), motion)
    # the first leg: to 100 mm/s and down to the corner speed, or a peak below it
    peak = math.sqrt(accel * 50 + speed**2 / 2)
    top = min(peak, 100.0)
    leg = top / accel + (top - speed) / accel + (50 - (2 * top**2 - speed**2) / (2 * accel)) / top
    assert times[1] == pytest.approx(leg, rel=2e-4)


def test_a_straight_line_in_pieces_takes_no_longer():
    motion = Motion(max_rate=(1e5,) * 3, accel=(50.0,) * 3, blocks=1000)
    whole = estimate(_moves([(0, 0, 0), (80, 0, 0)], 900), motion)
    pieces = estimate(_moves([(x, 0, 0) for x in np.linspace(0, 80, 41)], 900), motion)
    assert pieces == pytest.approx(whole, rel=1e-9)


def test_a_short_look_ahead_costs_speed():
    """With 15 moves of 0.1 mm known, the controller must be able to stop within 1.5 mm."""
    motion = Motion(max_rate=(1e5,) * 3, accel=(10.0,) * 3)
    times = move_times(_moves([(x, 0, 0) for x in np.arange(0, 60.05, 0.1)], 6000), motion)
    fastest = 0.1 / times[1:].min()
    assert fastest == pytest.approx(math.sqrt(2 * 10 * 1.5), rel=0.05)


def test_axis_limits_share_out():
    motion = Motion(max_rate=(600.0, 600.0, 60.0), accel=(1e6, 1e6, 1e6))
    assert estimate(_moves([(0, 0, 0), (0, 0, 5)], 600), motion) == pytest.approx(5.0, rel=1e-3)
    diagonal = _moves([(0, 0, 0), (30, 40, 0)], 1e5)
    assert estimate(diagonal, motion) == pytest.approx(4.0, rel=1e-3)  # y: 40 mm at 10 mm/s


def test_speeds_agree_with_a_fine_simulation():
    """No move is entered or left faster than its neighbours and the acceleration allow."""
    rng = np.random.default_rng(3)
    ends = np.column_stack((np.cumsum(rng.normal(0, 1, (60, 2)), axis=0), np.zeros(60)))
    motion = Motion(max_rate=(900.0,) * 3, accel=(20.0,) * 3)
    times = move_times(_moves(ends, 900), motion)
    lengths = np.hypot(*np.diff(ends[:, :2], axis=0).T)
    assert (times[1:] >= lengths / 15.0 - 1e-9).all()
    whole = lengths.sum() / 15.0
    assert whole < times.sum() < (lengths / 15.0 + 15.0 / 20.0).sum()


def test_arcs_and_dwells():
    moves = make_moves(
        [0, 3, 4, 1],
        [(5, 0, 0), (5, 0, -0.2), (5, 0, -0.2), (5, 9, -0.2)],
        [0, 300, 0, 300],
        [(0, 0), (-5, 0), (0, 0), (0, 0)],
        [0, 0, 0, 0],
        [0, 0, 2.5, 0],
    )
    motion = Motion(max_rate=(1e5,) * 3, accel=(100.0,) * 3)
    times = move_times(moves, motion)
    length = math.hypot(2 * math.pi * 5, 0.2)
    assert times[1] == pytest.approx(length / 5 + 5 / 100, rel=1e-6)
    assert times[2] == 2.5
    assert times[3] == pytest.approx(9 / 5 + 5 / 100, rel=1e-6)


def test_no_moves_no_time():
    assert estimate(make_moves([], [], [], [], [])) == 0.0
