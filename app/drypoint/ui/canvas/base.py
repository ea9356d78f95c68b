"""The part of the picture that stands still while the machine moves, painted tile by tile."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QTransform

from drypoint.geometry.points import Points
from drypoint.ui.canvas.content import BoardDrawing, Content, Layer, Shape, View
from drypoint.ui.canvas.paths import Ints, Level, PathSet, path_set
from drypoint.ui.canvas.strokes import (
    DASH,
    GAP,
    Frame,
    dotted,
    patterned,
    pen,
    polygon,
    solid,
    ticks,
    upto,
    visible,
)
from drypoint.ui.theme.tokens import CATEGORIES, Tokens


def colours_of_nets(nets: Sequence[Shape]) -> dict[str, str]:
    """A colour for each net: the largest stays copper (empty), the next get the categories in turn."""
    order = sorted(range(len(nets)), key=lambda i: -nets[i].area)
    return {nets[i].name: CATEGORIES[rank % len(CATEGORIES)] for rank, i in enumerate(order)}


class BasePainter:
    """Paints blank, copper, grooves, outline and holes into any part of the plane."""

    def __init__(self, tokens: Tokens) -> None:
        self.tokens = tokens
        self.content = Content()
        self.view = View.NETS
        self.hidden: frozenset[Layer] = frozenset()
        self.by_net = False
        self.travelled = 0.0
        """How far the order or the current pass is cut, mm."""
        self._nets: list[tuple[Shape, QPainterPath]] = []
        self._other: list[tuple[Shape, QPainterPath]] = []
        self._legend = QPainterPath()
        self._outline = QPainterPath()
        self._colours: dict[str, str] = {}
        self._board: BoardDrawing | None = None

    def show(self, content: Content) -> None:
        """Take another content; Qt paths are made again only where the board changed."""
        self.content = content
        if content.board is self._board:
            return
        self._board = board = content.board
        nets = board.nets if board else ()
        self._nets = [(shape, shape.path) for shape in nets]
        self._other = [(shape, shape.path) for shape in (board.other_copper if board else ())]
        self._legend = QPainterPath()
        for shape in board.legend if board else ():
            self._legend.addPath(shape.path)
        self._outline = board.outline.path if board else QPainterPath()
        self._colours = colours_of_nets(nets)

    def net_path(self, name: str) -> QPainterPath | None:
        """The area of a net, mm."""
        return next((path for shape, path in self._nets if shape.name == name), None)

    def net_at(self, x: float, y: float) -> Shape | None:
        """The net whose copper lies at a place."""
        for shape, path in self._nets:
            x0, y0, x1, y1 = shape.bounds
            if x0 <= x <= x1 and y0 <= y <= y1 and path.contains(QPointF(x, y)):
                return shape
        return None

    def moving(self) -> PathSet | None:
        """The paths that `travelled` counts along in this view."""
        if self.view is View.ORDER:
            return self.content.order
        return self.content.current if self.view is View.PASSES else None

    def paint(self, painter: QPainter, frame: Frame) -> None:
        """Paint everything within ``frame.box``."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        scale = frame.scale
        to_px = QTransform(scale, 0.0, 0.0, -scale, -frame.origin[0], -frame.origin[1])
        self._paint_blank(painter, frame)
        below = self.view is View.NETS  # there the copper's own outline matters
        if below and Layer.GROOVES not in self.hidden:
            self._paint_grooves(painter, frame)
        self._paint_copper(painter, frame, to_px)
        if not below and Layer.GROOVES not in self.hidden:
            self._paint_grooves(painter, frame)
        self._paint_suspect(painter, frame)
        self._paint_over_copper(painter, frame, to_px)
        if Layer.OUTLINE not in self.hidden and not self._outline.isEmpty():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(pen(self.tokens.ink, 2.0))
            painter.drawPath(to_px.map(self._outline))
            self._paint_tabs(painter, frame)
        if Layer.HOLES not in self.hidden:
            self._paint_holes(painter, frame)

    def _paint_blank(self, painter: QPainter, frame: Frame) -> None:
        box = self.content.blank
        if box is None:
            return
        corners = frame.to_px(np.array([[box[0], box[3]], [box[2], box[1]]]))
        place = QRectF(*corners[0], *(corners[1] - corners[0]))
        painter.setPen(pen(self.tokens.off, 1.0))
        painter.setBrush(QColor(self.tokens.blank))
        painter.drawRect(place)

    def _paint_copper(self, painter: QPainter, frame: Frame, to_px: QTransform) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        if Layer.OTHER_COPPER not in self.hidden:
            painter.setBrush(QBrush(QColor(self.tokens.off), Qt.BrushStyle.Dense6Pattern))
            for shape, path in self._other:
                if _meets(shape.bounds, frame.box):
                    painter.drawPath(to_px.map(path))
        if Layer.COPPER in self.hidden:
            return
        outline = self.view is View.NETS
        for shape, path in self._nets:
            if not _meets(shape.bounds, frame.box):
                continue
            colour = self._colours[shape.name] if self.by_net and outline else self.tokens.net
            painter.setBrush(QColor(colour))
            thin = min(1.2, max(0.6, frame.scale / 14.0))  # a dense board seen whole stays light
            painter.setPen(pen(self.tokens.ink, thin) if outline else Qt.PenStyle.NoPen)
            painter.drawPath(to_px.map(path))

    def _paint_grooves(self, painter: QPainter, frame: Frame) -> None:
        match self.view:
            case View.NETS:
                self._paint_planned(painter, frame)
            case View.PASSES:
                for paths in self.content.earlier:
                    self._line(painter, frame, paths, self.tokens.off, 1.2)
                self._progress(painter, frame, self.content.current, 3.6)
            case View.ORDER:
                self._progress(painter, frame, self.content.order, 2.2)
            case View.REACH:
                if self.content.reach is None:
                    self._paint_planned(painter, frame)
                else:
                    self._paint_reach(painter, frame)

    def _paint_planned(self, painter: QPainter, frame: Frame) -> None:
        """Grooves as they are laid; those of the wide bit heavier."""
        self._line(painter, frame, self.content.grooves, self.tokens.off, 1.0)
        self._line(painter, frame, self.content.wide, self.tokens.off, 2.6)

    def _paint_suspect(self, painter: QPainter, frame: Frame) -> None:
        """What was cut since a check failed, over everything else: broken white on dark."""
        for paths in self.content.suspect:
            level, chunks = visible(paths, frame, 8.0)
            solid(painter, level, chunks, frame, pen(self.tokens.casing, 4.4))
            dashes = pen("#FFFFFF", 2.0)
            dashes.setDashPattern([2.0, 3.0])
            patterned(painter, level, chunks, frame, dashes)

    def _line(
        self, painter: QPainter, frame: Frame, paths: PathSet | None, colour: str, width: float
    ) -> None:
        if paths is not None:
            solid(painter, *visible(paths, frame, width), frame, pen(colour, width))

    def _progress(self, painter: QPainter, frame: Frame, paths: PathSet | None, width: float) -> None:
        if paths is None:
            return
        done = partial(solid, with_pen=pen(self.tokens.ink, width))
        ahead = partial(patterned, with_pen=dotted(self.tokens.ink, width - 0.2))
        upto(painter, paths, frame, self.travelled, done, ahead)

    def _paint_reach(self, painter: QPainter, frame: Frame) -> None:
        reach = self.content.reach
        if reach is not None:
            for state, paths in enumerate((reach.through, reach.doubtful, reach.not_through)):
                level, chunks = visible(paths, frame, 8.0)
                paint_reach(painter, self.tokens, state, level, chunks, frame)

    def _paint_over_copper(self, painter: QPainter, frame: Frame, to_px: QTransform) -> None:
        board = self.content.board
        if Layer.LEGEND not in self.hidden and not self._legend.isEmpty():
            painter.setPen(pen(self.tokens.ink2, 0.8))
            painter.setBrush(QBrush(QColor(self.tokens.ink2), Qt.BrushStyle.Dense4Pattern))
            painter.drawPath(to_px.map(self._legend))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if Layer.LINKS not in self.hidden and board is not None:
            for path in board.links:
                for colour, width in ((self.tokens.panel, 4.4), (self.tokens.reference, 2.2)):
                    painter.setPen(pen(colour, width))
                    painter.drawPolyline(polygon(frame.to_px(path)))

    def _paint_tabs(self, painter: QPainter, frame: Frame) -> None:
        for tab in self.content.tabs:
            half = np.array(tab.direction) * tab.length / 2
            ends = frame.to_px(np.array([np.array(tab.at) - half, np.array(tab.at) + half]))
            for colour, width in ((self.tokens.ink, 5.0), (self.tokens.panel, 2.2)):
                painter.setPen(pen(colour, width))
                painter.drawPolyline(polygon(ends))

    def _paint_holes(self, painter: QPainter, frame: Frame) -> None:
        board = self.content.board
        if board is None:
            return
        painter.setPen(pen(self.tokens.ink2, 1.1))
        painter.setBrush(QColor(self.tokens.canvas))
        x0, y0, x1, y1 = frame.box
        x, y, d = board.holes.T if len(board.holes) else np.zeros((3, 0))
        inside = (x + d > x0) & (x - d < x1) & (y + d > y0) & (y - d < y1)
        for (px, py), r in zip(
            frame.to_px(board.holes[inside, :2]).tolist(),
            (d[inside] / 2 * frame.scale).tolist(),
            strict=True,
        ):
            painter.drawEllipse(QPointF(px, py), max(r, 1.0), max(r, 1.0))
        for path, width in board.slots:
            px_width = max(width * frame.scale, 2.0)
            for colour, extra in ((self.tokens.ink2, 1.1), (self.tokens.canvas, -1.1)):
                stroke = pen(colour, px_width + extra)
                stroke.setCapStyle(Qt.PenCapStyle.RoundCap)
                painter.setPen(stroke)
                painter.drawPolyline(polygon(frame.to_px(path)))


def paint_reach(
    painter: QPainter, tokens: Tokens, state: int, level: Level, chunks: Ints, frame: Frame
) -> None:
    """Paths of one state (0 through, 1 doubtful, 2 not through), told apart by more than colour."""
    if state == 0:
        solid(painter, level, chunks, frame, pen(tokens.through, 1.7))
    elif state == 1:
        solid(painter, level, chunks, frame, pen(tokens.casing, 5.2))
        dashes = pen(tokens.doubtful, 3.2)
        dashes.setDashPattern([DASH / 3.2, GAP / 3.2])
        patterned(painter, level, chunks, frame, dashes)
    else:
        ticks(painter, level, chunks, frame, pen(tokens.ink, 1.6))
        solid(painter, level, chunks, frame, pen(tokens.casing, 6.0))
        solid(painter, level, chunks, frame, pen(tokens.not_through, 3.8))


def paint_sample_reach(painter: QPainter, tokens: Tokens, state: int, line: Points) -> None:
    """The same pens along a line given in px, for legends."""
    level = path_set([line * (1.0, -1.0)]).levels[0]
    frame = Frame(1.0, (0.0, 0.0), (-1e3, -1e3, 1e3, 1e3))
    paint_reach(painter, tokens, state, level, np.arange(len(level.starts)), frame)


def _meets(a: tuple[float, float, float, float], b: tuple[float, float, float, float]) -> bool:
    return a[0] <= b[2] and a[2] >= b[0] and a[1] <= b[3] and a[3] >= b[1]
