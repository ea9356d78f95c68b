"""What is cut and what still hangs together."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import box

from drypoint.bench.body import Body
from drypoint.bench.copper import Copper, swept
from drypoint.bench.imperfect import Faults
from drypoint.bench.raster import Cell, Raster
from drypoint.bench.shape import CutShape
from drypoint.bench.sheet import Clamping, Sheet
from drypoint.bench.truth import Kind, Truth
from drypoint.bits.model import Drill, EndMill, Speeds, VBit

SPEEDS = Speeds(10000.0, 300.0, 100.0)
BIT = VBit("30°", 0.1, math.radians(30.0), SPEEDS)
SHAPE = CutShape.of(BIT)


def line(a, b, step=0.05):
    count = int(math.dist(a, b) / step) + 2
    return np.column_stack([np.linspace(a[i], b[i], count) for i in (0, 1)])


def carve(copper, a, b, depth):
    path = line(a, b)
    copper.carve(path, np.broadcast_to(np.asarray(depth, dtype=float), len(path)).copy(), SHAPE)


# the width of a V groove, w = t + 2 d tan(α/2): plane geometry of the cone
def test_a_v_groove_has_the_width_of_its_cone():
    copper = Copper(box(0, 0, 20, 20))
    carve(copper, (2, 5), (18, 5), 0.1)
    for groove in copper.grooves():
        assert groove.width == pytest.approx(0.1 + 2 * 0.065 * math.tan(math.radians(15)), abs=1e-9)
        assert groove.top == pytest.approx(BIT.width(0.1), abs=1e-9)


def test_a_drill_and_a_mill_have_their_diameter_once_deep_enough():
    assert CutShape.of(Drill("d", 0.8, SPEEDS)).width(np.array([1.6]))[0] == pytest.approx(0.8)
    assert CutShape.of(Drill("d", 0.8, SPEEDS)).width(np.array([0.05]))[0] < 0.8
    assert CutShape.of(EndMill("m", 1.0, SPEEDS, 0.5)).width(np.array([0.01]))[0] == 1.0


def test_a_groove_through_parts_the_copper_and_one_that_is_not_does_not():
    copper = Copper(box(0, 0, 20, 20))
    carve(copper, (-1, 10), (21, 10), 0.03)
    assert copper.pieces.label_near((5, 5)) == copper.pieces.label_near((5, 15))
    carve(copper, (-1, 10), (21, 10), 0.04)
    assert copper.pieces.label_near((5, 5)) != copper.pieces.label_near((5, 15))


@pytest.mark.parametrize("gap", [0.002, 0.02, 0.2])
def test_the_narrowest_bridge_still_joins(gap):
    copper = Copper(box(0, 0, 20, 20))
    width = copper_width = SHAPE.width(np.array([0.1 - copper.thickness]))[0]
    carve(copper, (-1, 10), (9 - copper_width / 2, 10), 0.1)
    carve(copper, (9 + gap + width / 2, 10), (21, 10), 0.1)
    assert copper.pieces.label_near((5, 5)) == copper.pieces.label_near((5, 15))
    carve(copper, (8, 10), (10, 10), 0.1)
    assert copper.pieces.label_near((5, 5)) != copper.pieces.label_near((5, 15))


def test_a_spot_where_the_tip_does_not_reach_is_not_through():
    copper = Copper(box(0, 0, 20, 20))
    path = line((1, 10), (19, 10))
    depth = np.where(np.abs(path[:, 0] - 10) < 1.0, 0.02, 0.1)
    copper.carve(path, depth, SHAPE)
    covered = copper.pieces.covers([(5, 10), (10, 10), (15, 10)])
    assert covered.tolist() == [False, True, False]


def test_a_ring_is_an_island():
    copper = Copper(box(0, 0, 30, 30))
    t = np.linspace(0, 2 * math.pi, 400)
    copper.carve(np.column_stack((15 + 6 * np.cos(t), 15 + 6 * np.sin(t))), np.full(400, 0.1), SHAPE)
    assert copper.pieces.label_near((15, 15)) != copper.pieces.label_near((2, 2))
    assert len(set(copper.pieces.labels.tolist())) == 2


lines = st.lists(
    st.tuples(*[st.floats(1.0, 23.0)] * 4, st.floats(0.0, 0.2)).filter(
        lambda v: math.dist(v[:2], v[2:4]) > 0.1
    ),
    max_size=8,
)


@settings(max_examples=30)
@given(lines)
def test_tiles_give_the_pieces_of_the_whole(found):
    copper = Copper(box(0, 0, 24, 24))
    for x0, y0, x1, y1, depth in found:
        carve(copper, (x0, y0), (x1, y1), depth)
        _ = copper.pieces.labels  # step by step, as while running
    whole = copper.blank.difference(shapely.union_all([swept(g) for g in copper.grooves()]))
    parts = [part for part in shapely.get_parts(whole) if part.area > 1e-6]
    labels = {
        int(label)
        for polygon, label in zip(copper.pieces.polygons, copper.pieces.labels, strict=True)
        if polygon.area > 1e-6
    }
    assert len(labels) == len(parts)
    assert sum(p.area for p in copper.pieces.polygons) == pytest.approx(whole.area, abs=1e-6)


def test_the_picture_agrees_with_the_polygons():
    copper = Copper(box(0, 0, 10, 8))
    raster = Raster(copper, 1.6, 0.05)
    assert (raster.picture().cells == Cell.COPPER).all()
    carve(copper, (2, 2), (8, 6), 0.1)
    carve(copper, (2, 6), (4, 6), 0.02)
    cells = raster.picture().cells
    assert cells.shape == (160, 200)
    rows, columns = np.mgrid[0:160, 0:200]
    centres = np.column_stack((columns.ravel(), rows.ravel())) * 0.05 + 0.025
    left = copper.pieces.covers(centres).reshape(cells.shape)
    wrong = left == (cells >= Cell.THROUGH)
    area = float((cells >= Cell.THROUGH).sum()) * 0.05**2
    through = 80.0 - sum(p.area for p in copper.pieces.polygons)
    assert wrong.mean() < 0.01
    assert area == pytest.approx(through, rel=0.35)  # a groove is three cells wide
    assert (cells == Cell.SCRATCHED).any()


def circle(x, y, radius, count=80):
    turn = np.linspace(0.0, 2.0 * math.pi, count)
    return np.column_stack((x + radius * np.cos(turn), y + radius * np.sin(turn)))


def test_holes_are_seen_whether_drilled_or_milled_in_circles():
    copper = Copper(box(0, 0, 40, 20))
    drill = CutShape.of(Drill("d", 0.8, SPEEDS))
    mill = CutShape.of(EndMill("m", 1.0, SPEEDS, 0.5))
    copper.carve(np.array([[5.0, 6.0], [5.0, 6.0]]), np.array([0.5, 1.8]), drill)
    rings = np.vstack((circle(20.0, 8.0, 0.6), circle(20.0, 8.0, 1.1)))
    copper.carve(rings, np.full(len(rings), 1.7), mill)
    half = circle(30.0, 8.0, 1.1)[:40]  # a bow is no hole, and a ring that is too shallow none either
    copper.carve(half, np.full(len(half), 1.7), mill)
    copper.carve(circle(35.0, 8.0, 1.1), np.full(80, 0.3), mill)
    carve(copper, (2, 15), (18, 15), 1.7)
    found = sorted(copper.holes(1.6))
    assert [len(found), *found[0]] == pytest.approx([2, 5.0, 6.0, 0.8], abs=1e-6)
    assert found[1] == pytest.approx((20.0, 8.0, 3.2), abs=0.01)


def test_a_drill_that_slips_keeps_to_its_hole_stroke_by_stroke_and_goes_through_there():
    sheet = Sheet(40.0, 30.0, Truth.draw(1, (0.0, 0.0, 40.0, 30.0), Kind.FLAT), Clamping(), double=True)
    body = Body(sheet, Faults(play=(0.0, 0.0, 0.0), wander=0.05), 3, (0.0, 0.0, 5.0))
    body.change_bit(Drill("d", 0.8, SPEEDS))
    body.bit_length = 0.0
    body.switch_by_hand(on=True)
    for x in (10.0, 20.0):
        for depth in (-0.6, -2.0):
            body.moved((x, 15.0, 0.0), rapid=False, power=0.0, speed=5.0)
            body.moved((x, 15.0, depth - 5.0), rapid=False, power=0.0, speed=2.0)
            body.moved((x, 15.0, 0.0), rapid=False, power=0.0, speed=5.0)
    body.flush()
    found = np.array(sheet.up.holes(0.3))
    assert len(found) == 4
    off = found[:, :2] - np.array([(10.0, 15.0), (10.0, 15.0), (20.0, 15.0), (20.0, 15.0)])
    assert off[0] == pytest.approx(off[1])
    assert off[2] == pytest.approx(off[3])
    assert 0.0 < np.abs(off).max() < 0.3
    assert np.abs(off[0] - off[2]).max() > 1e-3
    below = np.array(sheet.down.holes(0.01))
    assert below[:, :2] == pytest.approx(found[[1, 3], :2])
