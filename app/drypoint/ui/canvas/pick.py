"""What lies under the cursor."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from drypoint.ui.canvas.base import BasePainter
from drypoint.ui.canvas.content import Content, View
from drypoint.ui.canvas.paths import PathSet

GRASP = 8.0
"""How near the cursor must be to a line, px."""


@dataclass(frozen=True, slots=True)
class Picked:
    """A thing under the cursor.

    Attributes
    ----------
    kind : str
        "groove", "run" (of a pass), "net", "hole", "reference" or "clamp".
    index : int
        Its number among its kind; of the net, -1.
    at : tuple of float
        Nearest place on it, mm, board frame.
    name : str
        Net or nets; empty if not known.
    values : tuple of (str, float)
        What is known there: "probability", "width", "depth", "diameter" (mm).
    """

    kind: str
    index: int
    at: tuple[float, float]
    name: str = ""
    values: tuple[tuple[str, float], ...] = ()


def nearest(paths: PathSet, x: float, y: float, within: float) -> tuple[int, int, float] | None:
    """Path, vertex and distance of what is nearest to (x, y), if nearer than ``within`` mm."""
    level = paths.levels[0]
    chunks = level.crossing(x - within, y - within, x + within, y + within)
    best: tuple[int, int, float] | None = None
    for chunk in chunks.tolist():
        first, stop = int(level.starts[chunk]), int(level.stops[chunk])
        a = level.points[first : stop - 1]
        step = level.points[first + 1 : stop] - a
        square = np.maximum((step**2).sum(axis=1), 1e-18)
        share = np.clip((((x, y) - a) * step).sum(axis=1) / square, 0.0, 1.0)
        far = np.hypot(*(a + share[:, None] * step - (x, y)).T)
        k = int(np.argmin(far))
        if far[k] <= within and (best is None or far[k] < best[2]):
            best = (int(level.line[chunk]), first + k + int(share[k] > 0.5), float(far[k]))
    return best


def pick(base: BasePainter, x: float, y: float, scale: float) -> Picked | None:
    """The topmost thing at (x, y) mm."""
    content = base.content
    within = GRASP / scale
    for number, hole in enumerate(content.references):
        if np.hypot(hole.at[0] - x, hole.at[1] - y) <= max(within, 9.0 / scale):
            return Picked("reference", number, hole.at, hole.name)
    for clamp in content.clamps:
        if clamp.box[0] <= x <= clamp.box[2] and clamp.box[1] <= y <= clamp.box[3]:
            return Picked("clamp", clamp.number, (x, y))
    board = content.board
    if board is not None and len(board.holes):
        far = np.hypot(board.holes[:, 0] - x, board.holes[:, 1] - y) - board.holes[:, 2] / 2
        k = int(np.argmin(far))
        if far[k] <= 0.0:
            at = (float(board.holes[k, 0]), float(board.holes[k, 1]))
            under = base.net_at(at[0] + float(board.holes[k, 2]) / 2 + 0.05, at[1])
            return Picked(
                "hole", k, at, under.name if under else "", (("diameter", float(board.holes[k, 2])),)
            )
    found = _pick_path(content, base.view, x, y, within)
    if found is not None:
        return found
    net = base.net_at(x, y)
    return None if net is None else Picked("net", -1, (x, y), net.name)


def _pick_path(content: Content, view: View, x: float, y: float, within: float) -> Picked | None:
    kinds: list[tuple[str, PathSet | None]] = {
        View.NETS: [("groove", content.grooves)],
        View.REACH: [("groove", content.reach.whole if content.reach else content.grooves)],
        View.PASSES: [("run", content.current), *(("run", p) for p in reversed(content.earlier))],
        View.ORDER: [("run", content.order)],
    }[view]
    for kind, paths in kinds:
        hit = None if paths is None else nearest(paths, x, y, within)
        if paths is None or hit is None:
            continue
        line, vertex, _ = hit
        spot = paths.levels[0].points[vertex]
        values = tuple((name, float(column[vertex])) for name, column in paths.values.items())
        label = paths.labels[line] if line < len(paths.labels) else ""
        return Picked(kind, line, (float(spot[0]), float(spot[1])), label, values)
    return None
