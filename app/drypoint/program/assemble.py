"""Moves become a program: header, lines, spindle off, park, checked on the final text."""

from __future__ import annotations

import numpy as np

from drypoint.bits.model import Bit
from drypoint.gcode.writer import number, write_lines
from drypoint.program.builder import MoveBuilder, append
from drypoint.program.check import check_lines
from drypoint.program.model import MoveKind, Moves, Program
from drypoint.program.settings import ProgramSettings
from drypoint.program.time import estimate
from drypoint.progress import Progress

HEADER = ("G21", "G90", "G94", "G17", "G54")
"""mm, absolute, feed per minute, xy plane, first work frame."""


def assemble(
    builder: MoveBuilder,
    bit: Bit,
    *,
    name: str,
    title: str,
    pass_number: int = 0,
    chord: float = 0.0,
    progress: Progress | None = None,
) -> Program:
    """The program of all moves built so far, which end on the clearance plane.

    Raises
    ------
    PlanError
        The text breaks a rule of safe travel, or a line is too long.
    """
    return finish(
        builder.build(),
        bit,
        builder.plane,
        builder.settings,
        name=name,
        title=title,
        pass_number=pass_number,
        chord=chord,
        progress=progress,
    )


def finish(
    moves: Moves,
    bit: Bit,
    plane: float,
    settings: ProgramSettings,
    *,
    name: str,
    title: str,
    pass_number: int = 0,
    chord: float = 0.0,
    progress: Progress | None = None,
) -> Program:
    """A program around ready moves; see `assemble`."""
    spindle = settings.spindle_control and bit.speeds.spindle > 0
    head = [*HEADER, f"G1Z{number(plane, settings.decimals)}F{number(settings.retract_feed, 1)}"]
    seconds = 0.0
    if spindle:
        head.append(f"M3S{number(bit.speeds.spindle, 0)}")
        if settings.spindle_delay > 0:
            head.append(f"G4P{number(settings.spindle_delay)}")
            seconds += settings.spindle_delay
    cutting = len(moves)
    if settings.park is not None and cutting:
        moves = append(moves, MoveKind.RAPID, (*settings.park, plane))
    body, line_move = write_lines(
        moves.kind,
        moves.end,
        moves.feed,
        moves.centre,
        moves.dwell,
        start=(None, None, plane),
        limit=settings.line_limit,
        decimals=settings.decimals,
        progress=None if progress is None else progress.part(0.0, 0.5),
    )
    off = int(np.searchsorted(line_move, cutting)) if len(line_move) else 0
    tail = ["M5"] if spindle else []
    lines = (*head, *body[:off], *tail, *body[off:])
    none = np.full(len(head), -1, dtype=np.int32)
    mapping = np.concatenate((none, line_move[:off], none[: len(tail)], line_move[off:]))
    mapping.flags.writeable = False
    check_lines(
        lines, plane, settings.line_limit, progress=None if progress is None else progress.part(0.5, 1.0)
    )
    return Program(
        name=name,
        title=title,
        bit=bit,
        moves=moves,
        lines=lines,
        line_move=mapping,
        seconds=seconds + estimate(moves, settings.motion),
        pass_number=pass_number,
        clearance=plane,
        chord=chord,
    )
