"""The machine's axes as the program uses them: connect, look, command, move, jog, home, set zero.

All methods run on the machine's one thread, except those of `Remote` (hold, resume, stop, end of a
jog, overrides), which are safe from any thread and bypass every queue. There is no reader thread:
whoever owns the machine's thread calls `poll` while nothing else runs.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from typing import TypeAlias

from drypoint.errors import MachineError
from drypoint.machine.channel import Channel
from drypoint.machine.delivery import WAIT, Delivery
from drypoint.machine.faults import LinkLost, Refused
from drypoint.machine.greeting import greet, read_facts, with_answer
from drypoint.machine.guard import require_clear, starts_spindle
from drypoint.machine.link import Link
from drypoint.machine.protocol import Message, Phase, Realtime, Vec
from drypoint.machine.remote import Remote
from drypoint.machine.sender import Flow
from drypoint.machine.state import Activity, Clip, Facts, MachineState
from drypoint.machine.view import view

Target: TypeAlias = tuple[float | None, float | None, float | None]
"""x, y, z in work coordinates, mm; None keeps an axis where it is."""

DRAIN = "G4P0.01"
"""A dwell: it is answered when all motion before it has ended."""

_STEP = 0.0005
"""Half of the smallest step a line can say, mm: a nearer target is where the bit stands."""


class Axes(Remote):
    """One machine on a link.

    Parameters
    ----------
    flow : Flow
        How streams are paced.

    Attributes
    ----------
    clip : Clip
        Where the contact clip is; the spindle is locked unless it is known to be off.
    """

    def __init__(self, link: Link, *, flow: Flow = Flow.COUNTED) -> None:
        channel = Channel(link)
        super().__init__(channel, Delivery(channel, self._tell))
        self._turn = threading.RLock()
        self._listeners: list[Callable[[MachineState], None]] = []
        self._purpose = Activity.MOVING
        self._facts = Facts()
        self._jogging = False
        self._heading = [0, 0, 0]
        self.clip = Clip.UNKNOWN
        self.flow = flow

    # --- connecting ------------------------------------------------------------------------------

    def connect(self) -> Facts:
        """Wait for the greeting, read what the controller says of itself. Nothing is moved.

        Raises
        ------
        MachineError
            If nothing answers, or the machine is in motion already.
        """
        with self._own():
            delivery = self._delivery
            delivery.stop.clear()
            delivery.hold.release()
            delivery.overrides.forget()
            greet(self._channel)
            delivery.connected, delivery.prepared = True, False
            delivery.known.clear()
            self.clip = Clip.UNKNOWN
            self._facts = read_facts(self._question, Facts(locked=delivery.phase is Phase.ALARM))
            delivery.receive_bytes = self._facts.receive_bytes
            self._tell()
            return self._facts

    def close(self) -> None:
        """Let go of the machine; one that still moves is stopped first, so that no beam stays on."""
        try:
            resting = self.state.activity is Activity.AT_REST and not self._delivery.pulsing
            if self._delivery.connected and not resting:
                self._channel.realtime(Realtime.HOLD)
                self._channel.realtime(Realtime.RESET)
        except LinkLost:
            pass
        finally:
            self._delivery.connected = False
            self._channel.close()
            self._tell()

    @property
    def name(self) -> str:
        """Name of the link."""
        return self._channel.name

    @property
    def facts(self) -> Facts:
        """What the controller said of itself when connecting."""
        return self._facts

    def now(self) -> float:
        """Time of the link's clock, s."""
        return self._channel.now()

    # --- state -----------------------------------------------------------------------------------

    @property
    def state(self) -> MachineState:
        """The last look at the machine; `poll` lets a new one in."""
        if not self._delivery.connected:
            return MachineState(Activity.NOT_CONNECTED)
        seen = view(self._channel, self._facts, self._purpose)
        held = self._delivery.pulsing and self._delivery.pause.is_set() and seen.still
        return replace(seen, activity=Activity.HELD) if held else seen

    @property
    def known(self) -> frozenset[str]:
        """Axes whose work coordinate has been set since it was last in doubt."""
        return frozenset(self._delivery.known)

    @property
    def heading(self) -> tuple[int, int, int]:
        """Way each axis went last: +1 towards larger readings, -1 towards smaller, 0 not known."""
        return (self._heading[0], self._heading[1], self._heading[2])

    def _head_for(self, steps: Sequence[float | None]) -> None:
        for axis, step in enumerate(steps):
            if step is not None and abs(step) > _STEP:
                self._heading[axis] = 1 if step > 0.0 else -1

    def _head_towards(self, target: Target) -> None:
        work = self.state.work
        if work is not None:
            self._head_for([None if to is None else to - at for to, at in zip(target, work, strict=True)])

    def doubt(self, axes: str = "xyz") -> None:
        """The position of ``axes`` is no longer to be believed (hand wheel, new clamping)."""
        self._delivery.known -= set(axes)
        for axis in axes:
            self._heading["xyz".index(axis)] = 0

    def trust(self, axes: str) -> None:
        """The operator vouches for the position of ``axes``."""
        self._delivery.known |= set(axes)

    def listen(self, listener: Callable[[MachineState], None]) -> Callable[[], None]:
        """Have ``listener`` called on the machine's thread at every report; returns what ends that."""
        self._listeners.append(listener)
        return lambda: self._listeners.remove(listener) if listener in self._listeners else None

    @contextmanager
    def purpose(self, activity: Activity) -> Iterator[None]:
        """Motion in this block is called ``activity``."""
        before, self._purpose = self._purpose, activity
        try:
            yield
        finally:
            self._purpose = before

    def poll(self, wait: float = 0.0) -> MachineState:
        """Let messages in and tell the listeners.

        Raises
        ------
        Stopped
            If Stop was pressed: the machine has been stopped and reset.
        LinkLost
            If the link is gone.
        """
        with self._own():
            self._delivery.exchange(wait)
            return self.state

    def look(self) -> MachineState:
        """A report made after this call, with the work position in it."""
        with self._own():
            seen = self._channel.reports
            self._channel.ask_status()
            while self._channel.reports == seen or self.state.work is None:
                self._delivery.exchange(WAIT)
            return self.state

    def place(self) -> Vec:
        """Where the bit is now, work coordinates, mm."""
        work = self.look().work
        assert work is not None  # look() waits for it
        return work

    # --- commands ----------------------------------------------------------------------------------

    def command(self, line: str) -> tuple[Message, ...]:
        """Send one line alone and wait for its answer; what was pushed meanwhile is returned.

        Raises
        ------
        Refused, Locked, Restarted, LineLost, LinkLost, Stopped
        """
        with self._own():
            if not line.startswith("$"):
                self._prepare()
                self._guard((line,))
            return tuple(self._delivery.ask(line))

    def drain(self) -> MachineState:
        """Wait until everything sent is executed and the machine rests: the proof of execution."""
        with self._own():
            self.command(DRAIN)
            return self.look()

    def move(self, target: Target, feed: float | None = None) -> MachineState:
        """Go straight to ``target``, at ``feed`` mm/min or as a rapid move, and wait until there."""
        with self._own():
            words = axis_words(target)
            if words:
                self._head_towards(target)
                self.command(f"G0{words}" if feed is None else f"G1{words}F{feed:.1f}")
            return self.drain()

    def unlock(self) -> None:
        """Unlock after an alarm. The cause must be found first; positions may be lost."""
        with self._own():
            self._delivery.restart()
            if self.look().activity is Activity.NEEDS_YOU:
                self._delivery.ask("$X")
            self.look()

    def home(self) -> None:
        """Seek the machine's own zero.

        Raises
        ------
        MachineError
            If the controller has no homing.
        """
        with self._own():
            if not self._facts.homing:
                raise MachineError("This machine has no homing.", self.name, "Set zero by hand.")
            self._channel.patient = True
            try:
                self._delivery.ask("$H")
            finally:
                self._channel.patient = False
            self.doubt()
            self.look()

    def jog(self, dx: float, dy: float, dz: float, feed: float) -> None:
        """Move by so much (mm) at ``feed`` mm/min; returns as soon as the move is under way."""
        words = "".join(f"{axis}{step:.3f}" for axis, step in zip("XYZ", (dx, dy, dz), strict=True) if step)
        if words:
            with self._own():
                self._head_for((dx, dy, dz))
                self._delivery.ask(f"$J=G91G21{words}F{feed:.1f}")
                self._jogging = True

    def settle(self) -> MachineState:
        """Wait until a jog has ended: two reports in a row that say so."""
        with self._own():
            rests = 0
            while rests < 2:
                still = self.look().still and self._delivery.phase is not Phase.JOG
                rests = rests + 1 if still else 0
            self._jogging = False
            return self.state

    def set_work(self, x: float | None = None, y: float | None = None, z: float | None = None) -> None:
        """Give the place where the bit stands these work coordinates, mm."""
        words = axis_words((x, y, z))
        if words:
            with self._own():
                self.drain()
                self.command("G10L20P1" + words)
                self._offset_changed({axis for axis in "xyz" if axis.upper() in words})

    def set_zero_height(self, machine_z: float) -> None:
        """Make ``machine_z`` (mm, machine coordinates) the zero of the work's z."""
        with self._own():
            self.command(f"G10L2P1Z{machine_z:.3f}")
            self._offset_changed({"z"})

    # --- inside --------------------------------------------------------------------------------------

    @contextmanager
    def _own(self) -> Iterator[None]:
        if not self._turn.acquire(blocking=False):
            raise MachineError("The machine is busy.", self.name, "Wait for it, or stop it.")
        try:
            yield
        finally:
            self._turn.release()

    def _tell(self) -> None:
        state = self.state
        for listener in tuple(self._listeners):
            listener(state)

    def _question(self, line: str) -> list[Message]:
        """A question that a locked controller may refuse: then there is no answer."""
        try:
            return self._delivery.ask(line)
        except Refused:
            return []

    def _prepare(self) -> None:
        """End a jog; after every restart set the modal state that all our lines build on."""
        if self._jogging:
            self.settle()
        if self._delivery.prepared:
            return
        if self._delivery.phase is Phase.ALARM:
            raise self._delivery.locked(self._channel.alarm)
        self._delivery.ask("G54G17G21G90G94")
        if any(any(self._facts.offsets.get(name, ())) for name in ("G92", "TLO")):
            self._delivery.ask("G92.1")
            self._delivery.ask("G49")
        self._delivery.prepared = True

    def require_clear(self) -> None:
        """Refuse unless the clip is known to be off and the contact input reads open.

        Raises
        ------
        MachineError
            Saying what to do first.
        """
        require_clear(self.clip, self.look(), self.name)

    def _guard(self, lines: Sequence[str]) -> None:
        if starts_spindle(lines):
            self.require_clear()

    def _offset_changed(self, axes: set[str]) -> None:
        """Ask for the offsets: the reports carry a new one only now and then."""
        self._delivery.known |= axes
        for message in self._question("$#"):
            self._facts = with_answer(self._facts, message)
        zero = (0.0, 0.0, 0.0)
        work, shift = (self._facts.offsets.get(name, zero) for name in ("G54", "G92"))
        length = self._facts.offsets.get("TLO", (0.0,))[0]
        self._channel.offset = (work[0] + shift[0], work[1] + shift[1], work[2] + shift[2] + length)
        self.look()


def axis_words(target: Target, here: Vec | None = None) -> str:
    """Axis words of a target; axes that already are there are left out."""
    return "".join(
        f"{axis}{value:.3f}"
        for index, (axis, value) in enumerate(zip("XYZ", target, strict=True))
        if value is not None and (here is None or abs(value - here[index]) > _STEP)
    )
