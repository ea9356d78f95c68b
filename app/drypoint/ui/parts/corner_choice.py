"""A choice of the blank's corners."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Signal
from PySide6.QtWidgets import QWidget

from drypoint.session.corner import Corner
from drypoint.ui.parts.fields import Choice


def corner_word(corner: Corner) -> str:
    """A corner in the language of the window."""
    say = QCoreApplication.translate
    return {
        Corner.LOWER_LEFT: say("corner", "lower left"),
        Corner.LOWER_RIGHT: say("corner", "lower right"),
        Corner.UPPER_LEFT: say("corner", "upper left"),
        Corner.UPPER_RIGHT: say("corner", "upper right"),
    }[corner]


class CornerChoice(Choice):
    """The four corners, by click or keys.

    Signals
    -------
    chosen(object) : `Corner` that a person chose
    """

    chosen = Signal(object)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(name, 132, parent)
        for corner in Corner:
            self.addItem(corner_word(corner), corner.value)
        self.currentIndexChanged.connect(lambda _: self.chosen.emit(self.corner))

    @property
    def corner(self) -> Corner:
        """The one that is chosen."""
        return Corner(str(self.currentData()))

    def show_corner(self, corner: Corner) -> None:
        """Show another one without a signal."""
        blocked = self.blockSignals(True)
        self.setCurrentIndex(list(Corner).index(corner))
        self.blockSignals(blocked)
