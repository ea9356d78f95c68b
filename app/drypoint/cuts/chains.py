"""Edges joined end to end, with arrays only."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True, slots=True, eq=False)
class Chains:
    """Lines as runs of nodes.

    ``node`` (K,) node indices of all lines one after the other; ``line`` (K,) the line of each;
    ``edge`` (L,) an edge of each line.
    """

    node: NDArray[np.intp]
    line: NDArray[np.intp]
    edge: NDArray[np.intp]


def join(edges: NDArray[np.intp], count: int) -> Chains:
    """Edges (E, 2) between ``count`` nodes joined into lines wherever just two meet.

    Every line runs between nodes where one, three or more edges meet, or is closed. Order and
    direction follow from the numbers of the edges alone.
    """
    size = len(edges)
    tail = np.concatenate((edges[:, 0], edges[:, 1]))  # half-edge h runs from tail[h] to head[h]
    head = np.concatenate((edges[:, 1], edges[:, 0]))
    twin = np.concatenate((np.arange(size, 2 * size), np.arange(size)))
    degree = np.bincount(tail, minlength=count)
    before = _before(tail, head, twin, degree)
    first, steps = _ranks(before)
    loose = first < 0
    if loose.any():  # closed lines: opened at their lowest half-edge
        before[_lowest(before, loose)] = -1
        first, steps = _ranks(before)
    # of a line and the same line backwards, the one that starts with the lower half-edge
    last = np.full(2 * size, -1, dtype=np.intp)
    order = np.lexsort((steps, first))
    last[first[order]] = order
    wanted = first <= twin[last[first]]
    kept = order[wanted[order]]
    starts = np.flatnonzero(steps[kept] == 0)
    line = np.cumsum(steps[kept] == 0) - 1
    node = np.insert(head[kept], starts, tail[kept[starts]])
    return Chains(node, np.insert(line, starts, line[starts]), kept[starts] % size)


def _before(
    tail: NDArray[np.intp], head: NDArray[np.intp], twin: NDArray[np.intp], degree: NDArray[np.intp]
) -> NDArray[np.intp]:
    """(2E,) half-edge that each one continues; -1 where a line starts."""
    through = degree[tail] == 2
    order = np.argsort(tail, kind="stable")
    order = order[through[order]]
    one, two = order[::2], order[1::2]  # the two that leave each node between lines
    before = np.full(len(tail), -1, dtype=np.intp)
    before[one], before[two] = twin[two], twin[one]
    return before


def _ranks(before: NDArray[np.intp]) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """First half-edge of each one's line and the steps from it (pointer jumping); -1 on circles."""
    here = np.arange(len(before))
    at = np.where(before < 0, here, before)
    steps = (before >= 0).astype(np.intp)
    for _ in range(max(1, int(np.ceil(np.log2(max(len(before), 2)))) + 1)):
        steps = steps + steps[at]
        further = at[at]
        if np.array_equal(further, at):
            break
        at = further
    return np.where(before[at] < 0, at, -1), steps


def _lowest(before: NDArray[np.intp], loose: NDArray[np.bool_]) -> NDArray[np.intp]:
    """The lowest half-edge of each circle."""
    at = np.where(loose, before, np.arange(len(before)))
    least = np.arange(len(before))
    for _ in range(int(np.ceil(np.log2(max(int(loose.sum()), 2)))) + 1):
        least = np.minimum(least, least[at])
        at = at[at]
    return np.unique(least[loose])
