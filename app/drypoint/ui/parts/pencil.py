"""The few strokes that sketches of settings are made of, in the colours of the theme."""

from __future__ import annotations

import math
from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text, font

WIDE, HIGH = 272.0, 104.0
"""Size of a sketch, px."""
TOP = 46.0
"""Where the copper's top lies in a cross-section, px."""
FOIL = 9.0
"""Thickness of the copper in a cross-section, px."""
BARB = 4.0

Point = tuple[float, float]


class Pencil:
    """Draws with a painter in px; y grows downwards."""

    def __init__(self, painter: QPainter, tokens: Tokens) -> None:
        self.painter, self.tokens = painter, tokens
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(font(Text.CAPTION))

    def area(self, points: Sequence[Point], fill: str | None = None, edge: str | None = None) -> None:
        """A filled shape, an outlined one, or both."""
        self.painter.setPen(QPen(QColor(edge), 1.6) if edge else Qt.PenStyle.NoPen)
        self.painter.setBrush(QColor(fill) if fill else Qt.BrushStyle.NoBrush)
        self.painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in points]))

    def box(self, x0: float, y0: float, x1: float, y1: float, fill: str) -> None:
        """A filled rectangle."""
        self.painter.fillRect(QRectF(x0, y0, x1 - x0, y1 - y0), QColor(fill))

    def line(self, *points: Point, colour: str = "", width: float = 1.6, dashed: bool = False) -> None:
        """A polyline; ink where no colour is given."""
        style = Qt.PenStyle.DashLine if dashed else Qt.PenStyle.SolidLine
        self.painter.setPen(QPen(QColor(colour or self.tokens.ink2), width, style))
        self.painter.setBrush(Qt.BrushStyle.NoBrush)
        self.painter.drawPolyline(QPolygonF([QPointF(x, y) for x, y in points]))

    def ring(self, x: float, y: float, radius: float, *, colour: str = "", fill: str | None = None) -> None:
        """A circle."""
        self.painter.setPen(QPen(QColor(colour or self.tokens.ink2), 1.6))
        self.painter.setBrush(QColor(fill) if fill else Qt.BrushStyle.NoBrush)
        self.painter.drawEllipse(QPointF(x, y), radius, radius)

    def word(self, x: float, y: float, text: str, *, strong: bool = False, right: bool = False) -> None:
        """Words that begin (or end) at a point of their base line."""
        self.painter.setFont(font(Text.LABEL_BOLD if strong else Text.CAPTION))
        self.painter.setPen(QColor(self.tokens.ink if strong else self.tokens.ink2))
        far = self.painter.fontMetrics().horizontalAdvance(text) if right else 0
        self.painter.drawText(QPointF(x - far, y), text)

    def measure(self, x0: float, y0: float, x1: float, y1: float) -> None:
        """The stretch that is set: a line with barbs at both ends, in the accent."""
        colour = self.tokens.copper
        self.line((x0, y0), (x1, y1), colour=colour)
        way = math.atan2(y1 - y0, x1 - x0)
        for x, y, turned in ((x0, y0, 0.0), (x1, y1, math.pi)):
            ends = [
                (x + BARB * math.cos(way + turned + side), y + BARB * math.sin(way + turned + side))
                for side in (0.6, -0.6)
            ]
            self.line(ends[0], (x, y), ends[1], colour=colour)

    def ground(self, low: float = HIGH, x0: float = 0.0, x1: float = WIDE) -> None:
        """Laminate with its copper, in cross-section."""
        self.box(x0, TOP, x1, TOP + FOIL, self.tokens.net)
        self.box(x0, TOP + FOIL, x1, low, self.tokens.blank)

    def vbit(
        self, x: float, tip_y: float, tip: float = 6.0, angle_deg: float = 40.0, top: float = 2.0
    ) -> None:
        """A V-bit, point down; what it has cut is taken out of the ground."""
        self.notch(x, tip_y, tip, angle_deg)
        half = tip / 2 + (tip_y - top) * math.tan(math.radians(angle_deg) / 2)
        shape = [(x - tip / 2, tip_y), (x + tip / 2, tip_y), (x + half, top), (x - half, top)]
        self.area(shape, edge=self.tokens.ink2)

    def notch(self, x: float, tip_y: float, tip: float = 6.0, angle_deg: float = 40.0) -> None:
        """A groove of the V-bit."""
        if tip_y <= TOP:
            return
        half = tip / 2 + (tip_y - TOP) * math.tan(math.radians(angle_deg) / 2)
        shape = [(x - tip / 2, tip_y), (x + tip / 2, tip_y), (x + half, TOP), (x - half, TOP)]
        self.area(shape, fill=self.tokens.panel)

    def drill(self, x: float, y: float, half: float, top: float = 2.0) -> None:
        """A drill, and the hole it stands in."""
        cone = half * 0.7
        self.box(x - half, TOP, x + half, max(TOP, y - cone), self.tokens.panel)
        shape = [(x - half, top), (x + half, top), (x + half, y - cone), (x, y), (x - half, y - cone)]
        self.area(shape, fill=self.tokens.panel, edge=self.tokens.ink2)
