"""Pictures of a job as SVG, without Qt: board, cuts, reach, surface."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from shapely import Geometry, contains_xy, prepare

from drypoint.board.model import Board
from drypoint.cuts.model import Cut, IslandCheck
from drypoint.geometry.points import Points, as_points
from drypoint.passes.model import NOT_THROUGH, THROUGH, ReachMap
from drypoint.session import svg
from drypoint.session.layout import Layout
from drypoint.wording import say

_VIRIDIS = (
    (68, 1, 84), (72, 40, 120), (62, 74, 137), (49, 104, 142), (38, 130, 142),
    (31, 158, 137), (53, 183, 121), (109, 205, 89), (180, 222, 44), (253, 231, 37),
)  # fmt: skip


def _edges(board: Board) -> list[Points]:
    """Every ring of the outline: boards and their cut-outs."""
    rings = [ring for one in board.outlines for ring in (one.exterior, *one.interiors)]
    return [as_points(np.asarray(ring.coords)[:, :2]) for ring in rings]


def _ground(board: Board, layout: Layout, speak: svg.Speak) -> list[str]:
    body = [svg.area(layout.blank, svg.BLANK, f'stroke="{svg.INK2}" stroke-width="0.12"')]
    body += [svg.area(shape, svg.COPPER) for shape in board.nets.values()]
    for hole in board.holes:
        body.append(svg.ring(hole.x, hole.y, hole.diameter / 2, svg.CANVAS, svg.INK2, 0.1))
    body += [svg.lines([slot.path], svg.CANVAS, slot.diameter) for slot in board.slots]
    body.append(svg.lines(_edges(board), svg.INK, 0.3))
    for number, clamp in enumerate(layout.clamps, 1):
        body.append(svg.area(clamp, "#C9C5BF", f'stroke="{svg.INK2}" stroke-width="0.2"'))
        centre = clamp.centroid
        body.append(
            svg.text(
                centre.x, centre.y - 0.8, speak(say("clamp {number}", number=number)), 2.0, svg.INK, "middle"
            )
        )
    return body


def _bounds(layout: Layout) -> tuple[float, float, float, float]:
    shapes = [layout.blank, *layout.clamps]
    boxes = np.array([shape.bounds for shape in shapes])
    low, high = boxes[:, :2].min(axis=0), boxes[:, 2:].max(axis=0)
    return float(low[0]), float(low[1]), float(high[0]), float(high[1])


def _marks(marks: Sequence[Cut], middle: float) -> list[str]:
    body = []
    for mark in marks:
        x, y = mark.path[0]
        body.append(svg.ring(x, y, 1.1, "none", svg.REFERENCE, 0.25))
        body.append(svg.lines([as_points([(x - 2, y), (x + 2, y)])], svg.REFERENCE, 0.15))
        body.append(svg.lines([as_points([(x, y - 2), (x, y + 2)])], svg.REFERENCE, 0.15))
        right = x < middle
        body.append(
            svg.text(
                x + (2.4 if right else -2.4),
                y - 0.8,
                mark.label,
                2.2,
                svg.REFERENCE,
                "start" if right else "end",
            )
        )
    return body


def board_picture(board: Board, layout: Layout, speak: svg.Speak = str) -> str:
    """Copper, holes, outline, blank, clamps, and link wires or the holes that join both sides."""
    body = _ground(board, layout, speak)
    body += [svg.lines([link.path], svg.INK, 0.35, 'stroke-dasharray="0.9 0.7"') for link in board.links]
    legend = [
        (svg.sample_area(svg.COPPER), say("copper of a net")),
        (svg.sample_line(svg.INK, 0.3), say("outline")),
    ]
    if board.rivets and not board.links:
        body += [svg.ring(h.x, h.y, h.diameter / 2 + 0.4, "none", svg.INK, 0.3) for h in board.rivets]
        legend.append((svg.ring(5.0, 2.0, 1.4, "none", svg.INK, 0.3), say("hole that joins both sides")))
    else:
        legend.append((svg.sample_line(svg.INK, 0.35, 'stroke-dasharray="0.9 0.7"'), say("link wire")))
    return svg.drawing(_bounds(layout), body, board.name, legend, speak)


@dataclass(frozen=True, slots=True)
class Wide:
    """The first ``count`` grooves are of a wide bit, which cuts ``width`` mm."""

    count: int
    width: float


def cuts_picture(
    board: Board,
    layout: Layout,
    grooves: Sequence[Points],
    width: float,
    marks: Sequence[Cut],
    speak: svg.Speak = str,
    wide: Wide | None = None,
) -> str:
    """Grooves at their real width, those of the wide bit lighter, and the reference holes."""
    body = _ground(board, layout, speak)
    if wide is not None:
        body.append(svg.lines(grooves[: wide.count], svg.INK2, wide.width))
    body.append(svg.lines(grooves if wide is None else grooves[wide.count :], svg.INK, width))
    body += _marks(marks, board.width / 2)
    legend = [
        (svg.sample_area(svg.COPPER), say("copper of a net")),
        (svg.sample_line(svg.INK, max(width, 0.2)), say("groove, {width:.2f} mm", width=width)),
        *(
            ()
            if wide is None
            else [(svg.sample_line(svg.INK2, wide.width), say("wide bit, {width:.2f} mm", width=wide.width))]
        ),
        (svg.sample_line(svg.REFERENCE, 0.3), say("reference hole")),
    ]
    return svg.drawing(_bounds(layout), body, say("{name}: grooves", name=board.name), legend, speak)


def reach_picture(board: Board, layout: Layout, reach: ReachMap, title: str, speak: svg.Speak = str) -> str:
    """Through, doubtful and not through, told apart by line as well as by colour."""
    through: list[Points] = []
    doubtful: list[Points] = []
    missed: list[Points] = []
    for points, probability in zip(reach.points, reach.probability, strict=True):
        for state, run in _state_runs(points, probability):
            (through, doubtful, missed)[state].append(run)
    body = _ground(board, layout, speak)
    body.append(svg.lines(through, svg.THROUGH, 0.2))
    body.append(svg.lines(doubtful, svg.CASING, 0.6))
    body.append(svg.lines(doubtful, svg.DOUBTFUL, 0.36, 'stroke-dasharray="0.7 0.6"'))
    body.append(svg.lines(missed, svg.CASING, 0.75))
    body.append(svg.lines(missed, svg.NOT_THROUGH, 0.5))
    body.append(svg.lines(missed, svg.CASING, 0.9, 'stroke-dasharray="0.08 0.5"', "butt"))
    legend = [
        (svg.sample_line(svg.THROUGH, 0.3), say("through")),
        (svg.sample_line(svg.DOUBTFUL, 0.6, 'stroke-dasharray="1 0.8"', 1.0), say("doubtful")),
        (svg.sample_line(svg.NOT_THROUGH, 0.8, "", 1.2), say("not through")),
    ]
    return svg.drawing(_bounds(layout), body, f"{board.name}: {title}", legend, speak)


def carved_picture(board: Board, layout: Layout, carved: Geometry, check: IslandCheck) -> str:
    """The copper that is left, with the places where it is not the design."""
    body = [svg.area(layout.blank, svg.CANVAS), svg.area(carved, svg.COPPER)]
    body.append(svg.lines(_edges(board), svg.INK2, 0.15))
    for flaw in (*check.shorts, *check.opens, *check.lost):
        body.append(svg.ring(*flaw.at, 1.5, "none", svg.CASING, 0.9))
        body.append(svg.ring(*flaw.at, 1.5, "none", svg.NOT_THROUGH, 0.5))
    legend = [
        (svg.sample_area(svg.COPPER), "copper that is left"),
        (svg.sample_line(svg.NOT_THROUGH, 0.8, "", 1.2), "short, open or lost"),
    ]
    return svg.drawing(_bounds(layout), body, f"{board.name}: carved copper", legend)


def _state_runs(points: Points, probability: NDArray[np.float64]) -> list[tuple[int, Points]]:
    states = np.where(probability >= THROUGH, 0, np.where(probability >= NOT_THROUGH, 1, 2))
    breaks = np.flatnonzero(np.diff(states)) + 1
    edges = [0, *breaks.tolist(), len(states)]
    return [
        (int(states[a]), as_points(points[a : min(b + 1, len(points))])) for a, b in pairwise(edges) if b > a
    ]


def surface_picture(
    board: Board,
    layout: Layout,
    height: Callable[[Points], NDArray[np.float64]],
    touches: Points,
    speak: svg.Speak = str,
) -> str:
    """A map of ``height`` (mm, asked in the board frame) in steps of viridis, with the touches."""
    x0, y0, x1, y1 = board.outline.bounds  # beyond board and touches heights are only guessed
    if len(touches):
        low_left, high_right = touches[:, :2].min(axis=0), touches[:, :2].max(axis=0)
        x0, y0 = min(x0, low_left[0]), min(y0, low_left[1])
        x1, y1 = max(x1, high_right[0]), max(y1, high_right[1])
    pitch = max(x1 - x0, y1 - y0) / 70
    xs, ys = np.arange(x0 + pitch / 2, x1, pitch), np.arange(y0 + pitch / 2, y1, pitch)
    gx, gy = np.meshgrid(xs, ys)
    places = as_points(np.column_stack((gx.ravel(), gy.ravel())))
    prepare(layout.blank)
    inside = contains_xy(layout.blank, places[:, 0], places[:, 1])
    places = as_points(places[inside])
    values = height(places) * 1000.0
    low, high = float(values.min()), float(values.max())
    share = (values - low) / max(high - low, 1e-9)
    step = np.minimum((share * len(_VIRIDIS)).astype(int), len(_VIRIDIS) - 1)
    body = []
    for number, (r, g, b) in enumerate(_VIRIDIS):
        cells = "".join(
            f"M{x - pitch / 2:.2f},{y - pitch / 2:.2f}h{pitch:.2f}v{pitch:.2f}h{-pitch:.2f}Z"
            for x, y in places[step == number]
        )
        if cells:
            body.append(
                f'<path d="{cells}" fill="rgb({r},{g},{b})" stroke="rgb({r},{g},{b})" stroke-width="0.05"/>'
            )
    body.append(svg.lines(_edges(board), "#FFFFFF", 0.3))
    body += [svg.ring(x, y, 0.5, svg.INK, "#FFFFFF", 0.2) for x, y in touches[:, :2]]
    edges = np.linspace(low, high, len(_VIRIDIS) + 1)
    legend = [
        (
            svg.sample_area("rgb({},{},{})".format(*_VIRIDIS[n])),
            say("{edges:.0f} to {edges2:.0f} µm", edges=edges[n], edges2=edges[n + 1]),
        )
        for n in range(len(_VIRIDIS))
    ]
    return svg.drawing(
        _bounds(layout), body, say("{name}: height of the copper", name=board.name), legend, speak
    )
