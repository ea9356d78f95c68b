"""Copper of the nets and what grooves bite off it, part by part: where judging what is left begins."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry

from drypoint.cuts.carve import Sweep, make_sweep
from drypoint.cuts.offsets import QUAD_SEGS
from drypoint.cuts.parts import Parts, Shapes, copper_parts
from drypoint.geometry.points import Points, as_points

NOTICE = 2e-3
"""mm. Bites below this are the chords of arcs, not thinning."""
SEGMENTS = 8
"""Segments of a groove looked at together: long lines are near to much copper somewhere."""


@dataclass(frozen=True, slots=True, eq=False)
class Milled:
    """Copper as designed, and the grooves cut into it.

    ``parts``: exact copper, board frame; ``paths``: M lines; ``radius`` (M,): half of each one's width at
    the copper's top, mm.
    """

    parts: Parts
    paths: list[Points]
    radius: NDArray[np.float64]

    @classmethod
    def of(cls, nets: Mapping[str, Geometry], lines: Sequence[Points], top_width: ArrayLike) -> Milled:
        """Copper per net, mm, and lines (N, 2) cut with one width, or one for each, mm."""
        paths = [as_points(line) for line in lines]
        width = np.broadcast_to(np.asarray(top_width, dtype=np.float64), (len(paths),))
        return cls(copper_parts(nets, simplify=0.0), paths, width / 2.0)

    def bitten(self) -> tuple[NDArray[np.intp], Shapes]:
        """Parts (B,) that grooves take something worth naming from, ascending, and what is left of each."""
        sweep, groove = self._pieces()
        if len(sweep.lines) == 0 or len(self.parts.shapes) == 0:
            return np.empty(0, dtype=np.intp), np.empty(0, dtype=object)
        lean = np.maximum(sweep.radius - NOTICE, 1e-6)
        part, piece = sweep.tree.query(self.parts.shapes, predicate="dwithin", distance=float(lean.max()))
        if (lean != lean[0]).any():
            near = shapely.dwithin(self.parts.shapes[part], sweep.lines[piece], lean[piece])
            part, piece = part[near], piece[near]
        count = len(self.paths)
        deep = np.unique(part * count + groove[piece])
        # all of a groove that bites is taken off, not only its deepest stretch
        chosen = np.unique(part)
        near = shapely.box(*(shapely.bounds(self.parts.shapes[chosen]) + _outwards(sweep.radius)).T)
        row, piece = sweep.tree.query(near)
        part = chosen[row]
        bites = np.isin(part * count + groove[piece], deep)
        return taken_off(self.parts.shapes, sweep, piece[bites], part[bites])

    def _pieces(self) -> tuple[Sweep, NDArray[np.intp]]:
        """The grooves in short pieces, and the groove each piece is of."""
        pieces, width, groove = [], [], []
        for number, (path, radius) in enumerate(zip(self.paths, self.radius.tolist(), strict=True)):
            if radius <= 0.0 or len(path) == 0:
                continue
            starts = range(0, max(len(path) - 1, 1), SEGMENTS)
            pieces += [path[start : start + SEGMENTS + 1] for start in starts]
            width += [2.0 * radius] * len(starts)
            groove += [number] * len(starts)
        return make_sweep(pieces, np.array(width)), np.array(groove, dtype=np.intp)


def _outwards(radius: NDArray[np.float64]) -> NDArray[np.float64]:
    """(4,) what makes bounds as much larger as the widest groove reaches, mm."""
    reach = float(radius.max(initial=0.0))
    return np.array([-reach, -reach, reach, reach])


def taken_off(
    shapes: Shapes, sweep: Sweep, line: NDArray[np.intp], part: NDArray[np.intp]
) -> tuple[NDArray[np.intp], Shapes]:
    """Shapes (B,) that grooves bite into, ascending, and what is left of each, mm.

    ``line`` and ``part`` (K,): which of the sweep's lines bites into which shape. What one shape loses to
    lines of one radius is taken off at once.
    """
    radius = sweep.radius[line]
    order = np.lexsort((line, radius, part))
    line, part, radius = line[order], part[order], radius[order]
    new = np.ones(len(part), dtype=bool)
    new[1:] = (part[1:] != part[:-1]) | (radius[1:] != radius[:-1])
    group = np.cumsum(new) - 1
    bites = np.array([], dtype=object)
    if len(line):
        bites = shapely.buffer(
            shapely.geometrycollections(sweep.lines[line], indices=group), radius[new], quad_segs=QUAD_SEGS
        )
    bitten, of = np.unique(part[new], return_inverse=True)
    remains = shapes[bitten]
    turn = np.arange(len(of)) - np.searchsorted(of, of)
    for number in range(int(turn.max(initial=-1)) + 1):  # one radius after the other
        now = turn == number
        remains[of[now]] = shapely.difference(remains[of[now]], bites[now])
    return bitten, remains
