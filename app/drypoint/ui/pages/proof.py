"""The proof page: which islands are proved apart, and what to do about the others."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QListView, QWidget

from drypoint.ui.language.words import local, told
from drypoint.ui.parts.blocks import Figure, Note, Row, button
from drypoint.ui.parts.glyph import Mark, word_colour
from drypoint.ui.parts.lines import Lines
from drypoint.ui.parts.marked_row import RIGHT, MarkedRow, write_line
from drypoint.ui.parts.page import Page
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text

ROW = 32
"""Height of a line of the list, px."""


@dataclass(frozen=True, slots=True)
class IslandLine:
    """One island or pair: nets, mark (done = proved, error = joined, doubt = unproved), words.

    ``at`` is the place to look at, mm, board frame; ``advice`` what happens to it anyhow, so that
    nothing has to be asked for.
    """

    nets: tuple[str, ...]
    mark: Mark
    word: str
    detail: str = ""
    at: tuple[float, float] | None = None
    touched: bool = False
    advice: str = ""


class _IslandRow(MarkedRow):
    """Glyph, nets, detail and word."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(theme, ROW, (24.0, ROW / 2.0), 7.0, parent)

    def mark(self, about: IslandLine) -> Mark:
        return about.mark

    def write(self, painter: QPainter, place: QRectF, about: IslandLine, tokens: Tokens) -> None:
        body = place.adjusted(42, 0, -16, 0)
        loud = about.mark in (Mark.ERROR, Mark.DOUBT)
        size, colour = Text.LABEL_BOLD if loud else Text.LABEL, word_colour(about.mark, tokens)
        taken = write_line(painter, body, about.word, size, colour, align=RIGHT)
        room = body.adjusted(0, 0, -taken - 10, 0)
        wide = write_line(painter, room, " – ".join(about.nets), Text.LABEL_BOLD, tokens.ink)
        write_line(painter, room.adjusted(wide + 10, 0, 0, 0), about.detail, Text.CAPTION, tokens.ink2)


class ProofPage(Page):
    """Islands, computed and touched.

    Signals
    -------
    line_chosen(object) : `IslandLine` or None; the canvas follows
    line_opened(object) : Enter or double click; the canvas zooms
    cut_again(object), touch_again(object) : `IslandLine`
    touch_rest(), print_report(), check()
    clip_wanted() : show where the clip goes next
    """

    line_chosen = Signal(object)
    line_opened = Signal(object)
    cut_again = Signal(object)
    touch_again = Signal(object)
    touch_rest = Signal()
    print_report = Signal()
    check = Signal()
    clip_wanted = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Proof"))
        self.lead.setText(self.tr("Does the milled copper fall into exactly the nets of the design?"))
        self.lead.show()
        self._lines: tuple[IslandLine, ...] = ()
        self._figure = Figure()
        self._counts = Row(theme, "")
        self.filters = Segments(
            [self.tr("Needs a look"), self.tr("All"), self.tr("Not touched")], self.tr("Show"), chosen=1
        )
        self.model = Lines(_said, lambda line: line.detail, self)
        self.list = QListView()
        self.list.setModel(self.model)
        self.list.setItemDelegate(_IslandRow(theme, self.list))
        self.list.setUniformItemSizes(True)
        self.list.setMinimumHeight(4 * ROW)
        self.list.setAccessibleName(self.tr("Islands"))
        self._note = Note("error", "")
        self._cut = button(self.tr("Cut again here"))
        self._again = button(self.tr("Touch again"))
        self.rest_button = button(self.tr("Touch the rest"), "primary")
        self.check_button = button(self.tr("Island check"))
        self.print_button = button(self.tr("Report…"))
        self._doubt = Note("error", "")
        self._doubt.hide()
        self.add(self._doubt)
        self.add(self._figure)
        self.add(self._counts)
        self._next = Note("plain", "")
        self._next.hide()
        self.add(self._next)
        self.add(self.filters)
        self.body.addWidget(self.list, 1)
        self.fill_height()
        self.note(self._note)
        self.add_actions(self._again, self._cut)
        self.add_actions(self.rest_button)
        self.add_actions(self.check_button, self.print_button)
        self._connect()
        self.show_islands("", "", ())

    def _connect(self) -> None:
        self.filters.chosen.connect(lambda _: self._filter())
        self.list.selectionModel().currentChanged.connect(lambda *_: self._chosen())
        self.list.activated.connect(lambda _: self.line_opened.emit(self.current()))
        self._note.where_clicked.connect(lambda: self.line_opened.emit(self.current()))
        self._cut.clicked.connect(lambda: self.cut_again.emit(self.current()))
        self._again.clicked.connect(lambda: self.touch_again.emit(self.current()))
        self.rest_button.clicked.connect(self.touch_rest)
        self.check_button.clicked.connect(self.check)
        self.print_button.clicked.connect(self.print_report)
        self._next.where_clicked.connect(self.clip_wanted)

    def show_islands(self, figure: str, text: str, lines: Sequence[IslandLine]) -> None:
        """Show results; worst first."""
        rank = {Mark.ERROR: 0, Mark.DOUBT: 1}
        self._lines = tuple(sorted(lines, key=lambda line: rank.get(line.mark, 2)))
        self._figure.show_figure(figure or "–", text or self.tr("Nothing checked yet."))
        touched = sum(line.touched for line in self._lines)
        self._counts.show_value(
            self.tr("{count} touched with the bit").format(count=touched),
            self.tr("{count} computed").format(count=len(self._lines)),
        )
        look = sum(line.mark in rank for line in self._lines)
        self.filters.set_label(0, self.tr("Needs a look  {count}").format(count=look))
        self.filters.set_label(1, self.tr("All  {count}").format(count=len(self._lines)))
        rest = len(self._lines) - touched
        self.filters.set_label(2, self.tr("Not touched  {count}").format(count=rest))
        self.rest_button.setText(self.tr("Touch the other {count}").format(count=rest))
        self.rest_button.setVisible(rest > 0)
        self.rest_button.setEnabled(rest > 0)
        self._filter()

    def show_next(self, what: str, text: str, where: str) -> None:
        """Where the clip goes next and what that would prove; empty hides it."""
        self._next.setVisible(bool(what))
        if what:
            self._next.say("plain", what, text, where=where)

    def show_doubt(self, titles: str, why: str) -> None:
        """What was cut since a check failed; empty hides it."""
        self._doubt.setVisible(bool(titles))
        if titles:
            what = self.tr("In doubt since a check failed: {titles}").format(titles=titles)
            self._doubt.say("error", what, f"{told(why)} {self.tr('See the Run page.')}")

    def current(self) -> IslandLine | None:
        """The line chosen."""
        index = self.list.currentIndex()
        return index.data(Qt.ItemDataRole.UserRole) if index.isValid() else None

    def choose_net(self, name: str) -> None:
        """Choose the first line about a net, as when it was picked on the canvas."""
        for row in range(self.model.rowCount()):
            index = self.model.index(row)
            if name in index.data(Qt.ItemDataRole.UserRole).nets:
                self.list.setCurrentIndex(index)
                return

    def _filter(self) -> None:
        kept = {
            0: [line for line in self._lines if line.mark in (Mark.ERROR, Mark.DOUBT)],
            1: list(self._lines),
            2: [line for line in self._lines if not line.touched],
        }[self.filters.choice]
        self.model.show_lines(kept)
        self._chosen()

    def _chosen(self) -> None:
        line = self.current()
        bad = line is not None and line.mark in (Mark.ERROR, Mark.DOUBT)
        for widget in (self._note, self._again):
            widget.setVisible(bad)
        self._cut.setVisible(bad and line is not None and not line.advice)
        if line is not None and bad:
            where = "" if line.at is None else local(f"x {line.at[0]:.2f}, y {line.at[1]:.2f} mm")
            text = f"{line.detail}. {line.advice}" if line.advice else line.detail
            kind = "error" if line.mark is Mark.ERROR else "caution"
            self._note.say(kind, f"{' – '.join(line.nets)}: {line.word}", text, where=where)
        self.line_chosen.emit(line)


def _said(line: IslandLine) -> str:
    return f"{' – '.join(line.nets)}, {line.word}"
