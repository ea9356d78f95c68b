"""Reference holes of every kind, found in every way, on the bench."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from drypoint.errors import MachineError
from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import RequestKind
from drypoint.reference.fit import Fit
from drypoint.session import holes
from drypoint.session.actions import find, measure, run, turn
from drypoint.session.session import Session
from drypoint.session.station import connect, make_bench
from drypoint.session.work import marks_work


@pytest.fixture
def small(small_job):
    session = Session.open(small_job)
    yield session
    session.close()


@pytest.fixture
def at_bench(small):
    bench = make_bench(small.derived.layout(small.snapshot), small.settings, 5, loose=())
    station = connect(bench.link, bench.operator, small.settings, bench=bench)
    yield small, station
    station.close()


def marked(session, station):
    """Zero found and the reference holes pricked."""
    measure.put_in(station, session.settings.bits.vbit)
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.end_contact(station)
    (item,) = marks_work(session.derived, session.snapshot)
    run.run_item(session, station, item)


def keep_done(session, program, setup=1):
    session.keep("done", {"program": program, "setup": setup})


def test_marks_and_all_holes_of_the_board_can_be_touched(small):
    found = holes.candidates(small.derived, small.snapshot)
    assert [one.label for one in found] == ["R1", "R2", "R3", "R4", "H1", "H2", "H3"]
    assert [one.mark for one in found] == [True] * 4 + [False] * 3
    assert found[5].at == (10.0, 5.0)
    assert not any(one.setup for one in found)
    assert all(one.mark for one in holes.suggested(small.derived, small.snapshot, found))


def test_holes_are_suggested_of_the_clamping_that_made_them(small):
    small.keep("setup", {"note": "clamped again"})
    keep_done(small, "31-hole-drill-0.8-mm", 2)
    found = holes.candidates(small.derived, small.snapshot)
    assert [one.setup for one in found] == [None] * 4 + [2] * 3
    chosen = holes.suggested(small.derived, small.snapshot, found, 2)
    assert {one.label for one in chosen} == {"H1", "H3"}, "the two that lie farthest apart"
    keep_done(small, "01-reference-mark-v-bit-0.1-mm-30")
    found = holes.candidates(small.derived, small.snapshot)
    assert [one.setup for one in found] == [1] * 4 + [2] * 3
    chosen = holes.suggested(small.derived, small.snapshot, found, 3)
    assert all(one.setup == 1 for one in chosen), "four made together rather than three"
    assert holes.mixed(found, {"R1": 0, "R2": 0, "H2": 0}) == ("H2",)
    assert holes.mixed(found, {"R1": 0, "R2": 0}) == ()


def test_marks_are_not_seen_from_the_other_side(small):
    turn.turn_over(small, None, mill=False)
    found = holes.candidates(small.derived, small.snapshot)
    assert [one.label for one in found] == ["H1", "H2", "H3"]
    assert {one.label for one in holes.suggested(small.derived, small.snapshot, found, 2)} == {"H1", "H3"}


def test_which_hole_helps_most_and_by_how_much(small):
    keep_done(small, "01-reference-mark-v-bit-0.1-mm-30")
    found = holes.candidates(small.derived, small.snapshot)
    for one in found[:2]:
        find.keep_hole(small, one.label, one.at, one.at, mark=True)
    fit = small.derived.fit(small.snapshot)
    rest = [one for one in found if one.label not in ("R1", "R2")]
    best = holes.most_helpful(small.derived, small.snapshot, fit, rest)
    assert best is not None
    assert best[0].label in ("R3", "R4")
    assert best[1].gain > 0.0


def test_marks_count_as_surer_than_drilled_holes(small):
    for label, at, mark in (("R1", (0.0, 0.0), True), ("H1", (9.0, 0.0), False)):
        find.keep_hole(small, label, at, at, mark=mark)
    believed = small.settings.reference
    assert small.derived.fit(small.snapshot).sigma == pytest.approx(
        [
            np.hypot(believed.touch_sigma, believed.mark_sigma),
            np.hypot(believed.touch_sigma, believed.hole_sigma),
        ]
    )


def test_by_the_light_spot_the_head_is_beside_the_hole(at_bench):
    session, station = at_bench
    station.controller.set_work(x=30.0, y=20.0, z=5.0)
    laser = replace(session.settings.laser, head=(24.0, -3.0), head_sigma=0.04)
    session.change("Head", laser=laser, reference=replace(session.settings.reference, way="light spot"))
    mark = holes.candidates(session.derived, session.snapshot)[0].cut
    assert find.touch_hole_here(session, station, mark) == pytest.approx((6.0, 23.0), abs=1e-3)
    kept = session.snapshot.records["reference"][-1].data
    assert kept["sigma"] == pytest.approx(np.hypot(session.settings.reference.touch_sigma, 0.04))
    assert kept["way"] == "light spot"


def test_by_hand_wheel_the_position_is_set_not_read(at_bench):
    session, station = at_bench
    first, second = (one.cut for one in holes.candidates(session.derived, session.snapshot)[:2])
    with pytest.raises(MachineError, match="not known"):
        find.touch_hole_here(session, station, first)
    before = station.controller.look().machine
    expected = find.expected_place(session, first)
    find.set_over_hole(session, station, first, expected)
    assert station.controller.look().machine == before, "nothing moves"
    assert station.controller.place()[:2] == pytest.approx(expected, abs=1e-3)
    assert {"x", "y"} <= station.controller.known
    find.set_over_hole(session, station, second, (31.25, 4.5))  # as the dials of the wheels say
    assert station.controller.place()[:2] == pytest.approx((31.25, 4.5))
    records = session.snapshot.records["reference"]
    assert [record.data["way"] for record in records] == ["wheel", "wheel"]
    assert records[1].data["touched"] == [31.25, 4.5]


def test_the_board_is_shifted_until_two_holes_sit(at_bench):
    session, station = at_bench
    marked(session, station)
    bench = station.bench
    corners = [(0.0, 0.0), (20.0, 0.0), (20.0, 10.0), (0.0, 10.0)]
    before = bench.board_to_sheet(corners, session.derived.fit(session.snapshot))
    bench.reclamp(Rigid(0.004, (0.5, -0.4)))
    find.moved(session, "clamped again")
    chosen = holes.suggested(
        session.derived, session.snapshot, holes.candidates(session.derived, session.snapshot), 2
    )
    for one in chosen:
        find.shift_to_hole(session, station, one.cut, find.expected_place(session, one.cut))
    assert [r.kind for r in bench.operator.requests][-2:] == [RequestKind.SHIFT] * 2
    snap = session.snapshot
    assert snap.setup == 2, "nothing was known of this clamping yet, so none begins anew"
    fit = session.derived.fit(snap)
    assert isinstance(fit, Fit)
    assert abs(fit.angle) < 1e-4, "the board was turned to where it should be, not the paths"
    after = bench.board_to_sheet(corners, fit)
    assert np.hypot(*(after - before).T).max() < 0.12
    third = next(
        one for one in holes.candidates(session.derived, snap) if one.label not in {c.label for c in chosen}
    )
    find.shift_to_hole(session, station, third.cut, find.expected_place(session, third.cut))
    assert session.snapshot.setup == 3, "a board that was found is moved by shifting it"


def test_the_way_of_the_last_move_is_kept_with_a_touch(at_bench):
    session, station = at_bench
    station.controller.set_work(x=10.0, y=10.0, z=5.0)
    mark = holes.candidates(session.derived, session.snapshot)[0].cut
    station.controller.jog(-0.5, 0.2, 0.0, 300.0)
    station.controller.settle()
    find.touch_hole_here(session, station, mark)
    assert session.snapshot.records["reference"][-1].data["approach"] == [-1, 1]
    station.controller.doubt()
    assert station.controller.heading == (0, 0, 0)


def test_a_touch_can_be_left_out_again(small):
    for label, at in (("R1", (0.0, 0.0)), ("R2", (9.0, 0.0)), ("R3", (9.0, 8.0))):
        find.keep_hole(small, label, at, at)
    find.forget_hole(small, "R2")
    assert {r.data["label"] for r in small.snapshot.records["reference"]} == {"R1", "R3"}
    assert len(small.derived.fit(small.snapshot).design) == 2


def test_scale_is_corrected_only_when_chosen_and_from_four_holes(small):
    spots = [(0.0, 0.0), (20.0, 0.0), (20.0, 10.0), (0.0, 10.0)]
    for k, (x, y) in enumerate(spots[:3]):
        find.keep_hole(small, f"R{k + 1}", (x, y), (1.01 * x, y))
    find.choose_stretch(small, True)
    assert small.derived.fit(small.snapshot).stretch is None
    find.keep_hole(small, "R4", spots[3], spots[3])
    fit = small.derived.fit(small.snapshot)
    assert fit.apply(spots)[:, 0] == pytest.approx([0.0, 20.2, 20.2, 0.0], abs=1e-9)
    find.choose_stretch(small, False)
    assert small.derived.fit(small.snapshot).stretch is None


def test_touches_that_agree_are_averaged_and_a_wrong_one_is_replaced(at_bench):
    session, station = at_bench
    mark = holes.candidates(session.derived, session.snapshot)[0].cut
    believed = session.settings.reference.touch_sigma
    for x in (10.0, 10.03, 10.06):
        station.controller.set_work(x=x, y=5.0, z=3.0)
        find.touch_hole_here(session, station, mark)
    (record,) = session.snapshot.records["reference"]
    assert record.data["touched"] == pytest.approx([10.03, 5.0], abs=2e-3)
    assert record.data["touches"] == 3
    assert record.data["sigma"] == pytest.approx(believed / np.sqrt(3))
    station.controller.set_work(x=10.5, y=5.0, z=3.0)
    find.touch_hole_here(session, station, mark)
    (record,) = session.snapshot.records["reference"]
    assert record.data["touched"][0] == pytest.approx(10.5, abs=2e-3)
    assert (record.data["touches"], record.data["sigma"]) == (1, believed)
