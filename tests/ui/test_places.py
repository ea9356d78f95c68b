"""What has a place on the board is a link; what has none says where it is in words."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton

from drypoint.board.model import Finding
from drypoint.ui.pages.design import BoardPage, BoardPageValues
from drypoint.ui.parts.blocks import Note
from drypoint.ui.theme.theme import Theme


def test_finding_with_a_place_is_a_link_and_one_without_is_not(light: Theme, qtbot) -> None:
    page = BoardPage(light)
    qtbot.addWidget(page)
    placed = Finding("short", "VCC and GND touch.", "", "Look at it.", at=(12.0, 14.5))
    unplaced = Finding("tie", "Two units in one file.", "lamp.drl, line 3", "Export it anew.")
    page.show_board(BoardPageValues(findings=(placed, unplaced)))
    page.show()
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
