"""The second side on the bench: turned over, found by the drilled holes, touched anew, milled, compared."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from shapely import Geometry

from drypoint.board.model import Side
from drypoint.cuts.model import IslandCheck
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress
from drypoint.session.actions import find, measure, run, turn
from drypoint.session.check_facts import check_dict, designed_islands
from drypoint.session.rehearsal_stage import (
    PassOutcome,
    Stage,
    drilled_holes,
    mill_grooves,
    run_later,
    surface_error,
)
from drypoint.session.tooling import HOLES
from drypoint.session.work import later_work

TURN_ANGLE = math.radians(-0.9)
TURN_SHIFT = (-0.7, 0.6)
"""How far from the same corner the board comes to lie when it is turned over on the bench."""


@dataclass(frozen=True, slots=True, eq=False)
class SecondSideOutcome:
    """What came of the second side; lengths in mm.

    Attributes
    ----------
    expected_error_mm : float
        What 95 % of the holes were expected to be off their pads at most, from the fit alone.
    actual_error_mm, worst_error_mm : float
        What 95 % of them are off on the bench, and the worst; None where no hole was drilled.
    compared : int
        Holes compared.
    within : float
        Share of them no more than 0.15 mm off.
    carved : geometry
        The copper that is left, frame of this side.
    """

    side: Side
    touches: int
    rms_um: float
    interval90: float
    passes: tuple[PassOutcome, ...]
    holes: int
    residual_mm: float
    expected_error_mm: float
    actual_error_mm: float | None
    worst_error_mm: float | None
    compared: int
    within: float | None
    check: IslandCheck
    islands: int
    carved: Geometry

    def as_dict(self) -> dict[str, Any]:
        """For scripts."""
        return {
            "side": self.side.value,
            "surface": {
                "touches": self.touches,
                "rms_um": round(self.rms_um, 2),
                "interval90": round(self.interval90, 3),
            },
            "passes": [one.as_dict() for one in self.passes],
            "fit": {"holes": self.holes, "residual_mm": round(self.residual_mm, 4)},
            "registration": {
                "holes": self.compared,
                "expected95_mm": round(self.expected_error_mm, 4),
                "actual95_mm": _rounded(self.actual_error_mm),
                "worst_mm": _rounded(self.worst_error_mm),
                "within_0.15_mm": _rounded(self.within),
            },
            "island_check": check_dict(self.check, self.islands),
        }


CLOSE = 0.15
"""Error between hole and pad that a board is to stay under, mm."""


def _rounded(value: float | None) -> float | None:
    return None if value is None else round(value, 4)


def rehearse_second_side(stage: Stage, progress: Progress) -> SecondSideOutcome:
    """Turn the board over and mill the side that comes up, then what is left: holes not drilled yet, outline.

    Raises
    ------
    PlanError, MachineError
        As at the machine.
    """
    session, station, bench = stage.session, stage.station, stage.bench
    progress.step(0.0, "Turn the board over")
    bench.operator.reclamped_by = Rigid(TURN_ANGLE, TURN_SHIFT)
    turn.turn_over(session, station)
    find_turned(stage)
    facts = find.fit_facts(session)
    told = turn.expected_registration(session)
    error = registration_error(stage)
    measure.zero_height(session, station, at=measure.zero_spot(session))
    measure.measure_surface(session, station, progress.part(0.05, 0.35))
    measure.end_contact(station)
    run.lap(session, station)
    passes = mill_grooves(stage, progress.part(0.35, 0.8))
    rms, interval = surface_error(stage)
    run_later(stage, later_work(session.derived, session.snapshot), progress.part(0.8, 0.95))
    snap = session.snapshot
    fit, board = session.derived.fit(snap), session.derived.board(snap)
    found = session.derived.touches(snap)
    some = len(error) > 0
    return SecondSideOutcome(
        side=snap.settings.board.side,
        touches=0 if found is None else len(found[0].touches),
        rms_um=rms,
        interval90=interval,
        passes=passes,
        holes=facts.holes,
        residual_mm=facts.rms or 0.0,
        expected_error_mm=told.overall(0.95),
        actual_error_mm=float(np.quantile(error, 0.95)) if some else None,
        worst_error_mm=float(error.max()) if some else None,
        compared=len(error),
        within=float((error <= CLOSE).mean()) if some else None,
        check=bench.outcome(board.nets, fit, progress=progress.part(0.95, 1.0)),
        islands=designed_islands(board),
        carved=bench.carved(fit),
    )


def find_turned(stage: Stage, *, holes: int = HOLES) -> None:
    """The V-bit in, work zero at the corner, z on the copper; then drilled holes far apart are touched."""
    session, station = stage.session, stage.station
    measure.put_in(station, session.settings.bits.vbit)
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.end_contact(station)
    for hole in turn.second_side(session, count=holes).holes:
        find.touch_hole(session, station, hole, find.expected_place(session, hole))


def registration_error(stage: Stage) -> NDArray[np.float64]:
    """(N,) distance on the bench's sheet between each drilled hole and where its pad is going to be, mm."""
    pads, drilled = drilled_holes(stage)
    if not len(pads):
        return np.empty(0)
    off = stage.bench.board_to_sheet(pads, stage.session.derived.fit(stage.session.snapshot)) - drilled
    return np.asarray(np.hypot(off[:, 0], off[:, 1]), dtype=np.float64)
