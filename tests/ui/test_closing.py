"""Closing the window over a machine at work, answers by keyboard, and what is in doubt."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QWidget

from drypoint.bench.bench import Bench
from drypoint.machine.operator import RequestKind
from drypoint.machine.state import Activity
from drypoint.progress import Progress
from drypoint.session.actions.run import to_resume
from drypoint.session.doubts import suspects
from drypoint.ui.design_side.paper import paper_facts
from drypoint.ui.machine_side.run_progress import RUNNING

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander, measure_flat


@pytest.fixture
def job(job: Path) -> Path:
    """The small board with its copper measured."""
    measure_flat(job)
    return job


def cutting(who: Bystander, bench: Bench) -> None:
    """Connected, touched, the first pass under way at twice its time."""
    who.connect()
    who.place()
    who.window.choose_step(7)
    who.desk.thread_.pace = 2.0
    who.click(who.side.running.page.start_button)
    who.wait(lambda: who.desk.state.activity is Activity.CUTTING)
    bench.clock.pace = 0.5  # so that it does not end before it was held, however slow the window is


def button(inside: QWidget, text: str) -> QPushButton:
    return next(one for one in inside.findChildren(QPushButton) if one.text() == text)


def test_closing_mid_run_holds_and_asks(who: Bystander, bench: Bench) -> None:
    cutting(who, bench)
    closing = who.side.closing
    who.window.close()
    assert who.window.isVisible()
    assert closing.dialog is not None
    who.wait(lambda: who.desk.state.activity is Activity.HELD)
    assert who.desk.thread_.running == RUNNING

    who.click(closing.dialog.stay_button)
    who.wait(lambda: closing.dialog is None)
    assert who.desk.state.activity is Activity.HELD, "it stays held until somebody goes on"
    who.click(who.window.strip.resume_button)
    who.wait(lambda: who.desk.state.activity is Activity.CUTTING)

    who.window.close()
    assert closing.dialog is not None
    who.wait(lambda: who.desk.state.activity is Activity.HELD)
    who.click(closing.dialog.go_on_button)
    who.wait(lambda: who.desk.state.activity is Activity.CUTTING)
    assert who.window.isVisible()

    who.window.close()
    assert closing.dialog is not None
    who.click(closing.dialog.stop_button)
    who.wait(lambda: not who.window.isVisible())
    assert not who.desk.busy
    assert not bench.body.turning
    broken = to_resume(who.session)
    assert broken is not None
    assert 0 < broken.executed < len(broken.lines)


def test_a_window_at_rest_closes_unasked(who: Bystander) -> None:
    who.connect()
    who.rest()
    who.window.close()
    assert not who.window.isVisible()
    assert who.side.closing.dialog is None


def test_requests_are_answered_by_keyboard(who: Bystander) -> None:
    who.connect()
    who.window.choose_step(4)
    who.click(who.side.touching.page.touch_button)
    who.asked(RequestKind.CHANGE_BIT)
    bar, answer = who.desk.bar, who.window.commands["answer"]
    who.window.canvas.canvas.setFocus()
    assert answer.isEnabled()
    answer.trigger()
    who.wait(lambda: who.window.focusWidget() is bar.done_button)
    who.qtbot.keyClick(bar.done_button, Qt.Key.Key_Return)
    who.asked(RequestKind.JOG_TO)
    field = who.side.touching.page.count.line_edit()
    field.setFocus()  # whoever types is not interrupted by the next request
    who.qtbot.mouseClick(bar.help_button, Qt.MouseButton.LeftButton)
    field.setFocus()
    who.asked(RequestKind.CLIP_OFF)
    assert who.window.focusWidget() is field
    who.click(bar.decline_button)
    who.rest()
    assert not answer.isEnabled()


def test_what_a_silent_fault_leaves_in_doubt_is_shown_and_cut_again(who: Bystander, bench: Bench) -> None:
    who.connect()
    who.place()
    who.run()
    page = who.side.running.page
    bench.body.break_bit(0.4)
    who.run()
    (doubt,) = suspects(who.session)
    assert doubt.pass_number == 1
    who.wait(lambda: page._suspects.count() == 1)
    assert not who.side.proving.page._doubt.isHidden()
    who.wait(lambda: len(who.window.canvas.canvas.content.suspect) == 1)
    report = paper_facts(who.session, Progress(), report=True)
    assert any(what == doubt.title and "DOUBT" in why for what, why in report.proof)

    who.click(button(page, "Cut it again"))
    who.wait(lambda: page._suspects.count() == 0)
    who.rest()
    following = who.side.running.following
    assert following is not None
    assert following.program.pass_number == 1, "the whole pass comes again"
    assert who.side.running.work is not None
    assert who.side.running.work.passes_done == ()
