"""Orders are permutations, repeatable, and short; optima from TSPLIB where its data is present."""

import itertools
import os
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Polygon, box

from drypoint.bits.model import Drill, Speeds
from drypoint.cuts.grooves import in_travel_order, plan_grooves
from drypoint.cuts.holes import in_travel_order as holes_in_order
from drypoint.cuts.model import Cut, CutKind
from drypoint.cuts.order import closed_length, entered, order_paths, steady_order, tour
from drypoint.cuts.steady import steady_tour
from drypoint.geometry.points import as_points

OPTIMUM = {"pcb442": 50778, "d493": 35002}
"""TSPLIB's list of optimal tours (Reinelt, Heidelberg)."""


@given(st.integers(0, 40), st.integers(0, 1000))
@settings(max_examples=15, deadline=None)
def test_tour_is_a_permutation_even_of_equal_places(count, seed):
    points = np.random.default_rng(seed).integers(0, 4, (count, 2)).astype(float).reshape(-1, 2)
    assert sorted(tour(points, seconds=0.05)) == list(range(count))


def test_a_square_is_walked_round():
    corners = [(0, 0), (10, 10), (10, 0), (0, 10)]
    assert closed_length(corners, tour(corners)) == pytest.approx(40.0)


def test_equal_jobs_give_equal_orders():
    points = np.random.default_rng(5).random((60, 2)) * 50
    assert np.array_equal(tour(points), tour(points))


@given(st.integers(0, 40), st.integers(0, 1000))
@settings(max_examples=30, deadline=None)
def test_steady_orders_are_permutations_and_repeat(count, seed):
    points = np.random.default_rng(seed).integers(0, 9, (count, 2)).astype(float).reshape(-1, 2)
    order = steady_order(points)
    assert sorted(order) == list(range(count))
    assert np.array_equal(order, steady_order(points.copy()))


@given(st.integers(4, 8), st.integers(0, 1000))
@settings(max_examples=30, deadline=None)
def test_steady_tours_of_few_places_are_the_shortest(count, seed):
    points = np.random.default_rng(seed).random((count, 2))
    shortest = min(closed_length(points, (0, *rest)) for rest in itertools.permutations(range(1, count)))
    assert closed_length(points, steady_order(points)) <= shortest + 1e-9


def test_steady_tours_are_a_few_percent_over_the_known_mean():
    """Best tours of n random places in area A tend to 0.7124 sqrt(n A) for large n (value from memory;
    Johnson and McGeoch, "The traveling salesman problem: a case study in local optimization", 1997)."""
    points = np.random.default_rng(4).random((1000, 2))
    assert closed_length(points, steady_order(points)) < 1.09 * 0.7124 * np.sqrt(1000)


def test_paths_are_ordered_the_same_way_twice():
    rng = np.random.default_rng(8)
    paths = [as_points(start + rng.random((4, 2))) for start in rng.random((60, 1, 2)) * 40]
    assert order_paths(paths) == order_paths([path.copy() for path in paths])


def test_a_plan_in_travel_order_keeps_lines_and_their_nets():
    nets = {f"N{i}{j}": box(3 * i, 3 * j, 3 * i + 2, 3 * j + 2) for i in range(4) for j in range(3)}
    plan = plan_grooves(nets, 0.2)
    ordered = in_travel_order(plan)
    assert travel(ordered.lines) <= travel(plan.lines)
    for line, names in zip(ordered.lines, ordered.line_nets, strict=True):
        assert Polygon(line).contains(nets[names[0]])


def test_holes_are_drilled_bit_by_bit():
    speeds = Speeds(10000, 60, 60)
    drills = [Drill("small", 0.8, speeds), Drill("large", 1.0, speeds)]
    rng = np.random.default_rng(1)
    cuts = [Cut(CutKind.HOLE, drills[k % 2], as_points([rng.random(2) * 50])) for k in range(30)]
    ordered = holes_in_order(cuts)
    assert {id(cut) for cut in ordered} == {id(cut) for cut in cuts}
    assert [cut.bit.name for cut in ordered] == ["small"] * 15 + ["large"] * 15
    assert travel([cut.path for cut in ordered]) < travel([cut.path for cut in cuts])


def test_a_known_order_is_kept():
    points = np.random.default_rng(5).random((300, 2)) * 50
    known = np.random.default_rng(6).permutation(300)
    assert np.array_equal(tour(points, known=known), known)
    assert sorted(tour(points, known=known[:5], seconds=0.1)) == list(range(300))


def test_loops_beat_nearest_neighbour():
    """Loop travel at most 0.85 of nearest neighbour from fixed entries."""
    rng = np.random.default_rng(2)
    angle = np.linspace(0, 2 * np.pi, 25)
    rings = []
    for x, y, r in np.column_stack((rng.random((120, 2)) * 80, rng.uniform(0.5, 2, 120))):
        ring = np.column_stack((x + r * np.cos(angle), y + r * np.sin(angle)))
        ring[-1] = ring[0]
        rings.append(as_points(ring))
    order = order_paths(rings, start=(0, 0))
    assert sorted(index for index, _ in order) == list(range(120))
    assert travel([entered(rings[i], at) for i, at in order]) <= 0.85 * travel(nearest(rings))


def test_lines_that_may_be_cut_either_way_beat_nearest_neighbour():
    """At most 0.85 of the travel to the nearest end of any line left, each time."""
    rng = np.random.default_rng(3)
    starts = rng.random((120, 2)) * 60
    lines = [
        as_points([at, at + step]) for at, step in zip(starts, rng.uniform(-6, 6, (120, 2)), strict=True)
    ]
    order = order_paths(lines, start=(0, 0))
    assert sorted(index for index, _ in order) == list(range(120))
    assert travel([entered(lines[i], at) for i, at in order]) <= 0.85 * travel(nearest_ends(lines))


@given(st.integers(2, 30), st.integers(0, 1000))
@settings(max_examples=20, deadline=None)
def test_linked_places_stay_side_by_side(count, seed):
    rng = np.random.default_rng(seed)
    points = as_points(rng.integers(0, 9, (2 * count, 2)).astype(float))
    links = np.arange(2 * count) ^ 1
    links[: 2 * (count // 2) : 4] = links[1 : 2 * (count // 2) : 4] = -1
    order = steady_tour(points, order=np.arange(2 * count), linked=links)
    assert sorted(order) == list(range(2 * count))
    place = np.argsort(order)
    linked = np.flatnonzero(links >= 0)
    apart = (place[linked] - place[links[linked]]) % (2 * count)
    assert set(apart) <= {1, 2 * count - 1}
    assert closed_length(points, order) <= closed_length(points, np.arange(2 * count)) + 1e-9


def test_entered_paths_keep_their_points():
    ring = as_points([(0, 0), (1, 0), (1, 1), (0, 0)])
    turned = entered(ring, 2)
    assert tuple(turned[0]) == tuple(turned[-1]) == (1.0, 1.0)
    line = as_points([(0, 0), (1, 0)])
    assert tuple(entered(line, 1)[0]) == (1.0, 0.0)


def travel(paths):
    at, total = np.zeros(2), 0.0
    for path in paths:
        total += np.hypot(*(path[0] - at))
        at = path[-1]
    return total


def nearest(rings):
    left, at, found = list(range(len(rings))), np.zeros(2), []
    while left:
        k = min(left, key=lambda i: np.hypot(*(rings[i][0] - at)))
        left.remove(k)
        found.append(rings[k])
        at = rings[k][0]
    return found


def nearest_ends(lines):
    left, at, found = list(lines), np.zeros(2), []
    while left:
        ends = [(np.hypot(*(line[end] - at)), k, end) for k, line in enumerate(left) for end in (0, -1)]
        _, k, end = min(ends)
        line = left.pop(k)
        found.append(line if end == 0 else line[::-1])
        at = found[-1][-1]
    return found


@pytest.mark.parametrize("name", sorted(OPTIMUM))
def test_tours_are_within_a_thousandth_of_the_optimum(name):
    path = Path(os.environ.get("DRYPOINT_TSPLIB", "/nonexistent")) / f"{name}.tsp"
    if not path.exists():
        pytest.skip("TSPLIB data absent: set DRYPOINT_TSPLIB to a folder that has it")
    points = read_tsplib(path)
    order = tour(points, seconds=1.0)
    step = points[order] - np.roll(points[order], -1, axis=0)
    length = np.floor(np.hypot(*step.T) + 0.5).sum()  # EUC_2D of the TSPLIB format
    assert OPTIMUM[name] <= length <= 1.001 * OPTIMUM[name]


def read_tsplib(path):
    rows = []
    started = False
    for line in path.read_text().splitlines():
        if line.startswith("EOF"):
            break
        if started:
            rows.append([float(word) for word in line.split()[1:3]])
        started = started or line.startswith("NODE_COORD")
    return np.array(rows)
