"""Work in a process of its own: the same outcome, errors and progress as here, and nothing left behind."""

from __future__ import annotations

import os
import signal
import threading
from collections.abc import Iterator
from dataclasses import replace
from functools import partial
from pathlib import Path

import pytest

from drypoint.errors import DrypointError, MachineError, PlanError
from drypoint.progress import Cancelled, Progress
from drypoint.session import apart as module
from drypoint.session.actions.rehearse_run import rehearse_run
from drypoint.session.apart import Apart, apart
from drypoint.session.rehearsal import rehearse
from drypoint.session.session import Session
from drypoint.session.work import marks_work
from drypoint.wording import Text


@pytest.fixture
def bare(tmp_path: Path) -> Iterator[Session]:
    session = Session.create(tmp_path / "bare.drypoint")
    yield session
    session.close()


@pytest.fixture
def small(small_job: Path) -> Iterator[Session]:
    session = Session.open(small_job)
    yield session
    session.close()


@pytest.fixture(autouse=True)
def nothing_is_left(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Iterator[None]:
    """No folder and no thread stays behind."""
    room = tmp_path / "room"
    room.mkdir()
    monkeypatch.setattr(module.tempfile, "tempdir", str(room))
    yield
    assert not any(room.iterdir())
    assert not any(thread.name == "drypoint-apart" for thread in threading.enumerate())


def is_gone(number: int) -> bool:
    try:
        os.kill(number, 0)
    except ProcessLookupError:
        return True
    return False


def test_errors_come_back_as_they_are(bare: Session, tmp_path: Path) -> None:
    """A job without files: the same refusal as here, and it can still be said in another language."""
    with pytest.raises(DrypointError) as here:
        rehearse(bare, tmp_path / "here")
    with pytest.raises(DrypointError) as there:
        apart(bare, rehearse)
    assert type(there.value) is type(here.value)
    assert there.value.as_dict() == here.value.as_dict()
    assert isinstance(there.value.what, Text)
    assert there.value.what.template == here.value.what.template


def test_a_fault_comes_back_with_its_trace(bare: Session) -> None:
    with pytest.raises(RuntimeError, match="TypeError"):
        apart(bare, int)  # does not take a job


def test_a_killed_process_is_said_plainly(bare: Session) -> None:
    doing = Apart(bare, rehearse)
    os.kill(doing.process_id, signal.SIGKILL)
    try:
        with pytest.raises(MachineError, match="has ended"):
            doing.wait(Progress())
    finally:
        doing.close()
    assert is_gone(doing.process_id)


def test_process_ends_with_its_pipe(small: Session) -> None:
    """As when the window is killed in the middle: nobody ends it, nobody takes its folder away."""
    doing = Apart(small, rehearse)
    doing._companion.frames.send(*doing._first)
    heard = doing._companion.heard.get(timeout=60.0)
    assert heard is not None
    assert heard[0] == "progress"
    doing._companion.frames.close_writing()
    assert doing._companion.process.wait(60) == 0
    assert not Path(doing._folder.name).exists()
    doing.close()


def test_program_run_apart_is_the_same_run(small: Session, tmp_path: Path) -> None:
    program = marks_work(small.derived, small.snapshot)[0].program
    here = rehearse_run(small, program, tmp_path)
    shares: list[float] = []
    there = apart(
        small, partial(rehearse_run, program=program), Progress(lambda done, _: shares.append(done))
    )
    assert there == here
    assert shares == sorted(shares)
    assert shares
    assert 0.0 <= shares[0] <= shares[-1] <= 1.0


def test_cancelling_ends_it_in_the_middle(small: Session) -> None:
    seen: list[str] = []

    def note(_done: float, text: str) -> None:
        seen.append(text)
        progress.cancel()

    progress = Progress(note)
    doing = Apart(small, rehearse)
    try:
        with pytest.raises(Cancelled):
            doing.wait(progress)
    finally:
        doing.close()
    assert len(seen) == 1
    assert is_gone(doing.process_id)


def test_plan_errors_keep_their_kind(small: Session) -> None:
    small.change("Tiny", machine=replace(small.settings.machine, travel=(10.0, 10.0, 10.0)))
    with pytest.raises(PlanError):
        apart(small, rehearse)
