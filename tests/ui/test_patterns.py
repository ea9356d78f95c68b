"""The V-bit's test pattern from the window: its corner, its picture, its run with a stop, what it shows."""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtWidgets import QApplication

from drypoint.bench.bench import Bench
from drypoint.bench.imperfect import Faults
from drypoint.job.journal import runs
from drypoint.session.actions.pattern_run import NAME, TOUCHES
from drypoint.session.corner import Corner
from drypoint.session.plans import taught
from drypoint.session.session import Session
from drypoint.ui.canvas.content import Layer
from drypoint.ui.design_side.coupon_sheet import CouponSheet
from drypoint.ui.parts.glyph import Mark

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander


@pytest.fixture
def job(job: Path) -> Path:
    """The small board on a blank with room for patterns."""
    session = Session.open(job)
    session.change("Room", blank=replace(session.settings.blank, margin=12.0))
    session.close()
    return job


def open_sheet(who: Bystander) -> CouponSheet:
    who.window.choose_step(2)
    who.click(who.app.design.pages.coupon.read_button)
    sheet = who.app.design.pages.coupon_reading.sheet
    assert sheet.isVisible()
    who.rest()
    return sheet


def first_task(who: Bystander) -> tuple[str, Mark, str]:
    """The first line of the list on the Run page."""
    first = who.side.running.page._listed[0]
    return first.what, first.mark, first.value


def planned(who: Bystander) -> np.ndarray:
    """Middle of the pattern as planned, as the canvas shows it."""
    trial = who.window.canvas.canvas.content.trials[-1]
    assert not trial.begun
    return np.vstack(trial.lines).mean(axis=0)


def test_the_corner_is_chosen_by_keys_and_on_the_canvas_and_is_shown_there(who: Bystander) -> None:
    panel = who.window.canvas
    sheet = open_sheet(who)
    assert panel.layers[Layer.TRIALS].isChecked()
    x0, y0, x1, y1 = panel.canvas.content.blank
    middle = np.array([(x0 + x1) / 2, (y0 + y1) / 2])
    assert (planned(who) < middle).all()
    sheet.corner.setFocus()
    who.qtbot.keyClick(sheet.corner, Qt.Key.Key_End)
    assert who.session.settings.coupons.pattern is Corner.UPPER_RIGHT
    who.wait(lambda: bool((planned(who) > middle).all()))
    assert who.app.design.pages.coupon.corner.corner is Corner.UPPER_RIGHT

    at = panel.canvas.seen.spot(x1 - 1.0, y0 + 1.0)
    spot = QPoint(round(at[0]), round(at[1]))
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, spot, panel.canvas.mapToGlobal(spot))
    QApplication.sendEvent(panel.canvas, event)
    menu = who.side.pausing.menu
    assert menu is not None
    (action,) = [one for one in menu.actions() if "lower right" in one.text()]
    action.trigger()
    menu.close()
    assert who.session.settings.coupons.pattern is Corner.LOWER_RIGHT
    who.wait(lambda: planned(who)[0] > middle[0] and planned(who)[1] < middle[1])
    assert sheet.corner.corner is Corner.LOWER_RIGHT
    who.window.commands["undo"].trigger()
    assert who.session.settings.coupons.pattern is Corner.UPPER_RIGHT
    who.rest()

    assert "test pattern as planned" in panel.canvas.accessibleDescription()
    shown = panel.canvas.grab().toImage()
    panel.layers[Layer.TRIALS].trigger()
    assert "test pattern" not in panel.canvas.accessibleDescription()
    assert panel.canvas.grab().toImage() != shown


def test_where_there_is_no_room_the_sheet_says_why(who: Bystander) -> None:
    who.session.change("Tight", blank=replace(who.session.settings.blank, margin=5.0))
    who.rest()
    who.connect()
    sheet = open_sheet(who)
    assert not sheet.run_button.isEnabled()
    assert "widest strip" in sheet.place_note._what.text()


def test_run_stopped_resumed_read_and_used(who: Bystander, bench: Bench) -> None:
    bench.body.faults = replace(Faults(), tip=0.03)
    before = who.session.settings.bits.vbit
    who.window.commands["pattern"].trigger()
    sheet = who.app.design.pages.coupon_reading.sheet
    assert sheet.isVisible()
    assert not sheet.run_button.isEnabled(), "no machine is connected"
    who.connect()
    who.desk.operator.shown = 0.0
    who.desk.bar.automatic.setChecked(True)
    who.desk.thread_.pace = 40.0
    who.click(sheet.run_button)
    strip, running = who.window.strip, who.side.running
    who.wait(lambda: strip.state.value == "cutting")
    who.wait(lambda: running.progress.newest is not None and running.progress.newest.executed > 30)
    assert first_task(who) == ("Test pattern", Mark.READY, "under way")
    who.window.commands["stop"].trigger()
    who.rest()
    assert who.session.snapshot.records[TOUCHES]
    assert who.session.snapshot.records["trial cut"]
    sheet.hide()
    who.wait(lambda: running.work is not None and running.work.broken is not None)
    who.wait(lambda: first_task(who) == ("Test pattern", Mark.STALE, "broken off"))
    who.desk.thread_.pace = None
    who.window.choose_step(7)
    who.click(running.resume_button)
    who.rest()
    who.wait(lambda: first_task(who) == ("Test pattern", Mark.DONE, "done"))
    assert [one.finished for one in runs(who.session.job)] == [False, True]
    assert who.session.snapshot.records["done"][-1].data["program"] == NAME
    assert sheet.isVisible(), "what it shows is asked for once it is cut"
    assert not bench.mishaps
    begun = [one for one in who.window.canvas.canvas.content.trials if one.begun]
    assert len(begun) == 1

    who.click(sheet.look_button)
    who.rest()
    assert sheet.read.widths
    assert len(sheet.read.squares) == len(sheet.squares)
    who.click(sheet.use_button)
    who.rest()
    after = who.session.settings.bits.vbit
    assert after.tip + after.runout > before.tip + before.runout + 0.02
    assert taught(who.session.snapshot) is not None
    sheet.hide()
