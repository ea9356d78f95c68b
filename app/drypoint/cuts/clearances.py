"""How far apart copper of different nets really is after the cut, against what their voltage asks for.

Copper that belongs to no net stays standing between two grooves. It is a conductor: the distance that
insulates is the sum of the gaps on the way over such pieces, not the distance between the nets.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Mapping, Sequence

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry

from drypoint.cuts.islands import pieces
from drypoint.cuts.model import Flaw
from drypoint.cuts.parts import Shapes
from drypoint.geometry.points import Points
from drypoint.progress import Progress
from drypoint.wording import say

Wanted = Callable[[str, str], float]
"""Clearance (mm) that two nets must keep; 0 where none is asked for."""
SLACK = 1e-3
"""mm by which a clearance may be missed: the chords of arcs."""


def too_close(
    nets: Mapping[str, Geometry],
    lines: Sequence[Points],
    width: ArrayLike,
    window: Geometry,
    wanted: Wanted,
    *,
    live: Sequence[str],
    progress: Progress | None = None,
) -> tuple[Flaw, ...]:
    """Pairs of nets whose copper keeps less than ``wanted`` after cutting ``lines``, at the worst place.

    Parameters
    ----------
    width : float or (len(lines),) array
        Width that separates, at the copper's underside, mm.
    window : geometry
        The board, board frame: outside of it no copper stays.
    live : nets that carry a voltage; pairs without one of them are not looked at
    """
    copper = pieces(lines, width, window)
    if progress is not None:
        progress.step(0.5, "clearances")
    owners = _owners(nets, copper)
    reach = max((wanted(a, b) for a in live for b in nets if a != b), default=0.0)
    if reach <= 0.0 or not len(copper):
        return ()
    near = _Gaps(copper, owners, reach)
    found: dict[frozenset[str], Flaw] = {}
    for name in live:
        for other, (gap, at, over) in near.from_net(name).items():
            pair, asked = frozenset((name, other)), wanted(name, other)
            if gap < asked - SLACK and pair not in found:
                found[pair] = Flaw((name, other), at, _words(gap, asked, over))
    return tuple(found.values())


def _words(gap: float, asked: float, over: bool) -> str:
    if over:
        return say(
            "{gap:.2f} mm apart over copper without a net, {asked:.2f} mm are asked for. Take that copper "
            "away, or cut a wider moat.",
            gap=gap,
            asked=asked,
        )
    return say(
        "{gap:.2f} mm apart, {asked:.2f} mm are asked for by the voltage.",
        gap=gap,
        asked=asked,
    )


def _owners(nets: Mapping[str, Geometry], copper: Shapes) -> list[frozenset[str]]:
    """Nets whose copper lies in each piece; none for pieces that belong to nobody."""
    tree = shapely.STRtree(copper)
    found: list[set[str]] = [set() for _ in copper]
    for name, shape in nets.items():
        inside = shapely.buffer(shape, -SLACK)
        for index in tree.query(inside, predicate="intersects").tolist():
            found[index].add(name)
    return [frozenset(one) for one in found]


class _Gaps:
    """Pieces of copper and the gaps between those that lie near each other."""

    def __init__(self, copper: Shapes, owners: Sequence[frozenset[str]], reach: float) -> None:
        self._copper, self._owners, self._reach = copper, owners, reach
        tree = shapely.STRtree(copper)
        a, b = tree.query(copper, predicate="dwithin", distance=reach)
        keep = a < b
        first, second = a[keep], b[keep]
        gaps: NDArray[np.float64] = shapely.distance(copper[first], copper[second])
        self._near: list[list[tuple[int, float]]] = [[] for _ in copper]
        for one, other, gap in zip(first.tolist(), second.tolist(), gaps.tolist(), strict=True):
            self._near[one].append((other, gap))
            self._near[other].append((one, gap))

    def from_net(self, name: str) -> dict[str, tuple[float, tuple[float, float], bool]]:
        """Shortest sum of gaps from a net to every other within reach, its place, and whether it leads over
        copper without a net (shortest paths by Dijkstra's method)."""
        starts = [index for index, owner in enumerate(self._owners) if name in owner]
        best = dict.fromkeys(starts, 0.0)
        queue: list[tuple[float, int, int, int]] = [(0.0, start, -1, -1) for start in starts]
        seen: set[int] = set()
        found: dict[str, tuple[float, tuple[float, float], bool]] = {}
        while queue:
            far, index, left, entered = heapq.heappop(queue)
            if index in seen:
                continue
            seen.add(index)
            owner = self._owners[index]
            for other in owner - {name}:
                if other not in found:
                    found[other] = (far, self._place(left, entered, index), entered not in (-1, index))
            if owner and name not in owner:
                continue  # a net has a potential of its own: nothing is counted across it
            for following, gap in self._near[index]:
                total = far + gap
                if total <= self._reach and total < best.get(following, np.inf):
                    best[following] = total
                    from_, to = (index, following) if name in owner else (left, entered)
                    heapq.heappush(queue, (total, following, from_, to))
        return found

    def _place(self, left: int, entered: int, index: int) -> tuple[float, float]:
        """The middle of the first gap on the way."""
        if left < 0:
            spot = shapely.point_on_surface(self._copper[index])
            return float(spot.x), float(spot.y)
        way = shapely.shortest_line(self._copper[left], self._copper[entered])
        x, y = shapely.get_coordinates(way).mean(axis=0).tolist()
        return x, y
