"""Copper per net: by attributes, else by a netlist's places, else by what touches.

Nets are electrical: copper of the two sides that a plated hole joins is one net. Where two names
lie on one piece of copper that is reported as a tie or a short and left as it is.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, STRtree

from drypoint.board.gerber import GerberLayer
from drypoint.board.meeting import meeting
from drypoint.board.model import Finding, Hole, Side
from drypoint.board.netlist import Netlist
from drypoint.progress import Progress
from drypoint.wording import say

SMALLEST = 1e-4
"""mm²; slivers smaller than this are rounding, not copper."""
TOUCH = 1e-4
"""mm; copper nearer than this is one piece."""


@dataclass(slots=True, eq=False)
class NetCopper:
    """Copper per net of both sides (design frame), where the names came from, and findings."""

    milled: dict[str, Geometry]
    other: dict[str, Geometry]
    source: str
    findings: list[Finding] = field(default_factory=list)


def net_copper(
    milled: GerberLayer,
    other: GerberLayer | None,
    netlist: Netlist | None,
    holes: Sequence[Hole],
    side: Side,
    progress: Progress | None = None,
) -> NetCopper:
    """Copper of both sides per net."""
    named = milled.nets(progress)
    if named:
        copper = NetCopper(_tidy(named), _tidy(other.nets(progress)) if other else {}, "attributes")
        copper.findings += _leftover(copper.milled, milled)
        if other is not None and other.objects and not copper.other:
            _by_touch_to(copper, other, holes)
        copper.findings += overlaps({n: s for n, s in copper.milled.items() if n in named}, milled)
        return copper
    return _by_pieces(milled, other, netlist, holes, side)


def _tidy(nets: Mapping[str, Geometry]) -> dict[str, Geometry]:
    return {name: areas(shape) for name, shape in nets.items() if not shapely.is_empty(shape)}


def areas(shape: Geometry) -> Geometry:
    """The areas of a geometry, without lines, points and slivers."""
    parts = pieces(shape)
    return parts[0] if len(parts) == 1 else shapely.MultiPolygon(parts)


def pieces(shape: Geometry) -> list[shapely.Polygon]:
    """Its separate polygons."""
    parts = shapely.get_parts(shape)
    return [p for p in parts if p.geom_type == "Polygon" and p.area > SMALLEST]


def _leftover(nets: dict[str, Geometry], layer: GerberLayer) -> list[Finding]:
    """Copper the attributes give to no net: part of the net it touches, else a net of its own.

    Where it joins several nets it is a tie, or a fault: a net of its own that overlaps them.
    """
    findings = []
    free = pieces(layer.without_net())
    names = list(nets)
    tree = STRtree([nets[name] for name in names])
    for number, part in enumerate(free, 1):
        touched = tuple(names[k] for k in sorted(tree.query(part, predicate="intersects")))
        if len(touched) == 1:
            nets[touched[0]] = areas(shapely.union(nets[touched[0]], part))
            continue
        nets[f"copper {number}"] = part
        if touched:
            what = say(
                "{touched} are joined by copper that belongs to no net.", touched=" and ".join(touched)
            )
            hint = "A tie on purpose is drawn this way. Check that it is one."
            point = part.representative_point()
            findings.append(Finding("tie", what, hint=hint, at=(point.x, point.y), nets=touched))
    return findings


def _by_touch_to(copper: NetCopper, other: GerberLayer, holes: Sequence[Hole]) -> None:
    """Names for a nameless other side, through the holes."""
    for number, part in enumerate(pieces(other.shape), 1):
        inside = _nets_under(copper.milled, [h for h in holes if _in(part, h)])
        name = inside[0] if len(inside) == 1 else say("other side {number}", number=number)
        known = copper.other.get(name)
        copper.other[name] = part if known is None else areas(shapely.union(known, part))


def _in(part: Geometry, hole: Hole) -> bool:
    disc = shapely.Point(hole.x, hole.y).buffer(hole.diameter / 2 + 0.02)
    return bool(shapely.intersects(part, disc))


def _nets_under(nets: Mapping[str, Geometry], holes: Sequence[Hole]) -> list[str]:
    found = [name for hole in holes for name, shape in nets.items() if _in(shape, hole)]
    return list(dict.fromkeys(found))


def overlaps(nets: Mapping[str, Geometry], layer: GerberLayer | None = None) -> list[Finding]:
    """A finding for every two nets whose copper is one piece."""
    parts, owner = _parts(nets)
    if not parts:
        return []
    names = list(nets)
    left, right = STRtree(parts).query(parts, predicate="intersects")
    pairs: dict[tuple[int, int], Geometry] = {}
    for a, b in zip(left[left < right], right[left < right], strict=True):
        first, second = sorted((owner[a], owner[b]))
        if first != second:
            pairs.setdefault((first, second), shapely.intersection(parts[a], parts[b]))
    tied = _declared_ties(layer) if layer is not None and pairs else set()
    out = []
    for (first, second), common in sorted(pairs.items(), key=lambda entry: entry[0]):
        both = (names[first], names[second])
        out.append(_joined(both, common, frozenset(both) in tied))
    return out


def _parts(nets: Mapping[str, Geometry]) -> tuple[list[Geometry], list[int]]:
    parts: list[Geometry] = []
    owner: list[int] = []
    for index, shape in enumerate(nets.values()):
        own = list(shapely.get_parts(shape))
        parts += own
        owner += [index] * len(own)
    return parts, owner


def _declared_ties(layer: GerberLayer) -> set[frozenset[str]]:
    """Net pairs that one object declares together, as the attribute allows for ties."""
    ties = set()
    for item in layer.objects:
        declared = item.attributes.get(".N", ())
        if len(declared) > 1:
            ties |= {frozenset((a, b)) for a in declared for b in declared if a != b}
    return ties


def _joined(nets: tuple[str, ...], common: Geometry, declared: bool) -> Finding:
    x, y = shapely.get_coordinates(shapely.point_on_surface(common))[0].tolist()
    at = (x, y)
    listed = " and ".join(nets)
    if declared:
        return Finding(
            "tie", say("{listed} are tied in copper, as the design says.", listed=listed), at=at, nets=nets
        )
    hint = "It may be a tie on purpose or a fault of the design. Check it there."
    return Finding(
        "short", say("{listed} are one piece of copper.", listed=listed), hint=hint, at=at, nets=nets
    )


@dataclass(slots=True, eq=False)
class _Islands:
    """Pieces of copper of both sides, joined by plated holes."""

    parts: list[Geometry]
    on_milled: list[bool]
    group: NDArray[np.intp]


def _by_pieces(
    milled: GerberLayer,
    other: GerberLayer | None,
    netlist: Netlist | None,
    holes: Sequence[Hole],
    side: Side,
) -> NetCopper:
    near = pieces(milled.shape)
    far = pieces(other.shape) if other is not None else []
    islands = _Islands(
        [*near, *far], [True] * len(near) + [False] * len(far), np.arange(len(near) + len(far))
    )
    _join_by_holes(islands, holes)
    names, findings = _names(islands, netlist, side)
    copper = NetCopper({}, {}, "netlist" if netlist is not None and names else "touching", findings)
    collected: tuple[dict[str, list[Geometry]], dict[str, list[Geometry]]] = ({}, {})
    number = 0
    for index in _reading_order(islands):
        group = int(islands.group[index])
        if group not in names:
            number += 1
            names[group] = say("net {number}", number=number)
        target = collected[0] if islands.on_milled[index] else collected[1]
        target.setdefault(names[group], []).append(islands.parts[index])
    for source, into in zip(collected, (copper.milled, copper.other), strict=True):
        into.update({name: areas(shapely.union_all(parts)) for name, parts in source.items()})
    return copper


def _reading_order(islands: _Islands) -> list[int]:
    """Milled side first, then from the upper left on, so that made-up names stay the same."""
    corners = [(box[0], box[3]) for box in shapely.bounds(islands.parts).tolist()]
    return sorted(
        range(len(islands.parts)),
        key=lambda k: (not islands.on_milled[k], -round(corners[k][1], 2), round(corners[k][0], 2)),
    )


def _join_by_holes(islands: _Islands, holes: Sequence[Hole]) -> None:
    plated = [hole for hole in holes if hole.plated is not False]
    if not plated or not islands.parts or all(islands.on_milled):
        return
    discs = shapely.buffer([shapely.Point(h.x, h.y) for h in plated], [h.diameter / 2 + 0.02 for h in plated])
    which, part = meeting(discs, islands.parts)
    first: dict[int, int] = {}
    for hole, piece in zip(which.tolist(), part.tolist(), strict=True):
        if hole not in first:
            first[hole] = piece
        else:
            _merge(islands.group, first[hole], piece)


def _merge(group: NDArray[np.intp], a: int, b: int) -> None:
    low, high = sorted((group[a], group[b]))
    if low != high:
        group[group == high] = low


def _names(islands: _Islands, netlist: Netlist | None, side: Side) -> tuple[dict[int, str], list[Finding]]:
    """Net names per group, by the places of a netlist."""
    if netlist is None or not islands.parts:
        return {}, []
    points = [p for p in netlist.points if p.net is not None]
    places = shapely.points([(p.x, p.y) for p in points])
    reach = [(p.diameter or 0.0) / 2 + 0.02 for p in points]
    which, part = meeting(shapely.buffer(places, reach), islands.parts)
    found: dict[int, dict[str, tuple[float, float]]] = {}
    for k, piece in zip(which.tolist(), part.tolist(), strict=True):
        point = points[k]
        if point.side is not None and (point.side is side) != islands.on_milled[piece]:
            continue
        found.setdefault(int(islands.group[piece]), {}).setdefault(str(point.net), (point.x, point.y))
    names, findings = {}, []
    for group, here in found.items():
        names[group] = " + ".join(here)
        if len(here) > 1:
            findings.append(_joined(tuple(here), shapely.Point(*list(here.values())[1]), declared=False))
    return names, findings
