"""What the bits have cut at the machine, and when to look at them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.bits.wear import Use, Wear
from drypoint.ui.language.words import fill
from drypoint.ui.parts.blocks import Bar, Elided, button, empty, words
from drypoint.ui.theme.theme import Theme

NEAR = 0.9
"""Share of its life from which a bit is to be looked at."""


class WearForm(QWidget):
    """A row for every bit that has cut something: how much, a bar, and a button for a new one.

    Signals
    -------
    renewed(str) : a new bit of that name was put in
    """

    renewed = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._shown: object = None
        self.buttons: dict[str, QWidget] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        self._rows = QVBoxLayout()
        self._rows.setSpacing(10)
        column.addLayout(self._rows)
        self._none = words(
            self.tr("Nothing was cut at a machine yet. The bench wears no bits."), "caption", wrap=True
        )
        column.addWidget(self._none)

    def show_wear(self, wear: Wear, names: Sequence[str]) -> None:
        """Show what bits of these names have done."""
        used = [(name, wear.uses[name]) for name in names if name in wear.uses]
        self._none.setVisible(not used)
        if self._shown == used:
            return
        self._shown = used
        empty(self._rows)
        self.buttons = {}
        for name, use in used:
            self._rows.addWidget(self._row(name, use))

    def _row(self, name: str, use: Use) -> QWidget:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        title = Elided("label")
        title.setText(name)
        new = button(self.tr("New bit"), "flat")
        new.setAccessibleName(self.tr("A new {bit} was put in").format(bit=name))
        new.clicked.connect(lambda: self.renewed.emit(name))
        self.buttons[name] = new
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(title, 1)
        row.addWidget(new)
        column.addLayout(row)
        column.addWidget(Bar(self._theme, use.worn, accent=use.worn >= NEAR))
        done = fill(self.tr("{metres:.1f} m cut, {holes} holes"), metres=use.length / 1000.0, holes=use.holes)
        column.addWidget(words(done, "caption", wrap=True))
        if use.worn >= NEAR:
            hint = self.tr("Look at it under a loupe; replace it if it leaves burrs.")
            column.addWidget(words(hint, "caption", wrap=True))
        return made
