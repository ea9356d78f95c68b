"""Two bits: a wide one for open copper, a fine one only where the wide one does not fit.

The wide loops are closed curves round one net or a group of nets that the wide bit cannot part. Each of
them therefore isolates what it encloses whatever its width is, so that a loop that does not reach through
the copper can be cut again along the same line by the fine bit. Inside a group the fine grooves run up to
the middle of the wide ones, so that both make one closed line.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry

from drypoint.cuts.grooves import SHORTEST, loop_rings
from drypoint.cuts.model import GroovePlan
from drypoint.cuts.needed import needed_pieces
from drypoint.cuts.offsets import QUAD_SEGS, as_paths, clip_lines
from drypoint.cuts.order import entered, order_paths
from drypoint.cuts.parts import SLACK, Parts, Shapes, copper_parts
from drypoint.errors import InputError
from drypoint.geometry.points import Points, as_points, is_closed, length, stretch
from drypoint.progress import Progress

JOIN = 0.3
"""mm that fine paths run on into the wide groove before they turn to its middle."""
BESIDE = 0.02
"""mm more than half the width within which a net lies beside a wide loop."""
CHORD = 2e-3
"""mm that a fine groove may stand out of a wide one and still count as covered: the chords of arcs."""


@dataclass(frozen=True, slots=True)
class CutWidth:
    """Width of a cut at the copper's top and at its underside, mm; 0 there where it is not through."""

    top: float
    under: float


@dataclass(frozen=True, slots=True, eq=False)
class RestPlan:
    """``wide``: loops of the wide bit. ``fine``: the fine grooves that are still needed."""

    wide: GroovePlan
    fine: GroovePlan


def assembled(
    rest: RestPlan, wide_fill: tuple[Points, ...] = (), fine_fill: tuple[Points, ...] = ()
) -> GroovePlan:
    """All lines in one plan, those of the wide bit first, each bit's in an order of little travel.

    ``wide_fill`` and ``fine_fill`` only take copper away.
    """
    lines: list[Points] = []
    nets: list[tuple[str, ...]] = []
    fill: set[int] = set()
    for plan, more in ((rest.wide, wide_fill), (rest.fine, fine_fill)):
        every = (*plan.lines, *more)
        beside = (*plan.line_nets, *(((),) * len(more)))
        for index, entry in order_paths(every):
            if index >= len(plan.lines) or index in plan.fill:
                fill.add(len(lines))
            lines.append(entered(every[index], entry))
            nets.append(beside[index])
    count = len(rest.wide.lines) + len(wide_fill)
    return replace(rest.fine, lines=tuple(lines), line_nets=tuple(nets), wide=count, fill=frozenset(fill))


def total(lines: tuple[Points, ...]) -> float:
    """Length of all lines, mm."""
    return float(sum(length(line) for line in lines))


def plan_rest(
    nets: Mapping[str, Geometry],
    alone: GroovePlan,
    wide: CutWidth,
    fine: CutWidth,
    *,
    boundary: Geometry | None = None,
    corners: bool = False,
    climb: bool = True,
    progress: Progress | None = None,
) -> RestPlan:
    """Loops of the wide bit where it fits without biting, and of ``alone`` what is still needed.

    Parameters
    ----------
    nets : mapping of str to geometry
        Copper per net, board frame, mm.
    alone : the grooves of the fine bit if it did everything
    wide, fine : widths of both cuts
    boundary : where grooves may run
    corners : bool
        Whether the fine bit also rounds off corners that the wide one leaves filled with copper of the
        same net, which parts nothing.
    climb : bool
        Whether the wide loops are cut climbing or conventionally.

    Raises
    ------
    InputError
        If the fine cut is not narrower than the wide one, or one of them does not go through.
    """
    spare = (wide.top - fine.top) / 2.0
    if not (spare > 0.0 and fine.under > 0.0 and wide.under > 0.0):
        raise InputError(
            "The second bit must cut wider than the fine one, and both through the copper.",
            "two bits",
            "Choose a wider bit, or more depth.",
        )
    told = progress or Progress()
    parts = copper_parts(nets)
    if len(parts.shapes) == 0:
        return RestPlan(GroovePlan((), (), ()), alone)
    told.step(0.0, "loops of the wide bit")
    loops = _wide_loops(parts, wide.top, boundary, climb)
    if not loops.lines:
        return RestPlan(loops, alone)
    rings = np.array([shapely.linestrings(line) for line in loops.lines], dtype=object)
    told.step(0.2, "what is left for the fine bit")
    lines = np.array([shapely.linestrings(line) for line in alone.lines], dtype=object)
    pieces, source = _uncovered(lines, rings, spare + CHORD)
    told.step(0.5, "joining fine and wide grooves")
    longer, source = _run_on(lines, pieces, source)
    tree = shapely.STRtree(rings)
    paths = tuple(_to_middle(path, tree, spare) for path in longer)
    if not corners:
        # judged as if the wide loops were only as wide as the fine cut: so they may be cut again by it
        keep = needed_pieces(parts, paths, fine.under, rings, wide.top, progress=told.part(0.6, 1.0))
        paths = tuple(path for path, kept in zip(paths, keep, strict=True) if kept)
        source = source[keep]
    left = replace(alone, lines=paths, line_nets=tuple(alone.line_nets[k] for k in source.tolist()))
    return RestPlan(loops, left)


def _wide_loops(parts: Parts, width: float, boundary: Geometry | None, climb: bool) -> GroovePlan:
    """Closed loops at half of the width from all copper, with the nets beside each."""
    rings, _ = clip_lines(loop_rings(parts, width / 2.0 - SLACK)[0], boundary)
    rings = rings[shapely.length(rings) > SHORTEST]
    if not climb:
        rings = shapely.reverse(rings)
    line, part = shapely.STRtree(parts.shapes).query(
        rings, predicate="dwithin", distance=width / 2.0 + BESIDE
    )
    beside: list[set[int]] = [set() for _ in rings]
    for index, owner in zip(line.tolist(), parts.owner[part].tolist(), strict=True):
        beside[index].add(owner)
    names = tuple(tuple(parts.names[owner] for owner in sorted(one)) for one in beside)
    return GroovePlan(as_paths(rings), names, ())


def _uncovered(lines: Shapes, rings: Shapes, distance: float) -> tuple[Shapes, NDArray[np.intp]]:
    """The stretches of lines farther than ``distance`` from all rings, and the line each is of."""
    covered = shapely.buffer(shapely.geometrycollections(rings), distance, quad_segs=QUAD_SEGS)
    shapely.prepare(covered)
    hit = shapely.intersects(covered, lines)
    rest = lines.copy()
    rest[hit] = shapely.line_merge(shapely.difference(lines[hit], covered))
    pieces, owner = shapely.get_parts(rest, return_index=True)
    kept = shapely.length(pieces) > SHORTEST
    return pieces[kept], owner[kept]


def _run_on(lines: Shapes, pieces: Shapes, source: NDArray[np.intp]) -> tuple[list[Points], NDArray[np.intp]]:
    """The pieces, longer at both ends along the line they are of; what meets is one."""
    size = shapely.length(pieces)
    whole = shapely.length(lines)[source]
    start = _place_on(lines[source], pieces, size, whole)
    found: list[Points] = []
    owner: list[int] = []
    for index in np.unique(source).tolist():
        own = source == index
        line = as_points(shapely.get_coordinates(lines[index]))
        for span in _joined(start[own], size[own], float(whole[own][0]), is_closed(line)):
            found.append(stretch(line, *span))
            owner.append(index)
    return found, np.array(owner, dtype=np.intp)


def _place_on(
    lines: Shapes, pieces: Shapes, size: NDArray[np.float64], whole: NDArray[np.float64]
) -> NDArray[np.float64]:
    """(N,) how far along its line each piece starts, mm, whichever way it runs."""
    first = shapely.line_locate_point(lines, shapely.get_point(pieces, 0))
    last = shapely.line_locate_point(lines, shapely.get_point(pieces, -1))
    middle = shapely.line_locate_point(lines, shapely.line_interpolate_point(pieces, size / 2.0))
    off = np.abs((middle - first - size / 2.0 + whole / 2.0) % whole - whole / 2.0)
    return np.asarray(np.where(off < 0.25 * size + SHORTEST, first, last))


def _joined(
    start: NDArray[np.float64], size: NDArray[np.float64], whole: float, closed: bool
) -> list[tuple[float, float]]:
    """Spans along a line, longer by `JOIN` at both ends; on a closed one they may run past its end."""
    spans: list[tuple[float, float]] = []
    for k in np.argsort(start).tolist():
        a, b = float(start[k]) - JOIN, float(start[k] + size[k]) + JOIN
        if spans and a <= spans[-1][1]:
            spans[-1] = (spans[-1][0], max(b, spans[-1][1]))
        else:
            spans.append((a, b))
    if not closed:
        return [(max(a, 0.0), min(b, whole)) for a, b in spans]
    if len(spans) > 1 and spans[0][0] + whole <= spans[-1][1]:
        spans = [*spans[1:-1], (spans[-1][0], max(spans[-1][1], spans[0][1] + whole))]
    return [(0.0, whole)] if spans[-1][1] - spans[-1][0] >= whole else spans


def _to_middle(path: Points, tree: shapely.STRtree, spare: float) -> Points:
    """An open path led on to the middle of the wide groove that its ends lie in.

    All the way lies inside that groove.
    """
    if is_closed(path) or len(path) < 2:
        return path
    ends = [shapely.Point(path[0]), shapely.Point(path[-1])]
    rings = tree.geometries
    ways: list[Points] = [path]
    for end, first in zip(ends, (True, False), strict=True):
        near = tree.query(end, predicate="dwithin", distance=spare + 2.0 * CHORD)
        if not len(near):
            continue
        nearest = rings[near[int(np.argmin(shapely.distance(rings[near], end)))]]
        way = shapely.get_coordinates(shapely.shortest_line(end, nearest))
        if np.hypot(*(way[1] - way[0])) > SHORTEST:
            ways = [way[1:], *ways] if first else [*ways, way[1:]]
    return as_points(np.vstack(ways))
