"""The demo board is what its generator says, electrically whole, and fit to be milled."""

from __future__ import annotations

import math
from itertools import combinations
from pathlib import Path
from types import ModuleType

import numpy as np
import pytest
import shapely

from drypoint.board.copper import overlaps, pieces
from drypoint.board.model import Board
from drypoint.board.netlist import read_netlist


def test_the_files_are_what_the_generator_writes(hive_scale: Path, demo_source: ModuleType) -> None:
    made = demo_source.files()
    assert {path.name for path in hive_scale.iterdir()} == set(made)
    for name, text in made.items():
        assert (hive_scale / name).read_text(encoding="ascii") == text, name


def test_size_nets_and_holes(demo: Board, demo_source: ModuleType) -> None:
    assert demo.width == pytest.approx(70.0, abs=1e-6)
    assert demo.height == pytest.approx(50.0, abs=1e-6)
    # a rectangle less what four corners of radius 3 cut off; chords of 2 µm take a little more
    # (at most 2 µm along the 18.8 mm of arc)
    assert demo.outline.area == pytest.approx(70 * 50 - (4 - math.pi) * 9, abs=0.038)
    assert demo.outline.bounds[:2] == pytest.approx((0.0, 0.0), abs=1e-9)
    assert demo.net_source == "attributes"
    assert set(demo.nets) == {pin.net for pin in demo_source.pins()}
    assert 25 <= len(demo.nets) <= 40
    assert len(demo.holes) == len(list(demo_source.pins())) + len(demo_source.vias()) + 4
    assert sum(hole.plated is False for hole in demo.holes) == 4
    assert demo.legend is not None
    assert not [item for item in demo.findings if item.kind != "through"]


def test_every_lead_lies_in_its_net_where_the_mirrored_design_has_it(
    demo: Board, demo_source: ModuleType
) -> None:
    by_place = {(round(h.x, 3), round(h.y, 3)): h for h in demo.holes}
    for pin in demo_source.pins():
        hole = by_place[(round(70.0 - pin.x, 3), round(pin.y, 3))]
        assert hole.net == pin.net
        assert hole.diameter == pytest.approx(demo_source.PADS[pin.kind][2])
        ring = shapely.Point(hole.x, hole.y).buffer(hole.diameter / 2 + 0.1)
        assert demo.nets[pin.net].covers(ring), "the hole has copper all round"


def test_each_net_is_whole_through_both_layers_and_its_holes(demo: Board) -> None:
    for net, copper in demo.nets.items():
        discs = [shapely.Point(h.x, h.y).buffer(h.diameter / 2) for h in demo.holes if h.net == net]
        layers = [*pieces(copper), *pieces(demo.other_copper[net])]
        groups = [{k} for k in range(len(layers))]
        for disc in discs:
            met = {k for k, part in enumerate(layers) if part.intersects(disc)}
            joined = set().union(*(g for g in groups if g & met))
            groups = [g for g in groups if not g & met] + [joined]
        assert len(groups) == 1, net


def test_no_two_nets_touch_on_either_layer(demo: Board) -> None:
    assert overlaps(demo.nets) == []
    assert overlaps(demo.other_copper) == []


def test_gaps_leave_room_for_a_fine_bit(demo: Board) -> None:
    gaps = sorted(demo.nets[a].distance(demo.nets[b]) for a, b in combinations(demo.nets, 2))
    assert gaps[0] == pytest.approx(0.2, abs=0.001)
    assert sum(gap < 0.3 for gap in gaps) <= 6, "only the transistors' leads and one track are tight"
    edge = demo.outline.exterior
    assert min(edge.distance(shape) for shape in demo.nets.values()) > 0.5


def test_links_replace_the_top_layer(demo: Board, demo_source: ModuleType) -> None:
    drawn = {net for net, _, _ in demo_source.links()}
    assert {wire.net for wire in demo.links} == drawn
    for net, copper in demo.nets.items():
        parts = pieces(copper)
        wires = [wire for wire in demo.links if wire.net == net]
        assert len(wires) == len(parts) - 1, "a tree has one wire less than it joins"
        joined = shapely.union_all([copper, *(shapely.LineString(w.path).buffer(0.2) for w in wires)])
        assert len(pieces(joined)) == 1
    longest = {net: math.dist(a, b) for net, a, b in demo_source.links()}
    for wire in demo.links:
        assert wire.length <= longest[wire.net] + 1e-6
        assert wire.length == pytest.approx(float(np.linalg.norm(wire.path[1] - wire.path[0])))


def test_the_netlist_tells_the_same(demo: Board, hive_scale: Path) -> None:
    netlist = read_netlist(hive_scale / "hive-scale-netlist.ipc")
    back = demo.to_design.apply([(h.x, h.y) for h in demo.holes])
    at = {(round(float(x), 3), round(float(y), 3)): h.net for (x, y), h in zip(back, demo.holes, strict=True)}
    assert len(netlist.points) == len(demo.holes) - 4
    for point in netlist.points:
        assert at[(round(point.x, 3), round(point.y, 3))] == point.net
