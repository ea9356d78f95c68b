"""Whether holes, copper layers and outline lie on each other; what does not is reported."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, Point

from drypoint.board.meeting import meeting
from drypoint.board.model import Finding, Hole
from drypoint.wording import say

PLATED_SHARE, UNKNOWN_SHARE = 0.8, 0.5
"""Share of holes on copper below which drill file and copper are said not to fit: holes stated as
plated, and holes of which that is not said (mounting holes may be among them)."""
LOST, FOUND = 0.5, 0.9
"""A layer is said to be mirrored or moved if fewer than LOST of the holes lie on its copper as it
is, and more than FOUND of them if it were otherwise."""
ROOM = 0.2
"""mm that copper may lie outside the outline: half the stroke of a drawn outline and rounding."""

Places = NDArray[np.float64]


def fit_findings(
    holes: Sequence[Hole], nets: Mapping[str, Geometry], other: Mapping[str, Geometry], outline: Geometry
) -> list[Finding]:
    """Findings of kind "misfit" (all in the board frame)."""
    findings = list(_drill_fit(holes))
    sides = (("milled side", nets), ("other side", other))
    for label, copper in sides:
        findings += _layer_fit(holes, copper, label, outline)
    for label, copper in sides:
        findings += _outside(copper, label, outline)
    room = shapely.buffer(outline, ROOM)
    out = [hole for hole in holes if not shapely.covers(room, Point(hole.x, hole.y))]
    if out:
        what = say("{count} holes lie outside the outline or in a cut-out.", count=len(out))
        findings.append(Finding("misfit", what, at=(out[0].x, out[0].y)))
    return findings


def _drill_fit(holes: Sequence[Hole]) -> Iterator[Finding]:
    for stated, least in ((True, PLATED_SHARE), (None, UNKNOWN_SHARE)):
        judged = [hole for hole in holes if hole.plated is stated]
        on_copper = sum(hole.net is not None for hole in judged)
        if len(judged) >= 3 and on_copper < least * len(judged):
            what = say(
                "Only {on_copper} of {count} holes lie on copper: drill file and copper do not fit.",
                on_copper=on_copper,
                count=len(judged),
            )
            hint = "Check that they are of one board, and the drill file's units."
            yield Finding("misfit", what, hint=hint)


def _layer_fit(
    holes: Sequence[Hole], copper: Mapping[str, Geometry], label: str, outline: Geometry
) -> Iterator[Finding]:
    """Whether a copper layer would fit the holes if it were mirrored or moved."""
    judged = [hole for hole in holes if hole.plated is not False]
    if len(judged) < 3 or not copper:
        return
    parts = shapely.get_parts(list(copper.values()))
    places = np.array([(hole.x, hole.y) for hole in judged])
    reach = np.array([hole.diameter / 2 for hole in judged])
    if _share(parts, places, reach) >= LOST:
        return
    x0, _, x1, _ = shapely.bounds(outline)
    mirrored = np.column_stack((x0 + x1 - places[:, 0], places[:, 1]))
    if _share(parts, mirrored, reach) > FOUND:
        yield Finding(
            "misfit", say("The copper of the {label} seems to be mirrored against the holes.", label=label)
        )
        return
    box = shapely.total_bounds(parts)
    middle = (places.min(axis=0) + places.max(axis=0)) / 2.0
    shift = np.array([(box[0] + box[2]) / 2.0, (box[1] + box[3]) / 2.0]) - middle
    if _share(parts, places + shift, reach + 0.1) > FOUND:
        dx, dy = (-shift).tolist()
        what = say(
            "The copper of the {label} lies off the holes; moved by about {dx:.1f}, {dy:.1f} mm it fits.",
            label=label,
            dx=dx,
            dy=dy,
        )
        yield Finding("misfit", what)


def _share(copper: NDArray[np.object_], places: Places, reach: NDArray[np.float64]) -> float:
    found, _ = meeting(shapely.buffer(shapely.points(places), reach), copper)
    return len(np.unique(found)) / len(places)


def _outside(copper: Mapping[str, Geometry], label: str, outline: Geometry) -> Iterator[Finding]:
    room = shapely.buffer(outline, ROOM)
    shapely.prepare(room)
    outside = [(n, shapely.difference(s, room)) for n, s in copper.items() if not shapely.covers(room, s)]
    area = sum(float(shapely.area(rest)) for _, rest in outside)
    if area > 0.5:
        x, y = shapely.get_coordinates(shapely.point_on_surface(outside[0][1]))[0].tolist()
        what = say("{area:.1f} mm² of copper on the {label} lie outside the outline.", area=area, label=label)
        yield Finding("misfit", what, at=(x, y), nets=tuple(name for name, _ in outside))
