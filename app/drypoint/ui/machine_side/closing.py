"""Closing the window while the machine works: first a hold, then a question; it never just stops."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.errors import MachineError
from drypoint.machine.controller import Controller
from drypoint.machine.state import Activity
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.run_progress import RUNNING
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.parts.blocks import button, words

MOVING = frozenset({Activity.MOVING, Activity.TOUCHING, Activity.CUTTING})


class CloseDialog(QDialog):
    """What becomes of the work that is under way.

    Signals
    -------
    going_on(), staying(), stopping() : resume; leave it held; stop and close the window
    """

    going_on = Signal()
    staying = Signal()
    stopping = Signal()

    def __init__(self, commands: Commands, what: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Close Drypoint"))
        self.setMinimumWidth(520)
        self.go_on_button = button(self.tr("Go on"))
        self.stay_button = button(self.tr("Stay here, held"), "primary")
        self.stop_button = button(self.tr("Stop and close"))
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 18)
        column.setSpacing(10)
        column.addWidget(words(self.tr("The machine is at work"), "section"))
        text = self.tr(
            "{what} is under way. The axes are held where they are; a spindle keeps turning. If you stop, "
            "everything buffered is thrown away and the spindle output is off; the job keeps how far the "
            "run was proven, and it can be resumed."
        ).format(what=what)
        column.addWidget(words(text, "quiet", wrap=True))
        row = QHBoxLayout()
        row.addWidget(self.stop_button)
        row.addStretch(1)
        row.addWidget(self.go_on_button)
        row.addWidget(self.stay_button)
        column.addLayout(row)
        keep_run_keys(self, commands)
        self.stay_button.setDefault(True)
        for each, signal in (
            (self.go_on_button, self.going_on),
            (self.stay_button, self.staying),
            (self.stop_button, self.stopping),
        ):
            each.clicked.connect(signal)
            each.clicked.connect(self.accept)
        self.rejected.connect(self.staying)


class Closing(QObject):
    """Asks before the window is closed over a machine at work.

    Attributes
    ----------
    dialog : CloseDialog or None
        The question, while it is open.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._agreed = False
        self._held = False
        self.dialog: CloseDialog | None = None
        desk.window.closing.connect(self._asked_to_close)
        desk.changed.connect(self._close_if_over)

    @property
    def at_work(self) -> bool:
        """Whether closing would break something off."""
        thread = self._desk.thread_
        working = thread.running == RUNNING or self._desk.state.activity in MOVING
        return self._desk.station is not None and self._desk.busy and working

    def _asked_to_close(self) -> None:
        if self._agreed or not self.at_work:
            return
        self._desk.window.refuse_closing()
        if self._desk.state.activity in MOVING:  # a hold would lock a controller that rests
            self._held = True
            self._send(Controller.hold)
        if self.dialog is None:
            window = self._desk.window
            what = self._desk.thread_.running
            what = self.tr("A run") if what == RUNNING else what
            self.dialog = CloseDialog(window.commands, what, window)
            self.dialog.going_on.connect(self._go_on)
            self.dialog.stopping.connect(self._stop)
            self.dialog.finished.connect(self._answered)
            self.dialog.open()

    def _go_on(self) -> None:
        if self._held:
            self._send(Controller.resume)

    def _stop(self) -> None:
        self._agreed = True
        self._desk.thread_.cancel()
        self._desk.operator.close()  # what waits for an answer gets none any more
        self._send(Controller.stop)
        self._close_if_over()

    def _answered(self, _code: int) -> None:
        self.dialog, self._held = None, False

    def _close_if_over(self) -> None:
        if self._agreed and not self._desk.busy:
            QTimer.singleShot(0, self._desk.window.close)

    def _send(self, what: Callable[[Controller], None]) -> None:
        station = self._desk.thread_.station
        if station is None:
            return
        try:
            what(station.controller)
        except MachineError as error:
            self._desk.show_error(error)
