"""The burn grid at the machine: in the free copper or where the light spot stands, and taken up again."""

from __future__ import annotations

from drypoint.errors import MachineError
from drypoint.job.journal import RunRecord, unfinished
from drypoint.machine.controller import StreamEvent
from drypoint.machine.procedures.marking import mark_to_resume
from drypoint.machine.procedures.running import RunResult, fingerprint
from drypoint.program.laser import LaserProgram
from drypoint.session.actions.mark import OnEvent, full_power, run_laser
from drypoint.session.actions.pattern_run import reach_of
from drypoint.session.codec import to_json
from drypoint.session.grid import GRID, WHAT, GridPlan, grid_at, lay_grid, read_plan
from drypoint.session.ground import KIND
from drypoint.session.legend import burn_grid_program, spot_fit
from drypoint.session.session import Session
from drypoint.session.station import Station


def place_grid(session: Session, station: Station) -> GridPlan:
    """Where the grid is burnt, as it is set; computes.

    Raises
    ------
    PlanError
        There is no room for it, or it is not known where the board lies.
    """
    snap = session.snapshot
    if not snap.settings.coupons.grid_at_spot:
        return lay_grid(session.derived, snap, reach_of(session, station))
    x, y, _ = station.controller.place()
    at = spot_fit(session.derived, snap).inverse().apply([(x, y)])[0]
    return grid_at(snap, (float(at[0]), float(at[1])))


def burn_grid(
    session: Session, station: Station, plan: GridPlan, *, on_event: OnEvent | None = None
) -> RunResult:
    """Burn it; from its first line on its ground counts as spent.

    Raises
    ------
    PlanError
        The material is not acknowledged, or the grid would lie beside the blank or on a clamp.
    MachineError
        After any fault, the beam being off.
    """
    kept: list[int] = []

    def note(event: StreamEvent) -> None:
        if not kept:
            kept.append(_keep(session, plan))
        if on_event is not None:
            on_event(event)

    program = _program(session, station, plan)
    return run_laser(session, station, program, 0, note, {GRID: to_json(plan)})


def grid_of(record: RunRecord | None) -> GridPlan | None:
    """The grid of a run that did not finish; None if it was of something else."""
    return read_plan(record.data[GRID]) if record is not None and GRID in record.data else None


def take_grid_up(session: Session, station: Station, *, on_event: OnEvent | None = None) -> RunResult:
    """Take the newest run up again at the first pulse that is not proven made, if it was of a grid.

    Raises
    ------
    MachineError
        It was not, or the grid would lie elsewhere now.
    """
    record = unfinished(session.job)
    plan = grid_of(record)
    if record is None or plan is None:
        raise MachineError("There is no broken burn grid.", "Burn grid", "Burn a new one.")
    program = _program(session, station, plan)
    if fingerprint(program.lines) != fingerprint(record.lines):
        raise MachineError(
            "The board lies elsewhere than when the grid was begun.", program.title, "Burn a new one."
        )
    first = mark_to_resume(program, record.executed)
    return run_laser(session, station, program, first, on_event, {GRID: to_json(plan)})


def _program(session: Session, station: Station, plan: GridPlan) -> LaserProgram:
    scale = full_power(station)
    return burn_grid_program(session.derived, session.snapshot, plan.grid, scale=scale)


def _keep(session: Session, plan: GridPlan) -> int:
    snap = session.snapshot
    return session.keep(
        KIND,
        {
            "what": WHAT,
            "setup": snap.setup,
            "face": snap.face().value,
            "extents": [plan.extent],
            "lines": plan.frames,
            GRID: to_json(plan),
        },
    )
