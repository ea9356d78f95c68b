"""A hold and going on after it: single bytes from any thread, in an order that is never unsafe."""

from __future__ import annotations

import threading

from drypoint.machine.channel import Channel
from drypoint.machine.protocol import Phase, Realtime, Status

_SLOWING_DOWN = 1
"""Number behind a hold's state while the axes still slow down."""


class Hold:
    """Holds the machine and lets it go on.

    A controller that still slows down does not hear that it may go on. The wish is kept and said again
    once the axes stand still; a hold or a stop in the meantime takes it back.
    """

    def __init__(self, channel: Channel) -> None:
        self._channel = channel
        self._turn = threading.Lock()
        self._wanted = False
        self._for_good = False

    def begin(self) -> None:
        """Slow down and stand still. Safe from any thread."""
        with self._turn:
            self._wanted = False
            self._channel.realtime(Realtime.HOLD)

    def begin_for_good(self) -> None:
        """The same, and nobody may go on before `release`. Safe from any thread."""
        with self._turn:
            self._for_good = True
            self._wanted = False
            self._channel.realtime(Realtime.HOLD)

    def end(self) -> None:
        """Go on: at once, or as soon as the axes stand still. Safe from any thread."""
        with self._turn:
            if not self._for_good:
                self._wanted = True
                self._channel.realtime(Realtime.RESUME)

    def release(self) -> None:
        """A reset has thrown away what was held."""
        with self._turn:
            self._wanted = self._for_good = False

    def meet(self, status: Status) -> None:
        """Say once more that it may go on if the controller did not hear it; on the machine's thread."""
        with self._turn:
            if not self._wanted:
                return
            held = status.phase is Phase.HOLD
            if held and status.sub != _SLOWING_DOWN:
                self._channel.realtime(Realtime.RESUME)
            self._wanted = held and status.sub == _SLOWING_DOWN
