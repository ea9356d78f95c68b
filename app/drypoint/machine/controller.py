"""The controller: the axes, and what they are there for, touching and streaming."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from drypoint.errors import MachineError
from drypoint.machine.axes import DRAIN, Axes, Target, axis_words
from drypoint.machine.bursts import BurstSender, bursts_of
from drypoint.machine.faults import LineLost, LinkLost, Restarted, Stopped
from drypoint.machine.guard import refuse_foreign
from drypoint.machine.pacing import sent_alone
from drypoint.machine.protocol import Phase, ProbeReport, Vec
from drypoint.machine.sender import Sender
from drypoint.machine.state import Activity
from drypoint.machine.streaming import StreamEvent, Streaming
from drypoint.machine.tracker import LineTracker, Tracker
from drypoint.machine.view import scaled

__all__ = ["Controller", "ProbeResult", "StreamEvent"]


@dataclass(frozen=True, slots=True)
class ProbeResult:
    """One touching move. Positions, mm, are those of the contact itself; of the end without one."""

    touched: bool
    machine: Vec
    work: Vec


class Controller(Axes):
    """One machine on a link; see `Axes` for the threads."""

    # --- touching ------------------------------------------------------------------------------------

    def probe(self, z_target: float, feed: float) -> ProbeResult:
        """Go down to at most ``z_target`` (work, mm), stopping at contact. Raises as `feel` does."""
        return self.feel((None, None, z_target), feed)

    def feel(self, target: Target, feed: float) -> ProbeResult:
        """Go straight to ``target``, stopping at contact.

        Raises
        ------
        MachineError
            If the input reads closed already.
        """
        with self._own(), self.purpose(Activity.TOUCHING):
            self._prepare()
            state = self.look()
            if state.contact:
                raise MachineError(
                    "The contact input reads closed before the touch.",
                    self.name,
                    "Raise the bit, check clip and wire; is the input inverted in the controller's settings?",
                )
            work, machine = state.work, state.machine
            assert work is not None  # look() waits for them
            assert machine is not None
            words = axis_words(target, work)
            if not words:
                return ProbeResult(False, machine, work)
            self._head_towards(target)
            return self._probed(f"G38.3{words}F{feed:.1f}")

    def leave(self, target: Target, feed: float) -> ProbeResult:
        """Go straight to ``target``, stopping where contact breaks: ``touched`` says whether it did.

        Raises
        ------
        MachineError
            If the input reads open already.
        """
        with self._own(), self.purpose(Activity.TOUCHING):
            self._prepare()
            if not self.look().contact:
                raise MachineError(
                    "The contact input reads open before the bit leaves the wall.",
                    self.name,
                    "The contact is not steady: clean wall and bit, look at clip and wire.",
                )
            self._head_towards(target)
            return self._probed(f"G38.5{axis_words(target)}F{feed:.1f}")

    def _probed(self, line: str) -> ProbeResult:
        """One touching move and what it reported."""
        pushed = self.command(line)
        reports = [message for message in pushed if isinstance(message, ProbeReport)]
        if not reports:
            raise LineLost(self.name)
        offset = scaled(self._channel.offset or (0.0, 0.0, 0.0), self._facts.unit)
        spot = scaled(reports[-1].position, self._facts.unit)
        at = (spot[0] - offset[0], spot[1] - offset[1], spot[2] - offset[2])
        return ProbeResult(reports[-1].touched, spot, at)

    # --- streams -------------------------------------------------------------------------------------

    def stream(
        self,
        lines: Sequence[str],
        *,
        on_progress: Callable[[StreamEvent], None] | None = None,
        tracker: Tracker | None = None,
    ) -> None:
        """Send ``lines`` at the controller's full speed and wait until all are executed.

        Whatever goes wrong, the machine is stopped and reset before the error is raised.

        Parameters
        ----------
        on_progress : called at the rate of status reports, and at the end
        tracker : proves what is executed; without one only the planner's depth and the drain do

        Raises
        ------
        Refused, Locked, Restarted, LineLost, Astray, LinkLost, Stopped
        """
        with self._own():
            refuse_foreign(lines, laser_mode=self._facts.laser_mode)
            follow = tracker or LineTracker(len(lines), self._facts.planner_blocks)
            sender = self._sender(lines, follow)
            self._prepare()
            self._guard(lines)
            self.look()
            streaming = Streaming(sender, follow, len(lines), on_progress)
            self._delivery.pulsing = isinstance(sender, BurstSender)
            self._delivery.pause.clear()

            def report() -> None:
                streaming.report(self.state, self.now())

            try:
                with self.purpose(Activity.CUTTING):
                    self._delivery.deliver(sender, lines, report)
                    self._delivery.deliver(Sender((DRAIN,)), (DRAIN,), report)  # the planner is still full
                    follow.drained(len(lines))
                    streaming.report(self.look(), self.now())
            except (LinkLost, Stopped, Restarted) as fault:
                if isinstance(fault, Stopped) and self._delivery.pulsing:
                    streaming.report(self.state, self.now())  # the pulse under way was ended first
                raise
            except BaseException:
                self._delivery.halt_quietly()
                raise
            finally:
                self._delivery.pulsing = False

    def _sender(self, lines: Sequence[str], follow: Tracker) -> Sender:
        """Pulses of a laser go burst by burst, all else as the time of its lines allows."""
        bursts = bursts_of(lines) if self._facts.laser_mode else None
        if bursts is not None:
            return BurstSender(lines, bursts, self._facts.receive_bytes)
        alone = sent_alone(follow.seconds(len(lines))).tolist()
        return Sender(lines, self._facts.receive_bytes, self.flow, alone=alone)

    def check(self, lines: Sequence[str]) -> None:
        """Have the controller read ``lines`` without moving; then it is reset.

        Raises
        ------
        Refused
            For the first line it refuses.
        MachineError
            If the controller does not go into its check mode; nothing of the lines is sent then.
        """
        with self._own():
            refuse_foreign(lines, laser_mode=self._facts.laser_mode)
            sender = Sender(lines, self._facts.receive_bytes, self.flow)
            self._prepare()
            self._delivery.ask("$C")
            self.look()
            if self._delivery.phase is not Phase.CHECK:  # else the lines would be carried out
                raise MachineError(
                    "The controller did not go into its check mode.",
                    self.name,
                    "Was the line garbled on the cable? Try again, or run without the check.",
                )
            try:
                self._delivery.deliver(sender, lines, lambda: None)
            finally:
                self._delivery.restart()
