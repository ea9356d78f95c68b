"""The bound on the chord error holds everywhere, and few points are spent."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.program.heights import HeightGrid, flat_grid, sample
from drypoint.program.warp import warp


def _error(warped, height):
    """Largest distance in height between moves and ``height`` (of points), looked at densely."""
    a, b = warped.points[:-1], warped.points[1:]
    worst = 0.0
    for share in np.linspace(0, 1, 41):
        at = a + share * (b - a)
        worst = max(worst, float(np.abs(at[:, 2] - height(at)).max()))
    return worst


def _first(count):
    first = np.zeros(count, dtype=bool)
    first[0] = True
    return first


@settings(max_examples=60, deadline=None)
@given(
    seed=st.integers(0, 10_000),
    pitch=st.floats(0.2, 3.0),
    chord=st.floats(5e-4, 0.02),
    vertices=st.integers(2, 8),
)
def test_bound_holds_on_rough_grids(seed, pitch, chord, vertices):
    """White noise on the grid: every cell border is a kink, every cell a saddle."""
    rng = np.random.default_rng(seed)
    grid = HeightGrid((-1.0, 2.0), pitch, rng.normal(0, 0.03, (9, 11)), 0.0)
    path = as_points(rng.uniform((-2, 1), (10 * pitch, 10 * pitch), (vertices, 2)))
    warped = warp(path, np.zeros(vertices), _first(vertices), grid, chord)
    assert _error(warped, lambda at: grid.mean(as_points(at[:, :2]))) <= chord * (1 + 1e-6)


def test_depth_goes_along_and_vertices_stay():
    grid = HeightGrid((0.0, 0.0), 1.0, np.random.default_rng(1).normal(0, 0.02, (12, 12)), 0.0)
    path = as_points([(0.3, 0.4), (9.1, 3.3), (4.0, 10.2)])
    depth = np.array([0.05, 0.10, 0.02])
    warped = warp(path, depth, _first(3), grid, 0.002)
    at_vertices = [np.flatnonzero((warped.points[:, :2] == p).all(axis=1))[0] for p in path]
    assert warped.points[at_vertices, 2] == pytest.approx(grid.mean(path) - depth)
    share = np.hypot(*(warped.points[: at_vertices[1] + 1, :2] - path[0]).T) / np.hypot(*(path[1] - path[0]))
    along = grid.mean(as_points(warped.points[: at_vertices[1] + 1, :2])) - (0.05 + 0.05 * share)
    assert warped.points[: at_vertices[1] + 1, 2] == pytest.approx(along)


def test_no_points_are_spent_on_a_plane():
    plane = HeightGrid((0.0, 0.0), 0.5, np.add.outer(np.arange(60) * 0.01, np.arange(60) * 0.02), 0.0)
    path = as_points([(1, 1), (25, 20), (3, 28)])
    assert len(warp(path, np.zeros(3), _first(3), plane, 0.002).points) == 3
    assert len(warp(path, np.zeros(3), _first(3), flat_grid(), 0.002).points) == 3


def test_paths_are_not_joined():
    grid = HeightGrid((0.0, 0.0), 1.0, np.random.default_rng(1).normal(0, 0.02, (12, 12)), 0.0)
    path = as_points([(0, 0), (5, 5), (9, 0), (9, 9)])
    first = np.array([True, False, True, False])
    warped = warp(path, np.zeros(4), first, grid, 0.002)
    between = warped.points[(warped.points[:, 0] > 5.001) & (warped.points[:, 0] < 8.999)]
    assert len(between) == 0


def test_fewer_points_than_fixed_steps(waves):
    """A fixed step that keeps the same error spends several times the points."""
    path = as_points([(0, 0), (60, 0), (60, 40), (0, 40)])
    grid = sample(waves, path, 0.0004)
    warped = warp(path, np.zeros(4), _first(4), grid, 0.002)
    # the waves' largest curvature 0.03 (1/2.5² + ...) along x: step² z''/8 = 0.002
    step = np.sqrt(8 * 0.002 / (0.03 / 2.5**2))
    assert len(warped.points) < 0.95 * 160 / step + 10
    assert _error(warped, waves.mean) <= 0.002


@pytest.mark.parametrize("length", [1.5, 2.5, 6.0])
def test_the_grid_knows_its_error(length):
    """On smooth ripples the stated error of the sampled grid is not exceeded."""

    class Ripple:
        def mean(self, points):
            p = np.asarray(points)
            return 0.015 * np.sin(p[:, 0] / length) * np.sin(p[:, 1] / (1.7 * length) + 1)

    spots = as_points(np.random.default_rng(0).uniform(0, 30, (20_000, 2)))
    grid = sample(Ripple(), spots, 0.0004)
    assert np.abs(grid.mean(spots) - Ripple().mean(spots)).max() <= grid.error <= 0.0004


def test_too_rough_for_the_tolerance_is_said():
    class Steps:
        def mean(self, points):
            return np.where(np.asarray(points)[:, 0] > 5.03, 0.1, 0.0)

    path = as_points([(0, 0), (10, 0)])
    grid = sample(Steps(), path, 0.0004)
    with pytest.raises(PlanError, match="too rough"):
        warp(path, np.zeros(2), _first(2), grid, 0.002)
