"""Link wires: what replaces the other copper layer when only one side is milled.

Each net's pieces on the milled side are joined by the shortest straight wires between its holes
(a minimum spanning tree), but only where the other layer's copper joins them in the design.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations, pairwise

import numpy as np
import shapely
from scipy.spatial import Delaunay, QhullError
from shapely import Geometry, LineString, STRtree

from drypoint.board.copper import pieces
from drypoint.board.meeting import meeting
from drypoint.board.model import Finding, Hole, LinkWire
from drypoint.geometry.points import as_points
from drypoint.wording import say

LEAD_PENALTY = 2.0
"""mm added per end in a hole that also takes a lead: a hole of its own is easier to solder."""
ALL_PAIRS = 60
"""Holes of a net up to which every pair is tried; above it, neighbours by Delaunay triangles."""
WIRE_ROOM = 0.6
"""mm; half the width a bare wire needs beside foreign copper, leads and other wires."""


@dataclass(frozen=True, slots=True, eq=False)
class Linking:
    """The wires, the holes that join both layers, and what wires between holes cannot replace."""

    wires: tuple[LinkWire, ...]
    through: tuple[Hole, ...]
    findings: tuple[Finding, ...]


@dataclass(slots=True, eq=False)
class _Net:
    name: str
    holes: list[Hole]
    island: list[int]
    """Number of the milled piece each hole lies in; -1 - k for a hole without copper there."""
    groups: list[list[int]]
    """Indices of the holes that each piece of the other layer joins."""


def link_wires(nets: Mapping[str, Geometry], other: Mapping[str, Geometry], holes: Sequence[Hole]) -> Linking:
    """The wires for every net.

    Parameters
    ----------
    nets, other : mapping of str to geometry
        Copper of the milled and of the other side, one frame, mm.
    holes : sequence of Hole
        With their nets.
    """
    runs: list[tuple[str, Hole, Hole]] = []
    findings: list[Finding] = []
    through: list[Hole] = []
    unreached: list[str] = []
    of_net: dict[str | None, list[Hole]] = {}
    for hole in holes:
        if hole.plated is not False:
            of_net.setdefault(hole.net, []).append(hole)
    for name, far in other.items():
        net = _net(name, nets.get(name), far, of_net.get(name, []))
        runs += [(name, net.holes[a], net.holes[b]) for a, b in _tree(net)]
        through += [net.holes[k] for k in sorted({k for g in net.groups if _bridges(net, g) for k in g})]
        if len(pieces(far)) > len(net.groups):
            unreached.append(name)
    if through:
        findings.append(
            Finding(
                "through",
                say(
                    "{count} plated holes carry current to the other layer; on a milled board the "
                    "link wires do, or a rivet or a soldered lead on both sides.",
                    count=len(through),
                ),
            )
        )
    if unreached:
        findings.append(_unreached(unreached))
    findings += _still_open(nets, runs)
    return Linking(tuple(_wires(runs, holes)), tuple(through), tuple(findings))


def _net(name: str, near: Geometry | None, far: Geometry, holes: list[Hole]) -> _Net:
    discs = [shapely.Point(h.x, h.y).buffer(h.diameter / 2 + 0.02) for h in holes]
    island = [-1 - k for k in range(len(holes))]
    if near is not None and holes:
        for hole, part in zip(*meeting(discs, pieces(near)), strict=True):
            island[hole] = int(part)
    groups: dict[int, list[int]] = {}
    if holes:
        for hole, part in zip(*meeting(discs, pieces(far)), strict=True):
            groups.setdefault(int(part), []).append(int(hole))
    return _Net(name, holes, island, list(groups.values()))


def _bridges(net: _Net, group: list[int]) -> bool:
    return len({net.island[k] for k in group}) > 1


def _tree(net: _Net) -> Iterable[tuple[int, int]]:
    """Kruskal's minimum spanning tree over the pieces, within what the other layer joins."""
    parent = {island: island for island in net.island}
    allowed = {island: island for island in net.island}
    for group in net.groups:
        for k in group[1:]:
            _unite(allowed, net.island[group[0]], net.island[k])
    useful = sorted({k for group in net.groups if _bridges(net, group) for k in group})
    edges = sorted((_cost(net.holes[a], net.holes[b]), a, b) for a, b in _pairs(net, useful))
    for _, a, b in edges:
        one, two = net.island[a], net.island[b]
        if _root(allowed, one) == _root(allowed, two) and _unite(parent, one, two):
            yield a, b


def _root(parent: dict[int, int], item: int) -> int:
    while parent[item] != item:
        parent[item] = parent[parent[item]]
        item = parent[item]
    return item


def _unite(parent: dict[int, int], a: int, b: int) -> bool:
    one, two = _root(parent, a), _root(parent, b)
    parent[two] = one
    return one != two


def _pairs(net: _Net, indices: list[int]) -> Iterable[tuple[int, int]]:
    if len(indices) <= ALL_PAIRS:
        pairs: Iterable[tuple[int, int]] = combinations(indices, 2)
    else:
        places = np.array([(net.holes[k].x, net.holes[k].y) for k in indices])
        try:
            triangles = Delaunay(places).simplices
        except QhullError:  # all on one line: neighbours along it
            order = sorted(indices, key=lambda k: (net.holes[k].x, net.holes[k].y))
            return list(pairwise(order))
        pairs = {
            (indices[min(a, b)], indices[max(a, b)])
            for triangle in triangles.tolist()
            for a, b in combinations(triangle, 2)
        }
    return [(a, b) for a, b in pairs if net.island[a] != net.island[b]]


def _cost(a: Hole, b: Hole) -> float:
    leads = sum("Component" in hole.function for hole in (a, b))
    return math.dist((a.x, a.y), (b.x, b.y)) + LEAD_PENALTY * leads


def _wires(runs: Sequence[tuple[str, Hole, Hole]], holes: Sequence[Hole]) -> Iterable[LinkWire]:
    """Wires with their insulation: bare only where nothing foreign is near on the wires' side.

    The wires lie on the side that is not milled; what is foreign there is leads in holes of other
    nets and the other wires.
    """
    lines = [LineString([(a.x, a.y), (b.x, b.y)]) for _, a, b in runs]
    owners = [name for name, _, _ in runs]
    leads = [shapely.Point(h.x, h.y).buffer(h.diameter / 2) for h in holes]
    near_leads, near_wires = STRtree(leads), STRtree(lines)
    for index, (name, a, b) in enumerate(runs):
        line = lines[index]
        beside = near_wires.query(line, predicate="dwithin", distance=2 * WIRE_ROOM)
        crossing = any(owners[k] != name for k in beside)
        touched = near_leads.query(line, predicate="dwithin", distance=WIRE_ROOM)
        foreign = any(holes[k].net != name for k in touched)
        yield LinkWire(name, as_points([(a.x, a.y), (b.x, b.y)]), line.length, crossing or foreign)


def _unreached(names: list[str]) -> Finding:
    """Copper of the other side that no hole reaches: parts soldered there."""
    what = say(
        "{count} nets have copper on the other side that no hole reaches (parts "
        "soldered there); wires between holes cannot replace it.",
        count=len(names),
    )
    return Finding("unreached", what, nets=tuple(names))


LISTED = 8
"""Open nets named one by one; the rest are counted."""


def _still_open(nets: Mapping[str, Geometry], runs: Sequence[tuple[str, Hole, Hole]]) -> list[Finding]:
    count: dict[str, int] = {}
    for name, _, _ in runs:
        count[name] = count.get(name, 0) + 1
    out = []
    for name, shape in nets.items():
        parts = len(pieces(shape))
        if parts - count.get(name, 0) > 1 and not name.startswith("N/C"):
            left = parts - count.get(name, 0)
            point = pieces(shape)[-1].representative_point()
            what = say(
                "{name} stays in {left} pieces on the milled side even with the link wires.",
                name=name,
                left=left,
            )
            out.append(Finding("open", what, at=(point.x, point.y), nets=(name,)))
    if len(out) <= LISTED:
        return out
    rest = tuple(name for item in out[LISTED:] for name in item.nets)
    return [
        *out[:LISTED],
        Finding("open", say("{count} more nets stay in several pieces.", count=len(rest)), nets=rest),
    ]
