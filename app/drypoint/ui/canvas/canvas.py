"""The path canvas: what hand and keyboard do on the board that is shown."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
)
from PySide6.QtWidgets import QWidget

from drypoint.geometry.points import Points
from drypoint.ui.canvas.board_view import BoardView
from drypoint.ui.canvas.content import Box
from drypoint.ui.canvas.pick import Picked, pick
from drypoint.ui.canvas.plane import WAYS
from drypoint.ui.theme.theme import Theme

DRAGGED = 3.0
"""px of movement that make a press a drag."""


class PathCanvas(BoardView):
    """The board under hand and keyboard: pans, zooms, measures, paints and picks.

    Signals
    -------
    cursor_moved(object) : (x, y) mm, board frame, or None when the pointer leaves
    picked(object) : `Picked` that was clicked, or None
    clamp_dragged(int, float, float), board_dragged(float, float) : while editing, mm
    measured(object) : ((x, y), (x, y)) or None
    painted(object) : the brush's way (N, 2) mm, when it is lifted
    menu_wanted(object, object, object) : place (x, y) mm, `Picked` or None, and where on the screen
    """

    cursor_moved = Signal(object)
    picked = Signal(object)
    clamp_dragged = Signal(int, float, float)
    board_dragged = Signal(float, float)
    measured = Signal(object)
    painted = Signal(object)
    menu_wanted = Signal(object, object, object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self._measuring = False
        self._brush = 0.0
        self._editing = False
        self._press: QPointF | None = None
        self._grip: Picked | str | None = None
        self._dragging = False
        self._space = False

    # what the hand does

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

    # moving about

    def extent(self) -> Box | None:
        bounds = self.content.bounds
        if bounds is None or not (self._editing or self.content.clamps):
            return bounds
        x0, y0, x1, y1 = bounds
        more = max((clamp.keep_away for clamp in self.content.clamps), default=0.0)
        more += 2.0 if self._editing else 0.0  # room to drag clamps outwards
        return x0 - more, y0 - more, x1 + more, y1 + more

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
