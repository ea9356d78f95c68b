"""Checks between cuts that catch what no protocol can tell: lost steps, a broken bit, a moved board."""

from __future__ import annotations

import math
from dataclasses import dataclass

from drypoint.machine.journal import RunJournal
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.touching import feel_paper, touch_at
from drypoint.machine.procedures.workplace import Workplace
from drypoint.wording import reword, say

ZERO_TOLERANCE = 0.03
"""Most that the copper's height at the zero spot may have changed, mm."""

PAPER_TOLERANCE = 0.05
"""The same where it is felt for with paper, mm (common practice, no source)."""

MARK_TOLERANCE = 0.12
"""Most that a reference mark may be away from its place, mm. Eyes that err by 0.03 mm in each axis set
a position and judge it, each time as the mean of two looks, more than this apart once in 3000 times."""

_OVER_MARK = 0.5
"""Height above the copper from which a mark is judged, mm."""

_ASIDE = 0.7
"""From so far towards smaller x and y a mark is come upon the second time, mm."""

_UP = 0.3
"""Lift for that, mm."""


@dataclass(frozen=True, slots=True)
class CheckResult:
    """What a check found. ``away`` is in mm; None if there was no contact at all."""

    good: bool
    away: float | None
    what: str

    def __post_init__(self) -> None:
        reword(self, "what")


_LOOKS = 3
"""Touches of the zero spot before it is called changed."""


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
    By paper where there is no contact input.
    """
    if place.preset.contact_input:
        check_contact(place, at=spot)
        found = None
        for _ in range(_LOOKS):  # a chip under the bit makes one touch read high: look again
            touch = touch_at(place, *spot, height=height, travel=max(height, 0.0) + place.clearance)
            if touch is not None and (found is None or abs(touch.second - height) < abs(found - height)):
                found = touch.second
            if found is not None and abs(found - height) <= tolerance:
                break
        clip_off(place)
    else:
        place.raise_to(max(height, 0.0) + place.clearance)
        place.controller.move((*spot, None))
        found, tolerance = feel_paper(place), max(tolerance, PAPER_TOLERANCE)
    if found is None:
        return _tell(
            CheckResult(
                False, None, "No contact at the zero spot: the bit is broken or slipped, or z lost steps."
            ),
            journal,
        )
    away = found - height
    if abs(away) <= tolerance:
        return _tell(
            CheckResult(True, away, say("zero spot within {away:.0f} µm", away=abs(away) * 1000.0)), journal
        )
    return _tell(changed_zero(away), journal)


def changed_zero(away: float) -> CheckResult:
    """What it means that the copper at the zero spot reads ``away`` mm too high."""
    where = "lower" if away < 0.0 else "higher"
    return CheckResult(
        False,
        away,
        say(
            "The copper at the zero spot reads {away:.3f} mm {where}: the bit broke or "
            "slipped, steps were lost, or the board has moved.",
            away=abs(away),
            where=where,
        ),
    )


def check_mark(
    place: Workplace,
    mark: tuple[float, float],
    *,
    height: float = _OVER_MARK,
    tolerance: float = MARK_TOLERANCE,
    journal: RunJournal | None = None,
) -> CheckResult:
    """Go over a reference mark (work, mm); the operator brings the bit exactly over it if it is not.

    Finds lost steps of x and y. A mark that seems off is looked at a second time before that is
    believed; a position that was off is then set anew to the mark's.
    """
    place.raise_to(max(place.clearance, height))
    place.controller.move((*mark, None))
    place.controller.move((None, None, height))
    off = _seen_off(place, mark, tolerance)
    if off is None:  # the controller saw nothing of the way there: how far is not known
        place.controller.set_work(x=mark[0], y=mark[1])
        return _tell(CheckResult(False, None, "The bit was brought over the mark by hand wheel."), journal)
    away = math.hypot(*off)
    if away > tolerance:
        at = place.controller.place()
        place.controller.set_work(x=at[0] - off[0], y=at[1] - off[1])
    place.raise_to(place.clearance)
    if away <= tolerance:
        return _tell(CheckResult(True, away, say("reference mark within {away:.2f} mm", away=away)), journal)
    return _tell(
        CheckResult(
            False,
            away,
            say("The reference mark is {away:.2f} mm off: steps were lost, or it moved.", away=away),
        ),
        journal,
    )


def _seen_off(place: Workplace, mark: tuple[float, float], tolerance: float) -> tuple[float, float] | None:
    """How far the mark is seen from its place, mm, x and y; None if a hand wheel was turned."""
    if _look(place, mark):
        return None
    at = place.controller.place()
    off = (at[0] - mark[0], at[1] - mark[1])
    if math.hypot(*off) <= tolerance:
        return off
    again = _look_again(place, mark)
    return None if again is None else ((off[0] + again[0]) / 2.0, (off[1] + again[1]) / 2.0)


def set_by_mark(place: Workplace, mark: tuple[float, float]) -> None:
    """x and y anew from a mark (work, mm), found twice by eye; the mean counts. z need not be known."""
    by_hand = _look(place, mark)
    place.controller.set_work(x=mark[0], y=mark[1])
    off = None if by_hand else _look_again(place, mark)
    if off is None:
        place.controller.set_work(x=mark[0], y=mark[1])
        return
    at = place.controller.place()
    place.controller.set_work(x=at[0] - off[0] / 2.0, y=at[1] - off[1] / 2.0)


def _look_again(place: Workplace, mark: tuple[float, float]) -> tuple[float, float] | None:
    """A second look at a mark, come upon anew: how far it is from where it should be in x and y, mm.

    None if the bit was brought there by hand wheel, of which the controller saw nothing.
    """
    place.controller.jog(-_ASIDE, -_ASIDE, _UP, place.preset.max_rate[2])
    place.controller.settle()
    if _look(place, mark):
        return None
    at = place.controller.place()
    return at[0] - mark[0], at[1] - mark[1]


def _look(place: Workplace, mark: tuple[float, float]) -> bool:
    """Have the bit brought over a mark; whether that was done by hand wheel."""
    request = Request(
        RequestKind.JOG_TO,
        "Over the reference mark",
        "Is the bit exactly over the mark, a millimetre or less above it? If not, bring it there.",
        place=mark,
    )
    return place.ask(request).by_hand


def check_between(
    place: Workplace,
    *,
    spot: tuple[float, float],
    mark: tuple[float, float],
    journal: RunJournal | None = None,
) -> tuple[CheckResult, ...]:
    """What a silent fault cannot pass, before more is cut: the zero spot, then the mark.

    Returns both results; the journal is told of each. After a failure nothing may be cut before the
    cause is found, and what was cut since the last good check is in doubt. The zero spot comes first:
    its way there is felt, and only a height that is right is gone down to over the mark.

    Raises
    ------
    MachineError
        If the contact circuit itself does not work.
    """
    zero = check_zero(place, spot, journal=journal)
    height = _OVER_MARK if zero.good else place.clearance
    return zero, check_mark(place, mark, height=height, journal=journal)


def _tell(result: CheckResult, journal: RunJournal | None) -> CheckResult:
    if journal is not None:
        if result.good:
            journal.checked(result.what)
        else:
            journal.suspect(result.what)
    return result
