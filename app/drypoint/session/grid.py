"""The laser's burn grid in a job: where it lies in the waste, smaller where the waste is narrow."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely
from shapely import Geometry, box

from drypoint.cuts.burn_grid import FIELD, BurnGrid, plan_burn_grid
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, as_points
from drypoint.session.codec import from_json
from drypoint.session.corner import Corner
from drypoint.session.derive import Derived
from drypoint.session.ground import KIND, Box, Ground, extent_of, fits, ground_of, settle, trial_cuts
from drypoint.session.pattern import WHAT as PATTERN
from drypoint.session.pattern import Pattern, lay_pattern
from drypoint.session.snapshot import Snapshot
from drypoint.wording import say

WHAT = "burn grid"
"""What the records of trial cuts call it."""
GRID = "grid"
"""Under which a record or a run keeps what a grid was made of."""

Values = tuple[float, ...]

POWERS: Values = (0.1, 0.2, 0.3, 0.4, 0.6, 0.8)
FEW_POWERS: Values = (0.1, 0.3, 0.6)
DWELLS: Values = (0.005, 0.01, 0.02, 0.04, 0.08)
FEW_DWELLS: Values = (0.01, 0.02, 0.04)
FORMS = ((POWERS, DWELLS), (POWERS, FEW_DWELLS), (FEW_POWERS, DWELLS), (FEW_POWERS, FEW_DWELLS))
"""Grids by size: the first that fits the waste is burnt."""


@dataclass(frozen=True, slots=True)
class GridPlan:
    """What a grid is made of: lower left corner, board frame, mm; powers; dwells, s; pitch, mm."""

    corner: tuple[float, float]
    powers: Values
    dwells: Values
    pitch: float

    @property
    def grid(self) -> BurnGrid:
        """The grid itself."""
        return plan_burn_grid(self.corner, powers=self.powers, dwells=self.dwells, pitch=self.pitch)

    @property
    def extent(self) -> Box:
        """The ground it needs, mm."""
        return extent_of(self.grid.rows, 0.0)

    @property
    def frames(self) -> tuple[Points, ...]:
        """The edge of every field."""
        half = FIELD / 2.0
        square = np.array([(-half, -half), (half, -half), (half, half), (-half, half), (-half, -half)])
        return tuple(as_points(square + cell.at) for cell in self.grid.cells)


def lay_grid(
    derived: Derived, snap: Snapshot, reach: Geometry | None = None, *, corner: Corner | None = None
) -> GridPlan:
    """The largest grid that the free copper has room for, as near to its corner as that goes; computes.

    It keeps off the test pattern that is planned, while none was begun; where even the smallest has no
    room beside that, it lies as if there were no pattern (`over_pattern` tells).

    Raises
    ------
    PlanError
        If there is no room for the smallest; says what is in the way.
    """
    ground, wanted = ground_of(derived, snap, reach), corner or snap.settings.coupons.grid
    pitch = snap.settings.laser.pitch
    size = (0.0, 0.0)
    for room in _rooms(derived, snap, ground, reach):
        for powers, dwells in FORMS:
            plan = GridPlan((0.0, 0.0), powers, dwells, pitch)
            x0, y0, x1, y1 = plan.extent
            size = (x1 - x0, y1 - y0)
            at = fits(size, room, wanted)
            if at is not None:
                return replace(plan, corner=(at[0] - x0, at[1] - y0))
    settle(size, ground, wanted, title=say("Burn grid"))
    raise PlanError(
        "The burn grid fits only turned by a quarter.",
        "Burn grid",
        "Use a larger blank, or burn it where the light spot stands.",
    )


def _rooms(derived: Derived, snap: Snapshot, ground: Ground, reach: Geometry | None) -> tuple[Ground, ...]:
    """The free copper beside the planned test pattern, then all of it."""
    pattern = _planned_pattern(derived, snap, reach)
    if pattern is None:
        return (ground,)
    taken = {**ground.taken, say("the planned test pattern"): pattern.ground}
    return replace(ground, taken=taken), ground


def _planned_pattern(derived: Derived, snap: Snapshot, reach: Geometry | None) -> Pattern | None:
    """Where the test pattern will lie; None once one was begun, or if there is no room for it."""
    if any(one.what == PATTERN for one in trial_cuts(snap)):
        return None
    try:
        return lay_pattern(derived, snap, reach=reach)
    except PlanError:
        return None


def over_pattern(derived: Derived, snap: Snapshot, plan: GridPlan) -> bool:
    """Whether a grid lies where the test pattern is planned: there is room for one of them only. Computes."""
    pattern = _planned_pattern(derived, snap, None)
    return pattern is not None and bool(shapely.intersects(pattern.ground, box(*plan.extent)))


def grid_at(snap: Snapshot, place: tuple[float, float]) -> GridPlan:
    """The whole grid to the right of a place of the board frame and behind it."""
    return GridPlan(place, POWERS, DWELLS, snap.settings.laser.pitch)


def newest_grid(snap: Snapshot) -> GridPlan | None:
    """The grid that was begun last on the side that looks up; None without one."""
    face = snap.face().value
    for record in reversed(snap.records[KIND]):
        if record.data["what"] == WHAT and record.data["face"] == face:
            return read_plan(record.data[GRID])
    return None


def read_plan(data: Any) -> GridPlan:
    """A plan as it was kept."""
    return from_json(GridPlan, data, WHAT)
