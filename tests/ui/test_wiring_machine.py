"""The machine's side of the window on the bench: every step of the job by its own buttons."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt

from drypoint.bench.bench import Bench
from drypoint.bench.pty import BenchPty
from drypoint.job.journal import runs
from drypoint.machine.operator import RequestKind
from drypoint.machine.serial_link import Port
from drypoint.machine.state import Activity
from drypoint.ui.machine_side.run_progress import RUNNING
from drypoint.ui.parts.glyph import Mark

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander


def test_connecting_moves_nothing_and_is_shown(who: Bystander, bench: Bench) -> None:
    before = bench.tip()
    assert who.window.strip.state.value == "not connected"
    assert not who.side.running.page.start_button.isEnabled()
    who.connect()
    assert bench.tip() == before
    who.wait(lambda: who.window.strip.state.value == "at rest")
    assert who.window.jog.position.switch.isEnabled()


def test_jogging_steps_holds_and_locks(who: Bystander, bench: Bench) -> None:
    who.connect()
    position = who.window.jog.position
    start = np.array(bench.tip())
    position.steps.choose(2)
    who.click(position._buttons["x", 1])
    who.wait(lambda: bool(np.isclose(bench.tip()[0] - start[0], 1.0, atol=0.05)))
    who.wait(lambda: who.desk.state.activity is Activity.AT_REST)
    bench.clock.pace = 1.0
    who.qtbot.mousePress(position._buttons["x", 1], Qt.MouseButton.LeftButton)
    who.wait(lambda: bench.tip()[0] - start[0] > 3.0)
    who.qtbot.mouseRelease(position._buttons["x", 1], Qt.MouseButton.LeftButton)
    who.wait(lambda: who.desk.state.activity is Activity.AT_REST)
    gone = bench.tip()[0] - start[0]
    assert 3.0 < gone < 35.0, "a held jog ends when it is let go, not at its farthest"
    who.window.commands["arm"].setChecked(True)
    assert position.keys.armed
    who.desk.thread_.pace = 5.0
    who.desk.start("a procedure", lambda _: list(map(bench.clock.sleep, [1.0] * 3)))
    who.wait(lambda: not position.keys.armed)
    who.rest()


def test_touched_by_hand_and_bench_then_reach(who: Bystander) -> None:
    who.connect()
    who.window.choose_step(4)
    who.side.touching.survey.setChecked(False)
    who.click(who.side.touching.page.touch_button)
    bar = who.desk.bar
    who.asked(RequestKind.CHANGE_BIT)
    assert bar.isVisible()
    who.wait(lambda: who.window.strip.state.value == "needs you")
    assert not who.window.jog.position.switch.isEnabled()
    who.click(bar.done_button)
    who.asked(RequestKind.JOG_TO)
    assert who.window.jog.position.switch.isEnabled()
    before = who.desk.state.machine
    who.click(who.window.jog.position._buttons["x", 1])
    who.wait(lambda: who.desk.state.machine != before and bar.done_button.isEnabled())
    who.click(bar.help_button)
    who.asked(RequestKind.CLIP_OFF)
    who.desk.operator.shown = 0.0
    bar.automatic.setChecked(True)
    who.rest()
    found = who.session.derived.touches(who.session.snapshot)
    assert found is not None
    assert len(found[0].touches) == 9
    picture = who.window.heat._picture
    assert picture is not None
    assert len(picture.touches) == 9
    plan = who.session.derived.passes_ready(who.session.snapshot)
    assert plan is not None, "the reach of the next pass is there to be looked at"
    assert plan.next is not None
    following = who.side.running.following
    assert following is not None
    assert who.side.running.page.start_button.isVisibleTo(who.side.running.page)


def test_declining_ends_a_procedure_in_plain_words(who: Bystander) -> None:
    who.connect()
    who.window.choose_step(4)
    who.click(who.side.touching.page.touch_button)
    who.asked(RequestKind.CHANGE_BIT)
    who.click(who.desk.bar.decline_button)
    who.rest()
    assert not who.desk.bar.isVisible()
    assert "Declined" in who.window.strip._message._whole


def test_the_whole_job(who: Bystander, bench: Bench, opened: Callable[[], Bystander]) -> None:
    who.connect()
    who.touch()
    who.run()
    assert [record.data["program"] for record in who.session.snapshot.records["done"]]
    _hold_resume_stop(who)
    again = _killed_and_resumed(who, bench, opened)
    _proved(again)
    _moved_and_found(again, bench)


def _hold_resume_stop(who: Bystander) -> None:
    """A pass is begun, held, goes on, is stopped; it is offered to be resumed."""
    strip, running = who.window.strip, who.side.running
    who.desk.thread_.pace = 4.0
    who.window.choose_step(7)
    who.click(running.page.start_button)
    who.wait(lambda: strip.state.value == "cutting")
    who.wait(lambda: running.progress.newest is not None and running.progress.newest.executed > 3)
    who.click(strip.hold_button)
    who.wait(lambda: strip.state.value == "held" and who.desk.state.still)
    place = who.desk.state.work
    who.qtbot.wait(150)
    assert who.desk.state.work == place
    who.window.commands["resume"].trigger()
    who.wait(lambda: strip.state.value == "cutting" and who.desk.state.work != place)
    who.window.commands["stop"].trigger()
    who.rest()
    who.wait(lambda: who.desk.state.activity is Activity.AT_REST)
    assert running.work is not None
    assert running.work.broken is not None
    assert running.resume_button.isVisibleTo(running.page)
    assert not any(record.data["program"] == running.work.broken.program for record in _done(who))


def _killed_and_resumed(who: Bystander, bench: Bench, opened: Callable[[], Bystander]) -> Bystander:
    """Resumed, closed in the middle, opened again, zero found again and resumed to its end."""
    running = who.side.running
    who.click(running.resume_button)
    who.wait(lambda: who.window.strip.state.value == "cutting")
    who.app.close()
    who.window.close()
    again = opened()
    record = runs(again.session.job)[-1]
    assert not record.finished
    assert record.ended is not None, "the journal was ended when the window was closed"
    again.connect()
    again.desk.operator.shown = 0.0
    again.desk.bar.automatic.setChecked(True)
    again.window.choose_step(7)
    again.rest()
    again.click(again.side.running.resume_button)
    again.rest()
    assert runs(again.session.job)[-1].finished
    assert again.session.derived.done_passes(again.session.snapshot)
    snap = again.session.snapshot
    lines = again.session.derived.cuts(snap).grooves.lines
    assert bench.through_share(lines, again.session.derived.fit(snap)) > 0.9
    return again


def _proved(who: Bystander) -> None:
    """Island touch from the proof page; list and canvas follow each other."""
    who.window.choose_step(8)
    page = who.side.proving.page
    who.click(page.rest_button)
    who.rest()
    standing = who.side.proving.standing
    assert standing is not None
    assert any(state == "proved" for _, state in standing.pairs)
    row = next(k for k, line in enumerate(page._lines) if line.mark is Mark.DONE and "A" in line.nets)
    page.list.setCurrentIndex(page.model.index(row))
    assert [name for name, _ in who.window.canvas.canvas._marks.chosen][:1] == ["A"]


def _moved_and_found(who: Bystander, bench: Bench) -> None:
    """The board is clamped anew; two, then three holes are touched through the panel."""
    snap = who.session.snapshot
    corners = [(0.0, 0.0), (16.0, 0.0), (16.0, 12.0), (0.0, 12.0)]
    before = bench.board_to_sheet(corners, who.session.derived.fit(snap))
    who.window.choose_step(6)
    who.click(who.side.referencing.moved_button)
    who.rest()
    assert who.side.running.following is None, "nothing is run while the board's place is not known"
    panel = who.window.jog.reference
    for touched in (1, 2, 3):
        who.click(panel.another_button)
        who.rest()
        found = who.side.referencing.found
        assert found is not None
        assert len(found.touched) == touched
        assert (found.fit is None) == (touched < 2)
    after = bench.board_to_sheet(corners, who.session.derived.fit(who.session.snapshot))
    assert np.hypot(*(after - before).T).max() < 0.15
    who.click(panel.remap_button)
    who.rest()
    remapped = who.side.remapping.found
    assert remapped is not None
    assert remapped.turned_deg == pytest.approx(-0.8, abs=0.5)


def _done(who: Bystander) -> tuple:
    return who.session.snapshot.records["done"]


def test_a_place_is_set_by_hand_wheel_and_touched_by_the_key(who: Bystander) -> None:
    who.connect()
    who.rest()
    over = who.window.jog.reference
    who.click(over.over)
    who.rest()
    assert "not known" in who.window.strip._message._whole
    who.click(who.window.jog.position.enter_place)
    dialog = who.side.jogging.dialog
    assert dialog is not None
    for axis, value in (("x", 4.0), ("y", 5.0), ("z", 3.0)):
        dialog.fields[axis].set_value(value)
    who.click(dialog.set_button)
    who.rest()
    who.wait(lambda: who.desk.state.work is not None and abs(who.desk.state.work[0] - 4.0) < 0.01)
    who.window.commands["over_hole"].trigger()
    who.rest()
    record = who.session.snapshot.records["reference"][-1]
    assert record.data["touched"] == pytest.approx([4.0, 5.0], abs=0.01)
    assert who.desk.thread_.running != RUNNING


def test_a_pulled_cable_is_said_and_the_run_goes_on_afterwards(who: Bystander, bench: Bench) -> None:
    who.connect()
    who.touch()
    who.desk.thread_.pace = 3.0
    running = who.side.running
    who.window.choose_step(7)
    who.click(running.page.start_button)
    who.wait(lambda: who.window.strip.state.value == "cutting")
    bench.unplug()
    who.rest()
    assert who.window.strip.state.value == "not connected"
    assert who.desk.error is not None
    assert running.page._note.isVisibleTo(running.page)
    assert running.work is not None
    assert running.work.broken is not None
    who.connect()
    who.click(running.resume_button)
    who.rest()
    assert runs(who.session.job)[-1].finished
    assert who.desk.error is None


def test_closing_while_something_is_asked_ends_it(who: Bystander) -> None:
    who.connect()
    who.window.choose_step(4)
    who.click(who.side.touching.page.touch_button)
    who.asked(RequestKind.CHANGE_BIT)
    who.app.close()
    assert not who.desk.thread_._thread.is_alive()
    assert not who.bugs


def test_another_job_lets_go_of_the_machine(who: Bystander, job: Path, tmp_path: Path) -> None:
    who.connect()
    other = tmp_path / "other.drypoint"
    other.write_bytes(job.read_bytes())
    who.app.design.documents.open(other)
    who.wait(lambda: who.desk.station is None)
    who.rest()
    assert who.window.strip.state.value == "not connected"


def test_a_rehearsal_runs_beside_and_can_be_ended(who: Bystander) -> None:
    rehearsing = who.side.rehearsing
    who.window.commands["rehearse"].trigger()
    dialog = rehearsing.dialog
    assert dialog is not None
    who.wait(lambda: dialog.bar.accessibleDescription() not in ("", "0 %"))
    who.click(dialog.close_button)
    assert not dialog.isVisible()
    assert rehearsing.outcome is None
    rehearsing.close()


def test_a_second_click_answers_no_other_request(who: Bystander) -> None:
    who.connect()
    who.window.choose_step(4)
    who.side.touching.survey.setChecked(False)
    who.click(who.side.touching.page.touch_button)
    who.asked(RequestKind.CHANGE_BIT)
    bar = who.desk.bar
    who.qtbot.mouseDClick(bar.done_button, Qt.MouseButton.LeftButton)
    who.qtbot.mouseClick(bar.done_button, Qt.MouseButton.LeftButton)
    who.asked(RequestKind.JOG_TO)
    assert bar.asked is not None
    assert bar.asked.number == 2
    who.click(bar.decline_button)
    who.rest()


@pytest.mark.skipif(sys.platform == "win32", reason="needs pseudo-terminals")
def test_a_machine_on_a_serial_port(who: Bystander, bench: Bench) -> None:
    with BenchPty(bench, pace=4.0) as served:
        who.window.commands["connect"].trigger()
        dialog = who.side.connecting._dialog
        assert dialog is not None
        dialog.show_ports([Port(served.device, "a machine")], served.device)
        who.click(dialog.connect_button)
        who.wait(lambda: who.desk.station is not None and not who.desk.busy)
        assert who.session.settings.machine.port == served.device
        dialog.reject()
        start = bench.tip()[0]
        who.window.jog.position.steps.choose(2)
        who.click(who.window.jog.position._buttons["x", 1])
        who.wait(lambda: abs(bench.tip()[0] - start - 1.0) < 0.05)
        who.app.close()


def test_a_port_that_is_not_there_is_said_so(who: Bystander) -> None:
    who.window.commands["connect"].trigger()
    dialog = who.side.connecting._dialog
    assert dialog is not None
    dialog.show_ports([], "no-such-port")
    who.click(dialog.connect_button)
    who.rest()
    assert who.desk.station is None
    assert who.desk.error is not None
    assert "cannot be opened" in who.desk.error.what
    dialog.reject()
