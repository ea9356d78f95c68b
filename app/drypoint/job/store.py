"""One job, one file: sources byte for byte, settings with undo, measurements, journals of runs.

SQLite in WAL mode. Each action is one transaction with ``synchronous=FULL``: once an action has
returned, neither a killed program nor a power cut loses it. Only this package knows sqlite3.
"""

from __future__ import annotations

import json
import os
import sqlite3
import threading
import weakref
from collections.abc import Iterator, Mapping
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from drypoint.errors import StoreError
from drypoint.job.schema import bring_up_to_date
from drypoint.wording import say

Json = Any
"""What `json` reads and writes."""

SUFFIX = ".drypoint"


@dataclass(frozen=True, slots=True)
class Source:
    """A design file as it was given.

    ``role`` is empty unless the user chose one; ``board`` names the board it belongs to where a job
    has several, and then begins the file's name, as in "relay/copper.gbr".
    """

    name: str
    content: bytes
    role: str = ""
    board: str = ""


@dataclass(frozen=True, slots=True)
class Record:
    """A measurement or fact, with the time it was taken (ISO 8601, local)."""

    id: int
    at: str
    kind: str
    data: Json


def _now() -> str:
    return datetime.now().astimezone().isoformat(timespec="seconds")


class Job:
    """An open job file. Safe to use from several threads; one writer at a time.

    Raises
    ------
    StoreError
        When the file cannot be opened, read or written; says what to do.
    """

    def __init__(self, path: Path, *, create: bool = False) -> None:
        self.path = path
        if path.is_dir():
            raise StoreError("This is a folder, not a job file.", str(path), "Choose a .drypoint file.")
        if not create and not path.is_file():
            raise StoreError("There is no such job file.", str(path), "Check the name, or prepare a new job.")
        self._lock = threading.RLock()
        try:
            self._connection = sqlite3.connect(
                path, isolation_level=None, check_same_thread=False, timeout=5.0
            )
        except sqlite3.Error as error:
            raise _translated(error, path) from error
        try:
            bring_up_to_date(self._connection, str(path))
            self._connection.execute("PRAGMA journal_mode = WAL")
            self._connection.execute("PRAGMA synchronous = FULL")
            self._connection.execute("PRAGMA foreign_keys = ON")
        except (sqlite3.Error, UnicodeDecodeError) as error:
            self._connection.close()
            raise _translated(error, path) from error
        except StoreError:
            self._connection.close()
            raise
        # a job that is forgotten lets go of its file all the same
        self._letting_go = weakref.finalize(self, self._connection.close)

    def close(self) -> None:
        """Let go of the file; WAL is folded into it."""
        with self._lock:
            self._letting_go()

    def copy_to(self, target: Path) -> None:
        """Write the job as it is now to another file; what was there of that name is replaced.

        Raises
        ------
        StoreError
            If it cannot be written, or a job that is there is open; what was there stays as it was then.
        """
        if target.exists():
            require_replaceable(target)
        fresh = target.with_name(f"{target.name}.{os.getpid()}.new")
        try:
            target.parent.mkdir(parents=True, exist_ok=True)
            with self._lock, closing(sqlite3.connect(fresh)) as copy:
                self._connection.backup(copy)
                copy.execute("PRAGMA journal_mode = DELETE")
            fresh.replace(target)
        except sqlite3.Error as error:
            raise _translated(error, target) from error
        except OSError as error:
            raise StoreError(
                say("The job file could not be written ({strerror}).", strerror=error.strerror or error),
                str(target),
                "Check the folder, its rights and the room on the disk.",
            ) from error
        finally:
            with suppress(OSError):
                fresh.unlink(missing_ok=True)

    @contextmanager
    def transaction(self) -> Iterator[sqlite3.Connection]:
        """One action: all of it is kept, or none."""
        with self._lock:
            try:
                self._connection.execute("BEGIN IMMEDIATE")
                try:
                    yield self._connection
                except BaseException:
                    self._connection.execute("ROLLBACK")
                    raise
                self._connection.execute("COMMIT")
            except sqlite3.Error as error:
                raise _translated(error, self.path) from error

    def rows(self, query: str, values: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
        """All rows of a query."""
        with self._lock:
            try:
                return self._connection.execute(query, values).fetchall()
            except sqlite3.Error as error:
                raise _translated(error, self.path) from error

    @contextmanager
    def sound(self) -> Iterator[None]:
        """For taking stored values apart: what only a damaged file can hold is said to be that."""
        try:
            yield
        except (TypeError, ValueError) as error:
            raise damaged(self.path) from error

    # sources

    def sources(self) -> tuple[Source, ...]:
        """All design files, in the order they were added."""
        rows = self.rows("SELECT name, content, role, board FROM source ORDER BY rowid")
        with self.sound():
            return tuple(Source(name, bytes(content), role, board) for name, content, role, board in rows)

    def replace_sources(
        self,
        sources: Mapping[str, bytes],
        roles: Mapping[str, str] | None = None,
        boards: Mapping[str, str] | None = None,
    ) -> None:
        """Put these files in place of all earlier ones; roles and boards by file name."""
        chosen, owner = roles or {}, boards or {}
        with self.transaction() as db:
            db.execute("DELETE FROM source")
            db.executemany(
                "INSERT INTO source (name, role, content, added, board) VALUES (?, ?, ?, ?, ?)",
                [
                    (name, chosen.get(name, ""), content, _now(), owner.get(name, ""))
                    for name, content in sources.items()
                ],
            )

    # settings

    def settings(self) -> dict[str, Json]:
        """Every stored section; sections never changed are absent."""
        rows = self.rows("SELECT section, value FROM setting")
        with self.sound():
            return {section: json.loads(value) for section, value in rows}

    def change(self, title: str, sections: Mapping[str, Json]) -> None:
        """Store settings as one action that `undo` takes back; forgets what was undone before."""
        with self.transaction() as db:
            stored = dict(db.execute("SELECT section, value FROM setting").fetchall())
            before = {section: stored.get(section) for section in sections}
            after = {section: json.dumps(value) for section, value in sections.items()}
            db.execute("DELETE FROM change WHERE undone = 1")
            db.execute(
                "INSERT INTO change (at, title, before, after) VALUES (?, ?, ?, ?)",
                (_now(), title, json.dumps(before), json.dumps(after)),
            )
            _write(db, after)

    def undo(self) -> str | None:
        """Take the last change back; its title, or None when there is none."""
        return self._walk("undone = 0 ORDER BY id DESC", "before", 1)

    def redo(self) -> str | None:
        """Make the last undone change again; its title, or None when there is none."""
        return self._walk("undone = 1 ORDER BY id", "after", 0)

    def undo_title(self) -> str | None:
        """What `undo` would take back."""
        rows = self.rows("SELECT title FROM change WHERE undone = 0 ORDER BY id DESC LIMIT 1")
        return str(rows[0][0]) if rows else None

    def redo_title(self) -> str | None:
        """What `redo` would make again."""
        rows = self.rows("SELECT title FROM change WHERE undone = 1 ORDER BY id LIMIT 1")
        return str(rows[0][0]) if rows else None

    def _walk(self, which: str, column: str, undone: int) -> str | None:
        with self.transaction() as db:
            row = db.execute(f"SELECT id, title, {column} FROM change WHERE {which} LIMIT 1").fetchone()
            if row is None:
                return None
            number, title, values = row
            with self.sound():
                before = dict(json.loads(values))
            _write(db, before)
            db.execute("UPDATE change SET undone = ? WHERE id = ?", (undone, number))
            return str(title)

    # measurements

    def add_record(self, kind: str, data: Json) -> int:
        """Keep a measurement or fact; its number."""
        with self.transaction() as db:
            cursor = db.execute(
                "INSERT INTO record (at, kind, data) VALUES (?, ?, ?)", (_now(), kind, json.dumps(data))
            )
            return int(cursor.lastrowid or 0)

    def records(self, kind: str) -> tuple[Record, ...]:
        """All records of a kind that are not set aside, oldest first."""
        rows = self.rows(
            "SELECT id, at, kind, data FROM record WHERE kind = ? AND aside = 0 ORDER BY id", (kind,)
        )
        with self.sound():
            return tuple(Record(number, at, of, json.loads(data)) for number, at, of, data in rows)

    def set_aside(self, kind: str, numbers: tuple[int, ...] | None = None) -> None:
        """Set records aside (all of a kind, or some): kept in the file, no longer used."""
        with self.transaction() as db:
            if numbers is None:
                db.execute("UPDATE record SET aside = 1 WHERE kind = ?", (kind,))
            else:
                db.executemany(
                    "UPDATE record SET aside = 1 WHERE kind = ? AND id = ?", [(kind, n) for n in numbers]
                )


def _write(db: sqlite3.Connection, sections: Mapping[str, str | None]) -> None:
    for section, value in sections.items():
        if value is None:
            db.execute("DELETE FROM setting WHERE section = ?", (section,))
        else:
            db.execute(
                "INSERT INTO setting (section, value) VALUES (?, ?) "
                "ON CONFLICT (section) DO UPDATE SET value = excluded.value",
                (section, value),
            )


def job_file(path: Path) -> Path:
    """The path with the suffix that job files have.

    Raises
    ------
    StoreError
        If it names no file.
    """
    if path.suffix == SUFFIX:
        return path
    if not path.name:
        raise StoreError("This is no name for a job file.", str(path), "Give it a name.")
    return path.with_name(path.name + SUFFIX)


def require_replaceable(path: Path) -> None:
    """Fold its log into a job file that another is to be put in place of.

    Raises
    ------
    StoreError
        If it is no job file; or if it is open: its log would be taken for the new file's.
    """
    Job(path).close()
    if Path(f"{path}-wal").exists():
        raise _open_elsewhere(path)


def damaged(path: Path) -> StoreError:
    """The file holds what no program of ours writes."""
    return StoreError(
        "The job file is damaged.", str(path), "Keep it as it is and open a copy kept elsewhere."
    )


def _open_elsewhere(path: Path) -> StoreError:
    return StoreError(
        "The job is open in a window or in another program.", str(path), "Close it there and try again."
    )


def _translated(error: sqlite3.Error | UnicodeDecodeError, path: Path) -> StoreError:
    text = str(error)
    if isinstance(error, UnicodeDecodeError) or "decode" in text:
        return damaged(path)
    if "disk is full" in text or "database or disk is full" in text:
        return StoreError("The disk is full.", str(path), "Make room and try again; the job is as it was.")
    if "readonly" in text or "unable to open" in text:
        return StoreError(
            "The job file cannot be opened for writing.", str(path), "Check the folder and its rights."
        )
    if "not a database" in text:
        return StoreError("This is not a job file.", str(path), "Choose a .drypoint file.")
    if "malformed" in text:
        return damaged(path)
    if "locked" in text:
        return _open_elsewhere(path)
    return StoreError(
        say("The job file could not be used ({text}).", text=text),
        str(path),
        "Check the disk and the room on it; the job is as it was.",
    )
