"""Free copper round the board, where trial cuts may lie, and the trial cuts that were made there."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, MultiPolygon, Point, box

from drypoint.errors import PlanError
from drypoint.geometry.points import Points, as_points
from drypoint.session.corner import Corner
from drypoint.session.derive import Derived
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bits import CLEAR_OF_ZERO
from drypoint.wording import say

KIND = "trial cut"
"""Kind of the record of a trial cut that was begun: its ground is spent."""
CLEAR = 0.8
"""mm kept between a trial cut and the board, the blank's edge, the clamps and other trial cuts."""
MARK = 1.0
"""mm kept from the middle of a reference hole."""
STEP = 0.5
"""mm between the places that are tried."""

Box = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True, eq=False)
class TrialCut:
    """A trial cut that was begun: what it is, the ground it spent and its lines, board frame, mm."""

    what: str
    extents: tuple[Box, ...]
    lines: tuple[Points, ...]


@dataclass(frozen=True, slots=True, eq=False)
class Ground:
    """What there is for trial cuts, board frame.

    Attributes
    ----------
    blank : geometry
    board : geometry
        The boards; nothing may lie on them.
    taken : dict
        What else is in the way, and why, in words.
    """

    blank: Geometry
    board: Geometry
    taken: dict[str, Geometry]

    def free(self, *without: str) -> Geometry:
        """What is left; obstacles named by their words are left out of account."""
        others = [shape for words, shape in self.taken.items() if words not in without]
        return shapely.difference(self.blank, shapely.union_all([self.board, *others]))

    @property
    def widest(self) -> float:
        """The widest strip of blank beside the boards, mm."""
        whole, inner = shapely.bounds(self.blank), shapely.bounds(self.board)
        return float(max((inner - whole)[:2].max(), (whole - inner)[2:].max()))


@dataclass(frozen=True, slots=True)
class Settled:
    """Where a rectangle lies: its lower left corner, mm, and whether it stands on its short side."""

    at: tuple[float, float]
    stands: bool


def ground_of(derived: Derived, snap: Snapshot, reach: Geometry | None = None) -> Ground:
    """The copper for trial cuts in the present clamping; computes.

    Clamps are known for the first clamping only.

    Parameters
    ----------
    reach : where the machine gets to, board frame, as far as that is known
    """
    layout, board = derived.layout(snap), derived.board(snap)
    marks = [shapely.buffer(Point(mark.path[0]), MARK) for mark in derived.cuts(snap).marks]
    marks += [
        shapely.buffer(Point(cut.path[0]), cut.diameter / 2.0 + MARK) for cut in derived.cuts(snap).tooling
    ]
    used = [box(*extent) for one in trial_cuts(snap) for extent in one.extents]
    taken = {
        say("reference holes"): shapely.union_all(marks),
        say("the spot where z is zero"): shapely.buffer(Point(layout.zero_spot), CLEAR_OF_ZERO),
        say("earlier trial cuts"): shapely.union_all(used),
        say("clamps"): layout.keepout if snap.setup == 1 else MultiPolygon(),
    }
    if reach is not None:
        taken[say("the end of the machine's travel")] = shapely.difference(layout.blank, reach)
    return Ground(layout.blank, board.outline, {words: shape for words, shape in taken.items() if shape})


def settle(size: tuple[float, float], ground: Ground, corner: Corner, *, title: str) -> Settled:
    """A place for a rectangle, as near to a corner as there is room, lying or standing.

    Raises
    ------
    PlanError
        If there is none; says what is in the way.
    """
    room = ground.free()
    for stands in (False, True):
        found = _nearest(size[::-1] if stands else size, room, corner.place(ground.blank))
        if found is not None:
            return Settled(found, stands)
    raise PlanError(_why(size, ground, corner, title), title, "Use a larger blank, or a piece of its own.")


def fits(size: tuple[float, float], ground: Ground, corner: Corner) -> tuple[float, float] | None:
    """The place nearest to a corner where a rectangle fits as it lies; None if there is none."""
    return _nearest(size, ground.free(), corner.place(ground.blank))


def trial_cuts(snap: Snapshot) -> tuple[TrialCut, ...]:
    """Test cuts that were begun on the side that looks up, oldest first."""
    face = snap.face().value
    return tuple(
        TrialCut(
            one.data["what"], tuple(map(_box, one.data["extents"])), tuple(map(as_points, one.data["lines"]))
        )
        for one in snap.records[KIND]
        if one.data["face"] == face
    )


def extent_of(lines: Sequence[Points], reach: float) -> Box:
    """The rectangle that lines need, with ``reach`` mm on every side."""
    points = np.vstack(lines)
    (x0, y0), (x1, y1) = points.min(axis=0) - reach, points.max(axis=0) + reach
    return float(x0), float(y0), float(x1), float(y1)


def _nearest(
    size: tuple[float, float], room: Geometry, wanted: NDArray[np.float64]
) -> tuple[float, float] | None:
    """Lower left of the place nearest to a corner where a rectangle fits with room around it."""
    low_x, low_y, high_x, high_y = shapely.bounds(shapely.buffer(room, -CLEAR)).tolist()
    width, height = size
    if not np.isfinite([low_x, low_y]).all() or high_x - low_x < width or high_y - low_y < height:
        return None
    xs, ys = np.meshgrid(_tried(low_x, high_x - width), _tried(low_y, high_y - height))
    places = np.column_stack((xs.ravel(), ys.ravel()))
    low = places - CLEAR + 1e-9
    high = places + np.array(size) + CLEAR - 1e-9
    shapely.prepare(room)
    good = np.flatnonzero(shapely.covers(room, shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1])))
    if not len(good):
        return None
    middles = places[good] + np.array(size) / 2.0
    x, y = places[good[int(np.argmin(((middles - wanted) ** 2).sum(axis=1)))]].tolist()
    return x, y


def _tried(low: float, high: float) -> NDArray[np.float64]:
    """Places from ``low`` to ``high``, both included."""
    return np.append(np.arange(low, high, STEP), high)


def _why(size: tuple[float, float], ground: Ground, corner: Corner, title: str) -> str:
    """What is in the way of a rectangle."""
    needs = {"title": title, "width": size[0] + 2 * CLEAR, "height": size[1] + 2 * CLEAR}
    wanted = corner.place(ground.blank)
    for words in ground.taken:
        room = ground.free(words)
        if any(_nearest(one, room, wanted) is not None for one in (size, size[::-1])):
            return say(
                "{title}: it needs {width:.1f} × {height:.1f} mm of free copper; in the way: {words}.",
                words=words,
                **needs,
            )
    return say(
        "{title}: it needs {width:.1f} × {height:.1f} mm of free copper; the widest strip beside the "
        "board is {widest:.1f} mm.",
        widest=ground.widest,
        **needs,
    )


def _box(values: Sequence[float]) -> Box:
    x0, y0, x1, y1 = (float(value) for value in values)
    return x0, y0, x1, y1
