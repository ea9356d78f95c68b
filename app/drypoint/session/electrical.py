"""Voltages between nets, and what they ask of the copper after milling."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from numpy.typing import ArrayLike
from shapely import Geometry

from drypoint.board.model import Board
from drypoint.cuts.clearances import too_close
from drypoint.cuts.model import Flaw
from drypoint.cuts.ratings import clearance
from drypoint.geometry.points import Points
from drypoint.progress import Progress
from drypoint.session.settings import ElectricalSettings


def volts_between(settings: ElectricalSettings, a: str, b: str) -> float:
    """Voltage between two nets, V: their own entry, else the higher of what each has against all others."""
    for one in settings.voltages:
        if {one.net, one.other} == {a, b}:
            return one.volts
    return max((one.volts for one in settings.voltages if not one.other and one.net in (a, b)), default=0.0)


def clearance_flaws(
    board: Board, lines: Sequence[Points], width: ArrayLike, settings: ElectricalSettings, progress: Progress
) -> tuple[Flaw, ...]:
    """Nets that come closer than their voltage allows (IPC-2221, table 6-1); none without voltages."""
    nets: Mapping[str, Geometry] = board.nets
    live = [name for name in nets if any(name in (one.net, one.other) for one in settings.voltages)]
    if not live:
        return ()

    def wanted(a: str, b: str) -> float:
        volts = volts_between(settings, a, b)
        return clearance(volts, settings.surroundings) if volts > 0.0 else 0.0

    return too_close(nets, lines, width, board.outline, wanted, live=live, progress=progress)
