"""The nets by their reach: how much of the grooves beside each is through, and where least."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QObject, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QPainter
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from drypoint.passes.model import THROUGH
from drypoint.passes.reach import in_words
from drypoint.session.net_reach import NetReach
from drypoint.ui.language.words import fill, told
from drypoint.ui.parts.glyph import Mark, paint_mark, word_colour
from drypoint.ui.parts.lines import Index, Lines
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.type import Text, font

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


class _Delegate(QStyledItemDelegate):
    """Glyph and net with its chance to be cut off all round, and the shares below."""

    def __init__(self, theme: Theme, words: _Words, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme, self._words = theme, words

    def sizeHint(self, _option: QStyleOptionViewItem, _index: Index) -> QSize:
        return QSize(200, ROW)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        line: NetReach = index.data(Qt.ItemDataRole.UserRole)
        tokens, mark = self._theme.tokens, mark_of(line)
        rect: Any = option.rect
        state: Any = option.state
        place = QRectF(rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if state & QStyle.StateFlag.State_Selected:
            painter.fillRect(place, QColor(tokens.soft))
        paint_mark(painter, mark, tokens, QPointF(place.left() + 18, place.top() + 14), 6.5)
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        upper = QRectF(place.left() + 34, place.top() + 3, place.width() - 44, 20)
        lower = QRectF(place.left() + 34, place.top() + 21, place.width() - 44, 18)
        strong = font(Text.LABEL_BOLD)
        painter.setFont(strong)
        chance = self._words.chance(line)
        painter.setPen(QColor(word_colour(mark, tokens)))
        painter.drawText(upper, right, chance)
        room = upper.width() - QFontMetricsF(strong).horizontalAdvance(chance) - 8
        painter.setPen(QColor(tokens.ink))
        name = QFontMetricsF(strong).elidedText(line.net, Qt.TextElideMode.ElideMiddle, room)
        painter.drawText(upper, left, name)
        plain = font(Text.CAPTION)
        painter.setFont(plain)
        painter.setPen(QColor(tokens.ink2))
        detail = self._words.detail(line)
        painter.drawText(
            lower, left, QFontMetricsF(plain).elidedText(detail, Qt.TextElideMode.ElideRight, lower.width())
        )
        painter.restore()


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
        self.setItemDelegate(_Delegate(theme, words, self))
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
