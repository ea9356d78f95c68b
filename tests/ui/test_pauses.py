"""Pauses chosen at the scrubber, on the canvas and on the run page, and a run that keeps to them."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtWidgets import QApplication, QPushButton

from drypoint.bench.bench import Bench
from drypoint.machine.operator import RequestKind
from drypoint.session.pauses import pauses_in
from drypoint.ui.canvas.content import View

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander, measure_flat


@pytest.fixture
def job(job: Path) -> Path:
    """The small board with its copper measured."""
    measure_flat(job)
    return job


@pytest.fixture
def touched(who: Bystander) -> Bystander:
    """Marks made, copper touched: the first pass comes next."""
    who.connect()
    who.place()
    who.window.choose_step(7)
    who.rest()
    return who


def buttons(who: Bystander, text: str) -> list[QPushButton]:
    page = who.side.running.page
    return [one for one in page.findChildren(QPushButton) if one.text() == text and one.isVisibleTo(page)]


def test_pauses_are_chosen_seen_kept_and_kept_to(touched: Bystander, bench: Bench) -> None:
    who = touched
    panel = who.window.canvas
    panel.set_view(View.PASSES)
    paths = panel.canvas.moving()
    assert paths is not None
    assert len(paths.offsets) == 3, "two pieces"

    panel.step(1)  # the second piece, at the scrubber
    who.click(panel.scrubber.pause_button)
    (pause,) = pauses_in(who.session.snapshot)
    who.wait(lambda: [one.at for one in panel.canvas.content.pauses] == [pause.at])
    assert panel.scrubber._track._marks
    who.wait(lambda: len(buttons(who, "Remove")) == 1)

    who.click(buttons(who, "Remove")[0])
    who.wait(lambda: pauses_in(who.session.snapshot) == ())
    who.wait(lambda: panel.canvas.content.pauses == ())

    place = paths.place_at(paths.starts_at(1) + 1.0)  # on the canvas, by its menu
    x, y = panel.canvas.seen.spot(*place)
    at = QPoint(round(x), round(y))
    QApplication.sendEvent(
        panel.canvas, QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, panel.canvas.mapToGlobal(at))
    )
    menu = who.side.pausing.menu
    assert menu is not None
    assert [one.text() for one in menu.actions()] == ["Pause before this piece"]
    menu.actions()[0].trigger()
    menu.close()
    assert [one.piece for one in pauses_in(who.session.snapshot)] == [2]

    page = who.side.running.page
    page.piece.set_value(1.0)  # and on the page
    who.click(page.pause_button)
    who.wait(lambda: len(buttons(who, "Remove")) == 2)

    bar = who.desk.bar
    bar.automatic.setChecked(False)
    who.click(page.start_button)
    seen = []
    while len(seen) < 2:
        who.wait(lambda: bar.asked is not None and bar.done_button.isEnabled())
        assert bar.asked is not None
        if bar.asked.request.title == "Pause":
            assert bar.asked.request.kind is RequestKind.CONFIRM
            assert not bench.body.turning
            assert bench.tip()[2] > 0.5, "the bit stands clear"
            seen.append(who.desk.state.work)
        number = bar.asked.number
        who.click(bar.done_button)
        who.wait(lambda number=number: bar.asked is None or bar.asked.number != number)
    who.rest()
    assert who.side.running.following is not None
    assert not any(one.program.pass_number == 1 and not one.done for one in who.side.running.work.items)
    assert panel.canvas.content.pauses == (), "what is cut needs no pause any more"
