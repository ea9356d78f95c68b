"""Tooling holes: drilled through the margin of the blank, so that it is found again once turned over.

They lie far apart, since the error of what is found by them grows with distance, and never so that a
blank laid down the wrong way round shows holes wherever they are looked for.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from shapely import Geometry

from drypoint.bits.model import Drill
from drypoint.cuts.model import Cut, CutKind
from drypoint.geometry.points import Points, as_points

FROM_EDGE = 2.0
"""Laminate left between a tooling hole and the edge of the blank, mm (common practice, no source)."""
FROM_CUT = 1.0
"""Laminate left between a tooling hole and the mill's way round the boards, mm."""
NOTICED = 5.0
"""A hole this far from where it is looked for is not taken for it: hands turn a blank to about 1 mm."""
SQUARE = 5.0
"""Sides of a blank that differ by less than this are mixed up, mm: it may be laid down a quarter turned."""
STEP = 1.0
"""Distance of the places that are tried, mm."""

Bounds = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True, eq=False)
class Tooling:
    """Holes in the margin.

    Attributes
    ----------
    cuts : tuple of Cut
        In the frame of the side that is milled; ``label`` is T1, T2…
    tells : bool
        Whether a blank that was turned the wrong way has no hole at one of their places at least.
    """

    cuts: tuple[Cut, ...] = ()
    tells: bool = True


def tooling_room(outline: Geometry, workable: Geometry, drill: Drill, mill: float) -> Geometry:
    """Where the middles of tooling holes may lie: in the waste, clear of the edge and the mill's way.

    Parameters
    ----------
    outline : of all boards; between boards none lies, waste there comes loose
    workable : the blank without what holds it
    mill : diameter of the bit that cuts the boards out, mm
    """
    radius = drill.diameter / 2.0
    inside = shapely.buffer(workable, -(FROM_EDGE + radius))
    parts = shapely.get_parts(outline)
    edge = shapely.Polygon(parts[0].exterior) if len(parts) == 1 else shapely.box(*shapely.bounds(outline))
    return shapely.difference(inside, shapely.buffer(edge, mill + FROM_CUT + radius))


def tooling_holes(room: Geometry, blank: Bounds, drill: Drill, *, count: int, depth: float) -> Tooling:
    """Holes far apart in ``room``; none if there is no room for ``count`` of them.

    The first is the farthest from the middle of the blank, every further one from those taken, by the
    sum of the distances; the last is the farthest by which a wrong turn shows.

    Parameters
    ----------
    blank : bounds of the blank, frame of ``room``
    depth : below the copper, mm
    """
    if shapely.is_empty(room) or count < 1:
        return Tooling()
    tried = np.unique(np.round(shapely.get_coordinates(shapely.segmentize(room, STEP)), 3), axis=0)
    if len(tried) < count:
        return Tooling()
    middle = np.array([(blank[0] + blank[2]) / 2.0, (blank[1] + blank[3]) / 2.0])
    chosen = [int(np.argmax(((tried - middle) ** 2).sum(axis=1)))]
    while len(chosen) < count:
        chosen.append(_next(tried, chosen, blank if len(chosen) == count - 1 else None))
    places = as_points(tried[chosen])
    if count > 1 and shapely.MultiPoint(places).convex_hull.length < 2.0 * NOTICED:
        return Tooling()  # all in one spot: nothing is found by them
    cuts = tuple(
        Cut(CutKind.TOOLING, drill, as_points([place]), (), depth, drill.diameter, label=f"T{number}")
        for number, place in enumerate(places, 1)
    )
    return Tooling(cuts, tells_turn(places, blank))


def _next(tried: Points, chosen: Sequence[int], blank: Bounds | None) -> int:
    """The place farthest from those chosen; with a blank the farthest that shows its wrong turns, if any."""
    away = np.hypot(*(tried[:, None] - tried[chosen][None]).transpose(2, 0, 1))
    far = np.where(away.min(axis=1) > NOTICED, away.sum(axis=1), 0.0)
    best = np.argsort(-far, kind="stable")
    if blank is not None:
        for k in best[far[best] > 0.0]:
            if tells_turn(tried[[*chosen, int(k)]], blank):
                return int(k)
    return int(best[0])


def tells_turn(places: Points, blank: Bounds) -> bool:
    """Whether each wrong way to lay the blank down leaves one of the places without a hole near it.

    Parameters
    ----------
    places : (N, 2) where holes are looked for
    blank : bounds of the blank, same frame
    """
    return all(
        bool(
            np.any(np.hypot(*(places[:, None] - turn(places)[None]).transpose(2, 0, 1)).min(axis=1) > NOTICED)
        )
        for turn in wrong_turns(blank)
    )


def wrong_turns(blank: Bounds) -> tuple[Callable[[Points], Points], ...]:
    """Where a blank's points come to when it is laid into the same corner the wrong way round.

    Half a turn, or either face up that should look down; a nearly square one also a quarter turned.
    The frame is the same whichever side is looked at: all these ways together mirror into themselves.
    """
    x0, y0, x1, y1 = blank
    width, height = x1 - x0, y1 - y0
    low = np.array([x0, y0])

    def laid(across: bool, back: bool, swapped: bool) -> Callable[[Points], Points]:
        def turn(points: Points) -> Points:
            at = points - low
            flipped = np.column_stack(
                (width - at[:, 0] if across else at[:, 0], height - at[:, 1] if back else at[:, 1])
            )
            return as_points((flipped[:, ::-1] if swapped else flipped) + low)

        return turn

    ways = [(True, True, False), (True, False, False), (False, True, False)]
    if abs(width - height) < SQUARE:
        ways += [(across, back, True) for across in (False, True) for back in (False, True)]
    return tuple(laid(*way) for way in ways)
