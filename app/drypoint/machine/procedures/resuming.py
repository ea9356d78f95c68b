"""A broken run taken up again at the machine: find the position anew, then lead in over what was cut."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from drypoint.errors import MachineError
from drypoint.machine.controller import StreamEvent
from drypoint.machine.journal import RunJournal
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.bit_change import spindle_still_on
from drypoint.machine.procedures.checks import (
    ZERO_TOLERANCE,
    CheckResult,
    changed_zero,
    check_mark,
    set_by_mark,
)
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.running import RunResult, run_program
from drypoint.machine.procedures.touching import zero_at_spot, zero_by_paper
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.recovery import LEAD_IN
from drypoint.machine.state import Activity
from drypoint.program.model import Program


def resume_program(
    place: Workplace,
    program: Program,
    journal: RunJournal,
    *,
    first: int,
    mark: tuple[float, float],
    spot: tuple[float, float],
    by_paper: bool = False,
    lead_in: float = LEAD_IN,
    pauses: Sequence[int] = (),
    on_progress: Callable[[StreamEvent], None] | None = None,
) -> RunResult:
    """Take a run up again after a fault, from line ``first``, the journal's resume point.

    Parameters
    ----------
    journal : RunJournal
        Of the new run.
    mark : (x, y)
        A reference mark whose place is known, work coordinates, mm.
    spot : (x, y)
        The spot where zero of z was set, work coordinates, mm.

    Raises
    ------
    MachineError
        As `run_program` does; or if the bit broke and is not changed yet (no contact at the spot).
    """
    find_again(place, mark=mark, spot=spot, by_paper=by_paper)
    return run_program(
        place, program, journal, first=first, lead_in=lead_in, pauses=pauses, on_progress=on_progress
    )


def find_again(
    place: Workplace,
    *,
    mark: tuple[float, float],
    spot: tuple[float, float],
    by_paper: bool = False,
) -> CheckResult:
    """Unlock, get the bit out of the copper, find x and y at ``mark`` and zero of z at ``spot``.

    Nothing moves before the operator has seen where the bit stands. Leaves the clip off. Returns what
    the mark and the zero spot said; where the position was lost, how far it was off is not known.

    Raises
    ------
    MachineError
        If the controller needs homing first, or no copper is met at the spot.
    """
    get_clear(place)
    found = _over_mark(place, mark)
    believed = "z" in place.controller.known
    change = zero_again(place, spot, by_paper=by_paper)
    if believed and found.good and change is not None and abs(change) > ZERO_TOLERANCE:
        return changed_zero(change)
    return found


def get_clear(place: Workplace) -> None:
    """Spindle still, axes still, controller free, the bit straight up out of the copper by the operator.

    Raises
    ------
    MachineError
        If the controller needs homing first.
    """
    controller = place.controller
    controller.look()
    activity = controller.settle().activity  # a still bit must not be dragged along
    spindle_still_on(place)
    if activity in (Activity.NEEDS_YOU, Activity.HELD):
        controller.unlock()  # resets first: nothing that is left over goes on
    if controller.state.activity is Activity.NEEDS_YOU:
        raise MachineError(
            "The controller stays locked.", controller.name, "Home it, or look at its switches."
        )
    controller.command("M5")  # not every board resets when its port is opened
    place.ask(
        Request(
            RequestKind.JOG_TO,
            "Raise the bit",
            "The bit may stand in the copper. Bring it straight up, well clear of board and clamps.",
            ("The spindle must stand still.",),
        )
    )


def zero_again(place: Workplace, spot: tuple[float, float], *, by_paper: bool = False) -> float | None:
    """Zero of z anew at ``spot`` (work, mm), to which the operator brings the bit. Leaves the clip off.

    Returns how high the copper was by the zero that held before, mm; None by paper.

    Raises
    ------
    MachineError
        If no copper is met there.
    """
    place.controller.doubt("z")
    place.ask(
        Request(
            RequestKind.JOG_TO,
            "Over the zero spot",
            "Bring the bit a few millimetres above the copper at the zero spot.",
            place=spot,
        )
    )
    if by_paper or not place.preset.contact_input:
        zero_by_paper(place)
        return None
    check_contact(place, at=spot)
    change = zero_at_spot(place)
    clip_off(place)
    return change


def _over_mark(place: Workplace, mark: tuple[float, float]) -> CheckResult:
    """x and y from the mark: checked if they are believed, else set."""
    if {"x", "y", "z"} <= place.controller.known:
        return check_mark(place, mark)
    set_by_mark(place, mark)
    return CheckResult(False, None, "The position was lost; it was set anew at the reference mark.")
