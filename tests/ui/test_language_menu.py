"""The language is chosen in the menu; the window opens anew with the job, never while a machine is there."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QMenu

from drypoint.ui.language.speech import Language

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander


def test_the_choice_is_in_a_menu_that_can_be_reached(who: Bystander) -> None:
    action = who.window.commands["language_de"]
    menus = [menu for menu in who.window.menuBar().findChildren(QMenu) if action in menu.actions()]
    assert menus
    assert menus[0].menuAction().isVisible()
    checked = [one for one in Language if who.window.commands[f"language_{one.value}"].isChecked()]
    assert checked == [who.app.remembered.language]


def test_another_language_closes_the_window_to_open_it_anew(who: Bystander) -> None:
    who.window.commands[f"language_{Language.GERMAN.value}"].trigger()
    assert who.app.remembered.language is Language.GERMAN
    assert who.app.again
    assert not who.window.isVisible()


def test_while_a_machine_is_connected_the_window_stays(opened: Callable[[], Bystander]) -> None:
    who = opened()
    who.connect()
    who.wait(lambda: who.window.strip.state.value == "at rest")
    who.window.commands[f"language_{Language.GERMAN.value}"].trigger()
    assert who.app.remembered.language is Language.GERMAN
    assert not who.app.again
    assert who.window.isVisible()
    who.wait(lambda: "language" in who.window.strip._message.toolTip())
    who.rest()
