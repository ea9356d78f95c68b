"""What the bits have cut at the machine, and when to look at them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.bits.naming import named
from drypoint.bits.wear import Use, Wear
from drypoint.ui.language.words import fill
from drypoint.ui.parts.blocks import Bar, Elided, button, empty, words
from drypoint.ui.parts.fields import Entry, NumberField
from drypoint.ui.theme.theme import Theme

NEAR = 0.9
"""Share of its life from which a bit is to be looked at."""


class WearForm(QWidget):
    """A row for every bit that has cut something: how much, a bar, and a button for a new one.

    Signals
    -------
    renewed(str) : a new bit of that name was put in
    limited(str, object, object) : look at it after so many mm, after so many holes; None leaves as it is
    """

    renewed = Signal(str)
    limited = Signal(str, object, object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._shown: object = None
        self.buttons: dict[str, QWidget] = {}
        self.limits: dict[str, list[NumberField]] = {}
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
        self.buttons, self.limits = {}, {}
        for name, use in used:
            self._rows.addWidget(self._row(name, use))

    def _row(self, name: str, use: Use) -> QWidget:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        title = Elided("label")
        title.setText(named(name))
        new = button(self.tr("New bit"), "flat")
        new.setAccessibleName(fill(self.tr("A new {bit} was put in"), bit=named(name)))
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
        for limit in self._limits(name, use):
            column.addWidget(limit)
        if use.worn >= NEAR:
            hint = self.tr("Look at it under a loupe; replace it if it leaves burrs.")
            column.addWidget(words(hint, "caption", wrap=True))
        return made

    def _limits(self, name: str, use: Use) -> list[Entry]:
        """After how much the bit is to be looked at: by length for what cuts, by holes for what drills."""
        rows = []
        if use.length or not use.holes:
            field = NumberField(
                self.tr("Look at it after"), "m", value=use.replace_at_mm / 1000.0, least=0.0, most=10_000.0
            )
            field.edited.connect(lambda metres: self.limited.emit(name, 1000.0 * metres, None))
            rows.append(field)
        if use.holes:
            field = NumberField(
                self.tr("Look at it after"),
                self.tr("holes"),
                value=use.replace_at_holes,
                decimals=0,
                least=0.0,
                most=1_000_000.0,
                step=100.0,
                unit_width=44,
            )
            field.edited.connect(lambda holes: self.limited.emit(name, None, round(holes)))
            rows.append(field)
        self.limits[name] = rows
        for field in rows:
            field.setToolTip(self.tr("0: never"))
        return [Entry(field.accessibleName(), field) for field in rows]
