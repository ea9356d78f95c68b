"""Whatever goes wrong while a laser marks, its beam is off afterwards, and only marks are burnt."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from shapely import LineString, MultiLineString

from drypoint.bench.bench import SMALL_ENGRAVER
from drypoint.bench.faults import Fault, FaultKind, Injector
from drypoint.errors import MachineError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.controller import Controller
from drypoint.machine.faults import Stopped
from drypoint.machine.state import Activity, Clip
from drypoint.program.laser import LaserSettings, line_program, pulse_program

LASER = SMALL_ENGRAVER | {30: 1000, 32: 1}
SET = LaserSettings(power=0.4, dwell=0.012, settle=0.02)
ROWS = (as_points([(x / 5.0, 0.0) for x in range(8)]), as_points([(2.0, 3.0), (2.0, 3.2)]))
LINES = (as_points([(0, 0), (4, 0), (4, 3)]), as_points([(6, 1), (7, 1)]), as_points([(6, 2), (9, 2)]))
FIT = Rigid(0.02, (30.0, 25.0))
PROGRAMS = {"pulses": pulse_program(ROWS, FIT, SET), "lines": line_program(LINES, FIT, SET)}
LOUD = (
    FaultKind.DROPPED_LINE,
    FaultKind.GARBLED_BYTE,
    FaultKind.RESET,
    FaultKind.ALARM,
    FaultKind.UNPLUGGED,
    FaultKind.POWER,
)


@pytest.fixture
def lasered(make):
    """A bench in laser mode and a controller on it, the clip off."""

    def build():
        bench = make(settings=LASER)
        controller = Controller(bench.link)
        controller.connect()
        controller.clip = Clip.OFF
        return bench, controller

    return build


def planned(bench, kind: str) -> shapely.Geometry:
    """Where light may be, sheet frame."""
    moved = [
        bench.sheet.to_sheet(FIT.apply(line) + bench.body.offset()[:2])
        for line in (ROWS if kind == "pulses" else LINES)
    ]
    marks = shapely.multipoints(np.vstack(moved)) if kind == "pulses" else MultiLineString(moved)
    return shapely.buffer(marks, 0.02)


def lit(bench) -> list[shapely.Geometry]:
    """Everything the beam met."""
    spots = [shapely.Point(x, y) for x, y in bench.burn.spots[:, :2].tolist()]
    return spots + [LineString([row[:2], row[2:4]]) for row in bench.burn.strokes.tolist()]


def dark(bench) -> None:
    """Off now, and still off a while later, however much was buffered."""
    bench.clock.sleep(20.0)
    assert bench.burn.power == 0.0
    before = len(lit(bench))
    bench.clock.sleep(20.0)
    assert len(lit(bench)) == before


@pytest.mark.parametrize("after", [9, 14, 23])
@pytest.mark.parametrize("fault", LOUD)
@pytest.mark.parametrize("kind", list(PROGRAMS))
def test_the_beam_is_off_after_any_fault(lasered, kind: str, fault: FaultKind, after: int) -> None:
    bench, controller = lasered()
    marks = planned(bench, kind)
    injector = Injector(bench, [Fault(fault, after)])
    try:
        controller.stream(PROGRAMS[kind].lines)
        finished = True
    except MachineError:
        finished = False
    dark(bench)
    late = 0.05  # where the end of a pulse is garbled, the beam is off as soon as that is answered
    assert (bench.burn.spots[:, 2] < SET.dwell + late).all()
    assert finished == (not injector.done), "a fault is no end of a run"
    if fault not in (FaultKind.DROPPED_LINE, FaultKind.GARBLED_BYTE) or kind == "pulses":
        # of a line that is lost on the cable the way there is not known
        assert all(marks.covers(one) for one in lit(bench))


@pytest.mark.parametrize("kind", list(PROGRAMS))
def test_the_beam_is_off_after_stop_and_at_the_end(lasered, kind: str) -> None:
    for count in (1, 2, 3, 0):
        bench, controller = lasered()
        lines = PROGRAMS[kind].lines

        def stop(_event, controller=controller, bench=bench, count=count) -> None:
            if count and len(lit(bench)) >= count:
                controller.stop()

        if count:
            with pytest.raises(Stopped):
                controller.stream(lines, on_progress=stop)
        else:
            controller.stream(lines)
        marks = planned(bench, kind)
        dark(bench)
        assert all(marks.covers(one) for one in lit(bench))


def test_lines_are_dark_while_held_and_no_place_gets_more_for_it(lasered) -> None:
    """Power follows the speed down to nothing and up again: every millimetre gets its dose, none twice."""
    bench, controller = lasered()
    held: list[float] = []

    def hold(event) -> None:
        if event.state.activity is Activity.CUTTING and not held and len(bench.burn.strokes) > 1:
            controller.hold()
            held.append(bench.clock.now())
        elif held and event.state.activity is Activity.HELD:
            assert bench.burn.power == 0.0
            if bench.clock.now() - held[0] > 3.0:
                controller.resume()

    controller.stream(PROGRAMS["lines"].lines, on_progress=hold)
    assert held
    assert not len(bench.burn.spots), "at rest there is no light"
    drawn = bench.burn.strokes
    length = np.hypot(*(drawn[:, 2:4] - drawn[:, :2]).T)
    assert length.sum() == pytest.approx(sum(LineString(line).length for line in LINES), abs=0.02)
    assert drawn[:, 4] == pytest.approx(0.4 / (SET.feed / 60.0), rel=0.02)
    dark(bench)


def test_stop_puts_the_focus_light_out(lasered) -> None:
    bench, controller = lasered()
    spot = pulse_program([as_points([(5.0, 5.0)] * 40)], FIT, LaserSettings(power=0.01, dwell=0.5))

    def stop(event) -> None:
        if len(bench.burn.rests) >= 2:
            controller.stop()

    with pytest.raises(Stopped):
        controller.stream(spot.lines, on_progress=stop)
    dark(bench)
    assert 2 <= len(bench.burn.spots) <= 4, "no more than the pulses that were under way"
