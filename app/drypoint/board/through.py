"""Holes and plated slots that join both sides of a board whose two sides are milled.

Nothing is plated in a milled board: a lead, a rivet or a bit of wire is soldered on both sides. Of all
that could carry current between the sides as few are asked for as keep every net as whole as the design
has it: leads before holes of their own, since a lead is there anyway.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import shapely
from shapely import Geometry, LineString, Point, Polygon

from drypoint.board.copper import pieces
from drypoint.board.meeting import meeting
from drypoint.board.model import Finding, Hole, Slot
from drypoint.wording import say

SLOT_LEAD = "Plated,PTH,ComponentDrill"
"""Function of a hole that stands for a plated slot, as the Gerber format names that of a lead's hole."""
PAD_FILL = 0.97
"""A bare pad fills so much of its convex hull at least: circles, rectangles and ovals do."""
PAD_OFF = 0.2
"""The middle of a bare pad lies this near to its hole, mm."""
LISTED = 8
"""Open nets named one by one; the rest are counted."""
REACH = 0.02
"""A hole meets copper this far from its edge, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class Joining:
    """The holes to join at, leads first, and what stays apart all the same."""

    leads: tuple[Hole, ...]
    others: tuple[Hole, ...]
    findings: tuple[Finding, ...]


@dataclass(frozen=True, slots=True, eq=False)
class _Way:
    """A way through the board: as a hole, and what of it may meet copper."""

    hole: Hole
    area: Geometry


def joining_holes(
    nets: Mapping[str, Geometry],
    other: Mapping[str, Geometry],
    holes: Sequence[Hole],
    slots: Sequence[Slot] = (),
) -> Joining:
    """The holes at which the two sides are to be joined.

    Parameters
    ----------
    nets, other : mapping of str to geometry
        Copper of the one and of the other side, one frame, mm.
    holes : sequence of Hole
        With their nets; one that is said to be unplated joins nothing.
    slots : sequence of Slot
        Likewise, but one joins only where it is said to be plated: most slots are cut-outs. It is taken
        for a lead's, at the middle of its path.
    """
    ways = [_Way(hole, _disc(hole)) for hole in holes if hole.plated is not False]
    ways += [_through_slot(slot) for slot in slots if slot.plated]
    of_net: dict[str | None, list[_Way]] = {}
    for way in ways:
        of_net.setdefault(way.hole.net, []).append(way)
    chosen: list[Hole] = []
    open_nets: list[tuple[str, int, Polygon]] = []
    for name in {**nets, **other}:
        own = of_net.get(name, [])
        used, left = _join(nets.get(name), other.get(name), own)
        chosen += used
        if len(left) > 1 and not name.startswith("N/C"):
            open_nets.append((name, len(left), left[-1]))
    leads = tuple(hole for hole in chosen if _takes_a_lead(hole))
    others = tuple(hole for hole in chosen if not _takes_a_lead(hole))
    return Joining(leads, others, (*_to_join(leads, others), *_open(open_nets)))


def _disc(hole: Hole) -> Geometry:
    return Point(hole.x, hole.y).buffer(hole.diameter / 2 + REACH)


def _through_slot(slot: Slot) -> _Way:
    """A slot: the flat lead in it is soldered on both sides."""
    line = LineString(slot.path)
    at = line.interpolate(0.5, normalized=True)
    hole = Hole(at.x, at.y, slot.diameter, True, slot.net, SLOT_LEAD)
    return _Way(hole, line.buffer(slot.diameter / 2 + REACH))


def _takes_a_lead(hole: Hole) -> bool:
    return "Component" in hole.function


def _join(near: Geometry | None, far: Geometry | None, ways: list[_Way]) -> tuple[list[Hole], list[Polygon]]:
    """The holes to join a net's pieces at, and one piece of each group that stays apart."""
    holes, discs = [way.hole for way in ways], [way.area for way in ways]
    parts: list[Polygon] = []
    meets: list[list[int]] = [[] for _ in holes]
    for shape in (near, far):
        copper = [] if shape is None else pieces(shape)
        at = meeting(discs, copper) if copper and discs else ((), ())
        own: dict[int, list[int]] = {}
        for hole, part in zip(*at, strict=True):
            own.setdefault(int(part), []).append(int(hole))
        for number, part_ in enumerate(copper):
            inside = own.get(number, [])
            if len(inside) == 1 and _bare_pad(part_, holes[inside[0]]):
                continue
            for hole in inside:
                meets[hole].append(len(parts))
            parts.append(part_)
    parent = list(range(len(parts)))
    used = []
    for k in sorted(range(len(holes)), key=lambda k: not _takes_a_lead(holes[k])):
        roots = {_root(parent, part) for part in meets[k]}
        if len(roots) > 1:
            used.append(holes[k])
            for root in roots:
                parent[root] = min(roots)
    return used, [parts[k] for k in range(len(parts)) if _root(parent, k) == k]


def _root(parent: list[int], item: int) -> int:
    while parent[item] != item:
        item = parent[item]
    return item


def _bare_pad(part: Polygon, hole: Hole) -> bool:
    """Whether a piece of copper is no more than the pad round its hole."""
    solid = Polygon(part.exterior)
    middle = solid.centroid
    near = (middle.x - hole.x) ** 2 + (middle.y - hole.y) ** 2 <= PAD_OFF**2
    return near and solid.area >= PAD_FILL * shapely.convex_hull(solid).area


def _to_join(leads: Sequence[Hole], others: Sequence[Hole]) -> list[Finding]:
    if not leads and not others:
        return []
    what = say(
        "Nothing is plated in a milled board: {leads} leads are soldered on both sides, and {others} other "
        "holes take a rivet or a bit of wire soldered on both sides.",
        leads=len(leads),
        others=len(others),
    )
    return [Finding("through", what)]


def _open(found: Sequence[tuple[str, int, Polygon]]) -> list[Finding]:
    out = []
    for name, count, piece in found[:LISTED]:
        at = piece.representative_point()
        what = say("{name} stays in {left} pieces even with both sides joined.", name=name, left=count)
        out.append(Finding("open", what, at=(at.x, at.y), nets=(name,)))
    if len(found) > LISTED:
        rest = tuple(name for name, _, _ in found[LISTED:])
        out.append(
            Finding("open", say("{count} more nets stay in several pieces.", count=len(rest)), nets=rest)
        )
    return out
