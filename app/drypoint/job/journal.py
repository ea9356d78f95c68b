"""The journal of a run, kept in the job file.

Beginning and end are written with ``synchronous=FULL``: on disk when the call returns. The marks
in between (sent, acknowledged, executed) use ``synchronous=NORMAL``: a killed program loses none
of them; a power cut may lose the last second, and then the run resumes a little further back,
which is safe: overlapping, never skipping.
"""

from __future__ import annotations

import json
import sqlite3
import weakref
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from drypoint.errors import StoreError
from drypoint.job.store import Job
from drypoint.machine.journal import RunJournal, RunStart
from drypoint.wording import say


def _now() -> str:
    return datetime.now().astimezone().isoformat(timespec="milliseconds")


@dataclass(frozen=True, slots=True)
class RunRecord:
    """A run as the job file knows it. ``reason`` None: it never ended, the program was killed."""

    id: int
    program: str
    title: str
    lines: tuple[str, ...]
    data: Any
    started: str
    ended: str | None
    reason: str | None
    sent: int
    acknowledged: int
    executed: int

    @property
    def finished(self) -> bool:
        """Whether every line is proven executed."""
        return self.reason == "finished"

    @property
    def laser(self) -> bool:
        """Whether it was a run of a laser's marks."""
        return isinstance(self.data, dict) and bool(self.data.get("laser"))


class JobJournal(RunJournal):
    """Journal of one run of one program in a job file.

    Parameters
    ----------
    job : Job
    title : str
        For people.
    lines : tuple of str
        The exact lines of the whole program; kept, so that a resume runs these and no others.
    data : JSON
        Whatever else is needed to resume (which pass, which clamping).
    """

    def __init__(self, job: Job, title: str, lines: tuple[str, ...], data: Any = None) -> None:
        self._job = job
        self._title = title
        self._lines = lines
        self._data = data
        self._id = 0
        self._marks = sqlite3.connect(job.path, isolation_level=None, check_same_thread=False, timeout=5.0)
        self._letting_go = weakref.finalize(self, self._marks.close)
        self._marks.execute("PRAGMA synchronous = NORMAL")
        self._values = {"sent": 0, "acknowledged": 0, "executed": 0}

    @property
    def run_id(self) -> int:
        """Number of the run in the job file; 0 before `begin`."""
        return self._id

    def begin(self, run: RunStart) -> None:
        """The run begins; on disk when this returns."""
        with self._job.transaction() as db:
            cursor = db.execute(
                "INSERT INTO run (program, title, lines, data, started) VALUES (?, ?, ?, ?, ?)",
                (run.program, self._title, json.dumps(self._lines), json.dumps(self._data), _now()),
            )
            self._id = int(cursor.lastrowid or 0)
            db.execute(
                "INSERT INTO run_mark (run, sent, acknowledged, executed) VALUES (?, ?, ?, ?)",
                (self._id, run.first, run.first, run.first),
            )
        self._values = {"sent": run.first, "acknowledged": run.first, "executed": run.first}

    def sent(self, first: int, last: int) -> None:
        """Lines up to ``last`` were handed to the link."""
        self._mark("sent", last)

    def acknowledged(self, n: int) -> None:
        """The first ``n`` lines were taken."""
        self._mark("acknowledged", n)

    def executed(self, n: int) -> None:
        """The first ``n`` lines are proven executed."""
        self._mark("executed", n)

    def event(self, text: str) -> None:
        """Something worth knowing later."""
        note(self._job, self._id, text)

    def end(self, reason: str) -> None:
        """The run is over; on disk when this returns."""
        with self._job.transaction() as db:
            db.execute("UPDATE run SET ended = ?, reason = ? WHERE id = ?", (_now(), reason, self._id))
        self._letting_go()

    def resume_point(self) -> int:
        """First line not proven executed."""
        return self._values["executed"]

    def _mark(self, column: str, value: int) -> None:
        if value <= self._values[column]:
            return
        self._values[column] = value
        try:
            self._marks.execute(f"UPDATE run_mark SET {column} = ? WHERE run = ?", (value, self._id))
        except sqlite3.Error as error:
            raise StoreError(
                say("The journal of the run could not be written ({error}).", error=error),
                str(self._job.path),
                "The machine is held. Make room on the disk, then resume.",
            ) from error


def note(job: Job, run: int, text: str) -> None:
    """Something worth knowing about a run, also after it ended."""
    with job.transaction() as db:
        db.execute("INSERT INTO run_event (run, at, text) VALUES (?, ?, ?)", (run, _now(), text))


def runs(job: Job) -> tuple[RunRecord, ...]:
    """All runs of a job, oldest first."""
    rows = job.rows(
        "SELECT id, program, title, lines, data, started, ended, reason, sent, acknowledged, executed "
        "FROM run JOIN run_mark ON run = id ORDER BY id"
    )
    with job.sound():
        return tuple(
            RunRecord(row[0], row[1], row[2], tuple(json.loads(row[3])), json.loads(row[4]), *row[5:])
            for row in rows
        )


@dataclass(frozen=True, slots=True)
class RunOutline:
    """A run without its lines; ``reason`` None: it never ended."""

    id: int
    program: str
    title: str
    reason: str | None

    @property
    def finished(self) -> bool:
        """Whether every line is proven executed."""
        return self.reason == "finished"


def runs_of(job: Job, *programs: str) -> tuple[RunOutline, ...]:
    """Runs of programs of these names, oldest first; little is read, so it is quick."""
    marks = ", ".join("?" for _ in programs)
    rows = job.rows(
        f"SELECT id, program, title, reason FROM run WHERE program IN ({marks}) ORDER BY id",
        programs,
    )
    return tuple(
        RunOutline(int(number), str(program), str(title), None if reason is None else str(reason))
        for number, program, title, reason in rows
    )


def events(job: Job, run: int) -> tuple[tuple[str, str], ...]:
    """(time, text) of everything noted during a run."""
    rows = job.rows("SELECT at, text FROM run_event WHERE run = ? ORDER BY id", (run,))
    return tuple((str(at), str(text)) for at, text in rows)


@dataclass(frozen=True, slots=True)
class Note:
    """Something noted at a run, and which run it was, without its lines.

    ``setup`` is the clamping it was made in, 0 if not known; ``pass_number`` 0 if it was no pass.
    """

    run: int
    program: str
    title: str
    setup: int
    pass_number: int
    at: str
    text: str


def notes_beginning(job: Job, *words: str) -> tuple[Note, ...]:
    """Everything noted that begins with one of ``words``, in the order it was noted."""
    rows = job.rows(
        "SELECT run.id, program, title, json_extract(data, '$.setup'), "
        "json_extract(data, '$.work.pass.number'), run_event.at, text "
        "FROM run_event JOIN run ON run.id = run_event.run WHERE "
        + " OR ".join("text LIKE ?" for _ in words)
        + " ORDER BY run_event.id",
        tuple(f"{word}%" for word in words),
    )
    with job.sound():
        return tuple(
            Note(int(run), str(program), str(title), int(setup or 0), int(number or 0), str(at), str(text))
            for run, program, title, setup, number, at, text in rows
        )


def unfinished(job: Job) -> RunRecord | None:
    """The newest run, if it did not finish: the one to offer a resume of."""
    found = runs(job)
    return found[-1] if found and not found[-1].finished else None
