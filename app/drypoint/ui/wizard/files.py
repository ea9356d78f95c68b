"""First pages of the wizard: files, side and outline; and the last: summary."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from drypoint.board.model import Finding, LayerFile, Side
from drypoint.session.commands import EXAMPLE
from drypoint.ui.forms.file_line import FileLine
from drypoint.ui.parts.blocks import Note, Row, button, empty, rule, words
from drypoint.ui.parts.fields import Setting
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.theme import Theme


class FilesForm(QWidget):
    """Which files, and what each is to the board.

    Signals
    -------
    files_changed(list) : paths
    role_changed(str, object) : file name, `Role`
    """

    files_changed = Signal(list)
    role_changed = Signal(str, object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._paths: list[Path] = []
        self.setAcceptDrops(True)
        self.add_files = button(self.tr("Add files…"))
        self.add_folder = button(self.tr("Add folder…"))
        self.clear = button(self.tr("Start over"))
        self._list = QVBoxLayout()
        self._list.setSpacing(4)
        self._empty = words(
            self.tr("No files yet. Drop Gerber and drill files here, or a zip."), "body", wrap=True
        )
        self.demo = button(self.tr("Try the demo board"))
        self.demo.clicked.connect(lambda: self.set_paths([EXAMPLE]))
        self.note = Note("error", "")
        self.note.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        row = QHBoxLayout()
        for each in (self.add_files, self.add_folder, self.clear):
            row.addWidget(each)
        row.addStretch(1)
        column.addLayout(row)
        column.addWidget(self._empty)
        column.addWidget(self.demo, 0, Qt.AlignmentFlag.AlignLeft)
        column.addLayout(self._list)
        column.addWidget(self.note)
        column.addStretch(1)
        self.add_files.clicked.connect(self._ask_files)
        self.add_folder.clicked.connect(self._ask_folder)
        self.clear.clicked.connect(lambda: self.set_paths([]))

    @property
    def paths(self) -> tuple[Path, ...]:
        """Files and folders named."""
        return tuple(self._paths)

    def set_paths(self, paths: Sequence[Path]) -> None:
        """Other files."""
        self._paths = list(dict.fromkeys(paths))
        if not self._paths:
            self.show_files(())
        self.files_changed.emit(list(self._paths))

    def show_files(self, files: Sequence[LayerFile]) -> None:
        """What each file was taken for, and why."""
        empty(self._list)
        self._empty.setVisible(not files)
        self.demo.setVisible(not files)
        for file in files:
            line = FileLine(file, "value")
            line.role_changed.connect(self.role_changed)
            self._list.addWidget(line)

    def show_trouble(self, what: str, text: str = "", hint: str = "") -> None:
        """An error about the files; empty hides it."""
        self.note.setVisible(bool(what))
        self.note.say("error", what, text or hint)

    def _ask_files(self) -> None:
        names, _ = QFileDialog.getOpenFileNames(self, self.tr("Design files"))
        if names:
            self.set_paths([*self._paths, *(Path(name) for name in names)])

    def _ask_folder(self) -> None:
        name = QFileDialog.getExistingDirectory(self, self.tr("Folder of design files"))
        if name:
            self.set_paths([*self._paths, Path(name)])

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        dropped = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
        self.set_paths([*self._paths, *dropped])
        event.acceptProposedAction()


class SideForm(QWidget):
    """Which side is milled, the job's name, and what was found about the outline.

    Signals
    -------
    side_changed(object) : `Side`
    name_changed(str)
    finding_chosen(object) : `Finding`, to be shown on the board
    """

    side_changed = Signal(object)
    name_changed = Signal(str)
    finding_chosen = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.sides = Segments([self.tr("Top"), self.tr("Bottom")], self.tr("Side"), chosen=1)
        self.name = QLineEdit()
        self.name.setAccessibleName(self.tr("Name of the job"))
        self.name.setFixedWidth(200)
        self._facts = {
            key: Row(theme, label)
            for key, label in (
                ("size", self.tr("Outline")),
                ("nets", self.tr("Nets")),
                ("source", self.tr("Nets are known from")),
                ("holes", self.tr("Holes and slots")),
            )
        }
        self._notes = QVBoxLayout()
        self._notes.setSpacing(8)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(Setting(self.tr("Name of the job"), self.name))
        column.addWidget(Setting(self.tr("Side being milled"), self.sides))
        column.addWidget(words(self.tr("The board is shown as seen from that side."), "caption", wrap=True))
        column.addWidget(rule())
        for row in self._facts.values():
            column.addWidget(row)
        column.addLayout(self._notes)
        column.addStretch(1)
        self.sides.chosen.connect(lambda number: self.side_changed.emit(list(Side)[number]))
        self.name.editingFinished.connect(lambda: self.name_changed.emit(self.name.text()))

    def show_facts(self, size: str, nets: str, source: str, holes: str) -> None:
        """What was found."""
        for key, value in (("size", size), ("nets", nets), ("source", source), ("holes", holes)):
            self._facts[key].show_value(value)

    def show_findings(self, findings: Sequence[Finding]) -> None:
        """What needs to be known about the input."""
        empty(self._notes)
        for finding in findings[:6]:
            note = Note("caution", finding.what, finding.hint, where=finding.where if finding.at else "")
            note.where_clicked.connect(lambda f=finding: self.finding_chosen.emit(f))
            self._notes.addWidget(note)


class SummaryForm(QWidget):
    """All that was set, in a few rows."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._rows = QVBoxLayout()
        self._rows.setSpacing(2)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._rows)
        column.addStretch(1)

    def show_rows(self, rows: Sequence[tuple[str, str, str, bool]]) -> None:
        """Each: what, value, a small line, and whether it is in order."""
        empty(self._rows)
        for what, value, detail, good in rows:
            self._rows.addWidget(
                Row(
                    self._theme,
                    what,
                    value,
                    mark=Mark.DONE if good else Mark.DOUBT,
                    strong=True,
                    detail=detail,
                )
            )
