"""A small invented board with everything measured on it, for screenshots only."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import ArrayLike
from shapely import LineString, Point, box
from shapely.ops import unary_union

from drypoint.bits.model import Speeds, VBit
from drypoint.board.model import Board, Hole, Side
from drypoint.geometry.points import resample
from drypoint.passes.model import Pass, ReachMap, Run
from drypoint.surface.touch import Touch, Touches
from drypoint.ui.canvas.content import (
    Clamp,
    Content,
    ExpectedError,
    ReferenceHole,
    Tab,
    draw_board,
    draw_pass,
    draw_reach,
)
from drypoint.ui.canvas.paths import path_set

WIDTH, HEIGHT = 74.0, 52.0
BIT = VBit("V-bit 0.1 mm 30°", 0.1, np.radians(30), Speeds(10000, 240, 60))


@dataclass(frozen=True)
class Plate:
    """A height field with a known spread."""

    touches: Touches

    def mean(self, points: ArrayLike) -> np.ndarray:
        x, y = np.asarray(points, dtype=float).T[:2]
        bow = 0.02 * np.sin(x / 21) + 0.018 * np.cos((x + y) / 17)
        return -0.03 + 0.0011 * x - 0.0006 * y + bow + 0.006 * np.sin(x / 4.1) * np.cos(y / 5.3)

    def std(self, points: ArrayLike) -> np.ndarray:
        given = np.asarray(points, dtype=float)[:, :2]
        spots = self.touches.points[:, :2]
        far = np.min(np.hypot(*(given[:, None, :] - spots[None]).transpose(2, 0, 1)), axis=1)
        return 0.003 + 0.0014 * far


def plate() -> Plate:
    rng = np.random.default_rng(4)
    grid = np.array([(x, y) for y in np.linspace(3, HEIGHT - 3, 6) for x in np.linspace(3, WIDTH - 3, 8)])
    spots = grid + rng.uniform(-1.8, 1.8, grid.shape)
    bare = Plate(Touches(()))
    heights = bare.mean(spots) + rng.normal(0, 0.002, len(spots))
    loose = np.maximum(0.0, (spots[:, 0] - 50) / 24) * np.maximum(0.0, (spots[:, 1] - 30) / 22)
    give = 0.004 + 0.03 * loose
    return Plate(
        Touches(
            tuple(
                Touch(x, y, z, z - g)
                for (x, y), z, g in zip(spots.tolist(), heights.tolist(), give.tolist(), strict=True)
            )
        )
    )


def board() -> Board:
    rng = np.random.default_rng(11)
    nets: dict[str, shapely.Geometry] = {}
    holes = [Hole(x, y, 3.2, False) for x in (4.5, WIDTH - 4.5) for y in (4.5, HEIGHT - 4.5)]
    rows = [(9, 44), (9, 36), (9, 28), (9, 19), (9, 10)]
    names = iter(
        [
            "GND",
            "VCC",
            "LOAD",
            "REF",
            "BRIDGE",
            "CLK",
            "DATA",
            "SENSE",
            "HEAT",
            "TX",
            "RX",
            "LED1",
            "LED2",
            "KEY",
            "OUT",
            "IN",
            "A1",
            "A2",
            "B1",
            "B2",
            "C0",
            "C1",
            "D0",
            "D1",
        ]
    )
    taken: list[shapely.Geometry] = []
    for name in names:
        for _ in range(200):
            x, y = rng.uniform(11, WIDTH - 14), rows[rng.integers(5)][1] + rng.choice([-1.27, 0, 1.27])
            turn = rng.choice([-1, 1])
            run, rise = rng.uniform(5, 17), rng.uniform(2, 7)
            spots = [
                (x, y),
                (x + run * 0.4, y),
                (x + run * 0.4 + rise, y + turn * rise),
                (min(x + run + rise, WIDTH - 6), y + turn * rise),
            ]
            shape = unary_union(
                [
                    LineString(spots).buffer(0.45, cap_style="round"),
                    *(Point(p).buffer(1.0) for p in (spots[0], spots[-1])),
                ]
            )
            inside = box(2.5, 2.5, WIDTH - 2.5, HEIGHT - 2.5).contains(shape)
            clear = all(shape.distance(other) > 0.35 for other in taken)
            corner = any(shape.distance(Point(h.x, h.y)) < 3.4 for h in holes[:4])
            if inside and clear and not corner:
                nets[name] = shape
                taken.append(shape)
                holes += [Hole(*spots[0], 0.8, True, name), Hole(*spots[-1], 0.8, True, name)]
                break
    outline = box(3, 3, WIDTH - 3, HEIGHT - 3).buffer(3)
    return Board("hive-scale", Side.BOTTOM, outline, nets, "attributes", tuple(holes))


def grooves(made: Board) -> tuple[list[np.ndarray], tuple[tuple[str, ...], ...]]:
    lines, names = [], []
    for name, shape in made.nets.items():
        lines.append(resample(np.asarray(shape.buffer(0.13).exterior.coords), 0.2))
        names.append((name,))
    return lines, tuple(names)


def reach(lines: list[np.ndarray]) -> ReachMap:
    chance, width = [], []
    for line in lines:
        x, y = line.T
        low = np.exp(-((x - 47) ** 2 + (y - 27) ** 2) / 40) + 0.75 * np.exp(
            -((x - 18) ** 2 + (y - 37) ** 2) / 16
        )
        low = low + 0.01 * np.sin(x * 1.7) * np.sin(y * 1.3)
        chance.append(np.clip(1.0 - 0.95 * np.abs(low) ** 1.5, 0.02, 0.995))
        width.append(0.13 + 0.05 * chance[-1])
    return ReachMap(tuple(lines), tuple(chance), tuple(width))


CLAMPS = (
    Clamp(1, (-12, 38, -3.5, 46), 2.0),
    Clamp(2, (WIDTH + 3.5, 16, WIDTH + 12, 24), 2.0),
    Clamp(3, (26, -14, 35, -5.2), 2.0),
    Clamp(4, (44, HEIGHT + 5, 53, HEIGHT + 13), 2.0),
)


@dataclass(frozen=True)
class Sample:
    board: Board
    plate: Plate
    lines: list[np.ndarray]
    content: Content
    reach: ReachMap


def sample() -> Sample:
    made = board()
    lines, names = grooves(made)
    chances = reach(lines)
    first = Pass(1, BIT, tuple(Run(i, line, np.full(len(line), 0.056)) for i, line in enumerate(lines)))
    again = []
    for i, (line, chance) in enumerate(zip(lines, chances.probability, strict=True)):
        weak = np.flatnonzero(chance < 0.95)
        if len(weak) > 3:
            part = line[weak[0] : weak[-1] + 1]
            again.append(Run(i, part, np.full(len(part), 0.088)))
    second = Pass(2, BIT, tuple(again))
    references = (
        ReferenceHole(1, (-3.2, 26), (-3.18, 25.975)),
        ReferenceHole(2, (WIDTH + 3.2, 6), (WIDTH + 3.182, 6.012)),
        ReferenceHole(3, (WIDTH + 3.2, HEIGHT - 6), (WIDTH + 3.206, HEIGHT - 5.97)),
        ReferenceHole(4, (4.5, HEIGHT - 4.5), None, True),
    )
    spots = [(h.x, h.y) for h in made.holes[::4]]
    errors = tuple(
        ExpectedError(
            at,
            np.array([[3e-4 * (1 + abs(at[1] - 26) / 20), 6e-5], [6e-5, 3e-4 * (1 + abs(at[0] - 37) / 20)]]),
        )
        for at in spots
    )
    tabs = tuple(
        Tab(at, way, 3.0)
        for at, way in (
            ((20, 0), (1, 0)),
            ((54, 0), (1, 0)),
            ((20, HEIGHT), (1, 0)),
            ((54, HEIGHT), (1, 0)),
            ((0, 26), (0, 1)),
            ((WIDTH, 26), (0, 1)),
        )
    )
    surface = plate()
    content = Content(
        board=draw_board(made),
        blank=(-8, -8, WIDTH + 8, HEIGHT + 8),
        grooves=path_set(lines, labels=[", ".join(n) for n in names]),
        earlier=(draw_pass(first, names),),
        current=draw_pass(second, names),
        reach=draw_reach(chances, names),
        order=draw_pass(first, names),
        clamps=CLAMPS,
        references=references,
        errors=errors,
        enlarged=40.0,
        tabs=tabs,
        zero=(-8, -8),
    )
    return Sample(made, surface, lines, content, chances)
