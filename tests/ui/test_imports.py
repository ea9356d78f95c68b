"""Boards on the blank and ready-made programs in the window, by clicks and typing."""

from __future__ import annotations

import shutil
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QPushButton

import drypoint.ui.app as app_module
from drypoint.session.commands import prepare
from drypoint.session.planning import Planning
from drypoint.session.settings import ProgramUse, ZeroOfZ
from drypoint.ui.app import Application
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.parts.fields import Choice
from drypoint.ui.theme.theme import Theme

PATIENCE = 60_000
"""Longest wait for an answer, ms."""
_HOLES = "G21 G90\nT1 M6\nF60\nG0 X5 Y5 Z1\nG1 Z-1.8\nG0 Z1\nX15\nG1 Z-1.8\nG0 Z1\nM2\n"
_GROOVES = "G21 G90\nF200\nG0 X4 Y4 Z1\nG1 Z-.08\nX12\nY9\nG0 Z1\nM2\n"


@pytest.fixture
def application(
    light: Theme, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, planning: Planning
) -> Iterator[Application]:
    monkeypatch.setattr(app_module, "MACHINE_SIDE", "drypoint.ui.no_machine")
    made = Application(light, Remembered(tmp_path / "window.json"), planning=planning)
    made.bridge.recovery = tmp_path / "recovery"
    qtbot.addWidget(made.window)
    made.window.show()
    yield made
    made.window.close()
    made.close()
    left = [one.name for one in threading.enumerate() if one.name.startswith("drypoint")]
    assert set(left) <= {"drypoint-planning"}, "what serves all windows only"


@pytest.fixture
def programs_folder(tmp_path: Path) -> Path:
    folder = tmp_path / "programs"
    folder.mkdir()
    (folder / "holes.nc").write_text(_HOLES)
    (folder / "grooves.nc").write_text(_GROOVES)
    return folder


def opened(application: Application, job: Path, qtbot) -> None:
    assert application.design.documents.open(job)
    planned(application, qtbot)


def planned(application: Application, qtbot) -> None:
    planner = application.design.planner
    qtbot.waitUntil(lambda: planner.order is not None and not application.bridge.busy, timeout=PATIENCE)


def replanned(application: Application, qtbot, act) -> None:
    with qtbot.waitSignal(application.design.planner.settled, timeout=PATIENCE):
        act()
    planned(application, qtbot)


def type_in(field, text: str, qtbot) -> None:
    line = field.line_edit()
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)


def press(form, name: str, qtbot) -> None:
    (found,) = [one for one in form.findChildren(QPushButton) if one.accessibleName() == name]
    qtbot.mouseClick(found, Qt.MouseButton.LeftButton)


def choose(form, name: str, data: object, qtbot) -> None:
    """By keys, as a person would: Home, then down to the entry."""
    (box,) = [one for one in form.findChildren(Choice) if one.accessibleName() == name]
    for index in range(box.count()):
        if box.itemData(index) == data:
            box.setCurrentIndex(index)
            box.activated.emit(index)
            return
    raise AssertionError(f"no entry {data!r}")


def test_a_copy_is_placed_turned_and_taken_away(
    application: Application, hive_scale: Path, tmp_path: Path, qtbot
) -> None:
    prepare([hive_scale], tmp_path / "j")
    opened(application, tmp_path / "j.drypoint", qtbot)
    session = application.bridge.session
    assert session is not None
    application.window.choose_step(1)
    form = application.design.pages.imports.boards
    replanned(application, qtbot, lambda: press(form, "Another copy of board 1", qtbot))
    assert len(session.derived.board(session.snapshot).outlines) == 2
    replanned(application, qtbot, lambda: type_in(form.field(1, "turn"), "90", qtbot))
    replanned(application, qtbot, lambda: type_in(form.field(1, "y"), "7.5", qtbot))
    places = session.settings.copies.places
    assert (places[1].y, places[1].angle_deg) == (7.5, 90.0)
    assert session.job.undo_title() == "Place of a board"
    with qtbot.waitSignal(application.design.planner.trouble, timeout=PATIENCE) as told:
        type_in(form.field(1, "x"), "5", qtbot)
    assert "overlap" in told.args[0].what
    replanned(application, qtbot, application.window.commands["undo"].trigger)
    assert len(form._fields) == 2
    replanned(application, qtbot, lambda: press(form, "Remove board 2", qtbot))
    assert len(session.derived.board(session.snapshot).outlines) == 1


def test_another_board_is_added_and_removed(
    application: Application,
    hive_scale: Path,
    tmp_path: Path,
    qtbot,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    prepare([hive_scale], tmp_path / "j")
    twin = tmp_path / "twin"
    shutil.copytree(hive_scale, twin)
    opened(application, tmp_path / "j.drypoint", qtbot)
    session = application.bridge.session
    assert session is not None
    form = application.design.pages.imports.boards
    application.window.choose_step(1)
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(twin))
    qtbot.mouseClick(form.folder_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: len(form._fields) == 2, timeout=PATIENCE)
    planned(application, qtbot)
    assert list(session.derived.designs(session.snapshot)) == ["hive-scale", "twin"]
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path / "window.json"))
    with qtbot.waitSignal(application.bridge.failed, timeout=PATIENCE):
        qtbot.mouseClick(form.folder_button, Qt.MouseButton.LeftButton)
    assert len(session.snapshot.sources) == 14
    press(form, "Remove board 1", qtbot)
    qtbot.waitUntil(lambda: len(form._fields) == 1, timeout=PATIENCE)
    planned(application, qtbot)
    assert list(session.derived.designs(session.snapshot)) == ["twin"]


def test_programs_are_chosen_by_file_and_tool(
    application: Application, programs_folder: Path, tmp_path: Path, qtbot
) -> None:
    prepare([programs_folder], tmp_path / "j")
    opened(application, tmp_path / "j.drypoint", qtbot)
    session = application.bridge.session
    assert session is not None
    application.window.choose_step(3)
    form = application.design.pages.imports.programs
    assert form.isVisible()
    check = application.design.pages.cuts._facts["check"]
    assert "impossible" in check._value.text()
    bit = "Bit for tool 1 of holes.nc"
    replanned(application, qtbot, lambda: choose(form, bit, "Drill 1.0 mm", qtbot))
    programs = {one.name: one for one in session.derived.ready(session.snapshot)}
    assert programs["holes.nc"].usable
    use = "What grooves.nc is taken for"
    replanned(application, qtbot, lambda: choose(form, use, ProgramUse.OWN, qtbot))
    assert session.derived.cuts(session.snapshot).grooves.lines == ()
    replanned(application, qtbot, lambda: type_in(form.right, "2.5", qtbot))
    replanned(application, qtbot, lambda: choose(form, form.zero.accessibleName(), ZeroOfZ.BACKING, qtbot))
    chosen = session.settings.imported
    assert (chosen.x, chosen.zero) == (2.5, ZeroOfZ.BACKING)
    replanned(application, qtbot, application.window.commands["undo"].trigger)
    assert session.settings.imported.zero is ZeroOfZ.COPPER
    assert form.zero.currentData() == ZeroOfZ.COPPER
    assert not form.margin.isVisible()
    replanned(application, qtbot, form.cut_out.click)
    qtbot.waitUntil(form.margin.isVisible, timeout=PATIENCE)
    assert session.derived.cuts(session.snapshot).outline
    replanned(application, qtbot, lambda: type_in(form.margin, "3.5", qtbot))
    board = session.derived.board(session.snapshot)
    assert (board.width, board.height) == pytest.approx((11.0 + 7.0, 5.0 + 7.0))


def test_the_wizard_takes_programs_alone_and_several_boards(
    application: Application, programs_folder: Path, hive_scale: Path, tmp_path: Path, qtbot
) -> None:
    twin = tmp_path / "twin"
    shutil.copytree(hive_scale, twin)
    wizard = application.design.documents.new_job.start([programs_folder])
    qtbot.waitUntil(wizard.next_button.isEnabled, timeout=PATIENCE)
    assert (wizard.blank.values.width, wizard.blank.values.height) == (11.0 + 16.0, 5.0 + 16.0)
    wizard.files.set_paths([hive_scale, twin])
    # two demo boards of 70 mm beside each other with the usual gap, and the usual margin
    qtbot.waitUntil(lambda: wizard.blank.values.width == 70.0 + 4.0 + 70.0 + 16.0, timeout=PATIENCE)
    assert wizard.next_button.isEnabled()
    wizard.reject()
