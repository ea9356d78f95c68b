"""Passes and what they reach, made ready to be drawn.

Nothing here knows Qt: it is done where plans are computed.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points
from drypoint.passes.model import NOT_THROUGH, THROUGH, Pass, ReachMap
from drypoint.ui.canvas.paths import PathSet, path_set, path_set_flat


@dataclass(frozen=True, slots=True, eq=False)
class ReachDrawing:
    """The reach map split into its three states, and whole for picking."""

    through: PathSet
    doubtful: PathSet
    not_through: PathSet
    whole: PathSet


def draw_pass(made: Pass, nets: tuple[tuple[str, ...], ...] = ()) -> PathSet:
    """A pass in its order of cutting, with the planned depth at every vertex.

    ``nets`` are those beside each groove line, for the hover card.
    """
    depths = [run.depth for run in made.runs]
    labels = [", ".join(nets[run.groove]) if run.groove < len(nets) else "" for run in made.runs]
    return path_set(
        [run.path for run in made.runs],
        values={"depth": np.concatenate(depths) if depths else np.zeros(0)},
        labels=labels,
    )


def draw_reach(reach: ReachMap, nets: tuple[tuple[str, ...], ...] = ()) -> ReachDrawing:
    """A reach map split into through, doubtful and not through."""
    labels = [", ".join(names) for names in nets]
    chance = np.concatenate(reach.probability) if reach.probability else np.zeros(0)
    width = np.concatenate(reach.width) if reach.width else np.zeros(0)
    whole = path_set(reach.points, values={"probability": chance, "width": width}, labels=labels)
    state = np.where(chance >= THROUGH, 0, np.where(chance < NOT_THROUGH, 2, 1))
    points, line = whole.levels[0].points, _line_of(whole.offsets)
    through, doubtful, lacking = (_where(points, line, state, kind) for kind in range(3))
    return ReachDrawing(through, doubtful, lacking, whole)


def _line_of(offsets: NDArray[np.int64]) -> NDArray[np.int64]:
    return np.repeat(np.arange(len(offsets) - 1), np.diff(offsets))


def _where(points: Points, line: NDArray[np.int64], state: NDArray[np.int64], kind: int) -> PathSet:
    """Segments whose worse end is of one state, joined into paths."""
    if len(points) < 2:
        return path_set([])
    worse = np.maximum(state[:-1], state[1:])
    chosen = (worse == kind) & (line[:-1] == line[1:])
    edge = np.diff(np.concatenate(([0], chosen.astype(np.int8), [0])))
    first, last = np.flatnonzero(edge == 1), np.flatnonzero(edge == -1)
    counts = last - first + 1
    offsets = np.concatenate(([0], np.cumsum(counts)))
    index = np.arange(offsets[-1]) - np.repeat(offsets[:-1], counts) + np.repeat(first, counts)
    return path_set_flat(points[index], offsets)
