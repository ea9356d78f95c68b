"""The design side of the window, put together."""

from __future__ import annotations

from PySide6.QtCore import QObject

from drypoint.session.beside import beside
from drypoint.session.doubts import suspects
from drypoint.session.peek import Peek
from drypoint.session.traveller import Line, StepState, traveller
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.clearing import ClearingFields
from drypoint.ui.design_side.depth_check import DepthChecks
from drypoint.ui.design_side.documents import Documents
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.help import Help
from drypoint.ui.design_side.machine_settings import MachineSheet
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.onward import Onward
from drypoint.ui.design_side.pages import DesignPages
from drypoint.ui.design_side.paper import Paper
from drypoint.ui.design_side.planner import Planner
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.design_side.repainting import Repainting
from drypoint.ui.design_side.tables import HeightTables
from drypoint.ui.design_side.turning import TurnFields
from drypoint.ui.design_side.view import BOARD, CUTS, PASSES, SURFACE, DesignView
from drypoint.ui.design_side.words import side_of
from drypoint.ui.language.words import local, told
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.traveller import Step
from drypoint.ui.window import MainWindow


class DesignSide(QObject):
    """Everything about the job that needs no machine."""

    def __init__(self, window: MainWindow, bridge: Bridge, remembered: Remembered) -> None:
        super().__init__(window)
        self._window, self._bridge = window, bridge
        self.messages = Messages(window.strip, bridge, window)
        self.planner = Planner(bridge, window)
        self.editing = Editing(bridge, window.commands, self.messages, window)
        self.pages = DesignPages(window, bridge, self.planner, self.editing, self.messages)
        pages = self.pages
        self.onward = Onward(window, (pages.board, pages.blank, pages.bits, pages.cuts, pages.surface))
        self.clearing = ClearingFields(self.pages.cuts, bridge, self.editing)
        self.turning = TurnFields(self.pages.board, bridge, self.planner, self.editing)
        self.depth_checks = DepthChecks(self.pages.cuts, bridge, self.planner, self.messages)
        self.view = DesignView(window, bridge, self.planner, self.pages)
        self.documents = Documents(window, bridge, self.editing, self.messages, remembered)
        self.paper = Paper(window, bridge, self.messages)
        self.repainting = Repainting(window, bridge, self.pages.passes, self.messages)
        self.tables = HeightTables(window, bridge, self.pages.surface, self.messages)
        self.help = Help(window, bridge)
        self.machine = MachineSheet(window, bridge, self.editing)
        self.planner.trouble.connect(self.messages.error)
        self.planner.changed.connect(self.show_traveller)
        bridge.job_changed.connect(lambda _: self.show_traveller())
        for name, step in (("plan_touches", SURFACE), ("plan_pass", PASSES), ("check_islands", CUTS)):
            window.commands[name].triggered.connect(lambda _=False, step=step: self._plan(step))
        self._enable()
        bridge.job_changed.connect(lambda _: self._enable())
        self.show_traveller()

    def lines(self) -> tuple[Line, ...]:
        """The traveller's lines as they are now."""
        session = self._bridge.session
        if session is None:
            return ()
        snap = session.snapshot
        known: Peek = session.derived.peek(snap)
        return traveller(snap, known, self.planner.errors, [one.title for one in suspects(session)])

    def show_traveller(self) -> None:
        """Every line of the traveller, and its head."""
        tag, session = self._window.traveller, self._bridge.session
        lines = self.lines()
        names = [self._window.commands[f"step{number + 1}"].text() for number in range(9)]
        if session is None:
            tag.show_job(self.tr("No job"), "", self.tr("New job and Open are in the File menu."))
            tag.show_steps([Step(name) for name in names])
            self.onward.show((), names)
            return
        settings = session.settings
        board = self.planner.board
        fact = side_of(settings.board.side)
        if board is not None:
            fact += local(f", {board.board.width:.4g} × {board.board.height:.4g} mm")
        more = beside(session.snapshot, session.derived.peek(session.snapshot).board)
        saved = self.tr("Every change is saved at once and can be undone.")
        foot = "\n".join(told(line) for line in more) or saved
        tag.show_job(settings.board.name or session.job.path.stem, fact, foot)
        tag.show_steps(
            [
                Step(name, _mark(line.state), line.fact, line.reason)
                for name, line in zip(names, lines, strict=True)
            ]
        )
        self.onward.show(lines, names)

    def _plan(self, step: int) -> None:
        self._window.choose_step(step)
        self.planner.plan()

    def _enable(self) -> None:
        usable = self._bridge.session is not None
        for name in ("plan_touches", "plan_pass", "check_islands"):
            self._window.commands[name].setEnabled(usable)

    def begin(self) -> None:
        """Show the first page."""
        self._window.choose_step(BOARD)


def _mark(state: StepState) -> Mark:
    return Mark(state.value)
