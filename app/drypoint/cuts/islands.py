"""The island check: does the milled copper fall into exactly the nets of the design?

Separation is judged with the groove's width at the copper's underside, which is what must be
through; copper lost is judged with its width at the top.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry

from drypoint.cuts.carve import Fragments, Sweep, carve, make_sweep
from drypoint.cuts.enclosed import enclosed_parts, real_pieces
from drypoint.cuts.model import Flaw, IslandCheck
from drypoint.cuts.parts import Parts, Shapes, copper_parts, explode
from drypoint.errors import InputError
from drypoint.geometry.points import Points, as_points
from drypoint.progress import Progress
from drypoint.wording import say

BRIDGE_STEP = 0.05
"""mm between the places from which a bridge is looked for."""
MOST_WAYS = 2000
MARGIN = 1.0
"""mm of copper round nets and grooves where no outline is given."""


def check(
    nets: Mapping[str, Geometry],
    lines: Sequence[Points],
    width: ArrayLike,
    *,
    top_width: ArrayLike | None = None,
    outline: Geometry | None = None,
    tile: float = 20.0,
    progress: Progress | None = None,
) -> IslandCheck:
    """Shorts, opens and lost copper after cutting ``lines``.

    Parameters
    ----------
    nets : mapping of str to geometry
        Copper per net, board frame, mm. All other copper of the blank is counted as copper too.
    lines : sequence of (N, 2) arrays
        Any paths, planned or imported.
    width : float or (len(lines),) array
        Width cut at the copper's underside, mm; 0 where the cut is not through.
    top_width : float or array, optional
        Width at the copper's top, mm; equal to ``width`` if not given.
    outline : geometry, optional
        Where there is copper; else the extent of everything, and a margin.
    tile : float
        Side of the tiles the work is done in, mm. It does not change the verdict.

    Raises
    ------
    InputError
        If widths do not match the lines or are below 0.
    """
    parts = copper_parts(nets, simplify=0.0)
    paths = [as_points(line) for line in lines]
    under = _widths(width, len(paths))
    top = under if top_width is None else np.maximum(under, _widths(top_width, len(paths)))
    if len(parts.shapes) == 0:
        return IslandCheck(0, 0, (), (), ())
    area = outline if outline is not None else _extent(parts, paths, float(top.max(initial=0.0)))
    sweep = make_sweep(paths, under)
    same = np.array_equal(under, top)
    bites = sweep if same else make_sweep(paths, top)
    inner = progress or Progress()
    known = enclosed_parts(parts, sweep, bites, area, inner.part(0.0, 0.3))
    count, owners = int(known.alone.sum()), len(np.unique(parts.owner))
    if known.alone.all():
        return IslandCheck(owners, count, (), (), ())
    left = Parts(parts.names, parts.shapes[~known.alone], parts.owner[~known.alone])
    carving = _Carving(area, known.doubtful, tile)
    found = _carved(left, sweep, bites, carving, inner.part(0.3, 1.0))
    return replace(found, nets=owners, pieces=count + found.pieces)


@dataclass(frozen=True, slots=True, eq=False)
class _Carving:
    """Where there is copper, the polygons that are carved (None: all of it), and the size of tiles, mm."""

    area: Geometry
    within: Shapes | None
    tile: float

    def __call__(self, parts: Parts, sweep: Sweep, progress: Progress) -> Fragments:
        """What the grooves leave of the parts."""
        return carve(parts, sweep, self.area, within=self.within, tile=self.tile, progress=progress)


def _carved(parts: Parts, sweep: Sweep, bites: Sweep, carving: _Carving, progress: Progress) -> IslandCheck:
    """The check of some of the parts, by carving."""
    same = bites is sweep
    apart = carving(parts, sweep, progress.part(0.0, 1.0 if same else 0.5))
    kept = apart
    if not same:
        kept = carving(parts, bites, progress.part(0.5, 1.0))
    shorts = _shorts(parts, apart, sweep)
    opens, lost = _losses(parts, kept, carving.area)
    pieces = len(np.unique(apart.piece[_real(apart)]))
    return IslandCheck(len(np.unique(parts.owner)), pieces, shorts, opens, lost)


def pieces(lines: Sequence[Points], width: ArrayLike, window: Geometry) -> Shapes:
    """The polygons of copper left in ``window`` (board frame) after cutting ``lines``."""
    paths = [as_points(line) for line in lines]
    swept = make_sweep(paths, _widths(width, len(paths))).area(window)
    return explode(np.array([shapely.difference(window, swept)], dtype=object))[0]


def _widths(width: ArrayLike, count: int) -> NDArray[np.float64]:
    given = np.asarray(width, dtype=np.float64)
    if given.ndim > 1 or (given.ndim == 1 and len(given) != count):
        raise InputError("There must be one width, or one for every line.", "island check")
    if given.size and not (np.isfinite(given).all() and (given >= 0.0).all()):
        raise InputError("Widths must be 0 or more.", "island check")
    return np.broadcast_to(given, (count,)).copy()


def _extent(parts: Parts, paths: list[Points], width: float) -> Geometry:
    bounds = np.asarray(shapely.total_bounds(parts.shapes), dtype=np.float64)
    low, high = bounds[:2], bounds[2:]
    every = np.concatenate([path for path in paths if len(path)] or [bounds.reshape(2, 2)])
    low, high = np.minimum(low, every.min(axis=0)), np.maximum(high, every.max(axis=0))
    by = width + MARGIN
    extent: Geometry = shapely.box(low[0] - by, low[1] - by, high[0] + by, high[1] + by)
    return extent


def _real(fragments: Fragments) -> NDArray[np.bool_]:
    """Fragments that count as copper of a net."""
    count = int(fragments.part.max(initial=-1)) + 1
    largest = np.zeros(count)
    np.maximum.at(largest, fragments.part, fragments.area)
    return real_pieces(fragments.area, fragments.edge, largest[fragments.part])


def _shorts(parts: Parts, fragments: Fragments, sweep: Sweep) -> tuple[Flaw, ...]:
    real = _real(fragments)
    part, piece = fragments.part[real], fragments.piece[real]
    owner = parts.owner[part]
    order = np.lexsort((part, piece))
    cuts = np.flatnonzero(np.diff(piece[order])) + 1
    found = []
    for group in np.split(order, cuts) if len(order) else []:
        nets = np.unique(owner[group])
        if len(nets) < 2:
            continue
        names = tuple(parts.names[net] for net in nets)
        at = _bridge(parts, part[group], sweep)
        found.append(Flaw(names, at, "joined: " + ", ".join(names[:6]) + (" …" if len(names) > 6 else "")))
    return tuple(found)


def _bridge(parts: Parts, chosen: NDArray[np.intp], sweep: Sweep) -> tuple[float, float]:
    """Where copper joins parts of different nets: the short way between them that is cut least.

    Ways are the shortest ones from places along the boundary of one net's part to the nearest part
    of another; how far each lies in a groove is measured from the groove's middle.
    """
    shapes, owner = parts.shapes[chosen], parts.owner[chosen]
    one, two = _nearest_pair(shapes, owner)
    step = max(BRIDGE_STEP, float(shapely.length(one)) / MOST_WAYS)
    places = shapely.points(shapely.get_coordinates(shapely.segmentize(shapely.boundary(one), step)))
    ways = np.asarray(shapely.shortest_line(places, two))
    size = shapely.length(ways)
    # longer ways than the gap where they end run through the net itself
    straight = size <= shapely.distance(shapely.get_point(ways, 1), one) + step
    ways, size = ways[straight], size[straight]
    order = np.argsort(size, kind="stable")[:MOST_WAYS]
    ways, size = ways[order], size[order]
    spare = np.zeros(len(ways))
    if len(sweep.lines):
        way, line = sweep.tree.query(ways, predicate="dwithin", distance=float(sweep.radius.max()))
        np.minimum.at(spare, way, shapely.distance(ways[way], sweep.lines[line]) - sweep.radius[line])
    middle = shapely.line_interpolate_point(ways[np.lexsort((size, -spare))[0]], 0.5, normalized=True)
    return (float(shapely.get_x(middle)), float(shapely.get_y(middle)))


def _nearest_pair(shapes: Shapes, owner: NDArray[np.intp]) -> tuple[Geometry, Geometry]:
    """A part of the first net and one of another, the nearest to each other."""
    first, others = shapes[owner == owner[0]], shapes[owner != owner[0]]
    index, away = shapely.STRtree(others).query_nearest(first, return_distance=True, all_matches=False)
    best = int(np.argmin(away))
    return first[index[0][best]], others[index[1][best]]


def _losses(parts: Parts, fragments: Fragments, area: Geometry) -> tuple[tuple[Flaw, ...], tuple[Flaw, ...]]:
    real = _real(fragments)
    count = np.bincount(fragments.part[real], minlength=len(parts.shapes))
    opens, lost = [], []
    for index in np.flatnonzero(count > 1):
        rows = np.flatnonzero(real & (fragments.part == index))
        small = rows[np.argsort(fragments.area[rows])[-2]]
        name = parts.names[parts.owner[index]]
        at = fragments.at[small]
        opens.append(
            Flaw(
                (name,),
                (float(at[0]), float(at[1])),
                say("{name} falls into {count} pieces", name=name, count=len(rows)),
            )
        )
    gone = np.flatnonzero(count == 0)
    if len(gone):
        gone = gone[shapely.intersects(parts.shapes[gone], area)]
    for index in gone:
        name = parts.names[parts.owner[index]]
        spot = shapely.point_on_surface(parts.shapes[index])
        lost.append(
            Flaw((name,), (float(spot.x), float(spot.y)), say("copper of {name} is cut away", name=name))
        )
    return tuple(opens), tuple(lost)
