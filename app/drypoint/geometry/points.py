"""The one way arrays of points enter the program: checked, finite, float64 and read-only."""

from __future__ import annotations

from typing import TypeAlias

import numpy as np
from numpy.typing import ArrayLike, NDArray

Points: TypeAlias = NDArray[np.float64]
"""(N, 2) or (N, 3) float64, read-only."""


def as_points(values: ArrayLike, columns: int = 2) -> Points:
    """A read-only (N, columns) float64 array of ``values``.

    An empty input gives (0, columns).

    Raises
    ------
    ValueError
        If the shape is another or a value is not finite: a fault of the caller, not of a user.
    """
    array = np.array(values, dtype=np.float64)
    if array.size == 0:
        array = array.reshape(0, columns)
    if array.ndim != 2 or array.shape[1] != columns:
        raise ValueError(f"points must be (N, {columns}), not {array.shape}")
    if not np.isfinite(array).all():
        raise ValueError("points must be finite")
    array.flags.writeable = False
    return array


def length(path: Points) -> float:
    """Length of a polyline, mm, over all of its columns."""
    if len(path) < 2:
        return 0.0
    return float(np.sqrt((np.diff(path, axis=0) ** 2).sum(axis=1)).sum())


def along(path: Points) -> NDArray[np.float64]:
    """(N,) distance of every vertex from the start of the polyline, mm."""
    steps = np.sqrt((np.diff(path, axis=0) ** 2).sum(axis=1))
    return np.concatenate(([0.0], np.cumsum(steps)))


def is_closed(path: Points, tolerance: float = 1e-9) -> bool:
    """Whether a polyline ends where it starts (three vertices at least)."""
    return len(path) > 2 and bool(np.abs(path[0] - path[-1]).max() <= tolerance)


def resample(path: Points, pitch: float) -> Points:
    """The polyline with extra vertices so that no segment is longer than ``pitch`` mm.

    Every vertex of the path is kept.
    """
    if len(path) < 2:
        return as_points(path, path.shape[1])
    steps = np.sqrt((np.diff(path, axis=0) ** 2).sum(axis=1))
    counts = np.maximum(1, np.ceil(steps / pitch - 1e-9).astype(int))
    first = np.concatenate(([0], np.cumsum(counts)))
    index = np.repeat(np.arange(len(counts)), counts)
    share = (np.arange(first[-1]) - first[index]) / counts[index]
    inner = path[index] + share[:, None] * (path[index + 1] - path[index])
    return as_points(np.vstack((inner, path[-1:])), path.shape[1])


def stretch(path: Points, start: float, stop: float) -> Points:
    """The part of a path between two distances along it, mm; round the seam of a closed one."""
    place = along(path)
    total = float(place[-1])
    if is_closed(path) and (start < 0.0 or stop > total):
        path = as_points(np.vstack((path[:-1], path[:-1], path)), path.shape[1])
        place = along(path)
        start, stop = start + total, stop + total
    inner = (place > start + 1e-9) & (place < stop - 1e-9)
    ends = [[np.interp(at, place, path[:, axis]) for axis in range(path.shape[1])] for at in (start, stop)]
    return as_points(np.vstack((ends[0], path[inner], ends[1])), path.shape[1])
