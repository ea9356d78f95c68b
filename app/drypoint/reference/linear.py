"""Weighted linear least squares with covariance: the one place where it is solved."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.errors import InputError


@dataclass(frozen=True, slots=True, eq=False)
class Solution:
    """Parameters of y = X b + e with e of known standard deviation.

    Attributes
    ----------
    values : (P,) parameters
    covariance : (P, P) with the given standard deviations taken as right
    misfit : float
        Weighted sum of squared residuals.
    freedom : int
    """

    values: NDArray[np.float64]
    covariance: NDArray[np.float64]
    misfit: float
    freedom: int

    @property
    def sigma(self) -> NDArray[np.float64]:
        """(P,) standard deviations of the parameters."""
        deviations: NDArray[np.float64] = np.sqrt(np.diag(self.covariance))
        return deviations


def solve(matrix: ArrayLike, values: ArrayLike, sigma: ArrayLike) -> Solution:
    """Least squares of (N, P) ``matrix`` against (N,) ``values``, each weighted by 1/sigma².

    Raises
    ------
    InputError
        The data do not determine the parameters.
    """
    s = np.broadcast_to(np.asarray(sigma, dtype=np.float64), np.shape(values))
    x = np.asarray(matrix, dtype=np.float64) / s[:, None]
    y = np.asarray(values, dtype=np.float64) / s
    # columns of equal length, so that "determined" does not depend on units
    size = np.sqrt((x**2).sum(axis=0))
    if len(y) < x.shape[1] or not (size > 0).all():
        raise InputError("Too few measurements for what is to be found.", "least squares")
    u, singular, vt = np.linalg.svd(x / size, full_matrices=False)
    if singular[-1] < 1e-10 * singular[0]:
        raise InputError("The measurements do not determine what is to be found.", "least squares")
    inverse = (vt.T / singular) / size[:, None]
    found = inverse @ (u.T @ y)
    return Solution(found, inverse @ inverse.T, float(((y - x @ found) ** 2).sum()), len(y) - x.shape[1])


@dataclass(frozen=True, slots=True)
class Line:
    """y = intercept + slope (x - origin), with standard uncertainties.

    ``scatter`` is the standard deviation of the points about the line, ``correlation`` that of
    intercept and slope.
    """

    origin: float
    intercept: float
    slope: float
    intercept_sigma: float
    slope_sigma: float
    correlation: float
    scatter: float

    def at(self, x: float) -> tuple[float, float]:
        """Value and standard uncertainty of the line at ``x`` (JCGM 100:2008, H.3.4)."""
        run = x - self.origin
        variance = (
            self.intercept_sigma**2
            + (run * self.slope_sigma) ** 2
            + 2 * run * self.correlation * self.intercept_sigma * self.slope_sigma
        )
        return self.intercept + self.slope * run, math.sqrt(max(0.0, variance))


def fit_line(x: ArrayLike, y: ArrayLike, *, origin: float = 0.0) -> Line:
    """Straight line through three points or more, its uncertainty from their own scatter.

    JCGM 100:2008 (GUM), H.3: variance of the points about the line over N - 2.

    Raises
    ------
    InputError
        Fewer than three points, or all at one x.
    """
    run = np.asarray(x, dtype=np.float64) - origin
    if len(run) < 3:
        raise InputError("A line with its uncertainty needs three points at least.", "straight line")
    found = solve(np.column_stack((np.ones(len(run)), run)), y, 1.0)
    variance = found.misfit / found.freedom
    u = found.sigma * math.sqrt(variance)
    correlation = float(found.covariance[0, 1] / (found.sigma[0] * found.sigma[1]))
    return Line(
        origin,
        float(found.values[0]),
        float(found.values[1]),
        float(u[0]),
        float(u[1]),
        correlation,
        math.sqrt(variance),
    )
