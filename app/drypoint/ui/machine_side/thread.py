"""The one thread that talks to a machine: procedures one at a time, and between them it watches."""

from __future__ import annotations

import itertools
import threading
import time
from collections import deque
from dataclasses import dataclass

import numpy as np

from drypoint.errors import MachineError
from drypoint.geometry.points import Points
from drypoint.machine.state import Activity, MachineState
from drypoint.progress import Progress
from drypoint.session.jobs import Deliver, Report, Work, attempt
from drypoint.session.station import Station

WATCH = "watch"
"""Name of the outcomes that report what went wrong while nothing was asked for."""

_TURN = 0.05
"""Time between two looks at a machine that nothing is asked of, s."""

_PULSE = 0.6
"""A held jog ends by itself if the window has given no sign of life for so long, s."""

_JOGS = 4
"""Jogs that wait their turn at most."""

_TRAIL = 400
"""Places of the bit that are remembered."""

_APART = 0.05
"""Places nearer than this are one in the trail, mm."""


@dataclass(frozen=True, slots=True)
class Jog:
    """One jog: so far in x, y, z (mm) at a feed (mm/min); ``held`` jogs end when let go."""

    step: tuple[float, float, float]
    feed: float
    held: int = 0


@dataclass(frozen=True, slots=True)
class _Job:
    name: str
    number: int
    work: Work
    progress: Progress


class MachineThread:
    """Drives one machine.

    Parameters
    ----------
    deliver : callable
        Gets every outcome, in this thread.
    report : callable, optional
        Gets name, share done and text while a procedure goes on, in this thread.

    Attributes
    ----------
    pace : float or None
        Simulated seconds per real one while a procedure runs on a bench; None: as fast as it can.
    """

    def __init__(self, deliver: Deliver, report: Report | None = None) -> None:
        self._deliver = deliver
        self._report = report
        self._numbers = itertools.count(1)
        self._turn = threading.Condition()
        self._job: _Job | None = None
        self._waiting: _Job | None = None
        self._jogs: deque[Jog] = deque(maxlen=_JOGS)
        self._closing = False
        self._station: Station | None = None
        self._state = MachineState(Activity.NOT_CONNECTED)
        self._known: frozenset[str] = frozenset()
        self._trail: deque[tuple[float, float]] = deque(maxlen=_TRAIL)
        self._held = 0
        self._underway = 0
        self._pulse = 0.0
        self.pace: float | None = None
        self._thread = threading.Thread(target=self._run, name="drypoint-machine", daemon=True)
        self._thread.start()

    # what any thread may ask

    @property
    def station(self) -> Station | None:
        """The machine connected, if one is."""
        return self._station

    @property
    def state(self) -> MachineState:
        """The last look at the machine."""
        return self._state

    @property
    def known(self) -> frozenset[str]:
        """Axes whose work coordinate was known at the last look."""
        return self._known

    @property
    def trail(self) -> Points:
        """(N, 2) where the bit was lately, work coordinates."""
        return np.array(tuple(self._trail), dtype=np.float64).reshape(-1, 2)

    @property
    def busy(self) -> bool:
        """Whether a procedure runs or is about to."""
        return self._job is not None or self._waiting is not None

    @property
    def running(self) -> str:
        """Name of the procedure that runs; empty for none."""
        job = self._job or self._waiting
        return "" if job is None else job.name

    def start(self, name: str, work: Work) -> int:
        """Begin a procedure; its number.

        Raises
        ------
        MachineError
            If another one runs.
        """
        with self._turn:
            if self.busy or self._closing:
                raise MachineError("The machine is busy.", name, "Wait, or stop what it does first.")
            number = next(self._numbers)
            progress = Progress(lambda done, text: self._tell(name, done, text))
            self._waiting = _Job(name, number, work, progress)
            self._turn.notify()
            return number

    def cancel(self) -> None:
        """Ask the procedure to end at its next step (hold and stop do not go this way)."""
        job = self._job or self._waiting
        if job is not None:
            job.progress.cancel()

    def jog(self, jog: Jog) -> None:
        """Move the axes while no procedure runs; of jogs that wait only the newest few are made."""
        with self._turn:
            self._jogs.append(jog)
            self._turn.notify()

    def take_hold(self) -> int:
        """A held jog begins: the number to give it. `pulse` must follow a few times a second."""
        self._held = next(self._numbers)
        self.pulse()
        return self._held

    def holds(self, held: int) -> bool:
        """Whether the held jog of that number is still held; 0 is no held one and always wanted."""
        return held in (0, self._held)

    def pulse(self) -> None:
        """The window is alive."""
        self._pulse = time.monotonic()

    def underway(self, held: int) -> None:
        """A jog given the number ``held`` was handed on to a procedure that makes it."""
        self._underway = held

    def let_go(self) -> None:
        """End a held jog, at once."""
        self._held = 0
        station = self._station
        if station is not None and self._underway:
            station.controller.jog_cancel()

    def use(self, station: Station | None) -> None:
        """Watch this machine from now on; called from a procedure."""
        before, self._station = self._station, station
        if before is not None and before is not station:
            before.close()
        self._trail.clear()
        if station is not None:
            station.controller.listen(self._noticed)
            self._noticed(station.controller.state)
        else:
            self._state = MachineState(Activity.NOT_CONNECTED)

    def close(self) -> None:
        """Stop what moves, end the procedure, let go of the machine and wait for the thread."""
        station, job = self._station, self._job
        with self._turn:
            self._closing = True
            self._waiting = None
            self._turn.notify()
        if job is not None:
            job.progress.cancel()
            if station is not None and self._state.activity is not Activity.NOT_CONNECTED:
                attempt(WATCH, 0, lambda _: station.controller.stop(), Progress())
        if threading.current_thread() is not self._thread:
            self._thread.join()

    # the thread

    def _run(self) -> None:
        while True:
            with self._turn:
                if not (self._waiting or self._closing or self._jogs):
                    self._turn.wait(_TURN)
                if self._closing:
                    break
                self._job, self._waiting = self._waiting, None
                jog = self._jogs.popleft() if self._jogs and self._job is None else None
                if self._job is not None:
                    self._jogs.clear()
            if self._job is not None:
                self._work(self._job)
            else:
                self._watch(jog)
        self.use(None)

    def _work(self, job: _Job) -> None:
        self._set_pace(self.pace)
        outcome = attempt(job.name, job.number, job.work, job.progress)
        if outcome.bug:
            self._halt()
        self._set_pace(1.0)
        self._underway = 0
        self._job = None
        if self._station is not None:
            self._noticed(self._station.controller.state)
        self._deliver(outcome)

    def _watch(self, jog: Jog | None) -> None:
        station = self._station
        if station is None or self._state.activity is Activity.NOT_CONNECTED:
            return

        def look(_progress: Progress) -> None:
            if jog is not None and self.holds(jog.held):
                self._underway = jog.held
                station.controller.jog(*jog.step, jog.feed)
            station.controller.poll(_TURN)

        outcome = attempt(WATCH, 0, look, Progress())
        if outcome.error is not None or outcome.bug:
            self._state = station.controller.state
            self._deliver(outcome)

    def _noticed(self, state: MachineState) -> None:
        self._state = state
        self._known = frozenset() if self._station is None else self._station.controller.known
        if state.work is not None:
            place = (state.work[0], state.work[1])
            last = self._trail[-1] if self._trail else (1e9, 1e9)
            if abs(place[0] - last[0]) + abs(place[1] - last[1]) > _APART:
                self._trail.append(place)
        if self._underway and state.activity is Activity.MOVING:
            alive = time.monotonic() - self._pulse < _PULSE
            if (self._held != self._underway or not alive) and self._station is not None:
                self._station.controller.jog_cancel()

    def _halt(self) -> None:
        """After a fault of our own nothing may go on moving."""
        station = self._station
        if station is not None and station.controller.state.activity is not Activity.NOT_CONNECTED:
            station.controller.stop()
            attempt(WATCH, 0, lambda _: station.controller.poll(_TURN), Progress())

    def _set_pace(self, pace: float | None) -> None:
        station = self._station
        if station is not None and station.bench is not None:
            station.bench.set_pace(pace)

    def _tell(self, name: str, done: float, text: str) -> None:
        if self._report is not None:
            self._report(name, done, text)
