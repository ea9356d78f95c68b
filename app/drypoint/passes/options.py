"""The choice before the first cut: a few ways to go, each with what it is expected to cost."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

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
    share = spots.share()
    length = float(share.sum())
    weight = share / length if length else np.full(len(spots), 1.0 / len(spots))
    places = fit.apply(spots.points)
    shift, spread = (belief or Belief()).at(places, surface.std(places))

    def whole(chance: np.ndarray) -> float | None:
        if ripple_length is None:
            return None
        gaps = uncut_rate(chance, ripple_length) * share
        sums = np.add.reduceat(gaps, spots.first[:-1][np.diff(spots.first) > 0])
        return float(np.exp(-sums).mean())

    def choice(name: str, target: float, passes: int, depth: np.ndarray) -> Choice:
        chance = through(depth - copper + shift, spread, play)
        flat = bit.tip + bit.runout
        width = expected_width(depth + shift, spread, flat, bit.slope, play)
        gap = expected_width(depth - copper + shift, spread, flat, bit.slope, play)
        cut = passes * length
        seconds = 60.0 * cut / bit.speeds.feed + passes * len(lines) * _LIFT
        doubtful = float(share[chance < min(target, 0.95) - 1e-6].sum())
        return Choice(
            name, target, passes, float(weight @ chance), doubtful, float(weight @ width),
            float(gap.min()), cut, seconds, whole(chance),
        )  # fmt: skip

    found = []
    for k, target in enumerate(targets):
        check_settings(copper, play, target, deepest)
        told.step(k / (len(targets) + 1), "weighing ways to cut")
        depth = wanted_depth(spots.points, fit, surface, copper, play, target, deepest, belief)
        found.append(choice("one careful pass", target, 1, depth))
    last, wanted = targets[-1], found[-1].through
    rung, level = 1, min(copper + LADDER_START, deepest)
    while level < deepest:
        told.step(0.9, "weighing ways to cut")
        if float(weight @ through(level - copper + shift, spread, play)) >= wanted:
            break
        rung, level = rung + 1, min(level + LADDER_STEP, deepest)
    found.append(choice(LADDER, last, rung, np.full(len(spots), level)))
    return tuple(found)
