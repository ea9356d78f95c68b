"""The burn grid: every field has its own power and dwell, and the program keeps them."""

from __future__ import annotations

import numpy as np
import pytest

from drypoint.cuts.burn_grid import FIELD, plan_burn_grid
from drypoint.errors import InputError
from drypoint.geometry.rigid import Rigid
from drypoint.program.laser import LaserSettings, pulse_program


def test_every_pulse_lies_in_the_field_of_its_power_and_dwell():
    grid = plan_burn_grid((2.0, 3.0), powers=(0.2, 0.5), dwells=(0.01, 0.02, 0.04), pitch=0.2)
    program = pulse_program(
        grid.rows, Rigid(), LaserSettings(scale=1000.0), power=grid.power, dwell=grid.dwell
    )
    beam = program.beam
    seen = 0
    for cell in grid.cells:
        inside = (np.abs(beam.spots - cell.at) <= FIELD / 2 + 1e-3).all(axis=1)
        assert inside.sum() == 49
        assert np.allclose(beam.power[inside], 1000 * cell.power)
        assert np.allclose(beam.seconds[inside], cell.dwell)
        seen += int(inside.sum())
    assert len(beam.spots) - seen == len(grid.rows[-1])
    assert beam.spots.min(axis=0) == pytest.approx((2.0, 3.3))
    assert np.ptp(beam.spots, axis=0)[0] <= grid.size[0] + 1e-9


def test_it_begins_with_the_weakest_field():
    grid = plan_burn_grid(powers=(0.9, 0.1), dwells=(0.05, 0.01))
    dose = grid.power * grid.dwell
    assert dose[0] == dose.min()
    fields = dose[: -len(grid.rows[-1])]
    assert (np.diff(fields) >= -1e-12).all()


def test_a_field_is_found_by_its_place():
    grid = plan_burn_grid(powers=(0.2, 0.5), dwells=(0.01, 0.02))
    assert (grid.cell(1, 0).power, grid.cell(1, 0).dwell) == (0.5, 0.01)
    with pytest.raises(InputError):
        grid.cell(2, 0)


@pytest.mark.parametrize(
    "given", [{"powers": ()}, {"powers": (0.0,)}, {"powers": (1.2,)}, {"dwells": (0.0,)}, {"pitch": 0.0}]
)
def test_what_makes_no_sense_is_refused(given):
    with pytest.raises(InputError):
        plan_burn_grid(**given)
