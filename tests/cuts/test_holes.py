"""Holes, slots, marks and the outline."""

import math
from dataclasses import replace

import numpy as np
import pytest
import shapely

from drypoint.bits.library import default_library
from drypoint.bits.model import Drill, EndMill, Speeds
from drypoint.board.model import Board, Hole, Side, Slot
from drypoint.cuts.holes import plan_holes, reference_marks
from drypoint.cuts.model import CutKind
from drypoint.cuts.outline import plan_outline
from drypoint.errors import PlanError
from drypoint.geometry.points import as_points, is_closed

SPEEDS = Speeds(10_000, 100, 50)
MILL = EndMill("mill", 1.0, SPEEDS, 0.4)
DRILLS = (Drill("0.8", 0.8, SPEEDS), Drill("1.0", 1.0, SPEEDS))


@pytest.fixture
def board():
    outline = shapely.Polygon(shapely.box(0, 0, 40, 30).exterior, [shapely.box(15, 10, 25, 20).exterior])
    holes = (Hole(5, 5, 0.85), Hole(10, 5, 0.96), Hole(30, 5, 3.2), Hole(35, 5, 0.4))
    slots = (Slot(as_points([(5, 25), (9, 25)]), 1.6),)
    return Board("demo", Side.BOTTOM, outline, {"A": shapely.box(1, 1, 3, 3)}, "touching", holes, slots)


def test_each_hole_gets_the_right_bit(board):
    plan = plan_holes(board, DRILLS, MILL, thickness=1.6, through=0.3)
    made = {(cut.kind, cut.bit.name, cut.diameter) for cut in plan.cuts}
    assert (CutKind.HOLE, "0.8", 0.85) in made
    assert (CutKind.HOLE, "1.0", 0.96) in made
    assert (CutKind.BORE, "mill", 3.2) in made
    assert [finding.kind for finding in plan.findings] == ["no drill"]
    assert all(cut.depth == pytest.approx(1.9) for cut in plan.cuts)


def test_bores_and_slots_are_cut_to_size_without_a_core(board):
    for cut in plan_holes(board, DRILLS, MILL, thickness=1.6, through=0.3).cuts:
        swept = shapely.LineString(cut.path).buffer(0.5, quad_segs=64) if len(cut.path) > 1 else None
        if cut.kind is CutKind.BORE:
            assert swept.area == pytest.approx(math.pi * 1.6**2, rel=5e-3)
        if cut.kind is CutKind.SLOT:
            assert swept.area == pytest.approx(4 * 1.6 + math.pi * 0.8**2, rel=5e-3)


def test_slender_drills_get_spot_marks_first(board):
    plan = plan_holes(board, DRILLS, MILL, thickness=1.6, through=0.3, vbit=default_library().vbits[0])
    assert plan.cuts[0].kind is CutKind.SPOT


def test_the_bed_is_never_reached(board):
    with pytest.raises(PlanError):
        plan_holes(board, DRILLS, MILL, thickness=1.6, through=3.0, bed=3.0)


def test_marks_lie_in_the_waste_and_far_apart(board):
    blank = shapely.box(-8, -8, 48, 38).difference(shapely.box(-8, -8, 0, 0))
    marks = reference_marks(board, blank, DRILLS[1], count=3)
    places = np.array([mark.path[0] for mark in marks])
    spots = shapely.points(places)
    assert all(mark.kind is CutKind.MARK for mark in marks)
    assert shapely.contains(blank.buffer(-1.9), spots).all()
    assert (shapely.distance(board.outline, spots) > 1.5).all()
    assert min(np.hypot(*(places[i] - places[j])) for i in range(3) for j in range(i)) > 30


def test_no_room_for_marks_is_told(board):
    with pytest.raises(PlanError):
        reference_marks(board, shapely.box(-1, -1, 41, 31), DRILLS[0])


def test_outline_is_last_at_the_right_distance_and_tabs_are_off_corners(board):
    cuts = plan_outline(board, MILL, thickness=1.6, through=0.2)
    assert [cut.label for cut in cuts] == ["cut-out 1", "outline"]
    outer = cuts[-1]
    assert is_closed(outer.path)
    solid = shapely.Polygon(board.outline.exterior)
    assert shapely.distance(solid, shapely.points(outer.path)) == pytest.approx(0.5, abs=2e-3)
    corners = shapely.MultiPoint([(0, 0), (40, 0), (40, 30), (0, 30)])
    assert len(outer.tabs) == 4
    assert (shapely.distance(corners, shapely.points(outer.tabs)) > 2.0).all()
    assert (shapely.distance(shapely.LineString(outer.path), shapely.points(outer.tabs)) < 1e-6).all()


def test_outline_never_runs_through_a_clamp(board):
    with pytest.raises(PlanError, match="clamp"):
        plan_outline(board, MILL, thickness=1.6, through=0.2, keepout=shapely.box(40.9, 10, 45, 15))
    plan_outline(board, MILL, thickness=1.6, through=0.2, keepout=shapely.box(41.1, 10, 45, 15))


def test_a_mill_too_big_for_a_cut_out_is_told(board):
    with pytest.raises(PlanError, match="fit"):
        plan_outline(board, EndMill("big", 12.0, SPEEDS, 1.0), thickness=1.6, through=0.2)


def test_a_spot_is_narrower_than_its_drill(board):
    wide = replace(default_library().vbits[0], tip=0.3, angle=math.radians(90))
    plan = plan_holes(board, DRILLS, MILL, thickness=1.6, through=0.3, vbit=wide)
    spots = [cut for cut in plan.cuts if cut.kind is CutKind.SPOT]
    assert {tuple(cut.path[0]) for cut in spots} == {(5.0, 5.0)}  # 1.9 mm deep: 0.8 is thin, 1.0 is not
    assert all(wide.width(cut.depth) <= 0.6 * 0.8 + 1e-9 for cut in spots)
    blunt = replace(wide, tip=0.6)
    plan = plan_holes(board, DRILLS, MILL, thickness=1.6, through=0.3, vbit=blunt)
    assert not any(cut.kind is CutKind.SPOT for cut in plan.cuts)


def test_only_pads_that_nothing_holds_are_drilled_gently(board):
    lone, held = shapely.Point(5, 5).buffer(1.0), shapely.Point(10, 5).buffer(1.0)
    ring = lone.difference(shapely.Point(5, 5).buffer(0.4))  # the hole may be left out of the copper
    nets = {"LONE": ring, "HELD": shapely.union(held, shapely.box(10, 4.8, 30, 5.2))}
    plan = plan_holes(replace(board, nets=nets), DRILLS, MILL, thickness=1.6, through=0.3, gentle=0.5)
    ease = {tuple(cut.path[0]): cut.ease for cut in plan.cuts if cut.kind is CutKind.HOLE}
    assert ease == {(5.0, 5.0): 0.5, (10.0, 5.0): 1.0}
    for small, gentle in ((0.0, 0.5), (1.9, 0.5), (2.6, 1.0)):
        plain = plan_holes(
            replace(board, nets=nets),
            DRILLS,
            MILL,
            thickness=1.6,
            through=0.3,
            small_pad=small,
            gentle=gentle,
        )
        assert {cut.ease for cut in plain.cuts} == {1.0}
