"""Lines to the controller and an answer for each; stopping, resetting, and what a restart takes away."""

from __future__ import annotations

import re
import threading
from collections.abc import Callable, Sequence

from drypoint.errors import MachineError
from drypoint.machine.channel import Channel
from drypoint.machine.explain import POSITION_LOST
from drypoint.machine.faults import LineLost, LinkLost, Locked, Refused, Restarted, Stopped
from drypoint.machine.hold import Hold
from drypoint.machine.overrides import Overrides
from drypoint.machine.protocol import Alarm, Banner, ErrorReply, Message, Ok, Phase, Realtime, Status
from drypoint.machine.sender import DEFAULT_BUFFER, Sender
from drypoint.wording import say

WAIT = 0.05
"""Longest wait for bytes in one turn of a loop, s."""

_SLOWING = 2.5
"""Longest time a hold may take to stand still before the reset comes anyway, s."""

_RESTART = 3.0
"""Time a controller may take to greet after a reset, s."""

_QUIET = 1.0
"""Rest with unanswered lines for so long means that one was lost, s (plus what the lines dwell)."""

_DWELL = re.compile(r"G0*4(?!\d|\.)[^P]*P([\d.]+)")


class Delivery:
    """Delivers lines over a channel. All on the machine's thread but setting ``stop``.

    Attributes
    ----------
    stop : Event
        Set to have the machine stopped and reset at the next turn of any loop.
    connected : bool
    known : set of str
        Axes whose work coordinate is known.
    prepared : bool
        Whether the modal state our lines build on is in force.
    pulsing : bool
        Whether a laser is being pulsed: a hold or stop then waits until the pulse under way has been
        put out by its own line, since a hold would freeze it with the beam on; a fault resets at once.
    pause : Event
        Set to have no further pulse begun.
    hold : Hold
        Holds all motion but pulses.
    overrides : Overrides
    tell : callable
        Called whenever something new is known of the machine.
    """

    def __init__(self, channel: Channel, tell: Callable[[], None]) -> None:
        self._channel = channel
        self.tell = tell
        self.stop = threading.Event()
        self.pause = threading.Event()
        self.hold = Hold(channel)
        self.overrides = Overrides(channel)
        self.pulsing = False
        self._lit = False
        self.connected = False
        self.known: set[str] = set()
        self.prepared = False
        self.receive_bytes = DEFAULT_BUFFER

    @property
    def phase(self) -> Phase | None:
        """What the controller last said it was doing."""
        return None if self._channel.status is None else self._channel.status.phase

    def exchange(self, wait: float) -> list[Message]:
        """Messages that arrive within ``wait`` s.

        Raises
        ------
        Stopped
            If a stop was wanted; it has been carried out.
        LinkLost
        """
        seen = self._channel.reports
        try:
            messages = self._channel.exchange(wait)
        except LinkLost:
            self._lose()
            raise
        if self._channel.reports != seen or any(isinstance(m, Alarm | Banner) for m in messages):
            self.tell()
        for message in messages:  # our own resets do not come through here
            if isinstance(message, Banner):
                self.prepared = False
                self.known.clear()
                self.overrides.forget()
            elif isinstance(message, Status):
                self._meet(message)
        if self.stop.is_set() and not self._lit:
            self.stop.clear()
            self.halt()
            raise Stopped(self._channel.name)
        return messages

    def _meet(self, status: Status) -> None:
        """What was wanted by single bytes goes on where it has not been reached."""
        self.hold.meet(status)
        if status.overrides is not None:
            self.overrides.meet(status.overrides)

    def ask(self, line: str) -> list[Message]:
        """Send one line, wait for its answer; what was pushed meanwhile is returned."""
        try:
            return self.deliver(Sender((line,), self.receive_bytes), (line,), lambda: None)
        except LineLost:
            self.halt_quietly()  # an answer that comes late must not count for the next line
            raise

    def deliver(self, sender: Sender, lines: Sequence[str], report: Callable[[], None]) -> list[Message]:
        """Send all, count the answers; ``report`` is called after every status report.

        Raises
        ------
        Refused, Locked, Restarted, LineLost, LinkLost, Stopped
        """
        pushed: list[Message] = []
        rest_since: float | None = None
        seen = self._channel.reports
        while not sender.done:
            data = b"" if self._waits(sender) else sender.take()
            self._lit = self.pulsing and bool(sender.waiting)
            if data:
                self._channel.send(data)
            answered = sender.answered
            for message in self.exchange(WAIT):
                self._sort(message, sender, lines, pushed)
            if data or sender.answered != answered:
                rest_since = None
            if self._channel.reports != seen:
                seen = self._channel.reports
                rest_since = self._watch_rest(sender, lines, rest_since)
                report()
        return pushed

    def _waits(self, sender: Sender) -> bool:
        """Whether no further pulse may begin: held or stopped, and none is under way."""
        wanted = self.pause.is_set() or self.stop.is_set()
        return self.pulsing and wanted and not sender.waiting

    def _sort(self, message: Message, sender: Sender, lines: Sequence[str], pushed: list[Message]) -> None:
        """Count an answer, raise what is a fault, keep the rest."""
        match message:
            case Ok():
                sender.answer()
            case ErrorReply():
                index = sender.answer()
                if index is not None:
                    raise Refused(message.code, lines[index], index)
            case Alarm():
                raise self.locked(message.code)
            case Banner():
                raise Restarted(self._channel.name)
            case _:
                pushed.append(message)

    def _watch_rest(self, sender: Sender, lines: Sequence[str], since: float | None) -> float | None:
        """Since when the machine rests with lines unanswered; raises if that is too long."""
        if self.phase not in (Phase.IDLE, Phase.CHECK) or not sender.waiting:
            return None
        now = self._channel.now()
        dwell = sum(_dwell(lines[index]) for index in sender.waiting)
        if since is not None and now - since > _QUIET + dwell:
            raise LineLost(
                say("line {waiting}: {lines}", waiting=sender.waiting[0] + 1, lines=lines[sender.waiting[0]])
            )
        return now if since is None else since

    def locked(self, code: int | None) -> Locked:
        """The fault for an alarm; forgets what the alarm has made doubtful."""
        if code in POSITION_LOST:
            self.known.clear()
        self.prepared = False
        return Locked(code or 0, self._channel.name)

    def halt(self) -> None:
        """Hold, wait until the machine stands still, reset; a laser that is pulsed is reset at once."""
        self._lit = False
        if self.pulsing:
            self.restart()
            return
        self.hold.begin_for_good()
        deadline = self._channel.now() + _SLOWING
        rests = 0
        while self._channel.now() < deadline and rests < 2 and not self._channel.patient:
            for message in self._channel.exchange(WAIT):
                if isinstance(message, Status):
                    rests = rests + 1 if is_still(message) else 0
        self.restart()

    def halt_quietly(self) -> None:
        """The same while an error is on its way already."""
        try:
            self.halt()
        except MachineError:
            self._lose()

    def restart(self) -> None:
        """Reset, wait for the greeting, look where the machine is.

        Raises
        ------
        LinkLost
            If it does not come back.
        """
        self.prepared = False
        seen, alarm = self._channel.restarts, self._channel.alarm
        self._channel.realtime(Realtime.RESET)
        deadline = self._channel.now() + _RESTART
        while self._channel.restarts == seen:
            for message in self._channel.exchange(WAIT):
                alarm = message.code if isinstance(message, Alarm) else alarm
            if self._channel.now() > deadline:
                raise LinkLost("The controller does not come back after a reset.", self._channel.name, "")
        if alarm in POSITION_LOST:
            self.known.clear()
        while self._channel.status is None:
            self._channel.exchange(WAIT)
        self.hold.release()
        self.overrides.forget()
        if self.phase is Phase.ALARM and self._channel.alarm is None:
            self._channel.alarm = alarm
        self.tell()

    def _lose(self) -> None:
        self.connected = False
        self.prepared = False
        self.known.clear()
        self.tell()


def is_still(status: Status) -> bool:
    """Whether the axes stand still (a hold or an opened door may still be slowing down)."""
    if status.phase in (Phase.HOLD, Phase.DOOR):
        return status.sub in (0, 1) if status.phase is Phase.DOOR else status.sub in (0, None)
    return status.phase in (Phase.IDLE, Phase.ALARM, Phase.CHECK, Phase.SLEEP)


def _dwell(line: str) -> float:
    """Seconds a line waits."""
    found = _DWELL.search(line.upper().replace(" ", ""))
    return float(found[1]) if found else 0.0
