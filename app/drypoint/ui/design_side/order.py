"""What is cut as paths with their times, for canvas and scrubber: where the bit cuts when. Board frame.

Nothing here knows Qt: it is done where plans are computed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.geometry.arcs import arc_points
from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.program.model import MoveKind, Program
from drypoint.program.place import place
from drypoint.program.settings import ProgramSettings
from drypoint.program.time import move_times
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.session.derive import Derived
from drypoint.session.plans import CarriedSurface
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bits import flat
from drypoint.session.work import (
    later_work,
    marks_work,
    passes_work,
    preset_of,
    program_settings,
    run_seconds,
)
from drypoint.ui.canvas.paths import PathSet, path_set

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Order:
    """Cutting moves in order.

    Attributes
    ----------
    paths : PathSet
    times : (N,) s
        Time at each vertex of the paths' finest level, ways between them included.
    seconds : float
        Time of everything.
    """

    paths: PathSet
    times: Floats
    seconds: float


def order_of(derived: Derived, snap: Snapshot, progress: Progress) -> Order:
    """Everything still to run; grooves at the nominal depth while the copper is not touched.

    Raises
    ------
    PlanError
        If something cannot be placed.
    """
    shared = program_settings(snap.settings, preset_of(snap.settings))
    items = [item.program for item in marks_work(derived, snap) if not item.done]
    surface = derived.surface(snap)
    if surface is None:
        passes = flat(derived.cuts(snap).grooves, snap.settings)
        items += place(passes, derived.fit(snap), None, settings=shared, progress=progress.part(0.1, 0.6))
    elif not isinstance(surface, CarriedSurface):
        items += [item.program for item in passes_work(derived, snap, progress.part(0.1, 0.6))]
    progress.step(0.7)
    items += [item.program for item in later_work(derived, snap) if not item.done]
    fit = derived.fit(snap)
    return order_of_programs(items, fit.rigid if isinstance(fit, Fit) else fit, shared)


def order_of_programs(programs: Sequence[Program], fit: Rigid, shared: ProgramSettings) -> Order:
    """The cutting moves of programs one after the other; ``fit`` is board frame to work coordinates."""
    lines: list[Points] = []
    times: list[Floats] = []
    labels: list[str] = []
    begun = 0.0
    back = fit.inverse()
    for program in programs:
        spent = move_times(program.moves, shared.motion)
        ends = begun + np.cumsum(spent)
        for line, moments in _cutting(program, ends):
            lines.append(back.apply(line))
            times.append(moments)
            labels.append(program.title)
        begun += max(run_seconds(program), float(spent.sum()))
    paths = path_set(lines, labels=labels)
    return Order(paths, np.concatenate(times) if times else np.zeros(0), begun)


def _cutting(program: Program, ends: Floats) -> list[tuple[Points, Floats]]:
    """Runs of moves that cut: places (N, 2), machine frame, and the time at each."""
    moves = program.moves
    kind, end = moves.kind, moves.end
    start = np.vstack((end[:1], end[:-1]))
    across = np.abs(end[:, :2] - start[:, :2]).sum(axis=1) > 1e-9
    arc = (kind == MoveKind.ARC_CW) | (kind == MoveKind.ARC_CCW)
    cuts = ((kind == MoveKind.FEED) & across | arc) & (moves.tag >= 0)
    edge = np.diff(np.concatenate(([0], cuts.astype(np.int8), [0])))
    found = []
    for first, stop in zip(np.flatnonzero(edge == 1), np.flatnonzero(edge == -1), strict=True):
        began = ends[first - 1 : first] if first else np.zeros(1)
        if not arc[first:stop].any():
            places = np.vstack((start[first, :2], end[first:stop, :2]))
            found.append((places, np.concatenate((began, ends[first:stop]))))
        else:
            found.append(_with_arcs(program, start, ends, range(first, stop), began))
    return found


def _with_arcs(
    program: Program, start: Points, ends: Floats, moves: range, began: Floats
) -> tuple[Points, Floats]:
    """The same for a run of moves in which some are arcs."""
    kind, end, centre = program.moves.kind, program.moves.end, program.moves.centre
    places, moments = [start[moves[0] : moves[0] + 1, :2]], [began]
    for index in moves:
        part = end[index : index + 1, :2]
        if kind[index] != MoveKind.FEED:
            a, b = start[index, :2], end[index, :2]
            middle = a + centre[index]
            clockwise = bool(kind[index] == MoveKind.ARC_CW)
            part = arc_points(_pair(a), _pair(b), _pair(middle), clockwise)[1:]
        places.append(part)
        moments.append(np.linspace(float(moments[-1][-1]), float(ends[index]), len(part) + 1)[1:])
    return np.vstack(places), np.concatenate(moments)


def _pair(place: Floats) -> tuple[float, float]:
    return float(place[0]), float(place[1])
