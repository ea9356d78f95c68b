"""Touch off, rim, play and head at the bench, by the same actions as the window's."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from drypoint.bits.model import Drill, Speeds
from drypoint.errors import MachineError
from drypoint.job.journal import JobJournal
from drypoint.machine.procedures.running import run_program
from drypoint.machine.state import Clip
from drypoint.program.model import MoveKind
from drypoint.program.place import place_cuts
from drypoint.session import holes
from drypoint.session.actions import find, head, measure, play, touch_off
from drypoint.session.session import Session
from drypoint.session.station import connect, make_bench
from drypoint.session.work import hole_settings, later_work, marks_work

PIN = Drill("Drill 0.5 mm", 0.5, Speeds(10000, 150, 150))


@pytest.fixture
def at_bench(small_job):
    session = Session.open(small_job)
    bench = make_bench(session.derived.layout(session.snapshot), session.settings, 7, loose=())
    station = connect(bench.link, bench.operator, session.settings, bench=bench)
    yield session, station
    assert not [one for one in bench.mishaps if "clip" not in one.what]
    station.close()
    session.close()


def zeroed(session, station, bit=PIN):
    measure.put_in(station, bit)
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.end_contact(station)


def drilled(session, station):
    """All holes of the board drilled, 0.8 mm; then the thin drill is in and zeroed again."""
    chosen = [one for one in holes.candidates(session.derived, session.snapshot) if not one.mark]
    zeroed(session, station, chosen[0].cut.bit)
    fit = session.derived.fit(session.snapshot)
    cuts = session.derived.cuts(session.snapshot).holes
    for program in place_cuts(cuts, fit, None, hole_settings(session.settings, None)):
        journal = JobJournal(session.job, program.title, program.lines, {"setup": 1})
        run_program(station.place, program, journal, check_first=False)
    measure.put_in(station, PIN)
    measure.zero_height(session, station, at=(3.0, 3.0))
    measure.end_contact(station)
    return chosen


def true_place(station, at):
    """What the work coordinates of a place of the sheet should be."""
    bench = station.bench
    space = bench.sheet.to_space([at])[0]
    return space - np.array(bench.work_to_space((0.0, 0.0)))


def test_z_by_paper_and_by_contact(at_bench):
    session, station = at_bench
    measure.put_in(station, PIN)
    measure.find_corner(session, station)
    bench = station.bench
    touch_off.z_by_contact(station)
    assert station.controller.clip is Clip.OFF
    tip = bench.tip()
    top = float(bench.sheet.top([tip[:2]])[0])
    assert station.controller.place()[2] == pytest.approx(tip[2] - top, abs=0.02)
    station.controller.move((None, None, 0.5))
    touch_off.z_by_paper(station, 0.12)
    assert "z" in station.controller.known
    assert station.controller.place()[2] == pytest.approx(station.place.clearance)


def test_x_and_y_by_paper_nothing_moves(at_bench):
    session, station = at_bench
    before = station.controller.look().machine
    touch_off.side_by_paper(station, touch_off.edge_of(session, "left", 2.0), 0.1)
    touch_off.side_by_paper(station, touch_off.edge_of(session, "back", 2.0), 0.1)
    height = session.derived.layout(session.snapshot).height
    assert station.controller.place()[:2] == pytest.approx((-1.1, height + 1.1), abs=2e-3)
    assert station.controller.look().machine == before


@pytest.mark.parametrize("name", ["left", "back"])
def test_x_and_y_by_contact_with_the_edge(at_bench, name):
    session, station = at_bench
    zeroed(session, station)
    layout = session.derived.layout(session.snapshot)
    at = {"left": (-2.0, layout.height / 2), "back": (layout.width / 2, layout.height + 2.0)}[name]
    station.place.raise_to(6.0)
    station.controller.move((*at, None))
    touch_off.side_by_contact(station, touch_off.edge_of(session, name, PIN.diameter))
    corner = (0.0, 0.0) if name == "left" else (layout.width, layout.height)
    axis = 0 if name == "left" else 1
    # the blank lies a little askew, so its edge is not straight along the axis
    middle = (0.0, layout.height / 2) if name == "left" else (layout.width / 2, layout.height)
    assert true_place(station, middle)[axis] == pytest.approx(corner[axis], abs=0.06)
    assert station.controller.clip is Clip.OFF


def test_sideways_needs_a_known_height(at_bench):
    session, station = at_bench
    with pytest.raises(MachineError, match="height of the bit"):
        touch_off.side_by_contact(station, touch_off.edge_of(session, "left", 1.0))
    mark = holes.candidates(session.derived, session.snapshot)[-1].cut
    with pytest.raises(MachineError, match="height of the bit"):
        touch_off.touch_rim(session, station, mark, (10.0, 10.0), 0.5)
    with pytest.raises(MachineError, match="height of the bit"):
        play.by_contact(session, station, "x")


def test_a_reference_hole_by_its_rim_is_kept_with_its_uncertainty(at_bench):
    session, station = at_bench
    chosen = drilled(session, station)
    first = chosen[0].cut
    found = touch_off.touch_rim(session, station, first, find.expected_place(session, first), 0.5)
    bored = station.bench.holes()
    spot = min(bored, key=lambda hole: np.hypot(*(true_place(station, hole[:2]) - found.centre)))
    assert np.hypot(*(true_place(station, spot[:2]) - found.centre)) < 0.02
    record = session.snapshot.records["reference"][-1].data
    assert record["way"] == "rim"
    assert record["touched"] == list(found.centre)
    assert record["sigma"] >= 0.015
    assert station.controller.clip is Clip.OFF
    wanted = (found.centre[0] + 0.5, found.centre[1] - 0.3)
    touch_off.zero_by_rim(session, station, first, wanted, 0.5)
    assert true_place(station, spot[:2]) == pytest.approx(wanted, abs=0.02)


def test_play_is_measured_kept_and_used(at_bench):
    session, station = at_bench
    chosen = drilled(session, station)
    hole = chosen[1].cut
    at = find.expected_place(session, hole)
    found = play.by_contact(session, station, "x", hole=hole, expected=at)
    true = station.bench.body.faults.play
    assert found.value == pytest.approx(true[0], abs=0.006)
    assert found.matters
    gauge = play.by_gauge(session, station, "y")
    assert gauge.value == pytest.approx(true[1], abs=0.006)
    z = play.by_contact(session, station, "z", expected=(3.0, 3.0))
    assert z.value < 0.012
    assert set(play.newest(session)) == {"x", "y", "z"}
    for one in (found, gauge, z):
        play.use(session, one)
    assert session.settings.machine.play == pytest.approx((found.value, gauge.value), abs=1e-4)
    session.undo()
    assert session.settings.machine.play[1] == 0.02


def test_holes_and_marks_are_come_to_from_one_side_where_play_matters(at_bench):
    session, _ = at_bench

    def approaches(items):
        """Ways in which holes are come to on the clearance plane."""
        found = set()
        for item in items:
            moves = item.program.moves
            down = np.flatnonzero((moves.kind[1:] == MoveKind.FEED) & (moves.kind[:-1] == MoveKind.RAPID))
            for k in down:
                step = moves.end[k] - moves.end[k - 1]
                found.add(tuple(np.sign(np.round(step[:2], 3)).tolist()))
        return found

    def all_items():
        snap = session.snapshot
        return [*marks_work(session.derived, snap), *later_work(session.derived, snap)]

    assert approaches(all_items()) == {(1.0, 1.0)}
    session.change("No play", machine=replace(session.settings.machine, play=(0.0, 0.0)))
    assert len(approaches(all_items())) > 1


def test_the_head_is_measured_over_marks(at_bench):
    session, station = at_bench
    drilled(session, station)
    station.bench.body.spot = (6.0, -4.0)
    session.change("Roughly", laser=replace(session.settings.laser, head=(-5.0, 3.0)))
    marks = [one.cut for one in holes.candidates(session.derived, session.snapshot) if not one.mark][:2]
    found = head.measure_head(session, station, marks)
    assert found.offset == pytest.approx((-6.0, 4.0), abs=0.15)
    assert session.settings.laser.head == pytest.approx(found.offset)
    assert 0.05 < session.settings.laser.head_sigma < 0.1
    assert found.chance is not None
