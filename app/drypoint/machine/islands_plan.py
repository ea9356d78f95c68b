"""Island touch: which copper to clip, which to touch, and what the touches have proved.

A touch asks one thing: is the copper under the bit joined, somehow, to the copper that holds the
clip? So it proves separation from that copper only. A bridge between two nets that are both off it
stays invisible until the clip sits on one of them. Everything here is in the board frame, mm.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from shapely import Geometry, MultiPolygon, Polygon

from drypoint.errors import PlanError
from drypoint.machine.groups import Groups
from drypoint.wording import say

OUTER = ""
"""Name of the copper outside the board's nets."""

_NARROW = 0.05
"""Gaps narrower than this weigh no more, mm."""

_CHIP = 0.02
"""Chance that chips or burrs bridge a gap of `_NARROW` and less (common practice, no source): it ranks
gaps where all grooves are surely through."""

_ROOM_FOR_CLIP = 0.8
"""Half the width of copper that a clip holds without touching its neighbours, mm; smaller places
need a hand-held wire (common practice, no source)."""

_STEP = 0.01
"""Resolution of the search for the roomiest place, mm."""

ISLAND = " · "
"""Between the name of a net and the number of a further island of it."""


@dataclass(frozen=True, slots=True)
class Neighbours:
    """Two pieces of copper with nothing but a groove between them.

    Attributes
    ----------
    nets : (str, str)
        Sorted; `OUTER` for the copper outside.
    gap : float
        Smallest distance, mm, and ``at`` the middle of it, or the place most in doubt.
    doubt : float
        Chance that the groove between them is not through somewhere, as far as it is known.
    """

    nets: tuple[str, str]
    gap: float
    at: tuple[float, float]
    doubt: float = 0.0

    @property
    def weight(self) -> float:
        """How much a proof is worth: the chance of a bridge, of uncut copper or of a chip in the gap."""
        chip = _CHIP * _NARROW / max(self.gap, _NARROW)
        return 1.0 - (1.0 - self.doubt) * (1.0 - chip)


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on a piece of copper, with the distance to its edge."""

    net: str
    at: tuple[float, float]
    room: float

    @property
    def again(self) -> tuple[float, float]:
        """A second place for the case that the first one was dirty."""
        return self.at[0] + min(0.3, self.room / 2.0), self.at[1]


@dataclass(frozen=True, slots=True)
class ClipStep:
    """One place of the clip and what to touch with it.

    Attributes
    ----------
    clip : Spot
    touches : tuple of Spot
        In an order that proves the narrowest gaps first.
    would_prove : tuple of Neighbours
        If no touch finds contact.
    by_hand : bool
        The copper is too small for a clip: hold a wire against it.
    """

    clip: Spot
    touches: tuple[Spot, ...]
    would_prove: tuple[Neighbours, ...]
    by_hand: bool


@dataclass(frozen=True, slots=True)
class Sighting:
    """One touch: with the clip on ``clip``, was there contact on ``net``?"""

    clip: str
    net: str
    contact: bool


@dataclass(frozen=True, slots=True)
class Proof:
    """What the sightings say about each pair of neighbours.

    Attributes
    ----------
    proved : tuple of Neighbours
        Apart, proved by touch.
    joined : tuple of Neighbours
        In one piece, by touch; where several pairs could hold the bridge all are listed.
    unproved : tuple of Neighbours
        Nothing is proved either way.
    groups : tuple of frozenset of str
        Nets that were found to be one piece (two or more each).
    doubtful : tuple of (str, str)
        Clip and net of touches that contradict others and have to be repeated.
    """

    proved: tuple[Neighbours, ...]
    joined: tuple[Neighbours, ...]
    unproved: tuple[Neighbours, ...]
    groups: tuple[frozenset[str], ...]
    doubtful: tuple[tuple[str, str], ...] = ()

    @property
    def complete(self) -> bool:
        """Whether every pair of neighbours is proved apart."""
        return not (self.joined or self.unproved or self.doubtful)


def neighbours(copper: Mapping[str, Geometry], reach: float) -> tuple[Neighbours, ...]:
    """Pairs of ``copper`` nearer than ``reach`` mm with no third copper across the gap, narrowest first.

    Islands of one net are none: wires link them anyway.
    """
    names = [name for name, shape in copper.items() if not shapely.is_empty(shape)]
    shapes = np.array([copper[name] for name in names], dtype=object)
    if len(shapes) < 2:
        return ()
    shapely.prepare(shapes)
    tree = shapely.STRtree(shapes)
    first, second = tree.query(shapes, predicate="dwithin", distance=reach)
    keep = first < second
    first, second = first[keep], second[keep]
    ways = shapely.shortest_line(shapes[first], shapes[second])
    found = []
    for a, b, way in zip(first, second, ways, strict=True):
        crossed = set(tree.query(way, predicate="intersects").tolist()) - {int(a), int(b)}
        if crossed or net_of(names[a]) == net_of(names[b]):
            continue
        middle = way.interpolate(0.5, normalized=True)
        pair = (names[a], names[b]) if names[a] < names[b] else (names[b], names[a])
        found.append(Neighbours(pair, float(way.length), (float(middle.x), float(middle.y))))
    return tuple(sorted(found, key=lambda entry: (entry.gap, entry.nets)))


def spots(
    copper: Mapping[str, Geometry],
    holes: Geometry | None = None,
    *,
    within: Geometry | None = None,
) -> dict[str, Spot]:
    """The roomiest place on each piece of copper, off the ``holes``.

    Parameters
    ----------
    within : geometry, optional
        The copper outside is touched inside this only (where its height is known).
    """
    found = {}
    for name, shape in copper.items():
        free: Geometry = shape if holes is None else shapely.difference(shape, holes)
        if name == OUTER and within is not None and shapely.intersects(free, within):
            free = shapely.intersection(free, within)
        if shapely.area(free) == 0.0:
            continue
        radius = shapely.maximum_inscribed_circle(_area(free), tolerance=_STEP)
        (x, y), _ = shapely.get_coordinates(radius)[[0, -1]]
        found[name] = Spot(name, (float(x), float(y)), float(radius.length))
    return found


def conclude(pairs: Sequence[Neighbours], sightings: Iterable[Sighting]) -> Proof:
    """What follows from the touches made."""
    seen = tuple(sightings)
    groups = Groups()
    for entry in seen:
        if entry.contact:
            groups.join(entry.clip, entry.net)
    apart = {
        frozenset((groups.of(entry.clip), groups.of(entry.net)))
        for entry in seen
        if not entry.contact and groups.of(entry.clip) != groups.of(entry.net)
    }
    against = tuple(
        (entry.clip, entry.net)
        for entry in seen
        if not entry.contact and groups.of(entry.clip) == groups.of(entry.net)
    )
    shaken = {groups.of(clip) for clip, _ in against}
    proved, joined, unproved = [], [], []
    for pair in pairs:
        ends = frozenset(groups.of(net) for net in pair.nets)
        if ends & shaken:
            unproved.append(pair)
        elif len(ends) == 1:
            joined.append(pair)
        elif ends in apart:
            proved.append(pair)
        else:
            unproved.append(pair)
    return Proof(tuple(proved), tuple(joined), tuple(unproved), groups.several(), against)


def next_clip(pairs: Sequence[Neighbours], proof: Proof, places: Mapping[str, Spot]) -> ClipStep | None:
    """Where the clip should go next: where it would prove most, narrow gaps weighing most.

    None if nothing is left that a clip could prove.
    """
    group = {net: members for members in proof.groups for net in members}
    best: tuple[float, float, str] | None = None
    candidates = [pair for pair in proof.unproved if all(net in places for net in pair.nets)]
    for net in {net for pair in candidates for net in pair.nets}:
        together = group.get(net, frozenset((net,)))
        worth = sum(pair.weight for pair in candidates if together & set(pair.nets))
        key = (worth, min(places[net].room, _ROOM_FOR_CLIP), net)
        best = key if best is None or key > best else best
    if best is None:
        return None
    return _step(best[2], candidates, group, places)


def _step(
    net: str,
    candidates: Sequence[Neighbours],
    group: Mapping[str, frozenset[str]],
    places: Mapping[str, Spot],
) -> ClipStep:
    """The clip on ``net``, one touch on every piece that has an unproved gap to it."""
    clip = places[net]
    together = group.get(net, frozenset((net,)))
    mine = [pair for pair in candidates if together & set(pair.nets)]
    touched: dict[frozenset[str], Spot] = {}
    for pair in mine:
        other = pair.nets[1] if pair.nets[0] in together else pair.nets[0]
        touched.setdefault(group.get(other, frozenset((other,))), places[other])
    return ClipStep(clip, tuple(touched.values()), tuple(mine), clip.room < _ROOM_FOR_CLIP)


def onward(
    clip: str, pairs: Sequence[Neighbours], seen: Sequence[Sighting], places: Mapping[str, Spot]
) -> tuple[Spot, ...]:
    """What else to touch while the clip stays on ``clip``: neighbours of copper found joined to it.

    The copper between the clip and a piece in contact may be a third piece that nobody has touched:
    only when every neighbour of the joined group is apart from it does the bridge lie inside.
    """
    proof = conclude(pairs, seen)
    group = {net: members for members in proof.groups for net in members}
    if clip not in group:
        return ()
    known = [pair for pair in proof.unproved if all(net in places for net in pair.nets)]
    asked = {entry.net for entry in seen if entry.clip == clip}
    return tuple(spot for spot in _step(clip, known, group, places).touches if spot.net not in asked)


def plan_clips(pairs: Sequence[Neighbours], places: Mapping[str, Spot]) -> tuple[ClipStep, ...]:
    """All places of the clip, in order, that together prove every pair if nothing is joined.

    The copper outside comes first where it has neighbours: one clip there asks most.

    Raises
    ------
    PlanError
        If a piece of copper that has neighbours offers no place to touch.
    """
    for pair in pairs:
        for net in pair.nets:
            if net not in places:
                raise PlanError(
                    say("There is no place to touch on {net}.", net=net or "the copper outside"),
                    say("{at:.2f}, {at2:.2f}", at=pair.at[0], at2=pair.at[1]),
                    "Its neighbours stay unproved; measure there by hand.",
                )
    steps: list[ClipStep] = []
    sightings: list[Sighting] = []
    outside = [pair for pair in pairs if OUTER in pair.nets]
    step = _step(OUTER, outside, {}, places) if outside else next_clip(pairs, conclude(pairs, ()), places)
    while step is not None:
        steps.append(step)
        sightings += [Sighting(step.clip.net, spot.net, contact=False) for spot in step.touches]
        step = next_clip(pairs, conclude(pairs, sightings), places)
    return tuple(steps)


def lines_between(pair: Neighbours, line_nets: Sequence[tuple[str, ...]], loops: int = 0) -> tuple[int, ...]:
    """Indices of the groove lines that keep ``pair`` apart: to be cut again if it is joined.

    The first ``loops`` lines run round groups of nets: they lie between the two only if one of them
    is outside.
    """
    a, b = (net_of(piece) for piece in pair.nets)
    shared = [index for index, nets in enumerate(line_nets) if index >= loops and a in nets and b in nets]
    if shared:
        return tuple(shared)
    own = {net for net in (a, b) if net != OUTER}
    return tuple(index for index, nets in enumerate(line_nets) if own & set(nets))


def net_of(piece: str) -> str:
    """The net that a piece of copper belongs to; the piece's own name if it is none's."""
    net, mark, number = piece.rpartition(ISLAND)
    return net if mark and number.isdigit() else piece


def _area(shape: Geometry) -> MultiPolygon:
    """The polygons of a geometry."""
    return MultiPolygon([part for part in shapely.get_parts(shape) if isinstance(part, Polygon)])
