"""Run a program with its journal; take a broken run up again."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from drypoint.errors import DrypointError, MachineError
from drypoint.machine.controller import StreamEvent
from drypoint.machine.faults import Declined, Stopped
from drypoint.machine.journal import RunJournal, RunStart
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.bit_change import START, spindle_still_on, start_spindle, stop_spindle
from drypoint.machine.procedures.contact import clip_off
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.recovery import LEAD_IN, Resumption, last_feed, plan_resumption, state_lines
from drypoint.machine.state import Clip
from drypoint.machine.tracker import PathTracker
from drypoint.program.model import Program
from drypoint.program.standing_clear import stands_clear
from drypoint.wording import say

STOPPED = "stopped"
"""Reason of a run that was ended by Stop and nothing else."""

CAUTIONS = (
    *START,
    "Board clamped, clamps outside the path, extraction on: the dust of glass-fibre laminate irritates "
    "skin, eyes and airways.",
    "Stay with the machine. Stop here is a stop in software; the power switch is the one that counts.",
    "Follow the maker's manual, local rules and qualified practice.",
)


@dataclass(frozen=True, slots=True)
class RunResult:
    """How a run ended.

    Attributes
    ----------
    finished : bool
    reason : str
        "finished", or why not.
    executed, total : int
        Lines of the whole program proven executed, and all of them.
    seconds : float
        By the link's clock.
    overlap : float
        Length that a resumed run cut twice, mm.
    """

    finished: bool
    reason: str
    executed: int
    total: int
    seconds: float
    overlap: float = 0.0


def fingerprint(lines: Sequence[str]) -> str:
    """SHA-256 of a program's lines."""
    return hashlib.sha256("\n".join(lines).encode()).hexdigest()


def run_program(
    place: Workplace,
    program: Program,
    journal: RunJournal,
    *,
    first: int = 0,
    check_first: bool = True,
    lead_in: float = LEAD_IN,
    pauses: Sequence[int] = (),
    on_progress: Callable[[StreamEvent], None] | None = None,
) -> RunResult:
    """Run ``program`` from line ``first`` on; with ``first`` > 0 the run is taken up again there.

    Parameters
    ----------
    check_first : bool
        Have the controller read the whole program before the first move.
    pauses : sequence of int
        Lines of ``program`` before which to pause, at the next place where the bit is clear of the
        copper. The spindle is stopped for it and started again.

    Raises
    ------
    MachineError
        After any fault; the journal is ended and holds where to resume. A stop by the user is no
        fault: the result says so.
    """
    _require_position(place)
    taken = plan_resumption(program, first, lead_in=lead_in)
    title = program.title if first == 0 else say("{title}, resumed", title=program.title)
    place.ask(Request(RequestKind.CONFIRM, title, "", CAUTIONS, bit=program.bit))
    if place.controller.clip is not Clip.OFF:
        clip_off(place)
    if check_first:
        place.controller.check(taken.program.lines)
    journal.begin(RunStart(program.name, first, len(program.lines), fingerprint(program.lines)))
    started = place.controller.now()
    try:
        if taken.start is not None:
            place.raise_to(taken.clear)
            place.controller.move((taken.start[0], taken.start[1], None))
        start_spindle(place, program.bit)
        _stream(place, taken, journal, pauses, on_progress)
    except Stopped as stopped:
        journal.end(STOPPED)
        spindle_still_on(place)
        return RunResult(
            False,
            stopped.what,
            journal.resume_point(),
            len(program.lines),
            place.controller.now() - started,
            taken.overlap,
        )
    except DrypointError as error:
        journal.end(error.what)
        raise
    except BaseException:
        journal.end("broken off")
        raise
    journal.end("finished")
    stop_spindle(place)
    total = len(program.lines)
    return RunResult(True, "finished", total, total, place.controller.now() - started, taken.overlap)


def _require_position(place: Workplace) -> None:
    missing = {"x", "y", "z"} - place.controller.known
    if missing:
        raise MachineError(
            say("The position of {names} is not known.", names=", ".join(sorted(missing))),
            place.controller.name,
            "Set zero again at the known spot and check a reference mark first.",
        )


def _stream(
    place: Workplace,
    taken: Resumption,
    journal: RunJournal,
    pauses: Sequence[int],
    on_progress: Callable[[StreamEvent], None] | None,
) -> None:
    """Stream in stretches between pauses, keeping the journal."""
    program = taken.program
    controller = place.controller
    facts = controller.facts
    tracker = PathTracker(program.lines, controller.place(), facts.planner_blocks, step=facts.step)
    record = _Record(journal, taken, on_progress)
    stretches = [*_clear_lines(taken, pauses), len(program.lines)]
    begin = 0
    for end in stretches:
        if begin:
            _pause(place, program, begin, journal)
        tracker.begin(begin)
        record.begin(begin)
        controller.stream(program.lines[begin:end], on_progress=record.note, tracker=tracker)
        begin = end


def _pause(place: Workplace, program: Program, line: int, journal: RunJournal) -> None:
    """The bit is clear of the copper: up, spindle off, ask, and all as it was before ``line``."""
    journal.event(say("paused before line {line}", line=line + 1))
    height, top = place.controller.place()[2], float(program.moves.end[:, 2].max())
    place.raise_to(top)  # a hop is too low for hands
    stop_spindle(place)
    text = "The bit stands clear and the spindle is off. It starts again as soon as you go on."
    try:
        place.ask(Request(RequestKind.CONFIRM, "Pause", text, START, bit=program.bit))
    except Declined as error:  # not to go on is to stop here: nothing is lost by it
        raise Stopped(place.controller.name) from error
    start_spindle(place, program.bit)
    for state in state_lines(program.lines[:line]):
        place.controller.command(state)
    if height < top:  # the way down is a feed, as the hop was: the next line may count on that and on its F
        place.controller.move((None, None, height), last_feed(program.lines[:line]))


def _clear_lines(taken: Resumption, pauses: Sequence[int]) -> list[int]:
    """Lines of the new program before which the bit is clear, at or after each wanted pause."""
    program = taken.program
    clear = stands_clear(program.moves)
    found: set[int] = set()
    for wanted in pauses:
        free = False
        for line, move in enumerate(program.line_move):
            if free and taken.original(line) >= wanted and line:
                found.add(line)
                break
            free = bool(clear[move]) if move >= 0 else free
    return sorted(found)


class _Record:
    """Counts of the stretch being streamed → counts of the old program, into the journal."""

    def __init__(
        self, journal: RunJournal, taken: Resumption, on_progress: Callable[[StreamEvent], None] | None
    ) -> None:
        self._journal = journal
        self._taken = taken
        self._on_progress = on_progress
        self._begin = 0
        self._sent = taken.first

    def begin(self, line: int) -> None:
        """A stretch begins at ``line`` of the new program."""
        self._begin = line

    def note(self, event: StreamEvent) -> None:
        """Write down how far the stream is."""
        sent, taken, done = (
            self._taken.original(count + self._begin)
            for count in (event.sent, event.acknowledged, event.executed)
        )
        if sent > self._sent:
            self._journal.sent(self._sent, sent)
            self._sent = sent
        self._journal.acknowledged(taken)
        self._journal.executed(done)
        if self._on_progress is not None:
            total = self._taken.original(len(self._taken.program.lines))
            self._on_progress(replace(event, sent=sent, acknowledged=taken, executed=done, total=total))
