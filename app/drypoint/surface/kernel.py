"""Covariance of the copper's height: ripple, smooth part and trend.

Ripple is an anisotropic Matérn-5/2 process (the glass weave and the copper on it differ along
and across), the smooth part an isotropic one of much longer range. Matérn covariance with
ν = 5/2: Rasmussen & Williams, Gaussian Processes for Machine Learning (2006), eq. 4.17.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points

PARAMETERS = ("ripple", "length_x", "length_y", "smooth", "reach", "noise")
"""Order of the parameters in a vector; each is kept as its natural logarithm."""

TREND_SCALE = 50.0
"""mm from the middle at which the trend's terms are 1."""

TREND_SPREAD = (1.0, 0.3, 0.3, 0.15, 0.15, 0.15)
"""mm, prior spread of 1, u, v, u², uv, v²: so wide that a dozen touches decide alone."""

_ROOT5 = np.sqrt(5.0)


@dataclass(frozen=True, slots=True)
class Prior:
    """Log-normal priors of the parameters, in the order of `PARAMETERS`.

    Attributes
    ----------
    median : tuple of float
        mm.
    spread : tuple of float
        Standard deviation of the natural logarithm.
    """

    median: tuple[float, ...] = (0.013, 2.2, 2.2, 0.020, 20.0, 0.004)
    spread: tuple[float, ...] = (0.5, 0.4, 0.4, 0.8, 0.4, 0.4)

    @property
    def start(self) -> NDArray[np.float64]:
        """(6,) logarithms of the medians."""
        return np.asarray(np.log(np.asarray(self.median, dtype=np.float64)))

    def log_density(self, theta: NDArray[np.float64]) -> tuple[float, NDArray[np.float64]]:
        """Log density (up to a constant) at ``theta`` and its gradient."""
        z = (theta - self.start) / np.asarray(self.spread)
        return -0.5 * float(z @ z), -z / np.asarray(self.spread)


def matern(distance: NDArray[np.float64]) -> NDArray[np.float64]:
    """Matérn-5/2 correlation at ``distance`` in units of the length scale (R&W eq. 4.17)."""
    scaled = _ROOT5 * distance
    return np.asarray((1.0 + scaled + scaled * scaled / 3.0) * np.exp(-scaled))


def trend(points: Points, centre: NDArray[np.float64]) -> NDArray[np.float64]:
    """(N, 6) terms 1, u, v, u², uv, v² times their prior spread: plane and bow."""
    u, v = ((points[:, :2] - centre) / TREND_SCALE).T
    return np.column_stack((np.ones_like(u), u, v, u * u, u * v, v * v)) * TREND_SPREAD


def covariance(theta: NDArray[np.float64], a: Points, b: Points) -> NDArray[np.float64]:
    """(len(a), len(b)) covariance of ripple and smooth part, mm² (no trend, no noise)."""
    ripple, length_x, length_y, smooth, reach, _ = np.exp(theta)
    dx = a[:, None, 0] - b[None, :, 0]
    dy = a[:, None, 1] - b[None, :, 1]
    x2, y2 = dx * dx, dy * dy
    near = ripple**2 * matern(np.sqrt(x2 / length_x**2 + y2 / length_y**2))
    return np.asarray(near + smooth**2 * matern(np.sqrt(x2 + y2) / reach))


@dataclass(frozen=True, slots=True, eq=False)
class Gaps:
    """Squared distances of the touches from each other, kept between evaluations."""

    x2: NDArray[np.float64]
    y2: NDArray[np.float64]

    @classmethod
    def of(cls, points: Points) -> Gaps:
        """Between all pairs of ``points``."""
        dx = points[:, None, 0] - points[None, :, 0]
        dy = points[:, None, 1] - points[None, :, 1]
        return cls(dx * dx, dy * dy)

    def covariance(self, theta: NDArray[np.float64]) -> NDArray[np.float64]:
        """(N, N) covariance with noise, mm²."""
        ripple, length_x, length_y, smooth, reach, noise = np.exp(theta)
        near = ripple**2 * matern(np.sqrt(self.x2 / length_x**2 + self.y2 / length_y**2))
        total = near + smooth**2 * matern(np.sqrt(self.x2 + self.y2) / reach)
        total[np.diag_indices_from(total)] += noise**2
        return np.asarray(total)

    def slopes(self, theta: NDArray[np.float64], weight: NDArray[np.float64]) -> NDArray[np.float64]:
        """(6,) sums of ``weight`` times the covariance's derivative by each parameter."""
        ripple, length_x, length_y, smooth, reach, noise = np.exp(theta)
        x2, y2 = self.x2 / length_x**2, self.y2 / length_y**2
        near = _ROOT5 * np.sqrt(x2 + y2)
        tail = np.exp(-near)
        bend = weight * ((5.0 / 3.0) * (1.0 + near) * tail)
        far = _ROOT5 * np.sqrt(self.x2 + self.y2) / reach
        far_tail = np.exp(-far)
        far_bend = weight * ((1.0 + far) * far_tail * far * far)
        far_all = weight * ((1.0 + far + far * far / 3.0) * far_tail)
        near_all = weight * ((1.0 + near + near * near / 3.0) * tail)
        return np.array(
            [
                2.0 * ripple**2 * near_all.sum(),
                ripple**2 * (bend * x2).sum(),
                ripple**2 * (bend * y2).sum(),
                2.0 * smooth**2 * far_all.sum(),
                smooth**2 / 3.0 * far_bend.sum(),
                2.0 * noise**2 * np.trace(weight),
            ]
        )
