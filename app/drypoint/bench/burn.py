"""What a laser head burns: where and how long the beam rested, and what it drew on the way."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.bench.body import Body
from drypoint.bench.planner import Triple


@dataclass(frozen=True, slots=True)
class Burnt:
    """One rest of the beam: sheet x and y, mm; time, s; power 0..1."""

    at: tuple[float, float]
    seconds: float
    power: float


class Burn:
    """The beam of a head that is fixed beside the spindle.

    Parameters
    ----------
    body : Body
        Its ``spot`` is where the beam meets the sheet, less the bit's place, mm.
    """

    def __init__(self, body: Body) -> None:
        self._body = body
        self.rests: list[Burnt] = []
        """Every rest of the beam so far, in order."""
        self.power = 0.0
        """Of the beam at rest now; 0 is off."""
        self._since = 0.0
        self._at = (0.0, 0.0)

    def look(self, now: float, power: float, place: Callable[[], Triple]) -> None:
        """The beam at rest has this power from ``now`` on, the motors being at ``place()``."""
        if power == self.power:
            return
        if self.power > 0.0:
            self.rests.append(Burnt(self._at, now - self._since, self.power))
        if power > 0.0:
            x, y, _ = self._body.tip(place())
            dx, dy = self._body.spot
            sx, sy = self._body.sheet.to_sheet([(x + dx, y + dy)])[0]
            self._at = (float(sx), float(sy))
        self.power, self._since = power, now

    @property
    def spots(self) -> NDArray[np.float64]:
        """(N, 4) sheet x, y, mm; time, s; power 0..1 of every rest."""
        rows = [(*one.at, one.seconds, one.power) for one in self.rests]
        return np.array(rows, dtype=np.float64).reshape(-1, 4)

    @property
    def strokes(self) -> NDArray[np.float64]:
        """(M, 5) start and end of what was drawn in motion, sheet frame, mm; power over speed, s/mm."""
        self._body.flush()
        rows = [(*path.ravel(), dose) for path, dose in self._body.marks]
        return np.array(rows, dtype=np.float64).reshape(-1, 5)
