"""Small sketches that explain a setting."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from drypoint.ui.canvas.strokes import pen
from drypoint.ui.language.words import fill
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.type import Text, font


class VBitSketch(QWidget):
    """A V-bit in copper: how wide the groove gets at a depth."""

    DEPTH = 0.08
    """Depth shown, mm."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._tip, self._angle = 0.1, 30.0
        self.setFixedHeight(112)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.update)

    def show_bit(self, tip: float, angle_deg: float) -> None:
        """Another bit."""
        self._tip, self._angle = tip, angle_deg
        self.setAccessibleName(
            fill(
                self.tr("At {depth:.2f} mm depth the groove is {width:.3f} mm wide"),
                depth=self.DEPTH,
                width=self.width_at_depth(),
            )
        )
        self.update()

    def width_at_depth(self) -> float:
        """Width of the groove at the depth shown, mm: w = t + 2 d tan(α/2)."""
        return self._tip + 2.0 * self.DEPTH * math.tan(math.radians(self._angle) / 2.0)

    def sizeHint(self) -> QSize:
        return QSize(280, 112)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width, top, low = float(self.width()), 58.0, 92.0
        middle = width * 0.32
        scale = min(240.0, 90.0 / max(self.width_at_depth(), 0.05))
        deep = self.DEPTH * scale * 1.0
        half, tip = self.width_at_depth() * scale / 2, self._tip * scale / 2
        painter.fillRect(QRectF(0, top, width, 0.035 * scale), QColor(tokens.net))
        painter.fillRect(QRectF(0, top + 0.035 * scale, width, low - top), QColor(tokens.blank))
        groove = [QPointF(middle - half, top), QPointF(middle - tip, top + deep)]
        groove += [QPointF(middle + tip, top + deep), QPointF(middle + half, top)]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tokens.panel))
        painter.drawPolygon(QPolygonF(groove))
        rise = top - 6
        wider = half + rise * math.tan(math.radians(self._angle) / 2.0)
        bit = [groove[1], QPointF(middle - wider, 6), QPointF(middle + wider, 6), groove[2]]
        painter.setPen(pen(tokens.ink2, 1.6))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF([*bit, bit[0]]))
        painter.setPen(pen(tokens.copper, 1.6))
        painter.drawLine(QPointF(middle - half, top - 4), QPointF(middle + half, top - 4))
        for x in (middle - half, middle + half):
            painter.drawLine(QPointF(x, top - 8), QPointF(x, top))
        painter.setFont(font(Text.LABEL_BOLD))
        painter.setPen(QColor(tokens.ink))
        text = fill(self.tr("{width:.3f} mm wide"), width=self.width_at_depth())
        painter.drawText(QPointF(width * 0.56, top - 28), text)
        painter.setFont(font(Text.CAPTION))
        painter.setPen(QColor(tokens.ink2))
        painter.drawText(
            QPointF(width * 0.56, top - 10), fill(self.tr("at {depth:.2f} mm depth"), depth=self.DEPTH)
        )
        painter.end()
