"""The design side of the window by clicks: wizard, fields, undo, files, paper, faults."""

from __future__ import annotations

import json
import shutil
import threading
import time
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QTimer, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtWidgets import QDialog, QFileDialog, QPlainTextEdit

import drypoint.ui.app as app_module
from drypoint.board.model import Role
from drypoint.errors import InputError
from drypoint.progress import Progress
from drypoint.session.commands import prepare
from drypoint.session.planning import Planning
from drypoint.session.session import Session
from drypoint.session.traveller import StepName, StepState
from drypoint.surface.touch import Touch, Touches
from drypoint.ui.app import Application
from drypoint.ui.canvas.content import View
from drypoint.ui.design_side.new_job import make_plain
from drypoint.ui.design_side.pictures import Pictures
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.design_side.translate import groove_width
from drypoint.ui.theme.theme import Theme

PATIENCE = 60_000
"""Longest wait for an answer, ms; a loaded machine is slow."""


COPPER = """%TF.FileFunction,Copper,L2,Bot*%
%FSLAX46Y46*%
%MOMM*%
%ADD10C,2.000000*%
%ADD11C,0.800000*%
%TO.N,IN*%
D10*
X5000000Y5000000D03*
X20000000Y5000000D03*
D11*
X5000000Y5000000D02*
X20000000Y5000000D01*
%TO.N,OUT*%
D10*
X5000000Y12000000D03*
X24000000Y12000000D03*
D11*
X5000000Y12000000D02*
X24000000Y12000000D01*
%TO.N,GND*%
D10*
X12000000Y16500000D03*
M02*
"""
OUTLINE = """%TF.FileFunction,Profile,NP*%
%FSLAX46Y46*%
%MOMM*%
%ADD10C,0.100000*%
D10*
X0Y0D02*
X30000000Y0D01*
X30000000Y20000000D01*
X0Y20000000D01*
X0Y0D01*
M02*
"""
HOLES = """M48
; #@! TF.FileFunction,Plated,1,2,PTH
METRIC
T1C0.8
%
T1
X5.0Y5.0
X20.0Y5.0
X5.0Y12.0
X24.0Y12.0
X12.0Y16.5
M30
"""


@pytest.fixture(scope="session")
def prepared_job(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A job of a board with three nets, quickly planned."""
    folder = tmp_path_factory.mktemp("job")
    design = folder / "lamp"
    design.mkdir()
    for name, text in (("lamp-copper.gbr", COPPER), ("lamp-outline.gbr", OUTLINE), ("lamp.drl", HOLES)):
        (design / name).write_text(text)
    prepare([design], folder / "lamp.drypoint")
    return folder / "lamp.drypoint"


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
def opened(application: Application, prepared_job: Path, tmp_path: Path, qtbot) -> Application:
    copy = tmp_path / "lamp.drypoint"
    shutil.copyfile(prepared_job, copy)
    assert application.design.documents.open(copy)
    planned(application, qtbot)
    return application


def planned(application: Application, qtbot) -> None:
    """Wait until everything is planned."""
    planner = application.design.planner
    qtbot.waitUntil(lambda: planner.order is not None and not application.bridge.busy, timeout=PATIENCE)


def replanned(application: Application, qtbot, act) -> None:
    """Do something, and wait until the plan that follows it stands."""
    with qtbot.waitSignal(application.design.planner.settled, timeout=PATIENCE):
        act()
    planned(application, qtbot)


def type_in(field, text: str, qtbot) -> None:
    line = field.line_edit()
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)


def states(application: Application) -> dict[StepName, StepState]:
    return {line.name: line.state for line in application.design.lines()}


def touch_copper(application: Application, setup: int = 1) -> None:
    x, y = (part.ravel() for part in np.meshgrid(np.linspace(3, 43, 7), np.linspace(3, 33, 6)))
    z = 0.02 * np.sin(x / 25) + 0.01 * np.cos(y / 18)
    found = tuple(
        Touch(a, b, c, c - 0.002) for a, b, c in zip(x.tolist(), y.tolist(), z.tolist(), strict=True)
    )
    session = application.bridge.session
    assert session is not None
    session.keep("touches", {"setup": setup, "touches": Touches(found)})


def drop(application: Application, *paths: Path) -> None:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    none = Qt.KeyboardModifier.NoModifier
    left = Qt.MouseButton.LeftButton
    application.window.dropEvent(QDropEvent(QPointF(5, 5), Qt.DropAction.CopyAction, data, left, none))


# new jobs


def test_wizard_by_clicks_to_a_planned_job(
    application: Application, hive_scale: Path, tmp_path: Path, qtbot, monkeypatch: pytest.MonkeyPatch
) -> None:
    target = tmp_path / "made here.drypoint"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(target), ""))
    application.window.commands["new"].trigger()
    wizard = application.design.documents.new_job.wizard
    assert wizard is not None
    wizard.files.set_paths([hive_scale])
    qtbot.waitUntil(wizard.next_button.isEnabled, timeout=PATIENCE)
    for page in range(5):
        assert wizard.page == page
        if page == 2:
            assert (wizard.blank.values.width, wizard.blank.values.height) == (86.0, 66.0)
            qtbot.mouseClick(wizard.blank.add_clamp, Qt.MouseButton.LeftButton)
            while wizard.blank.too_near() is not None:
                wizard.blank.note._hint.click()
            wizard.blank.move_clamp(1, -4.0, 0.0)
        qtbot.mouseClick(wizard.next_button, Qt.MouseButton.LeftButton)
    qtbot.mouseClick(wizard.next_button, Qt.MouseButton.LeftButton)
    planned(application, qtbot)
    session = application.bridge.session
    assert session is not None
    assert session.job.path == target
    assert session.settings.board.name == "hive-scale"
    assert len(session.settings.blank.clamps) == 1
    assert session.settings.blank.width == 0.0  # follows the board, since its size was not touched
    assert session.job.undo_title() == "Set up the job"
    found = states(application)
    for step in (StepName.BOARD, StepName.BLANK, StepName.BITS, StepName.CUTS):
        assert found[step] is StepState.DONE
    content = application.window.canvas.canvas.content
    assert content.board is not None
    assert len(content.clamps) == 1
    assert content.order is not None


def test_side_and_role_of_the_wizard_are_read_anew(application: Application, hive_scale: Path, qtbot) -> None:
    drop(application, hive_scale)
    wizard = application.design.documents.new_job.wizard
    assert wizard is not None
    qtbot.waitUntil(wizard.next_button.isEnabled, timeout=PATIENCE)
    before = wizard._board
    wizard.side.sides.buttons()[0].click()
    qtbot.waitUntil(lambda: wizard._board is not before, timeout=PATIENCE)
    assert wizard._board is not None
    wizard.reject()
    assert application.design.documents.new_job.wizard is None
    assert application.bridge.session is None


@pytest.mark.parametrize("content", [b"", b"\x00\xff\x10" * 99, b"%FSLAX46Y46*%\nD03*\nM02*\n"])
def test_broken_file_is_told_in_the_wizard(
    application: Application, tmp_path: Path, qtbot, content: bytes
) -> None:
    broken = tmp_path / "board-B_Cu.gbr"
    broken.write_bytes(content)
    drop(application, broken)
    wizard = application.design.documents.new_job.wizard
    assert wizard is not None
    qtbot.waitUntil(wizard.files.note.isVisible, timeout=PATIENCE)
    assert not wizard.next_button.isEnabled()
    assert wizard.files.note.accessibleName().strip()
    wizard.reject()
    assert application.window.isVisible()


# job files


def test_broken_job_is_refused_and_the_open_one_stays(opened: Application, tmp_path: Path) -> None:
    session = opened.bridge.session
    bad = tmp_path / "bad.drypoint"
    bad.write_bytes(b"this is no job")
    drop(opened, bad)
    assert opened.bridge.session is session
    assert "not a job file" in opened.window.strip._message.text()
    drop(opened, tmp_path / "gone.drypoint")
    assert "no such job" in opened.window.strip._message.text()


def test_dropped_job_is_opened_and_remembered(
    application: Application, prepared_job: Path, tmp_path: Path, qtbot
) -> None:
    copy = tmp_path / "dropped.drypoint"
    shutil.copyfile(prepared_job, copy)
    drop(application, copy)
    planned(application, qtbot)
    assert application.window.windowTitle().startswith("dropped.drypoint")
    names = [action.data() for action in application.window.commands.recent.actions()]
    assert names == [str(copy.resolve())]
    assert Remembered(tmp_path / "window.json").recent == (str(copy.resolve()),)


def test_another_job_takes_the_place_of_the_first(
    opened: Application, prepared_job: Path, tmp_path, qtbot
) -> None:
    other = tmp_path / "other.drypoint"
    shutil.copyfile(prepared_job, other)
    first = opened.bridge.session
    assert first is not None
    opened.design.pages.cuts.edited.emit("bite", 0.02)  # planning is under way when the job is closed
    assert opened.design.documents.open(other)
    planned(opened, qtbot)
    assert opened.bridge.session is not first
    with Session.open(tmp_path / "lamp.drypoint").job.transaction() as db:  # nothing holds the first any more
        assert db.execute("SELECT count(*) FROM source").fetchone()[0] > 0


def test_copy_is_a_whole_job(opened: Application, tmp_path: Path, qtbot) -> None:
    with qtbot.waitSignal(opened.bridge.computed, check_params_cb=lambda name, _: name == "save a copy"):
        opened.design.documents.save_copy(tmp_path / "copy")
    copy = Session.open(tmp_path / "copy.drypoint")
    assert opened.bridge.session is not None
    assert copy.snapshot.source_key == opened.bridge.session.snapshot.source_key
    copy.close()


def test_copy_over_the_open_job_itself_is_refused(opened: Application, qtbot) -> None:
    session = opened.bridge.session
    assert session is not None
    with qtbot.waitSignal(opened.bridge.failed, check_params_cb=lambda name, _: name == "save a copy"):
        opened.design.documents.save_copy(session.job.path)
    session.change("Name", board=replace(session.settings.board, name="still kept"))
    again = Session.open(session.job.path)
    assert again.settings.board.name == "still kept"
    again.close()


def test_a_job_is_not_lost_to_a_new_one_that_fails(tmp_path: Path) -> None:
    kept = Session.create(tmp_path / "kept")
    kept.change("Name", board=replace(kept.settings.board, name="kept"))
    kept.close()
    (tmp_path / "bad.gbr").write_bytes(b"")
    with pytest.raises(InputError, match="empty"):
        make_plain(tmp_path / "kept", tmp_path / "bad.gbr", Progress())
    again = Session.open(tmp_path / "kept.drypoint")
    assert again.settings.board.name == "kept"
    again.close()


def test_arrangement_is_remembered(opened: Application, tmp_path: Path) -> None:
    opened.window.resize(1500, 950)
    opened.window.close()
    kept = json.loads((tmp_path / "window.json").read_text())
    assert kept["arrangement"]["size"] == [1500, 950]
    (tmp_path / "window.json").write_text("{ damaged")
    assert Remembered(tmp_path / "window.json").recent == ()


# settings


def test_field_is_one_action_that_undo_takes_back(opened: Application, qtbot) -> None:
    session, commands = opened.bridge.session, opened.window.commands
    assert session is not None
    cuts = opened.design.pages.cuts
    opened.window.choose_step(3)
    before = opened.design.planner.cuts
    assert before is not None
    replanned(opened, qtbot, lambda: type_in(cuts.fields["width"], "0.2", qtbot))
    changed = opened.design.planner.cuts
    assert changed is not None
    assert changed.cuts.width == pytest.approx(0.2, abs=1e-3)
    assert commands["undo"].text().endswith("Groove width")
    replanned(opened, qtbot, commands["undo"].trigger)
    again = opened.design.planner.cuts
    assert again is not None
    assert again.cuts.width == pytest.approx(before.cuts.width)
    assert cuts.fields["width"].value == pytest.approx(before.cuts.width)
    assert commands["redo"].isEnabled()
    replanned(opened, qtbot, commands["redo"].trigger)
    assert groove_width(session.settings.cuts, session.settings.bits.vbit) == pytest.approx(0.2, abs=1e-3)
    assert cuts.fields["width"].value == pytest.approx(0.2, abs=1e-3)


def test_blank_too_small_is_told_on_its_page_and_in_the_strip(opened: Application, qtbot) -> None:
    form = opened.design.pages.blank.form
    opened.window.choose_step(1)
    with qtbot.waitSignal(opened.design.planner.trouble, timeout=PATIENCE):
        type_in(form.width_field, "25", qtbot)
    qtbot.waitUntil(lambda: states(opened)[StepName.BLANK] is StepState.ERROR, timeout=PATIENCE)
    assert opened.design.pages.blank._trouble.isVisible()
    assert "smaller than the board" in opened.window.strip._message.text()
    assert opened.window.canvas.canvas.content.board is not None  # the board stays in sight
    replanned(opened, qtbot, opened.window.commands["undo"].trigger)
    assert states(opened)[StepName.BLANK] is StepState.DONE
    assert not opened.design.pages.blank._trouble.isVisible()


def test_clamp_in_the_way_of_the_outline_is_told_on_the_page_of_cuts(opened: Application, qtbot) -> None:
    form = opened.design.pages.blank.form
    opened.window.choose_step(1)
    with qtbot.waitSignal(opened.design.planner.trouble, timeout=PATIENCE):
        qtbot.mouseClick(form.add_clamp, Qt.MouseButton.LeftButton)
        form.move_clamp(1, 6.0, 0.0)
    qtbot.waitUntil(lambda: states(opened)[StepName.CUTS] is StepState.ERROR, timeout=PATIENCE)
    opened.window.choose_step(3)
    assert opened.design.pages.cuts._trouble.isVisible()
    assert opened.design.planner.cuts is None


def test_dragging_is_one_action(opened: Application, qtbot) -> None:
    session = opened.bridge.session
    assert session is not None
    opened.window.choose_step(1)
    canvas = opened.window.canvas.canvas
    seen = canvas.content.blank
    assert seen is not None
    changes = []
    session.subscribe(changes.append)
    for _ in range(10):
        canvas.board_dragged.emit(0.2, 0.1)
    moved = canvas.content.blank
    assert moved is not None
    assert moved[0] == pytest.approx(seen[0] - 2.0)
    assert changes == []
    qtbot.waitUntil(lambda: bool(changes), timeout=PATIENCE)
    assert changes == ["settings"]
    assert session.settings.blank.board_x == pytest.approx(10.0)
    assert not session.settings.blank.centred
    opened.window.commands["undo"].trigger()
    assert session.settings.blank.centred


def test_role_chosen_by_hand_is_obeyed(opened: Application, qtbot) -> None:
    replanned(
        opened,
        qtbot,
        lambda: opened.design.pages.board.role_changed.emit("lamp.drl", Role.OTHER),
    )
    board = opened.design.planner.board
    assert board is not None
    assert {file.name: file.role for file in board.board.files}["lamp.drl"] is Role.OTHER
    assert not board.board.holes


def test_place_of_a_finding_is_shown(opened: Application) -> None:
    opened.design.pages.cuts.place_chosen.emit((12.0, 14.0))
    seen = opened.window.canvas.canvas.seen
    assert abs(seen.x - 12.0) < 2.0
    assert abs(seen.y - 14.0) < 2.0


# measured


def test_touches_bring_heat_reach_and_passes(opened: Application, qtbot) -> None:
    planner, window = opened.design.planner, opened.window
    touch_copper(opened)
    qtbot.waitUntil(lambda: planner.passes is not None and not opened.bridge.busy, timeout=PATIENCE)
    assert planner.touches is not None
    assert planner.touches.heat is not None
    found = states(opened)
    assert found[StepName.SURFACE] is StepState.DONE
    assert found[StepName.PASSES] is StepState.READY
    window.choose_step(5)
    assert window.canvas.canvas.view is View.REACH
    assert window.canvas.canvas.content.reach is not None
    assert window.canvas.canvas.content.current is not None
    session = opened.bridge.session
    assert session is not None
    with qtbot.waitSignal(planner.settled, timeout=PATIENCE):
        session.keep("setup", {"note": "turned over"})
    assert states(opened)[StepName.SURFACE] is StepState.STALE
    assert states(opened)[StepName.REFERENCE] is StepState.STALE
    assert not planner.errors
    assert planner.passes is None
    assert window.canvas.canvas.content.stale


def test_pass_without_touches_sends_to_the_surface(opened: Application) -> None:
    opened.window.choose_step(5)
    opened.design.pages.passes.plan_button.click()
    assert opened.window.pages.currentIndex() == 4


# paper


def test_export_and_sheets_are_written(opened: Application, tmp_path: Path, qtbot) -> None:
    names: list[str] = []
    opened.bridge.computed.connect(lambda name, _: names.append(name))
    opened.design.paper.export_to(tmp_path / "out")
    qtbot.waitUntil(lambda: "export" in names, timeout=PATIENCE)
    assert list((tmp_path / "out").glob("*.nc")) or list((tmp_path / "out").glob("*grooves*"))
    assert (tmp_path / "out" / "setup-sheet.html").is_file()
    for name, report in (("sheet.pdf", False), ("report.pdf", True), ("sheet.html", False)):
        names.clear()
        opened.design.paper.write_sheet(tmp_path / name, report=report)
        qtbot.waitUntil(lambda: "setup sheet" in names, timeout=PATIENCE)
    assert (tmp_path / "sheet.pdf").read_bytes().startswith(b"%PDF")
    assert (tmp_path / "sheet.pdf").stat().st_size > 20_000
    assert "Report: lamp" not in (tmp_path / "sheet.html").read_text()


def test_sheet_into_a_folder_that_is_none_is_an_error(opened: Application, tmp_path: Path, qtbot) -> None:
    (tmp_path / "file").write_text("")
    with qtbot.waitSignal(opened.bridge.failed, timeout=PATIENCE):
        opened.design.paper.write_sheet(tmp_path / "file" / "sheet.pdf", report=False)
    assert "could not be written" in opened.window.strip._message.text()


# the bridge


def test_fault_of_the_program_holds_keeps_a_copy_and_is_told(opened: Application, qtbot) -> None:
    held: list[str] = []
    opened.bridge.hold_on_bug(lambda: held.append("held"))

    def wrong(_progress: object) -> None:
        raise ZeroDivisionError("on purpose")

    with qtbot.waitSignal(opened.bridge.bug, timeout=PATIENCE):
        opened.bridge.ask("wrong", wrong)
    assert held == ["held"]
    (kept,) = opened.bridge.recovery.glob("*.drypoint")
    copy = Session.open(kept)
    assert copy.snapshot.sources
    copy.close()
    (dialog,) = [one for one in opened.window.findChildren(QDialog) if one.isVisible()]
    assert "on purpose" in dialog.findChild(QPlainTextEdit).toPlainText()
    dialog.accept()


def test_only_the_newest_answer_of_a_name_comes(application: Application, qtbot) -> None:
    bridge, answers, gate = application.bridge, [], threading.Event()
    bridge.computed.connect(lambda name, value: answers.append((name, value)))
    bridge.ask("gate", lambda _: gate.wait(30))
    bridge.ask("sum", lambda _: 1)
    bridge.ask("sum", lambda _: 2)
    bridge.ask("other", lambda _: 3)
    bridge.cancel("other")
    gate.set()
    qtbot.waitUntil(lambda: not bridge.busy, timeout=PATIENCE)
    assert answers == [("gate", True), ("sum", 2)]


def test_answers_for_a_closed_job_are_dropped(opened: Application, qtbot) -> None:
    bridge, answers, gate = opened.bridge, [], threading.Event()
    bridge.computed.connect(lambda name, _: answers.append(name))
    bridge.ask("gate", lambda _: gate.wait(30))
    bridge.close_job()
    gate.set()
    bridge.ask("after", lambda _: None)
    qtbot.waitUntil(lambda: "after" in answers, timeout=PATIENCE)
    assert answers == ["after"]
    assert opened.window.canvas.canvas.content.board is None


def test_nothing_is_computed_in_the_thread_of_the_window(
    application: Application, tmp_path: Path, qtbot, monkeypatch: pytest.MonkeyPatch
) -> None:
    threads: set[str] = set()
    for name in ("board", "cuts", "touches", "order"):
        whole = getattr(Pictures, name)

        def noted(self, snap, progress, whole=whole):
            threads.add(threading.current_thread().name)
            return whole(self, snap, progress)

        monkeypatch.setattr(Pictures, name, noted)
    beats = QTimer(interval=5)
    gaps: list[float] = []
    last = [time.perf_counter()]

    def beat() -> None:
        now = time.perf_counter()
        gaps.append(now - last[0])
        last[0] = now

    beats.timeout.connect(beat)
    beats.start()
    application.open_demo(tmp_path)
    planned(application, qtbot)
    beats.stop()
    assert len(threads) == 1
    assert next(iter(threads)).startswith("drypoint-work")
    # on a shared machine a gap is mostly waiting for a processor: told, not judged
    print(f"longest gap between two beats of the window while the demo is planned: {1e3 * max(gaps):.0f} ms")


# kept without being asked


def test_clamp_by_keys_is_taken_back_in_order(opened: Application, qtbot) -> None:
    session, window = opened.bridge.session, opened.window
    assert session is not None
    window.choose_step(1)
    form = opened.design.pages.blank.form
    before = session.settings.blank.clamps
    form.add_clamp.setFocus()
    qtbot.keyClick(form.add_clamp, Qt.Key.Key_Space)
    type_in(form.clamp_fields.left, "-2.5", qtbot)
    type_in(form.clamp_fields.wide, "14", qtbot)
    (wide,) = session.settings.blank.clamps[len(before) :]
    assert (wide.x, wide.width) == pytest.approx((-2.5, 14.0))
    qtbot.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert session.settings.blank.clamps[-1].width == pytest.approx(9.0)
    assert session.settings.blank.clamps[-1].x == pytest.approx(-2.5)
    qtbot.waitUntil(lambda: form.clamp_fields.wide.value == pytest.approx(9.0), timeout=PATIENCE)
    window.commands["undo"].trigger()
    window.commands["undo"].trigger()
    assert session.settings.blank.clamps == before
    qtbot.waitUntil(lambda: len(form.values.clamps) == len(before), timeout=PATIENCE)


def test_what_was_typed_is_there_after_the_program_was_killed(
    opened: Application, tmp_path: Path, qtbot
) -> None:
    session = opened.bridge.session
    assert session is not None
    opened.window.choose_step(3)
    type_in(opened.design.pages.cuts.fields["tabs"], "7", qtbot)
    left = tmp_path / "left.drypoint"
    for end in ("", "-wal"):  # the disk as a kill would leave it: nothing is closed or written out
        found = Path(f"{session.job.path}{end}")
        if found.exists():
            shutil.copyfile(found, f"{left}{end}")
    assert opened.design.documents.open(left)
    again = opened.bridge.session
    assert again is not None
    assert again.job.path == left
    assert again.settings.cuts.tabs == 7
    assert opened.design.pages.cuts.fields["tabs"].value == 7
    assert opened.window.commands["undo"].text().endswith("Tabs")
