"""Zero and the copper's height: where the blank lies, whether it is held, how it is bent."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import shapely
from shapely import Point

from drypoint.bits.model import Bit
from drypoint.board.model import Finding
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, as_points
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.bit_change import CHANGE
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.touching import go_above, touch_points, zero_at_spot
from drypoint.passes.chance import doubtful
from drypoint.progress import Progress
from drypoint.session.codec import from_json
from drypoint.session.ground import trial_cuts
from drypoint.session.layout import INSET
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.surface.give import give_report
from drypoint.surface.model import Surface
from drypoint.surface.plan import Worth, next_touches, worth_touching
from drypoint.surface.touch import Touch, Touches
from drypoint.wording import say

SAME = 0.01
"""Planned and touched places closer than this are one, mm."""

RECUT_LIFT = 0.25
"""Time of lifting, travelling and plunging per mm of groove that is cut again, s/mm: two seconds for each
piece of about 8 mm (common practice, no source)."""

SURVEY = 5
"""Places along each edge of the blank that are touched to see whether it is held."""


def put_in(station: Station, bit: Bit) -> None:
    """Have a bit put in; its length is unknown afterwards."""
    station.place.ask(
        Request(RequestKind.CHANGE_BIT, say("Put in {name}", name=bit.name), "", CHANGE, bit=bit)
    )
    station.controller.doubt("z")


def find_corner(session: Session, station: Station) -> None:
    """Work zero in x and y: the bit is brought over the spot inside the blank's corner."""
    request = Request(
        RequestKind.JOG_TO,
        "Over the corner of the blank",
        say(
            "Bring the bit over the copper {inset:g} mm in from the left and from the "
            "front edge of the blank, about 1 mm above it.",
            inset=INSET,
        ),
    )
    station.place.ask(request)
    station.controller.set_work(x=INSET, y=INSET)
    station.controller.trust("xy")


def zero_height(session: Session, station: Station, *, at: tuple[float, float] | None = None) -> float:
    """Check the contact circuit and set z to zero on the copper at the zero spot; the clip stays on."""
    check_contact(station.place)
    change = zero_at_spot(station.place, at)
    session.keep("zero", {"setup": session.snapshot.setup, "spot": list(at or (INSET, INSET))})
    return change


def survey_hold(session: Session, station: Station, progress: Progress) -> tuple[Finding, ...]:
    """Touch along the edges of the blank and say which of them gives; the clip is on."""
    snap = session.snapshot
    layout = session.derived.layout(snap)
    spent = [shapely.box(*extent) for one in trial_cuts(snap) for extent in one.extents]
    avoided = shapely.union_all([layout.keepout, *spent])
    places = [
        place
        for place in _edge_places(layout.width, layout.height)
        if not shapely.intersects(avoided, Point(layout.place.inverse().apply([place])[0]))
    ]
    touches = touch_points(station.place, as_points(places), progress=progress)
    return give_report(touches, (0.0, 0.0, layout.width, layout.height))


def _edge_places(width: float, height: float) -> list[tuple[float, float]]:
    along_x = np.linspace(INSET, width - INSET, SURVEY)
    along_y = np.linspace(INSET, height - INSET, SURVEY)[1:-1]
    around = [(x, INSET) for x in along_x] + [(width - INSET, y) for y in along_y]
    around += [(x, height - INSET) for x in along_x[::-1]] + [(INSET, y) for y in along_y[::-1]]
    return [(float(x), float(y)) for x, y in around]


def measure_surface(
    session: Session,
    station: Station,
    progress: Progress,
    *,
    on_touch: Callable[[Touch], None] | None = None,
) -> Touches:
    """Touch the copper by the plan and keep the heights; the clip is on and z is zero.

    What was touched before a fault is kept too, and is not touched again.
    """
    snap = session.snapshot
    planned = session.derived.touch_plan(snap, progress.part(0.0, 0.1))
    found = list(_touched_before(session))
    at = [(touch.x, touch.y) for touch in found]
    wanted = [(x, y) for x, y in planned if not any(abs(x - a) + abs(y - b) < SAME for a, b in at)]

    def note(touch: Touch) -> None:
        found.append(touch)
        if on_touch is not None:
            on_touch(touch)

    try:
        touch_points(station.place, as_points(wanted), on_touch=note, progress=progress)
    except BaseException:
        session.job.set_aside("touches part")
        session.keep("touches part", {"setup": snap.setup, "touches": Touches(tuple(found))})
        raise
    session.job.set_aside("touches part")
    touches = Touches(tuple(found))
    session.keep("touches", {"setup": snap.setup, "touches": touches})
    return touches


def weigh_touches(session: Session, progress: Progress) -> Worth:
    """Whether further touches pay, where and how many; computes. Places in work coordinates, mm.

    Raises
    ------
    PlanError
        If nothing was touched in this clamping yet.
    """
    surface, lines, region = _measured(session)
    settings = session.settings
    doubt = doubtful(settings.cuts.depth, settings.blank.copper, settings.passes.play)
    per_mm = 60.0 / settings.bits.vbit.speeds.feed + RECUT_LIFT
    return worth_touching(surface, lines, region, doubt=doubt, seconds_per_mm=per_mm, progress=progress)


def _measured(session: Session) -> tuple[Surface, list[Points], shapely.Geometry]:
    """The surface of this clamping, the grooves and where copper may be touched, work coordinates."""
    snap = session.snapshot
    surface = session.derived.surface(snap)
    if not isinstance(surface, Surface):
        raise PlanError("Nothing was touched in this clamping yet.", "Surface", "Touch the copper first.")
    fit = session.derived.fit(snap)
    lines = [fit.apply(line) for line in session.derived.cuts(snap).grooves.lines]
    region = shapely.transform(session.derived.touchable(snap), fit.apply)
    return surface, lines, region


def touch_more(
    session: Session,
    station: Station,
    count: int,
    progress: Progress,
    *,
    on_touch: Callable[[Touch], None] | None = None,
) -> Touches:
    """Touch more places where they lessen the doubt along the grooves most.

    As many as pay; where none does, ``count`` all the same, since it was asked for. The clip is on
    and z is as it was for the earlier touches.

    Raises
    ------
    PlanError
        If nothing was touched in this clamping yet.
    """
    surface, lines, region = _measured(session)
    snap = session.snapshot
    before = session.derived.touches(snap)
    assert before is not None  # there is a surface
    places = weigh_touches(session, progress.part(0.0, 0.1)).places
    if not len(places):
        places = next_touches(surface, lines, region, count, progress=progress.part(0.1, 0.2))
    found = touch_points(
        station.place,
        places,
        expected=lambda x, y: float(surface.mean([(x, y)])[0]),
        on_touch=on_touch,
        progress=progress.part(0.2, 1.0),
    )
    touches = Touches((*before[0].touches, *found.touches))
    session.keep("touches", {"setup": snap.setup, "touches": touches})
    return touches


def touch_copper(
    session: Session,
    station: Station,
    progress: Progress,
    *,
    put: bool,
    survey: bool = True,
    on_touch: Callable[[Touch], None] | None = None,
) -> tuple[Finding, ...]:
    """Everything from the bit in the spindle to the copper's height: corner, circuit, zero, hold, touches.

    Parameters
    ----------
    put : whether the V-bit must be put in first
    survey : whether the edges are touched first, to see which of them gives

    Returns which edges gave; the person was asked to clamp them before the touches were made.
    """
    if put:
        put_in(station, session.settings.bits.vbit)
    if not {"x", "y"} <= station.controller.known:
        find_corner(session, station)
    spot = zero_spot(session)
    zero_height(session, station, at=spot if "z" in station.controller.known else None)
    loose: tuple[Finding, ...] = ()
    if survey:
        loose = survey_hold(session, station, progress.part(0.0, 0.2))
        if loose:
            _have_it_clamped(station, loose)
            zero_height(session, station, at=spot)
    measure_surface(session, station, progress.part(0.2, 1.0), on_touch=on_touch)
    end_contact(station)
    return loose


def zero_spot(session: Session) -> tuple[float, float]:
    """The spot on the copper where z is zero, wherever the board lies now; work coordinates."""
    snap = session.snapshot
    board = session.derived.layout(snap).place.inverse().apply([(INSET, INSET)])
    x, y = session.derived.fit(snap).apply(board)[0]
    return float(x), float(y)


def _have_it_clamped(station: Station, loose: tuple[Finding, ...]) -> None:
    said = " ".join(f"{one.what} {one.hint}".strip() for one in loose)
    station.place.ask(Request(RequestKind.CONFIRM, "Clamp it there", said))
    if station.bench is not None:
        station.bench.clamp_edges()


def _touched_before(session: Session) -> tuple[Touch, ...]:
    """Touches of an interrupted measurement in this clamping, since z was last set to zero."""
    snap = session.snapshot
    part, zero = snap.latest("touches part"), snap.latest("zero")
    if part is None or part.data["setup"] != snap.setup or (zero is not None and zero.id > part.id):
        return ()
    return from_json(Touches, part.data["touches"], "touches").touches


def end_contact(station: Station) -> None:
    """Clip off; only then may the spindle start."""
    clip_off(station.place)


def to_zero_spot(station: Station, at: tuple[float, float] = (INSET, INSET)) -> None:
    """Go above the zero spot."""
    go_above(station.place, *at, station.place.clearance)
