"""Qt's bindings must count references to None: one build lost one per call that returns nothing.

On CPython before 3.12, where None is mortal, a loss of that kind ends the whole process after a while
("none_dealloc"), so it is looked for here and not met in the middle of a run.
"""

from __future__ import annotations

import sys
from collections.abc import Callable

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath, QPolygonF, QTransform
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

CALLS = 1000
SLACK = 100
"""What else comes and goes in a thousand calls; the loss looked for is ten times that."""


def _lost(call: Callable[[], object]) -> int:
    """References to None lost in a thousand calls."""
    call()  # whatever is made once is made here
    before = sys.getrefcount(None)
    for _ in range(CALLS):
        call()
    return before - sys.getrefcount(None)


def test_the_counting_sees_a_loss() -> None:
    """The measure itself: a thousand references kept are seen, where None is counted at all."""
    kept: list[None] = []

    def keep() -> None:
        kept.append(None)

    found = -_lost(keep)
    if sys.version_info >= (3, 12):
        assert found == 0  # PEP 683: None is immortal, its count stands still
    else:
        assert found == pytest.approx(CALLS, abs=SLACK)


def test_calls_that_return_nothing_lose_no_reference(qtbot: QtBot) -> None:
    path = QPainterPath()
    polygon = QPolygonF()
    transform = QTransform()
    widget = QWidget()
    qtbot.addWidget(widget)
    calls: dict[str, Callable[[], object]] = {
        "QPainterPath.moveTo": lambda: path.moveTo(1.0, 2.0),
        "QPainterPath.lineTo": lambda: path.lineTo(QPointF(3.0, 4.0)),
        "QPolygonF.append": lambda: polygon.append(QPointF(1.0, 2.0)),
        "QTransform.reset": transform.reset,
        "QWidget.update": widget.update,
        "QWidget.setToolTip": lambda: widget.setToolTip("x"),
    }
    lost = {name: count for name, call in calls.items() if abs(count := _lost(call)) > SLACK}
    assert not lost
