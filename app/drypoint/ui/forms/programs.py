"""Ready-made programs: what each is taken for, with which bits, and where they have their zero."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from drypoint.bits.naming import named
from drypoint.session.edge_settings import EdgeSettings
from drypoint.session.settings import ImportedSettings, ProgramUse, ZeroOfZ
from drypoint.ui.language.words import fill, told
from drypoint.ui.parts.blocks import Elided, Note, empty, words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Choice, NumberField, Setting

WIDE = 130
"""Width of a choice, px: the page is narrow."""


@dataclass(frozen=True, slots=True)
class ToolLine:
    """One tool of a program; ``bit`` is empty where none is chosen. Depth in mm."""

    number: int
    use: str
    depth: float
    bit: str


@dataclass(frozen=True, slots=True)
class ProgramLine:
    """One program; ``trouble`` says why it cannot be used."""

    name: str
    use: ProgramUse
    why: str
    tools: tuple[ToolLine, ...]
    trouble: str = ""


class ProgramsForm(QWidget):
    """Every ready-made program of the job.

    Signals
    -------
    use_chosen(str, object) : name of the file and its `ProgramUse`
    bit_chosen(str, int, str) : name of the file, number of the tool, name of the bit
    zero_chosen(object) : `ZeroOfZ`
    moved(float, float) : x and y of all of them on the board, mm
    edge_chosen(bool, float) : whether the rectangle round them is cut out, and how far outside, mm
    """

    use_chosen = Signal(str, object)
    bit_chosen = Signal(str, int, str)
    zero_chosen = Signal(object)
    moved = Signal(float, float)
    edge_chosen = Signal(bool, float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shown: tuple[object, ...] = ()
        self._use_words = {
            ProgramUse.OWN: self.tr("run as it is"),
            ProgramUse.GROOVES: self.tr("grooves, in passes"),
            ProgramUse.OUTLINE: self.tr("the outline"),
            ProgramUse.LEFT_OUT: self.tr("not used"),
        }
        self._tool_words = {
            "engraving": self.tr("Tool {number}: engraves, {depth:.2f} mm"),
            "drilling": self.tr("Tool {number}: drills, {depth:.2f} mm"),
            "milling": self.tr("Tool {number}: mills, {depth:.2f} mm"),
        }
        self._rows = QVBoxLayout()
        self._rows.setSpacing(6)
        self.zero = Choice(self.tr("Zero of Z in the programs"), WIDE)
        self.zero.addItem(self.tr("on the copper"), ZeroOfZ.COPPER)
        self.zero.addItem(self.tr("on the backing"), ZeroOfZ.BACKING)
        self.right = NumberField(self.tr("Moved right"), "mm", decimals=2, least=-300, most=300, width=74)
        self.back = NumberField(self.tr("Moved backwards"), "mm", decimals=2, least=-300, most=300, width=74)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(words(self.tr("Ready-made programs"), "value"))
        column.addLayout(self._rows)
        for field, name in ((self.zero, "zero"), (self.right, "x"), (self.back, "y")):
            column.addWidget(_explained(field.accessibleName(), field, name))
        self._add_edge(column)
        self.zero.activated.connect(lambda _: self.zero_chosen.emit(ZeroOfZ(self.zero.currentData())))
        for field in (self.right, self.back):
            field.edited.connect(lambda _: self.moved.emit(self.right.value, self.back.value))

    def _add_edge(self, column: QVBoxLayout) -> None:
        """What stands for an outline where there is none."""
        self.cut_out = QCheckBox(self.tr("Cut the rectangle round them out"))
        self.margin = NumberField(self.tr("Outside of them by"), "mm", decimals=1, least=0, most=50, width=74)
        self._margin_row = Setting(self.margin.accessibleName(), self.margin)
        explain(self.cut_out, "edge.cut")
        explain(self._margin_row, "edge.margin")
        for row in (self.cut_out, self._margin_row):
            column.addWidget(row)
        self.cut_out.clicked.connect(lambda on: self.edge_chosen.emit(on, self.margin.value))
        self.margin.edited.connect(lambda mm: self.edge_chosen.emit(self.cut_out.isChecked(), mm))

    def show_edge(self, chosen: EdgeSettings, *, wanted: bool) -> None:
        """The rectangle; no signal. ``wanted``: nothing else is known of the board's edge."""
        self.cut_out.setVisible(wanted)
        self._margin_row.setVisible(wanted and chosen.cut)
        self.cut_out.setChecked(chosen.cut)
        self.margin.set_value(chosen.margin)

    def show_programs(self, programs: Sequence[ProgramLine], bits: Sequence[str]) -> None:
        """Fill the list; no signal. Without programs there is nothing to see."""
        self.setVisible(bool(programs))
        shown = (tuple(programs), tuple(bits))
        if shown == self._shown:
            return
        self._shown = shown
        empty(self._rows)
        for program in programs:
            self._rows.addWidget(self._row(program, bits))

    def show_settings(self, chosen: ImportedSettings) -> None:
        """Zero and place of all of them; no signal."""
        self.zero.setCurrentIndex(list(ZeroOfZ).index(chosen.zero))
        self.right.set_value(chosen.x)
        self.back.set_value(chosen.y)

    def _row(self, program: ProgramLine, bits: Sequence[str]) -> QWidget:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 2, 0, 6)
        column.setSpacing(4)
        name = Elided("label")
        name.setText(program.name)
        column.addWidget(name)
        if program.trouble:
            column.addWidget(Note("caution", program.trouble))
            return made
        column.addWidget(words(program.why, "caption", wrap=True))
        uses = Choice(self.tr("What {file} is taken for").format(file=program.name), WIDE)
        for use, said in self._use_words.items():
            uses.addItem(said, use)
        uses.setCurrentIndex(list(self._use_words).index(program.use))
        uses.activated.connect(
            lambda _, box=uses: self.use_chosen.emit(program.name, ProgramUse(box.currentData()))
        )
        column.addWidget(_explained(self.tr("Taken for"), uses, "uses"))
        for tool in program.tools:
            column.addWidget(self._tool(program.name, tool, bits))
        return made

    def _tool(self, file: str, tool: ToolLine, bits: Sequence[str]) -> QWidget:
        said = fill(self._tool_words[tool.use], number=tool.number, depth=tool.depth)
        choice = Choice(self.tr("Bit for tool {tool} of {file}").format(tool=tool.number, file=file), WIDE)
        choice.addItem(self.tr("choose a bit"), "")
        for bit in bits:
            choice.addItem(told(named(bit)), str(bit))
        choice.setCurrentIndex(bits.index(tool.bit) + 1 if tool.bit in bits else 0)
        choice.activated.connect(
            lambda _, box=choice: self.bit_chosen.emit(file, tool.number, str(box.currentData()))
        )
        return _explained(said, choice, "bits")


def _explained(label: str, field: QWidget, name: str) -> Setting:
    """A row with the help of one of the settings of ready-made programs."""
    made = Setting(label, field)
    explain(made, f"imported.{name}")
    return made
