"""In either language nothing on a page is wider than the page, and every area wears the theme."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QAbstractButton, QApplication, QScrollArea, QWidget

from drypoint.ui.language.speech import Language, Speech
from drypoint.ui.window import PAGE, PAGE_WIDE

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander, measure_flat

SCROLL = 10
"""Width of a scroll bar, px."""


@pytest.fixture(params=[Language.ENGLISH, Language.GERMAN], ids=str)
def language(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[Language]:
    speech, before = Speech(qapp), QLocale()
    yield speech.speak(request.param)
    speech.speak(Language.ENGLISH)
    QLocale.setDefault(before)


def _widest(root: QWidget, limit: int) -> list[tuple[int, str, str]]:
    """The words that ask for more than there is."""
    found = [each for each in root.findChildren(QWidget) if each.isVisibleTo(root)]
    wide = [(_least(each), type(each).__name__, _said(each)) for each in found]
    return sorted((one for one in wide if one[0] > limit), reverse=True)


def _least(widget: QWidget) -> int:
    return max(widget.minimumSizeHint().width(), widget.minimumWidth())


def _said(widget: QWidget) -> str:
    return widget.text() if isinstance(widget, QAbstractButton) else widget.accessibleName()


@pytest.mark.usefixtures("language")
def test_no_page_is_wider_than_its_place(opened: Callable[[], Bystander], job: Path) -> None:
    measure_flat(job)
    who = opened()
    for number in range(9):
        who.window.choose_step(number)
        page = who.window.pages.widget(number)
        room = (PAGE_WIDE if number == 8 else PAGE) - SCROLL
        for area in page.findChildren(QScrollArea):
            inside = area.widget()
            if area.parentWidget() is page and inside is not None:
                wide = inside.minimumSizeHint().width()
                assert wide <= room, (number, wide, _widest(inside, room - 32))


@pytest.mark.usefixtures("language")
def test_settings_of_the_second_side_fit_too(who: Bystander) -> None:
    board = who.app.design.pages.board
    who.window.choose_step(0)
    rows = [board.turning.itemAt(n).widget() for n in range(board.turning.count())]
    assert rows
    for row in rows:
        row.show()
    area = board.findChild(QScrollArea)
    assert area.widget().minimumSizeHint().width() <= PAGE - SCROLL, _widest(area.widget(), PAGE - 42)


def test_everything_with_a_look_wears_the_theme(who: Bystander) -> None:
    who.wait(lambda: who.app.theme.wardrobe.is_done)
    bare = []
    for widget in who.window.findChildren(QWidget):
        at: QWidget | None = widget if widget.property("look") else None
        while at is not None and not at.styleSheet():
            at = at.parentWidget()
        if widget.property("look") and at is None:
            bare.append((type(widget).__name__, widget.property("look")))
    assert not bare


@pytest.mark.usefixtures("language")
def test_no_words_of_a_button_are_cut_off(opened: Callable[[], Bystander], job: Path) -> None:
    measure_flat(job)
    who = opened()
    for size in ((1024, 700), (1280, 800)):
        who.window.resize(*size)
        for number in range(9):
            who.window.choose_step(number)
            page = who.window.pages.widget(number)
            who.rest()
            shown = [each for each in page.findChildren(QAbstractButton) if each.isVisible() and each.text()]
            cut = [each.text() for each in shown if each.sizeHint().width() > _room(each, page)]
            assert shown
            assert not cut, (size, number, cut)


def _room(button: QAbstractButton, page: QWidget) -> int:
    """Width of a button that is in sight."""
    left = button.mapTo(page, button.rect().topLeft()).x()
    return min(button.width(), page.width() - left)


@pytest.mark.usefixtures("language")
def test_the_sheet_of_the_machine_is_no_wider_than_it_is_shown(who: Bystander) -> None:
    sheet = who.app.design.machine.open()
    assert sheet is not None
    areas = [area for area in sheet.findChildren(QScrollArea) if area.isVisible()]
    wide = [(area.widget().minimumSizeHint().width(), area.viewport().width()) for area in areas]
    sheet.reject()
    assert wide
    assert all(least <= room for least, room in wide)
