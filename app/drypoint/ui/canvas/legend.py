"""The legend strip below the canvas: a short sample of each pen with its word."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum

import numpy as np
from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QWidget

from drypoint.ui.canvas.base import paint_sample_reach
from drypoint.ui.canvas.overlay import arrow, paint_pause
from drypoint.ui.canvas.strokes import dotted, pen
from drypoint.ui.parts.blocks import words
from drypoint.ui.theme.theme import Theme

ROOMY = 560
"""Width from which the cursor's place is written too, px."""


class Sample(Enum):
    """A pen of the canvas."""

    THROUGH = "through"
    DOUBTFUL = "doubtful"
    NOT_THROUGH = "not through"
    EARLIER = "earlier pass"
    CUT = "cut"
    AHEAD = "still to cut"
    TRAIL = "trail"
    GROOVE = "groove"
    COPPER = "copper"
    RESIDUAL = "residual"
    ERROR = "expected error"
    FIRST_NET = "first net"
    SECOND_NET = "second net"
    PAUSE = "pause"
    PAINTED = "painted"
    SUSPECT = "suspect"
    BEFORE = "before"


class Swatch(QWidget):
    """One pen drawn 34 px long."""

    def __init__(self, theme: Theme, sample: Sample) -> None:
        super().__init__()
        self._theme, self._sample = theme, sample
        self.setFixedSize(36, 16)
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(36, 16)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        tokens = self._theme.tokens
        a, b = QPointF(1, 8), QPointF(35, 8)
        match self._sample:
            case Sample.THROUGH | Sample.DOUBTFUL | Sample.NOT_THROUGH:
                states = (Sample.THROUGH, Sample.DOUBTFUL, Sample.NOT_THROUGH)
                line = np.array([[1.0, 8.0], [35.0, 8.0]])
                paint_sample_reach(painter, tokens, states.index(self._sample), line)
            case Sample.AHEAD:
                painter.setPen(dotted(tokens.ink, 3.2))
                painter.drawLine(a, b)
            case Sample.RESIDUAL:
                arrow(painter, tokens.reference, a, b)
            case Sample.ERROR | Sample.COPPER:
                fill = QColor(tokens.reference if self._sample is Sample.ERROR else tokens.net)
                if self._sample is Sample.ERROR:
                    fill.setAlphaF(0.15)
                painter.setPen(pen(tokens.reference if self._sample is Sample.ERROR else tokens.ink, 1.5))
                painter.setBrush(fill)
                painter.drawEllipse(QPointF(18, 8), 14, 6)
            case Sample.FIRST_NET | Sample.SECOND_NET:
                first = self._sample is Sample.FIRST_NET
                colour = tokens.through if first else tokens.not_through
                pattern = Qt.BrushStyle.BDiagPattern if first else Qt.BrushStyle.FDiagPattern
                painter.setPen(pen(colour, 2.2))
                painter.setBrush(QBrush(QColor(colour), pattern))
                painter.drawRoundedRect(3, 2, 30, 12, 3, 3)
            case Sample.PAINTED:
                painter.setPen(pen(tokens.copper, 1.4))
                painter.setBrush(QBrush(QColor(tokens.copper), Qt.BrushStyle.DiagCrossPattern))
                painter.drawRoundedRect(3, 2, 30, 12, 3, 3)
            case Sample.SUSPECT | Sample.BEFORE:
                self._dashed(painter, a, b)
            case Sample.PAUSE:
                paint_pause(painter, tokens, QPointF(18, 8), 7.0)
            case _:
                colour, width = {
                    Sample.EARLIER: (tokens.off, 1.2),
                    Sample.CUT: (tokens.ink, 3.6),
                    Sample.TRAIL: (tokens.copper, 5.0),
                    Sample.GROOVE: (tokens.off, 1.2),
                }[self._sample]
                painter.setPen(pen(colour, width))
                painter.drawLine(a, b)
        painter.end()

    def _dashed(self, painter: QPainter, a: QPointF, b: QPointF) -> None:
        tokens = self._theme.tokens
        dashes = pen(tokens.ink2, 1.8)
        dashes.setDashPattern([5.0, 4.0])
        if self._sample is Sample.SUSPECT:
            painter.setPen(pen(tokens.casing, 4.4))
            painter.drawLine(a, b)
            dashes = pen("#FFFFFF", 2.0)
            dashes.setDashPattern([2.0, 3.0])
        painter.setPen(dashes)
        painter.drawLine(a, b)


class LegendStrip(QWidget):
    """Samples side by side, a title before them."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(12, 2, 12, 2)
        self._row.setSpacing(6)
        self._place = words("", "caption", right=True)
        self._place.setMinimumWidth(170)
        self.setFixedHeight(30)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.show_samples("", ())

    def show_samples(self, title: str, samples: Sequence[tuple[Sample, str]]) -> None:
        """Another legend."""
        while self._row.count():
            item = self._row.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None and widget is not self._place:
                widget.hide()
                widget.deleteLater()
        if title:
            self._row.addWidget(words(title, "value"))
            self._row.addSpacing(4)
        for sample, text in samples:
            self._row.addWidget(Swatch(self._theme, sample))
            label: QLabel = words(text, "label")
            self._row.addWidget(label)
            self._row.addSpacing(8)
        self._row.addStretch(1)
        self._row.addWidget(self._place)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._place.setVisible(self.width() > ROOMY)
        super().resizeEvent(event)

    def show_place(self, text: str) -> None:
        """Where the cursor is."""
        self._place.setText(text)
