"""Jobs of nothing but ready-made programs: zero on the backing, no engraving, no outline, seen from below."""

from __future__ import annotations

import shutil
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from shapely import Point

from drypoint.bits.model import Drill, EndMill
from drypoint.board.model import Side
from drypoint.errors import InputError
from drypoint.program.check import check_lines
from drypoint.session.commands import prepare
from drypoint.session.programs import as_turned, programs
from drypoint.session.rehearsal import Rehearsal, rehearse
from drypoint.session.session import Session
from drypoint.session.settings import ZeroOfZ

THICKNESS = 1.55
_TRACK = "G0 X2 Y2 Z5\nG1 Z{z}\nX22\nY12\nX2\nY2\nG0 Z5\nX6 Y5\nG1 Z{z}\nX18\nG0 Z5\n"
_ENGRAVE = "G21 G90\nF200\n" + _TRACK + "M2\n"
_DRILL = "G21 G90\nT1 M6\nF60\nG0 X5 Y5 Z5\nG1 Z{z}\nG0 Z5\nX19 Y9\nG1 Z{z}\nG0 Z5\nM2\n"
_L = [(0, 0), (40, 0), (40, 12), (16, 12), (16, 30), (0, 30)]
_HOLES_ABOVE = [(4, 4), (36, 8), (6, 26)]


def folder_of(tmp_path: Path, **files: str) -> Path:
    folder = tmp_path / "programs"
    folder.mkdir()
    for name, text in files.items():
        (folder / name.replace("_", ".")).write_text(text)
    return folder


def opened(tmp_path: Path, folder: Path, **options: object) -> Session:
    prepare([folder], tmp_path / "j.drypoint", **options)
    return Session.open(tmp_path / "j.drypoint")


def rehearsed(tmp_path: Path, folder: Path, **options: object) -> Rehearsal:
    session = opened(tmp_path, folder, **options)
    try:
        return rehearse(session, tmp_path, seed=1, touches=12)
    finally:
        session.close()


def warnings(session: Session) -> str:
    return " ".join(one.what for one in session.derived.cuts(session.snapshot).findings)


def test_zero_on_the_backing_is_asked_for_and_then_all_is_cut(tmp_path):
    """Before it was refused, as if nothing were cut."""
    folder = folder_of(
        tmp_path, engrave_nc=_ENGRAVE.format(z=THICKNESS - 0.08), drill_nc=_DRILL.format(z=-0.3)
    )
    session = opened(tmp_path, folder, program_bits=["drill.nc=1.0"])
    try:
        before = session.derived.board(session.snapshot).outline
        assert "as if that were on the backing" in warnings(session)
        imported = replace(session.settings.imported, zero=ZeroOfZ.BACKING)
        session.change("Zero", imported=imported)
        assert "as if that" not in warnings(session)
        assert session.derived.board(session.snapshot).outline.equals(before), "the frame hangs on no choice"
        cuts = session.derived.cuts(session.snapshot)
        drawn = np.vstack(cuts.grooves.lines)
        assert np.ptp(drawn, axis=0) == pytest.approx([20.0, 10.0])
        (drilled,) = [one for one in programs(session) if isinstance(one.bit, Drill)]
        assert drilled.moves.end[:, 2].min() == pytest.approx(-THICKNESS - 0.3, abs=1e-6)
        for program in programs(session):
            check_lines(program.lines, session.settings.machine.clearance)
    finally:
        session.close()


def test_zero_on_the_copper_chosen_as_backing_is_warned_of(tmp_path):
    folder = folder_of(tmp_path, engrave_nc=_ENGRAVE.format(z=-0.08))
    session = opened(tmp_path, folder, program_zero=ZeroOfZ.BACKING)
    try:
        assert "as if that were on the copper" in warnings(session)
    finally:
        session.close()


def test_programs_that_engrave_nothing_are_rehearsed(tmp_path):
    folder = folder_of(tmp_path, drill_nc=_DRILL.format(z=-1.8))
    found = rehearsed(tmp_path, folder, program_bits=["drill.nc=1.0"], cut_out=3.0)
    assert found.passes == ()
    names = [program.name for program in found.programs]
    assert not any("grooves" in name for name in names)
    assert sum("ready" in name for name in names) == 1
    assert "outline" in names[-1]
    assert found.touches >= 10


def test_the_rectangle_is_cut_out_round_what_the_programs_cut(tmp_path):
    folder = folder_of(tmp_path, engrave_nc=_ENGRAVE.format(z=-0.08))
    session = opened(tmp_path, folder)
    try:
        plain = session.derived.board(session.snapshot)
        assert (plain.width, plain.height) == pytest.approx((20.0, 10.0))
        assert session.derived.cuts(session.snapshot).outline == ()
        session.change("Cut out", edge=replace(session.settings.edge, cut=True, margin=2.5))
        board = session.derived.board(session.snapshot)
        assert (board.width, board.height) == pytest.approx((25.0, 15.0))
        cuts = session.derived.cuts(session.snapshot)
        assert cuts.outline
        grooves = np.vstack(cuts.grooves.lines)
        assert grooves.min(axis=0) == pytest.approx([2.5, 2.5])
        assert grooves.max(axis=0) == pytest.approx([22.5, 12.5])
        milled = np.vstack([cut.path for cut in cuts.outline])
        radius = session.settings.bits.mill.diameter / 2
        assert milled.min(axis=0) == pytest.approx([-radius, -radius], abs=1e-6)
        assert board.to_design.apply([(2.5, 2.5)])[0] == pytest.approx([2.0, 2.0])
        last = programs(session)[-1]
        assert isinstance(last.bit, EndMill)
        session.undo()
        assert session.derived.board(session.snapshot).width == pytest.approx(20.0)
    finally:
        session.close()


def test_a_margin_that_makes_no_sense_is_refused(tmp_path):
    folder = folder_of(tmp_path, engrave_nc=_ENGRAVE.format(z=-0.08))
    with pytest.raises(InputError, match="no sensible value"):
        prepare([folder], tmp_path / "j.drypoint", cut_out=-1.0)


def gerber_outline(corners):
    ways = "".join(f"X{x}000Y{y}000D01*\n" for x, y in [*corners[1:], corners[0]])
    x, y = corners[0]
    return (
        "%TF.FileFunction,Profile,NP*%\n%FSLAX43Y43*%\n%MOMM*%\n%ADD10C,0.1*%\nG01*\nD10*\n"
        f"X{x}000Y{y}000D02*\n{ways}M02*\n"
    )


def drill_file(holes):
    return "M48\nMETRIC\nT1C1.0\n%\nT1\n" + "".join(f"X{x}.0Y{y}.0\n" for x, y in holes) + "M30\n"


def drilling(places):
    steps = "".join(f"G0 X{x} Y{y} Z5\nG1 Z-1.8\nG0 Z5\n" for x, y in places)
    return f"G21 G90\nT1 M6\nF60\n{steps}M2\n"


@pytest.mark.parametrize("side", [Side.TOP, Side.BOTTOM])
def test_an_outline_drawn_from_above_meets_programs_as_the_machine_sees_them(tmp_path, side):
    """The L and its holes are drawn from above; seen from below x runs the other way, and programs say so."""
    seen = _HOLES_ABOVE if side is Side.TOP else [(40 - x, y) for x, y in _HOLES_ABOVE]
    folder = folder_of(
        tmp_path, edge_gbr=gerber_outline(_L), holes_drl=drill_file(_HOLES_ABOVE), drill_nc=drilling(seen)
    )
    session = opened(tmp_path, folder, side=side)
    try:
        snap = session.snapshot
        board = session.derived.board(snap)
        assert board.net_source == "programs"
        (one,) = session.derived.ready(snap)
        (tool,) = one.tools
        assert tool.bit is not None, "its places are those of the holes, so the drill is known"
        placed = one.place.apply(np.vstack([path.path for path in tool.paths]))
        holes = np.array(sorted((hole.x, hole.y) for hole in board.holes))
        assert np.array(sorted(map(tuple, placed))) == pytest.approx(holes)
        inside = (2.0, 28.0) if side is Side.TOP else (38.0, 28.0)
        outside = (38.0, 28.0) if side is Side.TOP else (2.0, 28.0)
        assert board.outline.contains(Point(inside))
        assert not board.outline.contains(Point(outside))
    finally:
        session.close()


def test_programs_in_the_coordinates_of_the_design_are_mirrored_with_it(tmp_path):
    """The design lies away from zero, so its own coordinates are told from the machine's."""
    away = [(x + 100, y + 50) for x, y in _L]
    holes = [(x + 100, y + 50) for x, y in _HOLES_ABOVE]
    folder = folder_of(
        tmp_path, edge_gbr=gerber_outline(away), holes_drl=drill_file(holes), drill_nc=drilling(holes)
    )
    session = opened(tmp_path, folder, side=Side.BOTTOM)
    try:
        (one,) = session.derived.ready(session.snapshot)
        assert "design files" in one.why
        assert one.place.apply([(104, 54)])[0] == pytest.approx([36.0, 4.0])
        assert one.usable
    finally:
        session.close()


def test_nothing_is_run_again_from_the_other_side(tmp_path, root):
    folder = tmp_path / "bell"
    shutil.copytree(root / "examples" / "frost-bell", folder)
    (folder / "extra.nc").write_text(drilling([(5, 5), (10, 5)]))
    session = opened(tmp_path, folder, both_sides=True, program_bits=["extra.nc=1.0"])
    try:
        over = as_turned(session.snapshot)
        assert len(session.derived.ready(session.snapshot)) == 1
        assert session.derived.ready(over) == ()
        assert session.derived.cuts(over).grooves.lines
        assert "while the first side looks up" in warnings(session)
        names = [program.name for program in programs(session)]
        assert [name for name in names if "ready" in name] == ["1-bottom-61-ready-made-tool-1"]
    finally:
        session.close()
