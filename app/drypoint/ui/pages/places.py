"""Places to look at: a few as notes below each other, many as a list with a note on the one chosen."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QListView, QVBoxLayout, QWidget

from drypoint.ui.parts.blocks import Note, empty, words
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.parts.lines import Lines
from drypoint.ui.parts.marked_row import MarkedRow, write_line
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text

FEW = 3
"""So many places are notes, all in full; more are a list."""
ROW = 42
"""Height of a row, px."""
SHOWN = 5
"""Rows in sight."""


@dataclass(frozen=True, slots=True)
class PlaceLine:
    """One place: what there is, what to know or do, and where; all in the words of the window."""

    what: str
    text: str
    where: str
    at: tuple[float, float] | None = None
    about: object = None
    """What it was made of."""


class _PlaceRow(MarkedRow):
    """What it is, and below it where."""

    def __init__(self, theme: Theme, line: Callable[[object], PlaceLine], parent: QWidget) -> None:
        super().__init__(theme, ROW, (18.0, 14.0), 6.5, parent)
        self._line = line

    def mark(self, about: object) -> Mark:
        return Mark.DOUBT

    def write(self, painter: QPainter, place: QRectF, about: object, tokens: Tokens) -> None:
        line = self._line(about)
        upper = QRectF(place.left() + 34, place.top() + 3, place.width() - 44, 19)
        write_line(painter, upper, line.what, Text.LABEL_BOLD, tokens.ink)
        write_line(painter, upper.translated(0, 18), line.where or line.text, Text.CAPTION, tokens.ink2)


class PlaceList(QWidget):
    """All places there are.

    Parameters
    ----------
    line : callable
        What is said of a place; asked for those in sight only, as a dense board has thousands.

    Signals
    -------
    place_chosen(object) : `PlaceLine` that has a place; the canvas goes there
    """

    place_chosen = Signal(object)

    def __init__(
        self, theme: Theme, line: Callable[[object], PlaceLine], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._line = line
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        self._count = words("", "value")
        self._model = Lines(self._said, lambda about: line(about).text, self)
        self.list = QListView()
        self.list.setModel(self._model)
        self.list.setItemDelegate(_PlaceRow(theme, line, self.list))
        self.list.setUniformItemSizes(True)
        self.list.setFixedHeight(ROW * SHOWN + 4)
        self.list.setAccessibleName(self.tr("Places to look at"))
        self._notes = QVBoxLayout()
        self._notes.setSpacing(8)
        self._note = Note("caution", "")
        self._note.where_clicked.connect(self._go)
        column.addWidget(self._count)
        column.addWidget(self.list)
        column.addWidget(self._note)
        column.addLayout(self._notes)
        self.list.selectionModel().currentChanged.connect(lambda *_: self._chosen())
        self.list.clicked.connect(lambda _: self._go())
        self.list.activated.connect(lambda _: self._go())
        self._places: tuple[object, ...] = ()
        self.show_places(())

    def show_places(self, places: Sequence[object]) -> None:
        """Other places, the most important first. Nothing is signalled."""
        if self._places == tuple(places) and places:
            return
        self._places = tuple(places)
        many = len(self._places) > FEW
        self._count.setText(self.tr("{count} places to look at").format(count=len(self._places)))
        self._count.setVisible(many)
        self.list.setVisible(many)
        self._note.setVisible(many)
        self._model.show_lines(self._places if many else ())
        if many:
            self.list.setCurrentIndex(self._model.index(0, 0))
        empty(self._notes)
        for line in () if many else map(self._line, self._places):
            note = Note("caution", line.what, line.text, where=_link(line))
            note.where_clicked.connect(lambda line=line: self.place_chosen.emit(line))
            self._notes.addWidget(note)

    def current(self) -> PlaceLine | None:
        """The place chosen in the list."""
        index = self.list.currentIndex()
        return self._line(index.data(Qt.ItemDataRole.UserRole)) if index.isValid() else None

    def _said(self, about: object) -> str:
        line = self._line(about)
        return f"{line.what}, {line.where or line.text}"

    def _chosen(self) -> None:
        line = self.current()
        if line is not None:
            self._note.say("caution", line.what, line.text, where=_link(line))

    def _go(self) -> None:
        line = self.current()
        if line is not None and line.at is not None:
            self.place_chosen.emit(line)


def _link(line: PlaceLine) -> str:
    return line.where if line.at is not None else ""
