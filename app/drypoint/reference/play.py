"""Play of the axes: measured by contacts, evaluated in the terms of ISO 230-2.

What software cannot cure: play that the cutting force takes up now on one side and now on the
other. Reaching places from one side helps holes and references; lighter cuts or a mended nut help
the rest.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.errors import InputError
from drypoint.reference.linear import Line, fit_line


@dataclass(frozen=True, slots=True, eq=False)
class AxisReport:
    """Positioning of one axis in ISO 230-2's terms, mm.

    ``up`` is approached towards larger readings, ``down`` towards smaller.

    Attributes
    ----------
    targets : (m,) positions
    reversal_at : (m,) B_i, mean of up minus mean of down
    reversal : B, the largest |B_i|
    mean_reversal : mean of B_i
    repeatability_at : (m,) R_i, two-directional
    repeatability, repeatability_up, repeatability_down : R, R up, R down
    systematic, systematic_up, systematic_down : E, range of the mean deviations
    mean_deviation : M, range of the means of both directions
    accuracy, accuracy_up, accuracy_down : A, with two standard deviations added
    line : straight line through the mean deviations against position: its slope is the axis's
        scale error; None with fewer than three targets
    """

    targets: NDArray[np.float64]
    reversal_at: NDArray[np.float64]
    reversal: float
    mean_reversal: float
    repeatability_at: NDArray[np.float64]
    repeatability: float
    repeatability_up: float
    repeatability_down: float
    systematic: float
    systematic_up: float
    systematic_down: float
    mean_deviation: float
    accuracy: float
    accuracy_up: float
    accuracy_down: float
    line: Line | None


def evaluate_axis(targets: ArrayLike, up: ArrayLike, down: ArrayLike) -> AxisReport:
    """ISO 230-2 evaluation of an axis.

    Parameters
    ----------
    targets : (m,) mm
    up, down : (m, n) readings from either side, n cycles (two or more; the standard asks for five)

    Raises
    ------
    InputError
        The readings do not fit the targets, or there is only one cycle.
    """
    place = np.asarray(targets, dtype=np.float64)
    u, d = np.asarray(up, dtype=np.float64), np.asarray(down, dtype=np.float64)
    if place.ndim != 1 or not len(place) or u.shape != d.shape or u.ndim != 2 or len(u) != len(place):
        raise InputError("Readings from both sides are needed at every target.", "play of an axis")
    if u.shape[1] < 2:
        raise InputError("Two cycles are needed at least; five are usual.", "play of an axis")
    mean_u, mean_d = (u - place[:, None]).mean(axis=1), (d - place[:, None]).mean(axis=1)
    s_u, s_d = u.std(axis=1, ddof=1), d.std(axis=1, ddof=1)
    b = mean_u - mean_d
    r = np.maximum.reduce((2 * s_u + 2 * s_d + np.abs(b), 4 * s_u, 4 * s_d))
    both = (mean_u + mean_d) / 2
    high_u, low_u = (mean_u + 2 * s_u).max(), (mean_u - 2 * s_u).min()
    high_d, low_d = (mean_d + 2 * s_d).max(), (mean_d - 2 * s_d).min()
    means = np.concatenate((mean_u, mean_d))
    return AxisReport(
        targets=place,
        reversal_at=b,
        reversal=float(np.abs(b).max()),
        mean_reversal=float(b.mean()),
        repeatability_at=r,
        repeatability=float(r.max()),
        repeatability_up=float(4 * s_u.max()),
        repeatability_down=float(4 * s_d.max()),
        systematic=float(np.ptp(means)),
        systematic_up=float(np.ptp(mean_u)),
        systematic_down=float(np.ptp(mean_d)),
        mean_deviation=float(np.ptp(both)),
        accuracy=float(max(high_u, high_d) - min(low_u, low_d)),
        accuracy_up=float(high_u - low_u),
        accuracy_down=float(high_d - low_d),
        line=fit_line(place, both) if len(place) >= 3 else None,
    )


@dataclass(frozen=True, slots=True)
class Play:
    """Play of one axis from contacts: ``value`` and its standard uncertainty, mm.

    ``repeatability`` is four standard deviations of one contact (one-directional).
    """

    value: float
    sigma: float
    repeatability: float
    cycles: int

    @property
    def matters(self) -> bool:
        """Whether it is told apart from none (beyond two standard uncertainties)."""
        return self.value > 2 * self.sigma


def play_from_contacts(make: ArrayLike, broke: ArrayLike, *, step: float = 0.0) -> Play:
    """Play from contact made and contact broken on one wall, reading along the axis.

    Moving away from the wall, the bit stays in contact until the play is used up; so the play is
    the difference of the readings, whatever the overtravel was.

    Parameters
    ----------
    make, broke : (n,) readings, mm, n cycles
    step : size of the steps in which contact was looked for, mm: adds its own uncertainty
        (uniform over a step: step/√12 per reading, JCGM 100:2008, 4.3.7)

    Raises
    ------
    InputError
        Different numbers of readings, or fewer than two.
    """
    a, b = np.asarray(make, dtype=np.float64), np.asarray(broke, dtype=np.float64)
    if a.shape != b.shape or a.ndim != 1 or len(a) < 2:
        raise InputError(
            "As many contacts made as broken are needed, two of each at least.", "play of an axis"
        )
    difference = (b - a) * (1.0 if (b - a).mean() >= 0 else -1.0)
    spread = float(difference.std(ddof=1))
    sigma = math.sqrt(spread**2 / len(a) + 2 * step**2 / 12)
    repeat = 4 * float(max(a.std(ddof=1), b.std(ddof=1)))
    return Play(float(difference.mean()), sigma, repeat, len(a))


def play_from_sides(up: ArrayLike, down: ArrayLike) -> Play:
    """Play from readings of one place reached from both sides, (n,) each, mm.

    Raises
    ------
    InputError
        Fewer than two readings from a side.
    """
    u, d = np.asarray(up, dtype=np.float64), np.asarray(down, dtype=np.float64)
    if u.ndim != 1 or d.ndim != 1 or min(len(u), len(d)) < 2:
        raise InputError("Two readings from each side are needed at least.", "play of an axis")
    s_u, s_d = float(u.std(ddof=1)), float(d.std(ddof=1))
    sigma = math.sqrt(s_u**2 / len(u) + s_d**2 / len(d))
    return Play(abs(float(u.mean() - d.mean())), sigma, 4 * max(s_u, s_d), min(len(u), len(d)))
