"""Extended commands: format, units, apertures, macros, blocks, repeats, polarity, attributes.

Rules from The Gerber Layer Format Specification, revision 2021.02, chapter 4; the deprecated
commands from its chapter 8.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

from shapely.geometry.base import BaseGeometry

from drypoint.board.aperture_shapes import SIZE_LIMIT, check_size, standard_shape
from drypoint.board.aperture_tools import Aperture
from drypoint.board.attributes import AttributeDictionary
from drypoint.board.gerber_format import CoordinateFormat
from drypoint.board.gerber_picture import Picture
from drypoint.board.gerber_plotter import Plotter
from drypoint.board.gerber_state import INCH, Block, GraphicsState
from drypoint.board.macro_template import Macro
from drypoint.errors import InputError
from drypoint.wording import say

_DATA = re.compile(r"[GDMXYN][-+0-9]")
_BLANKS = re.compile(r"\s+")
_APERTURE = re.compile(r"ADD0*(\d{1,9})([^,]+)(?:,(.*))?\Z")
_BLOCK = re.compile(r"ABD0*(\d{1,9})\Z")
_NUMBER = r"([-+]?(?:\d+\.?\d*|\.\d+))"
_REPEAT = re.compile(rf"SR(?:X(\d{{1,9}}))?(?:Y(\d{{1,9}}))?(?:I{_NUMBER})?(?:J{_NUMBER})?\Z")
_SCALE = re.compile(rf"LS{_NUMBER}\Z")
_ROTATION = re.compile(rf"([LI])R{_NUMBER}\Z")
_AXES = re.compile(rf"(OF|SF|MI)(?:A{_NUMBER})?(?:B{_NUMBER})?\Z")
_HINT = "The file may be damaged: export it again."


@dataclass(frozen=True, slots=True)
class _Open:
    """A block (its aperture number) or a repeat that waits for its end."""

    number: int | None
    copies: tuple[int, int] = (1, 1)
    steps: tuple[float, float] = (0.0, 0.0)


class ExtendedCommands:
    """Follows the commands between percent signs."""

    def __init__(self, state: GraphicsState, attributes: AttributeDictionary, plotter: Plotter) -> None:
        self._state = state
        self._attributes = attributes
        self._plotter = plotter
        self._open: list[_Open] = []
        self._offset = 0
        self._follow: dict[str, Callable[[str], None]] = {
            "FS": self._format, "MO": self._unit, "AD": self._aperture, "AB": self._block,
            "SR": self._repeat, "LP": self._polarity, "LM": self._mirror, "LR": self._rotation,
            "LS": self._scale, "IP": self._image_polarity, "IR": self._rotation, "MI": self._axes,
            "OF": self._axes, "SF": self._axes, "AS": self._axis_select, "IF": self._include,
        }  # fmt: skip

    def follow(self, text: str, offset: int) -> str | None:
        """Follow all commands between one pair of percent signs.

        Returns
        -------
        str or None
            A data command that stood among them, for the caller to follow.

        Raises
        ------
        InputError
            If one cannot be understood or done.
        """
        self._offset = offset
        blocks = text.split("*")
        for index, block in enumerate(blocks):
            command = _BLANKS.sub("", block)
            code = command[:2]
            if code == "AM":
                macro = Macro.parse("*".join([block.lstrip(), *blocks[index + 1 :]]))
                self._state.macros[macro.name] = macro
                return None
            if code in self._follow:
                self._follow[code](command)
            elif code in ("TF", "TA", "TO", "TD"):
                self._attributes.apply(block.strip().replace("\n", "").replace("\r", ""))
            elif code in ("IN", "LN") or not command:
                continue
            elif _DATA.match(command):
                return "*".join(blocks[index:])
            else:
                self._plotter.notices.add(
                    say("The unknown command “{command}” is passed over.", command=command[:24]), offset
                )
        return None

    def finish(self) -> None:
        """The end of the file.

        Raises
        ------
        InputError
            If a block is still open.
        """
        while self._open:
            if self._open[-1].number is not None:
                raise InputError("A block aperture has no end.", hint=_HINT)
            self._end_repeat()

    def _format(self, command: str) -> None:
        self._state.format = CoordinateFormat.parse(command)
        self._state.incremental = self._state.format.incremental

    def _unit(self, command: str) -> None:
        units = {"MOMM": 1.0, "MOIN": INCH}
        if command not in units:
            raise InputError(
                say("The unit “{command}” is unknown.", command=command[:12]),
                hint="MOMM and MOIN are possible.",
            )
        self._state.unit = units[command]

    def _aperture(self, command: str) -> None:
        match = _APERTURE.match(command)
        if match is None:
            raise InputError(
                say("The aperture definition “{command}” cannot be understood.", command=command[:40]),
                hint=_HINT,
            )
        number, name = int(match.group(1)), match.group(2)
        values = _numbers(match.group(3) or "")
        unit = self._plotter.unit()
        macro = self._state.macros.get(name)
        diameter: float | None = None
        build: Callable[[float], BaseGeometry]
        if macro is not None:
            build = partial(macro.shape, values, unit)
        elif name in ("C", "R", "O", "P"):
            build = partial(standard_shape, name, values, unit)
            if name == "C" and len(values) == 1:
                diameter = check_size(values[0] * unit, "An aperture")
        else:
            raise InputError(
                say(
                    "The aperture D{number} needs the macro {name}, which is not defined.",
                    number=number,
                    name=name[:40],
                ),
                hint=_HINT,
            )
        if number in self._state.apertures:
            self._plotter.notices.add(
                say("Aperture D{number} is defined again; both hold, each from its place on.", number=number),
                self._offset,
            )
        self._state.apertures[number] = Aperture(build, diameter, self._attributes.aperture)

    def _block(self, command: str) -> None:
        if command == "AB":
            if not self._open or self._open[-1].number is None:
                raise InputError("A block aperture ends that never began.", hint=_HINT)
            number = self._open.pop().number
            picture = self._plotter.pictures.pop()
            if number is not None:
                self._state.apertures[number] = Block(picture, self._attributes.aperture)
            return
        match = _BLOCK.match(command)
        if match is None:
            raise InputError(
                say("The block aperture “{command}” cannot be understood.", command=command[:40]), hint=_HINT
            )
        self._begin(_Open(int(match.group(1))))

    def _begin(self, opened: _Open) -> None:
        self._open.append(opened)
        self._plotter.pictures.append(Picture(self._plotter.budget))

    def _repeat(self, command: str) -> None:
        match = _REPEAT.match(command)
        if match is None:
            raise InputError(
                say("The step-and-repeat “{command}” cannot be understood.", command=command[:40]), hint=_HINT
            )
        if self._open and self._open[-1].number is None:
            self._end_repeat()
        copies = (int(match.group(1) or 1), int(match.group(2) or 1))
        if min(copies) < 1:
            raise InputError("A step-and-repeat with no copies is impossible.", hint=_HINT)
        if copies == (1, 1):
            return
        unit = self._plotter.unit()
        steps = (float(match.group(3) or 0.0) * unit, float(match.group(4) or 0.0) * unit)
        for step in steps:
            check_size(abs(step) / 100.0, "A repeat step")
        factors = self._state.image.factors
        self._begin(_Open(None, copies, (steps[0] * factors[0], steps[1] * factors[1])))

    def _end_repeat(self) -> None:
        opened = self._open.pop()
        picture = self._plotter.pictures.pop()
        columns, rows = opened.copies
        dx, dy = opened.steps
        shifts = ((column * dx, row * dy) for column in range(columns) for row in range(rows))
        self._plotter.pictures[-1].place(picture, shifts, copies=columns * rows)

    def _polarity(self, command: str) -> None:
        if command not in ("LPD", "LPC"):
            raise InputError(
                say("The polarity “{command}” is unknown.", command=command[:12]),
                hint="LPD and LPC are possible.",
            )
        self._state.dark = command == "LPD"

    def _mirror(self, command: str) -> None:
        mirror = command[2:]
        if mirror not in ("N", "X", "Y", "XY"):
            raise InputError(say("The mirroring “{command}” is unknown.", command=command[:12]), hint=_HINT)
        self._state.mirror = mirror
        self._plotter.select()

    def _rotation(self, command: str) -> None:
        match = _ROTATION.match(command)
        if match is None:
            raise InputError(
                say("The rotation “{command}” is not a number.", command=command[:24]), hint=_HINT
            )
        angle = float(match.group(2))
        if match.group(1) == "I":
            self._state.image.rotation_deg = angle
        else:
            self._state.rotation_deg = angle
            self._plotter.select()

    def _scale(self, command: str) -> None:
        match = _SCALE.match(command)
        scale = float(match.group(1)) if match else 0.0
        if not 0.0 < scale <= SIZE_LIMIT:
            raise InputError(
                say("The scale “{command}” is impossible.", command=command[:24]),
                hint="It must be above zero.",
            )
        self._state.scale = scale
        self._plotter.select()

    def _image_polarity(self, command: str) -> None:
        if command not in ("IPPOS", "IPNEG"):
            raise InputError(
                say("The image polarity “{command}” is unknown.", command=command[:12]),
                hint="POS and NEG are possible.",
            )
        self._state.image.negative = command == "IPNEG"

    def _axes(self, command: str) -> None:
        match = _AXES.match(command)
        if match is None:
            raise InputError(
                say("The command “{command}” cannot be understood.", command=command[:24]), hint=_HINT
            )
        image = self._state.image
        a, b = match.group(2), match.group(3)
        if match.group(1) == "MI":
            image.mirror = (_mirrored(a), _mirrored(b))
        elif match.group(1) == "SF":
            image.scale = (_factor(a), _factor(b))
        else:
            unit = self._plotter.unit()
            image.offset = (float(a or 0.0) * unit, float(b or 0.0) * unit)
            for value in image.offset:
                check_size(abs(value) / 100.0, "An image offset")

    def _axis_select(self, command: str) -> None:
        if command not in ("ASAXBY", "ASAYBX"):
            raise InputError(say("The axes “{command}” are unknown.", command=command[:12]), hint=_HINT)
        self._state.image.swapped = command == "ASAYBX"

    def _include(self, command: str) -> None:
        raise InputError(
            say("The file wants to include another one ({command}).", command=command[2:40]),
            hint="Export one whole file instead.",
        )


def _numbers(text: str) -> tuple[float, ...]:
    try:
        values = tuple(float(word) for word in re.split("[Xx,]", text) if word) if text else ()
    except ValueError:
        raise InputError(
            say("The aperture's parameters “{text}” are not numbers.", text=text[:40]), hint=_HINT
        ) from None
    if len(values) > 1000 or any(not -1e9 < value < 1e9 for value in values):
        raise InputError(
            say("The aperture's parameters “{text}” are impossible.", text=text[:40]), hint=_HINT
        )
    return values


def _mirrored(word: str | None) -> float:
    return -1.0 if word is not None and float(word) == 1.0 else 1.0


def _factor(word: str | None) -> float:
    value = float(word or 1.0)
    if not 0.0 < value <= SIZE_LIMIT:
        raise InputError("The image's scale is impossible.", hint="It must be above zero.")
    return value
