"""Run a piece of work with its journal, or take a broken run up again."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from typing import Any

from drypoint.errors import MachineError
from drypoint.job.journal import JobJournal, RunRecord, unfinished
from drypoint.machine.controller import StreamEvent
from drypoint.machine.procedures.bit_change import change_bit, put_in
from drypoint.machine.procedures.checks import CheckResult
from drypoint.machine.procedures.hover import hover_lap
from drypoint.machine.procedures.resuming import find_again as find_zero_again
from drypoint.machine.procedures.resuming import get_clear, zero_again
from drypoint.machine.procedures.running import STOPPED, RunResult, fingerprint, run_program
from drypoint.program.model import Program
from drypoint.session.actions.check import (
    check_before,
    keep_check,
    known_place,
    last_check,
    mark_suspect,
    unchecked,
)
from drypoint.session.actions.dust import remove_dust
from drypoint.session.actions.measure import find_corner, zero_spot
from drypoint.session.codec import to_json
from drypoint.session.kept_program import pack, unpack
from drypoint.session.pauses import pieces_to_pause_before
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.session.tooling import KIND as TOOLING
from drypoint.session.tooling import drilled_by
from drypoint.session.wear_book import worked
from drypoint.session.work import WorkItem, WorkKind, require_reach

OnEvent = Callable[[StreamEvent], None]
BEFORE = (WorkKind.GROOVES, WorkKind.HOLES, WorkKind.OUTLINE)
"""Work before which the dust of grooves is removed."""


def lap(session: Session, station: Station, *, height: float = 1.0) -> None:
    """Once round the board at a height above the copper, spindle off."""
    snap = session.snapshot
    fit = session.derived.fit(snap)
    surface = session.derived.surface(snap)
    x0, y0, x1, y1 = session.derived.board(snap).outline.bounds
    corners = fit.apply([(x0, y0), (x1, y0), (x1, y1), (x0, y1)])

    def at(x: float, y: float) -> float:
        return 0.0 if surface is None else float(surface.mean([(x, y)])[0])

    hover_lap(station.place, corners, height=height, surface=at)


def run_item(
    session: Session, station: Station, item: WorkItem, *, on_event: OnEvent | None = None, check: bool = True
) -> RunResult:
    """Run one piece of work; when it is finished, keep that.

    Raises
    ------
    MachineError
        After any fault; the journal holds where to resume. Before anything is cut, if what was cut
        last is in doubt (`check_before`).
    """
    require_reach(session.settings, item.program)
    if item.kind in BEFORE:
        remove_dust(session, station)
    check_before(session, station)
    data = {
        "program": pack(item.program),
        "work": _work_data(session, item),
        "setup": session.snapshot.setup,
        "tooling": _tooling_data(session, item.program),
    }
    journal = JobJournal(session.job, item.program.title, item.program.lines, data)
    pauses = [piece.line for piece in pieces_to_pause_before(session, item.program)]
    with _counted(station, item.program, journal):
        result = run_program(
            station.place, item.program, journal, pauses=pauses, on_progress=on_event, check_first=check
        )
    if result.finished:
        _keep_done(session, item.program.name, data)
    session.touched("run")
    return result


def to_resume(session: Session) -> RunRecord | None:
    """The newest run, if it was one of a bit and did not finish; marks of a laser are taken up apart."""
    record = unfinished(session.job)
    return None if record is not None and record.laser else record


def program_of(record: RunRecord) -> Program:
    """The program of a run as it was kept.

    Raises
    ------
    MachineError
        If its lines are not those of the run.
    StoreError
        If it cannot be read.
    """
    program = unpack(record.data["program"])
    if fingerprint(program.lines) != fingerprint(record.lines):
        raise MachineError(
            "The lines of the broken run do not agree with its program.", record.title, "Plan the pass anew."
        )
    return program


def resume(session: Session, station: Station, *, on_event: OnEvent | None = None) -> RunResult:
    """Take the newest run up again where it is not proven executed.

    Unless Stop was all that happened, the position is found again first (`find_again`), if that was
    not done since.

    Raises
    ------
    MachineError
        If there is nothing to resume, its lines are not those that were kept, or after any fault.
    """
    record = to_resume(session)
    if record is None:
        raise MachineError("There is no broken run.", "Run", "Start the next piece of work.")
    program = program_of(record)
    believed = {"x", "y", "z"} <= station.controller.known
    if not (believed and (record.reason == STOPPED or last_check(session) >= record.id)):
        find_again(session, station)
    journal = JobJournal(session.job, record.title, record.lines, record.data)
    pauses = [piece.line for piece in pieces_to_pause_before(session, program)]
    with _counted(station, program, journal, record.executed):
        result = run_program(
            station.place,
            program,
            journal,
            first=record.executed,
            check_first=False,
            pauses=[line for line in pauses if line >= record.executed],
            on_progress=on_event,
        )
    if result.finished:
        _keep_done(session, program.name, record.data)
    session.touched("run")
    return result


def find_again(session: Session, station: Station) -> CheckResult:
    """After a fault: bring the bit out of the copper, find x and y at a reference hole, z at the zero spot.

    While there is no reference hole yet, x and y are found at the corner of the blank; a board that was
    moved since it was laid down has to be found by its holes. Where a position
    that was still believed turns out wrong, what was cut since the last check is marked as suspect.

    Raises
    ------
    MachineError
        If the controller stays locked, or no copper is met at the spot.
    PlanError
        If the board was moved and has not been found since.
    """
    mark, spot = known_place(session), zero_spot(session)
    if mark is not None:
        found = find_zero_again(station.place, mark=mark, spot=spot)
    else:
        get_clear(station.place)
        find_corner(session, station)
        zero_again(station.place, spot)
        found = CheckResult(False, None, "The position was set anew at the corner of the blank.")
    if not found.good and found.away is not None:
        mark_suspect(session, unchecked(session), found.what)
    keep_check(session, good=True)
    return found


def get_ready(session: Session, station: Station, program: Program, *, put: bool) -> None:
    """Have the bit of a program in and the position known before it is run.

    After the machine was connected anew the position is found again, as after a fault. ``put`` says that
    another bit is in, or none that is known of.
    """
    if {"x", "y"} <= station.controller.known:
        if put:
            ready_bit(session, station, program, zero_spot(session))
        return
    if put:
        put_in(station.place, program.bit)
    find_again(session, station)


def ready_bit(session: Session, station: Station, program: Program, spot: tuple[float, float]) -> None:
    """Have the bit of a program put in and a new zero set at the same spot.

    The old bit is looked at first: see `check_before`.
    """
    check_before(session, station)
    change_bit(station.place, program.bit, spot=spot)


@contextmanager
def _counted(station: Station, program: Program, journal: JobJournal, first: int = 0) -> Iterator[None]:
    """What is proven executed counts as wear of the bit, however the run ends."""
    try:
        yield
    finally:
        if station.book is not None:
            done = min(journal.resume_point(), len(program.lines))
            station.book.add(program.bit.name, worked(program, first, max(first, done)))


def _work_data(session: Session, item: WorkItem) -> object:
    if item.work is None:
        return None
    snap = session.snapshot
    return {
        "pass": to_json(item.work),
        "grooves": session.derived.grooves_key(snap),
        "setup": snap.setup,
    }


def _tooling_data(session: Session, program: Program) -> object:
    """What is to be kept of tooling holes that the program drills."""
    snap, derived = session.snapshot, session.derived
    return drilled_by(snap, program, derived.tooling(snap), derived.board(snap).width)


def _keep_done(session: Session, name: str, data: Mapping[str, Any]) -> None:
    if data["work"] is not None:
        session.keep("pass", data["work"])
    if data.get("tooling") is not None:
        session.keep(TOOLING, data["tooling"])
    session.keep("done", {"program": name, "setup": session.snapshot.setup})
