"""The island check at any depth, of our grooves and of ready-made programs."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from drypoint.board.model import Side
from drypoint.errors import InputError, PlanError
from drypoint.session.commands import check_job, prepare
from drypoint.session.depth_check import check_at, checkable
from drypoint.session.report import report
from drypoint.session.session import Session


def test_too_shallow_joins_everything_and_as_planned_nothing(session: Session) -> None:
    snap = session.snapshot
    nets = len(session.derived.board(snap).nets)
    shallow = check_at(session.derived, snap, depth=0.9 * snap.settings.blank.copper).check
    assert [len(one.nets) for one in shallow.shorts] == [nets]
    planned = check_at(session.derived, snap)
    assert planned.depth == snap.settings.cuts.depth
    assert planned.check.clean


def test_too_deep_a_cut_bites_copper_away(session: Session) -> None:
    assert check_at(session.derived, session.snapshot, depth=1.5).check.clean is False


def _program(depth: float, *, ramp: bool = False) -> str:
    """A square groove round a pad 4 mm wide in the middle of a copper area."""
    z = -depth
    last = f"X7.5 Y7.5 Z{-0.01 if ramp else z:.4f}"
    return (
        "G21 G90\nM3 S10000\nG0 Z2\nG0 X7.5 Y7.5\n"
        f"G1 Z{z:.4f} F100\nG1 X12.5 F300\nY12.5\nX7.5\nG1 {last}\nG0 Z2\nM30\n"
    )


BODY = (
    "%FSLAX46Y46*%\n%MOMM*%\n%LPD*%\n%ADD10R,4X4*%\n%ADD11R,20X1*%\n"
    "%TO.N,PAD*%\nD10*\nX10000000Y10000000D03*\n%TO.N,BAR*%\nD11*\nX10000000Y6400000D03*\nM02*\n"
)
EDGE = (
    "%FSLAX46Y46*%\n%MOMM*%\n%TF.FileFunction,Profile,NP*%\n%ADD10C,0.1*%\nD10*\n"
    "X0Y0D02*\nX20000000Y0D01*\nX20000000Y20000000D01*\nX0Y20000000D01*\nX0Y0D01*\nM02*\n"
)


@pytest.fixture
def engraved(tmp_path: Path):
    """A job with a program that goes round the pad at a depth; its V-bit is 0.1 mm, 30°."""

    def make(depth: float, *, ramp: bool = False) -> Path:
        folder = tmp_path / "design"
        folder.mkdir(exist_ok=True)
        copper = BODY.replace("%MOMM*%\n", "%MOMM*%\n%TF.FileFunction,Copper,L1,Top*%\n", 1)
        (folder / "top.gbr").write_text(copper)
        (folder / "edge.gbr").write_text(EDGE)
        (folder / "round.nc").write_text(_program(depth, ramp=ramp))
        job = tmp_path / f"{depth}-{ramp}.drypoint"
        prepare([folder], job, side=Side.TOP)
        return job

    return make


@pytest.mark.parametrize(("depth", "joined"), [(0.02, True), (0.06, False)])
def test_a_ready_made_program_is_checked_as_deep_as_it_says(engraved, depth: float, joined: bool) -> None:
    """Copper is 35 µm thick: what goes no deeper parts nothing."""
    found = check_job(engraved(depth), program="round.nc")
    assert found["depth_mm"] is None
    assert bool(found["island_check"]["shorts"]) is joined
    assert found["island_check"]["pieces"] == (1 if joined else 2)
    if joined:
        assert found["island_check"]["shorts"][0]["nets"] == ["PAD", "BAR"]
        assert "joined: PAD, BAR" in report("check", found)


def test_a_ramp_is_judged_where_it_is_shallow(engraved) -> None:
    """The last side climbs from 0.06 to 0.01 mm: the loop is not closed, the pad stays joined."""
    assert check_job(engraved(0.06, ramp=True), program="round.nc")["island_check"]["shorts"]


def test_another_depth_can_be_asked_of_a_program(engraved) -> None:
    job = engraved(0.02)
    assert not check_job(job, program="round.nc", depth=0.08)["island_check"]["shorts"]
    found = check_job(job, program="round.nc", depth=0.08, find=True)
    assert found["parted_from_mm"] == pytest.approx(0.035, abs=2e-3)


def test_the_least_depth_that_parts_two_pads(engraved) -> None:
    """Our own loops part their nets as soon as they go through the copper, 35 µm, at all."""
    found = check_job(engraved(0.06), find=True)
    assert found["parted_from_mm"] == pytest.approx(0.035, abs=2e-3)
    assert math.isclose(found["depth_mm"], 0.06)


def test_what_cannot_be_checked_is_told(engraved, session: Session) -> None:
    job = engraved(0.06)
    with pytest.raises(InputError):
        check_job(job, program="nothing.nc")
    with pytest.raises(InputError):
        check_job(job, depth=9.0)
    assert checkable(session.derived.ready(session.snapshot)) == ()
    with pytest.raises((InputError, PlanError)):
        check_at(session.derived, session.snapshot, program="edge")
