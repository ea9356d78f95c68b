"""The graphics state of a Gerber file, and the notices gathered while it is read."""

from __future__ import annotations

from dataclasses import dataclass, field

from drypoint.board.aperture_tools import IDENTITY, Aperture, Matrix, product
from drypoint.board.attributes import Attributes
from drypoint.board.gerber_format import CoordinateFormat
from drypoint.board.gerber_picture import Picture
from drypoint.board.gerber_tokens import Lines
from drypoint.board.macro_primitives import exact_turn
from drypoint.board.macro_template import Macro
from drypoint.wording import say

INCH = 25.4
"""mm."""

_MIRRORS: dict[str, Matrix] = {
    "N": IDENTITY,
    "X": (-1.0, 0.0, 0.0, 1.0),
    "Y": (1.0, 0.0, 0.0, -1.0),
    "XY": (-1.0, 0.0, 0.0, -1.0),
}


@dataclass(frozen=True, slots=True, eq=False)
class Block:
    """A block aperture: a picture of its own."""

    picture: Picture
    attributes: Attributes


@dataclass(slots=True)
class ImageParameters:
    """The deprecated commands that place the image as a whole.

    MI and SF act on coordinate data only. AS exchanges the axes, then IR turns the image about the
    origin, then OF moves it.
    """

    mirror: tuple[float, float] = (1.0, 1.0)
    scale: tuple[float, float] = (1.0, 1.0)
    swapped: bool = False
    rotation_deg: float = 0.0
    offset: tuple[float, float] = (0.0, 0.0)
    negative: bool = False

    @property
    def factors(self) -> tuple[float, float]:
        """What coordinates are multiplied by, x and y."""
        return self.mirror[0] * self.scale[0], self.mirror[1] * self.scale[1]

    @property
    def matrix(self) -> Matrix:
        """Axis exchange and rotation of the image."""
        cosine, sine = exact_turn(self.rotation_deg)
        swap: Matrix = (0.0, 1.0, 1.0, 0.0) if self.swapped else IDENTITY
        return product((cosine, -sine, sine, cosine), swap)


@dataclass(slots=True)
class GraphicsState:
    """Everything a command may change and a later one relies on. Positions in mm."""

    x: float = 0.0
    y: float = 0.0
    operation: int | None = None
    interpolation: int = 1
    quadrant: str | None = None
    unit: float | None = None
    format: CoordinateFormat | None = None
    incremental: bool = False
    dark: bool = True
    mirror: str = "N"
    rotation_deg: float = 0.0
    scale: float = 1.0
    aperture: Aperture | Block | None = None
    apertures: dict[int, Aperture | Block] = field(default_factory=dict)
    macros: dict[str, Macro] = field(default_factory=dict)
    image: ImageParameters = field(default_factory=ImageParameters)
    ended: bool = False

    @property
    def matrix(self) -> Matrix:
        """How apertures are transformed: mirrored first, then turned, then scaled."""
        cosine, sine = exact_turn(self.rotation_deg)
        turn = (self.scale * cosine, -self.scale * sine, self.scale * sine, self.scale * cosine)
        return product(turn, _MIRRORS[self.mirror])


class Notices:
    """Warnings by text: where first, and how often."""

    def __init__(self) -> None:
        self._seen: dict[str, tuple[int, int]] = {}

    def add(self, text: str, offset: int) -> None:
        """Note a warning at a place of the text."""
        first, count = self._seen.get(text, (offset, 0))
        self._seen[text] = (first, count + 1)

    def texts(self, lines: Lines) -> tuple[str, ...]:
        """One sentence each, with its line and how often it holds."""
        return tuple(
            say("line {number}: {text}", number=lines.number(offset), text=text)
            + (say(" ({count} times)", count=count) if count > 1 else "")
            for text, (offset, count) in self._seen.items()
        )
