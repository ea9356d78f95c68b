"""Before a run: homing where there is one, the hover lap, the exact program on the bench, the overrides."""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

import numpy as np

from drypoint.bench.bench import Bench
from drypoint.machine.operator import RequestKind
from drypoint.machine.sender import Flow
from drypoint.machine.state import Activity
from drypoint.session.station import make_bench

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander


def test_the_lap_comes_before_the_first_cut_and_the_program_can_be_rehearsed(
    who: Bystander, bench: Bench
) -> None:
    who.connect()
    preparing = who.side.preparing
    who.window.choose_step(7)
    who.rest()
    assert not preparing.home_button.isVisibleTo(who.side.running.page), "this machine has no homing"
    sheet = len(bench.copper.sweeps)
    who.click(preparing.rehearse_button)
    who.wait(lambda: "Rehearsed" in preparing.outcome.accessibleName())
    assert len(bench.copper.sweeps) == sheet, "another bench, another sheet"
    assert who.side.running.following is not None
    assert str(len(who.side.running.following.program.lines)) in preparing.outcome.accessibleName()

    who.touch()
    who.window.choose_step(7)
    assert preparing.lap_first.isVisibleTo(who.side.running.page)
    titles = []
    who.desk.asked.connect(lambda request: titles.append(getattr(request, "title", "")))
    who.run()
    assert titles.index("Hover lap") < next(k for k, one in enumerate(titles) if "marks" in one.lower())
    assert not preparing.lap_first.isVisibleTo(who.side.running.page)
    titles.clear()
    who.run()
    assert "Hover lap" not in titles, "once in a clamping"


def test_homing_and_line_by_line(who: Bystander, job: Path) -> None:
    session = who.session
    session.change("Homing", machine=replace(session.settings.machine, homing=True, line_by_line=True))
    who.rest()
    who.side.connecting._bench = make_bench(
        session.derived.layout(session.snapshot), session.settings, 3, loose=()
    )
    who.connect()
    assert who.desk.station is not None
    assert who.desk.station.controller.flow is Flow.SINGLE
    who.window.choose_step(7)
    button = who.side.preparing.home_button
    who.wait(lambda: button.isVisibleTo(who.side.running.page))
    assert who.desk.state.activity is Activity.NEEDS_YOU, "locked until it knows where it is"
    unlock = who.side.preparing.unlock_button
    who.wait(lambda: unlock.isVisibleTo(who.side.running.page))
    who.click(unlock)
    who.asked(RequestKind.CONFIRM)
    who.click(who.desk.bar.done_button)
    who.wait(lambda: who.desk.state.activity is Activity.AT_REST)
    who.rest()
    who.wait(lambda: not unlock.isVisibleTo(who.side.running.page))
    who.click(button)
    who.asked(RequestKind.CONFIRM)
    who.click(who.desk.bar.done_button)
    who.rest()
    who.wait(lambda: who.desk.state.activity is Activity.AT_REST)
    assert not who.desk.thread_.known, "the work's zero has to be found again"


def test_overrides_of_feed_rapid_moves_and_spindle(who: Bystander, bench: Bench) -> None:
    who.connect()
    strip = who.window.strip
    menu = {one.text(): one for one in strip.speeds_button.menu().actions()}
    menu["Rapid moves at 50 %"].trigger()
    who.wait(lambda: who.desk.state.overrides[1] == 50)
    menu["Spindle slower by 10 %"].trigger()
    who.wait(lambda: who.desk.state.overrides[2] == 90)
    who.click(strip.faster)
    who.wait(lambda: who.desk.state.overrides == (110, 50, 90))
    who.wait(lambda: strip._caption.text() == "rapid 50 %, spindle 90 %")
    menu["Spindle back to 100 %"].trigger()
    menu["Rapid moves at 100 %"].trigger()
    menu["Back to 100 %"].trigger()
    who.wait(lambda: who.desk.state.overrides == (100, 100, 100))
    assert np.isfinite(bench.tip()).all()
