"""What the window shows of trial cuts: those that were begun, and where the next would lie."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from drypoint.errors import PlanError
from drypoint.session.corner import Corner
from drypoint.session.derive import Derived
from drypoint.session.grid import WHAT as GRID
from drypoint.session.grid import lay_grid
from drypoint.session.ground import KIND, trial_cuts
from drypoint.session.inputs import CUTS
from drypoint.session.legend import legend_wanted
from drypoint.session.memo import Memo
from drypoint.session.pattern import WHAT, lay_pattern
from drypoint.session.snapshot import Snapshot
from drypoint.ui.canvas.content import Trial

DEPENDS = (*CUTS, "coupons", "laser", "setup", KIND)
"""Sections and records that the picture changes with."""


@dataclass(frozen=True, slots=True, eq=False)
class TrialPicture:
    """Trial cuts, board frame.

    Attributes
    ----------
    shown : tuple of Trial
        All of them; the planned pattern is the last, a planned burn grid comes before it.
    nearest : Corner or None
        The corner that the planned pattern really lies nearest to; None if there is no room.
    trouble : PlanError or None
        Why there is none.
    """

    shown: tuple[Trial, ...]
    nearest: Corner | None
    trouble: PlanError | None = None


def draw_trials(derived: Derived, memo: Memo, snap: Snapshot) -> TrialPicture:
    """Lay the pattern and draw all trial cuts; computes."""
    return memo.get("trials", snap.key(*DEPENDS), lambda: _draw(derived, snap))


def _draw(derived: Derived, snap: Snapshot) -> TrialPicture:
    begun = tuple(Trial(one.what, one.lines, one.extents, begun=True) for one in trial_cuts(snap))
    begun = (*begun, *_planned_grid(derived, snap))
    try:
        pattern = lay_pattern(derived, snap)
    except PlanError as trouble:
        return TrialPicture(begun, None, trouble)
    x, y = np.vstack(pattern.lines).mean(axis=0).tolist()
    nearest = Corner.nearest((x, y), derived.layout(snap).blank)
    return TrialPicture((*begun, Trial(WHAT, pattern.lines, pattern.extents)), nearest)


def _planned_grid(derived: Derived, snap: Snapshot) -> tuple[Trial, ...]:
    """Where the next burn grid would lie; nothing where none is wanted, or there is no room for it."""
    if not legend_wanted(derived, snap) or snap.settings.coupons.grid_at_spot:
        return ()
    try:
        plan = lay_grid(derived, snap)
    except PlanError:  # its sheet says so
        return ()
    return (Trial(GRID, plan.frames, (plan.extent,)),)
