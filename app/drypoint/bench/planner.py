"""Look-ahead planning of straight moves under axis limits, as a small motion controller does it.

Trapezoid: from rest to rest over L at speed v and acceleration a takes L/v + v/a where L ≥ v²/a,
else 2·√(L/a) (uniform acceleration). Corner speed by junction deviation δ: the corner is replaced
by an arc of radius R = δ·sin(θ/2) / (1 − sin(θ/2)), θ being the angle between the two legs, and
v = √(a·R) (S. Jeon's published derivation). All in mm and s.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

Triple = tuple[float, float, float]
Phase = tuple[float, float]
"""Duration in s and acceleration in mm/s²."""

SMALLEST = 1e-9
"""Moves shorter than this, mm, are no moves."""


@dataclass(frozen=True, slots=True)
class Limits:
    """What the axes can do: mm/s, mm/s², mm."""

    rate: Triple
    accel: Triple
    junction: float = 0.01


@dataclass(slots=True)
class Block:
    """One straight move in the planner. Speeds in mm/s along the path; ``…2`` are squares."""

    start: Triple
    end: Triple
    unit: Triple
    length: float
    programmed: float
    top: float
    accel: float
    rapid: bool = False
    jog: bool = False
    free: bool = False
    """Not slowed or sped by overrides (probing)."""
    power: float = 0.0
    nominal: float = 0.0
    junction2: float = 0.0
    limit2: float = 0.0
    """Highest entry speed the corner and both nominal speeds allow."""
    back2: float = 0.0
    """Highest entry speed from which all later blocks can still stop."""
    entry2: float = 0.0
    line: int = 0


def along(unit: Triple, limit: Triple) -> float:
    """Largest value along a unit vector that keeps every axis within its limit."""
    best = math.inf
    for u, most in zip(unit, limit, strict=True):
        if u:
            best = min(best, most / abs(u))
    return best


def junction_speed2(before: Triple, after: Triple, limits: Limits) -> float:
    """Square of the speed at which the corner between two unit vectors may be taken."""
    cosine = -(before[0] * after[0] + before[1] * after[1] + before[2] * after[2])
    if cosine > 0.999999:
        return 0.0
    if cosine < -0.999999:
        return math.inf
    turn = (after[0] - before[0], after[1] - before[1], after[2] - before[2])
    size = math.sqrt(turn[0] ** 2 + turn[1] ** 2 + turn[2] ** 2)
    accel = along((turn[0] / size, turn[1] / size, turn[2] / size), limits.accel)
    sine = math.sqrt(0.5 * (1.0 - cosine))
    return accel * limits.junction * sine / (1.0 - sine)


def profile(length: float, entry: float, leave: float, nominal: float, accel: float) -> list[Phase]:
    """Phases that cover ``length`` from speed ``entry`` towards ``leave`` at up to ``nominal``.

    Where the exit speed cannot be met the whole length is spent speeding up or slowing down.
    """
    if entry > nominal * (1.0 + 1e-9):
        slow = (entry**2 - nominal**2) / (2.0 * accel)
        if slow < length:
            rest = profile(length - slow, nominal, min(leave, nominal), nominal, accel)
            return [((entry - nominal) / accel, -accel), *rest]
        nominal = entry
    if entry**2 - leave**2 >= 2.0 * accel * length:
        last = math.sqrt(max(0.0, entry**2 - 2.0 * accel * length))
        return [((entry - last) / accel, -accel)]
    peak2 = accel * length + (entry**2 + leave**2) / 2.0
    if peak2 <= nominal**2:
        peak = math.sqrt(peak2)
        if peak < leave:
            last = math.sqrt(entry**2 + 2.0 * accel * length)
            return [((last - entry) / accel, accel)]
        return [((peak - entry) / accel, accel), ((peak - leave) / accel, -accel)]
    cruise = length - (2.0 * nominal**2 - entry**2 - leave**2) / (2.0 * accel)
    return [
        ((nominal - entry) / accel, accel),
        (cruise / nominal, 0.0),
        ((nominal - leave) / accel, -accel),
    ]


def braking(length: float, speed: float, accel: float) -> tuple[list[Phase], float]:
    """Phases that brake as hard as allowed, and the distance they take (``length`` at most)."""
    distance = speed**2 / (2.0 * accel)
    if distance <= length:
        return [(speed / accel, -accel)], distance
    last = math.sqrt(speed**2 - 2.0 * accel * length)
    return [((speed - last) / accel, -accel)], length


class Planner:
    """The queue of moves not yet finished; the first one is being executed.

    Parameters
    ----------
    limits : Limits
    size : int
        Blocks it holds.
    """

    def __init__(self, limits: Limits, size: int = 15) -> None:
        self.limits = limits
        self.size = size
        self.blocks: list[Block] = []
        self.feed_share = 1.0
        self.rapid_share = 1.0
        self._unit: Triple | None = None
        self._nominal = 0.0

    def block(self, start: Triple, end: Triple, speed: float, *, rapid: bool = False) -> Block | None:
        """A move from ``start`` to ``end`` at ``speed`` mm/s within the axis limits; None if it is none."""
        dx, dy, dz = end[0] - start[0], end[1] - start[1], end[2] - start[2]
        size = math.sqrt(dx * dx + dy * dy + dz * dz)
        if size < SMALLEST:
            return None
        unit = (dx / size, dy / size, dz / size)
        top = along(unit, self.limits.rate)
        return Block(start, end, unit, size, speed, top, along(unit, self.limits.accel), rapid)

    @property
    def full(self) -> bool:
        """Whether no further block fits."""
        return len(self.blocks) >= self.size

    def push(self, block: Block) -> None:
        """Append a block and set how fast its first corner may be taken. Does not plan."""
        self._set_nominal(block)
        if self._unit is None or not self.blocks:
            block.junction2 = 0.0
        else:
            block.junction2 = junction_speed2(self._unit, block.unit, self.limits)
        block.limit2 = min(block.junction2, block.nominal**2, self._nominal**2)
        self._unit, self._nominal = block.unit, block.nominal
        self.blocks.append(block)

    def plan(self, speed: float, remaining: float, *, all_blocks: bool = False) -> None:
        """Set every entry speed, the head being at ``speed`` with ``remaining`` mm to go."""
        blocks = self.blocks
        leave2 = 0.0
        for index in range(len(blocks) - 1, 0, -1):
            block = blocks[index]
            back2 = min(block.limit2, leave2 + 2.0 * block.accel * block.length)
            if back2 == block.back2 and index < len(blocks) - 1 and not all_blocks:
                break
            block.back2 = leave2 = back2
        reach2 = 0.0
        for index, block in enumerate(blocks):
            if index == 0:
                reach2 = speed**2 + 2.0 * block.accel * remaining
                continue
            block.entry2 = min(block.back2, reach2)
            reach2 = block.entry2 + 2.0 * block.accel * block.length

    def leave2(self) -> float:
        """Square of the speed at which the head is to end."""
        return self.blocks[1].entry2 if len(self.blocks) > 1 else 0.0

    def override(self, feed: float, rapid: float) -> None:
        """Change the shares of feed and rapid speed for every queued move. Does not plan."""
        self.feed_share, self.rapid_share = feed, rapid
        before = math.inf
        for block in self.blocks:
            self._set_nominal(block)
            block.limit2 = min(block.junction2, block.nominal**2, before**2)
            before = block.nominal
        if self.blocks:
            self._nominal = before

    def clear(self) -> None:
        """Forget every move."""
        self.blocks.clear()
        self._unit = None

    def _set_nominal(self, block: Block) -> None:
        if block.rapid:
            block.nominal = block.top * self.rapid_share
            return
        share = 1.0 if block.free else self.feed_share
        block.nominal = max(min(block.programmed * share, block.top), 1e-3)


def seconds(phases: Sequence[Phase]) -> float:
    """How long phases last."""
    return sum(duration for duration, _ in phases)
