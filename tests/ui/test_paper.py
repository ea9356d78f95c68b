"""The printed sheet: nothing is cut off at the edge of the paper."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QImage, QTextBlock, QTextDocument, QTextTable
from pytestqt.qtbot import QtBot

from drypoint.session.sheet import SheetFacts, WorkStep
from drypoint.ui.design_side.pagination import sheets
from drypoint.ui.design_side.paper import RESOLUTION, document, write_paper

WIDTH, HEIGHT = round(182 / 25.4 * RESOLUTION), round(269 / 25.4 * RESOLUTION)
"""A4 (ISO 216: 210 × 297 mm) less margins of 14 mm."""


def _picture(width: int, height: int) -> str:
    return f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}"></svg>'


def _laid_out(*pictures: tuple[str, str]) -> QTextDocument:
    paper = QImage(8, 8, QImage.Format.Format_RGB32)
    paper.setDotsPerMeterX(round(RESOLUTION / 0.0254))
    paper.setDotsPerMeterY(round(RESOLUTION / 0.0254))
    step = WorkStep("Bored holes: End mill 2.0 mm", "End mill 2.0 mm", "10000", "180", "0:52", "37-bored")
    made = document(SheetFacts("Sheet", "now", (("Board", "x" * 20),), (step,) * 3, pictures=pictures), paper)
    made.setPageSize(QSizeF(WIDTH, HEIGHT))
    return made


def _blocks(made: QTextDocument) -> list[QTextBlock]:
    found, block = [], made.begin()
    while block.isValid():
        found.append(block)
        block = block.next()
    return found


def test_pictures_end_within_the_paper_and_two_share_a_page(qtbot: QtBot) -> None:
    wide, tall = ("wide", _picture(900, 300)), ("tall", _picture(300, 900))
    made = _laid_out(wide, tall, wide)
    lay = made.documentLayout()
    assert made.size().width() <= WIDTH
    for block in _blocks(made):
        box = lay.blockBoundingRect(block)
        lines = [block.layout().lineAt(n) for n in range(block.layout().lineCount())]
        assert all(box.left() + line.naturalTextWidth() <= WIDTH for line in lines)
    assert made.pageCount() == 3, "one of words, two of pictures"


def _long(rows: int) -> QTextDocument:
    paper = QImage(8, 8, QImage.Format.Format_RGB32)
    paper.setDotsPerMeterX(round(RESOLUTION / 0.0254))
    paper.setDotsPerMeterY(round(RESOLUTION / 0.0254))
    step = WorkStep(
        "Holes", "Drill 0.8 mm", "10000", "150", "0:52", "a note that stands on a line of its own"
    )
    pictures = (("wide", _picture(900, 300)), ("tall", _picture(300, 900)))
    made = document(SheetFacts("Sheet", "now", (("Board", "x"),), (step,) * rows, pictures=pictures), paper)
    made.setTextWidth(WIDTH)
    return made


def _cells(made: QTextDocument) -> list[tuple[float, float]]:
    """From the first line to the last of every cell."""
    lay, found = made.documentLayout(), []
    for frame in made.rootFrame().childFrames():
        for row in range(frame.rows() if isinstance(frame, QTextTable) else 0):
            for column in range(frame.columns()):
                cell = frame.cellAt(row, column)
                first = lay.blockBoundingRect(cell.firstCursorPosition().block())
                last = lay.blockBoundingRect(cell.lastCursorPosition().block())
                found.append((first.top(), last.bottom()))
    return found


@pytest.mark.parametrize("rows", [5, 24, 25, 26, 27, 90])
def test_no_row_is_cut_by_the_end_of_a_page_and_nothing_is_lost(rows: int, qtbot: QtBot) -> None:
    made = _long(rows)
    pages = sheets(made, HEIGHT)
    for page in pages:
        head = 0.0 if page.head is None else page.head[1] - page.head[0]
        assert page.bottom - page.top + head <= HEIGHT
    for top, bottom in _cells(made):
        on = [page for page in pages if page.top - 0.5 <= top and bottom <= page.bottom + 0.5]
        assert len(on) == 1
    for above, below in pairwise(pages):
        assert above.bottom <= below.top


def test_a_table_that_goes_on_says_its_head_again(qtbot: QtBot) -> None:
    made = _long(90)
    first, second, *_ = sheets(made, HEIGHT)
    assert first.head is None
    assert second.head is not None
    heads = [cell for cell in _cells(made) if second.head[0] <= cell[0] and cell[1] <= second.head[1]]
    assert heads


def test_pictures_begin_a_page_and_headings_stay_with_what_they_are_of(qtbot: QtBot) -> None:
    made = _long(24)
    lay, pages = made.documentLayout(), sheets(made, HEIGHT)
    for block in _blocks(made):
        box = lay.blockBoundingRect(block)
        page = next((page for page in pages if page.top - 0.5 <= box.top() <= page.bottom), None)
        if block.blockFormat().headingLevel() and page is not None:
            assert page is pages[-1] or box.bottom() < page.bottom - 1.0
    picture = next(block for block in _blocks(made) if "\ufffc" in block.text())
    assert any(page.top == lay.blockBoundingRect(picture).top() for page in pages)


def test_a_short_sheet_is_one_page_and_a_long_one_more(qtbot: QtBot, tmp_path: Path) -> None:
    step = WorkStep("Holes", "Drill 0.8 mm", "10000", "150", "0:52", "note")
    for rows in (3, 60):
        write_paper(SheetFacts("Sheet", "now", (("Board", "x"),), (step,) * rows), tmp_path / "a.pdf")
        count = (tmp_path / "a.pdf").read_bytes().count(b"/Type /Page\n")
        assert count == 1 if rows == 3 else count > 1
