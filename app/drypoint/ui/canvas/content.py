"""What the canvas shows: frozen values, made ready off the window's thread."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum
from functools import cached_property

import numpy as np
import shapely
from numpy.typing import NDArray
from PySide6.QtCore import Qt
from PySide6.QtGui import QPainterPath
from shapely import Geometry

from drypoint.board.model import Board
from drypoint.cuts.model import Cut, CutKind
from drypoint.geometry.points import Points
from drypoint.ui.canvas.pass_drawing import ReachDrawing
from drypoint.ui.canvas.paths import PathSet
from drypoint.ui.canvas.strokes import polygon

Box = tuple[float, float, float, float]


class View(Enum):
    """What the grooves tell."""

    NETS = "nets"
    PASSES = "passes"
    REACH = "reach"
    ORDER = "order"


class Layer(Enum):
    """What can be shown or hidden."""

    COPPER = "copper"
    OTHER_COPPER = "other copper"
    GROOVES = "grooves"
    HOLES = "holes"
    OUTLINE = "outline"
    LEGEND = "legend"
    LINKS = "link wires"
    TRIALS = "trial cuts"
    CLAMPS = "clamps"
    REFERENCES = "reference holes"
    ERRORS = "expected error"
    MACHINE = "machine"


@dataclass(frozen=True, eq=False)
class Shape:
    """A named area: its rings (N, 2), holes included, to be filled odd-even."""

    name: str
    rings: tuple[Points, ...]
    bounds: Box
    area: float = 0.0

    @cached_property
    def path(self) -> QPainterPath:
        """The same for Qt, mm; may be made in any thread."""
        made = QPainterPath()
        made.setFillRule(Qt.FillRule.OddEvenFill)
        for ring in self.rings:
            made.addPolygon(polygon(ring))
            made.closeSubpath()
        return made


@dataclass(frozen=True, slots=True, eq=False)
class BoardDrawing:
    """A board made ready to be drawn, board frame; see `draw_board`."""

    name: str
    bounds: Box
    outline: Shape
    nets: tuple[Shape, ...]
    holes: Points
    """(H, 3) x, y, diameter."""
    other_copper: tuple[Shape, ...] = ()
    legend: tuple[Shape, ...] = ()
    slots: tuple[tuple[Points, float], ...] = ()
    links: tuple[Points, ...] = ()

    def prepare(self) -> BoardDrawing:
        """Make the paths of all shapes now, where nobody waits for them."""
        for shape in (self.outline, *self.nets, *self.other_copper, *self.legend):
            _ = shape.path
        return self


@dataclass(frozen=True, slots=True)
class Clamp:
    """A clamp on the blank, board frame, mm; ``keep_away`` is the distance cuts keep from it."""

    number: int
    box: Box
    keep_away: float = 0.0


@dataclass(frozen=True, slots=True)
class ReferenceHole:
    """A reference hole, board frame; ``touched`` is where the fit puts the place touched off."""

    name: str
    at: tuple[float, float]
    touched: tuple[float, float] | None = None
    coming: bool = False
    """Whether it is the one to touch next."""


@dataclass(frozen=True, slots=True, eq=False)
class ExpectedError:
    """Expected position error at a place: (2, 2) covariance, mm², board frame."""

    at: tuple[float, float]
    covariance: NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Tab:
    """A tab left standing: its middle, the direction of the cut there (unit) and its length, mm."""

    at: tuple[float, float]
    direction: tuple[float, float]
    length: float


@dataclass(frozen=True, slots=True)
class Spot:
    """A place that a finding points at; circled."""

    at: tuple[float, float]
    radius: float = 1.5


@dataclass(frozen=True, slots=True)
class PauseMark:
    """A pause before what is cut at a place: which piece of its program, from 1."""

    at: tuple[float, float]
    piece: int


@dataclass(frozen=True, slots=True, eq=False)
class Trial:
    """A trial cut in the waste: what it is, its lines, its ground, and whether it was begun already."""

    name: str
    lines: tuple[Points, ...]
    extents: tuple[Box, ...]
    begun: bool = False


@dataclass(frozen=True, slots=True, eq=False)
class Content:
    """Everything the canvas draws that does not move. Board frame, mm."""

    board: BoardDrawing | None = None
    blank: Box | None = None
    grooves: PathSet | None = None
    wide: PathSet | None = None
    """Of the grooves those of the wide bit, drawn heavier."""
    earlier: tuple[PathSet, ...] = ()
    """Passes already cut."""
    current: PathSet | None = None
    """The pass being cut or planned, in the order of cutting."""
    reach: ReachDrawing | None = None
    order: PathSet | None = None
    """Everything in the order of cutting."""
    clamps: tuple[Clamp, ...] = ()
    references: tuple[ReferenceHole, ...] = ()
    errors: tuple[ExpectedError, ...] = ()
    enlarged: float = 1.0
    """How many times residuals and expected errors are enlarged."""
    tabs: tuple[Tab, ...] = ()
    touches: Points = field(default_factory=lambda: np.zeros((0, 2)))
    zero: tuple[float, float] | None = None
    """Work zero."""
    stale: bool = False
    """Whether the reach shown no longer holds."""
    before: tuple[Points, ...] = ()
    """Lines of where the board lay before it was found anew, seen from where it lies now."""
    pauses: tuple[PauseMark, ...] = ()
    painted: Shape | None = None
    """What was painted to be cut again."""
    suspect: tuple[PathSet, ...] = ()
    """What was cut since a check failed: it may not be where or as deep as it should."""
    trials: tuple[Trial, ...] = ()

    @property
    def bounds(self) -> Box | None:
        """What to fit into view: the blank, the board and the clamps."""
        boxes = [b for b in (self.blank, self.board.bounds if self.board else None) if b is not None]
        boxes += [clamp.box for clamp in self.clamps]
        for paths in (self.grooves, self.order):
            if not boxes and paths is not None and paths.bounds is not None:
                boxes.append(paths.bounds)
        if not boxes:
            return None
        every = np.array(boxes)
        low, high = every[:, :2].min(axis=0), every[:, 2:].max(axis=0)
        return float(low[0]), float(low[1]), float(high[0]), float(high[1])


def draw_shape(name: str, geometry: Geometry) -> Shape:
    """The rings of a (multi)polygon."""
    parts = [p for p in shapely.get_parts(geometry) if p.geom_type == "Polygon" and not p.is_empty]
    rings = tuple(np.asarray(ring.coords)[:, :2] for p in parts for ring in (p.exterior, *p.interiors))
    bounds = tuple(float(v) for v in shapely.total_bounds(parts)) if parts else (0.0, 0.0, 0.0, 0.0)
    return Shape(name, rings, (bounds[0], bounds[1], bounds[2], bounds[3]), float(shapely.area(geometry)))


def draw_board(board: Board) -> BoardDrawing:
    """A board made ready to be drawn; best in another thread than the window's."""
    outline = draw_shape("outline", board.outline)
    return BoardDrawing(
        name=board.name,
        bounds=outline.bounds,
        outline=outline,
        nets=tuple(draw_shape(name, shape) for name, shape in board.nets.items()),
        holes=np.array([(h.x, h.y, h.diameter) for h in board.holes], dtype=float).reshape(-1, 3),
        other_copper=tuple(draw_shape(name, shape) for name, shape in board.other_copper.items()),
        legend=() if board.legend is None else (draw_shape("legend", board.legend),),
        slots=tuple((slot.path, slot.diameter) for slot in board.slots),
        links=tuple(link.path for link in board.links),
    ).prepare()


def find_tabs(cuts: tuple[Cut, ...]) -> tuple[Tab, ...]:
    """The tabs of outline cuts, on the board's own edge, with the direction of the cut at each."""
    outlines = [cut for cut in cuts if cut.kind is CutKind.OUTLINE and len(cut.path) > 2]
    areas = [_signed_area(cut.path) for cut in outlines]
    largest = max((abs(area) for area in areas), default=0.0)
    found = []
    for cut, area in zip(outlines, areas, strict=True):
        if cut.tabs is None:
            continue
        # the board lies inside the outer cut and outside the cut-outs, half a bit away
        to_board = 0.5 * getattr(cut.bit, "diameter", 0.0) * (1.0 if area > 0 else -1.0)
        if abs(area) < largest:
            to_board = -to_board
        a, step = cut.path[:-1], np.diff(cut.path, axis=0)
        square = np.maximum((step**2).sum(axis=1), 1e-18)
        for tab in cut.tabs:
            share = np.clip(((tab - a) * step).sum(axis=1) / square, 0.0, 1.0)
            nearest = int(np.argmin(((a + share[:, None] * step - tab) ** 2).sum(axis=1)))
            x, y = step[nearest] / np.sqrt(square[nearest])
            place = (float(tab[0] - to_board * y), float(tab[1] + to_board * x))
            found.append(Tab(place, (float(x), float(y)), cut.tab_width))
    return tuple(found)


def _signed_area(path: Points) -> float:
    """Area enclosed by a closed path, mm²; positive anticlockwise."""
    x, y = path[:, 0], path[:, 1]
    return float(0.5 * (x[:-1] * y[1:] - x[1:] * y[:-1]).sum())
