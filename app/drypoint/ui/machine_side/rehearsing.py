"""The whole job on the bench, in the background: prediction against outcome."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.session.apart import apart
from drypoint.session.jobs import Outcome, WorkExecutor
from drypoint.session.rehearsal import Rehearsal, rehearse
from drypoint.session.sheet import clock
from drypoint.ui.language.words import fill, told
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.rehearsed import legend_rows, pass_rows, second_side_rows
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.pages.passes import PassesPage
from drypoint.ui.parts.blocks import Figure, Note, Row, button, empty, words
from drypoint.ui.run_strip import ProgressBar
from drypoint.ui.theme.theme import Theme

NOTES = 4
"""Faults and findings shown at most, of each."""


class RehearsalDialog(QDialog):
    """Progress, then what came of it; stays out of the way of the work.

    Signals
    -------
    cancelled()
    """

    cancelled = Signal()

    def __init__(self, theme: Theme, commands: Commands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setWindowTitle(self.tr("Rehearsal"))
        self.setMinimumWidth(660)
        self._figure = Figure()
        self._text = words("", "quiet", wrap=True)
        self.bar = ProgressBar(theme)
        self._rows = QVBoxLayout()
        self._rows.setSpacing(0)
        self.close_button = button(self.tr("Cancel"))
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 18)
        column.setSpacing(10)
        column.addWidget(words(self.tr("Rehearsal on the bench"), "page"))
        column.addWidget(self._text)
        column.addWidget(self.bar)
        column.addWidget(self._figure)
        column.addLayout(self._rows)
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(self.close_button)
        column.addLayout(row)
        keep_run_keys(self, commands)
        self.close_button.clicked.connect(self.reject)
        self.rejected.connect(self.cancelled)

    def show_progress(self, share: float, text: str) -> None:
        """How far it is."""
        self._figure.hide()
        self.bar.show()
        self.bar.show_share(share)
        lead = self.tr("A simulated machine mills a simulated sheet; your job is not changed.")
        self._text.setText(f"{lead} {told(text)}".strip())
        self.close_button.setText(self.tr("Cancel"))
        empty(self._rows)

    def show_error(self, text: str) -> None:
        """Why it ended early."""
        self.bar.hide()
        empty(self._rows)
        self._rows.addWidget(Note("error", self.tr("The rehearsal ended early"), text))
        self.close_button.setText(self.tr("Close"))

    def show_outcome(self, found: Rehearsal) -> None:
        """Prediction against outcome."""
        self.bar.hide()
        self._text.setText(self.tr("Prediction against what the simulated copper shows."))
        self._figure.show()
        pieces = found.check.pieces - (found.islands - found.check.nets)
        self._figure.show_figure(
            f"{pieces} / {found.check.nets}", self.tr("islands of the carved copper / nets of the design")
        )
        empty(self._rows)
        for name, value in self._facts(found):
            self._rows.addWidget(Row(self._theme, name, value))
        checks = [found.check] + ([found.second_side.check] if found.second_side is not None else [])
        flaws = [one for check in checks for one in (*check.shorts, *check.opens, *check.lost)]
        for one in flaws[:NOTES]:
            self._rows.addWidget(Note("error", told(one.what), " – ".join(one.nets)))
        for text in list(dict.fromkeys(found.findings))[:NOTES]:
            self._rows.addWidget(Note("caution", told(text)))
        self.close_button.setText(self.tr("Close"))
        self.adjustSize()

    def _facts(self, found: Rehearsal) -> list[tuple[str, str]]:
        rows = [
            (
                self.tr("Surface, {n} touches").format(n=found.touches),
                fill(
                    self.tr("off by {rms:.1f} µm; {share:.0f} % inside the 90 % band"),
                    rms=found.rms_um,
                    share=100 * found.interval90,
                ),
            )
        ]
        rows += pass_rows(found.passes)
        if found.residual_mm is not None and found.worst_error_mm is not None:
            rows.append(
                (
                    self.tr("Found again by {n} holes").format(n=found.holes),
                    fill(
                        self.tr("residual {r:.3f} mm, worst place ± {w:.3f} mm"),
                        r=found.residual_mm,
                        w=found.worst_error_mm,
                    ),
                )
            )
        rows += [*second_side_rows(found.second_side), *legend_rows(found.legend)]
        rows.append((self.tr("Time at the machine"), clock(found.seconds)))
        return rows


class Rehearsing(QObject):
    """Runs rehearsals one at a time in a process of their own, so that the window's work goes on."""

    _ended = Signal(object)
    _told = Signal(str, float, object)

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._executor: WorkExecutor | None = None
        self.dialog: RehearsalDialog | None = None
        self.touches: int | None = None
        self.outcome: Rehearsal | None = None
        desk.window.commands["rehearse"].triggered.connect(self.start)
        passes = desk.window.pages.widget(5)
        if isinstance(passes, PassesPage):
            passes.rehearse.connect(self.start)
        desk.bridge.before_closing(self.close)
        self._ended.connect(self._show)
        self._told.connect(self._progress)

    def start(self) -> None:
        """Rehearse the job as it is now."""
        session = self._desk.bridge.session
        if session is None:
            self._desk.say(self.tr("There is no job yet."))
            return
        window = self._desk.window
        if self.dialog is None:
            self.dialog = RehearsalDialog(window.theme, window.commands, window)
            self.dialog.cancelled.connect(self.cancel)
        if self._executor is None:
            self._executor = WorkExecutor(self._ended.emit, self._told.emit)
        self.outcome = None
        self.dialog.show_progress(0.0, "")
        self.dialog.show()
        work = partial(rehearse, touches=self.touches)
        self._executor.ask("rehearse", lambda progress: apart(session, work, progress))

    def cancel(self) -> None:
        """End it."""
        if self._executor is not None:
            self._executor.cancel("rehearse")

    def close(self) -> None:
        """End it and its thread."""
        if self._executor is not None:
            self._executor.close()
            self._executor = None

    def _progress(self, _name: str, share: float, text: str) -> None:
        if self.dialog is not None and self.outcome is None:
            self.dialog.show_progress(share, text)

    def _show(self, outcome: Outcome) -> None:
        if self.dialog is None or outcome.cancelled:
            return
        if outcome.bug:
            self._desk.bridge.report_bug(outcome.name, outcome.bug)
            self.dialog.show_error(self.tr("A fault in Drypoint itself."))
        elif outcome.error is not None:
            self.dialog.show_error(told(outcome.error.text))
        elif isinstance(outcome.value, Rehearsal):
            self.outcome = outcome.value
            self.dialog.show_outcome(outcome.value)
