"""The list of clamps, and the numbers of the chosen one: all of it works without a mouse."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.ui.canvas.content import Box, Clamp
from drypoint.ui.language.words import local
from drypoint.ui.parts.blocks import words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.theme.sheet import give_look

FAR = 2000.0
"""No clamp lies further away, mm."""
LEAST = 1.0
"""Side of the smallest clamp, mm."""


class ClampRow(QFrame):
    """One clamp of the list: a click or Space chooses it, Up and Down go on, Delete takes it away."""

    chosen = Signal(int)
    walked = Signal(int, int)
    removed = Signal(int)

    def __init__(self, clamp: Clamp, where: str, chosen: bool) -> None:
        super().__init__()
        self.number = clamp.number
        give_look(self, "row-chosen" if chosen else "row")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        x0, y0, x1, y1 = clamp.box
        size = local(f"{x1 - x0:.1f} × {y1 - y0:.1f} mm")
        self.setAccessibleName(
            self.tr("Clamp {number}, {where}, {size}").format(number=clamp.number, where=where, size=size)
        )
        row = QHBoxLayout(self)
        row.setContentsMargins(8, 6, 8, 6)
        row.addWidget(words(str(clamp.number), "value"))
        row.addSpacing(6)
        row.addWidget(words(where, "quiet"))
        row.addStretch(1)
        row.addWidget(words(size, "value"))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.chosen.emit(self.number)
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.chosen.emit(self.number)
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.walked.emit(self.number, 1 if key == Qt.Key.Key_Down else -1)
        elif key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.removed.emit(self.number)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self.hasFocus():
            painter = QPainter(self)
            painter.setPen(QPen(self.palette().highlight().color(), 2))
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))
            painter.end()


class ClampFields(QWidget):
    """Place and size of one clamp as numbers.

    Signals
    -------
    edited(object) : the new box, (x0, y0, x1, y1) from the lower left of the blank, mm
    """

    edited = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.left = self._field(self.tr("Left edge of the clamp"), -FAR, 0)
        self.low = self._field(self.tr("Lower edge of the clamp"), -FAR, 30)
        self.wide = self._field(self.tr("Width of the clamp"), LEAST, 0)
        self.high = self._field(self.tr("Height of the clamp"), LEAST, 30)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 4, 0, 4)
        column.setSpacing(6)
        for label, sign, pair, key in (
            (self.tr("Lower left"), ",", (self.left, self.low), "x"),
            (self.tr("Size"), "×", (self.wide, self.high), "width"),
        ):
            both = QWidget()
            row = QHBoxLayout(both)
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(6)
            for each in (pair[0], words(sign, "unit"), pair[1]):
                row.addWidget(each)
            made = Setting(label, both)
            explain(made, f"blank.clamps.{key}")
            column.addWidget(made)

    def show_box(self, box: Box) -> None:
        """Show a clamp; no signal."""
        x0, y0, x1, y1 = box
        for field, value in ((self.left, x0), (self.low, y0), (self.wide, x1 - x0), (self.high, y1 - y0)):
            field.set_value(value)

    def _field(self, name: str, least: float, unit_width: int) -> NumberField:
        unit = "mm" if unit_width else ""
        made = NumberField(name, unit, least=least, most=FAR, width=66, unit_width=unit_width)
        made.edited.connect(lambda _: self._tell())
        return made

    def _tell(self) -> None:
        x, y = self.left.value, self.low.value
        self.edited.emit((x, y, x + self.wide.value, y + self.high.value))


def neighbour(clamps: Sequence[Clamp], number: int, step: int) -> int:
    """The clamp before or after another one in the list; itself at the ends."""
    numbers = [clamp.number for clamp in clamps]
    at = min(max(numbers.index(number) + step, 0), len(numbers) - 1)
    return numbers[at]
