"""A rehearsal that is cancelled gives up where it is, and the bench's machine stands still."""

from __future__ import annotations

from pathlib import Path

import pytest

import drypoint.session.rehearsal as rehearsal_module
from drypoint.bench.bench import Bench
from drypoint.bench.states import State
from drypoint.job.journal import runs
from drypoint.progress import Cancelled, Progress
from drypoint.session.rehearsal import rehearse
from drypoint.session.session import Session


class Asked:
    """Cancels when the words are said for the n-th time; counts what is said after that."""

    def __init__(self, words: str, times: int) -> None:
        self.progress = Progress(self.note)
        self._words, self._left = words, times
        self.after: list[str] = []

    def note(self, _done: float, text: str) -> None:
        if self.progress.cancelled:
            self.after.append(text)
        elif text.startswith(self._words):
            self._left -= 1
            if self._left == 0:
                self.progress.cancel()


@pytest.fixture
def benches(monkeypatch: pytest.MonkeyPatch) -> list[Bench]:
    """The benches that rehearsals were run on."""
    made: list[Bench] = []
    make = rehearsal_module.make_bench

    def kept(*given, **named):
        made.append(make(*given, **named))
        return made[-1]

    monkeypatch.setattr(rehearsal_module, "make_bench", kept)
    return made


@pytest.mark.parametrize(("words", "times"), [("Grooves, pass 1", 25), ("touch ", 7), ("touching ", 2)])
def test_nothing_more_is_said_or_done(
    small_job: Path, tmp_path: Path, benches, words: str, times: int
) -> None:
    session = Session.open(small_job)
    asked = Asked(words, times)
    try:
        with pytest.raises(Cancelled):
            rehearse(session, tmp_path, touches=10, progress=asked.progress)
    finally:
        session.close()
    assert asked.progress.cancelled
    assert asked.after == []
    (bench,) = benches
    assert bench.controller.state not in (State.RUN, State.JOG)


def test_in_the_middle_of_cutting_the_run_is_broken_off_there(
    small_job: Path, tmp_path: Path, benches
) -> None:
    session = Session.open(small_job)
    asked = Asked("Grooves, pass 1", 25)
    try:
        with pytest.raises(Cancelled):
            rehearse(session, tmp_path, touches=10, progress=asked.progress)
    finally:
        session.close()
    shadow = Session.open(tmp_path / "rehearsal.drypoint")
    try:
        last = runs(shadow.job)[-1]
        assert last.title.startswith("Grooves, pass 1")
        assert last.reason == "broken off"
        assert 0 < last.executed < len(last.lines)
        assert not shadow.snapshot.records["pass"]
    finally:
        shadow.close()
    (bench,) = benches
    assert bench.controller.spindle_speed() == 0.0
