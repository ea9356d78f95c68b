"""The window's end of the machine's thread: what is asked, what became of it, and whom it concerns."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal

from drypoint.errors import DrypointError
from drypoint.machine.faults import Stopped
from drypoint.machine.operator import Answer
from drypoint.machine.state import Activity, MachineState
from drypoint.session.jobs import Outcome, Work
from drypoint.session.station import Station
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.language.words import told
from drypoint.ui.machine_side.hands import Asked, WindowOperator
from drypoint.ui.machine_side.request_bar import RequestBar
from drypoint.ui.machine_side.thread import WATCH, MachineThread
from drypoint.ui.window import MainWindow

Done = Callable[[Any], None]
Failed = Callable[[DrypointError], None]

BEAT = 100
"""Between two looks of the window at the machine, ms: ten a second."""


class Desk(QObject):
    """Starts procedures, shows requests, hands on what comes back.

    Signals
    -------
    looked(object) : `MachineState`, ten times a second
    changed() : a procedure began or ended, or the machine was connected or let go
    progressed(str, float, str) : name of the procedure, share done, words
    failed(object) : `DrypointError` that ended a procedure
    asked(object) : `Request` put to the person, or None when it is over

    Attributes
    ----------
    bit_in : str
        Name of the bit in the spindle, as far as is known; empty else.
    """

    looked = Signal(object)
    changed = Signal()
    progressed = Signal(str, float, object)
    failed = Signal(object)
    asked = Signal(object)
    _asked = Signal(object)
    _ended = Signal(object)
    _noted = Signal(str)

    def __init__(self, window: MainWindow, bridge: Bridge) -> None:
        super().__init__(window)
        self.window = window
        self.bridge = bridge
        self.bit_in = ""
        self._messages = window.findChild(Messages) or Messages(window.strip, bridge, self)
        self._askers: dict[str, tuple[Done, Failed | None]] = {}
        self.operator = WindowOperator(self._asked.emit)
        self.bar = RequestBar(window.theme)
        window.theme.dress(self.bar)
        self.thread_ = MachineThread(self._ended.emit, self.progressed.emit)
        self.operator.still = self.thread_.holds
        self._handlers: dict[int, tuple[Done | None, Failed | None]] = {}
        self._activity = Activity.NOT_CONNECTED
        self.error: DrypointError | None = None
        self._place_bar()
        self._asked.connect(self._show_request)
        self._ended.connect(self._settle)
        self._noted.connect(self.say)
        self.bar.answered.connect(self.operator.answer)
        self.bar.help_wanted.connect(self.operator.have_it_done)
        self.bar.automatic_changed.connect(self._set_automatic)
        window.commands["answer"].triggered.connect(self._go_to_request)
        window.commands["answer"].setEnabled(False)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._refused)
        bridge.hold_on_bug(self._hold)
        bridge.before_closing(self.close)
        self._beat = QTimer(self, interval=BEAT)
        self._beat.timeout.connect(self._look)
        self._beat.start()

    def _place_bar(self) -> None:
        whole = self.window.centralWidget()
        layout = None if whole is None else whole.layout()
        assert layout is not None
        layout.removeWidget(self.window.strip)
        layout.addWidget(self.bar)
        layout.addWidget(self.window.strip)

    # what there is

    @property
    def station(self) -> Station | None:
        """The machine, if one is connected and answers."""
        station = self.thread_.station
        return station if self.state.activity is not Activity.NOT_CONNECTED else None

    @property
    def state(self) -> MachineState:
        """The last look at the machine."""
        return self.thread_.state

    @property
    def busy(self) -> bool:
        """Whether a procedure runs."""
        return self.thread_.busy

    @property
    def asking(self) -> bool:
        """Whether a person is being waited for."""
        return self.bar.asked is not None

    # procedures

    def start(self, name: str, work: Work, done: Done | None = None, failed: Failed | None = None) -> bool:
        """Begin a procedure; False, with a message, if another one runs.

        ``done`` gets its value, ``failed`` its error, in the window's thread.
        """
        self.error = None
        try:
            number = self.thread_.start(name, work)
        except DrypointError as error:
            self.show_error(error)
            return False
        self._handlers[number] = (done, failed)
        self.changed.emit()
        return True

    def with_station(
        self,
        name: str,
        work: Callable[[Station, Any], Any],
        done: Done | None = None,
        failed: Failed | None = None,
    ) -> bool:
        """Begin a procedure that needs a machine; False, with a message, where there is none."""
        station = self.station
        if station is None:
            self.say(self.tr("No machine is connected. Machine, Connect… finds one, or takes the bench."))
            self.window.commands["connect"].trigger()
            return False
        return self.start(name, lambda progress: work(station, progress), done, failed)

    def ask(self, name: str, work: Work, done: Done, failed: Failed | None = None) -> None:
        """Compute in the background; of requests of one name only the newest is answered."""
        name = f"machine:{name}"
        self._askers[name] = (done, failed)
        self.bridge.ask(name, work)

    def _computed(self, name: str, value: object) -> None:
        if name in self._askers:
            self._askers[name][0](value)

    def _refused(self, name: str, error: DrypointError) -> None:
        failed = self._askers[name][1] if name in self._askers else None
        if failed is not None:
            failed(error)

    def _hold(self) -> None:
        station = self.station
        if station is not None:
            station.controller.hold()

    def note(self, text: str) -> None:
        """A message from any thread."""
        self._noted.emit(told(text))

    def say(self, text: str) -> None:
        """A message, in the run strip."""
        self._messages.say(text)

    def show_error(self, error: DrypointError) -> None:
        """An error in the strip, and to whoever shows it at length."""
        self.error = error
        self.say(error.text)
        self.failed.emit(error)

    def close(self) -> None:
        """Stop what moves, let go of the machine, wait for its thread."""
        self._beat.stop()
        self.operator.close()
        self.thread_.close()

    def answer(self, answer: Answer, held: int = 0) -> None:
        """Answer what is asked now; with ``held``, by a jog that goes on only while it is held."""
        if self.bar.asked is not None:
            self.operator.answer(self.bar.asked.number, answer, held)

    # inside

    def _go_to_request(self) -> None:
        if self.asking:
            self.bar.take_focus()

    def _set_automatic(self, on: bool) -> None:
        self.operator.automatic = on

    def _show_request(self, asked: object) -> None:
        self.bar.show_request(asked)  # type: ignore[arg-type]
        self.window.commands["answer"].setEnabled(asked is not None)
        self.asked.emit(asked.request if isinstance(asked, Asked) else None)
        self._look()

    def _look(self) -> None:
        self.thread_.pulse()
        state = self.thread_.state
        self.looked.emit(state)
        if (state.activity is Activity.NOT_CONNECTED) != (self._activity is Activity.NOT_CONNECTED):
            self.changed.emit()
        self._activity = state.activity

    def _settle(self, outcome: Outcome) -> None:
        done, failed = self._handlers.pop(outcome.number, (None, None))
        if not self.thread_.busy:
            self.bar.show_request(None)
            self.window.commands["answer"].setEnabled(False)
        if outcome.error is not None:
            if failed is not None:
                failed(outcome.error)
            if isinstance(outcome.error, Stopped):  # asked for, so no error to be shown at length
                self.say(self.tr("Stopped. Everything buffered was thrown away; the spindle output is off."))
            else:
                self.show_error(outcome.error)
        elif outcome.bug:
            self.bridge.report_bug(outcome.name, outcome.bug)
            self.say(
                self.tr("A fault in Drypoint itself ended this. The machine was stopped; the job is safe.")
            )
        elif outcome.cancelled:
            self.say(self.tr("Ended as asked."))
        elif done is not None and outcome.name != WATCH:
            done(outcome.value)
        self._look()
        self.changed.emit()
