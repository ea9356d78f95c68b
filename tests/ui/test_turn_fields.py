"""How the second side is found, on the page of the board: chosen by hand, undone, its worth told before."""

from __future__ import annotations

import sys
from pathlib import Path

from drypoint.session.turn_settings import ToolingUse, TurnSettings

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander

PATIENCE = 60_000


def test_tooling_holes_are_chosen_and_their_worth_is_told(who: Bystander) -> None:
    design, session = who.app.design, who.session
    who.window.choose_step(0)
    fields = design.turning
    assert not fields.tooling.isVisible()
    design.pages.board.both.click()
    design.editing.settle()
    who.qtbot.waitUntil(lambda: fields.told.isVisible() and "0." in fields.told.text(), timeout=PATIENCE)
    expected = session.derived.foreseen(session.snapshot).tooling
    assert "fewer than two holes" in fields.told.text()
    assert f"{expected:.2f} mm off" in fields.told.text()
    assert len(session.derived.cuts(session.snapshot).tooling) == 3
    fields.tooling.setCurrentIndex(fields.tooling.findData(ToolingUse.NEVER.value))
    fields.tooling.activated.emit(fields.tooling.currentIndex())
    design.editing.settle()
    assert session.settings.turn.tooling is ToolingUse.NEVER
    assert session.derived.cuts(session.snapshot).tooling == ()
    who.qtbot.waitUntil(lambda: not fields.count.isEnabled(), timeout=PATIENCE)
    who.window.commands["undo"].trigger()
    assert session.settings.turn == TurnSettings()
    fields.count.edited.emit(4.0)
    fields.drill.setCurrentIndex(fields.drill.findData("Drill 1.2 mm"))
    fields.drill.activated.emit(fields.drill.currentIndex())
    design.editing.settle()
    holes = session.derived.cuts(session.snapshot).tooling
    assert [hole.bit.name for hole in holes] == ["Drill 1.2 mm"] * 4
    for _ in range(2):
        who.window.commands["undo"].trigger()
    assert session.settings.turn == TurnSettings()
