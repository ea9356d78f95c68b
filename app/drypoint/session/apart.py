"""Long work on a copy of the job, in a process of its own: next to the window it would make it stutter.

The process ends with its pipe, so it never outlives the window; it is ended at once when the work is
cancelled. What it tells, finds or fails in comes back as if the work had been done here.
"""

from __future__ import annotations

import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

from drypoint.progress import Cancelled, Progress
from drypoint.session.companion import Companion, value_of
from drypoint.session.session import Session

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
        self._companion = Companion("drypoint.session.errand", "drypoint-apart")
        self._first = (self._folder.name, work)

    @property
    def process_id(self) -> int:
        """Of the process that works."""
        return self._companion.process.pid

    def wait(self, progress: Progress) -> Any:
        """What comes of it.

        Raises
        ------
        DrypointError
            As the work raised it; `MachineError` if its process was ended from outside.
        Cancelled
            If the progress was cancelled.
        """
        self._companion.send(*self._first)
        while True:
            message = self._companion.hear()
            if message is None:
                if progress.cancelled:
                    raise Cancelled
            elif message[0] == "progress":
                progress.step(*message[1:])
            else:
                return value_of(*message)

    def close(self) -> None:
        """End the process, whatever it does: it keeps nothing."""
        self._companion.close()
        self._folder.cleanup()


def apart(session: Session, work: Callable[..., Any], progress: Progress | None = None) -> Any:
    """Do work on a copy of the job in a process of its own, and wait for what comes of it.

    Parameters and errors are those of `Apart`.
    """
    doing = Apart(session, work)
    try:
        return doing.wait(progress or Progress())
    finally:
        doing.close()
