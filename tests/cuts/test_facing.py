"""Edges between samples of different nets, against the Voronoi diagram of scipy (Qhull)."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.spatial import Voronoi

from drypoint.cuts import facing
from drypoint.cuts.facing import facing_edges, near_foreign

REACH = 0.4


def diagram_edges(points, net, reach):
    """Pairs of samples and the two ends of their edge, clipped to places within reach of both."""
    diagram = Voronoi(points)
    found = {}
    for (a, b), ends in zip(diagram.ridge_points, diagram.ridge_vertices, strict=True):
        if net[a] == net[b]:
            continue
        middle, across = (points[a] + points[b]) / 2, points[b] - points[a]
        half = np.hypot(*across) / 2
        along = np.array((-across[1], across[0])) / (2 * half)
        if -1 in ends:
            finite = diagram.vertices[ends[1 - ends.index(-1)]]
            outward = np.sign(along @ (middle - points.mean(axis=0)))
            away = finite + 1e3 * outward * along
            spots = [finite, away]
        else:
            spots = diagram.vertices[ends]
        limit = np.sqrt(max(reach**2 - half**2, 0.0))
        s = np.sort([(spot - middle) @ along for spot in spots])
        low, high = np.clip(s, -limit, limit)
        if half < reach and high > low:
            found[tuple(sorted((int(a), int(b))))] = np.array([middle + low * along, middle + high * along])
    return found


def scattered(seed, count):
    """Samples inside a ring of one more net, so that no edge of two nets runs to infinity."""
    rng = np.random.default_rng(seed)
    turn = np.linspace(0, 2 * np.pi, 40, endpoint=False)
    fence = 3.0 + 4.0 * np.column_stack((np.cos(turn), np.sin(turn))) + rng.uniform(-0.1, 0.1, (40, 2))
    points = np.concatenate((rng.uniform(0, 3, (count, 2)), fence))
    return points, np.append(rng.integers(0, 4, count), np.full(40, 4))


@given(seed=st.integers(0, 100_000), count=st.integers(4, 150), mesh=st.booleans())
@settings(max_examples=60, deadline=None)
def test_edges_are_those_of_the_diagram(seed, count, mesh):
    points, net = scattered(seed, count)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(facing, "MOST_NEIGHBOURS", 0.0 if mesh else 1e9)
        found = facing_edges(points, net, REACH)
    expected = diagram_edges(points, net, REACH)
    pairs = [tuple(sorted(side)) for side in found.sides.tolist()]
    assert len(set(pairs)) == len(pairs)
    for pair, ends in zip(pairs, found.ends, strict=True):
        if pair not in expected:  # shorter than rounding
            assert np.hypot(*(ends[1] - ends[0])) < 1e-7
            continue
        true = expected.pop(pair)
        gap = min(np.abs(ends - true).max(), np.abs(ends[::-1] - true).max())
        assert gap < 1e-6
    assert all(np.hypot(*(ends[1] - ends[0])) < 1e-7 for ends in expected.values())


@given(seed=st.integers(0, 100_000))
@settings(max_examples=20, deadline=None)
def test_edges_meet_in_common_nodes(seed):
    points, net = scattered(seed, 120)
    found = facing_edges(points, net, REACH)
    places = found.ends.reshape(-1, 2)
    for node in np.unique(found.nodes):
        assert np.ptp(places[found.nodes.reshape(-1) == node], axis=0).max() < 1e-6
    # where three nets meet, their three edges end in one node
    inner = np.bincount(np.unique(found.nodes, return_inverse=True)[1].reshape(-1))
    assert inner.max(initial=0) <= 3


@given(seed=st.integers(0, 100_000), reach=st.floats(0.05, 1.0))
@settings(max_examples=20, deadline=None)
def test_no_sample_near_a_foreign_one_is_missed(seed, reach):
    points, net = scattered(seed, 100)
    away = np.hypot(*(points[:, None] - points).transpose(2, 0, 1))
    near = ((away <= reach) & (net[:, None] != net)).any(axis=1)
    assert set(np.flatnonzero(near)) <= set(near_foreign(points, net, reach))
