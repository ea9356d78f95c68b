"""Nets whose copper touches in the design: no gap parts them, so no cut can.

Round such a place the boundaries cross. Lines of equal distance run through the copper there too, and
must not be cut; and the place is named once, for what it is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from numpy.typing import NDArray

from drypoint.cuts.gaps import Ridges
from drypoint.cuts.model import Narrow
from drypoint.cuts.parts import Parts, Shapes
from drypoint.wording import say


@dataclass(frozen=True, slots=True, eq=False)
class Joints:
    """Where parts of different nets touch: their indices ``pairs`` (M, 2) and what they share (M,)."""

    pairs: NDArray[np.intp]
    shared: Shapes

    @classmethod
    def of(cls, parts: Parts, close: NDArray[np.intp]) -> Joints:
        """Those among pairs (N, 2) of parts; board frame."""
        met = close[shapely.intersects(parts.shapes[close[:, 0]], parts.shapes[close[:, 1]])]
        return cls(met, shapely.intersection(parts.shapes[met[:, 0]], parts.shapes[met[:, 1]]))

    def without_gap(self, parts: Parts, ridges: Ridges) -> Ridges:
        """The ridges with no clearance inside copper, where a place cannot lie but beside a joint."""
        if len(self.pairs) == 0:
            return ridges
        touching = np.unique(self.pairs)
        beside = np.flatnonzero(np.isin(ridges.parts, touching).any(axis=1))
        places = np.asarray(shapely.points(ridges.nodes[beside]))
        inside = shapely.STRtree(parts.shapes[touching]).query(places, predicate="within")[0]
        clearance = ridges.clearance.copy()
        clearance[beside[inside]] = 0.0
        return replace(ridges, clearance=clearance)

    def named(self, parts: Parts, places: Sequence[Narrow], width: float) -> tuple[Narrow, ...]:
        """Each joint as one place, and those of ``places`` that are not the wedge beside one.

        ``width`` is that of the cut, mm.
        """
        if len(self.pairs) == 0:
            return tuple(places)
        names = [(parts.names[one], parts.names[two]) for one, two in np.sort(parts.owner[self.pairs])]
        touching = set(names)
        own = [k for k, place in enumerate(places) if place.nets in touching]
        tree = shapely.STRtree(self.shared)
        spots = shapely.points(np.array([places[k].at for k in own]).reshape(-1, 2))
        near, joint = tree.query(spots, predicate="dwithin", distance=width)
        wedge = {own[k] for k, j in zip(near, joint, strict=True) if places[own[k]].nets == names[j]}
        at = shapely.get_coordinates(shapely.point_on_surface(self.shared)).tolist()
        size = shapely.length(self.shared) / np.where(shapely.get_dimensions(self.shared) == 2, 2.0, 1.0)
        told = say("They touch in the design.")
        return (
            *(place for k, place in enumerate(places) if k not in wedge),
            *(
                Narrow(pair, (x, y), 0.0, width / 2.0, along, False, told, 0.0)
                for pair, (x, y), along in zip(names, at, size.tolist(), strict=True)
            ),
        )
