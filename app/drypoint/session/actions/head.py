"""The fixed offset between the spindle and another head, measured over marks on the blank."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from drypoint.cuts.model import Cut
from drypoint.errors import PlanError
from drypoint.machine.operator import Request, RequestKind
from drypoint.reference.fit import TOUCH_SIGMA
from drypoint.reference.head import HeadOffset, head_offset
from drypoint.session.actions.find import expected_place, go_over
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.wording import say


def measure_head(session: Session, station: Station, marks: Sequence[Cut]) -> HeadOffset:
    """Bring the bit, then the light spot, over each mark; keep the offset with its uncertainty.

    Parameters
    ----------
    marks : reference holes; two or more tell a slip

    Raises
    ------
    PlanError
        No marks.
    MachineError
        Declined, or something about the machine.
    """
    if not marks:
        raise PlanError("A mark is needed to measure the head.", "Head", "Make the reference holes first.")
    before = session.settings.laser.head
    bit: list[tuple[float, float]] = []
    spot: list[tuple[float, float]] = []
    for mark in marks:
        at = expected_place(session, mark)
        bit.append(_over(station, mark, at, say("bit")))
        there = (bit[-1][0] + before[0], bit[-1][1] + before[1])
        spot.append(_over(station, mark, there, say("light spot")))
    found = head_offset(bit, spot, spindle_sigma=TOUCH_SIGMA["eye"], other_sigma=TOUCH_SIGMA["light spot"])
    laser = replace(session.settings.laser, head=found.offset, head_sigma=round(found.sigma, 4))
    session.change("Offset of the head as measured", laser=laser)
    return found


def _over(station: Station, mark: Cut, at: tuple[float, float], what: str) -> tuple[float, float]:
    go_over(station, at)
    station.place.ask(
        Request(
            RequestKind.JOG_TO,
            say("The {what} over mark {label}", what=what, label=mark.label),
            say("Bring the {what} exactly over reference hole {label}.", what=what, label=mark.label),
            place=at,
        )
    )
    x, y, _ = station.controller.place()
    station.place.raise_to(station.place.clearance)
    return x, y
