"""What a ready-made program comes to once it is read: plain moves."""

from __future__ import annotations

from dataclasses import dataclass

Vector = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class GMove:
    """One move of a program.

    Attributes
    ----------
    kind : str
        "rapid", "feed", "arc_cw", "arc_ccw" or "dwell".
    end : (x, y, z)
        Where it ends, mm, absolute, in the program's own coordinates.
    feed : float
        mm/min; 0 for rapids and dwells, and where the program gives none.
    centre : (x, y) or None
        Of an arc, mm, absolute.
    line : int
        Line of the file, from 1.
    spindle : str
        "off", "cw" or "ccw" during the move.
    speed : float
        Of the spindle, 1/min.
    tool : int
        Number of the tool chosen by the last M6; 0 before.
    seconds : float
        Of a dwell.
    """

    kind: str
    end: Vector
    feed: float
    centre: tuple[float, float] | None
    line: int
    spindle: str = "off"
    speed: float = 0.0
    tool: int = 0
    seconds: float = 0.0


@dataclass(frozen=True, slots=True)
class GProgram:
    """The moves of a program and what it left unsaid."""

    moves: tuple[GMove, ...]
    warnings: tuple[str, ...]
