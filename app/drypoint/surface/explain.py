"""What explains the touches: which are wrong, which waves there are, the likely parameters.

Each bears on the others. A wrong touch hides a wave; with a wave known the rest is smoother, and
a wrong touch stands out that did not before. So both are sought in turn until nothing changes.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from drypoint.progress import Progress
from drypoint.surface.evidence import Evidence, Told, mode
from drypoint.surface.outliers import cleaned
from drypoint.surface.waves import MOST, Waves, next_wave

_ODDS = 2.0
"""Logarithm of the odds against a wave before the touches are looked at."""
_AHEAD = 2
"""Waves taken up on trial: two of like height hide each other until both are known."""
_ROUNDS = 3


def explained(
    told: Told, progress: Progress
) -> tuple[NDArray[np.int64], Evidence, NDArray[np.float64], Waves]:
    """Indices of wrong touches, what the others say, the most likely parameters, and the waves."""
    waves = Waves.none()
    rejected, best = cleaned(told, waves, progress)
    for _ in range(_ROUNDS):
        kept = np.setdiff1d(np.arange(len(told.points)), rejected)
        before = len(waves)
        waves, best = _with_waves(told, kept, waves, best, progress)
        if len(waves) == before:
            break
        rejected, best = cleaned(told, waves, progress)
    kept = np.setdiff1d(np.arange(len(told.points)), rejected)
    return rejected, told.evidence(kept, waves), best, waves


def _with_waves(
    told: Told, kept: NDArray[np.int64], waves: Waves, best: NDArray[np.float64], progress: Progress
) -> tuple[Waves, NDArray[np.float64]]:
    """The waves that the kept touches speak for beside those known, and the parameters with them."""
    evidence = told.evidence(kept, waves)
    density = evidence.log_density(best)
    found, likely = waves, best
    trial, theta, odds, misses = waves, best, 0.0, 0
    while len(trial) < MOST and misses < _AHEAD:
        one = next_wave(evidence.condition(theta), told.points[kept, :2], progress)
        if one is None:
            break
        wave, tried = one
        trial = trial.joined(wave)
        evidence = told.evidence(kept, trial)
        theta = mode(evidence, theta, progress)
        now = evidence.log_density(theta)
        odds += now - density - np.log(tried) - _ODDS
        density = now
        misses += 1
        if odds > 0.0:
            found, likely, odds, misses = trial, theta, 0.0, 0
    return found, likely
