"""What may be called from any thread: single bytes that bypass every queue."""

from __future__ import annotations

from drypoint.machine.channel import Channel
from drypoint.machine.delivery import Delivery
from drypoint.machine.protocol import Realtime


class Remote:
    """Hold, resume, stop, end of a jog, overrides. Safe from any thread."""

    def __init__(self, channel: Channel, delivery: Delivery) -> None:
        self._channel = channel
        self._delivery = delivery

    def hold(self) -> None:
        """Slow down and stand still; the spindle keeps turning.

        Pulses of a laser end with the one under way.
        """
        if self._delivery.pulsing:
            self._delivery.pause.set()
        else:
            self._delivery.hold.begin()

    def resume(self) -> None:
        """Go on after a hold, as soon as the axes stand still; not after a stop."""
        self._delivery.pause.clear()
        self._delivery.hold.end()

    def stop(self) -> None:
        """Hold at once; as soon as the machine stands still it is reset, which flushes everything.

        Pulses of a laser are ended by their own lines first: a held pulse would go on burning.

        This is a stop in software, not one that acts in hardware. The reset is made by whoever runs
        on the machine's thread at its next turn.
        """
        self._delivery.stop.set()
        if not self._delivery.pulsing:
            self._delivery.hold.begin_for_good()

    def jog_cancel(self) -> None:
        """End a jog."""
        self._channel.realtime(Realtime.JOG_CANCEL)

    def override(
        self, *, feed: int | None = None, rapid: int | None = None, spindle: int | None = None
    ) -> None:
        """Set overrides in percent: feed and spindle 10..200, rapid 25, 50 or 100 (the nearest)."""
        if feed is not None:
            self._steer(feed, "FEED")
        if spindle is not None:
            self._steer(spindle, "SPINDLE")
        if rapid is not None:
            nearest = min((25, 50, 100), key=lambda choice: abs(choice - rapid))
            self._channel.realtime(Realtime[f"RAPID_{nearest}"])

    def _steer(self, percent: int, what: str) -> None:
        change = min(200, max(10, percent)) - 100
        tens, ones = divmod(abs(change), 10)
        way = "UP" if change > 0 else "DOWN"
        self._channel.realtime(Realtime[f"{what}_100"])
        for _ in range(tens):
            self._channel.realtime(Realtime[f"{what}_{way}_10"])
        for _ in range(ones):
            self._channel.realtime(Realtime[f"{what}_{way}_1"])
