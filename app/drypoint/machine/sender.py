"""Which bytes may be sent now: character counting, and line by line as the fallback.

The controller answers each line exactly once and frees that line's bytes as it does. As long as the
unanswered lines fit its receive buffer nothing can be lost, and the buffer never runs dry
(documentation of the protocol, streaming). Pure bookkeeping: no link, no time.
"""

from __future__ import annotations

import re
from collections import deque
from collections.abc import Sequence
from enum import StrEnum

from drypoint.errors import MachineError
from drypoint.machine.protocol import LONGEST_LINE
from drypoint.wording import say

MARGIN = 1
"""Bytes of the receive buffer left unused: some builds count one less than they state."""

DEFAULT_BUFFER = 128
"""Bytes of receive buffer where the controller does not say."""

_EEPROM = re.compile(r"G0*10(?!\d)|G0*28\.1|G0*30\.1|\$\d+=|\$I=|\$N\d+=|\$RST=")
_BLANKS = re.compile(r"\s+|\([^)]*\)")
_REALTIME = re.compile(r"[!?~\x00-\x1f\x7f-\U0010ffff]")


class Flow(StrEnum):
    """How lines are paced."""

    COUNTED = "character counting"
    SINGLE = "line by line"


def stores(line: str) -> bool:
    """Whether a line makes the controller write its store, during which it may lose bytes."""
    return _EEPROM.search(_BLANKS.sub("", line).upper()) is not None


def line_seconds(lines: Sequence[str], baud: int = 115200) -> float:
    """Seconds the bytes of ``lines`` need on the wire (10 bits a byte): a floor of any run's time."""
    return sum(len(line) + 1 for line in lines) * 10.0 / baud


class Sender:
    """Lines waiting, lines in flight, and the count between them.

    Parameters
    ----------
    lines : sequence of str
        Without line ends.
    buffer : int
        Receive buffer the controller states, bytes; one byte of it is left unused.
    alone : sequence of bool, optional
        Lines to be sent with nothing else in flight.

    Raises
    ------
    MachineError
        If a line is too long or holds a character that the controller would take for a command.
    """

    def __init__(
        self,
        lines: Sequence[str],
        buffer: int = DEFAULT_BUFFER,
        flow: Flow = Flow.COUNTED,
        *,
        alone: Sequence[bool] | None = None,
    ) -> None:
        self._limit = buffer - MARGIN
        self._flow = flow
        self._lines = [_encode(line, number, self._limit) for number, line in enumerate(lines)]
        self._alone = [stores(line) for line in lines]
        if alone is not None:
            self._alone = [a or b for a, b in zip(self._alone, alone, strict=True)]
        self._flight: deque[int] = deque()
        self._bytes = 0
        self._next = 0
        self._answered = 0
        self._complete = 0
        self._gathering = False

    @property
    def limit(self) -> int:
        """Most bytes in flight."""
        return self._limit

    @property
    def in_flight(self) -> int:
        """Bytes sent and not answered."""
        return self._bytes

    @property
    def waiting(self) -> tuple[int, ...]:
        """Indices of the lines sent and not answered."""
        return tuple(self._flight)

    @property
    def sent(self) -> int:
        """Lines handed out so far."""
        return self._next

    @property
    def answered(self) -> int:
        """Lines answered so far."""
        return self._answered

    @property
    def complete(self) -> int:
        """Lines up to the last moment at which every line sent had its answer: none of them is lost."""
        return self._complete

    def gather(self) -> None:
        """Send nothing more until every line in flight is answered: the only way to know of a line
        that vanished. The controller's planner stays full meanwhile, so motion goes on."""
        self._gathering = bool(self._flight)

    @property
    def done(self) -> bool:
        """Whether every line was sent and answered."""
        return self._answered == len(self._lines)

    def take(self) -> bytes:
        """All bytes that may be sent now; empty if it is time to wait."""
        out = bytearray()
        while self._next < len(self._lines) and self._fits():
            line = self._lines[self._next]
            self._flight.append(self._next)
            self._bytes += len(line)
            self._next += 1
            out += line
        return bytes(out)

    def _fits(self) -> bool:
        if not self._flight:
            return True
        if (
            self._gathering
            or self._flow is Flow.SINGLE
            or self._alone[self._next]
            or self._alone[self._flight[-1]]
        ):
            return False
        return self._bytes + len(self._lines[self._next]) <= self._limit

    def answer(self) -> int | None:
        """One reply has come: the index of the line it answers, None if nothing was in flight."""
        if not self._flight:
            return None
        index = self._flight.popleft()
        self._bytes -= len(self._lines[index])
        self._answered += 1
        if not self._flight:
            self._complete = self._answered
            self._gathering = False
        return index


def _encode(line: str, number: int, limit: int) -> bytes:
    where = say("line {number}", number=number + 1)
    if _REALTIME.search(line):
        raise MachineError(
            say(
                "The line “{line}” holds a character that the controller would act on at once.",
                line=line[:40],
            ),
            where,
        )
    if len(line) + 1 > min(limit, LONGEST_LINE):
        raise MachineError(
            say(
                "The line is longer than the controller takes ({count} of {min}).",
                count=len(line) + 1,
                min=min(limit, LONGEST_LINE),
            ),
            where,
            "Export again with shorter lines.",
        )
    return line.encode("ascii") + b"\n"
