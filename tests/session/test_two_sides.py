"""Both sides in one job: what carries over when the board is turned over, and what does not."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from drypoint.board.model import Side
from drypoint.errors import PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import Fit
from drypoint.reference.registration import turned
from drypoint.session.actions import find, turn
from drypoint.session.settings import Clamp
from drypoint.session.two_sides import seen_from
from drypoint.session.work import WorkKind, is_done, later_work

ASKEW = Rigid(0.012, (0.9, -0.6))


def to_design(session, side, places):
    """From a side's frame to the coordinates of the files: the same copper, whichever side is looked at."""
    board = session.derived.board(seen_from(session.snapshot, side))
    return board.to_design.apply(places)


def laid(session, axis, askew=ASKEW):
    """How the design's coordinates truly lie on the machine after the turn."""
    snap = session.snapshot
    first = seen_from(snap, snap.face(1))
    layout = session.derived.layout(first)
    before = session.derived.board(first).to_design.inverse().then(layout.place)
    return before.then(turned(layout.width, layout.height, axis)).then(askew)


def touch(session, axis, rng=None, count=3):
    truth = laid(session, axis)
    found = turn.second_side(session, count=count)
    for mark, near in zip(found.holes, found.expected, strict=True):
        real = truth.apply(to_design(session, session.settings.board.side, mark.path))[0]
        assert np.hypot(*(real - near)) < 3.0
        noise = (0.0, 0.0) if rng is None else rng.normal(0, 0.02, 2)
        at = (float(mark.path[0][0]), float(mark.path[0][1]))
        find.keep_hole(session, mark.label, at, tuple(float(v) for v in real + noise))
    return truth


@pytest.mark.parametrize("axis", ["x", "y"])
@pytest.mark.parametrize("mill", [True, False])
def test_the_board_is_found_again_after_it_was_turned(session, axis, mill):
    turn.turn_over(session, None, axis=axis, mill=mill)
    side = session.settings.board.side
    assert side is (Side.TOP if mill else Side.BOTTOM)
    assert session.snapshot.face() is Side.TOP
    truth = touch(session, axis)
    fit = session.derived.fit(session.snapshot)
    assert isinstance(fit, Fit)
    assert fit.mirror is not mill
    places = np.array([(hole.x, hole.y) for hole in session.derived.board(session.snapshot).holes])
    assert fit.apply(places) == pytest.approx(truth.apply(to_design(session, side, places)), abs=1e-6)


def test_a_hole_touched_for_the_legend_counts_when_that_side_is_milled(session):
    turn.turn_over(session, None, mill=False)
    touch(session, "y")
    before = session.derived.fit(session.snapshot)
    session.change("Mill it", board=replace(session.settings.board, side=Side.TOP))
    after = session.derived.fit(session.snapshot)
    assert (before.mirror, after.mirror) == (True, False)
    width = session.derived.board(session.snapshot).width
    assert after.apply([(3.0, 4.0)]) == pytest.approx(before.apply([(width - 3.0, 4.0)]), abs=1e-9)


def test_nothing_is_believed_of_where_it_lies_until_holes_are_touched(session):
    turn.turn_over(session, None)
    with pytest.raises(PlanError, match="not known"):
        session.derived.fit(session.snapshot)
    with pytest.raises(PlanError):
        turn.expected_registration(session)


def test_turning_twice_brings_the_first_side_up_with_its_frame(session):
    first = session.derived.grooves_key(session.snapshot)
    turn.turn_over(session, None)
    assert session.derived.grooves_key(session.snapshot) != first
    turn.turn_over(session, None)
    assert session.settings.board.side is Side.BOTTOM
    assert session.snapshot.face() is Side.BOTTOM
    assert session.derived.grooves_key(session.snapshot) == first


def test_what_was_run_on_one_side_is_not_done_on_the_other_but_holes_are(session):
    session.keep("done", {"program": "11-grooves-pass-1", "setup": 1})
    session.keep("done", {"program": "31-hole-drill-0.8-mm", "setup": 1})
    turn.turn_over(session, None)
    snap = session.snapshot
    assert not is_done(snap, "11-grooves-pass-1")
    assert is_done(snap, "31-hole-drill-0.8-mm", through=True)


def test_grooves_are_refused_while_the_wrong_side_is_up(session):
    turn.turn_over(session, None, mill=False)
    session.keep("touches", {"setup": 2, "touches": {"touches": [], "type": "Touches"}})
    with pytest.raises(PlanError):
        session.derived.passes(session.snapshot)


def test_undoing_the_change_of_side_keeps_what_is_up(session):
    turn.turn_over(session, None)
    session.undo()
    assert session.settings.board.side is Side.BOTTOM
    assert session.snapshot.face() is Side.TOP
    assert session.snapshot.face(1) is Side.BOTTOM


@pytest.mark.parametrize("axis", ["x", "y"])
def test_clamps_stay_on_the_bed(session, axis):
    blank = session.settings.blank
    session.change("Clamp", blank=replace(blank, clamps=(Clamp(0.0, 20.0, 5.0, 8.0),)))
    before = session.derived.layout(session.snapshot)
    on_bed = before.place.apply(np.array(before.clamps[0].exterior.coords))
    turn.turn_over(session, None, axis=axis)
    after = session.derived.layout(session.snapshot)
    truth = laid(session, axis, Rigid())
    design = to_design(session, Side.TOP, np.array(after.clamps[0].exterior.coords))
    there = truth.apply(design)
    assert there.min(axis=0) == pytest.approx(on_bed.min(axis=0), abs=1e-9)
    assert there.max(axis=0) == pytest.approx(on_bed.max(axis=0), abs=1e-9)


def test_the_expected_error_follows_what_is_believed_of_the_holes(session):
    lens = replace(session.settings.reference, touch_sigma=0.02)
    session.change("As sure as the touches are", reference=lens)
    turn.turn_over(session, None)
    touch(session, "y", np.random.default_rng(5))
    told = turn.expected_registration(session)
    assert len(told.places) == len(session.derived.board(session.snapshot).holes)
    assert 0.1 < told.overall(0.95) < 0.15
    session.change("Better drill", reference=replace(lens, hole_sigma=0.02))
    assert turn.expected_registration(session).overall(0.95) < 0.5 * told.overall(0.95) + 0.02


def test_an_unknown_axis_is_a_fault(session):
    with pytest.raises(ValueError, match="axis"):
        turn.turn_over(session, None, axis="z")


def test_a_board_of_two_sides_is_not_cut_out_before_it_was_turned_over(session):
    derived = session.derived
    kinds = {item.kind for item in later_work(derived, session.snapshot)}
    assert WorkKind.OUTLINE in kinds
    session.change("Both sides", board=replace(session.settings.board, both=True))
    kinds = {item.kind for item in later_work(derived, session.snapshot)}
    assert WorkKind.OUTLINE not in kinds
    assert WorkKind.HOLES in kinds
    turn.turn_over(session, None)
    truth = Rigid(0.01, (8.0, 9.0))
    for k, at in enumerate([(5.0, 5.0), (65.0, 5.0), (5.0, 45.0)]):
        find.keep_hole(session, f"H{k}", at, tuple(truth.apply([at])[0].tolist()))
    kinds = {item.kind for item in later_work(derived, session.snapshot)}
    assert WorkKind.OUTLINE in kinds
