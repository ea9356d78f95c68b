"""Two bits: a wide one for open copper, a fine one only where the wide one does not fit."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import shapely
from shapely import Geometry

from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.model import GroovePlan
from drypoint.cuts.offsets import as_paths, clip_lines
from drypoint.errors import InputError
from drypoint.geometry.points import Points, length
from drypoint.progress import Progress

JOIN = 0.3
"""mm that fine paths run on into the wide groove, so that the two meet."""


@dataclass(frozen=True, slots=True, eq=False)
class RestPlan:
    """``wide``: what the wide bit cuts. ``fine``: what is left for the fine one.

    ``fine_alone`` is the length the fine bit would cut if it did everything as wide, mm.
    """

    wide: tuple[Points, ...]
    fine: tuple[Points, ...]
    fine_plan: GroovePlan
    fine_alone: float

    def seconds_saved(self, wide_feed: float, fine_feed: float, change: float = 90.0) -> float:
        """Cutting time saved at these feeds (mm/min) after ``change`` s for the change of bit."""
        split = total(self.wide) / wide_feed + total(self.fine) / fine_feed
        return 60.0 * (self.fine_alone / fine_feed - split) - change


def total(lines: tuple[Points, ...]) -> float:
    """Length of all lines, mm."""
    return float(sum(length(line) for line in lines))


def plan_rest(
    nets: Mapping[str, Geometry],
    wide: float,
    fine: float,
    *,
    bite: float = 0.0,
    boundary: Geometry | None = None,
    overlap: float = 0.2,
    progress: Progress | None = None,
) -> RestPlan:
    """Grooves of ``wide`` mm where they fit without biting, of ``fine`` mm only where needed.

    Raises
    ------
    InputError
        If the fine cut is not narrower than the wide one.
    """
    if not 0.0 < fine < wide:
        raise InputError("The fine cut must be narrower than the wide one.", "two bits")
    inner = progress or Progress()
    open_plan = plan_grooves(nets, wide, boundary=boundary, progress=inner.part(0.0, 0.4))
    fine_plan = plan_grooves(nets, fine, bite=bite, boundary=boundary, progress=inner.part(0.4, 0.8))
    loops = [
        line for line, owner in zip(open_plan.lines, open_plan.line_nets, strict=True) if len(owner) == 1
    ]
    wide_shapes = np.array([shapely.linestrings(line) for line in loops], dtype=object)
    # where the wide groove covers the fine one nothing is left to do
    covered = shapely.union_all(shapely.buffer(wide_shapes, (wide - fine) / 2.0 + 2e-3))
    lines = np.array([shapely.linestrings(line) for line in fine_plan.lines], dtype=object)
    inner.step(0.9, "rest")
    rest = shapely.difference(lines, covered)
    needed = shapely.union_all(shapely.buffer(rest[~shapely.is_empty(rest)], JOIN))
    fine_lines = as_paths(clip_lines(lines, needed)[0]) if not needed.is_empty else ()
    same_width = 1 + int(np.ceil((wide - fine) / (fine * (1.0 - overlap)) - 1e-9))
    alone = total(tuple(loops)) * same_width + total(fine_lines)
    return RestPlan(tuple(loops), fine_lines, fine_plan, alone)
