"""Checks between cuts that catch what no protocol can tell: lost steps, a broken bit, a moved board."""

from __future__ import annotations

import math
from dataclasses import dataclass

from drypoint.machine.journal import RunJournal
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.touching import touch_at
from drypoint.machine.procedures.workplace import Workplace

ZERO_TOLERANCE = 0.03
"""Most that the copper's height at the zero spot may have changed, mm."""

MARK_TOLERANCE = 0.10
"""Most that a reference mark may be away from its place, mm."""


@dataclass(frozen=True, slots=True)
class CheckResult:
    """What a check found. ``away`` is in mm; None if there was no contact at all."""

    good: bool
    away: float | None
    what: str


def check_zero(
    place: Workplace,
    spot: tuple[float, float],
    *,
    height: float = 0.0,
    tolerance: float = ZERO_TOLERANCE,
    journal: RunJournal | None = None,
) -> CheckResult:
    """Touch the zero spot again, spindle off: is the copper still at ``height`` (work z, mm)?

    Finds a broken or slipped bit, lost steps of z and a board that came loose. Leaves the clip off.
    """
    check_contact(place, at=spot)
    touch = touch_at(place, *spot, height=height, travel=max(height, 0.0) + place.clearance)
    clip_off(place)
    if touch is None:
        return _tell(
            CheckResult(
                False, None, "No contact at the zero spot: the bit is broken or slipped, or z lost steps."
            ),
            journal,
        )
    away = touch.second - height
    if abs(away) <= tolerance:
        return _tell(CheckResult(True, away, f"zero spot within {abs(away) * 1000.0:.0f} µm"), journal)
    where = "lower" if away < 0.0 else "higher"
    return _tell(
        CheckResult(
            False,
            away,
            f"The copper at the zero spot reads {abs(away):.3f} mm {where}: the bit broke or slipped, steps "
            "were lost, or the board has moved.",
        ),
        journal,
    )


def check_mark(
    place: Workplace,
    mark: tuple[float, float],
    *,
    height: float = 0.5,
    tolerance: float = MARK_TOLERANCE,
    journal: RunJournal | None = None,
) -> CheckResult:
    """Go over a reference mark (work, mm); the operator brings the bit exactly over it if it is not.

    Finds lost steps of x and y. A position that was off is set anew to the mark's.
    """
    place.raise_to(max(place.clearance, height))
    place.controller.move((*mark, None))
    place.controller.move((None, None, height))
    answer = place.ask(
        Request(
            RequestKind.JOG_TO,
            "Over the reference mark",
            "Is the bit exactly over the mark? If not, bring it there.",
            place=mark,
        )
    )
    at = place.controller.place()
    away = math.hypot(at[0] - mark[0], at[1] - mark[1])
    if answer.by_hand:  # the controller saw nothing of it: how far is not known
        place.controller.set_work(x=mark[0], y=mark[1])
        return _tell(CheckResult(False, None, "The bit was brought over the mark by hand wheel."), journal)
    place.raise_to(place.clearance)
    if away <= tolerance:
        return _tell(CheckResult(True, away, f"reference mark within {away:.2f} mm"), journal)
    place.controller.move((at[0], at[1], None))
    place.controller.set_work(x=mark[0], y=mark[1])
    return _tell(
        CheckResult(False, away, f"The reference mark is {away:.2f} mm off: steps were lost, or it moved."),
        journal,
    )


def _tell(result: CheckResult, journal: RunJournal | None) -> CheckResult:
    if journal is not None:
        if result.good:
            journal.checked(result.what)
        else:
            journal.suspect(result.what)
    return result
