"""What has a place on the board is a link; what has none says where it is in words."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton

from drypoint.board.model import Finding
from drypoint.cuts.model import Narrow
from drypoint.errors import PlanError
from drypoint.ui.design_side.pages import CHANGE_FILES
from drypoint.ui.design_side.words import trouble_of
from drypoint.ui.pages.design import BoardPage, BoardPageValues, CutsPage, CutsPageValues
from drypoint.ui.parts.blocks import Note
from drypoint.ui.theme.theme import Theme

sys.path.insert(0, str(Path(__file__).parent))
from bystander import COPPER, OUTLINE, Bystander


def test_finding_with_a_place_is_a_link_and_one_without_is_not(light: Theme, qtbot) -> None:
    page = BoardPage(light)
    qtbot.addWidget(page)
    placed = Finding("short", "VCC and GND touch.", "", "Look at it.", at=(12.0, 14.5))
    unplaced = Finding("tie", "Two units in one file.", "lamp.drl, line 3", "Export it anew.")
    page.show_board(BoardPageValues(findings=(placed, unplaced)))
    page.resize(320, 700)
    page.show()
    qtbot.waitExposed(page)
    first, second = (
        note
        for note in page.findChildren(Note)
        if "touch" in note.accessibleName() or "units" in note.accessibleName()
    )
    heard: list[Finding] = []
    page.finding_chosen.connect(heard.append)
    (link,) = (one for one in first.findChildren(QPushButton) if not one.isHidden())
    assert "12.00, 14.50" in link.text()
    link.setFocus()
    qtbot.keyClick(link, Qt.Key.Key_Space)
    qtbot.mouseClick(link, Qt.MouseButton.LeftButton)
    assert heard == [placed, placed]
    assert all(one.isHidden() for one in second.findChildren(QPushButton))
    assert any("lamp.drl, line 3" in label.text() for label in second.findChildren(QLabel))


def test_many_places_are_a_list_that_holds_all_of_them(light: Theme, qtbot) -> None:
    page = CutsPage(light)
    qtbot.addWidget(page)
    narrow = tuple(
        Narrow((f"A{n}", f"B{n}"), (1.0 * n, 2.0), 0.1, 0.0, 0.5, False, "Finer bit.") for n in range(40)
    )
    last = Finding("clearance", "Net C is too close.", "", "Move it.", at=(77.0, 3.0))
    page.show_cuts(CutsPageValues(loops=40, impossible=narrow, findings=(last,)))
    page.resize(320, 900)
    page.show()
    qtbot.waitExposed(page)
    places = page.places
    assert places.list.model().rowCount() == 41
    (note,) = (one for one in page.findChildren(Note) if one.isVisible())
    assert "A0" in note.accessibleName(), "the first is told in full"
    heard: list[object] = []
    page.place_chosen.connect(heard.append)
    places.list.setFocus()
    qtbot.keyClick(places.list, Qt.Key.Key_End)
    assert heard == [], "the canvas stays until one is asked for"
    (note,) = (one for one in page.findChildren(Note) if one.isVisible())
    assert "Net C" in note.accessibleName()
    qtbot.keyClick(places.list, Qt.Key.Key_Return)
    assert heard == [(77.0, 3.0)]
    row = places.list.visualRect(places.list.model().index(38, 0))
    qtbot.mouseClick(places.list.viewport(), Qt.MouseButton.LeftButton, pos=row.center())
    assert heard[1:] == [(38.0, 2.0)]
    page.show_cuts(CutsPageValues(loops=40, impossible=narrow[:2]))
    assert places.list.isHidden()
    qtbot.waitUntil(lambda: sum(one.isVisible() for one in page.findChildren(Note)) == 2)
    shown = [one.accessibleName() for one in page.findChildren(Note) if one.isVisible()]
    assert "A1" in shown[1]


def test_an_error_with_a_place_is_a_link_on_its_page(light: Theme, qtbot) -> None:
    page = BoardPage(light)
    qtbot.addWidget(page)
    page.show()
    error = PlanError("The cut meets a clamp.", "x 3.0 y 4.5", "Move it.", at=(3.0, 4.5))
    page.show_trouble(*trouble_of(error))
    (note,) = (one for one in page.findChildren(Note) if one.isVisible())
    (link,) = (one for one in note.findChildren(QPushButton) if not one.isHidden())
    assert "3.00, 4.50" in link.text()
    assert "x 3.0" not in note.accessibleName()
    with qtbot.waitSignal(page.place_wanted) as heard:
        qtbot.mouseClick(link, Qt.MouseButton.LeftButton)
    assert heard.args == [(3.0, 4.5)]
    page.show_trouble(*trouble_of(PlanError("No board.", "Board", "Choose files.")))
    assert link.isHidden()
    assert "Board. Choose files" in note.accessibleName()
    page.show_trouble(*trouble_of(None))
    assert not note.isVisible()


def test_the_place_of_an_error_is_shown_on_the_canvas(who: Bystander) -> None:
    (x, y), canvas = (5.0, 6.0), who.window.canvas.canvas
    who.window.choose_step(3)
    who.app.design.pages.cuts.show_trouble("The cut meets a clamp.", "", (x, y))
    before = canvas.seen.scale
    (note,) = (one for one in who.app.design.pages.cuts.findChildren(Note) if "clamp" in one.accessibleName())
    note.where_clicked.emit()
    assert (canvas.seen.x, canvas.seen.y) == pytest.approx((x, y), abs=3.0)
    assert canvas.seen.scale > before


def test_a_damaged_file_leads_to_the_place_where_it_breaks_off(who: Bystander, tmp_path: Path) -> None:
    (tmp_path / "outline.gbr").write_text(OUTLINE)
    (tmp_path / "top.gbr").write_text(COPPER.replace("%TO.N,B*%", "D99*"))
    who.window.choose_step(0)
    session, board = who.session, who.app.design.pages.board
    who.app.bridge.ask(CHANGE_FILES, lambda progress: session.import_files([tmp_path], progress=progress))
    who.rest()
    (note,) = (one for one in board.findChildren(Note) if "D99" in one.accessibleName())
    assert "top.gbr, line 14" in note.accessibleName()
    note.where_clicked.emit()
    seen = who.window.canvas.canvas.seen
    assert (seen.x, seen.y) == pytest.approx((3.0, 9.0), abs=0.5)  # the last pad before it
