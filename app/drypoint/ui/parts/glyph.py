"""State glyphs: told apart by shape, never by colour alone, and always beside a word."""

from __future__ import annotations

import math
from enum import Enum

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.tokens import Tokens


class Mark(Enum):
    """State of a step, a pass, a hole or an island."""

    TO_DO = "to do"
    READY = "ready"
    DONE = "done"
    STALE = "stale"
    DOUBT = "doubt"
    ERROR = "error"

    def word(self) -> str:
        """The word that stands beside the glyph."""
        return {
            Mark.TO_DO: QCoreApplication.translate("Mark", "to do"),
            Mark.READY: QCoreApplication.translate("Mark", "ready"),
            Mark.DONE: QCoreApplication.translate("Mark", "done"),
            Mark.STALE: QCoreApplication.translate("Mark", "stale"),
            Mark.DOUBT: QCoreApplication.translate("Mark", "doubt"),
            Mark.ERROR: QCoreApplication.translate("Mark", "error"),
        }[self]


def word_colour(mark: Mark, tokens: Tokens) -> str:
    """The colour of the word beside a glyph."""
    return {
        Mark.READY: tokens.copper,
        Mark.STALE: tokens.caution,
        Mark.DOUBT: tokens.caution,
        Mark.ERROR: tokens.error,
    }.get(mark, tokens.ink2)


def paint_mark(painter: QPainter, mark: Mark, tokens: Tokens, middle: QPointF, radius: float = 7.5) -> None:
    """Paint a glyph about a middle."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(middle)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    _PAINTERS[mark](painter, tokens, radius)
    painter.restore()


def _to_do(painter: QPainter, tokens: Tokens, r: float) -> None:
    painter.setPen(QPen(QColor(tokens.edge), 1.6))
    painter.drawEllipse(QPointF(), r - 0.8, r - 0.8)


def _ready(painter: QPainter, tokens: Tokens, r: float) -> None:
    painter.setPen(QPen(QColor(tokens.copper), 2.0))
    painter.drawEllipse(QPointF(), r - 1.0, r - 1.0)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(tokens.copper))
    painter.drawEllipse(QPointF(), r * 0.42, r * 0.42)


def _done(painter: QPainter, tokens: Tokens, r: float) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(tokens.pressed))
    painter.drawEllipse(QPointF(), r, r)
    tick = QPen(QColor(tokens.on_pressed), 1.9)
    tick.setCapStyle(Qt.PenCapStyle.RoundCap)
    tick.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(tick)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolyline(
        QPolygonF([QPointF(-0.45 * r, 0.02 * r), QPointF(-0.1 * r, 0.38 * r), QPointF(0.48 * r, -0.36 * r)])
    )


def _stale(painter: QPainter, tokens: Tokens, r: float) -> None:
    ring = QPen(QColor(tokens.caution), 2.0)
    part = 2 * math.pi * (r - 1.0) / 8 / 2.0
    ring.setDashPattern([part * 1.15, part * 0.85])
    ring.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(ring)
    painter.drawEllipse(QPointF(), r - 1.0, r - 1.0)
    painter.setPen(QPen(QColor(tokens.caution), 2.0))
    painter.drawLine(QPointF(-0.34 * r, 0.0), QPointF(0.34 * r, 0.0))


def _doubt(painter: QPainter, tokens: Tokens, r: float) -> None:
    pen = QPen(QColor(tokens.caution), 1.7)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.setBrush(QColor(tokens.caution_ground))
    painter.drawPolygon(QPolygonF([QPointF(0, -r), QPointF(r, 0.8 * r), QPointF(-r, 0.8 * r)]))
    _exclaim(painter, tokens.caution, r, 0.12 * r)


def _error(painter: QPainter, tokens: Tokens, r: float) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(tokens.error))
    painter.drawPolygon(
        QPolygonF([QPointF(0, -r * 1.1), QPointF(r * 1.1, 0), QPointF(0, r * 1.1), QPointF(-r * 1.1, 0)])
    )
    _exclaim(painter, tokens.panel, r, 0.0)


def _exclaim(painter: QPainter, colour: str, r: float, low: float) -> None:
    pen = QPen(QColor(colour), 1.8)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    painter.drawLine(QPointF(0, low - 0.42 * r), QPointF(0, low + 0.1 * r))
    painter.drawPoint(QPointF(0, low + 0.46 * r))


_PAINTERS = {
    Mark.TO_DO: _to_do,
    Mark.READY: _ready,
    Mark.DONE: _done,
    Mark.STALE: _stale,
    Mark.DOUBT: _doubt,
    Mark.ERROR: _error,
}


class Glyph(QWidget):
    """A glyph as a widget of 18 × 18 px."""

    def __init__(self, theme: Theme, mark: Mark = Mark.TO_DO, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._mark = mark
        self.setFixedSize(18, 18)
        theme.changed.connect(self.update)
        self.setAccessibleName(mark.word())

    def set_mark(self, mark: Mark) -> None:
        """Show another state."""
        self._mark = mark
        self.setAccessibleName(mark.word())
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(18, 18)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        paint_mark(painter, self._mark, self._theme.tokens, QRectF(self.rect()).center())
        painter.end()
