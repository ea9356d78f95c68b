"""A halt waits until the axes really stand still: what a reset cuts short loses its position."""

from __future__ import annotations

import pytest

from drypoint.machine.delivery import Delivery, is_still
from drypoint.machine.protocol import Phase, Realtime, Status


class _Slowing:
    """A channel on which reports come in one by one; notes how many had come when a byte was sent."""

    name, patient, restarts, alarm = "slowing", False, 0, None

    def __init__(self, *reports: Status) -> None:
        self.reports = list(reports)
        self.read = 0
        self.sent: list[tuple[Realtime, int]] = []
        self.status: Status | None = None

    def now(self) -> float:
        return 0.0

    def realtime(self, byte: Realtime) -> None:
        self.sent.append((byte, self.read))
        self.restarts += byte is Realtime.RESET

    def exchange(self, wait: float) -> list[Status]:
        self.status = self.reports[min(self.read, len(self.reports) - 1)]
        self.read += 1
        return [self.status]


HELD, SLOWING, RUNNING, AT_REST = (
    Status(Phase.HOLD, 0),
    Status(Phase.HOLD, 1),
    Status(Phase.RUN),
    Status(Phase.IDLE),
)


@pytest.mark.parametrize(
    ("reports", "needed"),
    [
        ((SLOWING, SLOWING, HELD, HELD), 4),
        ((AT_REST, RUNNING, SLOWING, HELD, HELD), 5),  # the first was under way before the hold
        ((HELD, SLOWING, HELD, HELD), 4),
        ((AT_REST, AT_REST), 2),
    ],
)
def test_the_reset_comes_after_two_reports_of_standing_still_in_a_row(
    reports: tuple[Status, ...], needed: int
) -> None:
    channel = _Slowing(*reports)
    Delivery(channel, lambda: None).halt()  # type: ignore[arg-type]
    assert channel.sent == [(Realtime.HOLD, 0), (Realtime.RESET, needed)]


def test_a_laser_that_is_pulsed_is_reset_at_once() -> None:
    channel = _Slowing(RUNNING)
    delivery = Delivery(channel, lambda: None)  # type: ignore[arg-type]
    delivery.pulsing = True
    delivery.halt()
    assert channel.sent == [(Realtime.RESET, 0)]


def test_what_counts_as_standing_still() -> None:
    """Hold and door: 0 stands still (in a door 0 and 1 do), higher numbers still move (protocol 1.1)."""
    still = {(Phase.HOLD, 0), (Phase.HOLD, None), (Phase.DOOR, 0), (Phase.DOOR, 1)}
    still |= {(phase, None) for phase in (Phase.IDLE, Phase.ALARM, Phase.CHECK, Phase.SLEEP)}
    for phase in Phase:
        for sub in (None, 0, 1, 2, 3):
            if sub is None or phase in (Phase.HOLD, Phase.DOOR):
                assert is_still(Status(phase, sub)) is ((phase, sub) in still), (phase, sub)
