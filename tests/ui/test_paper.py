"""The printed sheet: nothing is cut off at the edge of the paper."""

from __future__ import annotations

from PySide6.QtCore import QSizeF
from PySide6.QtGui import QImage, QTextBlock, QTextDocument
from pytestqt.qtbot import QtBot

from drypoint.session.sheet import SheetFacts, WorkStep
from drypoint.ui.design_side.paper import RESOLUTION, document

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
