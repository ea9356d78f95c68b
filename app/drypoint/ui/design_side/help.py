"""Help: cautions, keys, about; and the report of a fault of the program."""

from __future__ import annotations

from PySide6.QtCore import QObject, QSize, Qt
from PySide6.QtGui import QGuiApplication, QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QGridLayout,
    QHBoxLayout,
    QPlainTextEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from drypoint import __version__
from drypoint.session.sheet import CAUTIONS
from drypoint.ui.bridge import Bridge
from drypoint.ui.menus import keep_run_keys
from drypoint.ui.parts.blocks import Note, button, words
from drypoint.ui.theme.icons import app_icon
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.window import MainWindow
from drypoint.wording import as_text


class Sheet(QDialog):
    """A plain dialog: heading, content, buttons."""

    def __init__(self, window: MainWindow, title: str, content: QWidget, *, width: int = 560) -> None:
        super().__init__(window)
        self.setWindowTitle(title)
        give_look(self, "panel")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 20, 24, 16)
        column.setSpacing(12)
        column.addWidget(words(title, "page"))
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        give_look(content, "panel")
        scroll.setWidget(content)
        column.addWidget(scroll, 1)
        self._row = QHBoxLayout()
        self._row.addStretch(1)
        self.close_button = button(self.tr("Close"), "primary")
        self.close_button.clicked.connect(self.accept)
        self._row.addWidget(self.close_button)
        column.addLayout(self._row)
        high = min(700, content.sizeHint().height() + 150)
        self.resize(QSize(width, high))
        keep_run_keys(self, window.commands)

    def add_button(self, made: QWidget) -> None:
        """Another button, left of Close."""
        self._row.insertWidget(1, made)


class Help(QObject):
    """The Help menu, and the report of faults."""

    def __init__(self, window: MainWindow, bridge: Bridge) -> None:
        super().__init__(window)
        self._window = window
        commands = window.commands
        commands["cautions"].triggered.connect(self.show_cautions)
        commands["keys"].triggered.connect(self.show_keys)
        commands["about"].triggered.connect(self.show_about)
        bridge.bug.connect(self.show_report)

    def show_cautions(self) -> Sheet:
        """What to mind before anything turns."""
        content, column = _column()
        for text in CAUTIONS:
            column.addWidget(Note("caution", as_text(text)))
        column.addStretch(1)
        return self._open(Sheet(self._window, self.tr("Before anything turns"), content))

    def show_keys(self) -> Sheet:
        """Every key, by what it does."""
        content = QWidget()
        grid = QGridLayout(content)
        grid.setContentsMargins(0, 0, 8, 0)
        grid.setHorizontalSpacing(24)
        grid.setColumnStretch(1, 1)
        for row, (keys, what) in enumerate((*self._menu_keys(), *self._other_keys())):
            grid.addWidget(words(keys, "value"), row, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(words(what, "body", wrap=True), row, 1)
        grid.setRowStretch(grid.rowCount(), 1)
        return self._open(Sheet(self._window, self.tr("Keys"), content))

    def _menu_keys(self) -> list[tuple[str, str]]:
        found = []
        for name in self._window.commands.names():
            action = self._window.commands[name]
            shown = [key.toString(QKeySequence.SequenceFormat.NativeText) for key in action.shortcuts()]
            if shown:
                text = action.text().replace("&", "").rstrip("…")
                found.append((self.tr(" or ").join(shown), text.split(":")[0]))
        return found

    def _other_keys(self) -> tuple[tuple[str, str], ...]:
        return (
            (self.tr("F1"), self.tr("In a setting: its help; F1 or Esc closes it")),
            (self.tr(", and ."), self.tr("The order of cutting, a loop back or on; with Shift ten")),
            (self.tr("Space and drag"), self.tr("Move the picture; the wheel zooms at the cursor")),
            (self.tr("Enter"), self.tr("Zoom to what is chosen")),
            (self.tr("C, arrow keys"), self.tr("On the Blank page: choose a clamp, move it by 0.1 mm")),
            (
                self.tr("Arrow keys, Page Up, Page Down"),
                self.tr("Jog, once the keys are armed; 1 to 4 choose the step, Esc disarms"),
            ),
        )

    def show_about(self) -> Sheet:
        """Name, version, and what the program is no substitute for."""
        content, column = _column()
        column.addWidget(words(self.tr("Version {version}").format(version=__version__), "value"))
        for text in (
            self.tr(
                "Drypoint is named after the engraver's technique of scratching a picture into a copper "
                "plate with a hard point: dry, no acid."
            ),
            self.tr(
                "It measures the copper, predicts where a groove is through, cuts only what still needs "
                "cutting, finds the board again from its own holes, and proves the result by touch."
            ),
            self.tr(
                "Free under the MIT licence, without warranty. The manual of the machine's maker, local "
                "rules and qualified practice come first."
            ),
        ):
            column.addWidget(words(text, "body", wrap=True))
        column.addStretch(1)
        sheet = Sheet(self._window, self.tr("Drypoint"), content, width=480)
        sheet.setWindowIcon(app_icon())
        return self._open(sheet)

    def show_report(self, _name: str, text: str) -> Sheet:
        """A fault of the program: what can be copied and sent."""
        content, column = _column()
        column.addWidget(
            Note(
                "error",
                self.tr("Drypoint made a mistake"),
                self.tr(
                    "The machine was told to hold, and a copy of the job was kept. Everything stored so far "
                    "is intact. Please report the text below."
                ),
            )
        )
        box = QPlainTextEdit(f"Drypoint {__version__}\n{text}")
        box.setReadOnly(True)
        box.setMinimumHeight(280)
        box.setAccessibleName(self.tr("Report"))
        column.addWidget(box, 1)
        sheet = Sheet(self._window, self.tr("Report of a fault"), content, width=760)
        copy = button(self.tr("Copy the text"))
        copy.clicked.connect(lambda: QGuiApplication.clipboard().setText(box.toPlainText()))
        sheet.add_button(copy)
        return self._open(sheet)

    def _open(self, sheet: Sheet) -> Sheet:
        sheet.open()
        return sheet


def _column() -> tuple[QWidget, QVBoxLayout]:
    content = QWidget()
    column = QVBoxLayout(content)
    column.setContentsMargins(0, 0, 8, 0)
    column.setSpacing(10)
    return content, column
