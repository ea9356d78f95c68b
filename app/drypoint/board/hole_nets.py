"""Which net a hole belongs to; and pads as evidence for what drill files leave unsaid."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import cKDTree
from shapely import Geometry, Point

from drypoint.board.gerber import GerberLayer
from drypoint.board.meeting import meeting
from drypoint.board.model import Finding, Hole, Slot
from drypoint.geometry.points import Points
from drypoint.wording import say

ON_PAD = 0.05
"""mm; a hole this near the middle of a flash or the end of a track counts as hitting it. Two
roundings of the coarsest format still in use (2.3 inch) stay below it."""
EDGE = 0.02
"""mm; copper this near a hole's wall touches it."""


def pad_hits(layers: Sequence[GerberLayer]) -> Callable[[Points], float] | None:
    """Evidence for drill files: the share of places on a pad or a track's end; None without layers.

    Pads are gathered when they are first asked for: most drill files say all there is to say.
    """
    if not layers:
        return None
    trees: list[cKDTree] = []

    def share(points: Points) -> float:
        if not trees:
            trees.append(cKDTree(_pads(layers)))
        distance, _ = trees[0].query(points, distance_upper_bound=ON_PAD)
        return float(np.isfinite(distance).mean()) if len(points) else 0.0

    return share


def _pads(layers: Sequence[GerberLayer]) -> NDArray[np.float64]:
    """(N, 2) middles of pads and ends of tracks."""
    places: list[NDArray[np.float64]] = [np.empty((0, 2))]
    for layer in layers:
        for item in layer.objects:
            if item.dark and item.kind == "flash":
                places.append(item.path)
            elif item.dark and item.kind in ("draw", "arc"):
                places.append(item.path[[0, -1]])
            elif item.dark and item.kind == "region":  # pads drawn as areas
                low, high = item.path.min(axis=0), item.path.max(axis=0)
                places.append(((low + high) / 2.0)[None, :])
    return np.unique(np.vstack(places), axis=0)


class NetFinder:
    """Nets by place, the milled side first."""

    def __init__(self, nets: Mapping[str, Geometry], other: Mapping[str, Geometry]) -> None:
        self._names: list[str] = []
        self._parts: list[Geometry] = []
        self._near: list[bool] = []
        for near, source in ((True, nets), (False, other)):
            for name, shape in source.items():
                parts = list(shapely.get_parts(shape))
                self._parts += parts
                self._names += [name] * len(parts)
                self._near += [near] * len(parts)

    def nets_at(self, discs: Sequence[Geometry], middles: Sequence[Geometry]) -> list[tuple[str, ...]]:
        """Per hole the nets whose copper it meets: those round its middle if any, else all it touches;
        of the milled side if there are any, else of the other."""
        if not discs or not self._parts:
            return [()] * len(discs)
        inside = self._by_hole(middles, len(discs))
        touched = self._by_hole(discs, len(discs))
        return [self._choose(a) or self._choose(b) for a, b in zip(inside, touched, strict=True)]

    def _by_hole(self, shapes: Sequence[Geometry], count: int) -> list[list[int]]:
        out: list[list[int]] = [[] for _ in range(count)]
        for hole, part in zip(*meeting(shapes, self._parts), strict=True):
            out[hole].append(int(part))
        return out

    def _choose(self, parts: list[int]) -> tuple[str, ...]:
        near = [self._names[k] for k in parts if self._near[k]]
        return tuple(dict.fromkeys(near or [self._names[k] for k in parts]))


def with_nets(
    holes: Sequence[Hole], slots: Sequence[Slot], finder: NetFinder
) -> tuple[tuple[Hole, ...], tuple[Slot, ...], list[Finding]]:
    """Holes and slots with their nets, and the holes that cut into two."""
    middles = [Point(h.x, h.y) for h in holes]
    discs = [m.buffer(h.diameter / 2 + EDGE) for m, h in zip(middles, holes, strict=True)]
    paths = [shapely.LineString(s.path) for s in slots]
    areas = [p.buffer(s.diameter / 2 + EDGE) for p, s in zip(paths, slots, strict=True)]
    found = finder.nets_at([*discs, *areas], [*middles, *paths])
    findings = []
    for hole, nets in zip(holes, found, strict=False):
        if len(nets) > 1:
            what = say(
                "A hole of {diameter:.2f} mm meets copper of {nets}.",
                diameter=hole.diameter,
                nets=" and ".join(nets),
            )
            findings.append(Finding("hole", what, at=(hole.x, hole.y), nets=nets))
    named = [nets[0] if len(nets) == 1 else None for nets in found]
    new_holes = tuple(replace(h, net=n) for h, n in zip(holes, named, strict=False))
    new_slots = tuple(replace(s, net=n) for s, n in zip(slots, named[len(holes) :], strict=True))
    return new_holes, new_slots, findings
