"""Words of the GRBL 1.1 serial protocol: single bytes out, lines in.

Source: the public interface documentation of the protocol (interface, commands, settings, jogging).
Parsing never raises: what cannot be understood becomes `Unknown`, since a garbled line on a cable is
no reason to lose a board.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum
from typing import TypeAlias

Vec: TypeAlias = tuple[float, float, float]
"""x, y, z in the units the controller reports."""

LONGEST_LINE = 80
"""Characters of a line with its end; a longer one is refused (error 11). From memory."""

_LONGEST_INPUT = 4096
"""Bytes without a line end that are kept; more is noise and is dropped."""


class Realtime(Enum):
    """Bytes that are acted on at once, whatever waits in the buffers; they get no reply."""

    RESET = b"\x18"
    STATUS = b"?"
    RESUME = b"~"
    HOLD = b"!"
    DOOR = b"\x84"
    JOG_CANCEL = b"\x85"
    FEED_100 = b"\x90"
    FEED_UP_10 = b"\x91"
    FEED_DOWN_10 = b"\x92"
    FEED_UP_1 = b"\x93"
    FEED_DOWN_1 = b"\x94"
    RAPID_100 = b"\x95"
    RAPID_50 = b"\x96"
    RAPID_25 = b"\x97"
    SPINDLE_100 = b"\x99"
    SPINDLE_UP_10 = b"\x9a"
    SPINDLE_DOWN_10 = b"\x9b"
    SPINDLE_UP_1 = b"\x9c"
    SPINDLE_DOWN_1 = b"\x9d"
    SPINDLE_PAUSE = b"\x9e"


class Phase(Enum):
    """What the controller says it is doing, as it spells it."""

    IDLE = "Idle"
    RUN = "Run"
    HOLD = "Hold"
    JOG = "Jog"
    ALARM = "Alarm"
    DOOR = "Door"
    CHECK = "Check"
    HOME = "Home"
    SLEEP = "Sleep"


@dataclass(frozen=True, slots=True)
class Ok:
    """A line was taken: parsed and, if it moves, buffered. Not: executed."""


@dataclass(frozen=True, slots=True)
class ErrorReply:
    """A line was refused and dropped."""

    code: int


@dataclass(frozen=True, slots=True)
class Alarm:
    """The controller locked itself."""

    code: int


@dataclass(frozen=True, slots=True)
class Banner:
    """The controller has (re)started: nothing unanswered will be answered any more."""

    version: str


@dataclass(frozen=True, slots=True)
class Status:
    """One status report, as sent: fields that were not in it are None.

    Attributes
    ----------
    sub : int or None
        The number behind the state: 0 of a hold means standing still, 1 still slowing down.
    machine, work, offset : Vec or None
        Machine position, work position, and their difference (work = machine - offset).
    overrides : tuple of int or None
        Feed, rapid, spindle in percent.
    pins : frozenset of str
        Inputs that read active: X Y Z limits, P probe, D door, H hold, R reset, S start.
    """

    phase: Phase
    sub: int | None = None
    machine: Vec | None = None
    work: Vec | None = None
    offset: Vec | None = None
    feed: float | None = None
    spindle: float | None = None
    planner_free: int | None = None
    receive_free: int | None = None
    overrides: tuple[int, int, int] | None = None
    pins: frozenset[str] = frozenset()
    accessories: str | None = None
    line: int | None = None


@dataclass(frozen=True, slots=True)
class ProbeReport:
    """Where the last probing move saw its contact, machine coordinates."""

    position: Vec
    touched: bool


@dataclass(frozen=True, slots=True)
class Setting:
    """One numbered setting."""

    number: int
    value: float


@dataclass(frozen=True, slots=True)
class StartupLine:
    """A line stored in the controller that runs after every start."""

    number: int
    line: str


@dataclass(frozen=True, slots=True)
class StartupRun:
    """A stored line was run just now."""

    line: str
    accepted: bool


@dataclass(frozen=True, slots=True)
class Notice:
    """A message in the controller's own words."""

    text: str


@dataclass(frozen=True, slots=True)
class Offset:
    """A stored offset: G54..G59, G28, G30, G92 (x, y, z) or TLO (z only)."""

    name: str
    values: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class Modal:
    """The modal words in force."""

    words: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Version:
    """Version of the firmware and the text stored with it."""

    version: str
    text: str


@dataclass(frozen=True, slots=True)
class Options:
    """How the firmware was built: letters, blocks of the planner, bytes of the receive buffer."""

    codes: str
    planner_blocks: int | None
    receive_bytes: int | None


@dataclass(frozen=True, slots=True)
class Unknown:
    """A line that means nothing to us; garbled, or of a variant."""

    text: str


Reply: TypeAlias = Ok | ErrorReply
Message: TypeAlias = (
    Ok
    | ErrorReply
    | Alarm
    | Banner
    | Status
    | ProbeReport
    | Setting
    | StartupLine
    | StartupRun
    | Notice
    | Offset
    | Modal
    | Version
    | Options
    | Unknown
)


class LineSplitter:
    """Bytes as they arrive → whole lines without their ends; empty ones are left out."""

    def __init__(self) -> None:
        self._rest = b""

    def feed(self, data: bytes) -> list[str]:
        """Lines completed by ``data``."""
        parts = re.split(rb"[\r\n]+", self._rest + data)
        self._rest = parts.pop()[-_LONGEST_INPUT:]
        return [part.decode("latin-1").strip() for part in parts if part.strip()]

    def clear(self) -> None:
        """Forget an unfinished line."""
        self._rest = b""


_DECIMAL = re.compile(r"-?(\d{1,12}\.?\d*|\.\d+)", re.ASCII)
_BANNER = re.compile(r"Grbl (\d\S*) \[")
_SETTING = re.compile(r"\$(\d+)=(-?[\d.]+)")
_STARTUP = re.compile(r"\$N(\d+)=(.*)")
_OFFSET = re.compile(r"\[(G5[4-9]|G28|G30|G92|TLO):([-\d.,]+)\]")


def parse_line(text: str) -> Message:
    """What one line from the controller says.

    A banner is recognised at the end of a garbled line too, since a reset cuts off whatever was
    being sent.
    """
    if text == "ok":
        return Ok()
    if banner := _BANNER.search(text):
        return Banner(banner[1])
    if text.startswith("<"):
        return _status(text)
    if (code := _code(text, "error:")) is not None:
        return ErrorReply(code)
    if (code := _code(text, "ALARM:")) is not None:
        return Alarm(code)
    if setting := _SETTING.match(text):
        value = _number(setting[2])
        return Unknown(text) if value is None else Setting(int(setting[1]), value)
    if startup := _STARTUP.fullmatch(text):
        return StartupLine(int(startup[1]), startup[2])
    if text.startswith(">"):
        line, _, answer = text[1:].rpartition(":")
        return StartupRun(line.removesuffix(":error") if answer != "ok" else line, answer == "ok")
    return _bracketed(text)


def _code(text: str, lead: str) -> int | None:
    rest = text.removeprefix(lead)
    return int(rest) if rest != text and re.fullmatch(r"\d{1,4}", rest, re.ASCII) else None


def _number(text: str) -> float | None:
    return float(text) if _DECIMAL.fullmatch(text) else None


def _vec(text: str) -> Vec | None:
    """The first three numbers of a list; more axes are left out."""
    numbers = [_number(part) for part in text.split(",")]
    if len(numbers) < 3 or numbers[0] is None or numbers[1] is None or numbers[2] is None:
        return None
    return numbers[0], numbers[1], numbers[2]


def _bracketed(text: str) -> Message:
    if not (text.startswith("[") and text.endswith("]")):
        return Unknown(text)
    head, _, body = text[1:-1].partition(":")
    if head == "MSG":
        return Notice(body)
    if head == "GC":
        return Modal(tuple(body.split()))
    if head == "VER":
        version, _, rest = body.partition(":")
        return Version(version, rest)
    if head == "OPT":
        codes, *sizes = body.split(",")
        whole = [int(size) if size.isdecimal() else None for size in sizes] + [None, None]
        return Options(codes, whole[0], whole[1])
    if head == "PRB":
        place, _, flag = body.rpartition(":")
        position = _vec(place)
        return Unknown(text) if position is None or flag not in "01" else ProbeReport(position, flag == "1")
    if offset := _OFFSET.fullmatch(text):
        values = [_number(part) for part in offset[2].split(",")]
        known = tuple(value for value in values if value is not None)
        if len(known) == len(values) and len(known) in ((1,) if offset[1] == "TLO" else (3, 4, 5, 6)):
            return Offset(offset[1], known[:3])
    return Unknown(text)


def _status(text: str) -> Message:
    if not text.endswith(">"):
        return Unknown(text)
    state, *fields = text[1:-1].split("|")
    word, _, sub = state.partition(":")
    try:
        phase = Phase(word)
    except ValueError:
        return Unknown(text)
    values: dict[str, object] = {}
    for field in fields:
        name, _, body = field.partition(":")
        numbers = [_number(part) for part in body.split(",")]
        whole = [None if number is None else int(number) for number in numbers]
        match name:
            case "MPos":
                values["machine"] = _vec(body)
            case "WPos":
                values["work"] = _vec(body)
            case "WCO":
                values["offset"] = _vec(body)
            case "F":
                values["feed"] = numbers[0]
            case "FS" if len(numbers) >= 2:
                values["feed"], values["spindle"] = numbers[0], numbers[1]
            case "Bf" if len(whole) >= 2:
                values["planner_free"], values["receive_free"] = whole[0], whole[1]
            case "Ov" if len(whole) >= 3 and None not in whole[:3]:
                values["overrides"] = tuple(whole[:3])
            case "Ln":
                values["line"] = whole[0]
            case "Pn":
                values["pins"] = frozenset(body)
            case "A":
                values["accessories"] = body
    if values.get("machine") is None and values.get("work") is None:
        return Unknown(text)
    return Status(phase, int(sub) if sub.isdecimal() else None, **values)  # type: ignore[arg-type]
