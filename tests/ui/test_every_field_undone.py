"""Every field of the window that sets something: used as by hand, kept, taken back by the menu."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QCheckBox, QComboBox, QLineEdit, QWidget

from drypoint.session.settings import SECTIONS
from drypoint.ui.parts.explain import Explainer, HelpCard
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.segments import Segments
from drypoint.ui.parts.switch import Switch

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander

FEWEST = 60
"""Fields that must be found at least; a page that lost its fields would else pass unseen."""


def _fields(root: QWidget) -> list[tuple[str, QWidget]]:
    """Every field that has help, by its setting, where it can be used now."""
    found = []
    for one in root.findChildren(Explainer):
        row = one.row
        inner = [row] if isinstance(row, QCheckBox) else []
        for kind in (NumberField, QComboBox, Switch, Segments):
            inner += row.findChildren(kind)
        inner = inner or row.findChildren(QLineEdit)
        found += [(one.key, widget) for widget in inner if widget.isEnabled()]
    return found


def _use(who: Bystander, field: QWidget) -> None:
    """Another value, as by hand."""
    if isinstance(field, NumberField):
        line = field.line_edit()
        low = field.value
        who.qtbot.keyClick(line, Qt.Key.Key_Up)
        if field.value == low:
            who.qtbot.keyClick(line, Qt.Key.Key_Down)
    elif isinstance(field, QComboBox):
        field.setCurrentIndex((field.currentIndex() + 1) % field.count())
        field.activated.emit(field.currentIndex())
    elif isinstance(field, Segments):
        other = next(button for button in field.buttons() if not button.isChecked())
        other.click()
    elif isinstance(field, QAbstractButton):
        field.click()
    elif isinstance(field, QLineEdit):
        field.setText("1.1" if field.text()[:1].isdigit() else "another")
        field.setModified(True)
        field.editingFinished.emit()


def _undo_all(who: Bystander, root: QWidget) -> tuple[list[str], list[str]]:
    """Use and undo every field below a widget: their settings, and what is wrong with some."""
    session, editing, used, wrong = who.session, who.app.design.editing, [], []
    for key, field in _fields(root):
        before = session.settings
        _use(who, field)
        editing.settle()
        after = session.settings
        who.window.commands["undo"].trigger()
        used.append(key)
        if after == before or session.settings != before:
            wrong.append(f"{key} {'does nothing' if after == before else 'is not taken back'}")
    return used, wrong


def test_every_field_of_the_pages_is_undone_by_the_menu(who: Bystander) -> None:
    used: list[str] = []
    for number in range(7):
        who.window.choose_step(number)
        found, wrong = _undo_all(who, who.window.pages.currentWidget())
        assert not wrong
        used += found
    assert len(used) >= FEWEST
    assert {key.split(".")[0] for key in used} == set(SECTIONS) - {"laser", "machine"}
    who.rest()


def test_every_field_of_the_machine_is_undone_by_the_menu(who: Bystander) -> None:
    sheet = who.app.design.machine.open()
    assert sheet is not None
    who.rest()
    used, wrong = _undo_all(who, sheet)
    assert not wrong
    assert {"machine.travel", "machine.play", "machine.clearance", "machine.one_side"} <= set(used)
    sheet.close()
    who.rest()


def test_every_row_of_a_page_has_its_help(who: Bystander) -> None:
    for number in range(7):
        page = who.window.pages.widget(number)
        rows = [row for row in page.findChildren(Setting) if not row.findChildren(Explainer)]
        assert not [row.title for row in rows]


def test_help_opens_beside_a_box_and_stop_works_while_it_is_open(who: Bystander) -> None:
    window = who.window
    window.choose_step(0)
    box = who.app.design.pages.board.both
    (mark,) = (one for one in box.findChildren(QAbstractButton) if one.text() == "?")
    assert mark.accessibleName() == f"Help: {box.text()}"
    window.grab()
    assert box.rect().contains(mark.geometry())
    who.qtbot.mouseClick(mark, Qt.MouseButton.LeftButton)
    assert not box.isChecked()
    (card,) = (one for one in window.findChildren(HelpCard) if one.isVisible())
    window.activateWindow()
    who.wait(window.isActiveWindow)
    assert card.isVisible()
    with who.qtbot.waitSignal(window.strip.stop):
        who.qtbot.keyClick(card, Qt.Key.Key_Period, Qt.KeyboardModifier.ControlModifier)
    assert card.isVisible()
    with who.qtbot.waitSignal(window.strip.stop):
        who.qtbot.mouseClick(window.strip.stop_button, Qt.MouseButton.LeftButton)
