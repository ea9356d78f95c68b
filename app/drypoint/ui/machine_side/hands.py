"""The person at the machine: asked on the machine's thread, answering in the window."""

from __future__ import annotations

import itertools
import queue
import time
from collections.abc import Callable
from dataclasses import dataclass

from drypoint.machine.operator import Answer, AnswerKind, Operator, Request, RequestKind

JOGGED = frozenset({RequestKind.JOG_TO, RequestKind.PAPER})
"""Requests during which the bit is moved by the person."""

MOVABLE = JOGGED | {RequestKind.SHIFT}
"""Requests during which the bit may be moved by the person."""

_WAIT = 0.05
"""Between two looks for an answer, s."""


@dataclass(frozen=True, slots=True)
class Asked:
    """A request as it is shown: answers must carry its number."""

    number: int
    request: Request
    helper: bool
    """Whether simulated hands could do it."""


class _Help:
    """Asks the simulated hands to do it."""


class WindowOperator(Operator):
    """Puts requests to the window and waits.

    Parameters
    ----------
    tell : callable
        Gets an `Asked`, or None when it is over; on the machine's thread.

    Attributes
    ----------
    helper : Operator or None
        Simulated hands, on the bench. They also carry out what the person says is done, for on the
        bench nobody else can; only where the bit is brought by eye is a person's own work.
    automatic : bool
        Whether the simulated hands do everything; it is still shown for ``shown`` seconds.
    still : callable
        Whether a held jog of that number is still held: else it is not made any more.
    tick : callable
        Lets the machine's messages in; called while waiting.
    """

    def __init__(self, tell: Callable[[Asked | None], None]) -> None:
        self._tell = tell
        self._numbers = itertools.count(1)
        self._answers: queue.Queue[tuple[int, Answer | _Help, int]] = queue.Queue()
        self._now: Asked | None = None
        self._helped: Request | None = None
        self._closed = False
        self.helper: Operator | None = None
        self.automatic = False
        self.shown = 0.5
        self.tick: Callable[[], object] = lambda: None
        self.still: Callable[[int], bool] = lambda held: True

    # the window's side

    def answer(self, number: int, answer: Answer, held: int = 0) -> None:
        """Answer the request of that number; an answer to an older one is dropped."""
        self._answers.put((number, answer, held))

    def have_it_done(self, number: int) -> None:
        """Let the simulated hands do what the request of that number asks."""
        self._answers.put((number, _Help(), 0))

    def close(self) -> None:
        """Decline whatever is asked from now on."""
        self._closed = True

    # the machine's side

    def ask(self, request: Request) -> Answer:
        if self._closed:
            return Answer(AnswerKind.DECLINED)
        again = self._now is not None and self._now.request == request
        if not again:
            self._now = Asked(next(self._numbers), request, self.helper is not None)
            self._helped = None
            self._tell(self._now)
        over = True
        try:
            answer = self._wait(request)
            over = answer.kind is not AnswerKind.JOG
            return answer
        finally:
            if over:
                self._now = None
                self._tell(None)

    def _wait(self, request: Request) -> Answer:
        since = time.monotonic()
        while not self._closed:
            request.idle()
            self.tick()
            helper = self.helper
            if helper is not None and self._helped == request:
                return helper.ask(request)
            if helper is not None and self.automatic and time.monotonic() - since >= self.shown:
                self._helped = request
                continue
            found = self._next()
            if isinstance(found, _Help):
                self._helped = request
            elif found is not None:
                return self._carry_out(request, found)
        return Answer(AnswerKind.DECLINED)

    def _next(self) -> Answer | _Help | None:
        try:
            number, found, held = self._answers.get(timeout=_WAIT)
        except queue.Empty:
            return None
        wanted = self._now is not None and number == self._now.number and self.still(held)
        return found if wanted else None

    def _carry_out(self, request: Request, answer: Answer) -> Answer:
        """On the bench, what a person says is done must be done by the simulated hands."""
        if self.helper is None or answer.kind is not AnswerKind.DONE or request.kind in JOGGED:
            return answer
        return self.helper.ask(request)
