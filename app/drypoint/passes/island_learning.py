"""Learning from island touches: whether whole grooves are through tells how deep all was cut.

One groove found joined may be bad luck. Many more joined ones than were expected mean that the
tip ran higher than planned, or that the surface is rougher than it states; none joined where
some were expected, the contrary. Offset and scale of the depth are weighed on a grid: each
answer's likelihood is exp(−uncut spots), or what that leaves to one (see `isolation`).
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray

from drypoint.geometry.points import Points
from drypoint.passes.chance import through
from drypoint.passes.isolation import IslandAnswer, uncut_rate
from drypoint.passes.learning import SCALE_SPREAD, SCALES, WRONG, Belief, update
from drypoint.passes.model import Pass
from drypoint.passes.spots import FitLike, Spots, planned_depths
from drypoint.progress import Progress

_OFFSETS = np.linspace(-3.0, 3.0, 17)
"""Offsets weighed, in spreads of what was believed before."""
_PITCH = 0.5
"""mm between the spots weighed, a fraction of a ripple's length."""


class Learnable(Protocol):
    """What learning needs of a surface, machine frame, mm."""

    @property
    def ripple_length(self) -> float:
        """Length scale of the ripple."""
        ...

    def std(self, points: ArrayLike) -> NDArray[np.float64]:
        """(N,) spreads."""
        ...

    def covariance(self, a: ArrayLike, b: ArrayLike) -> NDArray[np.float64]:
        """(len(a), len(b)) covariance of the heights' errors, mm²."""
        ...


def update_from_islands(
    belief: Belief,
    answers: Sequence[IslandAnswer],
    lines: Sequence[Points],
    passes: Sequence[Pass],
    fit: FitLike,
    surface: Learnable,
    *,
    copper: float,
    play: float = 0.0,
    progress: Progress | None = None,
) -> Belief:
    """The belief after island touches: offset and spread of the depth, and the surface's scale.

    Call it once with every answer of this clamping, starting from the belief before the first of
    them (a coupon's, or none). Of answers about the same groove the telling ones count: the first
    'isolated', and the last 'joined'. Answers about single places that the belief holds are
    weighed anew on top. What an answer says of the spots of its own grooves is
    `isolation.after_answers`.

    Parameters
    ----------
    answers : each says after how many of ``passes`` it was asked
    lines : sequence of (N, 2), board frame, mm
    passes : all that were cut, in order
    copper, play : thickness of the copper and play of Z, mm
    """
    telling = _telling(answers)
    if not telling or not passes:
        return belief
    told = progress or Progress()
    spots = Spots.on(lines, _PITCH)
    told.step(0.0, "learning from the islands")
    depths = planned_depths(spots, passes)
    sigma = surface.std(fit.apply(spots.points))
    parts = [_part(one, spots, depths) for one in telling]
    asked = [k for k, (index, _) in enumerate(parts) if len(index)]
    if not asked:
        return belief
    index = np.concatenate([parts[k][0] for k in asked])
    margin = np.concatenate([parts[k][1] for k in asked]) - copper
    first = np.concatenate(([0], np.cumsum([len(parts[k][0]) for k in asked])[:-1]))
    isolated = np.array([telling[k].isolated for k in asked])
    share, spread = spots.share()[index], sigma[index]
    offsets = belief.prior_offset + belief.prior_spread * _OFFSETS
    scales = belief.prior_scale * SCALES
    log_weight = -0.5 * _OFFSETS[:, None] ** 2 - 0.5 * (np.log(SCALES)[None, :] / SCALE_SPREAD) ** 2
    for i, offset in enumerate(offsets):
        told.step(i / len(offsets), "learning from the islands")
        for j, scale in enumerate(scales):
            p = through(margin + offset, scale * spread, play)
            count = np.add.reduceat(uncut_rate(p, surface.ripple_length) * share, first) + 1.0 - p[first]
            whole = np.exp(-count)
            chance = WRONG + (1.0 - 2.0 * WRONG) * np.where(isolated, whole, 1.0 - whole)
            log_weight[i, j] += np.log(chance).sum()
    return _settled(belief, offsets, scales, log_weight, surface, play)


def _telling(answers: Sequence[IslandAnswer]) -> list[IslandAnswer]:
    """Without what other answers imply: 'isolated' said again, 'joined' said of fewer passes."""
    first: dict[tuple[int, ...], IslandAnswer] = {}
    last: dict[tuple[int, ...], IslandAnswer] = {}
    for one in sorted(answers, key=lambda answer: answer.after):
        if one.isolated:
            first.setdefault(_key(one), one)
        else:
            last[_key(one)] = one
    return [*first.values(), *last.values()]


def _key(answer: IslandAnswer) -> tuple[int, ...]:
    """Same grooves and, to a tenth of a millimetre, same area: the same question."""
    if answer.area is None:
        return answer.grooves
    return (*answer.grooves, *(round(10.0 * value) for value in shapely.bounds(answer.area)))


def _part(
    answer: IslandAnswer, spots: Spots, depths: NDArray[np.float64]
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Spots an answer speaks of and the deepest planned depth there when it was asked."""
    rows = [
        np.arange(spots.first[k], spots.first[k + 1], dtype=np.int64)
        for k in answer.grooves
        if 0 <= k < len(spots.first) - 1
    ]
    index = np.concatenate(rows) if rows else np.zeros(0, dtype=np.int64)
    index = index[answer.speaks_of(spots.points[index])]
    depth = depths[: max(answer.after, 1), index].max(axis=0) if len(index) else np.zeros(0)
    return index, depth


def _settled(
    belief: Belief,
    offsets: NDArray[np.float64],
    scales: NDArray[np.float64],
    log_weight: NDArray[np.float64],
    surface: Learnable,
    play: float,
) -> Belief:
    """Mean and spread from the weights on the grid; answers about places are weighed on top."""
    weight = np.exp(log_weight - log_weight.max())
    weight /= weight.sum()
    over_offset, over_scale = weight.sum(axis=1), weight.sum(axis=0)
    offset = float(over_offset @ offsets)
    spread = float(np.sqrt(max(over_offset @ (offsets - offset) ** 2, (0.05 * belief.prior_spread) ** 2)))
    scale = float(np.exp(over_scale @ np.log(scales)))
    learnt = Belief(offset, spread, scale, (), offset, spread, scale)
    if belief.observations:
        return update(learnt, belief.observations, surface, play=play)
    return learnt
