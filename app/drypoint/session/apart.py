"""Long work on a copy of the job, in a process of its own: next to the window it would make it stutter.

The process ends with its pipe, so it never outlives the window; it is ended at once when the work is
cancelled. What it tells, finds or fails in comes back as if the work had been done here.
"""

from __future__ import annotations

import queue
import tempfile
import threading
from collections.abc import Callable
from pathlib import Path
from typing import Any

import drypoint.errors as kinds
from drypoint.bench.child import start_child
from drypoint.bench.frames import Frames
from drypoint.errors import MachineError
from drypoint.progress import Cancelled, Progress
from drypoint.session.session import Session

LOOK = 0.05
"""How often is looked whether the work is cancelled, s."""
COPY = "copy.drypoint"


class Apart:
    """One piece of work and its process.

    Parameters
    ----------
    session : Session
        A copy of its job is worked on.
    work : callable
        ``work(session, folder=…, progress=…)`` with a folder of its own; must be picklable, and so must
        what it returns.
    """

    def __init__(self, session: Session, work: Callable[..., Any]) -> None:
        self._folder = tempfile.TemporaryDirectory(prefix="drypoint-", ignore_cleanup_errors=True)
        session.job.copy_to(Path(self._folder.name) / COPY)
        self._heard: queue.SimpleQueue[tuple[Any, ...] | None] = queue.SimpleQueue()
        self._process = start_child("drypoint.session.errand")
        assert self._process.stdin is not None
        assert self._process.stdout is not None
        self._frames = Frames(self._process.stdout, self._process.stdin)  # type: ignore[arg-type]
        self._listener = threading.Thread(target=self._listen, name="drypoint-apart", daemon=True)
        self._listener.start()
        self._first = (self._folder.name, work)

    @property
    def process_id(self) -> int:
        """Of the process that works."""
        return self._process.pid

    def wait(self, progress: Progress) -> Any:
        """What comes of it.

        Raises
        ------
        DrypointError
            As the work raised it; `MachineError` if its process was ended from outside.
        Cancelled
            If the progress was cancelled.
        """
        try:
            self._frames.send(*self._first)
        except OSError as error:
            raise _gone() from error
        while True:
            try:
                message = self._heard.get(timeout=LOOK)
            except queue.Empty:
                if progress.cancelled:
                    raise Cancelled from None
                continue
            if message is None:
                raise _gone()
            kind, *rest = message
            if kind == "progress":
                progress.step(*rest)
            elif kind == "value":
                return rest[0]
            elif kind == "error":
                raise getattr(kinds, rest[0])(*rest[1:])
            else:
                raise RuntimeError(f"a fault in work done apart:\n{rest[0]}")

    def close(self) -> None:
        """End the process, whatever it does: it keeps nothing."""
        self._process.kill()
        self._process.wait()
        self._listener.join()
        self._frames.close_writing()
        if self._process.stdout is not None:
            self._process.stdout.close()
        self._folder.cleanup()

    def _listen(self) -> None:
        while (message := self._frames.receive()) is not None:
            self._heard.put(message)
        self._heard.put(None)


def apart(session: Session, work: Callable[..., Any], progress: Progress | None = None) -> Any:
    """Do work on a copy of the job in a process of its own, and wait for what comes of it.

    Parameters and errors are those of `Apart`.
    """
    doing = Apart(session, work)
    try:
        return doing.wait(progress or Progress())
    finally:
        doing.close()


def _gone() -> MachineError:
    return MachineError(
        "The process that worked on it has ended before it was done.",
        "",
        "Start it again; free some memory first if this computer is short of it.",
    )
