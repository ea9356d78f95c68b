"""The journal of a run: what it says after a kill is what was proven, no more."""

from __future__ import annotations

import multiprocessing
from pathlib import Path

import pytest

from drypoint.job.journal import JobJournal, events, runs, unfinished
from drypoint.job.store import Job
from drypoint.machine.journal import RunStart

LINES = tuple(f"G1 X{number}" for number in range(10_000))


def _start(first: int = 0) -> RunStart:
    return RunStart("03-grooves", first, len(LINES), "abc")


def test_a_run_is_kept_with_its_exact_lines(tmp_path: Path) -> None:
    job = Job(tmp_path / "j.drypoint", create=True)
    journal = JobJournal(job, "Grooves", LINES, {"pass": 1})
    journal.begin(_start())
    journal.sent(0, 50)
    journal.acknowledged(40)
    journal.executed(25)
    journal.executed(20)  # never goes back
    journal.event("held by the operator")
    assert journal.resume_point() == 25
    kept = unfinished(job)
    assert kept is not None
    assert (kept.sent, kept.acknowledged, kept.executed, kept.reason) == (50, 40, 25, None)
    assert kept.lines == LINES
    assert kept.data == {"pass": 1}
    journal.end("finished")
    assert unfinished(job) is None
    assert [text for _, text in events(job, journal.run_id)] == ["held by the operator"]
    job.close()


def _run_for_ever(path: str, proven: multiprocessing.sharedctypes.Synchronized[int]) -> None:
    journal = JobJournal(Job(Path(path), create=True), "Grooves", LINES)
    journal.begin(_start(7))
    for number in range(8, len(LINES)):
        journal.executed(number)
        proven.value = number


@pytest.mark.parametrize("least", [8, 200])
def test_a_kill_loses_no_mark(tmp_path: Path, least: int) -> None:
    path = tmp_path / "j.drypoint"
    context = multiprocessing.get_context("spawn")
    proven = context.Value("i", 0)
    child = context.Process(target=_run_for_ever, args=(str(path), proven))
    child.start()
    while proven.value < least and child.is_alive():
        child.join(0.005)
    child.kill()
    child.join()
    job = Job(path)
    (kept,) = runs(job)
    assert kept.ended is None
    assert kept.executed in (proven.value, proven.value + 1)
    job.close()
