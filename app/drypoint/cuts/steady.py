"""Tours that are the same every time: improved for a counted number of steps, never by the clock.

Iterated local search: 2-opt and Or-opt moves over lists of near neighbours with a work list of
places whose surroundings changed (Bentley, "Fast algorithms for geometric traveling salesman
problems", ORSA J. Computing 4, 1992), then small double-bridge kicks that are undone where they
do not help (Johnson and McGeoch, "The traveling salesman problem: a case study in local
optimization", 1997).
"""

from __future__ import annotations

import random
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from scipy.spatial import cKDTree

from drypoint.geometry.points import Points

NEIGHBOURS = 8
KICKS_PER_PLACE = 5
MOST_KICKS = 2_500
"""Kicks tried on any set: about two seconds."""
REACH = 30
"""Places a kick spans at most."""
LONGEST_RUN = 3
"""Places that Or-opt carries at once."""
GAIN = 1e-9
"""mm. Smaller gains are rounding."""

Gain = tuple[float, tuple[int, ...]]
"""What a move saved, mm, and the places whose edges changed."""


def steady_tour(
    places: Points,
    *,
    order: Sequence[int] | NDArray[np.intp] | None = None,
    kicks: int | None = None,
    linked: NDArray[np.intp] | None = None,
) -> NDArray[np.intp]:
    """A short closed tour through (N, 2) places, the same for the same places.

    Parameters
    ----------
    order : (N,) indices, optional
        A tour to improve; else one along a space-filling curve.
    kicks : int, optional
        Number of kicks; `KICKS_PER_PLACE` for every place, at most `MOST_KICKS`, if not given.
    linked : (N,) indices, optional
        The place that each one must stay next to (the other end of a line), -1 for none; in ``order``
        they must be neighbours, not the first and the last.
    """
    count = len(places)
    first = sweep_order(places) if order is None else np.asarray(order, dtype=np.intp)
    if count < 4:
        return first
    search = _Search(places, [int(k) for k in first], linked)
    search.settle(list(range(count)))
    search.kick(min(KICKS_PER_PLACE * count, MOST_KICKS) if kicks is None else kicks)
    return np.array(search.order, dtype=np.intp)


def sweep_order(places: Points) -> NDArray[np.intp]:
    """Indices along a Hilbert curve over the places (Hilbert 1891, 2^10 cells a side)."""
    low = places.min(axis=0)
    cell = np.floor((places - low) / max(float(np.ptp(places, axis=0).max()), 1e-9) * 1023.0)
    x, y = cell[:, 0].astype(np.int64), cell[:, 1].astype(np.int64)
    key = np.zeros(len(places), dtype=np.int64)
    side = 512
    while side:
        right, up = (x & side) > 0, (y & side) > 0
        key += side * side * ((3 * right.astype(np.int64)) ^ up.astype(np.int64))
        flip = ~up & right
        x, y = np.where(flip, 1023 - x, x), np.where(flip, 1023 - y, y)
        x, y = np.where(up, x, y), np.where(up, y, x)
        side //= 2
    return np.argsort(key, kind="stable")


class _Search:
    """A tour, where each place stands in it, and the reversals done since the last mark."""

    def __init__(self, places: Points, order: list[int], linked: NDArray[np.intp] | None) -> None:
        count = len(order)
        self.order = order
        self.linked: list[int] = [-1] * count if linked is None else linked.tolist()
        self.at = [0] * count
        for place, city in enumerate(order):
            self.at[city] = place
        self.z: list[complex] = (places[:, 0] + 1j * places[:, 1]).tolist()
        found = cKDTree(places).query(places, k=min(NEIGHBOURS + 1, count))
        apart, near = np.asarray(found[0]), np.asarray(found[1])
        self.near: list[list[tuple[int, float]]] = [
            [(city, away) for city, away in zip(cities, ways, strict=True) if city != own]
            for own, (cities, ways) in enumerate(zip(near.tolist(), apart.tolist(), strict=True))
        ]
        self.turned: list[tuple[int, int]] = []

    def turn(self, start: int, stop: int) -> None:
        """Reverse ``start``..``stop`` of the tour (both included, past its end if need be).

        Where that is more than half of the tour, the other part is reversed, which is the same tour.
        """
        order, at, count = self.order, self.at, len(self.order)
        size = (stop - start) % count + 1
        if 2 * size > count:
            start, stop, size = (stop + 1) % count, (start - 1) % count, count - size
        self.turned.append((start, stop))
        if start <= stop:
            piece = order[start : stop + 1]
            piece.reverse()
            order[start : stop + 1] = piece
            for place, city in enumerate(piece, start):
                at[city] = place
            return
        for _ in range(size // 2):
            one, two = order[start], order[stop]
            order[start], order[stop] = two, one
            at[two], at[one] = start, stop
            start, stop = (start + 1) % count, (stop - 1) % count

    def exchange(self, a: int, b: int, c: int, d: int) -> None:
        """2-opt: the edges a-b and c-d, met in this order, become a-c and b-d."""
        if self.order[(self.at[a] + 1) % len(self.order)] == b:
            self.turn(self.at[b], self.at[c])
        else:
            self.turn(self.at[c], self.at[b])

    def carry(self, run: tuple[int, int, int, int], c: int, d: int, turned: bool) -> None:
        """Or-opt: the tour reads a, p..q, b, ..., c, d; the run p..q goes between c and d."""
        a, p, q, b = run
        self.exchange(a, p, c, d)
        self.exchange(a, c, b, q)
        if not turned:
            self.exchange(c, q, p, d)

    def settle(self, work: list[int]) -> float:
        """Improve round the given places until nothing is gained; returns the gain, mm."""
        waiting = set(work)
        gained = 0.0
        while work:
            city = work.pop()
            waiting.discard(city)
            found = self._two_opt(city) or self._or_opt(city)
            while found is not None:
                gained += found[0]
                fresh = [other for other in found[1] if other not in waiting and other != city]
                waiting.update(fresh)
                work.extend(dict.fromkeys(fresh))
                found = self._two_opt(city) or self._or_opt(city)
        return gained

    def _two_opt(self, a: int) -> Gain | None:
        order, at, z, linked, count = self.order, self.at, self.z, self.linked, len(self.order)
        for step in (1, -1):
            b = order[(at[a] + step) % count]
            if linked[a] == b:
                continue
            spare = abs(z[a] - z[b]) - GAIN
            for c, away in self.near[a]:
                if away >= spare:
                    break
                d = order[(at[c] + step) % count]
                if linked[c] == d:
                    continue
                gain = spare - away + abs(z[c] - z[d]) - abs(z[b] - z[d])
                if gain > 0.0:
                    self.exchange(a, b, c, d)
                    return gain + GAIN, (a, b, c, d)
        return None

    def _or_opt(self, p: int) -> Gain | None:
        order, at, z, linked, count = self.order, self.at, self.z, self.linked, len(self.order)
        here = at[p]
        for step in (1, -1):
            a = order[(here - step) % count]
            if linked[a] == p:
                continue
            for size in range(min(LONGEST_RUN, count - 3)):
                q, b = order[(here + step * size) % count], order[(here + step * (size + 1)) % count]
                if linked[q] == b:
                    continue
                spare = abs(z[a] - z[p]) + abs(z[q] - z[b]) - abs(z[a] - z[b]) - GAIN
                for other, away in self.near[p]:
                    if away >= spare:
                        break
                    place = at[other]
                    if ((place - here) * step) % count <= size:
                        continue
                    for turned in (True, False):
                        beside = order[(place - step if turned else place + step) % count]
                        if beside in (p, q) or linked[other] == beside:
                            continue
                        gain = spare - away + abs(z[other] - z[beside]) - abs(z[q] - z[beside])
                        if gain > 0.0:
                            c, d = (beside, other) if turned else (other, beside)
                            self.carry((a, p, q, b), c, d, turned)
                            return gain + GAIN, (a, b, p, q, c, d)
        return None

    def _free(self, place: int) -> int:
        """This place in the tour, or the next where the edge before it may be taken out."""
        order, count = self.order, len(self.order)
        return place + (self.linked[order[(place - 1) % count]] == order[place % count])

    def kick(self, times: int) -> None:
        """Exchange two neighbouring stretches, settle, and undo what did not help."""
        order, z, count = self.order, self.z, len(self.order)
        rng = random.Random(3)
        longest = min(REACH, (count - 4) // 2)
        for _ in range(times if longest > 0 else 0):
            start = self._free(rng.randrange(count))
            middle = self._free(start + rng.randint(1, longest))
            stop = self._free(middle + rng.randint(1, longest))
            a, p = order[(start - 1) % count], order[start % count]
            q, b = order[(middle - 1) % count], order[middle % count]
            c, d = order[(stop - 1) % count], order[stop % count]
            self.turned.clear()
            gain = abs(z[a] - z[p]) + abs(z[q] - z[b]) + abs(z[c] - z[d])
            gain -= abs(z[a] - z[b]) + abs(z[c] - z[p]) + abs(z[q] - z[d])
            self.carry((a, p, q, b), c, d, False)
            gain += self.settle([a, p, q, b, c, d])
            if gain < 0.0:
                for low, high in self.turned[::-1]:
                    self.turn(low, high)
