"""Distances that insulate after the cut, over copper that belongs to nobody too."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from drypoint.cuts.clearances import too_close
from drypoint.cuts.ratings import clearance
from drypoint.geometry.points import as_points

WINDOW = shapely.box(-5, -5, 25, 9)


def _around(shape, by):
    return as_points(shapely.get_coordinates(shape.buffer(by, join_style="mitre").exterior))


@pytest.mark.parametrize(("apart", "width"), [(3.0, 0.2), (0.5, 0.5), (6.0, 0.3)])
def test_copper_without_a_net_does_not_insulate(apart, width):
    """Two loops with bare copper between: 2 w insulate however far apart the nets are (geometry)."""
    nets = {"A": shapely.box(0, 0, 4, 4), "B": shapely.box(4 + apart, 0, 9 + apart, 4)}
    lines = [_around(shape, width / 2) for shape in nets.values()]
    truth = min(2 * width, apart)
    for asked in (truth - 0.01, truth + 0.01):
        found = too_close(nets, lines, width, WINDOW, lambda a, b, v=asked: v, live=["A"])
        assert [flaw.nets for flaw in found] == ([("A", "B")] if asked > truth else [])
    where = shapely.Point(found[0].at)
    assert where.distance(nets["A"]) <= width
    assert f"{truth:.2f} mm" in found[0].what
    assert ("without a net" in found[0].what) == (apart > 2 * width)


def test_nothing_is_counted_across_another_net():
    nets = {name: shapely.box(5 * k, 0, 5 * k + 4.9, 4) for k, name in enumerate("ABC")}
    lines = [as_points([(x, -6.0), (x, 10.0)]) for x in (4.95, 9.95)]
    found = too_close(nets, lines, 0.1, WINDOW, lambda a, b: 0.25, live=["A", "C"])
    assert {frozenset(flaw.nets) for flaw in found} == {frozenset("AB"), frozenset("BC")}


def test_nets_that_stay_joined_are_not_apart_at_all():
    nets = {"A": shapely.box(0, 0, 4, 4), "B": shapely.box(4.1, 0, 8, 4)}
    (flaw,) = too_close(nets, [], 0.1, WINDOW, lambda a, b: clearance(24), live=["B"])
    assert "0.00 mm" in flaw.what


def test_no_voltage_asks_for_nothing():
    nets = {"A": shapely.box(0, 0, 4, 4), "B": shapely.box(4.1, 0, 8, 4)}
    assert (
        too_close(nets, [np.array([(4.05, -6.0), (4.05, 10.0)])], 0.1, WINDOW, lambda a, b: 0.0, live=["A"])
        == ()
    )
