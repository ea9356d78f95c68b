"""G-code as the controller understands it: modal groups, checks in the order of RS-274, error numbers.

Groups and order of execution follow NISTIR 6556 (RS-274/NGC), tables 4 and 8; the supported words
and the error numbers are those of the open serial protocol, version 1.1.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace

from drypoint.bench import words as w
from drypoint.bench.memory import ORIGIN, Memory, triple
from drypoint.bench.modal import INCH, Modal
from drypoint.bench.planner import Triple
from drypoint.bench.words import Refused

_G_GROUP: dict[float, int] = {
    **dict.fromkeys((4, 10, 28, 28.1, 30, 30.1, 53, 92, 92.1), 0),
    **dict.fromkeys((0, 1, 2, 3, 38.2, 38.3, 38.4, 38.5, 80), 1),
    **dict.fromkeys((17, 18, 19), 2),
    **dict.fromkeys((90, 91), 3),
    91.1: 4,
    **dict.fromkeys((93, 94), 5),
    **dict.fromkeys((20, 21), 6),
    40: 7,
    **dict.fromkeys((43.1, 49), 8),
    **dict.fromkeys((54, 55, 56, 57, 58, 59), 12),
    61: 13,
}
_M_GROUP: dict[float, int] = {
    **dict.fromkeys((0, 1, 2, 30), 4),
    **dict.fromkeys((3, 4, 5), 7),
    **dict.fromkeys((8, 9), 8),
}
_AXIS_ACTIONS = (10, 28, 28.1, 30, 30.1, 92)
_PLANES: dict[float, tuple[int, int, int]] = {17: (0, 1, 2), 18: (2, 0, 1), 19: (1, 2, 0)}
_VALUES = "FIJKLNPRSTXYZ"
PROBES = (38.2, 38.3, 38.4, 38.5)


@dataclass(slots=True)
class Arc:
    """Centre (in-plane, machine coordinates), radius and sense of an arc."""

    centre: tuple[float, float]
    radius: float
    clockwise: bool
    axes: tuple[int, int, int]


@dataclass(slots=True)
class Parsed:
    """A line that passed every check; what to do, in the standard's order."""

    modal: Modal
    spindle_changed: bool = False
    coolant_changed: bool = False
    dwell: float | None = None
    action: float | None = None
    """Non-modal G word that uses axis words (10, 28, 28.1, 30, 30.1, 92) or 92.1, 43.1, 49."""
    place: str = ""
    value: Triple = ORIGIN
    """New offset or intermediate point, machine coordinates."""
    go: bool = False
    """G28/G30 with an intermediate point."""
    motion: float | None = None
    target: Triple = ORIGIN
    arc: Arc | None = None
    feed: float = 0.0
    inverse_time: bool = False
    flow: float | None = None
    offsets_changed: bool = False


@dataclass(slots=True)
class Parser:
    """Reads lines against a modal state, a position and the offsets in force."""

    memory: Memory
    modal: Modal = field(default_factory=Modal)
    position: Triple = ORIGIN
    """Machine coordinates at the end of everything accepted so far, mm."""
    g92: Triple = ORIGIN
    tool_length: float = 0.0

    def reset(self) -> None:
        """Modal defaults; G92 and tool length are forgotten."""
        self.modal, self.g92, self.tool_length = Modal(), ORIGIN, 0.0

    def offset(self, place: int | None = None) -> Triple:
        """Work offset in force (WCO): G5x + G92 + tool length, mm."""
        base = self.memory.places[f"G{place or self.modal.place}"]
        g92 = self.g92
        return (base[0] + g92[0], base[1] + g92[1], base[2] + g92[2] + self.tool_length)

    def read(self, line: str, *, jog: bool = False) -> Parsed:
        """Check one cleaned line.

        Raises
        ------
        Refused
            With the protocol's number; nothing has changed then.
        """
        return _Reading(self, line, jog).result()


class _Reading:
    """One line being checked."""

    def __init__(self, parser: Parser, line: str, jog: bool) -> None:
        self.parser = parser
        self.jog = jog
        self.g: dict[int, float] = {}
        self.m: dict[int, float] = {}
        self.values: dict[str, float] = {}
        for letter, value in w.split(line):
            self._sort(letter, value)
        self.axes = [axis for axis in "XYZ" if axis in self.values]

    def _sort(self, letter: str, value: float) -> None:
        if letter in "GM":
            table, groups = (_G_GROUP, self.g) if letter == "G" else (_M_GROUP, self.m)
            value = round(value, 1) if letter == "G" else value
            if value not in table:
                integer = letter == "M" and value != int(value)
                raise Refused(w.NEEDS_INTEGER if integer else w.UNSUPPORTED)
            if table[value] in groups:
                raise Refused(w.GROUP_CLASH)
            groups[table[value]] = value
            return
        if letter not in _VALUES:
            raise Refused(w.UNSUPPORTED)
        if letter in self.values:
            raise Refused(w.REPEATED)
        if letter in "FNPTS" and value < 0.0:
            raise Refused(w.NEGATIVE)
        self.values[letter] = value

    def result(self) -> Parsed:
        old = self.parser.modal
        if self.jog:
            self._check_jog()
        number = self.values.pop("N", None)
        if number is not None and not (number == int(number) and number <= 9_999_999):
            raise Refused(w.BAD_LINE_NUMBER)
        action = self._axis_command()
        self.unit = INCH if self.g.get(6, old.units) == 20 else 1.0
        modal = self._modal(old)
        done = Parsed(modal)
        done.spindle_changed = 7 in self.m or modal.speed != old.speed
        done.coolant_changed = modal.coolant != old.coolant
        done.flow = self.m.get(4)
        if self.g.get(0) == 4:
            done.dwell = self._need("P")
        done.offsets_changed = 12 in self.g
        self._tool_length(done)
        if action is not None:
            self._act(done, action)
        elif self.g.get(0) == 92.1:
            done.action, done.offsets_changed = 92.1, True
        self._move(done, action)
        self.values.pop("T", None)
        if any(letter not in "XYZ" or self.axes for letter in self.values):
            raise Refused(w.UNUSED_WORDS)
        return done

    def _check_jog(self) -> None:
        allowed = {0: (53,), 3: (90, 91), 6: (20, 21)}
        for group, value in self.g.items():
            if value not in allowed.get(group, ()):
                raise Refused(w.BAD_JOG)
        if self.m or set(self.values) - set("XYZFN"):
            raise Refused(w.BAD_JOG)
        if "F" not in self.values:
            raise Refused(w.NO_FEED)
        if not self.axes_given():
            raise Refused(w.NO_AXIS_WORDS)

    def axes_given(self) -> bool:
        return any(axis in self.values for axis in "XYZ")

    def _axis_command(self) -> float | None:
        """The non-modal command that takes the axis words, if any; refuses two takers."""
        action = self.g.get(0)
        action = action if action in _AXIS_ACTIONS else None
        takers = (action is not None) + (1 in self.g and self.g[1] != 80)
        takers += self.g.get(8) == 43.1
        if takers > 1:
            raise Refused(w.TWO_AXIS_COMMANDS)
        return action

    def _modal(self, old: Modal) -> Modal:
        g, values = self.g, self.values
        feed_mode = g.get(5, old.feed_mode)
        feed = old.feed if feed_mode == old.feed_mode else 0.0
        if feed_mode == 93:
            feed = values.pop("F", 0.0)
        elif "F" in values:
            feed = values.pop("F") * self.unit
        tool = values.get("T", old.tool)
        if tool != int(tool):
            raise Refused(w.NEEDS_INTEGER)
        if tool > 255:
            raise Refused(w.BAD_TOOL)
        if not (g or self.m or len(values) > len(self.axes)):
            return old if feed == old.feed else replace(old, feed=feed)
        return replace(
            old,
            motion=g.get(1, old.motion),
            place=int(g.get(12, old.place)),
            plane=g.get(2, old.plane),
            units=g.get(6, old.units),
            distance=g.get(3, old.distance),
            feed_mode=feed_mode,
            spindle=self.m.get(7, old.spindle),
            coolant=self.m.get(8, old.coolant),
            tool=int(tool),
            feed=feed,
            speed=values.pop("S", old.speed),
        )

    def _need(self, letter: str) -> float:
        if letter not in self.values:
            raise Refused(w.VALUE_MISSING)
        return self.values.pop(letter)

    def _tool_length(self, done: Parsed) -> None:
        choice = self.g.get(8)
        if choice == 43.1:
            if self.axes != ["Z"]:
                raise Refused(w.TOOL_LENGTH_AXIS)
            done.action, done.value = 43.1, (0.0, 0.0, self.values.pop("Z") * self.unit)
            self.axes, done.offsets_changed = [], True
        elif choice == 49:
            done.action, done.offsets_changed = 49, True

    def _take_axes(self) -> dict[int, float]:
        taken = {"XYZ".index(axis): self.values.pop(axis) * self.unit for axis in self.axes}
        self.axes = []
        return taken

    def _act(self, done: Parsed, action: float) -> None:
        parser = self.parser
        done.action = action
        if action == 10:
            self._set_place(done)
        elif action == 92:
            given = self._take_axes()
            if not given:
                raise Refused(w.NO_AXIS_WORDS)
            base = parser.memory.places[f"G{done.modal.place}"]
            value = list(parser.g92)
            for axis, wanted in given.items():
                length = parser.tool_length if axis == 2 else 0.0
                value[axis] = parser.position[axis] - base[axis] - length - wanted
            done.value, done.offsets_changed = triple(value), True
        elif action in (28.1, 30.1):
            done.place = f"G{int(action)}"
        else:
            done.place = f"G{int(action)}"
            done.go = bool(self.axes)
            if done.go:
                done.value = self._target(done.modal, self._take_axes())

    def _set_place(self, done: Parsed) -> None:
        parser, kind, which = self.parser, self._need("L"), self._need("P")
        given = self._take_axes()
        if not given:
            raise Refused(w.NO_AXIS_WORDS)
        if which != int(which) or kind not in (2, 20):
            raise Refused(w.NEEDS_INTEGER if which != int(which) else w.UNSUPPORTED)
        if which > 6:
            raise Refused(w.BAD_COORDINATES)
        number = done.modal.place if which == 0 else 53 + int(which)
        done.place = f"G{number}"
        value = list(parser.memory.places[done.place])
        for axis, wanted in given.items():
            if kind == 20:
                length = parser.tool_length if axis == 2 else 0.0
                wanted = parser.position[axis] - parser.g92[axis] - length - wanted  # noqa: PLW2901
            value[axis] = wanted
        done.value, done.offsets_changed = triple(value), True

    def _target(self, modal: Modal, given: dict[int, float]) -> Triple:
        position = list(self.parser.position)
        offset = ORIGIN if self.g.get(0) == 53 else self.parser.offset(modal.place)
        for axis, value in given.items():
            if modal.distance == 91 and self.g.get(0) != 53:
                position[axis] += value
            else:
                position[axis] = value + offset[axis]
        return triple(position)

    def _move(self, done: Parsed, action: float | None) -> None:
        modal = done.modal
        motion = 1.0 if self.jog else modal.motion
        absolute = self.g.get(0) == 53
        if absolute and motion not in (0, 1):
            raise Refused(w.G53_MOTION)
        explicit = 1 in self.g and motion != 80
        if action is not None or self.g.get(8) == 43.1:
            return
        if motion == 80:
            if self.axes:
                raise Refused(w.AXIS_WORDS_G80)
            return
        if not self.axes:
            if explicit and motion not in (0, 1):
                raise Refused(w.NO_AXIS_WORDS)
            if motion not in (2, 3) or not ({"I", "J", "K", "R"} & set(self.values)):
                return
        if motion != 0:
            done.inverse_time = modal.feed_mode == 93
            if modal.feed <= 0.0:
                raise Refused(w.NO_FEED)
        axes = {"XYZ".index(axis) for axis in self.axes}
        done.motion, done.feed = motion, modal.feed
        done.target = self._target(modal, self._take_axes())
        if motion in (2, 3):
            self._arc(done, axes)
        elif motion in PROBES and done.target == self.parser.position:
            raise Refused(w.BAD_TARGET)

    def _arc(self, done: Parsed, axes: set[int]) -> None:
        first, second, linear = _PLANES[done.modal.plane]
        if not axes & {first, second}:
            raise Refused(w.NO_PLANE_WORDS)
        start = self.parser.position
        dx, dy = done.target[first] - start[first], done.target[second] - start[second]
        clockwise = done.motion == 2
        if "R" in self.values:
            radius = self.values.pop("R") * self.unit
            i, j = _centre_offset(dx, dy, radius, clockwise)
            radius = abs(radius)
        else:
            names = ("IJK"[first], "IJK"[second])
            if not any(name in self.values for name in names):
                raise Refused(w.NO_OFFSETS)
            i, j = (self.values.pop(name, 0.0) * self.unit for name in names)
            radius = math.hypot(i, j)
            _check_radius(math.hypot(dx - i, dy - j), radius)
        centre = (start[first] + i, start[second] + j)
        done.arc = Arc(centre, radius, clockwise, (first, second, linear))


def _centre_offset(dx: float, dy: float, radius: float, clockwise: bool) -> tuple[float, float]:
    """Start to centre of an arc given by its radius (negative: more than half a turn)."""
    chord2 = dx * dx + dy * dy
    if chord2 == 0.0:
        raise Refused(w.BAD_TARGET)
    rest = 4.0 * radius * radius - chord2
    if rest < 0.0:
        raise Refused(w.ARC_RADIUS)
    share = -math.sqrt(rest / chord2)
    if not clockwise:
        share = -share
    if radius < 0.0:
        share = -share
    return 0.5 * (dx - dy * share), 0.5 * (dy + dx * share)


def _check_radius(end: float, radius: float) -> None:
    """Refuse an arc whose end is off the circle by more than 0.005 mm and 0.1 %, or 0.5 mm."""
    error = abs(end - radius)
    if error > 0.5 or (error > 0.005 and error > 0.001 * radius):
        raise Refused(w.BAD_TARGET)
