"""Trial cuts on the canvas: where they will lie, dashed, and where they were cut."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from drypoint.ui.canvas.content import Trial
from drypoint.ui.canvas.strokes import pen, polygon
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.language.words import told
from drypoint.ui.theme.tokens import Tokens

ROUND = 0.4
"""mm between the ground of the lines and the frame around it."""


def paint_trials(painter: QPainter, tokens: Tokens, view: Viewport, trials: Sequence[Trial]) -> None:
    """Their lines and a frame round them; dashed as long as they were not begun."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for trial in trials:
        colour = tokens.ink2 if trial.begun else tokens.copper
        for line in trial.lines:
            for ink, width in ((tokens.panel, 3.4), (colour, 1.6)):
                painter.setPen(pen(ink, width))
                painter.drawPolyline(polygon(view.to_px(line)))
        frame = pen(colour, 1.4)
        if not trial.begun:
            frame.setDashPattern([5.0, 4.0])
        painter.setPen(frame)
        for x0, y0, x1, y1 in trial.extents:
            low, high = view.spot(x0 - ROUND, y0 - ROUND), view.spot(x1 + ROUND, y1 + ROUND)
            painter.drawRect(QRectF(QPointF(low[0], high[1]), QPointF(high[0], low[1])))


def trials_in_words(trials: Sequence[Trial]) -> str:
    """What of them is seen, for who does not see it; empty without any."""
    say = QCoreApplication.translate
    planned, cut = say("trials", "{name} as planned"), say("trials", "{name}, cut")
    names = [(cut if one.begun else planned).format(name=told(one.name)) for one in trials]
    return "; ".join(dict.fromkeys(names))
