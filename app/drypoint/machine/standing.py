"""The copper that stands between grooves, piece by piece, as a touch meets it. Board frame, mm."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
import shapely
from shapely import Geometry

from drypoint.machine.groups import Groups
from drypoint.machine.islands_plan import ISLAND, OUTER

_LEAST = 0.01
"""Scraps smaller than a square of this side are dust, and what lies nearer to the edge is outside, mm."""

_TOUCHING = 1e-4
"""Copper nearer than this is one piece, mm."""


def standing_copper(nets: Mapping[str, Geometry], swept: Geometry, region: Geometry) -> dict[str, Geometry]:
    """All copper that must come apart: the nets, the copper outside, and scraps between grooves.

    A net whose copper on this side lies in several islands is several pieces: until wires link
    them, a touch on one says nothing of the others. The largest keeps the net's name, the others
    have a number behind it (see `net_of`). Copper left standing against a net, where the groove
    does not run along its edge, is the net's.

    Parameters
    ----------
    swept : geometry
        What the grooves take away.
    region : geometry
        The blank, in the board frame.
    """
    gone = shapely.union_all([swept, *nets.values()])
    pieces = [part for part in shapely.get_parts(shapely.difference(region, gone)) if part.area > _LEAST**2]
    edge = shapely.boundary(region)
    names = list(nets)
    parts, owner = shapely.get_parts(np.array(list(nets.values()), dtype=object), return_index=True)
    tree = shapely.STRtree(parts)
    groups = Groups()
    against: list[tuple[int, Geometry]] = []
    outside: list[Geometry] = []
    scraps: list[Geometry] = []
    for piece in pieces:
        touching = np.sort(tree.query(piece, predicate="dwithin", distance=_TOUCHING))
        if piece.distance(edge) < _LEAST:
            outside.append(piece)
        elif len(touching):
            against.append((int(touching[0]), piece))
            for other in touching[1:]:  # what it joins within a net is one island
                same = touching[owner[touching] == owner[other]]
                groups.join(str(same[0]), str(other))
        else:
            scraps.append(piece)
    islands: dict[tuple[int, str], list[Geometry]] = {}
    for index, part in enumerate(parts):
        islands.setdefault((int(owner[index]), groups.of(str(index))), []).append(part)
    for index, piece in against:
        islands[int(owner[index]), groups.of(str(index))].append(piece)
    found = _named(names, islands)
    if outside:
        found[OUTER] = shapely.union_all(outside)
    return found | {f"scrap {number}": piece for number, piece in enumerate(scraps, 1)}


def _named(names: Sequence[str], islands: Mapping[tuple[int, str], list[Geometry]]) -> dict[str, Geometry]:
    """Islands by name, those of one net by falling size."""
    shapes = {key: shapely.union_all(parts) for key, parts in islands.items()}
    found: dict[str, Geometry] = {}
    count: dict[int, int] = {}
    for key in sorted(shapes, key=lambda key: (key[0], -shapes[key].area)):
        count[key[0]] = count.get(key[0], 0) + 1
        name = names[key[0]]
        found[name if count[key[0]] == 1 else f"{name}{ISLAND}{count[key[0]]}"] = shapes[key]
    return found
