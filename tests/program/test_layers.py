"""Ways down: complete, never too deep, never more than a step at once, tabs kept."""

import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.geometry.points import along, as_points
from drypoint.program.layers import Tabs, descend, find_tabs

ANGLE = math.radians(5)


def _profile(path, way):
    """Place along the path and depth, densely, in the order of cutting."""
    place = along(path)
    total = place[-1]
    spots, depths = [], []
    for (a, b), (d0, d1) in zip(itertools.pairwise(way.path), itertools.pairwise(way.depth), strict=True):
        n = max(2, int(math.dist(a, b) / total * 400))
        for share in np.linspace(0, 1, n):
            point = a + share * (b - a)
            step = np.diff(path, axis=0)
            t = np.clip(((point - path[:-1]) * step).sum(1) / np.maximum((step**2).sum(1), 1e-12), 0, 1)
            off = np.hypot(*(path[:-1] + t[:, None] * step - point).T)
            k = int(np.argmin(off))
            assert off[k] < 1e-6
            spots.append(place[k] + t[k] * (place[k + 1] - place[k]))
            depths.append(d0 + share * (d1 - d0))
    return np.array(spots), np.array(depths), total


shapes = st.one_of(
    st.integers(3, 9).map(
        lambda n: 8 * np.column_stack([f(np.linspace(0, 2 * np.pi, n + 1)) for f in (np.cos, np.sin)])
    ),
    st.floats(0.5, 30).map(lambda x: np.array([(0, 0), (x, 0), (x, x / 2)])),
)


@settings(max_examples=40, deadline=None)
@given(
    shape=shapes, depth=st.floats(0.2, 3), step=st.floats(0.2, 1.0), tab=st.one_of(st.none(), st.floats(0, 1))
)
def test_ways_down(shape, depth, step, tab):
    path = as_points(np.where(np.abs(shape) < 1e-12, 0, shape))
    closed = bool(np.allclose(path[0], path[-1]))
    if closed:
        path = as_points(np.vstack((path[:-1], path[:1])))
    total = along(path)[-1]
    spans = () if tab is None else ((tab * total * 0.8, tab * total * 0.8 + 0.1 * total),)
    tabs = Tabs(spans, depth * 0.6 if spans else math.inf)
    way = descend(path, depth, step, ANGLE, 0.3, tabs)
    spots, depths, total = _profile(path, way)
    assert depths.max() <= depth + 1e-9
    reached = np.zeros(101)
    for spot, level in zip(spots, depths, strict=True):
        k = round(spot / total * 100) % (100 if closed else 101)
        slack = step * 0.05 + total / 50 * math.tan(ANGLE) + 1e-9
        assert level <= reached[k] + step + slack or level <= tabs.depth + 1e-9
        reached[k] = max(reached[k], level)
    for k, level in enumerate(reached[: 100 if closed else 101]):
        spot = k / 100 * total
        if any(a - 0.02 * total < spot < b + 0.02 * total for a, b in spans):
            if any(a + 0.02 * total < spot < b - 0.02 * total for a, b in spans):
                assert level == pytest.approx(tabs.depth)
        else:
            assert level == pytest.approx(depth)


def test_tabs_across_the_start_are_kept_whole():
    square = as_points([(0, 0), (10, 0), (10, 10), (0, 10), (0, 0)])
    tabs = find_tabs(square, as_points([(0.5, 0.2)]), 3.0, 1.0)
    assert sorted(tabs.spans) == [(0.0, 2.0), (39.0, 40.0)]
    assert 39.5 in tabs
    assert 20.0 not in tabs
    opened = find_tabs(square[:4], as_points([(0.5, 0.2)]), 3.0, 1.0)
    assert opened.spans == ((0.0, 2.0),)


def test_a_bit_without_steps_goes_straight_down():
    way = descend(as_points([(0, 0), (5, 0)]), 0.2, 0.0, ANGLE, 0.3, Tabs())
    assert way.depth.tolist() == [0.2, 0.2]
