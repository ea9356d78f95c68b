"""Tooling holes: in the margin, far apart, and no wrong turn of the blank goes unnoticed."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Point, box

from drypoint.bits.model import Drill, Speeds
from drypoint.cuts.model import CutKind
from drypoint.cuts.tooling import FROM_EDGE, NOTICED, tells_turn, tooling_holes, tooling_room, wrong_turns
from drypoint.geometry.points import as_points

DRILL = Drill("Drill 1.0 mm", 1.0, Speeds(10000, 150, 150), 0.8)
MILL = 2.0


def planned(width, height, margin, count, keepout=None):
    blank = box(-margin, -margin, width + margin, height + margin)
    workable = blank if keepout is None else shapely.difference(blank, keepout)
    room = tooling_room(box(0, 0, width, height), workable, DRILL, MILL)
    return blank, tooling_holes(room, blank.bounds, DRILL, count=count, depth=1.9)


@settings(deadline=None, max_examples=60)
@given(
    width=st.floats(20, 160),
    height=st.floats(20, 160),
    margin=st.floats(7, 15),
    count=st.integers(2, 5),
    clamp=st.tuples(st.floats(0, 1), st.floats(0, 1)),
)
def test_they_lie_in_the_waste_and_tell_every_wrong_turn(width, height, margin, count, clamp):
    x, y = clamp[0] * width, clamp[1] * height
    keepout = box(x - 6, y - 30, x + 6, y + 30)
    blank, found = planned(width, height, margin, count, keepout)
    assert [cut.label for cut in found.cuts] == [f"T{n}" for n in range(1, count + 1)]
    assert {cut.kind for cut in found.cuts} == {CutKind.TOOLING}
    hole = [Point(cut.path[0]).buffer(cut.diameter / 2) for cut in found.cuts]
    inside = blank.buffer(-FROM_EDGE + 1e-3)
    milled = box(0, 0, width, height).buffer(MILL)
    assert all(inside.contains(one) and not one.intersects(milled) for one in hole)
    assert not any(one.intersects(keepout) for one in hole)
    assert found.tells


@pytest.mark.parametrize("count", [2, 3, 4])
def test_a_blank_laid_down_the_wrong_way_has_no_hole_at_one_place_at_least(count):
    """Said by turning the drilled holes themselves, not by the function that chose them."""
    width, height, margin = 70.0, 40.0, 8.0
    _, found = planned(width, height, margin, count)
    places = np.array([cut.path[0] for cut in found.cuts])
    middle = np.array([width, height]) / 2.0
    for sign in ((-1, -1), (-1, 1), (1, -1)):
        there = middle + (places - middle) * np.array(sign)
        nearest = [min(math.dist(wanted, hole) for hole in there) for wanted in places]
        assert max(nearest) > NOTICED


def test_three_lie_in_corners_as_far_apart_as_the_margin_allows():
    _, found = planned(70.0, 40.0, 8.0, 3)
    places = np.array([cut.path[0] for cut in found.cuts])
    apart = sorted(math.dist(places[i], places[j]) for i, j in ((0, 1), (0, 2), (1, 2)))
    least = FROM_EDGE + DRILL.diameter / 2
    wide, high = 86.0 - 2 * least, 56.0 - 2 * least
    assert apart == pytest.approx([high, wide, math.hypot(wide, high)], abs=0.5)


def test_four_corners_of_a_rectangle_tell_nothing():
    corners = as_points([(2, 2), (68, 2), (68, 38), (2, 38)])
    assert not tells_turn(corners, (0.0, 0.0, 70.0, 40.0))
    assert tells_turn(corners[:3], (0.0, 0.0, 70.0, 40.0))


def test_a_square_blank_may_be_a_quarter_turned_as_well():
    """Seven ways other than the right one: the symmetries of the square."""
    ways = wrong_turns((0.0, 0.0, 50.0, 50.0))
    corner = as_points([(1.0, 7.0)])
    assert len({tuple(turn(corner)[0].round(6)) for turn in ways} | {(1.0, 7.0)}) == 8
    assert len(wrong_turns((0.0, 0.0, 70.0, 50.0))) == 3


def test_without_room_there_are_none():
    _, found = planned(70.0, 40.0, 4.0, 3)
    assert found.cuts == ()
