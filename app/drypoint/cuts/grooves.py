"""Grooves that isolate nets from each other.

Where every gap takes the cut, the grooves are the boundary of all copper grown by half the cut's
width. Where a gap is narrower, that boundary has no line; the line of equal distance from both
nets is cut instead, which bites least. Together they separate every net.
"""

from __future__ import annotations

from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry

from drypoint.bits.model import VBit
from drypoint.cuts.centrelines import CentreLines, centre_lines
from drypoint.cuts.confirm import joined_places
from drypoint.cuts.gaps import OVERSHOOT
from drypoint.cuts.model import GroovePlan
from drypoint.cuts.offsets import as_paths, climb_rings, clip_lines, grow_together, ring_width
from drypoint.cuts.order import entered, order_paths
from drypoint.cuts.parts import SLACK, Parts, Shapes, copper_parts
from drypoint.errors import InputError
from drypoint.progress import Progress
from drypoint.wording import say

SHORTEST = 1e-3
"""mm. Lines shorter than this cut nothing."""


def plan_grooves(
    nets: Mapping[str, Geometry],
    width: float,
    *,
    bite: float = 0.0,
    least_trace: float = 0.0,
    boundary: Geometry | None = None,
    loops: int = 1,
    overlap: float = 0.2,
    moat: float | None = None,
    climb: bool = True,
    progress: Progress | None = None,
) -> GroovePlan:
    """Centre lines of the grooves that isolate ``nets``.

    Parameters
    ----------
    nets : mapping of str to geometry
        Copper per net, mm, board frame. Gaps inside one net are left alone.
    width : float
        Width of the cut at the copper's top, mm.
    bite : float
        How far a cut may eat into copper of a net, mm.
    least_trace : float
        Width, mm, that every trace keeps where a cut bites into it; 0: whatever is left of it, so long
        as it is not bitten through.
    boundary : geometry, optional
        Where grooves may run; what lies outside is not cut.
    loops : int
        Loops round every net; each further one lies ``width * (1 - overlap)`` farther out.
    overlap : float
        Share of the width by which neighbouring loops overlap, 0..0.9.
    moat : float, optional
        Width of the milled band around every net, mm; adds the loops that it needs.
    climb : bool
        Whether loops are cut climbing (with a spindle turning clockwise) or conventionally.

    Raises
    ------
    InputError
        If a value makes no sense.
    """
    _check_values(width, min(bite, least_trace), loops, overlap)
    parts = copper_parts(nets)
    if len(parts.shapes) == 0:
        return GroovePlan((), (), ())
    inner = progress or Progress()
    pitch = width * (1.0 - overlap)
    count = loops if moat is None else max(loops, 1 + int(np.ceil((moat - width) / pitch - 1e-9)))
    # nearer by the slack, so that a gap exactly as wide as the cut keeps both its loops
    distances = [width / 2.0 - SLACK + number * pitch for number in range(count)]
    rings: list[tuple[Shapes, NDArray[np.intp]]] = []
    with ThreadPoolExecutor(1, "loops") as pool:  # the geometry library lets go of the interpreter
        waiting = [pool.submit(loop_rings, parts, distance) for distance in distances]
        try:
            narrow = centre_lines(parts, width, bite, least_trace, inner.part(0.0, 0.5))
            for number, one in enumerate(waiting):
                inner.step(0.5 + 0.4 * number / count, "loops")
                rings.append(one.result())
        finally:
            pool.shutdown(wait=False, cancel_futures=True)
    inner.step(0.9, "joining")
    return _assemble(parts, rings, narrow, boundary, climb, width)


def loop_rings(parts: Parts, distance: float) -> tuple[Shapes, NDArray[np.intp]]:
    """Boundary rings of all copper grown by ``distance`` mm, and the net beside each.

    Those too narrow to matter are left out.
    """
    grown, source = grow_together(parts.shapes, distance)
    rings, index = climb_rings(grown)
    # a ring this narrow lies where centre lines run through: it would only cut them twice
    wide = ring_width(rings) > OVERSHOOT / 2.0
    rings, part = rings[wide], source[index[wide]]
    shared = part < 0
    part[shared] = _nearest_part(parts, rings[shared], distance)
    return rings, parts.owner[part]


def _check_values(width: float, bite: float, loops: int, overlap: float) -> None:
    if not width > 0.0:
        raise InputError("The width of the cut must be more than 0.", "groove width")
    if bite < 0.0:
        raise InputError("The allowed bite and the least trace cannot be below 0.", "bite")
    if loops < 1:
        raise InputError("At least one loop is needed.", "loops")
    if not 0.0 <= overlap <= 0.9:
        raise InputError("The overlap must lie between 0 and 0.9.", "overlap")


def _assemble(
    parts: Parts,
    rings: list[tuple[Shapes, NDArray[np.intp]]],
    narrow: CentreLines,
    boundary: Geometry | None,
    climb: bool,
    width: float,
) -> GroovePlan:
    loops = np.concatenate([one for one, _ in rings])
    owners = np.concatenate([owner for _, owner in rings])
    loops, source = clip_lines(loops, boundary)
    if not climb:
        loops = shapely.reverse(loops)
    shared, of = clip_lines(narrow.lines, boundary)
    nets = [(parts.names[owner],) for owner in owners[source]]
    nets += [tuple(parts.names[net] for net in narrow.pairs[index]) for index in of]
    every = np.concatenate((loops, shared))
    keep = shapely.length(every) > SHORTEST
    lines = as_paths(every[keep])
    return GroovePlan(
        lines=lines,
        line_nets=tuple(net for net, kept in zip(nets, keep, strict=True) if kept),
        impossible=joined_places(narrow.impossible, parts, lines, width),
        narrow=narrow.solved,
        max_bite=max((place.bite for place in narrow.solved), default=0.0),
        narrow_length=float(shapely.length(shared).sum()),
    )


def _nearest_part(parts: Parts, rings: Shapes, distance: float) -> NDArray[np.intp]:
    """(R,) part nearest to the start of each ring, which is ``distance`` mm away or a little less."""
    tree, starts = shapely.STRtree(parts.shapes), np.asarray(shapely.get_point(rings, 0))
    found = np.full(len(rings), -1, dtype=np.intp)
    ring, part = tree.query(starts, predicate="dwithin", distance=distance + SLACK)
    away = shapely.distance(starts[ring], parts.shapes[part])
    order = np.lexsort((part, -away))
    found[ring[order]] = part[order]
    lone = found < 0
    found[lone] = tree.nearest(starts[lone])
    return found


def in_travel_order(plan: GroovePlan, *, start: ArrayLike | None = None) -> GroovePlan:
    """The plan with its lines in an order of little travel from ``start`` (2,), mm; same every time.

    Closed lines begin at the entry chosen for them, open ones may be reversed: a shared centre
    line cuts alike either way.
    """
    order = order_paths(plan.lines, start=start)
    return replace(
        plan,
        lines=tuple(entered(plan.lines[index], entry) for index, entry in order),
        line_nets=tuple(plan.line_nets[index] for index, _ in order),
    )


def with_bit(plan: GroovePlan, bit: VBit, copper: float) -> GroovePlan:
    """The plan whose hints name the depth of ``bit``, or the tip, that would do at each place.

    ``copper`` is its thickness, mm: a cut must be deeper to part it.
    """
    named = []
    for place in plan.impossible:
        if place.widest <= 0.0:  # the nets touch in the design
            named.append(place)
            continue
        tip = place.widest - bit.runout - bit.slope * copper
        if bit.depth(place.widest) > copper:
            text = say(
                "{name} would do at {depth:.3f} mm deep.", name=bit.name, depth=bit.depth(place.widest)
            )
        elif tip > 0.0:
            text = say("A bit of the same angle with a tip of less than {tip:.3f} mm would do.", tip=tip)
        else:
            text = "No bit of this angle would do: it takes a steeper one."
        named.append(replace(place, hint=f"{place.hint} {text}".strip()))
    return replace(plan, impossible=tuple(named))
