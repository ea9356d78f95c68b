"""A legend rehearsed on the bench's burn model, after the turn of a board with one side."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from drypoint.board.model import Side
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.session.actions import find, measure
from drypoint.session.commands import prepare
from drypoint.session.legend import spot_error, spot_fit
from drypoint.session.rehearsal import rehearse
from drypoint.session.rehearsal_legend import LegendOutcome, _as_drilled, find_by_spot, put_in_head
from drypoint.session.rehearsal_stage import Stage
from drypoint.session.report import report
from drypoint.session.session import Session
from drypoint.session.station import connect, make_bench
from drypoint.session.work import marks_work


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


@pytest.fixture
def flat(tmp_path: Path) -> Iterator[Session]:
    """A board of one side without holes, its legend on that side."""
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
    yield session
    session.close()


def test_without_holes_the_marks_in_the_waste_are_found_by_the_spot(flat: Session, tmp_path: Path) -> None:
    found = rehearse(flat, tmp_path, seed=1, touches=12)
    assert not found.findings
    assert found.legend is not None
    assert found.legend.holes == 4
    assert found.legend.after_fit_mm < 0.05
    assert found.legend.expected_error_mm is not None
    assert 0.0 < found.legend.worst_error_mm < found.legend.expected_error_mm
    assert found.legend.on_pads == 0


def test_marks_lie_as_far_off_as_is_expected_of_a_wide_light_spot(flat: Session) -> None:
    """The head is fitted anew and the marks are found by its spot, again and again on several benches.

    Squares of the largest error at a corner over what is expected of the worst corner: about 1 in the mean,
    a little more as the largest of four is taken.
    """
    blank = replace(flat.settings.blank, margin=10.0)
    flat.change("Room", blank=blank, laser=replace(flat.settings.laser, head=(14.0, -6.0)))
    x0, y0, x1, y1 = flat.derived.board(flat.snapshot).outline.bounds
    corners = [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]
    squares, largest = [], []
    for seed in range(4):
        stage = with_marks(flat, seed)
        for _ in range(10):
            find.moved(flat, "another head")
            put_in_head(stage)
            find_by_spot(stage)
            snap = flat.snapshot
            fit = flat.derived.fit(snap)
            assert isinstance(fit, Fit)
            beam = spot_fit(flat.derived, snap).then(Rigid(0.0, stage.bench.body.spot))
            off = stage.bench.board_to_sheet(corners, beam) - _as_drilled(stage)(corners)
            expected = spot_error(flat.derived, snap)
            assert expected is not None
            squares.append((off**2).sum(axis=1).max() / expected**2)
            largest.append(float(np.hypot(*off.T).max()) <= 2.0 * expected)
    assert 0.7 < np.mean(squares) < 1.4
    assert np.mean(largest) >= 0.9


def with_marks(session: Session, seed: int) -> Stage:
    """A bench with the reference marks pricked, the board as it was laid."""
    bench = make_bench(session.derived.layout(session.snapshot), session.settings, seed, loose=(), slip=0.02)
    station = connect(bench.link, bench.operator, session.settings, bench=bench)
    stage = Stage(session, bench, station, np.random.default_rng((seed, 3)))
    measure.put_in(station, session.settings.bits.vbit)
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.end_contact(station)
    for item in marks_work(session.derived, session.snapshot):
        stage.run(item, Progress())
    return stage
