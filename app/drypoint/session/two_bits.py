"""A wide bit for open copper beside the fine one, and copper taken away: planned, and what it saves."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, Point

from drypoint.bits.model import EndMill, VBit
from drypoint.board.model import Board
from drypoint.cuts.clearing import clear_area, sliver_paths
from drypoint.cuts.model import GroovePlan
from drypoint.cuts.rest import CutWidth, RestPlan, assembled, plan_rest
from drypoint.geometry.points import Points
from drypoint.passes.model import Pass
from drypoint.passes.wide import flat_passes
from drypoint.progress import Progress
from drypoint.session.clear_settings import ClearArea, Clearing, ClearSettings
from drypoint.session.layout import Layout
from drypoint.session.settings import Settings

CLEAR_OF_ZERO = 1.5
"""Reference holes keep this far from the zero spot, and copper round it stays: every bit is set to its
height there, mm."""

WASTE = 0.5
"""A moat goes on so far into the waste beside the board, mm: reference holes lie there."""


@dataclass(frozen=True, slots=True, eq=False)
class Widths:
    """Width of every groove at the copper's top and at its underside, (L,) mm each."""

    top: NDArray[np.float64]
    under: NDArray[np.float64]


def wide_bit(settings: Settings) -> VBit | None:
    """The second bit; an end mill as a V without angle."""
    bit = settings.clearing.bit
    return bit.straight if isinstance(bit, EndMill) else bit


def flat(grooves: GroovePlan, settings: Settings) -> tuple[Pass, ...]:
    """Every line once at the depth it is planned for, as passes: the wide bit first."""
    wide, clearing = wide_bit(settings), settings.clearing
    return flat_passes(grooves, settings.bits.vbit, settings.cuts.depth, wide, clearing.depth)


def wanted(settings: Settings) -> bool:
    """Whether anything but fine grooves is to be cut."""
    clearing = settings.clearing
    return clearing.bit is not None or clearing.what is not Clearing.NOTHING or clearing.slivers > 0.0


def fine_width(settings: Settings) -> CutWidth:
    """What the V-bit cuts at the depth that is planned for."""
    vbit, depth = settings.bits.vbit, settings.cuts.depth
    return CutWidth(vbit.width(depth), vbit.width(max(depth - settings.blank.copper, 0.0)))


def wide_width(settings: Settings) -> CutWidth:
    """What the wide bit cuts at its depth; nothing if there is none."""
    bit, depth, copper = wide_bit(settings), settings.clearing.depth, settings.blank.copper
    if bit is None:
        return CutWidth(0.0, 0.0)
    return CutWidth(bit.width(depth), bit.width(depth - copper) if depth > copper else 0.0)


def widths_of(grooves: GroovePlan, settings: Settings) -> Widths:
    """The widths that all lines of a plan are planned for."""
    wide, fine = wide_width(settings), fine_width(settings)
    first = np.arange(len(grooves.lines)) < grooves.wide
    return Widths(np.where(first, wide.top, fine.top), np.where(first, wide.under, fine.under))


def with_clearing(
    board: Board,
    nets: Mapping[str, Geometry],
    layout: Layout,
    alone: GroovePlan,
    settings: Settings,
    progress: Progress,
) -> GroovePlan:
    """The grooves of the fine bit alone, changed to what is cut with both bits and with clearing.

    ``alone`` isolates ``nets``, which may be some of those of the board.

    Raises
    ------
    InputError
        If the second bit does not cut wider, or not through the copper.
    PlanError
        If it is far too narrow for what is to be cleared.
    """
    rest = RestPlan(GroovePlan((), (), ()), alone)
    if settings.clearing.bit is not None:
        rest = plan_rest(
            nets, alone, wide_width(settings), fine_width(settings),
            boundary=layout.workable, climb=settings.cuts.climb, progress=progress.part(0.0, 0.5),
        )  # fmt: skip
    cleared = _Cleared(board, layout, settings, rest)
    wide_fill, fine_fill = cleared.area(progress.part(0.5, 0.8))
    fine_fill += cleared.slivers(wide_fill, fine_fill, progress.part(0.8, 0.95))
    progress.step(0.95, "Order of work")
    return assembled(rest, wide_fill, fine_fill)


def area_to_clear(board: Board, layout: Layout, clearing: ClearSettings) -> Geometry:
    """Where copper without net is taken away, board frame; never round the zero spot."""
    found: Geometry
    if clearing.what is Clearing.NOTHING:
        return shapely.Polygon()
    if clearing.what is Clearing.MOAT:
        moat = shapely.buffer(shapely.union_all(list(board.nets.values())), clearing.moat)
        found = shapely.intersection(moat, shapely.buffer(board.outline, WASTE))
    elif clearing.what is Clearing.BOARD:
        found = board.outline
    else:
        found = shapely.union_all([_rectangle(one) for one in clearing.areas])
    return _off_zero(shapely.intersection(found, layout.workable), layout)


def _rectangle(one: ClearArea) -> Geometry:
    return shapely.box(one.x, one.y, one.x + one.width, one.y + one.height)


def _off_zero(area: Geometry, layout: Layout) -> Geometry:
    return shapely.difference(area, Point(layout.zero_spot).buffer(CLEAR_OF_ZERO))


class _Cleared:
    """Paths that only take copper away."""

    def __init__(self, board: Board, layout: Layout, settings: Settings, rest: RestPlan) -> None:
        self._nets, self._rest = board.nets, rest
        self._clearing = settings.clearing
        self._wide, self._fine = wide_width(settings), fine_width(settings)
        self._area = area_to_clear(board, layout, settings.clearing)
        self._window = _off_zero(shapely.intersection(board.outline, layout.workable), layout)

    def area(self, progress: Progress) -> tuple[tuple[Points, ...], tuple[Points, ...]]:
        """By the wide bit and by the fine one: all by the wide bit where there is one."""
        if shapely.is_empty(self._area):
            return (), ()
        two = self._clearing.bit is not None
        width, done = (self._wide, self._rest.wide) if two else (self._fine, self._rest.fine)
        paths = clear_area(
            self._nets, width.under, self._area, overlap=self._clearing.overlap,
            clearance=width.top / 2.0, done=done.lines, progress=progress,
        )  # fmt: skip
        return (paths, ()) if two else ((), paths)

    def slivers(
        self, wide_fill: tuple[Points, ...], fine_fill: tuple[Points, ...], progress: Progress
    ) -> tuple[Points, ...]:
        """Pieces without net that are small enough to be taken away, by the fine bit."""
        if self._clearing.slivers <= 0.0:
            return ()
        wide, fine = (*self._rest.wide.lines, *wide_fill), (*self._rest.fine.lines, *fine_fill)
        under = np.repeat([self._wide.under, self._fine.under], [len(wide), len(fine)])
        return sliver_paths(
            self._nets, (*wide, *fine), under, self._fine.under,
            largest=self._clearing.slivers, window=self._window, progress=progress,
        )  # fmt: skip


def seen_from_below(clearing: ClearSettings, width: float) -> ClearSettings:
    """The same areas as the other side of a board ``width`` mm wide sees them."""
    areas = tuple(replace(one, x=width - one.x - one.width) for one in clearing.areas)
    return replace(clearing, areas=areas)


def one_bit(settings: Settings) -> Settings:
    """The same job with the fine bit alone, which cuts its grooves and takes no copper away."""
    return replace(settings, clearing=ClearSettings(change=settings.clearing.change))
