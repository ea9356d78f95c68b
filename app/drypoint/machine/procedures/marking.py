"""Mark with a laser: focus light, a dark walk round the extent, and the run of the marks."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.errors import DrypointError, MachineError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.controller import StreamEvent
from drypoint.machine.faults import Stopped
from drypoint.machine.journal import RunJournal, RunStart
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.contact import clip_off
from drypoint.machine.procedures.running import STOPPED, RunResult, fingerprint
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.protocol import Vec
from drypoint.machine.state import Clip
from drypoint.machine.tracker import PathTracker, Sight, Tracker
from drypoint.program.laser import LaserProgram, LaserSettings, pulse_program, resumed
from drypoint.wording import say

FOCUS_POWER = 0.01
"""Share of full power of the focus light."""
FOCUS_STEP = 0.5
"""The focus light is a row of pulses this long, s: whatever happens, it is out after one."""
LONGEST_FOCUS = 60.0
"""Longest focus light at a time, s."""
_SAMPLE = 3
"""Marks of a program that the controller reads before the run: the lines of all marks are alike."""


class PulseTracker:
    """Counts bursts: one whose lines are all answered is executed, since its last lines wait for it."""

    def __init__(self, bursts: NDArray[np.int32]) -> None:
        self._ends = np.append(np.flatnonzero(np.diff(bursts)) + 1, len(bursts))
        self._executed = 0

    @property
    def executed(self) -> int:
        """Lines proven executed."""
        return self._executed

    def acknowledged(self, lines: int) -> None:
        """The first ``lines`` lines were taken."""
        whole = self._ends[self._ends <= lines]
        self._executed = max(self._executed, int(whole[-1]) if len(whole) else 0)

    def position(self, work: Vec, sent: int) -> Sight:
        """Pulses are at rest: an answer says more than a place."""
        return Sight()

    def drained(self, lines: int) -> None:
        """The first ``lines`` lines are done."""
        self._executed = max(self._executed, lines)

    def seconds(self, count: int) -> NDArray[np.float64]:
        """Bursts set their own pace."""
        return np.zeros(count)


def require_laser(place: Workplace, scale: float) -> None:
    """Refuse unless the controller drives a laser and full power is what programs take it for.

    Raises
    ------
    MachineError
        Saying which setting of the controller is otherwise.
    """
    facts = place.controller.facts
    if not facts.laser_mode:
        raise MachineError(
            "The controller is not in laser mode.",
            place.controller.name,
            "With its laser mode off the beam would stay on while it moves. Switch it on (setting 32).",
        )
    stated = facts.settings.get(30)
    if stated is not None and abs(stated - scale) > 0.5:
        raise MachineError(
            say(
                "The controller's full power is S{stated:g}, the program was made for S{scale:g}.",
                stated=stated,
                scale=scale,
            ),
            place.controller.name,
            "Make the program anew.",
        )


def focus_light(
    place: Workplace, settings: LaserSettings, cautions: Sequence[str], *, seconds: float = 20.0
) -> None:
    """The spot at 1 % of full power where the head stands, for a limited time; then off.

    Raises
    ------
    MachineError
        No laser mode, declined, or a time that makes no sense.
    """
    if not 0.0 < seconds <= LONGEST_FOCUS:
        raise MachineError(
            say(
                "The focus light is on for up to {longest_focus:g} s at a time.", longest_focus=LONGEST_FOCUS
            ),
            "focus light",
        )
    require_laser(place, settings.scale)
    _ready(
        place,
        "Focus light",
        say("The beam comes on at 1 % of full power for {seconds:g} s.", seconds=seconds),
        cautions,
    )
    x, y, _ = place.controller.place()
    count = max(1, round(seconds / FOCUS_STEP))
    dim = replace(settings, power=FOCUS_POWER, dwell=FOCUS_STEP, settle=0.001, height=None)
    program = pulse_program([as_points([(x, y)] * count)], Rigid(), dim, name="focus", title="Focus light")
    place.controller.stream(program.lines)


def dark_walk(place: Workplace, corners: ArrayLike, cautions: Sequence[str]) -> None:
    """The head once round (N, 2) ``corners`` (work, mm) at the height it has, beam off."""
    way = as_points(corners)
    _ready(place, "Dark walk", "The head goes once round what will be marked, beam off.", cautions)
    place.controller.command("M5S0")
    for x, y in [*way.tolist(), *way[:1].tolist()]:
        place.controller.move((x, y, None))


def run_marks(
    place: Workplace,
    program: LaserProgram,
    journal: RunJournal,
    cautions: Sequence[str],
    *,
    first: int = 0,
    on_progress: Callable[[StreamEvent], None] | None = None,
) -> RunResult:
    """Mark; ``first`` is the first mark to make, later than 0 where a broken run is taken up.

    After a fault at most the one pulse that was under way is made twice. Counts in the journal are
    of lines of the whole program.

    Raises
    ------
    MachineError
        After any fault, the beam being off. A stop by the user is no fault: the result says so.
    """
    controller, total = place.controller, len(program.lines)
    require_laser(place, program.scale)
    missing = {"x", "y"} - controller.known
    if missing:
        raise MachineError(
            say("The position of {names} is not known.", names=", ".join(sorted(missing))),
            controller.name,
            "Find the board again.",
        )
    part = resumed(program, first) if first else program
    _ready(place, program.title, say("{max} marks.", max=int(program.mark.max()) + 1 - first), cautions)
    last = int(part.mark.max())
    controller.check(resumed(part, max(first, last - _SAMPLE + 1)).lines)
    journal.begin(RunStart(program.name, total - len(part.lines), total, fingerprint(program.lines)))
    controller.override(spindle=100)  # it scales the beam
    started = controller.now()
    note = _Note(journal, total - len(part.lines), on_progress, total)
    tracker: Tracker = (
        PulseTracker(part.burst)
        if part.pulses
        else PathTracker(
            part.lines, controller.place(), controller.facts.planner_blocks, step=controller.facts.step
        )
    )
    try:
        controller.stream(part.lines, on_progress=note, tracker=tracker)
    except Stopped as stopped:
        journal.end(STOPPED)
        return RunResult(False, stopped.what, journal.resume_point(), total, controller.now() - started)
    except DrypointError as error:
        journal.end(error.what)
        raise
    except BaseException:
        journal.end("broken off")
        raise
    journal.end("finished")
    return RunResult(True, "finished", total, total, controller.now() - started)


def mark_to_resume(program: LaserProgram, executed: int) -> int:
    """The first mark that is not proven made, from the lines proven executed."""
    later = program.mark[executed:]
    return int(later[later >= 0][0]) if (later >= 0).any() else int(program.mark.max()) + 1


class _Note:
    """Counts of the stream, as lines of the whole program, into the journal."""

    def __init__(
        self,
        journal: RunJournal,
        skipped: int,
        on_progress: Callable[[StreamEvent], None] | None,
        total: int,
    ) -> None:
        self._journal, self._skipped, self._on_progress, self._total = journal, skipped, on_progress, total
        self._sent = skipped

    def __call__(self, event: StreamEvent) -> None:
        sent, taken, done = (self._skipped + n for n in (event.sent, event.acknowledged, event.executed))
        if sent > self._sent:
            self._journal.sent(self._sent, sent)
            self._sent = sent
        self._journal.acknowledged(taken)
        if event.executed:
            self._journal.executed(done)
        if self._on_progress is not None:
            whole = replace(event, sent=sent, acknowledged=taken, executed=done, total=self._total)
            self._on_progress(whole)


def _ready(place: Workplace, title: str, text: str, cautions: Sequence[str]) -> None:
    """The cautions are confirmed and the clip is off."""
    place.ask(Request(RequestKind.CONFIRM, title, text, tuple(cautions)))
    if place.controller.clip is not Clip.OFF:
        clip_off(place)
