"""The laser on the bench: what the simulated beam burns is what was planned, and nothing else.

The rules of the beam are from the public documentation of the GRBL 1.1 protocol, laser mode.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial import cKDTree
from shapely import Point, box

from drypoint.bench.bench import SMALL_ENGRAVER
from drypoint.bench.imperfect import Faults
from drypoint.cuts.legend import LegendStyle, plan_legend
from drypoint.errors import MachineError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.controller import Controller
from drypoint.machine.faults import LinkLost, Stopped
from drypoint.machine.state import Activity, Clip
from drypoint.program.laser import LaserSettings, line_program, pulse_program

LASER = SMALL_ENGRAVER | {30: 1000, 32: 1}
SET = LaserSettings(power=0.4, dwell=0.012, settle=0.02)
ROWS = (as_points([(x / 10.0, 0.0) for x in range(8)]), as_points([(2.0, 3.0), (2.0, 3.1)]))
FIT = Rigid(0.02, (30.0, 25.0))


@pytest.fixture
def lasered(make):
    """A bench in laser mode and a controller on it, the clip off; work zero is machine zero."""

    def build(**changes):
        bench = make(settings=LASER, **changes)
        controller = Controller(bench.link)
        controller.connect()
        controller.clip = Clip.OFF
        return bench, controller

    return build


def sheet_places(bench, points):
    return bench.sheet.to_sheet(np.asarray(points) + bench.body.offset()[:2])


def test_pulses_rest_where_and_as_long_as_planned(lasered):
    bench, controller = lasered()
    program = pulse_program(ROWS, FIT, SET)
    controller.stream(program.lines)
    spots = bench.burn.spots
    assert len(spots) == 10
    assert np.abs(spots[:, :2] - sheet_places(bench, program.places)).max() < 0.002
    assert spots[:, 2].sum() == pytest.approx(program.beam_seconds, rel=0.01)
    assert spots[:, 3] == pytest.approx(0.4)
    assert not len(bench.burn.strokes)
    assert bench.burn.power == 0.0


def test_with_play_in_the_axes_every_pulse_is_within_its_place(lasered):
    """Play of 0.02 mm, rows in all directions: within 0.05 mm of the place after the fit."""
    bench, controller = lasered(faults=Faults())
    angles = np.radians([0.0, 50.0, 120.0, 200.0, 290.0])
    rows = [
        as_points(np.column_stack((np.cos(a), np.sin(a))) * np.linspace(0.2, 2.0, 19)[:, None] + 4.0)
        for a in angles
    ]
    program = pulse_program(rows, FIT, SET)
    controller.stream(program.lines)
    spots = bench.burn.spots
    away = np.hypot(*(spots[:, :2] - sheet_places(bench, FIT.apply(np.vstack(rows)))).T)
    assert 0.005 < away.max() < 0.05
    assert spots[:, 2].sum() == pytest.approx(program.beam_seconds, rel=0.01)


def test_lines_are_drawn_where_planned_and_nowhere_else(lasered):
    bench, controller = lasered()
    lines = (as_points([(0, 0), (4, 0), (4, 3)]), as_points([(6, 1), (7, 1)]))
    controller.stream(line_program(lines, FIT, SET).lines)
    assert not len(bench.burn.spots)
    drawn = bench.burn.strokes
    length = np.hypot(*(drawn[:, 2:4] - drawn[:, :2]).T).sum()
    assert length == pytest.approx(8.0, abs=0.01)
    dose = (np.hypot(*(drawn[:, 2:4] - drawn[:, :2]).T) * drawn[:, 4]).sum()
    assert dose == pytest.approx(0.4 * 8.0 / 5.0, rel=0.01)  # power × length / speed


def test_the_head_beside_the_spindle_marks_by_its_offset(lasered):
    bench, controller = lasered()
    bench.body.spot = (-20.0, 5.0)
    head = Rigid(0.0, (20.0, -5.0))
    program = pulse_program(ROWS, FIT.then(head), SET)
    controller.stream(program.lines)
    assert np.abs(bench.burn.spots[:, :2] - sheet_places(bench, FIT.apply(np.vstack(ROWS)))).max() < 0.002


def test_no_pulse_on_a_pad(lasered):
    bench, controller = lasered()
    pad = Point(4.0, 0.0).buffer(0.6)
    style = LegendStyle()
    legend = plan_legend(box(0.0, -0.1, 8.0, 0.1), style, free=pad)
    controller.stream(pulse_program(legend.rows, FIT, SET).lines)
    place = sheet_places(bench, FIT.apply([(4.0, 0.0)]))[0]
    near = np.hypot(*(bench.burn.spots[:, :2] - place).T).min()
    assert near > 0.6 + style.spot / 2.0
    assert len(bench.burn.spots) == legend.count


def test_stop_leaves_the_beam_off_and_the_place_known(lasered):
    bench, controller = lasered()
    controller.trust("xyz")
    program = pulse_program(ROWS, FIT, SET)

    def stop(event):
        if len(bench.burn.rests) >= 3:
            controller.stop()

    with pytest.raises(Stopped):
        controller.stream(program.lines, on_progress=stop)
    assert bench.burn.power == 0.0
    assert 3 <= len(bench.burn.spots) < 10
    assert bench.burn.spots[:, 2] == pytest.approx(SET.dwell, rel=0.01)
    assert controller.known == {"x", "y", "z"}


def test_a_hold_waits_for_the_pulse_and_no_other_begins(lasered):
    bench, controller = lasered()
    program = pulse_program(ROWS, FIT, SET)
    seen = []

    def hold(event):
        if len(bench.burn.rests) >= 3 and not seen:
            controller.hold()
            seen.append(len(bench.burn.rests))
        elif seen and event.state.activity is Activity.HELD:
            seen.append(len(bench.burn.rests))
            assert bench.burn.power == 0.0
            if len(seen) > 6:
                controller.resume()

    controller.stream(program.lines, on_progress=hold)
    assert len(set(seen[2:7])) == 1
    assert len(bench.burn.spots) == 10
    assert bench.burn.spots[:, 2] == pytest.approx(SET.dwell, rel=0.01)


def test_a_cable_that_comes_out_leaves_the_beam_off(lasered):
    for after in range(1, 9):
        bench, controller = lasered()

        def unplug(event, bench=bench, after=after):
            if len(bench.burn.rests) >= after:
                bench.unplug()

        with pytest.raises(LinkLost):
            controller.stream(pulse_program(ROWS, FIT, SET).lines, on_progress=unplug)
        bench.clock.sleep(5.0)
        assert bench.burn.power == 0.0
        assert bench.burn.spots[:, 2] == pytest.approx(SET.dwell, rel=0.01)


def test_no_byte_of_a_later_pulse_is_sent_before_this_one_is_answered(lasered):
    bench, controller = lasered()
    sent = []
    write = bench.link.write

    def watch(data):
        if b"G0X" in data:
            sent.append(data)
        write(data)

    bench.link.write = watch
    controller.stream(pulse_program(ROWS, FIT, SET).lines)
    assert len(sent) == 10
    assert all(data.endswith(b"S0\nG0\n") and data.count(b"S400") == 1 for data in sent)


@pytest.mark.parametrize(
    "lines",
    [
        ("M3S100", "G1X1F100", "M5"),
        ("G0X1Y1", "M3S0", "G1", "G4P0.01S100", "G0X2", "S0", "M5"),
        ("G0X1Y1", "M3S0", "G1", "G4P20S100", "S0", "M5"),
    ],
)
def test_constant_power_that_is_no_pulse_is_refused(lasered, lines):
    bench, controller = lasered()
    with pytest.raises(MachineError):
        controller.stream(lines)
    with pytest.raises(MachineError):
        controller.check(lines)
    assert not len(bench.burn.spots)
    assert not len(bench.burn.strokes)


def test_the_clip_must_be_off(lasered):
    _, controller = lasered()
    controller.clip = Clip.UNKNOWN
    with pytest.raises(MachineError, match="clip"):
        controller.stream(pulse_program(ROWS, FIT, SET).lines)


def test_a_beam_left_on_at_rest_is_seen_by_the_bench(lasered):
    """The model itself: constant power at rest burns until zero, power that follows the speed does not."""
    bench, _ = lasered()
    link = bench.link

    def tell(line, seconds):
        link.write(line.encode() + b"\n")
        bench.clock.sleep(seconds)

    for line, seconds in (("G1F100", 0.1), ("M3S500", 2.0), ("S0", 0.5), ("M4S500", 1.0), ("M5", 0.1)):
        tell(line, seconds)
    assert len(bench.burn.spots) == 1
    assert bench.burn.spots[0, 2] == pytest.approx(2.0, abs=0.01)
    assert bench.burn.spots[0, 3] == pytest.approx(0.5)
    tell("M3S500", 1.0)
    link.write(b"\x18")
    bench.clock.sleep(2.0)
    assert bench.burn.power == 0.0


def test_a_demo_sized_row_keeps_its_pitch(lasered):
    bench, controller = lasered()
    legend = plan_legend(box(0.0, 0.0, 6.0, 0.1), LegendStyle())
    controller.stream(pulse_program(legend.rows, FIT, SET).lines)
    near = cKDTree(bench.burn.spots[:, :2]).query(bench.burn.spots[:, :2], k=2)[0][:, 1]
    assert near.max() <= 0.1 + 0.003
    assert near.min() > 0.06
