"""What is made first and what last, and what is never taken away."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path

import pytest
import shapely

from drypoint.bits.model import Speeds, VBit
from drypoint.board.model import Side
from drypoint.cuts.model import CutKind
from drypoint.session.commands import prepare
from drypoint.session.session import Session
from drypoint.session.work import WorkKind, all_work, later_work

HEAD = "%FSLAX46Y46*%\n%MOMM*%\n"
COPPER = (
    HEAD + "%TF.FileFunction,Copper,L1,Top*%\n%ADD10R,4X4*%\n%ADD11C,0.3*%\n%LPD*%\n"
    "%TO.N,A*%\nD10*\nX6000000Y6000000D03*\n%TO.N,B*%\nX14000000Y6000000D03*\n%TD*%\n"
    # an L drawn in the copper: text that belongs to no net
    "D11*\nX8000000Y15000000D02*\nX8000000Y12000000D01*\nX10000000Y12000000D01*\nM02*\n"
)
EDGE = (
    HEAD + "%TF.FileFunction,Profile,NP*%\n%ADD10C,0.1*%\nD10*\n"
    "X0Y0D02*\nX20000000Y0D01*\nX20000000Y20000000D01*\nX0Y20000000D01*\nX0Y0D01*\nM02*\n"
)
DRILL = (
    "M48\nMETRIC\nT1C1.0\nT2C2.2\n%\nG05\nT1\nX6.0Y6.0\nX14.0Y6.0\n"
    "T2\nG00X4.0Y16.0\nM15\nG01X4.0Y13.0\nM16\nM30\n"
)


@pytest.fixture
def job(tmp_path: Path):
    folder = tmp_path / "design"
    folder.mkdir()
    for name, text in (("top.gbr", COPPER), ("edge.gbr", EDGE), ("drill.drl", DRILL)):
        (folder / name).write_text(text)
    prepare([folder], tmp_path / "j.drypoint", side=Side.TOP)
    session = Session.open(tmp_path / "j.drypoint")
    yield session
    session.close()


def test_reference_marks_come_first_and_the_outline_last(job: Session) -> None:
    kinds = [item.kind for item in all_work(job.derived, job.snapshot)]
    assert kinds[0] is WorkKind.MARKS
    assert kinds[-1] is WorkKind.OUTLINE
    assert WorkKind.OUTLINE not in kinds[:-1]


def test_slots_are_cut_before_the_outline_with_the_same_mill(job: Session) -> None:
    cuts = job.derived.cuts(job.snapshot)
    slots = [cut for cut in cuts.holes if cut.kind is CutKind.SLOT]
    assert [cut.bit for cut in slots] == [cut.bit for cut in cuts.outline]
    names = [item.program.name for item in later_work(job.derived, job.snapshot)]
    assert "slot" in names[-2]
    assert "outline" in names[-1]


def test_text_in_the_copper_is_kept_as_an_island_of_its_own(job: Session) -> None:
    board, cuts = job.derived.board(job.snapshot), job.derived.cuts(job.snapshot)
    text = shapely.LineString([(8, 15), (8, 12), (10, 12)]).buffer(0.15)
    swept = shapely.union_all(
        [shapely.LineString(line).buffer(cuts.width / 2) for line in cuts.grooves.lines]
    )
    assert shapely.area(shapely.difference(text, swept)) > 0.97 * shapely.area(text)
    left = shapely.get_parts(shapely.difference(board.outline, swept))
    (holding,) = [piece for piece in left if piece.intersects(text.buffer(-0.05))]
    assert holding.area < 1.1 * text.area


def test_runout_widens_the_grooves_that_are_planned(job: Session) -> None:
    """w = t + r + 2 d tan(α/2): 0.03 mm more run-out, a groove wider by as much."""
    bits = job.settings.bits
    before = job.derived.cuts(job.snapshot).width
    true = VBit(bits.vbit.name, bits.vbit.tip, math.radians(30), Speeds(10000, 300, 100), 0.04)
    job.change("run-out", bits=replace(bits, vbit=true))
    assert job.derived.cuts(job.snapshot).width == pytest.approx(before + 0.03)


def test_nothing_reaches_the_bed_however_deep_is_asked(job: Session) -> None:
    job.change("deep", cuts=replace(job.settings.cuts, through=5.0))
    job.change("thin", blank=replace(job.settings.blank, backing=3.0))
    cuts, blank = job.derived.cuts(job.snapshot), job.settings.blank
    deepest = max(cut.depth for cut in (*cuts.holes, *cuts.outline))
    assert blank.thickness < deepest < blank.thickness + blank.backing
