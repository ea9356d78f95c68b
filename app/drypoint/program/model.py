"""A program: what one bit does in one go, in the machine frame, as moves and as lines."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import Bit
from drypoint.geometry.points import Points


class MoveKind(IntEnum):
    """How a move is made."""

    RAPID = 0
    FEED = 1
    ARC_CW = 2
    ARC_CCW = 3
    DWELL = 4


@dataclass(frozen=True, slots=True, eq=False)
class Moves:
    """(N,) moves of one program, machine frame (work coordinates), absolute.

    Attributes
    ----------
    kind : (N,) int8, see `MoveKind`
    end : (N, 3) end points, mm
    feed : (N,) mm/min (0 for rapids)
    centre : (N, 2) offsets start to centre of arcs, mm (0 else)
    tag : (N,) int32
        Index of the cut or run a move belongs to; -1 between them.
    dwell : (N,) s (`DWELL` only, 0 else)
    """

    kind: NDArray[np.int8]
    end: Points
    feed: NDArray[np.float64]
    centre: NDArray[np.float64]
    tag: NDArray[np.int32]
    dwell: NDArray[np.float64]

    def __len__(self) -> int:
        return len(self.kind)


@dataclass(frozen=True, slots=True, eq=False)
class Program:
    """What is run between two changes of bit.

    Attributes
    ----------
    name : str
        Short and safe as a file name: "02-grooves-pass-1".
    title : str
        For people: "Grooves, pass 1".
    lines : tuple of str
        The exact lines sent: no line ends, no comments, none longer than the controller's limit.
    line_move : (L,) int32
        Move that each line makes; -1 for lines that move nothing.
    seconds : float
        Expected time.
    pass_number : int
        0 where the program is no pass over grooves.
    clearance : float
        Height of the plane, mm, that rapid moves never go below.
    chord : float
        Proven bound, mm, on how far the tip's height strays from surface minus depth between the
        ends of moves; 0 where nothing was warped.
    saved : float
        Time that hops save against going up to the clearance plane every time, s.
    """

    name: str
    title: str
    bit: Bit
    moves: Moves
    lines: tuple[str, ...]
    line_move: NDArray[np.int32]
    seconds: float
    pass_number: int = 0
    clearance: float = 0.0
    chord: float = 0.0
    saved: float = 0.0
