"""Background work: one thread that computes.

A job is a function of frozen values that takes a `Progress`. The newest request of a name wins:
an older one that still waits is dropped, one that runs is cancelled. Answers carry the number of
their request, so the asker can drop a stale one. This is the one place that catches everything:
what is no `DrypointError` is a bug, and is reported as one.
"""

from __future__ import annotations

import itertools
import logging
import threading
import traceback
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from typing import Any

from drypoint.errors import DrypointError
from drypoint.progress import Cancelled, Progress

_log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class Outcome:
    """What became of a request: exactly one of value, error and bug is set unless cancelled."""

    name: str
    number: int
    value: Any = None
    error: DrypointError | None = None
    bug: str = ""
    cancelled: bool = False


Work = Callable[[Progress], Any]
Deliver = Callable[[Outcome], None]
Report = Callable[[str, float, str], None]


class WorkExecutor:
    """Computes in one thread. The newest request of a name wins.

    Parameters
    ----------
    deliver : callable
        Gets every outcome, in the working thread (the window hands it on to its own).
    report : callable, optional
        Gets name, share done and text while work goes on, in the working thread.
    """

    def __init__(self, deliver: Deliver, report: Report | None = None) -> None:
        self._pool = ThreadPoolExecutor(max_workers=1, thread_name_prefix="drypoint-work")
        self._deliver = deliver
        self._report = report
        self._numbers = itertools.count(1)
        self._newest: dict[str, tuple[int, Progress]] = {}
        self._lock = threading.Lock()

    def ask(self, name: str, work: Work) -> int:
        """Queue work; its number. An older request of the same name is cancelled."""
        progress = Progress(lambda done, text: self._tell(name, done, text))
        with self._lock:
            number = next(self._numbers)
            older = self._newest.get(name)
            self._newest[name] = (number, progress)
        if older is not None:
            older[1].cancel()
        self._pool.submit(self._run, name, number, work, progress)
        return number

    def is_newest(self, name: str, number: int) -> bool:
        """Whether no later request of this name was made."""
        with self._lock:
            return self._newest.get(name, (0, None))[0] == number

    def cancel(self, name: str) -> None:
        """Cancel what was asked under this name."""
        with self._lock:
            found = self._newest.get(name)
        if found is not None:
            found[1].cancel()

    def close(self) -> None:
        """Cancel everything and wait for the thread to end."""
        with self._lock:
            for _, progress in self._newest.values():
                progress.cancel()
        self._pool.shutdown(wait=True, cancel_futures=True)

    def _tell(self, name: str, done: float, text: str) -> None:
        if self._report is not None:
            self._report(name, done, text)

    def _run(self, name: str, number: int, work: Work, progress: Progress) -> None:
        self._deliver(attempt(name, number, work, progress))


def attempt(name: str, number: int, work: Work, progress: Progress) -> Outcome:
    """Run work and turn whatever happens into an `Outcome`."""
    try:
        progress.step(0.0)
        return Outcome(name, number, value=work(progress))
    except Cancelled:
        return Outcome(name, number, cancelled=True)
    except DrypointError as error:
        return Outcome(name, number, error=error)
    except Exception:  # noqa: BLE001 - the one place: anything else is a bug and is reported whole
        _log.exception("bug in %s", name)
        return Outcome(name, number, bug=traceback.format_exc())
