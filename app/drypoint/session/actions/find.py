"""Reference holes at the machine: touch them in one of several ways, say how well the board is found."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import MachineError, PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import Request, RequestKind
from drypoint.reference.fit import Fit
from drypoint.reference.worth import Worth, pad_radii, worth
from drypoint.session.plans import Placing
from drypoint.session.session import Session
from drypoint.session.snapshot import Snapshot
from drypoint.session.station import Station
from drypoint.session.two_sides import carried, design_places
from drypoint.wording import say, strung

SPOT = "light spot"
"""The way of finding in which another head than the spindle is over the hole."""
TAKE_UP = 0.3
"""Holes are gone to from this far towards smaller x and y, so that play is taken up one way, mm."""
AGREE = 3.035
"""Two touches of a hole agree up to this many standard deviations: 99 % of good ones do (the Rayleigh
distribution: sqrt(-2 ln 0.01))."""
_NO_HOLE = say(
    "If there is no hole near, the blank was turned the wrong way: turn it again before you go on."
)
HAND_OFF = "Hold the board, not the bit; spindle off and still."


@dataclass(frozen=True, slots=True, eq=False)
class FitFacts:
    """How well the board is found; ``rms`` and ``worst`` in mm, None while it lies where it was laid."""

    holes: int
    rms: float | None
    worst: float | None
    worth: Worth | None
    fit: Fit | None


def moved(session: Session, note: str) -> None:
    """Say that the board was taken off, turned or clamped anew: heights and fit are stale from now on."""
    session.keep("setup", {"note": note})


def expected_place(session: Session, mark: Cut) -> tuple[float, float]:
    """Where a reference hole is likely to be now, work coordinates.

    By the fit where there is one. After the board was moved: where it lay before, shifted as far as
    the one hole that was found since.
    """
    x, y = likely(session).apply([mark.path[0]])[0][:2]
    return float(x), float(y)


def likely(session: Session) -> Placing:
    """The fit; where there is none yet, the one before, shifted as far as the one hole found since."""
    snap = session.snapshot
    try:
        return session.derived.fit(snap)
    except PlanError:
        before = _last_fit(session)
        touched = [record.data for record in snap.records["reference"] if record.data["setup"] == snap.setup]
        if not touched:
            return before
        found = before.apply(design_places(snap, touched, session.derived.board(snap).width))[0]
        rigid = before.rigid if isinstance(before, Fit) else before
        shift = (touched[0]["touched"][0] - found[0], touched[0]["touched"][1] - found[1])
        return rigid.then(Rigid(0.0, (float(shift[0]), float(shift[1]))))


def _last_fit(session: Session) -> Placing:
    """The fit of the newest clamping before this one that has one."""
    snap = session.snapshot
    layout = session.derived.layout(snap)
    for setup in range(snap.setup - 1, 1, -1):
        try:
            return carried(session.derived.fit_of(snap, setup), snap, setup, layout)
        except PlanError:
            continue
    return carried(session.derived.fit_of(snap, 1), snap, 1, layout)


def touch_hole_here(session: Session, station: Station, mark: Cut) -> tuple[float, float]:
    """The bit stands over a reference hole now: keep where that is, work coordinates, and lift it.

    Raises
    ------
    MachineError
        If x or y are not to be believed: a place that was found by hand wheel cannot be read.
    """
    missing = {"x", "y"} - station.controller.known
    if missing:
        raise MachineError(
            say("The position of {names} is not known.", names=" and ".join(sorted(missing))),
            say("reference hole {label}", label=mark.label),
            "Set it by hand wheel first, at a place you know: the corner, or this hole.",
        )
    x, y, _ = station.controller.place()
    heading = station.controller.heading[:2]
    station.place.raise_to(station.place.clearance)
    return _keep_seen(session, mark, (x, y), heading)


def touch_hole(
    session: Session, station: Station, mark: Cut, expected: tuple[float, float]
) -> tuple[float, float]:
    """Have the bit, or the light spot, brought over a reference hole; keep where it was found.

    ``expected`` and the answer are where the bit has the hole below it, work coordinates, mm.
    """
    place = station.place
    by_spot = session.settings.reference.way == SPOT
    head = session.settings.laser.head if by_spot else (0.0, 0.0)
    there = (expected[0] + head[0], expected[1] + head[1])
    go_over(station, there)
    request = _over_hole(mark.label, there, by_spot=by_spot)
    if mark.kind is CutKind.TOOLING:
        request = replace(request, text=strung((request.text, _NO_HOLE)))
    answer = place.ask(request)
    if answer.by_hand:
        raise MachineError(
            "The bit was brought there by hand wheel: the controller saw nothing of it.",
            say("reference hole {label}", label=mark.label),
            "Choose the way by hand wheel; or jog to the hole.",
        )
    x, y, _ = station.controller.place()
    heading = station.controller.heading[:2]
    place.raise_to(place.clearance)
    return _keep_seen(session, mark, (x, y), heading)


def _over_hole(label: str, place: tuple[float, float], *, by_spot: bool) -> Request:
    """Have the bit, or the light spot of the other head, brought over a hole; the machine is to be there."""
    if by_spot:
        return Request(
            RequestKind.JOG_TO,
            say("The light spot over reference hole {label}", label=label),
            say(
                "Bring the light spot exactly over the middle of reference hole {label}. Come from the left "
                "and from below at the end: play is taken up the same way at every hole then.",
                label=label,
            ),
            place=place,
        )
    return Request(
        RequestKind.JOG_TO,
        say("Over reference hole {label}", label=label),
        say(
            "Bring the bit exactly over reference hole {label}, about 1 mm above it. Come "
            "from the left and from below at the end: play is taken up the same way at "
            "every hole then.",
            label=label,
        ),
        place=place,
    )


def go_over(station: Station, at: tuple[float, float]) -> None:
    """Go above a place at the clearance height, from smaller x and y."""
    place = station.place
    place.raise_to(place.clearance)
    station.controller.move((at[0] - TAKE_UP, at[1] - TAKE_UP, None))
    station.controller.move((*at, None))


def set_over_hole(session: Session, station: Station, mark: Cut, at: tuple[float, float]) -> None:
    """The bit was brought over a hole by hand wheel: its position is *set* to ``at``, and kept.

    Nothing moves; the controller has seen nothing of the wheels and cannot be asked.

    Parameters
    ----------
    at : work coordinates, mm: where the hole is expected, or what the dials of the wheels say
    """
    station.controller.set_work(x=at[0], y=at[1])
    keep_hole(session, mark.label, _design(mark), at, mark=is_mark(mark), way="wheel")


def shift_to_hole(
    session: Session, station: Station, mark: Cut, at: tuple[float, float]
) -> tuple[float, float]:
    """Go to where a hole should be and have the board shifted until it sits there.

    A board that was found already, or whose copper was touched, has been moved by this: then a new
    clamping begins.
    """
    place = station.place
    go_over(station, at)
    place.ask(
        Request(
            RequestKind.SHIFT,
            say("Shift the board to reference hole {label}", label=mark.label),
            say(
                "Lower the bit to about 1 mm, then shift the board until hole {label} sits "
                "under it. Where another hole was set before, turn the board about that one. "
                "Clamp it.",
                label=mark.label,
            ),
            (HAND_OFF,),
            place=at,
        )
    )
    x, y, _ = station.controller.place()
    place.raise_to(place.clearance)
    snap = session.snapshot
    heights = snap.latest("touches")
    found = {one.data["label"] for one in snap.records["reference"] if one.data["setup"] == snap.setup}
    touched_here = heights is not None and heights.data["setup"] == snap.setup
    if touched_here or len(found - {mark.label}) > 1:
        moved(session, "shifted under the bit")
    keep_hole(session, mark.label, _design(mark), (x, y), mark=is_mark(mark), way="shift")
    return x, y


def is_mark(cut: Cut) -> bool:
    """Whether it is a mark in the waste, as told by its label."""
    return cut.label.startswith("R")


def _design(cut: Cut) -> tuple[float, float]:
    return float(cut.path[0][0]), float(cut.path[0][1])


def _keep_seen(
    session: Session, mark: Cut, at: tuple[float, float], heading: tuple[int, ...]
) -> tuple[float, float]:
    """Keep a place that was jogged to; with the light spot over the hole the spindle is beside it."""
    settings = session.settings
    sigma = settings.reference.touch_sigma
    if settings.reference.way == SPOT:
        at = (at[0] - settings.laser.head[0], at[1] - settings.laser.head[1])
        sigma = float(np.hypot(sigma, settings.laser.head_sigma))
    at, count = _averaged(session, mark.label, at, sigma)
    keep_hole(
        session,
        mark.label,
        _design(mark),
        at,
        mark=is_mark(mark),
        sigma=sigma / count**0.5,
        approach=heading,
        touches=count,
    )
    return at


def _averaged(
    session: Session, label: str, at: tuple[float, float], sigma: float
) -> tuple[tuple[float, float], int]:
    """The mean with earlier touches of the same hole that agree with this one, and their number.

    One that does not agree was wrong, or this one is: the newest counts then.
    """
    snap = session.snapshot
    for record in reversed(snap.records["reference"]):
        data = record.data
        if data["label"] != label or data["setup"] != snap.setup:
            continue
        x, y = data["touched"]
        count = int(data.get("touches", 1))
        off = float(np.hypot(at[0] - x, at[1] - y))
        if data.get("way") == snap.settings.reference.way and off <= AGREE * sigma * (1 + 1 / count) ** 0.5:
            total = count + 1
            return ((count * x + at[0]) / total, (count * y + at[1]) / total), total
        break
    return at, 1


def keep_hole(
    session: Session,
    label: str,
    design: tuple[float, float],
    touched: tuple[float, float],
    *,
    mark: bool = False,
    way: str = "",
    sigma: float | None = None,
    approach: tuple[int, ...] = (0, 0),
    touches: int = 1,
) -> None:
    """Keep where a reference hole was found in this clamping; an earlier touch of it is set aside.

    Parameters
    ----------
    mark : whether it was pricked by the V-bit
    way : how it was found; the way chosen if not given
    sigma : of the touch, mm; what is set if not given
    approach : direction of the last move of x and y: +1, -1, or 0 where it is not known
    touches : of how many it is the mean; ``sigma`` is that of the mean
    """
    snap = session.snapshot
    again = tuple(
        record.id
        for record in snap.records["reference"]
        if record.data["label"] == label and record.data["setup"] == snap.setup
    )
    session.job.set_aside("reference", again)
    session.keep(
        "reference",
        {
            "setup": snap.setup,
            "side": snap.settings.board.side.value,
            "label": label,
            "design": list(design),
            "touched": list(touched),
            "sigma": snap.settings.reference.touch_sigma if sigma is None else sigma,
            "mark": mark,
            "way": way or snap.settings.reference.way,
            "approach": list(approach),
            "touches": touches,
        },
    )


def forget_hole(session: Session, label: str) -> None:
    """Set a touch of this clamping aside: it was wrong, or is to be left out."""
    snap = session.snapshot
    session.job.set_aside(
        "reference",
        tuple(
            record.id
            for record in snap.records["reference"]
            if record.data["label"] == label and record.data["setup"] == snap.setup
        ),
    )
    session.touched("reference")


def choose_stretch(session: Session, on: bool) -> None:
    """Correct scale and squareness in this clamping, or no longer: only ever a person's own choice."""
    session.keep("stretch", {"setup": session.snapshot.setup, "on": on})


def fit_facts(session: Session, snap: Snapshot | None = None) -> FitFacts:
    """The fit of the present clamping and what it is worth; ``snap`` is the job as it is now if not given."""
    snap = snap or session.snapshot
    try:
        fit = session.derived.fit(snap)
    except PlanError:
        count = sum(record.data["setup"] == snap.setup for record in snap.records["reference"])
        return FitFacts(count, None, None, None, None)
    if not isinstance(fit, Fit):
        return FitFacts(0, None, None, None, None)
    board = session.derived.board(snap)
    found = worth(fit, board.holes, pad_radii(board.holes, board.nets))
    worst = max((float(ring.semi_axes[0]) for ring in found.rings), default=None)
    return FitFacts(len(fit.design), fit.rms, worst, found, fit)
