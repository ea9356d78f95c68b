"""Tooling holes of a job: whether there are any, where, with which drill, and what they gain.

They are planned once, in the frame of the side that is milled first, clear of clamps whichever way the
blank is turned over. Once drilled they stay where they are, whatever is set afterwards.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely
from shapely import Geometry, MultiPoint

from drypoint.bits.model import Drill
from drypoint.board.model import Board, Finding
from drypoint.cuts.model import Cut, CutKind
from drypoint.cuts.tooling import Tooling, tooling_holes, tooling_room
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.program.model import Program
from drypoint.program.placed_cuts import slug
from drypoint.reference.registration import across
from drypoint.reference.worth import choose_holes, foreseen_error
from drypoint.session.layout import Layout
from drypoint.session.settings import Settings
from drypoint.session.snapshot import Snapshot
from drypoint.session.turn_settings import ToolingUse
from drypoint.session.two_bits import CLEAR_OF_ZERO
from drypoint.wording import say

KIND = "tooling"
"""Kind of the record of tooling holes that were drilled."""
LEAST_HOLES = 2
"""Holes that a board is found by, at least."""
SEEN = (0.8, 1.3)
"""Diameters of a drill whose holes are found well by eye, mm (common practice, no source)."""
USUAL = 1.0
"""mm; taken where the board needs no such drill."""
PAYS = 0.2
"""Tooling holes pay where they lower the expected error by this share."""
HOLES = 3
"""Holes that are touched after the turn."""


@dataclass(frozen=True, slots=True)
class Foreseen:
    """Expected error of the second side at the corner of the board where it is largest, mm (95 %).

    Attributes
    ----------
    own : float or None
        Found by drilled holes of the board alone; None where it has fewer than two.
    tooling : float or None
        Found by the best of those and tooling holes; None where there is no room for any.
    drilled : bool
        Whether tooling holes are planned, or were drilled.
    """

    own: float | None
    tooling: float | None
    drilled: bool

    @property
    def pays(self) -> bool:
        """Whether tooling holes make it much better."""
        return self.tooling is not None and (self.own is None or self.tooling <= (1.0 - PAYS) * self.own)

    def as_dict(self) -> dict[str, Any]:
        """For scripts."""
        return {
            "expected95_mm": {
                "own_holes": None if self.own is None else round(self.own, 4),
                "with_tooling_holes": None if self.tooling is None else round(self.tooling, 4),
            },
            "tooling_pays": self.pays,
        }


def wants_tooling(board: Board, settings: Settings) -> bool:
    """Whether tooling holes are to be drilled."""
    use = settings.turn.tooling
    if use is ToolingUse.NEEDED:
        return settings.board.both and len(board.holes) < LEAST_HOLES
    return use is ToolingUse.ALWAYS


def tooling_drill(board: Board, settings: Settings) -> Drill | None:
    """The drill chosen; else one the board needs anyway, if its holes are seen well; None without drills."""
    drills = settings.bits.drills
    for drill in drills:
        if drill.name == settings.turn.drill:
            return drill
    sizes = np.array([hole.diameter for hole in board.holes])
    seen = [drill for drill in drills if SEEN[0] <= drill.diameter <= SEEN[1]]

    def wanted(drill: Drill) -> tuple[bool, float]:
        nearest = {min(drills, key=lambda one: abs(one.diameter - size)).name for size in sizes.tolist()}
        return drill.name not in nearest, abs(drill.diameter - USUAL)

    return min(seen or drills, key=wanted, default=None)


def plan_tooling(board: Board, layout: Layout, settings: Settings, depth: float) -> Tooling:
    """Tooling holes in the frame of the side that is milled first, whether they are wanted or not.

    ``board`` and ``layout`` are those of that side; ``depth`` below the copper, mm.
    """
    drill = tooling_drill(board, settings)
    if drill is None:
        return Tooling()
    bounds = shapely.bounds(layout.blank).tolist()
    blank = (bounds[0], bounds[1], bounds[2], bounds[3])
    room = tooling_room(board.outline, layout.workable, drill, settings.bits.mill.diameter)
    room = shapely.difference(room, _zero_spots(layout, drill.diameter / 2.0))
    left_over_right, front_over_back = _flipped(room, blank, True, False), _flipped(room, blank, False, True)
    for seen in ((left_over_right, front_over_back), (left_over_right,), (front_over_back,), ()):
        both = shapely.intersection_all([room, *seen])
        found = tooling_holes(both, blank, drill, count=settings.turn.count, depth=depth)
        if found.cuts:
            return found
    return Tooling()


def _zero_spots(layout: Layout, radius: float) -> Geometry:
    """Where z is set to zero, whichever way the blank lies: a bit would sink into a hole there."""
    x0, y0, x1, y1 = shapely.bounds(layout.blank).tolist()
    x, y = layout.zero_spot
    spots = [(at, up) for at in (x, x0 + x1 - x) for up in (y, y0 + y1 - y)]
    return shapely.buffer(MultiPoint(spots), CLEAR_OF_ZERO + radius)


def _flipped(shape: Geometry, blank: tuple[float, float, float, float], over: bool, back: bool) -> Geometry:
    x0, y0, x1, y1 = blank
    middle = np.array([x0 + x1, y0 + y1])
    sign = np.array([-1.0 if over else 1.0, -1.0 if back else 1.0])
    return shapely.transform(shape, lambda points: points * sign + np.where(sign < 0, middle, 0.0))


def seen_from_over(board: Board) -> Board:
    """A board with its outline as it is seen from the other side."""
    over = across(board.width)
    return replace(board, outline=shapely.transform(board.outline, over.apply))


def turned_tooling(tooling: Tooling, width: float) -> Tooling:
    """The same holes in the frame of the other side; ``width`` is that of the board, mm."""
    over = across(width)
    cuts = tuple(replace(cut, path=over.apply(cut.path)) for cut in tooling.cuts)
    return Tooling(cuts, tooling.tells)


def tooling_findings(board: Board, settings: Settings, tooling: Tooling) -> tuple[Finding, ...]:
    """What there is to know about tooling holes that are wanted."""
    if not wants_tooling(board, settings):
        return ()
    where = say("Tooling holes")
    if not tooling.cuts:
        what = "There is no room for tooling holes between the outline and the edge of the blank."
        hint = "Use a larger blank, or move the clamps: the second side could not be found by them."
        return (Finding("no tooling", what, where, hint),)
    if tooling.tells:
        return ()
    what = "A blank that is turned the wrong way may show holes wherever they are looked for."
    return (Finding("tooling", what, where, "Mark the blank's front edge on both sides before you turn it."),)


def foreseen(board: Board, tooling: Tooling, settings: Settings) -> Foreseen:
    """How well the second side will be found; ``tooling`` are the holes planned for it, wanted or not."""
    x0, y0, x1, y1 = board.outline.bounds
    corners = as_points([(x0, y0), (x1, y0), (x1, y1), (x0, y1)])
    own = [(hole.x, hole.y) for hole in board.holes]
    added = [(float(cut.path[0][0]), float(cut.path[0][1])) for cut in tooling.cuts]
    believed = settings.reference

    def error(places: list[tuple[float, float]]) -> float | None:
        if len(places) < LEAST_HOLES:
            return None
        sigmas = {"sigma": believed.touch_sigma, "hole_sigma": believed.hole_sigma}
        chosen = choose_holes(places, corners, HOLES, **sigmas)
        return foreseen_error([places[k] for k in chosen], corners, **sigmas)

    return Foreseen(error(own), error([*own, *added]) if added else None, wants_tooling(board, settings))


def drilled_tooling(snap: Snapshot) -> dict[str, Any] | None:
    """The record of tooling holes that were drilled; None while there are none."""
    record = snap.latest(KIND)
    return None if record is None else dict(record.data)


def as_drilled(data: dict[str, Any], settings: Settings, depth: float) -> Tooling:
    """Tooling holes as they were drilled, in the frame of the side that was milled first."""
    drill = next((one for one in settings.bits.drills if one.name == data["bit"]), None)
    diameter = float(data["diameter"])
    bit = drill or Drill(str(data["bit"]), diameter, settings.bits.vbit.speeds, diameter)
    cuts = tuple(
        Cut(CutKind.TOOLING, bit, as_points([place]), (), depth, diameter, label=f"T{number}")
        for number, place in enumerate(data["places"], 1)
    )
    return Tooling(cuts, bool(data["tells"]))


def drilled_by(snap: Snapshot, program: Program, tooling: Tooling, width: float) -> dict[str, Any] | None:
    """What is to be kept once ``program`` was run; None if it drills no tooling holes.

    Parameters
    ----------
    tooling : in the frame of the side being milled
    width : of the board, mm
    """
    if CutKind.TOOLING.value.replace(" ", "-") not in program.name or not tooling.cuts:
        return None
    first = snap.settings.board.side is snap.face(1)
    back = Rigid() if first else across(width)
    drill = tooling.cuts[0].bit
    return {
        "places": [[float(v) for v in back.apply(cut.path)[0]] for cut in tooling.cuts],
        "bit": drill.name,
        "diameter": tooling.cuts[0].diameter,
        "tells": tooling.tells,
        "setup": snap.setup,
    }


def drilled_before(snap: Snapshot, tooling: Sequence[Cut]) -> bool:
    """Whether holes of the board were drilled with the same drill before tooling holes were asked for."""
    if not tooling:
        return False
    bit, mark = slug(tooling[0].bit.name), CutKind.TOOLING.value.replace(" ", "-")
    names = [str(one.data["program"]) for one in snap.records["done"]]
    return any(name.endswith(bit) and CutKind.HOLE.value in name and mark not in name for name in names)
