"""The legend as marks of a laser: rows of separate pulses ("spark rows") or continuous lines.

Strokes get as many rows as cover them; shapes wider than a stroke become an outline and a hatch;
pads and holes stay free. All in the board frame: the fit that places the marks also mirrors
them, when the legend is on the side that is not milled.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import cKDTree
from shapely import Geometry, MultiPolygon, Point

from drypoint.board.model import Board
from drypoint.cuts.legend_rows import fill_rows, row_width, stroke_rows
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, along, as_points, is_closed
from drypoint.progress import Progress
from drypoint.wording import say

SPECK = 0.0025
"""Shapes of less area than this, mm², are what arithmetic leaves of clipping, no strokes."""
TIDY = 0.001
"""mm by which strokes are simplified: what clipping leaves of a corner has no width."""
NEAR = 0.25
"""Two pulses nearer to each other than this share of the pitch are one."""
TILE = 8.0
"""Side of the squares in which coverage is measured, mm: none takes long."""
MANY = 200
"""Shapes, or rows, between two looks at whether to go on."""


@dataclass(frozen=True, slots=True)
class LegendStyle:
    """How the legend is marked.

    Attributes
    ----------
    pulses : bool
        Separate pulses; else continuous lines.
    pitch : float
        Distance between pulses of a row, mm.
    spot : float
        Diameter of what one pulse marks, or width of a line, mm.
    widest : float
        A shape wider than this, mm, is filled with a hatch; narrower ones get rows along their edges.
    single : bool
        One row along the middle of every stroke: quicker, and thinner than drawn.
    hatch : float
        Distance between rows beside each other, in spots.
    hatch_angle : float
        Direction of its rows, rad.
    clear : float
        Between a mark's edge and a pad or hole, mm.
    ring : float
        Round every hole this much, mm, is taken for its pad.
    trace : float
        Copper of the marked side wider than this, mm, is a pad or a plane; narrower is a trace,
        which may be marked. 0: all copper is kept free.
    plane : float
        Wide copper of more than this area, mm², is a plane, which may be marked beside its holes; a
        pad without hole inside a plane is not told from it. 0: planes are kept free too.
    """

    pulses: bool = True
    pitch: float = 0.1
    spot: float = 0.12
    widest: float = 0.6
    single: bool = False
    hatch: float = 0.9
    hatch_angle: float = math.radians(45.0)
    clear: float = 0.1
    ring: float = 0.4
    trace: float = 0.8
    plane: float = 40.0

    @property
    def row(self) -> float:
        """Mean width of a row, mm."""
        return row_width(self.spot, self.pitch) if self.pulses else self.spot


@dataclass(frozen=True, slots=True, eq=False)
class Legend:
    """What is to be marked.

    Attributes
    ----------
    rows : tuple of (N, 2)
        Board frame, in order of work. Of pulses: each point is one. Else: lines.
    pulses : bool
    spot : float
        Diameter or width of a mark, mm.
    covered : float
        Share of the wanted legend (what pads and holes leave of it) that lies under marks.
    spilled : float
        Share of the marks' area that lies outside the legend.
    kept_free : float
        Share of the legend left out for pads and holes.
    """

    rows: tuple[Points, ...]
    pulses: bool
    spot: float
    covered: float
    spilled: float
    kept_free: float

    @property
    def count(self) -> int:
        """Pulses; 0 for lines."""
        return sum(len(row) for row in self.rows) if self.pulses else 0

    @property
    def length(self) -> float:
        """Length of all rows, mm."""
        return float(sum(along(row)[-1] for row in self.rows if len(row) > 1))


def keep_free(board: Board, style: LegendStyle, copper: Mapping[str, Geometry] | None = None) -> Geometry:
    """Pads and holes that no mark may touch, board frame.

    ``copper`` is that of the side to be marked, in the board frame; the board's other copper if None.
    """
    parts: list[Geometry] = [Point(h.x, h.y).buffer(h.diameter / 2 + style.ring) for h in board.holes]
    parts += [
        shapely.LineString(slot.path).buffer(slot.diameter / 2 + style.ring)
        if len(slot.path) > 1
        else Point(slot.path[0]).buffer(slot.diameter / 2 + style.ring)
        for slot in board.slots
    ]
    for shape in (board.other_copper if copper is None else copper).values():
        wide = shapely.get_parts(shape if style.trace <= 0 else wide_parts(shape, style.trace))
        parts += [one for one in wide if style.trace <= 0 or style.plane <= 0 or one.area <= style.plane]
    return shapely.union_all(parts) if parts else MultiPolygon()


def wide_parts(shape: Any, width: float) -> Any:
    """What of a shape (or of each of many) is wider than ``width`` mm: opened by a disc, corners kept."""
    half = width / 2.0
    core = shapely.buffer(shape, -half)
    with np.errstate(all="ignore"):  # GEOS divides by the length of edges that have none
        grown = shapely.buffer(core, half * 1.05, join_style="mitre", mitre_limit=2.0)
    return shapely.intersection(grown, shape)


def plan_legend(
    legend: Geometry | None,
    style: LegendStyle | None = None,
    *,
    free: Geometry | None = None,
    inside: Geometry | None = None,
    start: tuple[float, float] | None = None,
    progress: Progress | None = None,
) -> Legend:
    """Rows of marks for a legend.

    Parameters
    ----------
    legend : (multi)polygon, board frame, mm
    free : geometry, optional
        Pads and holes that stay free (`keep_free`), before the clearance is added.
    inside : geometry, optional
        The board: marks outside of it are left out.
    start : where the beam stands first, board frame

    Raises
    ------
    PlanError
        There is no legend, nothing of it is left, or a setting makes no sense.
    """
    chosen, told = style or LegendStyle(), progress or Progress()
    _check(chosen)
    if legend is None or shapely.is_empty(legend):
        raise PlanError("This board has no legend.", "Legend", "Choose the file that is the legend.")
    shape = legend if inside is None else shapely.intersection(legend, inside)
    wanted, middle = _room(shape, chosen, free)
    wide, strokes = _parted(shape, chosen.widest, told.part(0.0, 0.1))
    lines = _thin(strokes, chosen, told.part(0.1, 0.5)) + _filled(wide, chosen, told.part(0.5, 0.6))
    rows = _clipped(lines, middle, chosen, told.part(0.6, 0.7))
    if not rows:
        raise PlanError(
            "Nothing of the legend is left beside pads and holes.", "Legend", "Allow a smaller clearance."
        )
    at = np.zeros(2) if start is None else np.asarray(start, dtype=np.float64)
    ordered = _in_order(rows, at, told.part(0.7, 0.8))
    return _judged(ordered, chosen, shape, wanted, told.part(0.8, 1.0))


def _check(style: LegendStyle) -> None:
    for name, value in (("pitch", style.pitch), ("spot", style.spot), ("hatch", style.hatch)):
        if not (math.isfinite(value) and value > 0):
            raise PlanError(say("The {name} of the legend must be above 0.", name=name), "Legend")
    if style.widest < style.spot:
        raise PlanError("Strokes cannot be narrower than the spot.", "Legend", "Set a wider stroke.")


def _room(shape: Geometry, style: LegendStyle, free: Geometry | None) -> tuple[Geometry, Geometry | None]:
    """What of the legend may be marked, and where the middle of a mark may not be."""
    if free is None or shapely.is_empty(free):
        return shape, None
    shut = shapely.buffer(free, style.clear + style.spot / 2.0)
    return shapely.difference(shape, shapely.buffer(free, style.clear)), shut


def _parted(shape: Geometry, widest: float, progress: Progress) -> tuple[list[Geometry], list[Geometry]]:
    """What is filled, and what is strokes: polygons."""
    parts = [p for p in shapely.get_parts(shape) if p.geom_type == "Polygon"]
    wide: list[Geometry] = []
    thin: list[Geometry] = []
    for first in range(0, len(parts), MANY):
        progress.step(first / len(parts), "Shapes of the legend")
        some = parts[first : first + MANY]
        broad = wide_parts(some, widest)
        wide += shapely.get_parts(broad).tolist()
        thin += shapely.get_parts(shapely.simplify(shapely.difference(some, broad), TIDY)).tolist()
    return _whole(wide), _whole(thin)


def _whole(parts: list[Geometry]) -> list[Geometry]:
    """Those that are more than specks."""
    return [one for one in parts if shapely.area(one) > SPECK]


def _thin(parts: Sequence[Geometry], style: LegendStyle, progress: Progress) -> list[Points]:
    """Rows that cover strokes, or run along their middle."""
    rows: list[Points] = []
    for index, part in enumerate(parts):
        progress.step(index / len(parts), "Strokes of the legend")
        rows += stroke_rows(part, style.row, style.hatch * style.spot, single=style.single)
    return rows


def _filled(parts: Sequence[Geometry], style: LegendStyle, progress: Progress) -> list[Points]:
    """Rows that fill wide shapes."""
    rows: list[Points] = []
    for index, part in enumerate(parts):
        progress.step(index / len(parts), "Fills of the legend")
        rows += fill_rows(part, style.row, style.hatch * style.spot, style.hatch_angle)
    return rows


def _clipped(
    lines: Sequence[Points], shut: Geometry | None, style: LegendStyle, progress: Progress
) -> list[Points]:
    """Lines, or pulses along them, whose marks keep off what stays free."""
    if shut is not None:
        shapely.prepare(shut)
    if style.pulses:
        return _sparks([_steps(line, style.pitch) for line in lines], shut, style, progress)
    rows: list[Points] = []
    for index, line in enumerate(lines):
        progress.step(index / len(lines), "Room for the legend")
        if len(line) == 1 or along(line)[-1] < 1e-6:  # a dot drawn as a short line
            half = style.spot / 4.0
            whole = shapely.LineString([line[0] - (half, 0.0), line[0] + (half, 0.0)])
        else:
            whole = shapely.LineString(line)
        left = whole if shut is None or not shapely.intersects(shut, whole) else whole.difference(shut)
        parts = shapely.get_parts(shapely.line_merge(left) if left.geom_type == "MultiLineString" else left)
        rows += [as_points(shapely.get_coordinates(p)) for p in parts if p.length > style.spot / 4.0]
    return rows


def _steps(line: Points, pitch: float) -> Points:
    """Places along a line, evenly, ``pitch`` apart or a little less; its ends are among them."""
    place = along(line)
    total = float(place[-1])
    if total < 1e-9:
        return as_points(line[:1])
    closed = is_closed(line)
    count = max(4 if closed else 1, math.ceil(total / pitch - 1e-9))
    where = np.linspace(0.0, total, count + 1)[: count if closed else count + 1]
    return as_points(np.column_stack([np.interp(where, place, line[:, axis]) for axis in (0, 1)]))


def _sparks(
    rows: Sequence[Points], shut: Geometry | None, style: LegendStyle, progress: Progress
) -> list[Points]:
    """Rows without the pulses that would burn a pad, or burn a place twice."""
    points = np.vstack(rows) if rows else np.empty((0, 2))
    if not len(points):
        return []
    good = np.ones(len(points), dtype=bool)
    if shut is not None:
        for first in range(0, len(points), 10 * MANY):
            progress.step(0.5 * first / len(points), "Room for the legend")
            some = slice(first, first + 10 * MANY)
            good[some] = ~shapely.intersects_xy(shut, points[some])
    for one, two in cKDTree(points).query_pairs(NEAR * style.pitch, output_type="ndarray").tolist():
        if good[one] and good[two]:
            good[max(one, two)] = False
    progress.step(0.6)
    kept: list[Points] = []
    ends = np.cumsum([len(row) for row in rows])
    for first, end in zip([0, *ends[:-1].tolist()], ends.tolist(), strict=True):
        fine = np.concatenate(([False], good[first:end], [False]))
        begins, stops = np.flatnonzero(~fine[:-1] & fine[1:]), np.flatnonzero(fine[:-1] & ~fine[1:])
        kept += [as_points(points[first + a : first + b]) for a, b in zip(begins, stops, strict=True)]
    return kept


def _in_order(rows: Sequence[Points], start: NDArray[np.float64], progress: Progress) -> tuple[Points, ...]:
    """Always the row whose nearer end is nearest: rows are many and the ways between them short."""
    ends = np.array([(row[0], row[-1]) for row in rows])
    left = np.ones(len(rows), dtype=bool)
    at, ordered = start, []
    for done in range(len(rows)):
        if done % MANY == 0:
            progress.step(done / len(rows), "Order of the legend")
        away = ((ends - at) ** 2).sum(axis=2)
        away[~left] = np.inf
        index, end = divmod(int(away.argmin()), 2)
        left[index] = False
        ordered.append(as_points(rows[index][::-1]) if end else rows[index])
        at = ends[index, 1 - end]
    return tuple(ordered)


def _judged(
    rows: tuple[Points, ...], style: LegendStyle, shape: Geometry, wanted: Geometry, progress: Progress
) -> Legend:
    """The rows with how much of the legend they cover, measured square by square."""
    paths = [shapely.multipoints(row) if style.pulses else shapely.linestrings(row) for row in rows]
    marks = np.asarray(paths, dtype=object)
    asked, drawn = (np.asarray(shapely.get_parts(one), dtype=object) for one in (wanted, shape))
    trees = [shapely.STRtree(one) for one in (marks, asked, drawn)]
    x0, y0, x1, y1 = shapely.total_bounds(np.concatenate((marks, drawn))).tolist()
    corners = [
        (x, y)
        for y in np.arange(y0 - TILE / 2, y1 + TILE, TILE)
        for x in np.arange(x0 - TILE / 2, x1 + TILE, TILE)
    ]
    hit = burnt = beside = 0.0
    for index, (x, y) in enumerate(corners):
        progress.step(index / len(corners), "Judging the legend")
        square = shapely.box(x, y, x + TILE, y + TILE)
        near = marks[trees[0].query(shapely.buffer(square, style.spot))]
        if not len(near):
            continue
        marked = shapely.clip_by_rect(_marked(near, square, style.spot), x, y, x + TILE, y + TILE)
        burnt += float(marked.area)
        hit += _common(marked, asked[trees[1].query(square)])
        beside += float(marked.area) - _common(marked, drawn[trees[2].query(square)])
    room, whole = float(shapely.area(wanted)), float(shapely.area(shape))
    return Legend(
        rows,
        style.pulses,
        style.spot,
        hit / room if room else 0.0,
        max(0.0, beside / burnt) if burnt else 0.0,
        1.0 - room / whole,
    )


def _marked(near: Any, square: Geometry, spot: float) -> Geometry:
    """What marks burn in a square, and a little round it."""
    some = shapely.clip_by_rect(near, *shapely.buffer(square, spot).bounds)
    return shapely.buffer(shapely.union_all(some), spot / 2.0, quad_segs=6)


def _common(marked: Geometry, parts: Any) -> float:
    """Area that marks have in common with disjoint parts, mm²."""
    return float(shapely.area(shapely.intersection(parts, marked)).sum()) if len(parts) else 0.0
