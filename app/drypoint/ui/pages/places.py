"""Places to look at: a few as notes below each other, many as a list with a note on the one chosen."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QPainter
from PySide6.QtWidgets import (
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from drypoint.ui.parts.blocks import Note, empty, words
from drypoint.ui.parts.glyph import Mark, paint_mark
from drypoint.ui.parts.lines import Index, Lines
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.type import Text, font

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


class _Delegate(QStyledItemDelegate):
    """What it is, and below it where."""

    def __init__(self, theme: Theme, line: Callable[[object], PlaceLine], parent: QWidget) -> None:
        super().__init__(parent)
        self._theme, self._line = theme, line

    def sizeHint(self, _option: QStyleOptionViewItem, _index: Index) -> QSize:
        return QSize(200, ROW)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        line = self._line(index.data(Qt.ItemDataRole.UserRole))
        tokens = self._theme.tokens
        rect: Any = option.rect
        state: Any = option.state
        place = QRectF(rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if state & QStyle.StateFlag.State_Selected:
            painter.fillRect(place, QColor(tokens.soft))
        paint_mark(painter, Mark.DOUBT, tokens, QPointF(place.left() + 18, place.top() + 14), 6.5)
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        for text, size, colour, top in (
            (line.what, Text.LABEL_BOLD, tokens.ink, 3),
            (line.where or line.text, Text.CAPTION, tokens.ink2, 21),
        ):
            body = QRectF(place.left() + 34, place.top() + top, place.width() - 44, 19)
            painter.setFont(font(size))
            painter.setPen(QColor(colour))
            said = QFontMetricsF(font(size)).elidedText(text, Qt.TextElideMode.ElideRight, body.width())
            painter.drawText(body, left, said)
        painter.restore()


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
        self.list.setItemDelegate(_Delegate(theme, line, self.list))
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
