"""The pages Surface and Passes at work: circuit, advice, tables; ways to cut, nets, the brush."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path

import numpy as np
import shapely
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QAbstractButton

from drypoint.machine.operator import RequestKind
from drypoint.session.pass_plan import painted_in
from drypoint.surface.table import read_csv
from drypoint.ui.canvas.canvas import PathCanvas
from drypoint.ui.parts.glyph import Glyph, Mark

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander, measure_flat


def drag(who: Bystander, canvas: PathCanvas, *places: tuple[float, float]) -> None:
    """With the left button down from place to place, mm."""
    spots = [QPoint(*(round(value) for value in canvas.seen.spot(*place))) for place in places]
    who.qtbot.mousePress(canvas, Qt.MouseButton.LeftButton, pos=spots[0])
    for spot in spots[1:]:
        who.qtbot.mouseMove(canvas, spot)
    who.qtbot.mouseRelease(canvas, Qt.MouseButton.LeftButton, pos=spots[-1])


def choose(who: Bystander, button: QAbstractButton) -> None:
    """On the button's words; beside them it takes no click."""
    who.wait(lambda: button.isEnabled() and button.height() > 10)
    who.qtbot.mouseClick(button, Qt.MouseButton.LeftButton, pos=QPoint(14, button.height() // 2))


def circuit(who: Bystander) -> list[Mark]:
    return [row.findChildren(Glyph)[0]._mark for row in who.side.touching.page._circuit]


def test_the_circuit_is_followed_and_further_touches_are_weighed(who: Bystander, tmp_path: Path) -> None:
    who.connect()
    who.window.choose_step(4)
    page = who.side.touching.page
    assert circuit(who) == [Mark.TO_DO] * 3
    assert not page.write_button.isEnabled()
    who.side.touching.survey.setChecked(False)
    who.click(page.touch_button)
    bar, seen = who.desk.bar, []
    bar.show_request(bar.asked)
    for kind in (RequestKind.CHANGE_BIT, RequestKind.JOG_TO, RequestKind.CLIP_OFF, RequestKind.CLIP_TO_BIT):
        who.asked(kind)
        seen.append(circuit(who))
        who.click(bar.help_button if kind is RequestKind.JOG_TO else bar.done_button)
    who.asked(RequestKind.CLIP_ON)
    seen.append(circuit(who))
    to_do, ready, done = Mark.TO_DO, Mark.READY, Mark.DONE
    assert seen[2:] == [[ready, to_do, to_do], [done, ready, to_do], [done, done, ready]]
    who.desk.operator.shown = 0.0
    bar.automatic.setChecked(True)
    who.rest()
    assert circuit(who) == [done] * 3

    who.wait(lambda: not page._advice.isHidden())
    before = len(who.session.derived.touches(who.session.snapshot)[0].touches)
    who.click(page.more_button)
    who.rest()
    after = who.session.derived.touches(who.session.snapshot)[0]
    assert len(after.touches) > before

    who.app.design.tables.write(tmp_path / "heights.csv")
    who.wait((tmp_path / "heights.csv").exists)
    who.rest()
    table = read_csv((tmp_path / "heights.csv").read_text(encoding="utf-8"))
    assert np.allclose(table.points, after.points, atol=1e-5)
    who.app.design.tables.read(tmp_path / "heights.csv")
    who.rest()
    again = who.session.derived.touches(who.session.snapshot)[0]
    assert np.allclose(again.points, after.points, atol=1e-5)


def test_ways_to_cut_nets_and_brush(opened: Callable[[], Bystander], job: Path) -> None:
    measure_flat(job)
    who = opened()
    who.window.choose_step(5)
    page, canvas, planner = who.app.design.pages.passes, who.window.canvas.canvas, who.app.design.planner
    who.wait(lambda: planner.passes is not None and len(page.choice_buttons()) == 4)
    assert [one.isChecked() for one in page.choice_buttons()] == [False, False, True, False]

    def deepest() -> float:
        return 0.0 if planner.passes is None else planner.passes.plan.next.deepest

    usual = deepest()
    choose(who, page.choice_buttons()[0])
    assert who.session.settings.passes.target == 0.95
    who.wait(lambda: 0.0 < deepest() < usual and page.choice_buttons()[0].isChecked())
    shallow = deepest()
    choose(who, page.choice_buttons()[3])
    assert who.session.settings.passes.ladder
    who.wait(lambda: abs(deepest() - 0.055) < 1e-9)  # the copper and the ladder's first step
    who.wait(page.choice_buttons()[3].isChecked)
    who.window.commands["undo"].trigger()
    who.wait(lambda: deepest() == shallow)
    who.rest()

    lines = planner.passes.nets
    assert {one.net for one in lines} == {"A", "B"}
    first = page.nets.visualRect(page.nets.model().index(0, 0)).center()
    who.qtbot.mouseClick(page.nets.viewport(), Qt.MouseButton.LeftButton, pos=first)
    assert canvas._marks.spot is not None
    assert canvas._marks.spot.at == lines[0].at
    assert [name for name, _ in canvas._marks.chosen] == [lines[0].net]

    canvas.fit()
    who.click(page.paint_button)
    choose(who, page.only)
    path = planner.passes.plan.next.runs[0].path
    start, end = (tuple(map(float, path[k])) for k in (5, 25))
    drag(who, canvas, start, end)
    painted = painted_in(who.session.snapshot)
    assert painted is not None
    assert painted.only
    assert shapely.contains_xy(painted.area, *start)
    whole = planner.passes.plan.next.length
    who.wait(lambda: not who.app.bridge.busy and planner.passes.plan.next.length < whole)
    assert canvas.content.painted is not None
    runs = shapely.MultiLineString([run.path for run in planner.passes.plan.next.runs])
    assert runs.within(painted.area.buffer(0.11)), "nothing but what is painted is cut"

    who.click(page.clear_button)
    who.wait(lambda: canvas.content.painted is None and not who.app.bridge.busy)
    assert planner.passes.plan.next.length == whole
    who.click(page.net_again)
    who.wait(lambda: canvas.content.painted is not None)
    who.window.choose_step(7)
    assert not page.paint_button.isChecked(), "the brush is laid aside with the page"
