"""The fixed offset between the spindle and another head (a laser spot), measured on marks."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.stats import chi2

from drypoint.errors import InputError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid


@dataclass(frozen=True, slots=True, eq=False)
class HeadOffset:
    """Where the other head must be sent to work where the spindle would.

    Attributes
    ----------
    offset : (x, y) mm
        Position with the other head over a mark minus position with the spindle over it.
    sigma : float
        Standard deviation per axis, mm.
    residuals : (N, 2) mm
    chance : float or None
        How often the marks would disagree this much; None for a single mark.
    """

    offset: tuple[float, float]
    sigma: float
    residuals: NDArray[np.float64]
    chance: float | None

    @property
    def rigid(self) -> Rigid:
        """The shift, to follow a fit: ``fit.rigid.then(head.rigid)``."""
        return Rigid(0.0, self.offset)

    def covariance(self) -> NDArray[np.float64]:
        """(2, 2) mm², to be added to that of the fit."""
        spread: NDArray[np.float64] = np.eye(2) * self.sigma**2
        return spread


def head_offset(
    spindle: ArrayLike, other: ArrayLike, *, spindle_sigma: float = 0.02, other_sigma: float = 0.1
) -> HeadOffset:
    """Offset from (N, 2) machine positions of both heads over the same marks.

    Raises
    ------
    InputError
        No marks, or lists of different length.
    """
    a, b = as_points(spindle), as_points(other)
    if len(a) != len(b) or not len(a):
        raise InputError(
            "Each mark is needed once with the spindle and once with the other head.", "head offset"
        )
    difference = b - a
    mean = difference.mean(axis=0)
    one = float(np.hypot(spindle_sigma, other_sigma))
    residuals = difference - mean
    misfit = float(((residuals / one) ** 2).sum())
    return HeadOffset(
        offset=(float(mean[0]), float(mean[1])),
        sigma=one / float(np.sqrt(len(a))),
        residuals=residuals,
        chance=float(chi2.sf(misfit, 2 * len(a) - 2)) if len(a) > 1 else None,
    )
