"""How far a run is, on the run page, in the run strip and on the canvas."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

import numpy as np
from PySide6.QtCore import QObject

from drypoint.machine.controller import StreamEvent
from drypoint.machine.state import Activity
from drypoint.program.model import Program
from drypoint.session.session import Session
from drypoint.session.sheet import clock
from drypoint.ui.canvas.content import View
from drypoint.ui.language.words import local
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.worklist import Clockwork, clockwork
from drypoint.ui.pages.run import RunPage, Task

RUNNING = "run"
"""Name of the procedure that streams a program."""


class RunProgress(QObject):
    """Shows what came in since the last look, while a program runs.

    Attributes
    ----------
    name, title : str
        Of the program that runs, or ran last; empty before.
    """

    def __init__(self, desk: Desk, page: RunPage) -> None:
        super().__init__(desk)
        self._desk, self._page = desk, page
        self.name = self.title = ""
        self.newest: StreamEvent | None = None
        self._shown: StreamEvent | None = None
        self._program: Program | None = None
        self._clockwork: Clockwork | None = None
        self._tasks: tuple[Task, ...] = ()
        self._step = ("", 0.0, "")
        desk.progressed.connect(self._take_step)
        desk.looked.connect(lambda _: self._show())

    def begin(self, session: Session, program: Program, tasks: Sequence[Task]) -> None:
        """A program is about to run; ``tasks`` are listed beside it."""
        self.newest, self._shown, self._program, self._clockwork = None, None, program, None
        self.name, self.title, self._tasks = program.name, program.title, tuple(tasks)
        self._desk.ask("clockwork", lambda _: clockwork(session, program), self._take_clockwork)

    def take_event(self, event: StreamEvent) -> None:
        """Called on the machine's thread."""
        self.newest = event

    def _take_clockwork(self, found: object) -> None:
        self._clockwork = found if isinstance(found, Clockwork) else None

    def _take_step(self, name: str, share: float, text: str) -> None:
        self._step = (name, share, text)

    def _show(self) -> None:
        if not self._desk.busy:
            return
        running = self._desk.thread_.running
        if running != RUNNING:
            name, share, text = self._step
            shown = share if name == running else 0.0
            self._desk.window.strip.show_run(running, text if shown else "", shown, "")
            return
        event, program, times = self.newest, self._program, self._clockwork
        if program is None or event is None or event is self._shown or times is None:
            return
        self._shown = event
        self._show_event(program, event, times)

    def _show_event(self, program: Program, event: StreamEvent, times: Clockwork) -> None:
        left = times.left(event.executed, event.state.overrides[0])
        share = 1.0 - left * event.state.overrides[0] / 100.0 / max(1e-9, float(times.after[-1]))
        where = self.tr("line {n} of {all}").format(n=event.executed, all=event.total)
        self._desk.window.strip.show_run(
            program.title, where, share, self.tr("{t} left").format(t=clock(left))
        )
        held = event.state.activity is Activity.HELD
        until = (datetime.now() + timedelta(seconds=left)).strftime("%H:%M")
        work = event.state.work or (0.0, 0.0, 0.0)
        rows = (
            (self.tr("Line"), self.tr("{n} of {all}").format(n=event.executed, all=event.total)),
            (self.tr("Bit"), program.bit.name),
            (self.tr("Height of the bit"), local(f"{work[2]:.3f} mm").replace("-", "−")),
            (self.tr("Feed"), f"{event.state.feed:.0f} mm/min"),
            (self.tr("Spindle"), f"{event.state.spindle:.0f} /min"),
        )
        about = self.tr("held") if held else self.tr("left in this piece, done about {t}").format(t=until)
        self._page.show_run(program.title, clock(left), about, rows, self._tasks, running=True)
        self._show_way(program, event, times)

    def _show_way(self, program: Program, event: StreamEvent, times: Clockwork) -> None:
        """How much of the pass is cut, on the canvas."""
        panel = self._desk.window.canvas
        paths = panel.canvas.moving()
        if program.pass_number and paths is not None and panel.canvas.view is View.PASSES:
            at = min(event.executed, len(times.cut) - 1)
            panel.set_travelled(float(np.clip(times.cut[at], 0.0, 1.0)) * paths.length)
