"""The legend by laser from the window: material first, cautions before light, marks, grid, stop."""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton

from drypoint.bench.bench import Bench
from drypoint.machine.controller import StreamEvent
from drypoint.machine.operator import RequestKind
from drypoint.progress import Progress
from drypoint.session.laser_safety import EYES
from drypoint.session.session import Session
from drypoint.ui.canvas.content import Layer
from drypoint.ui.legend_side.legending import telling

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander

LEGEND = """%TF.FileFunction,Legend,Top*%
%FSLAX46Y46*%
%MOMM*%
%ADD10C,0.15*%
D10*
X5500000Y10500000D02*
X7000000Y10500000D01*
M02*
"""


@pytest.fixture
def job(job: Path, design: Path) -> Path:
    """The small board with a stroke of legend on the side that looks up."""
    (design / "legend.gbr").write_text(LEGEND)
    session = Session.open(job)
    session.import_files([design])
    session.close()
    return job


@pytest.fixture
def ready(who: Bystander, bench: Bench) -> Bystander:
    """The sheet open, a bench in laser mode, x and y believed."""
    bench.controller.memory.settings.update({30: 1000, 32: 1})
    who.connect()
    station = who.desk.station
    assert station is not None
    who.desk.start("place", lambda _: station.controller.set_work(x=0.0, y=0.0, z=10.0))
    who.rest()
    who.window.commands["legend"].trigger()
    who.rest()
    return who


def acknowledge(who: Bystander) -> None:
    sheet = who.side.legending.sheet
    assert sheet is not None
    sheet.coating.setFocus()
    who.qtbot.keyClicks(sheet.coating, "black paint")
    who.qtbot.keyClick(sheet.coating, Qt.Key.Key_Return)
    who.rest()
    who.wait(sheet.boxes["declared_safe"].isEnabled)
    sheet.boxes["declared_safe"].click()
    who.rest()


def answer(who: Bystander, kind: RequestKind) -> tuple[str, ...]:
    who.asked(kind)
    asked = who.desk.bar.asked
    assert asked is not None
    who.click(who.desk.bar.done_button)
    return asked.request.cautions


def test_nothing_is_lit_before_the_material_is_said(ready: Bystander) -> None:
    sheet = ready.side.legending.sheet
    assert sheet is not None
    assert sheet.isVisible()
    assert not sheet.mark_button.isEnabled()
    assert Layer.LEGEND not in ready.window.canvas._hidden
    acknowledge(ready)
    assert ready.session.settings.laser.declared_safe
    ready.wait(sheet.mark_button.isEnabled)
    sheet.coating.setText("")
    ready.qtbot.keyClicks(sheet.coating, "other paint")
    ready.qtbot.keyClick(sheet.coating, Qt.Key.Key_Return)
    ready.rest()
    assert not ready.session.settings.laser.declared_safe, "another coating is to be declared anew"
    ready.wait(lambda: not sheet.mark_button.isEnabled())


def test_walk_dark_then_mark_after_the_cautions(ready: Bystander, bench: Bench) -> None:
    acknowledge(ready)
    sheet = ready.side.legending.sheet
    assert sheet is not None
    ready.click(sheet.walk_button)
    answer(ready, RequestKind.CONFIRM)
    ready.desk.operator.shown = 0.0
    ready.desk.bar.automatic.setChecked(True)
    ready.rest()
    assert not len(bench.burn.spots)
    ready.desk.bar.automatic.setChecked(False)
    ready.click(sheet.mark_button)
    assert EYES in answer(ready, RequestKind.CONFIRM)
    ready.rest()
    found = ready.session.derived.legend(ready.session.snapshot)
    assert len(bench.burn.spots) == found.count > 20
    assert bench.burn.power == 0.0
    assert ready.session.snapshot.records["done"][-1].data["program"] == "41-legend"


def test_the_best_field_of_a_grid_is_kept_with_the_coating(ready: Bystander, bench: Bench) -> None:
    acknowledge(ready)
    laser = replace(ready.session.settings.laser, pitch=0.6, settle=0.01)
    ready.session.change("Coarse", laser=laser)
    ready.rest()
    sheet = ready.side.legending.sheet
    assert sheet is not None
    ready.desk.operator.shown = 0.0
    ready.desk.bar.automatic.setChecked(True)
    ready.click(sheet.burn_button)  # the spot is on the very corner of the blank
    ready.rest()
    assert not len(bench.burn.spots)
    assert ready.desk.error is not None
    assert "beyond the blank" in ready.desk.error.what
    station = ready.desk.station
    assert station is not None
    ready.desk.start("place", lambda _: station.controller.set_work(x=1.0, y=1.0))
    ready.rest()
    ready.click(sheet.burn_button)
    ready.rest()
    assert len({round(power, 3) for power in bench.burn.spots[:, 3].tolist()}) == 6
    cells = sheet._grid.findChildren(QPushButton)
    chosen = next(one for one in cells if one.accessibleName() == "60 % for 10 ms")
    chosen.click()
    ready.rest()
    kept = ready.session.settings.laser
    assert (kept.power, kept.dwell) == (0.6, 0.01)
    assert [(one.name, one.power) for one in kept.materials] == [("black paint", 0.6)]


def test_marking_tells_how_far_it_is_and_is_never_ended_from_there(ready: Bystander) -> None:
    state = ready.desk.state
    told: list[float] = []
    progress = Progress(lambda share, _: told.append(share))
    tell = telling(progress)
    for executed in (0, 5, 20):
        tell(StreamEvent(20, 20, executed, 20, state))
    assert told == [0.0, 0.25, 1.0]
    progress.cancel()
    tell(StreamEvent(20, 20, 20, 20, state))
    assert told == [0.0, 0.25, 1.0]


def test_the_focus_light_goes_out_by_itself(ready: Bystander, bench: Bench) -> None:
    ready.session.change("Short", laser=replace(ready.session.settings.laser, focus_seconds=2.0))
    ready.rest()
    sheet = ready.side.legending.sheet
    assert sheet is not None
    ready.click(sheet.focus_button)
    assert EYES in answer(ready, RequestKind.CONFIRM)
    ready.desk.operator.shown = 0.0
    ready.desk.bar.automatic.setChecked(True)
    ready.rest()
    assert bench.burn.spots[:, 3] == pytest.approx(0.01)
    assert bench.burn.power == 0.0


def test_both_sides_are_chosen_on_the_board_page_and_can_be_undone(who: Bystander) -> None:
    box = who.app.design.pages.board.both
    box.click()
    assert who.session.settings.board.both
    who.rest()

    def kinds() -> list[str]:
        work = who.side.running.work
        return [] if work is None else [item.kind.value for item in work.items]

    who.wait(lambda: bool(kinds()) and "outline" not in kinds())
    who.window.commands["undo"].trigger()
    who.wait(lambda: not box.isChecked())
    assert not who.session.settings.board.both
