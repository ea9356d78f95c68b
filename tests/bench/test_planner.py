"""Motion against published formulas, and properties that hold for every move."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.bench.planner import Limits, Planner, along, junction_speed2, profile, seconds
from drypoint.bench.stepper import Pace, Stepper

FAST = (1000.0, 1000.0, 1000.0)


# Uniformly accelerated motion from rest to rest, worked by hand from t = L/v + v/a (L >= v²/a) and
# t = 2·sqrt(L/a) else (any mechanics handbook).
@pytest.mark.parametrize(
    ("length", "speed", "accel", "expected"),
    [
        (100.0, 500.0 / 60.0, 10.0, 12.833333),
        (1.0, 500.0 / 60.0, 10.0, 0.632456),
        (10.0, 1000.0 / 60.0, 50.0, 0.933333),
        (10.0, 10.0, 100.0, 1.1),
        (0.5, 10.0, 100.0, 0.141421),
    ],
)
def test_a_move_from_rest_to_rest_takes_the_handbook_time(length, speed, accel, expected):
    assert seconds(profile(length, 0.0, 0.0, speed, accel)) == pytest.approx(expected, abs=1e-6)


# Corner speed by junction deviation, v = sqrt(a·d·sin(θ/2) / (1 - sin(θ/2))), d = 0.01 mm: values
# worked by hand from Jeon's published formula; θ is the angle between the legs (180° is straight).
@pytest.mark.parametrize(
    ("angle_deg", "accel", "expected"),
    [
        (90.0, 10.0, 0.49134),
        (90.0, 100.0, 1.5538),
        (60.0, 10.0, 0.31623),
        (120.0, 10.0, 0.80400),
        (135.0, 10.0, 1.1017),
        (150.0, 10.0, 1.6837),
        (170.0, 10.0, 5.1166),
    ],
)
def test_a_corner_is_taken_at_the_junction_speed(angle_deg, accel, expected):
    turn = math.pi - math.radians(angle_deg)
    # along the bisector that needs the acceleration, so that its limit does not depend on the angle
    before = (math.sin(turn / 2), math.cos(turn / 2), 0.0)
    after = (-math.sin(turn / 2), math.cos(turn / 2), 0.0)
    limits = Limits(FAST, (accel, 1e6, 1e6), 0.01)
    assert math.sqrt(junction_speed2(before, after, limits)) == pytest.approx(expected, rel=1e-4)


def test_limits_along_a_diagonal_are_set_by_the_weaker_axis():
    unit = (math.sqrt(0.5), math.sqrt(0.5), 0.0)
    assert along(unit, (10.0, 5.0, 1.0)) == pytest.approx(5.0 / math.sqrt(0.5))


@given(
    length=st.floats(1e-3, 500.0),
    entry=st.floats(0.0, 30.0),
    leave=st.floats(0.0, 30.0),
    nominal=st.floats(0.1, 30.0),
    accel=st.floats(1.0, 1000.0),
)
def test_every_profile_covers_its_length(length, entry, leave, nominal, accel):
    covered, speed = 0.0, entry
    for duration, rate in profile(length, entry, min(leave, nominal), nominal, accel):
        assert duration >= -1e-12
        assert abs(rate) <= accel
        covered += speed * duration + 0.5 * rate * duration**2
        speed += rate * duration
        assert speed <= max(entry, nominal) * (1 + 1e-9) + 1e-9
        assert speed >= -1e-6
    assert covered == pytest.approx(length, rel=1e-6, abs=1e-9)


steps = st.tuples(*[st.floats(-3.0, 3.0)] * 3)


def run(moves, limits, *, brake_at=None, speed=20.0):
    """Execute moves; the places recorded, the speeds at the corners, the end, the time."""
    ends, speeds = [], []
    planner = Planner(limits, 1000)
    stepper = Stepper(planner, lambda block, end: ends.append(end))
    here = (0.0, 0.0, 0.0)
    for move in moves:
        there = tuple(a + b for a, b in zip(here, move, strict=True))
        block = planner.block(here, there, speed)
        if block is not None:
            planner.push(block)
            here = there
    stepper.start(0.0)
    now = 0.0
    while planner.blocks:
        now = stepper.next_time
        if brake_at is not None and now >= brake_at:
            now, brake_at = brake_at, None
            stepper.brake(now)
            while stepper.pace is Pace.BRAKING:
                now = stepper.next_time
                stepper.event(now)
            assert stepper.speed(now) == 0.0
            now += 5.0
            stepper.start(now)
            continue
        speeds.append(stepper.speed(now))
        stepper.event(now)
    return ends, speeds, here, now


@given(st.lists(steps, min_size=1, max_size=25))
def test_the_path_is_run_whole_and_corners_within_limits(moves):
    limits = Limits((20.0, 15.0, 5.0), (100.0, 80.0, 40.0), 0.01)
    ends, speeds, here, _ = run(moves, limits)
    assert not ends or ends[-1] == here
    units = []
    last = (0.0, 0.0, 0.0)
    for end in ends:
        size = math.dist(last, end)
        units.append(tuple((b - a) / size for a, b in zip(last, end, strict=True)))
        last = end
    for before, after, speed in zip(units[:-1], units[1:], speeds, strict=False):
        assert speed**2 <= junction_speed2(before, after, limits) * (1 + 1e-6) + 1e-6


@given(st.lists(steps, min_size=1, max_size=15), st.floats(0.0, 5.0))
def test_a_hold_anywhere_changes_nothing_but_time(moves, brake_at):
    limits = Limits((20.0, 15.0, 5.0), (100.0, 80.0, 40.0), 0.01)
    ends, _, _, free = run(moves, limits)
    held, _, _, paused = run(moves, limits, brake_at=brake_at)
    assert held == ends
    if brake_at < free * 0.999 and ends:
        assert paused > free + 4.9


def test_a_long_row_of_short_segments_reaches_full_speed():
    limits = Limits((100.0,) * 3, (50.0,) * 3, 0.01)
    _, speeds, _, total = run([(0.1, 0.0, 0.0)] * 400, limits, speed=10.0)
    assert max(speeds) == pytest.approx(10.0, rel=1e-6)
    # as one straight move of 40 mm
    assert total == pytest.approx(40.0 / 10.0 + 10.0 / 50.0, rel=1e-6)
