"""How long a frame of the path canvas takes at a million segments, beside pyqtgraph's own curve.

Run by hand: ``python tests/benchmarks/canvas.py``. Both draw the same grooves into a picture of the
same size, antialiased, in the same run. A frame of ours is timed while panning and zooming (tiles
are painted within a budget, the rest follows), and also the whole picture from nothing.
"""

from __future__ import annotations

import os
import statistics
from time import perf_counter

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from drypoint.ui.canvas.base import BasePainter
from drypoint.ui.canvas.content import Content, View
from drypoint.ui.canvas.paths import path_set
from drypoint.ui.canvas.tiles import TileCache
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.theme.tokens import LIGHT

WIDTH, HEIGHT = 1000, 800
SEGMENTS = 1_000_000


def grooves(segments: int, per_loop: int = 500) -> list[np.ndarray]:
    """Loops round pads and tracks spread over a board of 160 × 120 mm."""
    rng = np.random.default_rng(7)
    number = segments // per_loop
    middle = rng.uniform((4, 4), (156, 116), (number, 2))
    half = np.stack((rng.uniform(0.6, 9.0, number), rng.uniform(0.6, 2.0, number)), axis=1)
    turn = rng.integers(0, 4, number) * np.pi / 4
    t = np.linspace(0, 2 * np.pi, per_loop + 1)
    made = []
    for c, h, a in zip(middle, half, turn, strict=True):
        x = h[0] * np.sign(np.cos(t)) * np.abs(np.cos(t)) ** 0.4
        y = h[1] * np.sign(np.sin(t)) * np.abs(np.sin(t)) ** 0.4
        made.append(c + np.stack((x * np.cos(a) - y * np.sin(a), x * np.sin(a) + y * np.cos(a)), axis=1))
    return made


def ours(lines: list[np.ndarray]) -> dict[str, list[float]]:
    start = perf_counter()
    paths = path_set(lines)
    prepared = perf_counter() - start
    base = BasePainter(LIGHT)
    base.view = View.NETS
    base.show(Content(grooves=paths))
    times: dict[str, list[float]] = {"prepare": [prepared], "first whole picture": [], "pan": [], "zoom": []}
    image = QImage(WIDTH, HEIGHT, QImage.Format.Format_ARGB32_Premultiplied)
    tiles = TileCache(base.paint, lambda: LIGHT.canvas)
    view = Viewport(WIDTH, HEIGHT).fitted((0, 0, 160, 120))

    def frame(kind: str, seen: Viewport, budget: float | None = None) -> bool:
        begin = perf_counter()
        painter = QPainter(image)
        limit = {} if budget is None else {"budget": budget}
        whole = tiles.draw(painter, seen, 1.0, QPointF(WIDTH / 2, HEIGHT / 2), **limit)
        painter.end()
        times[kind].append(perf_counter() - begin)
        return whole

    for _ in range(3):
        tiles.clear()
        frame("first whole picture", view, 60.0)
    for _ in range(120):
        view = view.panned(9, 5)
        frame("pan", view)
    for step in range(120):
        view = view.zoomed(1.05 if step < 80 else 1 / 1.05, 400, 300)
        frame("zoom", view)
    return times


def theirs(lines: list[np.ndarray]) -> list[float]:
    points = np.concatenate(lines)
    connect = np.ones(len(points), dtype=np.int32)
    connect[np.cumsum([len(line) for line in lines]) - 1] = 0
    widget = pg.PlotWidget(background=LIGHT.canvas)
    widget.resize(WIDTH, HEIGHT)
    curve = pg.PlotCurveItem(
        points[:, 0], points[:, 1], connect=connect, antialias=True, pen=pg.mkPen("#8C8882", width=1)
    )
    widget.addItem(curve)
    widget.setXRange(0, 160, padding=0)
    widget.setYRange(0, 120, padding=0)
    widget.show()
    image = QImage(WIDTH, HEIGHT, QImage.Format.Format_ARGB32_Premultiplied)
    times = []
    for number in range(14):
        widget.setXRange(number * 0.8, 160 + number * 0.8, padding=0)
        begin = perf_counter()
        painter = QPainter(image)
        widget.render(painter)
        painter.end()
        times.append(perf_counter() - begin)
    widget.close()
    return times[2:]


def main() -> None:
    app = QApplication.instance() or QApplication([])
    lines = grooves(SEGMENTS)
    print(f"{sum(len(line) - 1 for line in lines)} segments, {WIDTH} x {HEIGHT} px")
    mine, reference = ours(lines), statistics.median(theirs(lines))
    print(f"{'':28}{'median':>10}{'95 %':>10}{'worst':>10}   ms")
    for kind, values in mine.items():
        ms = np.array(values) * 1e3
        print(f"{kind:28}{np.median(ms):10.1f}{np.percentile(ms, 95):10.1f}{ms.max():10.1f}")
    print(f"{'pyqtgraph PlotCurveItem':28}{reference * 1e3:10.1f}")
    whole = statistics.median(mine["first whole picture"])
    both = statistics.median(mine["pan"] + mine["zoom"])
    print(f"frame while panning and zooming: {reference / both:.1f} times faster")
    print(f"whole picture from nothing: {reference / whole:.1f} times faster")
    app.quit()


if __name__ == "__main__":
    main()
