"""A board without holes of its own: tooling holes in the margin, drilled once, and found after the turn."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
import shapely
from scipy.stats import chi2

from drypoint.errors import PlanError
from drypoint.reference.fit import fit_rigid
from drypoint.reference.registration import across
from drypoint.session.actions import find, measure, turn
from drypoint.session.clear_options import ClearOptions
from drypoint.session.commands import prepare
from drypoint.session.holes import candidates
from drypoint.session.programs import as_turned
from drypoint.session.rehearsal import Rehearsal, rehearse
from drypoint.session.report import report
from drypoint.session.session import Session
from drypoint.session.settings import Clamp
from drypoint.session.station import connect, make_bench
from drypoint.session.tooling import KIND, drilled_by
from drypoint.session.turn_settings import ToolingUse
from drypoint.session.work import later_work

_HEAD = "%FSLAX43Y43*%\n%MOMM*%\n%ADD10C,2*%\nG01*\nD10*\n"


def _copper(layer: str, pads: list[tuple[int, int]]) -> str:
    flashes = "".join(f"X{x}000Y{y}000D03*\n" for x, y in pads)
    return f"%TF.FileFunction,Copper,{layer}*%\n{_HEAD}{flashes}M02*\n"


@pytest.fixture(scope="module")
def plates(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Two-sided, 30 × 18 mm, pads for parts that are soldered on: no hole at all."""
    folder = tmp_path_factory.mktemp("plates")
    (folder / "plates-top.gbr").write_text(_copper("L1,Top", [(4, 4), (10, 8), (12, 9), (20, 6), (26, 14)]))
    (folder / "plates-bottom.gbr").write_text(_copper("L2,Bot", [(6, 10), (15, 4), (17, 5), (24, 10)]))
    (folder / "plates-outline.gbr").write_text(
        f"%TF.FileFunction,Profile,NP*%\n{_HEAD}X0Y0D02*\nX30000Y0D01*\nX30000Y18000D01*\nX0Y18000D01*\n"
        "X0Y0D01*\nM02*\n"
    )
    return folder


@pytest.fixture
def session(plates: Path, tmp_path: Path) -> Iterator[Session]:
    prepare([plates], tmp_path / "plates.drypoint", both_sides=True)
    opened = Session.open(tmp_path / "plates.drypoint")
    yield opened
    opened.close()


def places(session: Session) -> np.ndarray:
    return np.array([cut.path[0] for cut in session.derived.cuts(session.snapshot).tooling])


def choose(session: Session, use: ToolingUse) -> None:
    session.change("Tooling holes", turn=replace(session.settings.turn, tooling=use))


def drill(session: Session) -> None:
    """As if the program of the holes had been run to its end."""
    snap = session.snapshot
    (item,) = [one for one in later_work(session.derived, snap) if "tooling" in one.program.name]
    board = session.derived.board(snap)
    kept = drilled_by(snap, item.program, session.derived.tooling(snap), board.width)
    assert kept is not None
    session.keep(KIND, kept)
    session.keep("done", {"program": item.program.name, "setup": snap.setup})


def test_a_board_without_holes_gets_some_and_one_with_enough_does_not(session, root, tmp_path):
    assert len(places(session)) == 3
    facts = prepare([root / "examples" / "frost-bell"], tmp_path / "bell.drypoint", both_sides=True)
    assert facts["second_side"]["tooling_holes"] == []
    assert facts["second_side"]["tooling_pays"]
    expected = facts["second_side"]["expected95_mm"]
    assert expected["with_tooling_holes"] < 0.8 * expected["own_holes"]
    assert "--tooling always" in report("prepare", facts)


def test_without_them_the_second_side_is_not_found_and_that_is_said(session):
    choose(session, ToolingUse.NEVER)
    turn.turn_over(session, None)
    with pytest.raises(PlanError, match="two drilled holes"):
        turn.second_side(session)


def test_both_sides_see_the_same_holes(session):
    first = places(session)
    snap = session.snapshot
    other = np.array([cut.path[0] for cut in session.derived.cuts(as_turned(snap)).tooling])
    width = session.derived.board(snap).width
    assert other == pytest.approx(across(width).apply(first), abs=1e-6)


def test_what_was_drilled_stays_where_it_is(session):
    first = places(session)
    drill(session)
    turn.turn_over(session, None)
    blank = session.settings.blank
    x, y = session.derived.layout(session.snapshot).place.apply(places(session)[:1])[0]
    session.change("Clamp", blank=replace(blank, clamp_margin=0.1, clamps=(Clamp(x - 1, y - 1, 2, 2),)))
    choose(session, ToolingUse.NEVER)
    width = session.derived.board(session.snapshot).width
    assert places(session) == pytest.approx(across(width).apply(first), abs=1e-6)
    left = [
        one
        for one in later_work(session.derived, session.snapshot, session.derived.fit_of(session.snapshot, 1))
        if "tooling" in one.program.name
    ]
    assert [one.done for one in left] == [True]
    found = turn.second_side(session)
    assert sorted(hole.label for hole in found.holes) == ["T1", "T2", "T3"]
    found_by = candidates(session.derived, session.snapshot)
    made = {one.label: one.setup for one in found_by if not one.mark}
    assert made == {"T1": 1, "T2": 1, "T3": 1}


def test_the_expected_error_is_that_of_the_fit_that_will_be_made(session):
    snap = session.snapshot
    told = session.derived.foreseen(snap)
    holes, believed = places(session), snap.settings.reference
    fit = fit_rigid(holes, holes, sigma=believed.touch_sigma, hole_sigma=believed.hole_sigma)
    x0, y0, x1, y1 = session.derived.board(snap).outline.bounds
    spread = fit.covariance_at([(x0, y0), (x1, y0), (x1, y1), (x0, y1)])
    largest = np.linalg.eigvalsh(spread)[:, -1].max()
    assert told.own is None
    assert told.tooling == pytest.approx(math.sqrt(largest * chi2.ppf(0.95, 2)), rel=1e-6)
    assert told.pays


def test_asked_for_after_the_other_holes_they_are_a_program_of_their_own(root, tmp_path):
    prepare([root / "examples" / "frost-bell"], tmp_path / "bell.drypoint", both_sides=True)
    session = Session.open(tmp_path / "bell.drypoint")
    try:
        before = [item.program.name for item in later_work(session.derived, session.snapshot)]
        for name in before:
            session.keep("done", {"program": name, "setup": 1})
        choose(session, ToolingUse.ALWAYS)
        items = later_work(session.derived, session.snapshot)
        waiting = [item.program.name for item in items if not item.done]
        assert [name for name in waiting if "hole" in name] == [name for name in waiting if "tooling" in name]
        assert sum("tooling" in name for name in waiting) == 1
        assert set(before) <= {item.program.name for item in items}
    finally:
        session.close()


def test_the_same_drill_makes_both_in_one_program(root, tmp_path):
    prepare(
        [root / "examples" / "frost-bell"],
        tmp_path / "bell.drypoint",
        both_sides=True,
        tooling=ToolingUse.ALWAYS,
    )
    session = Session.open(tmp_path / "bell.drypoint")
    try:
        names = [item.program.name for item in later_work(session.derived, session.snapshot)]
        (with_tooling,) = [name for name in names if "tooling" in name]
        assert "-hole-tooling-hole-drill" in with_tooling
    finally:
        session.close()


def test_copper_is_not_touched_where_a_hole_is(session):
    region = session.derived.touchable(session.snapshot)
    radius = session.derived.cuts(session.snapshot).tooling[0].diameter / 2
    for place in places(session):
        assert not shapely.intersects(region, shapely.Point(place).buffer(radius))


def test_marks_keep_off_them(session):
    marks = np.array([cut.path[0] for cut in session.derived.cuts(session.snapshot).marks])
    apart = np.hypot(*(marks[:, None] - places(session)[None]).transpose(2, 0, 1))
    assert apart.min() > 1.5


@pytest.fixture(scope="module")
def rehearsed(plates: Path, tmp_path_factory: pytest.TempPathFactory) -> Rehearsal:
    """On both sides an end mill clears moats, and the V-bit cuts where two pads lie 0.2 mm apart."""
    folder = tmp_path_factory.mktemp("rehearsed")
    two_bits = ClearOptions(wide="0.8", clear="moat", moat=1.2)
    prepare([plates], folder / "plates.drypoint", both_sides=True, clearing=two_bits)
    session = Session.open(folder / "plates.drypoint")
    try:
        return rehearse(session, folder, seed=1, touches=16)
    finally:
        session.close()


def test_a_board_without_holes_is_rehearsed_on_both_sides(rehearsed):
    second = rehearsed.second_side
    assert second is not None
    assert rehearsed.check.clean
    assert second.check.clean
    assert (rehearsed.check.pieces, second.check.pieces) == (4, 5)
    assert not rehearsed.findings
    assert second.holes == 3
    assert second.compared == 3
    assert second.worst_error_mm < 0.3
    names = [program.name for program in rehearsed.programs]
    assert sum("tooling-hole" in name for name in names) == 1
    assert "outline" in names[-1]
    assert "Found by 3 drilled holes" in report("rehearse", rehearsed.as_dict())


def test_two_bits_mill_each_side(rehearsed):
    second = rehearsed.second_side
    assert second is not None
    names = [program.name for program in rehearsed.programs]
    for side in ("1-bottom", "2-top"):
        own = [name for name in names if name.startswith(side)]
        wide = next(at for at, name in enumerate(own) if "-clearing-" in name)
        fine = next(at for at, name in enumerate(own) if "-grooves-" in name)
        assert wide < fine
    for passes in (rehearsed.passes, second.passes):
        assert len(passes) >= 2
        # the wide bit goes under all of the copper; what is left by it is up to the fine one
        assert passes[0].actual_through < 1.0
        assert passes[-1].actual_through == pytest.approx(1.0, abs=0.01)
        for one in passes:
            assert one.actual_through == pytest.approx(one.predicted_through, abs=0.03)


def test_who_finds_no_hole_is_told_what_that_means(session):
    drill(session)
    snap = session.snapshot
    bench = make_bench(session.derived.layout(snap), session.settings, 1, loose=())
    station = connect(bench.link, bench.operator, session.settings, bench=bench)
    measure.put_in(station, session.settings.bits.vbit)
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.end_contact(station)
    for hole in (session.derived.cuts(snap).tooling[0], session.derived.cuts(snap).marks[0]):
        find.touch_hole(session, station, hole, find.expected_place(session, hole))
    asked = [one.text for one in bench.operator.requests if one.title.startswith("Over reference hole")]
    assert "the wrong way" in asked[0]
    assert "the wrong way" not in asked[-1]
