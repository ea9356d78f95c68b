"""The legend by laser at the machine, from the window: every light after its cautions."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any

from PySide6.QtCore import QObject

from drypoint.cuts.legend import Legend
from drypoint.errors import DrypointError, PlanError
from drypoint.job.journal import unfinished
from drypoint.machine.controller import StreamEvent
from drypoint.machine.procedures.running import RunResult
from drypoint.progress import Progress
from drypoint.session.actions import burn, mark
from drypoint.session.grid import GridPlan, newest_grid
from drypoint.session.laser_safety import material_name, require_material
from drypoint.session.legend import (
    legend_program,
    legend_up,
    spot_error,
    with_best_cell,
)
from drypoint.session.session import Session
from drypoint.session.sheet import clock
from drypoint.session.station import Station
from drypoint.ui.canvas.content import Layer
from drypoint.ui.language.words import fill, told
from drypoint.ui.legend_side.sheet import LegendFacts, LegendSheet
from drypoint.ui.machine_side.desk import Desk
from drypoint.wording import say

MARKING = "legend"
"""Name of what is computed for the sheet."""


@dataclass(frozen=True, slots=True, eq=False)
class Seen:
    """The rows, how well they will lie (mm, rms), and what keeps them from being marked."""

    legend: Legend
    error: float | None
    trouble: PlanError | None


class Legending(QObject):
    """Wires the sheet to job and machine."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self.sheet: LegendSheet | None = None
        self._grid_shown: tuple[GridPlan | None, list[tuple[float, float]]] | None = None
        self._ready = False
        desk.window.commands["legend"].triggered.connect(self.open)
        desk.bridge.job_changed.connect(lambda _: self.update())
        desk.changed.connect(self._judge)

    def open(self) -> None:
        """Show the sheet, and the legend on the canvas."""
        window = self._desk.window
        if self._desk.bridge.session is None:
            self._desk.say(self.tr("There is no job yet."))
            return
        if self.sheet is None:
            self.sheet = LegendSheet(window.theme, window.commands, window)
            self.sheet.edited.connect(self._change)
            self.sheet.focus.connect(self.focus)
            self.sheet.walk.connect(self.walk)
            self.sheet.placed.connect(self._place)
            self.sheet.mark.connect(self.mark)
            self.sheet.take_up.connect(self.take_up)
            self.sheet.burn.connect(self.burn)
            self.sheet.best.connect(self._choose)
        window.canvas.show_layer(Layer.LEGEND, True)
        window.canvas.show_layer(Layer.TRIALS, True)
        self.sheet.show()
        self.update()

    def update(self) -> None:
        """Everything anew from the job; the rows are computed in the background."""
        session, sheet = self._desk.bridge.session, self.sheet
        if sheet is None or not sheet.isVisible():
            return
        if session is None:
            sheet.hide()
            return
        sheet.show_settings(session.settings.laser, session.settings.coupons)
        self._show_grid()
        self._desk.ask(MARKING, lambda told_: _look_at(session, told_), self._show, self._show_error)

    # doing

    def focus(self) -> None:
        """The spot at 1 % for a limited time."""
        self._do(lambda session, station, _: mark.focus(session, station), self.tr("The focus light is out."))

    def walk(self) -> None:
        """Once round the extent, dark."""

        def work(session: Session, station: Station, told_: Progress) -> None:
            mark.walk(station, _program(session, station, told_))

        self._do(work, self.tr("Once round the legend: is it where it should be?"))

    def mark(self) -> None:
        """Mark the legend."""

        def work(session: Session, station: Station, told_: Progress) -> RunResult:
            program = _program(session, station, told_.part(0.0, 0.1))
            return mark.mark(session, station, program, on_event=telling(told_))

        self._do(work, self.tr("The legend is marked."))

    def take_up(self) -> None:
        """Take a broken run of the laser up where it stopped, a burn grid too."""
        session = self._desk.bridge.session
        grid = session is not None and burn.grid_of(unfinished(session.job)) is not None

        def work(session: Session, station: Station, told_: Progress) -> RunResult:
            if grid:
                return burn.take_grid_up(session, station, on_event=telling(told_))
            program = _program(session, station, told_.part(0.0, 0.1))
            return mark.take_up(session, station, program, on_event=telling(told_))

        self._do(work, self._burnt() if grid else self.tr("The legend is marked."))

    def burn(self) -> None:
        """A burn grid, in the corner that is set or from where the spot stands now."""

        def work(session: Session, station: Station, told_: Progress) -> RunResult:
            plan = burn.place_grid(session, station)
            return burn.burn_grid(session, station, plan, on_event=telling(told_))

        self._do(work, self._burnt())

    def _burnt(self) -> str:
        return self.tr("The grid is burnt: choose the field that looks best.")

    def _do(
        self,
        work: Callable[[Session, Station, Progress], Any],
        said: str,
    ) -> None:
        session = self._desk.bridge.session
        if session is None:
            return

        def done(result: object) -> None:
            if isinstance(result, RunResult) and not result.finished:
                self._desk.say(self.tr("Stopped; the beam is off. The run can be taken up again."))
                return
            self._desk.say(said)

        self._desk.with_station(
            self.tr("Legend by laser"), lambda station, told_: work(session, station, told_), done
        )

    def _show_grid(self) -> None:
        """The fields of the newest grid, to choose from."""
        session = self._desk.bridge.session
        if self.sheet is None or session is None:
            return
        plan, chosen = newest_grid(session.snapshot), session.settings.laser
        grid = None if plan is None else plan.grid
        here = [(one.power, one.dwell) for one in chosen.materials if one.name == material_name(chosen)]
        if (plan, here) != self._grid_shown:
            self._grid_shown = (plan, here)
            self.sheet.show_grid(grid, here)

    def _choose(self, row: int, column: int) -> None:
        session = self._desk.bridge.session
        plan = None if session is None else newest_grid(session.snapshot)
        if session is None or plan is None:
            return
        try:
            chosen = with_best_cell(session.settings.laser, plan.grid, row, column)
            session.change("Values of the burn grid", laser=chosen)
        except DrypointError as error:
            self._desk.show_error(error)
        self._grid_shown = None
        self._show_grid()

    def _place(self, name: str, value: object) -> None:
        session = self._desk.bridge.session
        if session is not None:
            coupons = replace(session.settings.coupons, **{name: value})  # type: ignore[arg-type]
            session.change("Place of the burn grid", coupons=coupons)

    def _change(self, name: str, value: object) -> None:
        session = self._desk.bridge.session
        if session is None:
            return
        chosen = replace(session.settings.laser, **{name: value})  # type: ignore[arg-type]
        if name == "coating" and value != session.settings.laser.coating:
            chosen = replace(chosen, declared_safe=False)  # another coating is to be declared anew
            known = [one for one in chosen.materials if one.name == value]
            chosen = replace(chosen, power=known[0].power, dwell=known[0].dwell) if known else chosen
        session.change("Legend by laser", laser=chosen)

    # showing

    def _show(self, found: object) -> None:
        assert isinstance(found, Seen)
        legend, error, trouble = found.legend, found.error, found.trouble
        session = self._desk.bridge.session
        if self.sheet is None or session is None:
            return
        chosen = session.settings.laser
        beam = legend.count * chosen.dwell if legend.pulses else 60.0 * legend.length / chosen.feed
        figure = f"{legend.count}" if legend.pulses else f"{legend.length:.0f}"
        text = self.tr("pulses") if legend.pulses else self.tr("mm of lines")
        rows = [
            (self.tr("Beam on"), clock(beam)),
            (self.tr("Drawn strokes covered"), f"{100 * legend.covered:.0f} %"),
            (self.tr("Left free for pads and holes"), f"{100 * legend.kept_free:.1f} %"),
        ]
        if error is not None:
            rows.append((self.tr("Place, 95 %"), fill(self.tr("within {far:.2f} mm"), far=2 * error)))
        what, hint = ("", "") if trouble is None else (told(trouble.what), told(trouble.hint))
        self.sheet.show_facts(LegendFacts(figure, text, tuple(rows), what, hint))
        self._ready = trouble is None
        self._judge()

    def _show_error(self, error: DrypointError) -> None:
        self._ready = False
        if self.sheet is not None:
            self.sheet.show_facts(LegendFacts(what=told(error.what), hint=told(error.hint)))
        self._judge()

    def _judge(self) -> None:
        session = self._desk.bridge.session
        if self.sheet is not None and session is not None:
            connected = self._desk.station is not None and not self._desk.busy
            record = unfinished(session.job)
            broken, grid = record is not None and record.laser, burn.grid_of(record) is not None
            self.sheet.show_usable(connected, self._ready, broken, grid)


def telling(progress: Progress) -> Callable[[StreamEvent], None]:
    """Tells how many of the lines are proven executed; called on the machine's thread."""

    def tell(event: StreamEvent) -> None:
        if event.total and not progress.cancelled:  # a run is ended by stopping it, never from here
            done = say("line {n} of {all}", n=event.executed, all=event.total)
            progress.step(event.executed / event.total, done)

    return tell


def _program(session: Session, station: Station, progress: Progress) -> Any:
    return legend_program(
        session.derived, session.snapshot, scale=mark.full_power(station), progress=progress
    )


def _look_at(session: Session, progress: Progress) -> Seen:
    """The rows, how well they will lie, and what keeps them from being marked. Computes."""
    derived, snap = session.derived, session.snapshot
    legend = derived.legend(snap, progress)
    try:
        require_material(snap.settings.laser)
        if not legend_up(derived, snap):
            raise PlanError(
                "The legend belongs on the other side.",
                "Legend",
                "Turn the board over and find it by its holes.",
            )
        error = spot_error(derived, snap)
    except PlanError as trouble:
        return Seen(legend, None, trouble)
    return Seen(legend, error, None)
