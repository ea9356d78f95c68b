"""A new job: the setup wizard fed by the core, and the job file made of what it was told."""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from drypoint.board.groups import boards_in
from drypoint.board.load import name_of
from drypoint.board.model import Board, Finding, LayerFile, Role, Side
from drypoint.board.panel import panel_of
from drypoint.board.roles import recognise_files
from drypoint.errors import DrypointError
from drypoint.job.store import job_file
from drypoint.machine.preset import load_presets
from drypoint.machine.serial_link import list_ports
from drypoint.progress import Progress
from drypoint.session.boards import placed_designs, read_designs, sources_of
from drypoint.session.session import Session
from drypoint.session.settings import BoardSettings, Settings
from drypoint.session.work import preset_of
from drypoint.ui.bridge import Bridge
from drypoint.ui.canvas.content import BoardDrawing, draw_board
from drypoint.ui.design_side.translate import (
    bit_settings,
    bit_values,
    blank_settings,
    blank_values,
    machine_settings,
    machine_values,
)
from drypoint.ui.design_side.words import board_facts, place_and_hint
from drypoint.ui.forms.values import BlankValues, MachineValues, SetupValues
from drypoint.ui.menus import keep_run_keys
from drypoint.ui.window import MainWindow
from drypoint.ui.wizard.wizard import BoardFacts, SetupWizard

READ, MAKE, PORTS = "new job: read", "new job: make", "new job: ports"


@dataclass(frozen=True, slots=True, eq=False)
class Read:
    """What the files hold; ``trouble`` where they are no board."""

    files: tuple[LayerFile, ...]
    board: Board | None = None
    drawing: BoardDrawing | None = None
    trouble: DrypointError | None = None


def read(paths: Sequence[Path], side: Side, roles: Mapping[str, Role], progress: Progress) -> Read:
    """Recognise the files and read the board from them.

    Raises
    ------
    InputError
        If the files cannot even be listed.
    """
    boards = boards_in(paths)
    files = tuple(
        replace(one, role=roles[one.name], reason="chosen by hand") if one.name in roles else one
        for one in _recognised(boards)
    )
    progress.step(0.05, "Files recognised")
    try:
        sources = sources_of(boards, roles)
        designs = read_designs(sources, side, name_of(paths), progress.part(0.05, 0.9))
        usual = Settings()
        placed = placed_designs(designs, usual.copies)
        board = panel_of([one.place for one in placed], gap=usual.bits.mill.diameter)
    except DrypointError as trouble:
        return Read(files, trouble=trouble)
    return Read(files, board, draw_board(board))


def _recognised(boards: Mapping[str, Mapping[str, bytes]]) -> Iterator[LayerFile]:
    """What each file was taken for, by the name the job will give it."""
    for board, files in boards.items():
        for one in recognise_files(files):
            yield replace(one, name=f"{board}/{one.name}") if board else one


def make(path: Path, values: SetupValues, progress: Progress) -> Session:
    """Make the job file: settings as one action, then the files. After an error all is as it was.

    Raises
    ------
    StoreError, InputError
    """
    return _made(path, progress, values.files, values.roles, lambda session: store(session, values))


def make_plain(path: Path, files: Path, progress: Progress) -> Session:
    """Make a job file of design files with every setting as it usually is; see `make`."""
    return _made(path, progress, [files], {}, lambda session: None)


def _made(
    path: Path,
    progress: Progress,
    files: Sequence[Path],
    roles: Mapping[str, Role],
    prepare: Callable[[Session], None],
) -> Session:
    where = job_file(path)
    with tempfile.TemporaryDirectory(prefix="drypoint-") as folder:
        session = Session.create(Path(folder) / "new")
        try:
            prepare(session)
            session.import_files(files, roles, progress)
            session.job.copy_to(where)  # a job that it replaces is whole until then
        finally:
            session.close()
    return Session.open(where)


def store(session: Session, values: SetupValues) -> None:
    """Everything the wizard asked for, as one action."""
    usual = Settings()
    size = _board_size(values)
    session.change(
        "Set up the job",
        board=BoardSettings(values.side, values.name.strip()),
        blank=blank_settings(values.blank, usual.blank, size),
        bits=bit_settings(values.bits, usual.bits),
        machine=machine_settings(values.machine, usual.machine, load_presets()),
    )


def _board_size(values: SetupValues) -> tuple[float, float]:
    """Size of the board, mm, as the wizard's centred place tells it; else no size."""
    blank = values.blank
    if not blank.centred:
        return 0.0, 0.0
    return blank.width - 2 * blank.board_x, blank.height - 2 * blank.board_y


class NewJob(QObject):
    """One wizard at a time.

    Signals
    -------
    finished(object) : `SetupValues` of a wizard that was gone through to its end
    made(object) : `Session` of the new job
    failed(object) : `DrypointError` that kept the job from being made
    """

    finished = Signal(object)
    made = Signal(object)
    failed = Signal(object)

    def __init__(self, window: MainWindow, bridge: Bridge) -> None:
        super().__init__(window)
        self._window, self._bridge = window, bridge
        self._fitted: tuple[object, ...] | None = None
        self.wizard: SetupWizard | None = None
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)
        bridge.progress.connect(self._progress)

    def start(self, paths: Sequence[Path] = ()) -> SetupWizard:
        """Open the wizard, with files if some are at hand."""
        if self.wizard is None:
            self.wizard = self._make()
            self._fitted = None
            self.wizard.open()
            self._look_for_ports()
        if paths:
            self.wizard.files.set_paths([*self.wizard.files.paths, *paths])
        return self.wizard

    def make(self, path: Path, values: SetupValues) -> None:
        """Make the job file in the background."""
        self._bridge.ask(MAKE, lambda progress: make(path, values, progress))

    def _make(self) -> SetupWizard:
        usual = Settings()
        values = SetupValues(
            blank=blank_values(usual.blank, (0.0, 0.0)),
            bits=bit_values(usual.bits),
            machine=machine_values(usual.machine, preset_of(usual)),
        )
        wizard = SetupWizard(self._window.theme, values, self._window)
        wizard.machine.show_classes(machine_classes())
        keep_run_keys(wizard, self._window.commands)
        wizard.files_changed.connect(lambda _: self._ask())
        wizard.side_changed.connect(lambda _: self._ask())
        wizard.role_changed.connect(self._role_changed)
        wizard.ports_wanted.connect(self._look_for_ports)
        wizard.finished.connect(self._finished)
        return wizard

    def _look_for_ports(self) -> None:
        self._bridge.ask(PORTS, lambda _progress: found_ports())

    def _role_changed(self, name: str, role: Role) -> None:
        if self.wizard is not None:
            self.wizard.set_role(name, role)
            self._ask()

    def _ask(self) -> None:
        if self.wizard is None:
            return
        values = self.wizard.values
        if not values.files:
            self._bridge.cancel(READ)
            self.wizard.show_board(None, BoardFacts())
            return
        self.wizard.show_busy(self.tr("Reading the files"))
        self._bridge.ask(READ, lambda progress: read(values.files, values.side, values.roles, progress))

    def _progress(self, name: str, share: float, text: str) -> None:
        if name == READ and self.wizard is not None:
            said = text or self.tr("Reading the files")
            self.wizard.show_busy(f"{said}: {100 * share:.0f} %")

    def _computed(self, name: str, value: object) -> None:
        if name == READ and self.wizard is not None and isinstance(value, Read):
            self._show(self.wizard, value)
        elif name == PORTS and self.wizard is not None and isinstance(value, tuple):
            self.wizard.machine.show_ports(value)
        elif name == MAKE and isinstance(value, Session):
            self.made.emit(value)

    def _show(self, wizard: SetupWizard, found: Read) -> None:
        wizard.show_busy("")
        wizard.show_files(found.files)
        if found.trouble is not None:
            self._show_trouble(wizard, found.trouble)
            return
        board = found.board
        if board is None:
            return
        if self._fitted in (None, _size_and_clamps(wizard.blank.values)):  # else it is the user's own
            wizard.blank.set_values(blank_values(Settings().blank, (board.width, board.height)))
            self._fitted = _size_and_clamps(wizard.blank.values)
        findings: Sequence[Finding] = board.findings
        wizard.show_board(found.drawing, board_facts(board), findings)

    def _show_trouble(self, wizard: SetupWizard, error: DrypointError) -> None:
        wizard.show_trouble(error.what, place_and_hint(error))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == READ and self.wizard is not None:
            self.wizard.show_busy("")
            self.wizard.show_files(())
            self._show_trouble(self.wizard, error)
        elif name == MAKE:
            self.failed.emit(error)

    def _finished(self, result: int) -> None:
        wizard, self.wizard = self.wizard, None
        self._bridge.cancel(READ)
        if wizard is None:
            return
        values = wizard.values
        wizard.deleteLater()
        if result == SetupWizard.DialogCode.Accepted:
            self.finished.emit(values)


def _size_and_clamps(blank: BlankValues) -> tuple[object, ...]:
    """What tells whether a person changed the blank."""
    return blank.width, blank.height, blank.clamps


def machine_classes() -> dict[str, MachineValues]:
    """The size classes as the form of the machine shows them."""
    usual = Settings().machine
    return {one.name: machine_values(replace(usual, preset=one.name), one) for one in load_presets()}


def found_ports() -> tuple[tuple[str, str], ...]:
    """Serial ports: what to open, and what each is called."""
    return tuple((port.device, port.description) for port in list_ports())
