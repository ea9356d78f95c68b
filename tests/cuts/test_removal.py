"""Slivers, clearing, thinned traces and the coupon."""

import math

import numpy as np
import pytest
import shapely

from drypoint.bits.model import Speeds, VBit
from drypoint.cuts.clearing import clear_area, sliver_paths
from drypoint.cuts.coupon import plan_coupon
from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.islands import check, pieces
from drypoint.cuts.thinned import thinned

SQUARES = {
    "A": shapely.box(0, 0, 4, 4),
    "B": shapely.box(4.6, 0, 8, 4),
    "C": shapely.box(0, 4.6, 8, 8),
}


def swept(lines, width):
    return shapely.union_all([shapely.LineString(line).buffer(width / 2, quad_segs=32) for line in lines])


def test_slivers_go_and_nets_stay():
    window = shapely.box(0, 0, 8, 8)
    lines = plan_grooves(SQUARES, 0.2).lines
    before = len(pieces(lines, 0.2, window))
    gone = sliver_paths(SQUARES, lines, 0.2, 0.2, largest=5.0, window=window)
    assert before == 4  # three nets, and what stands between them
    assert len(pieces([*lines, *gone], 0.2, window)) == 3
    assert check(SQUARES, [*lines, *gone], 0.2).clean


def test_copper_that_is_to_stay_is_no_sliver():
    window = shapely.box(0, 0, 8, 8)
    lines = plan_grooves(SQUARES, 0.2).lines
    assert sliver_paths(SQUARES, lines, 0.2, 0.2, largest=5.0, window=window, keep=window) == ()


@pytest.mark.parametrize("overlap", [0.1, 0.3, 0.6])
def test_clearing_leaves_nothing_but_the_nets(overlap):
    area = shapely.box(-1, -1, 9, 9)
    lines = clear_area(SQUARES, 0.3, area, overlap=overlap)
    copper = shapely.union_all(list(SQUARES.values()))
    left = area.buffer(-0.15).difference(copper.buffer(0.31)).difference(swept(lines, 0.3))
    assert left.area < 1e-3
    assert copper.intersection(swept(lines, 0.3)).area < 0.05


def test_a_bitten_trace_is_thin_and_an_untouched_one_is_not():
    nets = {"T": shapely.box(0, 0, 20, 0.4), "U": shapely.box(0, 2, 20, 2.4)}
    line = [np.array([(5.0, 0.5), (10.0, 0.5)])]
    found = thinned(nets, line, 0.4, 0.35)
    assert {flaw.nets for flaw in found} == {("T",)}
    assert thinned(nets, line, 0.4, 0.25) == ()


@pytest.mark.parametrize("where", [1.0, 31.7, 62.0])
def test_a_narrowing_of_a_large_pour_is_found_as_in_the_small(where):
    """Large copper is looked at in squares round the bites; the seams of squares change nothing."""
    teeth = [shapely.box(x, 1.0, x + 0.3, 3.0) for x in np.arange(0.0, 64.0, 0.6)]
    pour = shapely.union_all([shapely.box(0.0, 0.0, 64.0, 1.0), *teeth])
    bars = shapely.box(where, 3.5, where + 6.0, 3.8), shapely.box(where, 0.5, where + 0.3, 3.8)
    neck = shapely.union_all(list(bars))
    nets = {"G": shapely.union_all([pour, neck])}
    assert shapely.get_num_coordinates(nets["G"]) > 400
    line = [np.array([(where + 1.5, 3.95), (where + 5.0, 3.95)])]
    (found,) = thinned(nets, line, 0.5, 0.25)
    (alone,) = thinned({"G": neck}, line, 0.5, 0.25)
    assert found.what == alone.what
    assert found.at == pytest.approx(alone.at, abs=0.05)
    assert thinned(nets, line, 0.5, 0.15) == ()


def test_coupon_expects_the_widths_of_the_handbook_formula():
    """w = t + 2 d tan(a/2) for t = 0.1 mm, a = 30 degrees (geometry, worked by hand)."""
    bit = VBit("V", 0.1, math.radians(30.0), Speeds(10000, 300, 100))
    coupon = plan_coupon(bit, depths=(0.05, 0.1, 0.2))
    found = [coupon.expected[f"width {depth:.2f}"] for depth in (0.05, 0.1, 0.2)]
    assert found == pytest.approx([0.1268, 0.1536, 0.2072], abs=5e-5)
