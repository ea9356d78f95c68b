"""A row of joined buttons of which one is chosen."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QSizePolicy, QWidget

from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.type import Text, font


class Segments(QWidget):
    """One choice of a few; arrow keys move it.

    Signals
    -------
    chosen(int) : index, when the user chooses
    """

    chosen = Signal(int)

    def __init__(
        self, labels: Sequence[str], name: str, *, chosen: int = 0, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        for number, label in enumerate(labels):
            button = QPushButton(label)
            button.setCheckable(True)
            button.setAccessibleName(f"{name}: {label}")
            give_look(button, _place(number, len(labels)))
            button.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
            wide = QFontMetrics(font(Text.LABEL_BOLD)).horizontalAdvance(label)
            button.setMinimumWidth(wide + 26)  # room for the bold letters of the chosen one
            self._group.addButton(button, number)
            row.addWidget(button)
        self.choose(chosen)
        self._group.idClicked.connect(self.chosen)

    def choose(self, number: int) -> None:
        """Choose without a signal; nothing if there is no such segment."""
        button = self._group.button(number)
        if button is not None:
            button.setChecked(True)

    @property
    def choice(self) -> int:
        """Index of what is chosen."""
        return self._group.checkedId()

    def set_label(self, number: int, label: str) -> None:
        """Change the words of one segment."""
        button = self._group.button(number)
        button.setText(label)
        button.setMinimumWidth(QFontMetrics(font(Text.LABEL_BOLD)).horizontalAdvance(label) + 26)
        button.setAccessibleName(f"{self.accessibleName()}: {label}")

    def buttons(self) -> list[QPushButton]:
        """The buttons, left to right."""
        return [b for b in self._group.buttons() if isinstance(b, QPushButton)]


def _place(number: int, count: int) -> str:
    if count == 1:
        return "only-segment"
    return {0: "first-segment", count - 1: "last-segment"}.get(number, "segment")
