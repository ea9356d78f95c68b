"""What is drawn over the tiles anew for each frame: few things, some of them moving."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF, QTransform

from drypoint.geometry.points import Points
from drypoint.ui.canvas.content import Clamp, Content, ExpectedError, Layer, PauseMark, ReferenceHole, Spot
from drypoint.ui.canvas.strokes import pen, polygon
from drypoint.ui.canvas.trials import paint_trials
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.language.words import local
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text, font

CONFIDENCE_95 = math.sqrt(5.991)
"""Half axis of the 95 % ellipse in standard deviations: chi-square with two degrees of freedom."""


@dataclass(frozen=True, slots=True, eq=False)
class Marks:
    """What moves or is chosen; board frame, mm."""

    bit: tuple[float, float] | None = None
    trail: Points = field(default_factory=lambda: np.zeros((0, 2)))
    cursor: tuple[float, float] | None = None
    """The one cursor shared with the heat view and the profile."""
    chosen: tuple[tuple[str, QPainterPath], ...] = ()
    """Chosen nets: name and area, mm."""
    spot: Spot | None = None
    measure: tuple[tuple[float, float], tuple[float, float]] | None = None
    coming: Points = field(default_factory=lambda: np.zeros((0, 2)))
    """Where more touches would pay."""
    brush: tuple[Points, float] | None = None
    """What is being painted: the brush's way and its radius, mm."""
    profile: tuple[tuple[float, float], tuple[float, float]] | None = None
    chosen_clamp: int | None = None


class Overlay:
    """Paints `Marks` and the few fixed things that stay sharp at every zoom."""

    def __init__(self, tokens: Tokens) -> None:
        self.tokens = tokens
        self.hidden: frozenset[Layer] = frozenset()

    def paint(self, painter: QPainter, view: Viewport, content: Content, marks: Marks) -> None:
        """Paint everything, lowest first."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._before(painter, view, content)
        self._chosen(painter, view, marks)
        if Layer.ERRORS not in self.hidden:
            for error in content.errors:
                self._ellipse(painter, view, error, content.enlarged)
        if Layer.CLAMPS not in self.hidden:
            for clamp in content.clamps:
                self._clamp(painter, view, clamp, clamp.number == marks.chosen_clamp)
        if Layer.TRIALS not in self.hidden:
            paint_trials(painter, self.tokens, view, content.trials)
        self._painted(painter, view, content, marks)
        self._touches(painter, view, content)
        self._coming(painter, view, marks)
        if Layer.REFERENCES not in self.hidden:
            for hole in content.references:
                self._reference(painter, view, hole, content.enlarged)
        self._zero(painter, view, content)
        if content.stale:
            self._hatch(painter, view)
        for pause in content.pauses:
            self._pause(painter, view, pause)
        self._lines(painter, view, marks)
        if Layer.MACHINE not in self.hidden:
            self._bit(painter, view, marks)

    def _before(self, painter: QPainter, view: Viewport, content: Content) -> None:
        """Where the board lay: dashed, on a halo, so that it is told from the outline of now."""
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for line in content.before:
            drawn = polygon(view.to_px(line))
            for colour, width in ((self.tokens.panel, 4.0), (self.tokens.ink2, 1.8)):
                stroke = pen(colour, width)
                if colour is self.tokens.ink2:
                    stroke.setDashPattern([5.0, 4.0])
                painter.setPen(stroke)
                painter.drawPolyline(drawn)

    def _chosen(self, painter: QPainter, view: Viewport, marks: Marks) -> None:
        to_px = QTransform(
            view.scale,
            0.0,
            0.0,
            -view.scale,
            view.width / 2 - view.x * view.scale,
            view.height / 2 + view.y * view.scale,
        )
        styles = (
            (self.tokens.through, Qt.BrushStyle.BDiagPattern),
            (self.tokens.not_through, Qt.BrushStyle.FDiagPattern),
        )
        for number, (_, area) in enumerate(marks.chosen):
            colour, pattern = styles[number % 2]
            painter.setPen(pen(colour, 2.6))
            painter.setBrush(QBrush(QColor(colour), pattern))
            painter.drawPath(to_px.map(area))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if marks.spot is not None:
            radius = max(marks.spot.radius * view.scale, 14.0)
            for colour, width in ((self.tokens.panel, 5.0), (self.tokens.ink, 2.4)):
                painter.setPen(pen(colour, width))
                painter.drawEllipse(QPointF(*view.spot(*marks.spot.at)), radius, radius)

    def _ellipse(self, painter: QPainter, view: Viewport, error: ExpectedError, enlarged: float) -> None:
        values, vectors = np.linalg.eigh(error.covariance)
        half = np.sqrt(np.maximum(values, 0.0)) * CONFIDENCE_95 * enlarged * view.scale
        fill = QColor(self.tokens.reference)
        fill.setAlphaF(0.15)
        painter.save()
        painter.translate(*view.spot(*error.at))
        painter.rotate(-math.degrees(math.atan2(vectors[1, 1], vectors[0, 1])))
        painter.setPen(pen(self.tokens.reference, 1.7))
        painter.setBrush(fill)
        painter.drawEllipse(QPointF(0.0, 0.0), float(half[1]), float(half[0]))
        painter.restore()

    def _clamp(self, painter: QPainter, view: Viewport, clamp: Clamp, chosen: bool) -> None:
        x0, y0, x1, y1 = clamp.box
        (left, top), (right, bottom) = view.spot(x0, y1), view.spot(x1, y0)
        place = QRectF(left, top, right - left, bottom - top)
        if clamp.keep_away > 0.0:
            more = clamp.keep_away * view.scale
            painter.setBrush(Qt.BrushStyle.NoBrush)
            dashes = pen(self.tokens.ink2, 1.1)
            dashes.setDashPattern([5.0, 4.0])
            painter.setPen(dashes)
            painter.drawRoundedRect(place.adjusted(-more, -more, more, more), 5 + more, 5 + more)
        painter.setPen(pen(self.tokens.copper if chosen else self.tokens.edge, 2.6 if chosen else 1.2))
        painter.setBrush(QColor(self.tokens.sunken))
        painter.drawRoundedRect(place, 5, 5)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(QColor(self.tokens.edge), Qt.BrushStyle.BDiagPattern))
        painter.drawRoundedRect(place, 5, 5)
        if chosen:
            painter.setPen(pen(self.tokens.copper, 1.6))
            painter.setBrush(QColor(self.tokens.panel))
            for x in (left, right):
                for y in (top, bottom):
                    painter.drawRect(QRectF(x - 3.5, y - 3.5, 7, 7))
        self._plate(painter, place.center(), str(clamp.number), self.tokens.ink)

    def _plate(self, painter: QPainter, middle: QPointF, text: str, ink: str) -> None:
        """A short word on a plate of its own, readable over anything."""
        letters = font(Text.LABEL_BOLD)
        painter.setFont(letters)
        metrics = QFontMetricsF(letters)
        place = QRectF(0, 0, metrics.horizontalAdvance(text) + 8, metrics.height())
        place.moveCenter(middle)
        painter.setPen(Qt.PenStyle.NoPen)
        ground = QColor(self.tokens.panel)
        ground.setAlphaF(0.88)
        painter.setBrush(ground)
        painter.drawRoundedRect(place, 3, 3)
        painter.setPen(QColor(ink))
        painter.drawText(place, Qt.AlignmentFlag.AlignCenter, text)

    def _touches(self, painter: QPainter, view: Viewport, content: Content) -> None:
        if not len(content.touches):
            return
        painter.setPen(pen(self.tokens.ink, 1.3))
        painter.setBrush(QColor(self.tokens.panel))
        for x, y in view.to_px(content.touches[:, :2]).tolist():
            painter.drawEllipse(QPointF(x, y), 2.8, 2.8)

    def _coming(self, painter: QPainter, view: Viewport, marks: Marks) -> None:
        """Places to touch next: dashed rings, as of everything that is not touched yet."""
        if not len(marks.coming):
            return
        stroke = pen(self.tokens.copper, 2.0)
        stroke.setDashPattern([2.0, 1.6])
        painter.setPen(stroke)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for x, y in view.to_px(marks.coming).tolist():
            painter.drawEllipse(QPointF(x, y), 6.0, 6.0)

    def _reference(self, painter: QPainter, view: Viewport, hole: ReferenceHole, enlarged: float) -> None:
        x, y = view.spot(*hole.at)
        colour = self.tokens.copper if hole.coming else self.tokens.reference
        stroke = pen(colour, 2.2)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if hole.touched is None:
            stroke.setDashPattern([3.0, 2.2])
        painter.setPen(stroke)
        painter.drawEllipse(QPointF(x, y), 9.0, 9.0)
        painter.setPen(pen(colour, 1.5))
        for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
            painter.drawLine(QPointF(x + 4 * dx, y + 4 * dy), QPointF(x + 14 * dx, y + 14 * dy))
        if hole.touched is not None:
            right = (hole.touched[0] - hole.at[0]) * enlarged * view.scale
            down = -(hole.touched[1] - hole.at[1]) * enlarged * view.scale
            arrow(painter, colour, QPointF(x, y), QPointF(x + right, y + down))
        self._plate(painter, QPointF(x, y + 24), hole.name, colour)

    def _painted(self, painter: QPainter, view: Viewport, content: Content, marks: Marks) -> None:
        """What is to be cut again: hatched both ways, so that it is no chosen net."""
        area = QPainterPath()
        area.setFillRule(Qt.FillRule.OddEvenFill)
        for ring in content.painted.rings if content.painted is not None else ():
            area.addPolygon(polygon(view.to_px(ring)))
            area.closeSubpath()
        if not area.isEmpty():
            painter.setPen(pen(self.tokens.copper, 1.6))
            painter.setBrush(QBrush(QColor(self.tokens.copper), Qt.BrushStyle.DiagCrossPattern))
            painter.drawPath(area)
            painter.setBrush(Qt.BrushStyle.NoBrush)
        if marks.brush is not None:
            way, radius = marks.brush
            stroke = pen(self.tokens.copper, max(2.0 * radius * view.scale, 2.0))
            stroke.setCapStyle(Qt.PenCapStyle.RoundCap)
            stroke.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            colour = QColor(self.tokens.copper)
            colour.setAlphaF(0.35)
            stroke.setColor(colour)
            painter.setPen(stroke)
            painter.drawPolyline(polygon(view.to_px(np.vstack((way, way[-1:])))))

    def _pause(self, painter: QPainter, view: Viewport, pause: PauseMark) -> None:
        """Two bars on a disc, beside the place, which stays in sight."""
        x, y = view.spot(*pause.at)
        painter.setPen(pen(self.tokens.ink, 1.6))
        painter.drawLine(QPointF(x, y), QPointF(x + 9, y - 9))
        paint_pause(painter, self.tokens, QPointF(x + 15, y - 15), 10.0)

    def _zero(self, painter: QPainter, view: Viewport, content: Content) -> None:
        if content.zero is None:
            return
        x, y = view.spot(*content.zero)
        painter.setPen(pen(self.tokens.copper, 2.4))
        painter.drawLine(QPointF(x, y), QPointF(x - 26, y))
        painter.drawLine(QPointF(x, y), QPointF(x, y + 26))
        painter.setBrush(QColor(self.tokens.panel))
        painter.drawEllipse(QPointF(x, y), 5.5, 5.5)

    def _hatch(self, painter: QPainter, view: Viewport) -> None:
        ink = QColor(self.tokens.caution)
        ink.setAlphaF(0.35)
        painter.fillRect(QRectF(0, 0, view.width, view.height), QBrush(ink, Qt.BrushStyle.BDiagPattern))

    def _lines(self, painter: QPainter, view: Viewport, marks: Marks) -> None:
        if marks.profile is not None:
            a, b = (QPointF(*view.spot(*end)) for end in marks.profile)
            for colour, width in ((self.tokens.panel, 4.5), (self.tokens.ink, 1.6)):
                painter.setPen(pen(colour, width))
                painter.drawLine(a, b)
            self._plate(painter, a, "A", self.tokens.ink)
            self._plate(painter, b, "B", self.tokens.ink)
        if marks.cursor is not None:
            x, y = view.spot(*marks.cursor)
            stroke = pen(self.tokens.ink2, 1.0)
            stroke.setDashPattern([4.0, 3.0])
            painter.setPen(stroke)
            painter.drawLine(QPointF(0, y), QPointF(view.width, y))
            painter.drawLine(QPointF(x, 0), QPointF(x, view.height))
        if marks.measure is not None:
            a, b = (QPointF(*view.spot(*end)) for end in marks.measure)
            _measured(painter, self.tokens, a, b)
            (ax, ay), (bx, by) = marks.measure
            far = local(f"{math.hypot(bx - ax, by - ay):.3f} mm   x {bx - ax:+.3f}   y {by - ay:+.3f}")
            self._plate(painter, QPointF((a.x() + b.x()) / 2, (a.y() + b.y()) / 2 - 18), far, self.tokens.ink)

    def _bit(self, painter: QPainter, view: Viewport, marks: Marks) -> None:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if len(marks.trail) > 1:
            line = polygon(view.to_px(marks.trail))
            for colour, width in ((self.tokens.panel, 8.0), (self.tokens.copper, 5.0)):
                stroke = pen(colour, width)
                stroke.setCapStyle(Qt.PenCapStyle.RoundCap)
                painter.setPen(stroke)
                painter.drawPolyline(line)
        if marks.bit is None:
            return
        x, y = view.spot(*marks.bit)
        for colour, wider in ((self.tokens.panel, 3.0), (self.tokens.copper, 0.0)):
            painter.setPen(pen(colour, 2.4 + wider))
            painter.drawEllipse(QPointF(x, y), 12.0, 12.0)
            for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                painter.drawLine(QPointF(x + 7 * dx, y + 7 * dy), QPointF(x + 19 * dx, y + 19 * dy))


def paint_pause(painter: QPainter, tokens: Tokens, middle: QPointF, radius: float) -> None:
    """Two bars on a disc."""
    painter.setPen(pen(tokens.ink, 1.6))
    painter.setBrush(QColor(tokens.panel))
    painter.drawEllipse(middle, radius, radius)
    painter.setPen(pen(tokens.copper, 0.26 * radius))
    for dx in (-0.3 * radius, 0.3 * radius):
        painter.drawLine(middle + QPointF(dx, -0.4 * radius), middle + QPointF(dx, 0.4 * radius))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def arrow(painter: QPainter, colour: str, start: QPointF, end: QPointF) -> None:
    """A stroke with a head; nothing if it is shorter than its head is visible."""
    dx, dy = end.x() - start.x(), end.y() - start.y()
    far = math.hypot(dx, dy)
    if far < 3.0:
        return
    ux, uy = dx / far, dy / far
    painter.setPen(pen(colour, 2.4))
    painter.drawLine(start, QPointF(end.x() - 6 * ux, end.y() - 6 * uy))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(colour))
    head = QPolygonF(
        [
            end,
            QPointF(end.x() - 10 * ux + 4.5 * uy, end.y() - 10 * uy - 4.5 * ux),
            QPointF(end.x() - 10 * ux - 4.5 * uy, end.y() - 10 * uy + 4.5 * ux),
        ]
    )
    painter.drawPolygon(head)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _measured(painter: QPainter, tokens: Tokens, a: QPointF, b: QPointF) -> None:
    far = max(math.hypot(b.x() - a.x(), b.y() - a.y()), 1e-6)
    nx, ny = -(b.y() - a.y()) / far * 7, (b.x() - a.x()) / far * 7
    for colour, width in ((tokens.panel, 4.5), (tokens.copper, 1.8)):
        painter.setPen(QPen(QColor(colour), width))
        painter.drawLine(a, b)
        for end in (a, b):
            painter.drawLine(QPointF(end.x() - nx, end.y() - ny), QPointF(end.x() + nx, end.y() + ny))
