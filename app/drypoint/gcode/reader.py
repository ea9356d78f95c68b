"""Ready-made programs read into plain moves: parsed and understood, never passed through.

The language is RS-274 as in NISTIR 6556 (RS274/NGC), as far as a three-axis engraver needs it.
What could move the machine otherwise than the moves say is refused.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from drypoint.errors import InputError
from drypoint.gcode.blocks import Block, bare, block_of
from drypoint.gcode.moves import GMove, GProgram, Vector
from drypoint.gcode.refused import PLAIN, REFUSED
from drypoint.geometry.arcs import centre_of_radius, sweep
from drypoint.wording import say

MM_PER_INCH = 25.4
ARC_SLACK_MM, ARC_SLACK_INCH = 0.002, 0.0002 * MM_PER_INCH
"""mm; how far the radii at an arc's ends may differ (NISTIR 6556, 3.5.3)."""
PECK_CLEARANCE = 0.254
"""mm; how far above the last peck a G83 cycle comes back to (0.010 inch, NISTIR 6556, 3.5.16)."""
MAX_MOVES = 5_000_000
MAX_REPEATS = 10_000
FARTHEST = 1e5


def read_gcode(text: str, *, name: str = "program", start: Vector = (0.0, 0.0, 0.0)) -> tuple[GMove, ...]:
    """The moves of a program; see `read_program`."""
    return read_program(text, name=name, start=start).moves


def read_program(text: str, *, name: str = "program", start: Vector = (0.0, 0.0, 0.0)) -> GProgram:
    """Read a program.

    Parameters
    ----------
    text : str
        Its lines.
    name : str
        What to call it in messages.
    start : (x, y, z)
        Where the machine stands when it begins, mm.

    Raises
    ------
    InputError
        With file and line: what is not understood, or refused.
    """
    if not text.strip():
        raise InputError("The program is empty.", name)
    if "\x00" in text:
        raise InputError("The program is binary, not text.", name)
    interpreter = _Interpreter(start)
    for number, line in enumerate(text.splitlines(), 1):
        try:
            if interpreter.run(line, number):
                break
        except InputError as error:
            raise InputError(
                error.what, say("{name}, line {number}", name=name, number=number), error.hint
            ) from None
    if not interpreter.read_any:
        raise InputError("This is no RS-274 program.", name, "Choose a G-code file.")
    return GProgram(tuple(interpreter.moves), tuple(interpreter.warnings()))


@dataclass(slots=True)
class _Interpreter:
    """Modal state, and the moves so far."""

    position: Vector
    moves: list[GMove] = field(default_factory=list)
    parameters: dict[int, float] = field(default_factory=dict)
    unit: float = 1.0
    units_stated: bool = False
    incremental: bool = False
    inverse_time: bool = False
    motion: float | None = None
    feed: float = 0.0
    feedless: int = 0
    spindle: str = "off"
    speed: float = 0.0
    chosen: int = 0
    tool: int = 0
    return_to_r: bool = False
    cycle: dict[str, float] = field(default_factory=dict)
    offset: Vector = (0.0, 0.0, 0.0)
    saved_offset: Vector = (0.0, 0.0, 0.0)
    line: int = 0
    read_any: bool = False

    def warnings(self) -> list[str]:
        out = []
        if not self.units_stated:
            out.append("the program does not state its units: read as millimetres")
        if self.feedless:
            out.append(say("line {feedless}: a cutting move comes before any feed", feedless=self.feedless))
        return out

    def run(self, line: str, number: int) -> bool:
        """One line; whether the program ends with it."""
        self.line = number
        text = bare(line)
        if text in ("", "%"):
            return False
        block = block_of(text, self.parameters)
        self.read_any = self.read_any or bool(block.g or block.m or block.words or block.settings)
        for code in block.g.values():
            if code in REFUSED:
                raise InputError(REFUSED[code], hint=PLAIN)
        self._modes(block)
        self._machine(block)
        self._offsets(block)
        self._move(block)
        self.parameters.update(block.settings)
        return 2 in block.m or 30 in block.m

    def _modes(self, block: Block) -> None:
        if (code := block.g.get("units")) is not None:
            self.unit, self.units_stated = (MM_PER_INCH if code == 20 else 1.0), True
        if (code := block.g.get("feed mode")) is not None:
            self.inverse_time, self.feed = code == 93, 0.0
        if (code := block.g.get("distance")) is not None:
            self.incremental = code == 91
        if (code := block.g.get("cycle return")) is not None:
            self.return_to_r = code == 99
        if "F" in block.words:
            if block.words["F"] < 0.0:
                raise InputError("A feed cannot be negative.")
            self.feed = block.words["F"] * (1.0 if self.inverse_time else self.unit)
        for letter in "ABC":
            if letter in block.words:
                raise InputError(say("The {letter} axis does not exist on this machine.", letter=letter))

    def _machine(self, block: Block) -> None:
        if "S" in block.words:
            self.speed = block.words["S"]
            if self.speed < 0.0:
                raise InputError("A spindle speed cannot be negative.")
        if "T" in block.words:
            number = block.words["T"]
            if number < 0 or number != int(number):
                raise InputError("A tool's number must be a whole number.")
            self.chosen = int(number)
        if 6 in block.m:
            self.tool = self.chosen
        for code, state in ((3, "cw"), (4, "ccw"), (5, "off")):
            if code in block.m:
                self.spindle = state

    def _offsets(self, block: Block) -> None:
        code = block.g.get("non-modal")
        if code == 4:
            seconds = block.words.get("P", -1.0)
            if seconds < 0.0:
                raise InputError("A dwell needs P, its time in seconds.")
            self._add("dwell", self.position, seconds=seconds)
        elif code == 92:
            here = [p - o for p, o in zip(self.position, self.offset, strict=True)]
            if not any(axis in block.words for axis in "XYZ"):
                raise InputError("G92 needs at least one axis.")
            named = [
                block.words[axis] * self.unit if axis in block.words else value
                for axis, value in zip("XYZ", here, strict=True)
            ]
            x, y, z = (p - n for p, n in zip(self.position, named, strict=True))
            self.offset = self.saved_offset = (x, y, z)
        elif code in (92.1, 92.2):
            self.offset = (0.0, 0.0, 0.0)
            if code == 92.1:
                self.saved_offset = self.offset
        elif code == 92.3:
            self.offset = self.saved_offset

    def _move(self, block: Block) -> None:
        stated = block.g.get("motion")
        axes = any(axis in block.words for axis in "XYZ")
        if block.g.get("non-modal") in (4, 92, 92.1, 92.2, 92.3):
            if stated not in (None, 80):
                raise InputError(
                    say(
                        "G{stated:g} and G{g:g} both want the line's words.",
                        stated=stated,
                        g=block.g["non-modal"],
                    )
                )
            return
        if stated is not None:
            if stated != self.motion:
                self.cycle = {}
            self.motion = stated
        if not axes and not (stated in (2, 3) and ("I" in block.words or "J" in block.words)):
            if stated in (2, 3):
                raise InputError("An arc has neither end nor centre.")
            return
        if self.motion is None or self.motion == 80:
            raise InputError("There are places but no motion is chosen (G0, G1, G2 or G3).")
        if self.motion in (81, 82, 83):
            self._drill(block)
        elif self.motion in (2, 3):
            self._arc(block)
        else:
            self._add("rapid" if self.motion == 0 else "feed", self._target(block))

    def _target(self, block: Block) -> Vector:
        out = []
        for axis, here, shift in zip("XYZ", self.position, self.offset, strict=True):
            if axis not in block.words:
                out.append(here)
            else:
                value = block.words[axis] * self.unit
                out.append(here + value if self.incremental else shift + value)
        return out[0], out[1], out[2]

    def _arc(self, block: Block) -> None:
        stop, clockwise = self._target(block), self.motion == 2
        start2, stop2 = self.position[:2], stop[:2]
        words = block.words
        if "K" in words:
            raise InputError("K belongs to arcs of another plane.")
        if "R" in words and ("I" in words or "J" in words):
            raise InputError("An arc has both a radius and a centre.")
        if "X" not in words and "Y" not in words and "R" in words:
            raise InputError("An arc by radius needs an end.")
        if "R" in words:
            centre = centre_of_radius(start2, stop2, words["R"] * self.unit, clockwise)
            if centre is None:
                raise InputError("No arc of this radius joins the two places.")
        elif "I" in words or "J" in words:
            i, j = words.get("I", 0.0) * self.unit, words.get("J", 0.0) * self.unit
            centre = (start2[0] + i, start2[1] + j)
            slack = ARC_SLACK_MM if self.unit == 1.0 else ARC_SLACK_INCH
            first, last = math.dist(start2, centre), math.dist(stop2, centre)
            if first < 1e-9 or abs(first - last) > slack:
                raise InputError(
                    say(
                        "The arc's ends lie at {first:.4f} and {last:.4f} mm from its centre.",
                        first=first,
                        last=last,
                    ),
                    hint="They must be equal; the program may have been rounded or shortened.",
                )
        else:
            raise InputError("An arc has neither radius nor centre.")
        length = abs(sweep(start2, stop2, centre, clockwise)) * math.dist(start2, centre)
        length = math.hypot(length, stop[2] - self.position[2])
        self._add("arc_cw" if clockwise else "arc_ccw", stop, centre=centre, length=length)

    def _drill(self, block: Block) -> None:
        """Canned cycles written out as moves (NISTIR 6556, 3.5.16)."""
        words = block.words
        for letter in "RZQP":
            if letter in words:
                self.cycle[letter] = words[letter] * (1.0 if letter == "P" else self.unit)
        repeats = words.get("L", 1.0)
        if repeats != int(repeats) or not 1 <= repeats <= MAX_REPEATS:
            raise InputError(say("L must be a whole number up to {max_repeats}.", max_repeats=MAX_REPEATS))
        if "R" not in self.cycle or "Z" not in self.cycle:
            raise InputError("A drilling cycle needs R and Z.")
        before = self.position[2]
        if self.incremental:
            clear = before + self.cycle["R"] if "R" in words or not self._cycling else self._clear
            bottom = clear + self.cycle["Z"]
        else:
            clear, bottom = self.offset[2] + self.cycle["R"], self.offset[2] + self.cycle["Z"]
        if bottom > clear:
            raise InputError("A drilling cycle's Z lies above its R.")
        back = clear if self.return_to_r else max(before, clear)
        if before < clear:
            self._rapid(self.position[0], self.position[1], clear)
        for _ in range(int(repeats)):
            x, y, _ = self._target(block)
            self._rapid(x, y, self.position[2])
            self._rapid(x, y, clear)
            self._plunge(x, y, clear, bottom)
            self._rapid(x, y, back)
        self.cycle["clear"] = clear

    @property
    def _cycling(self) -> bool:
        return "clear" in self.cycle

    @property
    def _clear(self) -> float:
        return self.cycle["clear"]

    def _plunge(self, x: float, y: float, clear: float, bottom: float) -> None:
        if self.motion == 83:
            peck = self.cycle.get("Q", 0.0)
            if peck <= 0.0:
                raise InputError("G83 needs Q, the depth of a peck.")
            if (clear - bottom) / peck > MAX_REPEATS:
                raise InputError("G83 would make too many pecks.")
            depth = clear - peck
            while depth > bottom + 1e-9:
                self._add("feed", (x, y, depth))
                self._rapid(x, y, clear)
                self._rapid(x, y, min(clear, depth + PECK_CLEARANCE))
                depth -= peck
        self._add("feed", (x, y, bottom))
        if self.motion == 82 and self.cycle.get("P", 0.0) > 0.0:
            self._add("dwell", self.position, seconds=self.cycle["P"])

    def _rapid(self, x: float, y: float, z: float) -> None:
        if (x, y, z) != self.position:
            self._add("rapid", (x, y, z))

    def _add(
        self,
        kind: str,
        end: Vector,
        *,
        centre: tuple[float, float] | None = None,
        seconds: float = 0.0,
        length: float | None = None,
    ) -> None:
        if len(self.moves) >= MAX_MOVES:
            raise InputError(say("The program has more than {max_moves} moves.", max_moves=MAX_MOVES))
        if max(abs(value) for value in end) > FARTHEST:
            raise InputError("A place lies more than 100 m out.")
        feed = 0.0
        if kind in ("feed", "arc_cw", "arc_ccw"):
            feed = self.feed
            if self.inverse_time:
                feed *= math.dist(self.position, end) if length is None else length
            self.feedless = self.feedless or (self.line if feed <= 0.0 and end != self.position else 0)
        self.moves.append(
            GMove(kind, end, feed, centre, self.line, self.spindle, self.speed, self.tool, seconds)
        )
        self.position = end
