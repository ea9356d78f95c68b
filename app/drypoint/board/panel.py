"""Several boards on one blank, as one `Board`: everything downstream plans it like any other.

The nets of board n are called "n:NAME", so that the island check parts the boards from each other
and proves each by itself. The outline has one piece per board.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Container, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, MultiPolygon

from drypoint.board.model import Board, Finding, Hole, LayerFile, LinkWire, Side, Slot
from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.wording import say

MOST = 200
"""Boards on one blank."""


@dataclass(frozen=True, slots=True, eq=False)
class PlacedBoard:
    """A board and where it lies on the blank.

    ``x``, ``y``: where the lower left corner of its outline's extent comes to lie, mm, after it was
    turned by ``angle`` radians anticlockwise.
    """

    board: Board
    x: float
    y: float
    angle: float = 0.0


def in_rows(board: Board, columns: int, rows: int, gap: float) -> tuple[PlacedBoard, ...]:
    """Copies of a board in rows from the lower left, ``gap`` mm between their outlines.

    Raises
    ------
    PlanError
        If the numbers make no sense.
    """
    if columns < 1 or rows < 1 or columns * rows > MOST:
        raise PlanError(
            say("Copies must number 1 to {most}.", most=MOST),
            say("Boards on the blank: {columns} × {rows}", columns=columns, rows=rows),
        )
    if not (math.isfinite(gap) and gap >= 0.0):
        raise PlanError("The gap between copies cannot be below 0.", "Boards on the blank")
    step_x, step_y = board.width + gap, board.height + gap
    return tuple(
        PlacedBoard(board, column * step_x, row * step_y) for row in range(rows) for column in range(columns)
    )


def panel_of(placed: Sequence[PlacedBoard], *, gap: float = 0.0, name: str | None = None) -> Board:
    """One board of several, in a frame of its own with the origin at the lower left of them all.

    One alone that is not turned is given back as it is. What is found about a design is told once,
    with the first place it lies in.

    Parameters
    ----------
    gap : float
        Least distance between two outlines, mm.
    name : str, optional
        Else that of the first board.

    Raises
    ------
    PlanError
        If there is none, or two outlines come nearer than ``gap``.
    """
    if not placed:
        raise PlanError("There is no board on the blank.", "Boards on the blank")
    if len(placed) == 1 and placed[0].angle == 0.0:
        return placed[0].board
    moves = moves_of(placed)
    copies = [
        _Copy(one.board, move, f"{number}:" if len(placed) > 1 else "")
        for number, (one, move) in enumerate(zip(placed, moves, strict=True), 1)
    ]
    outlines = [part for copy in copies for part in shapely.get_parts(copy.shape(copy.board.outline))]
    _check_apart(copies, gap)
    first = copies[0]
    return Board(
        name=name or first.board.name,
        side=_one_side(placed),
        outline=MultiPolygon(outlines) if len(outlines) > 1 else outlines[0],
        nets=_merged(copy.nets(copy.board.nets) for copy in copies),
        net_source=next((one.board.net_source for one in placed if one.board.nets), first.board.net_source),
        holes=tuple(hole for copy in copies for hole in copy.holes(copy.board.holes)),
        slots=tuple(slot for copy in copies for slot in copy.slots()),
        other_copper=_merged(copy.nets(copy.board.other_copper) for copy in copies),
        legend=_legend(copies),
        links=tuple(link for copy in copies for link in copy.links()),
        rivets=tuple(hole for copy in copies for hole in copy.holes(copy.board.rivets)),
        files=_files(copies),
        findings=tuple(finding for copy in _one_of_each(copies) for finding in copy.findings()),
        to_design=first.move.inverse().then(first.board.to_design),
    )


def moves_of(placed: Sequence[PlacedBoard]) -> list[Rigid]:
    """Each board's own frame to that of them all, whose origin is the lower left of everything."""
    moves, corners = [], []
    for one in placed:
        turn = Rigid(one.angle)
        x0, y0 = turn.apply(shapely.get_coordinates(one.board.outline)).min(axis=0)
        moves.append(Rigid(one.angle, (one.x - float(x0), one.y - float(y0))))
        corners.append((one.x, one.y))
    x, y = np.min(corners, axis=0)
    return [Rigid(move.angle, (move.offset[0] - float(x), move.offset[1] - float(y))) for move in moves]


def nets_of_boards(board: Board, numbers: Container[int]) -> dict[str, Geometry]:
    """The nets of the boards with these numbers (from 1) among those on the blank."""
    if len(board.outlines) == 1:
        return dict(board.nets) if 1 in numbers else {}
    return {name: shape for name, shape in board.nets.items() if int(name.partition(":")[0]) in numbers}


class _Copy:
    """One board, moved to its place."""

    def __init__(self, board: Board, move: Rigid, prefix: str) -> None:
        self.board, self.move, self._prefix = board, move, prefix

    def shape(self, shape: Geometry) -> Geometry:
        moved: Callable[[NDArray[np.float64]], NDArray[np.float64]] = self.move.apply
        return shapely.transform(shape, moved)

    def name(self, net: str) -> str:
        return f"{self._prefix}{net}"

    def net(self, net: str | None) -> str | None:
        return None if net is None else self.name(net)

    def nets(self, shapes: Mapping[str, Geometry]) -> dict[str, Geometry]:
        return {self.name(net): self.shape(shape) for net, shape in shapes.items()}

    def holes(self, holes: Sequence[Hole]) -> Iterable[Hole]:
        for hole in holes:
            x, y = self.place((hole.x, hole.y))
            yield replace(hole, x=x, y=y, net=self.net(hole.net))

    def slots(self) -> Iterable[Slot]:
        for slot in self.board.slots:
            yield replace(slot, path=self.move.apply(slot.path), net=self.net(slot.net))

    def links(self) -> Iterable[LinkWire]:
        for link in self.board.links:
            yield replace(link, net=self.name(link.net), path=as_points(self.move.apply(link.path)))

    def findings(self) -> Iterable[Finding]:
        for item in self.board.findings:
            at = None if item.at is None else self.place(item.at)
            yield replace(item, at=at, nets=tuple(self.name(net) for net in item.nets))

    def place(self, at: tuple[float, float]) -> tuple[float, float]:
        x, y = self.move.apply([at])[0]
        return float(x), float(y)


def _check_apart(copies: Sequence[_Copy], gap: float) -> None:
    edges = [copy.shape(shapely.union_all(copy.board.outlines)) for copy in copies]
    several = len(_one_of_each(copies)) > 1
    called = [
        f"{number} ({copy.board.name})" if several else f"{number}" for number, copy in enumerate(copies, 1)
    ]
    for (a, one), (b, other) in combinations(enumerate(edges), 2):
        near = float(shapely.distance(one, other))
        if near == 0.0:
            overlaps = shapely.area(shapely.intersection(one, other)) > 0.0
            raise PlanError(
                say("Boards {a} and {b} overlap.", a=called[a], b=called[b])
                if overlaps
                else say("Boards {a} and {b} touch.", a=called[a], b=called[b]),
                "Boards on the blank",
                say("Move one; the end mill that cuts them out needs {gap:.2f} mm between them.", gap=gap),
            )
        if near < gap - 1e-6:
            raise PlanError(
                say(
                    "Boards {a} and {b} lie {near:.2f} mm apart; {gap:.2f} mm are needed.",
                    a=called[a],
                    b=called[b],
                    near=near,
                    gap=gap,
                ),
                "Boards on the blank",
                "Widen the gap: the end mill that cuts them out runs between them.",
            )


def _one_side(placed: Sequence[PlacedBoard]) -> Side:
    sides = {one.board.side for one in placed}
    if len(sides) > 1:
        raise PlanError("The boards on a blank must all be milled from one side.", "Boards on the blank")
    return placed[0].board.side


def _merged(parts: Iterable[Mapping[str, Geometry]]) -> dict[str, Geometry]:
    return {name: shape for part in parts for name, shape in part.items()}


def _legend(copies: Sequence[_Copy]) -> Geometry | None:
    found = [copy.shape(copy.board.legend) for copy in copies if copy.board.legend is not None]
    return shapely.union_all(found) if found else None


def _one_of_each(copies: Sequence[_Copy]) -> list[_Copy]:
    """The first copy of every design."""
    return list({id(copy.board): copy for copy in reversed(copies)}.values())[::-1]


def _files(copies: Sequence[_Copy]) -> tuple[LayerFile, ...]:
    return tuple(file for copy in _one_of_each(copies) for file in copy.board.files)
