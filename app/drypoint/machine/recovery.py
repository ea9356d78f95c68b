"""A broken run taken up again: lead in over what was cut before, never deeper, nothing skipped.

The new program starts at clearance, restores the modal state, the spindle and the feed, goes down
somewhere before the break at the depth that was cut there, and from the first line that is not proven
executed on is the old program, line for line.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from drypoint.errors import PlanError
from drypoint.gcode.writer import number, write_lines
from drypoint.geometry.points import Points, as_points
from drypoint.machine.guard import bare
from drypoint.program.builder import BETWEEN
from drypoint.program.model import MoveKind, Moves, Program
from drypoint.wording import say

LEAD_IN = 2.0
"""How far before the break cutting starts again, mm along the path."""

_STRAIGHT_DOWN = 1e-6
_SPINDLE = re.compile(r"M0*[345](?!\d)")
_SPEED = re.compile(r"S([\d.]+)")
_FEED = re.compile(r"F([\d.]+)")
_DWELL = re.compile(r"^G0*4(?!\d|\.)[^P]*P([\d.]+)")


@dataclass(frozen=True, slots=True, eq=False)
class Resumption:
    """How a program is taken up again.

    Attributes
    ----------
    program : Program
        What is run: the lead-in, then the rest of the old program.
    first : int
        First line of the old program that was not proven executed.
    lead : int
        Lines of the new program before the old ones go on.
    goes_on : int
        Line of the old program that follows the lead-in.
    overlap : float
        Length that is cut twice, mm.
    start : (x, y, z) or None
        Where the bit goes down to, work coordinates, mm; None if there is no lead-in.
    clear : float
        Height from which it goes down, mm. The bit must be brought above ``start`` first.
    """

    program: Program
    first: int
    lead: int
    goes_on: int
    overlap: float
    start: tuple[float, float, float] | None
    clear: float = 0.0

    def original(self, lines: int) -> int:
        """Lines of the old program done when ``lines`` of the new one are."""
        return self.first if lines <= self.lead else self.goes_on + lines - self.lead


def plan_resumption(program: Program, first: int, *, lead_in: float = LEAD_IN) -> Resumption:
    """Take ``program`` up at line ``first``, the first not proven executed.

    Raises
    ------
    PlanError
        If the program has no such line.
    """
    if not 0 <= first <= len(program.lines):
        raise PlanError(
            say("The program has {count} lines, not {first}.", count=len(program.lines), first=first),
            program.name,
        )
    moving = np.flatnonzero((program.line_move >= 0) & (np.arange(len(program.lines)) >= first))
    moving = moving[program.moves.kind[program.line_move[moving]] != MoveKind.DWELL]
    if first == 0 or len(moving) == 0:
        rest = replace(program, lines=program.lines[first:], line_move=program.line_move[first:])
        return Resumption(rest, first, 0, first, 0.0, None)
    line = int(moving[0])
    move = int(program.line_move[line])
    back, start, overlap = _lead(program.moves, move, lead_in)
    return _compose(program, first, line, move, back, start, overlap)


def _lead(moves: Moves, move: int, lead_in: float) -> tuple[int, Points, float]:
    """First move to be made again, where it starts, and the length up to ``move``."""
    back, length = move, 0.0
    if moves.tag[move] == BETWEEN:  # the bit is on its way from one cut to the next
        return move, moves.end[max(move - 1, 0)], 0.0
    while back > 1 and length < lead_in and _cuts(moves, back - 1):
        back -= 1
        step = float(np.hypot(*(moves.end[back, :2] - moves.end[back - 1, :2])))
        if moves.kind[back] == MoveKind.FEED and length + step > lead_in:
            share = 1.0 - (lead_in - length) / step
            start = moves.end[back - 1] + share * (moves.end[back] - moves.end[back - 1])
            return back, as_points([start], 3)[0], lead_in
        length += step
    return back, moves.end[max(back - 1, 0)], length


def _cuts(moves: Moves, index: int) -> bool:
    """Whether a move goes along a groove: a feed that is no plunge and no hop, from a known place."""
    if moves.tag[index] == BETWEEN:
        return False
    if moves.kind[index] in (MoveKind.ARC_CW, MoveKind.ARC_CCW):
        return True
    across = np.hypot(*(moves.end[index, :2] - moves.end[index - 1, :2]))
    return bool(moves.kind[index] == MoveKind.FEED and across > _STRAIGHT_DOWN)


def _compose(
    program: Program, first: int, line: int, move: int, back: int, start: Points, overlap: float
) -> Resumption:
    moves = program.moves
    clear = float(moves.end[:, 2].max())
    above = (start[0], start[1], clear)
    kinds = [MoveKind.RAPID, MoveKind.FEED, *moves.kind[back:move]]
    ends = np.vstack((above, start, moves.end[back:move]))
    feeds = np.concatenate(([0.0, _sink_feed(moves, move)], moves.feed[back:move]))
    centres = np.vstack((np.zeros((2, 2)), moves.centre[back:move]))
    written, made = write_lines(kinds, ends, feeds, centres, start=(None, None, clear))
    one = slice(move, move + 1)
    again, _ = write_lines(moves.kind[one], moves.end[one], moves.feed[one], moves.centre[one])
    state = state_lines(program.lines[:line])
    feed = _last(_FEED, program.lines[:line])
    after = (f"F{feed}",) if feed else ()
    lead = (*state, f"G0Z{number(clear)}", *written, *after)
    lead_move = [*(-1 for _ in state), 0, *made, *(-1 for _ in after)]
    rest_move = program.line_move[line:]
    shift = len(kinds) - move
    new = Moves(
        np.concatenate((np.asarray(kinds, dtype=np.int8), moves.kind[move:])),
        as_points(np.vstack((ends, moves.end[move:])), 3),
        np.concatenate((feeds, moves.feed[move:])),
        np.vstack((centres, moves.centre[move:])),
        np.concatenate((np.full(2, -1, dtype=np.int32), moves.tag[back:])),
        np.concatenate((np.zeros(len(kinds)), moves.dwell[move:])),
    )
    resumed = replace(
        program,
        moves=new,
        lines=(*lead, *again, *program.lines[line + 1 :]),
        line_move=np.concatenate((lead_move, np.where(rest_move >= 0, rest_move + shift, -1))).astype(
            np.int32
        ),
        seconds=program.seconds * (1.0 - line / max(1, len(program.lines))),
    )
    spot = (float(start[0]), float(start[1]), float(start[2]))
    return Resumption(resumed, first, len(lead), line, overlap, spot, clear)


def _sink_feed(moves: Moves, move: int) -> float:
    """Feed of the last plunge before ``move``, mm/min; else the slowest feed of the program."""
    for index in range(move, 0, -1):
        down = moves.end[index, 2] < moves.end[index - 1, 2] and moves.tag[index] != BETWEEN
        if moves.kind[index] == MoveKind.FEED and down and not _cuts(moves, index):
            return float(moves.feed[index])
    feeds: NDArray[np.float64] = moves.feed[moves.feed > 0.0]
    return float(feeds.min()) if len(feeds) else 60.0


def state_lines(lines: Sequence[str]) -> list[str]:
    """What restores the modal state and the spindle that held after ``lines``."""
    state = ["G54G17G21G90G94"]
    spindle, speed, wait = "", "", ""
    for line in lines:
        read = bare(line)
        speed = found[1] if (found := _SPEED.search(read)) else speed
        if found := _SPINDLE.search(read):
            spindle, wait = found[0], ""
        elif spindle and (found := _DWELL.search(read)) and not wait:
            wait = found[1]
    if spindle and spindle.lstrip("M0") != "5":
        state.append(spindle + (f"S{speed}" if speed else ""))
        if wait:
            state.append(f"G4P{wait}")
    return state


def last_feed(lines: Sequence[str]) -> float | None:
    """The feed that holds after ``lines``, mm/min; None if they state none."""
    feed = _last(_FEED, lines)
    return float(feed) if feed else None


def _last(pattern: re.Pattern[str], lines: Sequence[str]) -> str:
    """The value that ``pattern`` finds in the last line that has one; empty if none has."""
    for line in reversed(lines):
        if found := pattern.search(bare(line)):
            return found[1]
    return ""
