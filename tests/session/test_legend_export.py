"""The legend as a file: where it is placed, what it says, and the beam's rules on its very text."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from drypoint.errors import PlanError
from drypoint.program.laser_check import check_beam
from drypoint.session.actions import turn
from drypoint.session.commands import export_job, prepare
from drypoint.session.legend import legend_program, legend_up
from drypoint.session.legend_export import exported_legend, legend_notes, legend_text
from drypoint.session.marks import legend_face
from drypoint.session.session import Session
from drypoint.session.settings import LaserSection

SAFE = LaserSection(coating="black paint", declared_safe=True)
LEGEND = """%TF.FileFunction,Legend,Top*%
%FSLAX43Y43*%
%MOMM*%
%ADD10C,0.2*%
D10*
X107000Y58000D02*
X113000Y58000D01*
M02*
"""


@pytest.fixture
def marked(small_design: Path, tmp_path: Path) -> Path:
    """The small board with one stroke of legend 6 mm long, for black paint."""
    (small_design / "small-legend-top.gbr").write_text(LEGEND)
    prepare([small_design], tmp_path / "marked", coating="black paint", declared_safe=True)
    return tmp_path / "marked.drypoint"


def code(text: str) -> list[str]:
    lines = text.splitlines()
    assert lines[-1] == "M2"
    return [line for line in lines[:-1] if not line.startswith("(")]


def test_export_writes_the_legend_with_its_cautions(marked: Path, tmp_path: Path) -> None:
    found = export_job(marked, tmp_path / "out")
    (entry,) = [one for one in found["files"] if one["bit"] == "laser"]
    text = Path(entry["path"]).read_text(encoding="ascii")
    assert max(map(len, text.splitlines())) < 80
    remarks = " ".join(line[1:-1] for line in text.splitlines() if line.startswith("("))
    assert "Eyewear for the wavelength" in remarks
    assert "local rules and qualified practice" in remarks
    beam = check_beam(code(text), scale=1000.0)
    assert len(beam.spots) > 100
    assert any("turned" in note for note in found["notes"])
    sheet = (tmp_path / "out" / "setup-sheet.html").read_text(encoding="utf-8")
    assert "Before laser light" in sheet
    assert "Legend on black paint" in sheet


def test_before_the_board_is_turned_the_legend_is_placed_where_it_will_be(marked: Path) -> None:
    session = Session.open(marked)
    snap = session.snapshot
    assert not legend_up(session.derived, snap)
    program = exported_legend(session.derived, snap)
    assert program is not None
    # the design's stroke runs from 7 to 13 mm of 20, 8 mm up; turned over it reads as drawn again
    place = session.derived.layout(snap).place.offset
    low, high = program.beam.spots.min(axis=0), program.beam.spots.max(axis=0)
    assert low == pytest.approx(np.array([7.0 - 0.1, 8.0 - 0.1]) + place, abs=0.08)
    assert high == pytest.approx(np.array([13.0 + 0.1, 8.0 + 0.1]) + place, abs=0.08)
    with pytest.raises(PlanError, match="looks up"):
        legend_program(session.derived, snap)
    session.close()


def test_a_legend_is_not_marked_on_the_wrong_side(session: Session) -> None:
    session.change("Laser", laser=SAFE)
    board = session.derived.board(session.snapshot)
    assert legend_face(board).value == "top"
    with pytest.raises(PlanError, match="bottom looks up"):
        legend_program(session.derived, session.snapshot)
    turn.turn_over(session, None, mill=False)
    assert legend_up(session.derived, session.snapshot)


@pytest.mark.parametrize(
    ("chosen", "said"),
    [
        (LaserSection(), ()),
        (LaserSection(coating="paint"), ("declares it safe",)),
        (LaserSection(bare=True), ("acknowledged",)),
    ],
)
def test_without_an_acknowledged_material_no_file_and_a_plain_reason(marked: Path, chosen, said) -> None:
    session = Session.open(marked)
    session.change("Laser", laser=chosen)
    assert exported_legend(session.derived, session.snapshot) is None
    notes = legend_notes(session.derived, session.snapshot)
    assert len(notes) == len(said)
    assert all(word in note for word, note in zip(said, notes, strict=True))
    session.close()


def test_marks_are_kept_while_only_power_changes(marked: Path) -> None:
    session = Session.open(marked)
    first = session.derived.legend(session.snapshot)
    session.change("Power", laser=replace(session.settings.laser, power=0.7, coating="other"))
    assert session.derived.legend(session.snapshot) is first
    session.change("Spot", laser=replace(session.settings.laser, spot=0.2))
    assert session.derived.legend(session.snapshot) is not first
    session.close()


def test_a_text_that_breaks_a_rule_is_not_written(marked: Path) -> None:
    session = Session.open(marked)
    program = exported_legend(session.derived, session.snapshot)
    assert program is not None
    legend_text(program, session.settings.laser)
    cut_short = replace(program, lines=program.lines[:-2])
    with pytest.raises(PlanError):
        legend_text(replace(cut_short, lines=(*cut_short.lines[:-1], "G1X1S300F100")), session.settings.laser)
    session.close()
