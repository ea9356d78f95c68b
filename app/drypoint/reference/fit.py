"""Find the board again: the rigid motion from the design to the machine, and what it is worth.

The motion is the weighted least-squares fit of touched to designed hole positions. Every hole
brings two independent uncertainties: the touch itself, and how far the drill wandered from where
the design put the hole. The covariance of the fit follows from both and is carried to any point.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.stats import chi2

from drypoint.errors import InputError
from drypoint.geometry.points import Points, as_points
from drypoint.geometry.rigid import Rigid
from drypoint.wording import say

HOLE_WANDER = 0.05
"""How far a drilled hole lies from its design, mm, one standard deviation per axis.

Common practice, no source; editable by the user."""

MARK_WANDER = 0.02
"""The same for a mark pricked by the short stiff V-bit, which does not wander as a thin drill does, mm.

Common practice, no source; editable by the user."""

TOUCH_SIGMA = {"eye": 0.03, "light spot": 0.1, "rim": 0.015}
"""Uncertainty of finding a hole's centre, mm, one standard deviation per axis, by how it is found:
sighting the bit over the hole by eye with a lens, a light spot, contacts with the rim.

Common practice, no source; editable by the user."""

COINCIDENT = 1e-6
"""Holes closer together than this, mm, say nothing about the angle."""


@dataclass(frozen=True, slots=True, eq=False)
class Fit:
    """A rigid motion fitted to touched holes.

    Attributes
    ----------
    design : (N, 2) where the holes are in the design, board frame
    touched : (N, 2) where they were found, machine frame
    sigma : (N,) total standard deviation per axis of each hole, mm
    angle : float
        Radians, anticlockwise.
    offset : (2,) mm
    mirror : bool
        x of the design is negated first (holes given in the other side's frame).
    residuals : (N, 2) touched minus mapped, mm, machine frame
    scale : float
        Best similarity scale, for diagnosis only: it is never applied.
    scale_sigma : float
        Standard deviation of ``scale``.
    stretch : (2, 2) or None
        Correction of scale and squareness, symmetric, about the weighted mean of ``design``; only on
        an explicit choice (`drypoint.reference.affine.stretched`).
    stretch_covariance : (3, 3) or None
        With it: of the three parameters that map design to one axis of the machine, mm².
    """

    design: Points
    touched: Points
    sigma: NDArray[np.float64]
    angle: float
    offset: Points
    mirror: bool
    residuals: Points
    scale: float
    scale_sigma: float
    stretch: NDArray[np.float64] | None = None
    stretch_covariance: NDArray[np.float64] | None = None

    @property
    def rigid(self) -> Rigid:
        """The motion alone, without a stretch."""
        return Rigid(self.angle, (float(self.offset[0]), float(self.offset[1])), self.mirror)

    def apply(self, points: ArrayLike) -> Points:
        """(N, 2) or (N, 3) board-frame points, mapped to the machine frame."""
        if self.stretch is None:
            return self.rigid.apply(points)
        moved = np.atleast_2d(np.array(points, dtype=np.float64))
        middle = self.middle
        moved[:, :2] = middle + (moved[:, :2] - middle) @ self.stretch.T
        return self.rigid.apply(moved)

    @property
    def middle(self) -> NDArray[np.float64]:
        """(2,) weighted mean of the designed holes, board frame."""
        return np.asarray(np.average(self.design, axis=0, weights=self.sigma**-2.0), dtype=np.float64)

    @property
    def distances(self) -> NDArray[np.float64]:
        """(N,) length of each residual, mm."""
        return np.hypot(self.residuals[:, 0], self.residuals[:, 1])

    @property
    def rms(self) -> float:
        """Root mean square of the residual lengths, mm."""
        return float(np.sqrt((self.distances**2).mean()))

    @property
    def misfit(self) -> float:
        """V: weighted sum of squared residuals; chi-squared with ``freedom`` if all is well."""
        return float(((self.distances / self.sigma) ** 2).sum())

    @property
    def freedom(self) -> int:
        """Degrees of freedom left: 2N - 3, and 2N - 6 with a stretch."""
        return 2 * len(self.design) - (3 if self.stretch is None else 6)

    @property
    def chance(self) -> float:
        """How often right holes would fit this badly or worse (0..1)."""
        return float(chi2.sf(self.misfit, self.freedom))

    def covariance_at(self, points: ArrayLike) -> NDArray[np.float64]:
        """(M, 2, 2) covariance of the mapped position of (M, 2) board-frame points, mm².

        With weights w = 1/sigma², r the mapped point's arm from the weighted mean of the mapped
        holes and S = Σ w |r_i|²: I / Σw + (J r)(J r)ᵀ / S, J the quarter turn. (First-order
        propagation, JCGM 100:2008, 5.2.) It is the uncertainty of the fit alone: a hole that
        wandered from its design is off by its wander as well.
        """
        if self.stretch_covariance is not None:
            return self._stretched(points, self.stretch_covariance)
        weight = self.sigma**-2.0
        mapped = self.apply(self.design)
        middle = (weight[:, None] * mapped).sum(axis=0) / weight.sum()
        spread = float((weight * ((mapped - middle) ** 2).sum(axis=1)).sum())
        arm = self.apply(points) - middle
        turned = np.column_stack((-arm[:, 1], arm[:, 0]))
        covariance: NDArray[np.float64] = (
            np.eye(2) / weight.sum() + turned[:, :, None] * turned[:, None, :] / spread
        )
        return covariance

    def _stretched(self, points: ArrayLike, parameters: NDArray[np.float64]) -> NDArray[np.float64]:
        given = np.atleast_2d(np.asarray(points, dtype=np.float64))[:, :2]
        basis = np.column_stack((np.ones(len(given)), given * ((-1.0, 1.0) if self.mirror else (1.0, 1.0))))
        variance = np.einsum("ni,ij,nj->n", basis, parameters, basis)
        spread: NDArray[np.float64] = variance[:, None, None] * np.eye(2)
        return spread

    def angle_sigma(self) -> float:
        """Standard deviation of the angle, rad."""
        return _angle_sigma(self.design, self.sigma)


def _angle_sigma(design: Points, sigma: NDArray[np.float64]) -> float:
    weight = sigma**-2.0
    arm = design - (weight[:, None] * design).sum(axis=0) / weight.sum()
    return float(1.0 / math.sqrt((weight[:, None] * arm**2).sum()))


def fit_rigid(
    design: ArrayLike,
    touched: ArrayLike,
    *,
    mirror: bool = False,
    sigma: ArrayLike = 0.02,
    hole_sigma: ArrayLike = 0.0,
) -> Fit:
    """Least-squares rigid motion from design to touched holes.

    The closed form in the plane: with weighted means removed, the angle is
    atan2(Σ w a×b, Σ w a·b) (the two-dimensional case of Arun, Huang and Blostein 1987 and of
    Umeyama 1991, both IEEE TPAMI).

    Parameters
    ----------
    design : (N, 2) board frame, mm
    touched : (N, 2) machine frame, mm
    mirror : bool
        Only for design points given in the other side's frame: x is negated first.
    sigma : float or (N,)
        Standard deviation per axis of a touch, mm.
    hole_sigma : float or (N,)
        Standard deviation per axis of the hole's own place, mm; see `HOLE_WANDER`.

    Raises
    ------
    InputError
        Fewer than two holes, or all at one place; lists of different length; no uncertainty.
    """
    p, q = _checked(design, touched)
    total = _total_sigma(sigma, hole_sigma, len(p))
    source = p * np.array([-1.0, 1.0]) if mirror else p
    weight = total**-2.0
    mean_p, mean_q = np.average(source, axis=0, weights=weight), np.average(q, axis=0, weights=weight)
    a, b = source - mean_p, q - mean_q
    spread = float((weight[:, None] * a**2).sum())
    if spread * float((total**2).mean()) < COINCIDENT**2:
        raise InputError(
            "The reference holes are all at one place, so the board's angle cannot be found.",
            "reference holes",
            "Use holes far apart.",
        )
    dot = float((weight * (a * b).sum(axis=1)).sum())
    cross = float((weight * (a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0])).sum())
    angle = math.atan2(cross, dot)
    turn = Rigid(angle).matrix()
    offset = mean_q - turn @ mean_p
    offset.flags.writeable = False
    return Fit(
        design=p,
        touched=q,
        sigma=total,
        angle=angle,
        offset=offset,
        mirror=mirror,
        residuals=as_points(q - (source @ turn.T + offset)),
        scale=math.hypot(dot, cross) / spread,
        scale_sigma=1.0 / math.sqrt(spread),
    )


def _checked(design: ArrayLike, touched: ArrayLike) -> tuple[Points, Points]:
    try:
        p, q = as_points(design), as_points(touched)
    except ValueError as error:
        raise InputError(
            say("Hole positions must be pairs of finite numbers: {error}.", error=error), "reference holes"
        ) from None
    if len(p) != len(q):
        raise InputError(
            say("{count} holes in the design but {count2} touched.", count=len(p), count2=len(q)),
            "reference holes",
        )
    if len(p) < 2:
        raise InputError(
            "A board is found from two holes at least.", "reference holes", "Touch another hole, far away."
        )
    return p, q


def _total_sigma(sigma: ArrayLike, hole_sigma: ArrayLike, count: int) -> NDArray[np.float64]:
    """(N,) standard deviation of each hole: touch and place are independent."""
    touch, place = (np.broadcast_to(np.asarray(s, dtype=np.float64), (count,)) for s in (sigma, hole_sigma))
    if not (np.isfinite(touch) & np.isfinite(place)).all() or min(touch.min(), place.min()) < 0:
        raise InputError("Uncertainties must be zero or more.", "reference holes")
    total: NDArray[np.float64] = np.hypot(touch, place)
    if not (total > 0).all():
        raise InputError("Every hole needs an uncertainty above zero.", "reference holes")
    total.flags.writeable = False
    return total


def ellipses(covariance: NDArray[np.float64], share: float = 0.95) -> NDArray[np.float64]:
    """(M, 3) semi-major and semi-minor axis, mm, and direction of the major axis, rad.

    The ellipse holds ``share`` of a two-dimensional normal distribution: its axes are
    sqrt(chi-squared quantile, 2 degrees of freedom) standard deviations, 2.448 for 95 %.
    """
    values, vectors = np.linalg.eigh(np.asarray(covariance, dtype=np.float64))
    factor = math.sqrt(float(chi2.ppf(share, 2)))
    axes = factor * np.sqrt(np.clip(values[:, ::-1], 0.0, None))
    direction = np.arctan2(vectors[:, 1, 1], vectors[:, 0, 1])
    return np.column_stack((axes, direction))
