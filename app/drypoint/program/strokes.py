"""Round work: drilled holes with pecks, and bores milled as descending circles."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

from drypoint.bits.model import Bit, Drill, EndMill
from drypoint.program.builder import MoveBuilder

PECK_GAP = 0.1
"""After clearing chips, full speed ends this far above where the drill was, mm."""
STEP_OVER = 0.9
"""Distance of neighbouring circles as a share of the mill's diameter."""
FIRST_CIRCLE = 0.45
"""Radius of the innermost circle as a share of the mill's diameter: leaves no core."""
LEAST_CIRCLE = 0.02
"""A circle smaller than this, mm, is a straight plunge."""
OFF_WALL = 0.5
"""The mill leaves the wall by this share of the circle's radius before it is lifted."""


def peck_depths(top: float, bottom: float, peck: float) -> list[float]:
    """Heights of the bottoms of equal pecks, the last at ``bottom``; one if ``peck`` is 0."""
    total = top - bottom
    count = max(1, math.ceil(total / peck - 1e-9)) if peck > 0 else 1
    return [top - total * (k + 1) / count for k in range(count)]


def eased(bit: Bit, share: float) -> Bit:
    """The bit run with less force: a share of its plunge; a drill in pecks as much smaller.

    A drill without pecks gets some of its own diameter.
    """
    if share >= 1.0:
        return bit
    slow = replace(bit.speeds, plunge=bit.speeds.plunge * share)
    if isinstance(bit, Drill):
        return replace(bit, speeds=slow, peck=(bit.peck or bit.diameter) * share)
    return replace(bit, speeds=slow)


def drill(
    builder: MoveBuilder, at: tuple[float, float], top: float, depth: float, bit: Bit, tag: int
) -> None:
    """One hole straight down, pecks written out (the controller knows no canned cycles)."""
    x, y = at
    settings = builder.settings
    step = bit.peck if isinstance(bit, Drill) else bit.step if isinstance(bit, EndMill) else 0.0
    clear = min(builder.plane, top + settings.approach)
    depths = peck_depths(top, top - depth, step)
    builder.travel(x, y)
    builder.enter(x, y, top, depths[0], bit.speeds.plunge, tag)
    for last, z in itertools.pairwise(depths):
        builder.feed([(x, y, clear)], settings.retract_feed, tag)
        builder.feed([(x, y, min(clear, last + PECK_GAP))], settings.approach_feed, tag)
        builder.feed([(x, y, z)], bit.speeds.plunge, tag)


def circle_radii(diameter: float, mill: float) -> list[float]:
    """Radii of the mill's circles from the inside out, so that no core is left."""
    wall = (diameter - mill) / 2
    first = FIRST_CIRCLE * mill
    if wall <= first:
        return [wall]
    rings = math.ceil((wall - first) / (STEP_OVER * mill) - 1e-9)
    return [first + (wall - first) * k / rings for k in range(rings + 1)]


def bore(
    builder: MoveBuilder,
    at: tuple[float, float],
    top: float,
    depth: float,
    diameter: float,
    bit: EndMill,
    tag: int,
) -> None:
    """A hole wider than the mill: anticlockwise helices (climb milling inside a hole)."""
    radii = circle_radii(diameter, bit.diameter)
    if radii[-1] < LEAST_CIRCLE:
        drill(builder, at, top, depth, bit, tag)
        return
    x, y = at
    # circles start on the written grid, so that start, centre and end agree exactly
    step = builder.settings.decimals
    x, y = round(x, step), round(y, step)
    over = min(builder.plane, top + builder.settings.approach)
    for index, radius in enumerate(round(r, step) for r in radii):
        if index == 0:
            builder.travel(x + radius, y)
            builder.enter(x + radius, y, top, top, bit.speeds.plunge, tag)
        else:
            builder.feed([(x + radius, y, over)], builder.settings.approach_feed, tag)
            builder.feed([(x + radius, y, top)], bit.speeds.plunge, tag)
        _helix(builder, (x, y), radius, top, depth, bit, tag)
        inside = x + radius * (1 - OFF_WALL)
        builder.feed([(inside, y, top - depth)], bit.speeds.feed, tag)
        builder.feed([(inside, y, over)], builder.settings.retract_feed, tag)


def _helix(
    builder: MoveBuilder,
    at: tuple[float, float],
    radius: float,
    top: float,
    depth: float,
    bit: EndMill,
    tag: int,
) -> None:
    """Full circles down to the floor, then a flat one."""
    round_length = 2 * math.pi * radius
    pitch = min(bit.step, round_length * math.tan(builder.settings.ramp_angle))
    turns = max(1, math.ceil(depth / pitch - 1e-9))
    feed = min(bit.speeds.feed, bit.speeds.plunge * math.hypot(1.0, round_length * turns / depth))
    x, y = at
    for turn in range(turns):
        z = top - depth * (turn + 1) / turns
        builder.arc((x + radius, y, z), (-radius, 0.0), feed, tag, clockwise=False)
    builder.arc((x + radius, y, top - depth), (-radius, 0.0), bit.speeds.feed, tag, clockwise=False)
