"""A part of the plane that is looked at: zoom at the cursor, pan, fit; rulers at its edges."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from drypoint.ui.canvas.content import Box
from drypoint.ui.canvas.rulers import LEFT, LOW, paint_rulers
from drypoint.ui.canvas.strokes import pen
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.theme.theme import Theme

WAYS = {
    Qt.Key.Key_Left: (1, 0),
    Qt.Key.Key_Right: (-1, 0),
    Qt.Key.Key_Up: (0, 1),
    Qt.Key.Key_Down: (0, -1),
}
"""Which way the picture shifts for an arrow key."""


class PlaneView(QWidget):
    """Base of the canvas: knows where it looks, not what it shows."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._seen = Viewport(800.0, 600.0)
        self._fit_pending = True
        self._fitted = False
        self._focus_spot = QPointF(400.0, 300.0)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(280, 200)

    def extent(self) -> Box | None:
        """What `fit` shows; None if there is nothing."""
        return None

    @property
    def seen(self) -> Viewport:
        """What part of the plane is seen."""
        return self._seen

    def fit(self) -> None:
        """Show the whole blank, or the board."""
        bounds = self.extent()
        if bounds is not None:
            self._look(self._inner_fit(bounds, 14.0))
            self._fitted = True

    def zoom_to(self, box: Box) -> None:
        """Show a part of the board with a little around it."""
        spare = 0.4 * max(box[2] - box[0], box[3] - box[1], 4.0)
        self._look(self._inner_fit((box[0] - spare, box[1] - spare, box[2] + spare, box[3] + spare), 8.0))

    def zoom(self, factor: float, place: QPointF | None = None) -> None:
        """Enlarge about a place of the widget, or its middle."""
        spot = QPointF(self._seen.width / 2, self._seen.height / 2) if place is None else place
        self._focus_spot = spot
        self._look(self._seen.zoomed(factor, spot.x(), spot.y()))

    def _inner_fit(self, bounds: Box, margin: float) -> Viewport:
        """Fit into the part the rulers leave free."""
        inner = self._seen.resized(self._seen.width - LEFT, self._seen.height - LOW).fitted(bounds, margin)
        shift_x, shift_y = LEFT / 2 / inner.scale, LOW / 2 / inner.scale
        return replace(self._seen, x=inner.x - shift_x, y=inner.y - shift_y, scale=inner.scale)

    def _look(self, seen: Viewport) -> None:
        self._fitted = False
        self._seen = seen
        self.update()

    def _paint_edges(self, painter: QPainter) -> None:
        """Rulers and, with the keyboard here, the focus ring."""
        paint_rulers(painter, self._seen, self._theme.tokens)
        if self.hasFocus():
            painter.setPen(pen(self._theme.tokens.copper, 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._seen = self._seen.resized(self.width(), self.height())
        if self._fitted:
            self.fit()
        super().resizeEvent(event)

    def sizeHint(self) -> QSize:
        return QSize(800, 640)

    def wheelEvent(self, event: QWheelEvent) -> None:
        notches = event.angleDelta().y() / 120.0 or event.pixelDelta().y() / 60.0
        self.zoom(1.25**notches, event.position())
        event.accept()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self._look(self._seen.centred(*self._seen.to_mm(event.position().x(), event.position().y())))

    def focusInEvent(self, event: QFocusEvent) -> None:
        self.update()
        super().focusInEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.update()
        super().focusOutEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in WAYS:
            dx, dy = WAYS[key]
            self._look(self._seen.panned(48.0 * dx, 48.0 * dy))
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom(1.25)
        elif key == Qt.Key.Key_Minus:
            self.zoom(0.8)
        else:
            super().keyPressEvent(event)
