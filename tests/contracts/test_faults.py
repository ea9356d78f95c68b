"""The sender against the bench's faults: each is noticed, and nothing undone is called executed."""

from __future__ import annotations

import pytest

from drypoint.bench.bench import Bench
from drypoint.bench.faults import Fault, FaultKind, Injector
from drypoint.errors import MachineError
from drypoint.machine.controller import Controller
from drypoint.machine.faults import Astray, LineLost, LinkLost, Locked, Refused, Restarted
from drypoint.machine.tracker import PathTracker

LINES = ("G1Z4F500", *(f"X{i * 0.7 % 9:.2f}Y{i * 0.2:.2f}" for i in range(1, 150)))

NOTICED = {
    FaultKind.DROPPED_LINE: (LineLost, Astray),
    FaultKind.GARBLED_BYTE: (Refused, LineLost, Astray),
    FaultKind.RESET: (Restarted, Locked),
    FaultKind.ALARM: (Locked,),
    FaultKind.UNPLUGGED: (LinkLost,),
    FaultKind.POWER: (LinkLost,),
}


@pytest.mark.parametrize("after", [5, 40, 120])
@pytest.mark.parametrize("kind", list(NOTICED))
def test_every_fault_of_the_line_is_noticed_and_proves_nothing_that_is_undone(kind, after):
    bench = Bench(1)
    controller = Controller(bench.link)
    controller.connect()
    controller.set_work(x=0.0, y=0.0, z=5.0)
    injector = Injector(bench, [Fault(kind, after)])
    executed = [0]
    tracker = PathTracker(
        LINES, controller.place(), controller.facts.planner_blocks, step=controller.facts.step
    )
    with pytest.raises(MachineError) as caught:
        controller.stream(LINES, tracker=tracker, on_progress=lambda event: executed.append(event.executed))
    assert injector.done
    assert isinstance(caught.value, NOTICED[kind])
    assert caught.value.hint
    assert executed == sorted(executed)
    if kind in (FaultKind.DROPPED_LINE, FaultKind.GARBLED_BYTE):
        assert executed[-1] < after  # the line that was spoiled is not among those proven


def test_without_a_fault_all_is_executed():
    bench = Bench(1)
    controller = Controller(bench.link)
    controller.connect()
    controller.set_work(x=0.0, y=0.0, z=5.0)
    executed = []
    tracker = PathTracker(
        LINES, controller.place(), controller.facts.planner_blocks, step=controller.facts.step
    )
    controller.stream(LINES, tracker=tracker, on_progress=lambda event: executed.append(event.executed))
    assert executed[-1] == len(LINES)
    assert len(set(executed)) > 5
