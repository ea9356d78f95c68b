"""Connecting to a machine on a serial port or to the bench; nothing moves by it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.bench.face import BenchFace
from drypoint.machine.serial_link import Port, SerialLink, list_ports
from drypoint.progress import Progress
from drypoint.session.session import Session
from drypoint.session.station import Station, connect, make_remote_bench
from drypoint.ui.language.words import fill
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.parts.blocks import Note, button, empty, words
from drypoint.ui.parts.fields import Choice, NumberField, Setting
from drypoint.ui.theme.theme import Theme

PACES: tuple[float | None, ...] = (1.0, 10.0, 60.0, None)
"""Simulated seconds per real one that the bench offers; None: as fast as it can."""


SHOWN = 6
"""Findings about a machine that are shown at length; what it runs by itself comes first."""


@dataclass(frozen=True, slots=True)
class Way:
    """How to connect: the port (empty for the bench), the bench's pace and the number of its sheet."""

    port: str = ""
    pace: float | None = 10.0
    seed: int = 0


class ConnectDialog(QDialog):
    """Where the machine is, and what it said of itself once it was found.

    Signals
    -------
    wanted(object) : `Way`
    given_up() : let go of the machine
    """

    wanted = Signal(object)
    given_up = Signal()

    def __init__(self, theme: Theme, commands: Commands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setWindowTitle(self.tr("Connect"))
        self.setMinimumWidth(520)
        self.port = Choice(self.tr("Machine"), 300)
        self.pace = Choice(self.tr("Pace of the bench"), 300)
        self.sheet = NumberField(
            self.tr("Sheet of copper"), "", decimals=0, least=0, most=9999, width=84, unit_width=0
        )
        self.connect_button = button(self.tr("Connect"), "primary")
        self.let_go_button = button(self.tr("Let go"))
        self.again_button = button(self.tr("Look again"))
        self.close_button = button(self.tr("Close"))
        self._notes = QVBoxLayout()
        self._notes.setSpacing(8)
        self._build()
        keep_run_keys(self, commands)
        self.connect_button.clicked.connect(lambda: self.wanted.emit(self.way))
        self.let_go_button.clicked.connect(self.given_up)
        self.close_button.clicked.connect(self.accept)
        self.again_button.clicked.connect(lambda: self.show_ports(list_ports(), self.way.port))
        self.port.currentIndexChanged.connect(lambda _: self._judge())

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 18)
        column.setSpacing(10)
        column.addWidget(words(self.tr("Connect"), "page"))
        lead = self.tr(
            "Opening a port restarts most controllers. Drypoint reads what it is; it moves nothing."
        )
        column.addWidget(words(lead, "quiet", wrap=True))
        column.addWidget(Setting(self.tr("Machine"), self.port))
        column.addWidget(Setting(self.tr("Pace of the bench"), self.pace))
        tip = self.tr(
            "Each number is another sheet: its ripples, its loose edge, the play of the axes. "
            "Connecting again keeps the sheet as it is cut; another number brings a new one."
        )
        column.addWidget(Setting(self.tr("Sheet of copper"), self.sheet, tip))
        column.addLayout(self._notes)
        column.addStretch(1)
        row = QHBoxLayout()
        row.addWidget(self.again_button)
        row.addStretch(1)
        row.addWidget(self.close_button)
        row.addWidget(self.let_go_button)
        row.addWidget(self.connect_button)
        column.addLayout(row)
        for pace in PACES:
            text = (
                self.tr("as fast as it can")
                if pace is None
                else fill(self.tr("{pace:g} times real time"), pace=pace)
            )
            self.pace.addItem(text, pace)
        self.pace.setCurrentIndex(1)

    @property
    def way(self) -> Way:
        """What is chosen."""
        pace = PACES[max(0, self.pace.currentIndex())]
        return Way(str(self.port.currentData() or ""), pace, round(self.sheet.value))

    def show_ports(self, ports: Sequence[Port], chosen: str) -> None:
        """Offer the bench and these ports."""
        self.port.clear()
        self.port.addItem(self.tr("Bench (simulated machine)"), "")
        for port in ports:
            self.port.addItem(f"{port.device}  {port.description}", port.device)
        index = self.port.findData(chosen)
        if index < 0:
            self.port.addItem(chosen, chosen)
            index = self.port.count() - 1
        self.port.setCurrentIndex(index)
        self._judge()

    def show_outcome(self, station: Station | None, error: str = "") -> None:
        """What the machine said of itself, or why it was not found."""
        empty(self._notes)
        self.let_go_button.setEnabled(station is not None)
        self.connect_button.setText(self.tr("Connect") if station is None else self.tr("Connect again"))
        if error:
            self._notes.addWidget(Note("error", self.tr("Not connected"), error))
        elif station is not None:
            facts = station.controller.facts
            what = self.tr("Connected to {name}").format(name=station.controller.name)
            version = self.tr("Protocol {version}, {bytes} bytes of buffer.").format(
                version=facts.version or "1.1", bytes=facts.receive_bytes
            )
            agrees = "" if station.findings else self.tr("Its settings are those of the machine set up here.")
            self._notes.addWidget(Note("plain", what, f"{version} {agrees}".strip()))
            for finding in station.findings[:SHOWN]:
                self._notes.addWidget(Note("caution", self.tr("To know before anything moves"), finding))
            more = len(station.findings) - SHOWN
            if more > 0:
                self._notes.addWidget(words(self.tr("and {count} more").format(count=more), "caption"))
        QTimer.singleShot(0, self.adjustSize)  # once the notes know how high they are

    def _judge(self) -> None:
        for field in (self.pace, self.sheet):
            field.setEnabled(not self.port.currentData())


class Connecting(QObject):
    """Opens links and makes benches; keeps the bench of this window, with the copper on it.

    Parameters
    ----------
    bench : BenchFace, optional
        Use this one instead of making one in a process of its own.
    """

    def __init__(self, desk: Desk, bench: BenchFace | None = None) -> None:
        super().__init__(desk)
        self._desk = desk
        self._bench = bench
        self._made_for: Path | None = None
        self._seed = 0
        self._dialog: ConnectDialog | None = None
        self.way = Way()

    @property
    def bench(self) -> BenchFace | None:
        """The bench of this window, once there is one."""
        return self._bench

    def show_dialog(self, port: str) -> ConnectDialog:
        """Open the dialog."""
        desk = self._desk
        if self._dialog is None:
            self._dialog = ConnectDialog(desk.window.theme, desk.window.commands, desk.window)
            self._dialog.wanted.connect(self._wish)
            self._dialog.given_up.connect(self.let_go)
        self._dialog.show_ports(list_ports(), port)
        self._dialog.show_outcome(desk.station)
        self._dialog.open()
        return self._dialog

    def _wish(self, way: Way) -> None:
        session = self._desk.bridge.session
        if session is None:
            self._say_error(self.tr("There is no job yet."))
            return
        machine = session.settings.machine
        if machine.port != way.port:
            session.change(self.tr("Choose the port"), machine=replace(machine, port=way.port))
        self.connect_to(way)

    def connect_to(self, way: Way) -> None:
        """Connect on the machine's thread."""
        session = self._desk.bridge.session
        if session is None:
            self._desk.say(self.tr("There is no job yet."))
            return
        self.way = way
        self._desk.thread_.pace = way.pace

        def work(_progress: Progress) -> Station:
            self._desk.thread_.use(None)
            self._desk.bit_in = ""
            station = self._open(session, way)
            self._desk.thread_.use(station)
            return station

        self._desk.start(self.tr("Connect"), work, self._show, lambda error: self._say_error(error.text))

    def _open(self, session: Session, way: Way) -> Station:
        """On the machine's thread."""
        operator, note = self._desk.operator, self._desk.note
        if way.port:
            operator.helper = None
            link, book = SerialLink(way.port, session.settings.machine.baud), self._desk.bridge.book
            station = connect(link, operator, session.settings, note=note, book=book)
        else:
            other = self._made_for is not None and self._made_for != session.job.path
            seed_changed = self._made_for is not None and self._seed != way.seed
            old = self._bench
            if old is None or other or seed_changed or not old.alive:  # another sheet of copper
                layout = session.derived.layout(session.snapshot)
                self._bench, self._seed = make_remote_bench(layout, session.settings, way.seed), way.seed
                self._made_for = session.job.path
                if old is not None:
                    old.close()
            assert self._bench is not None
            self._bench.set_pace(self.way.pace)
            operator.helper = self._bench.operator
            bench_link = self._bench.connect()
            station = connect(bench_link, operator, session.settings, note=note, bench=self._bench)
        operator.tick = lambda: station.controller.poll(0.02)
        return station

    def close(self) -> None:
        """End the bench with the window."""
        if self._bench is not None:
            self._bench.close()

    def let_go(self) -> None:
        """Let go of the machine."""
        self._desk.start(
            self.tr("Let go"), lambda _: self._desk.thread_.use(None), lambda _: self._show(None)
        )

    def _show(self, station: object) -> None:
        made = station if isinstance(station, Station) else None
        if self._dialog is not None:
            self._dialog.show_outcome(made)
            if made is not None and not made.findings:
                self._dialog.accept()  # nothing there that must be read
        if made is not None:
            name = self.tr("the bench") if made.bench else made.controller.name
            more = self.tr(" {count} settings differ from the machine set up here.").format(
                count=len(made.findings)
            )
            self._desk.say(
                self.tr("Connected to {name}.").format(name=name) + (more if made.findings else "")
            )
        else:
            self._desk.say(self.tr("The machine is let go."))

    def _say_error(self, text: str) -> None:
        if self._dialog is not None:
            self._dialog.show_outcome(None, text)
