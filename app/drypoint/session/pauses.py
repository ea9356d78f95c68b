"""Pauses at chosen places: kept in the job by where they are on the board, found again in any program.

A pause belongs to a piece: what a program cuts between two lifts. It comes where the bit stands clear
above the piece, before it goes down. A place is kept, no line number, so that a pass planned anew from
other heights still pauses there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.points import Points
from drypoint.program.model import Program
from drypoint.program.standing_clear import stands_clear
from drypoint.session.session import Session
from drypoint.session.snapshot import Snapshot

KIND = "pauses"
"""Kind of the record that holds all pauses of a job."""

NEAR = 0.5
"""A piece this near to a chosen place, mm, is the one that was meant."""

_SAME = 0.02
"""Pieces that lie over each other differ by less from a place, mm."""


@dataclass(frozen=True, slots=True)
class Pause:
    """Pause before a piece of a program.

    Attributes
    ----------
    program : str
        Its name.
    at : (x, y)
        On the piece, board frame, mm.
    piece : int
        Which piece it was when it was chosen, from 1: it tells pieces apart that lie over each other.
    """

    program: str
    at: tuple[float, float]
    piece: int


@dataclass(frozen=True, slots=True, eq=False)
class Piece:
    """What is cut between two lifts.

    Attributes
    ----------
    number : int
        From 1, in the order of cutting.
    line : int
        Line of the program that goes down; before it the bit stands clear above the piece.
    path : (N, 2)
        Where it cuts, work coordinates, mm.
    """

    number: int
    line: int
    path: Points


def pieces_of(program: Program) -> tuple[Piece, ...]:
    """The pieces of a program in order."""
    if not len(program.moves.end):
        return ()
    low = ~stands_clear(program.moves)
    edge = np.diff(np.concatenate(([0], low.astype(np.int8), [0])))
    starts, stops = np.flatnonzero(edge == 1), np.flatnonzero(edge == -1)
    lines = np.flatnonzero(program.line_move >= 0)
    first = lines[np.searchsorted(program.line_move[lines], starts)] if len(lines) else starts
    return tuple(
        Piece(number, int(line), program.moves.end[max(start - 1, 0) : stop, :2])
        for number, (line, start, stop) in enumerate(zip(first, starts, stops, strict=True), 1)
    )


def piece_at(
    pieces: Sequence[Piece], place: tuple[float, float], number: int = 0, within: float = NEAR
) -> Piece | None:
    """The piece at a place, work coordinates; of several over each other the nearest to ``number``."""
    if not pieces:
        return None
    far = np.array([_distance(piece.path, place) for piece in pieces])
    least = float(far.min())
    if least > within:
        return None
    found = [piece for piece, gap in zip(pieces, far, strict=True) if gap <= least + _SAME]
    return min(found, key=lambda piece: abs(piece.number - number))


def pauses_in(snap: Snapshot) -> tuple[Pause, ...]:
    """All pauses of a job."""
    record = snap.latest(KIND)
    if record is None:
        return ()
    return tuple(Pause(one["program"], tuple(one["at"]), one["piece"]) for one in record.data["places"])


def keep_pauses(session: Session, pauses: Sequence[Pause]) -> None:
    """Have these pauses and no others."""
    places = [{"program": one.program, "at": list(one.at), "piece": one.piece} for one in pauses]
    session.job.set_aside(KIND)
    session.keep(KIND, {"places": places})


def add_pause(session: Session, pause: Pause) -> None:
    """One more pause; the same one is not kept twice."""
    others = [one for one in pauses_in(session.snapshot) if not _same(one, pause)]
    keep_pauses(session, [*others, pause])


def remove_pause(session: Session, pause: Pause) -> None:
    """No pause there any more."""
    keep_pauses(session, [one for one in pauses_in(session.snapshot) if not _same(one, pause)])


def pieces_to_pause_before(session: Session, program: Program) -> tuple[Piece, ...]:
    """The pieces of a program before which to pause, in order."""
    snap = session.snapshot
    wanted = [one for one in pauses_in(snap) if one.program == program.name]
    if not wanted:
        return ()
    pieces = pieces_of(program)
    places = session.derived.fit(snap).apply([one.at for one in wanted])
    found = {
        piece.number: piece
        for one, (x, y) in zip(wanted, places[:, :2].tolist(), strict=True)
        if (piece := piece_at(pieces, (x, y), one.piece)) is not None
    }
    return tuple(found[number] for number in sorted(found))


def _same(a: Pause, b: Pause) -> bool:
    near = abs(a.at[0] - b.at[0]) + abs(a.at[1] - b.at[1]) < NEAR
    return a.program == b.program and a.piece == b.piece and near


def _distance(path: Points, place: tuple[float, float]) -> float:
    """From a place to a polyline, mm."""
    spot = np.asarray(place)
    a = path[:-1] if len(path) > 1 else path
    step: NDArray[np.float64] = np.diff(path, axis=0) if len(path) > 1 else np.zeros_like(path)
    square = np.maximum((step**2).sum(axis=1), 1e-18)
    share = np.clip(((spot - a) * step).sum(axis=1) / square, 0.0, 1.0)
    gaps = np.hypot(*(a + share[:, None] * step - spot).T)
    return float(gaps.min())
