"""The sheet as it is clamped: where it lies, how high, where it springs, and its copper on both faces.

Sheet frame: mm, seen from the front (the copper side), origin at the blank's lower left corner.
Space: the machine's own coordinates; z grows upwards.
"""

from __future__ import annotations

import math
from collections.abc import Collection
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray
from shapely import Polygon, box

from drypoint.bench.copper import BOARD, COPPER, Copper
from drypoint.bench.truth import Kind, Truth
from drypoint.geometry.rigid import Rigid

Floats = NDArray[np.float64]

EDGES = ("left", "right", "bottom", "top")
SPRING_REACH = 14.0
"""How far in from a loose edge the laminate springs (fall to 1/e), mm."""


@dataclass(frozen=True, slots=True)
class Clamping:
    """How the sheet lies on the machine.

    Attributes
    ----------
    place : Rigid
        Sheet frame to space, x and y; mirrored when the sheet lies face down.
    base : float
        Height in space of the sheet's mean plane at its middle, mm.
    tilt : (float, float)
        Rise along space x and y, mm per mm.
    loose : collection of str
        Edges not clamped: "left", "right", "bottom", "top" (sheet frame).
    spring : float
        How far the laminate goes down at a loose edge under a fast touch, mm.
    lift : float
        How far a loose edge stands up when nothing presses on it, mm.
    """

    place: Rigid = field(default_factory=Rigid)
    base: float = 0.0
    tilt: tuple[float, float] = (0.0, 0.0)
    loose: Collection[str] = ()
    spring: float = 0.06
    lift: float = 0.08

    @property
    def turned(self) -> bool:
        """Whether the sheet lies face down."""
        return self.place.mirror


class Sheet:
    """One blank on the machine.

    Parameters
    ----------
    width, height : float
        Of the blank, mm.
    truth : Truth
        Height of the front.
    clamping : Clamping
    copper : float
        Thickness, mm.
    board : float
        Thickness of the laminate, mm.
    double : bool
        Whether the back carries copper too.
    """

    def __init__(
        self,
        width: float,
        height: float,
        truth: Truth,
        clamping: Clamping,
        *,
        copper: float = COPPER,
        board: float = BOARD,
        double: bool = False,
    ) -> None:
        self.width, self.height = width, height
        self.board = board
        self.clamping = clamping
        outline: Polygon = box(0.0, 0.0, width, height)
        self.front = Copper(outline, copper)
        self.back = Copper(outline, copper if double else 0.0)
        self.truth = truth
        """Height of the front, sheet frame."""
        self._back_truth = Truth.draw(truth.seed + 1, truth.bounds, Kind.RIPPLED)
        self._top: float | None = None

    @property
    def up(self) -> Copper:
        """The face that looks up."""
        return self.back if self.clamping.turned else self.front

    @property
    def down(self) -> Copper:
        """The face that looks down."""
        return self.front if self.clamping.turned else self.back

    def clamp(self, clamping: Clamping) -> None:
        """Lay the sheet down anew."""
        self.clamping = clamping
        self._top = None

    def move(self, motion: Rigid) -> None:
        """The sheet is moved by a rigid motion of space, as by a careless hand."""
        self.clamp(replace(self.clamping, place=self.clamping.place.then(motion)))

    def to_sheet(self, points: ArrayLike) -> Floats:
        """(N, 2) space to sheet frame."""
        return self.clamping.place.inverse().apply(points)

    def to_space(self, points: ArrayLike) -> Floats:
        """(N, 2) sheet frame to space."""
        return self.clamping.place.apply(points)

    def top(self, points: ArrayLike) -> Floats:
        """(N,) height in space of the upper face at (N, 2) space points, nothing pressing on it."""
        p = np.atleast_2d(np.asarray(points, dtype=np.float64))
        s = self.to_sheet(p)
        clamp = self.clamping
        middle = self.to_space([(self.width / 2.0, self.height / 2.0)])[0]
        shape = self.shape(s)
        tilt = (p[:, 0] - middle[0]) * clamp.tilt[0] + (p[:, 1] - middle[1]) * clamp.tilt[1]
        return np.asarray(clamp.base + tilt + shape + clamp.lift * self.looseness(s), dtype=np.float64)

    def shape(self, sheet_points: ArrayLike) -> Floats:
        """(N,) height of the upper face over its mean plane at (N, 2) sheet points, nothing loose, mm."""
        front = self.truth.height(sheet_points)
        if not self.clamping.turned:
            return front
        return np.asarray(self._back_truth.height(sheet_points) - front)  # face down, a bow turns over

    def looseness(self, sheet_points: Floats) -> Floats:
        """(N,) 0 where the sheet is held, 1 at the middle of an edge that is not."""
        x, y = sheet_points[:, 0], sheet_points[:, 1]
        w, h = self.width, self.height
        far = {
            "left": (x, y / h),
            "right": (w - x, y / h),
            "bottom": (y, x / w),
            "top": (h - y, x / w),
        }
        total = np.zeros(len(x))
        for edge in self.clamping.loose:
            inward, share = far[edge]
            ends = np.sin(np.pi * np.clip(share, 0.0, 1.0))
            total = np.maximum(total, ends * np.exp(-np.maximum(inward, 0.0) / SPRING_REACH))
        return total

    def give(self, points: ArrayLike) -> Floats:
        """(N,) how far the sheet goes down under a fast touch at (N, 2) space points, mm."""
        return self.clamping.spring * self.looseness(self.to_sheet(points))

    def highest(self) -> float:
        """A height in space above every spot of the upper face, mm."""
        if self._top is None:
            x, y = np.meshgrid(np.linspace(0, self.width, 60), np.linspace(0, self.height, 60))
            spots = self.to_space(np.column_stack((x.ravel(), y.ravel())))
            self._top = float(self.top(spots).max()) + 0.02
        return self._top

    def corner(self) -> tuple[float, float]:
        """Space x and y of the blank's corner at the lower left as it lies."""
        corners = self.to_space([(0, 0), (self.width, 0), (0, self.height), (self.width, self.height)])
        at = int(np.argmin(corners.sum(axis=1)))
        return (float(corners[at, 0]), float(corners[at, 1]))


def turned_over(
    clamping: Clamping, size: tuple[float, float], *, axis: str = "y", error: Rigid | None = None
) -> Clamping:
    """The clamping after turning the sheet over about an axis of its own, laid down in about the same place.

    ``size`` is the sheet's width and height, mm; ``error`` how much it misses, as a motion of space.
    """
    width, height = size
    # in the sheet's own frame x becomes width - x, or y height - y
    about = Rigid(0.0, (width, 0.0), True) if axis == "y" else Rigid(math.pi, (0.0, height), True)
    place = about.then(clamping.place)
    if error is not None:
        place = place.then(error)
    # the clamps stay where they are, so two edges change names
    one, other = ("left", "right") if axis == "y" else ("bottom", "top")
    loose = tuple({one: other, other: one}.get(edge, edge) for edge in clamping.loose)
    return replace(clamping, place=place, loose=loose)
