"""The legend of a job: material first, cautions, marks off pads, values of a burn grid kept."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import shapely

from drypoint.cuts.burn_grid import plan_burn_grid
from drypoint.errors import MachineError, PlanError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import RequestKind
from drypoint.program.laser import line_program, pulse_program
from drypoint.session import laser_safety
from drypoint.session.actions import find, mark, run, turn
from drypoint.session.legend import (
    burn_grid_program,
    for_material,
    laser_settings,
    legend_program,
    spot_error,
    spot_fit,
    with_best_cell,
)
from drypoint.session.settings import Clamp, LaserSection
from drypoint.session.station import connect, make_bench

SAFE = LaserSection(coating="black paint", declared_safe=True)


@pytest.fixture
def ready(session):
    session.change("Laser", laser=replace(SAFE, dwell=0.01, settle=0.01))
    return session


@pytest.fixture
def at_bench(ready):
    """The job with a bench in laser mode; x and y are believed."""
    session = ready
    bench = make_bench(session.derived.layout(session.snapshot), session.settings, 1)
    bench.controller.memory.settings.update({30: 1000, 32: 1})
    station = connect(bench.link, bench.operator, session.settings, bench=bench)
    station.controller.set_work(x=0.0, y=0.0, z=10.0)
    yield session, station, bench
    station.close()


@pytest.mark.parametrize(
    ("chosen", "said"),
    [
        (LaserSection(), "what the laser marks"),
        (LaserSection(coating="paint"), "declares it safe"),
        (LaserSection(bare=True), "not acknowledged"),
        (LaserSection(bare=True, coating="paint", declared_safe=True), "not acknowledged"),
    ],
)
def test_without_a_word_on_the_material_there_is_no_program(session, chosen, said):
    session.change("Laser", laser=chosen)
    with pytest.raises(PlanError, match=said):
        legend_program(session.derived, session.snapshot)
    with pytest.raises(PlanError, match=said):
        burn_grid_program(session.derived, session.snapshot, plan_burn_grid())


def test_the_cautions_tell_what_can_hurt():
    words = " ".join(laser_safety.cautions(SAFE)).lower()
    for needed in (
        "eyewear",
        "wavelength",
        "maker",
        "copper",
        "fumes",
        "stay with",
        "local rules",
        "power switch",
    ):
        assert needed in words
    assert "toxic" in " ".join(laser_safety.cautions(LaserSection(bare=True)))
    assert "emergency" not in words


def test_the_demo_legend_keeps_off_holes_and_pads(ready):
    snap = ready.snapshot
    board = ready.derived.board(snap)
    marks = ready.derived.legend(snap)
    points = shapely.points(np.vstack(marks.rows))
    chosen = ready.settings.laser
    holes = shapely.union_all(
        [shapely.Point(h.x, h.y).buffer(h.diameter / 2 + chosen.ring) for h in board.holes]
    )
    assert shapely.distance(points, holes).min() >= chosen.clear + chosen.spot / 2 - 0.005
    assert shapely.distance(points, board.legend).max() < 1e-6
    assert marks.covered > 0.9
    assert marks.spilled < 0.05  # rows of discs keep the drawn edge on average


def test_the_legend_of_the_other_side_is_mirrored_by_the_fit_alone(ready):
    session = ready
    turn.turn_over(session, None, mill=False)
    truth = Rigid(0.01, (80.0, 9.0), True)
    for k, at in enumerate([(5.0, 5.0), (65.0, 5.0), (5.0, 45.0)]):
        find.keep_hole(session, f"H{k}", at, tuple(truth.apply([at])[0].tolist()))
    session.change("Head", laser=replace(session.settings.laser, head=(20.0, -3.0)))
    program = legend_program(session.derived, session.snapshot)
    marks = np.vstack(session.derived.legend(session.snapshot).rows)
    expected = truth.apply(marks) + np.array([20.0, -3.0])
    assert np.abs(program.beam.spots - expected).max() < 1e-3
    assert spot_error(session.derived, session.snapshot) == pytest.approx(0.16, abs=0.04)


def test_power_is_scaled_to_what_the_controller_states(ready):
    program = burn_grid_program(ready.derived, ready.snapshot, plan_burn_grid(powers=(0.5,)), scale=255.0)
    assert set(program.beam.power) == {127.5}


def test_a_burn_grid_beside_the_blank_or_on_a_clamp_is_refused(ready):
    layout = ready.derived.layout(ready.snapshot)
    x0, y0, x1, y1 = layout.blank.bounds
    wide, high = plan_burn_grid().size
    burn_grid_program(ready.derived, ready.snapshot, plan_burn_grid((x0 + 0.2, y1 - high - 0.2)))
    for corner in ((x0 - 0.5, y0 + 1.0), (x1 - wide + 0.5, y0 + 1.0), (x0 + 1.0, y1 - high + 0.5)):
        with pytest.raises(PlanError, match="beyond the blank"):
            burn_grid_program(ready.derived, ready.snapshot, plan_burn_grid(corner))
    held = replace(ready.settings.blank, clamps=(Clamp(4.0, 4.0, 6.0, 6.0),))
    ready.change("A clamp", blank=held)
    with pytest.raises(PlanError, match="clamp"):
        burn_grid_program(ready.derived, ready.snapshot, plan_burn_grid((x0 + 1.0, y0 + 1.0)))


def test_the_best_field_is_kept_with_the_material():
    grid = plan_burn_grid(powers=(0.2, 0.4), dwells=(0.01, 0.03))
    better = with_best_cell(SAFE, grid, 1, 0)
    assert (better.power, better.dwell) == (0.4, 0.01)
    other = replace(better, coating="white paint", power=0.9)
    again = for_material(other, "black paint")
    assert (again.power, again.dwell, again.declared_safe) == (0.4, 0.01, False)
    with pytest.raises(PlanError):
        for_material(other, "lacquer")


def some_marks(session, count=12):
    rows = [as_points(np.column_stack((np.arange(count) * 0.1 + 5.0, np.full(count, 6.0))))]
    return pulse_program(
        rows, spot_fit(session.derived, session.snapshot), laser_settings(session.settings, 1000.0)
    )


def test_marks_are_made_after_the_cautions_and_kept_as_done(at_bench):
    session, station, bench = at_bench
    program = some_marks(session)
    mark.walk(station, program)
    assert bench.burn.power == 0.0
    assert not len(bench.burn.spots)
    assert mark.mark(session, station, program).finished
    assert len(bench.burn.spots) == 12
    asked = [one for one in bench.operator.requests if one.kind is RequestKind.CONFIRM]
    assert laser_safety.EYES in asked[-1].cautions
    assert session.snapshot.records["done"][-1].data["program"] == program.name


def test_a_stopped_run_goes_on_at_the_next_mark(at_bench):
    session, station, bench = at_bench
    program = some_marks(session)

    def stop(event):
        if len(bench.burn.rests) == 5:
            station.controller.stop()

    result = mark.mark(session, station, program, on_event=stop)
    made = len(bench.burn.spots)
    assert not result.finished
    assert run.to_resume(session) is None, "no bit takes up what a laser left"
    assert 5 <= made < 12
    assert mark.take_up(session, station, program).finished
    assert len(bench.burn.spots) == 12
    places = np.sort(bench.burn.spots[:, 0])
    assert np.diff(places).min() > 0.05


def test_there_must_be_a_broken_run_to_take_up(at_bench):
    session, station, _ = at_bench
    with pytest.raises(MachineError, match="no broken run"):
        mark.take_up(session, station, some_marks(session))


def test_the_focus_light_is_dim_and_goes_out_by_itself(at_bench):
    session, station, bench = at_bench
    session.change("Short", laser=replace(session.settings.laser, focus_seconds=3.0))
    mark.focus(session, station)
    spots = bench.burn.spots
    assert spots[:, 3] == pytest.approx(0.01)
    assert spots[:, 2].sum() == pytest.approx(3.0, rel=0.01)
    assert bench.burn.power == 0.0
    assert np.ptp(spots[:, :2], axis=0).max() < 1e-9


def test_a_controller_that_is_not_in_laser_mode_is_refused(at_bench):
    session, station, bench = at_bench
    bench.controller.memory.settings[32] = 0
    station.controller.connect()
    station.controller.trust("xyz")
    with pytest.raises(MachineError, match="laser mode"):
        mark.mark(session, station, some_marks(session))


def test_another_full_power_than_the_program_was_made_for_is_refused(at_bench):
    session, station, bench = at_bench
    program = some_marks(session)
    bench.controller.memory.settings[30] = 255
    station.controller.connect()
    station.controller.trust("xyz")
    with pytest.raises(MachineError):
        mark.mark(session, station, program)
    assert not len(bench.burn.spots)


def test_lines_are_marked_and_a_stopped_run_goes_on_at_a_line(at_bench):
    session, station, bench = at_bench
    lines = [as_points([(5.0, 5.0 + k), (9.0, 5.0 + k)]) for k in range(6)]
    placed = spot_fit(session.derived, session.snapshot)
    program = line_program(lines, placed, laser_settings(session.settings, 1000.0))

    def stop(event):
        if event.executed > 15 and not stopped:
            stopped.append(event.executed)
            station.controller.stop()

    stopped: list[int] = []
    assert not mark.mark(session, station, program, on_event=stop).finished
    assert stopped
    assert bench.burn.power == 0.0
    assert mark.take_up(session, station, program).finished
    drawn = bench.burn.strokes
    assert not len(bench.burn.spots)
    # each of the six lines is there from end to end
    union = shapely.union_all([shapely.LineString([row[:2], row[2:4]]) for row in drawn]).buffer(0.05)
    assert sum(part.area for part in shapely.get_parts(union)) == pytest.approx(6 * 4.0 * 0.1, rel=0.05)


def test_holes_found_by_the_light_spot_need_no_offset_of_the_head(ready):
    session = ready
    turn.turn_over(session, None, mill=False)
    truth = Rigid(0.01, (80.0, 9.0), True)
    laser = replace(session.settings.laser, head=(20.0, -3.0), head_sigma=0.4)
    session.change("Head", laser=laser)
    errors = []
    for way in ("eye", "light spot"):
        for k, at in enumerate([(5.0, 5.0), (65.0, 5.0), (5.0, 45.0)]):
            place = tuple(truth.apply([at])[0].tolist())
            sigma = 0.03 if way == "eye" else float(np.hypot(0.03, 0.4))
            find.keep_hole(session, f"H{k}", at, place, way=way, sigma=sigma)
        errors.append(spot_error(session.derived, session.snapshot))
    by_eye, by_spot = errors
    assert by_eye > 0.4 * 2**0.5
    # three holes of 0.03 mm touch and 0.05 mm wander, farthest corner: far below the head's own 0.4 mm
    assert by_spot == pytest.approx((by_eye**2 - 2 * 0.4**2) ** 0.5, rel=1e-6)


def test_the_dark_walk_goes_once_round_the_extent_without_light(at_bench):
    session, station, bench = at_bench
    program = some_marks(session)
    before = len(bench.body.trail)
    mark.walk(station, program)
    bench.body.flush()
    moved = np.vstack([path.ends for path in bench.body.trail[before:]])[:, :2]
    way = shapely.LineString(moved[np.r_[True, (np.abs(np.diff(moved, axis=0)) > 1e-9).any(axis=1)]])
    x0, y0, x1, y1 = shapely.bounds(shapely.multipoints(mark.extent(program)))
    offset = np.array(bench.controller.parser.offset()[:2])
    corners = np.array([(x0, y0), (x1, y0), (x1, y1), (x0, y1)]) + offset
    assert shapely.distance(way, shapely.points(corners)).max() < 0.01
    assert not any(path.power.any() for path in bench.body.trail[before:])
    assert not len(bench.burn.spots)
    asked = [one for one in bench.operator.requests if one.kind is RequestKind.CONFIRM]
    assert asked[-1].cautions == laser_safety.DARK_WALK


@pytest.mark.parametrize("scale", [255.0, 1000.0, 12000.0])
def test_the_power_on_the_bench_is_the_share_whatever_full_power_is_called(at_bench, scale):
    session, station, bench = at_bench
    bench.controller.memory.settings[30] = scale
    station.controller.connect()
    station.controller.trust("xyz")
    assert mark.full_power(station) == scale
    rows = [as_points(np.column_stack((np.arange(4) * 0.1 + 5.0, np.full(4, 6.0))))]
    driven = laser_settings(session.settings, mark.full_power(station))
    program = pulse_program(rows, spot_fit(session.derived, session.snapshot), driven)
    assert mark.mark(session, station, program).finished
    assert bench.burn.spots[:, 3] == pytest.approx(session.settings.laser.power, abs=2e-4)


def test_the_focus_light_has_a_longest_time_and_its_cautions(at_bench):
    session, station, bench = at_bench
    session.change("Long", laser=replace(session.settings.laser, focus_seconds=90.0))
    with pytest.raises(MachineError, match="60 s"):
        mark.focus(session, station)
    assert not len(bench.burn.spots)
    session.change("Short", laser=replace(session.settings.laser, focus_seconds=1.0))
    mark.focus(session, station)
    asked = [one for one in bench.operator.requests if one.kind is RequestKind.CONFIRM]
    assert asked[-1].cautions == laser_safety.FOCUS
    assert laser_safety.EYES in laser_safety.FOCUS
    bench.operator.declines.add(RequestKind.CONFIRM)
    made = len(bench.burn.spots)
    with pytest.raises(MachineError):
        mark.focus(session, station)
    assert len(bench.burn.spots) == made, "no light without the cautions"
