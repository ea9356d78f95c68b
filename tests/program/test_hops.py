"""Hops: the short way from one place to the next stays lower, and never where something could be hit."""

from dataclasses import replace

import numpy as np
import pytest
import shapely

from drypoint.cuts.model import Cut, CutKind
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.passes.model import Pass, Run
from drypoint.program.builder import AWAY, FARTHEST_HOP
from drypoint.program.model import MoveKind
from drypoint.program.place import place, place_cuts
from drypoint.program.settings import ProgramSettings
from drypoint.program.standing_clear import stands_clear

FIT = Rigid(0.2, (5.0, 3.0))
HIGH = ProgramSettings(take_up=0.2)
LOW = replace(HIGH, hop=0.5)


def _holes(bit, places):
    return [Cut(CutKind.HOLE, bit, as_points([at]), depth=1.8, diameter=bit.diameter) for at in places]


def _across(program):
    """Start and end (N, 3) of every move that goes sideways between two cuts, and whether it is rapid."""
    moves = program.moves
    start = np.vstack((moves.end[:1], moves.end[:-1]))
    sideways = (np.abs(moves.end[:, :2] - start[:, :2]).sum(axis=1) > 0) & (moves.tag < 0)
    return start[sideways], moves.end[sideways], moves.kind[sideways] == MoveKind.RAPID


@pytest.fixture
def scattered():
    return np.random.default_rng(5).uniform(0, 40, (25, 2))


def test_every_way_stays_above_the_copper_all_along(bit08, waves, scattered):
    (program,) = place_cuts(_holes(bit08, scattered), FIT, waves, LOW)
    start, end, rapid = _across(program)
    assert 0 < rapid.sum() < len(rapid)
    for a, b, fast in zip(start, end, rapid, strict=True):
        way = a + np.linspace(0, 1, 200)[:, None] * (b - a)
        above = way[:, 2] - waves.mean(way[:, :2])
        assert above.min() > LOW.hop - 1e-3
        if fast:
            assert way[:, 2].min() >= program.clearance - 1e-9
        else:
            assert np.hypot(*(b - a)[:2]) < FARTHEST_HOP


def test_the_time_saved_is_the_difference_to_going_up_every_time(bit08, waves, scattered):
    cuts = _holes(bit08, scattered)
    (low,), (high,) = place_cuts(cuts, FIT, waves, LOW), place_cuts(cuts, FIT, waves, HIGH)
    assert high.saved == 0.0
    assert low.saved == pytest.approx(high.seconds - low.seconds, rel=0.02)
    assert low.saved > 0.05 * high.seconds
    deepest = [program.moves.end[:, 2].min() for program in (low, high)]
    assert deepest[0] == deepest[1]


@pytest.mark.parametrize("gap", [0.1, AWAY - 0.5, AWAY + 0.5])
def test_past_a_clamp_the_way_stays_high(bit08, waves, gap):
    """Two holes and a post whose edge is ``gap`` from the straight way between them."""
    one, two = FIT.apply([(0, 0), (20, 0)])
    middle, way = (one + two) / 2, (two - one) / 20
    aside = middle + (gap + 2) * np.array([-way[1], way[0]])
    post = shapely.Point(aside).buffer(2)
    (program,) = place_cuts(_holes(bit08, [(0, 0), (20, 0)]), FIT, waves, replace(LOW, obstacles=(post,)))
    start, end, rapid = _across(program)
    long = np.hypot(*(end - start)[:, :2].T) > 15
    assert rapid[long].all() == (gap < AWAY)
    for a, b, fast in zip(start, end, rapid, strict=True):
        assert fast or shapely.distance(shapely.LineString((a[:2], b[:2])), post) >= AWAY - 0.05


def test_no_hop_where_the_height_is_unknown_or_pieces_may_come_loose(bit08, mill, waves):
    (unknown,) = place_cuts(_holes(bit08, [(0, 0), (5, 0)]), FIT, None, LOW)
    square = as_points([(0, 0), (4, 0), (4, 4), (0, 4), (0, 0)])
    edges = [Cut(CutKind.OUTLINE, mill, square + np.array([shift, 0]), depth=1.8) for shift in (0, 10)]
    (outline,) = place_cuts(edges, FIT, waves, LOW)
    for program in (unknown, outline):
        assert _across(program)[2].all()
        assert program.saved == 0.0


def test_grooves_hop_too_and_are_cut_as_deep(vbit, waves):
    lines = [as_points([(x, 0), (x, 8)]) for x in range(6)]
    work = Pass(1, vbit, tuple(Run(k, line, np.full(2, 0.06)) for k, line in enumerate(lines)))
    (low,), (high,) = place([work], FIT, waves, settings=LOW), place([work], FIT, waves, settings=HIGH)
    cut = [program.moves.end[program.moves.tag >= 0] for program in (low, high)]
    below = [points[points[:, 2] < waves.mean(points[:, :2])] for points in cut]
    assert np.array_equal(below[0], below[1])
    assert low.seconds < high.seconds


def test_what_is_lower_than_the_approach_is_not_approached_from_above(bit08, waves):
    """With a hop below the height where the way down slows, the bit goes straight on at its plunge."""
    (program,) = place_cuts(_holes(bit08, [(0, 0), (5, 0)]), FIT, waves, replace(LOW, hop=0.15))
    moves = program.moves
    second = np.flatnonzero(moves.tag == 1)[0]
    assert moves.end[second, 2] < moves.end[second - 1, 2]


@pytest.mark.parametrize("settings", [HIGH, LOW, replace(HIGH, hop=0.1)])
def test_between_two_holes_the_bit_stands_clear_once_and_in_none_of_them(bit08, waves, scattered, settings):
    (program,) = place_cuts(_holes(bit08, scattered), FIT, waves, settings)
    clear = stands_clear(program.moves)
    assert np.count_nonzero(np.diff(clear.astype(int)) == -1) == len(scattered)
    ends = program.moves.end[clear]
    assert (ends[:, 2] - waves.mean(ends[:, :2])).min() > min(settings.hop or settings.clearance, 2.0) - 1e-3
