"""Copies of the board in a job: planned, checked and cut out one by one."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
import shapely
from shapely import Polygon

from drypoint.errors import PlanError
from drypoint.session.commands import prepare, rehearse_job
from drypoint.session.facts import prepared_facts
from drypoint.session.session import Session
from drypoint.session.settings import Clamp, CopyPlace, CopySettings


def test_two_copies_are_twice_the_work(small_job: Path) -> None:
    session = Session.open(small_job)
    once = prepared_facts(session)
    session.change("Two", copies=CopySettings(2, 1, 4.0))
    twice = prepared_facts(session)
    assert twice["board"]["boards"] == 2
    assert twice["board"]["width_mm"] == 2 * once["board"]["width_mm"] + 4.0
    for key in ("groove_length_mm", "loops"):
        assert twice["cuts"][key] == pytest.approx(2 * once["cuts"][key], rel=1e-6)
    assert twice["holes_by_drill"] == {name: 2 * n for name, n in once["holes_by_drill"].items()}
    assert (
        twice["island_check"]["pieces"] == twice["island_check"]["nets"] == 2 * once["island_check"]["nets"]
    )
    assert twice["island_check"]["shorts"] == []
    session.close()


def test_each_copy_is_cut_out_with_tabs_of_its_own(small_job: Path) -> None:
    session = Session.open(small_job)
    session.change("Four", copies=CopySettings(2, 2, 5.0))
    snap = session.snapshot
    board, cuts, layout = (getattr(session.derived, part)(snap) for part in ("board", "cuts", "layout"))
    assert [cut.label for cut in cuts.outline] == [f"outline of board {n}" for n in range(1, 5)]
    assert all(cut.tabs is not None and len(cut.tabs) == 4 for cut in cuts.outline)
    radius = session.settings.bits.mill.diameter / 2
    for cut, edge in zip(cuts.outline, board.outlines, strict=True):
        swept = shapely.LineString(cut.path).buffer(radius)
        assert swept.intersection(board.outline).area < 0.05
        assert Polygon(cut.path).contains(edge)
    # reference marks keep off the boards and the waste between them, which may come loose
    inside = shapely.box(*board.outline.bounds)
    assert not any(inside.intersects(shapely.Point(mark.path[0])) for mark in cuts.marks)
    assert layout.width == board.width + 2 * session.settings.blank.margin
    session.close()


def test_copies_in_places_of_their_own(small_job: Path) -> None:
    session = Session.open(small_job)
    places = (CopyPlace(0.0, 0.0), CopyPlace(24.0, 0.0, 90.0))
    session.change("Places", copies=CopySettings(places=places))
    board = session.derived.board(session.snapshot)
    assert board.outlines[1].bounds == pytest.approx((24.0, 0.0, 34.0, 20.0))
    session.close()
    again = Session.open(small_job)
    assert again.settings.copies.places == places
    assert again.undo() == "Places"
    assert len(again.derived.board(again.snapshot).outlines) == 1
    again.close()


def test_a_gap_too_narrow_for_the_mill_is_refused(small_job: Path) -> None:
    session = Session.open(small_job)
    session.change("Close", copies=CopySettings(2, 1, 1.0))
    with pytest.raises(PlanError, match=r"1\.00 mm apart; 2\.00 mm"):
        session.derived.board(session.snapshot)
    session.close()


def test_a_clamp_by_any_copy_is_warned_of(small_job: Path) -> None:
    session = Session.open(small_job)
    blank = replace(session.settings.blank, clamps=(Clamp(53.0, 10.0, 5.0, 5.0),))
    session.change("Two and a clamp", copies=CopySettings(2, 1, 4.0), blank=blank)
    assert any(
        text.startswith("Clamp 1 is 1.0 mm") for text in session.derived.layout(session.snapshot).warnings
    )
    session.close()


def test_two_copies_are_rehearsed_to_their_islands(small_job: Path) -> None:
    """The whole job on the bench: every net of every copy is an island in the copper that is left."""
    session = Session.open(small_job)
    session.change("Two", copies=CopySettings(2, 1, 4.0))
    session.close()
    check = rehearse_job(small_job, touches=20)["island_check"]
    assert check["nets"] == check["pieces"] == 4
    assert check["shorts"] == check["opens"] == check["lost"] == []


def test_the_demo_board_twice(hive_scale: Path, tmp_path: Path) -> None:
    prepare([hive_scale], tmp_path / "j.drypoint")
    session = Session.open(tmp_path / "j.drypoint")
    session.change("Two", copies=CopySettings(2, 1, 4.0))
    board = session.derived.board(session.snapshot)
    assert {name.split(":", 1)[0] for name in board.nets} == {"1", "2"}
    assert len(board.rivets) == 2 * len(session.derived.designs(session.snapshot)[""].rivets) == 16
    session.close()
