"""Parts of copper that grooves enclose alone and leave whole: most of them, told without carving.

Where grooves are joined end to end all the way round, inside and outside are parted, however wide
the grooves are. So the faces between their middle lines already part most nets; of what is left in a
face only one question is open: whether the part in it is still in one piece. What cannot be told so
is left to the exact carving.
"""

from __future__ import annotations

from concurrent.futures import Future, ThreadPoolExecutor, wait
from dataclasses import dataclass
from typing import TypeVar

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry

from drypoint.cuts.carve import Sweep
from drypoint.cuts.milled import taken_off
from drypoint.cuts.parts import Parts, Shapes, explode
from drypoint.progress import Progress

Result = TypeVar("Result")

SHAVING = 0.01
"""mm. Copper thinner than this is a shaving, not a piece of a net."""
CRUMB = 2.5e-3
"""mm², a square of 0.05 mm. What is cut off a part and smaller than this holds no lead and no trace."""
OFTEN = 0.1
"""s after which a wish to stop is seen."""
GRAZE = (2e-3, 6e-3, 4.5e-3)
"""mm, share of the radius, and the most in mm: how far grooves laid round copper may reach into it, by
the chords of its own arcs and of the grooves'. Half of a shaving at most."""


@dataclass(frozen=True, slots=True, eq=False)
class Enclosed:
    """``alone`` (N,): whether each part is whole and the only one in its face.

    ``doubtful``: the faces that hold other parts, with all copper that may hang together with them;
    None where that may be anywhere.
    """

    alone: NDArray[np.bool_]
    doubtful: Shapes | None


def enclosed_parts(parts: Parts, under: Sweep, top: Sweep, area: Geometry, progress: Progress) -> Enclosed:
    """Parts that are whole, inside ``area`` and parted from all others for certain.

    ``under`` are the grooves as wide as they separate, ``top`` as wide as they bite; board frame, mm.
    """
    count = len(parts.shapes)
    if len(under.lines) == 0 or len(top.lines) == 0:
        return Enclosed(np.zeros(count, dtype=bool), None)
    pool = ThreadPoolExecutor(2, "island check")  # the geometry library lets go of the interpreter
    try:
        dividing = pool.submit(_faces, under)
        looking = pool.submit(_integrity, parts, top)
        faces, (crossed, whole) = _awaited(dividing, progress), _awaited(looking, progress)
    finally:
        pool.shutdown(wait=False, cancel_futures=True)
    shapely.prepare(area)
    whole &= np.asarray(shapely.covers(area, parts.shapes))
    part, face = _places(parts, crossed, faces)
    crowd = np.bincount(face, minlength=len(faces))
    alone = np.zeros(count, dtype=bool)
    alone[part] = crowd[face] == 1
    alone &= whole  # what is crossed is not
    doubtful = faces[np.unique(face[~alone[part]])]
    union = shapely.coverage_union_all(doubtful)
    shapely.prepare(union)
    inside = shapely.covers(union, parts.shapes[~alone]).all()
    return Enclosed(alone, doubtful if inside else None)


def _awaited(work: Future[Result], progress: Progress) -> Result:
    """What the work gives; a wish to stop is seen while it lasts."""
    while not wait([work], OFTEN).done:
        progress.step(0.0, "island check")
    return work.result()


def real_pieces(
    area: NDArray[np.float64], edge: NDArray[np.float64], largest: NDArray[np.float64]
) -> NDArray[np.bool_]:
    """Which pieces of a part count as copper of its net: all but shavings, and crumbs of a larger piece.

    ``area`` mm², ``edge`` their own boundary, mm, ``largest`` the area of the part's largest piece.
    """
    crumb = (area < CRUMB) & (area < largest)
    return np.asarray((thickness(area, edge) > SHAVING) & ~crumb)


def thickness(area: NDArray[np.float64], edge: NDArray[np.float64]) -> NDArray[np.float64]:
    """About the width of pieces, mm: twice their area over their boundary."""
    return np.asarray(2.0 * area / np.maximum(edge, 1e-9))


def _faces(sweep: Sweep) -> Shapes:
    """Polygons between the middle lines of grooves."""
    lines = sweep.lines[shapely.get_type_id(sweep.lines) == 1]
    noded = shapely.get_parts(shapely.union_all(lines))
    return np.asarray(shapely.get_parts(shapely.polygonize(noded)))


def _integrity(parts: Parts, sweep: Sweep) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
    """Whether each part is crossed by the middle of a groove, and whether it is certainly in one piece."""
    graze = np.minimum(GRAZE[0] + GRAZE[1] * sweep.radius, GRAZE[2])
    tree = shapely.STRtree(parts.shapes)
    line, part = tree.query(sweep.lines, predicate="dwithin", distance=np.maximum(sweep.radius - graze, 0.0))
    crossed = np.zeros(len(parts.shapes), dtype=bool)
    shapely.prepare(sweep.lines)
    crossed[part[shapely.intersects(sweep.lines[line], parts.shapes[part])]] = True
    left = parts.shapes.copy()
    sound = ~crossed
    bites = ~crossed[part]
    bitten, remains = _bitten(parts.shapes, sweep, line[bites], part[bites])
    left[bitten] = remains
    sound[bitten] = ~shapely.is_missing(remains)
    # what grazing grooves may take besides must not be enough to part it
    margin = float(graze.max())
    sound[sound] = thickness(shapely.area(left[sound]), shapely.length(left[sound])) > SHAVING + 4.0 * margin
    core = shapely.buffer(left[sound], -margin, quad_segs=1, join_style="mitre")
    sound[sound] = (shapely.get_type_id(core) == 3) & ~shapely.is_empty(core)
    return crossed, sound


def _bitten(
    shapes: Shapes, sweep: Sweep, line: NDArray[np.intp], part: NDArray[np.intp]
) -> tuple[NDArray[np.intp], Shapes]:
    """Parts (B,) that grooves bite into, and the one piece left of each; None where there are several."""
    bitten, remains = taken_off(shapes, sweep, line, part)
    pieces, index = explode(remains)
    area = shapely.area(pieces)
    largest = np.zeros(len(bitten))
    np.maximum.at(largest, index, area)
    real = real_pieces(area, shapely.length(pieces), largest[index])
    found = np.full(len(bitten), None, dtype=object)
    found[index[real]] = pieces[real]
    found[np.bincount(index[real], minlength=len(bitten)) != 1] = None
    return bitten, found


def _places(
    parts: Parts, crossed: NDArray[np.bool_], faces: Shapes
) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Parts and the faces they lie in: one for each that is not crossed, none outside of all faces."""
    tree = shapely.STRtree(faces)
    uncut, cut = np.flatnonzero(~crossed), np.flatnonzero(crossed)
    spots = shapely.get_point(shapely.get_exterior_ring(parts.shapes[uncut]), 0)
    one, in_one = tree.query(spots, predicate="intersects")
    several, in_several = tree.query(parts.shapes[cut], predicate="intersects")
    return np.append(uncut[one], cut[several]), np.append(in_one, in_several)
