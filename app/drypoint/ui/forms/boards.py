"""The list of boards on the blank, each with its place and turn."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.ui.language.words import fill
from drypoint.ui.parts.blocks import Elided, button, empty, words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import NumberField, Setting


@dataclass(frozen=True, slots=True)
class BoardLine:
    """One board: what it is called, its size (mm) and place (mm, degrees)."""

    name: str
    width: float
    height: float
    x: float
    y: float
    turn: float


class BoardsForm(QWidget):
    """Every board on the blank.

    Signals
    -------
    moved(int, float, float, float) : number from 0, x, y and turn as they were typed
    copied(int), removed(int) : number from 0
    add_folder(), add_zip() : another design is wanted
    """

    moved = Signal(int, float, float, float)
    copied = Signal(int)
    removed = Signal(int)
    add_folder = Signal()
    add_zip = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shown: tuple[BoardLine, ...] = ()
        self._fields: list[dict[str, NumberField]] = []
        self._rows = QVBoxLayout()
        self._rows.setSpacing(8)
        self.folder_button = button(self.tr("Add folder…"))
        self.zip_button = button(self.tr("Add zip…"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(self._rows)
        row = QHBoxLayout()
        row.addWidget(self.folder_button)
        row.addWidget(self.zip_button)
        row.addStretch(1)
        column.addLayout(row)
        self.folder_button.clicked.connect(self.add_folder)
        self.zip_button.clicked.connect(self.add_zip)

    def show_boards(self, boards: Sequence[BoardLine]) -> None:
        """Fill the list; no signal."""
        if tuple(boards) == self._shown:
            return
        self._shown = tuple(boards)
        empty(self._rows)
        self._fields = []
        for number, board in enumerate(boards):
            self._rows.addWidget(self._row(number, board, alone=len(boards) == 1))
        self.folder_button.setEnabled(bool(boards))
        self.zip_button.setEnabled(bool(boards))

    def field(self, number: int, name: str) -> NumberField:
        """A field of a board: "x", "y" or "turn"."""
        return self._fields[number][name]

    def _row(self, number: int, board: BoardLine, *, alone: bool) -> QWidget:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 4)
        column.setSpacing(4)
        head = QHBoxLayout()
        name = Elided("label")
        name.setText(f"{number + 1}  {board.name}")
        head.addWidget(name, 1)
        size = "{width:.4g} × {height:.4g} mm"
        head.addWidget(words(fill(size, width=board.width, height=board.height), "quiet"))
        column.addLayout(head)
        fields = {
            key: NumberField(
                self.tr("{what} of board {number}").format(what=what, number=number + 1),
                unit,
                value=value,
                decimals=decimals,
                least=-2000.0,
                most=2000.0,
                step=step,
                width=74,
            )
            for key, what, unit, value, decimals, step in (
                ("x", self.tr("x"), "mm", board.x, 2, 1.0),
                ("y", self.tr("y"), "mm", board.y, 2, 1.0),
                ("turn", self.tr("Turn"), "°", board.turn, 1, 90.0),
            )
        }
        self._fields.append(fields)
        labels = {
            "x": self.tr("From the left"),
            "y": self.tr("From the front"),
            "turn": self.tr("Turned anticlockwise"),
        }
        for key, field in fields.items():
            field.edited.connect(lambda _, number=number: self._tell(number))
            if key == "turn" or not alone:  # one alone lies where the blank's own fields put it
                row = Setting(labels[key], field)
                explain(row, "copies.places")
                column.addWidget(row)
        column.addLayout(self._buttons(number, alone=alone))
        return made

    def _buttons(self, number: int, *, alone: bool) -> QHBoxLayout:
        row = QHBoxLayout()
        again = button(self.tr("Copy"))
        again.setAccessibleName(self.tr("Another copy of board {number}").format(number=number + 1))
        away = button(self.tr("Remove"))
        away.setAccessibleName(self.tr("Remove board {number}").format(number=number + 1))
        away.setEnabled(not alone)
        again.clicked.connect(lambda: self.copied.emit(number))
        away.clicked.connect(lambda: self.removed.emit(number))
        row.addStretch(1)
        row.addWidget(again)
        row.addWidget(away)
        return row

    def _tell(self, number: int) -> None:
        fields = self._fields[number]
        self.moved.emit(number, fields["x"].value, fields["y"].value, fields["turn"].value)
