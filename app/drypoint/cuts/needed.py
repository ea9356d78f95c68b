"""Which stretches of fine groove part anything, once the wide grooves are cut.

Where a wide bit turns in a corner of a net it leaves a rest of copper there that hangs on that net and on
nothing else: to cut it off parts nothing. Copper is looked at as faces between grooves. A stretch may be
left out if the faces on both sides of it hold no more than one net and little else.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry

from drypoint.cuts.offsets import QUAD_SEGS
from drypoint.cuts.parts import Parts, Shapes, explode
from drypoint.geometry.points import Points
from drypoint.progress import Progress

NEAR = 2e-3
"""mm. A face this near to a groove borders on it."""
LONGEST = 8.0
"""Stretches longer than so many widths of the wide cut are no corners: they stay."""
MOST = 4.0
"""Copper without net up to so many squares of the wide cut may stay on a net at one stretch."""


def needed_pieces(
    parts: Parts,
    paths: Sequence[Points],
    width: float,
    rings: Shapes,
    wide: float,
    *,
    progress: Progress | None = None,
) -> NDArray[np.bool_]:
    """(N,) which stretches of fine groove have to be cut.

    Parameters
    ----------
    paths : N stretches, (M, 2) each, board frame, mm
    width : of the fine groove at the copper's underside, mm
    rings : middles of the wide grooves; taken as wide as the fine one
    wide : width of the wide cut, mm
    """
    if not paths:
        return np.zeros(0, dtype=bool)
    told = progress or Progress()
    around = _Around(parts, paths, width, rings, wide)
    corners = around.corners()
    for number, index in enumerate(corners):
        if number % 20 == 0:
            told.step(number / len(corners), "what the fine grooves part")
        if around.needless(index):
            around.kept[index] = False
    return around.kept


class _Around:
    """The copper round a stretch, with what was left out so far."""

    def __init__(
        self, parts: Parts, paths: Sequence[Points], width: float, rings: Shapes, wide: float
    ) -> None:
        self.lines = np.array([shapely.linestrings(path) for path in paths], dtype=object)
        # cut off flat at the ends, which lie in the middle of a wide loop: what is beyond is not beside
        self._swept = shapely.buffer(self.lines, width / 2.0, quad_segs=QUAD_SEGS, cap_style="flat")
        self._grooves = shapely.STRtree(self._swept)
        self._rings, self._ring_tree = rings, shapely.STRtree(rings)
        self._owner, self._nets = parts.owner, shapely.STRtree(parts.shapes)
        self._width, self._wide = width, wide
        self.kept = np.ones(len(paths), dtype=bool)

    def needless(self, index: int) -> bool:
        """Whether nothing is joined that must stay apart when this stretch is not cut."""
        own = self._swept[index]
        reach = np.array([-1.0, -1.0, 1.0, 1.0]) * 1.5 * self._wide
        window = shapely.box(*(shapely.bounds(own) + reach).tolist())
        faces = self._faces(window)
        beside = faces[shapely.dwithin(faces, own, NEAR)]
        face, part = self._nets.query(beside, predicate="intersects")
        if len(set(self._owner[part].tolist())) > 1:
            return False
        bare = np.delete(beside, np.unique(face))
        open_ = shapely.intersects(bare, shapely.boundary(window))
        return not open_.any() and float(shapely.area(bare).sum()) <= MOST * self._wide**2

    def _faces(self, window: Geometry) -> Shapes:
        """Copper in a window, between all grooves that are still cut there."""
        near = self._grooves.query(window)
        near = near[self.kept[near]]
        bounds = shapely.bounds(shapely.buffer(window, self._width, cap_style="square")).tolist()
        fine = shapely.geometrycollections(shapely.clip_by_rect(self.lines[near], *bounds))
        rings = shapely.geometrycollections(
            shapely.clip_by_rect(self._rings[self._ring_tree.query(window)], *bounds)
        )
        half = self._width / 2.0
        gone = shapely.union(
            shapely.buffer(fine, half, quad_segs=QUAD_SEGS, cap_style="flat"),
            shapely.buffer(rings, half, quad_segs=QUAD_SEGS),
        )
        return explode(np.array([shapely.difference(window, gone)], dtype=object))[0]

    def corners(self) -> list[int]:
        """Short stretches from wide loop to wide loop, the longest first."""
        size = shapely.length(self.lines)
        held = np.ones(len(self.lines), dtype=bool)
        for end in (0, -1):
            tips = shapely.get_point(self.lines, end)
            near = np.unique(self._ring_tree.query(tips, predicate="dwithin", distance=NEAR)[0])
            held &= np.isin(np.arange(len(tips)), near)
        found = np.flatnonzero(held & (size <= LONGEST * self._wide))
        return [int(k) for k in found[np.argsort(-size[found], kind="stable")]]
