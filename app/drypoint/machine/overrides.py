"""Overrides of feed, rapid moves and spindle, steered by what the controller reports.

The protocol has bytes for 100 % and for steps of ten and one percent. Equal bytes that arrive within one
turn of a busy controller may count once, so a row of steps cannot be trusted: at most one of each kind is
sent, then the next report is looked at.
"""

from __future__ import annotations

import threading
from typing import Final, TypeAlias

from drypoint.machine.channel import Channel
from drypoint.machine.protocol import Realtime

Percents: TypeAlias = tuple[int, int, int]
"""Feed, rapid moves, spindle, percent."""

FEED, RAPID, SPINDLE = range(3)
LEAST, MOST = 10, 200
_RAPIDS: Final = {25: Realtime.RAPID_25, 50: Realtime.RAPID_50, 100: Realtime.RAPID_100}
_STEPS: Final = {
    FEED: (
        Realtime.FEED_100,
        (Realtime.FEED_UP_10, Realtime.FEED_UP_1),
        (Realtime.FEED_DOWN_10, Realtime.FEED_DOWN_1),
    ),
    SPINDLE: (
        Realtime.SPINDLE_100,
        (Realtime.SPINDLE_UP_10, Realtime.SPINDLE_UP_1),
        (Realtime.SPINDLE_DOWN_10, Realtime.SPINDLE_DOWN_1),
    ),
}
_AGREED = 2
"""Reports that must agree in a row: the first may be older than the last byte sent."""
_PATIENCE = 60
"""Reports after which a controller is taken not to heed what is wanted."""


class Overrides:
    """What is wanted and not reached yet. `want` and `wanted` are safe from any thread."""

    def __init__(self, channel: Channel) -> None:
        self._channel = channel
        self._turn = threading.Lock()
        self._wanted: dict[int, int] = {}
        self._agreed = 0
        self._met = 0

    @property
    def wanted(self) -> Percents:
        """What is wanted; where nothing is, what was reported last."""
        with self._turn:
            feed, rapid, spindle = (
                self._wanted.get(which, reported) for which, reported in enumerate(self._channel.overrides)
            )
            return feed, rapid, spindle

    def want(self, which: int, percent: int) -> None:
        """Steer ``which`` towards ``percent``: 10..200, of rapid moves the nearest of 25, 50 and 100."""
        with self._turn:
            nearest = min(_RAPIDS, key=lambda choice: abs(choice - percent))
            self._wanted[which] = nearest if which == RAPID else min(MOST, max(LEAST, percent))
            self._agreed = self._met = 0
            self._step(which, self._channel.overrides[which])

    def meet(self, reported: Percents) -> None:
        """Take the next step towards what is wanted; on the machine's thread, at every fresh report."""
        with self._turn:
            if not self._wanted:
                return
            away = [which for which, percent in self._wanted.items() if reported[which] != percent]
            self._met += 1
            self._agreed = 0 if away else self._agreed + 1
            if self._agreed >= _AGREED or self._met > _PATIENCE:
                self._wanted.clear()
                return
            for which in away:
                self._step(which, reported[which])

    def forget(self) -> None:
        """After a restart the controller is at 100 % again, and nothing else is wanted."""
        with self._turn:
            self._wanted.clear()

    def _step(self, which: int, reported: int) -> None:
        wanted = self._wanted[which]
        if which == RAPID:
            self._channel.realtime(_RAPIDS[wanted])
            return
        whole, up, down = _STEPS[which]
        if wanted == 100:
            self._channel.realtime(whole)
            return
        tens, ones = divmod(abs(wanted - reported), 10)
        ten, one = up if wanted > reported else down
        if tens:
            self._channel.realtime(ten)
        if ones:
            self._channel.realtime(one)
