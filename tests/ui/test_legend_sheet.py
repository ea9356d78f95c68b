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
from drypoint.session.corner import Corner
from drypoint.session.grid import POWERS, newest_grid
from drypoint.session.laser_safety import BARE, EYES
from drypoint.session.session import Session
from drypoint.ui.canvas.content import Layer
from drypoint.ui.legend_side.legending import telling
from drypoint.ui.pages.run import Task
from drypoint.ui.parts.glyph import Mark

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


def test_a_grid_at_the_spot_is_refused_beside_the_blank(ready: Bystander, bench: Bench) -> None:
    acknowledge(ready)
    sheet = ready.side.legending.sheet
    assert sheet is not None
    sheet.at_spot.click()
    assert ready.session.settings.coupons.grid_at_spot
    ready.wait(lambda: not sheet.corner.isEnabled())
    ready.desk.operator.shown = 0.0
    ready.desk.bar.automatic.setChecked(True)
    ready.click(sheet.burn_button)  # the spot is on the very corner of the blank
    ready.rest()
    assert not len(bench.burn.spots)
    assert ready.desk.error is not None
    assert "beyond the blank" in ready.desk.error.what


def test_a_grid_that_has_no_room_says_so(ready: Bystander, bench: Bench) -> None:
    ready.session.change("Tight", blank=replace(ready.session.settings.blank, margin=5.0))
    acknowledge(ready)
    sheet = ready.side.legending.sheet
    assert sheet is not None
    ready.click(sheet.burn_button)
    ready.rest()
    assert not len(bench.burn.spots)
    assert ready.desk.error is not None
    assert "widest strip" in ready.desk.error.what


def test_from_the_grid_to_the_legend(ready: Bystander, bench: Bench) -> None:
    """Burnt in the corner chosen, stopped, taken up; the field chosen is what the legend is marked with."""
    blank = replace(ready.session.settings.blank, margin=18.0)
    laser = replace(ready.session.settings.laser, pitch=0.6, settle=0.01)
    ready.session.change("Room, coarse", blank=blank, laser=laser)
    acknowledge(ready)
    sheet = ready.side.legending.sheet
    assert sheet is not None
    sheet.corner.setFocus()
    ready.qtbot.keyClick(sheet.corner, Qt.Key.Key_Home)
    assert ready.session.settings.coupons.grid is Corner.LOWER_LEFT
    ready.rest()
    assert not sheet._grid.isVisible()

    def planned() -> tuple[float, float, float, float]:
        shown = [one for one in ready.window.canvas.canvas.content.trials if one.name == "burn grid"]
        assert not any(one.begun for one in shown)
        return shown[0].extents[0]

    ready.wait(lambda: min(planned()[2:]) < 0.0)  # in the waste at the lower left
    where = planned()
    ready.desk.thread_.pace = 20.0
    ready.click(sheet.burn_button)
    assert EYES in answer(ready, RequestKind.CONFIRM)
    ready.desk.operator.shown = 0.0
    ready.desk.bar.automatic.setChecked(True)  # the clip comes off
    ready.wait(lambda: len(bench.burn.spots) > 10)
    ready.desk.bar.automatic.setChecked(False)
    ready.window.commands["stop"].trigger()
    ready.rest()
    made = len(bench.burn.spots)
    assert bench.burn.power == 0.0
    grid = newest_grid(ready.session.snapshot)
    assert grid is not None
    whole = len(grid.grid.power)
    assert made < whole
    ready.desk.thread_.pace = None
    ready.click(sheet.take_up_button)
    assert EYES in answer(ready, RequestKind.CONFIRM)
    ready.rest()
    burnt = bench.burn.spots
    assert whole <= len(burnt) <= whole + 1, "at most the pulse under way was made twice"
    assert {round(p, 3) for p in burnt[:, 3].tolist()} == set(POWERS)
    begun = [one for one in ready.window.canvas.canvas.content.trials if one.begun]
    assert [one.name for one in begun] == ["burn grid"]
    assert begun[0].extents[0] == pytest.approx(where)
    line = Task("Burn grid on black paint", Mark.DONE, "done")
    ready.wait(lambda: ready.side.running.page._listed[:1] == (line,))

    chosen = next(one for one in sheet._grid.findChildren(QPushButton) if "60 % for 10 ms" in one.toolTip())
    ready.qtbot.mouseClick(chosen, Qt.MouseButton.LeftButton)
    ready.rest()
    kept = ready.session.settings.laser
    assert (kept.power, kept.dwell) == (0.6, 0.01)
    assert [(one.name, one.power) for one in kept.materials] == [("black paint", 0.6)]
    marked = [one.accessibleName() for one in sheet._grid.findChildren(QPushButton) if one.isChecked()]
    assert marked == ["60 % for 10 ms"]

    ready.click(sheet.mark_button)
    answer(ready, RequestKind.CONFIRM)
    ready.rest()
    legend = bench.burn.spots[len(burnt) :]
    assert len(legend) == ready.session.derived.legend(ready.session.snapshot).count
    assert legend[:, 3] == pytest.approx(0.6)
    assert legend[:, 2] == pytest.approx(0.01, abs=2e-4)
    assert not bench.mishaps

    for name, power in (("other paint", 0.4), ("black paint", 0.6)):
        if name == "other paint":
            sheet.fields["power"][0].edited.emit(40.0)
            ready.rest()
        sheet.coating.setText("")
        ready.qtbot.keyClicks(sheet.coating, name)
        ready.qtbot.keyClick(sheet.coating, Qt.Key.Key_Return)
        ready.rest()
        assert ready.session.settings.laser.power == power, "values come with the coating they were found on"


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


def test_bare_laminate_needs_a_word_of_its_own_and_its_dangers_are_read_again(
    ready: Bystander, bench: Bench
) -> None:
    sheet = ready.side.legending.sheet
    assert sheet is not None
    assert not sheet.boxes["bare_accepted"].isVisible()
    sheet.boxes["bare"].click()
    ready.wait(sheet.boxes["bare_accepted"].isVisible)
    ready.rest()
    assert sheet._bare.isVisible()
    assert not sheet.mark_button.isEnabled()
    ready.desk.operator.shown = 0.0
    ready.desk.bar.automatic.setChecked(True)
    ready.click(sheet.burn_button)
    ready.rest()
    assert ready.desk.error is not None
    assert "not acknowledged" in ready.desk.error.what
    assert not len(bench.burn.spots)
    ready.desk.bar.automatic.setChecked(False)
    sheet.boxes["bare_accepted"].click()
    ready.rest()
    ready.click(sheet.mark_button)
    assert BARE in answer(ready, RequestKind.CONFIRM)
    ready.desk.bar.automatic.setChecked(True)
    ready.rest()
    assert len(bench.burn.spots)
    assert bench.burn.power == 0.0


def test_the_beam_is_off_while_the_marking_is_held_by_the_strip(ready: Bystander, bench: Bench) -> None:
    acknowledge(ready)
    sheet = ready.side.legending.sheet
    assert sheet is not None
    ready.desk.thread_.pace = 4.0
    ready.click(sheet.mark_button)
    answer(ready, RequestKind.CONFIRM)
    ready.desk.operator.shown = 0.0
    ready.desk.bar.automatic.setChecked(True)
    ready.wait(lambda: len(bench.burn.spots) > 3)
    ready.click(ready.window.strip.hold_button)
    ready.wait(lambda: ready.window.strip.state.value == "held" and ready.desk.state.still)
    made = len(bench.burn.spots)
    ready.qtbot.wait(150)
    assert bench.burn.power == 0.0
    assert len(bench.burn.spots) == made
    ready.desk.thread_.pace = None
    ready.window.commands["resume"].trigger()
    ready.rest()
    assert len(bench.burn.spots) == ready.session.derived.legend(ready.session.snapshot).count
    assert bench.burn.power == 0.0
