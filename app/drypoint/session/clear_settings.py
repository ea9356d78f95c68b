"""What a person sets about the second, wide bit and about copper that is taken away."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from drypoint.bits.model import EndMill, VBit


class Clearing(StrEnum):
    """Which copper without net is taken away beside the grooves."""

    NOTHING = "none"
    MOAT = "a moat round every net"
    BOARD = "all on the board"
    AREAS = "in chosen areas"


@dataclass(frozen=True, slots=True)
class ClearArea:
    """A rectangle that is cleared: lower left corner and size, mm, board frame of the first side."""

    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class ClearSettings:
    """Open copper: the bit that cuts it, how deep, and what is taken away.

    Copper of the design is never taken away: nets, and text and pictures in the copper, which belong
    to no net.
    """

    bit: VBit | EndMill | None = None
    """Cuts where it fits; the V-bit of the grooves only where it does not. None: one bit does all."""
    depth: float = 0.1
    """Depth of the wide bit below the touched surface, mm, all over."""
    what: Clearing = Clearing.NOTHING
    moat: float = 1.0
    """Width of the milled-away band round every net, mm."""
    areas: tuple[ClearArea, ...] = ()
    overlap: float = 0.3
    """Share of its width by which a loop overlaps the next."""
    slivers: float = 0.0
    """Copper without net up to this area is taken away by the fine bit, mm²; 0 leaves it."""
    change: float = 90.0
    """Time that a change of the bit takes, s."""
