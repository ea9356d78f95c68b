"""How long the event loop does not come round: while it does not, the window answers nobody."""

from __future__ import annotations

import time

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
    """

    def __init__(self) -> None:
        super().__init__()
        self.wall: list[float] = []
        self.own: list[float] = []
        self._last = (time.perf_counter(), time.thread_time())
        self._timer = QTimer(self, interval=BEAT, timerType=Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._beat)
        self._timer.start()

    def forget(self) -> None:
        """Begin anew."""
        self.wall.clear()
        self.own.clear()
        self._last = (time.perf_counter(), time.thread_time())

    def longest(self) -> tuple[float, float]:
        """The longest by the clock and by processor time, s."""
        return max(self.wall, default=0.0), max(self.own, default=0.0)

    def _beat(self) -> None:
        now = (time.perf_counter(), time.thread_time())
        self.wall.append(now[0] - self._last[0])
        self.own.append(now[1] - self._last[1])
        self._last = now
