"""What every side of a rehearsed board goes through on the bench: touched, milled in passes, judged."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
import shapely
from numpy.random import Generator
from shapely import Geometry

from drypoint.bench.bench import Bench
from drypoint.cuts.model import CutKind
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, along, as_points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.controller import StreamEvent
from drypoint.program.model import Program
from drypoint.progress import Progress
from drypoint.session.actions import measure, prove, run
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.session.two_bits import wide_bit
from drypoint.session.work import WorkItem, pass_work
from drypoint.surface.model import Surface

CLIPS = 8
"""Places of the clip after each pass: a person goes on while much is unproved."""
FAR = 1.0
"""A hole drilled farther than this from its place was drilled for another one, mm."""
PLACES = 12
"""Places in a row where the surface is judged of a board without grooves."""
SEEN = 0.8
"""A person sees to about so much where a place of the board has come to, mm."""


@dataclass(frozen=True, slots=True)
class PassOutcome:
    """One pass: planned, and what became of it. Shares are of the length of all grooves."""

    number: int
    depth_mm: float
    length_mm: float
    predicted_through: float
    actual_through: float

    def as_dict(self) -> dict[str, float]:
        """For scripts."""
        return {
            "depth_mm": round(self.depth_mm, 4),
            "length_mm": round(self.length_mm, 1),
            "predicted_through": round(self.predicted_through, 4),
            "actual_through": round(self.actual_through, 4),
        }


@dataclass(slots=True, eq=False)
class Stage:
    """A job of its own at the bench, and what was run so far.

    Attributes
    ----------
    station : Station
        The bench's machine as it is connected now.
    rng : Generator
        Chance of the hands and eyes.
    """

    session: Session
    bench: Bench
    station: Station
    rng: Generator
    programs: list[Program] = field(default_factory=list)

    def run(self, item: WorkItem, progress: Progress) -> None:
        """Run one piece of work to its end, unless ``progress`` is cancelled."""

        def note(event: StreamEvent) -> None:
            progress.step(event.executed / max(event.total, 1), item.program.title)

        run.run_item(self.session, self.station, item, on_event=note)
        self.programs.append(item.program)

    def as_seen(self, work: Points, motion: Rigid) -> tuple[float, float]:
        """Where a person sees that a place (work, mm) went when the board was moved by a motion of space."""
        space = self.bench.work_to_space((float(work[0]), float(work[1])))
        moved = motion.apply([space])[0] + self.rng.uniform(-SEEN, SEEN, 2)
        return float(work[0] + moved[0] - space[0]), float(work[1] + moved[1] - space[1])


def mill_grooves(stage: Stage, progress: Progress) -> tuple[PassOutcome, ...]:
    """Pass after pass over the side that looks up, touched for proof after each, while any is planned.

    The V-bit is in; after the wide bit's pass it is put in again, and nothing is proved before.
    """
    session, station = stage.session, stage.station
    lines = session.derived.cuts(session.snapshot).grooves.lines
    bit = session.settings.bits.vbit.name
    most = session.settings.passes.most + (wide_bit(session.settings) is not None)
    outcomes: list[PassOutcome] = []
    for number in range(most):
        part = progress.part(number / most, (number + 1) / most)
        plan = session.derived.passes(session.snapshot, part.part(0.0, 0.3))
        item = pass_work(session.derived, session.snapshot)
        if item is None or item.work is None:
            break
        if item.program.bit.name != bit:
            run.ready_bit(session, station, item.program, measure.zero_spot(session))
            bit = item.program.bit.name
        stage.run(item, part.part(0.3, 0.8))
        actual = stage.bench.through_share(lines, session.derived.fit(session.snapshot), part)
        work = item.work
        outcomes.append(PassOutcome(work.number, work.deepest, work.length, plan.through, actual))
        if session.derived.board(session.snapshot).nets and work.kind is not CutKind.CLEAR:
            prove.prove(session, station, part.part(0.8, 1.0), clips=CLIPS)
    return tuple(outcomes)


def run_later(stage: Stage, items: tuple[WorkItem, ...], progress: Progress) -> None:
    """Run what was not run yet of holes, ready-made programs and outline, each with its own bit."""
    waiting = [item for item in items if not item.done]
    for number, item in enumerate(waiting):
        part = progress.part(number / len(waiting), (number + 1) / len(waiting))
        part.step(0.0, item.program.title)
        spot = measure.zero_spot(stage.session)
        run.ready_bit(stage.session, stage.station, item.program, spot)
        stage.run(item, part)


def surface_error(stage: Stage) -> tuple[float, float]:
    """RMS error along the grooves against the bench's truth, µm, and how much the 90 % band holds.

    Without grooves: all over the board.

    Raises
    ------
    PlanError
        If the copper was not touched.
    """
    session, bench = stage.session, stage.bench
    snap = session.snapshot
    surface = session.derived.surface(snap)
    if surface is None:
        raise PlanError("The copper's height is not known.", "Surface")
    fit = session.derived.fit(snap)
    spots = _spots(session.derived.cuts(snap).grooves.lines)
    if not len(spots):
        spots = _all_over(session.derived.board(snap).outline)
    measured = surface if isinstance(surface, Surface) else surface.surface
    at = fit.apply(spots) if isinstance(surface, Surface) else surface.before.apply(spots)
    error = measured.mean(at) - bench.sheet.shape(bench.board_to_sheet(spots, fit))
    # the bench's sheet lies tilted on the bed: that plane is part of both, its offset is not known
    design = np.column_stack((np.ones(len(at)), at[:, :2]))
    error = error - design @ np.linalg.lstsq(design, error, rcond=None)[0]
    inside = np.abs(error) <= 1.645 * measured.std(at)
    return float(np.sqrt((error**2).mean()) * 1000), float(inside.mean())


def drilled_holes(stage: Stage) -> tuple[Points, Points]:
    """(N, 2) holes of the board, board frame, and (N, 2) where the bench's sheet was drilled for them, mm.

    A board without holes is judged by its tooling holes, else by its marks in the waste.
    """
    session, bench = stage.session, stage.bench
    snap = session.snapshot
    seen = np.array([place[:2] for place in bench.holes()], dtype=np.float64).reshape(-1, 2)
    holes = [(hole.x, hole.y) for hole in session.derived.board(snap).holes]
    if len(holes) < 2:
        cuts = session.derived.cuts(snap)
        holes += [(float(x), float(y)) for one in cuts.tooling or cuts.marks for x, y in one.path[:1]]
    wanted = as_points(holes)
    if not len(seen) or not len(wanted):
        return as_points([]), as_points([])
    at = bench.board_to_sheet(wanted, session.derived.fit(snap))
    away = np.hypot(*(at[:, None, :] - seen[None, :, :]).transpose(2, 0, 1))
    near = away.min(axis=1) <= FAR
    return as_points(wanted[near]), as_points(seen[away.argmin(axis=1)[near]])


def _all_over(outline: Geometry) -> Points:
    """Places in a square pattern over a board."""
    x0, y0, x1, y1 = shapely.bounds(outline)
    xs, ys = np.meshgrid(np.linspace(x0, x1, PLACES), np.linspace(y0, y1, PLACES))
    return as_points(np.column_stack((xs.ravel(), ys.ravel())))


def _spots(lines: tuple[Points, ...], pitch: float = 0.5) -> Points:
    """Places along all grooves."""
    found = []
    for line in lines:
        at = along(line)
        steps = np.arange(0.0, max(at[-1], pitch), pitch)
        found.append(np.column_stack((np.interp(steps, at, line[:, 0]), np.interp(steps, at, line[:, 1]))))
    return as_points(np.vstack(found) if found else [])
