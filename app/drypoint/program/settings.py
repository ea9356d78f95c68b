"""What the person sets once for all programs, and the shapes of what `place` is handed."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import Protocol

import numpy as np
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry

from drypoint.gcode.writer import LINE_LIMIT
from drypoint.geometry.points import Points


class HeightLike(Protocol):
    """A surface: the copper's height, mm, at (N, 2) points of the machine frame."""

    def mean(self, points: ArrayLike, /) -> NDArray[np.float64]: ...


class FitLike(Protocol):
    """What maps (N, 2) points from the board frame to the machine frame."""

    def apply(self, points: ArrayLike, /) -> Points: ...


@dataclass(frozen=True, slots=True)
class Motion:
    """How the machine moves. Defaults are those the firmware's documentation prints.

    Attributes
    ----------
    max_rate : mm/min per axis
    accel : mm/s² per axis
    junction_deviation : mm
    arc_tolerance : mm
    blocks : int
        Moves the controller looks ahead.
    """

    max_rate: tuple[float, float, float] = (500.0, 500.0, 500.0)
    accel: tuple[float, float, float] = (10.0, 10.0, 10.0)
    junction_deviation: float = 0.01
    arc_tolerance: float = 0.002
    blocks: int = 15


@dataclass(frozen=True, slots=True)
class ProgramSettings:
    """Settings of every program.

    Attributes
    ----------
    clearance : float
        Rapid moves stay this far above the work's zero and above the highest copper, mm.
    hop : float
        Between places near each other the bit goes up only this far above the highest copper, mm,
        where the height is known and nothing is in the way; 0: always up to the clearance plane.
    obstacles : tuple of shapely geometries
        What stands up from the bed, machine frame: a hop keeps well away from it.
    approach : float
        Height above the copper where the way down slows to the bit's plunge feed, mm.
    chord : float
        How far the tip may stray from surface minus depth between the ends of moves, mm.
    line_limit : int
        Characters per line, terminator included.
    spindle_delay : float
        Wait for the spindle to reach its speed, s.
    spindle_control : bool
        Whether the controller switches the spindle; else a person does and no M3/M5 is written.
    park : (x, y) mm, machine frame, or None to stay above the last cut
    approach_feed, retract_feed : float
        Down to the approach height and up again, mm/min. Going up is a feed move too, so that no
        rapid ever starts below the clearance plane; the controller clamps it to its own limit.
    overlap : float
        How far a closed path runs on past its start, mm.
    ramp_angle : float
        Steepest way down along a path for an end mill, rad.
    take_up : float
        Where the play of x and y matters: every hole and every start is reached from this far
        towards smaller x and y, mm, so that play is always taken up on the same side. 0 is off.
    decimals : of coordinates in the lines
    motion : Motion
        For the expected time.
    """

    clearance: float = 2.0
    hop: float = 0.0
    obstacles: tuple[Geometry, ...] = ()
    approach: float = 0.3
    chord: float = 0.002
    line_limit: int = LINE_LIMIT
    spindle_delay: float = 3.0
    spindle_control: bool = True
    park: tuple[float, float] | None = (0.0, 0.0)
    approach_feed: float = 300.0
    retract_feed: float = 600.0
    overlap: float = 0.3
    ramp_angle: float = math.radians(5.0)
    take_up: float = 0.0
    decimals: int = 3
    motion: Motion = field(default_factory=Motion)
