"""Best linear unbiased prediction from a covariance: the algebra, whatever the covariance.

Formulas: Rasmussen & Williams (2006), eq. 2.25–2.26 (prediction), 5.10–5.12 (leave one out).
The trend enters as a Gaussian with a wide prior, R&W section 2.7.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import cho_solve, cholesky, solve_triangular


@dataclass(frozen=True, slots=True, eq=False)
class Conditioned:
    """A Gaussian process given N heights.

    Attributes
    ----------
    factor : (N, N)
        Lower Cholesky factor of the heights' covariance, noise and trend included.
    weights : (N,)
        Inverse covariance times heights.
    """

    factor: NDArray[np.float64]
    weights: NDArray[np.float64]

    @classmethod
    def on(cls, covariance: NDArray[np.float64], heights: NDArray[np.float64]) -> Conditioned:
        """Condition on ``heights`` (N,) of ``covariance`` (N, N).

        Raises
        ------
        numpy.linalg.LinAlgError
            If the covariance is not positive definite.
        """
        factor = cholesky(covariance, lower=True, check_finite=False)
        return cls(factor, cho_solve((factor, True), heights, check_finite=False))

    def mean(self, cross: NDArray[np.float64]) -> NDArray[np.float64]:
        """(M,) means, from the (M, N) covariance of the places with the heights."""
        return np.asarray(cross @ self.weights)

    def half(self, cross: NDArray[np.float64]) -> NDArray[np.float64]:
        """(N, M) L⁻¹ crossᵀ; its column norms squared are the variance taken away."""
        return np.asarray(solve_triangular(self.factor, cross.T, lower=True, check_finite=False))

    def variance(self, cross: NDArray[np.float64], own: NDArray[np.float64] | float) -> NDArray[np.float64]:
        """(M,) variances, from the places' own prior variance ``own``; never below zero."""
        half = self.half(cross)
        return np.asarray(np.maximum(own - np.einsum("ij,ij->j", half, half), 0.0))

    def inverse(self) -> NDArray[np.float64]:
        """(N, N) inverse covariance."""
        return np.asarray(cho_solve((self.factor, True), np.eye(len(self.factor)), check_finite=False))

    def leave_one_out(self) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """(N,) error of each height predicted from the others, and its spread (R&W eq. 5.12)."""
        precision = np.diag(self.inverse())
        return self.weights / precision, 1.0 / np.sqrt(precision)
