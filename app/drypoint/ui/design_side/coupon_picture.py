"""Readings of the test pattern against what they are taken to mean."""

from __future__ import annotations

import math
from collections.abc import Mapping

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from drypoint.bits.width_coupon import WIDTH_SIGMA, Evaluation
from drypoint.session.actions.coupon_reading import Readings
from drypoint.ui.canvas.strokes import pen
from drypoint.ui.language.words import local
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.type import Text, font

LEFT, RIGHT, TOP, LOW = 44, 12, 22, 40
"""px round the plot."""
DEEPEST = 0.16
"""mm, right end of the axis."""
SIGMAS = 2.0
"""Standard deviations drawn, of readings and of the answer."""


class CouponPicture(QWidget):
    """Width over set depth: readings with their spread, the answer with its own, squares along the foot."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._read, self._copper = Readings(), 0.035
        self._found: Evaluation | None = None
        self.setFixedHeight(190)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Widths read against the answer"))
        theme.changed.connect(self.update)

    def show_readings(self, read: Readings, found: Evaluation | None, copper: float) -> None:
        """Other readings and their answer; ``copper`` is its thickness, mm."""
        self._read, self._found, self._copper = read, found, copper
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(400, 190)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        plot = QRectF(LEFT, TOP, self.width() - LEFT - RIGHT, self.height() - TOP - LOW)
        depths = np.linspace(0.0, DEEPEST, 33)
        answer = None if self._found is None else np.array([self._found.width(d) for d in depths.tolist()])
        top = self._highest(answer)
        self._axes(painter, plot, top)
        if answer is not None and self._found is not None:
            middle, spread = answer[:, 0], SIGMAS * answer[:, 1]
            low, high = np.maximum(middle - spread, 0.0), middle + spread
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(self._theme.tokens.band))
            around = [*zip(depths, high, strict=True), *zip(depths[::-1], low[::-1], strict=True)]
            painter.drawPolygon(QPolygonF([_at(plot, top, x, y) for x, y in around]))
            before = [self._found.before.width(d) for d in depths.tolist()]
            dashes = pen(self._theme.tokens.ink2, 1.2)
            dashes.setStyle(Qt.PenStyle.DashLine)
            for stroke, line in ((dashes, before), (pen(self._theme.tokens.ink, 1.8), middle)):
                painter.setPen(stroke)
                painter.drawPolyline(
                    QPolygonF([_at(plot, top, x, y) for x, y in zip(depths, line, strict=True)])
                )
        self._readings(painter, plot, top, self._read.widths)
        self._squares(painter, plot, self._read.squares)
        painter.end()

    def _highest(self, answer: np.ndarray[tuple[int, ...], np.dtype[np.float64]] | None) -> float:
        """Upper end of the axis of widths, mm: a multiple of 0.05."""
        most = max((width + SIGMAS * WIDTH_SIGMA for width in self._read.widths.values()), default=0.15)
        if answer is not None:
            most = max(most, float((answer[:, 0] + SIGMAS * answer[:, 1]).max()))
        return 0.05 * math.ceil(most / 0.05)

    def _axes(self, painter: QPainter, plot: QRectF, top: float) -> None:
        tokens = self._theme.tokens
        painter.setFont(font(Text.CAPTION))
        step = 0.05 if top <= 0.3 else 0.1
        right, centre = Qt.AlignmentFlag.AlignRight, Qt.AlignmentFlag.AlignHCenter
        for y in np.arange(0.0, top + 1e-9, step).tolist():
            at = _at(plot, top, 0.0, y).y()
            painter.setPen(pen(tokens.line, 1.0))
            painter.drawLine(QPointF(plot.left(), at), QPointF(plot.right(), at))
            painter.setPen(QColor(tokens.ink2))
            box = QRectF(0, at - 9, LEFT - 6, 18)
            painter.drawText(box, int(right | Qt.AlignmentFlag.AlignVCenter), local(f"{y:.2f}"))
        for x in (0.0, 0.04, 0.08, 0.12, 0.16):
            at = _at(plot, top, x, 0.0).x()
            box = QRectF(at - 24, plot.bottom() + 12, 48, 16)
            painter.drawText(box, int(centre), local(f"{x:.2f}"))
        painter.drawText(QPointF(2, 12), self.tr("Width, mm"))
        foot = QRectF(plot.left(), self.height() - 15, plot.width(), 15)
        painter.drawText(
            foot, int(right), self.tr("depth as set, mm; band: 95 %; dashed: as believed before")
        )

    def _readings(self, painter: QPainter, plot: QRectF, top: float, widths: Mapping[float, float]) -> None:
        painter.setPen(pen(self._theme.tokens.copper, 1.8))
        painter.setBrush(QColor(self._theme.tokens.copper))
        for depth, width in widths.items():
            spread = SIGMAS * WIDTH_SIGMA
            low = _at(plot, top, depth, max(0.0, width - spread))
            painter.drawLine(low, _at(plot, top, depth, width + spread))
            painter.drawEllipse(_at(plot, top, depth, width), 3.5, 3.5)

    def _squares(self, painter: QPainter, plot: QRectF, squares: Mapping[float, bool]) -> None:
        """Filled where parted, empty where joined; a line where the answer has the copper's underside."""
        painter.setPen(pen(self._theme.tokens.through, 1.6))
        for depth, parted in squares.items():
            x = _at(plot, 1.0, depth, 0.0).x()
            painter.setBrush(QColor(self._theme.tokens.through if parted else self._theme.tokens.panel))
            painter.drawRect(QRectF(x - 4, plot.bottom() + 2, 8, 8))
        if self._found is not None:
            x = _at(plot, 1.0, self._copper - self._found.least, 0.0).x()
            painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()))
            painter.drawText(QPointF(x + 5, plot.top() + 12), self.tr("through from here"))


def _at(plot: QRectF, top: float, depth: float, width: float) -> QPointF:
    return QPointF(
        plot.left() + plot.width() * depth / DEEPEST, plot.bottom() - plot.height() * min(width / top, 1.0)
    )
