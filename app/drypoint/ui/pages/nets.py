"""The nets by their reach: how much of the grooves beside each is through, and where least."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject, QRectF, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QListView, QWidget

from drypoint.passes.model import THROUGH
from drypoint.passes.reach import in_words
from drypoint.session.net_reach import NetReach
from drypoint.ui.language.words import fill, told
from drypoint.ui.parts.glyph import Mark, word_colour
from drypoint.ui.parts.lines import Lines
from drypoint.ui.parts.marked_row import RIGHT, MarkedRow, write_line
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text

ROW = 42
"""Height of a row, px."""

SHOWN = 5
"""Rows in sight."""


class _Words(QObject):
    """What is said of a net."""

    def said(self, line: NetReach) -> str:
        return f"{line.net}, {self.chance(line)}, {self.detail(line)}"

    def told(self, line: NetReach) -> str:
        return fill(
            self.tr(
                "{net}: of the {length:.0f} mm of groove beside it {through:.1f} mm are through, "
                "{doubtful:.1f} mm doubtful, {lacking:.1f} mm not through; least reach of a spot {least}"
            ),
            net=line.net,
            length=line.length,
            through=line.through,
            doubtful=line.doubtful,
            lacking=line.not_through,
            least=in_words(line.least),
        )

    def chance(self, line: NetReach) -> str:
        return told(in_words(line.whole))

    def detail(self, line: NetReach) -> str:
        if line.doubtful or line.not_through:
            return fill(
                self.tr("through {share:.0f}, doubtful {d:.0f}, not {n:.0f} %"),
                share=100 * line.share,
                d=100 * line.doubtful / line.length,
                n=100 * line.not_through / line.length,
            )
        return fill(self.tr("through; least {least} at a spot"), least=in_words(line.least))


class _NetRow(MarkedRow):
    """Glyph and net with its chance to be cut off all round, and the shares below."""

    def __init__(self, theme: Theme, words: _Words, parent: QWidget) -> None:
        super().__init__(theme, ROW, (18.0, 14.0), 6.5, parent)
        self._words = words

    def mark(self, about: NetReach) -> Mark:
        return mark_of(about)

    def write(self, painter: QPainter, place: QRectF, about: NetReach, tokens: Tokens) -> None:
        upper = QRectF(place.left() + 34, place.top() + 3, place.width() - 44, 20)
        lower = QRectF(place.left() + 34, place.top() + 21, place.width() - 44, 18)
        colour = word_colour(mark_of(about), tokens)
        chance = self._words.chance(about)
        taken = write_line(painter, upper, chance, Text.LABEL_BOLD, colour, align=RIGHT)
        room = upper.adjusted(0, 0, -taken - 8, 0)
        write_line(painter, room, about.net, Text.LABEL_BOLD, tokens.ink, elide=Qt.TextElideMode.ElideMiddle)
        write_line(painter, lower, self._words.detail(about), Text.CAPTION, tokens.ink2)


class NetList(QListView):
    """The nets, the least sure first.

    Signals
    -------
    net_chosen(object) : `NetReach` or None; the canvas goes there
    """

    net_chosen = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        words = _Words(self)
        self._model = Lines(words.said, words.told, self)
        self.setModel(self._model)
        self.setItemDelegate(_NetRow(theme, words, self))
        self.setUniformItemSizes(True)
        self.setAccessibleName(self.tr("Nets by their reach"))
        self.selectionModel().currentChanged.connect(lambda *_: self.net_chosen.emit(self.current()))
        self.clicked.connect(lambda _: self.net_chosen.emit(self.current()))
        self.activated.connect(lambda _: self.net_chosen.emit(self.current()))
        self.show_nets(())

    def show_nets(self, lines: Sequence[NetReach]) -> None:
        """Other nets, in the order given; the one chosen stays chosen, and nothing is signalled."""
        chosen = self.current()
        self._model.show_lines(lines)
        names = [line.net for line in lines]
        if chosen is not None and chosen.net in names:
            self.blockSignals(True)
            self.setCurrentIndex(self._model.index(names.index(chosen.net), 0))
            self.blockSignals(False)
        self.setFixedHeight(ROW * min(max(len(lines), 1), SHOWN) + 4)

    def current(self) -> NetReach | None:
        """The net chosen."""
        index = self.currentIndex()
        return index.data(Qt.ItemDataRole.UserRole) if index.isValid() else None


def mark_of(line: NetReach) -> Mark:
    """Surely cut off, doubtful, or not through somewhere."""
    if line.not_through > 0.0:
        return Mark.ERROR
    return Mark.DONE if line.whole >= THROUGH and not line.doubtful else Mark.DOUBT
