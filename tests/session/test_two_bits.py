"""A wide bit and a fine one, and copper taken away: planned, cut on the bench, never at the cost of a net."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
import shapely

from drypoint.bits.library import default_library
from drypoint.cuts.model import CutKind
from drypoint.machine.islands_plan import neighbours, net_of
from drypoint.passes.model import Pass
from drypoint.program.model import Program
from drypoint.progress import Progress
from drypoint.session.clear_settings import ClearArea, Clearing, ClearSettings
from drypoint.session.islands import Joined, joined_places
from drypoint.session.pass_plan import PassPlan, plan_passes
from drypoint.session.rehearsal import rehearse
from drypoint.session.session import Session
from drypoint.session.two_bits import CLEAR_OF_ZERO, area_to_clear, flat, seen_from_below
from drypoint.surface.model import fit_surface

MILL = default_library().find("End mill 0.8")
TWO = ClearSettings(bit=MILL)
BOARD = replace(TWO, what=Clearing.BOARD, slivers=1.0)


def test_the_demo_with_two_bits_and_cleared_ends_with_exactly_its_nets(
    session: Session, tmp_path: Path
) -> None:
    moat = replace(BOARD, what=Clearing.MOAT, moat=1.2)
    session.change("Two bits and moats", clearing=moat)
    found = rehearse(session, tmp_path, seed=3, touches=40)
    check = found.check
    assert check.clean, (check.shorts, check.opens, check.lost)
    assert check.pieces - found.islands == 0
    assert not found.findings
    names = [_what(program) for program in found.programs]
    assert names[1:3] == [("clearing", MILL.name), ("grooves", session.settings.bits.vbit.name)]
    assert found.passes[-1].actual_through == pytest.approx(found.passes[-1].predicted_through, abs=0.03)
    # what is left beside the nets is corners that the mill does not reach
    board = session.derived.board(session.snapshot)
    design = shapely.union_all(list(board.nets.values()))
    band = shapely.difference(shapely.buffer(design, 1.0), shapely.buffer(design, 0.05))
    band = shapely.intersection(band, shapely.buffer(board.outline, -1.0))
    assert shapely.intersection(found.carved, band).area < 0.1 * band.area


def _what(program: Program) -> tuple[str, str]:
    return program.name.split("-")[1], program.bit.name


@pytest.fixture(scope="module")
def shallow(prepared: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Session]:
    """The demo with two bits, cleared; the wide bit hardly through the copper. Nobody changes it."""
    yield from _opened(prepared, tmp_path_factory.mktemp("shallow"), replace(BOARD, depth=0.06))


@pytest.fixture(scope="module")
def deep(prepared: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Session]:
    """The demo with two bits, grooves only, the wide bit deep in the laminate. Nobody changes it."""
    yield from _opened(prepared, tmp_path_factory.mktemp("deep"), replace(TWO, depth=0.3))


def _opened(prepared: Path, folder: Path, clearing: ClearSettings) -> Iterator[Session]:
    shutil.copyfile(prepared, folder / "job.drypoint")
    opened = Session.open(folder / "job.drypoint")
    opened.change("Two bits", clearing=clearing)
    yield opened
    opened.close()


@pytest.mark.parametrize("name", ["shallow", "deep"])
def test_the_plan_parts_all_nets_and_bites_no_more_than_before(
    session: Session, name: str, request: pytest.FixtureRequest
) -> None:
    alone = session.derived.cuts(session.snapshot)
    other: Session = request.getfixturevalue(name)
    cuts = other.derived.cuts(other.snapshot)
    assert cuts.check.clean
    assert cuts.check.pieces == alone.check.pieces
    assert len(cuts.check.thinned) <= len(alone.check.thinned)
    assert len(cuts.top) == len(cuts.grooves.lines)
    assert set(np.round(cuts.top[: cuts.grooves.wide], 6)) == {MILL.diameter}
    assert set(np.round(cuts.top[cuts.grooves.wide :], 6)) == {round(cuts.width, 6)}


def test_the_fine_bit_goes_only_where_the_wide_one_does_not_fit(session: Session, deep: Session) -> None:
    alone = session.derived.cuts(session.snapshot).length
    grooves = deep.derived.cuts(deep.snapshot).grooves
    wide, fine = flat(grooves, deep.settings)
    assert (wide.kind, fine.kind) == (CutKind.CLEAR, CutKind.GROOVE)
    assert (wide.number, fine.number) == (1, 2)
    assert fine.length < 0.3 * alone
    assert {run.groove for run in wide.runs} == set(range(grooves.wide))
    assert {run.groove for run in fine.runs} == set(range(grooves.wide, len(grooves.lines)))


def test_the_spot_where_z_is_zero_is_never_cleared(session: Session) -> None:
    snap = session.snapshot
    layout, board = session.derived.layout(snap), session.derived.board(snap)
    area = ClearArea(-50.0, -50.0, 200.0, 200.0)
    cleared = area_to_clear(board, layout, ClearSettings(what=Clearing.AREAS, areas=(area,)))
    assert shapely.distance(cleared, shapely.Point(layout.zero_spot)) == pytest.approx(
        CLEAR_OF_ZERO, abs=0.02
    )


def test_areas_are_mirrored_for_the_other_side() -> None:
    given = ClearSettings(areas=(ClearArea(1.0, 2.0, 10.0, 8.0),))
    assert seen_from_below(given, 70.0).areas == (ClearArea(59.0, 2.0, 10.0, 8.0),)
    assert seen_from_below(seen_from_below(given, 70.0), 70.0) == given


def _plan(session: Session, done: tuple[Pass, ...], noise: float) -> PassPlan:
    """A pass plan over copper touched with so much scatter, mm."""
    snap = session.snapshot
    rng = np.random.default_rng(5)
    places = rng.uniform([3.0, 3.0], [80.0, 60.0], (60, 2))
    surface = fit_surface(np.column_stack((places, rng.normal(0.0, noise, 60))))
    nothing = Joined(None, ())
    return plan_passes(
        session.derived.cuts(snap).grooves, done, session.derived.fit(snap), surface,
        snap.settings, None, nothing, None, (), Progress(),
    )  # fmt: skip


def test_wide_loops_that_may_not_be_through_are_cut_again_by_the_fine_bit(shallow: Session) -> None:
    session = shallow
    grooves = session.derived.cuts(session.snapshot).grooves
    first = _plan(session, (), 0.02)
    assert first.next is not None
    assert first.then is not None
    assert first.next.kind is CutKind.CLEAR
    assert first.next.bit.name == MILL.name
    assert first.choices
    again = {run.groove for run in first.then.runs} & set(range(grooves.wide))
    assert again
    assert not again & grooves.fill  # nothing is joined by copper that was only to be taken away
    assert set(range(grooves.wide, len(grooves.lines))) <= {run.groove for run in first.then.runs}
    assert first.through < first.expected_totals.expected
    second = _plan(session, (first.next,), 0.02)
    assert second.next is not None
    assert second.then is None
    assert second.next.number == 2
    assert second.next.length == pytest.approx(first.then.length)


def test_a_deep_wide_cut_needs_no_second_one(deep: Session) -> None:
    grooves = deep.derived.cuts(deep.snapshot).grooves
    plan = _plan(deep, (), 0.002)
    assert plan.then is not None
    assert {run.groove for run in plan.then.runs} == set(range(grooves.wide, len(grooves.lines)))


def test_areas_are_cleared_and_nothing_else(session: Session) -> None:
    area = ClearArea(5.0, 5.0, 12.0, 10.0)
    session.change("An area", clearing=ClearSettings(what=Clearing.AREAS, areas=(area,)))
    grooves = session.derived.cuts(session.snapshot).grooves
    assert grooves.wide == 0
    fill = np.vstack([grooves.lines[k] for k in grooves.fill])
    assert (fill.min(axis=0) >= [5.0 - 1e-6, 5.0 - 1e-6]).all()
    assert (fill.max(axis=0) <= [17.0 + 1e-6, 15.0 + 1e-6]).all()


def test_copper_found_joined_across_a_wide_groove_has_its_loop_cut_again(deep: Session) -> None:
    snap = deep.snapshot
    copper, cuts = deep.derived.standing(snap), deep.derived.cuts(snap)
    far = next(one for one in neighbours(copper, 1.0) if one.gap > 0.7)
    again = joined_places(copper, cuts, [far.nets], [])
    assert again.area is None  # no narrow ground lies between them
    assert any(line < cuts.grooves.wide for line in again.grooves)
    beside = {net_of(name) for name in far.nets}
    assert all(beside & set(cuts.grooves.line_nets[line]) for line in again.grooves)
