"""What a Gerber file draws, before it has any shape: one row of numbers for each object.

Rows keep the objects of a dense layer small and quick to place, turn and repeat. Arcs and regions
keep their points beside the rows. Everything is in mm.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import IntEnum
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

from drypoint.board.aperture_tools import IDENTITY, Matrix
from drypoint.errors import InputError
from drypoint.geometry.points import Points
from drypoint.wording import say

OBJECT_LIMIT = 500_000
"""Objects of one layer; dense boards have some tens of thousands."""

VERTEX_LIMIT = 12_000_000
"""Vertices of one layer; they bound memory to about a gigabyte."""


class Kind(IntEnum):
    """What an object is."""

    FLASH = 0
    LINE = 1
    ARC = 2
    REGION = 3


KIND, TOOL, DARK, NOTE, OFFSET, X0, Y0, X1, Y1, EXTRA = range(10)
"""Columns of a row. NOTE numbers the attributes, EXTRA the points of an arc or region."""


@dataclass(frozen=True, slots=True, eq=False)
class Arc:
    """The polyline of an arc (N, 2) and its centre; no centre where it is not circular."""

    points: Points
    centre: tuple[float, float] | None


Contours: TypeAlias = tuple[Points, ...]
"""Closed contours of one region, each (N, 2) with the first point repeated."""


class Budget:
    """How much one file may still build, all of its blocks counted."""

    def __init__(self, objects: int = OBJECT_LIMIT, vertices: int = VERTEX_LIMIT) -> None:
        self._objects = objects
        self._vertices = vertices

    def take(self, objects: int, vertices: int) -> None:
        """Use some of it.

        Raises
        ------
        InputError
            If there is not enough left.
        """
        self._objects -= objects
        self._vertices -= vertices
        if self._objects < 0 or self._vertices < 0:
            limit, what = (OBJECT_LIMIT, "objects") if self._objects < 0 else (VERTEX_LIMIT, "vertices")
            raise InputError(
                say("The layer would have more than {limit:,} {what}.", limit=limit, what=what),
                hint="Look for a step-and-repeat or a block aperture that repeats too often.",
            )


class Picture:
    """Objects in file order; grows by single objects and by copies of other pictures."""

    def __init__(self, budget: Budget) -> None:
        self._budget = budget
        self._rows: list[tuple[float, ...]] = []
        self._blocks: list[NDArray[np.float64]] = []
        self._count = 0
        self._vertices = 0
        self.extras: list[Arc | Contours] = []

    def __len__(self) -> int:
        return self._count

    def add(
        self,
        kind: Kind,
        tool: int,
        dark: bool,
        note: int,
        offset: int,
        ends: tuple[float, float, float, float],
        extra: Arc | Contours | None = None,
    ) -> None:
        """One object.

        Raises
        ------
        InputError
            If the layer becomes too large.
        """
        index = -1
        size = 0
        if extra is not None:
            index = len(self.extras)
            self.extras.append(extra)
            size = _size(extra)
        self._budget.take(1, size)
        self._rows.append((kind, tool, dark, note, offset, *ends, index))
        self._count += 1
        self._vertices += size

    def table(self) -> NDArray[np.float64]:
        """(N, 10) rows; the columns are named in this module."""
        if self._rows:
            self._blocks.append(np.array(self._rows, dtype=np.float64))
            self._rows = []
        if len(self._blocks) != 1:
            merged = np.vstack(self._blocks) if self._blocks else np.zeros((0, 10))
            self._blocks = [merged]
        return self._blocks[0]

    def place(
        self,
        other: Picture,
        shifts: Iterable[tuple[float, float]],
        *,
        copies: int = 1,
        matrix: Matrix = IDENTITY,
        tools: Mapping[int, int] | None = None,
        notes: Mapping[int, int] | None = None,
        dark: bool = True,
    ) -> None:
        """Copies of another picture, in the order of ``shifts``.

        Parameters
        ----------
        shifts : iterable of (x, y)
            Where the other's origin goes, mm.
        copies : int
            How many there are: checked before anything is built.
        matrix : Matrix
            Applied to the other before it is moved.
        tools, notes : mapping, optional
            New numbers of tools and attributes by old ones.
        dark : bool
            False turns every polarity over.

        Raises
        ------
        InputError
            If the layer becomes too large.
        """
        if not len(other):
            return
        self._budget.take(len(other) * copies, other._vertices * copies)
        self._count += len(other) * copies
        self._vertices += other._vertices * copies
        source = other.table().copy()
        _renumber(source, TOOL, tools)
        _renumber(source, NOTE, notes)
        if not dark:
            source[:, DARK] = 1.0 - source[:, DARK]
        plain = matrix == IDENTITY
        turn = np.array(matrix).reshape(2, 2)
        if not plain:
            for column in (X0, X1):
                source[:, column : column + 2] = source[:, column : column + 2] @ turn.T
        points = [extra if plain else _turned(extra, turn) for extra in other.extras]
        with_extra = source[:, EXTRA] >= 0
        self.table()
        for dx, dy in shifts:
            block = source.copy()
            block[:, (X0, X1)] += dx
            block[:, (Y0, Y1)] += dy
            block[with_extra, EXTRA] += len(self.extras)
            self.extras.extend(points if dx == dy == 0.0 else [_moved(item, dx, dy) for item in points])
            self._blocks.append(block)


def _renumber(rows: NDArray[np.float64], column: int, numbers: Mapping[int, int] | None) -> None:
    if numbers:
        table = np.arange(max(numbers) + 2)
        for old, new in numbers.items():
            table[old] = new
        old_numbers = rows[:, column].astype(int)
        rows[:, column] = np.where(old_numbers >= 0, table[old_numbers], -1)


def _size(extra: Arc | Contours) -> int:
    return len(extra.points) if isinstance(extra, Arc) else sum(len(contour) for contour in extra)


def _turned(extra: Arc | Contours, turn: NDArray[np.float64]) -> Arc | Contours:
    if not isinstance(extra, Arc):
        return tuple(contour @ turn.T for contour in extra)
    if extra.centre is None:
        return Arc(extra.points @ turn.T, None)
    x, y = turn @ np.array(extra.centre)
    return Arc(extra.points @ turn.T, (float(x), float(y)))


def _moved(extra: Arc | Contours, dx: float, dy: float) -> Arc | Contours:
    shift = np.array((dx, dy))
    if not isinstance(extra, Arc):
        return tuple(contour + shift for contour in extra)
    centre = None if extra.centre is None else (extra.centre[0] + dx, extra.centre[1] + dy)
    return Arc(extra.points + shift, centre)
