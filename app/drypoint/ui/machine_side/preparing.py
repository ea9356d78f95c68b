"""Before a run: the machine's home, a hover lap before the first cut, and the next program on the bench."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QCheckBox

from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.state import Activity, MachineState
from drypoint.progress import Progress
from drypoint.session.actions import run
from drypoint.session.actions.rehearse_run import RunRehearsal, rehearse_run
from drypoint.session.apart import apart
from drypoint.session.jobs import Outcome, WorkExecutor
from drypoint.session.session import Session
from drypoint.session.sheet import clock
from drypoint.session.station import Station
from drypoint.ui.language.words import fill, told
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.running import Running
from drypoint.ui.parts.blocks import Note, button

HOMING = (
    "All axes run to their switches, Z first.",
    "Keep hands clear; the bit must be free of board and clamps.",
)


UNLOCKING = (
    "Find and mend the cause first: a switch, a cable, something in the way.",
    "The position may be wrong. Nothing moves by unlocking.",
)


class Preparing(QObject):
    """Wires what may come before a run."""

    _ended = Signal(object)

    def __init__(self, desk: Desk, running: Running) -> None:
        super().__init__(desk)
        self._desk, self._running = desk, running
        self._flown = 0
        self._locked = True
        self._executor: WorkExecutor | None = None
        page = running.page
        self.lap_first = QCheckBox(self.tr("Hover lap before the first cut"))
        self.lap_first.setToolTip(
            self.tr("Once round the board above the copper, spindle off: are clamps and cables clear?")
        )
        self.lap_first.setChecked(True)
        self.home_button = button(self.tr("Home the machine"))
        self.rehearse_button = page.rehearse_button
        self.outcome = Note("plain", "")
        page.add_actions(self.lap_first)
        self.unlock_button = button(self.tr("Unlock"))
        page.add_actions(self.home_button, self.unlock_button)
        page.add(self.outcome)
        self.home_button.clicked.connect(self.home)
        self.unlock_button.clicked.connect(self.unlock)
        desk.looked.connect(self._look)
        self.rehearse_button.clicked.connect(self.rehearse)
        running.before_cut = self._lap_wanted
        running.listed.connect(lambda _: self._forget())
        desk.changed.connect(self._judge)
        desk.bridge.before_closing(self._close)
        self._ended.connect(self._show)
        self._forget()

    # home

    def home(self) -> None:
        """Have the machine seek its switches."""

        def work(station: Station, _progress: Progress) -> None:
            station.place.ask(Request(RequestKind.CONFIRM, "Home the machine", "", HOMING))
            station.controller.home()

        said = self.tr("The machine is home. Set the zero of the work again, or find the reference holes.")
        self._desk.with_station(self.tr("Home"), work, lambda _: self._desk.say(said))

    def unlock(self) -> None:
        """Free a controller that has locked itself, once a person has found out why."""

        def work(station: Station, _progress: Progress) -> None:
            why = station.controller.state.reason
            station.place.ask(Request(RequestKind.CONFIRM, "Unlock the controller", why, UNLOCKING))
            station.controller.unlock()

        said = self.tr("The controller is free again. Check the zero before anything is cut.")
        self._desk.with_station(self.tr("Unlock"), work, lambda _: self._desk.say(said))

    def _look(self, state: MachineState) -> None:
        """Unlocking is offered where the controller is locked, and only there."""
        locked = state.activity is Activity.NEEDS_YOU and not self._desk.busy
        if locked != self._locked:
            self._locked = locked
            self.unlock_button.setVisible(locked)

    # the lap

    def _lap_wanted(self, session: Session) -> Callable[[Station], None] | None:
        """The lap before the first cut of a clamping, unless it was flown or is not wanted."""
        snap = session.snapshot
        if not self.lap_first.isChecked() or not self._first(session):
            return None

        def fly(station: Station) -> None:
            run.lap(session, station)
            self._flown = snap.setup

        return fly

    def _first(self, session: Session) -> bool:
        """Whether nothing was cut in this clamping, nor the lap flown."""
        snap = session.snapshot
        cut = any(one.data.get("setup", 1) == snap.setup for one in snap.records["done"])
        return not cut and self._flown != snap.setup

    # the next program on the bench

    def rehearse(self) -> None:
        """Run the exact lines of what comes next on the bench, beside everything else."""
        session, item = self._desk.bridge.session, self._running.following
        if session is None or item is None:
            return
        if self._executor is None:
            self._executor = WorkExecutor(self._ended.emit)
        program = item.program
        work = partial(rehearse_run, program=program)
        self.outcome.show()
        self.outcome.say("plain", self.tr("Rehearsing on the bench…"), told(program.title))
        self.rehearse_button.setEnabled(False)
        self._executor.ask("rehearse run", lambda progress: apart(session, work, progress))

    def _show(self, outcome: Outcome) -> None:
        self._judge()
        if outcome.bug:
            self._desk.bridge.report_bug(outcome.name, outcome.bug)
        if outcome.error is not None or outcome.bug:
            text = told(outcome.error.text) if outcome.error is not None else ""
            self.outcome.say("error", self.tr("The rehearsal ended early"), text)
        elif isinstance(outcome.value, RunRehearsal):
            self._show_found(outcome.value)
        else:
            self.outcome.hide()

    def _show_found(self, found: RunRehearsal) -> None:
        text = fill(
            self.tr("{lines} lines, all taken; {time} on the bench, {expected} expected."),
            lines=found.lines,
            time=clock(found.seconds),
            expected=clock(found.expected),
        )
        if found.mishaps:
            self.outcome.say("error", self.tr("Something went wrong"), "; ".join(map(told, found.mishaps)))
        else:
            self.outcome.say("plain", self.tr("Rehearsed, nothing went wrong"), text)

    def _forget(self) -> None:
        """Another program is next: what the last rehearsal said no longer stands."""
        self.outcome.hide()
        self._judge()

    def _judge(self) -> None:
        session, station = self._desk.bridge.session, self._desk.station
        self.lap_first.setVisible(session is not None and self._first(session))
        self.home_button.setVisible(station is not None and station.controller.facts.homing)
        self.home_button.setEnabled(not self._desk.busy)
        self.rehearse_button.setEnabled(self._running.following is not None)

    def _close(self) -> None:
        if self._executor is not None:
            self._executor.close()
            self._executor = None
