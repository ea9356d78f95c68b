"""From the board frame to the machine: the one place where paths are mapped by the fit and bent
onto the surface, and where moves become the lines that are sent."""

from __future__ import annotations

import itertools
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import Speeds
from drypoint.cuts.model import CutKind
from drypoint.geometry.points import Points, along, as_points, is_closed
from drypoint.passes.model import Pass, Run
from drypoint.program.assemble import assemble
from drypoint.program.builder import MoveBuilder, hop_above, plane_above
from drypoint.program.heights import GRID_SHARE, sample
from drypoint.program.layers import Descent
from drypoint.program.model import Program
from drypoint.program.placed_cuts import place_cuts
from drypoint.program.settings import FitLike, HeightLike, ProgramSettings
from drypoint.program.warp import warp
from drypoint.progress import Progress
from drypoint.wording import say

__all__ = ["place", "place_cuts"]

AT_ONCE = 20_000
"""Vertices bent at once: a fraction of a second's work between two chances to cancel."""
TOUCHING = 1e-6
"""Paths whose ends are closer than this, mm, are joined without lifting."""


def place(
    passes: Sequence[Pass],
    fit: FitLike,
    surface: HeightLike | None,
    *,
    settings: ProgramSettings | None = None,
    first: int = 1,
    progress: Progress | None = None,
) -> tuple[Program, ...]:
    """One program per pass over grooves: z = surface(fit(p)) - depth.

    Runs are cut in the order given; a run that starts where the one before ended is joined to it.
    Closed runs go on past their start by ``settings.overlap``. ``Moves.tag`` is the run's index.

    Parameters
    ----------
    surface : has ``.mean`` in the machine frame; None is the plane z = 0
    first : number of the first program, for the names

    Raises
    ------
    PlanError
        The surface is too rough for the chord error, or a bit has no feed.
    """
    chosen = settings or ProgramSettings()
    programs = []
    for index, work in enumerate(passes):
        part = (progress or Progress()).part(index / len(passes), (index + 1) / len(passes))
        programs.append(_place_pass(work, fit, surface, chosen, first + index, part))
    return tuple(programs)


def _place_pass(
    work: Pass,
    fit: FitLike,
    surface: HeightLike | None,
    settings: ProgramSettings,
    number: int,
    progress: Progress,
) -> Program:
    ways = [_run_on(run, settings.overlap) for run in work.runs]
    follower = _Follower(ways, fit, surface, settings, progress.part(0.0, 0.5))
    low = None if surface is None else hop_above(follower.grid.highest, settings)
    builder = MoveBuilder(plane_above(follower.grid.highest, settings), settings, low)
    speeds = work.bit.speeds
    for tag in range(len(ways)):
        if tag % 100 == 0:
            progress.step(0.5 + 0.2 * tag / len(ways), say("Placing pass {number}", number=work.number))
        points = follower.points(tag)
        if not len(points):
            continue
        x, y, z = points[0].tolist()
        if builder.at is None or max(abs(builder.at[0] - x), abs(builder.at[1] - y)) > TOUCHING:
            builder.travel(x, y)
            builder.enter(x, y, z + float(ways[tag].depth[0]), z, speeds.plunge, tag)
        elif z < builder.at[2]:
            builder.feed(points[:1], speeds.plunge, tag)
        builder.feed(points[1:], _slowed(points, speeds), tag)
    builder.lift()
    clears = work.kind is CutKind.CLEAR
    title = say("Clearing: {bit}", bit=work.bit.name) if clears else _groove_title(work)
    return assemble(
        builder,
        work.bit,
        name=f"{number:02d}-{'clearing' if clears else 'grooves'}-pass-{work.number}",
        title=title,
        pass_number=work.number,
        chord=follower.bound,
        progress=progress.part(0.7, 1.0),
    )


def _groove_title(work: Pass) -> str:
    return say("Grooves, pass {number}", number=work.number)


def _slowed(points: Points, speeds: Speeds) -> NDArray[np.float64]:
    """(N - 1,) feed of each segment: down no faster than the plunge."""
    way = np.diff(points, axis=0)
    length, down = np.sqrt((way**2).sum(axis=1)), np.maximum(-way[:, 2], 1e-12)
    slowed: NDArray[np.float64] = np.minimum(speeds.feed, speeds.plunge * length / down)
    return slowed


def _run_on(run: Run, overlap: float) -> Descent:
    """A run; a closed one goes on past its start."""
    path, depth = run.path, np.asarray(run.depth, dtype=np.float64)
    if not is_closed(path) or overlap <= 0:
        return Descent(path, depth)
    place = along(path)
    more = min(overlap, float(place[-1]))
    stop = int(np.searchsorted(place, more))
    inner = [*place[1:stop].tolist(), more]
    extra = np.column_stack([np.interp(inner, place, path[:, axis]) for axis in (0, 1)])
    # the overlap is the same groove again, never deeper
    return Descent(
        as_points(np.vstack((path, extra))), np.concatenate((depth, np.interp(inner, place, depth)))
    )


class _Follower:
    """Many ways, mapped and bent onto the surface."""

    def __init__(
        self,
        ways: Sequence[Descent],
        fit: FitLike,
        surface: HeightLike | None,
        settings: ProgramSettings,
        progress: Progress,
    ) -> None:
        mapped = [fit.apply(way.path) if len(way.path) else way.path for way in ways]
        extent = as_points(np.vstack(mapped)) if mapped else as_points([])
        self.grid = sample(surface, extent, GRID_SHARE * settings.chord, progress.part(0.0, 0.4))
        self.bound = 0.0
        self._points: list[Points] = []
        start = 0
        while start < len(ways):
            progress.step(0.4 + 0.6 * start / len(ways), "Following the surface")
            stop, size = start, 0
            while stop < len(ways) and (stop == start or size < AT_ONCE):
                size += len(mapped[stop])
                stop += 1
            self._follow(mapped[start:stop], [way.depth for way in ways[start:stop]], settings.chord)
            start = stop

    def _follow(self, paths: list[Points], depths: list[NDArray[np.float64]], chord: float) -> None:
        counts = np.array([len(path) for path in paths], dtype=np.int64)
        starts = np.cumsum(counts) - counts
        total = int(counts.sum())
        first = np.zeros(total, dtype=bool)
        first[starts[counts > 0]] = True
        warped = warp(as_points(np.vstack(paths)), np.concatenate(depths), first, self.grid, chord)
        self.bound = max(self.bound, warped.bound)
        edges = np.searchsorted(warped.source, np.append(starts, total))
        self._points += [warped.points[a:b] for a, b in itertools.pairwise(edges.tolist())]

    def points(self, index: int) -> Points:
        """(M, 3) the bent points of one way."""
        return self._points[index]
