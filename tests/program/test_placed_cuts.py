"""Holes, bores, slots and outlines: what the bit sweeps is what was asked for, and no more."""

import itertools
import math
from dataclasses import replace

import numpy as np
import pytest
import shapely

from drypoint.bits.model import EndMill, Speeds
from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.program.limits import arc_points
from drypoint.program.model import MoveKind
from drypoint.program.place import place_cuts
from drypoint.program.settings import ProgramSettings

FIT = Rigid(0.3, (12.0, -4.0))
EDGE = as_points([(-1, -1), (31, -1), (31, 21), (-1, 21), (-1, -1)])


def _hole(bit, at, kind=CutKind.HOLE, diameter=None, depth=1.8):
    return Cut(kind, bit, as_points([at]), depth=depth, diameter=diameter or bit.diameter)


def _paths(program, tag):
    """(N, 3) way of the tip for every move of one cut, arcs in small chords."""
    moves, parts = program.moves, []
    for i in np.flatnonzero(moves.tag == tag).tolist():
        start = moves.end[i - 1] if i else moves.end[i]
        if moves.kind[i] in (MoveKind.ARC_CW, MoveKind.ARC_CCW):
            xy = arc_points(program, i, 256)
            parts.append(np.column_stack((xy, np.linspace(start[2], moves.end[i, 2], 257))))
        else:
            parts.append(np.array([start, moves.end[i]]))
    return parts


def test_a_drilled_hole_is_pecked(bit08, waves):
    (program,) = place_cuts([_hole(bit08, (5, 6))], FIT, waves)
    moves = program.moves
    spot = FIT.apply([(5, 6)])[0]
    top = waves.mean([spot])[0]
    assert np.abs(moves.end[:-1, :2] - spot).max() < 1e-3
    slow = moves.end[moves.feed == 90, 2]
    assert len(slow) == 3  # 1.8 mm in pecks of at most 0.7
    assert slow == pytest.approx([top - 0.6, top - 1.2, top - 1.8], abs=2e-3)
    assert (np.diff(np.concatenate(([top], slow))) > -0.7).all()
    # fast moves never go deeper than drilled before
    fast = np.flatnonzero((moves.kind == MoveKind.FEED) & (moves.feed != 90))
    for i in fast.tolist():
        reached = moves.end[:i][moves.feed[:i] == 90, 2]
        assert moves.end[i, 2] >= min([top, *reached]) + 0.05


@pytest.mark.parametrize(("diameter", "mill_diameter"), [(1.3, 1.0), (3.2, 1.0), (6.0, 0.8), (2.0, 1.9)])
def test_a_bore_clears_the_hole_and_nothing_else(diameter, mill_diameter):
    mill = EndMill("m", mill_diameter, Speeds(10000, 200, 60), 0.5)
    cut = _hole(mill, (15, 5), CutKind.BORE, diameter)
    (program,) = place_cuts([cut], Rigid(0.3, (12.0, -4.0), mirror=True), None)
    spot = shapely.Point(Rigid(0.3, (12.0, -4.0), mirror=True).apply([(15, 5)])[0])
    paths = _paths(program, 0)
    floor = [p for p in paths if np.allclose(p[:, 2], -1.8)]
    swept = shapely.union_all([shapely.LineString(p[:, :2]).buffer(mill_diameter / 2, 64) for p in floor])
    wanted = spot.buffer(diameter / 2, 128)
    assert wanted.difference(swept.buffer(0.004)).area < 1e-9
    assert swept.difference(wanted.buffer(0.004)).area < 1e-9
    for p in paths:  # nowhere outside, at any depth
        assert shapely.LineString(p[:, :2]).within(spot.buffer((diameter - mill_diameter) / 2 + 0.003, 64))


def test_bores_climb_and_descend_gently(mill):
    """Anticlockwise inside a hole with a right-hand spindle is climb milling (common practice)."""
    for mirror in (False, True):
        (program,) = place_cuts([_hole(mill, (15, 5), CutKind.BORE, 3.2)], Rigid(0, (0, 0), mirror), None)
        kinds = set(program.moves.kind.tolist())
        assert MoveKind.ARC_CCW in kinds
        assert MoveKind.ARC_CW not in kinds
    for p in _paths(program, 0):
        if len(p) > 2:
            drop = p[0, 2] - p[-1, 2]
            length = np.hypot(*np.diff(p[:, :2], axis=0).T).sum()
            assert drop <= 0.5 + 1e-9
            assert drop <= length * math.tan(math.radians(5)) + 0.0011


def test_arcs_close_exactly(mill):
    """Radii at start and end differ by less than 0.002 mm (NISTIR 6556, 3.5.3: arcs)."""
    cuts = [_hole(mill, (k * 3.337, k * 1.717), CutKind.BORE, 2.31 + 0.13 * k) for k in range(9)]
    for program in place_cuts(cuts, FIT, None):
        moves = program.moves
        for i in np.flatnonzero(moves.kind == MoveKind.ARC_CCW).tolist():
            middle = moves.end[i - 1, :2] + moves.centre[i]
            assert abs(math.dist(moves.end[i, :2], middle) - math.hypot(*moves.centre[i])) < 0.002


def _profile(program, tag):
    """Way and height of the feed moves of a cut, densely."""
    ends = np.vstack(_paths(program, tag)[2:])
    xy, z = [], []
    for a, b in itertools.pairwise(ends):
        n = max(2, int(np.hypot(*(b - a)[:2]) / 0.1))
        share = np.linspace(0, 1, n)[:, None]
        points = a + share * (b - a)
        xy.append(points[:, :2])
        z.append(points[:, 2])
    return np.vstack(xy), np.concatenate(z)


@pytest.fixture
def outline(mill):
    return Cut(
        CutKind.OUTLINE,
        mill,
        EDGE,
        depth=1.8,
        tabs=as_points([(15, -1), (31, 10), (-1, -1)]),
        tab_width=3.0,
        tab_height=0.6,
    )


def test_an_outline_is_cut_through_but_for_its_tabs(outline):
    (program,) = place_cuts([outline], Rigid(), None)
    xy, z = _profile(program, 0)
    ring = shapely.LinearRing(EDGE)
    for spot in np.linspace(0, ring.length, 400):
        place = ring.interpolate(spot)
        near = np.hypot(xy[:, 0] - place.x, xy[:, 1] - place.y) < 0.08
        deepest = z[near].min()
        from_tab = min(abs((spot - ring.project(shapely.Point(t)) + 54) % 108 - 54) for t in outline.tabs)
        if from_tab < 1.9:  # half of tab and mill is 2 mm
            assert deepest >= -1.2 - 1e-9
        elif from_tab > 2.1:
            assert deepest == pytest.approx(-1.8)


def test_every_layer_is_within_the_step(outline):
    """Wherever the mill goes, it was there less than a step higher before (or it is the top)."""
    (program,) = place_cuts([outline], Rigid(), None)
    xy, z = _profile(program, 0)
    for place in [(5, -1), (12.9, -1), (17.1, -1), (31, 3), (20, 21), (-1, 15)]:
        at = np.flatnonzero(np.hypot(xy[:, 0] - place[0], xy[:, 1] - place[1]) < 0.06)
        lowest = 0.0
        for depth in z[at]:
            assert depth >= lowest - 0.5 - 0.01
            lowest = min(lowest, depth)


def test_ramps_are_gentle_and_slow(outline):
    (program,) = place_cuts([outline], Rigid(), None)
    moves = program.moves
    way = np.diff(moves.end, axis=0)
    flat = np.hypot(way[:, 0], way[:, 1])
    cutting = (moves.tag[1:] == 0) & (moves.kind[1:] == MoveKind.FEED) & (way[:, 2] < 0)
    ramps = cutting & (flat > 0.05)
    assert ramps.any()
    assert (-way[ramps, 2] <= flat[ramps] * math.tan(math.radians(5)) + 0.0015).all()
    plunges = cutting & (flat == 0) & (moves.end[1:, 2] < -1e-9)
    assert (moves.feed[1:][plunges] <= 60).all()


def test_tabs_of_a_mapped_outline_stay_where_they_are(outline):
    (program,) = place_cuts([outline], FIT, None)
    xy, z = _profile(program, 0)
    for tab in FIT.apply(outline.tabs):
        near = np.hypot(*(xy - tab).T) < 1.5
        assert z[near].min() >= -1.2 - 1e-3


def test_slots_go_to_and_fro(mill):
    slot = Cut(CutKind.SLOT, mill, as_points([(5, 5), (8, 5)]), depth=1.8, diameter=1.0)
    (program,) = place_cuts([slot], Rigid(), None)
    xy, z = _profile(program, 0)
    for x in np.linspace(5, 8, 31):
        assert z[np.abs(xy[:, 0] - x) < 0.06].min() == pytest.approx(-1.8, abs=0.002)
    assert int((program.moves.kind == MoveKind.RAPID).sum()) == 2
    assert xy[:, 0].min() >= 5 - 1e-9
    assert xy[:, 0].max() <= 8 + 1e-9


def test_a_drill_makes_a_slot_ends_first(bit08):
    slot = Cut(CutKind.SLOT, bit08, as_points([(5, 5), (8, 5)]), depth=1.8, diameter=0.8)
    (program,) = place_cuts([slot], Rigid(), None)
    moves = program.moves
    spots = moves.end[moves.kind == MoveKind.RAPID, 0][:-1]
    assert spots[:2].tolist() == [5.0, 8.0]
    assert np.diff(np.sort(spots)).max() <= 0.4 + 1e-3


def test_a_short_slot_is_plunged(mill):
    slot = Cut(CutKind.SLOT, mill, as_points([(5, 5), (5.1, 5)]), depth=1.8, diameter=1.0)
    (program,) = place_cuts([slot], Rigid(), None)
    assert program.moves.end[:, 2].min() == pytest.approx(-1.8)


def test_one_program_per_bit_outline_last(mill, bit08, vbit, outline):
    cuts = [
        outline,
        _hole(mill, (15, 5), CutKind.BORE, 3.2),
        _hole(bit08, (3, 3)),
        Cut(CutKind.MARK, vbit, as_points([(1, 1)]), depth=0.3),
        _hole(bit08, (9, 3)),
        Cut(CutKind.SLOT, mill, as_points([(5, 5), (8, 5)]), depth=1.8, diameter=1.0),
    ]
    programs = place_cuts(cuts, FIT, None, first=3)
    assert [p.name for p in programs] == [
        "03-reference-mark-v-30",
        "04-hole-drill-0.8",
        "05-bored-hole-slot-mill-1.0",
        "06-outline-mill-1.0",
    ]
    assert [sorted(set(p.moves.tag.tolist()) - {-1}) for p in programs] == [[3], [2, 4], [1, 5], [0]]
    assert programs[1].title == "Holes: drill 0.8"


def test_the_surface_carries_every_cut(mill, bit08, waves, outline):
    cuts = [outline, _hole(bit08, (3, 3)), _hole(mill, (15, 5), CutKind.BORE, 3.2)]
    programs = place_cuts(cuts, FIT, waves, settings=ProgramSettings(overlap=0.0))
    ends = programs[2].moves.end[programs[2].moves.tag == 0]
    deepest = ends[:, 2] - waves.mean(ends[:, :2])
    assert deepest.min() == pytest.approx(-1.8, abs=0.002)
    centre = FIT.apply([(15, 5)])
    assert programs[1].moves.end[:, 2].min() == pytest.approx(waves.mean(centre)[0] - 1.8, abs=0.002)


def test_no_cuts_no_programs(mill):
    assert place_cuts([], FIT, None) == ()
    assert place_cuts([Cut(CutKind.SLOT, mill, as_points([]), depth=1.0)], FIT, None) == ()


def test_a_cut_without_depth_is_refused(bit08):
    with pytest.raises(PlanError, match="hole has no depth"):
        place_cuts([_hole(bit08, (1, 1), depth=0.0)], FIT, None)


def test_a_path_that_goes_nowhere_is_one_place(mill):
    slot = Cut(CutKind.SLOT, mill, as_points([(5, 5)] * 3), depth=1.0, diameter=1.0)
    (program,) = place_cuts([slot], Rigid(), None)
    assert program.moves.end[:-1].min(axis=0) == pytest.approx((5, 5, -1))


def test_holes_are_reached_from_one_side(bit08):
    holes = [_hole(bit08, at) for at in [(5, 5), (20, 3), (1, 9)]]
    (program,) = place_cuts(holes, Rigid(), None, ProgramSettings(take_up=0.3))
    moves = program.moves
    for i in np.flatnonzero((moves.kind[1:] == MoveKind.FEED) & (moves.kind[:-1] == MoveKind.RAPID)).tolist():
        assert moves.end[i, :2] - moves.end[i - 1, :2] == pytest.approx((0.3, 0.3))


def test_a_gentle_hole_is_drilled_slower_in_smaller_pecks(bit08):
    hole = _hole(bit08, (5, 6))
    usual, gentle = (place_cuts([cut], Rigid(), None)[0].moves for cut in (hole, replace(hole, ease=0.5)))
    slow = [m.end[m.feed == feed, 2] for m, feed in ((usual, 90), (gentle, 45))]
    assert [len(one) for one in slow] == [3, 6]  # 1.8 mm in pecks of 0.7, then of 0.35
    assert slow[1][-1] == slow[0][-1] == pytest.approx(-1.8)
    assert not (gentle.feed == 90).any()
    whole = replace(bit08, peck=0.0)
    (program,) = place_cuts([replace(hole, bit=whole, ease=0.5)], Rigid(), None)
    assert int((program.moves.feed == 45).sum()) == 5  # 0.8 mm without pecks: pecks of 0.4


@pytest.mark.parametrize("mirror", [False, True])
def test_no_mill_goes_down_faster_than_it_may_plunge(mill, waves, outline, mirror):
    """Below the copper an end mill never sinks faster than its plunge: ramps and helices, no dives."""
    cuts = [
        outline,
        *(_hole(mill, (4 + 5 * k, 5), CutKind.BORE, 1.05 + 0.7 * k) for k in range(4)),
        Cut(CutKind.SLOT, mill, as_points([(5, 12), (8, 14), (12, 12)]), depth=1.8, diameter=1.0),
        Cut(CutKind.SLOT, mill, as_points([(20, 12), (20.1, 12)]), depth=1.8, diameter=1.0),
        Cut(CutKind.CLEAR, mill, EDGE * 0.5, depth=0.12),
    ]
    for program in place_cuts(cuts, Rigid(0.2, (40.0, 4.0), mirror), waves):
        moves = program.moves
        start = np.vstack((moves.end[:1], moves.end[:-1]))
        way = moves.end - start
        length = np.sqrt((way**2).sum(axis=1))
        for i in np.flatnonzero(moves.kind == MoveKind.ARC_CCW).tolist():
            turn = np.hypot(*np.diff(arc_points(program, i, 64), axis=0).T).sum()
            length[i] = math.hypot(turn, way[i, 2])
        deep = moves.end[:, 2] < waves.mean(moves.end[:, :2]) - 0.005
        down = deep & (way[:, 2] < -1e-9)
        sinking = moves.feed[down] * -way[down, 2] / length[down]
        assert down.any()
        # ends are written to a micrometre, so a chord of 0.1 mm may be a hundredth steeper
        assert (sinking <= mill.speeds.plunge * 1.02).all()
