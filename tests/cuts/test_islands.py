"""The island check against constructed truth, other tile sizes and a raster."""

import itertools

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import ndimage

from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.islands import check
from drypoint.errors import InputError

GAP = 0.3
WIDTH = 0.2


def pads() -> dict[str, shapely.Geometry]:
    return {f"N{i}{j}": shapely.box(3 * i, 3 * j, 3 * i + 2, 3 * j + 2) for i in range(4) for j in range(3)}


def test_uncut_copper_joins_everything():
    found = check(pads(), [], WIDTH)
    assert len(found.shorts) == 1
    assert len(found.shorts[0].nets) == 12
    assert found.pieces == 1


def test_planned_grooves_leave_one_piece_per_net():
    nets = pads()
    found = check(nets, plan_grooves(nets, WIDTH).lines, WIDTH)
    assert found.clean
    assert found.pieces == found.nets == 12


@given(
    bridge=st.floats(0.001, 0.05),
    at=st.floats(0.05, 0.95),
    tile=st.sampled_from([2.0, 7.0, 10.0, 20.0]),
)
@settings(max_examples=40, deadline=None)
def test_a_bridge_of_a_micrometre_is_found(bridge, at, tile):
    """Two nets parted by one straight groove that stops and goes on: caps leave the bridge."""
    nets = {"A": shapely.box(0, 0, 10, 2), "B": shapely.box(0, 2.4, 10, 4.4)}
    x = 10 * at
    whole = [np.array([(-3.0, 2.2), (13.0, 2.2)])]
    parted = [
        np.array([(-3.0, 2.2), (x - (WIDTH + bridge) / 2, 2.2)]),
        np.array([(x + (WIDTH + bridge) / 2, 2.2), (13.0, 2.2)]),
    ]
    outline = shapely.box(-1, -1, 11, 5.4)
    assert check(nets, whole, WIDTH, outline=outline, tile=tile).clean
    found = check(nets, parted, WIDTH, outline=outline, tile=tile)
    assert [set(flaw.nets) for flaw in found.shorts] == [{"A", "B"}]
    assert np.hypot(found.shorts[0].at[0] - x, found.shorts[0].at[1] - 2.2) < 0.1


@pytest.mark.parametrize("tile", [1.0, 7.0, 10.0, 20.0])
def test_a_cut_trace_is_open_and_a_milled_pad_is_lost(tile):
    nets = {"T": shapely.box(0, 0, 20, 0.5), "P": shapely.Point(10, 5).buffer(0.3)}
    loops = plan_grooves(nets, 0.2).lines
    lines = [*loops, np.array([(8.0, -0.1), (8.0, 0.6)]), np.array([(9.0, 5.0), (11.0, 5.0)])]
    widths = [0.2] * (len(loops) + 1) + [1.0]
    found = check(nets, lines, widths, tile=tile)
    assert [flaw.nets for flaw in found.lost] == [("P",)]
    assert [flaw.nets for flaw in found.opens] == [("T",)]
    assert not found.shorts


@pytest.mark.parametrize(("size", "opens"), [(0.03, 0), (0.08, 1)])
def test_a_crumb_cut_off_a_net_is_no_open(size, opens):
    """A square of 0.03 mm holds neither lead nor trace; one of 0.08 mm may be a trace's end."""
    nets = {"A": shapely.union(shapely.box(0, 0, 5, 1), shapely.box(5, 0.4, 5.3 + size, 0.4 + size))}
    found = check(nets, [np.array([(5.15, -1.0), (5.15, 2.0)])], 0.3, outline=shapely.box(-1, -0.5, 6, 1.5))
    assert len(found.opens) == opens
    assert not found.lost


def test_separation_is_judged_below_and_loss_above():
    """A V-groove: narrow at the copper's underside, wide at its top."""
    nets = {"A": shapely.box(0, 0, 10, 1), "B": shapely.box(0, 1.1, 10, 2)}
    line = [np.array([(-2.0, 1.05), (12.0, 1.05)])]
    outline = shapely.box(0, 0, 10, 2)
    assert check(nets, line, 0.05, top_width=0.2, outline=outline).clean
    assert check(nets, line, 0.0, top_width=0.2, outline=outline).shorts


def test_widths_must_match_lines():
    with pytest.raises(InputError):
        check(pads(), [], [0.1, 0.2])
    with pytest.raises(InputError):
        check(pads(), [], -0.1)


@given(st.integers(0, 10_000))
@settings(max_examples=5, deadline=None)
def test_verdict_agrees_with_a_raster_and_with_any_tile(seed):
    rng = np.random.default_rng(seed)
    nets = {f"N{i}": shapely.Point(*rng.uniform(0, 3, 2)).buffer(rng.uniform(0.2, 0.5)) for i in range(6)}
    items = list(nets.items())
    nets = {
        name: shape
        for k, (name, shape) in enumerate(items)
        if all(shape.distance(other) > 0.1 for _, other in items[:k])
    }
    lines = [rng.uniform(-1, 4, (4, 2)) for _ in range(6)]
    outline = shapely.box(-1, -1, 4, 4)
    first = check(nets, lines, 0.21, outline=outline, tile=10.0)
    other = check(nets, lines, 0.21, outline=outline, tile=1.7)
    assert {f.nets for f in first.shorts} == {f.nets for f in other.shorts}
    assert {f.nets for f in first.opens} == {f.nets for f in other.opens}
    joined = raster_groups(nets, lines, 0.21, 0.005)
    ours = {name: {name} for name in nets}
    for flaw in first.shorts:
        for name in flaw.nets:
            ours[name] |= set(flaw.nets)
    for one in nets:
        for two in nets:
            if one < two and joined(one) & joined(two):
                assert two in ours[one], (one, two)


def raster_groups(nets, lines, width, pitch):
    """Pieces of copper a raster sees in each net (pieces of 20 cells and more)."""
    axis = np.arange(-1 + pitch / 2, 4, pitch)
    x, y = np.meshgrid(axis, axis, indexing="ij")
    kept = np.ones(x.shape, dtype=bool)
    for line in lines:
        for a, b in itertools.pairwise(line):
            d = b - a
            t = np.clip(((x - a[0]) * d[0] + (y - a[1]) * d[1]) / (d @ d), 0, 1)
            kept &= np.hypot(x - a[0] - t * d[0], y - a[1] - t * d[1]) > width / 2
    label, _ = ndimage.label(kept)
    groups = {}
    for name, shape in nets.items():
        x0, y0, x1, y1 = shape.bounds
        i, j = np.searchsorted(axis, [x0, x1]), np.searchsorted(axis, [y0, y1])
        window = (slice(*i), slice(*j))
        # well inside the net, where neither check could call the copper a shaving
        inside = shapely.contains_xy(shape.buffer(-0.02), x[window], y[window])
        seen = np.bincount(label[window][inside])
        groups[name] = {int(k) for k in np.flatnonzero(seen >= 100) if k > 0}
    return groups.__getitem__


def test_a_groove_is_never_narrower_above_than_below():
    """A pad milled away below is gone, whatever is said of the width above."""
    nets = {"P": shapely.Point(0, 0).buffer(0.3)}
    outline = shapely.box(-2, -2, 2, 2)
    assert check(nets, [np.array([(-1.0, 0.0), (1.0, 0.0)])], 1.0, top_width=0.0, outline=outline).lost


def test_without_an_outline_copper_goes_on_past_the_widest_groove():
    nets = {name: shapely.Point(x, 0).buffer(0.15) for name, x in (("A", 0), ("B", 7))}
    rings = [np.array(shape.buffer(1.5).exterior.coords) for shape in nets.values()]
    found = check(nets, rings, 3.0)
    assert found.clean
    assert found.pieces == found.nets == 2
    assert check(nets, rings[:1] * 2, 0.0).shorts


def test_an_open_is_shown_at_the_smaller_piece():
    nets = {"T": shapely.box(0, 0, 20, 0.5)}
    loops = plan_grooves(nets, 0.2).lines
    for x, low, high in ((17.0, 17.0, 20.0), (2.0, 0.0, 2.0)):
        (flaw,) = check(nets, [*loops, np.array([(x, -0.1), (x, 0.6)])], 0.2).opens
        assert low < flaw.at[0] < high


def test_a_pad_half_past_the_edge_is_lost_when_it_is_milled_away():
    nets = {"P": shapely.box(-0.2, 0, 0.2, 0.4), "OUT": shapely.box(-2, 0, -1, 1)}
    outline = shapely.box(0, -3, 3, 3)
    found = check(nets, [np.array([(0.0, -1.0), (0.0, 1.5)])], 1.0, outline=outline)
    assert [flaw.nets for flaw in found.lost] == [("P",)], "what lies wholly outside was never there"


@pytest.mark.parametrize(("thick", "opens"), [(0.008, 0), (0.013, 1)])
def test_a_shaving_along_an_edge_is_no_piece(thick, opens):
    nets = {"A": shapely.box(0, 0, 5, 1)}
    line = np.array([(-1.0, 0.9 - thick), (6.0, 0.9 - thick)])
    found = check(nets, [line], 0.2, outline=shapely.box(-1, -0.5, 6, 1.0))
    assert len(found.opens) == opens


def test_the_only_copper_of_a_net_counts_however_small():
    """A crumb is what is cut off something larger."""
    nets = {"S": shapely.box(0, 0, 0.04, 0.04)}
    ring = np.array(nets["S"].buffer(0.2, join_style="mitre").exterior.coords)
    found = check(nets, [ring], 0.2)
    assert found.clean
    assert found.pieces == 1
    (lost,) = check(nets, [ring, np.array([(-0.5, 0.02), (0.5, 0.02)])], 0.2).lost
    assert lost.nets == ("S",)


def test_grooves_that_graze_a_thin_net_on_both_sides_may_mill_it_away():
    """Each reaches in by less than the chords of arcs explain; what both leave is a shaving."""
    nets = {"T": shapely.box(0, 0, 5, 0.018)}
    ring = np.array(shapely.box(-0.6, -0.4956, 5.6, 0.5136).exterior.coords)
    assert [flaw.nets for flaw in check(nets, [ring], 1.0).lost] == [("T",)]
