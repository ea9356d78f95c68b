"""Strokes of path sets: plain, dashed and ticked, with pens that keep their width in pixels."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from pyqtgraph.functions import arrayToQPolygonF
from PySide6.QtCore import QLineF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from drypoint.ui.canvas.paths import Level, PathSet

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

TICK_MM, TICK_PX = 0.6, 5.0
"""Pitch of cross ticks: on the board, and the least on the screen."""
TICK_HALF = 4.5
"""Half the length of a cross tick, px."""
DASH, GAP = 6.0, 4.0
"""Dashes of a doubtful groove, px."""
DOT = 5.5
"""Pitch of the dots still to cut, px."""


@dataclass(frozen=True, slots=True)
class Frame:
    """Where strokes go: px = mm · scale (y down) − origin; ``box`` is the part painted, mm."""

    scale: float
    origin: tuple[float, float]
    box: tuple[float, float, float, float]
    ratio: float = 1.0
    """Device pixels per pixel."""

    def to_px(self, points: Floats) -> Floats:
        """(N, 2) mm as px."""
        return points * (self.scale, -self.scale) - self.origin


def polygon(points: Floats) -> QPolygonF:
    """(N, 2) px as Qt's polygon, copied in one piece."""
    made: QPolygonF = arrayToQPolygonF(points[:, 0], points[:, 1])
    return made


def pen(colour: str, width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine) -> QPen:
    """A pen with round joints that do not widen at sharp corners."""
    made = QPen(QColor(colour), width, style)
    made.setCapStyle(Qt.PenCapStyle.FlatCap)
    made.setJoinStyle(Qt.PenJoinStyle.BevelJoin if width < 2.5 else Qt.PenJoinStyle.RoundJoin)
    return made


def dotted(colour: str, width: float) -> QPen:
    """Round dots."""
    made = QPen(QColor(colour), width)
    made.setCapStyle(Qt.PenCapStyle.RoundCap)
    made.setDashPattern([0.01, DOT / width])
    return made


def visible(paths: PathSet, frame: Frame, spare: float) -> tuple[Level, Ints]:
    """The level to draw and its chunks within the frame, ``spare`` px around included."""
    level = paths.level(frame.scale * frame.ratio)
    x0, y0, x1, y1 = frame.box
    more = spare / frame.scale
    return level, level.crossing(x0 - more, y0 - more, x1 + more, y1 + more)


def solid(painter: QPainter, level: Level, chunks: Ints, frame: Frame, with_pen: QPen) -> None:
    """Plain strokes."""
    painter.setPen(with_pen)
    for first, stop in level.runs(chunks):
        painter.drawPolyline(polygon(frame.to_px(level.points[first:stop])))


def patterned(painter: QPainter, level: Level, chunks: Ints, frame: Frame, with_pen: QPen) -> None:
    """Dashes or dots whose phase follows the length travelled, so that tiles and chunks agree."""
    own = QPen(with_pen)
    for first, stop in level.runs(chunks):
        own.setDashOffset(float(level.along[first]) * frame.scale / own.widthF())
        painter.setPen(own)
        painter.drawPolyline(polygon(frame.to_px(level.points[first:stop])))


def ticks(painter: QPainter, level: Level, chunks: Ints, frame: Frame, with_pen: QPen) -> None:
    """Short strokes across the path at even distances."""
    pitch = max(TICK_MM, TICK_PX / frame.scale)
    painter.setPen(with_pen)
    for first, stop in level.runs(chunks):
        along = level.along[first:stop]
        count = np.arange(np.ceil(along[0] / pitch), np.floor(along[-1] / pitch) + 1)
        if not len(count):
            count = np.array([0.5 * (along[0] + along[-1]) / pitch])
        px = frame.to_px(level.points[first:stop])
        at = np.clip(np.searchsorted(along, count * pitch, side="right") - 1, 0, len(along) - 2)
        step = np.diff(px, axis=0)[at]
        span = np.maximum(np.diff(along)[at], 1e-9)
        spot = px[at] + ((count * pitch - along[at]) / span)[:, None] * step
        across = np.stack((-step[:, 1], step[:, 0]), axis=1)
        across *= TICK_HALF / np.maximum(np.hypot(*across.T), 1e-9)[:, None]
        a, b = (spot - across).tolist(), (spot + across).tolist()
        painter.drawLines([QLineF(p[0], p[1], q[0], q[1]) for p, q in zip(a, b, strict=True)])


Stroke = Callable[[QPainter, Level, Ints, Frame], None]


def upto(
    painter: QPainter,
    paths: PathSet,
    frame: Frame,
    travelled: float,
    done: Stroke,
    ahead: Stroke,
) -> None:
    """Paths drawn one way as far as they are travelled and another way beyond."""
    level, chunks = visible(paths, frame, 6.0)
    if not len(chunks):
        return
    begin, end = level.along[level.starts[chunks]], level.along[level.stops[chunks] - 1]
    ahead(painter, level, chunks[begin >= travelled], frame)
    done(painter, level, chunks[end <= travelled], frame)
    for chunk in chunks[(begin < travelled) & (end > travelled)]:
        for part, stroke in zip(_halves(level, int(chunk), travelled), (done, ahead), strict=True):
            stroke(painter, part, np.zeros(1, dtype=np.int64), frame)


def _halves(level: Level, chunk: int, travelled: float) -> tuple[Level, Level]:
    """One chunk cut in two where the travelled length falls."""
    first, stop = int(level.starts[chunk]), int(level.stops[chunk])
    points, along = level.points[first:stop], level.along[first:stop]
    at = [float(np.interp(travelled, along, points[:, k])) for k in (0, 1)]
    cut = int(np.searchsorted(along, travelled))
    before = (np.vstack((points[:cut], [at])), np.append(along[:cut], travelled))
    after = (np.vstack(([at], points[cut:])), np.append(travelled, along[cut:]))
    return _single(level, *before), _single(level, *after)


def _single(level: Level, points: Floats, along: Floats) -> Level:
    zero = np.zeros(1, dtype=np.int64)
    return Level(level.tolerance, points, along, zero, zero + len(points), level.boxes[:1], zero)
