"""Puts the machine's side of the window together."""

from __future__ import annotations

from PySide6.QtCore import QObject

from drypoint.bench.face import BenchFace
from drypoint.geometry.rigid import Rigid
from drypoint.session.pauses import KIND as PAUSES
from drypoint.ui.bridge import Bridge
from drypoint.ui.legend_side.legending import Legending
from drypoint.ui.machine_side.closing import Closing
from drypoint.ui.machine_side.connecting import Connecting
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.doubting import Doubting
from drypoint.ui.machine_side.jogging import Jogging
from drypoint.ui.machine_side.live import Live
from drypoint.ui.machine_side.patterns import Patterns
from drypoint.ui.machine_side.pausing import Pausing
from drypoint.ui.machine_side.placing import present_placing
from drypoint.ui.machine_side.play import MeasuringPlay
from drypoint.ui.machine_side.preparing import Preparing
from drypoint.ui.machine_side.proving import Proving
from drypoint.ui.machine_side.reference import Referencing
from drypoint.ui.machine_side.rehearsing import Rehearsing
from drypoint.ui.machine_side.remapping import Remapping
from drypoint.ui.machine_side.running import CONNECT, Running
from drypoint.ui.machine_side.surface import Touching
from drypoint.ui.machine_side.touching_off import TouchingOff
from drypoint.ui.window import MainWindow

PLACED_BY = frozenset({"opened", "closed", "source", "settings", "reference", "setup", "stretch"})
"""Changes of the job after which the board may lie elsewhere."""


class MachineSide(QObject):
    """Everything that knows a machine.

    Parameters
    ----------
    bench : BenchFace, optional
        The bench to connect to; one is made of the job's blank when it is first needed.
    """

    def __init__(self, window: MainWindow, bridge: Bridge, bench: BenchFace | None = None) -> None:
        super().__init__(window)
        self.desk = Desk(window, bridge)
        self.connecting = Connecting(self.desk, bench)
        bridge.before_closing(self.connecting.close)
        self.live = Live(self.desk)
        self.jogging = Jogging(self.desk)
        self.touching = Touching(self.desk)
        self.referencing = Referencing(self.desk)
        self.touching_off = TouchingOff(self.desk)
        self.play = MeasuringPlay(self.desk)
        self.referencing.page.measure_play.connect(self.play.open)
        self.running = Running(self.desk)
        self.pausing = Pausing(self.desk, self.running)
        self.patterns = Patterns(self.desk, self.running, self.pausing)
        self.preparing = Preparing(self.desk, self.running)
        self.remapping = Remapping(self.desk, self.running)
        self.proving = Proving(self.desk)
        self.doubting = Doubting(self.desk, self.running.page, self.proving.page)
        self.closing = Closing(self.desk)
        self.rehearsing = Rehearsing(self.desk)
        self.legending = Legending(self.desk)
        window.commands["connect"].triggered.connect(self.connect_machine)
        self.running.page.answered.connect(self._answered)
        self.referencing.page.make_holes.connect(self._make_holes)
        self._let_go = False
        self.desk.changed.connect(self._let_go_if_free)
        bridge.job_changed.connect(self._job_changed)
        if bridge.session is not None:
            self._job_changed("opened")

    def connect_machine(self) -> None:
        """Ask where the machine is."""
        session = self.desk.bridge.session
        self.connecting.show_dialog("" if session is None else session.settings.machine.port)

    def _answered(self, what: str) -> None:
        if what == CONNECT:
            self.connect_machine()

    def _make_holes(self) -> None:
        self.desk.window.choose_step(7)

    def _job_changed(self, what: str) -> None:
        if what in ("opened", "closed"):
            self._another_job()
        if what in PLACED_BY:
            self._place()
        if what in {*PLACED_BY, "touches", "done", "pass"}:
            self.referencing.update_from_job()
        self.running.update_from_job(what)
        if what == PAUSES:
            self.pausing.update_from_job()
        if what in {*PLACED_BY, "touches", "zero"}:
            self.touching.weigh()
        self.proving.job_changed(what)
        self.doubting.job_changed(what)

    def _another_job(self) -> None:
        """Nothing of the job before may go on."""
        station = self.desk.station
        if station is not None and self.desk.busy:
            self.desk.thread_.cancel()
            station.controller.stop()
        self._let_go = station is not None  # where its bit stands says nothing about another board
        self.desk.error = None
        self._let_go_if_free()

    def _let_go_if_free(self) -> None:
        if self._let_go and not self.desk.busy:
            self._let_go = False
            self.connecting.let_go()

    def _place(self) -> None:
        session = self.desk.bridge.session
        if session is None:
            self.live.placing = None
            return
        self.desk.ask("placing", lambda _: present_placing(session), self._placed)

    def _placed(self, placing: object) -> None:
        self.live.placing = placing if isinstance(placing, Rigid) else None


def wire_machine(window: MainWindow, bridge: Bridge, bench: BenchFace | None = None) -> MachineSide:
    """Wire the machine's side; it lives as long as the window."""
    return MachineSide(window, bridge, bench)
