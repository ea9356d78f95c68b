"""Holes, slots and marks: which bit makes each, and what cannot be made."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry, LineString

from drypoint.bits.model import Bit, Drill, EndMill, VBit
from drypoint.board.model import Board, Finding, Hole, Slot
from drypoint.cuts.model import Cut, CutKind
from drypoint.cuts.order import steady_order
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, as_points
from drypoint.wording import say

TOLERANCE = 0.1
"""mm a drill may differ from its hole (common practice, no source)."""
SLENDER = 2.0
"""Depth over diameter from which a drill may wander without a spot mark (common practice)."""
SPOT_DEPTH = 0.15
"""mm. Deep enough to catch a drill's point (common practice)."""
SPOT_SHARE = 0.6
"""A spot mark is no wider than this share of its drill, so that the hole takes all of it."""
SMALL_PAD = 2.6
"""mm. A pad of this size that no trace holds comes off easily (common practice, no source)."""
CHORD = 2e-3
"""mm. How far a bored circle's chords may lie inside it."""


@dataclass(frozen=True, slots=True, eq=False)
class HolePlan:
    """Cuts for holes and slots in order of work, and what could not be planned as asked."""

    cuts: tuple[Cut, ...]
    findings: tuple[Finding, ...]


def plan_holes(
    board: Board,
    drills: Sequence[Drill],
    mill: EndMill | None,
    *,
    thickness: float,
    through: float,
    vbit: VBit | None = None,
    tolerance: float = TOLERANCE,
    slender: float = SLENDER,
    small_pad: float = SMALL_PAD,
    gentle: float = 1.0,
    bed: float | None = None,
) -> HolePlan:
    """How every hole and slot of the board is made.

    Parameters
    ----------
    drills, mill
        Bits at hand. A hole takes the nearest drill within ``tolerance`` mm; else it is bored.
    thickness, through : float
        Of the laminate, and how deep cuts run into the backing, mm.
    vbit : VBit, optional
        Makes spot marks before slender drills.
    slender : float
        Depth over diameter from which a drill may wander.
    small_pad, gentle : float
        Holes in a pad up to ``small_pad`` mm that no trace holds are drilled with ``gentle`` of the
        drill's feed and peck.
    bed : float, optional
        Thickness of the backing, mm: nothing may run deeper.

    Raises
    ------
    PlanError
        If cuts would run into the bed.
    """
    depth = thickness + through
    if through < 0.0 or thickness <= 0.0:
        raise PlanError("Thickness and depth into the backing must be positive.", "holes")
    if bed is not None and through >= bed:
        raise PlanError(
            "Holes would run through the backing into the bed.",
            "holes",
            say("Go less than {bed:.1f} mm past the blank.", bed=bed),
        )
    findings: list[Finding] = []
    holes: list[Cut] = []
    for hole in board.holes:
        cut = _hole(board, hole, drills, mill, depth, tolerance, findings)
        if cut is not None:
            holes.append(cut)
    slots = [cut for slot in board.slots if (cut := _slot(slot, drills, mill, depth, findings)) is not None]
    spots = _spots(holes, vbit, slender)
    if gentle < 1.0 and small_pad > 0.0:
        holes = _eased(holes, board, small_pad, gentle)
    kinds = list(CutKind)
    holes.sort(key=lambda cut: (kinds.index(cut.kind), cut.bit.name))
    return HolePlan((*spots, *holes, *slots), tuple(findings))


def _hole(
    board: Board,
    hole: Hole,
    drills: Sequence[Drill],
    mill: EndMill | None,
    depth: float,
    tolerance: float,
    findings: list[Finding],
) -> Cut | None:
    nets = (hole.net,) if hole.net else ()
    place = (hole.x, hole.y)
    where = say("hole {diameter:.2f} mm", diameter=hole.diameter)
    nearest = min(
        drills, key=lambda drill: (abs(drill.diameter - hole.diameter), -drill.diameter), default=None
    )
    if nearest is not None and abs(nearest.diameter - hole.diameter) <= tolerance + 1e-9:
        return Cut(CutKind.HOLE, nearest, as_points([place]), nets, depth, hole.diameter)
    if mill is not None and mill.diameter <= hole.diameter + 1e-9:
        return Cut(CutKind.BORE, mill, _bore(hole, mill), nets, depth, hole.diameter)
    smaller = [drill for drill in drills if drill.diameter < hole.diameter]
    if not smaller:
        findings.append(
            Finding(
                "no drill", "No drill or end mill fits this hole.", where, "Add a smaller bit.", place, nets
            )
        )
        return None
    largest = max(smaller, key=lambda drill: drill.diameter)
    hint = "Add a drill or a smaller end mill to make it to size."
    findings.append(
        Finding(
            "small hole",
            say("Drilled with {diameter:.2f} mm only.", diameter=largest.diameter),
            where,
            hint,
            place,
            nets,
        )
    )
    return Cut(CutKind.HOLE, largest, as_points([place]), nets, depth, hole.diameter)


def in_travel_order(cuts: Sequence[Cut], *, start: ArrayLike | None = None) -> tuple[Cut, ...]:
    """Cuts of one kind and bit after one another, each such group by a short tour from ``start``.

    Groups keep the order in which they first appear. The same cuts give the same order every time.
    """
    groups: dict[tuple[CutKind, Bit], list[Cut]] = {}
    for cut in cuts:
        groups.setdefault((cut.kind, cut.bit), []).append(cut)
    found: list[Cut] = []
    for group in groups.values():
        places = as_points([cut.path[0] for cut in group])
        found += [group[int(index)] for index in steady_order(places, start=start)]
    return tuple(found)


def circle_path(x: float, y: float, radius: float) -> Points:
    """A closed anticlockwise circle whose chords stay within `CHORD` of it.

    Chord from the sagitta s: c² = 8 r s - 4 s² (circle geometry).
    """
    if radius <= CHORD:
        return as_points([(x, y)])
    count = max(8, int(np.ceil(np.pi / np.arccos(1.0 - CHORD / radius))))
    angle = np.linspace(0.0, 2.0 * np.pi, count + 1)
    ring = np.column_stack((x + radius * np.cos(angle), y + radius * np.sin(angle)))
    ring[-1] = ring[0]
    return as_points(ring)


def _bore(hole: Hole, mill: EndMill) -> Points:
    """Circles from the middle outwards, so that no core is left standing, in one path."""
    radius = (hole.diameter - mill.diameter) / 2.0
    pitch = mill.diameter * 0.6
    count = max(1, int(np.ceil(radius / pitch)))
    rings = [circle_path(hole.x, hole.y, radius * (k + 1) / count) for k in range(count)]
    return as_points(np.vstack(rings))


def _slot(
    slot: Slot, drills: Sequence[Drill], mill: EndMill | None, depth: float, findings: list[Finding]
) -> Cut | None:
    nets = (slot.net,) if slot.net else ()
    place = (float(slot.path[0, 0]), float(slot.path[0, 1]))
    if mill is None or mill.diameter > slot.diameter + 1e-9:
        hint = say("Choose an end mill of {diameter:.2f} mm or less.", diameter=slot.diameter)
        findings.append(
            Finding(
                "no mill",
                "No end mill fits this slot.",
                say("slot {diameter:.2f} mm", diameter=slot.diameter),
                hint,
                place,
                nets,
            )
        )
        return None
    path = slot.path
    if slot.diameter - mill.diameter > 2.0 * CHORD:
        spare = (slot.diameter - mill.diameter) / 2.0
        area = shapely.buffer(LineString(slot.path), spare, quad_segs=16)
        path = as_points(shapely.get_coordinates(shapely.get_exterior_ring(area)))
        if slot.diameter > 2.0 * mill.diameter:
            path = as_points(np.vstack((slot.path, path)))
    return Cut(CutKind.SLOT, mill, path, nets, depth, slot.diameter)


def _spots(holes: Sequence[Cut], vbit: VBit | None, slender: float) -> list[Cut]:
    """Marks for drills that may wander; none where the V-bit's tip is too wide for the drill."""
    if vbit is None:
        return []
    found = []
    for cut in holes:
        size = cut.bit.diameter if isinstance(cut.bit, Drill) else 0.0
        if cut.kind is not CutKind.HOLE or cut.depth <= slender * size:
            continue
        depth = min(SPOT_DEPTH, vbit.depth(SPOT_SHARE * size))
        if depth > 0.0:
            found.append(Cut(CutKind.SPOT, vbit, cut.path, cut.nets, depth, vbit.width(depth)))
    return found


def _eased(holes: Sequence[Cut], board: Board, small_pad: float, gentle: float) -> list[Cut]:
    """The holes, those in a small pad without a trace with less force."""
    pads = _lone_pads(board, small_pad)
    if not len(pads):
        return list(holes)
    tree = shapely.STRtree(pads)
    places = shapely.points(np.array([cut.path[0] for cut in holes]).reshape(-1, 2))
    inside = set(tree.query(places, predicate="intersects")[0].tolist())
    return [
        replace(cut, ease=gentle) if index in inside and cut.kind is CutKind.HOLE else cut
        for index, cut in enumerate(holes)
    ]


def _lone_pads(board: Board, largest: float) -> NDArray[np.object_]:
    """Pieces of copper no larger than a small pad: nothing but their own glue holds them.

    Holes that are left out of the copper count as copper: a pad is what its outer edge encloses.
    """
    pieces = np.array(
        [part for shape in board.nets.values() for part in shapely.get_parts(shape)], dtype=object
    )
    if not len(pieces):
        return pieces
    bounds = shapely.bounds(pieces)
    small = np.maximum(bounds[:, 2] - bounds[:, 0], bounds[:, 3] - bounds[:, 1]) <= largest + 1e-9
    return np.array([shapely.Polygon(pad.exterior) for pad in pieces[small]], dtype=object)


def reference_marks(
    board: Board,
    region: Geometry,
    bit: VBit | Drill,
    *,
    count: int = 3,
    depth: float | None = None,
    margin: float = 2.0,
) -> tuple[Cut, ...]:
    """Marks in the waste outside the outline, far apart, from which the board is found again.

    ``region`` is the blank without its clamps, board frame; marks stay ``margin`` mm clear of its
    edge and of the outline (3 mm plus the bit). Places are taken one by one, each the farthest
    from those taken.

    Raises
    ------
    PlanError
        If the waste has no room.
    """
    # waste between boards may come loose when they are cut out: no mark lies there
    edge = board.outlines[0] if len(board.outlines) == 1 else shapely.box(*board.outline.bounds)
    keep_off = edge.buffer(margin + (bit.diameter if isinstance(bit, Drill) else 0.5))
    room = shapely.difference(shapely.buffer(region, -margin), shapely.Polygon(keep_off.exterior))
    corners = (
        shapely.get_coordinates(shapely.segmentize(room, 1.0)) if not room.is_empty else np.empty((0, 2))
    )
    if len(corners) < count:
        raise PlanError(
            "There is no room for reference marks between the outline and the blank's edge.",
            "reference marks",
            say(
                "Use a blank that is {margin:.0f} mm larger on every side, or move the clamps.",
                margin=2 * margin + 1,
            ),
        )
    middle = corners.mean(axis=0)
    chosen = [int(np.argmax(((corners - middle) ** 2).sum(axis=1)))]
    nearest = ((corners - corners[chosen[0]]) ** 2).sum(axis=1)
    while len(chosen) < count:
        chosen.append(int(np.argmax(nearest)))
        nearest = np.minimum(nearest, ((corners - corners[chosen[-1]]) ** 2).sum(axis=1))
    down = depth if depth is not None else (SPOT_DEPTH * 2.0 if isinstance(bit, VBit) else 2.0)
    size = bit.width(down) if isinstance(bit, VBit) else bit.diameter
    return tuple(
        Cut(CutKind.MARK, bit, as_points(corners[[k]]), (), down, size, label=f"R{n}")
        for n, k in enumerate(chosen, 1)
    )
