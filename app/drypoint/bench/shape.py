"""What a bit removes: the width of its cut at a level, and how deep it must go to reach sideways."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import Bit, VBit

Floats = NDArray[np.float64]

POINT_ANGLE = math.radians(118.0)
"""Included angle of a common twist drill's point (handbook value)."""


@dataclass(frozen=True, slots=True)
class CutShape:
    """A bit of revolution: flat of width ``tip``, opening by ``slope`` mm per mm up to ``shank`` mm.

    Run-out is included in ``tip`` and ``shank``: the turning bit cuts that much wider.
    """

    tip: float
    slope: float
    shank: float

    @classmethod
    def of(cls, bit: Bit, *, runout: float = 0.0, blunt: float = 0.0) -> CutShape:
        """The shape of a bit as it turns; ``blunt`` mm of its point are missing."""
        if isinstance(bit, VBit):
            tip = bit.tip + bit.runout + runout + bit.slope * blunt
            return cls(tip, bit.slope, max(3.175, tip))
        shank = bit.diameter + runout
        if type(bit).__name__ == "Drill":
            return cls(0.0, 2.0 * math.tan(POINT_ANGLE / 2.0), shank)
        return cls(shank, 0.0, shank)

    def width(self, depth: Floats) -> Floats:
        """Width of the cut at a level ``depth`` above the tip; 0 where the tip is above the level."""
        return np.where(depth >= 0.0, np.minimum(self.shank, self.tip + self.slope * depth), 0.0)

    def depth_to_reach(self, distance: Floats) -> Floats:
        """How deep the tip must be for the still bit to touch copper ``distance`` mm from its axis."""
        if self.slope:
            wanted = np.maximum(0.0, (2.0 * distance - self.tip) / self.slope)
            return np.where(2.0 * distance <= self.shank, wanted, np.inf)
        return np.where(2.0 * distance <= self.shank, 0.0, np.inf)
