"""A legend rehearsed on the bench's burn model, after the turn of a board with one side."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from drypoint.board.model import Side
from drypoint.session.commands import prepare
from drypoint.session.rehearsal import rehearse
from drypoint.session.rehearsal_legend import LegendOutcome
from drypoint.session.report import report
from drypoint.session.session import Session


@pytest.fixture
def bell(root: Path, tmp_path: Path) -> Session:
    """The two-sided example taken for a board of one side, its legend few and quick."""
    path = tmp_path / "bell.drypoint"
    prepare([root / "examples" / "frost-bell"], path, coating="black paint", declared_safe=True)
    session = Session.open(path)
    laser = replace(session.settings.laser, pitch=0.4, dwell=0.01, settle=0.01, head=(14.0, -6.0))
    session.change("Quick", laser=laser)
    return session


def test_every_pulse_lies_where_the_fit_puts_it_and_on_no_pad(bell: Session, tmp_path: Path) -> None:
    found = rehearse(bell, tmp_path, seed=5, touches=16)
    bell.close()
    assert not found.findings
    assert found.second_side is None
    legend = found.legend
    assert isinstance(legend, LegendOutcome)
    assert legend.made == legend.planned > 100
    assert legend.after_fit_mm < 0.05
    assert legend.holes == 3
    assert legend.expected_error_mm is not None
    assert 0.0 < legend.worst_error_mm < legend.expected_error_mm
    assert legend.on_pads == 0
    assert legend.nearest_pad_mm > 0.0
    assert legend.beam_seconds == pytest.approx(legend.planned_beam_seconds, rel=0.01)
    told = found.as_dict()
    assert told["legend"]["pads"]["marked"] == 0
    assert "Legend by laser:" in report("rehearse", told)


def layer(function: str, *body: str) -> str:
    head = f"%TF.FileFunction,{function}*%\n%FSLAX43Y43*%\n%MOMM*%\n%ADD10C,0.2*%\n%ADD11C,2*%\nG01*\n"
    return head + "\n".join((*body, "M02*", ""))


def test_without_holes_the_marks_in_the_waste_are_found_by_the_spot(tmp_path: Path) -> None:
    design = tmp_path / "flat"
    design.mkdir()
    edge = "D10* X100000Y50000D02* X120000Y50000D01* X120000Y60000D01* X100000Y60000D01* X100000Y50000D01*"
    files = {
        "copper.gbr": layer("Copper,L1,Top", "D11*", "X105000Y55000D03*", "X112000Y55000D03*"),
        "edge.gbr": layer("Profile,NP", *edge.split()),
        "legend.gbr": layer("Legend,Top", "D10*", "X103000Y58000D02*", "X112000Y58000D01*"),
    }
    for name, text in files.items():
        (design / name).write_text(text)
    path = tmp_path / "flat.drypoint"
    prepare([design], path, side=Side.TOP, coating="black paint", declared_safe=True)
    session = Session.open(path)
    found = rehearse(session, tmp_path, seed=1, touches=12)
    session.close()
    assert not found.findings
    assert found.legend is not None
    assert found.legend.holes == 4
    assert found.legend.after_fit_mm < 0.05
    assert found.legend.expected_error_mm is not None
    assert 0.0 < found.legend.worst_error_mm < found.legend.expected_error_mm
    assert found.legend.on_pads == 0
