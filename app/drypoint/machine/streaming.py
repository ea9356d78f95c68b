"""What is watched while lines stream: how far it is, whether the machine is where it should be."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from drypoint.machine.faults import Astray
from drypoint.machine.sender import Sender
from drypoint.machine.state import MachineState
from drypoint.machine.tracker import Tracker
from drypoint.wording import say

_TOO_FAST = 1.2
"""So much faster than the program is no rounding of the reported feed."""

_GATHER_PERIOD = 2.0
"""Every so often all answers are let come in, s: a vanished line is noticed after that at the latest,
and at full speed of the wire one pause for the round trip costs a quarter of a percent."""


@dataclass(frozen=True, slots=True)
class StreamEvent:
    """How far a stream is; all counts are of lines from its start.

    ``executed`` counts lines whose answers came in completely and that are proven carried out.
    """

    sent: int
    acknowledged: int
    executed: int
    total: int
    state: MachineState


class Streaming:
    """Watches one stream; `report` is called after every status report."""

    def __init__(
        self,
        sender: Sender,
        tracker: Tracker,
        total: int,
        on_progress: Callable[[StreamEvent], None] | None,
    ) -> None:
        self._sender = sender
        self._tracker = tracker
        self._total = total
        self._on_progress = on_progress
        self._gathered: float | None = None
        self._fast = 0

    def report(self, state: MachineState, now: float) -> None:
        """Take note of one look at the machine.

        Raises
        ------
        Astray
            If it is not where the lines lead.
        """
        sender, tracker = self._sender, self._tracker
        tracker.acknowledged(sender.answered)
        if state.work is not None:
            sight = tracker.position(state.work, sender.sent)
            where = say("near line {executed}", executed=tracker.executed + 1)
            if sight.away > 0.0:
                raise Astray(
                    say("The machine reports a place {away:.2f} mm off the path", away=sight.away), where
                )
            self._watch_feed(state, sight.limit * state.overrides[0] / 100.0, where)
        if self._gathered is None or now - self._gathered > _GATHER_PERIOD:
            self._gathered = now
            sender.gather()
        if self._on_progress is not None:
            executed = min(tracker.executed, sender.complete)
            self._on_progress(StreamEvent(sender.sent, sender.answered, executed, self._total, state))

    def _watch_feed(self, state: MachineState, limit: float, where: str) -> None:
        """Two reports in a row that are too fast; one may be older than its place."""
        self._fast = self._fast + 1 if state.feed > _TOO_FAST * limit else 0
        if self._fast >= 2:
            raise Astray(
                say("The machine runs at {feed:.0f} mm/min, faster than the program", feed=state.feed), where
            )
