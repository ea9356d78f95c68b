"""The V-bit's test pattern at the machine, from its sheet: made ready, run as every program is, read."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction
from shapely import box

from drypoint.machine.procedures.running import RunResult
from drypoint.progress import Progress
from drypoint.session.actions.coupon_reading import Readings
from drypoint.session.actions.pattern_look import have_read
from drypoint.session.actions.pattern_run import NAME, Placed, prepare_pattern, run_pattern
from drypoint.session.actions.run import OnEvent
from drypoint.session.corner import Corner
from drypoint.session.ground import KIND
from drypoint.session.pattern import WHAT
from drypoint.session.station import Station
from drypoint.ui.canvas.content import Layer
from drypoint.ui.design_side.coupon_reading import CouponReading
from drypoint.ui.language.words import fill
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.pausing import Pausing
from drypoint.ui.machine_side.running import Running
from drypoint.ui.parts.corner_choice import corner_word


class Patterns(QObject):
    """Wires the sheet of the test pattern to the machine."""

    def __init__(self, desk: Desk, running: Running, pausing: Pausing) -> None:
        super().__init__(desk)
        self._desk, self._running = desk, running
        reading = desk.window.findChild(CouponReading)
        assert reading is not None
        self._reading = reading
        reading.sheet.run.connect(self.run)
        reading.sheet.look.connect(self.look)
        pausing.more.append(self.actions_at)
        running.ran.connect(self._ran)
        desk.changed.connect(self._judge)
        desk.bridge.job_changed.connect(lambda _: self._judge())
        self._judge()

    def run(self) -> None:
        """Touch its ground if need be, then cut it."""
        session = self._desk.bridge.session
        if session is None:
            return
        bit, first = session.settings.bits.vbit, self._running.before_cut(session)
        put = self._desk.bit_in != bit.name

        def ready(station: Station, progress: Progress) -> Placed:
            placed = prepare_pattern(session, station, progress, put=put)
            self._running.note_bit(bit)
            return placed

        def cut(placed: Placed) -> None:
            def work(station: Station, on_event: OnEvent) -> RunResult:
                if first is not None:
                    first(station)
                return run_pattern(session, station, placed, on_event=on_event)

            self._running.stream(placed.item.program, work)

        self._desk.with_station(self.tr("Test pattern"), ready, cut)

    def look(self) -> None:
        """On the bench: have its eyes read the pattern."""
        session = self._desk.bridge.session
        if session is None:
            return

        def work(station: Station, _progress: Progress) -> Readings:
            assert station.bench is not None
            return have_read(session, station.bench)

        self._desk.with_station(self.tr("Read the test pattern"), work, self._reading.sheet.show_readings)

    def actions_at(self, place: tuple[float, float], parent: QObject) -> list[QAction]:
        """On the canvas's menu while trial cuts are shown: the pattern into the corner nearest to a place."""
        canvas, session = self._desk.window.canvas, self._desk.bridge.session
        blank = canvas.canvas.content.blank
        if session is None or blank is None or not canvas.layers[Layer.TRIALS].isChecked():
            return []
        corner = Corner.nearest(place, box(*blank))
        action = QAction(fill(self.tr("Test pattern {corner}"), corner=corner_word(corner)), parent)
        action.setEnabled(session.settings.coupons.pattern is not corner)
        action.triggered.connect(lambda: self._reading.files.choose(corner))
        return [action]

    def _ran(self, name: str) -> None:
        if name == NAME:
            self._reading.open()

    def _judge(self) -> None:
        session, station = self._desk.bridge.session, self._desk.station
        kept = () if session is None else session.snapshot.records[KIND]
        self._reading.sheet.show_usable(
            connected=station is not None and not self._desk.busy,
            bench=station is not None and station.bench is not None,
            cut=any(one.data["what"] == WHAT for one in kept),
        )
