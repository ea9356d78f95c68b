"""Checks between cuts: nothing more is cut before what no protocol can tell has been looked for."""

from __future__ import annotations

from collections.abc import Sequence

from drypoint.errors import MachineError
from drypoint.job.journal import RunRecord, note, runs
from drypoint.machine.procedures.checks import CheckResult, check_between, check_zero
from drypoint.session.actions.measure import zero_spot
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.session.work import is_done, marks_work

_CHECK = "check"

SUSPECT = "suspect"
"""How the note at a run begins whose cut is in doubt."""


def known_mark(session: Session) -> tuple[float, float] | None:
    """A reference hole that has been made, work coordinates; None as long as there is none."""
    snap = session.snapshot
    marks = session.derived.cuts(snap).marks
    if not marks or not all(is_done(snap, item.program.name) for item in marks_work(session.derived, snap)):
        return None
    x, y = session.derived.fit(snap).apply(marks[0].path)[0][:2]
    return float(x), float(y)


def known_place(session: Session) -> tuple[float, float] | None:
    """Something on the board by which a lost position is found: a mark, or a hole found in this clamping.

    Work coordinates; None while the blank lies as it was laid down and no mark has been made.
    """
    mark, snap = known_mark(session), session.snapshot
    found = [one.data["touched"] for one in snap.records["reference"] if one.data["setup"] == snap.setup]
    if mark is not None or snap.setup == 1 or not found:
        return mark
    x, y = found[-1]
    return float(x), float(y)


def last_check(session: Session) -> int:
    """Number of the newest run that a good check has covered; 0 if there is none."""
    good = [record.data["run"] for record in session.job.records(_CHECK) if record.data["good"]]
    return max(good, default=0)


def keep_check(session: Session, *, good: bool) -> None:
    """Keep that everything run up to now was checked."""
    done = runs(session.job)
    session.keep(_CHECK, {"run": done[-1].id if done else 0, "good": good})


def unchecked(session: Session) -> tuple[RunRecord, ...]:
    """Runs of the present clamping since the last good check."""
    last, setup = last_check(session), session.snapshot.setup
    return tuple(one for one in runs(session.job) if one.id > last and one.data["setup"] == setup)


def mark_suspect(session: Session, doubtful: Sequence[RunRecord], why: str) -> None:
    """Note at runs that what they cut is in doubt."""
    for one in doubtful:
        note(session.job, one.id, f"{SUSPECT}: {why}")
    session.touched("run")


def check_before(session: Session, station: Station) -> tuple[CheckResult, ...]:
    """Before more is cut: is the bit whole, and are no steps lost, since what was cut last?

    Touches the zero spot and looks at a reference hole. Does nothing where nothing was cut since the
    last check, or where the machine does not know its position anyhow.

    Raises
    ------
    MachineError
        If a check fails. What was cut since the last good one is then marked as suspect in the job.
    """
    doubtful = unchecked(session)
    if not doubtful or not {"x", "y", "z"} <= station.controller.known:
        return ()
    mark, spot = known_mark(session), zero_spot(session)
    if mark is None:
        results: tuple[CheckResult, ...] = (check_zero(station.place, spot),)
    else:
        results = check_between(station.place, spot=spot, mark=mark)
    bad = [one.what for one in results if not one.good]
    keep_check(session, good=not bad)
    if not bad:
        return results
    mark_suspect(session, doubtful, bad[0])
    raise MachineError(
        " ".join(bad),
        ", ".join(one.title for one in doubtful),
        "What was cut there since the last check is in doubt: look at it, and at the bit, before cutting "
        "on. Put a whole bit in and set zero again; the mark has already been set anew.",
    )
