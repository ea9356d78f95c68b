"""Traces that the cut leaves thinner than allowed, with what they still carry."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from shapely import Geometry

from drypoint.cuts.milled import NOTICE, Milled
from drypoint.cuts.model import Flaw
from drypoint.cuts.parts import Shapes, explode
from drypoint.cuts.ratings import current
from drypoint.geometry.points import Points
from drypoint.progress import Progress
from drypoint.wording import say

CHORD = 5e-4
"""mm by which the chords of a disc may lie inside of its circle: little against what is noticed."""
AT_ONCE = 50
"""Parts, or squares of large ones, looked at between two chances to stop."""
LARGE = 400
"""Vertices from which on a part is looked at only where it is bitten."""
SQUARE, LEAST_SQUARE = 8.0, 2.0
"""Side of the squares of large parts, in least widths, and at least in mm."""
OUTWARDS = np.array([-1.0, -1.0, 1.0, 1.0])
"""Makes bounds larger by 1 mm."""
CORNER = 0.5
"""Squares of the disc's radius: what a disc cannot reach in a corner is smaller (0.21 in a right
angle)."""


def thinned(
    nets: Mapping[str, Geometry],
    lines: Sequence[Points],
    top_width: ArrayLike,
    least: float,
    *,
    copper: float = 0.035,
    rise: float = 10.0,
    progress: Progress | None = None,
) -> tuple[Flaw, ...]:
    """Places where copper as wide as ``least`` mm in the design is narrower after the cut.

    A place is as wide as the largest disc that covers it (opening by a disc): thin is what a disc
    of ``least`` covers in the design but no longer after the cut, and what is left there.

    Parameters
    ----------
    top_width : float or (len(lines),) array
        Width at the copper's top, mm.
    copper, rise : float
        Copper thickness (mm) and warming (K) for the current stated in words (IPC-2221).
    """
    milled = Milled.of(nets, lines, top_width)
    parts, found = milled.parts, []
    index, left = milled.bitten()
    told = progress or Progress()
    places, of = _thin_places(parts.shapes[index], left, least, told)
    wide = 2.0 * shapely.area(places) / np.maximum(shapely.length(places), 1e-9)
    spots = shapely.get_coordinates(shapely.point_on_surface(places)).tolist()
    for owner, width, (x, y) in zip(parts.owner[index[of]].tolist(), wide.tolist(), spots, strict=True):
        text = say(
            "{name} is about {wide:.2f} mm wide here: {current:.2f} A",
            name=parts.names[owner],
            wide=width,
            current=current(width, thickness=copper, rise=rise),
        )
        what = say("{text} for {rise:.0f} K (estimate)", text=text, rise=rise)
        found.append(Flaw((parts.names[owner],), (x, y), what))
    return tuple(found)


def _thin_places(
    before: Shapes, after: Shapes, least: float, progress: Progress
) -> tuple[Shapes, NDArray[np.intp]]:
    """Thin places of copper ``before`` (N,) and ``after`` the cut, and the index of the copper each is of."""
    radius = least / 2.0
    views = _views(before, after, least)
    found = [np.array([], dtype=object)]
    source = [np.empty(0, dtype=np.intp)]
    for start in range(0, len(views.of), AT_ONCE):
        progress.step(start / len(views.of), "thinned traces")
        some = views.some(start, start + AT_ONCE)
        spare = shapely.buffer(_opened(some.after, radius), NOTICE, quad_segs=2)
        thin, of = explode(shapely.difference(some.after, spare))
        wide = _opened(some.before, radius)
        thin = shapely.intersection(thin, wide[of])
        square = ~shapely.is_missing(some.core[of])
        thin[square] = shapely.intersection(thin[square], some.core[of[square]])
        places, inner = explode(thin)
        found.append(places)
        source.append(some.of[of[inner]])
    places, of = _united(np.concatenate(found), np.concatenate(source), views.large)
    large = shapely.area(places) > CORNER * radius**2
    kept = large.copy()
    kept[~large] = _necks(after, places[~large], of[~large])
    return places[kept], of[kept]


@dataclass(frozen=True, slots=True, eq=False)
class _Views:
    """Copper ``before`` (V,) and ``after`` (V,) the cut, and ``of`` (V,) which it is.

    What is seen of ``large`` copper is right in its ``core`` (V,), a square; None where all is seen.
    """

    before: Shapes
    after: Shapes
    of: NDArray[np.intp]
    core: Shapes
    large: NDArray[np.intp]

    def some(self, start: int, stop: int) -> _Views:
        """Those of a range."""
        cut = slice(start, stop)
        return _Views(self.before[cut], self.after[cut], self.of[cut], self.core[cut], self.large)


def _views(before: Shapes, after: Shapes, least: float) -> _Views:
    """Small parts as a whole; of large ones the squares round bites: nothing is thinned elsewhere.

    A disc that covers a place lies within ``least`` mm of it.
    """
    large = np.flatnonzero(shapely.get_num_coordinates(before) > LARGE)
    small = np.delete(np.arange(len(before)), large)
    lost, of = explode(shapely.difference(before[large], after[large]))
    side = max(SQUARE * least, LEAST_SQUARE)
    box = np.floor((shapely.bounds(lost) + least * OUTWARDS) / side).astype(np.intp)
    squares = {
        (row, column, line)
        for row, (left, low, right, high) in zip(of.tolist(), box.tolist(), strict=True)
        for column in range(left, right + 1)
        for line in range(low, high + 1)
    }
    cells = np.array(sorted(squares), dtype=np.intp).reshape(-1, 3)
    bounds = np.column_stack((cells[:, 1:], cells[:, 1:] + 1)) * side
    cores = np.asarray(shapely.box(*bounds.T))
    seen = np.asarray(shapely.box(*(bounds + 2.0 * least * OUTWARDS).T))
    row = large[cells[:, 0]]
    return _Views(
        np.concatenate((before[small], shapely.intersection(before[row], seen))),
        np.concatenate((after[small], shapely.intersection(after[row], seen))),
        np.concatenate((small, row)),
        np.concatenate((np.full(len(small), None), cores)),
        large,
    )


def _united(places: Shapes, of: NDArray[np.intp], large: NDArray[np.intp]) -> tuple[Shapes, NDArray[np.intp]]:
    """The places; those of ``large`` copper that meet at the edges of squares are joined."""
    cut = np.isin(of, large)
    if not cut.any():
        return places, of
    several, group = np.unique(of[cut], return_inverse=True)
    order = np.argsort(group, kind="stable")
    grouped = shapely.multipolygons(places[cut][order], indices=group[order])
    united, source = explode(np.asarray(shapely.buffer(grouped, 0.0)))
    return np.concatenate((places[~cut], united)), np.concatenate((of[~cut], several[source]))


def _necks(copper: Shapes, places: Shapes, of: NDArray[np.intp]) -> NDArray[np.bool_]:
    """Whether copper falls apart without each place: a neck, however small, and no corner.

    Where large copper does not fall apart round the place, it does not on the whole.
    """
    gone = np.asarray(shapely.buffer(places, 2.0 * NOTICE, quad_segs=2))
    found = np.ones(len(places), dtype=bool)
    large = shapely.get_num_coordinates(copper)[of] > LARGE
    near = np.asarray(shapely.box(*(shapely.bounds(gone[large]) + NOTICE * OUTWARDS).T))
    found[large] = _falls_apart(shapely.intersection(copper[of[large]], near), gone[large])
    found[found] = _falls_apart(copper[of[found]], gone[found])
    return found


def _falls_apart(copper: Shapes, gone: Shapes) -> NDArray[np.bool_]:
    count = shapely.get_num_geometries(copper)
    return np.asarray(shapely.get_num_geometries(shapely.difference(copper, gone)) > count)


def _opened(shapes: Shapes, radius: float) -> Shapes:
    chords = max(2, int(np.ceil(np.pi / 4.0 / np.arccos(max(1.0 - CHORD / radius, 0.0)))))
    return np.asarray(
        shapely.buffer(shapely.buffer(shapes, -radius, quad_segs=chords), radius, quad_segs=chords)
    )
