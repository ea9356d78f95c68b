"""The tables of a job file, and how older files are brought up to date.

A job file keeps inputs and measurements; whatever can be computed from them is not kept. Each
migration turns a file of one version into the next; a file newer than the program is refused.
"""

from __future__ import annotations

import sqlite3

from drypoint.errors import StoreError
from drypoint.wording import say

APPLICATION_ID = 0x44505459
"""Marks a SQLite file as a job file ("DPTY"), so that other databases are not mistaken for one."""

_FIRST = """
CREATE TABLE source (
    name    TEXT PRIMARY KEY,           -- file name as given
    role    TEXT NOT NULL DEFAULT '',   -- chosen by the user; empty: recognised
    content BLOB NOT NULL,              -- byte for byte
    added   TEXT NOT NULL
);
CREATE TABLE setting (
    section TEXT PRIMARY KEY,
    value   TEXT NOT NULL               -- JSON
);
CREATE TABLE change (                   -- what undo and redo walk along
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    at      TEXT NOT NULL,
    title   TEXT NOT NULL,
    before  TEXT NOT NULL,              -- JSON: section -> value or null
    after   TEXT NOT NULL,
    undone  INTEGER NOT NULL DEFAULT 0
);
CREATE TABLE record (                   -- measurements and facts, never altered, only set aside
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    at      TEXT NOT NULL,
    kind    TEXT NOT NULL,
    aside   INTEGER NOT NULL DEFAULT 0,
    data    TEXT NOT NULL               -- JSON
);
CREATE INDEX record_kind ON record (kind, aside, id);
CREATE TABLE run (
    id           INTEGER PRIMARY KEY AUTOINCREMENT,
    program      TEXT NOT NULL,
    title        TEXT NOT NULL,
    lines        TEXT NOT NULL,         -- JSON: the exact lines
    data         TEXT NOT NULL,         -- JSON: whatever else resuming needs
    started      TEXT NOT NULL,
    ended        TEXT,
    reason       TEXT                   -- why it ended; NULL: it never did (the program was killed)
);
CREATE TABLE run_mark (                 -- apart from the run: its long row is not written again and again
    run          INTEGER PRIMARY KEY REFERENCES run (id),
    sent         INTEGER NOT NULL,
    acknowledged INTEGER NOT NULL,
    executed     INTEGER NOT NULL
);
CREATE TABLE run_event (
    id   INTEGER PRIMARY KEY AUTOINCREMENT,
    run  INTEGER NOT NULL REFERENCES run (id),
    at   TEXT NOT NULL,
    text TEXT NOT NULL
);
"""

_SECOND = """
ALTER TABLE source ADD COLUMN board TEXT NOT NULL DEFAULT '';  -- which of several boards; empty: the only one
"""

MIGRATIONS: tuple[str, ...] = (_FIRST, _SECOND)
"""``MIGRATIONS[n]`` turns schema version n into n + 1."""

VERSION = len(MIGRATIONS)


def bring_up_to_date(connection: sqlite3.Connection, where: str) -> None:
    """Create the tables of a new file, or migrate an older one, in one transaction each.

    Raises
    ------
    StoreError
        If the file is no job file or was written by a newer program.
    """
    (version,) = connection.execute("PRAGMA user_version").fetchone()
    (application,) = connection.execute("PRAGMA application_id").fetchone()
    (tables,) = connection.execute("SELECT count(*) FROM sqlite_master").fetchone()
    if tables and application != APPLICATION_ID:
        raise StoreError("This is a database, but not a job file.", where, "Choose a .drypoint file.")
    if version > VERSION:
        raise StoreError(
            say(
                "This job was saved by a newer Drypoint (format {version}; this one reads up to {version2}).",
                version=version,
                version2=VERSION,
            ),
            where,
            "Open it with the newer program. Nothing was changed.",
        )
    for step in range(version, VERSION):
        script = f"BEGIN IMMEDIATE;{MIGRATIONS[step]}PRAGMA user_version = {step + 1};COMMIT;"
        connection.executescript(f"PRAGMA application_id = {APPLICATION_ID};{script}")
