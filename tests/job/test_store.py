"""The job file: nothing that was said to be kept is lost."""

from __future__ import annotations

import json
import multiprocessing
import random
import shutil
import sqlite3
import time
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.errors import StoreError
from drypoint.job.journal import JobJournal, runs
from drypoint.job.schema import VERSION
from drypoint.job.store import Job
from drypoint.machine.journal import RunStart


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


@pytest.mark.parametrize(
    "harm",
    [
        "UPDATE setting SET value = '{\"a\": '",
        "UPDATE setting SET value = CAST(x'ff00fe' AS TEXT)",
        "UPDATE record SET data = 'nothing'",
        "UPDATE change SET before = '[1, 2]'",
        "UPDATE change SET before = x'00'",
        "UPDATE source SET content = 7.5",
        "UPDATE run SET lines = '{'",
        "DROP TABLE record",
    ],
)
def test_damaged_values_are_told_as_that(tmp_path: Path, harm: str) -> None:
    path = tmp_path / "j.drypoint"
    job = Job(path, create=True)
    job.replace_sources({"a.gbr": b"x"})
    job.change("first", {"a": 1})
    job.add_record("touches", [1])
    journal = JobJournal(job, "grooves", ("G0X1",))
    journal.begin(RunStart("grooves", 0, 1, ""))
    journal.end("stopped")
    job.close()
    with sqlite3.connect(path) as db:
        db.execute(harm)
    db.close()
    job = Job(path)
    with pytest.raises(StoreError) as caught:
        job.sources(), job.settings(), job.records("touches"), runs(job), job.undo()
    assert caught.value.where == str(path)
    job.close()


def test_random_damage_is_told_or_does_no_harm(tmp_path: Path) -> None:
    """Bytes changed anywhere: the file opens and reads, or a clear error says that it does not."""
    path = tmp_path / "j.drypoint"
    job = Job(path, create=True)
    job.replace_sources({"a.gbr": b"x" * 300})
    for number in range(20):
        job.change("count", {"n": number, "words": ["ä"] * number})
        job.add_record("touches", [number])
    job.close()
    whole, chance = path.read_bytes(), random.Random(7)
    refused: list[str] = []
    for _ in range(150):
        data = bytearray(whole)
        for _ in range(chance.choice((1, 4, 60))):
            data[chance.randrange(len(data))] = chance.randrange(256)
        path.write_bytes(bytes(data[: chance.choice((None, len(data), chance.randrange(len(data))))]))
        try:
            job = Job(path)
            try:
                job.sources(), job.settings(), job.records("touches"), runs(job), job.undo()
            finally:
                job.close()
        except StoreError as error:
            refused.append(error.where)
    assert len(refused) > 20
    assert set(refused) == {str(path)}


def test_a_folder_is_no_job_file(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="folder"):
        Job(tmp_path)


def test_a_copy_never_takes_the_place_of_an_open_job(tmp_path: Path) -> None:
    """Its log would be played into the new file, and what is written to it later would be lost."""
    one = Job(tmp_path / "one.drypoint", create=True)
    two = Job(tmp_path / "two.drypoint", create=True)
    one.change("name", {"a": 1})
    two.change("name", {"b": 2})
    for target in (one.path, two.path):
        with pytest.raises(StoreError, match="is open"):
            one.copy_to(target)
    assert (one.settings(), two.settings()) == ({"a": 1}, {"b": 2})
    two.close()
    one.copy_to(two.path)
    two = Job(two.path)
    assert two.settings() == {"a": 1}
    two.close()
    one.close()
    assert sorted(path.name for path in tmp_path.iterdir()) == ["one.drypoint", "two.drypoint"]


def test_a_copy_takes_the_place_of_a_job_with_a_log_left_by_a_kill(tmp_path: Path) -> None:
    old = Job(tmp_path / "old.drypoint", create=True)
    for number in range(50):
        old.change("count", {"n": number})
    for suffix in ("", "-wal"):  # as a killed program leaves them
        shutil.copyfile(f"{old.path}{suffix}", f"{tmp_path}/killed.drypoint{suffix}")
    old.close()
    new = Job(tmp_path / "new.drypoint", create=True)
    new.change("name", {"a": 1})
    new.copy_to(tmp_path / "killed.drypoint")
    new.close()
    job = Job(tmp_path / "killed.drypoint")
    assert job.settings() == {"a": 1}
    job.close()
