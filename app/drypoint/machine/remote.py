"""What may be called from any thread: single bytes that bypass every queue."""

from __future__ import annotations

from drypoint.machine.channel import Channel
from drypoint.machine.delivery import Delivery
from drypoint.machine.overrides import FEED, RAPID, SPINDLE, Percents
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
        """Set overrides in percent: feed and spindle 10..200, rapid 25, 50 or 100 (the nearest).

        They are reached in steps within a few reports.
        """
        wanted = self._delivery.overrides
        for which, percent in ((FEED, feed), (RAPID, rapid), (SPINDLE, spindle)):
            if percent is not None:
                wanted.want(which, percent)

    @property
    def overrides(self) -> Percents:
        """Feed, rapid and spindle overrides, percent: as wanted last, else as reported."""
        return self._delivery.overrides.wanted
