"""The pages of the steps, one shown at a time, with a line at the edge where they slide over the canvas."""

from __future__ import annotations

from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QStackedWidget

from drypoint.ui.theme.theme import Theme


class PageStack(QStackedWidget):
    """Pages; the right margin, where there is one, is the line."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        theme.changed.connect(self.update)

    def paintEvent(self, _event: QPaintEvent) -> None:
        line = self.contentsMargins().right()
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.colour("panel"))
        painter.fillRect(self.width() - line, 0, line, self.height(), self._theme.colour("edge"))
        painter.end()
