"""Rulers along the left and lower edge of the canvas, in round millimetres."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from drypoint.ui.canvas.strokes import pen
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.language.words import local
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text, font

LEFT, LOW = 38, 24
"""Widths of the two rulers, px."""
LEAST = 64.0
"""Least distance of two figures, px."""


def step_of(scale: float) -> float:
    """The smallest of 1, 2, 5 · 10ⁿ mm that is at least `LEAST` px long."""
    wanted = LEAST / scale
    power = 10.0 ** math.floor(math.log10(wanted))
    return next(m * power for m in (1.0, 2.0, 5.0, 10.0) if m * power >= wanted * (1 - 1e-9))


def figure(value: float, step: float) -> str:
    """A figure with as many decimals as the step needs and a real minus sign."""
    decimals = max(0, -math.floor(math.log10(step) + 1e-9))
    text = local(f"{value:.{decimals}f}")
    return text.replace("-", "−") if float(text) else text.replace("-", "")


def paint_rulers(painter: QPainter, view: Viewport, tokens: Tokens) -> None:
    """Paint both rulers over the edges of a view that fills the whole widget."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    low = view.height - LOW
    ground = QColor(tokens.canvas)
    painter.fillRect(QRectF(0, 0, LEFT, view.height), ground)
    painter.fillRect(QRectF(0, low, view.width, LOW), ground)
    painter.setPen(pen(tokens.line, 1.0))
    painter.drawLine(QPointF(LEFT, 0), QPointF(LEFT, low))
    painter.drawLine(QPointF(LEFT, low), QPointF(view.width, low))
    painter.setFont(font(Text.CAPTION))
    step = step_of(view.scale)
    x0, y0, x1, y1 = view.bounds
    for number in range(math.ceil(x0 / step), math.floor(x1 / step) + 1):
        x = view.spot(number * step, 0.0)[0]
        if x < LEFT + 14:
            continue
        painter.setPen(pen(tokens.edge, 1.0))
        painter.drawLine(QPointF(x, low), QPointF(x, low + 4))
        painter.setPen(QColor(tokens.ink2))
        painter.drawText(
            QRectF(x - 40, low + 4, 80, LOW - 5), Qt.AlignmentFlag.AlignCenter, figure(number * step, step)
        )
    for number in range(math.ceil(y0 / step), math.floor(y1 / step) + 1):
        y = view.spot(0.0, number * step)[1]
        if y > low - 10 or y < 8:
            continue
        painter.setPen(pen(tokens.edge, 1.0))
        painter.drawLine(QPointF(LEFT - 4, y), QPointF(LEFT, y))
        painter.setPen(QColor(tokens.ink2))
        place = QRectF(0, y - 9, LEFT - 6, 18)
        painter.drawText(
            place, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, figure(number * step, step)
        )
    painter.setPen(QColor(tokens.ink2))
    painter.drawText(QRectF(0, low, LEFT, LOW), Qt.AlignmentFlag.AlignCenter, "mm")
