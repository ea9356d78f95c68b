"""Centre lines chosen by the allowed bite, and what is said of the places they run through."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from drypoint.cuts.chains import join
from drypoint.cuts.gaps import CROWDED, OVERSHOOT, Ridges, sample_boundary, trace_ridges
from drypoint.cuts.joined import Joints
from drypoint.cuts.model import Narrow
from drypoint.cuts.parts import SLACK, Parts, Shapes, foreign_pairs
from drypoint.cuts.remaining import width_left
from drypoint.progress import Progress
from drypoint.wording import say

FINE = 0.1
"""mm between samples where a gap is narrower than that; else twice as much."""
LEAN = 2e-3
"""mm by which centre lines are simplified."""
WHOLE = 0.012
"""mm of every trace that stays whatever is allowed: a little more than what counts as a shaving."""


@dataclass(frozen=True, slots=True, eq=False)
class CentreLines:
    """Shared grooves: ``lines`` (N,), the net indices beside each, and the places found."""

    lines: Shapes
    pairs: NDArray[np.intp]
    solved: tuple[Narrow, ...]
    impossible: tuple[Narrow, ...]


def centre_lines(parts: Parts, width: float, bite: float, least: float, progress: Progress) -> CentreLines:
    """Grooves through the gaps that are narrower than ``width`` mm.

    None bites more than ``bite`` mm, or leaves less than ``least`` mm of a trace that it bites; none
    bites through one.
    """
    reach = width / 2.0 + OVERSHOOT
    close = foreign_pairs(parts, 2.0 * reach)
    empty = CentreLines(np.empty(0, dtype=object), np.empty((0, 2), np.intp), (), ())
    one, other = parts.shapes[close[:, 0]], parts.shapes[close[:, 1]]
    if not shapely.dwithin(one, other, width - SLACK).any():
        return empty
    chosen = np.unique(close)
    rings, index = shapely.get_rings(parts.shapes[chosen], return_index=True)
    pitch = _pitch(parts, close, width)
    progress.step(0.05, "narrow gaps")
    # a sample lies up to half the way to the next beside the nearest spot, so it is farther than the boundary
    apart = pitch * (1.0 + CROWDED)
    wide = float(np.hypot(reach, apart / 2.0))
    samples = sample_boundary(rings, chosen[index], parts.owner, pitch)
    ridges = trace_ridges(samples, wide, apart, progress)
    if len(ridges.edges) == 0:
        return empty
    progress.step(0.8, "narrow gaps")
    joints = Joints.of(parts, close)
    ridges = joints.without_gap(parts, ridges)
    clearance = ridges.edge_clearance()
    bad = clearance < width / 2.0 - bite - SLACK
    tight = clearance < width / 2.0 - SLACK
    least = max(least, WHOLE)  # a trace that is bitten through is no longer one
    left = width_left(parts, close, ridges, np.flatnonzero(tight & ~bad), width / 2.0, least)
    bad |= (left[ridges.edges] < least).any(axis=1)
    useful = _reaching(ridges, clearance < reach, clearance < width / 2.0 - SLACK / 2.0)
    cut = useful & ~bad
    lines, pairs = chain(ridges, np.flatnonzero(cut))
    solved = _places(parts, ridges, np.flatnonzero(~bad & tight), width)
    impossible = _places(parts, ridges, np.flatnonzero(bad), width, Limits(bite, least, left))
    return CentreLines(lines, pairs, solved, joints.named(parts, impossible, width))


def _pitch(parts: Parts, close: NDArray[np.intp], width: float) -> float:
    """Pitch of samples, mm: no more than twice the gaps, or about as fine as the finest wanted."""
    one, two = parts.shapes[close[:, 0]], parts.shapes[close[:, 1]]
    fine = min(FINE, width / 2.0)
    if bool(shapely.dwithin(one, two, fine).any()):
        return fine
    return min(2.0 * fine, width)


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
    if len(edges) == 0:
        return np.empty(0, dtype=object), np.empty((0, 2), np.intp)
    found = join(edges, len(ridges.nodes))
    lines = shapely.linestrings(ridges.nodes[found.node], indices=found.line)
    return np.asarray(shapely.simplify(np.asarray(lines), LEAN, preserve_topology=False)), ridges.pair[
        chosen[found.edge]
    ]


def _places(
    parts: Parts, ridges: Ridges, edges: NDArray[np.intp], width: float, limits: Limits | None = None
) -> tuple[Narrow, ...]:
    """Places along the edges, one for each pair of nets; not solved where ``limits`` are given."""
    if len(edges) == 0:
        return ()
    order, first = _groups(ridges, edges)
    ends = ridges.edges[edges[order]]
    size = np.hypot(*(ridges.nodes[ends[:, 1]] - ridges.nodes[ends[:, 0]]).T)
    away = ridges.clearance[ends]
    spot = ends[np.arange(len(ends)), np.argmin(away, axis=1)]
    group = np.repeat(np.arange(len(first)), np.diff(np.append(first, len(order))))
    worst = np.lexsort((away.min(axis=1), group))[first]
    pairs, nodes = ridges.pair[edges[order[first]]], spot[worst]
    kept = np.full(len(first), np.inf)
    if limits is not None:
        kept = np.minimum.reduceat(limits.left[ends].min(axis=1), first)
    found = []
    rows = zip(pairs.tolist(), nodes.tolist(), np.add.reduceat(size, first), kept, strict=True)
    for pair, node, along, left in rows:
        x, y = ridges.nodes[node].tolist()
        gap = 2.0 * float(ridges.clearance[node])
        names = (parts.names[pair[0]], parts.names[pair[1]])
        taken = max(0.0, (width - gap) / 2.0)
        hint, widest = ("", 0.0) if limits is None else limits.say(gap, width, float(left))
        found.append(Narrow(names, (x, y), gap, taken, float(along), limits is None, hint, widest))
    return tuple(found)


@dataclass(frozen=True, slots=True, eq=False)
class Limits:
    """What a cut may do to copper, mm: bite, least trace, and what is left at each node (K,)."""

    bite: float
    least: float
    left: NDArray[np.float64]

    def say(self, gap: float, width: float, left: float) -> tuple[str, float]:
        """In words what breaks the limits, and the widest cut that would not."""
        taken = (width - gap) / 2.0
        if not np.isfinite(left):
            widest = gap + 2.0 * self.bite
            return say(
                "A cut of {widest:.3f} mm or less would do, or a bite of {taken:.3f} mm.",
                widest=widest,
                taken=taken,
            ), widest
        widest = gap + 2.0 * max(0.0, min(self.bite, taken - (self.least - left)))
        return (
            say(
                "This cut would leave {left:.3f} mm of a trace; {least:.3f} mm is the least "
                "allowed. A cut of {widest:.3f} mm or less would do.",
                left=max(left, 0.0),
                least=self.least,
                widest=widest,
            )
        ), widest


def _groups(ridges: Ridges, edges: NDArray[np.intp]) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Order of the edges by connected place and pair of nets, and where each group starts in it."""
    ends = ridges.edges[edges]
    size = len(ridges.nodes)
    graph = coo_matrix((np.ones(len(ends)), (ends[:, 0], ends[:, 1])), shape=(size, size))
    label = connected_components(graph, directed=False)[1][ends[:, 0]]
    pair = ridges.pair[edges]
    order = np.lexsort((label, pair[:, 1], pair[:, 0]))
    key = np.column_stack((pair, label))[order]
    new = np.concatenate(([True], (key[1:] != key[:-1]).any(axis=1)))
    return order, np.flatnonzero(new)
