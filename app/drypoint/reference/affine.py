"""A correction of scale and squareness, only ever made on the person's explicit choice."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.errors import InputError
from drypoint.geometry.points import Points, as_points
from drypoint.reference.fit import Fit, fit_rigid
from drypoint.reference.linear import solve

LEAST_HOLES = 4
"""With three holes an affine map fits anything, so nothing would check it."""


@dataclass(frozen=True, slots=True, eq=False)
class AffineFit:
    """q = A p + offset, board frame to machine frame; circles do not stay circles.

    Attributes
    ----------
    matrix : (2, 2)
    offset : (2,) mm
    residuals : (N, 2) touched minus mapped, mm
    sigma : (N,) mm
    parameters : (3, 3) covariance of an axis's offset and row of the matrix, the same for x and y
    """

    matrix: NDArray[np.float64]
    offset: NDArray[np.float64]
    residuals: Points
    sigma: NDArray[np.float64]
    parameters: NDArray[np.float64]

    def apply(self, points: ArrayLike) -> Points:
        """(N, 2) or (N, 3) board-frame points, mapped; heights pass unchanged."""
        given = np.atleast_2d(np.asarray(points, dtype=np.float64))
        mapped = given[:, :2] @ self.matrix.T + self.offset
        return as_points(np.hstack((mapped, given[:, 2:])), given.shape[1])

    def covariance_at(self, points: ArrayLike) -> NDArray[np.float64]:
        """(M, 2, 2) covariance of mapped points, mm²: the same for x and y."""
        given = np.atleast_2d(np.asarray(points, dtype=np.float64))[:, :2]
        basis = np.column_stack((np.ones(len(given)), given))
        variance = np.einsum("ni,ij,nj->n", basis, self.parameters, basis)
        spread: NDArray[np.float64] = variance[:, None, None] * np.eye(2)
        return spread


def fit_affine(
    design: ArrayLike, touched: ArrayLike, *, sigma: ArrayLike = 0.02, hole_sigma: ArrayLike = 0.0
) -> AffineFit:
    """Weighted least-squares affine map from four holes or more.

    Raises
    ------
    InputError
        Fewer than four holes, or all on one line.
    """
    rigid = fit_rigid(design, touched, sigma=sigma, hole_sigma=hole_sigma)
    p, q = rigid.design, rigid.touched
    if len(p) < LEAST_HOLES:
        raise InputError(
            "Scale and squareness are corrected from four holes at least.",
            "reference holes",
            "Touch more holes, or keep the rigid fit.",
        )
    basis = np.column_stack((np.ones(len(p)), p))
    try:
        found = [solve(basis, q[:, axis], rigid.sigma) for axis in (0, 1)]
    except InputError:
        raise InputError(
            "The reference holes lie on one line; scale and squareness need holes on both sides of it.",
            "reference holes",
        ) from None
    matrix = np.array([one.values[1:] for one in found])
    offset = np.array([one.values[0] for one in found])
    return AffineFit(matrix, offset, as_points(q - (p @ matrix.T + offset)), rigid.sigma, found[0].covariance)


def stretched(fit: Fit) -> Fit:
    """The same fit with scale and squareness corrected; only ever on a person's explicit choice.

    The affine matrix is parted into a rotation and a symmetric stretch (polar decomposition), so that
    the motion stays what it is called.

    Raises
    ------
    InputError
        Fewer than four holes, or all on one line.
    """
    flip = np.array([-1.0, 1.0]) if fit.mirror else np.ones(2)
    found = fit_affine(fit.design * flip, fit.touched, sigma=fit.sigma)
    left, size, right = np.linalg.svd(found.matrix)
    turn = left @ right
    if np.linalg.det(turn) < 0:
        raise InputError(
            "The touched holes are mirrored against the design.", "reference holes", "Touch them again."
        )
    stretch = flip[:, None] * (right.T @ np.diag(size) @ right) * flip[None, :]
    middle = found.apply([fit.middle * flip])[0]
    offset = middle - turn @ (fit.middle * flip)
    for array in (stretch, offset):
        array.flags.writeable = False
    return replace(
        fit,
        angle=float(np.arctan2(turn[1, 0], turn[0, 0])),
        offset=offset,
        residuals=found.residuals,
        stretch=stretch,
        stretch_covariance=found.parameters,
    )
