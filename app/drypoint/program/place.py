"""From the board frame to the machine: the one place where paths are mapped by the fit and bent
onto the surface, and where moves become the lines that are sent."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import Speeds
from drypoint.geometry.points import Points, along, as_points, is_closed
from drypoint.passes.model import Pass, Run
from drypoint.program.assemble import assemble
from drypoint.program.builder import MoveBuilder, plane_above
from drypoint.program.heights import GRID_SHARE, sample
from drypoint.program.layers import Descent
from drypoint.program.model import Program
from drypoint.program.placed_cuts import place_cuts
from drypoint.program.settings import FitLike, HeightLike, ProgramSettings
from drypoint.program.warp import warp
from drypoint.progress import Progress

__all__ = ["place", "place_cuts"]

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
        part = None if progress is None else progress.part(index / len(passes), (index + 1) / len(passes))
        programs.append(_place_pass(work, fit, surface, chosen, first + index, part))
    return tuple(programs)


def _place_pass(
    work: Pass,
    fit: FitLike,
    surface: HeightLike | None,
    settings: ProgramSettings,
    number: int,
    progress: Progress | None,
) -> Program:
    ways = [_run_on(run, settings.overlap) for run in work.runs]
    follower = _Follower(ways, fit, surface, settings, progress)
    builder = MoveBuilder(plane_above(follower.grid.highest, settings), settings)
    speeds = work.bit.speeds
    for tag in range(len(ways)):
        if progress is not None and tag % 100 == 0:
            progress.step(0.5 + 0.5 * tag / len(ways), f"Placing pass {work.number}")
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
    return assemble(
        builder,
        work.bit,
        name=f"{number:02d}-grooves-pass-{work.number}",
        title=f"Grooves, pass {work.number}",
        pass_number=work.number,
        chord=follower.bound,
    )


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
    """Many ways, mapped and bent onto the surface in one go."""

    def __init__(
        self,
        ways: Sequence[Descent],
        fit: FitLike,
        surface: HeightLike | None,
        settings: ProgramSettings,
        progress: Progress | None,
    ) -> None:
        counts = np.array([len(way.path) for way in ways], dtype=np.int64)
        path = np.vstack([way.path for way in ways]) if len(ways) else np.zeros((0, 2))
        self.path = fit.apply(path) if len(path) else as_points(path)
        self.grid = sample(
            surface,
            self.path,
            GRID_SHARE * settings.chord,
            None if progress is None else progress.part(0, 0.5),
        )
        starts = np.cumsum(counts) - counts
        first = np.zeros(len(path), dtype=bool)
        first[starts[counts > 0]] = True
        depth = np.concatenate([way.depth for way in ways]) if len(ways) else np.zeros(0)
        warped = warp(self.path, depth, first, self.grid, settings.chord)
        self.bound = warped.bound
        self._points = warped.points
        self._edges = np.searchsorted(warped.source, np.concatenate((starts, [len(path)])))

    def points(self, index: int) -> Points:
        """(M, 3) the bent points of one way."""
        piece: Points = self._points[self._edges[index] : self._edges[index + 1]]
        return piece
