"""The job file: nothing that was said to be kept is lost."""

from __future__ import annotations

import json
import multiprocessing
import sqlite3
import time
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.errors import StoreError
from drypoint.job.schema import VERSION
from drypoint.job.store import Job


def test_sources_come_back_byte_for_byte(tmp_path: Path) -> None:
    files = {"a.gbr": bytes(range(256)), "b.drl": b"", "ü.txt": b"\r\n\x00"}
    job = Job(tmp_path / "one.drypoint", create=True)
    job.replace_sources(files, {"b.drl": "drill"})
    job.close()
    again = Job(tmp_path / "one.drypoint")
    assert {source.name: source.content for source in again.sources()} == files
    assert {source.name: source.role for source in again.sources()}["b.drl"] == "drill"
    again.close()


@given(st.lists(st.tuples(st.sampled_from("abc"), st.integers()), min_size=1, max_size=8), st.data())
def test_undo_and_redo_walk_back_and_forth(changes: list[tuple[str, int]], data: st.DataObject) -> None:
    import tempfile

    with tempfile.TemporaryDirectory() as folder:
        job = Job(Path(folder) / "j.drypoint", create=True)
        states = [job.settings()]
        for section, value in changes:
            job.change(f"set {section}", {section: value})
            states.append(job.settings())
        place = len(changes)
        for back in data.draw(st.lists(st.booleans(), max_size=20)):
            title = job.undo() if back else job.redo()
            expected = max(0, place - 1) if back else min(len(changes), place + 1)
            assert (title is None) == (expected == place)
            place = expected
            assert job.settings() == states[place]
        job.close()


def test_a_change_after_undo_forgets_what_was_undone(tmp_path: Path) -> None:
    job = Job(tmp_path / "j.drypoint", create=True)
    job.change("first", {"a": 1})
    job.change("second", {"a": 2})
    job.undo()
    job.change("third", {"b": 3})
    assert job.redo() is None
    assert job.settings() == {"a": 1, "b": 3}
    assert job.undo_title() == "third"
    job.close()


def test_records_set_aside_are_kept_but_not_used(tmp_path: Path) -> None:
    job = Job(tmp_path / "j.drypoint", create=True)
    first = job.add_record("touches", [1])
    job.add_record("touches", [2])
    job.set_aside("touches", (first,))
    assert [record.data for record in job.records("touches")] == [[2]]
    assert len(job.rows("SELECT id FROM record")) == 2
    job.close()


def test_a_newer_file_is_refused_and_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "new.drypoint"
    Job(path, create=True).close()
    with sqlite3.connect(path) as db:
        db.execute(f"PRAGMA user_version = {VERSION + 1}")
    db.close()
    before = path.read_bytes()
    with pytest.raises(StoreError, match="newer Drypoint"):
        Job(path)
    assert path.read_bytes() == before


@pytest.mark.parametrize("content", [b"", b"hello, no database here" * 100])
def test_other_files_are_refused(tmp_path: Path, content: bytes) -> None:
    path = tmp_path / "x.drypoint"
    path.write_bytes(content)
    if not content:
        Job(path).close()  # an empty file is a new job
        return
    with pytest.raises(StoreError, match="not a job file"):
        Job(path)
    assert path.read_bytes() == content


def test_another_database_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "x.drypoint"
    with sqlite3.connect(path) as db:
        db.execute("CREATE TABLE t (a)")
    db.close()
    before = path.read_bytes()
    with pytest.raises(StoreError, match="not a job file"):
        Job(path)
    assert path.read_bytes() == before


def test_a_missing_file_says_so(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="no such job file"):
        Job(tmp_path / "absent.drypoint")


def _write_for_ever(path: str, counted: multiprocessing.sharedctypes.Synchronized[int]) -> None:
    job = Job(Path(path), create=True)
    number = 0
    while True:
        number += 1
        job.change("count", {"n": number, "twice": 2 * number})
        counted.value = number


def test_a_killed_writer_loses_no_finished_action(tmp_path: Path) -> None:
    """SIGKILL at a moment nobody chose: what was returned from is there, nothing is half there."""
    path = tmp_path / "killed.drypoint"
    context = multiprocessing.get_context("spawn")
    counted = context.Value("i", 0)
    child = context.Process(target=_write_for_ever, args=(str(path), counted))
    child.start()
    while counted.value < 20 and child.is_alive():
        child.join(0.01)
    child.kill()
    child.join()
    done = counted.value
    started = time.monotonic()
    job = Job(path)
    settings = job.settings()
    assert settings["n"] in (done, done + 1)
    assert settings["twice"] == 2 * settings["n"]
    assert json.loads(json.dumps(settings)) == settings
    assert time.monotonic() - started < 30
    job.close()
