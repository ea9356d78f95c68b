"""The burn grid in a job: the largest that fits, clear of everything, and taken up only where it was."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import shapely
from shapely import MultiPoint, Polygon, box

from drypoint.errors import PlanError
from drypoint.session.corner import Corner
from drypoint.session.grid import DWELLS, FEW_DWELLS, POWERS, lay_grid, over_pattern
from drypoint.session.ground import CLEAR
from drypoint.session.pattern import lay_pattern
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
        other = next(one for one in Corner if one is not corner)
        session.change("Corner", coupons=replace(session.settings.coupons, grid=corner, pattern=other))
        plan = lay_grid(session.derived, session.snapshot)
        x, y = np.vstack(plan.grid.rows).mean(axis=0).tolist()
        assert Corner.nearest((x, y), session.derived.layout(session.snapshot).blank) is corner


@pytest.mark.parametrize("margin", [12.0, 16.0, 20.0])
@pytest.mark.parametrize("corner", list(Corner))
def test_grid_and_pattern_planned_for_one_corner_lie_apart(session, margin, corner):
    with_margin(session, margin)
    coupons = replace(session.settings.coupons, grid=corner, pattern=corner)
    session.change("One corner", coupons=coupons)
    plan = lay_grid(session.derived, session.snapshot)
    pattern = lay_pattern(session.derived, session.snapshot)
    assert pattern.ground.distance(box(*plan.extent)) >= CLEAR - 1e-6
    assert not over_pattern(session.derived, session.snapshot, plan)


def test_where_only_one_of_them_has_room_that_is_told(session):
    blank = replace(session.settings.blank, width=30.0, height=26.0, board_x=3.0, board_y=3.0, centred=False)
    session.change("Blank", blank=blank)
    plan = lay_grid(session.derived, session.snapshot)
    assert over_pattern(session.derived, session.snapshot, plan)


def test_without_room_the_reason_is_said(session):
    with_margin(session, 5.0)
    with pytest.raises(PlanError, match="widest strip beside the board is 5"):
        lay_grid(session.derived, session.snapshot)
