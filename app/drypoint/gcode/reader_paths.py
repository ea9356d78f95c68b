"""The paths that a ready-made program cuts, and what each of its tools is for."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from drypoint.gcode.moves import GMove
from drypoint.geometry.arcs import SAGITTA, arc_points
from drypoint.geometry.points import Points, as_points

SHALLOW = 0.4
"""mm. What goes no deeper only engraves; laminate that is milled through is thicker (common practice)."""
STILL = 1e-6
"""mm; a move shorter than this across goes straight down."""


class ToolUse(StrEnum):
    """What a tool does in a program."""

    ENGRAVING = "engraving"
    DRILLING = "drilling"
    MILLING = "milling"


@dataclass(frozen=True, slots=True, eq=False)
class CutPath:
    """What is cut between two moves above the copper.

    ``path`` is (N, 2), mm, in the program's coordinates; one point where it only goes down.
    ``depth`` is the deepest place below z = 0, mm.
    """

    tool: int
    path: Points
    depth: float
    line: int


def cut_paths(moves: Sequence[GMove], *, sagitta: float = SAGITTA) -> tuple[CutPath, ...]:
    """The paths at or below z = 0, arcs as chords within ``sagitta`` mm."""
    return tuple(_paths(moves, sagitta))


def use_of(paths: Sequence[CutPath]) -> ToolUse:
    """What these paths of one tool are for: by whether it moves across below the copper, and how deep."""
    if all(len(one.path) == 1 for one in paths):
        return ToolUse.DRILLING
    deepest = max(one.depth for one in paths)
    return ToolUse.ENGRAVING if deepest <= SHALLOW else ToolUse.MILLING


def _paths(moves: Sequence[GMove], sagitta: float) -> Iterator[CutPath]:
    at = (0.0, 0.0, 0.0)
    vertices: list[Points] = []
    depth, line, tool = 0.0, 0, 0
    for move in moves:
        if move.kind == "dwell":
            continue
        cuts = move.kind != "rapid" and min(at[2], move.end[2]) < 0.0
        if vertices and (not cuts or move.tool != tool):
            yield CutPath(tool, _joined(vertices), depth, line)
            vertices = []
        if cuts:
            if not vertices:
                depth, line, tool = 0.0, move.line, move.tool
            vertices.append(move_vertices(at, move, sagitta))
            depth = max(depth, -at[2], -move.end[2])
        at = move.end
    if vertices:
        yield CutPath(tool, _joined(vertices), depth, line)


def move_vertices(at: tuple[float, float, float], move: GMove, sagitta: float) -> Points:
    """(N, 2) where a move goes, seen from above, mm; arcs as chords within ``sagitta`` mm."""
    start, stop = at[:2], move.end[:2]
    if move.centre is None:
        return as_points([start, stop])
    return arc_points(start, stop, move.centre, move.kind == "arc_cw", sagitta=sagitta)


def _joined(vertices: Sequence[Points]) -> Points:
    """One path, without vertices on the spot: one point where it never moves across."""
    every = np.vstack(vertices)
    steps = np.hypot(*np.diff(every, axis=0).T)
    kept = every[np.concatenate(([True], steps > STILL))]
    return as_points(kept)
