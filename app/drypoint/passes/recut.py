"""Selective re-cut: the next pass goes only where the last was not surely through."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry

from drypoint.bits.model import VBit
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, along, is_closed, resample, stretch
from drypoint.passes.depth import check_settings, wanted_depth
from drypoint.passes.learning import Belief
from drypoint.passes.model import THROUGH, Pass, ReachMap, Run
from drypoint.passes.spots import FitLike, HeightSpread, Spots, planned_depths, run_on
from drypoint.progress import Progress

DEEPER = 0.01
"""mm a re-cut goes below the last pass at least: less would only rub."""

PAINT_PITCH = 0.1
"""mm to which the ends of painted pieces are found."""


def plan_recut(
    lines: Sequence[Points],
    reach: ReachMap,
    previous: Sequence[Pass],
    fit: FitLike,
    surface: HeightSpread,
    bit: VBit,
    *,
    copper: float,
    play: float,
    target: float = 0.995,
    deepest: float = 0.25,
    join: float = 1.5,
    overlap: float = 0.4,
    below: float = THROUGH,
    painted: Geometry | None = None,
    grooves: Iterable[int] = (),
    belief: Belief | None = None,
    progress: Progress | None = None,
) -> Pass | None:
    """The next pass: runs over what is not surely through; None where nothing is left to cut.

    Parameters
    ----------
    lines : sequence of (N, 2), board frame, mm; the lines of ``reach``
    below : spots whose probability is below this are cut again
    painted : geometry, board frame; spots in it are cut again whatever their probability
    grooves : indices of grooves cut again whole, such as those an island touch found joined
    join : gaps between doubtful pieces shorter than this are cut too, mm: a lift costs more
    overlap : how far a run goes on at both ends into what is through, mm

    Raises
    ------
    PlanError
        If the settings cannot reach through the copper.
    """
    check_settings(copper, play, target, deepest)
    told = progress or Progress()
    whole = set(grooves)
    runs: list[Run] = []
    number = max((one.number for one in previous), default=0) + 1
    for index in range(len(lines)):
        told.step(index / max(len(lines), 1), "planning the re-cut")
        points, p = np.asarray(reach.points[index]), reach.probability[index]
        wanted = p < below
        if index in whole:
            wanted = np.ones(len(p), dtype=bool)
        if painted is not None and len(points):
            wanted = wanted | shapely.contains_xy(painted, points[:, 0], points[:, 1])
        for start, stop in pieces(points, wanted, join, overlap):
            path = stretch(points, start, stop)
            runs.append(run_on(index, path, np.zeros(len(path))))
    if not runs:
        return None
    deeper = _depths(runs, previous, fit, surface, copper, play, target, deepest, belief)
    return Pass(number, bit, deeper)


def recut_painted(
    lines: Sequence[Points],
    polygons: Geometry | Sequence[Geometry],
    previous: Sequence[Pass],
    fit: FitLike,
    surface: HeightSpread,
    bit: VBit,
    *,
    copper: float,
    play: float,
    target: float = 0.995,
    deepest: float = 0.25,
    belief: Belief | None = None,
    progress: Progress | None = None,
) -> Pass:
    """The next pass: the grooves inside what was painted and nothing else, sure or not.

    Parameters
    ----------
    lines : sequence of (N, 2), board frame, mm
    polygons : painted areas, board frame; several may overlap
    previous : the passes cut so far; the new one goes deeper than they did by 0.01 mm at least

    Raises
    ------
    PlanError
        If no groove lies in what was painted, or the settings cannot reach through the copper.
    """
    check_settings(copper, play, target, deepest)
    told = progress or Progress()
    area = polygons if isinstance(polygons, Geometry) else shapely.union_all(list(polygons))
    shapely.prepare(area)
    runs: list[Run] = []
    for index, line in enumerate(lines):
        told.step(index / max(len(lines), 1), "planning the re-cut")
        points = np.asarray(resample(np.asarray(line)[:, :2], PAINT_PITCH))
        if len(points) < 2 or not shapely.intersects(area, shapely.LineString(points)):
            continue
        inside = shapely.contains_xy(area, points[:, 0], points[:, 1])
        for start, stop in pieces(points, inside, 1e-6, 0.0):
            path = stretch(points, start, stop)
            runs.append(run_on(index, path, np.zeros(len(path))))
    if not runs:
        raise PlanError("No groove lies in what was painted.", hint="Paint across the grooves to cut again.")
    number = max((one.number for one in previous), default=0) + 1
    deeper = _depths(runs, previous, fit, surface, copper, play, target, deepest, belief)
    return Pass(number, bit, deeper)


def pieces(
    points: NDArray[np.float64], wanted: NDArray[np.bool_], join: float, overlap: float
) -> list[tuple[float, float]]:
    """Stretches of a line to cut, as distances along it, mm; a closed line may run past its end.

    Wanted spots are widened by half a step and by ``overlap``, and joined over gaps shorter than
    ``join``.
    """
    if not wanted.any() or len(points) < 2:
        return []
    s = along(points)
    total = float(s[-1])
    closed = is_closed(points)
    if wanted.all():
        return [(0.0, total)]
    edges = np.flatnonzero(np.diff(wanted.astype(np.int8)))
    starts = [0.5 * float(s[i] + s[i + 1]) for i in edges if not wanted[i]]
    stops = [0.5 * float(s[i] + s[i + 1]) for i in edges if wanted[i]]
    if wanted[0]:
        starts.insert(0, 0.0)
    if wanted[-1]:
        stops.append(total)
    spans = [(a - overlap, b + overlap) for a, b in zip(starts, stops, strict=True)]
    joined = [spans[0]]
    for a, b in spans[1:]:
        if a - joined[-1][1] < join:
            joined[-1] = (joined[-1][0], b)
        else:
            joined.append((a, b))
    if not closed:
        return [(max(a, 0.0), min(b, total)) for a, b in joined]
    first, last = joined[0], joined[-1]
    if len(joined) > 1 and first[0] + total - last[1] < join:
        joined = [*joined[1:-1], (last[0], first[1] + total)]
    if joined[-1][1] - joined[-1][0] >= total:
        return [(0.0, total)]
    return joined


def _depths(
    runs: Sequence[Run],
    previous: Sequence[Pass],
    fit: FitLike,
    surface: HeightSpread,
    copper: float,
    play: float,
    target: float,
    deepest: float,
    belief: Belief | None,
) -> tuple[Run, ...]:
    """The runs with depth at every vertex: the target's, and deeper than the passes before."""
    paths = [run.path for run in runs]
    first = np.concatenate(([0], np.cumsum([len(p) for p in paths]))).astype(np.int64)
    spots = Spots(np.vstack(paths), first)
    depth = wanted_depth(spots.points, fit, surface, copper, play, target, deepest, belief)
    before = _before(runs, spots, previous)
    depths = spots.split(np.minimum(np.maximum(depth, before + DEEPER), deepest))
    return tuple(run_on(run.groove, run.path, one) for run, one in zip(runs, depths, strict=True))


def _before(runs: Sequence[Run], spots: Spots, previous: Sequence[Pass]) -> NDArray[np.float64]:
    """(N,) deepest depth so far at each spot; −inf where none went."""
    by_groove: dict[int, list[int]] = {}
    for k, run in enumerate(runs):
        by_groove.setdefault(run.groove, []).append(k)
    renamed = [
        Pass(
            one.number,
            one.bit,
            tuple(Run(k, run.path, run.depth) for run in one.runs for k in by_groove.get(run.groove, ())),
        )
        for one in previous
    ]
    if not renamed:
        return np.full(len(spots), -np.inf)
    return np.asarray(planned_depths(spots, renamed).max(axis=0))
