"""Centre lines chosen by the allowed bite, and what is said of the places they run through."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from drypoint.cuts.gaps import OVERSHOOT, Ridges, sample_boundary, trace_ridges
from drypoint.cuts.model import Narrow
from drypoint.cuts.parts import SLACK, Parts, Shapes, foreign_pairs
from drypoint.progress import Progress

LEAN = 2e-3
"""mm by which centre lines are simplified."""


@dataclass(frozen=True, slots=True, eq=False)
class CentreLines:
    """Shared grooves: ``lines`` (N,), the net indices beside each, and the places found."""

    lines: Shapes
    pairs: NDArray[np.intp]
    solved: tuple[Narrow, ...]
    impossible: tuple[Narrow, ...]


def centre_lines(parts: Parts, width: float, bite: float, progress: Progress) -> CentreLines:
    """Grooves through the gaps that are narrower than ``width`` mm."""
    reach = width / 2.0 + OVERSHOOT
    close = foreign_pairs(parts, 2.0 * reach)
    empty = CentreLines(np.empty(0, dtype=object), np.empty((0, 2), np.intp), (), ())
    if len(close) == 0:
        return empty
    chosen = np.unique(close)
    rings, index = shapely.get_rings(parts.shapes[chosen], return_index=True)
    pitch = min(0.1, width / 2.0)
    progress.step(0.05, "narrow gaps")
    # a sample lies up to half a pitch beside the nearest spot, so it is farther than the boundary
    wide = float(np.hypot(reach, pitch / 2.0))
    ridges = trace_ridges(sample_boundary(rings, parts.owner[chosen][index], pitch), wide, progress)
    if len(ridges.edges) == 0:
        return empty
    progress.step(0.8, "narrow gaps")
    clearance = ridges.edge_clearance()
    bad = clearance < width / 2.0 - bite - SLACK
    tight = clearance < width / 2.0 - SLACK
    useful = _reaching(ridges, clearance < reach, clearance < width / 2.0 - SLACK / 2.0)
    lines, pairs = chain(ridges, np.flatnonzero(useful & ~bad))
    solved = _by_pair(parts, ridges, np.flatnonzero(~bad & tight), width)
    impossible = _by_place(parts, ridges, np.flatnonzero(bad), width, bite)
    return CentreLines(lines, pairs, solved, impossible)


def _reaching(ridges: Ridges, near: NDArray[np.bool_], tight: NDArray[np.bool_]) -> NDArray[np.bool_]:
    """Edges of ``near`` that are connected to one of ``tight``: elsewhere the loops do the work."""
    ends = ridges.edges[near]
    size = len(ridges.nodes)
    graph = coo_matrix((np.ones(len(ends)), (ends[:, 0], ends[:, 1])), shape=(size, size))
    count, label = connected_components(graph, directed=False)
    needed = np.zeros(count, dtype=bool)
    needed[label[ridges.edges[tight & near, 0]]] = True
    return np.asarray(near & needed[label[ridges.edges[:, 0]]])


def chain(ridges: Ridges, chosen: NDArray[np.intp]) -> tuple[Shapes, NDArray[np.intp]]:
    """Edges joined end to end into lines, and the nets beside each line."""
    if len(chosen) == 0:
        return np.empty(0, dtype=object), np.empty((0, 2), np.intp)
    edges = ridges.edges[chosen]
    moved = (ridges.nodes[edges[:, 0]] != ridges.nodes[edges[:, 1]]).any(axis=1)
    edges, chosen = edges[moved], chosen[moved]
    segments = shapely.linestrings(ridges.nodes[edges])
    merged = shapely.get_parts(shapely.line_merge(shapely.multilinestrings(segments)))
    points, index = shapely.get_coordinates(merged, return_index=True)
    first = np.searchsorted(index, np.arange(len(merged)))
    middles = (points[first] + points[first + 1]) / 2.0
    ends = ridges.nodes[edges]
    key = (ends[:, 0] + ends[:, 1]) / 2.0
    order = np.lexsort((key[:, 1], key[:, 0]))
    code = key[order, 0] + 1j * key[order, 1]
    found = np.searchsorted(code, middles[:, 0] + 1j * middles[:, 1])
    pairs = ridges.pair[chosen[order[np.minimum(found, len(order) - 1)]]]
    return np.asarray(shapely.simplify(merged, LEAN)), pairs


def _narrow(
    parts: Parts, ridges: Ridges, edges: NDArray[np.intp], width: float, solved: bool, hint: str = ""
) -> Narrow:
    ends = ridges.edges[edges].reshape(-1)
    worst = ends[np.argmin(ridges.clearance[ends])]
    clearance = float(ridges.clearance[worst])
    one, two = (parts.names[net] for net in ridges.pair[edges[0]])
    return Narrow(
        nets=(one, two),
        at=(float(ridges.nodes[worst, 0]), float(ridges.nodes[worst, 1])),
        gap=2.0 * clearance,
        bite=max(0.0, width / 2.0 - clearance),
        length=float(np.hypot(*(ridges.nodes[ends[1::2]] - ridges.nodes[ends[::2]]).T).sum()),
        solved=solved,
        hint=hint,
    )


def _by_pair(parts: Parts, ridges: Ridges, edges: NDArray[np.intp], width: float) -> tuple[Narrow, ...]:
    return tuple(_narrow(parts, ridges, group, width, True) for group in _groups(ridges, edges))


def _by_place(
    parts: Parts, ridges: Ridges, edges: NDArray[np.intp], width: float, bite: float
) -> tuple[Narrow, ...]:
    found = []
    for group in _groups(ridges, edges):
        gap = 2.0 * float(ridges.clearance[ridges.edges[group]].min())
        widest = gap + 2.0 * bite
        hint = f"A cut of {widest:.3f} mm or less would do, or a bite of {(width - gap) / 2.0:.3f} mm."
        found.append(_narrow(parts, ridges, group, width, False, hint))
    return tuple(found)


def _groups(ridges: Ridges, edges: NDArray[np.intp]) -> list[NDArray[np.intp]]:
    """Edges grouped by connected place and pair of nets, in a stable order."""
    if len(edges) == 0:
        return []
    ends = ridges.edges[edges]
    size = len(ridges.nodes)
    graph = coo_matrix((np.ones(len(ends)), (ends[:, 0], ends[:, 1])), shape=(size, size))
    _, label = connected_components(graph, directed=False)
    key = np.column_stack((ridges.pair[edges], label[ends[:, 0]]))
    _, inverse = np.unique(key, axis=0, return_inverse=True)
    inverse = inverse.reshape(-1)
    order = np.argsort(inverse, kind="stable")
    cuts = np.flatnonzero(np.diff(inverse[order])) + 1
    return list(np.split(edges[order], cuts))
