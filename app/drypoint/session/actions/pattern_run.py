"""The V-bit's test pattern at the machine: its ground touched where its height is not known, then cut.

What is cut goes the way of every other program: cautions, check, journal, hold, stop, resume.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, box

from drypoint.machine.controller import StreamEvent
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.bit_change import change_bit
from drypoint.machine.procedures.contact import check_contact
from drypoint.machine.procedures.running import RunResult
from drypoint.machine.procedures.touching import touch_points, zero_by_paper
from drypoint.program.model import Program
from drypoint.program.place import place_cuts
from drypoint.program.settings import HeightLike
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.session.actions.check import check_before
from drypoint.session.actions.measure import end_contact, find_corner, put_in, zero_height, zero_spot
from drypoint.session.actions.run import OnEvent, run_item
from drypoint.session.codec import from_json, to_json
from drypoint.session.derive import Derived
from drypoint.session.ground import KIND
from drypoint.session.pattern import WHAT, Pattern, lay_pattern
from drypoint.session.session import Session
from drypoint.session.snapshot import Snapshot
from drypoint.session.station import Station
from drypoint.session.work import WorkItem, WorkKind, hole_settings
from drypoint.surface.model import Surface, fit_surface
from drypoint.surface.plan import plan_touches
from drypoint.surface.touch import Touch, Touches
from drypoint.wording import say

NAME = "05-test-pattern"
"""Name of the program."""
BIT = "bit"
"""Under which the record of a trial cut keeps the bit it was cut with."""
SPREAD = "spread"
"""Under which it keeps the mean spread of the copper's height on its lines, mm."""
TOUCHES = "coupon touches"
"""Kind of the record of touches made for a test pattern."""
COUNT = 14
"""Touches on a pattern whose height is not known."""
CHANGE_CLEAR = 5.0
"""Times the clearance that the bit is raised to be changed."""
UNKNOWN = 0.02
"""Spread of the copper's height where nothing was touched, mm (common practice, no source)."""
KNOWN = 0.006
"""Spread up to which the copper's height counts as known there, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class Placed:
    """A pattern ready to be cut: where it lies, its piece of work, how well its height is known, mm."""

    pattern: Pattern
    item: WorkItem
    spread: float


def prepare_pattern(
    session: Session,
    station: Station,
    progress: Progress,
    *,
    put: bool,
    on_touch: Callable[[Touch], None] | None = None,
) -> Placed:
    """Everything before the cut: the place, the bit, zero, and touches where the height is not known.

    Parameters
    ----------
    put : whether the V-bit must be put in first

    Raises
    ------
    PlanError
        There is no room for it, or it is not known where the board lies.
    MachineError
        After any fault of the machine.
    """
    if put:
        check_before(session, station)
    if not {"x", "y"} <= station.controller.known:
        _put(session, station, put=put)
        find_corner(session, station)
        put, above = False, True
    else:
        above = False
    pattern = lay_pattern(session.derived, session.snapshot, reach=reach_of(session, station))
    if station.place.preset.contact_input and not is_known(session, pattern):
        _put(session, station, put=put)
        _set_zero(session, station, above=above)
        _touch(session, station, pattern, progress, on_touch)
    elif put:
        change_bit(station.place, session.settings.bits.vbit, spot=zero_spot(session))
    elif "z" not in station.controller.known:
        _set_zero(session, station, above=above)
        end_contact(station)
    surface = pattern_surface(session.derived, session.snapshot)
    program = pattern_program(session.derived, session.snapshot, pattern, surface)
    spread = spread_on(session, pattern, surface)
    known = UNKNOWN if spread is None else float(spread.mean())
    return Placed(pattern, WorkItem(WorkKind.PATTERN, program, done=False), known)


def run_pattern(
    session: Session, station: Station, placed: Placed, *, on_event: OnEvent | None = None
) -> RunResult:
    """Cut it; from its first line on its ground counts as spent.

    Raises
    ------
    MachineError
        After any fault; the journal holds where to resume.
    """
    kept: list[int] = []

    def note(event: StreamEvent) -> None:
        if not kept:
            kept.append(_keep(session, placed))
        if on_event is not None:
            on_event(event)

    return run_item(session, station, placed.item, on_event=note)


def pattern_program(
    derived: Derived, snap: Snapshot, pattern: Pattern, surface: HeightLike | None
) -> Program:
    """The program of a pattern; without a surface the copper counts as flat at z = 0."""
    # play of x and y is taken up one way, or the ridges would be as wide as it makes them
    (program,) = place_cuts(
        pattern.cuts, derived.fit(snap), surface, hole_settings(snap.settings, surface), first=5
    )
    return replace(program, name=NAME, title=say("Test pattern"))


def pattern_surface(derived: Derived, snap: Snapshot) -> HeightLike | None:
    """The copper's height by all touches of this clamping, those for patterns too; None without any."""
    own = _own(snap)
    if not own:
        return derived.surface(snap)
    before = derived.touches(snap)
    if before is not None and before[1] == snap.setup:
        own = (*before[0].touches, *own)
    touches = Touches(own)
    return fit_surface(touches.points, give=touches.give)


def is_known(session: Session, pattern: Pattern) -> bool:
    """Whether the height of the copper is known well enough where a pattern lies."""
    spread = spread_on(session, pattern, pattern_surface(session.derived, session.snapshot))
    return spread is not None and float(spread.max()) <= KNOWN


def spread_on(session: Session, pattern: Pattern, surface: HeightLike | None) -> NDArray[np.float64] | None:
    """(N,) spread of the copper's height on a pattern's lines, mm; None where nothing was touched."""
    if not isinstance(surface, Surface):
        return None
    return surface.std(session.derived.fit(session.snapshot).apply(np.vstack(pattern.lines)))


def reach_of(session: Session, station: Station) -> Geometry | None:
    """Where the machine gets to, board frame; None where the controller does not know it itself.

    A controller that has homing and limits in software keeps to machine coordinates from the end
    of each axis's travel to 0 (public documentation of the protocol, settings 20 and 130).
    """
    facts, state = station.controller.facts, station.controller.state
    if not (facts.homing and facts.settings.get(20)) or state.work is None or state.machine is None:
        return None
    (wx, wy, _), (mx, my, _) = state.work, state.machine
    travel = [facts.settings.get(130 + axis, 0.0) for axis in range(2)]
    low = (wx - mx - travel[0], wy - my - travel[1])
    fit = session.derived.fit(session.snapshot)
    rigid = fit.rigid if isinstance(fit, Fit) else fit
    back: Geometry = shapely.transform(box(*low, wx - mx, wy - my), rigid.inverse().apply)
    return back


def _put(session: Session, station: Station, *, put: bool) -> None:
    """Have the V-bit put in, high enough above the board; its length is unknown afterwards."""
    if put:
        if "z" in station.controller.known:
            station.place.raise_to(station.place.clearance * CHANGE_CLEAR)
        put_in(station, session.settings.bits.vbit)


def _set_zero(session: Session, station: Station, *, above: bool) -> None:
    """Zero of z at its spot, where it is not believed; the clip stays on where there is a contact input.

    ``above`` is whether the bit stands a little above that spot already.
    """
    place, spot = station.place, zero_spot(session)
    if "z" in station.controller.known:
        check_contact(place, at=spot)
        return
    if not above:
        text = "Bring the bit a few millimetres above the copper at the zero spot."
        place.ask(Request(RequestKind.JOG_TO, "Over the zero spot", text, place=spot))
    if place.preset.contact_input:
        zero_height(session, station)
    else:
        zero_by_paper(place)


def _touch(
    session: Session,
    station: Station,
    pattern: Pattern,
    progress: Progress,
    on_touch: Callable[[Touch], None] | None,
) -> None:
    """Touches on the pattern's own lines; the clip is on before and off afterwards."""
    snap = session.snapshot
    fit = session.derived.fit(snap)
    lines = [fit.apply(line) for line in pattern.lines]
    region = shapely.transform(pattern.ground, fit.apply)
    places = plan_touches(lines, region, COUNT)
    found = touch_points(station.place, places, on_touch=on_touch, progress=progress)
    touches = Touches((*_own(snap), *found.touches))
    session.keep(TOUCHES, {"setup": snap.setup, "touches": touches})
    end_contact(station)


def _own(snap: Snapshot) -> tuple[Touch, ...]:
    """Touches made for patterns in this clamping."""
    record = snap.latest(TOUCHES)
    if record is None or record.data["setup"] != snap.setup:
        return ()
    return from_json(Touches, record.data["touches"], TOUCHES).touches


def _keep(session: Session, placed: Placed) -> int:
    snap, pattern = session.snapshot, placed.pattern
    return session.keep(
        KIND,
        {
            "what": WHAT,
            "setup": snap.setup,
            "face": snap.face().value,
            "extents": pattern.extents,
            "lines": pattern.lines,
            BIT: to_json(snap.settings.bits.vbit),
            SPREAD: placed.spread,
        },
    )
