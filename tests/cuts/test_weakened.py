"""Traces that lose width to the cut are listed with what they carried and carry."""

import numpy as np
import pytest
import shapely

from drypoint.cuts.ratings import current
from drypoint.cuts.weakened import weakened
from drypoint.errors import InputError
from drypoint.geometry.points import as_points

TRACE = {"T": shapely.LineString([(0, 0), (20, 0)]).buffer(0.25, cap_style="flat")}
"""A trace 0.5 mm wide."""


def groove(bite, start=5.0, stop=9.0, side=1.0):
    """A groove 0.2 mm wide that eats ``bite`` mm of the trace's upper (or lower) side."""
    y = side * (0.25 + 0.1 - bite)
    return as_points([(start, y), (stop, y)])


@pytest.mark.parametrize(("bites", "listed"), [((0.05,), False), ((0.15,), True), ((0.07, 0.07), True)])
def test_a_trace_is_listed_when_it_loses_more_than_the_share(bites, listed):
    lines = [groove(bite, side=(1.0, -1.0)[k]) for k, bite in enumerate(bites)]
    found = weakened(TRACE, lines, 0.2, 0.2, copper=0.035, rise=10.0)
    assert bool(found) is listed
    if listed:
        (one,) = found
        left = 0.5 - sum(bites)
        assert 5.0 <= one.at[0] <= 9.0
        assert f"from 0.50 to {left:.2f} mm" in str(one.what)
        # IPC-2221 as quoted by board makers' calculators: 0.5 mm of 35 µm, 10 K, external: 1.447 A
        assert "1.45 A before" in str(one.what)
        assert f"{current(left):.2f} A after" in str(one.what)


def test_every_stretch_is_listed_once_and_the_share_decides():
    lines = [groove(0.15, 2, 4), groove(0.15, 8, 10), groove(0.19, 14, 15)]
    assert len(weakened(TRACE, lines, 0.2, 0.2)) == 3
    (worst,) = weakened(TRACE, lines, 0.2, 0.35)
    assert 14 <= worst.at[0] <= 15
    assert weakened(TRACE, lines, 0.2, 0.6) == ()
    assert weakened(TRACE, lines, 0.2, 0.0) == ()


def test_a_plane_that_is_bitten_is_no_weakened_trace():
    plane = {"P": shapely.box(0, 0, 10, 10)}
    assert weakened(plane, [as_points([(2, 10.05), (8, 10.05)])], 0.2, 0.2) == ()


def test_the_width_is_measured_across_a_trace_at_any_angle():
    for turn in np.linspace(0, 180, 7):
        net = {"T": shapely.affinity.rotate(TRACE["T"], turn, origin=(3, 1))}
        line = shapely.affinity.rotate(shapely.LineString(groove(0.15)), turn, origin=(3, 1))
        (one,) = weakened(net, [as_points(line.coords)], 0.2, 0.2)
        assert "from 0.50 to 0.35 mm" in str(one.what)


def test_a_share_that_is_none_is_refused():
    with pytest.raises(InputError):
        weakened(TRACE, [], 0.2, 1.5)
