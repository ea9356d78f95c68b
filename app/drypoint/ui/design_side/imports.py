"""Boards on the blank and ready-made programs: the job's lists joined to their forms."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from drypoint.board.programs import edge_is_rectangle
from drypoint.errors import DrypointError
from drypoint.session.boards import Placed
from drypoint.session.edge_settings import EdgeSettings
from drypoint.session.help import HELP
from drypoint.session.imported import ReadyProgram
from drypoint.session.settings import (
    BitSettings,
    CopyPlace,
    FileUse,
    ImportedSettings,
    ProgramUse,
    ToolChoice,
    ZeroOfZ,
)
from drypoint.ui.bridge import CLOSED, OPENED, Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.planner import Planner
from drypoint.ui.design_side.words import place_and_hint
from drypoint.ui.forms.boards import BoardLine, BoardsForm
from drypoint.ui.forms.programs import ProgramLine, ProgramsForm, ToolLine
from drypoint.ui.language.words import told
from drypoint.ui.pages.design import BlankPage, CutsPage

ADD_BOARD = "add a board"


class Imports(QObject):
    """Fills the two lists from the job and stores what is chosen there, one undoable action each."""

    def __init__(
        self,
        blank: BlankPage,
        cuts: CutsPage,
        bridge: Bridge,
        planner: Planner,
        editing: Editing,
        messages: Messages,
    ) -> None:
        super().__init__(blank)
        self._blank, self._bridge = blank, bridge
        self._editing, self._messages = editing, messages
        self.boards = BoardsForm()
        self.programs = ProgramsForm()
        blank.section(self.tr("Boards on the blank"))
        blank.add(self.boards)
        cuts.add(self.programs)
        self.boards.setToolTip(told(HELP["copies.places"].text))
        for key, field in (("uses", self.programs), ("zero", self.programs.zero)):
            field.setToolTip(told(HELP[f"imported.{key}"].text))
        self._placed: tuple[Placed, ...] = ()
        self.boards.moved.connect(self._move)
        self.boards.copied.connect(self._copy)
        self.boards.removed.connect(self._remove)
        self.boards.add_folder.connect(self._choose_folder)
        self.boards.add_zip.connect(self._choose_zip)
        self.programs.use_chosen.connect(self._use)
        self.programs.bit_chosen.connect(self._bit)
        self.programs.zero_chosen.connect(self._zero)
        self.programs.moved.connect(self._shift)
        self.programs.edge_chosen.connect(self._edge)
        planner.changed.connect(self.show)
        bridge.job_changed.connect(lambda what: self.show() if what in (OPENED, CLOSED) else None)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)
        self.show()

    def show(self) -> None:
        """Fill both lists with what is known."""
        session = self._bridge.session
        if session is None:
            self._placed = ()
            self.boards.show_boards(())
            self.programs.show_programs((), ())
            return
        known = session.derived.peek(session.snapshot)
        settings = session.settings
        if known.placed is not None:
            self._placed = known.placed
            self.boards.show_boards([_board_line(one) for one in known.placed])
        if known.ready is not None:
            names = bit_names(settings.bits)
            self.programs.show_programs([_program_line(one) for one in known.ready], names)
        self.programs.show_settings(settings.imported)
        board = known.board
        self.programs.show_edge(settings.edge, wanted=board is not None and edge_is_rectangle(board))

    # boards

    def _places(self) -> list[CopyPlace]:
        return [one.setting for one in self._placed]

    def _store_places(self, title: str, places: Sequence[CopyPlace]) -> None:
        session = self._bridge.session
        if session is not None:
            self._editing.change(title, copies=replace(session.settings.copies, places=tuple(places)))

    def _move(self, number: int, x: float, y: float, turn: float) -> None:
        places = self._places()
        places[number] = replace(places[number], x=x, y=y, angle_deg=turn)
        self._store_places(self.tr("Place of a board"), places)

    def _copy(self, number: int) -> None:
        session = self._bridge.session
        if session is None:
            return
        places = self._places()
        right = max(one.place.x + one.width for one in self._placed) + session.settings.copies.gap
        low = min(one.place.y for one in self._placed)
        places.append(replace(places[number], x=round(right, 3), y=low))
        self._store_places(self.tr("Another copy of a board"), places)

    def _remove(self, number: int) -> None:
        session = self._bridge.session
        if session is None or len(self._placed) < 2:
            return
        design = self._placed[number].design
        if sum(one.design == design for one in self._placed) > 1:
            places = self._places()
            del places[number]
            self._store_places(self.tr("Take a copy away"), places)
            return
        try:
            self._editing.settle()
            session.remove_board(design)
        except DrypointError as error:
            self._messages.error(error)

    def _choose_folder(self) -> None:
        name = QFileDialog.getExistingDirectory(self._blank, self.tr("Folder of another board"))
        if name:
            self.add_board(Path(name))

    def _choose_zip(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self._blank, self.tr("Zip of another board"), "", self.tr("Zips (*.zip)")
        )
        if name:
            self.add_board(Path(name))

    def add_board(self, path: Path) -> None:
        """Put another board on the blank, in the background."""
        session = self._bridge.session
        if session is not None:
            self._editing.settle()
            self._bridge.ask(ADD_BOARD, lambda progress: session.add_board([path], progress))

    def _computed(self, name: str, _value: object) -> None:
        if name == ADD_BOARD:
            self._blank.show_trouble("")
            self._messages.say(self.tr("The board was added to the blank."))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == ADD_BOARD:
            self._blank.show_trouble(error.what, place_and_hint(error))
            self._messages.error(error)

    # programs

    def _store_programs(self, title: str, change: ImportedSettings) -> None:
        self._editing.change(title, imported=change)

    def _chosen(self) -> ImportedSettings | None:
        session = self._bridge.session
        return None if session is None else session.settings.imported

    def _use(self, file: str, use: ProgramUse) -> None:
        chosen = self._chosen()
        if chosen is not None:
            others = tuple(one for one in chosen.uses if one.file != file)
            uses = (*others, FileUse(file, use))
            self._store_programs(self.tr("What a program is taken for"), replace(chosen, uses=uses))

    def _bit(self, file: str, tool: int, bit: str) -> None:
        chosen = self._chosen()
        if chosen is None:
            return
        kept = tuple(one for one in chosen.bits if (one.file, one.tool) != (file, tool))
        bits = (*kept, ToolChoice(file, tool, bit)) if bit else kept
        self._store_programs(self.tr("Bit of a program"), replace(chosen, bits=bits))

    def _zero(self, zero: ZeroOfZ) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self._store_programs(self.tr("Zero of Z in the programs"), replace(chosen, zero=zero))

    def _shift(self, x: float, y: float) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self._store_programs(self.tr("Place of the programs"), replace(chosen, x=x, y=y))

    def _edge(self, cut: bool, margin: float) -> None:
        if self._bridge.session is not None:
            self._editing.change(self.tr("Rectangle round the programs"), edge=EdgeSettings(cut, margin))


def bit_names(bits: BitSettings) -> tuple[str, ...]:
    """Every bit of the job by its name."""
    return (bits.vbit.name, bits.mill.name, *(drill.name for drill in bits.drills))


def _board_line(one: Placed) -> BoardLine:
    place = one.setting
    return BoardLine(one.place.board.name, one.width, one.height, place.x, place.y, place.angle_deg)


def _program_line(one: ReadyProgram) -> ProgramLine:
    tools = tuple(
        ToolLine(tool.number, tool.use.value, tool.depth, "" if tool.bit is None else tool.bit.name)
        for tool in one.tools
    )
    trouble = "" if one.trouble is None else one.trouble.what
    return ProgramLine(one.name, one.use, one.why, tools, trouble)
