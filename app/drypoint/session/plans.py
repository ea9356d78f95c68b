"""What is computed from a job, as plain functions of frozen values: cuts, surface, passes, programs."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property
from typing import Any

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry, MultiPolygon, Point, unary_union

from drypoint.board.model import Board, Finding
from drypoint.board.panel import nets_of_boards
from drypoint.cuts.grooves import in_travel_order, plan_grooves, with_bit
from drypoint.cuts.holes import HolePlan, plan_holes, reference_marks
from drypoint.cuts.holes import in_travel_order as holes_in_order
from drypoint.cuts.islands import check
from drypoint.cuts.model import Cut, CutKind, Flaw, GroovePlan, IslandCheck
from drypoint.cuts.outline import plan_outline
from drypoint.cuts.thinned import thinned
from drypoint.cuts.weakened import weakened
from drypoint.geometry.points import Points, length
from drypoint.geometry.rigid import Rigid
from drypoint.passes.learning import OFFSET_SPREAD, Belief, Observation, update
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.session.electrical import clearance_flaws
from drypoint.session.layout import Layout
from drypoint.session.settings import Settings
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bits import CLEAR_OF_ZERO, fine_width, wanted, widths_of, with_clearing
from drypoint.surface.model import Surface

Placing = Fit | Rigid
"""Board frame to work coordinates: fitted to touched holes, or as the blank was laid."""


@dataclass(frozen=True, eq=False)
class CutPlan:
    """All cuts of a board, board frame.

    ``width`` is what the grooves of the V-bit are planned for; ``check`` the island check at the widths
    of all; ``close`` nets that come nearer to each other than their voltage allows.
    """

    grooves: GroovePlan
    marks: tuple[Cut, ...]
    holes: tuple[Cut, ...]
    outline: tuple[Cut, ...]
    check: IslandCheck
    width: float
    findings: tuple[Finding, ...]
    close: tuple[Flaw, ...] = ()
    tooling: tuple[Cut, ...] = ()
    """Holes in the margin that the board is found by once it was turned over."""
    top: NDArray[np.float64] = field(default_factory=lambda: np.zeros(0))
    """(L,) width of every groove at the copper's top, mm."""

    @cached_property
    def length(self) -> float:
        """Length of all grooves, mm."""
        return sum(length(line) for line in self.grooves.lines)

    def drills(self) -> dict[str, int]:
        """Number of holes by the bit that makes them."""
        counts: dict[str, int] = {}
        for cut in (*self.holes, *self.tooling):
            if cut.kind is not CutKind.SPOT:
                counts[cut.bit.name] = counts.get(cut.bit.name, 0) + 1
        return counts


@dataclass(frozen=True, slots=True, eq=False)
class GivenCuts:
    """What ready-made programs do in place of our own cuts.

    ``grooves`` are theirs; ``grooved`` and ``cut_out`` number the boards on the blank, from 1, whose
    grooves and whose outline need no plan of ours.
    """

    grooves: GroovePlan = field(default_factory=lambda: GroovePlan((), (), ()))
    grooved: frozenset[int] = frozenset()
    cut_out: frozenset[int] = frozenset()


def plan_cuts(
    board: Board,
    layout: Layout,
    settings: Settings,
    progress: Progress,
    given: GivenCuts | None = None,
    tooling: Sequence[Cut] = (),
) -> CutPlan:
    """Grooves, reference marks, holes and outline, and whether they part the nets.

    ``tooling`` are holes that are drilled into the margin, frame of ``board``.
    """
    given = given or GivenCuts()
    bits, cuts = settings.bits, settings.cuts
    grooves = _grooves(board, layout, settings, progress, given)
    through = depth_into_backing(settings)
    holes = _own_holes(board, settings, through)
    progress.step(0.7, "Outline")
    outline = _own_outline(board, layout, settings, through, given)
    # a hole near the zero spot would let a later bit sink in there
    room = shapely.difference(layout.workable, Point(layout.zero_spot).buffer(CLEAR_OF_ZERO))
    taken = [Point(cut.path[0]).buffer(cut.diameter / 2 + OFF_TOOLING) for cut in tooling]
    marks = reference_marks(board, room.difference(unary_union(taken)), bits.vbit, count=cuts.marks)
    progress.step(0.75, "Island check")
    wide = widths_of(grooves, settings)
    found = check(
        board.nets,
        grooves.lines,
        wide.under,
        top_width=wide.top,
        progress=progress.part(0.75, 0.95),
    )
    thin = _thinned(board, grooves.lines, wide.top, settings, progress.part(0.95, 0.99))
    found = replace(found, thinned=thin)
    close = clearance_flaws(board, grooves.lines, wide.under, settings.electrical, progress.part(0.99, 1.0))
    width = fine_width(settings).top
    done = holes_in_order(holes.cuts)
    return CutPlan(
        grooves, marks, done, outline, found, width, holes.findings, close, tuple(tooling), wide.top
    )


OFF_TOOLING = 1.5
"""Reference marks keep this far from the edge of a tooling hole, mm."""
SAME_PLACE = 1.0
"""mm. Two things said of one net nearer to each other than this are one."""


def _thinned(
    board: Board, lines: Sequence[Points], width: ArrayLike, settings: Settings, progress: Progress
) -> tuple[Flaw, ...]:
    """Traces below the least width, and those that lose much of theirs."""
    electrical, copper = settings.electrical, settings.blank.copper
    least = settings.cuts.least_trace
    thin = thinned(
        board.nets, lines, width, least, copper=copper, rise=electrical.rise, progress=progress.part(0.0, 0.7)
    )
    weak = weakened(
        board.nets,
        lines,
        width,
        electrical.drop,
        copper=copper,
        rise=electrical.rise,
        progress=progress.part(0.7, 1.0),
    )
    said = [(one.nets, one.at) for one in thin]
    return thin + tuple(
        one
        for one in weak
        if not any(nets == one.nets and math.dist(at, one.at) < SAME_PLACE for nets, at in said)
    )


def _grooves(
    board: Board, layout: Layout, settings: Settings, progress: Progress, given: GivenCuts
) -> GroovePlan:
    """Our own grooves, with those that are given in between."""
    cuts, vbit = settings.cuts, settings.bits.vbit
    numbers = set(range(1, len(board.outlines) + 1)) - given.grooved
    nets = nets_of_boards(board, numbers) if given.grooved else board.nets
    if not nets:
        return given.grooves
    # a groove round copper at the board's edge runs in the waste, as far as the clamps allow
    own = plan_grooves(
        nets,
        vbit.width(cuts.depth),
        bite=cuts.bite,
        least_trace=cuts.least_trace,
        boundary=layout.workable,
        climb=cuts.climb,
        progress=progress.part(0.0, 0.4),
    )
    own = with_bit(own, vbit, settings.blank.copper)
    if wanted(settings):
        both = with_clearing(board, nets, layout, own, settings, progress.part(0.4, 0.7))
        return replace(
            both,
            lines=(*both.lines, *given.grooves.lines),
            line_nets=(*both.line_nets, *given.grooves.line_nets),
        )
    progress.step(0.5, "Order of work")
    every = replace(
        own,
        lines=(*own.lines, *given.grooves.lines),
        line_nets=(*own.line_nets, *given.grooves.line_nets),
    )
    return in_travel_order(every)


SPARED = 0.2
"""Share of the backing that no cut goes into: the bed lies below."""


def depth_into_backing(settings: Settings) -> float:
    """How far holes and outline go below the laminate, mm: as set, but never near the bed."""
    return min(settings.cuts.through, settings.blank.backing * (1.0 - SPARED))


def hole_depth(settings: Settings) -> float:
    """How deep holes are drilled below the copper, mm."""
    return settings.blank.thickness + depth_into_backing(settings)


def _own_holes(board: Board, settings: Settings, through: float) -> HolePlan:
    bits, wanted = settings.bits, settings.holes
    return plan_holes(
        board,
        bits.drills,
        bits.mill,
        thickness=settings.blank.thickness,
        through=through,
        vbit=bits.vbit if wanted.spots else None,
        tolerance=wanted.tolerance,
        slender=wanted.slender,
        small_pad=wanted.small_pad,
        gentle=wanted.gentle,
    )


def _own_outline(
    board: Board, layout: Layout, settings: Settings, through: float, given: GivenCuts
) -> tuple[Cut, ...]:
    cuts = settings.cuts
    left = [edge for number, edge in enumerate(board.outlines, 1) if number not in given.cut_out]
    if not left:
        return ()
    return plan_outline(
        replace(board, outline=MultiPolygon(left)) if given.cut_out else board,
        settings.bits.mill,
        thickness=settings.blank.thickness,
        through=through,
        tabs=cuts.tabs,
        tab_width=cuts.tab_width,
        tab_height=cuts.tab_height,
        keepout=layout.keepout,
    )


@dataclass(frozen=True, slots=True, eq=False)
class CarriedSurface:
    """A surface measured before the board was moved, carried along with it.

    Heights of the copper move with the board; what was the bed's tilt moves too, which is wrong by
    the tilt times the turn: small for drilling, too much for grooves.
    """

    surface: Surface
    before: Placing
    now: Placing

    @property
    def turn(self) -> float:
        """How far the board was turned since it was touched, rad; half a turn where it was turned over."""
        before, now = (one.rigid if isinstance(one, Fit) else one for one in (self.before, self.now))
        if before.mirror is not now.mirror:
            return math.pi
        return abs(math.remainder(now.angle - before.angle, math.tau))

    def _back(self, points: ArrayLike) -> NDArray[np.float64]:
        rigid = self.now.rigid if isinstance(self.now, Fit) else self.now
        return np.asarray(self.before.apply(rigid.inverse().apply(points)))

    def mean(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N,) height at (N, 2) points of the present machine frame, mm."""
        return self.surface.mean(self._back(points))

    def std(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N,) spread of it, mm."""
        return self.surface.std(self._back(points))


def touch_region(board: Board, layout: Layout, tooling: Sequence[Cut] = ()) -> Geometry:
    """Where copper may be touched before cutting, board frame: off clamps, holes and the edge."""
    inside = layout.blank.buffer(-1.5).difference(layout.keepout)
    holes = [Point(hole.x, hole.y).buffer(hole.diameter / 2 + 0.3) for hole in board.holes]
    holes += [Point(cut.path[0]).buffer(cut.diameter / 2 + 0.3) for cut in tooling]
    return inside.difference(unary_union(holes)) if holes else inside


def taught(snap: Snapshot) -> Belief | None:
    """What a coupon has said of the depth the present V-bit cuts beyond what is set; None without one.

    Touching off anew scatters the depth, so its usual spread is kept beside the coupon's own.
    """
    bit = snap.settings.bits.vbit
    for record in reversed(snap.records["coupon"]):
        shape = [record.data.get(name, getattr(bit, name)) for name in ("tip", "runout", "angle")]
        same = np.allclose(shape, [bit.tip, bit.runout, bit.angle], rtol=0.0, atol=1e-9)
        if record.data["bit"] == bit.name and same:
            offset = float(record.data["offset"])
            spread = float(np.hypot(record.data["sigma"], OFFSET_SPREAD))
            return Belief(offset=offset, spread=spread, prior_offset=offset, prior_spread=spread)
    return None


def belief_from(
    observations: Sequence[Any], surface: Surface, settings: Settings, before: Belief | None = None
) -> Belief | None:
    """What a coupon (``before``) and the answers after passes teach about depth; None without either."""
    if not observations:
        return before
    told = [Observation(o["x"], o["y"], o["margin"], o["through"]) for o in observations]
    return update(before or Belief(), told, surface, play=settings.passes.play)
