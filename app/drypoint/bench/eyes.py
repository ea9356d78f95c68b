"""Simulated eyes with a loupe, and a hand with a meter: what a person reads from lines that were cut."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import LineString

from drypoint.bench.copper import Groove
from drypoint.geometry.points import Points

if TYPE_CHECKING:
    from drypoint.bench.bench import Bench

Floats = NDArray[np.float64]

LOUPE = 0.012
"""Spread of a width read with a loupe with a scale, mm."""
SCALE = 0.005
"""What such a scale is read to, mm."""
ON_LINE = 0.12
"""A groove whose middle lies this near to a line is the one that is looked at, mm."""
ASIDE = 0.03
"""How far from the middle of two lines a ridge between them is looked for, mm: play shifts both."""
OTHER = 0.03
"""What differs by more from the depth that was set is another cut, mm."""
BESIDE = 0.4
"""How far outside a square the meter's other tip is held, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class Sight:
    """Lines to look at, work coordinates, mm: their widths, squares round islands, ridges between two."""

    widths: tuple[Points, ...] = ()
    squares: tuple[Points, ...] = ()
    ridges: tuple[tuple[Points, Points], ...] = ()


@dataclass(frozen=True, slots=True)
class Seen:
    """What was seen: widths, mm (None: nothing is cut there), whether parted, whether a ridge stands."""

    widths: tuple[float | None, ...]
    parted: tuple[bool, ...]
    stands: tuple[bool, ...]


def look_at(bench: Bench, sight: Sight, rng: np.random.Generator) -> Seen:
    """Read all of it, about as well as a person."""
    tops = bench.copper.grooves(0.0) if sight.widths else []
    paths = [bench.board_to_sheet(line) for line in sight.widths]
    return Seen(
        tuple(_read(tops, path, rng) for path in paths),
        tuple(_parted(bench, bench.board_to_sheet(square)) for square in sight.squares),
        tuple(_stands(bench, *(bench.board_to_sheet(one) for one in pair)) for pair in sight.ridges),
    )


def true_width(tops: list[Groove], path: Floats) -> float | None:
    """Mean width of what is cut along (N, 2) sheet places, mm; None where less than half of it is cut."""
    line = LineString(path)
    near = [
        (float(shapely.length(LineString(one.path))), one.width)
        for one in tops
        if len(one.path) > 1 and shapely.distance(line, shapely.points(one.path.mean(axis=0))) < ON_LINE
    ]
    weight = sum(length for length, _ in near)
    if weight < 0.5 * line.length:
        return None
    return sum(length * width for length, width in near) / weight


def true_depths(bench: Bench, path: Points, set_depth: float) -> Floats:
    """(N,) depths, mm, at which the tip really went along a path of work coordinates that was cut once."""
    way = LineString(bench.board_to_sheet(path))
    found = [np.zeros(0)]
    for sweep in bench.copper.sweeps:
        on = (shapely.distance(way, shapely.points(sweep.path)) < ON_LINE / 2.0) & (sweep.depth > 0.0)
        if on.any() and abs(float(np.median(sweep.depth[on])) - set_depth) < OTHER:
            found.append(sweep.depth[on])
    return np.concatenate(found)


def _read(tops: list[Groove], path: Floats, rng: np.random.Generator) -> float | None:
    width = true_width(tops, path)
    if width is None:
        return None
    return max(SCALE, round((width + float(rng.normal(0.0, LOUPE))) / SCALE) * SCALE)


def _parted(bench: Bench, square: Floats) -> bool:
    """Whether the meter finds the copper in a square apart from that beside it."""
    middle = square[:-1].mean(axis=0)
    corner = square[0] - middle
    beside = middle + corner * (1.0 + BESIDE / float(np.hypot(*corner)))
    pieces = bench.copper.pieces
    inner, outer = (pieces.label_near((float(x), float(y))) for x, y in (middle, beside))
    return inner is not None and inner != outer


def _stands(bench: Bench, one: Floats, other: Floats) -> bool:
    """Whether copper is left between two lines, wherever play has put them, over more than half of them."""
    ends = (one[[0, -1]] + other[[0, -1]]) / 2.0
    along = (ends[1] - ends[0]) / float(np.hypot(*(ends[1] - ends[0])))
    share = np.linspace(0.05, 0.95, 31)[:, None, None]
    aside = np.linspace(-ASIDE, ASIDE, 31)[None, :, None] * np.array([-along[1], along[0]])
    between = ends[0] + share * (ends[1] - ends[0]) + aside
    left = bench.copper.pieces.covers(between.reshape(-1, 2)).reshape(between.shape[:2])
    return bool(left.any(axis=1).mean() > 0.5)
