"""The hover lap: once round the board's extent at a height, spindle off, before the first cut."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import ArrayLike

from drypoint.errors import MachineError
from drypoint.geometry.points import as_points
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.workplace import Workplace
from drypoint.wording import say


def hover_lap(
    place: Workplace,
    corners: ArrayLike,
    *,
    height: float = 1.0,
    surface: Callable[[float, float], float] | None = None,
    feed: float = 600.0,
) -> None:
    """Go round (N, 2) ``corners`` (work, mm) at ``height`` above the surface, back to the first.

    Parameters
    ----------
    surface : callable, optional
        Height of the copper at x, y (work, mm); 0 without it. The lap is flown above the highest
        corner, so that straight pieces between corners stay clear.

    Raises
    ------
    MachineError
        If the lap leaves the machine's travel.
    """
    lap = as_points(corners)
    if len(lap) == 0:
        return
    extent = np.ptp(lap, axis=0)
    for axis, size in enumerate(extent):
        if size > place.preset.travel[axis]:
            raise MachineError(
                say(
                    "The board needs {size:.1f} mm in {value}, more than the machine's travel.",
                    size=size,
                    value="xy"[axis],
                ),
                "hover lap",
                "Turn the board on the bed, or use a larger machine.",
            )
    level = height + max(0.0 if surface is None else surface(float(x), float(y)) for x, y in lap)
    place.ask(
        Request(
            RequestKind.CONFIRM,
            "Hover lap",
            say(
                "The bit goes round the board {height:g} mm above it, spindle off. Watch clamps and cables.",
                height=height,
            ),
            ("Keep hands clear; Hold and Stop are at the bottom of the window.",),
        )
    )
    place.raise_to(max(level, place.clearance))
    place.controller.move((float(lap[0][0]), float(lap[0][1]), None))
    place.controller.move((None, None, level), feed)
    for x, y in [*lap[1:], lap[0]]:
        place.controller.move((float(x), float(y), None), feed)
    place.raise_to(max(level, place.clearance))
