"""Cutting the board out: cut-outs first, then the outline, held by tabs until the end."""

from __future__ import annotations

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, Point, Polygon

from drypoint.bits.model import EndMill
from drypoint.board.model import Board
from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, along, as_points
from drypoint.wording import say

CORNER = 20.0
"""Degrees of turn from which a place counts as a corner."""
FACET = 0.02
"""mm by which the path is simplified for finding corners only."""


def plan_outline(
    board: Board,
    mill: EndMill,
    *,
    thickness: float,
    through: float,
    tabs: int = 4,
    tab_width: float = 3.0,
    tab_height: float = 0.6,
    keepout: Geometry | None = None,
) -> tuple[Cut, ...]:
    """Paths of the mill's middle round cut-outs and the outline, board frame, outline last.

    Boards that share a blank are cut out one after the other, each with its own tabs.

    Tabs are spread evenly and moved off corners, and off copper that reaches the edge. ``Cut.depth``
    is the full depth; steps are made from `EndMill.step`. The outline runs anticlockwise inside
    cut-outs and clockwise outside, which climbs with a spindle turning clockwise (common practice).

    Parameters
    ----------
    keepout : geometry, optional
        Clamps, board frame: no path comes nearer than the mill's radius.

    Raises
    ------
    PlanError
        If a path would meet a clamp, or the mill does not fit into a cut-out.
    """
    radius = mill.diameter / 2.0
    depth = thickness + through
    if tabs < 0 or tab_width < 0.0 or not 0.0 <= tab_height < depth:
        raise PlanError("Tabs must be lower than the cut is deep.", "tabs")
    cuts: list[Cut] = []
    for number, edge in enumerate(board.outlines, 1):
        of = say(" of board {number}", number=number) if len(board.outlines) > 1 else ""
        cuts += _cut_outs(edge, mill, depth, of)
        outer = Polygon(edge.exterior).buffer(radius, quad_segs=32)
        path = as_points(shapely.get_coordinates(shapely.orient_polygons(outer, exterior_cw=True).exterior))
        spots = place_tabs(path, tabs, tab_width + mill.diameter, _edge_copper(board, edge, radius))
        start = _start_away(path, spots)
        label = say("outline{of}", of=of)
        cuts.append(Cut(CutKind.OUTLINE, mill, start, (), depth, 0.0, spots, tab_width, tab_height, label))
    _check_clamps(cuts, keepout, radius)
    return tuple(cuts)


def _cut_outs(edge: Polygon, mill: EndMill, depth: float, of: str) -> list[Cut]:
    cuts = []
    for number, ring in enumerate(edge.interiors, 1):
        inner = Polygon(ring).buffer(-mill.diameter / 2.0, quad_segs=32)
        if inner.is_empty:
            at = ring.centroid
            raise PlanError(
                "The end mill does not fit into a cut-out.",
                say("x {x:.1f} y {y:.1f}", x=at.x, y=at.y),
                "Choose a smaller end mill.",
                at=(float(at.x), float(at.y)),
            )
        for piece in shapely.get_parts(inner):
            path = shapely.get_coordinates(shapely.orient_polygons(piece).exterior)
            cuts.append(
                Cut(
                    CutKind.OUTLINE,
                    mill,
                    as_points(path),
                    (),
                    depth,
                    label=say("cut-out {number}{of}", number=number, of=of),
                )
            )
    return cuts


def _edge_copper(board: Board, edge: Polygon, radius: float) -> Geometry | None:
    """Copper near the edge: a tab broken off there would tear it."""
    if not board.nets:
        return None
    band = shapely.buffer(edge.exterior, radius)
    near = [shape for shape in board.nets.values() if shapely.intersects(band, shape)]
    return shapely.union_all(shapely.intersection(near, band)) if near else None


def _check_clamps(cuts: list[Cut], keepout: Geometry | None, radius: float) -> None:
    if keepout is None or shapely.is_empty(keepout):
        return
    for cut in cuts:
        swept = shapely.buffer(shapely.linestrings(cut.path), radius)
        if shapely.intersects(swept, keepout):
            at = Point(shapely.get_coordinates(shapely.centroid(shapely.intersection(swept, keepout)))[0])
            raise PlanError(
                say("The {label} would be cut through a clamp.", label=cut.label),
                say("x {x:.1f} y {y:.1f}", x=at.x, y=at.y),
                "Move the clamp or the board on the blank.",
                at=(float(at.x), float(at.y)),
            )


def corner_places(path: Points) -> NDArray[np.float64]:
    """Distances along a closed path at which it turns sharply, mm.

    Turns are summed over arcs shorter than 2 mm, so the rounded way round a corner counts.
    """
    steps = np.diff(path, axis=0)
    heading = np.unwrap(np.arctan2(steps[:, 1], steps[:, 0]))
    middle = (along(path)[:-1] + along(path)[1:]) / 2.0
    ahead = np.searchsorted(middle, middle + 2.0)
    turn = np.abs(heading[np.minimum(ahead, len(heading) - 1)] - heading)
    sharp = turn > np.radians(CORNER)
    found = np.where(sharp, (middle + middle[np.minimum(ahead, len(middle) - 1)]) / 2.0, -1.0)
    joint = abs((heading[-1] - heading[0]) % (2.0 * np.pi))
    ends = [0.0] if min(joint, 2.0 * np.pi - joint) > np.radians(CORNER) else []
    return np.concatenate((found[sharp], ends))


def place_tabs(path: Points, count: int, width: float, copper: Geometry | None) -> Points:
    """(count, 2) middles of tabs, evenly spread, each moved to the nearest free place."""
    if count == 0:
        return as_points(np.empty((0, 2)))
    total = float(along(path)[-1])
    grid = np.arange(0.0, total, min(0.25, width / 4.0))
    corners = corner_places(path)
    penalty = np.zeros(len(grid))
    for at in corners:
        gap = np.abs(grid - at)
        penalty += np.minimum(gap, total - gap) < width / 2.0 + 1.0
    places = _at(path, grid)
    if copper is not None:
        penalty += shapely.dwithin(copper, shapely.points(places), width / 2.0)
    chosen: list[float] = []
    for number in range(count):
        wanted = (number + 0.5) * total / count
        away = np.abs(grid - wanted)
        away = np.minimum(away, total - away)
        taken = np.zeros(len(grid))
        for other in chosen:
            gap = np.abs(grid - other)
            taken += np.minimum(gap, total - gap) < 2.0 * width
        chosen.append(float(grid[np.argmin(away + 1e3 * penalty + 1e4 * taken)]))
    return as_points(_at(path, np.array(chosen)))


def _at(path: Points, distance: NDArray[np.float64]) -> NDArray[np.float64]:
    measure = along(path)
    return np.column_stack(
        (np.interp(distance, measure, path[:, 0]), np.interp(distance, measure, path[:, 1]))
    )


def _start_away(path: Points, tabs: Points) -> Points:
    """The closed path from the vertex farthest from every tab: the plunge never lands on one."""
    if len(tabs) == 0:
        return path
    ring = path[:-1]
    apart = np.sqrt(((ring[:, None, :] - tabs[None, :, :]) ** 2).sum(axis=2)).min(axis=1)
    first = int(np.argmax(apart))
    return as_points(np.vstack((ring[first:], ring[: first + 1])))
