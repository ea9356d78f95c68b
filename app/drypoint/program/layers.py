"""Paths cut deep: layer by layer, down along ramps, with tabs left standing.

A closed path is one long way: every layer ramps down from the one before and goes round; the last
ramp is cut again at full depth. An open path goes to and fro, descending all along it, and ends
with a pass along the floor.
"""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points, along, as_points, is_closed

Knot: TypeAlias = tuple[float, float]
"""Place along the way and depth there, mm."""

SHORTEST = 0.2
"""An open path shorter than this, mm, is plunged, not ramped."""


@dataclass(frozen=True, slots=True, eq=False)
class Descent:
    """A way down along a path: (N, 2) machine frame and (N,) depth below the copper, mm."""

    path: Points
    depth: NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Tabs:
    """Stretches of a path where the cut stays shallower.

    ``spans`` are (start, end) along the path, mm; ``depth`` is the deepest cut there.
    """

    spans: tuple[tuple[float, float], ...] = ()
    depth: float = math.inf

    def __contains__(self, place: float) -> bool:
        return any(start <= place <= end for start, end in self.spans)


def find_tabs(path: Points, middles: Points | None, width: float, depth: float) -> Tabs:
    """Tabs at the places of the path nearest to their ``middles``.

    ``width`` is the stretch over which the bit stays up (tab plus the bit's own diameter); a tab
    across the start of a closed path is split in two.
    """
    if middles is None or not len(middles):
        return Tabs()
    place = along(path)
    total = float(place[-1])
    spans: list[tuple[float, float]] = []
    start, way = path[:-1], np.diff(path, axis=0)
    square = np.maximum((way**2).sum(axis=1), 1e-18)
    for middle in middles:
        share = np.clip(((middle - start) * way).sum(axis=1) / square, 0.0, 1.0)
        off = ((start + share[:, None] * way - middle) ** 2).sum(axis=1)
        best = int(np.argmin(off))
        at = float(place[best] + share[best] * (place[best + 1] - place[best]))
        low, high = at - width / 2, at + width / 2
        spans.append((max(low, 0.0), min(high, total)))
        if is_closed(path):
            if low < 0:
                spans.append((low + total, total))
            if high > total:
                spans.append((0.0, high - total))
    return Tabs(tuple(spans), depth)


def descend(
    path: Points, depth: float, step: float, ramp_angle: float, overlap: float, tabs: Tabs
) -> Descent:
    """The whole way of one path from the copper's top to ``depth``.

    Parameters
    ----------
    step : deepest cut taken at once, mm; 0 is all at once, straight down
    ramp_angle : steepest way down, rad
    overlap : how far a closed path runs on at full depth past the end of its last ramp, mm
    """
    place = along(path)
    total = float(place[-1])
    closed = is_closed(path)
    if step <= 0 or (not closed and total < SHORTEST):
        knots = _plunged(total, depth, step, closed, overlap)
    elif closed:
        knots = _spiral(total, depth, step, ramp_angle, overlap)
    else:
        knots = _to_and_fro(total, depth, step, ramp_angle)
    lap = _Lap(place, total, closed, tabs)
    ways: list[Knot] = []
    for start, end in itertools.pairwise(knots):
        lap.stretch(ways, start, end)
    folded = [lap.fold(s) for s, _ in ways]
    xy = np.column_stack([np.interp(folded, place, path[:, axis]) for axis in (0, 1)])
    return Descent(as_points(xy), np.array([d for _, d in ways]))


def _plunged(total: float, depth: float, step: float, closed: bool, overlap: float) -> list[Knot]:
    """Straight down (in steps), then once along the path."""
    count = max(1, math.ceil(depth / step - 1e-9)) if step > 0 else 1
    knots: list[Knot] = []
    at, end = 0.0, total + (min(overlap, total) if closed else 0.0)
    for k in range(count):
        level = depth * (k + 1) / count
        knots.append((at, level))
        at = at + total if k < count - 1 else at + end
        knots.append((at, level))
    return knots


def _spiral(total: float, depth: float, step: float, angle: float, overlap: float) -> list[Knot]:
    layers = max(1, math.ceil(depth / step - 1e-9), math.ceil(depth / (total * math.tan(angle)) - 1e-9))
    drop = depth / layers
    ramp = min(total, drop / math.tan(angle))
    knots = [(0.0, 0.0)]
    for k in range(layers):
        knots.append((k * total + ramp, drop * (k + 1)))
        knots.append(((k + 1) * total, drop * (k + 1)))
    knots.append((layers * total + min(total, ramp + overlap), depth))
    return knots


def _to_and_fro(total: float, depth: float, step: float, angle: float) -> list[Knot]:
    # near an end the bit passes twice, then comes back two layers deeper: half a step for each
    layers = max(1, math.ceil(depth / min(step / 2, total * math.tan(angle)) - 1e-9))
    knots = [(k * total, depth * k / layers) for k in range(layers + 1)]
    knots.append(((layers + 1) * total, depth))
    return knots


@dataclass(frozen=True, slots=True, eq=False)
class _Lap:
    """A path gone along more than once: round and round if closed, else to and fro."""

    place: NDArray[np.float64]
    total: float
    closed: bool
    tabs: Tabs

    def fold(self, s: float) -> float:
        """Place on the path of a place on the way."""
        if self.closed:
            return s % self.total
        lap = s % (2 * self.total)
        return lap if lap <= self.total else 2 * self.total - lap

    def marks(self, s0: float, s1: float) -> set[float]:
        """Places on the way, between two, of the path's vertices and the ends of tabs."""
        found: set[float] = set()
        path = [*self.place.tolist(), *(edge for span in self.tabs.spans for edge in span)]
        for lap in range(int(s0 // self.total), int(s1 // self.total) + 1):
            backwards = not self.closed and lap % 2 == 1
            for mark in path:
                s = lap * self.total + (self.total - mark if backwards else mark)
                if s0 < s < s1:
                    found.add(s)
        return found

    def stretch(self, ways: list[Knot], start: Knot, end: Knot) -> None:
        """Add the vertices of one stretch of constant slope, its tabs kept up."""
        (s0, d0), (s1, d1) = start, end
        if s1 <= s0:  # straight down; what follows says whether a tab is in the way
            return
        stops = {s0, s1} | self.marks(s0, s1)
        if d0 < self.tabs.depth < d1:
            stops.add(s0 + (s1 - s0) * (self.tabs.depth - d0) / (d1 - d0))
        ordered = sorted(stops)
        for a, b in itertools.pairwise(ordered):
            up = self.fold((a + b) / 2) in self.tabs
            for s in (a, b):
                level = d0 + (d1 - d0) * (s - s0) / (s1 - s0)
                knot = (s, min(level, self.tabs.depth) if up else level)
                if not ways or ways[-1] != knot:
                    ways.append(knot)
