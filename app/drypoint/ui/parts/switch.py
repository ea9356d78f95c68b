"""An on/off switch that also says which."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QWidget

from drypoint.ui.theme.theme import Theme


class Switch(QAbstractButton):
    """A sliding switch; Space turns it. A bar on the knob's side marks on, a ring off."""

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setCheckable(True)
        self.setAccessibleName(name)
        self.setFixedSize(46, 28)
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(46, 28)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        body = QRectF(4, 4, 38, 20)
        on, usable = self.isChecked(), self.isEnabled()
        edge = tokens.copper if on else tokens.edge
        painter.setPen(QPen(QColor(edge if usable else tokens.line), 1.4))
        painter.setBrush(QColor(tokens.copper if on and usable else tokens.panel))
        painter.drawRoundedRect(body, 10, 10)
        knob = QPointF(body.right() - 10 if on else body.left() + 10, body.center().y())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tokens.on_copper if on else (tokens.edge if usable else tokens.line)))
        painter.drawEllipse(knob, 6.5, 6.5)
        if on:
            painter.setPen(QPen(QColor(tokens.on_copper), 2.0))
            painter.drawLine(QPointF(body.left() + 11, 10), QPointF(body.left() + 11, 18))
        if self.hasFocus():
            painter.setPen(QPen(QColor(tokens.copper), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 13, 13)
        painter.end()
