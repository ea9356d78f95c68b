"""Gerber layers: the front door for copper, outline and legend.

The whole of The Gerber Layer Format Specification (revision 2021.02) is read, and the deprecated
forms that old files hold. Shapes are exact but for circles and arcs, which become polylines within
a chord tolerance (half a micrometre unless asked otherwise; vertices lie on the circle). A coarser
tolerance gives fewer vertices: their number goes with its square root.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from drypoint.board.aperture_tools import Tool
from drypoint.board.attributes import Attributes
from drypoint.board.gerber_arcs import CHORD_TOLERANCE
from drypoint.board.gerber_compose import compose, subtract_from_box
from drypoint.board.gerber_format import COORDINATE_LIMIT
from drypoint.board.gerber_interpreter import Interpreter, Reading
from drypoint.board.gerber_picture import (
    DARK,
    EXTRA,
    KIND,
    NOTE,
    OFFSET,
    TOOL,
    VERTEX_LIMIT,
    X0,
    X1,
    Arc,
    Kind,
)  # fmt: skip
from drypoint.board.gerber_shapes import Shapes, build_shapes
from drypoint.board.gerber_source import gerber_text
from drypoint.board.gerber_strokes import Index
from drypoint.errors import InputError
from drypoint.geometry.points import Points, as_points
from drypoint.progress import Progress
from drypoint.wording import say

_KIND_NAMES = {Kind.FLASH: "flash", Kind.LINE: "draw", Kind.ARC: "arc", Kind.REGION: "region"}

NO_NET = "N/C"
"""The name the specification gives to every pad that is alone on its net."""


@dataclass(frozen=True, slots=True, eq=False)
class GerberObject:
    """One graphical object of a layer, in the file's coordinates, mm.

    Attributes
    ----------
    kind : str
        "flash", "draw", "arc" or "region".
    dark : bool
        False if it clears what lies under it.
    path : (N, 2) array
        Centre line of a draw or arc, the place of a flash, the first contour of a region.
    diameter : float or None
        Of a plain round aperture; zero is possible.
    attributes : Attributes
        Object attributes, and those of its aperture.
    line : int
        Where it stands in the file.
    """

    kind: str
    dark: bool
    path: Points
    diameter: float | None
    attributes: Attributes
    line: int
    _shapes: _LayerShapes = field(repr=False)
    _index: int = field(repr=False)

    @property
    def shape(self) -> BaseGeometry:
        """Its own area, whatever lies over it."""
        return self._shapes.all[self._index]  # type: ignore[no-any-return]

    @property
    def net(self) -> str | None:
        """The net it belongs to; None if the file does not say, or says it has none."""
        return self.attributes.first(".N") or None

    @property
    def component(self) -> str | None:
        """Reference designator of the component it belongs to."""
        return self.attributes.first(".P") or self.attributes.first(".C") or None

    @property
    def pin(self) -> str | None:
        """Number or name of the pin it is the pad of."""
        fields = self.attributes.get(".P", ())
        return (fields[1] or None) if len(fields) > 1 else None

    @property
    def function(self) -> str:
        """What its aperture is for, such as ComponentPad or ViaPad; empty if not said."""
        return self.attributes.first(".AperFunction")


class _LayerShapes:
    """The shapes of all objects, built together when the first is asked for."""

    def __init__(self, reading: Reading) -> None:
        self._reading = reading

    @cached_property
    def all(self) -> Shapes:
        picture = self._reading.picture
        return build_shapes(picture.table(), self._reading.plotter.toolbox.tools, picture.extras)


class GerberLayer:
    """One Gerber file as read. Shapes are made when they are asked for, and kept."""

    def __init__(self, name: str, reading: Reading) -> None:
        self.name = name
        self.attributes: Attributes = reading.attributes
        self.warnings: tuple[str, ...] = reading.warnings
        self.negative = reading.negative
        self._reading = reading
        self._rows = reading.picture.table()
        self._shapes = _LayerShapes(reading)

    def __len__(self) -> int:
        return len(self._rows)

    def __repr__(self) -> str:
        return f"<GerberLayer {self.name}: {len(self)} objects>"

    @cached_property
    def objects(self) -> tuple[GerberObject, ...]:
        """All objects in file order, clear ones included."""
        reading = self._reading
        made = []
        for index, row in enumerate(self._rows.tolist()):
            tool = int(row[TOOL])
            made.append(
                GerberObject(
                    kind=_KIND_NAMES[Kind(int(row[KIND]))],
                    dark=row[DARK] > 0.0,
                    path=self._path(row),
                    diameter=reading.plotter.toolbox.tools[tool].diameter if tool >= 0 else None,
                    attributes=reading.notes[int(row[NOTE])],
                    line=reading.lines.number(int(row[OFFSET])),
                    _shapes=self._shapes,
                    _index=index,
                )
            )
        return tuple(made)

    def _path(self, row: list[float]) -> Points:
        if row[EXTRA] >= 0:
            extra = self._reading.picture.extras[int(row[EXTRA])]
            return as_points(extra.points if isinstance(extra, Arc) else extra[0])
        x0, y0, x1, y1 = row[X0 : X1 + 2]
        return as_points([(x0, y0)] if row[KIND] == Kind.FLASH else [(x0, y0), (x1, y1)])

    @cached_property
    def shape(self) -> BaseGeometry:
        """The whole image, polarity composed, mm; empty if nothing is drawn."""
        whole = self._compose(np.zeros(len(self), dtype=np.intp))
        image = whole.get(0, shapely.Polygon())
        return subtract_from_box(image) if self.negative else image

    def _compose(self, groups: Index, progress: Progress | None = None) -> dict[int, BaseGeometry]:
        tools, extras = self._reading.plotter.toolbox.tools, self._reading.picture.extras
        try:
            return compose(self._rows, tools, extras, groups, progress)
        except InputError as error:
            raise InputError(error.what, self.name, error.hint) from error

    def nets(self, progress: Progress | None = None) -> dict[str, BaseGeometry]:
        """Copper of each net that the attributes name, polarity composed; empty if they name none.

        Every pad marked as alone on its net is a net of its own, called "N/C" and its pin. An
        object of several nets (a tie) counts to the first. Copper without a net is left out: see
        ``without_net``.
        """
        names = [_net_key(attributes) for attributes in self._reading.notes]
        if not any(names) or self.negative:
            return {}
        numbers = {name: number for number, name in enumerate(dict.fromkeys(names))}
        by_note = np.array([numbers[name] if name else -1 for name in names], dtype=np.intp)
        groups = by_note[self._rows[:, NOTE].astype(int)]
        copper = self._compose(groups, progress)
        return {name: copper[number] for name, number in numbers.items() if name and number in copper}

    def without_net(self) -> BaseGeometry:
        """Copper of the objects that no attribute gives to a net."""
        free = np.array([-1 if _net_key(item) else 0 for item in self._reading.notes], dtype=np.intp)
        if not len(free):
            return shapely.Polygon()
        groups = free[self._rows[:, NOTE].astype(int)]
        return self._compose(groups).get(0, shapely.Polygon())


def _net_key(attributes: Attributes) -> str:
    net = attributes.first(".N")
    if net != NO_NET:
        return net
    return f"{NO_NET} {'-'.join(attributes.get('.P', ())[:2])}".strip()


def read_gerber(
    source: Path | str | bytes,
    *,
    name: str | None = None,
    tolerance: float = CHORD_TOLERANCE,
    progress: Progress | None = None,
) -> GerberLayer:
    """Read one Gerber layer.

    Parameters
    ----------
    source : path, str or bytes
        A file; or the text itself (a str with a line break or a star); or a file's bytes.
    name : str, optional
        What to call it in messages; the file's name by default.
    tolerance : float
        Largest distance of a chord from its arc, mm.
    progress : Progress, optional
        Told how far the reading is; cancels it.

    Returns
    -------
    GerberLayer
        In the file's coordinates, mm.

    Raises
    ------
    InputError
        With file and line, whatever is wrong with the input.
    """
    if not 1e-6 <= tolerance <= 1.0:
        raise ValueError("the chord tolerance must lie between a nanometre and a millimetre")
    text, name = gerber_text(source, name)
    reading = Interpreter(tolerance).read(text, name, progress)
    _check_extent(reading, name)
    return GerberLayer(name, reading)


def _check_extent(reading: Reading, name: str) -> None:
    """Bound place and size before any shape is made."""
    rows = reading.picture.table()
    far = np.flatnonzero((np.abs(rows[:, X0 : X1 + 2]) > COORDINATE_LIMIT).any(axis=1))
    if len(far):
        line = reading.lines.number(int(rows[far[0], OFFSET]))
        raise InputError(
            "Something is drawn more than a kilometre away.",
            say("{name}, line {line}", name=name, line=line),
            "The file may be damaged.",
        )
    if _vertices(rows, reading.plotter.toolbox.tools) > VERTEX_LIMIT:
        raise InputError(
            say("The layer would have more than {vertex_limit:,} vertices.", vertex_limit=VERTEX_LIMIT),
            name,
            "Read it with a coarser tolerance.",
        )


def _vertices(rows: np.ndarray, tools: list[Tool]) -> int:
    sizes = np.array([tool.vertices for tool in tools] + [0])
    return int(sizes[rows[:, TOOL].astype(int)].sum())
