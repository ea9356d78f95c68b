"""Paths made ready to be drawn lose nothing that can be seen."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.passes.model import ReachMap
from drypoint.ui.canvas.pass_drawing import draw_reach
from drypoint.ui.canvas.paths import CHUNK, path_set

coordinate = st.floats(-50, 50, allow_nan=False, width=32)
polyline = st.lists(st.tuples(coordinate, coordinate), min_size=2, max_size=60)


def far_from(points: np.ndarray, line: np.ndarray) -> float:
    """Greatest distance of points from a polyline."""
    a, step = line[:-1], np.diff(line, axis=0)
    square = np.maximum((step**2).sum(axis=1), 1e-18)
    share = np.clip(((points[:, None] - a) * step).sum(axis=2) / square, 0, 1)
    near = a + share[..., None] * step
    return float(np.hypot(*(points[:, None] - near).transpose(2, 0, 1)).min(axis=1).max())


@settings(max_examples=60, deadline=None)
@given(st.lists(polyline, min_size=1, max_size=4))
def test_every_level_stays_within_its_tolerance(lines: list[list[tuple[float, float]]]) -> None:
    paths = path_set(lines)
    for level in paths.levels:
        for number, given_line in enumerate(lines):
            chunks = np.flatnonzero(level.line == number)
            if not len(chunks):
                continue
            drawn = level.points[level.starts[chunks[0]] : level.stops[chunks[-1]]]
            # simplified step by step, so the errors of the finer levels add up
            assert far_from(np.asarray(given_line), drawn) <= 4.0 * level.tolerance + 1e-6


@settings(max_examples=40, deadline=None)
@given(st.lists(polyline, min_size=1, max_size=4))
def test_chunks_cover_every_segment_once(lines: list[list[tuple[float, float]]]) -> None:
    level = path_set(lines).levels[0]
    assert (level.stops - level.starts - 1).sum() == sum(len(line) - 1 for line in lines)
    assert (level.stops - level.starts - 1 <= CHUNK).all()
    for start, stop, box in zip(level.starts, level.stops, level.boxes, strict=True):
        part = level.points[start:stop]
        assert (part.min(axis=0) >= box[:2]).all()
        assert (part.max(axis=0) <= box[2:]).all()


def test_a_straight_line_of_many_vertices_becomes_few() -> None:
    x = np.linspace(0, 100, 20_001)
    paths = path_set([np.stack((x, 0.5 * x), axis=1)])
    assert paths.segments == 20_000
    assert len(paths.level(8.0).points) < 1000


def test_length_and_places_along_the_order() -> None:
    paths = path_set([[(0, 0), (10, 0)], [(20, 0), (20, 5)]])
    assert paths.length == pytest.approx(15.0)
    assert paths.place_at(4.0) == pytest.approx((4.0, 0.0))
    assert paths.place_at(12.0) == pytest.approx((20.0, 2.0))
    assert paths.line_at(9.0) == 0
    assert paths.line_at(11.0) == 1
    assert paths.starts_at(1) == pytest.approx(10.0)


def test_no_lines_and_single_points_are_no_trouble() -> None:
    assert path_set([]).bounds is None
    assert path_set([[(1.0, 2.0)]]).segments == 0
    assert path_set([[(1.0, 2.0)]]).bounds is None


def test_reach_is_split_by_the_worse_end_of_each_segment() -> None:
    points = np.stack((np.arange(6.0), np.zeros(6)), axis=1)
    chance = np.array([0.99, 0.99, 0.7, 0.2, 0.99, 0.99])
    drawn = draw_reach(ReachMap((points,), (chance,), (np.full(6, 0.2),)))
    assert drawn.through.length == pytest.approx(2.0)
    assert drawn.doubtful.length == pytest.approx(1.0)
    assert drawn.not_through.length == pytest.approx(2.0)
    assert drawn.whole.length == pytest.approx(5.0)
