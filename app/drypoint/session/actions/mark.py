"""The legend at the machine: focus, a dark walk, the marks, a burn grid, and taking a broken run up."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

import numpy as np
from shapely import MultiPoint, get_coordinates

from drypoint.errors import MachineError
from drypoint.job.journal import JobJournal, unfinished
from drypoint.machine.controller import StreamEvent
from drypoint.machine.procedures.marking import dark_walk, focus_light, mark_to_resume, run_marks
from drypoint.machine.procedures.running import RunResult, fingerprint
from drypoint.program.laser import LaserProgram
from drypoint.session.laser_safety import DARK_WALK, FOCUS, cautions, require_material
from drypoint.session.legend import laser_settings
from drypoint.session.session import Session
from drypoint.session.station import Station

OnEvent = Callable[[StreamEvent], None]


def full_power(station: Station) -> float | None:
    """What the connected controller states as full power; None where it does not."""
    return station.controller.facts.settings.get(30)


def focus(session: Session, station: Station) -> None:
    """The focus light where the head stands, for as long as is set."""
    settings = session.settings
    driven = laser_settings(settings, full_power(station))
    focus_light(station.place, driven, FOCUS, seconds=settings.laser.focus_seconds)


def walk(station: Station, program: LaserProgram) -> None:
    """The head once round the extent of a program's marks, beam off."""
    x0, y0, x1, y1 = MultiPoint(extent(program)).bounds
    dark_walk(station.place, [(x0, y0), (x1, y0), (x1, y1), (x0, y1)], DARK_WALK)


def extent(program: LaserProgram) -> np.ndarray[tuple[int, int], np.dtype[np.float64]]:
    """(N, 2) places that a program lights, work coordinates, mm."""
    strokes = program.beam.strokes.reshape(-1, 2)
    return np.asarray(get_coordinates(MultiPoint(np.vstack((program.beam.spots, strokes)))))


def mark(
    session: Session, station: Station, program: LaserProgram, *, on_event: OnEvent | None = None
) -> RunResult:
    """Make the marks of a program; when it is finished, keep that.

    Raises
    ------
    PlanError
        If the material is not acknowledged.
    MachineError
        After any fault.
    """
    return run_laser(session, station, program, 0, on_event)


def take_up(
    session: Session, station: Station, program: LaserProgram, *, on_event: OnEvent | None = None
) -> RunResult:
    """Take the newest run of this program up again at the first mark that is not proven made.

    Raises
    ------
    MachineError
        If the newest run is not a broken one of this program.
    """
    record = unfinished(session.job)
    if record is None or fingerprint(record.lines) != fingerprint(program.lines):
        raise MachineError(
            "There is no broken run of these marks.", program.title, "Find the board again and mark anew."
        )
    return run_laser(session, station, program, mark_to_resume(program, record.executed), on_event)


def run_laser(
    session: Session,
    station: Station,
    program: LaserProgram,
    first: int,
    on_event: OnEvent | None,
    more: Mapping[str, object] = MappingProxyType({}),
) -> RunResult:
    """Run a program of the laser from a mark on, with its journal; when it is finished, keep that.

    ``more`` is kept with the run: what is needed to take it up again.

    Raises
    ------
    PlanError
        If the material is not acknowledged.
    MachineError
        After any fault, the beam being off.
    """
    chosen = session.settings.laser
    require_material(chosen)
    setup = session.snapshot.setup
    journal = JobJournal(session.job, program.title, program.lines, {"laser": True, "setup": setup, **more})
    result = run_marks(station.place, program, journal, cautions(chosen), first=first, on_progress=on_event)
    if result.finished:
        session.keep("done", {"program": program.name, "setup": setup})
    session.touched("run")
    return result
