"""Where trial cuts may lie: what is kept clear, which corner, and why there is no room."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import MultiPolygon, box

from drypoint.errors import PlanError
from drypoint.session.corner import Corner
from drypoint.session.ground import CLEAR, KIND, Ground, fits, ground_of, settle, trial_cuts
from drypoint.session.pattern import lay_pattern
from drypoint.session.session import Session
from drypoint.session.settings import Clamp

BOARD = box(10, 10, 50, 40)
BLANK = box(0, 0, 60, 50)


@pytest.fixture
def session(small_job):
    """The small board: quick to plan."""
    opened = Session.open(small_job)
    yield opened
    opened.close()


@settings(max_examples=25, deadline=None)
@given(
    width=st.floats(0.5, 12.0),
    height=st.floats(0.5, 12.0),
    corner=st.sampled_from(list(Corner)),
    clamp=st.tuples(st.floats(0, 55), st.floats(0, 45)),
)
def test_what_is_settled_is_clear_of_everything(width, height, corner, clamp):
    taken = {"clamps": box(clamp[0], clamp[1], clamp[0] + 8, clamp[1] + 8)}
    ground = Ground(BLANK, BOARD, taken)
    try:
        found = settle((width, height), ground, corner, title="It")
    except PlanError:
        assert min(width, height) + 2 * CLEAR > 6.0  # beside a clamp there are other sides
        return
    w, h = (height, width) if found.stands else (width, height)
    x, y = found.at
    placed = box(x, y, x + w, y + h)
    assert shapely.distance(placed, BOARD) >= CLEAR - 1e-6
    assert shapely.distance(placed, taken["clamps"]) >= CLEAR - 1e-6
    assert BLANK.buffer(-CLEAR + 1e-6).covers(placed)


@pytest.mark.parametrize("corner", list(Corner))
def test_it_lies_in_the_corner_that_is_free_and_moves_along_where_it_is_not(corner):
    free = Ground(BLANK, BOARD, {})
    at = fits((5.0, 5.0), free, corner)
    assert at is not None
    wanted = corner.place(BLANK)
    middle = (at[0] + 2.5, at[1] + 2.5)
    assert Corner.nearest(middle, BLANK) is corner
    assert max(abs(middle - wanted)) == pytest.approx(2.5 + CLEAR)
    blocked = Ground(BLANK, BOARD, {"clamps": box(*(wanted - 9), *(wanted + 9))})
    other = fits((5.0, 5.0), blocked, corner)
    assert other is not None
    assert other != at
    assert fits((12.0, 12.0), free, corner) is None


def test_why_there_is_no_room_is_said():
    tight = Ground(box(0, 0, 60, 50), box(4, 4, 56, 46), {})
    with pytest.raises(PlanError, match=r"widest strip beside the board is 4\.0 mm"):
        settle((8.0, 6.0), tight, Corner.LOWER_LEFT, title="It")
    clamped = Ground(BLANK, BOARD, {"clamps": shapely.difference(BLANK, BOARD), "others": MultiPolygon()})
    with pytest.raises(PlanError, match="in the way: clamps"):
        settle((5.0, 5.0), clamped, Corner.LOWER_LEFT, title="It")


def test_clamps_and_earlier_trial_cuts_of_the_job_are_kept_clear(session):
    wide = replace(session.settings.blank, width=0.0, height=0.0, margin=14.0)
    session.change("Room", blank=wide)
    first = lay_pattern(session.derived, session.snapshot)
    x0, y0 = session.derived.layout(session.snapshot).blank.bounds[:2]
    left, low = first.extents[0][0] - x0, first.extents[0][1] - y0
    session.change("Clamp", blank=replace(wide, clamps=(Clamp(left, low, 6.0, 6.0),)))
    second = lay_pattern(session.derived, session.snapshot)
    keepout = session.derived.layout(session.snapshot).keepout
    assert second.ground.distance(keepout) >= CLEAR - 1e-6
    lines = [line.tolist() for line in second.lines]
    kept = {"what": "test pattern", "setup": 1, "face": "bottom", "extents": second.extents, "lines": lines}
    session.keep(KIND, kept)
    third = lay_pattern(session.derived, session.snapshot)
    assert third.ground.distance(second.ground) >= CLEAR - 1e-6
    assert trial_cuts(session.snapshot)[0].extents == second.extents
    other = {**kept, "face": "top"}
    session.job.set_aside(KIND)
    session.keep(KIND, other)
    assert lay_pattern(session.derived, session.snapshot).extents == second.extents


def test_no_ground_where_the_machine_does_not_get_to(session):
    wide = replace(session.settings.blank, width=0.0, height=0.0, margin=14.0)
    session.change("Room", blank=wide)
    snap = session.snapshot
    x0, y0, x1, y1 = session.derived.layout(snap).blank.bounds
    reach = box(x0 + 25.0, y0, x1 + 50.0, y1)
    ground = ground_of(session.derived, snap, reach)
    found = settle((6.0, 6.0), ground, Corner.LOWER_LEFT, title="It")
    assert found.at[0] >= x0 + 25.0 + CLEAR - 1e-6
    with pytest.raises(PlanError, match="the end of the machine's travel"):
        lay_pattern(session.derived, snap, reach=box(x0 - 50.0, y0 - 50.0, x0 - 10.0, y0 - 10.0))
