"""What is still to run, as the run page lists it; computed in the background."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.errors import PlanError
from drypoint.job.journal import RunOutline, RunRecord
from drypoint.machine.sender import line_seconds
from drypoint.program.model import Program
from drypoint.program.time import move_times
from drypoint.progress import Progress
from drypoint.session.actions import run
from drypoint.session.session import Session
from drypoint.session.trial_runs import trial_runs
from drypoint.session.work import (
    WorkItem,
    WorkKind,
    later_work,
    marks_work,
    passes_work,
    preset_of,
    program_settings,
)


@dataclass(frozen=True, slots=True, eq=False)
class WorkList:
    """All work in order.

    Attributes
    ----------
    items : tuple of WorkItem
        Marks, the passes that are planned, holes, outline; those done are among them.
    passes_done : tuple of (name, length)
    waits : str
        Why no pass can be planned now; empty if one is, or none is needed.
    broken : RunRecord or None
        The newest run, if it did not finish.
    trials : tuple of RunOutline
        Test patterns and burn grids that were begun.
    """

    items: tuple[WorkItem, ...]
    passes_done: tuple[tuple[int, float], ...]
    waits: str
    broken: RunRecord | None
    trials: tuple[RunOutline, ...] = ()

    @property
    def following(self) -> WorkItem | None:
        """What is run next, in order; holes and outline wait until the grooves can be cut."""
        early = bool(self.waits) and not self.passes_done
        wanted = (item for item in self.items if not early or item.kind is WorkKind.MARKS)
        return next((item for item in wanted if not item.done), None)


def list_work(session: Session, progress: Progress) -> WorkList:
    """Place everything. Computes."""
    derived, snap = session.derived, session.snapshot
    broken, trials = run.to_resume(session), trial_runs(session)
    done = tuple((one.number, one.length) for one in derived.done_passes(snap))
    try:
        derived.fit(snap)
    except PlanError as error:
        return WorkList((), done, error.text, broken, trials)
    items = list(marks_work(derived, snap))
    waits = ""
    progress.step(0.1)
    try:
        items += derived.run(passes_work, snap, progress.part(0.1, 0.8))
    except PlanError as error:
        waits = error.text
    items += later_work(derived, snap)
    return WorkList(tuple(items), done, waits, broken, trials)


@dataclass(frozen=True, slots=True, eq=False)
class Clockwork:
    """When each line of a program is done, and how far the cut is then.

    Attributes
    ----------
    after : (L + 1,) s
        Time until the first n lines are done, at 100 % feed.
    cut : (L + 1,) share of the cut's length that is made then
    """

    after: NDArray[np.float64]
    cut: NDArray[np.float64]

    def left(self, executed: int, override: int) -> float:
        """Time that is left, s."""
        done = self.after[min(executed, len(self.after) - 1)]
        return float((self.after[-1] - done) * 100.0 / max(10, override))


def clockwork(session: Session, program: Program) -> Clockwork:
    """The times of a program's lines. Computes."""
    shared = program_settings(session.settings, preset_of(session.settings))
    moves = program.moves
    times = move_times(moves, shared.motion)
    steps = np.zeros(len(moves))
    if len(moves) > 1:
        steps[1:] = np.hypot(*np.diff(moves.end[:, :2], axis=0).T)
    steps[(moves.tag < 0) | (moves.kind == 0)] = 0.0
    moving = program.line_move >= 0
    by_line, cut = np.zeros(len(program.lines)), np.zeros(len(program.lines))
    by_line[moving], cut[moving] = times[program.line_move[moving]], steps[program.line_move[moving]]
    over = max(0.0, line_seconds(program.lines) - float(by_line.sum()))  # where the cable is the limit
    by_line += (
        over * np.array([len(line) + 1 for line in program.lines]) / max(sum(map(len, program.lines)), 1)
    )
    after = np.concatenate(([0.0], np.cumsum(by_line)))
    done = np.concatenate(([0.0], np.cumsum(cut)))
    return Clockwork(after, done / max(done[-1], 1e-9))
