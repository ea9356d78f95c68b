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
from shapely import Geometry

from drypoint.cuts.model import IslandCheck
from drypoint.errors import PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import Request, RequestKind
from drypoint.program.model import Program
from drypoint.progress import Cancelled, Progress
from drypoint.session.actions import find, measure, run, turn
from drypoint.session.check_facts import check_dict, designed_islands
from drypoint.session.layout import INSET
from drypoint.session.legend import legend_up, legend_wanted
from drypoint.session.legend_export import unmarked
from drypoint.session.rehearsal_legend import LegendOutcome, rehearse_legend
from drypoint.session.rehearsal_second import TURN_ANGLE, TURN_SHIFT, SecondSideOutcome, rehearse_second_side
from drypoint.session.rehearsal_stage import PassOutcome, Stage, mill_grooves, run_later, surface_error
from drypoint.session.session import Session
from drypoint.session.settings import SECTIONS
from drypoint.session.station import connect, make_bench
from drypoint.session.work import SPARE, later_work, marks_work, require_room
from drypoint.wording import say, strung

_log = logging.getLogger(__name__)

RECLAMP_ANGLE = math.radians(1.2)
RECLAMP_SHIFT = (1.3, -0.8)
"""How the board comes to lie after it was taken off and clamped again on the bench."""
SLIP = 0.05
"""How far drills slip before they bite, mm, standard deviation per axis (common practice, no source)."""


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
    second_side: SecondSideOutcome | None = None
    """None where one side is milled."""
    legend: LegendOutcome | None = None
    """None where none is marked."""

    def as_dict(self) -> dict[str, Any]:
        """For scripts."""
        return {
            "surface": {
                "touches": self.touches,
                "rms_um": round(self.rms_um, 2),
                "interval90": round(self.interval90, 3),
                "give": list(self.give),
            },
            "passes": [one.as_dict() for one in self.passes],
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
                "seconds_saved_by_hops": round(sum(one.saved for one in self.programs), 1),
            },
            "second_side": None if self.second_side is None else self.second_side.as_dict(),
            "legend": None if self.legend is None else self.legend.as_dict(),
            "findings": list(self.findings),
        }


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
        bench = make_bench(layout, session.settings, seed, slip=SLIP)
        station = connect(bench.link, bench.operator, session.settings, note=_log.info, bench=bench)
        self.stage = Stage(session, bench, station, np.random.default_rng((seed, 0x5EE)))
        self.give: tuple[str, ...] = ()
        self.left_out: tuple[str, ...] = ()
        self._given_up = False
        bench.clock.heed = self._heed

    def _heed(self) -> None:
        """Given up once, wherever the bench's time passes; then the machine is still to be halted."""
        if self.progress.cancelled and not self._given_up:
            self._given_up = True
            raise Cancelled

    def all(self) -> Rehearsal:
        """Every step in order."""
        session, stage, bench = self.session, self.stage, self.stage.bench
        both = session.settings.board.both
        first = self.progress.part(0.0, 0.4) if both else self.progress.part(0.0, 0.7)
        self._surface(first)
        self._marks(first.part(0.3, 0.32))
        passes = mill_grooves(stage, first.part(0.32, 0.7))
        facts = self._reclamp()
        run_later(stage, later_work(session.derived, session.snapshot), first.part(0.75, 0.95))
        snap = session.snapshot
        fit, board = session.derived.fit(snap), session.derived.board(snap)
        check = bench.outcome(board.nets, fit, progress=first.part(0.95, 1.0))
        carved = bench.carved(fit)
        rms, interval = surface_error(stage)
        found = session.derived.touches(snap)
        legend = self._legend() if both else None
        second = rehearse_second_side(stage, self.progress.part(0.4, 0.75)) if both else None
        legend = legend or self._legend()
        self.progress.step(1.0, "Rehearsed")
        return Rehearsal(
            touches=0 if found is None else len(found[0].touches),
            rms_um=rms,
            interval90=interval,
            give=self.give,
            passes=passes,
            holes=facts.holes,
            residual_mm=facts.rms,
            worst_error_mm=facts.worst,
            check=check,
            lines=sum(len(program.lines) for program in stage.programs),
            resumed=0,
            seconds=stage.station.controller.now(),
            carved=carved,
            programs=tuple(stage.programs),
            islands=designed_islands(board),
            findings=(
                *stage.station.findings,
                *(one.what for one in bench.mishaps),
                *unmarked(session.derived, snap),
                *self.left_out,
            ),
            second_side=second,
            legend=legend,
        )

    def _legend(self) -> LegendOutcome | None:
        """The legend, if there is one to mark on this side; where one side is milled it is turned to."""
        session, stage = self.session, self.stage
        derived, snap = session.derived, session.snapshot
        if not legend_wanted(derived, snap) or unmarked(derived, snap):
            return None
        if not legend_up(derived, snap):
            if snap.settings.board.both:
                return None
            stage.bench.operator.reclamped_by = Rigid(TURN_ANGLE, TURN_SHIFT)
            turn.turn_over(session, stage.station, mill=False)
            measure.find_corner(session, stage.station)
        try:
            return rehearse_legend(stage, self.progress.part(0.75, 0.99))
        except PlanError as refused:  # no holes to find it by; the copper was rehearsed
            self.left_out = (strung((say("The legend is not rehearsed:"), refused.what, refused.hint)),)
            return None

    def _surface(self, progress: Progress) -> None:
        session, station = self.session, self.stage.station
        measure.put_in(station, session.settings.bits.vbit)
        measure.find_corner(session, station)
        measure.zero_height(session, station)
        loose = measure.survey_hold(session, station, progress.part(0.02, 0.1))
        self.give = tuple(one.what for one in loose)
        if loose:
            station.place.ask(
                Request(
                    RequestKind.CONFIRM,
                    "Clamp it there",
                    " ".join(f"{one.what}. {one.hint}" for one in loose),
                )
            )
            self.stage.bench.clamp_edges()
            measure.zero_height(session, station, at=(INSET, INSET))
        measure.measure_surface(session, station, progress.part(0.1, 0.3))
        measure.end_contact(station)

    def _marks(self, progress: Progress) -> None:
        run.lap(self.session, self.stage.station)
        for item in marks_work(self.session.derived, self.session.snapshot):
            self.stage.run(item, progress)

    def _reclamp(self) -> find.FitFacts:
        session, stage = self.session, self.stage
        station, snap = stage.station, session.snapshot
        before = session.derived.fit(snap)
        motion = Rigid(RECLAMP_ANGLE, RECLAMP_SHIFT)
        stage.bench.operator.reclamped_by = motion
        station.place.raise_to(station.place.clearance * 4)
        station.place.ask(
            Request(RequestKind.RECLAMP, "Look at the board", "Take it off and clamp it again.")
        )
        find.moved(session, "taken off and clamped again")
        for mark in session.derived.cuts(snap).marks:
            near = stage.as_seen(before.apply(mark.path)[0], motion)
            find.touch_hole(session, station, mark, near)
        return find.fit_facts(session)
