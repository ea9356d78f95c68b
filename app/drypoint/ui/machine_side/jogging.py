"""Moving the axes by hand from the window: steps, held jogs, touching off, places set by hand wheel."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.machine.operator import Answer, AnswerKind
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.state import Activity, MachineState
from drypoint.progress import Progress
from drypoint.session.actions.touch_off import z_by_contact, z_by_paper
from drypoint.session.layout import INSET
from drypoint.session.station import Station
from drypoint.ui.language.words import fill, told
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.hands import MOVABLE
from drypoint.ui.machine_side.thread import Jog
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.parts.blocks import button, words
from drypoint.ui.parts.fields import NumberField, Setting

HELD = {"x": 40.0, "y": 40.0, "z": 8.0}
"""Farthest a held jog goes without being let go, mm."""

NEAR = 2.0
"""Below this height over the copper jogs are slow, mm."""

SLOW = 120.0
"""Feed of jogs of z near the copper, or where its height is not known, mm/min."""

SLOW_ACROSS = 300.0
"""The same for x and y."""


class PlaceDialog(QDialog):
    """Where the bit is, when it was brought there by hand wheel.

    Signals
    -------
    given(object) : {"x": mm, …} of the axes that were filled in
    """

    given = Signal(object)

    def __init__(
        self, commands: Commands, place: tuple[float, float, float], parent: QWidget, *, hole: str = ""
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Set by hand wheel"))
        self.fields = {
            axis: NumberField(axis.upper(), "mm", value=value, decimals=3)
            for axis, value in zip("xyz", place, strict=True)
            if axis != "z" or not hole
        }
        self.set_button = button(self.tr("The bit is there"), "primary")
        self.corner_button = button(self.tr("Over the corner spot"))
        self.corner_button.setVisible(not hole)
        cancel = button(self.tr("Cancel"))
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 18)
        column.setSpacing(10)
        title = self.tr("Hole {name} is at…").format(name=hole) if hole else self.tr("The bit is at…")
        column.addWidget(words(title, "section"))
        text = self.tr(
            "Axes turned by hand are not seen by the controller. Say where the bit stands on the work; "
            "the position is set to it, nothing moves. Leave an axis as it is to keep it."
        )
        column.addWidget(words(text, "quiet", wrap=True))
        for axis, field in self.fields.items():
            column.addWidget(Setting(axis.upper(), field))
        row = QHBoxLayout()
        row.addWidget(self.corner_button)
        row.addStretch(1)
        row.addWidget(cancel)
        row.addWidget(self.set_button)
        column.addLayout(row)
        keep_run_keys(self, commands)
        cancel.clicked.connect(self.reject)
        self.corner_button.clicked.connect(self._corner)
        self.set_button.clicked.connect(self._give)

    def _corner(self) -> None:
        for axis in "xy":
            self.fields[axis].set_value(INSET)

    def _give(self) -> None:
        self.given.emit({axis: field.value for axis, field in self.fields.items()})
        self.accept()


class Jogging(QObject):
    """Wires the position panel."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._usable: tuple[bool, str] | None = None
        self._axis_held = ""
        self.panel = desk.window.jog.position
        self.dialog: PlaceDialog | None = None
        panel = self.panel
        panel.jogged.connect(self._step)
        panel.held.connect(self._hold)
        panel.let_go.connect(self._let_go)
        panel.touched_off.connect(self._touch_off)
        panel.place_entered.connect(self._enter_place)
        desk.window.commands["contact_check"].triggered.connect(self.check_contact)
        desk.looked.connect(self._look)
        desk.changed.connect(lambda: self._look(desk.state))
        desk.window.installEventFilter(self)
        self._look(desk.state)

    # moving

    def _step(self, axis: str, distance: float) -> None:
        self._move(axis, distance, 0)

    def _hold(self, axis: str, sign: float) -> None:
        self._axis_held = axis
        self._move(axis, sign * HELD[axis], self._desk.thread_.take_hold())

    def _let_go(self) -> None:
        if self._axis_held:
            self._axis_held = ""
            self._desk.thread_.let_go()

    def _move(self, axis: str, distance: float, held: int) -> None:
        step = self._within(axis, distance)
        moved = (step if axis == "x" else 0.0, step if axis == "y" else 0.0, step if axis == "z" else 0.0)
        if self._may_answer():
            self._desk.thread_.underway(held)
            self._desk.answer(Answer(AnswerKind.JOG, moved), held)
        elif not self._desk.busy and self._desk.station is not None:
            self._desk.thread_.jog(Jog(moved, self._feed(axis), held))

    def _feed(self, axis: str) -> float:
        station, state = self._desk.station, self._desk.state
        assert station is not None
        rates = station.place.preset.max_rate
        near = state.work is None or "z" not in self._desk.thread_.known or state.work[2] < NEAR
        slow = SLOW if axis == "z" else SLOW_ACROSS
        return min(rates["xyz".index(axis)], slow) if near else rates["xyz".index(axis)]

    def _within(self, axis: str, distance: float) -> float:
        """No farther than the machine's travel, where it is known from homing."""
        station, state = self._desk.station, self._desk.state
        if station is None or state.machine is None or not station.controller.facts.homing:
            return distance
        index = "xyz".index(axis)
        travel = station.place.preset.travel[index]
        room = (-travel - state.machine[index], -state.machine[index])
        return min(max(distance, room[0]), room[1])

    def _may_answer(self) -> bool:
        asked = self._desk.bar.asked
        return asked is not None and asked.request.kind in MOVABLE

    # touching off

    def _touch_off(self, how: str, paper: float) -> None:
        if how == "paper":
            self._desk.with_station(
                self.tr("Touch off Z"), lambda station, _: z_by_paper(station, paper), self._touched
            )
        else:
            self._desk.with_station(
                self.tr("Touch off Z"), lambda station, _: z_by_contact(station), self._touched
            )

    def _touched(self, _value: object) -> None:
        self._desk.say(self.tr("Z is zero on the copper here."))

    def check_contact(self) -> None:
        """Check the contact circuit and have the clip taken off again."""

        def work(station: Station, _progress: Progress) -> None:
            check_contact(station.place)
            clip_off(station.place)

        said = self.tr("The contact circuit works: open in the air, closed at the clip. The clip is off.")
        self._desk.with_station(self.tr("Contact circuit"), work, lambda _: self._desk.say(said))

    def _enter_place(self) -> None:
        state = self._desk.state
        self.dialog = PlaceDialog(
            self._desk.window.commands, state.work or (0.0, 0.0, 0.0), self._desk.window
        )
        self.dialog.given.connect(self._set_place)
        self.dialog.open()

    def _set_place(self, place: dict[str, float]) -> None:
        def work(station: Station, _progress: Progress) -> None:
            station.controller.set_work(**place)

        words_ = fill(self.tr("The position is set: x {x:.3f}, y {y:.3f}, z {z:.3f} mm."), **place)
        self._desk.with_station(self.tr("Set the place"), work, lambda _: self._desk.say(words_))

    # what may be used

    def _look(self, state: MachineState) -> None:
        usable, why = self._judge(state)
        if (usable, why) == self._usable:
            return
        self._usable = (usable, why)
        self.panel.set_usable(usable, why)
        alone = usable and not self._desk.busy
        self.panel.touch_off.setEnabled(alone)
        self.panel.sides.setEnabled(alone)
        self.panel.enter_place.setEnabled(alone)
        self._desk.window.commands["arm"].setEnabled(usable)
        self._desk.window.commands["contact_check"].setEnabled(alone)

    def _judge(self, state: MachineState) -> tuple[bool, str]:
        if self._desk.station is None:
            return False, self.tr("Not connected.")
        if self._may_answer():
            return True, ""
        if self._desk.busy:
            return False, self.tr("Jog is locked while a procedure runs.")
        if state.activity is Activity.NEEDS_YOU:
            return False, told(state.reason)
        return True, ""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.WindowDeactivate:
            self._let_go()
        return super().eventFilter(watched, event)
