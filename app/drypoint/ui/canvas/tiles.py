"""The standing picture kept in tiles: panning moves them, zooming stretches them until fresh.

Each frame paints missing tiles only for a few milliseconds, those nearest the cursor first, and
leaves the rest to the next; what is missing meanwhile is filled from the last complete picture.
So a frame is short however much there is to draw.
"""

from __future__ import annotations

import math
from collections import OrderedDict
from collections.abc import Callable
from time import perf_counter

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPixmap

from drypoint.ui.canvas.strokes import Frame
from drypoint.ui.canvas.viewport import Viewport

SIZE = 128
"""Edge of a tile, px."""
BUDGET = 0.006
"""Time given to new tiles in one frame, s."""
KEPT = 900
"""Tiles kept for going back."""

Key = tuple[int, int]
Box = tuple[float, float, float, float]


class TileCache:
    """Tiles of a picture that ``paint`` can paint anywhere at any scale."""

    def __init__(self, paint: Callable[[QPainter, Frame], None], ground: Callable[[], str]) -> None:
        self._paint = paint
        self._ground = ground
        self._tiles: OrderedDict[Key, QPixmap] = OrderedDict()
        self._old: set[Key] = set()
        self._scale = 0.0
        self._ratio = 1.0
        self._backdrop: tuple[QPixmap, Viewport] | None = None
        self._last: Viewport | None = None

    def clear(self) -> None:
        """Forget everything: the picture is another."""
        self._tiles.clear()
        self._old.clear()
        self._backdrop = None

    def refresh(self) -> None:
        """All tiles are out of date, but serve until they are painted anew."""
        self._old = set(self._tiles)

    def refresh_box(self, box: Box) -> None:
        """Tiles that meet ``box`` (mm) are out of date."""
        edge = SIZE / self._scale if self._scale else 1.0
        spare = 8.0 / self._scale if self._scale else 0.0
        x0, x1 = math.floor((box[0] - spare) / edge), math.floor((box[2] + spare) / edge)
        y0, y1 = math.floor((-box[3] - spare) / edge), math.floor((-box[1] + spare) / edge)
        for key in self._tiles:
            if x0 <= key[0] <= x1 and y0 <= key[1] <= y1:
                self._old.add(key)

    def draw(
        self,
        painter: QPainter,
        view: Viewport,
        ratio: float,
        focus: QPointF,
        budget: float = BUDGET,
    ) -> bool:
        """Draw the picture; False while tiles are missing and another frame is wanted."""
        if view.scale != self._scale or ratio != self._ratio:
            self._keep_backdrop(ratio)
            self._tiles.clear()
            self._old.clear()
            self._scale, self._ratio = view.scale, ratio
        left = round((view.x * view.scale - view.width / 2) * ratio) / ratio
        top = round((-view.y * view.scale - view.height / 2) * ratio) / ratio
        wanted = self._wanted(left, top, view, focus)
        complete = self._fill(wanted, view.scale, ratio, budget)
        if not complete:
            self._draw_backdrop(painter, view)
        for key in wanted:
            tile = self._tiles.get(key)
            if tile is not None:
                painter.drawPixmap(QPointF(key[0] * SIZE - left, key[1] * SIZE - top), tile)
        self._last = view
        return complete

    def _wanted(self, left: float, top: float, view: Viewport, focus: QPointF) -> list[Key]:
        columns = range(math.floor(left / SIZE), math.floor((left + view.width - 1) / SIZE) + 1)
        rows = range(math.floor(top / SIZE), math.floor((top + view.height - 1) / SIZE) + 1)
        x, y = (left + focus.x()) / SIZE - 0.5, (top + focus.y()) / SIZE - 0.5
        keys = [(i, j) for i in columns for j in rows]
        return sorted(keys, key=lambda k: (k[0] - x) ** 2 + (k[1] - y) ** 2)

    def _fill(self, wanted: list[Key], scale: float, ratio: float, budget: float) -> bool:
        end = perf_counter() + budget
        missing = [key for key in wanted if key not in self._tiles]
        missing += [key for key in wanted if key in self._old]
        for number, key in enumerate(missing):
            if number and perf_counter() > end:
                return False
            self._tiles[key] = self._painted(key, scale, ratio)
            self._tiles.move_to_end(key)
            self._old.discard(key)
        while len(self._tiles) > max(KEPT, 2 * len(wanted)):
            dropped, _ = self._tiles.popitem(last=False)
            self._old.discard(dropped)
        return True

    def _painted(self, key: Key, scale: float, ratio: float) -> QPixmap:
        tile = QPixmap(round(SIZE * ratio), round(SIZE * ratio))
        tile.setDevicePixelRatio(ratio)
        tile.fill(QColor(self._ground()))
        x, y = float(key[0] * SIZE), float(key[1] * SIZE)
        box = (x / scale, -(y + SIZE) / scale, (x + SIZE) / scale, -y / scale)
        painter = QPainter(tile)
        self._paint(painter, Frame(scale, (x, y), box, ratio))
        painter.end()
        return tile

    def _keep_backdrop(self, ratio: float) -> None:
        """What is on the screen now becomes the stand-in for tiles to come."""
        if self._last is None or not self._tiles:
            return
        view = self._last
        picture = QPixmap(round(view.width * ratio), round(view.height * ratio))
        picture.setDevicePixelRatio(ratio)
        picture.fill(QColor(self._ground()))
        painter = QPainter(picture)
        self._draw_backdrop(painter, view)
        left, top = view.x * self._scale - view.width / 2, -view.y * self._scale - view.height / 2
        for (i, j), tile in self._tiles.items():
            place = QPointF(i * SIZE - left, j * SIZE - top)
            if -SIZE < place.x() < view.width and -SIZE < place.y() < view.height:
                painter.drawPixmap(place, tile)
        painter.end()
        self._backdrop = (picture, view)

    def _draw_backdrop(self, painter: QPainter, view: Viewport) -> None:
        if self._backdrop is None:
            return
        picture, then = self._backdrop
        x0, y0, x1, y1 = then.bounds
        (left, top), (right, bottom) = view.spot(x0, y1), view.spot(x1, y0)
        place = QRectF(left, top, right - left, bottom - top)
        seen = place.intersected(QRectF(0.0, 0.0, view.width, view.height))
        if seen.isEmpty() or place.width() <= 0.0:
            return
        ratio = picture.devicePixelRatio()
        zoom = then.width / place.width() * ratio
        source = QRectF(
            (seen.x() - place.x()) * zoom,
            (seen.y() - place.y()) * zoom,
            seen.width() * zoom,
            seen.height() * zoom,
        )
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, False)
        painter.drawPixmap(seen, picture, source)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, True)
