"""The machine's state and place in the window, ten times a second; hold, resume, stop, feed."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from PySide6.QtCore import QObject

from drypoint.errors import MachineError
from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.controller import Controller
from drypoint.machine.state import Activity, MachineState
from drypoint.ui.jog.position import Position
from drypoint.ui.language.words import told
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.run_strip import RunState

TRAIL = 5.0
"""Length of the bit's trail on the canvas, mm."""


class Live(QObject):
    """Shows what the machine does and passes on what the hand on the run strip wants.

    Attributes
    ----------
    placing : Rigid or None
        Board frame to work coordinates, to show the bit on the board; None while not known.
    stopped : callable
        Called when Stop was pressed.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._shown: tuple[object, ...] = ()
        self._said: tuple[RunState, bool] | None = None
        self._at = ""
        self._speeds = (0, 0, 0)
        self.placing: Rigid | None = None
        strip = desk.window.strip
        strip.hold.connect(lambda: self._send(lambda c: c.hold()))
        strip.resume.connect(lambda: self._send(lambda c: c.resume()))
        strip.stop.connect(self._stop)
        strip.feed_changed.connect(self._steer)
        strip.spindle_changed.connect(self._steer_spindle)
        strip.rapid_changed.connect(lambda percent: self._send(lambda c: c.override(rapid=percent)))
        desk.looked.connect(self._look)

    def _send(self, what: Callable[[Controller], None]) -> None:
        """Straight to the controller, past every queue."""
        station = self._desk.thread_.station
        if station is None:
            return
        try:
            what(station.controller)
        except MachineError as error:
            self._desk.show_error(error)

    def _stop(self) -> None:
        if self._desk.station is None:
            return
        self._desk.thread_.cancel()
        self._send(lambda controller: controller.stop())
        self._desk.say(self.tr("Stop: the axes slow down, then everything buffered is thrown away."))

    def _steer(self, steps: int) -> None:
        self._send(lambda controller: controller.override(feed=_stepped(controller.overrides[0], steps)))

    def _steer_spindle(self, steps: int) -> None:
        self._send(lambda controller: controller.override(spindle=_stepped(controller.overrides[2], steps)))

    def _look(self, state: MachineState) -> None:
        desk = self._desk
        known = desk.thread_.known
        now = (state, desk.asking, desk.busy, known, self.placing)
        if now == self._shown:
            return
        self._shown = now
        self._show_strip(state)
        trusted = state.work is not None and {"x", "y", "z"} <= known
        desk.window.jog.position.show_position(Position(state.work, state.machine, trusted))
        self._show_bit(state, known)

    def _show_strip(self, state: MachineState) -> None:
        strip, word, where = self._desk.window.strip, self._word(state), self._where(state)
        usable = state.activity is not Activity.NOT_CONNECTED
        if (word, usable) != self._said:
            self._said = (word, usable)
            strip.show_state(word, where, usable=usable)
        elif where != self._at:
            strip.show_where(where)
        self._at = where
        if state.overrides != self._speeds:
            self._speeds = state.overrides
            strip.show_feed(*self._speeds)

    def _word(self, state: MachineState) -> RunState:
        if self._desk.asking and state.activity is Activity.AT_REST:
            return RunState.NEEDS_YOU
        return RunState(state.activity.value)

    def _where(self, state: MachineState) -> str:
        station = self._desk.station
        if station is None:
            return self.tr("Machine, Connect…")
        if state.reason:
            return told(state.reason)
        name = self.tr("bench") if station.bench is not None else station.controller.name
        if state.activity in (Activity.CUTTING, Activity.MOVING, Activity.TOUCHING) and state.feed > 0:
            return self.tr("{name}, {feed:.0f} mm/min").format(name=name, feed=state.feed)
        if self._desk.window.jog.position.keys.armed:
            return self.tr("{name}, jog keys armed").format(name=name)
        return name

    def _show_bit(self, state: MachineState, known: frozenset[str]) -> None:
        canvas = self._desk.window.canvas.canvas
        if state.work is None or self.placing is None or not {"x", "y"} <= known:
            canvas.set_bit(None)
            return
        back = self.placing.inverse()
        at = back.apply([state.work[:2]])[0]
        trail = self._desk.thread_.trail
        canvas.set_bit((float(at[0]), float(at[1])), _last(back.apply(trail) if len(trail) else trail, TRAIL))


def _stepped(percent: int, steps: int) -> int:
    """``percent`` after steps of ten; none is back to 100."""
    return percent + 10 * steps if steps else 100


def _last(points: Points, length: float) -> Points:
    """The last ``length`` mm of a line."""
    if len(points) < 2:
        return points
    steps = np.hypot(*np.diff(points, axis=0).T)
    behind = np.cumsum(steps[::-1])[::-1]
    return points[int(np.argmax(behind <= length)) :] if (behind <= length).any() else points[-1:]
