"""When lines are held back, given up or stopped: a reset that cuts motion short loses the position."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from drypoint.machine.delivery import Delivery, is_still
from drypoint.machine.faults import LineLost
from drypoint.machine.protocol import Message, Ok, Phase, Realtime, Status
from drypoint.machine.sender import Sender


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


class _Answering:
    """A channel at which the machine rests, with a script of what comes every 0.3 s."""

    name, patient, restarts, alarm, status = "answering", False, 0, None, Status(Phase.IDLE)

    def __init__(self, script: Callable[[int], list[Message]]) -> None:
        self.script = script
        self.turn = 0
        self.reports = 0
        self.sent: list[tuple[bytes, int]] = []

    def now(self) -> float:
        return 0.3 * self.turn

    def send(self, data: bytes) -> None:
        self.sent.append((data, self.turn))

    def exchange(self, wait: float) -> list[Message]:
        self.turn += 1
        self.reports += 1
        return self.script(self.turn)


def test_no_pulse_begins_while_a_pause_is_wanted() -> None:
    def script(turn: int) -> list[Message]:
        if turn == 3:
            delivery.pause.clear()
        return [Ok()] * 2 if channel.sent else []

    channel = _Answering(script)
    delivery = Delivery(channel, lambda: None)  # type: ignore[arg-type]
    delivery.pulsing = True
    delivery.pause.set()
    lines = ("M3S5", "M5")
    delivery.deliver(Sender(lines), lines, lambda: None)
    assert channel.sent == [(b"M3S5\nM5\n", 3)]


@pytest.mark.parametrize(("every", "lost"), [(2, False), (9, True)])
def test_a_line_is_lost_when_nothing_comes_for_a_second_at_rest(every: int, lost: bool) -> None:
    """Answers that come slowly, one in 0.6 s, are answers; the wait begins anew with each."""
    channel = _Answering(lambda turn: [Ok()] if turn % every == 0 else [])
    delivery = Delivery(channel, lambda: None)  # type: ignore[arg-type]
    lines = tuple(f"G1X{k}" for k in range(6))
    if lost:
        with pytest.raises(LineLost):
            delivery.deliver(Sender(lines), lines, lambda: None)
        assert channel.turn < 9
    else:
        delivery.deliver(Sender(lines), lines, lambda: None)
        assert channel.turn == 12
