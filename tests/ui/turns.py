"""How long the event loop does not come round: while it does not, the window answers nobody."""

from __future__ import annotations

import threading
import time
from pathlib import Path

from PySide6.QtCore import QObject, Qt, QTimer

BEAT = 5
"""A timer that is due again so soon, ms: what it is late by, the loop was away."""


class TurnWatch(QObject):
    """A heart that beats in the loop of its thread.

    Attributes
    ----------
    wall, own : list of float
        Between two beats, s: time by the clock, and processor time of this thread, which other programs and
        threads do not lengthen. Several short turns in one beat count as one.
    held : list of float
        Time by the clock without that in which the thread could have run but other programs had the
        processors: what it would be on a machine that does nothing else. The same as ``wall`` where the
        system does not tell.
    """

    def __init__(self) -> None:
        super().__init__()
        self.wall: list[float] = []
        self.own: list[float] = []
        self.held: list[float] = []
        self._queue = Queue()
        self._last = self._now()
        self._timer = QTimer(self, interval=BEAT, timerType=Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._beat)
        self._timer.start()

    def forget(self) -> None:
        """Begin anew."""
        self.wall.clear()
        self.own.clear()
        self.held.clear()
        self._last = self._now()

    def longest(self) -> tuple[float, float, float]:
        """The longest by the clock, by processor time, and as held up, s."""
        return max(self.wall, default=0.0), max(self.own, default=0.0), max(self.held, default=0.0)

    def _now(self) -> tuple[float, float, float]:
        return time.perf_counter(), time.thread_time(), self._queue.waited()

    def _beat(self) -> None:
        now = self._now()
        wall, own, queued = (new - old for new, old in zip(now, self._last, strict=True))
        self.wall.append(wall)
        self.own.append(own)
        self.held.append(max(wall - queued, own))
        self._last = now


class Queue:
    """How long this thread was ready and got no processor, as Linux counts it (proc, schedstat)."""

    def __init__(self) -> None:
        self._place = Path(f"/proc/self/task/{threading.get_native_id()}/schedstat")
        self._told = self._place.exists()

    def waited(self) -> float:
        """Since the thread began, s; 0 where it is not told."""
        return 1e-9 * int(self._place.read_bytes().split()[1]) if self._told else 0.0
