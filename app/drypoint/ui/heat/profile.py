"""Height along a line, with the band that holds it with 95 %."""

from __future__ import annotations

from typing import Any

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from drypoint.ui.heat.axes import dress_axis
from drypoint.ui.parts.blocks import words
from drypoint.ui.theme.theme import Theme

Floats = NDArray[np.float64]

BAND = 1.96
"""Standard deviations either side that hold 95 % of a normal distribution."""


class ProfileView(QWidget):
    """A small plot from A to B."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._plot: Any = pg.PlotWidget()
        self._plot.setMenuEnabled(False)
        self._plot.setMouseEnabled(False, False)
        self._plot.hideButtons()
        self._plot.hideAxis("bottom")
        self._plot.setMinimumHeight(64)
        self._plot.setMaximumHeight(340)
        self._plot.setAccessibleName(self.tr("Profile of the height"))
        self._plot.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._low, self._high = pg.PlotCurveItem(), pg.PlotCurveItem()
        self._band = pg.FillBetweenItem(self._low, self._high)
        self._mean = pg.PlotCurveItem()
        self._cursor = pg.InfiniteLine(angle=90)
        self._cursor.hide()
        for item in (self._band, self._mean):
            self._plot.addItem(item)
        self._plot.addItem(self._cursor, ignoreBounds=True)
        self._text = words("", "caption")
        self._text.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._text.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._plot, 1)
        column.addWidget(self._text)
        column.addStretch(0)
        theme.changed.connect(self._dress)
        self._dress()

    def show_profile(self, along: Floats, mean: Floats, spread: Floats) -> None:
        """Distance from A (mm), mean and standard deviation (µm)."""
        self._mean.setData(along, mean)
        self._low.setData(along, mean - BAND * spread)
        self._high.setData(along, mean + BAND * spread)
        text = self.tr("A to B {length:.0f} mm, µm; band 95 %").format(length=along[-1])
        self._text.setText(text)
        self._plot.setXRange(0.0, max(float(along[-1]), 0.1), padding=0.0)

    def set_cursor(self, along: float | None) -> None:
        """Mark a distance from A."""
        self._cursor.setVisible(along is not None)
        if along is not None:
            self._cursor.setValue(along)

    def _dress(self) -> None:
        tokens = self._theme.tokens
        self._plot.setBackground(tokens.panel)
        axis = self._plot.getAxis("left")
        dress_axis(axis, tokens)
        axis.setWidth(38)
        self._plot.showGrid(y=True, alpha=0.15)
        self._mean.setPen(pg.mkPen(tokens.through, width=2))
        self._band.setBrush(pg.mkBrush(tokens.band))
        for edge in (self._low, self._high):
            edge.setPen(pg.mkPen(None))
        self._cursor.setPen(pg.mkPen(tokens.ink2, style=Qt.PenStyle.DashLine))
