"""The legend as rows of marks: on the strokes, over the fills, off the pads."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.spatial import cKDTree
from shapely import LineString, Point, box
from shapely.affinity import rotate, translate

from drypoint.board.model import Board, Hole, Side
from drypoint.cuts.legend import LegendStyle, keep_free, plan_legend, wide_parts
from drypoint.cuts.legend_rows import row_width
from drypoint.cuts.medial import centre_lines_of
from drypoint.errors import PlanError
from drypoint.progress import Cancelled, Progress

STYLE = LegendStyle()


def all_points(legend):
    return np.vstack(legend.rows)


def test_a_single_row_runs_along_the_middle_of_a_stroke():
    line = LineString([(0, 0), (5, 1)])
    legend = plan_legend(line.buffer(0.1), LegendStyle(single=True))
    away = shapely.distance(line, shapely.points(all_points(legend)))
    assert away.max() < 0.006
    along = np.sort([line.project(Point(p)) for p in all_points(legend)])
    assert along[0] < 0.11
    assert along[-1] > line.length - 0.11
    assert np.diff(along).max() <= STYLE.pitch + 0.01


@settings(max_examples=20, deadline=None)
@given(
    width=st.one_of(st.floats(0.12, 0.6), st.floats(0.6, 1.5)),
    angle=st.floats(0, 180),
    bend=st.floats(-120, 120),
    pulses=st.booleans(),
)
def test_a_stroke_is_covered_as_wide_as_it_is_drawn(width, angle, bend, pulses):
    end = (4.0 + 3 * math.cos(math.radians(bend)), 3 * math.sin(math.radians(bend)))
    shape = rotate(LineString([(0, 0), (4.0, 0.0), end]), angle, origin=(0, 0)).buffer(width / 2)
    legend = plan_legend(shape, LegendStyle(pulses=pulses))
    discs = [shapely.multipoints(r) if pulses else shapely.linestrings(r) for r in legend.rows]
    burnt = shapely.union_all(shapely.buffer(discs, legend.spot / 2))
    covered = burnt.intersection(shape).area / shape.area
    # one row of discs leaves its scallops, the slanting ends of a hatch leave corners
    assert covered >= (0.88 if width > 0.15 else 0.8)
    assert burnt.difference(shape).area <= 0.1 * burnt.area
    assert legend.covered == pytest.approx(covered, abs=0.01)
    assert legend.spilled == pytest.approx(burnt.difference(shape).area / burnt.area, abs=0.01)


@pytest.mark.parametrize("width", [0.15, 0.18, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6])
def test_strokes_of_usual_widths_are_covered_to_nine_tenths(width):
    legend = plan_legend(LineString([(0, 0), (4, 1), (5, 4)]).buffer(width / 2), STYLE)
    assert legend.covered >= 0.9
    assert legend.spilled <= 0.05


def test_the_width_of_a_row_of_pulses_is_that_of_its_discs():
    for spot, pitch in ((0.12, 0.1), (0.2, 0.05), (0.1, 0.1)):
        discs = shapely.buffer([Point(k * pitch, 0) for k in range(401)], spot / 2, quad_segs=64)
        assert row_width(spot, pitch) == pytest.approx(
            shapely.union_all(discs).area / (400 * pitch), rel=0.01
        )


def test_planning_ends_soon_after_it_is_told_to():
    class Impatient(Progress):
        def step(self, done, text=""):
            if text.startswith("Strokes") and done > 0.2:
                raise Cancelled
            super().step(done, text)

    letters = shapely.union_all([box(x, 0, x + 0.15, 2) for x in range(40)])
    with pytest.raises(Cancelled):
        plan_legend(letters, progress=Impatient())


@settings(max_examples=25, deadline=None)
@given(
    width=st.floats(0.12, 0.4), length=st.floats(1.0, 8.0), angle=st.floats(0, 180), bend=st.floats(-120, 120)
)
def test_a_bent_stroke_keeps_its_length_and_place(width, length, angle, bend):
    knee = (length, 0.0)
    end = (length + 2 * math.cos(math.radians(bend)), 2 * math.sin(math.radians(bend)))
    line = translate(rotate(LineString([(0, 0), knee, end]), angle, origin=(0, 0)), 3.0, -2.0)
    found = centre_lines_of(line.buffer(width / 2), 0.08)
    total = sum(LineString(path).length for path in found)
    assert total == pytest.approx(line.length, abs=1.5 * width)
    worst = max(line.distance(Point(p)) for path in found for p in path)
    assert worst < 0.3 * width


def test_text_like_crossings_are_covered():
    cross = shapely.union_all(
        [LineString([(0, 0), (3, 3)]).buffer(0.07), LineString([(0, 3), (3, 0)]).buffer(0.07)]
    )
    legend = plan_legend(cross, LegendStyle(spot=0.14, pitch=0.07))
    assert legend.covered > 0.9
    assert legend.spilled < 0.05


def test_a_ring_is_covered_and_no_place_is_burnt_twice():
    legend = plan_legend(Point(0, 0).buffer(2.0).boundary.buffer(0.08), STYLE)
    points = all_points(legend)
    distance, _ = cKDTree(points).query(points, k=2)
    assert distance[:, 1].min() >= 0.25 * STYLE.pitch
    assert legend.covered > 0.9


def test_fills_are_hatched():
    legend = plan_legend(box(0, 0, 4, 3), LegendStyle(spot=0.2, pitch=0.1))
    assert legend.covered > 0.95
    assert legend.spilled < 0.02


def test_dots_are_not_lost():
    shape = shapely.union_all([Point(x, 0).buffer(0.1) for x in range(4)])
    legend = plan_legend(shape, STYLE)
    burnt = shapely.multipoints(all_points(legend)).buffer(STYLE.spot / 2)
    assert all(burnt.intersection(dot).area > 0.85 * dot.area for dot in shape.geoms)
    small = plan_legend(Point(3, 1).buffer(0.05), STYLE)
    assert small.count == 1
    assert np.hypot(*(all_points(small)[0] - (3, 1))) < 0.01


@pytest.mark.parametrize("pulses", [True, False])
def test_pads_and_holes_stay_free(pulses):
    style = LegendStyle(pulses=pulses)
    free = shapely.union_all([Point(2, 0).buffer(0.5), Point(3, 2).buffer(0.4)])
    shape = shapely.union_all([box(0, -0.08, 5, 0.08), box(1, 1, 5, 3)])
    legend = plan_legend(shape, style, free=free)
    marks = [shapely.Point(p) for r in legend.rows for p in r] if pulses else map(LineString, legend.rows)
    nearest = min(free.distance(mark) for mark in marks)
    assert nearest >= style.clear + style.spot / 2 - 0.002
    assert 0.0 < legend.kept_free < 0.5
    assert legend.covered > 0.7


def test_the_board_says_what_stays_free():
    trace = LineString([(0, 5), (10, 5)]).buffer(0.2)
    pad = box(4, 4.2, 6, 5.8)
    board = Board(
        "b",
        Side.BOTTOM,
        box(0, 0, 10, 10),
        {},
        "touching",
        (Hole(2, 2, 0.8),),
        other_copper={"a": trace.union(pad)},
    )
    free = keep_free(board, STYLE)
    assert free.contains(Point(2.7, 2))
    assert free.buffer(1e-6).contains(pad)
    assert not free.contains(Point(1, 5))
    assert keep_free(board, LegendStyle(trace=0.0)).contains(Point(1, 5))


def test_a_plane_may_be_marked_beside_its_holes_and_pads():
    plane = box(0, 0, 10, 7)
    board = Board(
        "b", Side.BOTTOM, box(0, 0, 10, 10), {}, "touching", (Hole(5, 4, 0.8),), other_copper={"gnd": plane}
    )
    assert not keep_free(board, STYLE).contains(Point(1, 1))
    assert keep_free(board, STYLE).contains(Point(5.5, 4))
    assert keep_free(board, LegendStyle(plane=0.0)).contains(Point(1, 1))


def test_wide_parts_keep_their_corners():
    assert wide_parts(box(0, 0, 2, 2), 0.6).equals_exact(box(0, 0, 2, 2), 1e-9) or (
        wide_parts(box(0, 0, 2, 2), 0.6).symmetric_difference(box(0, 0, 2, 2)).area < 1e-6
    )
    assert wide_parts(box(0, 0, 5, 0.4), 0.6).is_empty


@pytest.mark.parametrize("shape", [None, shapely.MultiPolygon()])
def test_without_a_legend_there_is_a_plain_word(shape):
    with pytest.raises(PlanError, match="no legend"):
        plan_legend(shape)


def test_nothing_left_is_said():
    with pytest.raises(PlanError, match="left"):
        plan_legend(box(0, 0, 1, 0.1), free=box(-1, -1, 2, 2))


@pytest.mark.parametrize("style", [LegendStyle(pitch=0.0), LegendStyle(spot=-1.0), LegendStyle(widest=0.05)])
def test_settings_that_make_no_sense_are_refused(style):
    with pytest.raises(PlanError):
        plan_legend(box(0, 0, 1, 0.1), style)
