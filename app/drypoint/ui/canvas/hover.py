"""The hover card: up to five lines about the thing under the cursor, in the emptiest quarter."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter

from drypoint.ui.canvas.content import Content
from drypoint.ui.canvas.rulers import LEFT, LOW
from drypoint.ui.canvas.strokes import pen
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text, font

AWAY = 34.0
"""Distance of the card from its subject, px."""
ROW, PAD = 20.0, 10.0


@dataclass(frozen=True, slots=True)
class Card:
    """What a hover card says: a heading with a word of state, and up to four rows."""

    title: str
    state: str = ""
    rows: tuple[tuple[str, str], ...] = ()


def quarter(view: Viewport, content: Content, at: tuple[float, float], width: float, height: float) -> QRectF:
    """Where a card goes: beside its subject, in the quarter that hides least.

    Of the four places round the subject those that leave the canvas lose most, then those that
    cover copper, clamps or reference holes.
    """
    x, y = view.spot(*at)
    best, least = QRectF(), float("inf")
    for right in (True, False):
        for above in (True, False):
            left = x + AWAY if right else x - AWAY - width
            top = y - AWAY - height if above else y + AWAY
            place = QRectF(left, top, width, height)
            cost = _outside(place, view) * 1e3 + _hidden(place, view, content)
            if cost < least:
                best, least = place, cost
    best.moveLeft(max(min(max(best.left(), LEFT + 4), view.width - width - 4), 2.0))
    best.moveTop(min(max(best.top(), 4), max(view.height - LOW - height - 4, 4)))
    return best


def _outside(place: QRectF, view: Viewport) -> float:
    seen = place.intersected(QRectF(LEFT, 0, view.width - LEFT, view.height - LOW))
    return place.width() * place.height() - max(seen.width(), 0.0) * max(seen.height(), 0.0)


def _hidden(place: QRectF, view: Viewport, content: Content) -> float:
    boxes = [(clamp.box, 0.6) for clamp in content.clamps]
    boxes += [((h.at[0], h.at[1], h.at[0], h.at[1]), 1.0) for h in content.references]
    if content.board is not None:
        boxes += [
            (net.bounds, min(1.0, net.area / max(_area(net.bounds), 1e-9))) for net in content.board.nets
        ]
    cost = 0.0
    for (x0, y0, x1, y1), weight in boxes:
        (left, top), (right, bottom) = view.spot(x0, y1), view.spot(x1, y0)
        under = place.intersected(QRectF(left - 8, top - 8, right - left + 16, bottom - top + 16))
        cost += weight * max(under.width(), 0.0) * max(under.height(), 0.0)
    return cost


def _area(box: tuple[float, float, float, float]) -> float:
    return (box[2] - box[0]) * (box[3] - box[1])


def paint_card(
    painter: QPainter, view: Viewport, content: Content, tokens: Tokens, at: tuple[float, float], card: Card
) -> None:
    """Paint a card for the thing at ``at`` (mm) with a thin line to it."""
    bold, plain = font(Text.LABEL_BOLD), font(Text.LABEL)
    wide, slim = QFontMetricsF(bold), QFontMetricsF(plain)
    widths = [wide.horizontalAdvance(card.title) + slim.horizontalAdvance(card.state)]
    widths += [slim.horizontalAdvance(a) + wide.horizontalAdvance(b) for a, b in card.rows[:4]]
    width = max(widths) + 24.0 + 2 * PAD
    height = ROW * (1 + len(card.rows[:4])) + 2 * PAD - 4
    place = quarter(view, content, at, width, height)
    subject = QPointF(*view.spot(*at))
    corner = QPointF(
        min(max(subject.x(), place.left()), place.right()), min(max(subject.y(), place.top()), place.bottom())
    )
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(pen(tokens.edge, 1.2))
    painter.drawLine(subject, corner)
    painter.setBrush(QColor(tokens.panel))
    painter.drawRoundedRect(place, 5, 5)
    left, right = Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignRight
    line = QRectF(place.left() + PAD, place.top() + PAD - 2, width - 2 * PAD, ROW)
    rows = [(card.title, card.state, bold, plain), *((a, b, plain, bold) for a, b in card.rows[:4])]
    for number, (a, b, first, second) in enumerate(rows):
        painter.setFont(first)
        painter.setPen(QColor(tokens.ink if number == 0 else tokens.ink2))
        painter.drawText(line, left | Qt.AlignmentFlag.AlignVCenter, a)
        painter.setFont(second)
        painter.setPen(QColor(tokens.ink))
        painter.drawText(line, right | Qt.AlignmentFlag.AlignVCenter, b)
        line.translate(0, ROW)
