"""Qt's Fusion style with check boxes whose edges can be seen, and plain grips between areas."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QProxyStyle, QStyle, QStyleOption, QWidget

from drypoint.ui.theme.tokens import Tokens


class BenchStyle(QProxyStyle):
    """Draws indicators and grips; everything else is the style sheet's or Fusion's."""

    def __init__(self, tokens: Callable[[], Tokens]) -> None:
        super().__init__("Fusion")
        self._tokens = tokens

    def drawPrimitive(
        self,
        element: QStyle.PrimitiveElement,
        option: QStyleOption,
        painter: QPainter,
        widget: QWidget | None = None,
    ) -> None:
        if element == QStyle.PrimitiveElement.PE_IndicatorCheckBox:
            self._box(option, painter)
        else:
            super().drawPrimitive(element, option, painter, widget)

    def drawControl(
        self,
        element: QStyle.ControlElement,
        option: QStyleOption,
        painter: QPainter,
        widget: QWidget | None = None,
    ) -> None:
        if element == QStyle.ControlElement.CE_Splitter:
            self._grip(option, painter)
        else:
            super().drawControl(element, option, painter, widget)

    def _grip(self, option: QStyleOption, painter: QPainter) -> None:
        tokens, place = self._tokens(), option.rect
        over = bool(option.state & QStyle.StateFlag.State_MouseOver)
        painter.fillRect(place, QColor(tokens.soft if over else tokens.window))
        painter.fillRect(place.x(), place.y(), 1, place.height(), QColor(tokens.line))

    def _box(self, option: QStyleOption, painter: QPainter) -> None:
        tokens = self._tokens()
        state = option.state
        place = QRectF(option.rect).adjusted(0.75, 0.75, -0.75, -0.75)
        on = bool(state & QStyle.StateFlag.State_On)
        usable = bool(state & QStyle.StateFlag.State_Enabled)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(tokens.edge if usable else tokens.line), 1.4))
        painter.setBrush(QColor(tokens.pressed if on and usable else tokens.panel))
        painter.drawRoundedRect(place, 3, 3)
        if on:
            pen = QPen(QColor(tokens.on_pressed if usable else tokens.off), 1.9)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            painter.setPen(pen)
            x, y, w, h = place.x(), place.y(), place.width(), place.height()
            tick = [(0.24, 0.52), (0.43, 0.72), (0.78, 0.3)]
            painter.drawPolyline(QPolygonF([QPointF(x + a * w, y + b * h) for a, b in tick]))
        painter.restore()
