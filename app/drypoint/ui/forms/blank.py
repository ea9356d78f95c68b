"""The form of blank and clamps."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.ui.canvas.content import Box, Clamp
from drypoint.ui.forms.clamps import ClampFields, ClampRow, neighbour
from drypoint.ui.forms.values import BlankValues
from drypoint.ui.language.words import fill
from drypoint.ui.parts.blocks import Note, button, empty, rule, words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Choice, NumberField, Setting
from drypoint.ui.theme.theme import Theme

COPPERS = (0.018, 0.035, 0.070)
"""Usual thicknesses of copper foil, mm (half, one and two ounces per square foot)."""
CLAMP = 9.0
"""Side of a new clamp, mm."""


def gap(first: Box, second: Box) -> float:
    """Distance of two boxes, mm; 0 where they meet."""
    dx = max(first[0] - second[2], second[0] - first[2], 0.0)
    dy = max(first[1] - second[3], second[1] - first[3], 0.0)
    return float((dx * dx + dy * dy) ** 0.5)


def _row(label: str, field: QWidget, key: str) -> Setting:
    """A row with its help."""
    made = Setting(label, field)
    explain(made, key)
    return made


class BlankForm(QWidget):
    """Sizes, place of the board, clamps.

    Signals
    -------
    edited(object) : the new `BlankValues`
    clamp_chosen(int)
    """

    edited = Signal(object)
    clamp_chosen = Signal(int)

    def __init__(self, theme: Theme, values: BlankValues, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._values = values
        self._board = (0.0, 0.0)
        self._chosen: int | None = None
        size = {"unit": "mm", "least": 5.0, "most": 2000.0}
        self.width_field = NumberField(self.tr("Width"), "", width=66, least=5.0, most=2000.0, unit_width=0)
        self.height_field = NumberField(self.tr("Height"), width=66, **size)  # type: ignore[arg-type]
        self.thickness = NumberField(self.tr("Thickness"), "mm", decimals=2, least=0.1, most=10.0)
        self.copper = Choice(self.tr("Copper"), 120)
        self.board_x = NumberField(self.tr("Lower left of the board, x"), "mm")
        self.board_y = NumberField(self.tr("Lower left of the board, y"), "mm")
        self.centred = QCheckBox(self.tr("Centre the board on the blank"))
        self.add_clamp = button(self.tr("Add clamp"))
        self.remove_clamp = button(self.tr("Remove"))
        self.keep_away = NumberField(self.tr("Keep away from clamps by"), "mm", least=0.0, most=50.0)
        self.backing = NumberField(self.tr("Backing board under the blank"), "mm", least=0.0, most=60.0)
        self.clamp_fields = ClampFields()
        self._rows = QVBoxLayout()
        self._rows.setSpacing(0)
        self.note = Note("caution", "")
        self._build()
        self._connect()
        self.set_values(values)

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(words(self.tr("Blank"), "section"))
        size = QWidget()
        row = QHBoxLayout(size)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        for each in (self.width_field, words("×", "unit"), self.height_field):
            row.addWidget(each)
        column.addWidget(_row(self.tr("Size"), size, "blank.width"))
        column.addWidget(_row(self.tr("Thickness"), self.thickness, "blank.thickness"))
        for copper in COPPERS:
            self.copper.addItem(self.tr("{thickness:.0f} µm").format(thickness=copper * 1e3), copper)
        column.addWidget(_row(self.tr("Copper"), self.copper, "blank.copper"))
        column.addWidget(_row(self.tr("Lower left of the board, x"), self.board_x, "blank.board_x"))
        column.addWidget(_row(self.tr("Lower left of the board, y"), self.board_y, "blank.board_y"))
        column.addWidget(self.centred)
        explain(self.centred, "blank.centred")
        column.addWidget(rule())
        head = QHBoxLayout()
        head.addWidget(words(self.tr("Clamps"), "section"))
        head.addStretch(1)
        head.addWidget(self.remove_clamp)
        head.addWidget(self.add_clamp)
        column.addLayout(head)
        column.addLayout(self._rows)
        column.addWidget(self.clamp_fields)
        column.addWidget(_row(self.tr("Keep away from clamps by"), self.keep_away, "blank.clamp_margin"))
        column.addWidget(rule())
        column.addWidget(_row(self.tr("Backing board under the blank"), self.backing, "blank.backing"))
        column.addSpacing(6)
        column.addWidget(self.note)
        column.addStretch(1)

    def _connect(self) -> None:
        for field, name in (
            (self.width_field, "width"),
            (self.height_field, "height"),
            (self.thickness, "thickness"),
            (self.keep_away, "keep_away"),
            (self.backing, "backing"),
        ):
            field.edited.connect(lambda value, name=name: self._change(**{name: value}))
        self.board_x.edited.connect(lambda x: self._change(board_x=x, centred=False))
        self.board_y.edited.connect(lambda y: self._change(board_y=y, centred=False))
        self.copper.activated.connect(lambda _: self._change(copper=float(self.copper.currentData())))
        self.centred.clicked.connect(lambda on: self._change(centred=on))
        self.add_clamp.clicked.connect(self._add)
        self.remove_clamp.clicked.connect(self._remove)
        self.clamp_fields.edited.connect(self._place_clamp)
        self.note.hint_clicked.connect(self._mend)

    @property
    def values(self) -> BlankValues:
        """What is set."""
        return self._values

    def set_values(self, values: BlankValues) -> None:
        """Show other values; no signal."""
        self._values = self._placed(values)
        shown = self._values
        for field, value in (
            (self.width_field, shown.width),
            (self.height_field, shown.height),
            (self.thickness, shown.thickness),
            (self.board_x, shown.board_x),
            (self.board_y, shown.board_y),
            (self.keep_away, shown.keep_away),
            (self.backing, shown.backing),
        ):
            field.set_value(value)
        self.centred.setChecked(shown.centred)
        near = min(range(len(COPPERS)), key=lambda i: abs(COPPERS[i] - shown.copper))
        self.copper.setCurrentIndex(near)
        self._list_clamps()
        self._warn()

    def set_board(self, width: float, height: float) -> None:
        """Size of the board, mm."""
        self._board = (width, height)
        self.set_values(self._values)

    def choose_clamp(self, number: int | None) -> None:
        """Mark a clamp."""
        self._chosen = number
        self._list_clamps()

    def move_clamp(self, number: int, dx: float, dy: float) -> None:
        """Move a clamp, as by dragging."""
        self._chosen = number
        moved = tuple(
            replace(c, box=(c.box[0] + dx, c.box[1] + dy, c.box[2] + dx, c.box[3] + dy))
            if c.number == number
            else c
            for c in self._values.clamps
        )
        self._change(clamps=moved)

    def move_board(self, dx: float, dy: float) -> None:
        """Move the board on the blank, as by dragging."""
        self._change(board_x=self._values.board_x + dx, board_y=self._values.board_y + dy, centred=False)

    def too_near(self) -> tuple[int, float] | None:
        """The clamp nearest to the outline, if nearer than allowed, and its distance, mm."""
        v = self._values
        board = (v.board_x, v.board_y, v.board_x + self._board[0], v.board_y + self._board[1])
        far = [(gap(clamp.box, board), clamp.number) for clamp in v.clamps]
        near = min(far, default=(v.keep_away, 0))
        return (near[1], near[0]) if near[0] < v.keep_away - 1e-9 else None

    def _placed(self, values: BlankValues) -> BlankValues:
        if not values.centred or not self._board[0]:
            return values
        x, y = (values.width - self._board[0]) / 2, (values.height - self._board[1]) / 2
        return replace(values, board_x=x, board_y=y)

    def _change(self, **changes: object) -> None:
        self.set_values(replace(self._values, **changes))  # type: ignore[arg-type]
        self.edited.emit(self._values)

    def _add(self) -> None:
        v = self._values
        number = max((clamp.number for clamp in v.clamps), default=0) + 1
        places = (
            (-CLAMP / 2, v.height / 2),
            (v.width - CLAMP / 2, v.height / 2),
            (v.width / 2, -CLAMP / 2),
            (v.width / 2, v.height - CLAMP / 2),
        )
        x, y = places[(number - 1) % 4]
        self._chosen = number
        self._change(clamps=(*v.clamps, Clamp(number, (x, y, x + CLAMP, y + CLAMP))))
        self.clamp_chosen.emit(number)

    def _remove(self) -> None:
        kept = tuple(clamp for clamp in self._values.clamps if clamp.number != self._chosen)
        self._chosen = None
        self._change(clamps=kept)

    def _mend(self) -> None:
        """Move the clamp that is too near straight away from the board."""
        near = self.too_near()
        if near is None:
            return
        v = self._values
        number, far = near
        box = next(clamp.box for clamp in v.clamps if clamp.number == number)
        more = v.keep_away - far
        dx = more if box[0] >= v.board_x + self._board[0] else (-more if box[2] <= v.board_x else 0.0)
        dy = more if box[1] >= v.board_y + self._board[1] else (-more if box[3] <= v.board_y else 0.0)
        if not dx and not dy:  # it lies on the board: out to the left
            dx = v.board_x - v.keep_away - box[2]
        self.move_clamp(number, dx, 0.0 if dx else dy)

    def _where(self, clamp: Clamp) -> str:
        v = self._values
        x, y = (clamp.box[0] + clamp.box[2]) / 2, (clamp.box[1] + clamp.box[3]) / 2
        away = {
            self.tr("left edge"): abs(x),
            self.tr("right edge"): abs(v.width - x),
            self.tr("lower edge"): abs(y),
            self.tr("upper edge"): abs(v.height - y),
        }
        return min(away, key=lambda name: away[name])

    def _place_clamp(self, box: Box) -> None:
        clamps = self._values.clamps
        self._change(clamps=tuple(replace(c, box=box) if c.number == self._chosen else c for c in clamps))

    def _list_clamps(self) -> None:
        had = self._row_with_focus()
        empty(self._rows)
        chosen = None
        for clamp in self._values.clamps:
            row = ClampRow(clamp, self._where(clamp), clamp.number == self._chosen)
            row.chosen.connect(self._row_chosen)
            row.walked.connect(lambda n, step: self._row_chosen(neighbour(self._values.clamps, n, step)))
            row.removed.connect(self._remove_row)
            self._rows.addWidget(row)
            if clamp.number == self._chosen:
                chosen = clamp
                if had:
                    row.show()
                    row.setFocus()
        if not self._values.clamps:
            self._rows.addWidget(words(self.tr("No clamps yet."), "quiet"))
        self.remove_clamp.setEnabled(chosen is not None)
        self.clamp_fields.setVisible(chosen is not None)
        if chosen is not None:
            self.clamp_fields.show_box(chosen.box)

    def _row_with_focus(self) -> bool:
        return any(row.hasFocus() for row in self.findChildren(ClampRow))

    def _remove_row(self, number: int) -> None:
        self._chosen = number
        self._remove()
        self.add_clamp.setFocus()

    def _row_chosen(self, number: int) -> None:
        self.choose_clamp(number)
        self.clamp_chosen.emit(number)

    def _warn(self) -> None:
        near = self.too_near() if self._board[0] else None
        v = self._values
        too_small = self._board[0] > v.width or self._board[1] > v.height
        self.note.setVisible(near is not None or too_small)
        if too_small:
            text = fill(self.tr("The board is {w:.1f} × {h:.1f} mm."), w=self._board[0], h=self._board[1])
            self.note.say("error", self.tr("The blank is smaller than the board"), text)
        elif near is not None:
            what = fill(
                self.tr("Clamp {number} is {far:.1f} mm from the outline"), number=near[0], far=near[1]
            )
            text = fill(self.tr("You asked for {wanted:.1f} mm."), wanted=v.keep_away)
            hint = self.tr("Move clamp {number}").format(number=near[0])
            self.note.say("caution", what, text, hint=hint)
