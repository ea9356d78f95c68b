"""Tracks of a round tool, a whole chain of draws at a time.

The area of a chain is the Minkowski sum of its polyline and the tool's polygon. Its outline is
written down directly: along the outer side of a bend the tool's vertices between the two
directions, on the inner side the crossing of the two edges. That is exactly the union of the single
draws, with a fraction of the vertices, and hundreds of times cheaper than uniting them. A chain is
cut where its inner edges do not meet; one whose outline crosses itself is left as single draws.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray

from drypoint.board.aperture_tools import Tool
from drypoint.board.gerber_shapes import Rows, Shapes, geometries, swept

Index = NDArray[np.intp]


def chains(ends: Rows, keys: Index) -> tuple[NDArray[np.float64], Index, Index]:
    """Draws that follow each other, joined.

    Parameters
    ----------
    ends : (N, 4) array
        x0, y0, x1, y1 of each draw, not of zero length.
    keys : (N,) int
        Only draws of equal key are joined.

    Returns
    -------
    points : (M, 2) array
        The chains' points, one chain after the other.
    chain : (M,) int
        Which chain a point belongs to.
    key : (chains,) int
        The key of each chain.
    """
    order = np.argsort(keys, kind="stable")
    distinct, group = np.unique(keys[order], return_inverse=True)
    lines = geometries(shapely.linestrings(ends[order].reshape(-1, 2, 2)))
    bundles = geometries(shapely.multilinestrings(lines, indices=group))
    merged, owner = shapely.get_parts(geometries(shapely.line_merge(bundles)), return_index=True)
    points, chain = shapely.get_coordinates(merged, return_index=True)
    return points, chain, distinct[owner]


@dataclass(frozen=True, slots=True, eq=False)
class _Bends:
    """Chains cut into runs: per segment its direction and right-hand vertex, per point its bend."""

    along: NDArray[np.float64]
    right: Index
    run: Index
    joint: Index
    delta: Index
    left_turn: NDArray[np.bool_]
    inner: NDArray[np.float64]


def strokes(tool: Tool, points: NDArray[np.float64], chain: Index) -> tuple[Shapes, Index]:
    """Polygons that cover the chains of a round tool.

    Returns
    -------
    shapes : (K,) polygons
    chain : (K,) int
        The chain each polygon belongs to; a chain may have several.
    """
    inside = np.flatnonzero((chain[1:] == chain[:-1]) & (points[1:] != points[:-1]).any(axis=1))
    start, end, owner = points[inside], points[inside + 1], chain[inside]
    bends = _bends(tool, start, end, owner)
    rings, run_of_vertex = _outlines(tool, start, end, bends)
    made = geometries(shapely.polygons(shapely.linearrings(rings, indices=run_of_vertex)))
    first = np.flatnonzero(np.diff(bends.run, prepend=-1))
    owners = owner[first]
    good = shapely.is_valid(made)
    if good.all():
        return made, owners
    single = ~good[bends.run]
    loose = swept(tool, np.column_stack((start[single], end[single])))
    return np.concatenate((made[good], loose)), np.concatenate((owners[good], owner[single]))


def _bends(tool: Tool, start: NDArray[np.float64], end: NDArray[np.float64], owner: Index) -> _Bends:
    sides = len(tool.outline)
    along = end - start
    turn = 2.0 * np.pi / sides
    right = np.rint((np.arctan2(along[:, 1], along[:, 0]) - np.pi / 2.0) / turn).astype(np.intp) % sides
    joined = (owner[1:] == owner[:-1]) & ~_closes(start, end, owner)[1:]
    before, after = along[:-1], along[1:]
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    delta = (right[1:] - right[:-1] + sides // 2) % sides - sides // 2
    left_turn = cross >= 0.0
    agree = (delta == 0) | ((delta > 0) == left_turn) & (delta != -sides // 2)
    inner_side = np.where(left_turn, sides // 2, 0)
    corner_before = tool.outline[(right[:-1] + inner_side) % sides]
    step = tool.outline[(right[1:] + inner_side) % sides] - corner_before
    with np.errstate(divide="ignore", invalid="ignore"):
        back = (step[:, 0] * after[:, 1] - step[:, 1] * after[:, 0]) / cross
        forth = (step[:, 0] * before[:, 1] - step[:, 1] * before[:, 0]) / cross
    straight = delta == 0
    back[straight] = forth[straight] = 0.0
    reaches = (back <= 0.0) & (back >= -0.5) & (forth >= 0.0) & (forth <= 0.5)
    joint = joined & agree & reaches
    run = np.concatenate(([0], np.cumsum(~joint)))
    at = np.flatnonzero(joint)
    inner = start[at + 1] + corner_before[at] + back[at, None] * before[at]
    return _Bends(along, right, run, at, delta[at], left_turn[at], inner)


def _closes(start: NDArray[np.float64], end: NDArray[np.float64], owner: Index) -> NDArray[np.bool_]:
    """Segments at which a closed chain is cut in the middle, so that no outline meets itself."""
    first = np.flatnonzero(np.diff(owner, prepend=-1))
    last = np.append(first[1:], len(owner)) - 1
    closed = (start[first] == end[last]).all(axis=1)
    cut = np.zeros(len(owner), dtype=bool)
    cut[((first + last + 1) // 2)[closed]] = True
    return cut


def _outlines(
    tool: Tool, start: NDArray[np.float64], end: NDArray[np.float64], bends: _Bends
) -> tuple[NDArray[np.float64], Index]:
    """Vertices of all outlines, counter-clockwise, and the run each belongs to.

    A node is a group of vertices of the tool at one place, or a single inner crossing. Nodes go
    along the right side, round the end, back along the left side and round the start.
    """
    sides = len(tool.outline)
    half = sides // 2
    runs = int(bends.run[-1]) + 1
    first = np.searchsorted(bends.run, np.arange(runs))
    last = np.append(first[1:], len(bends.run)) - 1
    at = bends.joint
    place = end[at]
    run = bends.run[at]
    turn = np.abs(bends.delta)
    bent = bends.delta != 0
    outer_right = bends.left_turn | ~bent
    outer_left = ~bends.left_turn | ~bent
    # (where, first vertex, how many, run, part of the way round, order within it)
    right_side = _side(place, bends.inner, outer_right, bends.right[at], turn)
    left_side = _side(place, bends.inner, outer_left, bends.right[at + 1] + half, turn)
    caps = np.full(runs, half + 1)
    where = np.concatenate((right_side[0], end[last], left_side[0], start[first]))
    vertex = np.concatenate((right_side[1], bends.right[last], left_side[1], bends.right[first] + half))
    count = np.concatenate((right_side[2], caps, left_side[2], caps))
    run_all = np.concatenate((run, np.arange(runs), run, np.arange(runs)))
    part = np.repeat((0, 1, 2, 3), (len(at), runs, len(at), runs))
    rank = np.concatenate((at, np.zeros(runs, np.intp), -at, np.zeros(runs, np.intp)))
    order = np.lexsort((rank, part, run_all))
    count = count[order]
    node = np.repeat(order, count)
    step = np.arange(len(node)) - np.repeat(np.cumsum(count) - count, count)
    padded = np.vstack((tool.outline, np.zeros((1, 2))))
    index = np.where(vertex[node] < 0, sides, (vertex[node] + step) % sides)
    return where[node] + padded[index], run_all[node]


def _side(
    place: NDArray[np.float64],
    inner: NDArray[np.float64],
    outer: NDArray[np.bool_],
    vertex: Index,
    turn: Index,
) -> tuple[NDArray[np.float64], Index, Index]:
    """Nodes of one side of the joints: where, first vertex (-1 for a crossing), how many."""
    where = np.where(outer[:, None], place, inner)
    return where, np.where(outer, vertex, -1), np.where(outer, turn + 1, 1)
