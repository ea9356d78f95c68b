"""Spots: groove lines sampled at an even pitch, and how deep the passes planned to go at each."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.spatial import cKDTree

from drypoint.geometry.points import Points, as_points, resample
from drypoint.passes.model import Pass, Run

CANDIDATES = 8
"""Marks of a run looked at for each spot: a loop may come close to itself where its vertices are dense."""
ON_LINE = 1e-3
"""mm; a run's vertex nearer than this to its groove line lies on it."""


class FitLike(Protocol):
    """Anything that maps the board frame to the machine frame."""

    def apply(self, points: ArrayLike) -> Points:
        """(N, 2) mapped."""
        ...


class HeightSpread(Protocol):
    """What the passes need of a surface, machine frame."""

    def mean(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N,) heights, mm."""
        ...

    def std(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N,) spreads, mm."""
        ...


@dataclass(frozen=True, slots=True, eq=False)
class Spots:
    """Spots of several lines in one array.

    Attributes
    ----------
    points : (N, 2) board frame
    first : (L + 1,) index of each line's first spot; the last entry is N
    """

    points: Points
    first: NDArray[np.int64]

    @classmethod
    def on(cls, lines: Sequence[Points], pitch: float) -> Spots:
        """Spots on ``lines`` no further apart than ``pitch`` mm; vertices are kept."""
        parts = [resample(np.asarray(line)[:, :2], pitch) for line in lines]
        first = np.concatenate(([0], np.cumsum([len(p) for p in parts]))).astype(np.int64)
        return cls(as_points(np.vstack(parts) if parts else [], 2), first)

    def __len__(self) -> int:
        return len(self.points)

    def split(self, values: NDArray[np.float64]) -> tuple[NDArray[np.float64], ...]:
        """Values (N, …) per line."""
        return tuple(np.split(values, self.first[1:-1])) if len(self.first) > 1 else ()

    def share(self) -> NDArray[np.float64]:
        """(N,) length of groove each spot stands for, mm."""
        result = np.zeros(len(self.points))
        if len(self.points) < 2:
            return result
        steps = np.sqrt((np.diff(self.points, axis=0) ** 2).sum(axis=1))
        steps[self.first[1:-1][self.first[1:-1] < len(self.points)] - 1] = 0.0
        result[:-1] += 0.5 * steps
        result[1:] += 0.5 * steps
        return result


def planned_depths(spots: Spots, passes: Sequence[Pass]) -> NDArray[np.float64]:
    """(P, N) planned depth of each pass at each spot, mm; −inf where it does not go.

    A spot belongs to a run of its own groove; the depth is read along the run.
    """
    depths = np.full((len(passes), len(spots)), -np.inf)
    for row, one in zip(depths, passes, strict=True):
        by_groove: dict[int, list[Run]] = {}
        for run in one.runs:
            by_groove.setdefault(run.groove, []).append(run)
        for groove, runs in by_groove.items():
            if not 0 <= groove < len(spots.first) - 1:
                continue
            part = slice(int(spots.first[groove]), int(spots.first[groove + 1]))
            for run in runs:
                np.maximum(row[part], depth_along(run, spots.points[part]), out=row[part])
    return depths


def depth_along(run: Run, points: Points) -> NDArray[np.float64]:
    """(N,) depth of a run at ``points``, read from its nearest segment; −inf away from it."""
    path = np.asarray(run.path)
    if len(path) == len(points) and np.array_equal(path, points):
        return np.array(run.depth, dtype=np.float64)
    result = np.full(len(points), -np.inf)
    if len(path) < 2:
        if len(path):
            close = ((points - path[0]) ** 2).sum(axis=1) <= ON_LINE**2
            result[close] = run.depth[0]
        return result
    start, step = path[:-1], np.diff(path, axis=0)
    size2 = np.maximum((step * step).sum(axis=1), 1e-18)
    # candidates: the segments at the nearest of densely laid marks of the run
    marks = np.concatenate(([0.0], np.cumsum(np.sqrt(size2))))
    laid = np.linspace(0.0, marks[-1], max(2, int(np.ceil(marks[-1] / 0.25)) + 1))
    laid = np.union1d(laid, marks)
    segment = np.clip(np.searchsorted(marks, laid, side="right") - 1, 0, len(step) - 1)
    places = start[segment] + step[segment] * ((laid - marks[segment]) / np.sqrt(size2[segment]))[:, None]
    _, near = cKDTree(places).query(points, k=min(CANDIDATES, len(places)), distance_upper_bound=0.5)
    near = near.reshape(len(points), -1)
    for column in near.T:
        found = column < len(places)
        for shift in (-1, 0):
            chosen = np.clip(segment[np.minimum(column, len(places) - 1)] + shift, 0, len(step) - 1)
            t = ((points - start[chosen]) * step[chosen]).sum(axis=1) / size2[chosen]
            t = np.clip(t, 0.0, 1.0)
            gap2 = ((start[chosen] + t[:, None] * step[chosen] - points) ** 2).sum(axis=1)
            here = found & (gap2 <= ON_LINE**2)
            depth = run.depth[chosen] + t * (run.depth[chosen + 1] - run.depth[chosen])
            result = np.where(here, np.maximum(result, depth), result)
    return result


def run_on(groove: int, path: Points, depth: NDArray[np.float64]) -> Run:
    """A run with read-only arrays."""
    kept = np.array(depth, dtype=np.float64)
    kept.flags.writeable = False
    return Run(groove, as_points(path, 2), kept)
