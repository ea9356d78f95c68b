"""The legend strip below the canvas: a short sample of each pen with its word."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum

import numpy as np
from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from drypoint.ui.canvas.base import paint_sample_reach
from drypoint.ui.canvas.overlay import arrow, paint_pause
from drypoint.ui.canvas.strokes import dotted, pen
from drypoint.ui.parts.blocks import words
from drypoint.ui.theme.theme import Theme

PLACE = 170
"""Room for the cursor's place, px."""
ROW, SIDE, APART = 30, 12, 16
"""Height of a row, room at both ends, between two samples, px."""


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
    TRIAL = "trial cut, planned"
    TRIAL_CUT = "trial cut"


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
            case Sample.TRIAL | Sample.TRIAL_CUT:
                begun = self._sample is Sample.TRIAL_CUT
                frame = pen(tokens.ink2 if begun else tokens.copper, 1.4)
                if not begun:
                    frame.setDashPattern([5.0, 4.0])
                painter.setPen(frame)
                painter.drawRect(3, 2, 30, 12)
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
    """Samples side by side, a title before them; in as many rows as they need."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._cells: list[QWidget] = []
        self._place = words("", "caption", right=True)
        self._place.setParent(self)
        self.setFixedHeight(ROW)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def show_samples(self, title: str, samples: Sequence[tuple[Sample, str]]) -> None:
        """Another legend."""
        for cell in self._cells:
            cell.hide()
            cell.deleteLater()
        self._cells = [words(title, "value")] if title else []
        self._cells += [self._cell(sample, text) for sample, text in samples]
        for cell in self._cells:
            cell.setParent(self)
            cell.show()
        self._flow()

    def _cell(self, sample: Sample, text: str) -> QWidget:
        made = QWidget()
        row = QHBoxLayout(made)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(Swatch(self._theme, sample))
        row.addWidget(words(text, "label"))
        return made

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._flow()

    def _flow(self) -> None:
        """Left to right, on in the next row where one is full; the cursor's place if there is room."""
        x, y, right = SIDE, 0, self.width() - SIDE
        for cell in self._cells:
            wide = cell.sizeHint().width()
            if x > SIDE and x + wide > right:
                x, y = SIDE, y + ROW - 4
            cell.setGeometry(x, y, min(wide, right - SIDE), ROW)
            x += wide + APART
        self._place.setGeometry(right - PLACE, y, PLACE, ROW)
        self._place.setVisible(x <= right - PLACE)
        if self.height() != y + ROW:
            self.setFixedHeight(y + ROW)

    def show_place(self, text: str) -> None:
        """Where the cursor is."""
        self._place.setText(text)
