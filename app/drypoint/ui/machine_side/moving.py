"""The board is moved: clamped anew, or turned over about an axis, step by step."""

from __future__ import annotations

import math

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QCheckBox, QDialog, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import Request, RequestKind
from drypoint.progress import Progress
from drypoint.session.actions import find, turn
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.parts.blocks import Note, button, words
from drypoint.ui.parts.segments import Segments
from drypoint.wording import say

BENCH_TURN, BENCH_SHIFT = math.radians(0.8), (0.9, -0.6)
"""How the bench's hands clamp the board again: turned and shifted by so much, mm."""
AXES = ("y", "x")
"""Axis that the board is turned over about, in the order of the choice."""


class TurnDialog(QDialog):
    """How the board is turned over, and what is done on the other side.

    Signals
    -------
    wanted(str, bool) : axis ("x" or "y"), and whether the other side is to be milled
    """

    wanted = Signal(str, bool)

    def __init__(self, commands: Commands, parent: QWidget, *, can_mill: bool) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Turn the board over"))
        self.setMinimumWidth(460)
        self.axes = Segments([self.tr("Left over right"), self.tr("Front over back")], self.tr("Turn it"))
        self.mill = QCheckBox(self.tr("Mill the copper of the other side"))
        self.mill.setChecked(can_mill)
        self.mill.setEnabled(can_mill)
        self.turn_button = button(self.tr("Turn it over now"), "primary")
        cancel = button(self.tr("Cancel"))
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 18)
        column.setSpacing(10)
        column.addWidget(words(self.tr("Turn the board over"), "section"))
        column.addWidget(self.axes)
        column.addWidget(self.mill)
        steps = (
            self.tr("1  The bit goes up; you are asked to turn the board and to clamp it flat."),
            self.tr("2  Heights, passes and the place of the board are stale from then on."),
            self.tr("3  Touch two drilled holes, better three: the far ones are suggested."),
            self.tr("4  The fit is mirrored by itself. Re-map shows where everything has come to."),
            self.tr("5  Touch the copper again before grooves are cut on this side."),
        )
        for step in steps:
            column.addWidget(words(step, "quiet", wrap=True))
        if not can_mill:
            text = self.tr("The design has no copper on the other side: only its legend can be marked.")
            column.addWidget(Note("plain", self.tr("One copper side"), text))
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(cancel)
        row.addWidget(self.turn_button)
        column.addLayout(row)
        keep_run_keys(self, commands)
        cancel.clicked.connect(self.reject)
        self.turn_button.clicked.connect(self._give)

    def _give(self) -> None:
        self.wanted.emit(AXES[self.axes.choice], self.mill.isChecked())
        self.accept()


class Moving(QObject):
    """Wires clamping anew and turning over."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self.dialog: TurnDialog | None = None

    def clamped_anew(self) -> None:
        """The board was taken off, shifted or clamped anew."""
        session = self._desk.bridge.session
        if session is None:
            return
        if self._desk.station is None:
            find.moved(session, say("said without a machine"))
            return

        def work(station: Station, _progress: Progress) -> None:
            place = station.place
            if "z" in station.controller.known:
                place.raise_to(place.clearance * 4)
            self._careless(station)
            place.ask(
                Request(
                    RequestKind.RECLAMP,
                    self.tr("Move the board"),
                    self.tr("Take it off, turn or clean it, clamp it again. Then its holes are touched."),
                )
            )
            find.moved(session, say("taken off and clamped again"))

        self._desk.with_station(
            self.tr("Clamp again"),
            work,
            lambda _: self._desk.say(
                self.tr("The board was moved: touch two reference holes, better three.")
            ),
        )

    def turn_over(self) -> None:
        """Ask how, then have it done."""
        session = self._desk.bridge.session
        if session is None:
            return
        self._desk.ask("turn", lambda _: can_mill(session), self._ask, self._desk.show_error)

    def _ask(self, may: object) -> None:
        window = self._desk.window
        self.dialog = TurnDialog(window.commands, window, can_mill=bool(may))
        self.dialog.wanted.connect(self._turn)
        self.dialog.open()

    def _turn(self, axis: str, mill: bool) -> None:
        session = self._desk.bridge.session
        if session is None:
            return
        if self._desk.station is None:
            self._desk.ask(
                "turned",
                lambda _: turn.turn_over(session, None, axis=axis, mill=mill),
                self._turned,
                self._desk.show_error,
            )
            return

        def work(station: Station, _progress: Progress) -> None:
            self._careless(station)
            turn.turn_over(session, station, axis=axis, mill=mill)

        self._desk.with_station(self.tr("Turn over"), work, self._turned)

    def _turned(self, _value: object) -> None:
        self._desk.say(self.tr("The board is turned over: touch two drilled holes, better three."))

    def _careless(self, station: Station) -> None:
        """On the bench nobody lays a board down exactly where it was, unless a test says so."""
        if station.bench is not None:
            station.bench.clamp_next_at(Rigid(BENCH_TURN, BENCH_SHIFT))


def can_mill(session: Session) -> bool:
    """Whether the side that comes up can be milled: it has copper. Computes."""
    snap = session.snapshot
    up = snap.face().other
    whole = all(design.other_copper for design in session.derived.designs(snap).values())
    return whole or up is snap.settings.board.side
