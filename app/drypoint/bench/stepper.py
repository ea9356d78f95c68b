"""Executes the planner's blocks: where the machine is at any moment, and when something will happen."""

from __future__ import annotations

import math
from collections.abc import Callable
from enum import Enum, auto

from drypoint.bench.planner import Block, Phase, Planner, Triple, braking, profile


class Pace(Enum):
    """What the motors do."""

    STILL = auto()
    RUNNING = auto()
    BRAKING = auto()


class Stepper:
    """Motion of the head block, exact in time.

    Parameters
    ----------
    planner : Planner
    moved : callable
        Told of every piece of straight path when it is done: block and the point reached.
    """

    def __init__(self, planner: Planner, moved: Callable[[Block, Triple], None]) -> None:
        self.planner = planner
        self.pace = Pace.STILL
        self.position: Triple = (0.0, 0.0, 0.0)
        """Where the last finished piece of path ended (commanded, machine coordinates)."""
        self._moved = moved
        self._since = 0.0
        self._done = 0.0
        self._speed = 0.0
        self._phases: list[Phase] = []
        self._stop_inside = False
        self._contact: float | None = None
        self.contact_time = math.inf
        self.next_time = math.inf
        """When the head ends or braking is over."""

    def start(self, now: float) -> None:
        """Begin or go on executing; does nothing without blocks."""
        if self.pace is not Pace.STILL or not self.planner.blocks:
            return
        self.pace = Pace.RUNNING
        self._since, self._speed = now, 0.0
        self._replan(all_blocks=True)

    def pushed(self, now: float) -> None:
        """The planner got a block or new overrides."""
        if self.pace is not Pace.RUNNING:
            return
        before = self.planner.leave2()
        done, speed = self._state(now)
        self.planner.plan(speed, max(0.0, self.planner.blocks[0].length - done))
        if self.planner.leave2() != before:
            self._catch_up(now)
            self._shape()

    def overridden(self, now: float) -> None:
        """Speeds of queued moves have changed."""
        if self.pace is Pace.RUNNING:
            self._catch_up(now)
            self._replan(all_blocks=True)

    def watch(self, distance: float | None) -> None:
        """Expect contact after ``distance`` mm of the head; None: no contact."""
        self._contact = distance
        self._time_contact()

    def brake(self, now: float) -> None:
        """Slow down to a stand, keeping what is queued."""
        if self.pace is Pace.RUNNING:
            self._catch_up(now)
            self.pace = Pace.BRAKING
            self._shape()

    def forget(self, now: float) -> None:
        """Stand where the machine is and forget every move (jog cancel, end of a probe, reset)."""
        if self.pace is not Pace.STILL:
            self._catch_up(now)
        if self.planner.blocks and self._done > 0.0:
            self._record(self.planner.blocks[0], self.place(now))
        self._rest()
        self._done, self._contact = 0.0, None
        self.planner.clear()

    def event(self, now: float) -> bool:
        """Do what is due at ``next_time``. True if the machine has come to a stand."""
        head = self.planner.blocks[0]
        if self.pace is Pace.BRAKING and self._stop_inside:
            self._catch_up(now)
            self._rest()
            return True
        speed = self._end_speed()
        self._record(head, head.end)
        self.planner.blocks.pop(0)
        self._done, self._contact, self._since, self._speed = 0.0, None, now, speed
        if not self.planner.blocks:
            self._rest()
            return True
        self._shape()
        return False

    def place(self, now: float) -> Triple:
        """Commanded position at ``now``, mm."""
        if not self.planner.blocks:
            return self.position
        head = self.planner.blocks[0]
        done, _ = self._state(now)
        share = min(1.0, done / head.length)
        a, b = head.start, head.end
        return (
            a[0] + share * (b[0] - a[0]),
            a[1] + share * (b[1] - a[1]),
            a[2] + share * (b[2] - a[2]),
        )

    def speed(self, now: float) -> float:
        """Speed along the path at ``now``, mm/s."""
        return self._state(now)[1] if self.pace is not Pace.STILL else 0.0

    def _replan(self, *, all_blocks: bool = False) -> None:
        self.planner.plan(self._speed, self._remaining(), all_blocks=all_blocks)
        self._shape()

    def _remaining(self) -> float:
        return max(0.0, self.planner.blocks[0].length - self._done)

    def _shape(self) -> None:
        head = self.planner.blocks[0]
        if self.pace is Pace.BRAKING:
            self._phases, distance = braking(self._remaining(), self._speed, head.accel)
            self._stop_inside = distance < self._remaining() or len(self.planner.blocks) == 1
        else:
            leave = math.sqrt(self.planner.leave2())
            self._phases = profile(self._remaining(), self._speed, leave, head.nominal, head.accel)
            self._stop_inside = False
        self.next_time = self._since + sum(duration for duration, _ in self._phases)
        self._time_contact()

    def _time_contact(self) -> None:
        self.contact_time = math.inf
        if self._contact is None or self.pace is not Pace.RUNNING:
            return
        todo, speed, when = self._contact - self._done, self._speed, self._since
        if todo <= 0.0:
            self.contact_time = when
            return
        for duration, accel in self._phases:
            step = speed * duration + 0.5 * accel * duration**2
            if step >= todo:
                self.contact_time = when + _time_for(todo, speed, accel)
                return
            todo, speed, when = todo - step, speed + accel * duration, when + duration
        if todo < 1e-6:
            self.contact_time = when

    def _state(self, now: float) -> tuple[float, float]:
        done, speed, left = self._done, self._speed, now - self._since
        if self.pace is Pace.STILL:
            return done, 0.0
        for duration, accel in self._phases:
            step = min(duration, left)
            done += speed * step + 0.5 * accel * step**2
            speed += accel * step
            left -= step
            if left <= 0.0:
                break
        return min(done, self.planner.blocks[0].length), max(0.0, speed)

    def _end_speed(self) -> float:
        return max(0.0, self._speed + sum(duration * accel for duration, accel in self._phases))

    def _catch_up(self, now: float) -> None:
        self._done, self._speed = self._state(now)
        self._since = now

    def _rest(self) -> None:
        self.pace = Pace.STILL
        self._speed, self._phases = 0.0, []
        self.next_time = self.contact_time = math.inf

    def _record(self, block: Block, end: Triple) -> None:
        self.position = end
        self._moved(block, end)


def _time_for(distance: float, speed: float, accel: float) -> float:
    """Time to cover a distance from a speed at constant acceleration."""
    if accel == 0.0:
        return distance / speed
    root = math.sqrt(max(0.0, speed**2 + 2.0 * accel * distance))
    return 2.0 * distance / (speed + root)
