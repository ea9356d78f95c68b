"""Traces that lose a good share of their width to the cut, with the current they carried and carry.

A trace may keep more than the least width and still be much weaker than it was drawn. Its width is
measured straight across, from places where a groove bites.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components
from scipy.spatial import cKDTree
from shapely import Geometry

from drypoint.cuts.milled import NOTICE, Milled
from drypoint.cuts.model import Flaw
from drypoint.cuts.ratings import current
from drypoint.cuts.remaining import INSET, across
from drypoint.errors import InputError
from drypoint.geometry.points import Points
from drypoint.progress import Progress
from drypoint.wording import say

PITCH = 0.2
"""mm between the places that are looked at along a groove."""
TOGETHER = 0.5
"""mm. Thinned places nearer to each other than this are one."""
SHORTEST = 0.2
"""mm. A place shorter than this is the corner of a pad, no trace."""


def weakened(
    nets: Mapping[str, Geometry],
    lines: Sequence[Points],
    top_width: ArrayLike,
    drop: float,
    *,
    copper: float = 0.035,
    rise: float = 10.0,
    progress: Progress | None = None,
) -> tuple[Flaw, ...]:
    """Places where a trace loses more than the share ``drop`` of its width to the cut.

    One finding for each stretch, where the loss is largest.

    Parameters
    ----------
    top_width : float or (len(lines),) array
        Width at the copper's top, mm.
    drop : float
        Share of the width, 0..1; 0 lists nothing.
    copper, rise : float
        Copper thickness (mm) and warming (K) for the currents stated in words (IPC-2221).

    Raises
    ------
    InputError
        If ``drop`` is no share.
    """
    if not 0.0 <= drop <= 1.0:
        raise InputError(
            "The share of its width that a trace may lose lies between 0 and 1.", "thinned traces"
        )
    if drop == 0.0:
        return ()
    milled = Milled.of(nets, lines, top_width)
    bites = _bites(milled)
    told = progress or Progress()
    told.step(0.5, "thinned traces")
    found = []
    for part, before, after, at in _stretches(_widths(milled, bites, drop), drop):
        name = milled.parts.names[milled.parts.owner[part]]
        found.append(_flaw(name, before, after, at, copper, rise))
    return tuple(found)


def _flaw(
    name: str, before: float, after: float, at: tuple[float, float], copper: float, rise: float
) -> Flaw:
    carried, carries = (current(wide, thickness=copper, rise=rise) for wide in (before, after))
    text = say(
        "{name} narrows from {before:.2f} to {after:.2f} mm: {carried:.2f} A before, {carries:.2f} A after",
        name=name,
        before=before,
        after=after,
        carried=carried,
        carries=carries,
    )
    return Flaw((name,), at, say("{text} for {rise:.0f} K (estimate)", text=text, rise=rise))


@dataclass(frozen=True, slots=True, eq=False)
class _Bites:
    """Places (N, 2) on the edge of a ``part`` (N,) where a groove eats ``deep`` (N,) mm straight ``onward``
    (N, 2)."""

    part: NDArray[np.intp]
    edge: NDArray[np.float64]
    onward: NDArray[np.float64]
    deep: NDArray[np.float64]


def _bites(milled: Milled) -> _Bites:
    """Where grooves bite, seen from places along them."""
    parts, paths, radius = milled.parts, milled.paths, milled.radius
    lines = np.array([shapely.LineString(path) if len(path) > 1 else None for path in paths], dtype=object)
    spots, line = shapely.get_coordinates(shapely.segmentize(lines, PITCH), return_index=True)
    points, reach = np.asarray(shapely.points(spots)), np.maximum(radius[line] - NOTICE, 0.0)
    tree = shapely.STRtree(parts.shapes)
    spot, part = tree.query(points, predicate="dwithin", distance=reach)
    way = shapely.get_coordinates(shapely.shortest_line(points[spot], parts.shapes[part])).reshape(-1, 2, 2)
    apart = np.hypot(*(way[:, 1] - way[:, 0]).T)
    inside = np.flatnonzero(apart <= 1e-9)
    edge = shapely.boundary(parts.shapes[part[inside]])
    way[inside] = shapely.get_coordinates(shapely.shortest_line(points[spot[inside]], edge)).reshape(-1, 2, 2)
    apart[inside] = -np.hypot(*(way[inside, 1] - way[inside, 0]).T)
    # a groove that runs inside copper and does not reach its edge has no side
    sound = (np.abs(apart) > 1e-9) & (apart > -reach[spot])
    spot, part, way, apart = spot[sound], part[sound], way[sound], apart[sound]
    onward = (way[:, 1] - way[:, 0]) / apart[:, None]
    return _Bites(part, way[:, 1], onward, radius[line[spot]] - apart)


@dataclass(frozen=True, slots=True, eq=False)
class _Across:
    """Width of a ``part`` (N,) before and after the cut (N,), mm, at places ``at`` (N, 2)."""

    part: NDArray[np.intp]
    before: NDArray[np.float64]
    after: NDArray[np.float64]
    at: NDArray[np.float64]


def _widths(milled: Milled, bites: _Bites, drop: float) -> _Across:
    """Straight across the copper from where it is bitten; what is too wide to lose much is left out."""
    if not len(bites.part):
        return _Across(bites.part, bites.deep, bites.deep, bites.edge)
    # both sides can be bitten as far
    longest = 2.0 * float(bites.deep.max()) / drop
    begin = bites.edge + INSET * bites.onward
    before, leave = across(begin, begin + longest * bites.onward, milled.parts, bites.part)
    narrow = before < longest - INSET
    beyond = _eaten(milled, leave[narrow])
    wide = before[narrow]
    left = np.maximum(wide - bites.deep[narrow] - beyond, 0.0)
    return _Across(bites.part[narrow], wide, left, (bites.edge + leave)[narrow] / 2.0)


def _eaten(milled: Milled, edge: NDArray[np.float64]) -> NDArray[np.float64]:
    """(N,) how far the nearest groove reaches past places (N, 2) on an edge, mm."""
    paths, radius = milled.paths, milled.radius
    pieces = np.concatenate([np.stack((path[:-1], path[1:]), axis=1) for path in paths if len(path) > 1])
    wide = np.repeat(radius, [max(len(path) - 1, 0) for path in paths])
    tree = shapely.STRtree(np.asarray(shapely.linestrings(pieces)))
    (spot, piece), apart = tree.query_nearest(
        shapely.points(edge), max_distance=float(radius.max()), return_distance=True, all_matches=False
    )
    eaten = np.zeros(len(edge))
    eaten[spot] = np.where(wide[piece] - apart > NOTICE, wide[piece] - apart, 0.0)
    return eaten


def _stretches(found: _Across, drop: float) -> Iterator[tuple[int, float, float, tuple[float, float]]]:
    """Part, widths and place of the largest loss in every stretch that loses more than the share."""
    thin = found.after < (1.0 - drop) * found.before
    part, before, after, at = found.part[thin], found.before[thin], found.after[thin], found.at[thin]
    if not len(part):
        return
    pairs = cKDTree(at).query_pairs(TOGETHER, output_type="ndarray")
    pairs = pairs[part[pairs[:, 0]] == part[pairs[:, 1]]]
    graph = coo_matrix((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(len(at), len(at)))
    count, label = connected_components(graph, directed=False)
    order = np.lexsort((after / before, label))
    for rows in np.split(order, np.searchsorted(label[order], np.arange(1, count))):
        if np.hypot(*np.ptp(at[rows], axis=0)) >= SHORTEST:
            worst = rows[0]
            x, y = at[worst].tolist()
            yield int(part[worst]), float(before[worst]), float(after[worst]), (x, y)
