"""The legend as marks of a laser: rows of separate pulses ("spark rows") or continuous lines.

Strokes become rows along their centre lines; shapes wider than a stroke become an outline and a
hatch; pads and holes stay free. All in the board frame: the fit that places the marks also mirrors
them, when the legend is on the side that is not milled.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import cKDTree
from shapely import Geometry, MultiPolygon, Point

from drypoint.board.model import Board
from drypoint.cuts.medial import centre_lines_of
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, along, as_points, is_closed
from drypoint.progress import Progress

NARROWEST = 0.1
"""Strokes narrower than this, mm, are not looked for: finer than any legend that can be read."""
SHORTEST = 0.5
"""Centre lines shorter than this many spots are twigs, unless nothing else marks their shape."""
NEAR = 0.6
"""Two pulses nearer to each other than this share of the pitch are one."""


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
        A shape wider than this, mm, is filled with a hatch; narrower ones get one row.
    hatch : float
        Distance between the rows of a hatch, in spots.
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
    hatch: float = 0.9
    hatch_angle: float = math.radians(45.0)
    clear: float = 0.1
    ring: float = 0.4
    trace: float = 0.8
    plane: float = 40.0


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


def wide_parts(shape: Geometry, width: float) -> Geometry:
    """What of a shape is wider than ``width`` mm: opened by a disc, corners given back."""
    half = width / 2.0
    core = shapely.buffer(shape, -half)
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
    wide = wide_parts(shape, chosen.widest)
    lines = _thin(shapely.difference(shape, wide), chosen, told.part(0.05, 0.5))
    told.step(0.5, "Fills of the legend")
    lines += _filled(wide, chosen)
    rows = _clipped(lines, middle, chosen)
    if not rows:
        raise PlanError(
            "Nothing of the legend is left beside pads and holes.", "Legend", "Allow a smaller clearance."
        )
    told.step(0.7, "Order of the legend")
    ordered = _in_order(rows, np.zeros(2) if start is None else np.asarray(start, dtype=np.float64))
    told.step(0.9, "Judging the legend")
    return _judged(ordered, chosen, shape, wanted)


def _check(style: LegendStyle) -> None:
    for name, value in (("pitch", style.pitch), ("spot", style.spot), ("hatch", style.hatch)):
        if not (math.isfinite(value) and value > 0):
            raise PlanError(f"The {name} of the legend must be above 0.", "Legend")
    if style.widest < style.spot:
        raise PlanError("Strokes cannot be narrower than the spot.", "Legend", "Set a wider stroke.")


def _room(shape: Geometry, style: LegendStyle, free: Geometry | None) -> tuple[Geometry, Geometry | None]:
    """What of the legend may be marked, and where the middle of a mark may not be."""
    if free is None or shapely.is_empty(free):
        return shape, None
    shut = shapely.buffer(free, style.clear + style.spot / 2.0)
    return shapely.difference(shape, shapely.buffer(free, style.clear)), shut


def _thin(shape: Geometry, style: LegendStyle, progress: Progress) -> list[Points]:
    """Rows along strokes; a blob gets a hatch, or one mark in its middle."""
    parts = [p for p in shapely.get_parts(shape) if p.geom_type == "Polygon" and p.area > NARROWEST**2 / 4]
    of: list[list[Points]] = []
    for index, part in enumerate(parts):
        progress.step(index / len(parts), "Centre lines of the legend")
        of.append(list(centre_lines_of(part, NARROWEST)))
    rows: list[Points] = []
    for part, lines in zip(parts, of, strict=True):
        kept = [line for line in lines if along(line)[-1] >= SHORTEST * style.spot]
        length = sum(float(along(line)[-1]) for line in kept)
        if length * style.widest < part.area * 0.5:
            kept = _filled(part, style) if part.area > 4.0 * style.spot**2 else []
        if not kept:
            middle = shapely.get_coordinates(shapely.maximum_inscribed_circle(part))[0]
            kept = [as_points([middle])]
        rows += kept
    return rows


def _filled(shape: Geometry, style: LegendStyle) -> list[Points]:
    """Outline half a spot inside, and a hatch within it."""
    inner = shapely.buffer(shape, -style.spot / 2.0)
    rows: list[Points] = []
    for part in shapely.get_parts(inner):
        if part.geom_type == "Polygon" and not part.is_empty:
            rings = [part.exterior, *part.interiors]
            rows += [as_points(shapely.get_coordinates(ring.simplify(0.005))) for ring in rings]
    return rows + _hatch(shapely.buffer(inner, -style.hatch * style.spot), style)


def _hatch(shape: Geometry, style: LegendStyle) -> list[Points]:
    """Parallel rows through a shape."""
    if shapely.is_empty(shape):
        return []
    x0, y0, x1, y1 = shapely.bounds(shape).tolist()
    centre, reach = np.array([(x0 + x1) / 2.0, (y0 + y1) / 2.0]), math.hypot(x1 - x0, y1 - y0) / 2.0 + 1.0
    way = np.array([math.cos(style.hatch_angle), math.sin(style.hatch_angle)])
    side = np.array([-way[1], way[0]])
    apart = style.hatch * style.spot
    count = math.ceil(reach / apart)
    offsets = np.arange(-count, count + 1)[:, None] * apart * side + centre
    ends = np.stack((offsets - reach * way, offsets + reach * way), axis=1)
    lines = np.asarray(shapely.linestrings(ends), dtype=object)
    shapely.prepare(shape)
    crossing = lines[shapely.intersects(lines, shape)]
    parts = shapely.get_parts(shapely.intersection(crossing, shape))
    return [as_points(shapely.get_coordinates(p)) for p in parts if p.geom_type == "LineString"]


def _clipped(lines: Sequence[Points], shut: Geometry | None, style: LegendStyle) -> list[Points]:
    """Lines, or pulses along them, whose marks keep off what stays free."""
    if shut is not None:
        shapely.prepare(shut)
    if style.pulses:
        return _sparks([_steps(line, style.pitch) for line in lines], shut, style)
    rows: list[Points] = []
    for line in lines:
        if len(line) == 1 or along(line)[-1] < 1e-6:  # a dot drawn as a short line
            half = style.spot / 4.0
            whole = shapely.LineString([line[0] - (half, 0.0), line[0] + (half, 0.0)])
        else:
            whole = shapely.LineString(line)
        left = whole if shut is None else whole.difference(shut)
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
    count = max(1, math.ceil(total / pitch - 1e-9))
    where = np.linspace(0.0, total, count + 1)[: count if closed else count + 1]
    return as_points(np.column_stack([np.interp(where, place, line[:, axis]) for axis in (0, 1)]))


def _sparks(rows: Sequence[Points], shut: Geometry | None, style: LegendStyle) -> list[Points]:
    """Rows without the pulses that would burn a pad, or burn a place twice."""
    points = np.vstack(rows) if rows else np.empty((0, 2))
    if not len(points):
        return []
    row = np.repeat(np.arange(len(rows)), [len(r) for r in rows])
    good = np.ones(len(points), dtype=bool)
    if shut is not None:
        good &= ~shapely.intersects_xy(shut, points)
    for one, two in cKDTree(points).query_pairs(NEAR * style.pitch, output_type="ndarray").tolist():
        if good[one] and good[two]:
            good[max(one, two)] = False
    kept: list[Points] = []
    for number in range(len(rows)):
        mine = np.flatnonzero(row == number)
        breaks = np.flatnonzero(~good[mine])
        for part in np.split(mine, np.unique(np.concatenate((breaks, breaks + 1)))):
            if len(part) and good[part].all():
                kept.append(as_points(points[part]))
    return kept


def _in_order(rows: Sequence[Points], start: NDArray[np.float64]) -> tuple[Points, ...]:
    """Always the row whose nearer end is nearest: rows are many and the ways between them short."""
    ends = np.array([(row[0], row[-1]) for row in rows])
    left = np.ones(len(rows), dtype=bool)
    at, ordered = start, []
    for _ in rows:
        away = ((ends - at) ** 2).sum(axis=2)
        away[~left] = np.inf
        index, end = divmod(int(away.argmin()), 2)
        left[index] = False
        ordered.append(as_points(rows[index][::-1]) if end else rows[index])
        at = ends[index, 1 - end]
    return tuple(ordered)


def _judged(rows: tuple[Points, ...], style: LegendStyle, shape: Geometry, wanted: Geometry) -> Legend:
    """The rows with how much of the legend they cover."""
    paths = [shapely.MultiPoint(row) if style.pulses else shapely.LineString(row) for row in rows]
    marked = shapely.buffer(shapely.union_all(paths), style.spot / 2.0)
    room, area = float(shapely.area(wanted)), float(shapely.area(marked))
    covered = float(shapely.area(shapely.intersection(marked, wanted))) / room if room else 0.0
    spilled = float(shapely.area(shapely.difference(marked, shape))) / area
    return Legend(rows, style.pulses, style.spot, covered, spilled, 1.0 - room / float(shapely.area(shape)))
