"""The setup wizard: from files to values, by clicks."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from shapely import box

from drypoint.board.model import Board, Finding, LayerFile, Role, Side
from drypoint.ui.canvas.content import Clamp, draw_board
from drypoint.ui.forms.blank import BlankForm, gap
from drypoint.ui.forms.sketch import VBitSketch
from drypoint.ui.forms.values import BlankValues
from drypoint.ui.parts.fields import Choice
from drypoint.ui.theme.theme import Theme
from drypoint.ui.wizard.wizard import BoardFacts, SetupWizard


@pytest.fixture
def wizard(light: Theme, qtbot) -> SetupWizard:
    made = SetupWizard(light)
    qtbot.addWidget(made)
    made.show()
    return made


def answer(wizard: SetupWizard) -> None:
    """What the owner of the wizard does once the files are read."""
    wizard.show_files([LayerFile("a.gbr", Role.COPPER_BOTTOM, "says so itself")])
    board = Board("lamp", Side.BOTTOM, box(0, 0, 40, 30), {"A": box(5, 5, 10, 10)}, "touching")
    facts = BoardFacts("40 × 30 mm", "1", "touching", "no holes")
    wizard.show_board(draw_board(board), facts, [Finding("tie", "A and B touch", "x 1", at=(1.0, 2.0))])


def test_cannot_go_on_without_a_board(wizard: SetupWizard) -> None:
    assert not wizard.next_button.isEnabled()
    wizard.show_trouble("No outline was found", "Add the file with the board's edge.")
    assert not wizard.next_button.isEnabled()
    assert wizard.files.note.isVisible()
    answer(wizard)
    assert wizard.next_button.isEnabled()
    assert not wizard.files.note.isVisible()


def test_walk_by_clicks_gives_the_values(wizard: SetupWizard, qtbot) -> None:
    wizard.files_changed.connect(lambda _: answer(wizard))
    wizard.files.set_paths([Path("a.gbr")])
    for page in range(5):
        assert wizard.page == page
        qtbot.mouseClick(wizard.next_button, Qt.MouseButton.LeftButton)
        if page == 0:
            with qtbot.waitSignal(wizard.side_changed):
                wizard.side.sides.buttons()[0].click()
        if page == 1:
            qtbot.mouseClick(wizard.blank.add_clamp, Qt.MouseButton.LeftButton)
    with qtbot.waitSignal(wizard.accepted):
        qtbot.mouseClick(wizard.next_button, Qt.MouseButton.LeftButton)
    values = wizard.values
    assert values.name == "lamp"
    assert values.files == (Path("a.gbr"),)
    assert values.side is Side.TOP
    assert len(values.blank.clamps) == 1
    assert values.blank.board_x == pytest.approx((values.blank.width - 40) / 2)


def test_dragging_the_board_moves_it_on_the_blank(wizard: SetupWizard) -> None:
    answer(wizard)
    wizard.go(2)
    before = wizard.blank.values
    wizard.canvas.board_dragged.emit(3.0, -1.0)
    after = wizard.blank.values
    assert after.board_x == pytest.approx(before.board_x + 3.0)
    assert after.board_y == pytest.approx(before.board_y - 1.0)
    assert not after.centred
    blank = wizard.canvas.content.blank
    assert blank is not None
    assert blank[0] == pytest.approx(-after.board_x)


def test_finding_is_shown_on_the_board(wizard: SetupWizard) -> None:
    answer(wizard)
    wizard.go(1)
    wizard.side.finding_chosen.emit(Finding("tie", "touch", at=(7.0, 8.0)))
    x, y = wizard.canvas.seen.x, wizard.canvas.seen.y
    assert abs(x - 7.0) < 2
    assert abs(y - 8.0) < 2


def test_role_is_offered_for_every_file(wizard: SetupWizard, qtbot) -> None:
    answer(wizard)
    shown = [box for box in wizard.files.findChildren(Choice) if not box.isHidden()]
    assert len(shown) == 1
    with qtbot.waitSignal(wizard.role_changed) as caught:
        shown[0].activated.emit(shown[0].currentIndex())
    assert caught.args == ["a.gbr", Role.COPPER_BOTTOM]


def test_gap_of_boxes() -> None:
    assert gap((0, 0, 1, 1), (4, 5, 6, 7)) == pytest.approx(5.0)
    assert gap((0, 0, 2, 2), (1, 1, 3, 3)) == 0.0


@pytest.mark.parametrize("clamp", [(-8, 10, -1, 16), (41, 10, 48, 16), (10, -8, 16, -1), (10, 31, 16, 38)])
def test_clamp_too_near_is_said_and_mended(light: Theme, qtbot, clamp: tuple[float, ...]) -> None:
    moved = (clamp[0] + 30, clamp[1] + 25, clamp[2] + 30, clamp[3] + 25)
    values = BlankValues(100, 80, clamps=(Clamp(1, moved),), keep_away=2.0)
    form = BlankForm(light, values)
    qtbot.addWidget(form)
    form.show()
    form.set_board(40, 30)
    assert form.too_near() == (1, pytest.approx(1.0))
    assert form.note.isVisible()
    form.note._hint.click()
    assert form.too_near() is None
    assert not form.note.isVisible()


def test_blank_smaller_than_the_board_is_an_error(light: Theme, qtbot) -> None:
    form = BlankForm(light, BlankValues(30, 80))
    qtbot.addWidget(form)
    form.show()
    form.set_board(40, 30)
    assert form.note.isVisible()
    assert "smaller" in form.note.accessibleName()


def test_sketch_shows_the_width_of_the_groove(light: Theme, qtbot) -> None:
    sketch = VBitSketch(light)
    qtbot.addWidget(sketch)
    sketch.show_bit(0.1, 90.0)
    # a right-angled V is twice as wide as it is deep, plus its tip
    assert sketch.width_at_depth() == pytest.approx(0.1 + 2 * sketch.DEPTH)


def test_the_demo_board_is_offered_while_there_are_no_files(wizard: SetupWizard, qtbot) -> None:
    assert wizard.files.demo.isVisible()
    with qtbot.waitSignal(wizard.files_changed) as caught:
        qtbot.mouseClick(wizard.files.demo, Qt.MouseButton.LeftButton)
    assert [path.name for path in caught.args[0]] == ["hive-scale"]
    answer(wizard)
    assert not wizard.files.demo.isVisible()
