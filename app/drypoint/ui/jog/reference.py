"""Reference holes: what was touched, what is left over, and the next one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.ui.language.words import local
from drypoint.ui.parts.blocks import Row, button, empty, words
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.theme.theme import Theme


@dataclass(frozen=True, slots=True)
class HoleLine:
    """One reference hole: number, place in the design, residual once touched (mm), its mark."""

    number: int
    design: tuple[float, float]
    residual: float | None = None
    mark: Mark = Mark.TO_DO


@dataclass(frozen=True, slots=True)
class FitFacts:
    """What the fit says in short: mean residual and the ring left at the worst hole, mm."""

    residual: float | None = None
    ring_left: float | None = None


class ReferencePanel(QWidget):
    """The short form beside the position; the page has the long one.

    Signals
    -------
    over_hole(int) : the bit stands over this hole
    another() : choose the next hole
    remap() : measure the surface again
    """

    over_hole = Signal(int)
    another = Signal()
    remap = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._next: int | None = None
        self._count = words("", "caption", right=True)
        self._list = QVBoxLayout()
        self._list.setSpacing(0)
        self._residual = Row(theme, self.tr("Residual"))
        self._ring = Row(theme, self.tr("Ring left, worst"))
        self.over = button("")
        self.another_button = button(self.tr("Touch another hole"))
        self.remap_button = button(self.tr("Re-map"))
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 6, 16, 10)
        column.setSpacing(4)
        head = QHBoxLayout()
        head.addWidget(words(self.tr("Reference"), "section"))
        head.addStretch(1)
        head.addWidget(self._count)
        column.addLayout(head)
        column.addLayout(self._list)
        facts = QHBoxLayout()
        facts.setSpacing(20)
        facts.addWidget(self._residual, 2)
        facts.addWidget(self._ring, 3)
        column.addLayout(facts)
        column.addWidget(self.over)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.another_button, 1)
        row.addWidget(self.remap_button, 1)
        column.addLayout(row)
        column.addStretch(1)
        self.over.clicked.connect(self._say_over)
        self.another_button.clicked.connect(self.another)
        self.remap_button.clicked.connect(self.remap)
        self.show_holes((), FitFacts(), None)

    def show_holes(
        self, holes: Sequence[HoleLine], facts: FitFacts, coming: int | None, *, listed: bool = False
    ) -> None:
        """Show the holes and the fit; ``coming`` is the number of the one to touch next.

        The list itself is shown only if ``listed``: the page of this step has it already.
        """
        empty(self._list)
        for hole in holes if listed else ():
            left = "" if hole.residual is None else local(f"{hole.residual:.3f} mm")
            place = local(f"{hole.number}   {hole.design[0]:.2f}, {hole.design[1]:.2f}").replace("-", "−")
            self._list.addWidget(Row(self._theme, place, left, mark=hole.mark))
        touched = sum(hole.residual is not None for hole in holes)
        self._count.setText(self.tr("{count} holes touched").format(count=touched))
        self._residual.show_value(_mm(facts.residual))
        self._ring.show_value(_mm(facts.ring_left))
        self._next = coming
        self.over.setVisible(coming is not None)
        self.over.setText(self.tr("Bit is over hole {number}").format(number=coming))

    def confirm(self) -> None:
        """Say that the bit is over the hole that comes next (key B)."""
        if self.over.isVisible() and self.over.isEnabled():
            self._say_over()

    def set_usable(self, usable: bool) -> None:
        """Lock what needs a machine at rest."""
        for each in (self.over, self.remap_button, self.another_button):
            each.setEnabled(usable)

    def _say_over(self) -> None:
        if self._next is not None:
            self.over_hole.emit(self._next)


def _mm(value: float | None) -> str:
    return "–" if value is None else local(f"{value:.2f} mm")
