"""From what the controller reports to what people see: our words, mm, both positions."""

from __future__ import annotations

from drypoint.machine.channel import Channel
from drypoint.machine.delivery import is_still
from drypoint.machine.explain import explain_alarm
from drypoint.machine.protocol import Phase, Status, Vec
from drypoint.machine.state import Activity, Facts, MachineState, activity_of


def view(channel: Channel, facts: Facts, purpose: Activity) -> MachineState:
    """The machine as last reported, while motion serves ``purpose``."""
    status = channel.status
    if status is None:
        return MachineState(Activity.NEEDS_YOU, reason="Waiting for the controller.")
    machine, work = _places(status, channel.offset, facts.unit)
    return MachineState(
        activity_of(status.phase, purpose),
        machine,
        work,
        still=is_still(status),
        contact="P" in status.pins,
        limits=frozenset(status.pins & {"X", "Y", "Z"}),
        feed=(status.feed or 0.0) * facts.unit,
        spindle=status.spindle or 0.0,
        overrides=channel.overrides,
        reason=_reason(status.phase, channel.alarm),
    )


def scaled(vec: Vec, unit: float) -> Vec:
    """``vec`` times the mm that one unit is."""
    return vec[0] * unit, vec[1] * unit, vec[2] * unit


def _places(status: Status, offset: Vec | None, unit: float) -> tuple[Vec | None, Vec | None]:
    """Machine and work position, mm; whichever was not reported follows from the offset."""
    machine, work = status.machine, status.work
    if offset is not None:
        if machine is None and work is not None:
            machine = (work[0] + offset[0], work[1] + offset[1], work[2] + offset[2])
        elif work is None and machine is not None:
            work = (machine[0] - offset[0], machine[1] - offset[1], machine[2] - offset[2])
    return (
        None if machine is None else scaled(machine, unit),
        None if work is None else scaled(work, unit),
    )


def _reason(phase: Phase, alarm: int | None) -> str:
    match phase:
        case Phase.ALARM if alarm is not None:
            said = explain_alarm(alarm)
            return f"{said.what} {said.hint}"
        case Phase.ALARM:
            return "The controller is locked until it is homed or unlocked."
        case Phase.DOOR:
            return "The safety door reads open."
        case Phase.SLEEP:
            return "The controller sleeps until it is reset."
        case _:
            return ""
