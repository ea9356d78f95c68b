"""Reference holes at the machine: touch them, say how well the board is found."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from drypoint.cuts.model import Cut
from drypoint.errors import PlanError
from drypoint.machine.operator import Request, RequestKind
from drypoint.reference.fit import Fit
from drypoint.reference.worth import Worth, pad_radii, worth
from drypoint.session.session import Session
from drypoint.session.station import Station


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


def touch_hole(
    session: Session, station: Station, mark: Cut, expected: tuple[float, float]
) -> tuple[float, float]:
    """Have the bit brought over a reference hole and keep where it was found, work coordinates."""
    place = station.place
    place.raise_to(place.clearance)
    station.controller.move((*expected, None))
    place.ask(
        Request(
            RequestKind.JOG_TO,
            f"Over reference hole {mark.label}",
            f"Bring the bit exactly over reference hole {mark.label}, about 1 mm above it.",
            place=expected,
        )
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
            "label": label,
            "design": list(design),
            "touched": list(touched),
            "sigma": snap.settings.reference.touch_sigma,
        },
    )


def fit_facts(session: Session) -> FitFacts:
    """The fit of the present clamping and what it is worth."""
    snap = session.snapshot
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
