"""The main window: its arrangement at every size, its commands, its pages."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QAbstractButton, QComboBox, QDialog, QLineEdit, QPushButton, QWidget

from drypoint.ui.app import free_name
from drypoint.ui.canvas.legend import LegendStrip, Sample
from drypoint.ui.forms.values import BitValues, BlankValues
from drypoint.ui.menus import keep_run_keys
from drypoint.ui.pages.design import BitsPage, BlankPage, BoardPage, CutsPage
from drypoint.ui.pages.measure import SurfacePage
from drypoint.ui.pages.passes import PassesPage
from drypoint.ui.pages.proof import IslandLine, ProofPage
from drypoint.ui.pages.reference import ReferencePage
from drypoint.ui.pages.run import RunPage, Task
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.run_strip import RunState
from drypoint.ui.theme.theme import Theme
from drypoint.ui.window import MainWindow


def pages(theme: Theme) -> list[QWidget]:
    return [
        BoardPage(theme),
        BlankPage(theme, BlankValues()),
        BitsPage(theme, BitValues()),
        CutsPage(theme),
        SurfacePage(theme),
        PassesPage(theme),
        ReferencePage(theme),
        RunPage(theme),
        ProofPage(theme),
    ]


@pytest.fixture
def window(light: Theme, qtbot) -> MainWindow:
    made = MainWindow(light)
    qtbot.addWidget(made)
    for number, page in enumerate(pages(light)):
        made.set_page(number, page, wide=number == 8)
    made.resize(1600, 1000)
    made.show()
    made.choose_step(5)
    return made


@pytest.mark.parametrize(
    ("width", "height"), [(1024, 700), (1180, 760), (1280, 800), (1360, 900), (1600, 1000), (1920, 1080)]
)
@pytest.mark.parametrize("step", [5, 8])
def test_nothing_leaves_the_window_at_any_size(
    window: MainWindow, qtbot, width: int, height: int, step: int
) -> None:
    window.resize(width, height)
    window.choose_step(step)
    window.grab()
    assert window.size().width() == width
    assert window.size().height() == height
    for each in (window.strip.hold_button, window.strip.resume_button, window.strip.stop_button):
        corner = each.mapTo(window, each.rect().bottomRight())
        assert each.isVisible()
        assert corner.x() < width
        assert corner.y() < height
    qtbot.waitUntil(lambda: window.canvas.width() >= 400)
    right = window.pages.mapTo(window, QPoint(window.pages.width(), 0)).x()
    covered = max(0, right - window.canvas.mapTo(window, QPoint(0, 0)).x())  # in small windows
    qtbot.waitUntil(lambda: window.canvas.canvas.mapTo(window.canvas, QPoint(0, 0)).x() == covered)
    assert window.canvas.canvas.width() == window.canvas.width() - covered
    bar = (window.canvas.views, window.canvas.view_button, window.canvas.show_button)
    qtbot.waitUntil(lambda: all(b.width() >= b.sizeHint().width() for b in bar if b.isVisible()))
    assert window.canvas.views.isVisible() != window.canvas.view_button.isVisible()


def test_views_are_a_menu_where_there_is_no_room_for_four_buttons(window: MainWindow) -> None:
    window.resize(1024, 700)
    window.choose_step(4)
    panel = window.canvas
    assert panel.view_button.isVisible()
    panel.view_button.menu().actions()[3].trigger()
    assert panel.canvas.view.value == "order"
    assert panel.view_button.text() == panel.views.buttons()[3].text()
    window.show_page(False)
    assert panel.views.isVisible()
    assert panel.views.choice == 3


def test_the_state_fits_its_place_in_any_state(window: MainWindow) -> None:
    for width in (1024, 1600):
        window.resize(width, 700)
        for state in RunState:
            window.strip.show_state(state, "")
            window.grab()
            word = window.strip._word
            assert word.width() >= word.sizeHint().width(), (width, state)


def test_the_legend_takes_as_many_rows_as_it_needs(light: Theme, qtbot) -> None:
    strip = LegendStrip(light)
    qtbot.addWidget(strip)
    strip.show_samples("Passes", [(Sample.CUT, "cut in this pass"), (Sample.AHEAD, "still to cut")])
    strip.resize(900, 30)
    strip.show()
    low = strip.height()
    strip.resize(200, 30)
    qtbot.waitUntil(lambda: strip.width() == 200)
    assert strip.height() > low
    assert all(cell.geometry().right() <= 200 for cell in strip._cells)


def test_areas_hide_as_the_window_shrinks(window: MainWindow) -> None:
    assert window.heat.isVisible()
    assert window.jog.isVisible()
    window.resize(1280, 800)
    assert window.heat.isVisible() != window.jog.isVisible()
    window._areas.buttons()[1].click()
    assert window.jog.isVisible()
    assert not window.heat.isVisible()
    window.resize(1024, 700)
    assert window.pages.mapTo(window, QPoint()) == window.canvas.mapTo(window, QPoint())  # over it
    window.commands["page"].trigger()
    assert not window.pages.isVisible()
    window.commands["step3"].trigger()
    assert window.pages.isVisible()
    window.resize(1600, 1000)
    assert (
        window.pages.mapTo(window, QPoint(window.pages.width(), 0)).x()
        < window.canvas.mapTo(window, QPoint()).x()
    )
    assert window.heat.isVisible()
    assert window.jog.isVisible()


def test_steps_views_and_stop_by_keyboard(window: MainWindow, qtbot) -> None:
    window.activateWindow()
    window.canvas.canvas.setFocus()
    qtbot.waitUntil(window.canvas.canvas.hasFocus)
    qtbot.keyClick(window, Qt.Key.Key_9, Qt.KeyboardModifier.ControlModifier)
    assert window.pages.currentIndex() == 8
    qtbot.keyClick(window.canvas.canvas, Qt.Key.Key_R)
    assert window.canvas.canvas.view.value == "reach"
    with qtbot.waitSignal(window.strip.stop):
        qtbot.keyClick(window, Qt.Key.Key_Period, Qt.KeyboardModifier.ControlModifier)
    with qtbot.waitSignal(window.strip.hold):
        qtbot.keyClick(window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)


def test_fields_swallow_letters(window: MainWindow, qtbot) -> None:
    window.choose_step(5)
    line = window.pages.currentWidget().findChild(QLineEdit)
    window.activateWindow()
    line.setFocus()
    qtbot.waitUntil(line.hasFocus)
    before = window.canvas.canvas.view
    qtbot.keyClick(line, Qt.Key.Key_O)
    assert window.canvas.canvas.view is before


def test_stop_reaches_out_of_a_modal_dialog(window: MainWindow, qtbot) -> None:
    dialog = QDialog(window)
    dialog.setModal(True)
    keep_run_keys(dialog, window.commands)
    dialog.show()
    qtbot.waitExposed(dialog)
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    with qtbot.waitSignal(window.strip.stop):
        qtbot.keyClick(dialog, Qt.Key.Key_Period, Qt.KeyboardModifier.ControlModifier)
    dialog.close()


def test_one_filled_button_on_every_page(window: MainWindow) -> None:
    for step in range(9):
        window.choose_step(step)
        window.grab()
        filled = [
            b
            for b in window.pages.currentWidget().findChildren(QPushButton)
            if b.property("look") == "primary" and b.isVisible()
        ]
        assert len(filled) <= 1, step


def usable(window: MainWindow) -> list[QWidget]:
    kinds = QAbstractButton | QLineEdit | QComboBox
    found = [w for w in window.findChildren(QWidget) if isinstance(w, kinds) and not w.isHidden()]
    return [w for w in found if not w.objectName().startswith("qt_")]


def test_everything_that_can_be_used_has_a_name(window: MainWindow) -> None:
    for widget in usable(window):
        text = widget.text() if isinstance(widget, QAbstractButton) else ""
        assert widget.accessibleName() or text, widget


def test_targets_are_large_enough(window: MainWindow) -> None:
    # WCAG 2.2, success criterion 2.5.8: 24 by 24 px at least
    for step in range(9):
        window.choose_step(step)
        window.grab()
        for widget in window.findChildren(QAbstractButton):
            if widget.isVisible() and not widget.objectName().startswith("qt_"):
                assert min(widget.width(), widget.height()) >= 24, (widget, widget.size())


def test_cursor_is_shared_both_ways(window: MainWindow) -> None:
    window.heat.cursor_moved.emit((3.0, 4.0))
    assert window.canvas.canvas._marks.cursor == (3.0, 4.0)
    window.canvas.canvas.cursor_moved.emit((5.0, 6.0))


def test_scheme_changes_while_open(window: MainWindow, qtbot) -> None:
    qtbot.waitUntil(lambda: window.theme.wardrobe.is_done)
    light = window.grab().toImage()
    window.commands["dark"].trigger()
    qtbot.waitUntil(lambda: window.theme.wardrobe.is_done)
    dark = window.grab().toImage()
    assert dark.pixelColor(700, 300).lightness() < 60 < light.pixelColor(700, 300).lightness()


def test_dropped_files_are_handed_on_and_closing_can_be_refused(window: MainWindow, qtbot) -> None:
    window.closing.connect(window.refuse_closing)
    assert not window.close()
    assert window.isVisible()
    window.closing.disconnect(window.refuse_closing)
    assert window.close()


def test_start_waits_for_every_caution(light: Theme, qtbot) -> None:
    page = RunPage(light)
    qtbot.addWidget(page)
    page.show()
    page.show_run("Pass 1", "6:10", "", (), (Task("Pass 1", Mark.READY, "6:10"),), ready=True)
    page.show_cautions(("Eye protection on", "Clip off"))
    assert not page.start_button.isEnabled()
    page._boxes[0].click()
    assert not page.start_button.isEnabled()
    page._boxes[1].click()
    with qtbot.waitSignal(page.start):
        page.start_button.click()


def test_request_is_answered_by_its_own_button(light: Theme, qtbot) -> None:
    page = RunPage(light)
    qtbot.addWidget(page)
    page.show()
    page.ask("clip off", "Take the clip off", "The spindle starts next.", "The clip is off")
    with qtbot.waitSignal(page.answered) as caught:
        page._note._hint.click()
    assert caught.args == ["clip off"]


def test_proof_list_filters_and_tells_the_canvas(light: Theme, qtbot) -> None:
    page = ProofPage(light)
    qtbot.addWidget(page)
    page.resize(430, 800)
    page.show()
    lines = (
        IslandLine(("A",), Mark.DONE, "proved", touched=True),
        IslandLine(("B", "C"), Mark.ERROR, "joined", "23 % likely", (1.0, 2.0), True),
        IslandLine(("D",), Mark.DOUBT, "unproved"),
    )
    page.show_islands("1", "of 3", lines)
    assert page.model.rowCount() == 3
    chosen: list[object] = []
    page.line_chosen.connect(chosen.append)
    page.choose_net("C")
    assert chosen[-1] is lines[1]
    assert page._cut.isVisible()
    with qtbot.waitSignal(page.cut_again) as caught:
        page._cut.click()
    assert caught.args == [lines[1]]
    page.filters.buttons()[2].click()
    assert page.model.rowCount() == 1
    assert not page._cut.isVisible()
    assert not page.grab().isNull()


def test_needs_you_is_said_in_words(window: MainWindow) -> None:
    window.strip.show_state(RunState.NEEDS_YOU, "waiting")
    assert window.strip.accessibleDescription() == "Needs you waiting"


def test_arrangement_is_remembered(window: MainWindow, light: Theme, qtbot) -> None:
    window.resize(1500, 950)
    window._body.setSizes([340, 600, 400])
    kept = window.arrangement()
    other = MainWindow(light)
    qtbot.addWidget(other)
    other.show()
    other.restore_arrangement(kept)
    assert other.arrangement() == kept


def test_recent_jobs_are_listed(window: MainWindow) -> None:
    window.show_recent(["a.drypoint", "b.drypoint"])
    assert [action.data() for action in window.commands.recent.actions()] == ["a.drypoint", "b.drypoint"]
    window.show_recent([])
    assert not window.commands.recent.isEnabled()


def test_the_demo_is_never_written_over_an_earlier_one(tmp_path: Path) -> None:
    first = free_name(tmp_path)
    first.write_bytes(b"somebody's work")
    second = free_name(tmp_path)
    second.touch()
    assert len({first, second, free_name(tmp_path)}) == 3
    assert first.read_bytes() == b"somebody's work"


def test_a_narrow_window_gives_the_canvas_the_room_beside_pages_of_the_design(light: Theme, qtbot) -> None:
    window = MainWindow(light)
    qtbot.addWidget(window)
    window.resize(1024, 700)
    window.show()
    for step, beside in ((0, False), (3, False), (4, True), (5, False), (6, True), (7, True)):
        window.choose_step(step)
        assert window._right.isVisible() is beside, step
        if not beside:
            assert window.canvas.width() - window.pages.width() > 420
    window.choose_step(0)
    window.commands["surface"].trigger()
    assert window.heat.isVisible()
    window.choose_step(1)
    assert not window._right.isVisible()
