"""What pages are made of: figures, rows, notes and the one filled button."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QLayout,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from drypoint.ui.language.words import told
from drypoint.ui.parts.glyph import Glyph, Mark
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme


def words(text: str, look: str, *, wrap: bool = False, right: bool = False) -> QLabel:
    """A label with one of the looks."""
    label = QLabel(told(text))
    give_look(label, look)
    label.setWordWrap(wrap)
    if right:
        label.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
    return label


class Elided(QLabel):
    """One line that ends in dots where it does not fit; the tooltip has it all."""

    def __init__(self, look: str) -> None:
        super().__init__()
        self._whole = ""
        give_look(self, look)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)

    def sizeHint(self) -> QSize:
        hint = super().sizeHint()
        hint.setWidth(self.fontMetrics().horizontalAdvance(self._whole) + 4)
        return hint

    def minimumSizeHint(self) -> QSize:
        return QSize(24, super().minimumSizeHint().height())

    def setText(self, text: str) -> None:
        text = told(text)
        self._whole = text
        self.setToolTip(text)
        self.setAccessibleName(text)
        self.updateGeometry()
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        room = max(self.width() - 2, 0)
        super().setText(self.fontMetrics().elidedText(self._whole, Qt.TextElideMode.ElideRight, room))


def rule() -> QFrame:
    """A thin line between sections."""
    line = QFrame()
    give_look(line, "rule")
    line.setFixedHeight(1)
    return line


def button(text: str, look: str = "") -> QPushButton:
    """A button; ``look`` "primary" is the one filled button of a page."""
    made = QPushButton(told(text))
    if look:
        give_look(made, look)
    made.setAutoDefault(False)
    return made


class Figure(QWidget):
    """The page's one big figure with the words that explain it."""

    def __init__(self, figure: str = "", text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(12)
        self._figure = words(figure, "figure")
        self._text = words(text, "quiet", wrap=True)
        row.addWidget(self._figure)
        row.addWidget(self._text, 1, Qt.AlignmentFlag.AlignVCenter)

    def show_figure(self, figure: str, text: str) -> None:
        """Another figure; a mere dash is no figure and leaves the words alone."""
        text = told(text)
        self._figure.setText(figure)
        self._figure.setVisible(figure != "–")
        self._text.setText(text)
        self.setAccessibleName(f"{figure} {text}")


class Row(QWidget):
    """Words at the left, a value at the right; a glyph before them if there is a state."""

    def __init__(
        self,
        theme: Theme,
        label: str,
        value: str = "",
        *,
        mark: Mark | None = None,
        strong: bool = False,
        detail: str = "",
        elide: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 3, 0, 3)
        column.setSpacing(2)
        row = QHBoxLayout()
        row.setSpacing(8)
        column.addLayout(row)
        self._glyph = Glyph(theme, mark or Mark.TO_DO)
        self._glyph.setVisible(mark is not None)
        look = "value" if strong else "label"
        self._label: QLabel = Elided(look) if elide else words(label, look)
        self._label.setText(told(label))
        self._value = words(value, "value", right=True)
        row.addWidget(self._glyph)
        row.addWidget(self._label, 1 if elide else 0)
        row.addStretch(0 if elide else 1)
        row.addWidget(self._value)
        self._detail = words(detail, "caption", wrap=True)
        self._detail.setVisible(bool(detail))
        self._detail.setContentsMargins(26 if mark else 0, 0, 0, 0)
        column.addWidget(self._detail)

    def show_value(self, value: str, label: str | None = None, mark: Mark | None = None) -> None:
        """Another value; words and state too where given."""
        self._value.setText(told(value))
        if label is not None:
            self._label.setText(told(label))
        if mark is not None:
            self._glyph.set_mark(mark)
            self._glyph.show()

    def show_detail(self, detail: str) -> None:
        """The small line below; empty hides it."""
        self._detail.setText(told(detail))
        self._detail.setVisible(bool(detail))


class Bar(QWidget):
    """A thin bar, filled up to a share."""

    def __init__(self, theme: Theme, share: float = 0.0, *, accent: bool = False, height: int = 6) -> None:
        super().__init__()
        self._theme, self._share, self._accent = theme, share, accent
        self.setFixedHeight(height)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.update)

    def show_share(self, share: float, *, accent: bool | None = None) -> None:
        """Fill another share (0..1)."""
        self._share = min(1.0, max(0.0, share))
        if accent is not None:
            self._accent = accent
        self.setAccessibleName(f"{100 * self._share:.0f} %")
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(120, self.height())

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        painter = QPainter(self)
        whole = QRectF(self.rect())
        painter.fillRect(whole, QColor(tokens.sunken))
        whole.setWidth(whole.width() * self._share)
        painter.fillRect(whole, QColor(tokens.copper if self._accent else tokens.pressed))
        painter.end()


class Note(QFrame):
    """Something to know, in its place: what (bold), where (a link that zooms), a hint (a button).

    Signals
    -------
    where_clicked(), hint_clicked()
    """

    where_clicked = Signal()
    hint_clicked = Signal()

    def __init__(
        self,
        kind: str,
        what: str,
        text: str = "",
        *,
        where: str = "",
        hint: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 10)
        column.setSpacing(4)
        self._what = words(what, "value", wrap=True)
        self._text = words(text, "label", wrap=True)
        self._where = button(where, "flat")
        self._hint = button(hint)
        column.addWidget(self._what)
        column.addWidget(self._text)
        column.addWidget(self._where, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self._hint, 0, Qt.AlignmentFlag.AlignLeft)
        self._where.clicked.connect(self.where_clicked)
        self._hint.clicked.connect(self.hint_clicked)
        self.say(kind, what, text, where=where, hint=hint)

    def say(self, kind: str, what: str, text: str = "", *, where: str = "", hint: str = "") -> None:
        """Another note; ``kind`` is "plain", "caution" or "error"."""
        give_look(self, f"note-{kind}")
        for widget, content in (
            (self._what, what),
            (self._text, text),
            (self._where, where),
            (self._hint, hint),
        ):
            widget.setText(told(content))
            widget.setVisible(bool(content))
        self.setAccessibleName(f"{told(what)} {told(text)}")


def empty(layout: QLayout) -> None:
    """Take everything out of a layout and let it go."""
    while layout.count():
        item = layout.takeAt(0)
        widget = item.widget() if item is not None else None
        if widget is not None:
            widget.hide()
            widget.deleteLater()


def tint(label: QLabel, colour: str) -> None:
    """Give a label's words one colour."""
    label.setStyleSheet(f"color: {colour};")
