"""Feeds and speeds from cutting speed, chip load and what the machine can do."""

from __future__ import annotations

import math
from dataclasses import dataclass

from drypoint.bits.model import Bit, Drill, EndMill, Speeds, VBit
from drypoint.wording import say

TEETH = {VBit: 1, EndMill: 2, Drill: 2}
"""Cutting edges assumed (common practice)."""


@dataclass(frozen=True, slots=True)
class MachineLimits:
    """Spindle range (1/min) and highest feeds (mm/min)."""

    spindle_min: float
    spindle_max: float
    feed_max: float
    plunge_max: float


@dataclass(frozen=True, slots=True)
class Advice:
    """Speeds within the limits, and what the user should know."""

    speeds: Speeds
    warnings: tuple[str, ...] = ()
    source: str = "common practice"


def cutting_speed(diameter: float, spindle: float) -> float:
    """m/min: v = π d n / 1000, d in mm (handbook formula)."""
    return math.pi * diameter * spindle / 1000.0


def spindle_for(diameter: float, speed: float) -> float:
    """1/min for a cutting speed in m/min: the formula of `cutting_speed` solved for n."""
    return 1000.0 * speed / (math.pi * diameter)


def feed_for(spindle: float, teeth: int, chip: float) -> float:
    """mm/min: f = n z fz, chip load fz in mm per tooth (handbook formula)."""
    return spindle * teeth * chip


def cutting_diameter(bit: Bit, depth: float = 0.1) -> float:
    """Diameter that sets the cutting speed, mm; of a V-bit at ``depth`` mm."""
    return bit.width(depth) if isinstance(bit, VBit) else bit.diameter


def advise(bit: Bit, *, chip: float, speed: float, limits: MachineLimits) -> Advice:
    """Speeds for a chip load (mm per tooth) and cutting speed (m/min) within a machine's limits.

    Plunging takes a third of the feed, drilling the whole (common practice, no source).
    """
    warnings = []
    wanted = spindle_for(cutting_diameter(bit), speed)
    spindle = min(max(wanted, limits.spindle_min), limits.spindle_max)
    if wanted > limits.spindle_max * 1.001:
        share = spindle / wanted
        warnings.append(
            say(
                "{name} would like {wanted:.0f} turns a minute; this spindle reaches "
                "{spindle:.0f} ({share:.0%}). Feed is lowered to keep the chip load.",
                name=bit.name,
                wanted=wanted,
                spindle=spindle,
                share=share,
            )
        )
    if wanted < limits.spindle_min * 0.999:
        warnings.append(say("{name} should turn slower than this spindle can: expect heat.", name=bit.name))
    feed = feed_for(spindle, TEETH[type(bit)], chip)
    if feed > limits.feed_max:
        warnings.append(
            say(
                "Feed is limited to {feed_max:.0f} mm/min: chips are thinner than asked.",
                feed_max=limits.feed_max,
            )
        )
        feed = limits.feed_max
    plunge = min(feed if isinstance(bit, Drill) else feed / 3.0, limits.plunge_max)
    return Advice(Speeds(spindle, feed, plunge), tuple(warnings))


def check_speeds(bit: Bit, limits: MachineLimits) -> tuple[str, ...]:
    """What is wrong with a bit's own speeds on this machine, in words."""
    found = []
    speeds = bit.speeds
    if not limits.spindle_min <= speeds.spindle <= limits.spindle_max:
        found.append(
            say(
                "{name} asks for {spindle:.0f} turns a minute; the spindle does "
                "{spindle_min:.0f} to {spindle_max:.0f}.",
                name=bit.name,
                spindle=speeds.spindle,
                spindle_min=limits.spindle_min,
                spindle_max=limits.spindle_max,
            )
        )
    if speeds.feed > limits.feed_max:
        found.append(
            say(
                "{name} asks for {feed:.0f} mm/min; the machine does {feed_max:.0f}.",
                name=bit.name,
                feed=speeds.feed,
                feed_max=limits.feed_max,
            )
        )
    if speeds.plunge > limits.plunge_max:
        found.append(
            say(
                "{name} plunges at {plunge:.0f} mm/min; the machine does {plunge_max:.0f}.",
                name=bit.name,
                plunge=speeds.plunge,
                plunge_max=limits.plunge_max,
            )
        )
    return tuple(found)
