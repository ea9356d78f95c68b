"""Test patterns and burn grids that were begun, as lines among the work of the evening."""

from __future__ import annotations

from collections.abc import Sequence

from drypoint.job.journal import RunOutline, runs_of
from drypoint.session.actions.pattern_run import NAME as PATTERN_NAME
from drypoint.session.legend import GRID_NAME
from drypoint.session.session import Session

TRIALS = (PATTERN_NAME, GRID_NAME)
"""Names of their programs."""


def trial_runs(session: Session) -> tuple[RunOutline, ...]:
    """Every trial cut that was begun, oldest first; of one that was taken up again only the newest run."""
    return without_taken_up(runs_of(session.job, *TRIALS))


def without_taken_up(found: Sequence[RunOutline]) -> tuple[RunOutline, ...]:
    """Runs but for those that broke off and were followed by another of the same program."""
    return tuple(
        one
        for at, one in enumerate(found)
        if one.finished or not any(later.program == one.program for later in found[at + 1 :])
    )
