"""The dialog of a rehearsal tells of the second side and of the legend where a job has them."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtWidgets import QLabel
from shapely import Point

from drypoint.board.model import Side
from drypoint.cuts.model import Flaw, IslandCheck
from drypoint.session.rehearsal import Rehearsal
from drypoint.session.rehearsal_legend import LegendOutcome
from drypoint.session.rehearsal_second import SecondSideOutcome
from drypoint.session.rehearsal_stage import PassOutcome
from drypoint.ui.machine_side.rehearsing import RehearsalDialog

CLEAN = IslandCheck(8, 8, (), (), ())
PASS = PassOutcome(1, 0.08, 330.0, 0.999, 0.9985)
SECOND = SecondSideOutcome(
    side=Side.TOP,
    touches=44,
    rms_um=6.2,
    interval90=0.91,
    passes=(replace(PASS, length_mm=287.0),),
    holes=3,
    residual_mm=0.03,
    expected_error_mm=0.152,
    actual_error_mm=0.061,
    worst_error_mm=0.07,
    compared=38,
    within=1.0,
    check=CLEAN,
    islands=8,
    carved=Point(0, 0),
)
LEGEND = LegendOutcome(1622, 1622, 3, 0.31, 0.015, 0.047, 0.058, 0, 0.311, 32.44, 32.44, 241.0)
FOUND = Rehearsal(
    touches=60,
    rms_um=7.1,
    interval90=0.9,
    give=(),
    passes=(PASS,),
    holes=4,
    residual_mm=0.03,
    worst_error_mm=0.05,
    check=CLEAN,
    lines=100,
    resumed=0,
    seconds=1600.0,
    carved=Point(0, 0),
    programs=(),
    islands=8,
    findings=(),
)


@pytest.fixture
def dialog(qtbot, light, who) -> RehearsalDialog:
    made = RehearsalDialog(light, who.window.commands, who.window)
    qtbot.addWidget(made)
    return made


def texts(dialog: RehearsalDialog) -> str:
    return " | ".join(label.text() for label in dialog.findChildren(QLabel) if not label.isHidden())


def test_one_side_without_a_legend_says_nothing_of_either(dialog: RehearsalDialog) -> None:
    dialog.show_outcome(FOUND)
    told = texts(dialog)
    assert "330 mm long" in told
    assert "Second side" not in told
    assert "Legend" not in told


def test_second_side_and_legend_are_told_with_their_figures(dialog: RehearsalDialog) -> None:
    dialog.show_outcome(replace(FOUND, second_side=SECOND, legend=LEGEND))
    told = texts(dialog)
    for needed in (
        "Second side, 44 touches",
        "287 mm long",
        "0.061 mm; at most 0.152 mm expected",
        "Islands / nets of the second side",
        "Legend by laser, 1622 marks",
        "0 on pads or holes, nearest 0.31 mm away",
        "0.047 mm; at most 0.310 mm expected",
        "0:32, planned 0:32",
    ):
        assert needed in told, told


def test_faults_of_the_second_side_and_what_went_wrong_are_shown(dialog: RehearsalDialog) -> None:
    short = Flaw(("V+", "GND"), (1.0, 2.0), "V+ and GND are still joined.")
    check = replace(CLEAN, pieces=7, shorts=(short,))
    found = replace(
        FOUND, second_side=replace(SECOND, check=check), findings=("a rapid move in the copper",) * 3
    )
    dialog.show_outcome(found)
    told = texts(dialog)
    assert "7 / 8" in told
    assert "V+ and GND are still joined." in told
    assert told.count("a rapid move in the copper") == 1
