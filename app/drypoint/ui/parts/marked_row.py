"""How rows of a list are painted that begin with a mark."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from drypoint.ui.parts.glyph import Mark, paint_mark
from drypoint.ui.parts.lines import Index
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text, font

LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class MarkedRow(QStyledItemDelegate):
    """Paints the ground and the mark; `mark` and `write` say which one and what stands beside it.

    Parameters
    ----------
    height : int
        Of a row, px.
    at : (x, y)
        Middle of the mark from the row's upper left corner, px.
    size : float
        Of the mark, px.
    """

    def __init__(
        self, theme: Theme, height: int, at: tuple[float, float], size: float, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._theme, self._height, self._at, self._size = theme, height, at, size

    def sizeHint(self, _option: QStyleOptionViewItem, _index: Index) -> QSize:
        return QSize(200, self._height)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        about = index.data(Qt.ItemDataRole.UserRole)
        tokens = self._theme.tokens
        rect: Any = option.rect
        state: Any = option.state
        place = QRectF(rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if state & QStyle.StateFlag.State_Selected:
            painter.fillRect(place, QColor(tokens.soft))
        paint_mark(painter, self.mark(about), tokens, place.topLeft() + QPointF(*self._at), self._size)
        self.write(painter, place, about, tokens)
        painter.restore()

    def mark(self, about: Any) -> Mark:
        """The mark of what the row is about."""
        raise NotImplementedError

    def write(self, painter: QPainter, place: QRectF, about: Any, tokens: Tokens) -> None:
        """The texts of the row at ``place``."""
        raise NotImplementedError


def write_line(
    painter: QPainter,
    area: QRectF,
    text: str,
    size: Text,
    colour: str,
    *,
    align: Qt.AlignmentFlag = LEFT,
    elide: Qt.TextElideMode = Qt.TextElideMode.ElideRight,
) -> float:
    """One line of text, cut off where the area ends; how wide it would be in full, px."""
    letters = font(size)
    measure = QFontMetricsF(letters)
    painter.setFont(letters)
    painter.setPen(QColor(colour))
    painter.drawText(area, align, measure.elidedText(text, elide, area.width()))
    return measure.horizontalAdvance(text)
