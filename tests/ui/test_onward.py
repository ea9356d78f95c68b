"""What to do next is on the page: a way to the demo, a button to the next step, the machine asked for."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtWidgets import QPushButton

from drypoint.session.planning import Planning
from drypoint.ui.app import Application
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.theme.theme import Theme

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander, measure_flat

PATIENCE = 60_000


def _filled(who: Bystander) -> list[str]:
    page = who.window.pages.currentWidget()
    return [
        b.text() for b in page.findChildren(QPushButton) if b.isVisible() and b.property("look") == "primary"
    ]


def test_every_page_that_is_done_leads_to_the_first_that_is_not(opened: Callable[[], Bystander]) -> None:
    who = opened()
    for number in range(4):
        who.window.choose_step(number)
        who.rest()
        assert _filled(who) == ["Next: Surface"]
        who.click(who.window.pages.currentWidget().onward_button)
        assert who.window.pages.currentIndex() == 4
    assert _filled(who) == ["Touch the copper"]


def test_a_touched_surface_leads_on_to_the_passes(opened: Callable[[], Bystander], job: Path) -> None:
    measure_flat(job)
    who = opened()
    who.window.choose_step(4)
    who.wait(lambda: _filled(who) == ["Next: Passes"])
    who.click(who.window.pages.currentWidget().onward_button)
    assert who.window.pages.currentIndex() == 5


def test_touching_without_a_machine_offers_one(who: Bystander) -> None:
    who.window.choose_step(4)
    who.click(who.side.touching.page.touch_button)
    dialog = who.side.connecting._dialog
    assert dialog is not None
    assert dialog.isVisible()
    dialog.reject()


def test_the_first_page_offers_the_demo(
    light: Theme, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, planning: Planning
) -> None:
    monkeypatch.setattr("drypoint.ui.app.usual_folder", lambda: tmp_path)
    application = Application(light, Remembered(tmp_path / "window.json"), planning=planning)
    try:
        application.window.show()
        board = application.design.pages.board
        assert board.demo_button.isVisible()
        board.demo_button.click()
        qtbot.waitUntil(lambda: application.bridge.session is not None, timeout=PATIENCE)
        qtbot.waitUntil(lambda: not application.bridge.busy, timeout=PATIENCE)
        assert [path.name for path in tmp_path.glob("*.drypoint")] == ["hive-scale.drypoint"]
        assert not board.demo_button.isVisible()
    finally:
        application.close()
        application.window.close()
        application.window.deleteLater()
