"""A legend rehearsed on the bench's burn model, after the turn of a board with one side."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

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
