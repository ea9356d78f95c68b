"""The wide bit and clearing on the page of the cuts: set by hand, undone, compared before the choice."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from drypoint.session.clear_settings import ClearArea, Clearing, ClearSettings
from drypoint.ui.design_side.clearing import COMPARE, ClearingFields
from drypoint.ui.parts.fields import Choice

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander

CUTS = 3
PATIENCE = 60_000


def _fields(who: Bystander) -> ClearingFields:
    who.window.choose_step(CUTS)
    return who.app.design.clearing


def _pick(choice: Choice, index: int) -> None:
    choice.setCurrentIndex(index)
    choice.activated.emit(index)


def test_bit_kind_and_areas_are_set_and_undone(who: Bystander) -> None:
    fields, session = _fields(who), who.session
    assert fields.bit.currentText() == "none"
    assert not fields.areas.isEnabled()
    _pick(fields.bit, fields.bit.count() - 1)
    who.app.design.editing.settle()
    assert session.settings.clearing.bit is not None
    assert session.settings.clearing.bit.name == fields.bit.currentText()
    _pick(fields.what, fields.what.findData(Clearing.AREAS.value))
    who.app.design.editing.settle()
    who.qtbot.waitUntil(fields.areas.isEnabled, timeout=PATIENCE)
    fields.areas.setText("1 2 10 8; 20 2 3.5 4")
    fields.areas.editingFinished.emit()
    who.app.design.editing.settle()
    two = (ClearArea(1.0, 2.0, 10.0, 8.0), ClearArea(20.0, 2.0, 3.5, 4.0))
    assert session.settings.clearing.areas == two
    fields.areas.setText("1 2 -10 8")
    fields.areas.editingFinished.emit()
    assert session.settings.clearing.areas == two
    for _ in range(3):
        who.window.commands["undo"].trigger()
    assert session.settings.clearing == ClearSettings()


def test_what_a_second_bit_saves_is_told_before_it_is_chosen(who: Bystander) -> None:
    fields = _fields(who)
    with who.qtbot.waitSignal(
        who.app.bridge.ended, timeout=PATIENCE, check_params_cb=lambda name: name == COMPARE
    ):
        who.qtbot.mouseClick(fields.compare_button, Qt.MouseButton.LeftButton)
    rows = [fields.results.itemAt(n).widget() for n in range(fields.results.count())]
    said = [" ".join(label.text() for label in row.findChildren(QLabel)) for row in rows]
    assert len(said) == fields.bit.count() - 1
    for number, one in enumerate(said, start=1):
        assert fields.bit.itemText(number) in one
        assert "min" in one
    assert who.session.settings.clearing == ClearSettings()
