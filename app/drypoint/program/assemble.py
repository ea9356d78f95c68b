"""Moves become a program: header, lines, spindle off, park, checked on the final text."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import Bit
from drypoint.gcode.writer import number, write_lines
from drypoint.geometry.points import as_points
from drypoint.program.builder import BETWEEN, MoveBuilder, append
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
    settings, plane, moves = builder.settings, builder.plane, builder.build()
    spindle = settings.spindle_control and bit.speeds.spindle > 0
    cutting = len(moves)
    if settings.park is not None and cutting:
        moves = append(moves, MoveKind.RAPID, (*settings.park, plane))
    told = progress or Progress()
    moving = estimate(moves, settings.motion)
    lines, mapping = _lines(moves, cutting, builder, bit, spindle, told.part(0.0, 0.5))
    check_lines(lines, plane, settings.line_limit, progress=told.part(0.5, 1.0))
    return Program(
        name=name,
        title=title,
        bit=bit,
        moves=moves,
        lines=lines,
        line_move=mapping,
        seconds=moving + (settings.spindle_delay if spindle else 0.0),
        pass_number=pass_number,
        clearance=plane,
        chord=chord,
        saved=_over_the_plane(moves, builder) - moving if builder.hops else 0.0,
    )


def _over_the_plane(moves: Moves, builder: MoveBuilder) -> float:
    """Time of the same moves with every hop made on the clearance plane instead, s."""
    end = np.array(moves.end)
    end[(moves.tag == BETWEEN) & (end[:, 2] == builder.low), 2] = builder.plane
    return estimate(replace(moves, end=as_points(end, 3)), builder.settings.motion)


def _lines(
    moves: Moves, cutting: int, builder: MoveBuilder, bit: Bit, spindle: bool, progress: Progress
) -> tuple[tuple[str, ...], NDArray[np.int32]]:
    """The text of all moves with head and tail, and the move that each line makes (-1: none).

    The spindle stops on the clearance plane after the ``cutting`` moves, before the way to the park place.
    """
    settings = builder.settings
    body, line_move = write_lines(
        moves.kind,
        moves.end,
        moves.feed,
        moves.centre,
        moves.dwell,
        start=(None, None, builder.plane),
        limit=settings.line_limit,
        decimals=settings.decimals,
        progress=progress,
    )
    head, tail = _head(builder.plane, bit, settings, spindle), ("M5",) if spindle else ()
    off = int(np.searchsorted(line_move, cutting))
    none = np.full(len(head) + len(tail), -1, dtype=np.int32)
    mapping = np.concatenate((none[: len(head)], line_move[:off], none[len(head) :], line_move[off:]))
    mapping.flags.writeable = False
    return (*head, *body[:off], *tail, *body[off:]), mapping


def _head(plane: float, bit: Bit, settings: ProgramSettings, spindle: bool) -> tuple[str, ...]:
    """Modal state, up to the clearance plane, spindle on and up to speed."""
    up = f"G1Z{number(plane, settings.decimals)}F{number(settings.retract_feed, 1)}"
    if not spindle:
        return (*HEADER, up)
    wait = (f"G4P{number(settings.spindle_delay)}",) if settings.spindle_delay > 0 else ()
    return (*HEADER, up, f"M3S{number(bit.speeds.spindle, 0)}", *wait)
