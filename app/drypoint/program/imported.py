"""Ready-made programs, placed: understood move by move, mapped by the fit, and written anew.

Nothing of the file's text is passed on. Its rapids become travel on our clearance plane and slow
ways down; its feeds, depths and arcs stay. Where a surface is given, heights are taken above it.
"""

from __future__ import annotations

import math
from collections.abc import Container, Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import Bit
from drypoint.errors import PlanError
from drypoint.gcode.moves import GMove
from drypoint.geometry.points import Points, as_points
from drypoint.program.assemble import assemble
from drypoint.program.builder import MoveBuilder, plane_above
from drypoint.program.heights import GRID_SHARE, HeightGrid, sample
from drypoint.program.model import Program
from drypoint.program.settings import FitLike, HeightLike, ProgramSettings
from drypoint.program.warp import warp
from drypoint.wording import say

ALIKE = 1e-9
"""A fit that keeps lengths and angles to this keeps arcs as arcs."""


def place_imported(
    moves: Sequence[GMove],
    bits: Mapping[int, Bit],
    fit: FitLike,
    surface: HeightLike | None = None,
    settings: ProgramSettings | None = None,
    *,
    title: str = "Ready-made program",
    first: int = 1,
    leave_out: Container[int] = (),
) -> tuple[Program, ...]:
    """One program per stretch of one tool of a file that was read.

    Arcs stay arcs where the fit keeps circles and there is no surface; else they become chords
    within ``settings.chord``. ``Moves.tag`` counts the cuts between two rapids.

    Parameters
    ----------
    bits : the bit for each tool number of the file (0: no tool was chosen)
    leave_out : numbers of tools whose moves are not made

    Raises
    ------
    PlanError
        A cutting move has no feed, or a tool has no bit.
    """
    chosen = settings or ProgramSettings()
    cutting = [move.end[:2] for move in moves if move.kind != "dwell"]
    if not cutting:
        return ()
    grid = sample(surface, fit.apply(cutting), GRID_SHARE * chosen.chord)
    highest_rapid = max((move.end[2] for move in moves if move.kind == "rapid"), default=0.0)
    # whatever the file keeps clear of by going higher, is kept clear of
    plane = max(plane_above(grid.highest, chosen), round(highest_rapid, chosen.decimals))
    programs: list[Program] = []
    for stretch, start in _stretches(moves):
        if stretch[0].tool in leave_out:
            continue
        bit = bits.get(stretch[0].tool)
        if bit is None:
            raise PlanError(
                say("No bit is chosen for tool {tool}.", tool=stretch[0].tool),
                title,
                "Choose one for every tool.",
            )
        writer = _Rewriter(MoveBuilder(plane, chosen), fit, grid, start, bit)
        for move in stretch:
            writer.move(move)
        writer.builder.lift()
        number = first + len(programs)
        name = f"{number:02d}-ready-made-tool-{stretch[0].tool}"
        programs.append(
            assemble(writer.builder, bit, name=name, title=f"{title}: {bit.name}", chord=writer.bound)
        )
    return tuple(programs)


def _stretches(moves: Sequence[GMove]) -> list[tuple[list[GMove], tuple[float, float, float]]]:
    """Moves of one tool behind each other, and where the first starts; those that cut nothing left out."""
    found: list[tuple[list[GMove], tuple[float, float, float]]] = []
    at = (0.0, 0.0, 0.0)
    for move in moves:
        if not found or found[-1][0][-1].tool != move.tool:
            found.append(([], at))
        found[-1][0].append(move)
        at = move.end
    return [one for one in found if any(move.kind not in {"rapid", "dwell"} for move in one[0])]


class _Rewriter:
    """Follows the file's moves and makes ours."""

    def __init__(
        self,
        builder: MoveBuilder,
        fit: FitLike,
        grid: HeightGrid,
        start: tuple[float, float, float],
        bit: Bit,
    ) -> None:
        self.builder = builder
        self.bound = 0.0
        self._fit, self._grid, self._bit = fit, grid, bit
        self._at = start
        self._tag = -1
        self._down = False
        mapped = fit.apply([(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)])
        a, b = mapped[1] - mapped[0], mapped[2] - mapped[0]
        self._mirrored = bool(a[0] * b[1] - a[1] * b[0] < 0)
        alike = max(abs(a @ a - 1.0), abs(b @ b - 1.0), abs(a @ b)) < ALIKE
        self._keeps_arcs = alike and not np.ptp(grid.nodes)

    def move(self, move: GMove) -> None:
        """One move of the file."""
        if move.kind == "rapid":
            self._down = False
        elif move.kind == "dwell":
            if self._down:
                self.builder.dwell(move.seconds)
            return
        else:
            self._cut(move)
        self._at = move.end

    def _cut(self, move: GMove) -> None:
        if not move.feed > 0:
            raise PlanError(
                "A cutting move has no feed.", say("line {line}", line=move.line), "Set F in the file."
            )
        if not self._down:
            self._go_down()
        arc = move.kind != "feed"
        if arc and self._keeps_arcs:
            self._arc(move)
            return
        path, z = _chords(self._at, move, self.builder.settings.chord / 2 if arc else 0.0)
        first = np.zeros(len(path), dtype=bool)
        first[0] = True
        room = self.builder.settings.chord / (2 if arc else 1)
        warped = warp(self._fit.apply(path), -z, first, self._grid, room)
        self.bound = max(self.bound, warped.bound)
        self.builder.feed(warped.points[1:], move.feed, self._tag)

    def _go_down(self) -> None:
        """From wherever the bit is to where the file's cut starts."""
        self._tag += 1
        self._down = True
        x, y, z = self._at
        place = self._fit.apply([(x, y)])
        height = float(self._grid.mean(place)[0])
        builder = self.builder
        px, py = place[0].tolist()
        builder.travel(px, py)
        target = height + z
        if target < builder.plane:
            over = height + builder.settings.approach
            if target < over:
                builder.enter(px, py, height, target, self._bit.speeds.plunge, self._tag)
            else:
                builder.feed([(px, py, target)], builder.settings.approach_feed, self._tag)

    def _arc(self, move: GMove) -> None:
        centre = self._fit.apply([move.centre or (0.0, 0.0), self._at[:2], move.end[:2]])
        middle, start, end = centre
        clockwise = (move.kind == "arc_cw") != self._mirrored
        z = float(self._grid.mean(as_points([end]))[0]) + move.end[2]
        # rounded ends and centre still have to agree
        step = self.builder.settings.decimals
        offset = np.round(middle, step) - np.round(start, step)
        self.builder.arc(
            (float(end[0]), float(end[1]), z),
            (float(offset[0]), float(offset[1])),
            move.feed,
            self._tag,
            clockwise=clockwise,
        )


def _chords(
    at: tuple[float, float, float], move: GMove, tolerance: float
) -> tuple[Points, NDArray[np.float64]]:
    """(N, 2) points and (N,) heights of a move, its start first; arcs within ``tolerance``."""
    if move.centre is None:
        return as_points([at[:2], move.end[:2]]), np.array([at[2], move.end[2]])
    cx, cy = move.centre
    radius = math.hypot(at[0] - cx, at[1] - cy)
    a0 = math.atan2(at[1] - cy, at[0] - cx)
    a1 = math.atan2(move.end[1] - cy, move.end[0] - cx)
    turn = (a1 - a0) % (2 * math.pi) or 2 * math.pi
    if move.kind == "arc_cw":
        turn = turn - 2 * math.pi if turn < 2 * math.pi else -2 * math.pi
    widest = 2 * math.acos(max(0.0, 1 - tolerance / max(radius, tolerance)))
    count = max(2, math.ceil(abs(turn) / widest))
    share = np.linspace(0.0, 1.0, count + 1)
    end_radius = math.hypot(move.end[0] - cx, move.end[1] - cy)
    size = radius + share * (end_radius - radius)
    xy = np.column_stack((cx + size * np.cos(a0 + share * turn), cy + size * np.sin(a0 + share * turn)))
    xy[-1] = move.end[:2]
    return as_points(xy), at[2] + share * (move.end[2] - at[2])
