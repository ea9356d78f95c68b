"""The bench: a simulated machine with a simulated sheet of copper, as one thing to rehearse on."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Protocol

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry

from drypoint.bench.body import Body
from drypoint.bench.burn import Burn
from drypoint.bench.controller import BenchController
from drypoint.bench.copper import COPPER, Copper
from drypoint.bench.eyes import Seen, Sight, look_at
from drypoint.bench.imperfect import Faults, Mishap
from drypoint.bench.link import BenchClock, BenchLink
from drypoint.bench.memory import Memory
from drypoint.bench.operator import MARK_DEPTH, BenchOperator
from drypoint.bench.planner import Triple
from drypoint.bench.raster import Picture, Raster
from drypoint.bench.sheet import Clamping, Sheet, turned_over
from drypoint.bench.truth import Kind, Truth
from drypoint.bits.model import Bit
from drypoint.cuts.islands import check
from drypoint.cuts.model import IslandCheck
from drypoint.geometry.points import Points, along, as_points
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress

Floats = NDArray[np.float64]

ALONG = 0.05
"""Step at which grooves are asked whether they are through, mm."""
START_HEIGHT = 12.0
"""Height of the bit above the sheet when the machine is switched on, mm."""

SMALL_ENGRAVER: dict[int, float] = {
    100: 800, 101: 800, 102: 800,
    110: 1000, 111: 1000, 112: 600,
    120: 60, 121: 60, 122: 40,
    130: 160, 131: 100, 132: 40,
    30: 10000,
}  # fmt: skip
"""Settings of a small screw-driven engraver (common practice, no source)."""


class Placing(Protocol):
    """Maps board points to work coordinates: a fit or a rigid motion."""

    def apply(self, points: ArrayLike, /) -> Points:
        """(N, 2) board frame to work coordinates."""


@dataclass(frozen=True, slots=True)
class BenchSetup:
    """What stands on the bench.

    Attributes
    ----------
    width, height : float
        Blank, mm.
    kind : Kind
        Of laminate.
    loose : tuple of str
        Edges of the blank that no clamp holds ("left", "right", "bottom", "top").
    spring, lift : float
        How far a loose edge yields to a fast touch, and stands up, mm.
    angle : float
        The blank lies this much askew, radians.
    tilt : (float, float)
        Slope of the bed along x and y, mm per mm.
    """

    width: float = 90.0
    height: float = 70.0
    kind: Kind = Kind.MIXED
    loose: tuple[str, ...] = ("top",)
    spring: float = 0.06
    lift: float = 0.08
    copper: float = COPPER
    double: bool = False
    angle: float = math.radians(0.4)
    tilt: tuple[float, float] = (0.0008, -0.0005)
    faults: Faults = Faults()  # noqa: RUF009 - frozen
    settings: Mapping[int, float] | None = None
    hand_spindle: bool = False
    switches: bool = False


class Bench:
    """All of it.

    Parameters
    ----------
    seed : int
        Everything random follows from it.
    setup : BenchSetup
    pace : float, optional
        Simulated seconds per real second; None: as fast as it can.
    baud, latency : float
        Of the serial line.
    """

    def __init__(
        self,
        seed: int = 0,
        setup: BenchSetup | None = None,
        *,
        pace: float | None = None,
        baud: float = 115200.0,
        latency: float = 0.001,
    ) -> None:
        self.seed = seed
        self.setup = setup = setup or BenchSetup()
        truth = Truth.draw(seed, (0.0, 0.0, setup.width, setup.height), setup.kind)
        clamping = Clamping(
            Rigid(setup.angle, (18.0, 14.0)), 0.0, setup.tilt, setup.loose, setup.spring, setup.lift
        )
        self.sheet = Sheet(
            setup.width, setup.height, truth, clamping, copper=setup.copper, double=setup.double
        )
        start = (10.0, 8.0, START_HEIGHT)
        memory = Memory()
        memory.settings.update(SMALL_ENGRAVER if setup.settings is None else setup.settings)
        reach = memory.travel
        ends = ((-5.0, -5.0, -12.0), (reach[0] + 5.0, reach[1] + 5.0, reach[2] - 5.0))
        self.body = Body(self.sheet, setup.faults, seed, start, ends, has_switches=setup.switches)
        if setup.hand_spindle:
            self.body.hand_spindle = False
        self.controller = BenchController(self.body, memory, baud=baud, latency=latency)
        self.burn = Burn(self.body)
        self.controller.on_beam = self.burn.look
        self.clock = BenchClock(self.controller, pace)
        self.operator = BenchOperator(self, seed)
        self._eyes = np.random.default_rng((seed, 0xE7E5))
        self._link: BenchLink | None = None
        self._rasters: dict[tuple[bool, float], Raster] = {}

    @property
    def link(self) -> BenchLink:
        """The open link; opened (and the controller reset) on first use."""
        if self._link is None:
            self._link = BenchLink(self.controller, self.clock)
        return self._link

    def connect(self) -> BenchLink:
        """Open the port anew, as after a cable was plugged in again; this resets the controller."""
        if self._link is not None:
            self._link.close()
        if not self.controller.powered:
            self.power_on()
        self._link = BenchLink(self.controller, self.clock)
        return self._link

    @property
    def alive(self) -> bool:
        """Whether there is still a simulation behind it: always, in one process."""
        return True

    def set_pace(self, pace: float | None) -> None:
        """Simulated seconds per real second from now on; None: as fast as it can."""
        self.clock.pace = pace

    def clamp_next_at(self, motion: Rigid) -> None:
        """The hands will clamp the sheet so far (a motion of space) from where it lay, unless told before."""
        if self.operator.reclamped_by == Rigid():
            self.operator.reclamped_by = motion

    def close(self) -> None:
        """End; nothing to do in one process but to let go of the port."""
        if self._link is not None:
            self._link.close()

    def unplug(self) -> None:
        """The cable comes out: the link fails, the controller runs on with what it has."""
        self.link.unplugged = True

    def power_on(self) -> None:
        """Power is back: the controller starts, its position forgotten."""
        with self.clock.lock:
            self.controller.restart()

    def picture(self, pitch: float = 0.05) -> Picture:
        """The face that looks up, cell by cell (sheet frame); only what is new is drawn."""
        key = (self.sheet.clamping.turned, pitch)
        if key not in self._rasters:
            self._rasters[key] = Raster(self.copper, self.sheet.board, pitch)
        with self.clock.lock:
            self.body.flush()
            return self._rasters[key].picture()

    @property
    def copper(self) -> Copper:
        """The face that looks up, with everything run so far cut."""
        with self.clock.lock:
            self.body.flush()
        return self.sheet.up

    @property
    def mishaps(self) -> Sequence[Mishap]:
        """What happened that never should."""
        with self.clock.lock:
            self.body.flush()
        return tuple(self.body.mishaps)

    # frames

    def tip(self) -> Triple:
        """Where the bit's tip really is, space."""
        return self.body.tip(self.controller.stepper.place(self.controller.now))

    def work_to_space(self, place: tuple[float, float]) -> tuple[float, float]:
        """Space x and y of a place in work coordinates, by the controller's present idea."""
        wco, off = self.controller.parser.offset(), self.body.offset()
        return (place[0] + wco[0] + off[0], place[1] + wco[1] + off[1])

    def board_to_sheet(self, points: ArrayLike, placing: Placing | None = None) -> Floats:
        """(N, 2) board frame to sheet frame: through the fit, the offsets in force and the clamping."""
        p = np.atleast_2d(np.asarray(points, dtype=np.float64))[:, :2]
        work = p if placing is None else placing.apply(p)
        wco, off = self.controller.parser.offset(), self.body.offset()
        return self.sheet.to_sheet(np.asarray(work)[:, :2] + (wco[0] + off[0], wco[1] + off[1]))

    # hands

    def put_in(self, bit: Bit | None) -> None:
        """Change the bit."""
        self.body.change_bit(bit)

    def reclamp(self, motion: Rigid | None = None) -> None:
        """The sheet is taken up and clamped again, ``motion`` (of space) from where it lay."""
        self.body.flush()
        self.sheet.move(motion or Rigid())

    def turn_over(self, error: Rigid | None = None, *, axis: str = "y") -> None:
        """The sheet is turned over about one of its axes and clamped in about the same place."""
        self.body.flush()
        size = (self.sheet.width, self.sheet.height)
        self.sheet.clamp(turned_over(self.sheet.clamping, size, axis=axis, error=error))

    def clamp_edges(self, *edges: str) -> None:
        """Hold loose edges down; all of them if none is named."""
        self.body.flush()
        keep = [edge for edge in self.sheet.clamping.loose if edges and edge not in edges]
        self.sheet.clamp(replace(self.sheet.clamping, loose=tuple(keep)))

    def holes(self) -> list[tuple[float, float, float]]:
        """Marks and holes one can see from above: sheet x, y and diameter."""
        self.body.flush()
        found = self.sheet.up.holes(MARK_DEPTH)
        return found + self.sheet.down.holes(self.sheet.board)

    def look_at(self, sight: Sight) -> Seen:
        """What a person reads from lines that were cut, given in work coordinates."""
        with self.clock.lock:
            return look_at(self, sight, self._eyes)

    # outcome

    def outcome(
        self,
        nets: Mapping[str, Geometry],
        placing: Placing | None = None,
        *,
        outline: Geometry | None = None,
        progress: Progress | None = None,
    ) -> IslandCheck:
        """Does the copper that is left fall into exactly the nets?

        ``nets`` and ``outline`` are in the board frame; ``placing`` maps it to work coordinates.
        """
        copper = self.copper
        under = copper.grooves()
        back = self._sheet_to_board(placing)
        lines = [as_points(back(_as_line(groove.path))) for groove in under]
        widths = np.array([groove.width for groove in under])
        tops = np.array([groove.top for groove in under])
        edge = shapely.transform(copper.blank, back) if outline is None else outline
        return check(nets, lines, widths, top_width=tops, outline=edge, progress=progress)

    def carved(self, placing: Placing | None = None) -> Geometry:
        """The copper that is left, board frame, cut at the borders of the bench's tiles."""
        back = self._sheet_to_board(placing)
        left: Geometry = shapely.multipolygons(list(self.copper.pieces.polygons))
        moved: Geometry = shapely.transform(left, back)
        return moved

    def _sheet_to_board(self, placing: Placing | None) -> Callable[[Floats], Floats]:
        """The way back from the sheet to the board frame."""
        origin, along_x, along_y = self.board_to_sheet([(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)], placing)
        inverse = np.linalg.inv(np.column_stack((along_x - origin, along_y - origin)))
        return lambda points: np.asarray((points - origin) @ inverse.T, dtype=np.float64)

    def through_along(
        self, lines: Sequence[Points], placing: Placing | None = None, progress: Progress | None = None
    ) -> list[Floats]:
        """Per line, (N,) 1 where the copper is cut through at its middle, at equal steps along it."""
        pieces, told = self.copper.pieces, progress or Progress()
        found = []
        for line in lines:
            told.look()
            covered = pieces.covers(self.board_to_sheet(_spots(line), placing))
            found.append(1.0 - covered.astype(np.float64))
        return found

    def through_share(
        self, lines: Sequence[Points], placing: Placing | None = None, progress: Progress | None = None
    ) -> float:
        """Share of the length of ``lines`` (board frame) that is cut through."""
        found = self.through_along(lines, placing, progress)
        total = sum(len(line) for line in found)
        return float(sum(line.sum() for line in found) / total) if total else 0.0


def _spots(line: Points) -> Points:
    """Middles of equal steps along a line."""
    at = along(line)
    count = max(1, round(float(at[-1]) / ALONG))
    middles = (np.arange(count) + 0.5) / count * at[-1]
    return as_points(
        np.column_stack((np.interp(middles, at, line[:, 0]), np.interp(middles, at, line[:, 1])))
    )


def _as_line(path: Points) -> Points:
    """A spot as a very short line."""
    return as_points(np.vstack((path, path))) if len(path) == 1 else path
