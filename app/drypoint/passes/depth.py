"""How deep the first pass goes: at every spot just deep enough for the wanted certainty."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import VBit
from drypoint.errors import PlanError
from drypoint.geometry.points import Points
from drypoint.passes.chance import margin_for
from drypoint.passes.learning import Belief
from drypoint.passes.model import Pass
from drypoint.passes.spots import FitLike, HeightSpread, Spots, run_on
from drypoint.progress import Progress
from drypoint.wording import say

DEPTH_PITCH = 1.0
"""mm between the vertices at which the depth is set; the spread changes over longer ways."""


def plan_first_pass(
    lines: Sequence[Points],
    fit: FitLike,
    surface: HeightSpread,
    bit: VBit,
    *,
    copper: float,
    play: float,
    target: float = 0.995,
    deepest: float = 0.25,
    belief: Belief | None = None,
    progress: Progress | None = None,
) -> Pass:
    """One pass over every groove, at the depth where P(through) is ``target`` spot by spot.

    Parameters
    ----------
    lines : sequence of (N, 2), board frame, mm
    fit : maps board to machine frame
    copper, play : thickness of the copper and play of Z, mm
    target : wanted probability to be through at each spot
    deepest : never deeper than this below the copper's top, mm

    Raises
    ------
    PlanError
        If ``deepest`` does not reach through the copper or the target is no probability.
    """
    check_settings(copper, play, target, deepest)
    told = progress or Progress()
    spots = Spots.on(lines, DEPTH_PITCH)
    told.step(0.2, "asking the surface")
    depth = wanted_depth(spots.points, fit, surface, copper, play, target, deepest, belief)
    told.step(0.9, "planning the pass")
    runs = tuple(
        run_on(k, path, values)
        for k, (path, values) in enumerate(
            zip(spots.split(np.asarray(spots.points)), spots.split(depth), strict=True)
        )
        if len(path)
    )
    return Pass(1, bit, runs)


def wanted_depth(
    points: Points,
    fit: FitLike,
    surface: HeightSpread,
    copper: float,
    play: float,
    target: float,
    deepest: float,
    belief: Belief | None,
) -> NDArray[np.float64]:
    """(N,) depth for the target at ``points`` (board frame), never beyond ``deepest``, mm."""
    if not len(points):
        return np.zeros(0)
    places = fit.apply(points)
    shift, spread = (belief or Belief()).at(places, surface.std(places))
    wanted = copper + margin_for(target, spread, play) - shift
    return np.asarray(np.clip(wanted, min(copper, deepest), deepest))


def uniform_pass(lines: Sequence[Points], bit: VBit, depth: float, *, number: int = 1) -> Pass:
    """Every groove at one depth, mm below the copper's top."""
    runs = (run_on(k, line, np.full(len(line), depth)) for k, line in enumerate(lines) if len(line))
    return Pass(number, bit, tuple(runs))


def check_settings(copper: float, play: float, target: float, deepest: float) -> None:
    """Refuse settings with which nothing sensible can be planned.

    Raises
    ------
    PlanError
        Says which.
    """
    if not 0.0 < target < 1.0:
        raise PlanError(
            say("A target of {target} is no probability.", target=target),
            hint="Set it between 0.5 and 0.999.",
        )
    if copper <= 0.0 or play < 0.0:
        raise PlanError("The copper's thickness must be above 0 and the play of Z not below 0.")
    if deepest <= copper:
        raise PlanError(
            say(
                "The deepest cut allowed, {deepest:.3f} mm, does not pass the copper of {copper:.3f} mm.",
                deepest=deepest,
                copper=copper,
            ),
            hint="Allow more depth, or use a finer bit that stays narrow when it goes deeper.",
        )
