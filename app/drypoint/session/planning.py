"""Planning in a process of its own: next to the window it would keep it waiting for the interpreter.

The process stays for the next change and keeps what it has computed of the newest job; when nothing is asked
for minutes it ends. What is asked of it is done one after the other; what it tells, finds or fails in comes
back as if it had been done here.
"""

from __future__ import annotations

import itertools
import threading
from collections.abc import Callable
from contextlib import suppress
from typing import Any

from drypoint.progress import Cancelled, Progress
from drypoint.session.companion import LOOK, Companion, GoneError, value_of
from drypoint.session.distant import Ask
from drypoint.session.snapshot import Snapshot


class Planning:
    """Starts the process when it is first needed, or sooner, and again should it have ended."""

    def __init__(self) -> None:
        self._turn = threading.Lock()
        self._numbers = itertools.count(1)
        self._jobs = itertools.count(1)
        self._companion: Companion | None = None

    @property
    def process_id(self) -> int | None:
        """Of the process, if it was started."""
        return None if self._companion is None else self._companion.process.pid

    def start(self) -> None:
        """Have it load by the time that it is needed."""
        if self._companion is None:
            self._companion = Companion("drypoint.session.planning_served", "drypoint-planning")

    def for_job(self) -> Ask:
        """What asks for one job; others may be asked for at the same time."""
        job = next(self._jobs)
        return lambda work, snap, progress: self._ask(job, work, snap, progress or Progress())

    def close(self) -> None:
        """End the process. To be called when nothing is asked any more."""
        if self._companion is not None:
            self._companion.close()
            self._companion = None

    def _ask(self, job: int, work: Callable[..., Any], snap: Snapshot, progress: Progress) -> Any:
        """``work(derived, snap, progress)``, over there.

        Raises
        ------
        DrypointError
            As the work raises it; `MachineError` if its process was ended from outside twice.
        Cancelled
            If the progress was cancelled.
        """
        while not self._turn.acquire(timeout=LOOK):
            if progress.cancelled:
                raise Cancelled
        try:
            self.start()
            return self._answer(("do", next(self._numbers), job, work, snap), progress)
        except GoneError:
            self.close()
            self.start()
            return self._answer(("do", next(self._numbers), job, work, snap), progress)
        finally:
            self._turn.release()

    def _answer(self, question: tuple[Any, ...], progress: Progress) -> Any:
        there, number = self._companion, question[1]
        assert there is not None
        there.send(*question)
        try:
            while True:
                message = there.hear()
                if message is None:
                    if progress.cancelled:
                        raise Cancelled
                elif message[0] != number:
                    continue  # of something given up before
                elif message[1] == "progress":
                    progress.step(*message[2:])
                else:
                    return value_of(*message[1:])
        except Cancelled:
            with suppress(GoneError):
                there.send("cancel", number)
            raise
