"""How well the second side will lie over the first: the error between its pads and the drilled holes.

After the board is turned over it is found from holes drilled before. A pad of the second side errs
by the fit; the hole it belongs to has wandered besides. At a hole that the fit was made from the two
are not independent: part of its wander was seen.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.geometry.points import Points, as_points
from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import HOLE_WANDER, Fit

SAME = 1e-6
"""Design places closer than this are one hole, mm."""
DIRECTIONS = 72
"""Directions over which the chance of an error is summed up."""


@dataclass(frozen=True, slots=True, eq=False)
class Registration:
    """Error between pads of the side now up and the holes.

    Attributes
    ----------
    places : (M, 2) board frame
    covariance : (M, 2, 2) of hole minus pad, machine frame, mm²
    """

    places: Points
    covariance: NDArray[np.float64]

    @property
    def rms(self) -> NDArray[np.float64]:
        """(M,) root mean square error, mm."""
        return np.asarray(np.sqrt(np.trace(self.covariance, axis1=1, axis2=2)), dtype=np.float64)

    def within(self, radius: float) -> NDArray[np.float64]:
        """(M,) chance that the error is at most ``radius`` mm."""
        return _within(self.covariance, np.full(len(self.places), radius))

    def radius(self, share: float = 0.95) -> NDArray[np.float64]:
        """(M,) error that is not passed with this chance, mm."""
        return _radius(self.covariance, share, pooled=False)

    def overall(self, share: float = 0.95) -> float:
        """Error that this share of all places taken together does not pass, mm."""
        return float(_radius(self.covariance, share, pooled=True)[0]) if len(self.places) else 0.0


def registration(
    fit: Fit, places: ArrayLike, *, touch: float = 0.02, wander: float = HOLE_WANDER
) -> Registration:
    """Expected error between the pads that ``fit`` will place and the holes that are there.

    For other holes: covariance of the fit plus the wander. For a hole i that was touched, with
    C = covariance of the fit there, w = wander², s = w + touch²: w I - 2 (w / s) C + C
    (least squares: the fit's own place at i is a projection of what was touched).

    Parameters
    ----------
    places : (M, 2) design places of holes, in the frame of the fit's design points
    touch, wander : standard deviation per axis, mm
    """
    spots = as_points(places)
    covariance = fit.covariance_at(spots)
    used = np.zeros(len(spots), dtype=bool)
    if len(spots):
        away = np.linalg.norm(spots[:, None, :] - fit.design[None, :, :], axis=2)
        used = away.min(axis=1) < SAME
    seen = wander**2 / (wander**2 + touch**2) if wander > 0 else 0.0
    factor = np.where(used, 1.0 - 2.0 * seen, 1.0)[:, None, None]
    return Registration(spots, factor * covariance + wander**2 * np.eye(2))


def turned(width: float, height: float, axis: str) -> Rigid:
    """What turning a blank over does to work coordinates, laid back into the same corner.

    ``axis`` is the one it is turned about: "y" changes left and right, "x" front and back.
    """
    if axis == "y":
        return Rigid(0.0, (width, 0.0), True)
    if axis == "x":
        return Rigid(math.pi, (0.0, height), True)
    raise ValueError(f"no axis {axis!r}")


def across(width: float) -> Rigid:
    """From the frame of one side of a board to that of the other, and back: x is counted from the right."""
    return Rigid(0.0, (width, 0.0), True)


def _within(covariance: NDArray[np.float64], radius: NDArray[np.float64]) -> NDArray[np.float64]:
    """Share of a two-dimensional normal distribution inside circles.

    In polar coordinates the radius integrates in closed form: outside lies the mean over directions
    of exp(-R² g / 2) / (g √det), g the quadratic form of the inverse covariance.
    """
    angle = (np.arange(DIRECTIONS) + 0.5) * math.pi / DIRECTIONS
    way = np.column_stack((np.cos(angle), np.sin(angle)))
    inverse = np.linalg.inv(covariance)
    form = np.einsum("ki,mij,kj->mk", way, inverse, way)
    root = np.sqrt(np.linalg.det(covariance))[:, None]
    outside = np.exp(-0.5 * radius[:, None] ** 2 * form) / (form * root)
    return np.asarray(1.0 - outside.mean(axis=1), dtype=np.float64)


def _radius(covariance: NDArray[np.float64], share: float, *, pooled: bool) -> NDArray[np.float64]:
    """Radii that hold ``share``, by bisection; one for all places together if ``pooled``."""
    low = np.zeros(len(covariance))
    high = np.full(len(covariance), 10.0 * float(np.sqrt(np.trace(covariance, axis1=1, axis2=2).max())))
    for _ in range(50):
        middle = (low + high) / 2.0
        inside = _within(covariance, middle)
        enough = inside >= share if not pooled else np.full(len(inside), inside.mean() >= share)
        low, high = np.where(enough, low, middle), np.where(enough, middle, high)
    return high
