"""The board: the design as it will be milled.

Everything here is in the **board frame**: seen from the side being milled, mm, origin at the
lower left of the outline. The bottom is mirrored once, on import; nothing downstream mirrors.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from shapely import Geometry, MultiPolygon, Polygon

from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.wording import reword


class Side(StrEnum):
    """Which copper layer is milled."""

    TOP = "top"
    BOTTOM = "bottom"

    @property
    def other(self) -> Side:
        """The opposite side."""
        return Side.BOTTOM if self is Side.TOP else Side.TOP


class Role(StrEnum):
    """What a file is to the board."""

    COPPER_TOP = "copper top"
    COPPER_BOTTOM = "copper bottom"
    COPPER_INNER = "copper inner"
    OUTLINE = "outline"
    LEGEND_TOP = "legend top"
    LEGEND_BOTTOM = "legend bottom"
    DRILL_PLATED = "drill plated"
    DRILL_UNPLATED = "drill unplated"
    DRILL = "drill"
    NETLIST = "netlist"
    JOB = "job"
    GCODE = "g-code"
    OTHER = "not used"


@dataclass(frozen=True, slots=True)
class LayerFile:
    """A file, the role it got, and why."""

    name: str
    role: Role
    reason: str

    def __post_init__(self) -> None:
        reword(self, "reason")


@dataclass(frozen=True, slots=True)
class Hole:
    """A round hole. ``plated`` is None where the files do not say."""

    x: float
    y: float
    diameter: float
    plated: bool | None = None
    net: str | None = None
    function: str = ""


@dataclass(frozen=True, slots=True, eq=False)
class Slot:
    """A hole drawn along a path: (N, 2) centre line and the width, mm."""

    path: Points
    diameter: float
    plated: bool | None = None
    net: str | None = None


@dataclass(frozen=True, slots=True, eq=False)
class LinkWire:
    """A wire bridge that replaces a run of the other copper layer.

    ``path`` is the straight way a wire takes (N, 2), ``length`` its cut length in mm without ends.
    ``insulated`` is set where it would cross another wire or bare copper of another net.
    """

    net: str
    path: Points
    length: float
    insulated: bool


@dataclass(frozen=True, slots=True)
class Finding:
    """Something to know about the input: reported, never guessed away.

    ``kind`` is a short stable word ("tie", "short", "no outline", "number format"...), ``at`` a
    place in the board frame where there is one.
    """

    kind: str
    what: str
    where: str = ""
    hint: str = ""
    at: tuple[float, float] | None = None
    nets: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        reword(self, "what", "where", "hint")


@dataclass(frozen=True, slots=True, eq=False)
class Board:
    """One board, ready to be planned.

    Attributes
    ----------
    outline : Polygon or MultiPolygon
        The finished board's edge; cut-outs are its interior rings. Several pieces where several
        boards share a blank: `outlines` are they.
    nets : mapping of str to geometry
        Copper of the milled side, one (multi)polygon per net; disjoint unless ``findings`` says so.
    net_source : str
        "attributes", "netlist" or "touching".
    other_copper : mapping of str to geometry
        Copper of the other side, same frame; empty for a single-layer design.
    legend : geometry or None
        Marking of the component side, same frame (so it reads mirrored when the bottom is milled).
    rivets : tuple of Hole
        Holes that need a rivet, or a lead soldered on both sides, where they are not plated and no
        link wire is used. Where both sides are milled: those at which they are joined, leads first.
    to_design : Rigid
        Maps the board frame back to the coordinates of the design files; of the first board where
        several share a blank.
    """

    name: str
    side: Side
    outline: Polygon | MultiPolygon
    nets: Mapping[str, Geometry]
    net_source: str
    holes: tuple[Hole, ...] = ()
    slots: tuple[Slot, ...] = ()
    other_copper: Mapping[str, Geometry] = field(default_factory=dict)
    legend: Geometry | None = None
    links: tuple[LinkWire, ...] = ()
    rivets: tuple[Hole, ...] = ()
    files: tuple[LayerFile, ...] = ()
    findings: tuple[Finding, ...] = ()
    to_design: Rigid = field(default_factory=Rigid)

    @property
    def outlines(self) -> tuple[Polygon, ...]:
        """The edge of each board on the blank, one by one."""
        return (self.outline,) if isinstance(self.outline, Polygon) else tuple(self.outline.geoms)

    @property
    def width(self) -> float:
        """Extent in x, mm."""
        x0, _, x1, _ = self.outline.bounds
        return float(x1 - x0)

    @property
    def height(self) -> float:
        """Extent in y, mm."""
        _, y0, _, y1 = self.outline.bounds
        return float(y1 - y0)
