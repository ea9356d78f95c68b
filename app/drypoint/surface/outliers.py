"""Wrong touches: a chip under the bit, oxide, a missed contact.

Each touch is predicted from all others; the worst beyond the limit is left out and the rest asked
again, since one wrong touch makes its neighbours look wrong too.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from drypoint.progress import Progress
from drypoint.surface.evidence import Evidence, Told, mode
from drypoint.surface.waves import Waves

LIMIT = 3.1
"""Standard deviations from what the others predict: one good touch in five hundred."""
_ROUNDS = 6
_SHARE = 0.2
"""Never leave out more than this share."""
_ENOUGH = 8
"""Fewer touches cannot outvote one."""


def cleaned(told: Told, waves: Waves, progress: Progress) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Indices of wrong touches (sorted) and the most likely parameters without them."""
    kept = np.arange(len(told.points))
    best = told.prior.start
    most = int(_SHARE * len(kept)) if len(kept) >= _ENOUGH else 0
    for _ in range(_ROUNDS):
        evidence = told.evidence(kept, waves)
        best = mode(evidence, best, progress)
        wrong = _worst(evidence, best, most - (len(told.points) - len(kept)))
        if not len(wrong):
            break
        kept = np.delete(kept, wrong)
    return np.setdiff1d(np.arange(len(told.points)), kept).astype(np.int64), best


def _worst(evidence: Evidence, theta: NDArray[np.float64], most: int) -> list[int]:
    """Touches beyond the limit, worst first, each judged without those before it.

    Leaving touch i out of a process with precision A gives the precision
    A − A[:, i] A[i, :] / A[i, i] of the others (block inverse).
    """
    precision = evidence.condition(theta).inverse()
    weights = precision @ evidence.heights
    wrong: list[int] = []
    alive = np.ones(len(weights), dtype=bool)
    while len(wrong) < most:
        diagonal = np.where(alive, np.diag(precision), 1.0)
        z = np.where(alive, np.abs(weights) / np.sqrt(diagonal), 0.0)
        worst = int(np.argmax(z))
        if z[worst] <= LIMIT:
            break
        wrong.append(worst)
        column = precision[:, worst].copy()
        weights = weights - column * (weights[worst] / column[worst])
        precision = precision - np.outer(column, column) / column[worst]
        alive[worst] = False
    return wrong
