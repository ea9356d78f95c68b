"""Touches sideways: a wall felt for from where the bit stands, never farther than was allowed.

The bit is down beside or inside the copper, so every way is short and bounded, and the way back is
the way that was come.
"""

from __future__ import annotations

import math

import numpy as np

from drypoint.errors import MachineError
from drypoint.machine.procedures.touching import lift_free
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.state import Clip
from drypoint.reference.rim import RimCentre, rim_centre
from drypoint.wording import say

LONGEST = 5.0
"""Farthest that is ever felt sideways, mm: a bit bends before the controller notices anything else."""
SPARE = 0.3
"""The rim of a hole is looked for this much farther than it should be, mm."""
BACK = 0.15
"""Between the fast and the slow contact, mm."""
FAST, SLOW = 30.0, 10.0
"""Feeds of contacts from the side, mm/min: a thin bit bends more easily than it is pushed up."""
BELOW = 0.5
"""How far below the copper the bit feels for a wall, mm: past the point of a drill, into its full width."""
CONTACT = 0.006
"""Standard deviation of one contact from the side, mm (common practice, no source)."""
LEAST_ROOM = 0.02
"""A bit with less room than this in a hole is not moved in it, mm."""


def require_clip(place: Workplace) -> None:
    """Refuse unless the contact circuit was checked and the clip is on.

    Raises
    ------
    MachineError
        If it was not.
    """
    if place.controller.clip is not Clip.ON:
        raise MachineError(
            "The contact circuit has not been checked.", "", "Put the clip on and check the circuit first."
        )


def touch_sideways(place: Workplace, way: tuple[float, float], farthest: float) -> tuple[float, float]:
    """Feel along ``way`` (x, y; any length) for a wall: quickly, then slowly; then back to the start.

    Returns the work coordinates of the slow contact, mm.

    Parameters
    ----------
    farthest : mm, at most `LONGEST`

    Raises
    ------
    MachineError
        No contact within ``farthest``, or the input reads closed when it must not.
    """
    if not 0.0 < farthest <= LONGEST:
        raise ValueError(f"{farthest} mm is no way to feel sideways")
    require_clip(place)
    size = math.hypot(*way)
    dx, dy = way[0] / size, way[1] / size
    x, y, _ = place.controller.place()
    fast = place.controller.feel((x + dx * farthest, y + dy * farthest, None), FAST)
    if not fast.touched:
        _go(place, x, y)
        raise MachineError(
            say("No wall was met within {farthest:.2f} mm.", farthest=farthest),
            say("{x:.2f}, {y:.2f}", x=x, y=y),
            "Is the bit deep enough, the clip on this copper, and the wall where it was said to be?",
        )
    gone = (fast.work[0] - x) * dx + (fast.work[1] - y) * dy
    back = max(0.0, gone - BACK)
    _go(place, x + dx * back, y + dy * back)
    ahead = min(farthest, gone + BACK)
    slow = place.controller.feel((x + dx * ahead, y + dy * ahead, None), SLOW)
    _go(place, x, y)
    if not slow.touched:
        raise MachineError(
            "The second touch found no contact.",
            say("{x:.2f}, {y:.2f}", x=x, y=y),
            "Look at clip, wire and bit.",
        )
    return slow.work[0], slow.work[1]


def _go(place: Workplace, x: float, y: float) -> None:
    """Back the way that was come."""
    place.controller.move((x, y, None), FAST)


def go_down(place: Workplace, height: float) -> None:
    """Down to ``height`` (work z, mm) where nothing is to be met.

    Raises
    ------
    MachineError
        If copper is met: the bit is not where it should be.
    """
    down = place.controller.feel((None, None, height), place.touch.fast)
    if down.touched:
        lift_free(place, down.work[2] + place.touch.hop)
        raise MachineError(
            "The bit met copper on its way down.",
            say("z {work:.2f}", work=down.work[2]),
            "Bring it over the middle of the hole, or farther off the edge. Is it thinner than the hole?",
        )


def find_rim(
    place: Workplace, hole: float, bit: float, *, copper: float = 0.0, contacts: int = 4
) -> RimCentre:
    """The centre of a hole from contacts with its rim, the bit standing over it; then it is lifted.

    A first round gives the centre nearly; from there the second round touches the rim squarely.

    Parameters
    ----------
    hole, bit : diameters, mm
    copper : height of the copper here, work z, mm
    contacts : three or four in each round

    Raises
    ------
    MachineError
        The bit is no thinner than the hole; no contact; or the contacts lie on no circle.
    """
    require_clip(place)
    room = (hole - bit) / 2.0
    if room < LEAST_ROOM:
        raise MachineError(
            say("A bit of {bit:.2f} mm has no room in a hole of {hole:.2f} mm.", bit=bit, hole=hole),
            "rim of a hole",
            "Take a thinner bit, or choose a wider hole.",
        )
    farthest = min(2.0 * room + SPARE, LONGEST)
    top = place.controller.place()[2]
    go_down(place, copper - BELOW)
    try:
        first = _round(place, farthest, contacts)
        _go(place, *rim_centre(first, sigma=CONTACT).centre)
        second = _round(place, farthest, contacts)
    finally:
        lift_free(place, max(top, copper + place.touch.hop))
    found = rim_centre(np.vstack((first, second)), sigma=CONTACT)
    if not found.round:
        raise MachineError(
            say(
                "The contacts lie on no circle: they miss it by up to {max:.3f} mm.",
                max=np.abs(found.residuals).max(),
            ),
            "rim of a hole",
            "A burr or a chip? Clean the hole, then touch it again.",
        )
    return found


def _round(place: Workplace, farthest: float, contacts: int) -> list[tuple[float, float]]:
    """Contacts at equal angles, opposite ones behind each other where there are four."""
    order = [0, 2, 1, 3] if contacts == 4 else list(range(contacts))
    angles = [2.0 * math.pi * k / contacts for k in order]
    return [touch_sideways(place, (math.cos(a), math.sin(a)), farthest) for a in angles]


def touch_edge(
    place: Workplace, axis: str, sign: int, bit: float, *, copper: float = 0.0, farthest: float = LONGEST
) -> float:
    """Where the edge of the copper lies along an axis, the bit standing beside it; then it is lifted.

    Work coordinate of the edge, mm. Measure with a drill or an end mill: a V-bit meets the edge
    somewhere on its cone.

    Parameters
    ----------
    axis : "x" or "y"
    sign : +1 where the edge lies towards larger readings
    bit : diameter where it meets the copper, mm

    Raises
    ------
    MachineError
        As `touch_sideways`, or copper is met on the way down.
    """
    require_clip(place)
    top = place.controller.place()[2]
    go_down(place, copper - BELOW)
    try:
        way = (float(sign), 0.0) if axis == "x" else (0.0, float(sign))
        touched = touch_sideways(place, way, farthest)
    finally:
        lift_free(place, max(top, copper + place.touch.hop))
    return touched["xy".index(axis)] + sign * bit / 2.0
