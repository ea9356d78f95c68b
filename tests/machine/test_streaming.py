"""What is watched while lines stream."""

from __future__ import annotations

from dataclasses import replace

import pytest

from drypoint.machine.faults import Astray
from drypoint.machine.sender import Sender
from drypoint.machine.state import Activity, MachineState
from drypoint.machine.streaming import Streaming
from drypoint.machine.tracker import PathTracker

LINES = ("G1X0Y0Z0F300", *(f"X{i}" for i in range(1, 120)))


@pytest.fixture
def watched():
    sender = Sender(LINES)
    tracker = PathTracker(LINES, (0.0, 0.0, 0.0), 15)
    events = []
    return sender, Streaming(sender, tracker, len(LINES), events.append), events


def at(x: float, feed: float = 300.0) -> MachineState:
    return MachineState(Activity.CUTTING, work=(x, 0.0, 0.0), feed=feed)


def test_a_feed_above_the_programs_is_no_rounding_when_it_lasts(watched):
    sender, streaming, _ = watched
    sender.take()
    streaming.report(at(1.0, 3000.0), 0.0)  # one report may be old
    with pytest.raises(Astray, match="faster"):
        streaming.report(at(1.5, 3000.0), 0.1)


def test_an_override_is_no_fault(watched):
    sender, streaming, _ = watched
    sender.take()
    for moment in range(3):
        streaming.report(replace(at(1.0, 600.0), overrides=(200, 100, 100)), float(moment))


def test_executed_counts_only_what_was_answered_completely(watched):
    sender, streaming, events = watched
    streaming.report(at(0.0), 0.0)
    while sender.answered < 50:
        sender.take()
        sender.answer()
        if sender.waiting:
            streaming.report(at(float(sender.answered) - 1.0), 0.5)
    assert all(event.executed <= sender.complete for event in events)
    assert events[-1].executed < events[-1].acknowledged


def test_answers_are_gathered_every_few_seconds(watched):
    sender, streaming, _ = watched
    sender.take()
    streaming.report(at(0.0), 0.0)
    before = sender.sent
    for _ in range(before):
        assert sender.take() == b""
        sender.answer()
    assert sender.complete == before
    assert sender.take()
    streaming.report(at(before - 5.0), 1.0)
    sender.answer()
    assert not sender.done
    sender.take()
    streaming.report(at(before - 5.0), 3.1)
    sender.answer()
    assert sender.take() == b""
