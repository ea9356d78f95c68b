"""Where to touch: on the grooves, since only there the height matters.

A regular grid over the whole board cannot see ripples; as many touches spread over the grooves
alone sample them far closer. Places are the middles of clusters of groove points, pulled onto a
groove and jittered so that the distances between touches differ (equal distances say little about
how long the ripples are).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TypeAlias

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import cKDTree
from shapely import Geometry

from drypoint.cuts.order import tour
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, as_points, length, resample
from drypoint.progress import Progress
from drypoint.surface.model import Surface

TOUCH_SECONDS = 6.0
"""One place touched twice with the way to it, typical of a small engraver (common practice)."""

_PITCH = 0.5
"""mm between the groove points that are clustered."""
_MOST_POINTS = 40_000
_ROUNDS = 25
_TARGETS = 1500
"""Groove points whose spread is weighed when the next touch is chosen."""
_CANDIDATES = 600
_CLOSEST = 0.3
"""mm; nearer places tell nothing new and meet the first touch's mark."""


Doubt: TypeAlias = Callable[[NDArray[np.float64]], NDArray[np.float64]]
"""From spreads (N,) in mm to the share, 0..1, of a spot that is doubtful."""

_USUAL = 10
"""Touches whose worth is told where none pays."""


@dataclass(frozen=True, slots=True, eq=False)
class Worth:
    """Whether further touches pay.

    Attributes
    ----------
    places : (K, 2)
        Those that pay, in an order of little travel; none where touching should stop.
    count : int
        Touches the figures below are for.
    before, after : float
        Doubtful groove length now, and as expected after them, mm.
    saved, cost : float
        Cutting time they are expected to save and the time they take, s.
    """

    places: Points
    count: int
    before: float
    after: float
    saved: float
    cost: float

    @property
    def pays(self) -> bool:
        """Whether to go on touching."""
        return len(self.places) > 0


@dataclass(frozen=True, slots=True)
class Drop:
    """What further touches are expected to bring.

    ``before`` and ``after`` are doubtful groove length (mm) or, where no doubt was given, the root
    mean square spread (mm); ``seconds`` is the time the touches take.
    """

    before: float
    after: float
    seconds: float


def groove_points(lines: Sequence[Points], pitch: float = _PITCH) -> Points:
    """(N, 2) points along the lines, no further apart than ``pitch`` mm."""
    parts = [resample(np.asarray(line)[:, :2], pitch) for line in lines if len(line)]
    return as_points(np.vstack(parts) if parts else [], 2)


def plan_touches(
    lines: Sequence[Points],
    region: Geometry,
    count: int,
    *,
    seed: int = 0,
    progress: Progress | None = None,
) -> Points:
    """Places to touch, in an order of little travel.

    Parameters
    ----------
    lines : sequence of (N, 2)
        Groove centre lines, machine frame, mm. Without any the region is covered evenly.
    region : geometry
        Where the bit may touch: the blank less clamps, holes and its edge; same frame.
    count : int
        Places wanted; fewer come back only where the region has no room for them.
    seed : int
        Same seed, same places.

    Returns
    -------
    (K, 2), K ≤ count

    Raises
    ------
    PlanError
        If nothing of the region can be touched.
    """
    if count <= 0:
        return as_points([], 2)
    rng = np.random.default_rng(seed)
    ground = _ground(lines, region, rng)
    if len(ground) <= count:
        return _ordered(ground)
    told = progress or Progress()
    centres = _clusters(ground, count, rng, told)
    places = _settle(centres, ground, region, rng)
    return _ordered(places)


def next_touches(
    surface: Surface,
    lines: Sequence[Points],
    region: Geometry,
    count: int,
    *,
    doubt: Doubt | None = None,
    seed: int = 0,
    progress: Progress | None = None,
) -> Points:
    """Where further touches would lessen the doubt along the grooves most.

    Chosen one after another, each from the covariance left by those before it; ``doubt`` maps
    spreads (N,) to the share of a spot that is doubtful (see `expected_drop`) and so weighs where
    a smaller spread helps. Frame and region as in `plan_touches`.
    """
    chosen, _ = _choose(surface, lines, region, count, doubt, seed, progress)
    return _ordered(chosen)


def worth_touching(
    surface: Surface,
    lines: Sequence[Points],
    region: Geometry,
    *,
    doubt: Doubt,
    seconds_per_mm: float,
    seconds_per_touch: float = TOUCH_SECONDS,
    most: int = 40,
    seed: int = 0,
    progress: Progress | None = None,
) -> Worth:
    """Whether further touches pay, and how many: the rule to stop by.

    Places are chosen as in `next_touches`. Each takes time and takes doubt away; so many are
    proposed that the cutting they save exceeds their own time by the most. Where none pays, the
    figures are those of ten.

    Parameters
    ----------
    doubt : as in `next_touches`; the share that would have to be cut again
    seconds_per_mm : time to cut a millimetre of groove again, lifts and plunges included
    seconds_per_touch : time of a touch with the way to it
    most : touches weighed
    """
    chosen, spreads = _choose(surface, lines, region, most, doubt, seed, progress)
    doubtful = _length_of(lines) * np.array([float(doubt(s).mean()) if len(s) else 0.0 for s in spreads])
    gain = (doubtful[0] - doubtful) * seconds_per_mm - seconds_per_touch * np.arange(len(doubtful))
    pays = int(np.argmax(gain))
    count = pays or min(_USUAL, len(chosen))
    return Worth(
        _ordered(as_points(chosen[:pays], 2)),
        count,
        float(doubtful[0]),
        float(doubtful[count]),
        float((doubtful[0] - doubtful[count]) * seconds_per_mm),
        count * seconds_per_touch,
    )


def expected_drop(
    surface: Surface,
    lines: Sequence[Points],
    region: Geometry,
    count: int,
    *,
    doubt: Doubt | None = None,
    seed: int = 0,
    progress: Progress | None = None,
) -> Drop:
    """What `next_touches` with the same arguments is expected to bring.

    `worth_touching` tells whether it pays.
    """
    _, spreads = _choose(surface, lines, region, count, doubt, seed, progress)
    before, after = spreads[0], spreads[-1]
    seconds = count * TOUCH_SECONDS
    if doubt is None:
        rms = [float(np.sqrt(np.mean(s**2))) if len(s) else 0.0 for s in (before, after)]
        return Drop(rms[0], rms[1], seconds)
    total = _length_of(lines)
    shares = [float(doubt(s).mean()) if len(s) else 0.0 for s in (before, after)]
    return Drop(total * shares[0], total * shares[1], seconds)


def _length_of(lines: Sequence[Points]) -> float:
    return sum(length(np.asarray(line)[:, :2]) for line in lines)


def _choose(
    surface: Surface,
    lines: Sequence[Points],
    region: Geometry,
    count: int,
    doubt: Doubt | None,
    seed: int,
    progress: Progress | None,
) -> tuple[Points, list[NDArray[np.float64]]]:
    """Chosen places, and the spread at sample spots of the grooves before any and after each."""
    told = progress or Progress()
    rng = np.random.default_rng(seed)
    ground = _ground(lines, region, rng)
    targets = _some(groove_points(lines) if len(lines) else ground, _TARGETS, rng)
    candidates = _some(ground, _CANDIDATES, rng)
    joint = np.vstack((candidates, targets))
    told.step(0.1, "weighing the next touches")
    cov = surface.covariance(joint, candidates)
    n = len(candidates)
    variance = surface.std(targets) ** 2
    spreads = [np.sqrt(variance)]
    noise = surface.noise**2
    used = np.zeros(n, dtype=bool)
    if len(surface.touches):
        used |= cKDTree(surface.touches[:, :2]).query(candidates)[0] < _CLOSEST
    picks: list[int] = []
    for k in range(min(count, n)):
        told.step(0.2 + 0.8 * k / count, "weighing the next touches")
        own = np.diag(cov[:n]) + noise
        cross = cov[n:]
        drop = cross * cross / own
        worth = drop.sum(axis=0) if doubt is None else _doubt_drop(variance, drop, doubt)
        worth[used] = -1.0
        best = int(np.argmax(worth))
        if worth[best] < 0.0:
            break
        picks.append(best)
        used |= ((candidates - candidates[best]) ** 2).sum(axis=1) < _CLOSEST**2
        variance = np.maximum(variance - drop[:, best], 0.0)
        spreads.append(np.sqrt(variance))
        cov = cov - np.outer(cov[:, best], cov[best]) / own[best]
    return as_points(candidates[picks], 2), spreads


def _doubt_drop(
    variance: NDArray[np.float64],
    drop: NDArray[np.float64],
    doubt: Doubt,
) -> NDArray[np.float64]:
    """(C,) doubt taken away by each candidate."""
    now = doubt(np.sqrt(variance))
    then = doubt(np.sqrt(np.maximum(variance[:, None] - drop, 0.0)).ravel()).reshape(drop.shape)
    return np.asarray((now[:, None] - then).sum(axis=0))


def _ground(lines: Sequence[Points], region: Geometry, rng: np.random.Generator) -> Points:
    """Places that may be touched: groove points inside the region, else the region itself.

    Raises
    ------
    PlanError
        If there are none.
    """
    if shapely.is_empty(region) or shapely.area(region) <= 0.0:
        raise PlanError(
            "There is nowhere to touch: clamps, holes and edge leave no room.",
            hint="Move the clamps, or set the blank larger.",
        )
    shapely.prepare(region)
    points = groove_points(lines)
    if len(points):
        points = _some(points, _MOST_POINTS, rng)
        points = as_points(points[shapely.contains_xy(region, points[:, 0], points[:, 1])], 2)
    if len(points):
        return points
    return _cover(region)


def _cover(region: Geometry) -> Points:
    """A fine grid of places inside the region."""
    x0, y0, x1, y1 = shapely.bounds(region)
    pitch = max(float(np.sqrt(shapely.area(region) / 8000.0)), 1e-3)
    x = np.arange(x0 + pitch / 2, x1, pitch)
    y = np.arange(y0 + pitch / 2, y1, pitch)
    grid = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
    inside = grid[shapely.contains_xy(region, grid[:, 0], grid[:, 1])]
    if not len(inside):
        inside = shapely.get_coordinates(shapely.point_on_surface(region))
    return as_points(inside, 2)


def _clusters(
    ground: Points, count: int, rng: np.random.Generator, progress: Progress
) -> NDArray[np.float64]:
    """(count, 2) cluster middles by Lloyd's k-means, started far apart (k-means++)."""
    centres = _seeds(ground, count, rng)
    for turn in range(_ROUNDS):
        progress.step(turn / _ROUNDS, "planning touches")
        _, label = cKDTree(centres).query(ground)
        size = np.bincount(label, minlength=count)
        sums = np.column_stack([np.bincount(label, ground[:, k], minlength=count) for k in (0, 1)])
        moved = np.where(size[:, None] > 0, sums / np.maximum(size, 1)[:, None], centres)
        step = float(np.abs(moved - centres).max())
        centres = moved
        if step < 0.02:
            break
    return centres


def _seeds(ground: Points, count: int, rng: np.random.Generator) -> NDArray[np.float64]:
    """Start of k-means: each next one drawn with the square of its distance to those before."""
    centres = np.empty((count, 2))
    centres[0] = ground[rng.integers(len(ground))]
    nearest = ((ground - centres[0]) ** 2).sum(axis=1)
    for k in range(1, count):
        total = np.cumsum(nearest)
        pick = int(np.searchsorted(total, rng.random() * total[-1]))
        centres[k] = ground[min(pick, len(ground) - 1)]
        nearest = np.minimum(nearest, ((ground - centres[k]) ** 2).sum(axis=1))
    return centres


def _settle(
    centres: NDArray[np.float64], ground: Points, region: Geometry, rng: np.random.Generator
) -> Points:
    """Cluster middles pulled onto the nearest place that may be touched, then jittered."""
    gap = (
        float(np.median(np.asarray(cKDTree(centres).query(centres, k=2)[0])[:, 1]))
        if len(centres) > 1
        else 0.0
    )
    aim = centres + rng.normal(0.0, 0.08 * gap, centres.shape)
    tree = cKDTree(ground)
    places: list[NDArray[np.float64]] = []
    for point in aim:
        _, near = tree.query(point, k=min(40, len(ground)))
        for index in np.atleast_1d(near):
            place = ground[index]
            if all(((place - other) ** 2).sum() > _CLOSEST**2 for other in places):
                places.append(place)
                break
    return as_points(places, 2)


def _some(points: Points, most: int, rng: np.random.Generator) -> Points:
    """At most ``most`` of the points, evenly from a random start."""
    if len(points) <= most:
        return points
    step = len(points) / most
    picks = ((np.arange(most) + rng.random()) * step).astype(int)
    return as_points(points[np.minimum(picks, len(points) - 1)], 2)


def _ordered(points: Points) -> Points:
    """In an order of little travel."""
    return as_points(points[tour(points, seconds=0.2)], 2) if len(points) > 2 else as_points(points, 2)
