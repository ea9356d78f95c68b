"""Type: the system's font with tabular figures in a handful of sizes."""

from __future__ import annotations

from enum import Enum

from PySide6.QtGui import QFont, QGuiApplication


class Text(Enum):
    """Sizes in px at 100 % and weights."""

    CAPTION = (12, 400)
    LABEL = (13, 400)
    LABEL_BOLD = (13, 600)
    BODY = (14, 400)
    BODY_BOLD = (14, 600)
    SECTION = (16, 600)
    PAGE = (20, 600)
    SMALL_STATE = (20, 700)
    STATE = (24, 700)
    POSITION = (32, 600)
    FIGURE = (46, 600)


def font(text: Text) -> QFont:
    """The system's font in one of the sizes, figures of equal width."""
    made = QFont(QGuiApplication.font())
    size, weight = text.value
    made.setPixelSize(size)
    made.setWeight(QFont.Weight(weight))
    made.setFeature(QFont.Tag("tnum"), 1)
    return made
