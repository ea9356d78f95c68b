"""Background work: newest wins, bugs are reported, nothing is swallowed."""

from __future__ import annotations

import queue
import threading

import pytest

from drypoint.errors import InputError
from drypoint.progress import Progress
from drypoint.session.jobs import Outcome, WorkExecutor


def test_the_newest_request_wins() -> None:
    answers: queue.Queue[Outcome] = queue.Queue()
    executor = WorkExecutor(answers.put)
    started, go = threading.Event(), threading.Event()

    def slow(progress: Progress) -> str:
        started.set()
        go.wait(10)
        progress.step(0.5)
        return "old"

    first = executor.ask("plan", slow)
    assert started.wait(10)
    second = executor.ask("plan", lambda progress: "new")
    go.set()
    outcomes = {outcome.number: outcome for outcome in (answers.get(timeout=10), answers.get(timeout=10))}
    assert outcomes[first].cancelled
    assert outcomes[second].value == "new"
    assert executor.is_newest("plan", second)
    assert not executor.is_newest("plan", first)
    executor.close()


def test_errors_and_bugs_are_told_apart(caplog: pytest.LogCaptureFixture) -> None:
    answers: queue.Queue[Outcome] = queue.Queue()
    executor = WorkExecutor(answers.put)

    def refuse(progress: Progress) -> None:
        raise InputError("no", "file 1", "other file")

    def break_down(progress: Progress) -> None:
        raise ZeroDivisionError

    executor.ask("a", refuse)
    refused = answers.get(timeout=10)
    executor.ask("b", break_down)
    broken = answers.get(timeout=10)
    executor.close()
    assert refused.error is not None
    assert refused.error.where == "file 1"
    assert "ZeroDivisionError" in broken.bug
    assert broken.error is None


def test_progress_is_reported_and_cancels() -> None:
    answers: queue.Queue[Outcome] = queue.Queue()
    told: list[tuple[str, float, str]] = []
    executor = WorkExecutor(answers.put, lambda *what: told.append(what))
    begun = threading.Event()

    def work(progress: Progress) -> None:
        part = progress.part(0.5, 1.0)
        part.step(0.5, "half of the second half")
        begun.set()
        while True:
            part.step(1.0)

    executor.ask("probe", work)
    assert begun.wait(10)
    executor.cancel("probe")
    assert answers.get(timeout=10).cancelled
    assert ("probe", 0.75, "half of the second half") in told
    executor.close()
