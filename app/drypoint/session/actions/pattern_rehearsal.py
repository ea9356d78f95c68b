"""The test pattern on a bench whose V-bit is not what is said of it: what readings tell, and the truth."""

from __future__ import annotations

import logging
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np

from drypoint.bench.bench import Bench
from drypoint.bench.eyes import true_depths
from drypoint.bits.width_coupon import Evaluation
from drypoint.progress import Progress
from drypoint.session.actions.coupon_reading import evaluate_readings, lines_of
from drypoint.session.actions.pattern_look import have_read
from drypoint.session.actions.pattern_run import prepare_pattern, run_pattern
from drypoint.session.ground import trial_cuts
from drypoint.session.rehearsal import shadow_of
from drypoint.session.session import Session
from drypoint.session.station import connect, make_bench

_log = logging.getLogger(__name__)

TIP = 0.02
"""Spread of how much wider the bench's V-bit is than is said, mm."""
RUNOUT = 0.02
"""Its run-out is more than is said by 0 to this, mm."""


@dataclass(frozen=True, slots=True)
class PatternRehearsal:
    """What came of it.

    Attributes
    ----------
    found : Evaluation
        What the bench's eyes and meter say of the bit.
    tip, runout, offset : float
        What is true of it there, mm; ``offset`` as in `Evaluation`.
    seconds : float
        Of the run, simulated.
    mishaps : tuple of str
    """

    found: Evaluation
    tip: float
    runout: float
    offset: float
    seconds: float
    mishaps: tuple[str, ...]


def rehearse_pattern(
    session: Session, folder: Path, *, seed: int = 0, progress: Progress | None = None
) -> PatternRehearsal:
    """Touch, cut, read and evaluate on a bench; the job stays as it is.

    Raises
    ------
    PlanError, MachineError
        As at the machine.
    """
    told = progress or Progress()
    with shadow_of(session, folder) as shadow:
        bench = make_bench(shadow.derived.layout(shadow.snapshot), shadow.settings, seed, loose=())
        rng, faults = np.random.default_rng((seed, 0x71B)), bench.body.faults
        wider, more = float(rng.normal(0.0, TIP)), float(rng.uniform(0.0, RUNOUT))
        bench.body.faults = replace(faults, tip=wider, runout=more)
        station = connect(bench.link, bench.operator, shadow.settings, note=_log.info, bench=bench)
        try:
            placed = prepare_pattern(shadow, station, told.part(0.0, 0.4), put=True)
            told.step(0.4, "Cutting the test pattern")
            result = run_pattern(shadow, station, placed)
            told.step(0.9, "Reading the test pattern")
            found = evaluate_readings(shadow, have_read(shadow, bench))
            bit = shadow.settings.bits.vbit
            offset = true_offset(shadow, bench)
            mishaps = tuple(dict.fromkeys(one.what for one in bench.mishaps))
        finally:
            station.close()
    return PatternRehearsal(found, bit.tip + wider, bit.runout + more, offset, result.seconds, mishaps)


def true_offset(session: Session, bench: Bench) -> float:
    """How much deeper than set the bench cut the newest pattern, before play, mm."""
    known, lines = lines_of(session.settings.bits.vbit), trial_cuts(session.snapshot)[-1].lines
    fit = session.derived.fit(session.snapshot)
    depths = [depth for depth, _ in known.widths]
    depths += [known.ridge_depth] * (2 * len(known.ridges)) + list(known.squares)
    more = [
        true_depths(bench, fit.apply(line), depth) - depth for depth, line in zip(depths, lines, strict=True)
    ]
    return float(np.concatenate(more).mean()) + session.settings.passes.play / 2.0
