"""The board as the canvas shows it: content, view, marks, and the card of what the pointer is over."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import numpy as np
from PySide6.QtCore import QRectF, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from drypoint.geometry.points import Points
from drypoint.ui.canvas.base import BasePainter
from drypoint.ui.canvas.content import Content, Layer, Spot, View
from drypoint.ui.canvas.describe import describe
from drypoint.ui.canvas.hover import Card, paint_card
from drypoint.ui.canvas.overlay import Marks, Overlay
from drypoint.ui.canvas.paths import PathSet
from drypoint.ui.canvas.pick import Picked, pick
from drypoint.ui.canvas.plane import PlaneView
from drypoint.ui.canvas.rulers import LEFT, LOW
from drypoint.ui.canvas.strokes import pen
from drypoint.ui.canvas.tiles import TileCache
from drypoint.ui.canvas.trials import trials_in_words
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.theme.theme import Theme

HOVER_DELAY = 150
"""ms before the hover card appears."""


class BoardView(PlaneView):
    """Shows a `Content` in one of four views.

    Signals
    -------
    view_changed(object) : `View`
    """

    view_changed = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self._base = BasePainter(theme.tokens)
        self._overlay = Overlay(theme.tokens)
        self._tiles = TileCache(self._base.paint, lambda: self._theme.tokens.canvas)
        self._marks = Marks()
        self._card: tuple[tuple[float, float], Card] | None = None
        self._describe: Callable[[Picked], Card] = describe
        self._more = QTimer(self, singleShot=True, interval=0)
        self._more.timeout.connect(self.update)
        self._hover = QTimer(self, singleShot=True, interval=HOVER_DELAY)
        self._hover.timeout.connect(self._show_card)
        self.setAccessibleName(self.tr("Board"))
        theme.changed.connect(self._dress)

    # what is shown

    @property
    def content(self) -> Content:
        """What is shown."""
        return self._base.content

    @property
    def view(self) -> View:
        """Which view of the grooves is shown."""
        return self._base.view

    @property
    def travelled(self) -> float:
        """How far the order or the current pass is shown cut, mm."""
        return self._base.travelled

    def moving(self) -> PathSet | None:
        """The paths that are cut in this view."""
        return self._base.moving()

    def set_content(self, content: Content) -> None:
        """Show another content; the first one with anything in it is fitted into view."""
        before = self._base.content.bounds
        self._base.show(content)
        self._tiles.refresh()  # what is shown stays until its successor is painted: nothing flashes
        self._fit_pending = self._fit_pending or before is None
        if self._fitted and content.bounds != before:
            self.fit()
        self._forget_card()
        self._say_what_is_seen()
        self.update()

    def set_view(self, view: View) -> None:
        """Show the grooves another way."""
        if view is not self._base.view:
            self._base.view = view
            self._tiles.refresh()
            self._forget_card()
            self._say_what_is_seen()
            self.view_changed.emit(view)
            self.update()

    def set_hidden(self, layers: frozenset[Layer]) -> None:
        """Hide some layers."""
        self._base.hidden = self._overlay.hidden = layers
        self._tiles.refresh()
        self._say_what_is_seen()
        self.update()

    def set_by_net(self, by_net: bool) -> None:
        """Colour the copper by net in the nets view."""
        self._base.by_net = by_net
        self._tiles.refresh()
        self.update()

    def set_travelled(self, travelled: float) -> None:
        """How far the order or the current pass is cut, mm; only what changes is painted anew."""
        paths, before = self._base.moving(), self._base.travelled
        self._base.travelled = travelled
        if paths is None or travelled == before:
            return
        level = paths.level(self._seen.scale * self.devicePixelRatioF())
        low, high = sorted((before, travelled))
        touched = (level.along[level.stops - 1] >= low) & (level.along[level.starts] <= high)
        boxes = level.boxes[touched]
        if len(boxes) > 200:
            self._tiles.refresh()
        else:
            for box in boxes.tolist():
                self._tiles.refresh_box((box[0], box[1], box[2], box[3]))
        self.update()

    def set_bit(self, place: tuple[float, float] | None, trail: Points | None = None) -> None:
        """Where the bit is and where it has just been, board frame; None while not known."""
        self._mark(replace(self._marks, bit=place, trail=np.zeros((0, 2)) if trail is None else trail))

    def set_cursor(self, place: tuple[float, float] | None) -> None:
        """Show the shared cursor where another view has it."""
        self._mark(replace(self._marks, cursor=place))

    def set_profile(self, line: tuple[tuple[float, float], tuple[float, float]] | None) -> None:
        """Show the line of the height profile."""
        self._mark(replace(self._marks, profile=line))

    def set_chosen(self, nets: Sequence[str], spot: Spot | None = None) -> None:
        """Mark nets (two at most are told apart) and a spot."""
        paths = [(name, self._base.net_path(name)) for name in nets]
        chosen = tuple((name, path) for name, path in paths if path is not None)
        self._mark(replace(self._marks, chosen=chosen, spot=spot))

    def set_chosen_clamp(self, number: int | None) -> None:
        """Mark a clamp and let arrow keys move it while editing."""
        self._mark(replace(self._marks, chosen_clamp=number))

    def set_description(self, say: Callable[[Picked], Card]) -> None:
        """Another way to put a picked thing into words."""
        self._describe = say

    # moving about

    def _look(self, seen: Viewport) -> None:
        self._card = None
        super()._look(seen)

    def zoom_to_chosen(self) -> None:
        """Show the chosen nets or spot."""
        if self._marks.spot is not None:
            (x, y), r = self._marks.spot.at, self._marks.spot.radius
            self.zoom_to((x - r, y - r, x + r, y + r))
        elif self._marks.chosen:
            box = self._marks.chosen[0][1].boundingRect()
            for _, path in self._marks.chosen[1:]:
                box = box.united(path.boundingRect())
            self.zoom_to((box.left(), box.top(), box.right(), box.bottom()))

    def _mark(self, marks: Marks) -> None:
        self._marks = marks
        self.update()

    def _dress(self) -> None:
        self._base.tokens = self._overlay.tokens = self._theme.tokens
        self._tiles.clear()
        self.update()

    def _say_what_is_seen(self) -> None:
        board = self.content.board
        said = self.tr("No board yet")
        if board is not None:
            said = self.tr("{nets} nets, {holes} holes; view: {view}").format(
                nets=len(board.nets), holes=len(board.holes), view=self.view.value
            )
        trials = () if Layer.TRIALS in self._overlay.hidden else self.content.trials
        self.setAccessibleDescription("; ".join(filter(None, (said, trials_in_words(trials)))))

    # painting

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        if self._fit_pending and self.content.bounds is not None:
            self._fit_pending = False
            self.fit()
        tokens = self._theme.tokens
        painter.fillRect(self.rect(), QColor(tokens.canvas))
        if not self._tiles.draw(painter, self._seen, self.devicePixelRatioF(), self._focus_spot):
            self._more.start()
        if self.content.bounds is None:
            self._paint_empty(painter)
        self._overlay.paint(painter, self._seen, self.content, self._marks)
        self._paint_edges(painter)
        if self._card is not None:
            paint_card(painter, self._seen, self.content, tokens, *self._card)
        painter.end()

    def _paint_empty(self, painter: QPainter) -> None:
        """A dashed blank where the board will be."""
        width, height = self._seen.width - LEFT, self._seen.height - LOW
        place = QRectF(LEFT + 0.18 * width, 0.2 * height, 0.64 * width, 0.6 * height)
        stroke = pen(self._theme.tokens.edge, 1.4)
        stroke.setDashPattern([6.0, 5.0])
        painter.setPen(stroke)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(place, 6, 6)

    def show_card_at(self, x: float, y: float) -> None:
        """Show the hover card of what lies at (x, y) mm."""
        found = pick(self._base, x, y, self._seen.scale)
        self._card = None if found is None else (found.at, self._describe(found))
        self.update()

    def _show_card(self) -> None:
        self.show_card_at(*self._seen.to_mm(self._focus_spot.x(), self._focus_spot.y()))

    def _forget_card(self) -> None:
        self._hover.stop()
        self._card = None
        self.update()
