"""One page of the wizard: a form under its heading, scrolling."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from drypoint.ui.parts.blocks import words
from drypoint.ui.theme.sheet import give_look


class Room(QWidget):
    """A page, empty until it is first seen: to dress all forms at once would keep the window waiting."""

    def __init__(self) -> None:
        super().__init__()
        self._inside = QVBoxLayout(self)
        self._inside.setContentsMargins(0, 0, 0, 0)

    def fill(self, title: str, lead: str, form: QWidget) -> None:
        """Put the form in, under its heading."""
        if self._inside.isEmpty():
            self._inside.addWidget(_framed(title, lead, form))


def _framed(title: str, lead: str, form: QWidget) -> QWidget:
    """A form under its heading, scrolling."""
    page = QWidget()
    give_look(page, "panel")
    page.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
    column = QVBoxLayout(page)
    column.setContentsMargins(28, 22, 4, 8)
    column.setSpacing(4)
    column.addWidget(words(title, "page"))
    column.addWidget(words(lead, "quiet", wrap=True))
    inner = QWidget()
    give_look(inner, "panel")
    inside = QVBoxLayout(inner)
    inside.setContentsMargins(0, 12, 24, 8)
    inside.addWidget(form)
    scroll = QScrollArea()
    scroll.setWidgetResizable(True)
    scroll.setFrameShape(QFrame.Shape.NoFrame)
    scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    scroll.setWidget(inner)
    column.addWidget(scroll, 1)
    return page
