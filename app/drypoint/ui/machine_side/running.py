"""The run page at work: what comes next, its start, its progress, and taking a broken run up again."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer, Signal

from drypoint.bits.model import Bit
from drypoint.errors import DrypointError
from drypoint.machine.procedures.running import RunResult
from drypoint.program.model import Program
from drypoint.progress import Progress
from drypoint.session.actions import run
from drypoint.session.ground import KIND as TRIAL
from drypoint.session.run_titles import run_title
from drypoint.session.session import Session
from drypoint.session.sheet import clock
from drypoint.session.station import Station
from drypoint.session.work import WorkItem, WorkKind, run_seconds
from drypoint.ui.canvas.content import View
from drypoint.ui.design_side.words import place_and_hint
from drypoint.ui.language.words import fill, told
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.run_progress import RUNNING, RunProgress
from drypoint.ui.machine_side.run_tasks import tasks_of, title_of
from drypoint.ui.machine_side.worklist import WorkList, list_work
from drypoint.ui.pages.run import RunPage, Task
from drypoint.ui.parts.blocks import button

CONNECT = "connect"
"""What the run page asks for where there is no machine."""

DEBOUNCE = 150
"""Changes of the job that come together are one, ms."""

CABLE = 1.02
"""From so many times the time of the moves on, the time of the lines is named as the limit."""

CHANGES = frozenset(
    {
        "opened",
        "closed",
        "source",
        "settings",
        "touches",
        "reference",
        "stretch",
        "setup",
        "zero",
        "pass",
        "done",
        "run",
        "island touch",
        TRIAL,
    }
)
"""What a change of the job must concern to change the work."""


class Running(QObject):
    """Wires the run page and the progress in the run strip.

    Signals
    -------
    listed(object) : the new `WorkList`
    ran(str) : name of a program that was run to its end

    Attributes
    ----------
    before_cut : callable
        From the job to what is done at the machine before anything is cut; None for nothing.
    """

    listed = Signal(object)
    ran = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self.work: WorkList | None = None
        self.before_cut: Callable[[Session], Callable[[Station], None] | None] = lambda session: None
        self._why = ""
        self.page = RunPage(desk.window.theme)
        self.progress = RunProgress(desk, self.page)
        self.resume_button = button(self.tr("Resume the broken run"))
        self.check_button = button(self.tr("Find zero again, then resume"))
        self.skip_button = button(self.tr("Skip this piece"))
        self.page.add_actions(self.resume_button)
        self.page.add_actions(self.check_button)
        self.page.add_actions(self.skip_button)
        desk.window.set_page(7, self.page)
        self._later = QTimer(self, singleShot=True, interval=DEBOUNCE)
        self._later.timeout.connect(self._list)
        self._connect()
        self._show()

    def _connect(self) -> None:
        desk = self._desk
        self.page.start.connect(self.start_next)
        self.page.hover_lap.connect(self.hover_lap)
        desk.window.commands["hover_lap"].triggered.connect(self.hover_lap)
        self.resume_button.clicked.connect(lambda: self.resume(check=False))
        self.check_button.clicked.connect(lambda: self.resume(check=True))
        self.skip_button.clicked.connect(self.skip)
        desk.changed.connect(self._show)
        desk.failed.connect(self._show_error)

    # the list

    def update_from_job(self, what: str) -> None:
        """The job changed: list the work anew, if it concerns it."""
        if what in CHANGES:
            self._later.start()

    def _list(self) -> None:
        session = self._desk.bridge.session
        if session is None:
            self.take(None)
            return
        self._desk.ask("work", lambda progress: list_work(session, progress), self.take, self._no_list)

    def take(self, found: object) -> None:
        """Show this work."""
        self.work = found if isinstance(found, WorkList) else None
        self._why = ""
        self.listed.emit(self.work)
        self._show()

    def _no_list(self, error: DrypointError) -> None:
        self.work, self._why = None, error.text
        self.listed.emit(None)
        self._show()

    @property
    def following(self) -> WorkItem | None:
        """What is run next."""
        return None if self.work is None else self.work.following

    # doing

    def start_next(self) -> None:
        """Run the next piece of work, with its bit put in first if another one is there."""
        session, item = self._desk.bridge.session, self.following
        if session is None or item is None:
            return
        put, first = self._desk.bit_in != item.program.bit.name, self.before_cut(session)

        def work(station: Station, on_event: run.OnEvent) -> RunResult:
            run.get_ready(session, station, item.program, put=put)
            self.note_bit(item.program.bit)
            if first is not None:
                first(station)
            return run.run_item(session, station, item, on_event=on_event)

        self.stream(item.program, work)

    def stream(self, program: Program, work: Callable[[Station, run.OnEvent], RunResult]) -> None:
        """Do what streams a program, and show how far it is."""
        session = self._desk.bridge.session
        if session is None:
            return
        take = self.progress.take_event
        self._begin(session, program)
        self._desk.with_station(RUNNING, lambda station, _: work(station, take), self._ended, self._broken)
        self._show()

    def resume(self, *, check: bool) -> None:
        """Take the broken run up again; with ``check``, or if the position is lost, zero is found first."""
        session, work = self._desk.bridge.session, self.work
        if session is None or work is None or work.broken is None:
            return
        try:
            program = run.program_of(work.broken)
        except DrypointError as error:
            self._desk.show_error(error)
            return

        def go_on(station: Station, on_event: run.OnEvent) -> RunResult:
            if check or not {"x", "y", "z"} <= station.controller.known:
                run.find_again(session, station)
                self.note_bit(program.bit)
            return run.resume(session, station, on_event=on_event)

        self.stream(program, go_on)

    def skip(self) -> None:
        """Take the next piece of work as done: it was made elsewhere, or is not wanted."""
        session, item = self._desk.bridge.session, self.following
        if session is not None and item is not None and item.kind is not WorkKind.GROOVES:
            session.keep("done", {"program": item.program.name, "setup": session.snapshot.setup})
            self._desk.say(fill(self.tr("{title} is taken as done."), title=item.program.title))

    def hover_lap(self) -> None:
        """Once round the board above the copper."""
        session = self._desk.bridge.session
        if session is None:
            return

        def work(station: Station, _progress: Progress) -> None:
            run.lap(session, station)

        said = self.tr("Once round the board: nothing was in the way?")
        self._desk.with_station(self.tr("Hover lap"), work, lambda _: self._desk.say(said))

    def _begin(self, session: Session, program: Program) -> None:
        ready = self.tr("getting ready")
        self._desk.window.strip.show_run(program.title, ready, 0.0, "")
        tasks = tasks_of(self.work, now=program)
        self.page.show_run(program.title, clock(run_seconds(program)), ready, (), tasks, running=True)
        self.progress.begin(session, program, tasks)
        if program.pass_number:
            self._desk.window.canvas.set_view(View.PASSES)

    def note_bit(self, bit: Bit) -> None:
        """A bit was put in; called on the machine's thread."""
        self._desk.bit_in = bit.name

    def _broken(self, _error: DrypointError) -> None:
        self._later.start()  # the journal tells where to resume

    def _ended(self, result: object) -> None:
        assert isinstance(result, RunResult)
        title = self.progress.title
        if result.finished:
            text = fill(self.tr("{title} is done, {time}."), title=title, time=clock(result.seconds))
            if result.overlap:
                text += fill(
                    self.tr(" {mm:.1f} mm were cut twice at the lead-in, no deeper."), mm=result.overlap
                )
        else:
            text = self.tr("{title}: {reason} at line {n} of {all}. It can be resumed.").format(
                title=told(title), reason=told(result.reason), n=result.executed, all=result.total
            )
        self._desk.say(text)
        if result.finished:
            self.ran.emit(self.progress.name)

    # showing

    def _show_error(self, error: DrypointError) -> None:
        if self._desk.station is None:
            self.page.ask(CONNECT, told(error.what), place_and_hint(error), self.tr("Connect…"))
        else:
            self.page.show_note(error.what, place_and_hint(error), "error")

    def _show(self) -> None:
        running = self._desk.thread_.running == RUNNING
        work, item = self.work, self.following
        broken = None if work is None else work.broken
        connected = self._desk.station is not None
        ready = item is not None and connected and not self._desk.busy
        self.resume_button.setVisible(broken is not None and not self._desk.busy)
        self.check_button.setVisible(broken is not None and not self._desk.busy)
        self.skip_button.setVisible(
            item is not None and item.kind is not WorkKind.GROOVES and not self._desk.busy
        )
        for each in (self.resume_button, self.check_button):
            each.setEnabled(connected)
        if not running:
            self._show_waiting(ready, connected)
        self._say_notes(broken is not None, connected)

    def _tasks(self) -> list[Task]:
        return tasks_of(self.work, busy=self._desk.busy)

    def _show_waiting(self, ready: bool, connected: bool) -> None:
        item = self.following
        if item is None:
            done = self.work is not None and bool(self.work.items)
            lead = self.tr("Everything is done.") if done else self.tr("Nothing to run yet.")
            self.page.show_run(lead, "–", self._why, (), self._tasks())
        else:
            program = item.program
            change = self._desk.bit_in != program.bit.name
            rows = (
                (self.tr("Bit"), program.bit.name),
                (self.tr("Spindle"), f"{program.bit.speeds.spindle:.0f} /min"),
                (self.tr("Feed"), f"{program.bit.speeds.feed:.0f} mm/min"),
                (self.tr("Lines"), str(len(program.lines))),
            )
            start = self.tr("Change the bit, then start") if change else self.tr("Start")
            self.page.show_run(
                title_of(item),
                clock(run_seconds(program)),
                self._expected(program),
                rows,
                self._tasks(),
                ready=ready,
                start=start,
            )
        self.page.lap_button.setEnabled(connected and not self._desk.busy)
        strip = self._desk.window.strip
        if not self._desk.busy:
            title = (
                self.tr("Nothing to run")
                if item is None
                else fill(self.tr("Next run: {t}"), t=title_of(item))
            )
            bit = "" if item is None or item.program.bit.name in title_of(item) else item.program.bit.name
            strip.show_run(title, bit, 0.0, "")

    def _expected(self, program: Program) -> str:
        """What the time is, whether the cable is slower than the machine, and what hops save."""
        if run_seconds(program) > program.seconds * CABLE:
            return self.tr("expected; the cable is the limit: so many short lines take longer than the moves")
        if program.saved >= 1.0:
            return self.tr("expected; low hops save {time}").format(time=clock(program.saved))
        return self.tr("expected")

    def _say_notes(self, broken: bool, connected: bool) -> None:
        work = self.work
        if self._desk.error is not None:
            self._show_error(self._desk.error)
        elif self._desk.busy:
            self.page.show_note("")
        elif broken and work is not None and work.broken is not None:
            run_ = work.broken
            why = told(run_.reason or "") or self.tr("Drypoint was ended")
            text = self.tr(
                "Line {n} of {all} is the last one proven done ({why}). Resuming overlaps a little and never "
                "goes deeper. Or start the next piece instead."
            ).format(n=run_.executed, all=len(run_.lines), why=why)
            self.page.show_note(fill(self.tr("{t} was broken off"), t=run_title(run_.title)), text, "caution")
        elif not connected:
            self.page.ask(
                CONNECT,
                self.tr("No machine is connected"),
                self.tr("A machine on a serial port, or the bench: a simulated one."),
                self.tr("Connect…"),
            )
        elif work is not None and work.waits:
            self.page.show_note(self.tr("No pass can be planned"), work.waits, "caution")
        else:
            self.page.show_note("")
