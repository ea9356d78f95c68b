"""Marks become a program for a laser: pulses at rest, or lines whose power follows the speed.

A pulse: a rapid to the place (beam off by the mode and by power zero), a wait until the head stands
still, then one line that sets the power and dwells, then zero. Switching and dwelling in one line
makes the beam's time that of the dwell, to the controller's clock, whatever the lines' way takes.
The six lines of a pulse form a burst, to be sent in one piece with nothing else in flight: a cable
that comes out between two bursts leaves the beam off.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.errors import PlanError
from drypoint.gcode.writer import LINE_LIMIT, number
from drypoint.geometry.points import Points, as_points
from drypoint.program.builder import make_moves
from drypoint.program.laser_check import LONGEST_PULSE, Beam, check_beam
from drypoint.program.model import MoveKind, Moves
from drypoint.program.settings import FitLike, Motion
from drypoint.program.time import estimate
from drypoint.progress import Progress
from drypoint.wording import say

HEADER = ("G21", "G90", "G94", "G17", "G54", "M5S0")
"""mm, absolute, feed per minute, xy plane, first work frame; the beam off."""
FOOTER = ("M5", "S0", "G0")
MANY = 500
"""Pulses between two looks at whether to go on."""


@dataclass(frozen=True, slots=True)
class LaserSettings:
    """How the beam is driven.

    Attributes
    ----------
    power : float
        Share of full power, above 0 and up to 1.
    dwell : float
        Time of a pulse, s.
    settle : float
        Wait at the place before a pulse, s.
    feed : float
        Speed of continuous lines, mm/min.
    scale : float
        S word of full power: the controller's setting 30.
    height : float or None
        Work z of the head when the spot is in focus, mm; None: it stays where it is.
    rise_feed : float
        Feed of the way to that height, mm/min.
    clearance : float
        The head goes no lower than this, mm above the work's zero.
    """

    power: float = 0.3
    dwell: float = 0.02
    settle: float = 0.03
    feed: float = 300.0
    scale: float = 1000.0
    height: float | None = None
    rise_feed: float = 300.0
    clearance: float = 2.0
    line_limit: int = LINE_LIMIT
    decimals: int = 3


@dataclass(frozen=True, slots=True, eq=False)
class LaserProgram:
    """What is marked in one go.

    Attributes
    ----------
    name, title : str
        Safe as a file name; for people.
    lines : tuple of str
        The exact lines sent.
    burst : (L,) int32
        Lines of one number are sent in one piece; each mark begins a new one.
    mark : (L,) int32
        The mark a line belongs to, counting on through all rows; -1 for head and foot.
    places : (N, 2)
        Machine frame: pulses, or the starts of lines.
    beam : Beam
        As read from the text.
    seconds, beam_seconds : float
        Expected time of the run, and with the beam on.
    scale : float
        S word of full power that it was made for.
    """

    name: str
    title: str
    lines: tuple[str, ...]
    burst: NDArray[np.int32]
    mark: NDArray[np.int32]
    places: Points
    beam: Beam
    seconds: float
    beam_seconds: float
    scale: float

    @property
    def pulses(self) -> bool:
        """Whether marks are pulses at rest."""
        return len(self.beam.spots) > 0


class _Text:
    """Collects lines with the burst and mark they belong to."""

    def __init__(self) -> None:
        self.lines: list[str] = []
        self.burst: list[int] = []
        self.mark: list[int] = []
        self._number = -1

    def add(self, lines: Sequence[str], mark: int, *, together: bool) -> None:
        """Lines of one mark, in one piece or one by one."""
        for index, line in enumerate(lines):
            self._number += not together or not index
            self.lines.append(line)
            self.burst.append(self._number)
            self.mark.append(mark)


def pulse_program(
    rows: Sequence[Points],
    fit: FitLike,
    settings: LaserSettings | None = None,
    *,
    power: ArrayLike | None = None,
    dwell: ArrayLike | None = None,
    name: str = "41-legend",
    title: str = "Legend, pulses",
    motion: Motion | None = None,
    progress: Progress | None = None,
) -> LaserProgram:
    """Separate pulses at the points of ``rows`` ((N, 2) each, board frame).

    Parameters
    ----------
    power, dwell : (M,) arrays, optional
        Share of full power and time, s, of each pulse, all rows one after the other; those of the
        settings where not given.

    Raises
    ------
    PlanError
        A value makes no sense, or the text breaks a rule of the beam.
    """
    chosen = settings or LaserSettings()
    spots = _placed(rows, fit, chosen)
    share = np.broadcast_to(np.asarray(chosen.power if power is None else power, dtype=float), (len(spots),))
    wait = np.broadcast_to(np.asarray(chosen.dwell if dwell is None else dwell, dtype=float), (len(spots),))
    _check(chosen, share, wait)
    text = _begun(chosen, "M3S0")
    d = chosen.decimals
    settle = f"G4P{number(chosen.settle)}"
    told = progress or Progress()
    for k, ((x, y), p, s) in enumerate(zip(spots.tolist(), share.tolist(), wait.tolist(), strict=True)):
        if k % MANY == 0:
            told.step(0.4 * k / len(spots), "Lines of the legend")
        on = f"G4P{number(s, 4)}S{number(p * chosen.scale, 1)}"
        text.add([f"G0X{number(x, d)}Y{number(y, d)}", "G1", settle, on, "S0", "G0"], k, together=True)
    text.add(FOOTER, -1, together=False)
    travel = estimate(_rapids(spots), motion) if len(spots) else 0.0
    seconds = travel + float(wait.sum()) + chosen.settle * len(spots)
    return _finished(text, chosen, spots, seconds, float(wait.sum()), name, title, told.part(0.4, 1.0))


def line_program(
    lines: Sequence[Points],
    fit: FitLike,
    settings: LaserSettings | None = None,
    *,
    name: str = "41-legend",
    title: str = "Legend, lines",
    progress: Progress | None = None,
) -> LaserProgram:
    """Continuous lines along ``lines`` ((N, 2) each, board frame), power following the speed.

    Raises
    ------
    PlanError
        A value makes no sense, or the text breaks a rule of the beam.
    """
    chosen = settings or LaserSettings()
    _placed(lines, fit, chosen)
    _check(chosen, np.array([chosen.power]), np.array([chosen.dwell]))
    text, d = _begun(chosen, "M4S0"), chosen.decimals
    full = f"S{number(chosen.power * chosen.scale, 1)}"
    length, starts = 0.0, []
    told = progress or Progress()
    for k, line in enumerate(lines):
        told.step(0.4 * k / len(lines), "Lines of the legend")
        place = np.round(fit.apply(line), d) + 0.0
        place = place[np.concatenate(([True], (np.diff(place, axis=0) != 0).any(axis=1)))]
        if len(place) < 2:
            continue
        starts.append(place[0])
        length += float(np.hypot(*np.diff(place, axis=0).T).sum())
        words = [f"X{number(x, d)}Y{number(y, d)}" for x, y in place.tolist()]
        # every mark states mode, feed and power itself, so that a run may be taken up at any mark
        marks = [f"G1{words[1]}{full}F{number(chosen.feed, 1)}", *words[2:]]
        text.add([f"G0{words[0]}S0", *marks, "G0S0"], k, together=False)
    text.add(FOOTER, -1, together=False)
    places = as_points(starts)
    on = length / chosen.feed * 60.0
    travel = estimate(_rapids(places)) if len(places) else 0.0
    return _finished(text, chosen, places, travel + on, on, name, title, told.part(0.4, 1.0))


def resumed(program: LaserProgram, mark: int) -> LaserProgram:
    """The rest of a program from a mark on, with the head it needs.

    Raises
    ------
    PlanError
        If there is no such mark.
    """
    found = np.flatnonzero(program.mark == mark)
    if not len(found):
        raise PlanError(say("There is no mark {mark} in this program.", mark=mark + 1), program.name)
    head = int(np.flatnonzero(program.mark >= 0)[0])
    keep = np.concatenate((np.arange(head), np.arange(found[0], len(program.lines))))
    lines = tuple(program.lines[k] for k in keep.tolist())
    beam = check_beam(lines)
    done = 1.0 - mark / max(1, int(program.mark.max()) + 1)
    return LaserProgram(
        program.name,
        program.title,
        lines,
        program.burst[keep],
        program.mark[keep],
        program.places[mark:],
        beam,
        program.seconds * done,
        beam.rest_seconds if program.pulses else program.beam_seconds * done,
        program.scale,
    )


def _begun(settings: LaserSettings, source: str) -> _Text:
    text = _Text()
    height = (
        ()
        if settings.height is None
        else (f"G1Z{number(settings.height, settings.decimals)}F{number(settings.rise_feed, 1)}",)
    )
    text.add([*HEADER, *height, "G0", source], -1, together=False)
    return text


def _placed(rows: Sequence[Points], fit: FitLike, settings: LaserSettings) -> Points:
    """(N, 2) machine places as they will be written."""
    if not len(rows):
        raise PlanError("There is nothing to mark.", "Legend")
    return as_points(np.round(fit.apply(np.vstack(list(rows))), settings.decimals) + 0.0)


def _check(settings: LaserSettings, power: NDArray[np.float64], dwell: NDArray[np.float64]) -> None:
    if not (np.isfinite(power).all() and (power > 0).all() and (power <= 1).all()):
        raise PlanError("The beam's power must be above 0 and at most 100 %.", "Laser")
    if not (np.isfinite(dwell).all() and (dwell > 0).all() and (dwell <= LONGEST_PULSE).all()):
        raise PlanError(
            say("A pulse lasts more than 0 and at most {longest_pulse:g} s.", longest_pulse=LONGEST_PULSE),
            "Laser",
        )
    if not (settings.settle > 0 and settings.feed > 0 and settings.scale > 0):
        raise PlanError("Settling time, feed and the controller's full power must be above 0.", "Laser")
    if settings.height is not None and settings.height < settings.clearance:
        raise PlanError(
            say(
                "In focus the head is {height:g} mm above zero, below the clearance of {clearance:g} mm.",
                height=settings.height,
                clearance=settings.clearance,
            ),
            "Laser",
            "Mount the head higher, or allow less clearance.",
        )


def _rapids(places: Points) -> Moves:
    """Rapid moves through (N, 2) places, with a stop at each."""
    count = len(places)
    end = np.repeat(np.column_stack((places, np.zeros(count))), 2, axis=0)
    kind = np.tile([int(MoveKind.RAPID), int(MoveKind.DWELL)], count)
    none = np.zeros(2 * count)
    return make_moves(kind, end, none, np.zeros((2 * count, 2)), np.full(2 * count, -1), none)


def _finished(
    text: _Text,
    settings: LaserSettings,
    places: Points,
    seconds: float,
    beam_seconds: float,
    name: str,
    title: str,
    progress: Progress,
) -> LaserProgram:
    """The program, once its text has passed."""
    beam = check_beam(text.lines, scale=settings.scale, limit=settings.line_limit, progress=progress)
    burst, mark = np.array(text.burst, dtype=np.int32), np.array(text.mark, dtype=np.int32)
    burst.flags.writeable = mark.flags.writeable = False
    return LaserProgram(
        name, title, tuple(text.lines), burst, mark, places, beam, seconds, beam_seconds, settings.scale
    )
