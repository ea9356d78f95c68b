"""A board with copper on both sides, rehearsed whole: milled, turned over, found, milled, cut out."""

from __future__ import annotations

from pathlib import Path

import pytest

from drypoint.board.model import Side
from drypoint.session.commands import prepare
from drypoint.session.rehearsal import Rehearsal, rehearse
from drypoint.session.report import report
from drypoint.session.session import Session


@pytest.fixture(scope="module")
def found(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Rehearsal:
    """The two-sided example on the bench, with few touches."""
    folder = tmp_path_factory.mktemp("bell")
    prepare([root / "examples" / "frost-bell"], folder / "bell.drypoint", both_sides=True)
    session = Session.open(folder / "bell.drypoint")
    try:
        return rehearse(session, folder, seed=2, touches=24)
    finally:
        session.close()


def test_each_side_ends_with_exactly_its_nets(found: Rehearsal) -> None:
    second = found.second_side
    assert second is not None
    assert second.side is Side.TOP
    for check, islands in ((found.check, found.islands), (second.check, second.islands)):
        assert check.nets == 8
        assert check.clean, (check.shorts, check.opens, check.lost)
        assert check.pieces == islands
    assert not found.findings


def test_the_second_side_is_cut_through_as_was_predicted(found: Rehearsal) -> None:
    second = found.second_side
    assert second is not None
    assert second.passes
    for one in second.passes:
        assert one.actual_through == pytest.approx(one.predicted_through, abs=0.03)
    assert second.rms_um < 25.0
    assert second.touches >= 20


def test_pads_of_the_second_side_lie_over_the_holes(found: Rehearsal) -> None:
    second = found.second_side
    assert second is not None
    assert second.holes == 3
    assert second.compared == 38
    assert second.actual_error_mm is not None
    # drills of the bench slip by as much as is believed of them; 38 holes are a small sample
    assert second.expected_error_mm < 0.2
    assert 0.3 * second.expected_error_mm < second.actual_error_mm < 1.3 * second.expected_error_mm
    assert second.within is not None
    assert second.within > 0.85


def test_holes_are_drilled_once_and_the_board_is_cut_out_last(found: Rehearsal) -> None:
    names = [program.name for program in found.programs]
    holes = [name for name in names if "-hole-" in name]
    assert len(holes) == len(set(holes)) == 3
    assert "outline" in names[-1]
    assert sum("outline" in name for name in names) == 1
    grooves = [at for at, name in enumerate(names) if "grooves" in name]
    drilled = [at for at, name in enumerate(names) if "-hole-" in name]
    assert grooves[0] < min(drilled)
    assert max(drilled) < grooves[-1]


def test_people_and_scripts_are_told_of_the_second_side(found: Rehearsal) -> None:
    told = found.as_dict()
    assert told["second_side"]["side"] == "top"
    assert told["second_side"]["island_check"]["pieces"] == 8
    assert told["second_side"]["registration"]["holes"] == 38
    text = report("rehearse", told)
    assert "Second side, top" in text
    assert "Island check of the second side: 8 islands for 8 nets; every net is an island" in text
