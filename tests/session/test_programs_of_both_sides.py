"""Programs of a job with both sides: named after the side, each cut once, the turn on the setup sheet."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from drypoint.board.model import Side
from drypoint.session.actions import turn
from drypoint.session.commands import export_job, prepare
from drypoint.session.programs import as_turned, programs, second_side_work
from drypoint.session.session import Session
from drypoint.session.sides import of_second_side, side_of, what_is_cut
from drypoint.session.work import is_done, later_work


@pytest.fixture(scope="module")
def kept(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("sides") / "bell.drypoint"
    prepare([root / "examples" / "frost-bell"], path, both_sides=True)
    return path


@pytest.fixture
def bell(kept: Path, tmp_path: Path) -> Iterator[Session]:
    path = tmp_path / "bell.drypoint"
    path.write_bytes(kept.read_bytes())
    session = Session.open(path)
    yield session
    session.close()


def test_names_say_the_side_and_stand_in_the_order_of_work(bell: Session) -> None:
    names = [program.name for program in programs(bell)]
    assert names == sorted(names)
    assert len(set(names)) == len(names)
    assert names[0].startswith("1-bottom-01-reference-mark")
    first = [name for name in names if not of_second_side(name)]
    second = [name for name in names if of_second_side(name)]
    assert {side_of(name) for name in first} == {Side.BOTTOM}
    assert {side_of(name) for name in second} == {Side.TOP}
    assert [what_is_cut(name) for name in second] == ["grooves-pass-1", "outline-end-mill-2.0-mm"]
    assert not any("outline" in name for name in first)
    assert sum("-hole-" in name for name in first) == 3


def test_a_job_of_one_side_keeps_plain_names(bell: Session) -> None:
    bell.change("One side", board=replace(bell.settings.board, both=False))
    names = [program.name for program in programs(bell)]
    assert names[1] == "11-grooves-pass-1"
    assert {side_of(name) for name in names} == {None}
    assert "outline" in names[-1]


@pytest.mark.parametrize("name", ["2-top-32-hole-drill-0.8-mm", "1-bottom-33-hole-drill-0.8-mm"])
def test_a_hole_is_the_same_from_either_side(name: str) -> None:
    assert what_is_cut(name) == what_is_cut("32-hole-drill-0.8-mm") == "hole-drill-0.8-mm"


def test_grooves_of_the_second_side_lie_where_a_turn_left_over_right_brings_them(bell: Session) -> None:
    snap = bell.snapshot
    grooves = second_side_work(bell.derived, snap)[0]
    over = as_turned(snap)
    assert over.face() is Side.TOP
    layout = bell.derived.layout(snap)
    lines = np.vstack(bell.derived.cuts(over).grooves.lines)
    # seen from the top x runs the other way and the blank keeps its corner: the right margin is left now
    right = layout.width - layout.place.offset[0] - bell.derived.board(snap).width
    shift = np.array((right, layout.place.offset[1]))
    low, high = lines.min(axis=0) + shift, lines.max(axis=0) + shift
    cut = grooves.program.moves.end[grooves.program.moves.end[:, 2] < 0.0][:, :2]
    assert cut.min(axis=0) == pytest.approx(low, abs=1e-3)
    assert cut.max(axis=0) == pytest.approx(high, abs=1e-3)
    assert snap.face() is bell.snapshot.face() is Side.BOTTOM, "nothing is said to have happened"


def test_what_was_drilled_before_the_turn_is_not_drilled_again(bell: Session) -> None:
    holes = [item.program.name for item in later_work(bell.derived, bell.snapshot)]
    for name in holes[:-1]:
        bell.keep("done", {"program": name, "setup": 1})
    turn.turn_over(bell, None)
    for at, label in (((5.0, 5.0), "H1"), ((30.0, 5.0), "H2"), ((5.0, 20.0), "H3")):
        data = {"setup": 2, "side": "top", "label": label, "design": list(at), "touched": list(at)}
        bell.keep("reference", {**data, "sigma": 0.03, "mark": False, "way": "eye", "approach": [0, 0]})
    snap = bell.snapshot
    items = later_work(bell.derived, snap)
    assert [item.done for item in items] == [True] * (len(holes) - 1) + [False, False]
    assert is_done(snap, items[0].program.name, through=True)
    left = [what_is_cut(program.name) for program in programs(bell)]
    assert what_is_cut(holes[0]) not in left
    assert {what_is_cut(holes[-1]), "outline-end-mill-2.0-mm", "grooves-pass-1"} <= set(left)


def test_export_tells_the_side_of_every_file_and_the_sheet_the_turn(kept: Path, tmp_path: Path) -> None:
    found = export_job(kept, tmp_path / "out")
    sides = [one["side"] for one in found["files"]]
    assert sides == sorted(sides), "bottom first"
    assert set(sides) == {"bottom", "top"}
    assert all(Path(one["path"]).is_file() for one in found["files"])
    (note,) = found["notes"]
    assert "left over right" in note
    page = (tmp_path / "out" / "setup-sheet.html").read_text(encoding="utf-8")
    drilled, flipped, milled = (
        page.index(word) for word in ("34-hole-drill", "Turn the board over, top up", "2-top-11-grooves")
    )
    assert drilled < flipped < milled
    assert "bottom and then top copper milled" in page
    assert (tmp_path / "out" / "grooves-second-side.svg").is_file()


def test_where_both_sides_are_milled_no_wire_replaces_the_other(bell: Session) -> None:
    board = bell.derived.board(bell.snapshot)
    assert board.links == ()
    assert len(board.rivets) > 11
    bell.change("One side", board=replace(bell.settings.board, both=False))
    assert bell.derived.board(bell.snapshot).links
