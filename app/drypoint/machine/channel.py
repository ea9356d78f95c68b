"""The conversation with a controller: bytes out, messages in, and where it says the machine is."""

from __future__ import annotations

import logging

from drypoint.errors import MachineError
from drypoint.machine.faults import RESUME_HINT, LinkLost
from drypoint.machine.link import Link
from drypoint.machine.protocol import (
    Alarm,
    Banner,
    LineSplitter,
    Message,
    Phase,
    Realtime,
    Status,
    Vec,
    parse_line,
)

_log = logging.getLogger(__name__)

QUERY_PERIOD = 0.125
"""Time between two questions for the status, s: 8 a second, within the documented 5 to 10."""

SILENCE = 3.0
"""A controller that says nothing for so long after a question is taken as gone, s."""


class Channel:
    """One controller's messages, in order; asks for its status by itself.

    `realtime` may be called from any thread, all else from one.

    Attributes
    ----------
    status : Status or None
        The last report; ``offset`` the last work offset in the controller's units.
    reports : int
        Status reports received so far.
    restarts : int
        Banners received so far.
    alarm : int or None
        Number of the last alarm since the last restart or unlock.
    patient : bool
        Whether silence is expected (homing answers nothing).
    """

    def __init__(self, link: Link) -> None:
        self._link = link
        self._lines = LineSplitter()
        self._next_query = link.clock.now()
        self._asked: float | None = None
        self.status: Status | None = None
        self.offset: Vec | None = None
        self.overrides = (100, 100, 100)
        self.reports = 0
        self.restarts = 0
        self.alarm: int | None = None
        self.patient = False

    @property
    def name(self) -> str:
        """The link's name."""
        return self._link.name

    def now(self) -> float:
        """The link's time, s."""
        return self._link.clock.now()

    def realtime(self, command: Realtime) -> None:
        """Send one byte that bypasses every queue. Safe from any thread."""
        _log.debug("> %s", command.name)
        self._write(command.value)

    def ask_status(self) -> None:
        """Have the status asked for at the next turn, unless an answer is on its way."""
        if self._asked is None:
            self._next_query = self.now()

    def send(self, data: bytes) -> None:
        """Send whole lines."""
        _log.debug("> %r", data)
        self._write(data)

    def exchange(self, wait: float) -> list[Message]:
        """Messages that arrive within ``wait`` s; returns with the first of them.

        Raises
        ------
        LinkLost
            If the port is gone, or nothing has answered for `SILENCE`.
        """
        now = self.now()
        if now >= self._next_query:
            self._write(Realtime.STATUS.value)
            self._next_query = now + QUERY_PERIOD
            if self._asked is None:
                self._asked = now
        data = self._read(max(0.0, min(wait, self._next_query - now)))
        if data:
            self._asked = None
        elif self._asked is not None and not self.patient and self.now() - self._asked > SILENCE:
            self._asked = None
            raise LinkLost(
                "The controller does not answer.",
                self.name,
                "Check the cable and the power, then connect again; the run can be resumed.",
            )
        messages = []
        for line in self._lines.feed(data):
            _log.debug("< %s", line)
            message = parse_line(line)
            self._note(message)
            messages.append(message)
        return messages

    def close(self) -> None:
        """Let go of the link."""
        self._link.close()

    def _note(self, message: Message) -> None:
        match message:
            case Status():
                self.status = message
                self.reports += 1
                self.offset = message.offset or self.offset
                self.overrides = message.overrides or self.overrides
                if message.phase is not Phase.ALARM:
                    self.alarm = None
            case Banner():
                self.restarts += 1
                self.alarm = None
                self.status = None
                self.offset = None
                self.overrides = (100, 100, 100)
            case Alarm():
                self.alarm = message.code
            case _:
                pass

    def _write(self, data: bytes) -> None:
        try:
            self._link.write(data)
        except MachineError as error:
            raise LinkLost(error.what, error.where, error.hint or RESUME_HINT) from error

    def _read(self, wait: float) -> bytes:
        try:
            return self._link.read(wait)
        except MachineError as error:
            raise LinkLost(error.what, error.where, error.hint or RESUME_HINT) from error
