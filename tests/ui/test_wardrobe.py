"""The style sheet goes on area by area, what is seen first; nothing is painted half dressed."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QMenu, QStackedWidget, QVBoxLayout, QWidget
from shiboken6 import delete

from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.wardrobe import Wardrobe
from drypoint.ui.window import MainWindow

OLD, NEW = "QLabel { color: #112233; }", "QLabel { color: #445566; }"


class Book:
    """A stack of pages of which the first is seen."""

    def __init__(self, wardrobe: Wardrobe, count: int) -> None:
        self.window = QWidget()
        self.stack = QStackedWidget()
        QVBoxLayout(self.window).addWidget(self.stack)
        self.pages = [QLabel(str(number)) for number in range(count)]
        for page in self.pages:
            wardrobe.dress(page)
            self.stack.addWidget(page)
        self.window.show()

    def worn(self) -> list[bool]:
        return [page.styleSheet() == NEW for page in self.pages]


@pytest.fixture
def wardrobe(qapp: QApplication) -> Iterator[Wardrobe]:
    made = Wardrobe(qapp)
    made.change(OLD)
    yield made
    delete(made)


@pytest.fixture
def book(wardrobe: Wardrobe, qtbot) -> Book:
    made = Book(wardrobe, 4)
    qtbot.addWidget(made.window)
    qtbot.waitUntil(lambda: wardrobe.is_done)
    return made


def colour(label: QLabel) -> QColor:
    return label.palette().color(label.foregroundRole())


def test_one_area_in_a_turn_and_the_seen_one_first(wardrobe: Wardrobe, book: Book, qtbot) -> None:
    book.stack.setCurrentIndex(2)
    wardrobe.change(NEW)
    assert not any(book.worn())
    wardrobe._turn()
    assert book.worn() == [False, False, True, False]
    assert colour(book.pages[2]) == QColor("#445566")
    wardrobe._turn()  # lets the window paint
    for done in (1, 2, 3, 4):
        assert sum(book.worn()) == done
        wardrobe._turn()
    qtbot.waitUntil(lambda: wardrobe.is_done)
    assert all(book.worn())


def test_window_is_not_painted_half_dressed(wardrobe: Wardrobe, book: Book, qtbot) -> None:
    wardrobe.change(NEW)
    assert not book.window.updatesEnabled()
    wardrobe._turn()
    wardrobe._turn()
    assert book.window.updatesEnabled()
    assert book.worn() == [True, False, False, False]
    qtbot.waitUntil(lambda: wardrobe.is_done)


def test_page_that_is_turned_to_gets_its_sheet_at_once(wardrobe: Wardrobe, book: Book) -> None:
    wardrobe.change(NEW)
    wardrobe.dress(book.pages[3])
    assert book.worn() == [False, False, False, True]


def test_hidden_pages_are_prepared(wardrobe: Wardrobe, book: Book) -> None:
    assert not book.pages[1].isVisible()
    assert colour(book.pages[1]) == QColor("#112233")


def test_areas_that_are_gone_are_forgotten(wardrobe: Wardrobe, book: Book, qtbot) -> None:
    wardrobe.change(NEW)
    delete(book.pages[0])
    delete(book.pages[1])
    qtbot.waitUntil(lambda: wardrobe.is_done)
    assert book.window.updatesEnabled()
    assert [page.styleSheet() == NEW for page in book.pages[2:]] == [True, True]


def test_dialogs_and_menus_of_the_window_are_dressed(light: Theme, qtbot) -> None:
    window = MainWindow(light)
    qtbot.addWidget(window)
    dialog, menu = QDialog(window), QMenu("More", window)
    title = QLabel("Title", dialog)
    give_look(title, "page")
    for each in (dialog, menu):
        each.show()
        assert each.styleSheet()
    assert title.font().pixelSize() == 20
    light.choose(True)
    qtbot.waitUntil(lambda: light.wardrobe.is_done)
    assert colour(title) == light.colour("ink")
    menu.close()
