"""The burn grid in a job: the largest that fits, clear of everything, and taken up only where it was."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import shapely
from shapely import MultiPoint, Polygon

from drypoint.errors import PlanError
from drypoint.session.corner import Corner
from drypoint.session.grid import DWELLS, FEW_DWELLS, POWERS, lay_grid
from drypoint.session.ground import CLEAR
from drypoint.session.session import Session


@pytest.fixture
def session(small_job):
    """The small board: quick to plan."""
    opened = Session.open(small_job)
    yield opened
    opened.close()


def with_margin(session, margin: float) -> None:
    session.change("Margin", blank=replace(session.settings.blank, width=0.0, height=0.0, margin=margin))


@pytest.mark.parametrize(("margin", "dwells"), [(16.0, DWELLS), (8.0, FEW_DWELLS)])
def test_the_largest_grid_that_fits_is_laid_in_the_waste(session, margin, dwells):
    with_margin(session, margin)
    plan = lay_grid(session.derived, session.snapshot)
    assert (plan.powers, plan.dwells) == (POWERS, dwells)
    pulses = MultiPoint(np.vstack(plan.grid.rows))
    layout, board = session.derived.layout(session.snapshot), session.derived.board(session.snapshot)
    assert board.outline.distance(pulses) >= CLEAR - 1e-6
    assert layout.blank.buffer(-CLEAR + 1e-6).covers(pulses)
    frames = [Polygon(line) for line in plan.frames]
    assert shapely.covers(shapely.union_all(frames).buffer(1e-6), MultiPoint(np.vstack(plan.grid.rows[:-1])))


def test_the_corner_that_is_set_is_taken(session):
    with_margin(session, 16.0)
    for corner in Corner:
        session.change("Corner", coupons=replace(session.settings.coupons, grid=corner))
        plan = lay_grid(session.derived, session.snapshot)
        x, y = np.vstack(plan.grid.rows).mean(axis=0).tolist()
        assert Corner.nearest((x, y), session.derived.layout(session.snapshot).blank) is corner


def test_without_room_the_reason_is_said(session):
    with_margin(session, 5.0)
    with pytest.raises(PlanError, match="widest strip beside the board is 5"):
        lay_grid(session.derived, session.snapshot)
