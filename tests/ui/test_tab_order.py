"""Every action of every page is reached with Tab, in the order in which the page is read."""

from __future__ import annotations

import sys
from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from drypoint.ui.parts.page import Page
from drypoint.ui.parts.tab_order import SAME_ROW, TabOrder

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander, measure_flat

ACTIVE = (QAbstractButton, QAbstractItemView, QComboBox, QLineEdit)


def _chain(page: QWidget) -> list[QWidget]:
    """What Tab reaches in a page, from wherever the page is entered."""
    found, at = [], page.nextInFocusChain()
    while at is not page:
        if page.isAncestorOf(at) and at.isVisible() and at.focusPolicy() & Qt.FocusPolicy.TabFocus:
            found.append(at)
        at = at.nextInFocusChain()
    return found


def test_every_page_is_gone_through_as_it_is_read(opened: Callable[[], Bystander], job: Path) -> None:
    measure_flat(job)
    who = opened()
    for number in range(9):
        who.window.choose_step(number)
        who.rest()
        page = who.window.pages.currentWidget()
        assert isinstance(page, Page)
        page.tab_order.arrange()
        chain, foot = _chain(page), page.foot.parentWidget()
        assert foot is not None
        missing = [
            one.accessibleName() or type(one).__name__
            for one in page.findChildren(QWidget)
            if isinstance(one, ACTIVE) and one.isVisible() and one.isEnabled() and one not in chain
        ]
        assert not missing, (number, missing)
        places = [(foot.isAncestorOf(one), one.mapTo(page, one.rect().center()).y()) for one in chain]
        for before, after in pairwise(places):
            assert before[0] <= after[0], number
            assert before[0] < after[0] or before[1] <= after[1] + SAME_ROW, number


@pytest.fixture
def small(qtbot) -> QWidget:
    made = QWidget()
    qtbot.addWidget(made)
    return made


def test_what_is_added_later_comes_where_it_stands(small: QWidget, qtbot) -> None:
    column, row = QVBoxLayout(small), QHBoxLayout()
    last, right, left, first = (QPushButton(text) for text in ("last", "right", "left", "first"))
    column.addLayout(row)
    column.addWidget(last)
    row.addWidget(right)
    row.insertWidget(0, left)
    order = TabOrder(small, (small,))
    small.show()
    column.insertWidget(0, first)
    wanted = [first, left, right, last]
    qtbot.waitUntil(lambda: order._known == wanted)
    first.setFocus()
    for stop in wanted[1:]:
        small.focusNextChild()
        assert small.focusWidget() is stop
