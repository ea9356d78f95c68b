"""How much of a trace is left where a shared centre line bites into it."""

from __future__ import annotations

import numpy as np
import shapely
from numpy.typing import NDArray

from drypoint.cuts.gaps import Ridges
from drypoint.cuts.parts import Parts

NOTICE = 2e-3
"""mm. Bites below this are the chords of arcs."""
INSET = 1e-5
"""mm inside the copper where its width begins to be measured."""


def width_left(
    parts: Parts,
    close: NDArray[np.intp],
    ridges: Ridges,
    edges: NDArray[np.intp],
    radius: float,
    least: float,
) -> NDArray[np.float64]:
    """(K,) smallest width of copper left across each node of the ridges, mm; infinite where enough.

    It is below 0 where more is bitten than there is. Across means straight on from the
    nearest spot of a net's boundary. What the centre line on the copper's far side bites is taken off
    too.

    Parameters
    ----------
    close : (M, 2) indices
        Parts of different nets nearer to each other than twice the radius.
    edges : (E,) indices
        Edges that would be cut; only their nodes are looked at.
    radius : float
        Half of the cut's width at the copper's top, mm.
    least : float
        mm. Copper that keeps this much is enough.
    """
    left = np.full(len(ridges.nodes), np.inf)
    ends = ridges.edges[edges]
    nodes, place = np.unique(ends, return_index=True)
    nodes, place = _biting(ridges, nodes, place, radius)
    if len(nodes) == 0:
        return left
    node, part, spot = _bitten(parts, close, ridges, nodes, ridges.pair[edges[place // 2]], radius)
    onward = spot - ridges.nodes[node]
    apart = np.hypot(*onward.T)
    sound = (apart > 1e-9) & (radius - apart > NOTICE)
    node, part, spot, apart = node[sound], part[sound], spot[sound], apart[sound]
    onward = onward[sound] / apart[:, None]
    begin = spot + INSET * onward
    deepest = radius - float(ridges.clearance[nodes].min())  # no cut takes more from either side
    far = begin + (least + 2.0 * deepest) * onward
    wide, leave = across(begin, far, parts, part)
    thin = wide < least + 2.0 * deepest - INSET
    node, wide, leave, apart = node[thin], wide[thin], leave[thin], apart[thin]
    if len(node) == 0:
        return left
    lines = np.asarray(shapely.linestrings(ridges.nodes[ends]))
    index, away = shapely.STRtree(lines).query_nearest(
        shapely.points(leave), return_distance=True, all_matches=False
    )
    beyond = np.zeros(len(leave))
    beyond[index[0]] = np.maximum(0.0, radius - away)
    remains = wide - (radius - apart) - beyond
    np.minimum.at(left, node, np.where(remains < least, remains, np.inf))
    return left


def _biting(
    ridges: Ridges, nodes: NDArray[np.intp], place: NDArray[np.intp], radius: float
) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    bites = ridges.clearance[nodes] < radius - NOTICE
    return nodes[bites], place[bites]


def _bitten(
    parts: Parts,
    close: NDArray[np.intp],
    ridges: Ridges,
    nodes: NDArray[np.intp],
    pair: NDArray[np.intp],
    radius: float,
) -> tuple[NDArray[np.intp], NDArray[np.intp], NDArray[np.float64]]:
    """Nodes, the parts of the ``pair`` (N, 2) of nets that a cut there may bite, and their nearest spots.

    Mostly these are the two parts that a node lies between; where a net has several of them near, all
    are looked for.
    """
    several = _several(parts, close, ridges.parts[nodes])
    plain = nodes[~several]
    node, part = np.repeat(plain, 2), ridges.parts[plain].reshape(-1)
    spot = ridges.spots[plain].reshape(-1, 2)
    crowded = nodes[several]
    if len(crowded) == 0:
        return node, part, spot
    places = np.asarray(shapely.points(ridges.nodes[crowded]))
    row, near = shapely.STRtree(parts.shapes).query(places, predicate="dwithin", distance=radius)
    beside = (parts.owner[near][:, None] == pair[several][row]).any(axis=1)
    row, near = row[beside], near[beside]
    ways = shapely.get_coordinates(shapely.shortest_line(places[row], parts.shapes[near]))
    found = ways.reshape(-1, 2, 2)[:, 1]
    return np.append(node, crowded[row]), np.append(part, near), np.concatenate((spot, found))


def _several(parts: Parts, close: NDArray[np.intp], sides: NDArray[np.intp]) -> NDArray[np.bool_]:
    """Whether one of two parts (N, 2) is close to several of the other's net."""
    count = len(parts.shapes)
    one, other = np.concatenate((close, close[:, ::-1])).T
    key, times = np.unique(one * count + parts.owner[other], return_counts=True)
    many = key[times > 1]
    net = parts.owner[sides]
    return np.isin(sides[:, 0] * count + net[:, 1], many) | np.isin(sides[:, 1] * count + net[:, 0], many)


def across(
    begin: NDArray[np.float64], far: NDArray[np.float64], parts: Parts, part: NDArray[np.intp]
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Width (M,) of the copper of each ``part`` from ``begin`` (M, 2), just inside it, towards ``far``, and
    where it ends (M, 2)."""
    rays = np.asarray(shapely.linestrings(np.stack((begin, far), axis=1)))
    shapely.prepare(parts.shapes)
    wide, leave = np.hypot(*(far - begin).T), far.copy()
    open_end = np.flatnonzero(~shapely.covers(parts.shapes[part], rays))
    inside = shapely.intersection(rays[open_end], parts.shapes[part[open_end]])
    pieces, of = shapely.get_parts(inside, return_index=True)
    line = (shapely.get_type_id(pieces) == 1) & ~shapely.is_empty(pieces)
    pieces, of = pieces[line], of[line]
    ends = shapely.get_coordinates(pieces).reshape(-1, 2, 2)
    apart = np.hypot(*(ends - begin[open_end[of]][:, None, :]).transpose(2, 0, 1))
    first = apart.min(axis=1) < 2.0 * INSET
    row = open_end[of[first]]
    wide[row] = apart[first].max(axis=1)
    leave[row] = ends[first][np.arange(len(row)), np.argmax(apart[first], axis=1)]
    return wide, leave
