"""The moves of a drill file turned into holes and slots, for given units and number format."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field

from drypoint.board.drill_numbers import MM_PER_INCH, NumberFormat, usual
from drypoint.board.drill_statements import Statements
from drypoint.errors import InputError
from drypoint.geometry.arcs import arc_points, centre_of_radius
from drypoint.wording import say

MAX_HITS = 200_000
MAX_POINTS = 2_000_000
"""Of all slots of a file together."""
FARTHEST = 10_000.0
"""mm; a coordinate beyond it is a misread number format, not a board."""

Word = tuple[str, str]
Line = tuple[int, tuple[Word, ...]]
Place = tuple[float, float]

_LINE = re.compile(r"(?:[A-Z][+-]?[0-9.]*)+")
_WORD = re.compile(r"([A-Z])([+-]?[0-9.]*)")


def words_of(line: str) -> tuple[Word, ...] | None:
    """Letter and number pairs of a line; None if it is no line of words."""
    if not _LINE.fullmatch(line):
        return None
    return tuple(_WORD.findall(line))


@dataclass(slots=True)
class Hit:
    """A hole (one place) or a slot (several), mm, with the tool's number and the line."""

    path: tuple[Place, ...]
    tool: int
    line: int
    diameter: float | None = None

    def moved(self, dx: float, dy: float, fx: float, fy: float, swap: bool) -> Hit:
        """A copy for a repeated pattern."""
        path = (((y, x) if swap else (x, y)) for x, y in self.path)
        return Hit(tuple((fx * x + dx, fy * y + dy) for x, y in path), self.tool, self.line, self.diameter)


@dataclass(slots=True)
class Drilling:
    """The state of a drilling machine while it reads a file."""

    said: Statements
    metric: bool
    shape: NumberFormat
    name: str
    place: Place = (0.0, 0.0)
    origin: Place = (0.0, 0.0)
    tool: int | None = None
    routing: bool = False
    move: int = 0
    down: bool = False
    path: list[Place] = field(default_factory=list)
    incremental: bool = False
    patterns: list[int] = field(default_factory=list)
    pattern: tuple[int, int, Place] | None = None
    hits: list[Hit] = field(default_factory=list)
    warnings: list[str] = field(default_factory=list)
    ended: bool = False
    line: int = 0
    points: int = 0

    def run(self, lines: Sequence[Line]) -> None:
        """Read every line.

        Raises
        ------
        InputError
            With file and line, where a line cannot be understood, and how far the holes had come, mm
            in the file's coordinates.
        """
        for number, words in lines:
            self.line = number
            try:
                self._line(words)
            except InputError as error:
                where = error.where or self._where()
                raise InputError(error.what, where, error.hint, at=self._reached()) from None
            if self.ended:
                break
        if self.down:
            self.warnings.append(say("line {line}: the last slot is not closed by M16", line=self.line))
            self._lift()

    def _reached(self) -> Place | None:
        """Where the tool stood; none before the first hole or slot is begun."""
        begun = bool(self.hits or self.path) or self.place != self.origin
        return self.place if begun else None

    def _where(self) -> str:
        return say("{name}, line {line}", name=self.name, line=self.line)

    def _line(self, words: tuple[Word, ...]) -> None:
        first, number = words[0]
        if first == "T":
            self._choose(words)
            return
        if first == "R" and number.isdigit():
            self._repeat(int(number), words[1:])
            return
        coordinates: list[Word] = []
        for index, (letter, text) in enumerate(words):
            if letter == "M":
                if self._machine(_code(text), words[index + 1 :]):
                    return
            elif letter == "G":
                if self._prepare(_code(text), coordinates, words[index + 1 :]):
                    return
            elif letter in "XYIJA":
                coordinates.append((letter, text))
        if coordinates:
            self._go(coordinates)

    def _choose(self, words: tuple[Word, ...]) -> None:
        text = words[0][1]
        if not text.isdigit():
            raise InputError(say("“T{text}” is no tool.", text=text))
        number = int(text)
        tools = self.said.tools
        if number and number not in tools and len(text) == 4 and int(text[:2]) in tools:
            number = int(text[:2])  # two more digits are a compensation number
        if number and number not in tools:
            raise InputError(
                say("Tool T{number} is used but its diameter is not given.", number=number),
                hint="Export the drill file with tools.",
            )
        self.tool = number or None
        rest = [word for word in words[1:] if word[0] in "XY"]
        if rest:
            self._go(rest)

    def _machine(self, code: int, rest: tuple[Word, ...]) -> bool:
        """Whether the code takes the rest of the line."""
        if code == 15:
            self.down, self.path = True, [self.place]
        elif code in (16, 17):
            self._lift()
        elif code == 25:
            self.patterns.append(len(self.hits))
        elif code == 1 and self.patterns:
            self.pattern = (self.patterns.pop(), len(self.hits), (0.0, 0.0))
        elif code == 2:
            self._pattern(rest)
            return True
        elif code == 8:
            self.pattern = None
        elif code in (0, 30):
            self.ended = True
        elif code in (71, 72):
            self._units(code == 71)
        elif code in (97, 98):
            self.warnings.append(say("line {line}: drilled text is left out", line=self.line))
        return False

    def _units(self, metric: bool) -> None:
        if metric != self.metric:
            self.metric, self.shape = metric, usual(metric, self.shape.keep)

    def _prepare(self, code: int, before: list[Word], rest: tuple[Word, ...]) -> bool:
        """Whether the code takes the rest of the line."""
        if code == 85:
            start = self._target(before)
            self.place = start
            stop = self._target([word for word in rest if word[0] in "XY"])
            self.place = stop
            self._slot((start, stop))
            return True
        if code == 84:
            self._circle(before, rest)
            return True
        if code == 93:
            given = dict(rest)
            x, y = (self._number(given.get(axis) or "0") for axis in "XY")
            self.origin, self.place = (x, y), (x, y)
            return True
        if code in (0, 1, 2, 3):
            self.routing, self.move = True, code
        elif code in (5, 81):
            self._lift()
            self.routing = False
        elif code in (90, 91):
            self.incremental = code == 91
        elif code in (41, 42):
            self.warnings.append(
                say("line {line}: cutter compensation is left out, the slot follows the path", line=self.line)
            )
        elif code in (32, 33, 82, 83, 86, 87):
            raise InputError(say("G{code:02d} (a canned pattern) is not understood.", code=code))
        return False

    def _number(self, text: str) -> float:
        value = self.shape.value(text) * (1.0 if self.metric else MM_PER_INCH)
        if abs(value) > FARTHEST:
            raise InputError("A place lies more than 10 m out.", hint="The number format is wrong.")
        return value

    def _target(self, coordinates: Sequence[Word]) -> Place:
        given = {letter: text for letter, text in coordinates if letter in "XY"}
        out = []
        for index, axis in enumerate("XY"):
            if axis not in given:
                out.append(self.place[index])
            elif self.incremental:
                out.append(self.place[index] + self._number(given[axis]))
            else:
                out.append(self.origin[index] + self._number(given[axis]))
        return out[0], out[1]

    def _go(self, coordinates: Sequence[Word]) -> None:
        start, stop = self.place, self._target(coordinates)
        if not self.routing:
            self.place = stop
            self._add((stop,))
            return
        if self.down:
            self._cut(start, stop, dict(coordinates))
        elif self.move in (1, 2, 3) and not self.path:
            self.warnings.append(
                say("line {line}: a cutting move with the tool up is left out", line=self.line)
            )
        self.place = stop

    def _cut(self, start: Place, stop: Place, given: dict[str, str]) -> None:
        if self.move not in (2, 3):
            self.path.append(stop)
            return
        clockwise = self.move == 2
        if "A" in given:
            centre = centre_of_radius(start, stop, self._number(given["A"]), clockwise)
            if centre is None:
                raise InputError("The arc's radius is too small for its ends.")
        elif "I" in given or "J" in given:
            i, j = self._number(given.get("I", "0")), self._number(given.get("J", "0"))
            centre = (start[0] + i, start[1] + j)
        else:
            raise InputError("An arc has neither radius nor centre.")
        points = arc_points(start, stop, centre, clockwise)[1:].tolist()
        self.points += len(points)
        if self.points > MAX_POINTS:
            raise InputError("The slots have too many points.")
        self.path.extend((x, y) for x, y in points)

    def _lift(self) -> None:
        if self.down:
            self._add(tuple(self.path))
        self.down, self.path = False, []

    def _slot(self, path: tuple[Place, ...]) -> None:
        self._add(path)

    def _circle(self, before: Sequence[Word], rest: Sequence[Word]) -> None:
        self.place = self._target(before)
        size = next((text for letter, text in rest if letter == "X"), "")
        tool = self._tool()
        diameter = self.said.tools[tool].diameter * (1.0 if self.metric else MM_PER_INCH)
        radius = (self._number(size) - diameter) / 2.0
        if radius <= 0.0:
            raise InputError("A circle is not larger than its tool.")
        x, y = self.place
        ring = arc_points((x + radius, y), (x + radius, y), self.place, clockwise=False)
        self._add(tuple((float(a), float(b)) for a, b in ring))

    def _tool(self) -> int:
        if self.tool is None:
            raise InputError("A hole comes before any tool is chosen.")
        return self.tool

    def _add(self, path: tuple[Place, ...]) -> None:
        if len(self.hits) >= MAX_HITS:
            raise InputError(say("The file makes more than {max_hits} holes.", max_hits=MAX_HITS))
        moved = tuple(point for k, point in enumerate(path) if k == 0 or point != path[k - 1])
        self.hits.append(Hit(moved, self._tool(), self.line))

    def _repeat(self, count: int, rest: Sequence[Word]) -> None:
        given = dict(rest)
        dx, dy = (self._number(given.get(axis) or "0") for axis in "XY")
        if count > MAX_HITS - len(self.hits):
            raise InputError(say("The file makes more than {max_hits} holes.", max_hits=MAX_HITS))
        for _ in range(count):
            self.place = (self.place[0] + dx, self.place[1] + dy)
            self._add((self.place,))

    def _pattern(self, rest: Sequence[Word]) -> None:
        given = dict(rest)
        if self.pattern is None or not given:
            self.ended = not given
            if given:
                raise InputError("M02 repeats a pattern, but none was recorded.")
            return
        first, last, (sx, sy) = self.pattern
        mirror = [text for letter, text in rest if letter == "M"]
        sx += self._number(given.get("X") or "0")
        sy += self._number(given.get("Y") or "0")
        self.pattern = (first, last, (sx, sy))
        fx, fy = (-1.0 if "80" in mirror else 1.0), (-1.0 if "90" in mirror else 1.0)
        if last - first > MAX_HITS - len(self.hits):
            raise InputError(say("The file makes more than {max_hits} holes.", max_hits=MAX_HITS))
        self.hits += [hit.moved(sx, sy, fx, fy, "70" in mirror) for hit in self.hits[first:last]]


def _code(text: str) -> int:
    if not text.isdigit() or len(text) > 4:
        raise InputError(say("“{text}” is no code.", text=text[:20]))
    return int(text)
