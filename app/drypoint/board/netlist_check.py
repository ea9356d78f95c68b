"""A netlist beside attributes: where the two name a place differently."""

from __future__ import annotations

from collections.abc import Callable

import shapely

from drypoint.board.hole_nets import EDGE, NetFinder
from drypoint.board.model import Finding
from drypoint.board.netlist import Netlist
from drypoint.wording import say

Place = tuple[float, float]
LISTED = 5
"""Differences named one by one; the rest are counted."""
CUT = 14
"""Characters of a net's name in an IPC-D-356 record."""


def netlist_findings(
    netlist: Netlist, name: str, finder: NetFinder, to_board: Callable[[Place], Place]
) -> list[Finding]:
    """Findings for places whose net in the netlist is not that of the copper there.

    A name cut to 14 characters, from either end, or in capitals, is not a difference.
    """
    points = [point for point in netlist.points if point.net is not None and point.side is None]
    if not points:
        return []
    places = [to_board((point.x, point.y)) for point in points]
    middles = [shapely.Point(place) for place in places]
    reach = [(point.diameter or 0.0) / 2 + EDGE for point in points]
    found = finder.nets_at([m.buffer(r) for m, r in zip(middles, reach, strict=True)], middles)
    differ: dict[tuple[str, str], Place] = {}
    for point, place, nets in zip(points, places, found, strict=True):
        given = str(point.net)
        if nets and not any(_same(given, net) for net in nets):
            differ.setdefault((given, nets[0]), place)
    listed = list(differ.items())[:LISTED]
    out = [
        Finding(
            "net name",
            say("The netlist says {given}, the copper {net}.", given=given, net=net),
            name,
            at=at,
            nets=(net,),
        )
        for (given, net), at in listed
    ]
    if len(differ) > LISTED:
        out.append(
            Finding(
                "net name",
                say("{count} more names differ from the netlist.", count=len(differ) - LISTED),
                name,
            )
        )
    return out


def _same(given: str, net: str) -> bool:
    a, b = given.upper(), net.upper()
    return a in (b, b[:CUT], b[-CUT:]) or b.startswith("N/C")
