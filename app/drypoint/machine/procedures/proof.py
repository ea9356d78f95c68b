"""Island touch at the machine: the clip on one piece of copper, the bit touching its neighbours."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Protocol

from numpy.typing import ArrayLike

from drypoint.errors import MachineError
from drypoint.geometry.points import Points
from drypoint.machine.islands_plan import OUTER, ClipStep, Sighting, Spot
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.bit_change import stop_spindle
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.touching import go_above, lift_free
from drypoint.machine.procedures.workplace import Workplace
from drypoint.progress import Progress
from drypoint.wording import say

CAUTIONS = (
    "The spindle stands still and stays off.",
    "Every touch presses the bit's tip onto copper: use a blunt probe in its place if you have one, and "
    "set zero again after changing it.",
)


class Placing(Protocol):
    """Maps board points to work coordinates."""

    def apply(self, points: ArrayLike, /) -> Points:
        """(N, 2) board frame → (N, 2) work coordinates."""


def island_touch(
    place: Workplace,
    step: ClipStep,
    fit: Placing,
    height: Callable[[float, float], float],
    *,
    hop: float | None = None,
    onward: Callable[[Sequence[Sighting]], Sequence[Spot]] | None = None,
    on_sighting: Callable[[Sighting], None] | None = None,
    progress: Progress | None = None,
) -> tuple[Sighting, ...]:
    """Make the touches of one ``step``. Leaves the clip off.

    The copper that holds the clip is touched first and last: only if both find contact is an open
    touch in between worth anything. A touch without contact is repeated beside the first place.

    Parameters
    ----------
    height : callable
        Height of the copper at x, y in work coordinates, mm.
    hop : float, optional
        Height above it for moving across, mm; as for touches of unknown height if not given.
    onward : callable, optional
        What else to touch before the clip comes off, given what was seen so far.

    Raises
    ------
    MachineError
        If the clipped copper itself shows no contact.
    """
    stop_spindle(place)
    place.raise_to(place.clearance)
    place.ask(Request(RequestKind.CONFIRM, "Island touch", _what(step), CAUTIONS))
    check_contact(place, net=step.clip.net, at=_work(fit, step.clip.at))
    up = place.touch.hop if hop is None else hop
    _control(place, step.clip, fit, height, up)
    found: list[Sighting] = []
    waiting = list(step.touches)
    while waiting:
        spot = waiting.pop(0)
        if progress is not None:
            share = len(found) / (len(found) + len(waiting) + 1)
            progress.step(share, say("touching {net}", net=spot.net or "the copper outside"))
        contact = _touch(place, _work(fit, spot.at), height, place.touch.proof_depth, up)
        if not contact:
            contact = _touch(place, _work(fit, spot.again), height, place.touch.proof_depth, up)
        found.append(Sighting(step.clip.net, spot.net, contact))
        if on_sighting is not None:
            on_sighting(found[-1])
        if not waiting and onward is not None:
            waiting = list(onward(found))
    _control(place, step.clip, fit, height, up)
    place.raise_to(place.clearance)
    clip_off(place)
    return tuple(found)


def _what(step: ClipStep) -> str:
    where = say("the copper of {net}", net=step.clip.net) if step.clip.net != OUTER else "the copper outside"
    how = "A wire is held against" if step.by_hand else "The clip goes on"
    return say(
        "{how} {where}; {count} pieces are touched, {count2} gaps proved.",
        how=how,
        where=where,
        count=len(step.touches),
        count2=len(step.would_prove),
    )


def _work(fit: Placing, at: tuple[float, float]) -> tuple[float, float]:
    x, y = fit.apply([at])[0][:2]
    return float(x), float(y)


def _control(
    place: Workplace, clip: Spot, fit: Placing, height: Callable[[float, float], float], hop: float
) -> None:
    """The clipped copper must show contact, there and then."""
    for at in (clip.at, clip.again):
        if _touch(place, _work(fit, at), height, place.touch.deepest, hop):
            return
    raise MachineError(
        "The copper that holds the clip shows no contact: the touches made prove nothing.",
        clip.net or "the copper outside",
        "Clean the copper under the clip, look at the wire, then touch again.",
    )


def _touch(
    place: Workplace,
    at: tuple[float, float],
    height: Callable[[float, float], float],
    deepest: float,
    hop: float,
) -> bool:
    """Go down on one spot, at most ``deepest`` mm below the expected height: is there contact?"""
    top = height(*at)
    go_above(place, *at, top + hop)
    result = place.controller.probe(top + place.touch.back_off, place.touch.fast)
    if not result.touched:
        result = place.controller.probe(top - deepest, place.touch.slow)
    lift_free(place, top + hop)
    return result.touched
