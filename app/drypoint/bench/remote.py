"""The bench in a process of its own, seen from the window's: the same link, the same hands.

The simulation takes whole processors; next to the window it would make it stutter.
"""

from __future__ import annotations

import itertools
import subprocess
import threading
from concurrent.futures import Future
from contextlib import suppress
from dataclasses import replace
from typing import Any

from drypoint.bench.bench import BenchSetup
from drypoint.bench.child import start_child
from drypoint.bench.eyes import Seen, Sight
from drypoint.bench.frames import Frames
from drypoint.errors import MachineError
from drypoint.geometry.rigid import Rigid
from drypoint.machine.link import Clock, Link
from drypoint.machine.operator import Answer, Operator, Request

NAME = "bench"
_FAREWELL = 2.0
"""How long the process may take to end by itself before it is ended, s."""


def _gone() -> MachineError:
    return MachineError("The bench has ended.", NAME, "Connect again: a bench with a new sheet is made.")


class RemoteBench:
    """Starts the process and talks to it.

    Parameters
    ----------
    seed : int
    setup : BenchSetup
    """

    def __init__(self, seed: int, setup: BenchSetup) -> None:
        self._numbers = itertools.count(1)
        self._waiting: dict[int, Future[Any]] = {}
        self._lock = threading.Lock()
        self._now = 0.0
        self._gone = False
        self._link: RemoteLink | None = None
        self._clock = RemoteClock(self)
        self._hands = RemoteOperator(self)
        self._process = start_child("drypoint.bench.served")
        assert self._process.stdin is not None
        assert self._process.stdout is not None
        self._frames = Frames(self._process.stdout, self._process.stdin)  # type: ignore[arg-type]
        self._listener = threading.Thread(target=self._listen, name="drypoint-bench-pipe", daemon=True)
        self._listener.start()
        self.send(seed, setup)

    @property
    def operator(self) -> Operator:
        """The simulated hands."""
        return self._hands

    @property
    def alive(self) -> bool:
        """Whether the process still answers."""
        return not self._gone

    @property
    def now(self) -> float:
        """Simulated time at the last answer, s: it moves only when something is asked."""
        return self._now

    @property
    def process_id(self) -> int:
        """Of the simulation."""
        return self._process.pid

    def connect(self) -> Link:
        """Open the port anew; this resets the controller."""
        if self._link is not None:
            self._link.close()
        self.ask("connect")
        self._link = RemoteLink(self, self._clock)
        return self._link

    def unplug(self) -> None:
        """Pull the cable."""
        self.send("unplug")

    def set_pace(self, pace: float | None) -> None:
        """Simulated seconds per real second from now on; one that has ended has no pace."""
        with suppress(MachineError):
            self.send("pace", pace)

    def clamp_edges(self) -> None:
        """Hold the loose edges down."""
        self.ask("clamp_edges")

    def clamp_next_at(self, motion: Rigid) -> None:
        """How far the sheet moves when it is clamped again."""
        self.ask("clamp_next_at", motion)

    def look_at(self, sight: Sight) -> Seen:
        """What a person reads from lines that were cut."""
        seen: Seen = self.ask("look_at", sight)
        return seen

    def close(self) -> None:
        """End the process; it ends by itself as soon as its pipe does."""
        if self._link is not None:
            self._link.close()
        self._frames.close_writing()
        try:
            self._process.wait(_FAREWELL)
        except subprocess.TimeoutExpired:
            self._process.kill()
            self._process.wait()
        if threading.current_thread() is not self._listener:
            self._listener.join()
        if self._process.stdout is not None:
            self._process.stdout.close()

    def send(self, *message: Any) -> None:
        """Send what is not answered.

        Raises
        ------
        MachineError
            If the process has ended.
        """
        try:
            self._frames.send(*message)
        except OSError as error:
            raise _gone() from error

    def ask(self, name: str, *arguments: Any) -> Any:
        """Send what is answered, and wait for the answer.

        Raises
        ------
        MachineError
            As the bench raised it, or if the process has ended.
        """
        answer: Future[Any] = Future()
        with self._lock:
            if self._gone:
                raise _gone()
            number = next(self._numbers)
            self._waiting[number] = answer
        try:
            self.send(number, name, *arguments)
        except MachineError:
            with self._lock:
                self._waiting.pop(number, None)
            raise
        return answer.result()

    def _listen(self) -> None:
        while (message := self._frames.receive()) is not None:
            number, now, kind, *rest = message
            self._now = max(self._now, now)
            with self._lock:
                answer = self._waiting.pop(number)
            if kind == "value":
                answer.set_result(rest[0])
            elif kind == "error":
                answer.set_exception(MachineError(*rest))
            else:
                answer.set_exception(RuntimeError(f"a fault in the bench:\n{rest[0]}"))
        with self._lock:
            self._gone = True
            waiting = tuple(self._waiting.values())
            self._waiting.clear()
        for answer in waiting:
            answer.set_exception(_gone())


class RemoteClock(Clock):
    """Simulated time; moves on only when somebody reads or sleeps."""

    def __init__(self, bench: RemoteBench) -> None:
        self._bench = bench

    def now(self) -> float:
        return self._bench.now

    def sleep(self, seconds: float) -> None:
        if seconds > 0.0:
            self._bench.ask("sleep", seconds)


class RemoteLink(Link):
    """The simulated controller's port."""

    def __init__(self, bench: RemoteBench, clock: RemoteClock) -> None:
        self.name = NAME
        self._bench, self._clock = bench, clock
        self._closed = False

    @property
    def clock(self) -> Clock:
        return self._clock

    def write(self, data: bytes) -> None:
        self._check()
        self._bench.send("write", bytes(data))

    def read(self, timeout: float) -> bytes:
        self._check()
        data: bytes = self._bench.ask("read", timeout)
        self._check()
        return data

    def close(self) -> None:
        self._closed = True

    def _check(self) -> None:
        if self._closed:
            raise MachineError("The link is closed.", self.name, "Connect again.")


class RemoteOperator(Operator):
    """The hands at the bench."""

    def __init__(self, bench: RemoteBench) -> None:
        self._bench = bench

    def ask(self, request: Request) -> Answer:
        answer: Answer = self._bench.ask("ask", replace(request, idle=_nothing))
        return answer


def _nothing() -> None:
    """Nothing to keep alive in the other process."""
