"""Real-time bytes: reports, hold and resume, jog cancel, door, overrides, reset."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from drypoint.bench.planner import Triple
from drypoint.bench.report import Reporter
from drypoint.bench.states import OVERRIDE_TURN, REPORT_DELAY, RESTORE_TIME, State
from drypoint.bench.stepper import Pace

if TYPE_CHECKING:
    from drypoint.bench.controller import BenchController

RESET, STATUS, RESUME, HOLD, DOOR, JOG_CANCEL = 0x18, 0x3F, 0x7E, 0x21, 0x84, 0x85
SPINDLE_STOP, FLOOD, MIST = 0x9E, 0xA0, 0xA1
FEED_STEPS = {0x91: 10, 0x92: -10, 0x93: 1, 0x94: -1}
RAPID_SHARES = {0x95: 100, 0x96: 50, 0x97: 25}
SPINDLE_STEPS = {0x9A: 10, 0x9B: -10, 0x9C: 1, 0x9D: -1}
LEAST, MOST = 10, 200
"""Bounds of feed and spindle overrides, %."""


class Realtime:
    """What happens at once, whatever the main loop is doing."""

    def __init__(self, controller: BenchController) -> None:
        self._of = controller
        self._report = Reporter(controller)
        self.reset()

    def reset(self) -> None:
        """As after power-up."""
        self.feed, self.rapid, self.spindle = 100, 100, 100
        self.critical = False
        self.hold = ""
        """"" or "hold", "door", "sleep": what suspends the run."""
        self.jog_cancel = False
        self.spindle_stopped = False
        self._report_at = math.inf
        self._ready_at = math.inf
        self._steer_at = math.inf
        self._steers: set[int] = set()
        self._of.planner.override(1.0, 1.0)
        self._report.reset()

    @property
    def suspended(self) -> bool:
        """Whether the main loop stands still."""
        return bool(self.hold) or self.critical

    @property
    def due(self) -> float:
        """When something of this is due, s."""
        return min(self._report_at, self._ready_at, self._steer_at)

    @property
    def restoring(self) -> bool:
        """Whether the spindle is running up again after a door or stop."""
        return self._ready_at < math.inf

    def serve(self, now: float) -> None:
        """Do what is due."""
        if self._report_at <= now:
            self._report_at = math.inf
            self._of.say(self._report.status())
        if self._ready_at <= now:
            self._ready_at = math.inf
            self._go()
        if self._steer_at <= now:
            self._steer_at = math.inf
            self._override()

    def byte(self, code: int) -> None:
        """One real-time byte has arrived."""
        if code == RESET:
            self._of.reset()
        elif code == STATUS:
            self._ask_status()
        elif self.critical:
            return
        elif code in (HOLD, DOOR, JOG_CANCEL):
            self._stop(code)
        elif code == RESUME:
            self._resume()
        elif code == SPINDLE_STOP:
            self._toggle_spindle()
        elif code in (FLOOD, MIST):
            self._toggle_coolant(code)
        else:
            self._steers.add(code)
            self._steer_at = min(self._steer_at, self._of.now + OVERRIDE_TURN)

    def pause(self) -> None:
        """A programmed stop: as a hold, standing."""
        self.hold = "hold"
        self._of.state = State.HOLD

    def sleep(self) -> None:
        """Outputs off until a reset."""
        self.hold = "sleep"
        self._of.state = State.SLEEP
        self._of.say("[MSG:Sleeping]")

    def coordinates(self, place: Triple) -> str:
        """Three coordinates in the unit of reports."""
        return self._report.coordinates(place)

    def report_offsets(self) -> None:
        """The work offset has changed: say so in the next report."""
        self._report.offsets_changed()

    def _ask_status(self) -> None:
        if not self.critical and self._of.state != State.HOME and self._report_at == math.inf:
            self._report_at = self._of.now + REPORT_DELAY

    def _stop(self, code: int) -> None:
        of = self._of
        if code == JOG_CANCEL and of.state != State.JOG:
            return
        moving = of.stepper.pace is not Pace.STILL
        if code == DOOR:
            self.hold = "door"
            of.say("[MSG:Check Door]")
            if not moving:
                self._spindle_output(0.0)
            of.state = State.DOOR if of.state not in (State.ALARM, State.CHECK) else of.state
        elif of.state == State.JOG:
            self.jog_cancel = True
        elif of.state in (State.IDLE, State.RUN):
            self.hold = "hold"
            of.state = State.HOLD
        if moving:
            of.stepper.brake(of.now)

    def stopped(self) -> bool:
        """The motors stand: true if that completes a hold or a cancelled jog."""
        of = self._of
        if self.jog_cancel:
            self.jog_cancel = False
            of.forget_motion()
            of.state = State.IDLE
            return True
        if self.hold == "door":
            self._spindle_output(0.0)
        return bool(self.hold)

    def _resume(self) -> None:
        of = self._of
        if self.hold not in ("hold", "door") or of.stepper.pace is not Pace.STILL or self.restoring:
            return
        if self.hold == "door" or self.spindle_stopped:
            wanted = of.parser.modal.spindle != 5
            self.spindle_stopped = False
            if wanted:
                self._spindle_output(of.parser.modal.speed * self.spindle / 100.0)
                self._ready_at = of.now + RESTORE_TIME
                return
        self._go()

    def _go(self) -> None:
        of = self._of
        self.hold = ""
        of.state = type(of.state)(State.RUN if of.planner.blocks else State.IDLE)
        of.start()

    def _toggle_spindle(self) -> None:
        of = self._of
        if self.hold != "hold" or of.parser.modal.spindle == 5 or of.stepper.pace is not Pace.STILL:
            return
        self.spindle_stopped = not self.spindle_stopped
        on = 0.0 if self.spindle_stopped else of.parser.modal.speed * self.spindle / 100.0
        self._spindle_output(on)
        self._report.overrides_changed()

    def _spindle_output(self, speed: float) -> None:
        self._of.mechanics.spindle(speed)

    def _toggle_coolant(self, code: int) -> None:
        of = self._of
        if code == FLOOD and of.state in (State.IDLE, State.RUN, State.HOLD):
            coolant = 9 if of.parser.modal.coolant == 8 else 8
            of.parser.modal = replace(of.parser.modal, coolant=coolant)
            self._report.overrides_changed()

    def _override(self) -> None:
        before = (self.feed, self.rapid, self.spindle)
        for code in sorted(self._steers):  # back to 100 % comes before the steps
            if code == 0x90:
                self.feed = 100
            elif code in FEED_STEPS:
                self.feed = min(MOST, max(LEAST, self.feed + FEED_STEPS[code]))
            elif code in RAPID_SHARES:
                self.rapid = RAPID_SHARES[code]
            elif code == 0x99:
                self.spindle = 100
            elif code in SPINDLE_STEPS:
                self.spindle = min(MOST, max(LEAST, self.spindle + SPINDLE_STEPS[code]))
        self._steers.clear()
        if before == (self.feed, self.rapid, self.spindle):
            return
        self._report.overrides_changed()
        of = self._of
        of.planner.override(self.feed / 100.0, self.rapid / 100.0)
        of.stepper.overridden(of.now)
        if before[2] != self.spindle and of.parser.modal.spindle != 5 and not self.spindle_stopped:
            self._spindle_output(of.parser.modal.speed * self.spindle / 100.0)
