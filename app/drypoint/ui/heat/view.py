"""The heat view: mean, spread or give of the copper's surface, its touches, and a profile."""

from __future__ import annotations

from enum import Enum
from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.ui.heat.axes import dress_axis
from drypoint.ui.heat.picture import HeatPicture
from drypoint.ui.heat.profile import ProfileView
from drypoint.ui.parts.blocks import tint, words
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.type import Text, font

EDGE = 0.03
"""Free space round the picture, as a share of it: the outermost numbers of the axes need it."""
BESIDE, BELOW = 84, 26
"""Width of the axes and the colour bar beside the picture, height of the axis below it, px."""

Line = tuple[tuple[float, float], tuple[float, float]]


class Aspect(Enum):
    """What of the surface is shown."""

    MEAN = "mean"
    SPREAD = "spread"
    GIVE = "give"


def colour_map(aspect: Aspect) -> Any:
    """Perceptually even maps: viridis for height, cividis for spread, a diverging one for give."""
    if aspect is Aspect.GIVE:
        stops = [(0, 114, 178), (237, 235, 232), (213, 94, 0)]
        return pg.ColorMap([0.0, 0.5, 1.0], stops)
    return pg.colormap.get("viridis" if aspect is Aspect.MEAN else "cividis")


class HeatView(QWidget):
    """The surface as a picture with a profile below.

    Signals
    -------
    cursor_moved(object) : (x, y) mm under the pointer, or None
    profile_moved(object) : ((x, y), (x, y)) mm
    aspect_changed(object) : `Aspect`
    """

    cursor_moved = Signal(object)
    profile_moved = Signal(object)
    aspect_changed = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._picture: HeatPicture | None = None
        self._aspect = Aspect.MEAN
        self._stale = ""
        self.aspects = Segments([self.tr("Mean"), self.tr("Spread"), self.tr("Give")], self.tr("Surface"))
        self._facts = words("", "value")
        self._worst = words("", "caption", right=True)
        self._graphics = pg.GraphicsLayoutWidget()
        self._graphics.setAccessibleName(self.tr("Height of the copper"))
        self._graphics.setMinimumHeight(150)
        self._graphics.ci.layout.setContentsMargins(0, 0, 0, 0)
        self._graphics.ci.layout.setSpacing(0)
        self._make_plot()
        self._veil = Veil(theme, self._graphics)
        self.profile = ProfileView(theme)
        self._empty = words(self.tr("No touches yet."), "quiet")
        self._empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._build()
        theme.changed.connect(self._dress)
        self._dress()
        self._show()

    def _make_plot(self) -> None:
        self._plot = self._graphics.addPlot(row=0, col=0)
        self._plot.setMenuEnabled(False)
        self._plot.hideButtons()
        self._plot.setMouseEnabled(False, False)
        self._plot.getViewBox().setAspectLocked(True)
        self._plot.getViewBox().setDefaultPadding(0.0)
        self._image = pg.ImageItem(axisOrder="row-major")
        self._lines = pg.PlotCurveItem(connect="pairs")
        self._zero = pg.PlotCurveItem(connect="pairs")
        self._dots = pg.ScatterPlotItem(size=6)
        for item in (self._image, self._lines, self._zero, self._dots):
            self._plot.addItem(item)
        self._across = [pg.InfiniteLine(angle=angle) for angle in (0, 90)]
        for line in self._across:
            line.hide()
            self._plot.addItem(line, ignoreBounds=True)
        self._section = pg.LineSegmentROI([[0, 0], [1, 1]])
        self._letters = [pg.TextItem(letter, anchor=(0.5, 0.5)) for letter in "AB"]
        for item in (self._section, *self._letters):
            self._plot.addItem(item, ignoreBounds=True)
        for letter in self._letters:
            letter.setZValue(50)
            letter.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self._section.sigRegionChanged.connect(self._section_moved)
        self._bar = pg.ColorBarItem(width=12, interactive=False)
        self._bar.setImageItem(self._image, insert_in=self._plot)
        self._graphics.scene().sigMouseMoved.connect(self._pointer_moved)
        self._graphics.viewport().installEventFilter(self)
        self._graphics.installEventFilter(self)

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 10, 16, 8)
        column.setSpacing(4)
        head = self._head = QHBoxLayout()
        self._title = words(self.tr("Surface"), "section")
        head.addWidget(self._title)
        head.addStretch(1)
        head.addWidget(self.aspects)
        facts = QHBoxLayout()
        facts.addWidget(self._facts)
        facts.addStretch(1)
        facts.addWidget(self._worst)
        column.addLayout(head)
        column.addLayout(facts)
        column.addWidget(self._graphics, 3)
        column.addWidget(self.profile, 1)
        column.addWidget(self._empty, 3)
        column.addStretch(0)
        self.aspects.chosen.connect(lambda number: self.set_aspect(list(Aspect)[number]))

    def show_title(self, shown: bool) -> None:
        """Whether the heading is shown; where a switch above says it already, it is not."""
        self._title.setVisible(shown)
        self._head.setStretch(1, int(shown))
        self._head.setStretch(2, int(not shown))

    # what is shown

    def set_picture(self, picture: HeatPicture | None) -> None:
        """Show a surface; None empties the view."""
        first = self._picture is None or picture is None or self._picture.bounds != picture.bounds
        self._picture = picture
        if picture is not None and first:
            x0, y0, x1, y1 = picture.bounds
            low = (x0 + 0.06 * (x1 - x0), y0 + 0.2 * (y1 - y0))
            self.set_profile((low, (x1 - 0.06 * (x1 - x0), y1 - 0.2 * (y1 - y0))))
        self._show()

    def set_aspect(self, aspect: Aspect) -> None:
        """Show mean, spread or give."""
        self.aspects.choose(list(Aspect).index(aspect))
        self._aspect = aspect
        self._show()
        self.aspect_changed.emit(aspect)

    def set_stale(self, reason: str) -> None:
        """Hatch the picture and say why it no longer holds; empty makes it good again."""
        self._stale = reason
        self._veil.show_word(self.tr("stale") if reason else "")
        self._say_facts()

    def set_cursor(self, place: tuple[float, float] | None) -> None:
        """Show the cursor shared with the canvas."""
        for line, value in zip(self._across, (place[1], place[0]) if place else (0.0, 0.0), strict=True):
            line.setVisible(place is not None and self._picture is not None)
            line.setValue(value)
        self.profile.set_cursor(self._along_section(place) if place else None)

    def set_profile(self, line: Line) -> None:
        """Draw the profile along another line."""
        self._section.blockSignals(True)
        for handle, end in zip(self._section.getHandles(), line, strict=True):
            self._section.movePoint(handle, QPointF(*end), coords="parent")
        self._section.blockSignals(False)
        self._section_moved()

    @property
    def section(self) -> Line:
        """The line of the profile, mm."""
        ends = [self._section.mapToParent(handle.pos()) for handle in self._section.getHandles()]
        return (ends[0].x(), ends[0].y()), (ends[1].x(), ends[1].y())

    # drawing

    def _show(self) -> None:
        picture = self._picture
        for widget in (self._graphics, self.profile):
            widget.setVisible(picture is not None)
        self._empty.setVisible(picture is None)
        self.aspects.setEnabled(picture is not None)
        self._say_facts()
        if picture is None:
            return
        self._show_image(picture)
        contours = self._aspect is Aspect.MEAN
        for item, lines in ((self._lines, picture.contours), (self._zero, picture.zero)):
            flat = lines.reshape(-1, 2)
            item.setData(flat[:, 0], flat[:, 1])
            item.setVisible(contours)
        self._dots.setData(picture.touches[:, 0], picture.touches[:, 1])
        self._section_moved()

    def _show_image(self, picture: HeatPicture) -> None:
        values = {Aspect.MEAN: picture.mean, Aspect.SPREAD: picture.spread, Aspect.GIVE: picture.give}[
            self._aspect
        ]
        if values is None:
            values = np.zeros_like(picture.mean)
        low, high = float(values.min()), float(values.max())
        if self._aspect is Aspect.GIVE:
            high = max(abs(low), abs(high), 1.0)
            low = -high
        elif high - low < 1.0:
            low, high = low - 0.5, high + 0.5
        x0, y0, x1, y1 = picture.bounds
        self._image.setImage(values, autoLevels=False)
        self._image.setRect(QRectF(x0, y0, x1 - x0, y1 - y0))
        self._bar.setColorMap(colour_map(self._aspect))
        self._bar.setLevels((low, high))
        self._plot.setRange(QRectF(x0, y0, x1 - x0, y1 - y0), padding=EDGE)
        self._fit()

    def _fit(self) -> None:
        """As high as the picture needs at this width; what is left goes to the profile."""
        if self._picture is None:
            return
        x0, y0, x1, y1 = self._picture.bounds
        wide = self._graphics.width() - BESIDE
        self._graphics.setMaximumHeight(max(160, round(wide * (y1 - y0) / max(x1 - x0, 1e-6)) + BELOW))

    def _say_facts(self) -> None:
        picture, tokens = self._picture, self._theme.tokens
        tint(self._facts, tokens.caution if self._stale else tokens.ink)
        if picture is None:
            self._facts.setText("")
            self._worst.setText("")
            return
        facts = self.tr("{count} touches   {low:+.0f} … {high:+.0f} µm").format(
            count=len(picture.touches), low=picture.mean.min(), high=picture.mean.max()
        )
        stale = self.tr("Stale: {reason}").format(reason=self._stale)
        self._facts.setText(stale if self._stale else facts.replace("-", "−"))
        spread = self.tr("spread {mid:.0f}, worst {worst:.0f} µm").format(
            mid=np.median(picture.spread), worst=picture.spread.max()
        )
        self._worst.setText(spread)

    def _section_moved(self, *_: object) -> None:
        line = self.section
        for letter, end in zip(self._letters, line, strict=True):
            letter.setPos(*end)
        if self._picture is not None:
            self.profile.show_profile(*self._picture.along(line))
            self.profile_moved.emit(line)

    def _along_section(self, place: tuple[float, float]) -> float:
        """Distance from A of the spot of the profile nearest to a place, mm."""
        a, b = np.asarray(self.section[0]), np.asarray(self.section[1])
        far = float(np.hypot(*(b - a)))
        if far == 0.0:
            return 0.0
        return float(np.clip(np.dot(np.asarray(place) - a, b - a) / far, 0.0, far))

    def _pointer_moved(self, place: QPointF) -> None:
        if self._picture is None or not self._plot.sceneBoundingRect().contains(place):
            return
        at = self._plot.getViewBox().mapSceneToView(place)
        self.set_cursor((at.x(), at.y()))
        self.cursor_moved.emit((at.x(), at.y()))

    def eventFilter(self, watched: Any, event: Any) -> bool:
        if event.type() == QEvent.Type.Leave:
            self.set_cursor(None)
            self.cursor_moved.emit(None)
        elif event.type() == QEvent.Type.Resize and watched is self._graphics:
            self._veil.resize(event.size())
        elif event.type() == QEvent.Type.Resize:
            self._fit()
        return super().eventFilter(watched, event)

    def _dress(self) -> None:
        tokens = self._theme.tokens
        self._graphics.setBackground(tokens.panel)
        for axis in ("left", "bottom"):
            dress_axis(self._plot.getAxis(axis), tokens)
        dress_axis(self._bar.axis, tokens)
        self._bar.setLabel("right", "")
        self._lines.setPen(pg.mkPen(255, 255, 255, 130, width=1))
        self._zero.setPen(pg.mkPen("#FFFFFF", width=2))
        self._dots.setPen(pg.mkPen("#FFFFFF", width=1))
        self._dots.setBrush(pg.mkBrush("#1E1C1A"))
        for line in self._across:
            line.setPen(pg.mkPen("#1E1C1A", width=1.4, style=Qt.PenStyle.DashLine))
        self._section.setPen(pg.mkPen("#FFFFFF", width=2.5))
        self._section.hoverPen = pg.mkPen("#FFFFFF", width=4)
        for letter in self._letters:
            letter.setColor(QColor("#1E1C1A"))
            letter.fill = QBrush(QColor("#FFFFFF"))
            letter.setFont(font(Text.LABEL_BOLD))
        self._say_facts()


class Veil(QWidget):
    """A hatch over a picture that no longer holds, with the word in its middle."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme, self._word = theme, ""
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hide()

    def show_word(self, word: str) -> None:
        """Show the hatch with a word; empty hides it."""
        self._word = word
        self.setVisible(bool(word))
        self.raise_()
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self.update()
        super().resizeEvent(event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        hatch = QColor(tokens.caution)
        hatch.setAlphaF(0.55)
        painter.fillRect(self.rect(), QBrush(hatch, Qt.BrushStyle.BDiagPattern))
        painter.setFont(font(Text.SECTION))
        wide = painter.fontMetrics().horizontalAdvance(self._word) + 28
        place = QRectF(0, 0, wide, 34)
        place.moveCenter(QRectF(self.rect()).center())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tokens.caution_ground))
        painter.drawRoundedRect(place, 4, 4)
        painter.setPen(QColor(tokens.caution))
        painter.drawText(place, Qt.AlignmentFlag.AlignCenter, self._word)
        painter.end()
