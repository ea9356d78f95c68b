"""The work of the evening as lines of the run page."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from drypoint.job.journal import RunOutline
from drypoint.program.model import Program
from drypoint.session.run_titles import run_title
from drypoint.session.sheet import clock
from drypoint.session.trial_runs import TRIALS
from drypoint.session.work import WorkItem, WorkKind, run_seconds
from drypoint.ui.machine_side.worklist import WorkList
from drypoint.ui.pages.run import Task
from drypoint.ui.parts.glyph import Mark


def title_of(item: WorkItem) -> str:
    """What a piece of work is called; the bit is named only where it tells pieces apart."""
    title = item.program.title
    return run_title(title.split(": ", maxsplit=1)[0]) if item.kind is WorkKind.MARKS else title


def tasks_of(work: WorkList | None, *, busy: bool = False, now: Program | None = None) -> list[Task]:
    """Trial cuts, then marks, passes and all else in their order, with their state and time.

    Parameters
    ----------
    busy : whether the machine is at work: a run that has not ended is under way then, else broken off
    now : the program that is just beginning; a trial cut is not in the journal yet
    """
    if work is None:
        return []
    tasks = [
        Task(_say("Pass {n}").format(n=n), Mark.DONE, f"{length:.0f} mm") for n, length in work.passes_done
    ]
    marks = [item for item in work.items if item.kind is WorkKind.MARKS]
    others = [item for item in work.items if item.kind is not WorkKind.MARKS]
    if work.waits:
        tasks.append(Task(_say("Grooves"), Mark.STALE, _say("touch first")))
    return [
        *_trials(work, busy, now),
        *(_task(item, work) for item in marks),
        *tasks,
        *(_task(item, work) for item in others),
    ]


def _trials(work: WorkList, busy: bool, now: Program | None) -> list[Task]:
    """Test patterns and burn grids: done, under way or broken off."""
    begun = [one for one in work.trials if one.finished or now is None or one.program != now.name]
    tasks = [_trial(one, busy) for one in begun]
    if now is not None and now.name in TRIALS:
        tasks.append(Task(run_title(now.title), Mark.READY, _say("under way")))
    return tasks


def _trial(one: RunOutline, busy: bool) -> Task:
    title = run_title(one.title)
    if one.finished:
        return Task(title, Mark.DONE, _say("done"))
    if busy and one.reason is None:
        return Task(title, Mark.READY, _say("under way"))
    return Task(title, Mark.STALE, _say("broken off"))


def _task(item: WorkItem, work: WorkList) -> Task:
    mark = Mark.DONE if item.done else (Mark.READY if item is work.following else Mark.TO_DO)
    return Task(title_of(item), mark, clock(run_seconds(item.program)))


def _say(text: str) -> str:
    return QCoreApplication.translate("run tasks", text)
