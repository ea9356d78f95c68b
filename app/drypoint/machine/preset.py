"""What is known of a machine before it is connected, by size class; compared with what it says of itself."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

from drypoint.board.model import Finding
from drypoint.errors import InputError
from drypoint.machine.protocol import Vec
from drypoint.machine.state import Facts
from drypoint.shipped import shipped
from drypoint.wording import say

_RESOURCE = shipped("resources") / "machines.json"


class SpindleKind(StrEnum):
    """How the spindle is switched."""

    BY_HAND = "switched by hand"
    ON_OFF = "on and off"
    VARIABLE = "variable"


@dataclass(frozen=True, slots=True)
class MachinePreset:
    """One machine.

    Attributes
    ----------
    travel : (x, y, z) mm
    max_rate : (x, y, z) mm/min
    acceleration : (x, y, z) mm/s²
    junction_deviation : float
        mm, as the controller's setting of that name.
    spindle_range : (lowest, highest) 1/min
    spindle_delay : float
        Time to come up to speed, s.
    contact_input, homing, limits : bool
        Whether there is an input for the contact circuit, switches to home to, and limit switches.
    receive_bytes : int
        Receive buffer where the controller does not state it.
    laser_scale : float
        Power value that means full power.
    clearance : float
        Height above the surface at which moves across are safe, mm.
    """

    name: str
    travel: Vec
    max_rate: Vec
    acceleration: Vec
    spindle: SpindleKind
    spindle_range: tuple[float, float]
    junction_deviation: float = 0.010
    spindle_delay: float = 3.0
    contact_input: bool = True
    homing: bool = False
    limits: bool = False
    receive_bytes: int = 128
    laser_scale: float = 1000.0
    clearance: float = 2.0


def load_presets(path: Path = _RESOURCE) -> tuple[MachinePreset, ...]:
    """The presets in a file.

    Raises
    ------
    InputError
        If the file cannot be read or a preset lacks something.
    """
    try:
        entries = json.loads(path.read_text(encoding="utf-8"))["machines"]
        return tuple(preset_from(entry) for entry in entries)
    except (OSError, ValueError, KeyError, TypeError) as error:
        raise InputError("The machine presets cannot be read.", str(path), str(error)) from error


def preset_from(entry: dict[str, object]) -> MachinePreset:
    """A preset from the plain values of a file.

    Raises
    ------
    KeyError, TypeError, ValueError
        If something is missing or of the wrong kind.
    """
    values = {
        name: tuple(float(part) for part in value) if isinstance(value, list) else value
        for name, value in dict(entry).items()
    }
    values["spindle"] = SpindleKind(str(values["spindle"]))
    preset = MachinePreset(**values)  # type: ignore[arg-type]
    for vec in (preset.travel, preset.max_rate, preset.acceleration):
        if len(vec) != 3 or min(vec) <= 0.0:
            raise ValueError(f"{preset.name}: three values above zero are needed")
    return preset


_AXES = "xyz"
_RATIO = 1.02
"""Settings that differ by less from the preset are taken as the same."""


def compare(facts: Facts, preset: MachinePreset) -> tuple[Finding, ...]:
    """What the controller runs by itself, then where it differs from the preset, and what that means.

    A setting that the controller did not tell is left out.
    """
    return (*_startup(facts), *_modes(facts, preset), *_limits(facts, preset))


def _limits(facts: Facts, preset: MachinePreset) -> Iterator[Finding]:
    groups = (
        (110, preset.max_rate, "highest rate", "mm/min", "Times and rapid moves will differ."),
        (120, preset.acceleration, "acceleration", "mm/s²", "Times will differ; too high loses steps."),
        (130, preset.travel, "travel", "mm", "The plan may leave the travel, or use less than there is."),
    )
    for first, wanted, what, unit, meaning in groups:
        for axis, want in enumerate(wanted):
            have = facts.settings.get(first + axis)
            if have is not None and not want / _RATIO <= have <= want * _RATIO:
                yield Finding(
                    "setting",
                    say(
                        "The {what} of {axes} is {have:g} {unit}; the machine set up here has {want:g}.",
                        what=what,
                        axes=_AXES[axis],
                        have=have,
                        unit=unit,
                        want=want,
                    ),
                    f"${first + axis}",
                    meaning,
                )
    steps = [facts.settings.get(100 + axis) for axis in range(3)]
    for axis, value in enumerate(steps):
        if value is not None and value <= 0.0:
            yield Finding(
                "setting",
                say("The steps per mm of {axes} are {value:g}.", axes=_AXES[axis], value=value),
                f"${100 + axis}",
                "",
            )


def _modes(facts: Facts, preset: MachinePreset) -> Iterator[Finding]:
    have = facts.settings
    if have.get(13, 0.0):
        yield Finding("inches", "The controller reports positions in inches.", "$13", "They are converted.")
    if have.get(32, 0.0):
        yield Finding(
            "laser mode",
            "Laser mode is on: a spindle would stop at every rapid move.",
            "$32",
            "Switch it off before milling; leave it on for the legend by laser.",
        )
    if have.get(22) is not None and bool(have[22]) != preset.homing:
        word = "on" if have[22] else "off"
        yield Finding(
            "homing",
            say("Homing is {word} in the controller, unlike the machine set up here.", word=word),
            "$22",
            "",
        )
    if have.get(20) == 1.0 and have.get(22) == 0.0:
        yield Finding("limits", "Travel limits in software are on, but homing is off.", "$20", "")
    _, high = preset.spindle_range
    if (
        preset.spindle is SpindleKind.VARIABLE
        and have.get(30) is not None
        and abs(have[30] - high) > 0.02 * high
    ):
        yield Finding(
            "spindle",
            say(
                "Full speed is set to {have:g} 1/min; the machine set up here has {high:g}.",
                have=have[30],
                high=high,
            ),
            "$30",
            "The spindle will turn faster or slower than asked.",
        )


def _startup(facts: Facts) -> Iterator[Finding]:
    for line in facts.startup:
        yield Finding(
            "start-up line",
            say("The controller runs a stored line at every start: {line}", line=line),
            "$N",
            "Drypoint did not store it. If it moves the machine, remove it.",
        )
