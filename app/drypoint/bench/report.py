"""Status reports, with the rhythm of their occasional fields."""

from __future__ import annotations

from typing import TYPE_CHECKING

from drypoint.bench.modal import INCH
from drypoint.bench.planner import Triple
from drypoint.bench.states import BLOCKS, BUFFER, State
from drypoint.bench.stepper import Pace

if TYPE_CHECKING:
    from drypoint.bench.controller import BenchController

WCO_IDLE, WCO_MOVING = 10, 30
OV_IDLE, OV_MOVING = 10, 20
"""Every so many reports the work offset and the overrides are repeated."""

_MOVING = (State.RUN, State.HOLD, State.JOG, State.HOME, State.DOOR)


class Reporter:
    """Makes the texts of reports."""

    def __init__(self, controller: BenchController) -> None:
        self._of = controller
        self.reset()

    def reset(self) -> None:
        """After a reset the offset comes first, the overrides second."""
        self._wco = self._ov = 0

    def offsets_changed(self) -> None:
        """The next report shall hold the offset."""
        self._wco = 0

    def overrides_changed(self) -> None:
        """The next report shall hold the overrides."""
        self._ov = 0

    def status(self) -> str:
        """One `<…>` report."""
        of = self._of
        settings = of.memory.settings
        place, offset = of.place(), of.parser.offset()
        machine = int(settings[10]) & 1
        shown = place if machine else _minus(place, offset)
        parts = [self._state(), ("MPos:" if machine else "WPos:") + self.coordinates(shown)]
        if int(settings[10]) & 2:
            parts.append(f"Bf:{BLOCKS - len(of.planner.blocks)},{BUFFER - of.rx_used}")
        unit = 1.0 / INCH if settings[13] else 1.0
        feed = of.stepper.speed(of.now) * 60.0 * unit
        parts.append(f"FS:{feed:.0f},{of.spindle_speed():.0f}")
        if of.probe_input():
            parts.append("Pn:P")
        parts += self._occasional(offset)
        return "<" + "|".join(parts) + ">"

    def coordinates(self, place: Triple) -> str:
        """Three coordinates in the unit of reports."""
        if self._of.memory.settings[13]:
            return ",".join(f"{value / INCH:.4f}" for value in place)
        return ",".join(f"{value:.3f}" for value in place)

    def _state(self) -> str:
        of = self._of
        still = of.stepper.pace is Pace.STILL
        if of.state is State.HOLD:
            return "Hold:0" if still else "Hold:1"
        if of.state is State.DOOR:
            if of.realtime.restoring:
                return "Door:3"
            return "Door:0" if still else "Door:2"
        return str(of.state)

    def _occasional(self, offset: Triple) -> list[str]:
        of = self._of
        moving = of.state in _MOVING
        parts: list[str] = []
        if self._wco > 0:
            self._wco -= 1
        else:
            self._wco = (WCO_MOVING if moving else WCO_IDLE) - 1
            self._ov = self._ov or 1
            parts.append("WCO:" + self.coordinates(offset))
        if self._ov > 0:
            self._ov -= 1
            return parts
        self._ov = (OV_MOVING if moving else OV_IDLE) - 1
        live = of.realtime
        parts.append(f"Ov:{live.feed},{live.rapid},{live.spindle}")
        modal = of.parser.modal
        active = "" if live.spindle_stopped else {3: "S", 4: "C"}.get(int(modal.spindle), "")
        active += "F" if modal.coolant == 8 else ""
        if active:
            parts.append("A:" + active)
        return parts


def _minus(a: Triple, b: Triple) -> Triple:
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])
