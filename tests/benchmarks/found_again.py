"""A board moved and found again, 200 set-ups each: error at every hole against the predicted ellipses.

Every set-up: the holes have wandered from their design (standard deviation per axis), the board is laid
down turned by up to 10 degrees either way or by 180, or turned over about either axis besides, and two or
three holes are touched with noise. The same candidates, suggestion and fit as in the window
(`drypoint.session.holes`, `drypoint.reference`). Error: where the fit sends the bit for a hole, against
where the motion really takes that place of the design.

Run by hand: python tests/benchmarks/found_again.py
"""

from __future__ import annotations

import math
import sys
import tempfile
from dataclasses import replace
from pathlib import Path

import numpy as np
from scipy.stats import beta

from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import fit_rigid
from drypoint.session import holes
from drypoint.session.commands import prepare
from drypoint.session.session import Session

SETUPS = 200
TOUCH, WANDER, PRICKED = 0.02, 0.05, 0.02
CHI2_95 = 5.991464547107979
"""Quantile of chi-squared with two degrees of freedom (NIST/SEMATECH e-handbook, 1.3.6.7.4)."""


def motion(rng, over):
    """How the board is laid down anew."""
    angle = math.radians(rng.uniform(-10, 10)) if rng.random() < 0.5 else math.pi + rng.normal(0, 0.01)
    laid = Rigid(angle, tuple(rng.uniform(-5, 5, 2)))
    return Rigid(0.0, (90.0, 0.0), True).then(laid) if over else laid


def run(places, used, wander, known, over, seed):
    """Share of (set-up, hole) inside the 95 % ellipse, errors (SETUPS, holes), predicted 95 % radii."""
    inside, errors = [], []
    for number in range(SETUPS):
        rng = np.random.default_rng((seed, number))
        truth = motion(rng, over)
        real = truth.apply(known + rng.normal(0, 1, known.shape) * wander[:, None])
        touched = real + rng.normal(0, TOUCH, real.shape)
        fit = fit_rigid(known, touched, mirror=over, sigma=TOUCH, hole_sigma=wander)
        off = fit.apply(places) - truth.apply(places)
        square = np.einsum("ni,nij,nj->n", off, np.linalg.inv(fit.covariance_at(places)), off)
        inside.append(square <= CHI2_95)
        errors.append(np.hypot(*off.T))
    return np.array(inside), np.array(errors)


def main() -> None:
    out = sys.stdout.write
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "board.drypoint"
        prepare([Path(__file__).parents[2] / "examples" / "hive-scale"], path)
        session = Session.open(path)
        believed = replace(
            session.settings.reference, touch_sigma=TOUCH, hole_sigma=WANDER, mark_sigma=PRICKED
        )
        session.change("As simulated", reference=believed)
        snap, derived = session.snapshot, session.derived
        found = holes.candidates(derived, snap)
        places = np.array([one.at for one in found if not one.mark])
        out(
            f"demo board, {len(places)} holes, {SETUPS} set-ups; touch {1000 * TOUCH:.0f} µm, drilled holes "
            f"{1000 * WANDER:.0f} µm, marks {1000 * PRICKED:.0f} µm\n"
            "reference holes          turned over  used         in 95 % ellipse         "
            "95 % of error: all  worst hole\n"
        )
        marks = [one for one in found if one.mark]
        drilled = [one for one in found if not one.mark]
        for name, pool, as_drilled in (
            ("drilled holes, 50 µm", drilled, True),
            ("marks, as if drilled", marks, True),
            ("marks, pricked, 20 µm", marks, False),
        ):
            for count in (2, 3, 4):
                for over in (False, True):
                    if over and pool is marks and not as_drilled:
                        continue  # pricked marks are not seen from the other side
                    used = holes.suggested(derived, snap, pool, count)
                    known = np.array([one.at for one in used])
                    wander = np.full(count, WANDER if as_drilled else PRICKED)
                    inside, errors = run(places, used, wander, known, over, count)
                    hits, trials = int(inside.sum()), inside.size
                    one_each = inside[np.arange(SETUPS), np.arange(SETUPS) % len(places)]
                    k = int(one_each.sum())
                    low, high = beta.ppf(0.025, k, SETUPS - k + 1), beta.ppf(0.975, k + 1, SETUPS - k)
                    out(
                        f"{name:24s} {'yes' if over else 'no':11s}  {' '.join(o.label for o in used):12s} "
                        f"{100 * hits / trials:6.2f} %  ({100 * low:.0f}–{100 * high:.0f})      "
                        f"{1000 * np.quantile(errors, 0.95):8.0f} µm "
                        f"{1000 * np.quantile(errors, 0.95, axis=0).max():10.0f} µm\n"
                    )
        out("bracketed: 95 % interval, one hole per set-up, since those of one set-up hang together\n")
        session.close()


if __name__ == "__main__":
    main()
