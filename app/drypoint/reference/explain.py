"""What would explain the residuals: scale, axes out of square, or play? Diagnosis only.

Each explanation adds parameters to the rigid motion; the misfit they save follows a chi-squared
distribution if they are not needed. Nothing here is ever applied on its own.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.stats import chi2

from drypoint.errors import InputError
from drypoint.reference.fit import Fit
from drypoint.reference.linear import solve
from drypoint.wording import say

SIGNIFICANT = 0.01
"""An explanation counts if chance alone would save as much misfit less often than this."""


@dataclass(frozen=True, slots=True)
class Explanation:
    """One explanation of the residuals.

    Attributes
    ----------
    kind : "scale", "axes" (a scale per axis and squareness) or "play"
    values, sigma : the extra parameters and their standard deviations:
        scale: (scale - 1,); axes: (x scale - 1, y scale - 1, angle missing to square, rad);
        play: (x, y) in mm
    saved : float
        Misfit saved.
    chance : float
        How often chance alone would save as much.
    what : str
        One sentence for people.
    """

    kind: str
    values: tuple[float, ...]
    sigma: tuple[float, ...]
    saved: float
    chance: float
    what: str

    @property
    def significant(self) -> bool:
        """Whether the residuals speak for it."""
        return self.chance < SIGNIFICANT


def explain(fit: Fit, approach: ArrayLike | None = None) -> tuple[Explanation, ...]:
    """Explanations that the number of holes allows, the most convincing first.

    Parameters
    ----------
    approach : (N, 2) signs, optional
        +1 where a hole was reached while moving towards larger x (or y), -1 towards smaller.
        Only with both signs present can play be seen.
    """
    found = [_scale(fit)]
    if len(fit.design) >= 3:
        found.append(_axes(fit))
    if approach is not None:
        found.append(_play(fit, np.asarray(approach, dtype=np.float64)))
    return tuple(sorted((e for e in found if e is not None), key=lambda e: e.chance))


def _base(fit: Fit) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Arms (N, 2) about the middle, the (2N, 3) columns of a rigid motion, and (2N,) sigmas."""
    mapped = fit.apply(fit.design)
    arm = mapped - np.average(mapped, axis=0, weights=fit.sigma**-2.0)
    none, one = np.zeros(len(arm)), np.ones(len(arm))
    rigid = np.column_stack(
        (np.concatenate((one, none)), np.concatenate((none, one)), np.concatenate((-arm[:, 1], arm[:, 0])))
    )
    return arm, rigid, np.concatenate((fit.sigma, fit.sigma))


def _try(
    fit: Fit, extra: NDArray[np.float64]
) -> tuple[NDArray[np.float64], NDArray[np.float64], float, float] | None:
    """Extra parameters, their covariance, the misfit saved, and its chance; None if undetermined."""
    _, rigid, sigma = _base(fit)
    values = np.concatenate((fit.residuals[:, 0], fit.residuals[:, 1]))
    try:
        found = solve(np.column_stack((rigid, extra)), values, sigma)
    except InputError:
        return None
    saved = max(0.0, fit.misfit - found.misfit)
    return found.values[3:], found.covariance[3:, 3:], saved, float(chi2.sf(saved, extra.shape[1]))


def _scale(fit: Fit) -> Explanation | None:
    arm, _, _ = _base(fit)
    tried = _try(fit, np.concatenate((arm[:, 0], arm[:, 1]))[:, None])
    if tried is None:
        return None
    (value,), covariance, saved, chance = tried
    u = float(np.sqrt(covariance[0, 0]))
    return Explanation(
        "scale",
        (float(value),),
        (u,),
        saved,
        chance,
        say(
            "The machine's distances are {value:+.0f} ± {u:.0f} µm per metre off.",
            value=1000000.0 * value,
            u=1000000.0 * u,
        ),
    )


def _axes(fit: Fit) -> Explanation | None:
    arm, _, _ = _base(fit)
    none = np.zeros(len(arm))
    x, y = arm.T
    extra = np.column_stack(
        (np.concatenate((x, none)), np.concatenate((none, y)), np.concatenate((y, x)) / 2)
    )
    tried = _try(fit, extra)
    if tried is None:
        return None
    values, covariance, saved, chance = tried
    u = np.sqrt(np.diag(covariance))
    return Explanation(
        "axes",
        tuple(values.tolist()),
        tuple(u.tolist()),
        saved,
        chance,
        say(
            "Per metre, x is {values:+.0f} ± {u:.0f} µm and y {values2:+.0f} ± {u2:.0f} µm "
            "off; the axes are {values3:+.2f} ± {u3:.2f} mrad out of square.",
            values=1000000.0 * values[0],
            u=1000000.0 * u[0],
            values2=1000000.0 * values[1],
            u2=1000000.0 * u[1],
            values3=1000.0 * values[2],
            u3=1000.0 * u[2],
        ),
    )


def _play(fit: Fit, approach: NDArray[np.float64]) -> Explanation | None:
    sides = np.sign(approach)
    none = np.zeros(len(sides))
    # reached while moving up the axis, the reading is half the play too large
    columns = [np.concatenate((sides[:, 0], none)) / 2, np.concatenate((none, sides[:, 1])) / 2]
    seen = [axis for axis in (0, 1) if np.ptp(sides[:, axis]) > 0]
    if not seen:
        return None
    tried = _try(fit, np.column_stack([columns[axis] for axis in seen]))
    if tried is None:
        return None
    found, covariance, saved, chance = tried
    values, u = [0.0, 0.0], [float("inf")] * 2
    for place, axis in enumerate(seen):
        values[axis], u[axis] = float(found[place]), float(np.sqrt(covariance[place, place]))
    text = ", ".join(f"{'xy'[a]} {1000 * values[a]:.0f} ± {1000 * u[a]:.0f} µm" for a in seen)
    return Explanation(
        "play",
        tuple(values),
        tuple(u),
        saved,
        chance,
        say("Play of {text} would explain part of it.", text=text),
    )
