"""Touches: fast, then slow; every one bounded in depth, the input seen open before each."""

from __future__ import annotations

from collections.abc import Callable

from numpy.typing import ArrayLike

from drypoint.errors import MachineError
from drypoint.geometry.points import as_points
from drypoint.machine.operator import Answer, Request, RequestKind
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.state import Clip
from drypoint.progress import Progress
from drypoint.surface.touch import Touch, Touches
from drypoint.wording import say

_FREE = 1.5
"""Farthest the bit is lifted to get free of the copper, mm."""

_MISSES = 3
"""So many touches in a row without contact are no accident."""

AGREE = 0.01
"""Two touches of one spot nearer than this agree, mm."""

_MOST = 6
"""Slow touches made at the zero spot before giving up."""

PAPER = 0.1
"""Thickness of common office paper (80 g/m²), mm; common practice, no source."""


def touch_points(
    place: Workplace,
    points: ArrayLike,
    *,
    expected: Callable[[float, float], float] | None = None,
    on_touch: Callable[[Touch], None] | None = None,
    progress: Progress | None = None,
) -> Touches:
    """Touch the copper at (N, 2) points, work coordinates, in the order given.

    Parameters
    ----------
    expected : callable, optional
        Height to expect at x, y (mm); without it the height of the touch before.

    Raises
    ------
    MachineError
        If the circuit fails, or touches find no contact time and again. Single points without
        contact (bare laminate) are left out and noted.
    """
    _require_clip(place)
    wanted = as_points(points)
    found: list[Touch] = []
    misses = 0
    highest = last = 0.0
    hop = place.touch.hop if expected is None else place.touch.low
    for index, (x, y) in enumerate(wanted):
        if progress is not None:
            progress.step(
                index / len(wanted), say("touch {index} of {count}", index=index + 1, count=len(wanted))
            )
        height = last if expected is None else expected(float(x), float(y))
        touch = touch_at(place, float(x), float(y), height=height, travel=max(highest, height) + hop)
        if touch is None:
            misses += 1
            place.note(say("no contact at {x:.2f}, {y:.2f}", x=x, y=y))
            if misses >= _MISSES:
                raise MachineError(
                    say("{misses} touches in a row found no contact.", misses=misses),
                    say("{x:.2f}, {y:.2f}", x=x, y=y),
                    "Is the clip still on, the bit still whole, and copper below it?",
                )
            continue
        misses, last = 0, touch.second
        highest = max(highest, touch.second)
        found.append(touch)
        if on_touch is not None:
            on_touch(touch)
    place.raise_to(highest + place.touch.hop)
    return Touches(tuple(found))


def touch_at(place: Workplace, x: float, y: float, *, height: float, travel: float) -> Touch | None:
    """Touch at one point twice; None if there is no contact within the depth allowed.

    Parameters
    ----------
    height : float
        Expected height of the copper, work z, mm.
    travel : float
        Height for the way there; contact on the way stops it, and it goes on higher.
    """
    go_above(place, x, y, travel)
    floor = height - place.touch.deepest
    fast = place.controller.probe(floor, place.touch.fast)
    if not fast.touched:
        place.raise_to(travel)
        return None
    lift_free(place, fast.work[2] + place.touch.back_off)
    slow = place.controller.probe(min(floor, fast.work[2] - place.touch.back_off), place.touch.slow)
    lift_free(place, max(travel, fast.work[2] + place.touch.back_off))
    if not slow.touched:
        return None
    return Touch(x, y, second=slow.work[2], first=fast.work[2])


def go_above(place: Workplace, x: float, y: float, travel: float) -> None:
    """Go across at ``travel`` (work z, mm) or higher, feeling the way.

    Raises
    ------
    MachineError
        If copper is touched even well above.
    """
    here = place.controller.place()
    if here[2] < travel:
        place.controller.move((None, None, travel))
    for attempt in range(_MISSES):
        result = place.controller.feel((x, y, None), place.across)
        if not result.touched:
            break
        place.note(say("copper touched on the way to {x:.2f}, {y:.2f}", x=x, y=y))
        lift_free(place, travel + (attempt + 1) * place.touch.hop)
    else:
        raise MachineError(
            "The bit touches something on its way across.",
            say("{x:.2f}, {y:.2f}", x=x, y=y),
            "Is zero set on the copper, and is nothing standing up from it?",
        )
    if place.controller.place()[2] > travel + place.touch.hop / 2.0:
        down = place.controller.feel((None, None, travel), place.touch.fast * 4.0)
        if down.touched:
            lift_free(place, down.work[2] + place.touch.back_off)


def lift_free(place: Workplace, height: float) -> None:
    """Lift to ``height`` (work z, mm), and on if the input still reads closed.

    Raises
    ------
    MachineError
        If it reads closed even well above the copper.
    """
    state = place.controller.move((None, None, height))
    top = height + _FREE
    while state.contact and height < top:
        height += _FREE / 3.0
        state = place.controller.move((None, None, height))
    if state.contact:
        raise MachineError(
            "The contact input stays closed with the bit lifted.",
            say("z {height:.2f}", height=height),
            "Does a chip hang between bit and copper, or is the wire shorted?",
        )


def zero_at_spot(place: Workplace, at: tuple[float, float] | None = None) -> float:
    """Zero of z by contact, at ``at`` (work, mm) or where the bit stands, a few mm above the copper.

    Returns how far the copper was from the zero that held before, mm (its height in the old frame).

    Raises
    ------
    MachineError
        If no copper is met within the depth searched.
    """
    _require_clip(place)
    if at is not None:
        go_above(place, *at, place.clearance)
    top = place.controller.place()[2]
    fast = place.controller.probe(top - place.touch.search, place.touch.fast)
    if not fast.touched:
        place.controller.move((None, None, top))
        raise MachineError(
            say("No copper was met within {search:g} mm.", search=place.touch.search),
            "",
            "Bring the bit to a few millimetres above the copper and try again.",
        )
    work, machine = _agreed(place, fast.work[2], top)
    place.controller.set_zero_height(machine)
    lift_free(place, max(place.touch.hop, top - work))
    return work


def _agreed(place: Workplace, first: float, top: float) -> tuple[float, float]:
    """Slow touches until two agree: height in work and in machine coordinates, mm.

    Everything cut hangs on this one height, and a chip under the bit makes a single touch read high.
    """
    found: list[tuple[float, float]] = []
    for _ in range(_MOST):
        lift_free(place, first + place.touch.back_off)
        slow = place.controller.probe(first - place.touch.back_off, place.touch.slow)
        if not slow.touched:
            lift_free(place, top)
            raise MachineError("The second touch found no contact.", "", "Look at clip, wire and bit.")
        here = (slow.work[2], slow.machine[2])
        for other in found:
            if abs(other[0] - here[0]) <= AGREE:
                lift_free(place, here[0] + place.touch.back_off)
                return (here[0] + other[0]) / 2.0, (here[1] + other[1]) / 2.0
        found.append(here)
    lift_free(place, top)
    raise MachineError(
        say(
            "{most} touches at the zero spot do not agree within {agree:.0f} µm.",
            most=_MOST,
            agree=AGREE * 1000,
        ),
        "",
        "Clean the copper and the bit there, see that the board lies firmly, then set zero again.",
    )


def zero_by_paper(place: Workplace, thickness: float = PAPER) -> None:
    """Zero of z with a slip of paper: the operator brings the bit down until the paper just drags."""
    answer = _ask_paper(place)
    place.controller.set_work(z=thickness if answer.value is None else answer.value)
    place.raise_to(place.clearance)


def feel_paper(place: Workplace, thickness: float = PAPER) -> float:
    """Height of the copper under the bit (work z, mm), felt for with a slip of paper; zero is left alone."""
    answer = _ask_paper(place)
    height = place.controller.place()[2] - (thickness if answer.value is None else answer.value)
    place.raise_to(place.clearance)
    return height


def _ask_paper(place: Workplace) -> Answer:
    return place.ask(
        Request(
            RequestKind.PAPER,
            "Zero by paper",
            "Spindle off. Lay paper on the copper and bring the bit down until the paper just drags.",
            ("Keep fingers away from the bit while it moves.",),
        )
    )


def _require_clip(place: Workplace) -> None:
    if place.controller.clip is not Clip.ON:
        raise MachineError(
            "The contact circuit has not been checked.", "", "Put the clip on and check the circuit first."
        )
