"""Help beside the settings: opened by "?" and F1, closed by Esc, with sketches that differ."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from drypoint.session.help import HELP
from drypoint.ui.parts.explain import HelpCard, Sketch, explain
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.page import Page
from drypoint.ui.parts.sketches import SKETCHES
from drypoint.ui.theme.theme import Theme


@pytest.fixture
def page(light: Theme, qtbot) -> Page:
    """A window with room for a card beside one setting."""
    host = QWidget()
    host.resize(900, 600)
    made = Page(light, "Cuts")
    made.setFixedWidth(300)
    column = QVBoxLayout(host)
    column.addWidget(made)
    for key, name in (("cuts.bite", "Bite allowed"), ("cuts.tabs", "Tabs")):
        field = NumberField(name, "mm" if key == "cuts.bite" else "", decimals=2, least=0.0, most=40.0)
        explain(made.add(Setting(name, field)), key)
    qtbot.addWidget(host)
    host.show()
    qtbot.waitExposed(host)
    made.host = host  # type: ignore[attr-defined]
    return made


def cards(page: Page) -> list[HelpCard]:
    return [card for card in page.window().findChildren(HelpCard) if card.isVisible()]


def field_of(page: Page, number: int = 0) -> NumberField:
    return page.findChildren(NumberField)[number]


def test_f1_opens_the_card_beside_its_field_and_esc_gives_the_keys_back(page: Page, qtbot) -> None:
    line = field_of(page).line_edit()
    line.setFocus()
    qtbot.keyClick(line, Qt.Key.Key_F1)
    (card,) = cards(page)
    assert card.accessibleName() == "Bite allowed"
    assert HELP["cuts.bite"].wrong in card.accessibleDescription()
    assert card.findChild(Sketch) is not None
    assert card.x() >= page.x() + page.width() - 20  # hides no field of the page
    assert page.window().rect().contains(card.geometry())
    qtbot.keyClick(card, Qt.Key.Key_Escape)
    assert not cards(page)
    assert line.hasFocus()


def test_question_mark_is_named_and_reached_by_tab(page: Page, qtbot) -> None:
    mark = page.findChildren(QPushButton)
    mark = next(one for one in mark if one.accessibleName() == "Help: Tabs")
    line = field_of(page, 1).line_edit()
    line.setFocus()
    qtbot.keyClick(line, Qt.Key.Key_Tab)
    assert mark.hasFocus()
    qtbot.keyClick(mark, Qt.Key.Key_Space)
    (card,) = cards(page)
    assert card.accessibleName() == "Tabs"
    qtbot.keyClick(card, Qt.Key.Key_F1)
    assert not cards(page)
    qtbot.mouseClick(mark, Qt.MouseButton.LeftButton)
    assert len(cards(page)) == 1
    line.setFocus()  # as a click elsewhere
    assert not cards(page)


def test_numbers_with_and_without_a_unit_end_below_each_other(page: Page) -> None:
    ends = {
        field.line_edit().mapTo(page, field.line_edit().rect().topRight()).x()
        for field in page.findChildren(NumberField)
    }
    assert len(ends) == 1


def test_every_sketch_belongs_to_a_setting_and_is_its_own_picture(theme: Theme, qtbot) -> None:
    assert set(SKETCHES) <= set(HELP)
    pictures: dict[bytes, object] = {}
    for key, draw in SKETCHES.items():
        sketch = Sketch(theme, key)
        qtbot.addWidget(sketch)
        image = sketch.grab().toImage()
        assert image.size() == sketch.size() * image.devicePixelRatio()
        colours = {
            image.pixelColor(x, y).name() for x in range(0, image.width(), 2) for y in range(image.height())
        }
        assert QColor(theme.tokens.copper).name() in colours or key in ("cuts.tabs", "cuts.marks")
        assert pictures.setdefault(bytes(image.constBits()), draw) is draw
    assert len(pictures) >= 8
