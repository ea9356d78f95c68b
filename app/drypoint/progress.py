"""Progress of long work, and the way to cancel it: one object handed down to the work."""

from __future__ import annotations

import threading
from collections.abc import Callable

from drypoint.wording import as_text


class Cancelled(Exception):  # noqa: N818 - a request, not an error
    """The work was asked to stop; nothing it did so far is kept."""


class Progress:
    """Told how far the work is; tells it when to stop.

    Parameters
    ----------
    report : callable, optional
        Called with the share done (0..1) and a short text, from the working thread.
    """

    def __init__(self, report: Callable[[float, str], None] | None = None) -> None:
        self._report = report
        self._cancel = threading.Event()

    def cancel(self) -> None:
        """Ask the work to stop at its next step. Safe from any thread."""
        self._cancel.set()

    @property
    def cancelled(self) -> bool:
        """Whether the work was asked to stop."""
        return self._cancel.is_set()

    def look(self) -> None:
        """Give up here if the work was asked to stop; nothing is told.

        Raises
        ------
        Cancelled
        """
        if self._cancel.is_set():
            raise Cancelled

    def step(self, done: float, text: str = "") -> None:
        """Say that ``done`` (0..1) of the work is done.

        Raises
        ------
        Cancelled
            If the work was asked to stop.
        """
        self.look()
        if self._report is not None:
            self._report(done, as_text(text))

    def part(self, start: float, stop: float) -> Progress:
        """A progress whose 0..1 is ``start..stop`` of this one; it shares the cancelling."""
        inner = Progress(lambda done, text: self.step(start + done * (stop - start), text))
        inner._cancel = self._cancel
        return inner
