"""A last look at a program for a laser: its own small reading of the text, and rules of the beam.

What a controller in laser mode does with its spindle words (public documentation of the protocol,
laser mode): the beam can be on only under G1, G2 and G3. Under M4 its power follows the speed, so it
is off at rest. Under M3 it is constant and stays on at rest. M5 and S0 are off. An S word without
motion takes effect at once, after all motion before it has ended.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from drypoint.errors import PlanError
from drypoint.gcode.writer import LINE_LIMIT
from drypoint.geometry.points import Points, as_points
from drypoint.progress import Progress
from drypoint.wording import say

LONGEST_PULSE = 1.0
"""A beam at rest for longer than this, s, is no mark but a fire."""

MANY = 2000
"""Lines between two looks at whether to go on."""

_WORD = re.compile(r"([A-Z])([-+]?(?:\d+\.?\d*|\.\d+))")
_LINE = re.compile(rf"(?:{_WORD.pattern})+")
_G = {0, 1, 2, 3, 4, 17, 21, 54, 90, 94}
_M = {3, 4, 5}
_AXES = frozenset("XYZ")


@dataclass(frozen=True, slots=True, eq=False)
class Beam:
    """Where a program has the beam on, machine frame.

    Attributes
    ----------
    spots : (N, 2) places of pulses, mm
    seconds : (N,) their dwells
    power : (N,) S word of each
    strokes : (M, 4) straight pieces marked while moving: x, y of start and end, mm
    stroke_power : (M,) S word, of full speed
    stroke_feed : (M,) mm/min
    """

    spots: Points
    seconds: NDArray[np.float64]
    power: NDArray[np.float64]
    strokes: NDArray[np.float64]
    stroke_power: NDArray[np.float64]
    stroke_feed: NDArray[np.float64]

    @property
    def rest_seconds(self) -> float:
        """Beam-on time at rest, s."""
        return float(self.seconds.sum())


@dataclass(slots=True)
class _State:
    """What the controller would know at a line."""

    mode: int = 0
    source: int = 5
    power: float = 0.0
    feed: float = 0.0
    at: list[float | None] = field(default_factory=lambda: [None, None, None])
    lit: bool = False
    """Whether a pulse was begun and not ended."""


def has_constant_beam(lines: Sequence[str]) -> bool:
    """Whether any line asks for a beam that stays on at rest."""
    return any(m[0] == "M" and float(m[1]) == 3 for line in lines for m in _WORD.findall(line))


def check_beam(
    lines: Sequence[str],
    *,
    scale: float | None = None,
    limit: int = LINE_LIMIT,
    progress: Progress | None = None,
) -> Beam:
    """Refuse a program for a laser that could burn what it should not.

    - every line is plain words, short enough, of a short list of commands;
    - a source is switched on with power zero only, and every way between marks is a rapid at power
      zero: off twice over;
    - a pulse is one dwell at rest, under M3 and G1, no longer than `LONGEST_PULSE`, and the very next
      line sets the power to zero and does nothing else;
    - no line moves an axis under M3 while power is set; under M4 only G1 to G3 carry power, they
      move in x and y, and nothing else is done until power is zero again;
    - at the end source and power are off.

    Parameters
    ----------
    scale : float, optional
        S word of full power; more is refused.

    Raises
    ------
    PlanError
        Naming the line and the rule.
    """
    state, pulses, strokes = _State(), list[tuple[float, ...]](), list[tuple[float, ...]]()
    told = progress or Progress()
    for index, line in enumerate(lines):
        if index % MANY == 0:
            told.step(index / len(lines), "Checking the beam")
        where = say("line {index}: {line}", index=index + 1, line=line[:60])
        if len(line) + 1 > limit:
            raise PlanError(
                say("The line is longer than the controller takes ({limit}).", limit=limit), where
            )
        if not _LINE.fullmatch(line):
            raise PlanError("The line holds something other than words of a letter and a number.", where)
        words = [(m[0], float(m[1])) for m in _WORD.findall(line)]
        _read(words, state, where, pulses, strokes)
        if scale is not None and state.power > scale + 1e-9:
            raise PlanError(
                say("The power {power:g} is above full power, {scale:g}.", power=state.power, scale=scale),
                where,
            )
    if state.source != 5 or state.power or state.lit:
        raise PlanError("The program does not end with the beam off (M5 and S0).", "last line")
    p, s = np.array(pulses).reshape(-1, 4), np.array(strokes).reshape(-1, 6)
    return Beam(as_points(p[:, :2]), p[:, 2], p[:, 3], s[:, :4], s[:, 4], s[:, 5])


def _read(
    words: list[tuple[str, float]],
    state: _State,
    where: str,
    pulses: list[tuple[float, ...]],
    strokes: list[tuple[float, ...]],
) -> None:
    """One line: the rules first, then the state after it."""
    named = dict(words)
    g = {value for letter, value in words if letter == "G"}
    m = {value for letter, value in words if letter == "M"}
    if g - _G or m - _M or len(m) > 1:
        raise PlanError("The line has a command with no place in a program for a laser.", where)
    if named.get("S", 0.0) < 0:
        raise PlanError("A power below zero.", where)
    moves = bool(named.keys() & _AXES) and 4 not in g
    if state.lit and (list(named) != ["S"] or named["S"] != 0.0):
        raise PlanError("The beam is on at rest and the next line does not just put it out (S0).", where)
    power = named.get("S", state.power)
    source = int(next(iter(m), state.source))
    mode = int(next(iter(g & {0, 1, 2, 3}), state.mode))
    if m and source != 5 and power:
        raise PlanError("The beam is switched on with power set; it must start at zero.", where)
    state.lit = False
    if power and source == 5:
        raise PlanError("Power is set while the source is off.", where)
    if power and source == 3:
        pulses.append(_pulse(named, g, m, mode, state, where))
        state.lit = True
    elif power:
        strokes.append(_stroke(named, mode, moves, state, power, where))
    elif moves and mode != 0 and source == 3:
        raise PlanError("Under constant power every way must be a rapid.", where)
    state.mode, state.source, state.power = mode, source, power
    state.feed = named.get("F", state.feed)
    if moves:
        state.at = [named.get(axis, state.at[k]) for k, axis in enumerate("XYZ")]


def _pulse(
    named: dict[str, float], g: set[float], m: set[float], mode: int, state: _State, where: str
) -> tuple[float, ...]:
    """A dwell with the beam on."""
    if g != {4} or m or named.keys() - {"G", "P", "S"} or mode != 1:
        raise PlanError("Constant power is set by something other than a pulse: a dwell at rest.", where)
    seconds = named.get("P", 0.0)
    if not 0.0 < seconds <= LONGEST_PULSE:
        raise PlanError(
            say(
                "A pulse lasts {seconds:g} s; allowed is up to {longest_pulse:g} s.",
                seconds=seconds,
                longest_pulse=LONGEST_PULSE,
            ),
            where,
        )
    x, y, _ = state.at
    if x is None or y is None:
        raise PlanError("A pulse at a place that is not known.", where)
    return (x, y, seconds, named.get("S", state.power))


def _stroke(
    named: dict[str, float], mode: int, moves: bool, state: _State, power: float, where: str
) -> tuple[float, ...]:
    """A move with the beam on."""
    if not moves or mode != 1 or "Z" in named:
        raise PlanError("Power is set on a line that is no mark: a straight feed move in x and y.", where)
    x0, y0, _ = state.at
    feed = named.get("F", state.feed)
    if x0 is None or y0 is None:
        raise PlanError("A mark from a place that is not known.", where)
    if not feed > 0:
        raise PlanError("A mark has no feed.", where)
    end = named.get("X", x0), named.get("Y", y0)
    if end == (x0, y0):
        raise PlanError("A mark that goes nowhere.", where)
    return (x0, y0, *end, power, feed)
