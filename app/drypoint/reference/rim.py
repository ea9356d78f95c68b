"""A hole's centre from contacts with its rim.

The bit stands in the hole and is moved outwards until it touches; every contact is a point of a
circle round the hole's centre whose radius is that of the hole less that of the bit. Four contacts
in line with the axes give the centre as the means and the diameter as the distance plus the bit's
own (the hole-measuring routine of NISTIR 6556, table 6).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.stats import chi2

from drypoint.errors import InputError
from drypoint.geometry.points import as_points
from drypoint.reference.linear import Solution, solve

ROUNDS = 50
"""More rounds of refinement than ever needed; it converges quadratically."""
SETTLED = 1e-12
"""A change smaller than this, mm, ends it."""
ALARM = 0.01
"""Good contacts are called not round this often."""


@dataclass(frozen=True, slots=True, eq=False)
class RimCentre:
    """The circle through rim contacts.

    Attributes
    ----------
    centre : (x, y) mm, machine frame
    covariance : (2, 2) of the centre, mm²
    radius : float
        Of the circle of contacts (hole less bit), mm.
    radius_sigma : float
        0 where the radius was given.
    residuals : (N,) distance of each contact from the circle, mm, outwards positive
    chance : float or None
        How often good contacts would lie this badly; None where nothing is left to check.
    """

    centre: tuple[float, float]
    covariance: NDArray[np.float64]
    radius: float
    radius_sigma: float
    residuals: NDArray[np.float64]
    chance: float | None

    @property
    def sigma(self) -> float:
        """Standard deviation of the centre in its worst direction, mm."""
        return float(np.sqrt(np.linalg.eigvalsh(self.covariance)[-1]))

    @property
    def round(self) -> bool:
        """Whether the contacts lie on a circle as well as their noise allows."""
        return self.chance is None or self.chance >= ALARM

    def diameter(self, bit: float) -> float:
        """Diameter of the hole for a bit of diameter ``bit``, mm."""
        return 2 * self.radius + bit


def rim_centre(contacts: ArrayLike, *, sigma: float = 0.01, radius: float | None = None) -> RimCentre:
    """The circle nearest to three contacts or more.

    Least squares of the distances from the circle (Gauss-Newton), with the covariance of its
    linearisation.

    Parameters
    ----------
    contacts : (N, 2) where the bit's axis was at each contact, mm
    sigma : standard deviation of one contact, mm
    radius : hole radius less bit radius, if it is known

    Raises
    ------
    InputError
        Too few contacts, or all of them nearly on a line or on one side.
    """
    points = as_points(contacts)
    if len(points) < 3:
        raise InputError("Three contacts with the rim are needed at least.", "rim of a hole")
    centre, size = _start(points)
    size = size if radius is None else radius
    for _ in range(ROUNDS):
        found, residual = _round(points, centre, size, sigma, radius is None)
        centre = centre + found.values[:2]
        size = size + float(found.values[2]) if radius is None else size
        if np.abs(found.values).max() < SETTLED:
            break
    found, residual = _round(points, centre, size, sigma, radius is None)
    return RimCentre(
        centre=(float(centre[0]), float(centre[1])),
        covariance=found.covariance[:2, :2],
        radius=size,
        radius_sigma=float(found.sigma[2]) if radius is None else 0.0,
        residuals=residual,
        chance=float(chi2.sf(((residual / sigma) ** 2).sum(), found.freedom)) if found.freedom > 0 else None,
    )


def _start(points: NDArray[np.float64]) -> tuple[NDArray[np.float64], float]:
    """The algebraic circle: linear in centre and radius² (Coope's form)."""
    middle = points.mean(axis=0)
    p = points - middle
    try:
        found = solve(np.column_stack((2 * p, np.ones(len(p)))), (p**2).sum(axis=1), 1.0)
    except InputError:
        raise InputError(
            "The contacts lie on one line, so they give no centre.",
            "rim of a hole",
            "Touch the rim all round.",
        ) from None
    centre = found.values[:2]
    return centre + middle, float(np.sqrt(max(0.0, found.values[2] + centre @ centre)))


def _round(
    points: NDArray[np.float64], centre: NDArray[np.float64], size: float, sigma: float, free: bool
) -> tuple[Solution, NDArray[np.float64]]:
    """One linearised round: the correction, and the residuals before it."""
    away = points - centre
    distance = np.hypot(away[:, 0], away[:, 1])
    direction = away / np.maximum(distance, 1e-12)[:, None]
    columns = np.column_stack((direction, np.ones(len(points)))) if free else direction
    residual: NDArray[np.float64] = distance - size
    return solve(columns, residual, sigma), residual
