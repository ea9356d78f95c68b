"""Guided measurement of the play of an axis: contact made and broken on one wall, or a dial gauge.

Contact made is a reading with the play taken up one way, contact broken one with it taken up the
other way, on the very same wall. So their difference is the play, however far the bit ran on.
"""

from __future__ import annotations

from dataclasses import dataclass

from drypoint.errors import MachineError
from drypoint.machine.axes import Target
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.sideways import FAST, LONGEST, SLOW, require_clip
from drypoint.machine.procedures.touching import lift_free
from drypoint.machine.procedures.workplace import Workplace
from drypoint.progress import Progress
from drypoint.reference.play import AxisReport, Play, evaluate_axis, play_from_contacts
from drypoint.wording import say

CYCLES = 5
"""Readings from either side (ISO 230-2 asks for five)."""
FREE = 1.0
"""Farthest that is gone back for the contact to break, mm: more play than this is a broken nut."""
PRESS = 0.02
"""How far the bit goes on against the wall, mm: the first contact may be a chip's, and the play that is
measured does not depend on it. Bit and laminate give so much without harm."""
RUN_UP = 1.0
"""Distance from which a gauge's target is approached, mm: more than any play."""
CHIP = 0.01
"""Contacts with one wall lie nearer together than this, or a chip was touched, mm."""
SETTLED = 0.2
"""How far the bit starts off the wall in each cycle, mm."""


@dataclass(frozen=True, slots=True)
class Contacts:
    """Readings of one axis, mm: where contact was made and where it broke."""

    axis: str
    made: tuple[float, ...]
    broke: tuple[float, ...]

    @property
    def play(self) -> Play:
        """Evaluated: reversal value and repeatability in ISO 230-2's terms."""
        return play_from_contacts(self.made, self.broke)


def play_by_contact(
    place: Workplace,
    axis: str,
    sign: int,
    *,
    farthest: float = 2.0,
    cycles: int = CYCLES,
    progress: Progress | None = None,
) -> Contacts:
    """Contact made and broken on one wall, time and again; then the bit goes back to where it stood.

    For x and y the bit stands beside a wall of copper, below its top; for z above the copper. A cycle
    more is made than counts: the first one settles the axis.

    Parameters
    ----------
    axis : "x", "y" or "z"
    sign : +1 where the wall lies towards larger readings; z is felt downwards
    farthest : mm

    Raises
    ------
    MachineError
        No wall is met, or the contact does not break or is not steady.
    """
    require_clip(place)
    index = "xyz".index(axis)
    start = place.controller.place()
    way = -1 if axis == "z" else sign
    end = start[index] + way * min(farthest, LONGEST)
    fast = place.controller.feel(_target(axis, end), FAST)
    if not fast.touched:
        place.controller.move(_target(axis, start[index]), FAST)
        raise MachineError(
            say("No wall was met within {farthest:.1f} mm.", farthest=farthest),
            say("play of {axis}", axis=axis),
            "Bring the bit nearer to it, deep enough, and see that the clip is on this copper.",
        )
    wall = _Wall(place, axis, way, fast.work[index])
    kept: list[tuple[float, float]] = []
    for attempt in range(2 * cycles + 2):
        if progress is not None:
            progress.step(
                min(0.99, len(kept) / cycles),
                say("cycle {cycle} of {cycles}", cycle=len(kept) + 1, cycles=cycles),
            )
        found = wall.cycle()
        if found is not None and attempt:  # the first one settles the axis
            kept = _steady([*kept, found])
        if len(kept) == cycles:
            break
    place.controller.move(_target(axis, start[index]), FAST)
    if axis == "z":
        lift_free(place, start[2])
    if len(kept) < cycles:
        raise MachineError(
            "The contact is not steady: it was not made again, or did not break.",
            say("play of {axis}", axis=axis),
            "Clean wall and bit; look at clip and wire. A chip may hang between them.",
        )
    return Contacts(axis, tuple(made for made, _ in kept), tuple(broke for _, broke in kept))


def _steady(found: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """Cycles of one wall: where a chip was touched, contact was made elsewhere; that one does not count."""
    middle = sorted(made for made, _ in found)[len(found) // 2]
    return [one for one in found if abs(one[0] - middle) <= CHIP]


@dataclass(frozen=True, slots=True)
class _Wall:
    """A wall met at ``near`` along an axis, in the way ``way``."""

    place: Workplace
    axis: str
    way: int
    near: float

    def cycle(self) -> tuple[float, float] | None:
        """Where contact was made and where it broke; None if it was not steady."""
        place, axis, way = self.place, self.axis, self.way
        index = "xyz".index(axis)
        place.controller.move(_target(axis, self.near - way * SETTLED), FAST)
        made = place.controller.feel(_target(axis, self.near + way * SETTLED), SLOW)
        if not made.touched:
            return None
        place.controller.move(_target(axis, made.work[index] + way * PRESS), SLOW)
        if not place.controller.look().contact:
            return None
        left = place.controller.leave(_target(axis, made.work[index] - way * FREE), SLOW)
        return (made.work[index], left.work[index]) if left.touched else None


def _target(axis: str, value: float) -> Target:
    x, y, z = (value if axis == name else None for name in "xyz")
    return x, y, z


@dataclass(frozen=True, slots=True, eq=False)
class GaugeReadings:
    """What a dial gauge read at targets approached from below and from above, mm."""

    axis: str
    targets: tuple[float, ...]
    up: tuple[tuple[float, ...], ...]
    down: tuple[tuple[float, ...], ...]

    @property
    def report(self) -> AxisReport:
        """ISO 230-2 evaluation; deviations are from the first target's mean reading."""
        first = sum((*self.up[0], *self.down[0])) / (len(self.up[0]) + len(self.down[0]))
        zero = self.targets[0] - first

        def moved(rows: tuple[tuple[float, ...], ...]) -> list[list[float]]:
            return [[value + zero for value in row] for row in rows]

        return evaluate_axis(self.targets, moved(self.up), moved(self.down))


def play_by_gauge(
    place: Workplace,
    axis: str,
    *,
    span: float = 0.0,
    count: int = 1,
    cycles: int = CYCLES,
    progress: Progress | None = None,
) -> GaugeReadings:
    """Go to targets from both sides and have a dial gauge read at each, the bit where it stands first.

    Parameters
    ----------
    axis : "x" or "y"; the gauge must be able to follow ``RUN_UP`` beyond the targets on either side
    span, count : targets lie evenly over ``span`` mm from where the bit stands

    Raises
    ------
    MachineError
        Declined, or no number was given.
    """
    here = place.controller.place()["xyz".index(axis)]
    targets = [here + (span * k / (count - 1) if count > 1 else 0.0) for k in range(count)]
    up: list[list[float]] = [[] for _ in targets]
    down: list[list[float]] = [[] for _ in targets]
    feed = min(place.preset.max_rate[:2]) / 2.0
    for cycle in range(cycles):
        for order, side, kept in ((range(count), -1.0, up), (range(count - 1, -1, -1), 1.0, down)):
            for k in order:
                if progress is not None:
                    done = cycle + (0.5 if side > 0 else 0.0) + 0.5 * len(kept[k]) / cycles
                    progress.step(
                        min(0.99, done / cycles),
                        say("cycle {cycle} of {cycles}", cycle=cycle + 1, cycles=cycles),
                    )
                place.controller.move(_target(axis, targets[k] + side * RUN_UP), feed)
                place.controller.move(_target(axis, targets[k]), feed)
                kept[k].append(_read(place, axis, cycle, side))
    return GaugeReadings(
        axis, tuple(targets), tuple(tuple(row) for row in up), tuple(tuple(row) for row in down)
    )


def _read(place: Workplace, axis: str, cycle: int, side: float) -> float:
    came = say("from below") if side < 0 else say("from above")
    answer = place.ask(
        Request(
            RequestKind.READ,
            say(
                "Read the gauge, {upper} {came}, cycle {cycle}",
                upper=axis.upper(),
                came=came,
                cycle=cycle + 1,
            ),
            say(
                "The axis came to its target {came}. What does the gauge read? Towards larger "
                "{upper} counts as larger.",
                came=came,
                upper=axis.upper(),
            ),
            net=axis,
        )
    )
    if answer.value is None:
        raise MachineError("No reading was given.", say("play of {axis}", axis=axis))
    return answer.value
