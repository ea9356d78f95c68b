"""Fields for numbers with a unit, and choices."""

from __future__ import annotations

import re

from PySide6.QtCore import QEvent, QObject, QPointF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPalette, QPen, QPolygonF, QWheelEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QLineEdit, QSizePolicy, QWidget

from drypoint.ui.language.words import fill, local, told
from drypoint.ui.theme.sheet import give_look

IN_MM = {"": 1.0, "mm": 1.0, "µm": 1e-3, "um": 1e-3, "in": 25.4, '"': 25.4, "mil": 0.0254}
"""Lengths a user may type into a field of millimetres."""

_NUMBER = re.compile(r"^\s*([+\-−]?\d*[.,]?\d+|[+\-−]?\d+[.,]?)\s*([a-zA-Zµ\"%°/ ]*)\s*$")


def read_number(text: str, unit: str) -> float | None:
    """The number a user typed, in ``unit``; None if it is none.

    A comma may stand for the point. In a field of mm other units of length are converted.
    """
    found = _NUMBER.match(text)
    if found is None:
        return None
    value = float(found[1].replace(",", ".").replace("−", "-"))
    typed = found[2].strip()
    if unit == "mm":
        factor = IN_MM.get(typed)
        return None if factor is None else value * factor
    return value if typed in ("", unit) else None


def show_number(value: float, decimals: int) -> str:
    """A number as it stands in a field."""
    return local(f"{value:.{decimals}f}")


class NumberField(QWidget):
    """A number with its unit; Up and Down step it, Esc takes back what was typed.

    Signals
    -------
    edited(float) : the user settled on another value that is within the limits
    """

    edited = Signal(float)

    def __init__(
        self,
        name: str,
        unit: str,
        *,
        value: float = 0.0,
        decimals: int = 1,
        least: float = -1e6,
        most: float = 1e6,
        step: float | None = None,
        width: int = 84,
        unit_width: int = 30,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._name, self._unit, self._decimals = name, unit, decimals
        self._least, self._most = least, most
        self._step = 10.0**-decimals if step is None else step
        self._value = value
        self._complaint: str | None = None
        self._help = ""
        self._line = QLineEdit(show_number(value, decimals))
        self._line.setAlignment(Qt.AlignmentFlag.AlignRight)
        self._line.setFixedWidth(width)
        self._line.setAccessibleName(f"{name}, {unit}" if unit else name)
        self._line.editingFinished.connect(self._settle)
        self._line.textEdited.connect(self._judge)
        self._line.installEventFilter(self)
        self.setFocusProxy(self._line)
        self.setAccessibleName(name)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(self._line)
        if unit_width:
            label = QLabel(unit)
            label.setFixedWidth(unit_width)
            give_look(label, "unit")
            row.addWidget(label)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    @property
    def value(self) -> float:
        """The value settled on."""
        return self._value

    def set_value(self, value: float) -> None:
        """Show another value without a signal."""
        self._value = value
        self._line.setText(show_number(value, self._decimals))
        self._mark(None)

    def set_limits(self, least: float, most: float) -> None:
        """Accept other values."""
        self._least, self._most = least, most
        self._judge(self._line.text())

    def set_help(self, text: str) -> None:
        """What is said of the field to those who do not see it; a complaint is said before it."""
        self._help = text
        self._describe()

    def line_edit(self) -> QLineEdit:
        """The field itself."""
        return self._line

    def complaint(self, text: str) -> str | None:
        """Why a text is no value, in plain words; None if it is one."""
        value = read_number(text, self._unit)
        if value is None:
            return self.tr("{name}: this is no number").format(name=self._name)
        if not self._least - 1e-12 <= value <= self._most + 1e-12:
            return fill(
                self.tr("{name}: from {least:g} to {most:g} {unit}"),
                name=self._name,
                least=self._least,
                most=self._most,
                unit=self._unit,
            )
        return None

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._line and isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            ways = {Qt.Key.Key_Up: 1.0, Qt.Key.Key_Down: -1.0}
            key = Qt.Key(event.key())
            if key in ways:
                far = 10.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1.0
                value = min(self._most, max(self._least, self._value + ways[key] * far * self._step))
                self._take(value)
                return True
            if key == Qt.Key.Key_Escape and self._line.isModified():
                self.set_value(self._value)
                return True
        return super().eventFilter(watched, event)

    def _judge(self, text: str) -> None:
        self._mark(self.complaint(text))

    def _settle(self) -> None:
        if self.complaint(self._line.text()) is not None:
            return
        value = read_number(self._line.text(), self._unit)
        if value is not None:
            self._take(value)

    def _take(self, value: float) -> None:
        changed = show_number(value, self._decimals) != show_number(self._value, self._decimals)
        self.set_value(value if changed else self._value)
        if changed:
            self.edited.emit(value)

    def _describe(self) -> None:
        said = " ".join(part for part in (self._complaint, self._help) if part)
        self._line.setAccessibleDescription(said)

    def _mark(self, complaint: str | None) -> None:
        if complaint == self._complaint:
            return
        was, self._complaint = self._complaint, complaint
        self._line.setToolTip(complaint or "")
        self._describe()
        if (was is None) == (complaint is None):
            return
        self._line.setProperty("wrong", complaint is not None)
        style = self._line.style()
        style.unpolish(self._line)
        style.polish(self._line)


def describe(field: QWidget, text: str) -> None:
    """Give a field its words for those who do not see it."""
    if isinstance(field, NumberField):
        field.set_help(text)
    field.setAccessibleDescription(text)


class Choice(QComboBox):
    """A choice of a list, with an arrow in the colour of the text."""

    def __init__(self, name: str, width: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setFixedWidth(width)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        role = QPalette.ColorGroup.Active if self.isEnabled() else QPalette.ColorGroup.Disabled
        arrow = QPen(self.palette().color(role, QPalette.ColorRole.WindowText), 1.6)
        arrow.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(arrow)
        x, y = self.width() - 14.0, self.height() / 2
        painter.drawPolyline(QPolygonF([QPointF(x - 4, y - 2), QPointF(x, y + 2), QPointF(x + 4, y - 2)]))
        painter.end()

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()  # the wheel scrolls the page; it must not change what it passes over


class Entry(QWidget):
    """A row of a page: what is asked at the left, the field at the right, a line of help below."""

    def __init__(
        self, label: str, field: QWidget, help_text: str = "", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.title = label
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        words = QLabel(label)
        words.setWordWrap(True)
        words.setBuddy(field)
        give_look(words, "label")
        row.addWidget(words, 1)
        row.addWidget(field, 0)
        if help_text:
            self.setToolTip(told(help_text))
            describe(field, told(help_text))

    def end_with(self, widget: QWidget) -> None:
        """One more small widget at the end of the row."""
        row = self.layout()
        if row is not None:
            row.setSpacing(4)
            row.addWidget(widget)


class Setting(Entry):
    """The row of something that is kept in the job; its help is found beside it."""
