"""Pauses in the window: chosen on the canvas, at the scrubber or on the run page, shown, taken away."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QObject, QPoint
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu

from drypoint.errors import DrypointError
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.session.pauses import (
    NEAR,
    Pause,
    add_pause,
    pauses_in,
    piece_at,
    pieces_of,
    remove_pause,
)
from drypoint.session.session import Session
from drypoint.ui.canvas.content import View
from drypoint.ui.canvas.pick import Picked
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.running import Running
from drypoint.ui.pages.run import PauseLine

GRASP = 14.0
"""A pause this near to the pointer is the one that is meant, px."""


@dataclass(frozen=True, slots=True)
class _Found:
    """What the background says: pauses of the work that is listed, and the pieces of what is next."""

    lines: tuple[tuple[Pause, PauseLine], ...]
    program: str
    pieces: int


class Pausing(QObject):
    """Wires the scrubber's button, the canvas's menu and the run page's list of pauses.

    Attributes
    ----------
    menu : QMenu or None
        The canvas's menu, as last opened.
    more : list of callables
        What others offer there: from a place on the board, mm, and a parent to actions.
    """

    def __init__(self, desk: Desk, running: Running) -> None:
        super().__init__(desk)
        self._desk, self._running = desk, running
        self._known: tuple[tuple[Pause, PauseLine], ...] = ()
        self._program = ""
        self.menu: QMenu | None = None
        self.more: list[Callable[[tuple[float, float], QObject], list[QAction]]] = []
        desk.window.canvas.pause_wanted.connect(self._at_scrubber)
        desk.window.canvas.canvas.menu_wanted.connect(self.show_menu)
        running.page.pause_removed.connect(self._remove_line)
        running.page.pause_added.connect(self._add_numbered)
        running.listed.connect(lambda _: self.update_from_job())
        desk.changed.connect(self._judge)
        self._judge()

    # choosing

    def add_at(self, place: tuple[float, float], program: str, piece: int) -> None:
        """Pause before the piece of a program at a place on the board, mm."""
        session = self._desk.bridge.session
        if session is not None and program:
            add_pause(session, Pause(program, place, piece))
            said = self.tr("The run pauses before piece {n}: bit raised, spindle off.")
            self._desk.say(said.format(n=piece))

    def _at_scrubber(self, place: tuple[float, float], piece: int, label: str) -> None:
        program = self._program_shown(label)
        if program:
            self.add_at(place, program, piece)
        else:
            self._desk.say(self.tr("A pause needs a planned program: touch the copper first."))

    def _add_numbered(self, piece: int) -> None:
        session, item = self._desk.bridge.session, self._running.following
        if session is None or item is None:
            return
        program = item.program

        def place(_progress: Progress) -> tuple[float, float]:
            path = pieces_of(program)[piece - 1].path
            x, y = _rigid(session).inverse().apply(path[len(path) // 2 : len(path) // 2 + 1])[0]
            return float(x), float(y)

        self._desk.ask("pause place", place, lambda at: self.add_at(at, program.name, piece))

    def _program_shown(self, label: str) -> str:
        """Name of the program that the canvas shows in its present view."""
        work = self._running.work
        if work is None:
            return ""
        if self._desk.window.canvas.canvas.view is View.PASSES:
            return next((one.program.name for one in work.items if one.work is not None), "")
        return next((one.program.name for one in work.items if one.program.title == label), "")

    # taking away

    def remove(self, pause: Pause) -> None:
        """No pause there any more."""
        session = self._desk.bridge.session
        if session is not None:
            remove_pause(session, pause)
            self._desk.say(self.tr("The pause is taken away."))

    def _remove_line(self, line: PauseLine) -> None:
        for pause, shown in self._known:
            if shown == line:
                self.remove(pause)
                return

    # the canvas's menu

    def show_menu(self, place: tuple[float, float], picked: object, at: QPoint) -> None:
        """What can be done at a place on the canvas."""
        menu = QMenu(self._desk.window.canvas.canvas)
        for action in self.actions_at(place, picked, menu):
            menu.addAction(action)
        for offered in self.more:
            menu.addActions(offered(place, menu))
        self.menu = menu
        if menu.actions():
            menu.popup(at)

    def actions_at(self, place: tuple[float, float], picked: object, parent: QObject) -> list[QAction]:
        """Pause before the piece there, or take the pause there away."""
        session, canvas = self._desk.bridge.session, self._desk.window.canvas.canvas
        if session is None:
            return []
        made = []
        reach = max(GRASP / canvas.seen.scale, NEAR)
        for pause in pauses_in(session.snapshot):
            if abs(pause.at[0] - place[0]) + abs(pause.at[1] - place[1]) <= reach:
                action = QAction(self.tr("Take the pause away"), parent)
                action.triggered.connect(lambda _=False, pause=pause: self.remove(pause))
                made.append(action)
        if isinstance(picked, Picked) and picked.kind == "run" and not made:
            number, program = self._piece(picked)
            action = QAction(self.tr("Pause before this piece"), parent)
            action.setEnabled(bool(program) and not self._desk.busy)
            action.triggered.connect(lambda: self.add_at(picked.at, program, number))
            made.append(action)
        return made

    def _piece(self, picked: Picked) -> tuple[int, str]:
        paths = self._desk.window.canvas.canvas.moving()
        labels = () if paths is None else paths.labels
        label = labels[picked.index] if picked.index < len(labels) else ""
        if self._desk.window.canvas.canvas.view is View.PASSES:
            return picked.index + 1, self._program_shown(label)
        return labels[: picked.index + 1].count(label), self._program_shown(label)

    # showing

    def update_from_job(self) -> None:
        """List the pauses of the work that is still to run."""
        session = self._desk.bridge.session
        if session is None:
            self._show(None)
            return
        work = self._running.work
        programs = () if work is None else tuple(one.program for one in work.items if not one.done)
        following = self._running.following
        wanted = pauses_in(session.snapshot)

        def find(_progress: Progress) -> _Found:
            lines = []
            back = _rigid(session) if wanted else None
            for program in programs:
                own = [one for one in wanted if one.program == program.name]
                pieces = pieces_of(program) if own else ()
                for one in own:
                    assert back is not None
                    x, y = back.apply([one.at])[0]
                    piece = piece_at(pieces, (float(x), float(y)), one.piece)
                    number = 0 if piece is None else piece.number
                    lines.append((one, PauseLine(program.title, number, len(pieces), one.at)))
            count = 0 if following is None else len(pieces_of(following.program))
            return _Found(tuple(lines), "" if following is None else following.program.title, count)

        self._desk.ask("pauses", find, self._show, self._no_places)

    def _no_places(self, _error: DrypointError) -> None:
        self._show(None)

    def _show(self, found: object) -> None:
        shown = found if isinstance(found, _Found) else _Found((), "", 0)
        self._known = shown.lines
        self._running.page.show_pauses([line for _, line in shown.lines], shown.program, shown.pieces)
        self._judge()

    def _judge(self) -> None:
        """While something runs its pauses are settled."""
        usable = not self._desk.busy
        self._running.page.allow_pauses(usable)
        self._desk.window.canvas.scrubber.pause_button.setEnabled(usable and self._running.work is not None)


def _rigid(session: Session) -> Rigid:
    fit = session.derived.fit(session.snapshot)
    return fit.rigid if isinstance(fit, Fit) else fit
