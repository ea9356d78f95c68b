"""Reference holes beside the position: which one, how it is found, and the button that says it is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.ui.language.words import local
from drypoint.ui.parts.blocks import Row, button, words
from drypoint.ui.parts.fields import Choice
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme


class Way(IntEnum):
    """How a hole is found; in the order of the panel's segments."""

    JOG = 0
    WHEEL = 1
    SHIFT = 2
    RIM = 3


@dataclass(frozen=True, slots=True)
class HoleLine:
    """One reference hole: name, place in the design, residual once touched (mm), its mark, its kind."""

    name: str
    design: tuple[float, float]
    residual: float | None = None
    mark: Mark = Mark.TO_DO
    what: str = ""


@dataclass(frozen=True, slots=True)
class FitFacts:
    """What the fit says in short: mean residual and the ring left at the worst hole, mm."""

    residual: float | None = None
    ring_left: float | None = None


class ReferencePanel(QWidget):
    """The short form beside the position; the page has the long one.

    Signals
    -------
    chosen(str) : this hole is the one to find now
    over_hole(str) : the bit stands over this hole
    another() : bring the bit near the hole and have it jogged over it
    set_over(str), typed(str) : brought there by hand wheel: set the position there, or type what it is
    shift(str) : go where the hole should be and have the board shifted
    rim(str) : feel the rim of this hole
    remap() : place every path anew and show both places
    """

    chosen = Signal(str)
    over_hole = Signal(str)
    another = Signal()
    set_over = Signal(str)
    typed = Signal(str)
    shift = Signal(str)
    rim = Signal(str)
    remap = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._next: str | None = None
        self._usable = True
        self._other_way = False
        self._count = words("", "caption", right=True)
        self.holes = Choice(self.tr("Hole to find"), 152)
        self.ways = Segments(
            [self.tr("Jog"), self.tr("Wheel"), self.tr("Shift"), self.tr("Rim")], self.tr("Found by")
        )
        self._hint = words("", "caption")
        self._residual = Row(theme, self.tr("Residual"))
        self._ring = Row(theme, self.tr("Ring left, worst"))
        self.over = button("")
        self.over.setMinimumHeight(40)
        self.another_button = button("")
        self.remap_button = button(self.tr("Re-map"))
        self._build()
        self.over.clicked.connect(self._act)
        self.another_button.clicked.connect(self._help)
        self.remap_button.clicked.connect(self.remap)
        self.ways.chosen.connect(lambda _: self._show_way())
        self.holes.activated.connect(lambda _: self.chosen.emit(str(self.holes.currentData())))
        self.show_holes((), FitFacts(), None)

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 6, 16, 10)
        column.setSpacing(5)
        head = QHBoxLayout()
        head.addWidget(words(self.tr("Reference"), "section"))
        head.addStretch(1)
        head.addWidget(self._count)
        head.addWidget(self.holes)
        column.addLayout(head)
        facts = QHBoxLayout()
        facts.setSpacing(20)
        facts.addWidget(self._residual, 2)
        facts.addWidget(self._ring, 3)
        column.addLayout(facts)
        column.addWidget(self.ways)
        column.addWidget(self.over)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.another_button, 1)
        row.addWidget(self.remap_button, 1)
        column.addLayout(row)
        column.addWidget(self._hint)
        column.addStretch(1)

    @property
    def way(self) -> Way:
        """How holes are found."""
        return Way(self.ways.choice)

    def show_holes(self, holes: Sequence[HoleLine], facts: FitFacts, coming: str | None) -> None:
        """Show the holes and the fit; ``coming`` is the name of the one to find next."""
        touched = sum(hole.residual is not None or hole.mark is Mark.DONE for hole in holes)
        self._count.setText(self.tr("{count} touched").format(count=touched))
        self._residual.show_value(_mm(facts.residual))
        self._ring.show_value(_mm(facts.ring_left))
        with QSignalBlocker(self.holes):
            self.holes.clear()
            for hole in holes:
                self.holes.addItem(self._words(hole), hole.name)
            self.holes.setCurrentIndex(self.holes.findData(coming))
        self._next = coming
        self._show_way()

    def _words(self, hole: HoleLine) -> str:
        state = {Mark.DONE: self.tr("touched"), Mark.ERROR: self.tr("doubtful")}.get(hole.mark, "")
        return "  ".join(part for part in (hole.name, hole.what, state) if part)

    def show_approach(self, other_way: bool) -> None:
        """Say that the bit came from the right or from above: play is taken up the other way then."""
        if other_way != self._other_way:
            self._other_way = other_way
            self._show_way()

    def emphasise(self, on: bool) -> None:
        """While the page of the reference holes is open the large button is the one to press.

        It is filled then; what the fit says stands on the page already.
        """
        for row in (self._residual, self._ring):
            row.setVisible(not on)
        if on:
            give_look(self.over, "primary")
            return
        self.over.setProperty("look", None)
        style = self.over.style()
        style.unpolish(self.over)
        style.polish(self.over)

    def confirm(self) -> None:
        """Do what the large button says (key B)."""
        if self.over.isVisible() and self.over.isEnabled():
            self._act()

    def set_usable(self, usable: bool) -> None:
        """Lock what needs a machine at rest."""
        self._usable = usable
        for each in (self.over, self.remap_button, self.another_button):
            each.setEnabled(usable)

    def _show_way(self) -> None:
        name = self._next
        self.over.setVisible(name is not None)
        said = {
            Way.JOG: self.tr("Bit is over {name}"),
            Way.WHEEL: self.tr("Set x, y here: bit is over {name}"),
            Way.SHIFT: self.tr("Go to {name}, then shift the board"),
            Way.RIM: self.tr("Feel the rim of {name}"),
        }[self.way]
        self.over.setText(said.format(name=name))
        beside = {Way.JOG: self.tr("Bring it near"), Way.WHEEL: self.tr("Type the place…")}.get(self.way, "")
        self.another_button.setText(beside)
        self.another_button.setVisible(bool(beside) and name is not None)
        self._hint.setText(
            {
                Way.JOG: self.tr("Came from right or above: go back a step, come again.")
                if self._other_way
                else self.tr("Come from the left and from below at the end."),
                Way.WHEEL: self.tr("The position is set, not read; nothing moves."),
                Way.SHIFT: self.tr("The second hole: turn the board about the first."),
                Way.RIM: self.tr("A bit thinner than the hole; clip on its copper."),
            }[self.way]
        )

    def _act(self) -> None:
        if self._next is None:
            return
        signal = {
            Way.JOG: self.over_hole,
            Way.WHEEL: self.set_over,
            Way.SHIFT: self.shift,
            Way.RIM: self.rim,
        }[self.way]
        signal.emit(self._next)

    def _help(self) -> None:
        if self.way is Way.WHEEL and self._next is not None:
            self.typed.emit(self._next)
        else:
            self.another.emit()


def _mm(value: float | None) -> str:
    return "–" if value is None else local(f"{value:.2f} mm").replace("-", "−")
