"""Moves, draws, arcs, flashes and regions: the operations that put objects into a picture."""

from __future__ import annotations

import math

import numpy as np

from drypoint.board.aperture_tools import IDENTITY, Toolbox
from drypoint.board.attributes import NO_ATTRIBUTES, AttributeDictionary, Attributes
from drypoint.board.gerber_arcs import arc_points, quarter_centre, sweep_angle
from drypoint.board.gerber_format import COORDINATE_LIMIT
from drypoint.board.gerber_picture import Arc, Budget, Kind, Picture
from drypoint.board.gerber_state import Block, GraphicsState, Notices
from drypoint.errors import InputError
from drypoint.geometry.points import Points

_BLOCK_FINENESS = 0.25
"""Arcs inside a block are cut this much finer, for LS may enlarge the block."""

_RADIUS_MISMATCH = 0.02
"""mm. Beyond what rounding of coordinates explains in the coarsest formats still in use (2.3 inch)."""


class Plotter:
    """Follows operations; knows where the objects go."""

    def __init__(self, state: GraphicsState, attributes: AttributeDictionary, tolerance: float) -> None:
        self.state = state
        self.toolbox = Toolbox(tolerance)
        self.budget = Budget()
        self.pictures = [Picture(self.budget)]
        self.notes: list[Attributes] = []
        self.notices = Notices()
        self._attributes = attributes
        self._note_numbers: dict[tuple[int, int], int] = {}
        self._note_sources: list[tuple[Attributes, Attributes]] = []
        self._contours: list[Points] | None = None
        self._contour: list[tuple[float, float]] = []
        self._tool = -1

    @property
    def in_region(self) -> bool:
        """Whether a region is being drawn."""
        return self._contours is not None

    def unit(self) -> float:
        """mm per file unit.

        Raises
        ------
        InputError
            Where the file does not say: a guess would be 25 times too large or too small.
        """
        if self.state.unit is None:
            raise InputError(
                "The file does not state its unit.", hint="Export the layer again with its unit, mm or inch."
            )
        return self.state.unit

    def select(self) -> None:
        """The aperture or its transformation has changed."""
        self._tool = -1

    def operate(self, code: int, x: float, y: float, centre_offset: tuple[float, float], offset: int) -> None:
        """D01, D02 or D03 to (x, y), mm.

        Raises
        ------
        InputError
            If it cannot be done, such as a draw without an aperture.
        """
        state = self.state
        if code == 1:
            if state.interpolation == 1:
                self._line(x, y, offset)
            else:
                self._arc(x, y, centre_offset, offset)
        elif code == 3:
            self._flash(x, y, offset)
        elif self._contours is not None:
            self._end_contour(offset)
        state.x = x
        state.y = y

    def _mapped(self, x: float, y: float) -> tuple[float, float]:
        fx, fy = self.state.image.factors
        return x * fx, y * fy

    def _number(self) -> int:
        """The current tool's number."""
        if self._tool < 0:
            aperture = self.state.aperture
            if aperture is None:
                raise InputError(
                    "Something is drawn before an aperture is chosen.", hint="Export the file again."
                )
            if isinstance(aperture, Block):
                raise InputError("A block aperture cannot draw lines.", hint="It can only be flashed.")
            self._tool = self.toolbox.number(aperture, self.state.matrix)
        return self._tool

    def _note(self, aperture: Attributes) -> int:
        """The number of the attributes an object gets."""
        return self._intern(self._attributes.objects, aperture)

    def _intern(self, first: Attributes, second: Attributes) -> int:
        key = (id(first), id(second))
        number = self._note_numbers.get(key)
        if number is None:
            number = self._note_numbers[key] = len(self.notes)
            self.notes.append(first.over(second))
            self._note_sources.append((first, second))  # keeps both alive: their ids are the key
        return number

    def _line(self, x: float, y: float, offset: int) -> None:
        state = self.state
        if self._contours is not None:
            self._extend([(x, y)])
            return
        tool = self._number()
        aperture = state.aperture
        note = self._note(aperture.attributes if aperture is not None else NO_ATTRIBUTES)
        ends = (*self._mapped(state.x, state.y), *self._mapped(x, y))
        self.pictures[-1].add(Kind.LINE, tool, state.dark, note, offset, ends)

    def trace(self, points: Points) -> None:
        """Straight edges of a region's contour to the points (N, 2), mm."""
        places = [(x, y) for x, y in points.tolist()]
        self._extend(places)
        self.state.x, self.state.y = places[-1]

    def _extend(self, points: list[tuple[float, float]]) -> None:
        if not self._contour:
            self._contour.append((self.state.x, self.state.y))
        self._contour.extend(points)
        self.budget.take(0, len(points))

    def _flash(self, x: float, y: float, offset: int) -> None:
        state = self.state
        if self.in_region:
            self.notices.add("A flash stands inside a region; it is drawn as a flash.", offset)
        at = self._mapped(x, y)
        aperture = state.aperture
        if isinstance(aperture, Block):
            self._flash_block(aperture, at)
            return
        tool = self._number()
        note = self._note(aperture.attributes if aperture is not None else NO_ATTRIBUTES)
        self.pictures[-1].add(Kind.FLASH, tool, state.dark, note, offset, (*at, *at))

    def _flash_block(self, block: Block, at: tuple[float, float]) -> None:
        """A block's objects keep their own attributes; those of the flash fill the gaps."""
        table = block.picture.table()
        matrix = self.state.matrix
        used = {int(number) for number in set(table[:, 1].tolist()) if number >= 0}
        tools = {number: self.toolbox.turned(number, matrix) for number in used}
        outer = self._attributes.objects
        notes = {}
        if outer:
            notes = {
                int(number): self._intern(self.notes[int(number)], outer)
                for number in set(table[:, 3].tolist())
            }
        self.pictures[-1].place(
            block.picture, [at], matrix=matrix, tools=tools, notes=notes, dark=self.state.dark
        )

    def _arc(self, x: float, y: float, toward: tuple[float, float], offset: int) -> None:
        state = self.state
        start, end = (state.x, state.y), (x, y)
        clockwise = state.interpolation == 2
        if max(map(abs, (*start, *end, *toward))) > COORDINATE_LIMIT:
            raise InputError("An arc reaches more than a kilometre away.", hint="The file may be damaged.")
        centre = self._centre(start, end, toward, clockwise, offset)
        if centre is None:
            self._line(x, y, offset)
            return
        sweep = sweep_angle(start, end, centre, clockwise)
        points = arc_points(start, end, centre, sweep, self._arc_tolerance(start, centre, offset))
        if self._contours is not None:
            self._extend([(px, py) for px, py in points[1:].tolist()])
            return
        factors = state.image.factors
        round_still = abs(factors[0]) == abs(factors[1])
        arc = Arc(points * factors, self._mapped(*centre) if round_still else None)
        aperture = state.aperture
        note = self._note(aperture.attributes if aperture is not None else NO_ATTRIBUTES)
        ends = (*self._mapped(*start), *self._mapped(*end))
        self.pictures[-1].add(Kind.ARC, self._number(), state.dark, note, offset, ends, arc)

    def _centre(
        self,
        start: tuple[float, float],
        end: tuple[float, float],
        toward: tuple[float, float],
        clockwise: bool,
        offset: int,
    ) -> tuple[float, float] | None:
        """The arc's centre, or None where the arc is no more than a line."""
        plain = (start[0] + toward[0], start[1] + toward[1])
        if toward == (0.0, 0.0):
            if start != end:
                self.notices.add("An arc without a radius is drawn as a line.", offset)
            return None
        mismatch = abs(math.dist(start, plain) - math.dist(end, plain))
        quadrant = self.state.quadrant
        if quadrant is None:
            self.notices.add(
                "The quadrant mode of an arc (G74 or G75) is not stated; the fitting one is used.", offset
            )
            quadrant = "multi" if mismatch <= _RADIUS_MISMATCH or min(toward) < 0.0 else "single"
        if quadrant == "single":
            if start == end:
                return None
            centre = quarter_centre(start, end, toward, clockwise)
            mismatch = abs(math.dist(start, centre) - math.dist(end, centre))
        else:
            centre = plain
        if mismatch > _RADIUS_MISMATCH:
            self.notices.add("The two ends of an arc have different radii; it is drawn as a spiral.", offset)
        return centre

    def _arc_tolerance(self, start: tuple[float, float], centre: tuple[float, float], offset: int) -> float:
        """Chord tolerance for the centre line, so that the outer edge keeps the tolerance too."""
        tolerance = self.toolbox.tolerance * (_BLOCK_FINENESS if len(self.pictures) > 1 else 1.0)
        if self._contours is not None:
            return tolerance
        diameter = self.toolbox.tools[self._number()].diameter or 0.0
        radius = math.dist(start, centre)
        return tolerance * radius / (radius + diameter / 2.0) if radius > 0.0 else tolerance

    def begin_region(self, offset: int) -> None:
        """G36."""
        if self.in_region:
            self.notices.add("A region begins inside a region; the first one is ended.", offset)
            self.end_region(offset)
        self._contours = []
        self._contour = []

    def _end_contour(self, offset: int) -> None:
        points = self._contour
        self._contour = []
        if self._contours is None or len(points) < 2:
            return
        if points[0] != points[-1]:
            self.notices.add("A region's contour is not closed; it is closed with a straight line.", offset)
            points.append(points[0])
        if len(points) < 4:
            return
        self._contours.append(np.array(points) * self.state.image.factors)

    def end_region(self, offset: int) -> None:
        """G37."""
        if self._contours is None:
            self.notices.add("A region ends that never began.", offset)
            return
        self._end_contour(offset)
        contours = tuple(self._contours)
        self._contours = None
        if contours:
            note = self._note(self._attributes.aperture)
            at = (float(contours[0][0, 0]), float(contours[0][0, 1]))
            self.pictures[-1].add(Kind.REGION, -1, self.state.dark, note, offset, (*at, *at), contours)

    def finish_image(self) -> Picture:
        """The whole picture, put where the image parameters say."""
        picture = self.pictures[0]
        image = self.state.image
        if image.matrix == IDENTITY and image.offset == (0.0, 0.0):
            return picture
        placed = Picture(self.budget)
        tools = {
            number: self.toolbox.turned(number, image.matrix) for number in range(len(self.toolbox.tools))
        }
        placed.place(picture, [image.offset], matrix=image.matrix, tools=tools)
        return placed
