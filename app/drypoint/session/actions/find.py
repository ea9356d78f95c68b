"""Reference holes at the machine: touch them, say how well the board is found."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from drypoint.cuts.model import Cut
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
            f"The position of {' and '.join(sorted(missing))} is not known.",
            f"reference hole {mark.label}",
            "Set it by hand wheel first, at a place you know: the corner, or this hole.",
        )
    x, y, _ = station.controller.place()
    station.place.raise_to(station.place.clearance)
    keep_hole(session, mark.label, (float(mark.path[0][0]), float(mark.path[0][1])), (x, y))
    return x, y


def touch_hole(
    session: Session, station: Station, mark: Cut, expected: tuple[float, float]
) -> tuple[float, float]:
    """Have the bit brought over a reference hole and keep where it was found, work coordinates."""
    place = station.place
    place.raise_to(place.clearance)
    station.controller.move((*expected, None))
    answer = place.ask(
        Request(
            RequestKind.JOG_TO,
            f"Over reference hole {mark.label}",
            f"Bring the bit exactly over reference hole {mark.label}, about 1 mm above it.",
            place=expected,
        )
    )
    if answer.by_hand:
        raise MachineError(
            "The bit was brought there by hand wheel: the controller saw nothing of it.",
            f"reference hole {mark.label}",
            "Set the place of the bit by hand wheel at a spot you know; then jog to the hole.",
        )
    x, y, _ = station.controller.place()
    place.raise_to(place.clearance)
    keep_hole(session, mark.label, (float(mark.path[0][0]), float(mark.path[0][1])), (x, y))
    return x, y


def keep_hole(
    session: Session, label: str, design: tuple[float, float], touched: tuple[float, float]
) -> None:
    """Keep where a reference hole was found in this clamping; an earlier touch of it is set aside."""
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
            "sigma": snap.settings.reference.touch_sigma,
        },
    )


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
    worst = max((ring.semi_axes[0] for ring in found.rings), default=float(np.nan))
    return FitFacts(len(fit.design), fit.rms, float(worst), found, fit)
