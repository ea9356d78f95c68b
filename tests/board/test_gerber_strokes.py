"""Whole strokes cover exactly what the single draws cover."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.board.aperture_shapes import circle
from drypoint.board.aperture_tools import Aperture, Tool, Toolbox
from drypoint.board.gerber_picture import Arc
from drypoint.board.gerber_shapes import arc_shape, swept
from drypoint.board.gerber_strokes import chains, strokes
from drypoint.geometry.points import as_points


@pytest.fixture(scope="module")
def tool() -> Tool:
    box = Toolbox(0.0005)
    return box.tools[box.number(Aperture(lambda tolerance: circle(0.2, tolerance), 0.2))]


def covered(tool: Tool, ends: np.ndarray, keys: np.ndarray) -> np.ndarray:
    points, chain, _ = chains(ends, keys)
    return strokes(tool, points, chain)[0]


STEPS = st.lists(
    st.tuples(st.floats(-math.pi, math.pi), st.sampled_from([0.003, 0.05, 0.3, 1.0])), min_size=1, max_size=25
)
GRID = st.lists(st.tuples(st.integers(0, 6), st.integers(0, 6)), min_size=2, max_size=20)


@settings(max_examples=150, deadline=None)
@given(
    st.one_of(STEPS.map(lambda steps: ("turns", steps)), GRID.map(lambda grid: ("grid", grid))), st.booleans()
)
def test_strokes_equal_the_union_of_draws(tool: Tool, case: tuple[str, list], gentle: bool) -> None:
    kind, values = case
    if kind == "grid":
        points = np.array(values) * 0.15
    else:
        turns, lengths = np.array(values).T
        angles = np.cumsum(turns * (0.2 if gentle else 1.0))
        points = np.cumsum(np.column_stack((lengths * np.cos(angles), lengths * np.sin(angles))), axis=0)
        points = np.vstack(([0.0, 0.0], points))
    ends = np.column_stack((points[:-1], points[1:]))
    ends = ends[(ends[:, :2] != ends[:, 2:]).any(axis=1)]
    if not len(ends):
        return
    whole = covered(tool, ends, np.zeros(len(ends), dtype=int))
    assert shapely.is_valid(whole).all()
    single = shapely.union_all(swept(tool, ends))
    assert shapely.union_all(whole).symmetric_difference(single).area < 1e-9 * max(1.0, single.area)


def test_a_long_track_is_one_polygon_of_few_vertices(tool: Tool) -> None:
    x = np.linspace(0.0, 20.0, 200)
    points = np.column_stack((x, np.sin(x)))
    ends = np.column_stack((points[:-1], points[1:]))
    (track,) = covered(tool, ends, np.zeros(len(ends), dtype=int))
    assert len(track.exterior.coords) < 600  # 199 single draws have 35 each


def test_draws_of_different_keys_stay_apart(tool: Tool) -> None:
    ends = np.array([[0.0, 0, 1, 0], [1, 0, 2, 0], [2, 0, 3, 0]])
    _, _, keys = chains(ends, np.array([7, 7, 9]))
    assert keys.tolist() == [7, 9]


def test_a_closed_loop_keeps_its_hole(tool: Tool) -> None:
    ring = np.array([[0.0, 0], [2, 0], [2, 2], [0, 2], [0, 0]])
    shapes = covered(tool, np.column_stack((ring[:-1], ring[1:])), np.zeros(4, dtype=int))
    assert len(shapes) == 2
    loop = shapely.union_all(shapes)
    assert shapely.Polygon(loop.interiors[0]).area == pytest.approx(1.8**2)


@pytest.mark.parametrize("turn", [0.6, 3.0, 5.5, 2.0 * math.pi])
@pytest.mark.parametrize("radius", [0.03, 0.0999, 0.4])
def test_an_arc_covers_what_its_chords_do_however_small_it_is(tool: Tool, radius: float, turn: float) -> None:
    """Also where the tool is wider than the arc is round: the hulls of all chords are the measure."""
    angle = np.linspace(0.3, 0.3 + turn, 200)
    points = radius * np.column_stack((np.cos(angle), np.sin(angle)))
    points[-1] = points[0] if turn > 6.0 else points[-1]
    whole = arc_shape(tool, Arc(as_points(points), (0.0, 0.0)))
    single = shapely.union_all(swept(tool, np.column_stack((points[:-1], points[1:]))))
    assert whole.is_valid
    away = shapely.hausdorff_distance(whole.boundary, single.boundary)
    assert away < 0.001, "the chords of both may be 0.5 µm off the circle"


def test_a_tool_wider_than_the_spiral_it_is_drawn_along() -> None:
    """5000 hulls that lie over each other: to unite them one by one would take most of a minute."""
    box = Toolbox(0.0005)
    wide = box.tools[box.number(Aperture(lambda tolerance: circle(8.1, tolerance), 8.1))]
    angle = np.linspace(0.0, 4.0, 5000)
    points = np.column_stack(((2.0 + 0.3 * angle) * np.cos(angle), (2.0 + 0.3 * angle) * np.sin(angle)))
    whole = arc_shape(wide, Arc(as_points(points), (0.0, 0.0)))
    assert whole.is_valid
    assert whole.area == pytest.approx(shapely.LineString(points).buffer(4.05, quad_segs=64).area, rel=1e-3)
