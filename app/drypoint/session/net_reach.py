"""The reach of the grooves beside each net: how much is through, and where least."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from drypoint.passes.model import ReachMap
from drypoint.passes.reach import per_net


@dataclass(frozen=True, slots=True)
class NetReach:
    """One net.

    Attributes
    ----------
    through, doubtful, not_through : float
        Length of the grooves beside it by state, mm.
    whole : float
        Chance that all of them are through without a gap, 0..1.
    least : float
        Lowest reach of any spot, 0..1, and ``at`` its place, board frame, mm.
    """

    net: str
    through: float
    doubtful: float
    not_through: float
    whole: float
    least: float
    at: tuple[float, float]

    @property
    def length(self) -> float:
        """All grooves beside it, mm."""
        return self.through + self.doubtful + self.not_through

    @property
    def share(self) -> float:
        """Share of them that is through, 0..1."""
        return self.through / self.length if self.length else 1.0


def net_reaches(
    reach: ReachMap, line_nets: Sequence[Sequence[str]], whole: dict[str, float]
) -> tuple[NetReach, ...]:
    """Every net that has grooves beside it, the one least surely cut off first.

    Parameters
    ----------
    line_nets : the nets beside each groove of ``reach``
    whole : chance by net that its grooves have no gap
    """
    lowest: dict[str, tuple[float, tuple[float, float]]] = {}
    for points, chance, nets in zip(reach.points, reach.probability, line_nets, strict=True):
        if not len(chance):
            continue
        worst = int(np.argmin(chance))
        at = (float(points[worst][0]), float(points[worst][1]))
        for net in nets:
            if net not in lowest or chance[worst] < lowest[net][0]:
                lowest[net] = (float(chance[worst]), at)
    sums = per_net(reach, line_nets)
    found = [
        NetReach(
            net,
            total.through,
            total.doubtful,
            total.not_through,
            whole.get(net, 1.0),
            *lowest[net],
        )
        for net, total in sums.items()
        if net in lowest
    ]
    return tuple(sorted(found, key=lambda one: (one.whole, one.least, one.net)))
