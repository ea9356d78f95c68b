"""The demo board with invented measurements on it, for screenshots only."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import ArrayLike

from drypoint.bits.model import Speeds, VBit
from drypoint.board.load import load_board
from drypoint.board.model import Board
from drypoint.cuts.grooves import plan_grooves
from drypoint.geometry.points import resample
from drypoint.passes.isolation import net_chances
from drypoint.passes.model import Pass, ReachMap, Run
from drypoint.session.net_reach import NetReach, net_reaches
from drypoint.surface.touch import Touch, Touches
from drypoint.ui.canvas.content import Clamp, Content, ExpectedError, ReferenceHole, Tab, draw_board
from drypoint.ui.canvas.pass_drawing import draw_pass, draw_reach
from drypoint.ui.canvas.paths import path_set

EXAMPLE = Path(__file__).parents[1] / "examples" / "hive-scale"
WIDTH, HEIGHT = 70.0, 50.0
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
    return load_board([EXAMPLE])


def grooves(made: Board) -> tuple[list[np.ndarray], tuple[tuple[str, ...], ...]]:
    plan = plan_grooves(made.nets, 0.2, bite=0.03)
    return [resample(line, 0.2) for line in plan.lines], plan.line_nets


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
    nets: tuple[NetReach, ...]


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
        ReferenceHole("R1", (-3.2, 26), (-3.18, 25.975)),
        ReferenceHole("R2", (WIDTH + 3.2, 6), (WIDTH + 3.182, 6.012)),
        ReferenceHole("R3", (WIDTH + 3.2, HEIGHT - 6), (WIDTH + 3.206, HEIGHT - 5.97)),
        ReferenceHole("R4", (4.5, HEIGHT - 4.5), None, True),
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
    by_net = net_reaches(chances, names, net_chances(chances, names, 6.0))
    return Sample(made, surface, lines, content, chances, by_net)
