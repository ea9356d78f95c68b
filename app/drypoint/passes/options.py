"""The choice before the first cut: a few ways to go, each with what it is expected to cost."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import VBit
from drypoint.geometry.points import Points
from drypoint.passes.chance import expected_width, through
from drypoint.passes.depth import DEPTH_PITCH, check_settings, wanted_depth
from drypoint.passes.isolation import uncut_rate
from drypoint.passes.learning import Belief
from drypoint.passes.spots import FitLike, HeightSpread, Spots
from drypoint.progress import Progress

LADDER = "depth ladder"
"""Name of the one way that goes over all grooves several times."""

TARGETS = (0.95, 0.995, 0.999)
LADDER_START = 0.020
"""mm below the copper at which a ladder begins, and"""
LADDER_STEP = 0.030
"""mm deeper per repeat: common practice, no source."""
_LIFT = 2.0
"""Seconds to lift, travel and plunge per run (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Choice:
    """One way to cut the grooves.

    Attributes
    ----------
    name : str
        "one careful pass" or "depth ladder".
    target : float
        Wanted probability per spot.
    passes : int
        Passes that go over every groove.
    through : float
        Expected share of groove length through after them.
    recut : float
        Expected length to be cut again where reach is below the target, mm.
    width, gap : float
        Mean width at the copper's top and smallest expected width at its underside, mm.
    length, seconds : float
        Length cut in all, mm, and time with plunges; touches not counted.
    whole : float or None
        Expected share of the grooves that are through from end to end; None where not asked for.
    """

    name: str
    target: float
    passes: int
    through: float
    recut: float
    width: float
    gap: float
    length: float
    seconds: float
    whole: float | None = None

    @property
    def ladder(self) -> bool:
        """Whether all grooves are cut deeper and deeper, and not once with care."""
        return self.passes > 1 or self.name == LADDER


def options(
    lines: Sequence[Points],
    fit: FitLike,
    surface: HeightSpread,
    bit: VBit,
    *,
    copper: float,
    play: float,
    deepest: float,
    targets: Sequence[float] = TARGETS,
    belief: Belief | None = None,
    ripple_length: float | None = None,
    progress: Progress | None = None,
) -> tuple[Choice, ...]:
    """One careful pass for each target, then the ladder over the whole board that matches the last.

    Parameters as in `depth.plan_first_pass`; with ``ripple_length``, the length scale of the
    surface's ripple in mm, each choice tells how many grooves are expected to be whole.

    Raises
    ------
    PlanError
        If the settings cannot reach through the copper.
    """
    told = progress or Progress()
    spots = Spots.on(lines, DEPTH_PITCH)
    if not len(spots):
        return ()
    weighing = _Weighing(spots, fit, surface, bit, copper, play, belief, ripple_length)
    found = []
    for k, target in enumerate(targets):
        check_settings(copper, play, target, deepest)
        told.step(k / (len(targets) + 1), "weighing ways to cut")
        depth = wanted_depth(spots.points, fit, surface, copper, play, target, deepest, belief)
        found.append(weighing.choice("one careful pass", target, 1, depth))
    told.step(0.9, "weighing ways to cut")
    rung, level = weighing.ladder(found[-1].through, deepest)
    found.append(weighing.choice(LADDER, targets[-1], rung, np.full(len(spots), level)))
    return tuple(found)


class _Weighing:
    """What a depth at every spot is expected to come to."""

    def __init__(
        self,
        spots: Spots,
        fit: FitLike,
        surface: HeightSpread,
        bit: VBit,
        copper: float,
        play: float,
        belief: Belief | None,
        ripple_length: float | None,
    ) -> None:
        self._spots, self._bit, self._copper, self._play = spots, bit, copper, play
        self._ripple_length = ripple_length
        self._share = spots.share()
        self._length = float(self._share.sum())
        even = np.full(len(spots), 1.0 / len(spots))
        self._weight = self._share / self._length if self._length else even
        places = fit.apply(spots.points)
        self._shift, self._spread = (belief or Belief()).at(places, surface.std(places))

    def choice(self, name: str, target: float, passes: int, depth: NDArray[np.float64]) -> Choice:
        """The way that ends at ``depth`` (N,) after so many passes."""
        bit, deeper, spread = self._bit, depth + self._shift, self._spread
        chance = through(deeper - self._copper, spread, self._play)
        flat = bit.tip + bit.runout
        width = expected_width(deeper, spread, flat, bit.slope, self._play)
        gap = expected_width(deeper - self._copper, spread, flat, bit.slope, self._play)
        cut = passes * self._length
        lines = len(self._spots.first) - 1
        return Choice(
            name=name,
            target=target,
            passes=passes,
            through=float(self._weight @ chance),
            recut=float(self._share[chance < min(target, 0.95) - 1e-6].sum()),
            width=float(self._weight @ width),
            gap=float(gap.min()),
            length=cut,
            seconds=60.0 * cut / bit.speeds.feed + passes * lines * _LIFT,
            whole=self._whole(chance),
        )

    def ladder(self, wanted: float, deepest: float) -> tuple[int, float]:
        """Rungs, and the depth of the last, until the share ``wanted`` is through."""
        rung, level = 1, min(self._copper + LADDER_START, deepest)
        while level < deepest:
            chance = through(level - self._copper + self._shift, self._spread, self._play)
            if float(self._weight @ chance) >= wanted:
                break
            rung, level = rung + 1, min(level + LADDER_STEP, deepest)
        return rung, level

    def _whole(self, chance: NDArray[np.float64]) -> float | None:
        """Expected share of the grooves that are through from end to end."""
        if self._ripple_length is None:
            return None
        gaps = uncut_rate(chance, self._ripple_length) * self._share
        first = self._spots.first
        sums = np.add.reduceat(gaps, first[:-1][np.diff(first) > 0])
        return float(np.exp(-sums).mean())
