"""The reach map: for every spot along the grooves the probability that it is cut through."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from drypoint.geometry.points import Points
from drypoint.passes.bulk import reach_from_lattice
from drypoint.passes.chance import expected_width, through
from drypoint.passes.learning import Belief
from drypoint.passes.model import NOT_THROUGH, THROUGH, Pass, ReachMap
from drypoint.passes.spots import FitLike, HeightSpread, Spots, planned_depths
from drypoint.progress import Progress
from drypoint.surface.model import Surface, bounds_of
from drypoint.wording import say

__all__ = ["CERTAIN", "Totals", "expected_width", "in_words", "reach_map", "through", "totals"]

MANY = 20_000
"""Spots from which the reach is read from tables."""

CERTAIN = 0.995
"""Never shown as more: above it the model's own tail is not known well enough."""


@dataclass(frozen=True, slots=True)
class Totals:
    """Groove length by state, mm, and the expected share that is through (0..1)."""

    through: float
    doubtful: float
    not_through: float
    expected: float

    @property
    def length(self) -> float:
        """All of it, mm."""
        return self.through + self.doubtful + self.not_through


def reach_map(
    lines: Sequence[Points],
    passes: Sequence[Pass],
    fit: FitLike,
    surface: HeightSpread,
    *,
    copper: float,
    play: float,
    belief: Belief | None = None,
    pitch: float = 0.2,
    progress: Progress | None = None,
) -> ReachMap:
    """Probability of being through at spots along every groove.

    The surface's error is the same in every pass over a spot, so the deepest planned pass
    decides; passes are not taken as independent tries.

    Parameters
    ----------
    lines : sequence of (N, 2), board frame, mm
    passes : those cut or planned; their runs name the line they lie on
    fit : maps board to machine frame
    copper, play : thickness of the copper and play of Z, mm
    belief : what passes so far have taught about depth
    pitch : largest distance between spots, mm
    """
    told = progress or Progress()
    spots = Spots.on(lines, pitch)
    told.step(0.1, "reading the passes' depths")
    depths = planned_depths(spots, passes)
    depth = depths.max(axis=0) if len(passes) else np.full(len(spots), -np.inf)
    told.step(0.4, "asking the surface")
    places = fit.apply(spots.points) if len(spots) else spots.points
    sigma = surface.std(places)
    cut = np.isfinite(depth)
    probability = np.zeros(len(spots))
    shift, spread = (belief or Belief()).at(places, sigma)
    told.step(0.8, "reach")
    if belief is None and len(spots) > MANY and isinstance(surface, Surface):
        field = surface.field(bounds_of(places))
        probability = reach_from_lattice(places, [depth], field, copper=copper, play=play)
    else:
        probability[cut] = through(depth[cut] - copper + shift[cut], spread[cut], play)
    width = np.zeros(len(spots))
    for one, row in zip(passes, depths, strict=True):
        went = np.isfinite(row)
        bit = one.bit
        wide = expected_width(row[went] + shift[went], spread[went], bit.tip + bit.runout, bit.slope, play)
        width[went] = np.maximum(width[went], wide)
    split = spots.split(np.asarray(spots.points))
    return ReachMap(split, spots.split(probability), spots.split(width))


def totals(reach: ReachMap, grooves: Sequence[int] | None = None) -> Totals:
    """Lengths through, doubtful and not through; of ``grooves`` only if given."""
    sums = np.zeros(4)
    for k in range(len(reach.points)) if grooves is None else grooves:
        points, p = reach.points[k], reach.probability[k]
        if len(points) < 2:
            continue
        steps = np.sqrt((np.diff(points, axis=0) ** 2).sum(axis=1))
        share = np.zeros(len(points))
        share[:-1] += 0.5 * steps
        share[1:] += 0.5 * steps
        sure, failed = p >= THROUGH, p < NOT_THROUGH
        sums += (share[sure].sum(), share[~sure & ~failed].sum(), share[failed].sum(), share @ p)
    length = float(sums[:3].sum())
    return Totals(float(sums[0]), float(sums[1]), float(sums[2]), float(sums[3] / length) if length else 0.0)


def per_net(reach: ReachMap, line_nets: Sequence[Sequence[str]]) -> dict[str, Totals]:
    """Totals of the grooves beside each net, by name."""
    beside: dict[str, list[int]] = {}
    for index, nets in enumerate(line_nets):
        for net in nets:
            beside.setdefault(net, []).append(index)
    return {net: totals(reach, indices) for net, indices in sorted(beside.items())}


def in_words(probability: float) -> str:
    """A probability for people, never surer than the model can be."""
    if probability >= CERTAIN:
        return say("over 99.5 %")
    if probability <= 1.0 - CERTAIN:
        return say("under 0.5 %")
    share = 100.0 * float(probability)
    return say("{share:.0f} %", share=share) if probability < 0.985 else say("{share:.1f} %", share=share)
