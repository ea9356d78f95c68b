"""Does the test pattern find the bit as it is? Many benches, each with another V-bit than is said.

``python tests/benchmarks/pattern_values.py [COUNT]`` cuts and reads the pattern of a small board on COUNT
benches (seeds 5000 on; 40 unless said) and prints how often the 50, 90 and 95 % intervals hold the bench's
truth, and the mean error in standard deviations; before that the errors of each bench.
"""

from __future__ import annotations

import os
import sys
import tempfile
from dataclasses import replace
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "app"))

from drypoint.session.actions.pattern_rehearsal import rehearse_pattern
from drypoint.session.commands import prepare
from drypoint.session.session import Session

NAMES = ("tip", "run-out", "both", "depth")
LEVELS = ((0.50, 0.674), (0.90, 1.645), (0.95, 1.960))
"""Shares of a normal distribution and their half width, standard deviations (any table of it)."""
FIRST = 5000
DESIGN = Path(__file__).resolve().parents[2] / "examples" / "hive-scale"


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 40
    away, sigmas = [], []
    with tempfile.TemporaryDirectory() as folder:
        job = Path(folder) / "pattern.drypoint"
        prepare([DESIGN], job)
        session = Session.open(job)
        session.change("Room", blank=replace(session.settings.blank, margin=12.0))
        for seed in range(FIRST, FIRST + count):
            made = rehearse_pattern(session, Path(folder) / "bench", seed=seed)
            both, sigma = made.found.together
            found = (made.found.tip, made.found.runout, both, made.found.offset)
            sigmas.append((made.found.sigma(0), made.found.sigma(1), sigma, made.found.sigma(2)))
            truth = (made.tip, made.runout, made.tip + made.runout, made.offset)
            away.append((np.array(found) - truth) / sigmas[-1])
            print(f"seed {seed}: " + ", ".join(f"{z:+.2f}" for z in away[-1]), flush=True)
        session.close()
    z = np.array(away)
    print(f"{'':12}{'mean σ, µm':>12}{'bias, σ':>10}" + "".join(f"{100 * p:>8.0f} %" for p, _ in LEVELS))
    for k, name in enumerate(NAMES):
        held = "".join(f"{100 * (abs(z[:, k]) < half).mean():>8.1f} %" for _, half in LEVELS)
        print(f"{name:12}{1e3 * np.mean(sigmas, axis=0)[k]:>12.1f}{z[:, k].mean():>10.2f}{held}")


if __name__ == "__main__":
    main()
