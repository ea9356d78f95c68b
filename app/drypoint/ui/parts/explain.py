"""Help where it is needed: a "?" at the end of a setting's row, or F1, opens a card beside it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QSize, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QCheckBox, QComboBox, QFrame, QLineEdit, QVBoxLayout, QWidget

from drypoint.session.help import HELP, Help
from drypoint.ui.language.words import told
from drypoint.ui.parts.blocks import button, words
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.pencil import HIGH, WIDE, Pencil
from drypoint.ui.parts.sketches import SKETCHES
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme

MARK = 24
"""Side of the "?", px."""
APART = 8
"""Between field and card, and card and the window's edge, px."""


class Sketch(QWidget):
    """A sketch of a setting in the theme's colours."""

    def __init__(self, theme: Theme, key: str) -> None:
        super().__init__()
        self._theme, self.key = theme, key
        self.setFixedSize(self.sizeHint())
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(int(WIDE), int(HIGH))

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        SKETCHES[self.key](Pencil(painter, self._theme.tokens))
        painter.end()


class HelpCard(QFrame):
    """What a setting is, what is usual and what goes wrong; Esc, F1 or a click elsewhere closes it."""

    def __init__(self, window: QWidget, title: str, key: str, theme: Theme | None) -> None:
        super().__init__(window)
        found = HELP[key]
        give_look(self, "card")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._back: QWidget | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 12, 14, 14)
        column.setSpacing(8)
        column.addWidget(words(title, "section", wrap=True))
        if theme is not None and key in SKETCHES:
            column.addWidget(Sketch(theme, key))
        column.addWidget(words(found.does, "label", wrap=True))
        if found.usual:
            column.addWidget(words(found.usual, "value", wrap=True))
        column.addWidget(words(found.wrong, "quiet", wrap=True))
        self.setFixedWidth(int(WIDE) + 30)
        self.setAccessibleName(title)
        self.setAccessibleDescription(told(found.text))

    def open_beside(self, row: QWidget, back: QWidget | None) -> None:
        """Show the card right of a row, or below it where there is no room; ``back`` gets the keys again."""
        self._back = back
        window = self.parentWidget()
        assert window is not None
        high = self.heightForWidth(self.width())
        self.resize(self.width(), high)
        corner = row.mapTo(window, QPoint(row.width() + 2 * APART, -APART))
        if corner.x() + self.width() + APART > window.width():
            corner = row.mapTo(window, QPoint(0, row.height() + APART))
            if corner.y() + high + APART > window.height():
                corner.setY(row.mapTo(window, QPoint(0, 0)).y() - high - APART)
        x = max(APART, min(corner.x(), window.width() - self.width() - APART))
        y = max(APART, min(corner.y(), window.height() - high - APART))
        self.move(x, y)
        self.show()
        self.raise_()
        self.setFocus(Qt.FocusReason.PopupFocusReason)

    def event(self, event: QEvent) -> bool:
        """Takes F1 and Esc before the menus and the dialog do."""
        if event.type() == QEvent.Type.ShortcutOverride and _closes(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if _closes(event):
            back = self._back
            self.close()
            if back is not None:
                back.setFocus(Qt.FocusReason.PopupFocusReason)
            return
        super().keyPressEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.ActiveWindowFocusReason:
            self.close()


class Explainer(QObject):
    """Opens the card of one setting: by its "?" and by F1 in any of its fields."""

    def __init__(self, row: QWidget, key: str) -> None:
        super().__init__(row)
        self.row, self.key = row, key
        self._title = _title(row)
        self._corner: QWidget | None = None
        if isinstance(row, (Setting, QCheckBox)):
            self._add_mark(row)
        for widget in (row, *row.findChildren(QWidget)):
            if isinstance(widget, (QLineEdit, QComboBox, QAbstractButton)):
                widget.installEventFilter(self)

    def open(self, back: QWidget | None) -> HelpCard:
        """Show the card."""
        card = HelpCard(self.row.window(), self._title, self.key, _theme(self.row))
        card.open_beside(self.row, back)
        return card

    def _add_mark(self, row: Setting | QCheckBox) -> None:
        mark = button("?", "help")
        mark.setFixedSize(MARK, MARK)
        mark.setAccessibleName(self.tr("Help: {setting}").format(setting=self._title))
        mark.clicked.connect(lambda: self.open(mark))
        if isinstance(row, Setting):
            row.end_with(mark)
            return
        self._corner = mark  # a box with its words has no row: the mark sits at its right end
        mark.setParent(row)
        row.setMinimumSize(row.minimumSizeHint().width() + MARK, MARK)
        QWidget.setTabOrder(row, mark)
        self._place_mark()

    def _place_mark(self) -> None:
        if self._corner is not None:
            self._corner.move(self.row.width() - MARK, (self.row.height() - MARK) // 2)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self.row and event.type() == QEvent.Type.Resize:
            self._place_mark()
        if isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_F1 and not event.isAutoRepeat():
            if event.type() == QEvent.Type.ShortcutOverride:
                event.accept()
                return True
            if event.type() == QEvent.Type.KeyPress and isinstance(watched, QWidget):
                self.open(watched)
                return True
        return super().eventFilter(watched, event)


def explain(row: QWidget, key: str) -> None:
    """Give a setting its help: a tooltip, words for a screen reader, "?" and F1."""
    found: Help | None = HELP.get(key)
    if found is None:
        return
    row.setToolTip(told(found.text))
    fields = (row, *row.findChildren(QWidget))
    for field in fields:
        if isinstance(field, (QLineEdit, QComboBox, QAbstractButton)):
            field.setAccessibleDescription(told(found.does))
    for field in fields:
        if isinstance(field, NumberField):
            field.set_help(told(found.does))
    Explainer(row, key)


def _closes(event: QEvent) -> bool:
    return isinstance(event, QKeyEvent) and event.key() in (Qt.Key.Key_Escape, Qt.Key.Key_F1)


def _title(row: QWidget) -> str:
    if isinstance(row, Setting):
        return row.title
    return row.text() if isinstance(row, QAbstractButton) else row.accessibleName()


def _theme(widget: QWidget) -> Theme | None:
    """The theme of the page or window a widget stands in."""
    at: QWidget | None = widget
    while at is not None:
        theme = getattr(at, "theme", None)
        if isinstance(theme, Theme):
            return theme
        at = at.parentWidget()
    return None
