"""Programs that leave the machine or meet a clamp are refused in words."""

import math

import numpy as np
import pytest
import shapely

from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.passes.model import Pass, Run
from drypoint.program.limits import Clamp, TravelBox, check_limits, extent, require_limits
from drypoint.program.place import place, place_cuts

BOX = TravelBox((-5.0, -5.0, -10.0), (100.0, 80.0, 30.0))


@pytest.fixture
def grooves(vbit):
    square = as_points([(0, 0), (40, 0), (40, 30), (0, 30), (0, 0)])
    return lambda fit: place([Pass(1, vbit, (Run(0, square, np.full(5, 0.06)),))], fit, None)[0]


def test_inside_is_fine(grooves):
    assert check_limits(grooves(Rigid()), BOX) == ()
    require_limits([grooves(Rigid())], BOX)


@pytest.mark.parametrize(
    ("fit", "text"),
    [
        (Rigid(0.0, (70.0, 0.0)), "10.00 mm past the high end of X"),
        (Rigid(0.0, (0.0, -8.0)), "3.00 mm past the low end of Y"),
        (Rigid(math.pi / 2, (20.0, 0.0)), "5.00 mm past the low end of X"),
    ],
)
def test_outside_is_said_after_mapping(grooves, fit, text):
    (finding,) = check_limits(grooves(fit), BOX)
    assert text in finding.what
    with pytest.raises(PlanError):
        require_limits([grooves(fit)], BOX)


def test_arcs_count_with_their_bulge(mill):
    bore = Cut(CutKind.BORE, mill, as_points([(10, 10)]), depth=1.0, diameter=5.0)
    (program,) = place_cuts([bore], Rigid(), None)
    low, high = extent(program)
    assert high[1] == pytest.approx(12.0, abs=0.02)  # the arc's top is no end of a move
    assert low[0] == pytest.approx(0.0)  # park


def test_clamps_are_met_only_below_their_height(grooves):
    beside = Clamp(shapely.box(41.0, 10.0, 60.0, 20.0), 8.0, "the right clamp")
    (finding,) = check_limits(grooves(Rigid()), clamps=[beside])
    assert "the right clamp" in finding.what
    assert finding.at is not None
    assert finding.at[0] == pytest.approx(40.0, abs=0.5)
    assert check_limits(grooves(Rigid(0.0, (-10.0, 0.0))), clamps=[beside]) == ()
    assert check_limits(grooves(Rigid()), clamps=[Clamp(beside.shape, -3.0)]) == ()


def test_travel_over_a_high_clamp_is_met(grooves):
    """The way to the park place crosses it on the clearance plane."""
    across = Clamp(shapely.box(-20.0, -20.0, -15.0, -15.0), 5.0)
    program = grooves(Rigid(0.0, (-60.0, -60.0)))
    assert check_limits(program, clamps=[across]) != ()
    assert check_limits(program, clamps=[Clamp(across.shape, 0.5)]) == ()
