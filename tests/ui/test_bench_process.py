"""The bench that the window starts by itself: in a process of its own, ended with the window."""

from __future__ import annotations

from bystander import Bystander

from drypoint.bench.remote import RemoteBench
from drypoint.machine.state import Activity


def test_the_copper_is_touched_on_a_bench_in_its_own_process(who: Bystander) -> None:
    who.side.connecting._bench = None  # none was made for this window
    who.connect()
    bench = who.side.connecting.bench
    assert isinstance(bench, RemoteBench)
    before = len(who.session.snapshot.records["touches"])
    who.touch()
    assert len(who.session.snapshot.records["touches"]) == before + 1
    assert bench.alive
    who.window.close()
    who.app.close()
    assert not bench.alive
    assert bench._process.poll() is not None


def test_a_bench_that_died_is_said_and_the_next_one_is_another(who: Bystander) -> None:
    who.side.connecting._bench = None
    who.connect()
    first = who.side.connecting.bench
    assert isinstance(first, RemoteBench)
    first._process.kill()
    who.wait(lambda: who.desk.state.activity is Activity.NOT_CONNECTED)
    assert who.desk.error is not None
    who.connect()
    second = who.side.connecting.bench
    assert second is not first
    assert who.desk.state.activity is not Activity.NOT_CONNECTED


def test_another_number_brings_another_sheet(who: Bystander) -> None:
    who.side.connecting._bench = None
    who.connect()
    first = who.side.connecting.bench
    dialog = who.side.connecting._dialog
    assert dialog is not None
    who.connect()
    assert who.side.connecting.bench is first, "connecting again keeps the sheet as it is cut"
    dialog.sheet.set_value(7)
    who.connect()
    assert who.side.connecting.bench is not first
    assert first is not None
    assert not first.alive
