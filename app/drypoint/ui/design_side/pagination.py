"""Where a document is cut into pages: never within a row of a table, a picture or a line of words.

Qt's own pages cut a row of a table wherever the paper ends. Here the document is laid out on one endless
page and cut afterwards; a table that goes on says its head again.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QRectF
from PySide6.QtGui import (
    QAbstractTextDocumentLayout,
    QPagedPaintDevice,
    QPainter,
    QTextBlock,
    QTextDocument,
    QTextFormat,
    QTextFrame,
    QTextTable,
)


@dataclass(frozen=True, slots=True)
class Piece:
    """What stays together, from ``top`` to ``bottom``; ``head`` is said again above it on a new page.

    ``fresh``: it begins a page; ``leads``: a heading, which stays with what follows.
    """

    top: float
    bottom: float
    head: tuple[float, float] | None = None
    fresh: bool = False
    leads: bool = False


@dataclass(frozen=True, slots=True)
class Sheet:
    """A page: the stretch of the document on it, below the head of a table that goes on, if one does."""

    top: float
    bottom: float
    head: tuple[float, float] | None = None


def sheets(document: QTextDocument, height: float) -> list[Sheet]:
    """The pages of a document laid out without pages, each at most ``height`` high.

    What is higher than a page by itself is cut at its end.
    """
    pieces = sorted(_pieces(document.rootFrame(), document), key=lambda piece: piece.top)
    found: list[Sheet] = []
    first = 0
    while first < len(pieces):
        head = pieces[first].head if found else None
        room = height - (head[1] - head[0] if head else 0.0)
        last = first
        while last + 1 < len(pieces) and not pieces[last + 1].fresh:
            if pieces[last + 1].bottom - pieces[first].top > room:
                break
            last += 1
        if last + 1 < len(pieces):  # a heading goes with what it is of
            while last > first and pieces[last].leads:
                last -= 1
        found.append(Sheet(pieces[first].top, pieces[last].bottom, head))
        first = last + 1
    return found


def print_sheets(document: QTextDocument, device: QPagedPaintDevice) -> None:
    """Draw all pages; the document must be laid out for the device and as wide as it."""
    painter = QPainter(device)
    for number, sheet in enumerate(sheets(document, float(device.height()))):
        if number:
            device.newPage()
        below = 0.0
        for stretch in (sheet.head, (sheet.top, sheet.bottom)):
            if stretch is not None:
                _draw(document, painter, stretch, below)
                below += stretch[1] - stretch[0]
    painter.end()


def _draw(document: QTextDocument, painter: QPainter, stretch: tuple[float, float], below: float) -> None:
    top, bottom = stretch
    clip = QRectF(0.0, top, document.size().width(), bottom - top)
    painter.save()
    painter.translate(0.0, below - top)
    painter.setClipRect(clip)
    context = QAbstractTextDocumentLayout.PaintContext()
    context.clip = clip
    document.documentLayout().draw(painter, context)
    painter.restore()


def _pieces(frame: QTextFrame, document: QTextDocument) -> Iterator[Piece]:
    """Rows, pictures and lines of words of a frame and what is in it."""
    layout = document.documentLayout()
    inner = frame.begin()
    while not inner.atEnd():
        child = inner.currentFrame()
        if isinstance(child, QTextTable):
            yield from _rows(child, layout)
        elif inner.currentBlock().isValid():
            yield from _lines(inner.currentBlock(), layout)
        else:
            yield from _pieces(child, document)
        inner += 1


def _lines(block: QTextBlock, layout: QAbstractTextDocumentLayout) -> Iterator[Piece]:
    box = layout.blockBoundingRect(block)
    form = block.blockFormat()
    fresh = bool(form.pageBreakPolicy() & QTextFormat.PageBreakFlag.PageBreak_AlwaysBefore)
    if form.headingLevel() or fresh or "\ufffc" in block.text():
        yield Piece(box.top(), box.bottom(), fresh=fresh, leads=bool(form.headingLevel()))
        return
    lines = block.layout()
    for number in range(lines.lineCount()):
        line = lines.lineAt(number).rect().translated(box.topLeft())
        yield Piece(line.top(), line.bottom())


def _rows(table: QTextTable, layout: QAbstractTextDocumentLayout) -> Iterator[Piece]:
    """A row each; those after the head know where it is."""
    boxes = [_row(table, row, layout) for row in range(table.rows())]
    around = layout.frameBoundingRect(table)
    edges = [
        around.top(),
        *((a[1] + b[0]) / 2 for a, b in pairwise(boxes)),
        around.bottom(),
    ]
    heads = table.format().headerRowCount()
    head = (edges[0], edges[heads]) if 0 < heads < len(boxes) else None
    for row in range(len(boxes)):
        in_head = row < heads
        yield Piece(edges[row], edges[row + 1], None if in_head else head, leads=in_head)


def _row(table: QTextTable, row: int, layout: QAbstractTextDocumentLayout) -> tuple[float, float]:
    tops, bottoms = [], []
    for column in range(table.columns()):
        cell = table.cellAt(row, column)
        block, last = cell.firstCursorPosition().block(), cell.lastCursorPosition().block()
        tops.append(layout.blockBoundingRect(block).top())
        bottoms.append(layout.blockBoundingRect(last).bottom())
    return min(tops), max(bottoms)
