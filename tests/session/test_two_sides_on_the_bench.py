"""Drill on one side, turn the board over, find it again by those holes: all on the bench."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from drypoint.cuts.model import CutKind
from drypoint.geometry.rigid import Rigid
from drypoint.job.journal import JobJournal
from drypoint.machine.procedures.running import run_program
from drypoint.program.place import place_cuts
from drypoint.reference.fit import Fit
from drypoint.reference.worth import choose_holes
from drypoint.session.actions import find, measure, turn
from drypoint.session.station import connect, make_bench
from drypoint.session.two_sides import seen_from
from drypoint.session.work import preset_of, program_settings


@pytest.mark.parametrize("mill", [True, False])
def test_the_second_side_is_found_by_the_drilled_holes(session, mill):
    snap = session.snapshot
    bench = make_bench(session.derived.layout(snap), session.settings, 3, loose=())
    station = connect(bench.link, bench.operator, session.settings, bench=bench)
    first = session.derived.board(snap)
    drilled_ones = [c for c in session.derived.cuts(snap).holes if c.kind is CutKind.HOLE]
    bits = [c.bit for c in drilled_ones]
    same = [c for c in drilled_ones if c.bit == max(bits, key=bits.count)]
    spots = np.vstack([c.path for c in same])
    cuts = [same[k] for k in choose_holes(spots, spots)]
    measure.put_in(station, cuts[0].bit)
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.end_contact(station)
    before = session.derived.fit(snap)
    shared = program_settings(session.settings, preset_of(session.settings))
    for program in place_cuts(cuts, before, None, shared):
        journal = JobJournal(session.job, program.title, program.lines, {"setup": 1})
        run_program(station.place, program, journal, check_first=False)
    drilled = bench.board_to_sheet(np.vstack([cut.path for cut in cuts]), before)

    bench.operator.reclamped_by = Rigid(0.006, (0.4, -0.3))
    turn.turn_over(session, station, mill=mill)
    assert bench.sheet.clamping.turned
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.end_contact(station)
    width = first.width
    near = find.likely(session)
    for number, cut in enumerate(cuts):
        at = cut.path[0] if not mill else np.array([width - cut.path[0][0], cut.path[0][1]])
        mark = type(cut)(cut.kind, cut.bit, at[None, :], label=f"H{number}")
        x, y = near.apply([at])[0]
        find.touch_hole(session, station, mark, (float(x), float(y)))

    snap = session.snapshot
    fit = session.derived.fit(snap)
    assert isinstance(fit, Fit)
    assert fit.mirror is not mill
    assert fit.chance > 1e-3
    found = bench.board_to_sheet(fit.design, fit)
    assert np.hypot(*(found - drilled).T).max() < 0.12
    places = np.array([(h.x, h.y) for h in session.derived.board(snap).holes])
    on_first = np.array([(h.x, h.y) for h in session.derived.board(seen_from(snap, snap.face(1))).holes])
    lie = bench.board_to_sheet(places, fit)
    # where the first side's set-up would have drilled them: rigid, by the three that were drilled
    base = np.array([cut.path[0] for cut in cuts])
    turned_in = np.linalg.lstsq(np.column_stack((base, np.ones(3))), drilled, rcond=None)[0]
    should = np.column_stack((on_first, np.ones(len(on_first)))) @ turned_in
    assert np.hypot(*(lie - should).T).max() < 0.2
    told = turn.expected_registration(session)
    assert told.overall() < 0.2
    station.close()


@pytest.mark.parametrize("both", [True, False])
def test_the_blank_of_a_board_of_two_sides_carries_copper_on_its_back(session, both):
    session.change("Both sides or one", board=replace(session.settings.board, both=both))
    bench = make_bench(session.derived.layout(session.snapshot), session.settings, 3)
    thickness = session.settings.blank.copper
    assert bench.sheet.up.thickness == thickness
    bench.turn_over()
    assert bench.sheet.up.thickness == (thickness if both else 0.0)
