"""The board's edge: lines and arcs of the outline layer joined into closed loops.

The largest loop is the edge, loops inside it are cut-outs. Ends that nearly meet are joined; what
is guessed on the way is a finding.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components
from scipy.spatial import cKDTree
from shapely import Geometry, LineString, Polygon

from drypoint.board.gerber import GerberLayer
from drypoint.board.model import Finding
from drypoint.wording import say

SNAP = 0.02
"""mm; ends nearer than this are the same point (coarsest formats still in use: 2.3 inch)."""
JOIN = 1.0
"""mm; wider gaps in an outline are not closed."""
MAX_CHAINS = 60
"""Open chains; a layer with more is a drawing, not an outline."""
MARGIN = 1.0
"""mm of board left round the copper where no outline is given."""
SMALLEST_AREA = 1.0
"""mm²; a loop smaller than this is no board."""
_PLAIN_DIMENSIONS = re.compile(r"G0?4 PCB-Dimensions \(mil\):\s*([\d.]+)\s+([\d.]+)\s*\*")
_MIL = 0.0254


@dataclass(frozen=True, slots=True, eq=False)
class Outline:
    """The edge in the design's coordinates and what was odd about it."""

    polygon: Polygon
    findings: tuple[Finding, ...] = ()


def outline_of(layer: GerberLayer) -> Outline | None:
    """The outline a layer draws, by the centre lines of its strokes; None if nothing closes."""
    strokes, areas = _strokes(layer)
    findings: list[Finding] = []
    loops = [*areas, *_loops(strokes, layer.name, findings)]
    loops = [loop for loop in loops if loop.area >= SMALLEST_AREA]
    if not loops:
        return None
    polygon, more = _nest(loops, layer.name)
    return Outline(polygon, (*findings, *more))


def loose_end(layer: GerberLayer) -> tuple[float, float] | None:
    """Where an outline that does not close breaks off: an end of its longest chain, design coordinates."""
    strokes = _distinct([stroke for stroke in _strokes(layer)[0] if _extent(stroke) > SNAP / 2])
    chains = _chain(_snapped(strokes))[1] if strokes else []
    if not chains:
        return None
    end = max(chains, key=_extent)[-1]
    return float(end[0]), float(end[1])


def _strokes(layer: GerberLayer) -> tuple[list[NDArray[np.float64]], list[Polygon]]:
    strokes, areas = [], []
    for item in layer.objects:
        if not item.dark:
            continue
        if item.kind in ("draw", "arc") and len(item.path) > 1:
            strokes.append(np.asarray(item.path))
        elif item.kind == "region":
            areas += [part for part in shapely.get_parts(item.shape) if isinstance(part, Polygon)]
    return strokes, areas


def _loops(strokes: Sequence[NDArray[np.float64]], name: str, findings: list[Finding]) -> list[Polygon]:
    strokes = _distinct([s for s in strokes if _extent(s) > SNAP / 2 or _closed(s)])
    if not strokes:
        return []
    loops, chains = _chain(_snapped(strokes))
    loops += _close(chains, name, findings)
    polygons = [Polygon(loop) for loop in loops if len(loop) > 3]
    good = [p for p in polygons if p.is_valid and p.area > 0.0]
    if len(good) < len(polygons) or (chains and not good):
        good += _faces([LineString(s) for s in strokes if len(s) > 1])
    return good


def _extent(stroke: NDArray[np.float64]) -> float:
    return float(np.ptp(stroke, axis=0).max())


def _closed(stroke: NDArray[np.float64]) -> bool:
    return len(stroke) > 3 and math.dist(stroke[0], stroke[-1]) <= SNAP


def _distinct(strokes: Iterable[NDArray[np.float64]]) -> list[NDArray[np.float64]]:
    """Every stroke once, whichever way it was drawn."""
    seen: dict[tuple[object, ...], NDArray[np.float64]] = {}
    for stroke in strokes:
        ends = [tuple(np.round(stroke[k], 4).tolist()) for k in (0, -1)]
        middle = tuple(np.round(stroke[len(stroke) // 2] + stroke[(len(stroke) - 1) // 2], 3).tolist())
        seen.setdefault((*sorted(ends), middle), stroke)
    return list(seen.values())


def _snapped(strokes: list[NDArray[np.float64]]) -> list[NDArray[np.float64]]:
    """Ends that lie together moved onto one point."""
    ends = np.array([stroke[k] for stroke in strokes for k in (0, -1)])
    places, which = np.unique(ends, axis=0, return_inverse=True)
    pairs = cKDTree(places).query_pairs(SNAP, output_type="ndarray")
    graph = coo_array((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(len(places), len(places)))
    _, group = connected_components(graph, directed=False)
    _, first = np.unique(group, return_index=True)
    ends = places[first[group[which.ravel()]]]
    out = []
    for index, stroke in enumerate(strokes):
        moved = stroke.copy()
        moved[0], moved[-1] = ends[2 * index], ends[2 * index + 1]
        if _extent(moved) > 0.0:
            out.append(moved)
    return out


def _chain(
    strokes: list[NDArray[np.float64]],
) -> tuple[list[NDArray[np.float64]], list[NDArray[np.float64]]]:
    """Closed loops and open chains; at a fork the chain goes on as straight as it can."""
    at: dict[tuple[float, float], list[int]] = {}
    for index, stroke in enumerate(strokes):
        for k in (0, -1):
            at.setdefault((float(stroke[k][0]), float(stroke[k][1])), []).append(index)
    unused = set(range(len(strokes)))
    loops: list[NDArray[np.float64]] = []
    chains: list[NDArray[np.float64]] = []
    # open chains first, from their loose ends, so that loops are not cut open by them
    loose = [entries[0] for entries in at.values() if len(entries) == 1]
    for start in (*loose, *range(len(strokes))):
        if start not in unused:
            continue
        unused.discard(start)
        path = strokes[start]
        if len(at[_key(path[0])]) > 1 and len(at[_key(path[-1])]) == 1:
            path = path[::-1]  # begin at the loose end
        while _key(path[0]) != _key(path[-1]):
            following = [i for i in at[_key(path[-1])] if i in unused]
            if not following:
                break
            best = min(following, key=lambda i: _bend(path, strokes[i]))
            unused.discard(best)
            path = np.vstack((path, _from(strokes[best], path[-1])[1:]))
        (loops if _key(path[0]) == _key(path[-1]) else chains).append(path)
    return loops, chains


def _key(point: NDArray[np.float64]) -> tuple[float, float]:
    return float(point[0]), float(point[1])


def _from(stroke: NDArray[np.float64], point: NDArray[np.float64]) -> NDArray[np.float64]:
    return stroke if _key(stroke[0]) == _key(point) else stroke[::-1]


def _bend(path: NDArray[np.float64], stroke: NDArray[np.float64]) -> float:
    ahead = _from(stroke, path[-1])
    u, v = path[-1] - path[-2], ahead[1] - ahead[0]
    return abs(math.atan2(u[0] * v[1] - u[1] * v[0], float(u @ v)))


def _close(
    chains: list[NDArray[np.float64]], name: str, findings: list[Finding]
) -> list[NDArray[np.float64]]:
    """Chains joined over small gaps, nearest ends first; those that still do not close are left."""
    chains = list(chains) if len(chains) <= MAX_CHAINS else []
    loops = []
    while chains:
        gap, a, b, flip_a, flip_b = min(_gaps(chains))
        if gap > JOIN:
            break
        first = chains[a][::-1] if flip_a else chains[a]
        second = chains[b][::-1] if flip_b else chains[b]
        at = (float(first[-1][0]), float(first[-1][1]))
        findings.append(
            Finding(
                "outline gap",
                say("The outline had a gap of {gap:.2f} mm, closed straight.", gap=gap),
                name,
                at=at,
            )
        )
        if a == b:
            loops.append(np.vstack((first, first[:1])))
            del chains[a]
        else:
            chains[a] = np.vstack((first, second))
            del chains[b]
    return loops


def _gaps(chains: list[NDArray[np.float64]]) -> list[tuple[float, int, int, bool, bool]]:
    """Gap, the two chains, and whether each is turned round so that first's end meets second's start."""
    out = []
    for a, first in enumerate(chains):
        out.append((math.dist(first[0], first[-1]), a, a, False, False))
        for b in range(a + 1, len(chains)):
            for flip_a in (False, True):
                for flip_b in (False, True):
                    end = first[0] if flip_a else first[-1]
                    start = chains[b][-1] if flip_b else chains[b][0]
                    out.append((math.dist(end, start), a, b, flip_a, flip_b))
    return out


def _faces(lines: list[LineString]) -> list[Polygon]:
    """Areas enclosed by lines that cross: their outer edge counts."""
    faces = shapely.polygonize([shapely.union_all(lines)])
    merged = shapely.union_all(list(faces.geoms)) if len(faces.geoms) else Polygon()
    parts = [part for part in shapely.get_parts(merged) if isinstance(part, Polygon)]
    return [Polygon(part.exterior) for part in parts]


def _nest(loops: list[Polygon], name: str) -> tuple[Polygon, list[Finding]]:
    loops = sorted(loops, key=lambda loop: -loop.area)
    edge, findings = loops[0], []
    holes: list[Geometry] = []
    for loop in loops[1:]:
        inner = loop.representative_point()
        if not edge.contains(inner):
            at = (inner.x, inner.y)
            findings.append(
                Finding("second outline", "Another closed shape lies outside the outline.", name, at=at)
            )
        elif not any(shapely.contains(hole, inner) for hole in holes):
            holes.append(loop)
    board = edge.difference(shapely.union_all(holes)) if holes else edge
    parts = [part for part in shapely.get_parts(board) if isinstance(part, Polygon)]
    return max(parts, key=lambda part: part.area), findings


def hull_outline(shapes: Sequence[Geometry], margin: float = MARGIN) -> Polygon | None:
    """The rectangle round the copper with a margin; None without copper."""
    boxes = [shapely.bounds(shape) for shape in shapes if not shapely.is_empty(shape)]
    if not boxes:
        return None
    low = np.min(np.array(boxes)[:, :2], axis=0) - margin
    high = np.max(np.array(boxes)[:, 2:], axis=0) + margin
    return shapely.box(float(low[0]), float(low[1]), float(high[0]), float(high[1]))


def stated_outline(text: str) -> Polygon | None:
    """The rectangle that a copper layer's own comment states, its lower left at the file's zero."""
    match = _PLAIN_DIMENSIONS.search(text[:4000])
    if match is None or "PCB-Coordinate-Origin: lower left" not in text[:4000]:
        return None
    width, height = float(match[1]) * _MIL, float(match[2]) * _MIL
    if not (1.0 <= width <= 2000.0 and 1.0 <= height <= 2000.0):
        return None
    return Polygon([(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)])
