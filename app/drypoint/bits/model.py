"""The shapes of cutters and the speeds they are run at. mm, mm/min, radians, 1/min."""

from __future__ import annotations

import math
from dataclasses import dataclass

from drypoint.bits.naming import named


@dataclass(frozen=True, slots=True)
class Speeds:
    """How a bit is run: spindle (1/min), feed along and plunge down (mm/min)."""

    spindle: float
    feed: float
    plunge: float


@dataclass(frozen=True, slots=True)
class VBit:
    """An engraving bit: a flat tip that widens with depth.

    Attributes
    ----------
    tip : float
        Width of the flat at the point, mm.
    angle : float
        Included angle, radians.
    runout : float
        How much the turning bit cuts wider than it is, mm.
    """

    name: str
    tip: float
    angle: float
    speeds: Speeds
    runout: float = 0.0

    def __post_init__(self) -> None:
        object.__setattr__(self, "name", named(self.name))

    def width(self, depth: float) -> float:
        """Width cut at the top of the copper, mm: w = t + 2 d tan(α/2) (handbook geometry)."""
        return self.tip + self.runout + 2.0 * max(depth, 0.0) * math.tan(self.angle / 2.0)

    def depth(self, width: float) -> float:
        """Depth at which the cut is ``width`` mm wide at the top; 0 where the tip is wider."""
        return max(0.0, (width - self.tip - self.runout) / (2.0 * math.tan(self.angle / 2.0)))

    @property
    def slope(self) -> float:
        """dw/dd, mm of width per mm of depth."""
        return 2.0 * math.tan(self.angle / 2.0)


@dataclass(frozen=True, slots=True)
class EndMill:
    """A straight cutter for outlines, slots and bored holes."""

    name: str
    diameter: float
    speeds: Speeds
    step: float
    """Deepest cut taken at once, mm."""

    def __post_init__(self) -> None:
        object.__setattr__(self, "name", named(self.name))

    @property
    def straight(self) -> VBit:
        """The same cutter as a V without angle: it cuts its diameter at any depth."""
        return VBit(self.name, self.diameter, 0.0, self.speeds)


@dataclass(frozen=True, slots=True)
class Drill:
    """A twist drill."""

    name: str
    diameter: float
    speeds: Speeds
    peck: float = 0.0
    """Depth per peck, mm; 0 drills in one go."""

    def __post_init__(self) -> None:
        object.__setattr__(self, "name", named(self.name))


Bit = VBit | EndMill | Drill
