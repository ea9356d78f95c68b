"""Tab goes through a page as it is read: row by row, left to right, the buttons at the foot last.

Qt goes by the order in which widgets were made, and much of a page is made later than its foot.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtWidgets import QWidget

SAME_ROW = 10
"""Middles of two fields of one row lie no farther apart, px."""
PATIENCE = 100
"""After a change of the layout, ms: several come at once."""


class TabOrder(QObject):
    """Keeps the order of the parts of a page, one below the other."""

    def __init__(self, page: QWidget, parts: Sequence[QWidget]) -> None:
        super().__init__(page)
        self._parts = tuple(parts)
        self._known: list[QWidget] = []
        self._later = QTimer(self, singleShot=True, interval=PATIENCE)
        self._later.timeout.connect(self.arrange)
        for part in self._parts:
            part.installEventFilter(self)

    def stops(self) -> list[QWidget]:
        """Everything Tab can reach, as it is read."""
        return [stop for part in self._parts for stop in _as_read(part)]

    def arrange(self) -> None:
        """Put the stops in order, where they are not."""
        stops = self.stops()
        if stops != self._known:
            self._known = stops
            for before, after in pairwise(stops):
                QWidget.setTabOrder(before, after)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.LayoutRequest, QEvent.Type.Show):
            self._later.start()
        return super().eventFilter(watched, event)


def _as_read(part: QWidget) -> list[QWidget]:
    placed = []
    for widget in part.findChildren(QWidget):
        reached = widget.focusPolicy() & Qt.FocusPolicy.TabFocus and widget.focusProxy() is None
        if reached and widget.isVisibleTo(part):
            middle = widget.mapTo(part, widget.rect().center())
            placed.append((middle.y(), middle.x(), widget))
    placed.sort(key=lambda one: one[:2])
    rows: list[list[tuple[int, int, QWidget]]] = []
    for one in placed:
        if rows and one[0] - rows[-1][0][0] <= SAME_ROW:
            rows[-1].append(one)
        else:
            rows.append([one])
    return [widget for row in rows for _, _, widget in sorted(row, key=lambda one: one[1])]
