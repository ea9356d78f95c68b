"""Cuts: paths in the board frame with the bit that makes them."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from drypoint.bits.model import Bit
from drypoint.geometry.points import Points
from drypoint.wording import reword


class CutKind(StrEnum):
    """What a cut is for; also the default order of work."""

    MARK = "reference mark"
    GROOVE = "groove"
    CLEAR = "clearing"
    SPOT = "spot mark"
    HOLE = "hole"
    TOOLING = "tooling hole"
    BORE = "bored hole"
    SLOT = "slot"
    LEGEND = "legend"
    OUTLINE = "outline"


@dataclass(frozen=True, slots=True, eq=False)
class Cut:
    """One path of one bit.

    Attributes
    ----------
    path : Points
        (N, 2) board frame; one point for a drilled hole or mark; closed when first equals last.
    depth : float
        Full depth below the copper's top, mm (positive down). 0 for grooves, whose depth is set
        pass by pass.
    tabs : Points
        (K, 2) middles of the tabs left standing (outline only).
    tab_width, tab_height : float
        Length of a tab along the path and its height above the cut's floor, mm.
    diameter : float
        Of the hole to be made (holes, bores and marks); 0 else.
    ease : float
        Share of the bit's plunge and peck that is used: below 1 where the copper would come off.
    """

    kind: CutKind
    bit: Bit
    path: Points
    nets: tuple[str, ...] = ()
    depth: float = 0.0
    diameter: float = 0.0
    tabs: Points | None = None
    tab_width: float = 0.0
    tab_height: float = 0.0
    label: str = ""
    ease: float = 1.0


@dataclass(frozen=True, slots=True)
class Narrow:
    """A place where the wanted cut does not fit between two nets.

    ``gap`` is the smallest distance between the nets there, ``bite`` what the planned path eats
    into copper there, ``length`` the extent of the place along the path, all mm.
    """

    nets: tuple[str, str]
    at: tuple[float, float]
    gap: float
    bite: float
    length: float
    solved: bool
    """Whether a path was laid within the allowed bite; else the nets stay joined there."""
    hint: str = ""
    widest: float = 0.0
    """Widest cut, mm, that would do here within the limits; 0 where a place is solved, or no cut would do."""


@dataclass(frozen=True, slots=True, eq=False)
class GroovePlan:
    """Groove centre lines.

    Attributes
    ----------
    lines : tuple of Points
        (N, 2) each, board frame; closed when first equals last.
    line_nets : tuple of tuple of str
        Nets beside each line (one for a loop, two for a shared centre line).
    impossible : tuple of Narrow
        Places that break the bite limit: not cut, still joined.
    narrow : tuple of Narrow
        Places narrower than the cut that were solved, with their bite.
    wide : int
        The first so many lines are cut by the wide bit.
    fill : frozenset of int
        Indices of lines that only take copper away: nothing stays joined where one is not through.
    """

    lines: tuple[Points, ...]
    line_nets: tuple[tuple[str, ...], ...]
    impossible: tuple[Narrow, ...]
    narrow: tuple[Narrow, ...] = ()
    max_bite: float = 0.0
    narrow_length: float = 0.0
    wide: int = 0
    fill: frozenset[int] = frozenset()


@dataclass(frozen=True, slots=True)
class Flaw:
    """One finding of the island check: which nets, where, and in words."""

    nets: tuple[str, ...]
    at: tuple[float, float]
    what: str = ""

    def __post_init__(self) -> None:
        reword(self, "what")


@dataclass(frozen=True, slots=True, eq=False)
class IslandCheck:
    """Does the milled copper fall into exactly the nets of the design?

    ``shorts``: nets still joined (two or more); ``opens``: a net in several pieces;
    ``lost``: pads or nets whose copper is cut away; ``thinned``: traces narrower than allowed.
    ``pieces`` counts the separate pieces of net copper left.
    """

    nets: int
    pieces: int
    shorts: tuple[Flaw, ...]
    opens: tuple[Flaw, ...]
    lost: tuple[Flaw, ...]
    thinned: tuple[Flaw, ...] = field(default=())

    @property
    def clean(self) -> bool:
        """Whether the copper falls into exactly the nets."""
        return not (self.shorts or self.opens or self.lost)
