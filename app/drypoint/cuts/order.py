"""The order of work: short ways between places.

`tour` asks a general solver that works against the clock: the shortest ways, but two calls need
not agree on large sets (``known`` keeps an order that was found). What a program is made of is
ordered by `steady` searches, which count steps instead: equal jobs give equal programs.
"""

from __future__ import annotations

from collections.abc import Sequence

import fast_tsp
import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.spatial import cKDTree
from scipy.spatial.distance import cdist

from drypoint.cuts.steady import steady_tour, sweep_order
from drypoint.geometry.points import Points, as_points, is_closed

LARGEST = 60_000
"""The solver counts in 16 bits: distances are scaled to this."""
MOST = 5_000
"""Places one tour is sought through at once; more are joined from strips (memory grows squared)."""
LIKELY = 64
FEW = 500
"""Kicks given to an order while the entries still change."""
MOST_WAYS = 50_000
"""Ways from path to path that are all compared; of more, the likely ones."""


def tour(
    points: ArrayLike,
    *,
    start: ArrayLike | None = None,
    seconds: float = 1.0,
    known: ArrayLike | None = None,
) -> NDArray[np.intp]:
    """A short closed tour through all places.

    Parameters
    ----------
    points : (N, 2) array
        mm. Equal places are visited one after the other.
    start : (2,) array, optional
        The tour starts at the place nearest to it; else at the first.
    seconds : float
        Time given to the search.
    known : (N,) array, optional
        An order found earlier; returned as it is when it is a permutation of the places.

    Returns
    -------
    (N,) indices.
    """
    places = as_points(points)
    count = len(places)
    if known is not None:
        given = np.asarray(known, dtype=np.intp)
        if len(given) == count and np.array_equal(np.sort(given), np.arange(count)):
            return given
    if count < 3:
        return _from_start(np.arange(count), places, start)
    single, inverse = np.unique(places, axis=0, return_inverse=True)
    return _from_start(_spread(_solve(as_points(single), seconds), inverse), places, start)


def _spread(order: NDArray[np.intp], inverse: NDArray[np.intp]) -> NDArray[np.intp]:
    """The order of all places from that of the distinct ones (``inverse`` (N,): which each is)."""
    members = np.argsort(inverse.reshape(-1), kind="stable")
    counts = np.bincount(inverse.reshape(-1), minlength=len(order))
    first = np.cumsum(counts) - counts
    return np.concatenate([members[first[k] : first[k] + counts[k]] for k in order])


def closed_length(points: ArrayLike, order: ArrayLike) -> float:
    """Length of a closed tour, mm."""
    path = as_points(points)[np.asarray(order, dtype=np.intp)]
    return float(np.hypot(*(path - np.roll(path, -1, axis=0)).T).sum())


def _solve(places: Points, seconds: float) -> NDArray[np.intp]:
    count = len(places)
    if count < 4:
        return np.arange(count)
    if count > MOST:
        return _strips(places, seconds)
    moved = places + np.random.default_rng(3).uniform(-1.0, 1.0, places.shape) * np.ptp(places) * 1e-5
    difference = moved[:, None, :] - moved[None, :, :]
    distance = np.sqrt((difference**2).sum(axis=2))
    scaled = np.rint(distance * (LARGEST / max(float(distance.max()), 1e-9))).astype(np.uint16)
    given = min(seconds, 0.004 * count)
    return np.asarray(fast_tsp.find_tour(scaled, duration_seconds=given), dtype=np.intp)


def _strips(places: Points, seconds: float) -> NDArray[np.intp]:
    """Large sets: tours of blocks of x, cut open where they are nearest to the next block."""
    count = int(np.ceil(len(places) / (MOST / 2)))
    blocks = np.array_split(np.argsort(places[:, 0], kind="stable"), count)
    found: list[NDArray[np.intp]] = []
    at: Points | None = None
    for block in blocks:
        inner = block[_solve(as_points(places[block]), seconds / count)]
        if at is not None:
            nearest = int(np.argmin(((places[inner] - at) ** 2).sum(axis=1)))
            inner = np.roll(inner, -nearest)
        found.append(inner)
        at = places[inner[-1]]
    return np.concatenate(found)


def _from_start(order: NDArray[np.intp], places: Points, start: ArrayLike | None) -> NDArray[np.intp]:
    """The same closed tour from the place nearest to ``start``, in a canonical direction."""
    if len(order) == 0:
        return order.astype(np.intp)
    wanted = 0
    if start is not None:
        wanted = int(np.argmin(((places - np.asarray(start, dtype=np.float64)) ** 2).sum(axis=1)))
    turned = np.roll(order, -int(np.flatnonzero(order == wanted)[0]))
    if len(turned) > 2 and turned[1] > turned[-1]:
        turned = np.concatenate((turned[:1], turned[:0:-1]))
    return turned.astype(np.intp)


def steady_order(points: ArrayLike, *, start: ArrayLike | None = None) -> NDArray[np.intp]:
    """A short closed tour through (N, 2) places, mm, that is the same every time.

    About 1 % longer than the best; starts at the place nearest to ``start``, else at the first.
    """
    places = as_points(points)
    if len(places) < 3:
        return _from_start(np.arange(len(places)), places, start)
    single, inverse = np.unique(places, axis=0, return_inverse=True)
    return _from_start(_spread(steady_tour(as_points(single)), inverse), places, start)


def order_paths(paths: Sequence[Points], *, start: ArrayLike | None = None) -> list[tuple[int, int]]:
    """An order of paths with little travel between them, the same every time.

    Returns
    -------
    list of (index, entry)
        For a closed path, ``entry`` is the vertex it is entered and left at. For an open path it
        is 0 (as it is) or 1 (reversed). `entered` makes the path that is meant.
    """
    if not paths:
        return []
    closed = [is_closed(path) for path in paths]
    gates = [path[:-1] if ring else path[[0, -1]] for path, ring in zip(paths, closed, strict=True)]
    origin = np.zeros(2) if start is None else np.asarray(start, dtype=np.float64)
    entry = [int(np.argmin(((gate - origin) ** 2).sum(axis=1))) for gate in gates]
    spots = as_points([gate[at] for gate, at in zip(gates, entry, strict=True)])
    order = [int(k) for k in sweep_order(spots)]
    best: list[tuple[int, int]] = []
    shortest = np.inf
    for last in (False, False, False, True):
        order = _round(gates, closed, order, entry, None if last else FEW, origin)
        chosen, travel = _entries([gates[k] for k in order], [closed[k] for k in order], origin)
        for path, at in zip(order, chosen, strict=True):
            entry[path] = at
        if travel < shortest - 1e-9:
            shortest = travel
            best = list(zip(order, chosen, strict=True))
    return best


def _round(
    gates: list[Points],
    closed: list[bool],
    order: list[int],
    entry: list[int],
    most: int | None,
    origin: Points,
) -> list[int]:
    """The paths in a better order: loops stand for their entries, open paths for both of their ends."""
    places: list[Points] = []
    owner: list[int] = []
    linked: list[int] = []
    for path in order:
        gate, at = gates[path], entry[path]
        if closed[path]:
            places.append(gate[at])
            linked.append(-1)
        else:
            linked += [len(owner) + 1, len(owner)]
            places += [gate[at], gate[1 - at]]
        owner += [path] * (len(places) - len(owner))
    spots, links = as_points(places), np.array(linked, dtype=np.intp)
    kicks = None if most is None else min(len(spots), most)
    found = steady_tour(spots, order=np.arange(len(spots)), kicks=kicks, linked=links)
    return list(dict.fromkeys(owner[int(k)] for k in _opened(spots, found, links, origin)))


def _opened(
    spots: Points, order: NDArray[np.intp], links: NDArray[np.intp], origin: Points
) -> NDArray[np.intp]:
    """A closed tour cut open where the way from the origin to its one end is shortest in return."""
    before = np.roll(order, 1)
    saved = np.hypot(*(spots[order] - spots[before]).T)
    to = np.hypot(*(spots - origin).T)
    forward, backward = to[order] - saved, to[before] - saved
    barred = links[before] == order
    forward[barred] = backward[barred] = np.inf
    one, other = int(np.argmin(forward)), int(np.argmin(backward))
    if len(order) < 3 or forward[one] <= backward[other]:
        return np.roll(order, -one)
    return np.roll(order, -other)[::-1]


def entered(path: Points, entry: int) -> Points:
    """The path as `order_paths` wants it cut: turned to its entry vertex, or reversed."""
    if is_closed(path):
        return as_points(np.vstack((path[entry:-1], path[: entry + 1])), path.shape[1])
    return as_points(path[::-1], path.shape[1]) if entry else path


def _entries(gates: list[Points], closed: list[bool], origin: Points) -> tuple[list[int], float]:
    """The gates that make the way through all paths in this order shortest (exact)."""
    cost = np.zeros(1)
    leave = origin[None, :]
    back: list[NDArray[np.intp]] = []
    for gate, ring in zip(gates, closed, strict=True):
        came, total = _cheapest(leave, cost, gate)
        back.append(came)
        cost, leave = total, gate if ring else gate[::-1]
    at = int(np.argmin(cost))
    travel = float(cost[at])
    chosen = []
    for came in reversed(back):
        chosen.append(at)
        at = int(came[at])
    return chosen[::-1], travel


def _cheapest(
    leave: Points, cost: NDArray[np.float64], gate: Points
) -> tuple[NDArray[np.intp], NDArray[np.float64]]:
    """For every gate the cheapest place to come from, and the cost so far."""
    if len(leave) <= LIKELY or len(leave) * len(gate) <= MOST_WAYS:
        way = cdist(gate, leave) + cost
        came = np.argmin(way, axis=1)
        return came, way[np.arange(len(gate)), came]
    likely = np.argsort(cost, kind="stable")[:LIKELY]
    near = cKDTree(leave).query(gate)[1]
    came, total = _cheapest(leave[likely], cost[likely], gate)
    direct = np.hypot(*(gate - leave[near]).T) + cost[near]
    better = direct < total
    return np.where(better, near, likely[came]), np.where(better, direct, total)
