"""Programs for a laser: the text, and rules of the beam.

What the words mean in laser mode is from the public documentation of the GRBL 1.1 protocol
(laser mode): beam only under G1, G2, G3; M4 off at rest; M3 on at rest; M5 and S0 off.
"""

from __future__ import annotations

import re

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.program.laser import LaserSettings, line_program, pulse_program, resumed
from drypoint.program.laser_check import check_beam, has_constant_beam

ROWS = (as_points([(0, 0), (0.1, 0), (0.2, 0)]), as_points([(5, 5)]))
SET = LaserSettings(power=0.25, dwell=0.015, scale=800.0)


def _lit(lines):
    """An independent reading: (line, x, y, beam at rest, beam in motion) by the documented rules."""
    mode, source, power, x, y = 0, 5, 0.0, None, None
    for number, line in enumerate(lines):
        words = re.findall(r"([A-Z])([-\d.]+)", line)
        before = (x, y)
        axes = False
        for letter, text in words:
            value = float(text)
            if letter == "G" and value in (0, 1, 2, 3):
                mode = int(value)
            elif letter == "M":
                source = int(value)
            elif letter == "S":
                power = value
            elif letter == "X":
                x, axes = value, True
            elif letter == "Y":
                y, axes = value, True
        on = mode in (1, 2, 3) and power > 0 and source != 5
        yield number, before, (x, y), on and source == 3 and not axes, on and axes


def test_pulses_are_lit_only_at_rest_and_only_for_their_dwell():
    program = pulse_program(ROWS, Rigid(0.1, (3.0, 4.0)), SET)
    rest = [(n, after) for n, _, after, at_rest, _ in _lit(program.lines) if at_rest]
    moving = [n for n, *_, in_motion in _lit(program.lines) if in_motion]
    assert not moving
    assert len(rest) == 4
    for number, _ in rest:
        assert program.lines[number] == "G4P0.015S200"
        assert program.lines[number + 1] == "S0"
    expected = Rigid(0.1, (3.0, 4.0)).apply(np.vstack(ROWS))
    assert np.abs(np.array([place for _, place in rest]) - expected).max() <= 5.1e-4


def test_lines_are_lit_only_on_feed_moves_and_dark_on_every_way():
    lines = (as_points([(0, 0), (3, 0), (3, 2)]), as_points([(5, 5), (6, 5)]))
    program = line_program(lines, Rigid(), SET)
    lit = [(before, after) for _, before, after, _, in_motion in _lit(program.lines) if in_motion]
    assert lit == [((0, 0), (3, 0)), ((3, 0), (3, 2)), ((5, 5), (6, 5))]
    assert not has_constant_beam(program.lines)
    for line in program.lines:
        if line.startswith("G0X"):
            assert line.endswith("S0")
    assert program.beam_seconds == pytest.approx(6.0 / 300.0 * 60.0)


@pytest.mark.parametrize("kind", ["pulses", "lines"])
def test_it_ends_dark(kind):
    program = pulse_program(ROWS, Rigid(), SET) if kind == "pulses" else line_program(ROWS[:1], Rigid(), SET)
    assert program.lines[-3:] == ("M5", "S0", "G0")
    assert "M3S0" in program.lines or "M4S0" in program.lines


def test_the_beam_read_from_the_text_is_the_plan():
    program = pulse_program(ROWS, Rigid(), SET, power=[0.1, 0.2, 0.3, 1.0], dwell=[0.01, 0.02, 0.03, 0.5])
    assert program.beam.power.tolist() == [80.0, 160.0, 240.0, 800.0]
    assert program.beam.rest_seconds == pytest.approx(0.56)
    assert program.beam_seconds == pytest.approx(0.56)


def test_a_burst_is_one_mark_and_fits_the_receive_buffer():
    program = pulse_program([as_points([(-123.456, -123.456)] * 3)], Rigid(), SET)
    for burst in np.unique(program.burst[program.mark >= 0]):
        mine = np.flatnonzero(program.burst == burst)
        assert len(set(program.mark[mine])) == 1
        assert sum(len(program.lines[k]) + 1 for k in mine) < 100
        assert program.lines[mine[0]].startswith("G0X")
        assert program.lines[mine[-1]] == "G0"


def test_a_run_is_taken_up_at_a_mark():
    program = pulse_program(ROWS, Rigid(), SET)
    rest = resumed(program, 2)
    assert np.array_equal(rest.beam.spots, program.beam.spots[2:])
    assert rest.lines[:6] == program.lines[:6]
    with pytest.raises(PlanError):
        resumed(program, 4)


BAD = {
    "power while travelling": ["G0X0Y0", "M3S0", "G1X1F100S100", "S0", "M5"],
    "moves with the beam on": ["G0X0Y0", "M3S0", "G1", "G4P0.01S100", "G0X1"],
    "long pulse": ["G0X0Y0", "M3S0", "G1", "G4P5S100", "S0", "M5"],
    "source on with power": ["G0X0Y0", "S100", "M3", "S0", "M5"],
    "on at once": ["G0X0Y0", "M4S100", "G1X1F100", "S0", "M5"],
    "not put out": ["G0X0Y0", "M3S0", "G1", "G4P0.01S100", "G4P0.01", "S0", "M5"],
    "ends lit": ["G0X0Y0", "M3S0", "G1", "G4P0.01S100", "S0"],
    "ends with power": ["G0X0Y0", "M4S0", "G1X1F100S100", "M5"],
    "rapid with power": ["G0X0Y0", "M4S0", "G1X1F100S100", "G0X2", "S0", "M5"],
    "dwell with power": ["G0X0Y0", "M4S0", "G1X1F100S100", "G4P1", "S0", "M5"],
    "way by feed under M3": ["G0X0Y0", "M3S0", "G1X1F100", "S0", "M5"],
    "no feed": ["G0X0Y0", "M4S0", "G1X1S100", "S0", "M5"],
    "place unknown": ["M3S0", "G1", "G4P0.01S100", "S0", "M5"],
    "pulse in rapid mode": ["G0X0Y0", "M3S0", "G4P0.01S100", "S0", "M5"],
    "goes down": ["G0X0Y0", "M4S0", "G1X1Z-1F100S100", "S0", "M5"],
    "setting": ["$32=0", "M5", "S0"],
    "other command": ["G92X0", "M5", "S0"],
    "incremental": ["G91", "M5", "S0"],
    "comment": ["(S100)", "M5", "S0"],
}


@pytest.mark.parametrize("name", BAD)
def test_the_check_refuses(name):
    with pytest.raises(PlanError):
        check_beam(BAD[name])


@pytest.mark.parametrize("number", range(7, 25))
def test_a_program_with_one_line_lost_is_refused_or_burns_nothing_more(number):
    """Whatever single line is left out of a good program, the check sees it or no mark moves or grows."""
    program = pulse_program(ROWS, Rigid(), SET)
    lines = [line for k, line in enumerate(program.lines) if k != number]
    try:
        beam = check_beam(lines)
    except PlanError:
        return
    planned = {tuple(spot) for spot in program.beam.spots}
    if not program.lines[number].startswith("G0X"):
        assert {tuple(spot) for spot in beam.spots} <= planned
    assert beam.rest_seconds <= program.beam.rest_seconds


def test_more_than_full_power_is_refused():
    with pytest.raises(PlanError):
        pulse_program(ROWS, Rigid(), LaserSettings(power=1.1))
    with pytest.raises(PlanError):
        check_beam(["G0X0Y0", "M3S0", "G1", "G4P0.01S900", "S0", "M5"], scale=800.0)


def test_a_head_below_the_clearance_is_refused():
    with pytest.raises(PlanError):
        pulse_program(ROWS, Rigid(), LaserSettings(height=1.0))
    assert "G1Z6F300" in pulse_program(ROWS, Rigid(), LaserSettings(height=6.0)).lines


@settings(max_examples=60, deadline=None)
@given(
    points=st.lists(st.tuples(st.floats(-200, 200), st.floats(-200, 200)), min_size=1, max_size=12),
    power=st.floats(0.001, 1.0),
    dwell=st.floats(0.001, 1.0),
)
def test_every_program_passes_its_check(points, power, dwell):
    program = pulse_program([as_points(points)], Rigid(), LaserSettings(power=power, dwell=dwell))
    assert len(program.beam.spots) == len(points)
    assert np.abs(program.beam.spots - points).max() <= 5.1e-4
    assert program.beam.rest_seconds == pytest.approx(dwell * len(points), abs=6e-5 * len(points))
