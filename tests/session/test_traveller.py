"""The traveller's lines follow the job: to do, ready, done, stale with reasons."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np

from drypoint.errors import PlanError
from drypoint.session.codec import to_json
from drypoint.session.peek import Peek
from drypoint.session.session import Session
from drypoint.session.settings import Clamp
from drypoint.session.traveller import Line, StepName, StepState, traveller
from drypoint.surface.touch import Touch, Touches


def lines(session: Session) -> dict[StepName, Line]:
    snap = session.snapshot
    return {line.name: line for line in traveller(snap, session.derived.peek(snap))}


def compute(session: Session) -> None:
    snap = session.snapshot
    session.derived.cuts(snap)
    session.derived.grooves_key(snap)


def touch(session: Session) -> None:
    """A gently bowed sheet, touched on a grid."""
    x, y = (part.ravel() for part in np.meshgrid(np.linspace(4, 82, 6), np.linspace(4, 62, 5)))
    z = 0.02 * np.sin(x / 25) + 0.01 * np.cos(y / 18)
    found = Touches(
        tuple(Touch(a, b, c, c - 0.002) for a, b, c in zip(x.tolist(), y.tolist(), z.tolist(), strict=True))
    )
    session.keep("touches", {"setup": session.snapshot.setup, "touches": found})


def test_without_files_the_board_is_what_to_do(tmp_path) -> None:
    session = Session.create(tmp_path / "new.drypoint")
    found = lines(session)
    session.close()
    assert list(found) == list(StepName)
    assert found[StepName.BOARD].state is StepState.READY
    assert all(found[name].state is StepState.TO_DO for name in (StepName.CUTS, StepName.PROOF))


def test_nothing_is_computed_by_looking(session: Session) -> None:
    assert lines(session)[StepName.BOARD].state is StepState.TO_DO
    snap = session.snapshot
    assert session.derived.peek(snap).board is None


def test_facts_of_a_planned_job(session: Session) -> None:
    compute(session)
    snap = session.snapshot
    board, cuts = session.derived.board(snap), session.derived.cuts(snap)
    found = lines(session)
    assert found[StepName.BOARD].fact == f"70 × 50 mm, {len(board.nets)} nets"
    assert found[StepName.BOARD].state is StepState.DONE
    assert found[StepName.CUTS].fact.startswith(f"{len(cuts.grooves.lines)} loops")
    assert found[StepName.SURFACE].state is StepState.READY
    assert found[StepName.PASSES].state is StepState.TO_DO


def test_a_change_makes_what_follows_to_do_again(session: Session) -> None:
    compute(session)
    session.change("Deeper", cuts=replace(session.settings.cuts, depth=0.08))
    found = lines(session)
    assert found[StepName.BOARD].state is StepState.DONE
    assert found[StepName.CUTS].state is StepState.TO_DO
    session.undo()
    assert lines(session)[StepName.CUTS].state is StepState.DONE


def test_clamp_too_near_puts_the_blank_in_doubt(session: Session) -> None:
    session.change("Add a clamp", blank=replace(session.settings.blank, clamps=(Clamp(0, 30, 7, 6),)))
    session.derived.layout(session.snapshot)
    line = lines(session)[StepName.BLANK]
    assert line.state is StepState.DOUBT
    assert "Clamp 1" in line.reason


def test_errors_are_told_in_their_line(session: Session) -> None:
    snap = session.snapshot
    error = PlanError("The blank is smaller than the board.", "Blank", "Take a larger one.")
    found = {line.name: line for line in traveller(snap, Peek(), {StepName.BLANK: error})}
    assert found[StepName.BLANK].state is StepState.ERROR
    assert "larger" in found[StepName.BLANK].reason
    assert found[StepName.BOARD].state is StepState.TO_DO


def test_touches_are_done_until_the_board_is_clamped_anew(session: Session) -> None:
    compute(session)
    touch(session)
    snap = session.snapshot
    session.derived.surface(snap)
    session.derived.passes(snap)
    found = lines(session)
    assert found[StepName.SURFACE].state is StepState.DONE
    assert "spread" in found[StepName.SURFACE].fact
    assert found[StepName.PASSES].state is StepState.READY
    session.keep("setup", {"note": "turned over"})
    found = lines(session)
    assert found[StepName.SURFACE].state is StepState.STALE
    assert "turned over" in found[StepName.SURFACE].reason
    assert found[StepName.PASSES].state is StepState.STALE
    assert found[StepName.REFERENCE].state is StepState.STALE


def test_reference_is_done_once_two_holes_are_touched(session: Session) -> None:
    compute(session)
    session.keep("setup", {"note": ""})
    snap = session.snapshot
    turn = math.radians(0.5)
    marks = session.derived.cuts(snap).marks
    for mark in marks[:2]:
        x, y = (float(value) for value in mark.path[0])
        at = [x * math.cos(turn) - y * math.sin(turn) + 9, x * math.sin(turn) + y * math.cos(turn) + 8]
        session.keep(
            "reference",
            {"setup": 2, "label": mark.label, "design": [x, y], "touched": at, "sigma": 0.02},
        )
    session.derived.fit(session.snapshot)
    line = lines(session)[StepName.REFERENCE]
    assert line.state is StepState.DONE
    assert line.fact == "2 holes, residual 0.00 mm"


def test_passes_run_over_other_grooves_are_stale(session: Session) -> None:
    compute(session)
    touch(session)
    snap = session.snapshot
    plan = session.derived.passes(snap)
    assert plan.next is not None
    session.keep(
        "pass", {"pass": to_json(plan.next), "grooves": session.derived.grooves_key(snap), "setup": 1}
    )
    assert lines(session)[StepName.PASSES].state is not StepState.STALE
    session.change("Deeper", cuts=replace(session.settings.cuts, depth=0.08))
    compute(session)
    line = lines(session)[StepName.PASSES]
    assert line.state is StepState.STALE
    assert "grooves changed" in line.reason


def test_proof_is_stale_after_a_further_pass(session: Session) -> None:
    data = {"setup": 1, "proved": [["A", "B"]], "joined": [], "unproved": [], "again": []}
    session.keep("island touch", data)
    assert lines(session)[StepName.PROOF].state is StepState.DONE
    session.keep("pass", {"pass": {}, "grooves": "", "setup": 1})
    assert lines(session)[StepName.PROOF].state is StepState.STALE
    session.keep("island touch", {**data, "joined": [{"nets": ["A", "C"], "at": [1, 2], "gap": 0.2}]})
    assert lines(session)[StepName.PROOF].state is StepState.ERROR
