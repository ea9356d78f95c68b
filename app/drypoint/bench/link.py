"""The bench's link: bytes to the simulated controller, and a clock that runs as fast as it can."""

from __future__ import annotations

import math
import threading
import time
from collections.abc import Callable

from drypoint.bench.controller import BenchController
from drypoint.errors import MachineError
from drypoint.machine.link import Clock, Link

_SLICE = 0.01
"""Longest real wait at once when the bench runs at a set pace, s."""


class BenchClock(Clock):
    """Simulated time of one controller; moves on only when somebody reads or sleeps.

    Parameters
    ----------
    controller : BenchController
    pace : float, optional
        Simulated seconds per real second; None: as fast as it can.
    """

    def __init__(self, controller: BenchController, pace: float | None = None) -> None:
        self.lock = threading.RLock()
        self._of = controller
        self._pace = pace
        self.heed: Callable[[], None] | None = None
        """Called before anything happens; what it raises comes out where time was to pass."""
        self._wake = threading.Event()
        self._started = (time.monotonic(), controller.now)

    @property
    def pace(self) -> float | None:
        """Simulated seconds per real second; None: as fast as it can."""
        return self._pace

    @pace.setter
    def pace(self, pace: float | None) -> None:
        with self.lock:
            self._pace = pace
            self._started = (time.monotonic(), self._of.now)

    def now(self) -> float:
        return self._of.now

    def sleep(self, seconds: float) -> None:
        if seconds <= 0.0:
            return
        until = self._of.now + seconds
        while self._of.now < until:
            self.step(until)

    def step(self, until: float) -> None:
        """Let the next thing happen, at ``until`` at the latest; waits where a pace is set."""
        if self.heed is not None:
            self.heed()
        with self.lock:
            due = min(until, self._of.next_event())
            allowed = self._allowed()
            if due <= allowed:
                self._happen(due)
                return
            self._happen(allowed)
            pace = self._pace or 1.0
        self._wake.wait(min(_SLICE, (due - allowed) / pace))
        self._wake.clear()

    def catch_up(self) -> None:
        """Let happen what is due by real time, without waiting; nothing where no pace is set."""
        with self.lock:
            if self._pace is not None:
                self._of.advance(self._allowed())

    def wake(self) -> None:
        """Something was written: whoever waits looks again."""
        self._wake.set()

    def _happen(self, due: float) -> None:
        if self._of.next_event() <= due:
            self._of.step(due)
        else:
            self._of.now = max(self._of.now, due)

    def _allowed(self) -> float:
        if self._pace is None:
            return math.inf
        real, simulated = self._started
        return max(self._of.now, simulated + (time.monotonic() - real) * self._pace)


class BenchLink(Link):
    """Looks like a serial port with the simulated controller behind it; opening it resets that.

    Parameters
    ----------
    controller : BenchController
    clock : BenchClock, optional
        To share one among links.
    resets : bool
        Whether opening restarts the controller, as most boards do.
    """

    def __init__(
        self, controller: BenchController, clock: BenchClock | None = None, *, resets: bool = True
    ) -> None:
        self.name = "bench"
        self._of = controller
        self._clock = clock or BenchClock(controller)
        self._closed = False
        self.unplugged = False
        """Whether the cable is pulled out; everything fails then."""
        with self._clock.lock:
            controller.wire.cut()
            if resets and controller.powered:
                controller.restart()

    @property
    def clock(self) -> BenchClock:
        return self._clock

    def write(self, data: bytes) -> None:
        with self._clock.lock:
            self._check()
            self._of.wire.send(data, self._of.now)
        self._clock.wake()

    def read(self, timeout: float) -> bytes:
        until = self._of.now + max(0.0, timeout)
        while True:
            with self._clock.lock:
                self._check()
                data = self._of.wire.received(self._of.now)
                leaving = self._of.wire.leaving
                if data or self._of.now >= until:
                    return data
                target = min(until, leaving[0][0]) if leaving else until
            self._clock.step(target)

    def close(self) -> None:
        with self._clock.lock:
            if not self._closed:
                self._closed = True
                self._of.wire.cut()

    def _check(self) -> None:
        if self._closed:
            raise MachineError("The link is closed.", self.name, "Connect again.")
        if self.unplugged:
            raise MachineError(
                "The link is lost.",
                self.name,
                "Check the cable and the power, then connect again; the run can be resumed.",
            )
