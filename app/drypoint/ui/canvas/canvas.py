"""The path canvas."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import numpy as np
from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QWidget

from drypoint.geometry.points import Points
from drypoint.ui.canvas.base import BasePainter
from drypoint.ui.canvas.content import Box, Content, Layer, Spot, View
from drypoint.ui.canvas.describe import describe
from drypoint.ui.canvas.hover import Card, paint_card
from drypoint.ui.canvas.overlay import Marks, Overlay
from drypoint.ui.canvas.paths import PathSet
from drypoint.ui.canvas.pick import Picked, pick
from drypoint.ui.canvas.plane import WAYS, PlaneView
from drypoint.ui.canvas.rulers import LEFT, LOW
from drypoint.ui.canvas.strokes import pen
from drypoint.ui.canvas.tiles import TileCache
from drypoint.ui.canvas.trials import trials_in_words
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.theme.theme import Theme

HOVER_DELAY = 150
"""ms before the hover card appears."""
DRAGGED = 3.0
"""px of movement that make a press a drag."""


class PathCanvas(PlaneView):
    """Shows a `Content` in one of four views; pans, zooms, measures and picks.

    Signals
    -------
    cursor_moved(object) : (x, y) mm, board frame, or None when the pointer leaves
    picked(object) : `Picked` that was clicked, or None
    view_changed(object) : `View`
    clamp_dragged(int, float, float), board_dragged(float, float) : while editing, mm
    measured(object) : ((x, y), (x, y)) or None
    painted(object) : the brush's way (N, 2) mm, when it is lifted
    menu_wanted(object, object, object) : place (x, y) mm, `Picked` or None, and where on the screen
    """

    cursor_moved = Signal(object)
    picked = Signal(object)
    view_changed = Signal(object)
    clamp_dragged = Signal(int, float, float)
    board_dragged = Signal(float, float)
    measured = Signal(object)
    painted = Signal(object)
    menu_wanted = Signal(object, object, object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self._base = BasePainter(theme.tokens)
        self._overlay = Overlay(theme.tokens)
        self._tiles = TileCache(self._base.paint, lambda: self._theme.tokens.canvas)
        self._marks = Marks()
        self._card: tuple[tuple[float, float], Card] | None = None
        self._describe: Callable[[Picked], Card] = describe
        self._measuring = False
        self._brush = 0.0
        self._editing = False
        self._press: QPointF | None = None
        self._grip: Picked | str | None = None
        self._dragging = False
        self._space = False
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

    def set_editing(self, editing: bool) -> None:
        """Let clamps and the board be dragged; the owner moves them by showing another content."""
        self._editing = editing

    def keep_blank_still(self, dx: float, dy: float) -> None:
        """Look elsewhere after the board moved by (dx, dy) mm on its blank."""
        fitted = self._fitted
        self._look(replace(self._seen, x=self._seen.x - dx, y=self._seen.y - dy))
        self._fitted = fitted

    def set_measuring(self, measuring: bool) -> None:
        """Measure between two places by dragging."""
        self._measuring = measuring
        self.setCursor(Qt.CursorShape.CrossCursor if measuring else Qt.CursorShape.ArrowCursor)
        if not measuring:
            self._mark(replace(self._marks, measure=None))
            self.measured.emit(None)

    def set_coming(self, places: Points | None) -> None:
        """Show where to touch next, board frame; None for nowhere."""
        self._mark(replace(self._marks, coming=np.zeros((0, 2)) if places is None else places))

    def set_painting(self, radius: float) -> None:
        """Paint with a brush of this radius, mm, by dragging; 0 ends it."""
        self._brush = radius
        self.setCursor(Qt.CursorShape.CrossCursor if radius else Qt.CursorShape.ArrowCursor)
        self._mark(replace(self._marks, brush=None))

    def set_description(self, say: Callable[[Picked], Card]) -> None:
        """Another way to put a picked thing into words."""
        self._describe = say

    # moving about

    def extent(self) -> Box | None:
        bounds = self.content.bounds
        if bounds is None or not (self._editing or self.content.clamps):
            return bounds
        x0, y0, x1, y1 = bounds
        more = max((clamp.keep_away for clamp in self.content.clamps), default=0.0)
        more += 2.0 if self._editing else 0.0  # room to drag clamps outwards
        return x0 - more, y0 - more, x1 + more, y1 + more

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

    # hand and keyboard

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._press, self._dragging = event.position(), False
        left = event.button() == Qt.MouseButton.LeftButton
        place = self._seen.to_mm(event.position().x(), event.position().y())
        self._grip = None
        if event.button() == Qt.MouseButton.MiddleButton or (left and self._space):
            self._grip = "pan"
        elif left and self._measuring:
            self._grip = "measure"
        elif left and self._brush:
            self._grip = "paint"
            self._mark(replace(self._marks, brush=(np.array([place]), self._brush)))
        elif left and self._editing:
            found = pick(self._base, *place, self._seen.scale)
            if found is not None and found.kind == "clamp":
                self._grip = found
                self.set_chosen_clamp(found.index)
            elif self._on_board(place):
                self._grip = "board"
        if self._grip is None and left:
            self._grip = "pick or pan"
        self._forget_card()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        place = self._seen.to_mm(at.x(), at.y())
        self._focus_spot = at
        self.cursor_moved.emit(place)
        if self._press is None:
            self._hover.start()
            if self._card is not None:
                self._forget_card()
            return
        moved = at - self._press
        if not self._dragging and abs(moved.x()) + abs(moved.y()) < DRAGGED:
            return
        start = self._seen.to_mm(self._press.x(), self._press.y())
        self._dragging = True
        step = (place[0] - start[0], place[1] - start[1])
        if self._grip in ("pan", "pick or pan"):
            self._look(self._seen.panned(moved.x(), moved.y()))
        elif self._grip == "measure":
            self._mark(replace(self._marks, measure=(start, place)))
            self.measured.emit((start, place))
            return
        elif self._grip == "paint" and self._marks.brush is not None:
            way = np.vstack((self._marks.brush[0], [place]))
            self._mark(replace(self._marks, brush=(way, self._brush)))
        elif isinstance(self._grip, Picked):
            self.clamp_dragged.emit(self._grip.index, *step)
        elif self._grip == "board":
            self.board_dragged.emit(*step)
        self._press = at

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if not self._dragging and self._grip == "pick or pan" and self._press is not None:
            self.picked.emit(
                pick(self._base, *self._seen.to_mm(self._press.x(), self._press.y()), self._seen.scale)
            )
        if self._grip == "paint" and self._marks.brush is not None:
            way = self._marks.brush[0]
            self._mark(replace(self._marks, brush=None))
            self.painted.emit(way)
        self._press, self._grip, self._dragging = None, None, False

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """By the keyboard, the menu is about where the bit is shown."""
        at = QPointF(event.pos())
        if event.reason() == QContextMenuEvent.Reason.Keyboard and self._marks.bit is not None:
            at = QPointF(*self._seen.spot(*self._marks.bit))
        place = self._seen.to_mm(at.x(), at.y())
        found = pick(self._base, *place, self._seen.scale)
        self.menu_wanted.emit(place, found, self.mapToGlobal(at.toPoint()))

    def leaveEvent(self, event: QEvent) -> None:
        self._forget_card()
        self.cursor_moved.emit(None)
        super().leaveEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._space = False
        super().focusOutEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in WAYS and self._editing:
            dx, dy = -0.1 * WAYS[key][0], 0.1 * WAYS[key][1]
            if self._marks.chosen_clamp is not None:
                self.clamp_dragged.emit(self._marks.chosen_clamp, dx, dy)
            else:
                self.board_dragged.emit(dx, dy)
        elif key == Qt.Key.Key_C and self._editing and self.content.clamps:
            self._choose_next_clamp()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.zoom_to_chosen()
        elif key == Qt.Key.Key_Space:
            self._space = True
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._space = False
        super().keyReleaseEvent(event)

    def _choose_next_clamp(self) -> None:
        numbers = [clamp.number for clamp in self.content.clamps]
        now = self._marks.chosen_clamp
        following = numbers[(numbers.index(now) + 1) % len(numbers) if now in numbers else 0]
        self.set_chosen_clamp(following)
        box = self.content.clamps[numbers.index(following)].box
        self.picked.emit(Picked("clamp", following, (box[0], box[1])))

    def _on_board(self, place: tuple[float, float]) -> bool:
        board = self.content.board
        if board is None:
            return False
        x0, y0, x1, y1 = board.bounds
        return x0 <= place[0] <= x1 and y0 <= place[1] <= y1

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
