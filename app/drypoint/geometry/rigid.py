"""Rigid motions of the plane, optionally mirrored first."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from drypoint.geometry.points import Points, as_points


@dataclass(frozen=True, slots=True)
class Rigid:
    """q = R(angle) · M · p + offset, where M negates x when ``mirror`` is set.

    Attributes
    ----------
    angle : float
        Radians, anticlockwise.
    offset : tuple of float
        mm, in the frame that is mapped to.
    mirror : bool
        Whether x is negated before turning.
    """

    angle: float = 0.0
    offset: tuple[float, float] = (0.0, 0.0)
    mirror: bool = False

    def matrix(self) -> Points:
        """(2, 2) linear part."""
        c, s = math.cos(self.angle), math.sin(self.angle)
        f = -1.0 if self.mirror else 1.0
        return np.array([[f * c, -s], [f * s, c]])

    def apply(self, points: ArrayLike) -> Points:
        """(N, 2) points mapped; further columns (heights) pass unchanged."""
        given = np.atleast_2d(np.asarray(points, dtype=np.float64))
        mapped = given[:, :2] @ self.matrix().T + np.asarray(self.offset)
        return as_points(np.hstack((mapped, given[:, 2:])), given.shape[1])

    def inverse(self) -> Rigid:
        """The motion that undoes this one."""
        # M R(-a) = R(a) M, so a mirrored motion is undone by one of the same angle
        angle = self.angle if self.mirror else -self.angle
        turned = Rigid(angle, (0.0, 0.0), self.mirror).apply([self.offset])[0]
        return Rigid(angle, (-float(turned[0]), -float(turned[1])), self.mirror)

    def then(self, other: Rigid) -> Rigid:
        """First this motion, then ``other``."""
        offset = other.apply([self.offset])[0]
        inner = -self.angle if other.mirror else self.angle
        return Rigid(other.angle + inner, (float(offset[0]), float(offset[1])), self.mirror != other.mirror)
