"""Follows a Gerber file command by command until its end."""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np

from drypoint.board.attributes import AttributeDictionary, Attributes, standard_comment
from drypoint.board.gerber_extended import ExtendedCommands
from drypoint.board.gerber_picture import Picture
from drypoint.board.gerber_plotter import Plotter
from drypoint.board.gerber_state import INCH, GraphicsState
from drypoint.board.gerber_tokens import Command, Lines, UnfinishedError, commands
from drypoint.errors import InputError
from drypoint.progress import Progress
from drypoint.wording import say

_COMMON = re.compile(
    r"(?:G0?([123]))?(?:X([-+]?\d{1,15}))?(?:Y([-+]?\d{1,15}))?"
    r"(?:I([-+]?\d{1,15}))?(?:J([-+]?\d{1,15}))?(?:D0?([123]))?\Z"
)
_SPACED = str.maketrans("XY*", "   ")
_BLANKS = re.compile(r"\s+")
_WORD = re.compile(r"([A-Z])([-+]?[0-9.]*)")
_STEP = 2000  # commands between two signs of life
_END_HINT = "It may be cut off. Copy or export it again; a whole file ends with M02*."


@dataclass(frozen=True, slots=True, eq=False)
class Reading:
    """What a file holds, before shapes are made of it."""

    picture: Picture
    plotter: Plotter
    notes: tuple[Attributes, ...]
    attributes: Attributes
    negative: bool
    warnings: tuple[str, ...]
    lines: Lines


class Interpreter:
    """One run over one file."""

    def __init__(self, tolerance: float) -> None:
        self._state = GraphicsState()
        self._attributes = AttributeDictionary()
        self._plotter = Plotter(self._state, self._attributes, tolerance)
        self._extended = ExtendedCommands(self._state, self._attributes, self._plotter)

    def read(self, text: str, name: str, progress: Progress | None = None) -> Reading:
        """Follow the whole text.

        Raises
        ------
        InputError
            With the file, the line and how far the drawing had come, mm in the file's coordinates.
        """
        lines = Lines(text)
        offset = 0
        try:
            for index, command in enumerate(commands(text)):
                offset = command.offset
                if progress is not None and index % _STEP == 0:
                    progress.step(offset / len(text), "Reading " + name)
                self._follow(command)
                if self._state.ended:
                    break
            if not self._state.ended:
                offset = len(text.rstrip())
                raise InputError("The file has no end.", hint=_END_HINT)
            picture = self._finish(offset)
        except InputError as error:
            if isinstance(error, UnfinishedError):
                offset = error.offset
            where = say("{name}, line {number}", name=name, number=lines.number(offset))
            raise InputError(error.what, where, error.hint, at=self._reached()) from error
        return Reading(
            picture,
            self._plotter,
            tuple(self._plotter.notes),
            self._attributes.file,
            self._state.image.negative,
            self._plotter.notices.texts(lines),
            lines,
        )

    def _finish(self, offset: int) -> Picture:
        if self._plotter.in_region:
            self._plotter.notices.add("The last region has no end; it is ended with the file.", offset)
            self._plotter.end_region(offset)
        self._extended.finish()
        return self._plotter.finish_image()

    def _follow(self, command: Command) -> None:
        if command.kind == "data":
            self._data(command.text, command.offset)
        elif command.kind == "run":
            self._run(command.text, command.offset)
        elif command.kind == "extended":
            inner = self._extended.follow(command.text, command.offset)
            if inner is not None:
                for block in inner.split("*"):
                    self._data(block, command.offset)
        else:
            attribute = standard_comment(command.text)
            if attribute is not None:
                self._attributes.apply(attribute)

    def _run(self, text: str, offset: int) -> None:
        """Many coordinates at once: as one where they are straight edges of a contour."""
        state, format_ = self._state, self._state.format
        stated = text[text.index("*") - 1] == "1" and "D" in text
        if (
            format_ is None
            or format_.trailing
            or state.incremental
            or state.interpolation != 1
            or not self._plotter.in_region
            or not (stated or state.operation == 1)
        ):
            place = 0
            for block in text.split("*")[:-1]:
                bare = block.lstrip()
                self._data(bare, offset + place + len(block) - len(bare))
                place += len(block) + 1
            return
        unit = state.unit or self._plotter.unit()
        plain = text.replace("D01*", " ").replace("D1*", " ").translate(_SPACED)
        numbers = np.fromstring(plain, sep=" ").reshape(-1, 2)
        scale = (10.0 ** format_.x_digits[1], 10.0 ** format_.y_digits[1])
        state.operation = 1
        self._plotter.trace(numbers / scale * unit)

    def _data(self, block: str, offset: int) -> None:
        match = _COMMON.match(block)
        if match is None:
            self._words(_BLANKS.sub("", block), offset)
            return
        g, x, y, i, j, d = match.groups()
        if g is not None:
            self._state.interpolation = int(g)
        if d is not None or x is not None or y is not None or i is not None or j is not None:
            self._operation(x, y, i, j, d, offset)

    def _reached(self) -> tuple[float, float] | None:
        """The last place that was drawn to; none before the first, and none inside a block of its own."""
        drawn = self._state.operation is not None and len(self._plotter.pictures) == 1
        return (self._state.x, self._state.y) if drawn else None

    def _operation(
        self, x: str | None, y: str | None, i: str | None, j: str | None, d: str | None, offset: int
    ) -> None:
        state = self._state
        format_ = state.format
        if format_ is None:
            raise InputError(
                "The file states no coordinate format.", hint="A line such as %FSLAX46Y46*% is missing."
            )
        unit = state.unit or self._plotter.unit()
        at_x = state.x if x is None else format_.value(x, format_.x_digits) * unit
        at_y = state.y if y is None else format_.value(y, format_.y_digits) * unit
        if state.incremental:
            at_x += state.x if x is not None else 0.0
            at_y += state.y if y is not None else 0.0
        toward_x = 0.0 if i is None else format_.value(i, format_.x_digits) * unit
        toward_y = 0.0 if j is None else format_.value(j, format_.y_digits) * unit
        if d is not None:
            state.operation = int(d)
        elif state.operation is None:
            self._plotter.notices.add(
                "A coordinate comes before any operation; it is taken as a move.", offset
            )
            state.operation = 2
        self._plotter.operate(state.operation or 2, at_x, at_y, (toward_x, toward_y), offset)

    def _words(self, block: str, offset: int) -> None:
        """A data command in any form: several G codes, apertures, broken lines, decimal points."""
        if not block:
            return
        words: dict[str, str] = {}
        position = 0
        while (match := _WORD.match(block, position)) is not None:
            position = match.end()
            letter, number = match.groups()
            if letter == "G":
                self._prepare(number, offset)
            elif letter == "M":
                self._stop(number, offset)
            elif letter == "D" and number.isdecimal() and len(number) < 10 and int(number) >= 10:
                self._select(int(number))
            elif letter in "XYIJD":
                words[letter] = number
            elif letter != "N":
                self._unknown(block, offset)
        if position != len(block):
            self._unknown(block, offset)
        operation = words.get("D")
        if operation is not None:
            operation = operation.lstrip("0") or "0"
            if operation not in ("1", "2", "3"):
                self._unknown(block, offset)
                return
        if words:
            x, y, i, j = map(words.get, "XYIJ")
            self._operation(x, y, i, j, operation, offset)

    def _unknown(self, block: str, offset: int) -> None:
        self._plotter.notices.add(
            say("The unknown command “{block}” is passed over.", block=block[:24]), offset
        )

    def _prepare(self, number: str, offset: int) -> None:
        """A G code."""
        state = self._state
        code = int(number) if number.isdecimal() and len(number) < 6 else -1
        if code in (1, 2, 3):
            state.interpolation = code
        elif code in (36, 37):
            (self._plotter.begin_region if code == 36 else self._plotter.end_region)(offset)
        elif code in (74, 75):
            state.quadrant = "single" if code == 74 else "multi"
        elif code in (70, 71):
            state.unit = INCH if code == 70 else 1.0
        elif code in (90, 91):
            state.incremental = code == 91
        elif code not in (0, 4, 54, 55):
            self._unknown("G" + number, offset)
        elif code == 0:  # a move in very old files; the operation code says the same
            state.interpolation = 1

    def _stop(self, number: str, offset: int) -> None:
        """An M code: 0, 2 and 30 end the file, 1 has no effect."""
        code = number.lstrip("0") or "0"
        if code in ("0", "2", "30"):
            self._state.ended = True
        elif code != "1":
            self._unknown("M" + number, offset)

    def _select(self, number: int) -> None:
        aperture = self._state.apertures.get(number)
        if aperture is None:
            raise InputError(
                say("Aperture D{number} is used but not defined.", number=number),
                hint="Export with apertures in the file (RS-274X), not as a separate list.",
            )
        self._state.aperture = aperture
        self._plotter.select()
