"""A pass: one run over grooves, with a depth at every vertex."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import VBit
from drypoint.cuts.model import CutKind
from drypoint.geometry.points import Points


@dataclass(frozen=True, slots=True, eq=False)
class Run:
    """A piece of one groove that is cut without lifting.

    Attributes
    ----------
    groove : int
        Index of the groove line it lies on.
    path : Points
        (N, 2) board frame; closed when first equals last.
    depth : (N,) array
        Planned depth of the tip below the copper's top, mm, positive down.
    """

    groove: int
    path: Points
    depth: NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Pass:
    """One run over grooves with one bit. ``number`` counts from 1.

    ``kind`` is GROOVE, or CLEAR for the run of the wide bit.
    """

    number: int
    bit: VBit
    runs: tuple[Run, ...]
    kind: CutKind = CutKind.GROOVE

    @property
    def length(self) -> float:
        """Length cut, mm."""
        return float(sum(np.sqrt((np.diff(run.path, axis=0) ** 2).sum(axis=1)).sum() for run in self.runs))

    @property
    def deepest(self) -> float:
        """Deepest planned tip, mm below the copper's top."""
        return float(max((run.depth.max() for run in self.runs if len(run.depth)), default=0.0))


@dataclass(frozen=True, slots=True, eq=False)
class ReachMap:
    """Probability of being cut through, spot by spot along the grooves.

    Attributes
    ----------
    points : tuple of Points
        (N, 2) sample spots per groove, board frame, in order along it.
    probability : tuple of (N,) arrays
        P(through) at each spot.
    width : tuple of (N,) arrays
        Expected groove width at the copper's top, mm.
    """

    points: tuple[Points, ...]
    probability: tuple[NDArray[np.float64], ...]
    width: tuple[NDArray[np.float64], ...]


THROUGH = 0.95
"""A spot is called through from this probability on."""
NOT_THROUGH = 0.5
"""A spot is called not through below this; doubtful between."""
