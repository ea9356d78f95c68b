"""The whole job on the bench: prediction against outcome.

A rehearsal runs on a copy of nothing: it works in a job of its own, so that what the bench touched
and cut is never taken for the real board.
"""

from __future__ import annotations

import logging
import math
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import numpy as np
from shapely import Geometry, get_parts

from drypoint.board.model import Board
from drypoint.cuts.model import IslandCheck
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, along, as_points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import Request, RequestKind
from drypoint.program.model import Program
from drypoint.progress import Progress
from drypoint.session.actions import find, measure, prove, run
from drypoint.session.beside import not_rehearsed
from drypoint.session.layout import INSET
from drypoint.session.pass_plan import PassPlan
from drypoint.session.session import Session
from drypoint.session.settings import SECTIONS
from drypoint.session.station import Station, connect, make_bench
from drypoint.session.work import SPARE, later_work, marks_work, pass_work, require_room
from drypoint.surface.model import Surface

_log = logging.getLogger(__name__)

CLIPS = 8
"""Places of the clip after each pass: a person goes on while much is unproved."""
RECLAMP_ANGLE = math.radians(1.2)
RECLAMP_SHIFT = (1.3, -0.8)
"""How the board comes to lie after it was taken off and clamped again on the bench."""


@dataclass(frozen=True, slots=True)
class PassOutcome:
    """One pass: planned, and what became of it. Shares are of the length of all grooves."""

    number: int
    depth_mm: float
    length_mm: float
    predicted_through: float
    actual_through: float


@dataclass(frozen=True, slots=True, eq=False)
class Rehearsal:
    """What a rehearsal found."""

    touches: int
    rms_um: float
    interval90: float
    give: tuple[str, ...]
    passes: tuple[PassOutcome, ...]
    holes: int
    residual_mm: float | None
    worst_error_mm: float | None
    check: IslandCheck
    lines: int
    resumed: int
    seconds: float
    carved: Geometry
    """The copper that is left, board frame."""
    programs: tuple[Program, ...]
    """What was run, in order."""
    islands: int
    """Pieces of net copper the design itself has: more than nets where link wires join them."""
    findings: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """For scripts."""
        return {
            "surface": {
                "touches": self.touches,
                "rms_um": round(self.rms_um, 2),
                "interval90": round(self.interval90, 3),
                "give": list(self.give),
            },
            "passes": [
                {
                    "depth_mm": round(one.depth_mm, 4),
                    "length_mm": round(one.length_mm, 1),
                    "predicted_through": round(one.predicted_through, 4),
                    "actual_through": round(one.actual_through, 4),
                }
                for one in self.passes
            ],
            "fit": {
                "holes": self.holes,
                "residual_mm": None if self.residual_mm is None else round(self.residual_mm, 4),
                "worst_error_mm": None if self.worst_error_mm is None else round(self.worst_error_mm, 4),
            },
            "island_check": check_dict(self.check, self.islands),
            "run": {
                "lines": self.lines,
                "resumed": self.resumed,
                "seconds_simulated": round(self.seconds, 1),
            },
            "findings": list(self.findings),
        }


def check_dict(check: IslandCheck, islands: int) -> dict[str, Any]:
    """An island check for scripts.

    ``islands`` is how many pieces the copper of the nets has in the design. Pieces that link wires
    join are counted as one, so that ``pieces`` equals ``nets`` on a good board. Without copper data
    there are no nets, and the check is not ``possible``.
    """

    def flaws(found: tuple[Any, ...]) -> list[dict[str, Any]]:
        return [
            {"nets": list(one.nets), "at": [round(one.at[0], 3), round(one.at[1], 3)], "what": one.what}
            for one in found
        ]

    return {
        "possible": check.nets > 0,
        "nets": check.nets,
        "pieces": check.pieces - (islands - check.nets),
        "copper_pieces": check.pieces,
        "shorts": flaws(check.shorts),
        "opens": flaws(check.opens),
        "lost": flaws(check.lost),
    }


def designed_islands(board: Board) -> int:
    """Pieces that the copper of the nets has on the milled side."""
    return sum(len(get_parts(shape)) for shape in board.nets.values())


def rehearse(
    session: Session,
    folder: Path,
    *,
    seed: int = 0,
    touches: int | None = None,
    progress: Progress | None = None,
) -> Rehearsal:
    """Run the whole job of ``session`` on the bench, in a job file of its own in ``folder``.

    Raises
    ------
    PlanError, MachineError
        As at the machine.
    """
    told = progress or Progress()
    with shadow_of(session, folder, touches) as shadow:
        return _Rehearsing(shadow, seed, told).all()


@contextmanager
def shadow_of(session: Session, folder: Path, touches: int | None = None) -> Iterator[Session]:
    """A job of its own in ``folder`` with the files and settings of ``session``, and nothing measured."""
    shadow = Session.create(folder / "rehearsal.drypoint", overwrite=True)
    try:
        _copy(session, shadow, touches)
        yield shadow
    finally:
        shadow.close()


def _copy(session: Session, shadow: Session, touches: int | None) -> None:
    snap = session.snapshot
    shadow.job.replace_sources(
        {source.name: source.content for source in snap.sources},
        {source.name: source.role for source in snap.sources},
        {source.name: source.board for source in snap.sources},
    )
    settings = snap.settings
    surface = settings.surface if touches is None else replace(settings.surface, touches=touches)
    sections = {name: getattr(settings, name) for name in SECTIONS}
    shadow.change("Rehearse", **(sections | {"surface": surface}))
    shadow.touched("source")


class _Rehearsing:
    """One rehearsal under way."""

    def __init__(self, session: Session, seed: int, progress: Progress) -> None:
        self.session = session
        self.progress = progress
        layout = session.derived.layout(session.snapshot)
        require_room(session.settings, layout.width + SPARE, layout.height + SPARE)
        self.bench = make_bench(layout, session.settings, seed)
        self.station = self._connect()
        self.give: tuple[str, ...] = ()
        self.outcomes: list[PassOutcome] = []
        self.programs: list[Program] = []
        self.facts = find.FitFacts(0, None, None, None, None)
        self.rng = np.random.default_rng((seed, 0x5EE))

    def _connect(self) -> Station:
        return connect(
            self.bench.link, self.bench.operator, self.session.settings, note=_log.info, bench=self.bench
        )

    def all(self) -> Rehearsal:
        """Every step in order."""
        self._surface()
        self._marks()
        self._grooves()
        self._reclamp()
        self._later()
        fit = self.session.derived.fit(self.session.snapshot)
        board = self.session.derived.board(self.session.snapshot)
        check = self.bench.outcome(board.nets, fit)
        rms, interval = self._surface_error()
        found = self.session.derived.touches(self.session.snapshot)
        self.progress.step(1.0, "Rehearsed")
        return Rehearsal(
            touches=0 if found is None else len(found[0].touches),
            rms_um=rms,
            interval90=interval,
            give=self.give,
            passes=tuple(self.outcomes),
            holes=self.facts.holes,
            residual_mm=self.facts.rms,
            worst_error_mm=self.facts.worst,
            check=check,
            lines=sum(len(program.lines) for program in self.programs),
            resumed=0,
            seconds=self.station.controller.now(),
            carved=self.bench.carved(fit),
            programs=tuple(self.programs),
            islands=designed_islands(board),
            findings=(
                *self.station.findings,
                *(one.what for one in self.bench.mishaps),
                *not_rehearsed(self.session.snapshot, board),
            ),
        )

    def _surface(self) -> None:
        session, station = self.session, self.station
        measure.put_in(station, session.settings.bits.vbit)
        measure.find_corner(session, station)
        measure.zero_height(session, station)
        loose = measure.survey_hold(session, station, self.progress.part(0.02, 0.1))
        self.give = tuple(one.what for one in loose)
        if loose:
            station.place.ask(
                Request(
                    RequestKind.CONFIRM,
                    "Clamp it there",
                    " ".join(f"{one.what}. {one.hint}" for one in loose),
                )
            )
            self.bench.clamp_edges()
            measure.zero_height(session, station, at=(INSET, INSET))
        measure.measure_surface(session, station, self.progress.part(0.1, 0.3))
        measure.end_contact(station)

    def _marks(self) -> None:
        run.lap(self.session, self.station)
        for item in marks_work(self.session.derived, self.session.snapshot):
            run.run_item(self.session, self.station, item)
            self.programs.append(item.program)

    def _grooves(self) -> None:
        session, station = self.session, self.station
        lines = session.derived.cuts(session.snapshot).grooves.lines
        for number in range(session.settings.passes.most):
            share = 0.3 + 0.4 * number / session.settings.passes.most
            part = self.progress.part(share, share + 0.1)
            plan = session.derived.passes(session.snapshot, part)
            item = pass_work(session.derived, session.snapshot)
            if item is None or item.work is None:
                break
            run.run_item(session, station, item)
            self.programs.append(item.program)
            actual = self.bench.through_share(lines, session.derived.fit(session.snapshot))
            self.outcomes.append(
                PassOutcome(item.work.number, item.work.deepest, item.work.length, _expected(plan), actual)
            )
            if session.derived.board(session.snapshot).nets:
                prove.prove(session, station, self.progress.part(share + 0.1, share + 0.12), clips=CLIPS)

    def _reclamp(self) -> None:
        session, station = self.session, self.station
        snap = session.snapshot
        before = session.derived.fit(snap)
        turn = Rigid(RECLAMP_ANGLE, RECLAMP_SHIFT)
        self.bench.operator.reclamped_by = turn
        station.place.raise_to(station.place.clearance * 4)
        station.place.ask(
            Request(RequestKind.RECLAMP, "Look at the board", "Take it off and clamp it again.")
        )
        find.moved(session, "taken off and clamped again")
        for mark in session.derived.cuts(snap).marks:
            near = self._as_seen(before.apply(mark.path)[0], turn)
            find.touch_hole(session, station, mark, near)
        self.facts = find.fit_facts(session)

    def _as_seen(self, work: Points, turn: Rigid) -> tuple[float, float]:
        """Where a person sees that a place went when the board was moved, to about a millimetre."""
        space = self.bench.work_to_space((float(work[0]), float(work[1])))
        moved = turn.apply([space])[0] + self.rng.uniform(-0.8, 0.8, 2)
        return float(work[0] + moved[0] - space[0]), float(work[1] + moved[1] - space[1])

    def _later(self) -> None:
        session, station = self.session, self.station
        items = later_work(session.derived, session.snapshot)
        spot = self._zero_spot()
        for number, item in enumerate(items):
            self.progress.step(0.75 + 0.2 * number / max(1, len(items)), item.program.title)
            run.ready_bit(session, station, item.program, spot)
            run.run_item(session, station, item)
            self.programs.append(item.program)

    def _zero_spot(self) -> tuple[float, float]:
        """The zero spot on the copper, wherever the board lies now."""
        snap = self.session.snapshot
        place = self.session.derived.layout(snap).place
        board = place.inverse().apply([(INSET, INSET)])
        x, y = self.session.derived.fit(snap).apply(board)[0]
        return float(x), float(y)

    def _surface_error(self) -> tuple[float, float]:
        """RMS error along the grooves against the bench's truth, µm, and how much the 90 % band holds."""
        snap = self.session.snapshot
        found = self.session.derived.touches(snap)
        surface = self.session.derived.surface(snap)
        if found is None or surface is None:
            raise PlanError("The copper's height is not known.", "Surface")
        fit = self.session.derived.fit(snap)
        spots = _spots(self.session.derived.cuts(snap).grooves.lines)
        work = fit.apply(spots)
        measured = surface if isinstance(surface, Surface) else surface.surface
        at = work if isinstance(surface, Surface) else surface.before.apply(spots)
        truth = self.bench.sheet.truth.height(self.bench.board_to_sheet(spots, fit))
        error = measured.mean(at) - truth
        # the bench's sheet lies tilted on the bed: that plane is part of both, its offset is not known
        design = np.column_stack((np.ones(len(at)), at[:, :2]))
        error = error - design @ np.linalg.lstsq(design, error, rcond=None)[0]
        inside = np.abs(error) <= 1.645 * measured.std(at)
        return float(np.sqrt((error**2).mean()) * 1000), float(inside.mean())


def _spots(lines: tuple[Points, ...], pitch: float = 0.5) -> Points:
    """Places along all grooves."""
    found = []
    for line in lines:
        at = along(line)
        steps = np.arange(0.0, max(at[-1], pitch), pitch)
        found.append(np.column_stack((np.interp(steps, at, line[:, 0]), np.interp(steps, at, line[:, 1]))))
    return as_points(np.vstack(found))


def _expected(plan: PassPlan) -> float:
    """Share of the groove length expected to be through after the next pass."""
    return plan.expected_totals.expected
