"""Clamps by keys alone: added, chosen, placed, sized, moved and removed."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt

from drypoint.ui.forms.blank import BlankForm
from drypoint.ui.forms.clamps import ClampRow
from drypoint.ui.forms.values import BlankValues
from drypoint.ui.theme.theme import Theme


@pytest.fixture
def form(light: Theme, qtbot) -> BlankForm:
    made = BlankForm(light, BlankValues(width=100.0, height=80.0))
    qtbot.addWidget(made)
    made.show()
    qtbot.waitExposed(made)
    return made


def rows(form: BlankForm) -> list[ClampRow]:
    return [row for row in form.findChildren(ClampRow) if not row.isHidden()]


def type_in(field, text: str, qtbot) -> None:
    line = field.line_edit()
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)


def test_clamp_is_added_placed_and_sized_by_keys(form: BlankForm, qtbot) -> None:
    heard: list[BlankValues] = []
    form.edited.connect(heard.append)
    assert not form.clamp_fields.isVisible()
    form.add_clamp.setFocus()
    qtbot.keyClick(form.add_clamp, Qt.Key.Key_Space)
    assert form.clamp_fields.isVisible()
    fields = form.clamp_fields
    for field, text in ((fields.left, "-3"), (fields.low, "12.5"), (fields.wide, "20"), (fields.high, "6")):
        type_in(field, text, qtbot)
    (clamp,) = form.values.clamps
    assert clamp.box == pytest.approx((-3.0, 12.5, 17.0, 18.5))
    assert len(heard) == 5  # one action for each
    qtbot.keyClick(fields.low.line_edit(), Qt.Key.Key_Up)
    assert form.values.clamps[0].box == pytest.approx((-3.0, 12.6, 17.0, 18.6))


def test_list_is_walked_and_shortened_by_keys(form: BlankForm, qtbot) -> None:
    for _ in range(3):
        qtbot.keyClick(form.add_clamp, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: len(rows(form)) == 3)
    first = rows(form)[0]
    first.setFocus()
    qtbot.keyClick(first, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: len(rows(form)) == 3)
    assert rows(form)[0].hasFocus()
    box = form.values.clamps[0].box
    assert form.clamp_fields.left.value == pytest.approx(box[0])
    qtbot.keyClick(rows(form)[0], Qt.Key.Key_Down)
    qtbot.waitUntil(lambda: len(rows(form)) == 3)
    assert rows(form)[1].hasFocus()
    assert form.clamp_fields.left.value == pytest.approx(form.values.clamps[1].box[0])
    assert rows(form)[1].accessibleName().startswith("Clamp 2, right edge")
    qtbot.keyClick(rows(form)[1], Qt.Key.Key_Delete)
    assert [clamp.number for clamp in form.values.clamps] == [1, 3]
    assert form.add_clamp.hasFocus()
    assert not form.remove_clamp.isEnabled()
