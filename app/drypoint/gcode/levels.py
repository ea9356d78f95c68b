"""How deep a ready-made program cuts where: its paths in pieces of one depth each."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from drypoint.gcode.moves import GMove
from drypoint.gcode.reader_paths import move_vertices
from drypoint.geometry.arcs import SAGITTA
from drypoint.geometry.points import Points, as_points

SAME = 1e-4
"""mm; depths nearer to each other than this are one."""
STRETCH = 0.5
"""mm; a ramp is looked at in pieces no longer than this."""


@dataclass(frozen=True, slots=True, eq=False)
class LevelPath:
    """A piece of what is cut: ``path`` (N, 2), mm, in the program's coordinates; one point where it only
    goes down. ``least`` and ``most`` are how deep it goes, mm below z = 0.
    """

    tool: int
    path: Points
    least: float
    most: float


def level_paths(moves: Sequence[GMove], *, sagitta: float = SAGITTA) -> tuple[LevelPath, ...]:
    """Everything cut below z = 0; moves of one depth behind each other are one piece."""
    found: list[LevelPath] = []
    at = (0.0, 0.0, 0.0)
    for move in moves:
        if move.kind == "dwell":
            continue
        if move.kind != "rapid" and min(at[2], move.end[2]) < 0.0:
            for piece in _pieces(at, move, sagitta):
                found.append(_joined(found.pop(), piece) if found and _goes_on(found[-1], piece) else piece)
        at = move.end
    return tuple(found)


def _pieces(at: tuple[float, float, float], move: GMove, sagitta: float) -> list[LevelPath]:
    """One move: whole where it is level, in short stretches where it ramps."""
    path = np.asarray(move_vertices(at, move, sagitta))
    start, stop = max(-at[2], 0.0), max(-move.end[2], 0.0)
    if np.ptp(path, axis=0).max() < SAME:
        return [LevelPath(move.tool, as_points(path[-1:]), stop, stop)] if stop >= start else []
    if abs(start - stop) < SAME:
        return [LevelPath(move.tool, as_points(path), start, start)]
    place = np.concatenate(([0.0], np.cumsum(np.hypot(*np.diff(path, axis=0).T))))
    count = max(1, int(np.ceil(place[-1] / STRETCH)))
    marks = np.linspace(0.0, place[-1], count + 1)
    # z is straight from end to end, above the copper too
    depth = -np.interp(marks, [0.0, place[-1]], [at[2], move.end[2]])
    found = []
    for one, two, a, b in zip(marks[:-1], marks[1:], depth[:-1], depth[1:], strict=True):
        inner = place[(place > one) & (place < two)]
        steps = np.concatenate(([one], inner, [two]))
        part = np.column_stack([np.interp(steps, place, path[:, axis]) for axis in (0, 1)])
        least, most = max(min(a, b), 0.0), max(a, b)
        if most > 0.0:
            found.append(LevelPath(move.tool, as_points(part), float(least), float(most)))
    return found


def _joined(before: LevelPath, piece: LevelPath) -> LevelPath:
    path = as_points(np.vstack((before.path, piece.path[1:])))
    return LevelPath(piece.tool, path, before.least, before.most)


def _goes_on(before: LevelPath, piece: LevelPath) -> bool:
    """Whether a level piece continues the level one before it."""
    return (
        before.tool == piece.tool
        and len(before.path) > 1
        and len(piece.path) > 1
        and max(before.most, piece.most) - min(before.least, piece.least) < SAME
        and bool(np.allclose(before.path[-1], piece.path[0], rtol=0.0, atol=SAME))
    )
