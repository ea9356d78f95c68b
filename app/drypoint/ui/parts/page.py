"""A page: heading, scrolling middle, and the actions that always stay in sight."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QScrollArea, QVBoxLayout, QWidget

from drypoint.ui.language.words import fill, told
from drypoint.ui.parts.blocks import Note, Row, button, rule, words
from drypoint.ui.parts.tab_order import TabOrder
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme

MARGIN = 16


class Page(QWidget):
    """Heading and lead above, widgets in a scrolling middle, notes and buttons at the foot.

    Signals
    -------
    place_wanted(object) : the place of the error shown, (x, y) mm
    onward() : the button of `show_onward`
    """

    place_wanted = Signal(object)
    onward = Signal()

    def __init__(self, theme: Theme, title: str, lead: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.theme = theme
        theme.dress(self)
        give_look(self, "panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(title)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        head = QVBoxLayout()
        head.setContentsMargins(MARGIN, 16, MARGIN, 8)
        head.setSpacing(6)
        self.title = words(title, "page")
        self.lead = words(lead, "quiet", wrap=True)
        self.lead.setVisible(bool(lead))
        head.addWidget(self.title)
        head.addWidget(self.lead)
        outer.addLayout(head)
        inner = QWidget()
        give_look(inner, "panel")
        self._inside = QVBoxLayout(inner)
        self._inside.setContentsMargins(MARGIN, 4, MARGIN, 12)
        self._trouble = Note("error", "")
        self._trouble.hide()
        self._place: tuple[float, float] | None = None
        self._trouble.where_clicked.connect(lambda: self.place_wanted.emit(self._place))
        self._inside.addWidget(self._trouble)
        self.body = QVBoxLayout()
        self.body.setSpacing(8)
        self._inside.addLayout(self.body)
        self._inside.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setWidget(inner)
        outer.addWidget(scroll, 1)
        foot = QWidget()
        self.foot = QVBoxLayout(foot)
        self.foot.setContentsMargins(MARGIN, 8, MARGIN, 16)
        self.foot.setSpacing(8)
        outer.addWidget(foot)
        self.main_button: QPushButton | None = None
        """The filled button of the page's own work, if it has one; plain while another is filled."""
        self.onward_button = button("", "primary")
        self.onward_button.hide()
        self.onward_button.clicked.connect(self.onward)
        self.foot.addWidget(self.onward_button)
        self.tab_order = TabOrder(self, (inner, foot))

    def add(self, widget: QWidget) -> QWidget:
        """Append to the middle."""
        self.body.addWidget(widget)
        return widget

    def add_facts(self, names: Mapping[str, str]) -> dict[str, Row]:
        """A row for every fact, by its key: its name at the left, later its value at the right."""
        rows = {key: Row(self.theme, name) for key, name in names.items()}
        for row in rows.values():
            self.add(row)
        return rows

    def fill_height(self) -> None:
        """Let the middle take all the height: for pages with a list that scrolls itself."""
        self._inside.setStretch(1, 100)

    def section(self, title: str, right: str = "") -> None:
        """A rule and a heading with an optional word at the right."""
        if self.body.count():
            self.body.addWidget(rule())
        row = QHBoxLayout()
        row.addWidget(words(title, "value"))
        row.addStretch(1)
        if right:
            row.addWidget(words(right, "caption"))
        self.body.addLayout(row)

    def note(self, note: Note) -> Note:
        """Put a note above the buttons."""
        self.foot.addWidget(note)
        return note

    def show_trouble(self, what: str, text: str = "", at: tuple[float, float] | None = None) -> None:
        """An error in the page it belongs to; a place on the board is a link. Empty words hide it."""
        self._trouble.setVisible(bool(what))
        self._place = at
        if what:
            where = "" if at is None else fill(self.tr("at {x:.2f}, {y:.2f} mm"), x=at[0], y=at[1])
            self._trouble.say("error", what, text, where=where)

    def show_onward(self, text: str) -> None:
        """The way to the next step, as the page's one filled button; empty takes it away."""
        self.onward_button.setText(told(text))
        self.onward_button.setVisible(bool(text))
        if self.main_button is not None:
            give_look(self.main_button, "" if text else "primary")

    def add_actions(self, *buttons: QWidget) -> None:
        """Put buttons side by side at the foot."""
        row = QHBoxLayout()
        row.setSpacing(8)
        for each in buttons:
            row.addWidget(each, 1)
        self.foot.addLayout(row)
