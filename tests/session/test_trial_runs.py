"""Test patterns and burn grids that were begun, told from the journal."""

from __future__ import annotations

from drypoint.job.journal import JobJournal
from drypoint.machine.journal import RunStart
from drypoint.session.trial_runs import TRIALS, trial_runs

PATTERN, GRID = TRIALS


def run(session, name, reason):
    journal = JobJournal(session.job, name.title(), ("G21", "M2"))
    journal.begin(RunStart(name, 0, 2, ""))
    if reason is not None:
        journal.end(reason)


def told(session):
    return [(one.program, one.finished, one.reason) for one in trial_runs(session)]


def test_only_trial_cuts_are_told_and_a_run_taken_up_once(session):
    assert told(session) == []
    run(session, "11-grooves-pass-1", "finished")
    run(session, PATTERN, "stopped")
    assert told(session) == [(PATTERN, False, "stopped")]
    run(session, PATTERN, "finished")
    run(session, PATTERN, "finished")
    run(session, GRID, None)
    assert told(session) == [
        (PATTERN, True, "finished"),
        (PATTERN, True, "finished"),
        (GRID, False, None),
    ]
