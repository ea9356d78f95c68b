"""The legend on the bench: another head, holes found by its light spot, a dark walk, then every mark."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry, LineString, Point, STRtree

from drypoint.bench.burn import Burn
from drypoint.cuts.model import Cut
from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.controller import StreamEvent
from drypoint.machine.operator import Request, RequestKind
from drypoint.program.laser import LaserProgram
from drypoint.progress import Progress
from drypoint.reference.fit import TOUCH_SIGMA, Fit, fit_rigid
from drypoint.session.actions import find, mark, turn
from drypoint.session.laser_safety import cautions
from drypoint.session.legend import legend_program, spot_error, spot_fit
from drypoint.session.marks import pads_and_holes
from drypoint.session.rehearsal_stage import Stage, drilled_holes

Marks = NDArray[np.object_]
ToSheet = Callable[[ArrayLike], NDArray[np.float64]]

LASER_MODE = 32
"""Setting of the controller that makes it drive a laser."""
HOLES = 3
"""Holes found by the light spot."""
MISSED = 0.5
"""A mark farther than this from every planned one was not planned, mm."""


@dataclass(frozen=True, slots=True)
class LegendOutcome:
    """What came of the legend; lengths in mm, times in s.

    Attributes
    ----------
    planned, made : int
        Pulses, or pieces of lines.
    holes : int
        Holes the board was found by.
    expected_error_mm : float or None
        What 95 % of the marks were expected to be off at most, from the fit alone.
    after_fit_mm : float
        Farthest that a mark lies from where the fit puts it.
    actual_error_mm, worst_error_mm : float
        What 95 % of the marks lie off their place among the holes that are drilled, and the worst.
    on_pads : int
        Marks that reach onto a pad or hole.
    nearest_pad_mm : float
        From the edge of a mark to a pad or hole at least.
    beam_seconds, planned_beam_seconds : float
        With the beam on.
    seconds : float
        Of the whole run.
    """

    planned: int
    made: int
    holes: int
    expected_error_mm: float | None
    after_fit_mm: float
    actual_error_mm: float
    worst_error_mm: float
    on_pads: int
    nearest_pad_mm: float
    beam_seconds: float
    planned_beam_seconds: float
    seconds: float

    def as_dict(self) -> dict[str, Any]:
        """For scripts."""
        expected = self.expected_error_mm
        return {
            "planned": self.planned,
            "made": self.made,
            "fit": {
                "holes": self.holes,
                "expected95_mm": None if expected is None else round(expected, 4),
            },
            "place": {
                "after_fit_mm": round(self.after_fit_mm, 4),
                "actual95_mm": round(self.actual_error_mm, 4),
                "worst_mm": round(self.worst_error_mm, 4),
            },
            "pads": {"marked": self.on_pads, "nearest_mm": round(self.nearest_pad_mm, 4)},
            "beam": {
                "seconds": round(self.beam_seconds, 3),
                "planned_seconds": round(self.planned_beam_seconds, 3),
                "ratio": round(self.beam_seconds / self.planned_beam_seconds, 5),
            },
            "seconds_simulated": round(self.seconds, 1),
        }


def rehearse_legend(stage: Stage, progress: Progress) -> LegendOutcome:
    """Mark the legend of the side that looks up. The spindle's work on this clamping is to be done before.

    Raises
    ------
    PlanError, MachineError
        As at the machine.
    """
    session, station, bench = stage.session, stage.station, stage.bench
    progress.step(0.0, "Legend by laser")
    put_in_head(stage)
    mark.focus(session, station)
    find_by_spot(stage)
    snap = session.snapshot
    program = legend_program(
        session.derived, snap, scale=mark.full_power(station), progress=progress.part(0.0, 0.2)
    )
    mark.walk(station, program)
    seen = Burning(len(bench.burn.spots), len(bench.burn.strokes))

    def note(event: StreamEvent) -> None:
        progress.step(0.2 + 0.75 * event.executed / max(event.total, 1), program.title)

    result = mark.mark(session, station, program, on_event=note)
    burnt = seen.since(bench.burn)
    outcome = _compared(stage, program, burnt, result.seconds)
    take_out_head(stage)
    return outcome


def put_in_head(stage: Stage) -> None:
    """A person fits the head; its offset from the spindle is what is set, to about its uncertainty."""
    chosen = stage.session.settings.laser
    _change_head(stage, "Fit the laser head", 1.0)
    off = stage.rng.normal(0.0, chosen.head_sigma, 2)
    stage.bench.body.spot = (float(off[0]) - chosen.head[0], float(off[1]) - chosen.head[1])


def take_out_head(stage: Stage) -> None:
    """The spindle is back, and the controller drives it."""
    _change_head(stage, "Take the laser head off", 0.0)


def _change_head(stage: Stage, title: str, laser_mode: float) -> None:
    station = stage.station
    station.place.raise_to(station.place.clearance * 4)
    text = "The controller's laser mode is on with the laser and off with the spindle."
    station.place.ask(Request(RequestKind.CONFIRM, title, text, cautions(stage.session.settings.laser)))
    known = "".join(station.controller.known)
    stage.bench.controller.memory.settings[LASER_MODE] = laser_mode
    station.controller.connect()
    station.controller.trust(known)


def find_by_spot(stage: Stage) -> None:
    """The board is found by drilled holes under the light spot alone, so that the head's offset drops out."""
    session = stage.session
    found = replace(session.settings.reference, way=find.SPOT, touch_sigma=TOUCH_SIGMA[find.SPOT])
    session.change("Holes by the light spot", reference=found)
    places = _places(stage)
    if not _by_spot_only(stage):
        find.moved(session, "another head")
    for hole in places:
        find.touch_hole(session, stage.station, hole, find.expected_place(session, hole))


def _places(stage: Stage) -> tuple[Cut, ...]:
    """Drilled holes far apart; where there are none, the marks in the waste while their side looks up."""
    session = stage.session
    snap = session.snapshot
    cuts = session.derived.cuts(snap)
    marks, drilled = cuts.marks, len(session.derived.board(snap).holes) + len(cuts.tooling)
    if drilled < 2 <= len(marks) and snap.face() is snap.face(1):
        return marks
    return turn.second_side(session, count=HOLES).holes


def _by_spot_only(stage: Stage) -> bool:
    snap = stage.session.snapshot
    here = [one.data for one in snap.records["reference"] if one.data["setup"] == snap.setup]
    return all(one["way"] == find.SPOT for one in here)


@dataclass(frozen=True, slots=True, eq=False)
class Burnt:
    """What was burnt: each mark a point or a line, sheet frame; the time with the beam on, s."""

    marks: Marks
    strokes: NDArray[np.float64]
    seconds: float


@dataclass(frozen=True, slots=True)
class Burning:
    """How much was burnt before."""

    rests: int
    strokes: int

    def since(self, burn: Burn) -> Burnt:
        """What was burnt since."""
        spots, strokes = burn.spots[self.rests :], burn.strokes[self.strokes :]
        marks = [Point(at) for at in spots[:, :2]]
        lines = [LineString(ends) for ends in strokes[:, :4].reshape(-1, 2, 2)]
        return Burnt(np.array([*marks, *lines], dtype=object), strokes, float(spots[:, 2].sum()))


def _compared(stage: Stage, program: LaserProgram, burnt: Burnt, seconds: float) -> LegendOutcome:
    session, bench = stage.session, stage.bench
    snap = session.snapshot
    fit, board = session.derived.fit(snap), session.derived.board(snap)
    rows = session.derived.legend(snap).rows
    beam_fit = spot_fit(session.derived, snap).then(Rigid(0.0, bench.body.spot))
    after_fit = _away(burnt.marks, rows, lambda at: bench.board_to_sheet(at, beam_fit), pulses=program.pulses)
    true = _as_drilled(stage)
    pads = shapely.transform(pads_and_holes(board, snap.settings.laser), true)
    shapely.prepare(pads)
    clear = shapely.distance(burnt.marks, pads) - snap.settings.laser.spot / 2.0
    off = _away(burnt.marks, rows, true, pulses=program.pulses)
    expected = spot_error(session.derived, snap)
    return LegendOutcome(
        planned=len(program.beam.spots) + len(program.beam.strokes),
        made=len(burnt.marks),
        holes=len(fit.design) if isinstance(fit, Fit) else 0,
        expected_error_mm=None if expected is None else 2.0 * expected,
        after_fit_mm=float(after_fit.max()),
        actual_error_mm=float(np.quantile(off, 0.95)),
        worst_error_mm=float(off.max()),
        on_pads=int((clear <= 0.0).sum()),
        nearest_pad_mm=float(clear.min()),
        beam_seconds=burnt.seconds + _lit(program, burnt.strokes),
        planned_beam_seconds=program.beam_seconds,
        seconds=seconds,
    )


def _lit(program: LaserProgram, strokes: NDArray[np.float64]) -> float:
    """Time that what was drawn in motion would take at the planned power, s."""
    if not len(strokes):
        return 0.0
    share = float(program.beam.stroke_power.max()) / program.scale
    length = np.hypot(strokes[:, 2] - strokes[:, 0], strokes[:, 3] - strokes[:, 1])
    return float((length * strokes[:, 4]).sum() / share)


def _as_drilled(stage: Stage) -> ToSheet:
    """Board frame to sheet as the drilled holes lie, rigid; by the fit where fewer than two were drilled."""
    design, drilled = drilled_holes(stage)
    if len(design) < 2:
        fit = stage.session.derived.fit(stage.session.snapshot)
        return lambda points: stage.bench.board_to_sheet(points, fit)
    snap = stage.session.snapshot  # the sheet is seen from the side that was milled first
    true = fit_rigid(design, drilled, mirror=snap.settings.board.side is not snap.face(1))
    return lambda points: np.asarray(true.apply(points), dtype=np.float64)


def _away(marks: Marks, rows: Sequence[Points], to_sheet: ToSheet, *, pulses: bool) -> NDArray[np.float64]:
    """(N,) distance of each mark's middle from the nearest planned one, sheet frame, mm."""
    points = shapely.centroid(marks)
    moved = [to_sheet(row) for row in rows]
    if pulses:
        wanted: list[Geometry] = [Point(at) for row in moved for at in row]
    else:
        wanted = [LineString(row) if len(row) > 1 else Point(row[0]) for row in moved]
    _, away = STRtree(wanted).query_nearest(points, return_distance=True, all_matches=False)
    return np.asarray(away, dtype=np.float64)
