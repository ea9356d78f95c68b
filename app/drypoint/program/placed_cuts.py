"""Marks, holes, bores, slots, legend and outline, placed on the machine."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import Bit, Drill, EndMill
from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, along, as_points
from drypoint.program.assemble import assemble
from drypoint.program.builder import MoveBuilder, hop_above, plane_above
from drypoint.program.heights import GRID_SHARE, HeightGrid, sample
from drypoint.program.layers import Descent, descend, find_tabs
from drypoint.program.model import Program
from drypoint.program.settings import FitLike, HeightLike, ProgramSettings
from drypoint.program.strokes import bore, drill, eased
from drypoint.program.warp import warp
from drypoint.progress import Progress
from drypoint.wording import say, strung

SPOT_PITCH = 0.5
"""Holes drilled in a row to make a slot: distance as a share of the drill's diameter."""


POINT = 1e-6
"""A path shorter than this, mm, is one place."""


@dataclass(frozen=True, slots=True, eq=False)
class _Placed:
    """A cut with its path and tabs in the machine frame."""

    tag: int
    cut: Cut
    path: Points
    tabs: Points | None


def place_cuts(
    cuts: Sequence[Cut],
    fit: FitLike,
    surface: HeightLike | None,
    settings: ProgramSettings | None = None,
    *,
    first: int = 1,
    progress: Progress | None = None,
) -> tuple[Program, ...]:
    """Programs for marks, holes, bores, slots, legend and outline: one per bit, the outline last.

    ``Moves.tag`` is the index into ``cuts``. Depths are below the local copper.

    Raises
    ------
    PlanError
        The surface is too rough for the chord error, a bit has no feed or a cut no depth.
    """
    chosen = settings or ProgramSettings()
    if not cuts:
        return ()
    _check_depths(cuts)
    placed = [
        _Placed(tag, cut, fit.apply(cut.path), None if cut.tabs is None else fit.apply(cut.tabs))
        for tag, cut in enumerate(cuts)
        if len(cut.path)
    ]
    if not placed:
        return ()
    grid = sample(
        surface, as_points(np.vstack([p.path for p in placed])), GRID_SHARE * chosen.chord, progress
    )
    programs = []
    for offset, group in enumerate(_groups(placed)):
        if progress is not None:
            progress.step(offset / len(cuts), "Placing")
        # what is cut out may come loose, and stand up: the way over it stays high
        outline = group[0].cut.kind is CutKind.OUTLINE
        low = None if surface is None or outline else hop_above(grid.highest, chosen)
        programs.append(_place_group(group, grid, chosen, first + offset, low))
    return tuple(programs)


def _check_depths(cuts: Sequence[Cut]) -> None:
    for cut in cuts:
        if not cut.depth > 0:
            raise PlanError(
                say("A {value} has no depth.", value=cut.kind.value),
                cut.label,
                "Set its depth; grooves are placed pass by pass.",
            )


def _groups(placed: Sequence[_Placed]) -> list[list[_Placed]]:
    """Cuts by bit in the default order of work; outlines on their own at the end."""
    order = list(CutKind)
    found: dict[tuple[bool, Bit], list[_Placed]] = {}
    for one in sorted(placed, key=lambda p: order.index(p.cut.kind)):
        found.setdefault((one.cut.kind is CutKind.OUTLINE, one.cut.bit), []).append(one)
    return sorted(found.values(), key=lambda group: group[0].cut.kind is CutKind.OUTLINE)


def _place_group(
    group: Sequence[_Placed], grid: HeightGrid, settings: ProgramSettings, number: int, low: float | None
) -> Program:
    builder = MoveBuilder(plane_above(grid.highest, settings), settings, low)
    bit, bound = group[0].cut.bit, 0.0
    for one in group:
        if along(one.path)[-1] < POINT:
            _round(builder, one, grid)
        elif isinstance(bit, Drill):
            _row(builder, one, bit, grid)
        else:
            bound = max(bound, _along(builder, one, grid))
    builder.lift()
    kinds = sorted({one.cut.kind for one in group}, key=list(CutKind).index)
    name = "-".join(kind.value.replace(" ", "-") for kind in kinds)
    what = strung((_HEAD[kinds[0]], *(_PLURAL[kind] for kind in kinds[1:])), ", ")
    return assemble(
        builder,
        bit,
        name=f"{number:02d}-{name}-{slug(bit.name)}",
        title=say("{what}: {bit}", what=what, bit=bit.name),
        chord=bound,
    )


_PLURAL = {
    CutKind.MARK: say("reference marks"),
    CutKind.GROOVE: say("grooves"),
    CutKind.CLEAR: say("clearing"),
    CutKind.SPOT: say("spot marks"),
    CutKind.HOLE: say("holes"),
    CutKind.TOOLING: say("tooling holes"),
    CutKind.BORE: say("bored holes"),
    CutKind.SLOT: say("slots"),
    CutKind.LEGEND: say("legend"),
    CutKind.OUTLINE: say("outline"),
}
_HEAD = {
    CutKind.MARK: say("Reference marks"),
    CutKind.GROOVE: say("Grooves"),
    CutKind.CLEAR: say("Clearing"),
    CutKind.SPOT: say("Spot marks"),
    CutKind.HOLE: say("Holes"),
    CutKind.TOOLING: say("Tooling holes"),
    CutKind.BORE: say("Bored holes"),
    CutKind.SLOT: say("Slots"),
    CutKind.LEGEND: say("Legend"),
    CutKind.OUTLINE: say("Outline"),
}


def slug(text: str) -> str:
    """Safe as part of a file name."""
    kept = "".join(c.lower() if c.isascii() and (c.isalnum() or c == ".") else "-" for c in text)
    return "-".join(part for part in kept.split("-") if part) or "bit"


def _round(builder: MoveBuilder, one: _Placed, grid: HeightGrid) -> None:
    """A hole: bored where it is wider than the mill, else drilled."""
    cut, tag = one.cut, one.tag
    top = float(grid.mean(one.path)[0])
    at = (float(one.path[0, 0]), float(one.path[0, 1]))
    if isinstance(cut.bit, EndMill) and cut.diameter > cut.bit.diameter:
        bore(builder, at, top, cut.depth, cut.diameter, cut.bit, tag)
    else:
        drill(builder, at, top, cut.depth, eased(cut.bit, cut.ease), tag)


def _row(builder: MoveBuilder, one: _Placed, bit: Drill, grid: HeightGrid) -> None:
    """A slot made by a drill: both ends first, then every second hole, then those between.

    A drill that meets half a hole wanders (common practice, no source), hence the order.
    """
    place = along(one.path)
    count = max(2, int(np.ceil(place[-1] / (SPOT_PITCH * bit.diameter))) + 1)
    order = [0, count - 1, *range(2, count - 1, 2), *range(1, count - 1, 2)]
    where = np.linspace(0.0, place[-1], count)[order]
    spots = as_points(np.column_stack([np.interp(where, place, one.path[:, axis]) for axis in (0, 1)]))
    for (x, y), top in zip(spots.tolist(), grid.mean(spots).tolist(), strict=True):
        drill(builder, (x, y), top, one.cut.depth, bit, one.tag)


def _along(builder: MoveBuilder, one: _Placed, grid: HeightGrid) -> float:
    """A path cut layer by layer; the bound on its chord error."""
    settings, cut, bit = builder.settings, one.cut, one.cut.bit
    step, diameter = (bit.step, bit.diameter) if isinstance(bit, EndMill) else (0.0, 0.0)
    tabs = find_tabs(one.path, one.tabs, cut.tab_width + diameter, cut.depth - cut.tab_height)
    way = descend(one.path, cut.depth, step, settings.ramp_angle, settings.overlap, tabs)
    first = np.zeros(len(way.path), dtype=bool)
    first[0] = True
    warped = warp(way.path, way.depth, first, grid, settings.chord)
    feeds = _feeds(way, bit, settings)[warped.source]
    x, y, z = warped.points[0].tolist()
    builder.travel(x, y)
    builder.enter(x, y, z + float(way.depth[0]), z, bit.speeds.plunge, one.tag)
    builder.feed(warped.points[1:], feeds[1:], one.tag)
    return warped.bound


def _feeds(way: Descent, bit: Bit, settings: ProgramSettings) -> NDArray[np.float64]:
    """(N,) feed of the segment that ends at each vertex: its way down no faster than the plunge."""
    flat = np.hypot(*np.diff(way.path, axis=0).T)
    down = np.diff(way.depth)
    speeds = bit.speeds
    with np.errstate(divide="ignore", invalid="ignore"):
        ramp = speeds.plunge * np.hypot(flat, down) / np.abs(down)
    feed = np.where(down > 0, np.minimum(speeds.feed, ramp), speeds.feed)
    feed = np.where((flat == 0) & (down < 0), settings.retract_feed, feed)
    return np.concatenate(([speeds.plunge], feed))
