"""What a process that works for the window says of its work; heard by `session/companion.py`."""

from __future__ import annotations

import time
from collections.abc import Callable
from typing import Any

import drypoint.errors as kinds
from drypoint.session.jobs import Outcome

SELDOM = 0.05
"""Progress is told not more often than this, s."""


class Teller:
    """Tells progress now and then.

    Parameters
    ----------
    send : callable
        ``send(done, text)`` tells it.
    """

    def __init__(self, send: Callable[[float, str], None]) -> None:
        self._send = send
        self._next = 0.0

    def tell(self, done: float, text: str) -> None:
        """As `Progress` reports."""
        now = time.monotonic()
        if now >= self._next:
            self._next = now + SELDOM
            self._send(done, text)


def told(outcome: Outcome) -> tuple[Any, ...]:
    """An outcome as it is sent."""
    error = outcome.error
    if outcome.bug:
        return "bug", outcome.bug
    if error is None:
        return "value", outcome.value
    kind = next(each for each in type(error).__mro__ if each.__module__ == kinds.__name__)
    return "error", kind.__name__, error.what, error.where, error.hint
