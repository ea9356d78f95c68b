"""Which net a hole belongs to, and whether holes and copper fit together."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import cKDTree
from shapely import Geometry, Point, STRtree

from drypoint.board.gerber import GerberLayer
from drypoint.board.model import Finding, Hole, Slot
from drypoint.geometry.points import Points

ON_PAD = 0.05
"""mm; a hole this near the middle of a flash or the end of a track counts as hitting it. Two
roundings of the coarsest format still in use (2.3 inch) stay below it."""
EDGE = 0.02
"""mm; copper this near a hole's wall touches it."""
PLATED_SHARE, UNKNOWN_SHARE = 0.8, 0.5
"""Share of holes on copper below which drill file and copper are said not to fit: holes stated as
plated, and holes of which that is not said (mounting holes may be among them)."""


def pad_hits(layers: Sequence[GerberLayer]) -> Callable[[Points], float] | None:
    """Evidence for drill files: the share of places on a pad or a track's end; None without any."""
    places: list[NDArray[np.float64]] = []
    for layer in layers:
        for item in layer.objects:
            if item.dark and item.kind == "flash":
                places.append(item.path)
            elif item.dark and item.kind in ("draw", "arc"):
                places.append(item.path[[0, -1]])
            elif item.dark and item.kind == "region":  # pads drawn as areas
                low, high = item.path.min(axis=0), item.path.max(axis=0)
                places.append(((low + high) / 2.0)[None, :])
    if not places:
        return None
    tree = cKDTree(np.unique(np.vstack(places), axis=0))

    def share(points: Points) -> float:
        distance, _ = tree.query(points, distance_upper_bound=ON_PAD)
        return float(np.isfinite(distance).mean()) if len(points) else 0.0

    return share


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
        self._tree = STRtree(self._parts)

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
        for hole, part in zip(*self._tree.query(list(shapes), predicate="intersects"), strict=True):
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
            what = f"A hole of {hole.diameter:.2f} mm meets copper of {' and '.join(nets)}."
            findings.append(Finding("hole", what, at=(hole.x, hole.y), nets=nets))
    named = [nets[0] if len(nets) == 1 else None for nets in found]
    new_holes = tuple(replace(h, net=n) for h, n in zip(holes, named, strict=False))
    new_slots = tuple(replace(s, net=n) for s, n in zip(slots, named[len(holes) :], strict=True))
    return new_holes, new_slots, findings


def fit_findings(
    holes: Sequence[Hole], nets: Mapping[str, Geometry], other: Mapping[str, Geometry], outline: Geometry
) -> list[Finding]:
    """Whether holes, copper and outline belong together."""
    findings = []
    for stated, least in ((True, PLATED_SHARE), (None, UNKNOWN_SHARE)):
        judged = [hole for hole in holes if hole.plated is stated]
        on_copper = sum(hole.net is not None for hole in judged)
        if len(judged) >= 3 and on_copper < least * len(judged):
            what = f"Only {on_copper} of {len(judged)} holes lie on copper: drill file and copper do not fit."
            hint = "Check that they are of one board, and the drill file's units."
            findings.append(Finding("misfit", what, hint=hint))
    room = shapely.buffer(outline, 0.2)
    shapely.prepare(room)
    for label, copper in (("milled side", nets), ("other side", other)):
        outside = [(n, shapely.difference(s, room)) for n, s in copper.items() if not shapely.covers(room, s)]
        area = sum(float(shapely.area(rest)) for _, rest in outside)
        if area > 0.5:
            point = shapely.get_coordinates(shapely.point_on_surface(outside[0][1]))[0]
            names = tuple(name for name, _ in outside)
            what = f"{area:.1f} mm² of copper on the {label} lie outside the outline."
            findings.append(Finding("misfit", what, at=(float(point[0]), float(point[1])), nets=names))
    out = [hole for hole in holes if not shapely.covers(room, Point(hole.x, hole.y))]
    if out:
        findings.append(
            Finding(
                "misfit",
                f"{len(out)} holes lie outside the outline or in a cut-out.",
                at=(out[0].x, out[0].y),
            )
        )
    return findings
