"""Grooves isolate, bite within the limit, and say what they cannot do."""

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.bits.model import Speeds, VBit
from drypoint.cuts.grooves import plan_grooves, with_bit
from drypoint.cuts.islands import check
from drypoint.errors import InputError
from drypoint.geometry.points import is_closed


def two(gap: float) -> dict[str, shapely.Geometry]:
    return {"A": shapely.box(0, 0, 5, 1), "B": shapely.box(0, 1 + gap, 5, 2 + gap)}


@given(gap=st.floats(0.05, 1.0), width=st.floats(0.08, 0.4), bite=st.floats(0.0, 0.2))
@settings(max_examples=60, deadline=None)
def test_two_bars_are_parted_exactly_where_the_bite_allows(gap, width, bite):
    nets = two(gap)
    plan = plan_grooves(nets, width, bite=bite)
    found = check(nets, plan.lines, width)
    least = max(0.0, (width - gap) / 2)
    assert plan.max_bite <= bite + 1e-3
    if least < bite - 1e-3 or gap > width + 1e-3:
        assert found.clean
        assert not plan.impossible
        assert plan.max_bite <= least + 6e-3
    if least > bite + 1e-3:
        assert [set(place.nets) for place in plan.impossible] == [{"A", "B"}]
        assert plan.impossible[0].gap == pytest.approx(gap, abs=2e-3)
        assert {frozenset(flaw.nets) for flaw in found.shorts} == {frozenset("AB")}


@given(st.integers(0, 10_000))
@settings(max_examples=25, deadline=None)
def test_random_round_pads_fall_apart_when_the_bit_fits(seed):
    rng = np.random.default_rng(seed)
    nets: dict[str, shapely.Geometry] = {}
    for index in range(14):
        shape = shapely.Point(*rng.uniform(0, 8, 2)).buffer(rng.uniform(0.2, 0.9))
        if all(shape.distance(other) > 0.21 for other in nets.values()):
            nets[f"N{index}"] = shape
    plan = plan_grooves(nets, 0.2)
    found = check(nets, plan.lines, 0.2)
    assert found.clean
    assert found.pieces == len(nets)
    swept = shapely.union_all([shapely.LineString(line).buffer(0.1, quad_segs=32) for line in plan.lines])
    for shape in nets.values():
        # chords of the offset, simplification of the copper and nothing else
        assert shapely.hausdorff_distance(shape, shape.difference(swept)) < 3e-3


@given(st.integers(0, 10_000))
@settings(max_examples=25, deadline=None)
def test_random_crowded_pads_are_parted_within_the_bite(seed):
    rng = np.random.default_rng(seed)
    nets: dict[str, shapely.Geometry] = {}
    for index in range(16):
        shape = shapely.Point(*rng.uniform(0, 5, 2)).buffer(rng.uniform(0.3, 0.8))
        if all(shape.distance(other) > 0.12 for other in nets.values()):
            nets[f"N{index}"] = shape
    plan = plan_grooves(nets, 0.2, bite=0.05)
    assert not plan.impossible
    found = check(nets, plan.lines, 0.2)
    assert not found.shorts
    assert plan.max_bite <= 0.05


@pytest.mark.parametrize("width", [0.2, 0.2001, 0.205, 0.215, 0.23])
def test_a_slowly_opening_gap_is_parted_all_along(width):
    """Centre line and loops must meet however flat the wedge between the nets is."""
    nets = {
        "A": shapely.box(0, -1, 40, 0),
        "B": shapely.Polygon([(0, 0.18), (40, 0.22), (40, 1), (0, 1)]),
    }
    plan = plan_grooves(nets, width, bite=0.05)
    assert check(nets, plan.lines, width).clean
    assert plan.max_bite <= (width - 0.18) / 2 + 6e-3


def test_a_cut_exactly_as_wide_as_the_gap_needs_loops_only():
    plan = plan_grooves(two(0.2), 0.2)
    assert check(two(0.2), plan.lines, 0.2).clean
    assert len(plan.lines) == 2
    assert not plan.narrow


@pytest.mark.parametrize("least", [0.0, 0.1, 0.15, 0.165, 0.2])
def test_a_thin_trace_keeps_its_least_width(least):
    """A trace of 0.2 mm in gaps of 0.16 mm: a cut of 0.2 mm bites 0.02 mm from each side."""
    nets = {
        "A": shapely.box(0, 0, 10, 1),
        "T": shapely.box(0, 1.16, 10, 1.36),
        "B": shapely.box(0, 1.52, 10, 2.5),
    }
    plan = plan_grooves(nets, 0.2, bite=0.05, least_trace=least)
    found = check(nets, plan.lines, 0.2)
    if least < 0.16:
        assert found.clean
        assert not plan.impossible
        return
    assert {frozenset(place.nets) for place in plan.impossible} >= {frozenset("AT"), frozenset("BT")}
    assert found.shorts
    assert all("least allowed" in place.hint for place in plan.impossible)
    assert all(place.widest < 0.2 for place in plan.impossible)


@pytest.mark.parametrize("thin", [0.025, 0.05, 0.075])
def test_a_trace_thinner_than_the_bite_is_listed_and_never_bitten_through(thin):
    """A hair of a trace between two planes: 0.05 mm of bite from each side would take all of it."""
    nets = {
        "A": shapely.box(0, 0, 10, 1),
        "T": shapely.box(-1, 1.25, 11, 1.25 + thin),
        "B": shapely.box(0, 1.5 + thin, 10, 2.5),
    }
    plan = plan_grooves(nets, 0.33, bite=0.05)
    found = check(nets, plan.lines, 0.33)
    assert not found.opens
    assert not found.lost
    if thin > 2 * 0.04 + 0.012:
        assert found.clean
        return
    assert {name for place in plan.impossible for name in place.nets} == {"A", "T", "B"}
    assert all(0.249 < place.widest < 0.33 for place in plan.impossible)
    told = min(place.widest for place in plan.impossible) - 1e-3
    assert check(nets, plan_grooves(nets, told, bite=0.05).lines, told).clean


@pytest.mark.parametrize("reach", [0.05, 0.1, 0.15, 0.4, 0.6])
@pytest.mark.parametrize(("tip", "gap"), [(0.2, 0.3), (0.1, 0.3), (0.15, 0.35)])
def test_what_is_called_impossible_is_joined_and_nothing_else(reach, tip, gap):
    """A point faces a straight edge: past a short neck, the cuts on either side meet."""
    nets = {
        "A": shapely.Polygon([(-4, 0), (-reach, 0), (0, tip), (reach, 0), (4, 0), (4, -2), (-4, -2)]),
        "B": shapely.box(-4, gap, 4, 2),
    }
    for bite in (0.01, 0.02, 0.05, 0.08, 0.12):
        plan = plan_grooves(nets, 0.3, bite=bite)
        assert bool(plan.impossible) == bool(check(nets, plan.lines, 0.3).shorts)
        assert plan.max_bite <= bite + 1e-3


def test_hints_name_a_depth_that_does_or_the_tip_that_would():
    speeds = Speeds(10000, 300, 100)
    blunt, fine = VBit("blunt", 0.15, np.radians(30), speeds), VBit("fine", 0.02, np.radians(30), speeds)
    plan = plan_grooves(two(0.12), 0.2, bite=0.005)
    place = with_bit(plan, fine, 0.035).impossible[0]
    depth = float(place.hint.split(" would do at ")[1].split()[0])
    assert depth > 0.035
    assert fine.width(depth) == pytest.approx(place.widest, abs=1e-3)
    deep = plan_grooves(two(0.12), fine.width(depth), bite=0.006)
    assert not deep.impossible
    assert check(two(0.12), deep.lines, fine.width(depth)).clean
    told = with_bit(plan, blunt, 0.035).impossible[0].hint
    tip = float(told.split("less than ")[1].split()[0])
    assert VBit("finer", tip, np.radians(30), speeds).width(0.035) <= place.widest + 1e-3


@pytest.mark.parametrize("over", [0.0, 0.05, 0.2, 0.6])
@pytest.mark.parametrize("bite", [0.0, 0.02, 0.08])
def test_nets_that_overlap_are_named_once_and_not_cut_into(over, bite):
    """Round an overlap boundaries cross, and are equally far inside the copper too."""
    nets = {
        "A": shapely.box(-4.0, -0.3, over, 0.3),
        "B": shapely.union_all([shapely.Point(0.4, 0.0).buffer(0.4), shapely.box(0.3, -0.1, 4.0, 0.1)]),
        "C": shapely.box(-4.0, 0.5, 4.0, 1.0),
    }
    plan = with_bit(plan_grooves(nets, 0.25, bite=bite), VBit("V", 0.1, 0.5, Speeds(1e4, 300, 100)), 0.035)
    touching = [place for place in plan.impossible if set(place.nets) == {"A", "B"}]
    assert [place.hint for place in touching] == ["They touch in the design."]
    found = check(nets, plan.lines, 0.25)
    assert not found.opens
    assert all({"A", "B"} <= set(short.nets) for short in found.shorts)
    copper = shapely.union_all([shape.buffer(-bite - 1e-3) for shape in nets.values()])
    cut = shapely.MultiLineString(list(plan.lines)).buffer(0.125)
    assert cut.intersection(copper).area == pytest.approx(0.0, abs=1e-4)


def test_gaps_of_one_net_are_left_alone():
    nets = {"A": shapely.union_all([shapely.box(0, 0, 5, 1), shapely.box(0, 1.1, 5, 2)])}
    plan = plan_grooves(nets, 0.2)
    assert not plan.impossible
    assert len(plan.lines) == 1
    assert is_closed(plan.lines[0])


def test_climb_runs_clockwise_round_copper():
    nets = {"A": shapely.box(0, 0, 5, 1)}
    ring = shapely.LinearRing(plan_grooves(nets, 0.2).lines[0])
    assert not ring.is_ccw
    assert shapely.LinearRing(plan_grooves(nets, 0.2, climb=False).lines[0]).is_ccw


def test_moat_is_as_wide_as_asked():
    nets = {"A": shapely.box(0, 0, 5, 1)}
    plan = plan_grooves(nets, 0.2, moat=0.7)
    swept = shapely.union_all([shapely.LineString(line).buffer(0.1, quad_segs=32) for line in plan.lines])
    band = nets["A"].buffer(0.69).difference(nets["A"].buffer(0.005))
    assert band.difference(swept).area < 1e-6


def test_grooves_stay_inside_the_boundary():
    area = shapely.box(-0.05, -1, 6, 3)
    for line in plan_grooves(two(0.5), 0.2, boundary=area).lines:
        assert area.buffer(1e-9).contains(shapely.LineString(line))


@pytest.mark.parametrize("values", [{"width": 0.0}, {"width": -1.0}, {"width": 0.1, "bite": -0.1}])
def test_nonsense_is_refused(values):
    with pytest.raises(InputError):
        plan_grooves(two(0.3), **values)


def test_no_nets_no_lines():
    assert plan_grooves({}, 0.2).lines == ()
