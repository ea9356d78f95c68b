"""The controller: one event loop from bytes to motion, exact in simulated time.

Speaks the open serial protocol of hobby motion controllers, version 1.1 (its public interface
documentation), real-time bytes, flow control and alarms included.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable

from drypoint.bench.lines import Lines
from drypoint.bench.memory import ORIGIN, Memory
from drypoint.bench.parser import Parser
from drypoint.bench.planner import Block, Planner, Triple
from drypoint.bench.realtime import Realtime
from drypoint.bench.states import (
    ALARM_HARD,
    ALARM_RESET,
    BLOCKS,
    BOOT_TIME,
    BUFFER,
    EEPROM_TIME,
    LINE_TIME,
    LONGEST,
    Mechanics,
    State,
    Task,
    Wait,
)
from drypoint.bench.stepper import Pace, Stepper
from drypoint.bench.wire import REALTIME, Wire
from drypoint.bench.words import TOO_LONG, Refused, clean


class BenchController:
    """A motion controller with its serial line.

    Parameters
    ----------
    mechanics : Mechanics
    memory : Memory, optional
        Settings and offsets that outlast a power cycle.
    baud, latency : float
        Of the serial line.
    """

    def __init__(
        self,
        mechanics: Mechanics,
        memory: Memory | None = None,
        *,
        baud: float = 115200.0,
        latency: float = 0.001,
    ) -> None:
        self.mechanics = mechanics
        self.memory = memory or Memory()
        self.wire = Wire(baud, latency)
        self.now = 0.0
        self.state = State.IDLE
        self.parser = Parser(self.memory)
        self.planner = Planner(self.memory.limits(), BLOCKS)
        self.stepper = Stepper(self.planner, self._block_done)
        self.powered = True
        self.probe_result: tuple[Triple, bool] = (ORIGIN, False)
        self.homed = False
        self.overruns = 0
        """Ordinary bytes lost because the receive buffer was full or interrupts were off."""
        self.starved = 0
        """Times the planner ran empty while lines were still coming."""
        self.lines_done = 0
        self.on_text: Callable[[bytes], bytes] | None = None
        """What really arrives of a piece of text; faults are put in here."""
        self.on_beam: Callable[[float, float, Callable[[], Triple]], None] | None = None
        """Told at every event: time, power of a beam at rest, and how to learn the place."""
        self.rx: deque[bytes] = deque()
        self._line = bytearray()
        self._task: Task | None = None
        self._wait: Wait = 0.0
        self._busy = 0.0
        self._booting = 0.0
        self.reset_wanted = False
        """Whether a reset follows the answer to the line in hand."""
        self._lines = Lines(self)
        self.realtime = Realtime(self)
        self.restart(0.0)

    # time

    def next_event(self) -> float:
        """When something will happen next, s; infinity if nothing will by itself."""
        due = min(self.stepper.next_time, self.stepper.contact_time, self.realtime.due)
        if self.wire.arriving:
            due = min(due, self.wire.arriving[0][0])
        if not self.realtime.suspended and self.powered:
            if self._task is not None:
                if isinstance(self._wait, float):
                    due = min(due, self._wait)
            elif self.rx or self._busy > self.now:
                due = min(due, self._busy)
        return max(due, self.now)

    def advance(self, until: float) -> None:
        """Let everything happen up to ``until``."""
        while True:
            due = self.next_event()
            if due > until:
                self.now = max(self.now, until)
                return
            self.step(due)

    def step(self, due: float) -> None:
        """Go to ``due`` and do what is due there."""
        self.now = due
        if self.stepper.contact_time <= due:
            self.stepper.watch(None)
            self._lines.touched()
        if self.stepper.next_time <= due and self.stepper.event(due):
            self._stopped()
        while self.wire.arriving and self.wire.arriving[0][0] <= due:
            self._take(self.wire.arriving.popleft()[1])
        self.realtime.serve(due)
        if self.powered:
            self._work()
        if self.on_beam is not None:
            self.on_beam(due, self._lines.resting_beam(), self.place)

    # bytes

    def _take(self, piece: bytes) -> None:
        if not self.powered or self.now < self._booting:
            return
        if len(piece) == 1 and piece[0] in REALTIME:
            self.realtime.byte(piece[0])
            return
        if self.on_text is not None:
            piece = self.on_text(piece)
        room = BUFFER - self.rx_used
        if len(piece) > room:
            self.overruns += len(piece) - room
            piece = piece[:room]
        self._line += piece
        while self._line:
            ends = [i for i in (self._line.find(b"\n"), self._line.find(b"\r")) if i >= 0]
            if not ends:
                return
            end = min(ends) + 1
            self.rx.append(bytes(self._line[:end]))
            del self._line[:end]

    @property
    def rx_used(self) -> int:
        """Bytes waiting in the receive buffer."""
        return sum(map(len, self.rx)) + (len(self._line) if self._task or self.realtime.suspended else 0)

    def say(self, text: str) -> None:
        """Send one line."""
        self.wire.reply(text.encode("ascii") + b"\r\n", self.now)

    # main loop

    def _work(self) -> None:
        while not self.realtime.suspended and self.powered:
            if self._task is not None:
                if not self._go_on():
                    return
            elif self.now < self._busy:
                return
            elif self.rx:
                self._begin(self.rx.popleft())
            else:
                self.start()
                return

    def _go_on(self) -> bool:
        """Continue the line in hand; False if it has to wait."""
        if isinstance(self._wait, float):
            if self.now < self._wait:
                return False
        elif not self._wait():
            self.start()
            return self._wait()
        task = self._task
        try:
            if task is not None:
                self._wait = next(task)
        except StopIteration:
            if self._task is task:
                self._task = None
            if self.reset_wanted:
                self.reset()
        return True

    def _begin(self, raw: bytes) -> None:
        text = raw.decode("latin-1").rstrip("\r\n")
        self._busy = self.now + LINE_TIME
        self.run(self.answered(text))

    def answered(self, text: str) -> Task:
        """One line with its one answer."""
        try:
            line = clean(text)
            if len(text) > LONGEST:
                raise Refused(TOO_LONG)
            yield from self._lines.execute(line, text)
        except Refused as refusal:
            self.say(f"error:{refusal.code}")
            return
        self.lines_done += 1
        self.say("ok")

    def run(self, task: Task) -> None:
        """Make ``task`` what the main loop does."""
        self._task, self._wait = task, 0.0

    def store(self) -> Wait:
        """Write persistent memory: bytes that arrive meanwhile are lost. Returns the wait."""
        end = self.now + EEPROM_TIME
        self.overruns += self.wire.drop_arrivals(end)
        return end

    # motion

    def start(self) -> None:
        """Begin executing what is planned, unless something forbids it."""
        if self.stepper.pace is not Pace.STILL or not self.planner.blocks or self.realtime.suspended:
            return
        if self.state is State.IDLE:
            self.state = State.JOG if self.planner.blocks[0].jog else State.RUN
        if self.state in (State.RUN, State.JOG, State.HOME):
            self.stepper.start(self.now)

    def has_room(self) -> bool:
        """Whether the planner takes another block."""
        return not self.planner.full

    def drained(self) -> bool:
        """Whether nothing is planned and nothing moves."""
        return not self.planner.blocks

    def standing(self) -> bool:
        """Whether nothing moves and no move is about to start."""
        return self.stepper.pace is Pace.STILL

    def released(self) -> bool:
        """Whether nothing suspends the run."""
        return not self.realtime.suspended

    def probe_input(self) -> bool:
        """Whether the contact input reads closed."""
        return self.mechanics.contact(self.stepper.place(self.now)) != bool(self.memory.settings[6])

    def spindle_speed(self) -> float:
        """Speed commanded now, 1/min."""
        if self.parser.modal.spindle == 5 or self.realtime.spindle_stopped:
            return 0.0
        return self.parser.modal.speed * self.realtime.spindle / 100.0

    def homed_at(self, place: Triple) -> None:
        """The switches were found and backed off from."""
        self.forget_motion()
        self.mechanics.home(place)
        self.stepper.position = self.parser.position = self.to_steps(place)
        self.homed = True

    def push(self, end: Triple, speed: float, *, rapid: bool = False, jog: bool = False) -> None:
        """Plan a straight move to ``end`` (machine coordinates; rounded to whole steps)."""
        target = self.to_steps(end)
        start = self.planner.blocks[-1].end if self.planner.blocks else self.stepper.position
        block = self.planner.block(start, target, speed, rapid=rapid)
        if block is None:
            return
        block.jog = jog
        block.power = self._lines.laser_power(rapid)
        self.planner.push(block)
        self.stepper.pushed(self.now)

    def to_steps(self, place: Triple) -> Triple:
        """The nearest place that whole motor steps reach."""
        a, b, c = self.memory.steps
        return (round(place[0] * a) / a, round(place[1] * b) / b, round(place[2] * c) / c)

    def place(self) -> Triple:
        """Machine position now, in whole steps."""
        return self.to_steps(self.stepper.place(self.now))

    def _stopped(self) -> None:
        """The motors have come to a stand."""
        if self.realtime.stopped():
            return
        if self.state in (State.RUN, State.JOG):
            self.starved += self.state is State.RUN and bool(self.rx or self.wire.arriving)
            self.state = State.IDLE

    def _block_done(self, block: Block, end: Triple) -> None:
        self.mechanics.moved(end, rapid=block.rapid, power=block.power, speed=block.nominal)

    # alarm, reset, power

    def alarm(self, code: int) -> None:
        """Stop, refuse G-code, say why."""
        self.state = State.ALARM
        self.planner.clear()
        self.say(f"ALARM:{code}")

    def forget_motion(self) -> None:
        """Stand still and take the position as it is."""
        self.stepper.forget(self.now)
        self.stepper.position = self.to_steps(self.stepper.position)
        self.parser.position = self.stepper.position

    def reset(self) -> None:
        """Soft reset: stop dead, empty every buffer, greet; an alarm if it was moving."""
        moving = self.stepper.pace is not Pace.STILL
        locked = self.state in (State.ALARM, State.SLEEP)
        self.forget_motion()
        self.rx.clear()
        self._line.clear()
        self._task, self._busy, self.reset_wanted = None, 0.0, False
        self._lines.spindle_off()
        if moving:
            self.state = State.ALARM
            self.say(f"ALARM:{ALARM_RESET}")
            locked = True
        self.parser.reset()
        self.planner.limits = self.memory.limits()
        self.realtime.reset()
        self.greet(locked=locked)

    def greet(self, *, locked: bool) -> None:
        """The greeting, then the start-up lines unless locked."""
        self.say("")
        self.say("Grbl 1.1f ['$' for help]")
        if locked or (self.memory.settings[22] and not self.homed):
            self.state = State.ALARM
            self.say("[MSG:'$H'|'$X' to unlock]")
            return
        self.state = State.IDLE
        self.run(self._lines.startup())

    def restart(self, boot: float = BOOT_TIME) -> None:
        """Power cycle, or the reset that opening the port causes: the position is forgotten."""
        self.forget_motion()
        self.powered, self.homed = True, False
        self.stepper.position = self.parser.position = ORIGIN
        self.mechanics.power_up()
        self._lines.spindle_off()
        self.rx.clear()
        self._line.clear()
        self.parser.reset()
        self.probe_result = (ORIGIN, False)
        self.planner.limits = self.memory.limits()
        self.realtime.reset()
        self.state = State.IDLE
        self._busy = 0.0
        if not boot:
            self.greet(locked=False)
            return
        self._booting = self.now + boot
        self.run(self._boot(self._booting))

    def _boot(self, ready: float) -> Task:
        yield ready
        self.greet(locked=False)

    def power_off(self) -> None:
        """The supply is gone: motion, buffers and outputs with it."""
        self.forget_motion()
        self._lines.spindle_off()
        self.powered, self._task = False, None
        self.rx.clear()
        self._line.clear()
        self.wire.cut()
        self.realtime.reset()

    def fail(self, code: int = ALARM_HARD) -> None:
        """A hard limit, say: stop dead, position lost, only a reset helps."""
        self.forget_motion()
        self.rx.clear()
        self._task = None
        self._lines.spindle_off()
        self.alarm(code)
        self.say("[MSG:Reset to continue]")
        self.realtime.critical = True
