"""A small controller that keeps to the protocol, on an in-memory link with its own clock.

Motion is straight and of constant speed: enough to have a planner that fills, a receive buffer that
can overflow, and answers that come late.
"""

from __future__ import annotations

import re
from collections import deque

import numpy as np
import pytest

from drypoint.bits.model import Speeds, VBit
from drypoint.errors import MachineError
from drypoint.gcode.writer import write_lines
from drypoint.machine.controller import Controller
from drypoint.machine.journal import RunJournal
from drypoint.machine.link import Clock, Link
from drypoint.machine.operator import Answer, AnswerKind, Operator, RequestKind
from drypoint.machine.preset import MachinePreset, SpindleKind
from drypoint.machine.procedures.workplace import Workplace
from drypoint.program.model import MoveKind, Moves, Program

BIT = VBit("V 0.1 30°", 0.1, np.radians(30.0), Speeds(8000.0, 300.0, 100.0))
STEP = 0.002  # s, resolution of the fake's time


class FakeClock(Clock):
    def __init__(self) -> None:
        self.time = 0.0

    def now(self) -> float:
        return self.time

    def sleep(self, seconds: float) -> None:
        self.time += seconds


class FakeController:
    """Protocol-true, physically crude."""

    def __init__(self, *, rx: int = 128, planner: int = 15, startup: str = "", homing: bool = False) -> None:
        self.rx_size, self.planner_size, self.startup = rx, planner, startup
        self.settings = {10: 1, 13: 0, 22: int(homing), 32: 0, 110: 1000, 111: 1000, 112: 500}
        self.settings |= {
            100: 250,
            101: 250,
            102: 250,
            120: 50,
            121: 50,
            122: 30,
            130: 200,
            131: 200,
            132: 60,
        }
        self.settings |= {30: 10000}
        self.position = np.zeros(3)
        self.offset = np.zeros(3)
        self.copper = lambda x, y: None  # machine height of the copper, None: no copper
        self.clip = False
        self.clip_on_bit = False
        self.opto_stuck = False
        self.out = bytearray()
        self.received: list[str] = []
        self.executed: list[tuple[str, np.ndarray]] = []
        self.realtime: list[tuple[float, bytes]] = []
        self.overflow = False
        self.deepest_in_flight = 0
        self.alarm = 1 if homing else 0
        self.tamper = lambda line: line
        self.swallow_answers = 0
        self.time = 0.0
        self.critical = False
        self.spindle = False
        self.restart(moving=False)
        self.state = "Alarm" if homing else "Idle"

    # --- what a person or a fault does
    def restart(self, *, moving: bool | None = None) -> None:
        moving = bool(self.moves) if moving is None else moving
        self.rx = bytearray()
        self.moves: deque = deque()
        self.fraction = 0.0
        self.mode, self.feed, self.absolute = "G0", 0.0, True
        self.waiting = None
        self.probing = False
        self.spindle = False
        self.reports = 0
        self.holding = False
        was_alarm = getattr(self, "state", "Idle") == "Alarm"
        self.state = "Alarm" if moving or was_alarm else "Idle"
        if moving:
            self.say("ALARM:3")
        self.say("")
        self.say("Grbl 1.1f ['$' for help]")
        if self.state == "Alarm":
            self.say("[MSG:'$H'|'$X' to unlock]")
        elif self.startup:
            self.say(f">{self.startup}:ok")

    def trip(self, code: int) -> None:
        self.moves.clear()
        self.waiting = None
        self.say(f"ALARM:{code}")
        self.state = "Alarm"

    # --- bytes
    def say(self, text: str) -> None:
        self.out += text.encode("latin-1") + b"\r\n"

    def answer(self, text: str) -> None:
        if self.swallow_answers:
            self.swallow_answers -= 1
            return
        self.say(text)

    def take(self, data: bytes) -> None:
        for value in data:
            byte = bytes([value])
            if byte in b"?!~\x18" or value >= 0x80:
                self.realtime.append((self.time, byte))
                self.immediate(byte)
            elif len(self.rx) >= self.rx_size:
                self.overflow = True
            else:
                self.rx += byte
                self.deepest_in_flight = max(self.deepest_in_flight, len(self.rx))

    def immediate(self, byte: bytes) -> None:
        if byte == b"?":
            self.report()
        elif byte == b"!" and self.state in ("Idle", "Run", "Jog"):
            if self.state == "Jog":
                self.moves.clear()
                self.state = "Idle"
            else:
                self.holding, self.state = True, "Hold:0"
        elif byte == b"~" and self.holding:
            self.holding, self.state = False, "Run" if self.moves else "Idle"
        elif byte == b"\x18":
            self.restart(moving=self.state in ("Run", "Jog"))
        elif byte == b"\x85" and self.state == "Jog":
            self.moves.clear()
            self.state = "Idle"

    def contact(self) -> bool:
        if self.clip_on_bit or self.opto_stuck:
            return True
        top = self.copper(self.position[0], self.position[1])
        return self.clip and top is not None and self.position[2] <= top

    def report(self) -> None:
        place = self.position if self.settings[10] & 1 else self.position - self.offset
        scale = 25.4 if self.settings[13] else 1.0
        fields = [self.state, ("MPos:" if self.settings[10] & 1 else "WPos:") + _vec(place / scale), "FS:0,0"]
        if self.contact():
            fields.append("Pn:P")
        if self.reports % 10 == 0:
            fields.append("WCO:" + _vec(self.offset / scale))
        elif self.reports % 10 == 1:
            fields.append("Ov:100,100,100")
        self.reports += 1
        self.say("<" + "|".join(fields) + ">")

    # --- time
    def advance(self, seconds: float) -> None:
        self.time += seconds
        if not self.holding:
            self.run(seconds)
        self.work()

    def run(self, seconds: float) -> None:
        while self.moves and seconds > 0.0:
            start, end, duration, _ = self.moves[0]
            left = duration * (1.0 - self.fraction)
            part = min(left, seconds)
            seconds -= part
            self.fraction = 1.0 if part >= left else self.fraction + part / duration
            self.position = start + (end - start) * self.fraction
            if self.probing and self.contact():
                self.finish_probe(True)
                return
            if self.fraction >= 1.0:
                line = self.moves.popleft()[3]
                if line:
                    self.executed.append((line, end - self.offset))
                self.fraction = 0.0
        if not self.moves and self.state in ("Run", "Jog"):
            self.state = "Idle"
        if self.probing and not self.moves:
            self.finish_probe(False)

    def finish_probe(self, touched: bool) -> None:
        self.moves.clear()
        self.fraction = 0.0
        self.probing = False
        self.state = "Idle"
        spot = self.position.copy()
        if touched:  # the contact is exact, the stop overshoots
            spot[2] = min(spot[2] + 0.0, self.copper(spot[0], spot[1]) or spot[2])
            self.position = self.position - np.array([0.0, 0.0, 0.004])
        scale = 25.4 if self.settings[13] else 1.0
        self.say(f"[PRB:{_vec(spot / scale)}:{int(touched)}]")
        self.answer("ok")

    def work(self) -> None:
        """Read lines while they can be taken."""
        while True:
            if self.waiting is not None:
                if self.moves or self.holding:
                    return
                if self.waiting > 0.0:
                    self.waiting -= STEP
                    return
                self.waiting = None
                self.answer("ok")
            if self.probing or self.holding or len(self.moves) >= self.planner_size:
                return
            end = self.rx.find(b"\n")
            if end < 0:
                return
            line = self.tamper(self.rx[:end].decode("ascii").strip())
            del self.rx[: end + 1]
            if line is None:
                continue
            self.received.append(line)
            self.line(re.sub(r"\s", "", line).upper())

    def line(self, line: str) -> None:
        if line.startswith("$"):
            self.system(line)
        elif self.state == "Alarm" or (self.state == "Jog" and line):
            self.answer("error:9")
        else:
            self.motion(line)

    def system(self, line: str) -> None:
        scale = 25.4 if self.settings[13] else 1.0
        if line == "$$":
            for number, value in self.settings.items():
                self.say(f"${number}={value}")
        elif line == "$#":
            self.say(f"[G54:{_vec(self.offset / scale)}]")
            self.say("[G92:0.000,0.000,0.000]")
            self.say("[TLO:0.000]")
        elif line == "$I":
            self.say("[VER:1.1f.20170801:]")
            self.say(f"[OPT:V,{self.planner_size},{self.rx_size}]")
        elif line == "$N":
            self.say(f"$N0={self.startup}")
            self.say("$N1=")
        elif line == "$G":
            self.say("[GC:G0 G54 G17 G21 G90 G94 M5 M9 T0 F0 S0]")
        elif line == "$X":
            self.say("[MSG:Caution: Unlocked]")
            self.state = "Idle"
        elif line == "$H":
            self.state, self.position = "Idle", np.zeros(3)
        elif line == "$C":
            self.state = "Check"
            self.say("[MSG:Enabled]")
        elif line.startswith("$J="):
            values = _axes(line)
            end = (self.moves[-1][1] if self.moves else self.position) + values.get("delta")
            self.push(end, _number(line, "F"))
            self.state = "Jog"
        else:
            self.answer("error:3")
            return
        self.answer("ok")

    def motion(self, line: str) -> None:
        if line.startswith("G4P"):
            if self.state != "Check":
                self.waiting = float(line[3:])
                return
        elif line.startswith("G10L20"):
            here = self.position
            for axis, value in _axes(line)["set"].items():
                self.offset[axis] = here[axis] - value
        elif line.startswith("G10L2"):
            for axis, value in _axes(line)["set"].items():
                self.offset[axis] = value
        elif "G38.3" in line:
            if self.contact():
                self.trip(4)
                return
            self.push(self.target(line), _number(line, "F"))
            self.probing, self.state = True, "Run"
            return
        elif "BAD" in line:
            self.answer("error:20")
            return
        else:
            if self.state != "Check" and re.search(r"M0*3(?!\d)", line):
                self.spindle = True
            if re.search(r"M0*5(?!\d)", line):
                self.spindle = False
            if word := re.search(r"G0*([0123])(?![\d.])", line):
                self.mode = f"G{word[1]}"
            if "F" in line:
                self.feed = _number(line, "F")
            if re.search(r"[XYZ]", line):
                if self.mode != "G0" and not self.feed:
                    self.answer("error:22")
                    return
                if self.state != "Check":
                    end = self.target(line)
                    self.push(end, self.feed if self.mode != "G0" else 1000.0, line)
        self.answer("ok")

    def target(self, line: str) -> np.ndarray:
        end = (self.moves[-1][1] if self.moves else self.position).copy()
        for axis, value in _axes(line)["set"].items():
            end[axis] = value + self.offset[axis]
        return end

    def push(self, end: np.ndarray, feed: float, line: str = "") -> None:
        start = self.moves[-1][1] if self.moves else self.position
        length = float(np.linalg.norm(end - start))
        if length > 1e-9:
            self.moves.append((start.copy(), end.copy(), length / feed * 60.0, line))
            if self.state == "Idle":
                self.state = "Run"
        elif line:
            self.executed.append((line, end - self.offset))


def _vec(values) -> str:
    return ",".join(f"{value:.3f}" for value in values)


def _number(line: str, letter: str) -> float:
    return float(re.search(letter + r"(-?[\d.]+)", line)[1])


def _axes(line: str) -> dict:
    found = {"XYZ".index(a): float(v) for a, v in re.findall(r"([XYZ])(-?[\d.]+)", line)}
    return {"set": found, "delta": np.array([found.get(axis, 0.0) for axis in range(3)])}


class FakeLink(Link):
    """Bytes to and from a `FakeController`; its time passes in reads."""

    name = "fake"

    def __init__(self, controller: FakeController) -> None:
        self.controller = controller
        self._clock = FakeClock()
        self.plugged = True
        self.at: list = []  # (time, action)

    @property
    def clock(self) -> FakeClock:
        return self._clock

    def write(self, data: bytes) -> None:
        if not self.plugged:
            raise MachineError("The link is lost.", self.name)
        self.controller.take(data)

    def read(self, timeout: float) -> bytes:
        deadline = self._clock.time + timeout
        while True:
            if not self.plugged:
                raise MachineError("The link is lost.", self.name)
            self._clock.time += STEP
            self.controller.advance(STEP)
            for entry in [entry for entry in self.at if entry[0] <= self._clock.time]:
                self.at.remove(entry)
                entry[1]()
            if self.controller.out:
                data = bytes(self.controller.out)
                self.controller.out.clear()
                return data
            if self._clock.time >= deadline:
                return b""

    def close(self) -> None:
        self.plugged = False

    def unplug(self) -> None:
        self.plugged = False


class Hands(Operator):
    """Does what is asked, at once."""

    def __init__(self, fake: FakeController) -> None:
        self.fake = fake
        self.asked: list = []
        self.refuse: set = set()
        self.deaf: set = set()  # says done, does nothing
        self.before = lambda request: None
        self.jogs: list = []

    def ask(self, request):
        self.asked.append(request)
        request.idle()
        self.before(request)
        if request.kind in self.refuse:
            return Answer(AnswerKind.DECLINED)
        if request.kind in self.deaf:
            return Answer()
        if request.kind is RequestKind.CLIP_ON:
            self.fake.clip, self.fake.clip_on_bit = True, False
        elif request.kind is RequestKind.CLIP_OFF:
            self.fake.clip = self.fake.clip_on_bit = False
        elif request.kind is RequestKind.CLIP_TO_BIT:
            self.fake.clip_on_bit = True
        elif request.kind is RequestKind.JOG_TO and self.jogs:
            step = self.jogs.pop(0)  # None: it is there
            return Answer() if step is None else Answer(AnswerKind.JOG, jog=step)
        return Answer()


class MemoryJournal(RunJournal):
    def __init__(self) -> None:
        self.log: list = []
        self.counts = {"sent": 0, "acknowledged": 0, "executed": 0}
        self.reason = None
        self.run = None

    def begin(self, run) -> None:
        self.run = run
        self.counts = dict.fromkeys(self.counts, run.first)

    def sent(self, first: int, last: int) -> None:
        assert first == self.counts["sent"] <= last
        self.counts["sent"] = last

    def acknowledged(self, n: int) -> None:
        assert self.counts["acknowledged"] <= n <= self.counts["sent"]
        self.counts["acknowledged"] = n

    def executed(self, n: int) -> None:
        assert self.counts["executed"] <= n <= self.counts["acknowledged"]
        self.counts["executed"] = n

    def event(self, text: str) -> None:
        self.log.append(text)

    def end(self, reason: str) -> None:
        self.reason = reason

    def resume_point(self) -> int:
        return self.counts["executed"]


def make_program(path, *, depth: float = 0.1, clearance: float = 2.0, feed: float = 300.0) -> Program:
    """One groove along (N, 2) points."""
    path = np.asarray(path, dtype=float)
    count = len(path)
    kind = [MoveKind.RAPID, MoveKind.RAPID, MoveKind.FEED] + [MoveKind.FEED] * (count - 1) + [MoveKind.RAPID]
    end = np.array(
        [[*path[0], clearance], [*path[0], clearance], [*path[0], -depth]]
        + [[*point, -depth] for point in path[1:]]
        + [[*path[-1], clearance]]
    )
    feeds = np.array([0.0, 0.0, 100.0] + [feed] * (count - 1) + [0.0])
    tag = np.array([-1, -1] + [0] * count + [-1], dtype=np.int32)
    moves = Moves(
        np.array(kind, dtype=np.int8), end, feeds, np.zeros((len(kind), 2)), tag, np.zeros(len(kind))
    )
    written, made = write_lines(kind[1:], end[1:], feeds[1:], start=(None, None, clearance))
    lines = ("G21G90G17G94", "G0Z2", "M3S8000", "G4P1", *written, "M5")
    line_move = np.array([-1, 0, -1, -1, *(made + 1), -1], dtype=np.int32)
    return Program("01-grooves-pass-1", "Grooves, pass 1", BIT, moves, lines, line_move, 60.0, 1)


@pytest.fixture
def new_fake():
    return FakeController


@pytest.fixture
def fake():
    return FakeController()


@pytest.fixture
def link(fake):
    return FakeLink(fake)


@pytest.fixture
def controller(link):
    controller = Controller(link)
    controller.connect()
    return controller


@pytest.fixture
def link_to():
    return FakeLink


@pytest.fixture
def preset():
    return MachinePreset(
        "test",
        (200.0, 200.0, 60.0),
        (1000.0, 1000.0, 500.0),
        (50.0, 50.0, 30.0),
        SpindleKind.BY_HAND,
        (0.0, 1e4),
    )


@pytest.fixture
def hands(fake):
    return Hands(fake)


@pytest.fixture
def place(controller, hands, preset):
    return Workplace(controller, hands, preset)


@pytest.fixture
def journal():
    return MemoryJournal()


@pytest.fixture
def new_journal():
    return MemoryJournal


@pytest.fixture
def groove():
    return make_program
