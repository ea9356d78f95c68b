"""What is imperfect in a simulated machine, what it did, and what went wrong with it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.bench.planner import Triple

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Faults:
    """What is imperfect in a machine.

    Attributes
    ----------
    play : (x, y, z)
        Dead zone of each axis seen by a touch, mm.
    lift : float
        Slack of Z that only a cutting load takes up: the bit rises by 0 to this, mm.
    runout : float
        How much wider than the bit says a turning bit cuts, mm.
    tip : float
        How much wider the flat of a V-bit is than is said, mm.
    noise : float
        Spread of a touch, mm.
    chips : float
        Share of touches that hit a chip.
    chip : float
        Mean height of a chip, mm.
    push : float
        Share of the sheet's spring that a cutting load takes up.
    wander : float
        How far a drill slips before it bites, mm, standard deviation per axis.
    """

    play: Triple = (0.02, 0.02, 0.002)
    lift: float = 0.012
    runout: float = 0.01
    tip: float = 0.0
    noise: float = 0.003
    chips: float = 0.01
    chip: float = 0.03
    push: float = 0.3
    wander: float = 0.0


@dataclass(frozen=True, slots=True)
class Mishap:
    """Something that should never happen on a real machine, and where (space, mm)."""

    what: str
    at: Triple


@dataclass(frozen=True, slots=True, eq=False)
class Path:
    """A stretch of executed motion: (N, 3) counted ends, and what was true of each piece."""

    ends: Floats
    rapid: NDArray[np.bool_]
    power: Floats
    speed: Floats
