"""The run page: time left, what is cut now, what comes, and what was acknowledged."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from drypoint.ui.language.words import told
from drypoint.ui.parts.blocks import Elided, Figure, Note, Row, button, empty, words
from drypoint.ui.parts.fields import NumberField
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.parts.page import Page
from drypoint.ui.theme.theme import Theme


@dataclass(frozen=True, slots=True)
class Task:
    """A line of the evening: its state, what, and time or count."""

    what: str
    mark: Mark
    value: str = ""


@dataclass(frozen=True, slots=True)
class PauseLine:
    """A pause: in which program, before which piece of how many (0: no piece is there any more)."""

    program: str
    piece: int
    pieces: int
    at: tuple[float, float]


@dataclass(frozen=True, slots=True)
class SuspectLine:
    """A run in doubt: its number, what it was, what a check said, and when."""

    run: int
    title: str
    why: str
    at: str


class RunPage(Page):
    """Running.

    Signals
    -------
    start(), hover_lap() : wishes; `start` only once every caution is acknowledged
    answered(str) : what was done of a request shown by `ask`
    pause_added(int) : pause before that piece, from 1, of what comes next
    pause_removed(object) : `PauseLine`
    suspect_sound(object), suspect_again(object) : `SuspectLine` looked at and good, or to be cut again
    """

    pause_added = Signal(int)
    pause_removed = Signal(object)
    suspect_sound = Signal(object)
    suspect_again = Signal(object)

    start = Signal()
    hover_lap = Signal()
    answered = Signal(str)

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "", "")
        self.title.setText(self.tr("Run"))
        self._boxes: list[QCheckBox] = []
        self._names: tuple[str, ...] = ()
        self._values: list[Row] = []
        self._listed: tuple[Task, ...] = ()
        self._ready = False
        self._figure = Figure()
        self.add(self._figure)
        self._suspects = QVBoxLayout()
        self._suspects.setSpacing(8)
        self.body.addLayout(self._suspects)
        self._rows = QVBoxLayout()
        self._rows.setSpacing(0)
        self.body.addLayout(self._rows)
        self.section(self.tr("This evening"))
        self._tasks = QVBoxLayout()
        self._tasks.setSpacing(0)
        self.body.addLayout(self._tasks)
        self.section(self.tr("Pauses"))
        self._pauses = QVBoxLayout()
        self._pauses.setSpacing(0)
        self.body.addLayout(self._pauses)
        self.piece = NumberField(self.tr("Before piece"), "", value=1.0, decimals=0, least=1.0, width=64)
        self.pause_button = button(self.tr("Add"))
        self.pause_button.setAccessibleName(self.tr("Add a pause"))
        self._add_row = self._pause_row()
        self.add(self._add_row)
        self._cautions = QVBoxLayout()
        self._cautions.setSpacing(2)
        self.foot.addLayout(self._cautions)
        self._note = self.note(Note("plain", ""))
        self._note.hide()
        self._request = ""
        self.start_button = button(self.tr("Start"), "primary")
        self.lap_button = button(self.tr("Hover lap"))
        self.add_actions(self.start_button)
        self.rehearse_button = button(self.tr("Rehearse"))
        self.rehearse_button.setToolTip(
            self.tr("Run the exact lines of what comes next on the bench: do they go through, how long?")
        )
        self.add_actions(self.lap_button, self.rehearse_button)
        self.start_button.clicked.connect(self.start)
        self.lap_button.clicked.connect(self.hover_lap)
        self._note.hint_clicked.connect(lambda: self.answered.emit(self._request))
        self.pause_button.clicked.connect(lambda: self.pause_added.emit(round(self.piece.value)))
        self.show_pauses((), "", 0)
        self.show_run(self.tr("Nothing to run yet."), "–", "", (), ())

    def show_run(
        self,
        lead: str,
        figure: str,
        text: str,
        rows: Sequence[tuple[str, str]],
        tasks: Sequence[Task],
        *,
        running: bool = False,
        ready: bool = False,
        start: str = "",
    ) -> None:
        """Show a moment of the run, or what would be run."""
        self.lead.setText(told(lead))
        self.lead.setVisible(bool(lead))
        self._figure.show_figure(figure, text)
        self._show_rows(rows)
        self._show_tasks(tasks)
        self._ready = ready
        self.start_button.setVisible(not running)
        self.start_button.setText(start or self.tr("Start"))
        for each in (self.lap_button, self.rehearse_button):
            each.setVisible(not running)
        self._judge()

    def _show_rows(self, rows: Sequence[tuple[str, str]]) -> None:
        """Rows of the same names only get new values, since this is shown ten times a second."""
        names = tuple(name for name, _ in rows)
        if names != self._names:
            empty(self._rows)
            self._names = names
            self._values = [Row(self.theme, name) for name in names]
            for row in self._values:
                self._rows.addWidget(row)
        for row, (_, value) in zip(self._values, rows, strict=True):
            row.show_value(value)

    def _show_tasks(self, tasks: Sequence[Task]) -> None:
        if tuple(tasks) == self._listed:
            return
        self._listed = tuple(tasks)
        empty(self._tasks)
        for task in tasks:
            strong = task.mark is Mark.READY
            row = Row(self.theme, task.what, task.value, mark=task.mark, strong=strong, elide=True)
            self._tasks.addWidget(row)

    def _pause_row(self) -> QWidget:
        made = QWidget()
        row = QHBoxLayout(made)
        row.setContentsMargins(0, 4, 0, 0)
        row.setSpacing(8)
        row.addWidget(words(self.tr("Before piece"), "label"))
        row.addWidget(self.piece)
        row.addStretch(1)
        row.addWidget(self.pause_button)
        return made

    def show_pauses(self, pauses: Sequence[PauseLine], program: str, pieces: int) -> None:
        """The pauses of what is still to run; one can be added to ``program`` with its ``pieces``."""
        empty(self._pauses)
        for line in pauses:
            self._pauses.addWidget(self._pause_line(line))
        if not pauses:
            text = self.tr("None. Add one here, at the scrubber, or by the menu on the canvas.")
            self._pauses.addWidget(words(text, "caption", wrap=True))
        self._add_row.setVisible(pieces > 0)
        self.piece.set_limits(1.0, float(max(pieces, 1)))
        if self.piece.value > max(pieces, 1):
            self.piece.set_value(float(max(pieces, 1)))
        self.piece.setToolTip(self.tr("{program}: {n} pieces").format(program=program, n=pieces))

    def show_suspects(self, lines: Sequence[SuspectLine]) -> None:
        """What was cut since a check failed."""
        empty(self._suspects)
        for line in lines:
            self._suspects.addWidget(self._suspect(line))

    def allow_suspects(self, allowed: bool) -> None:
        """Whether something may be said of them now."""
        for each in _buttons(self._suspects):
            each.setEnabled(allowed)

    def _suspect(self, line: SuspectLine) -> QWidget:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        what = self.tr("{title} is in doubt since {time}").format(title=line.title, time=line.at)
        column.addWidget(Note("error", what, line.why))
        row = QHBoxLayout()
        row.setSpacing(8)
        for text, signal in (
            (self.tr("It is sound"), self.suspect_sound),
            (self.tr("Cut it again"), self.suspect_again),
        ):
            each = button(text)
            each.setAccessibleName(f"{line.title}: {text}")
            each.clicked.connect(lambda _=False, signal=signal: signal.emit(line))
            row.addWidget(each, 1)
        column.addLayout(row)
        return made

    def allow_pauses(self, allowed: bool) -> None:
        """Whether pauses may be added and taken away now."""
        for each in (self.pause_button, *_buttons(self._pauses)):
            each.setEnabled(allowed)

    def _pause_line(self, line: PauseLine) -> QWidget:
        made = QWidget()
        row = QHBoxLayout(made)
        row.setContentsMargins(0, 2, 0, 2)
        row.setSpacing(8)
        where = (
            self.tr("Piece {n} of {all}").format(n=line.piece, all=line.pieces)
            if line.piece
            else self.tr("Nothing is cut there any more")
        )
        text = Elided("label")
        text.setText(f"{where}, {told(line.program)}")
        away = button(self.tr("Remove"), "flat")
        away.setAccessibleName(self.tr("Remove the pause {where}").format(where=where))
        away.clicked.connect(lambda: self.pause_removed.emit(line))
        row.addWidget(text, 1)
        row.addWidget(away)
        return made

    def show_cautions(self, cautions: Sequence[str]) -> None:
        """Cautions to be acknowledged, each once, before the start."""
        empty(self._cautions)
        self._boxes = []
        for caution in cautions:
            box = QCheckBox(caution)
            box.toggled.connect(self._judge)
            self._boxes.append(box)
            self._cautions.addWidget(box)
        self._judge()

    def show_note(self, what: str, text: str = "", kind: str = "plain") -> None:
        """A note above the buttons; empty hides it."""
        self._note.setVisible(bool(what))
        self._request = ""
        self._note.say(kind, what, text)

    def ask(self, request: str, what: str, text: str, done: str) -> None:
        """Ask for something to be done by hand; ``answered(request)`` follows the button ``done``."""
        self._request = request
        self._note.show()
        self._note.say("caution", what, text, hint=done)

    def _judge(self) -> None:
        self.start_button.setEnabled(self._ready and all(box.isChecked() for box in self._boxes))


def _buttons(layout: QVBoxLayout) -> list[QPushButton]:
    """The buttons in the widgets of a layout."""
    items = [layout.itemAt(index) for index in range(layout.count())]
    widgets = [None if item is None else item.widget() for item in items]
    return [each for widget in widgets if widget is not None for each in widget.findChildren(QPushButton)]
