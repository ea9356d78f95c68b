"""The window answers while the bench is connected, milled on, held and stopped, and in a rehearsal."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from bystander import Bystander, measure_flat
from turns import TurnWatch

from drypoint.bench.remote import RemoteBench
from drypoint.machine.state import Activity
from drypoint.ui.app import undisturbed

BUSY = 0.2
"""Most processor time between two beats, s. The aim is a tenth of a second; where other programs crowd the
processors several turns fall between two beats, and each takes up to twice as long."""


class Walk:
    """Somebody at the bench, and the longest turn of every step."""

    def __init__(self, who: Bystander) -> None:
        self.who = who
        self.watch = TurnWatch()
        self.longest: dict[str, float] = {}

    def note(self, step: str) -> None:
        self.longest[step] = self.watch.longest()[1]
        self.watch.forget()


@pytest.fixture
def walk(opened: Callable[[], Bystander], job: Path) -> Iterator[Walk]:
    measure_flat(job)
    who = opened()
    who.side.connecting._bench = None  # the window's own, in a process of its own
    with undisturbed():
        yield Walk(who)


def test_no_turn_at_the_bench_computes_for_long(walk: Walk) -> None:
    who, strip, running = walk.who, walk.who.window.strip, walk.who.side.running
    walk.watch.forget()
    who.connect()
    assert isinstance(who.side.connecting.bench, RemoteBench)
    walk.note("connect")
    who.place()
    walk.note("place")
    who.side.preparing.lap_first.setChecked(False)
    who.desk.thread_.pace = 4.0
    who.window.choose_step(7)
    who.qtbot.wait(50)
    walk.note("page Run")
    who.click(running.page.start_button)
    who.wait(lambda: strip.state.value == "cutting")
    who.wait(lambda: running.progress.newest is not None and running.progress.newest.executed > 3)
    walk.note("start")
    who.click(strip.hold_button)
    who.wait(lambda: strip.state.value == "held" and who.desk.state.still)
    walk.note("hold")
    who.window.commands["stop"].trigger()
    who.rest()
    who.wait(lambda: who.desk.state.activity is Activity.AT_REST)
    walk.note("stop")
    who.window.commands["rehearse"].trigger()
    dialog = who.side.rehearsing.dialog
    assert dialog is not None
    who.wait(lambda: dialog.bar.accessibleDescription() not in ("", "0 %"))
    walk.note("rehearse")
    who.click(dialog.close_button)
    who.rest()
    walk.note("end of the rehearsal")
    assert any(own > 0.0 for own in walk.longest.values()), "nothing was watched"
    assert max(walk.longest.values()) < BUSY, walk.longest
