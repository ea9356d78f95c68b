"""IPC-2221 estimates against published values."""

import pytest

from drypoint.cuts.ratings import Surroundings, clearance, current, width_for


def test_current_of_a_ten_mil_trace():
    """Board makers' IPC-2221 calculators: 10 mil of 1 oz (1.378 mil), 10 K, external: 0.8855 A."""
    assert current(10 * 0.0254, thickness=1.378 * 0.0254) == pytest.approx(0.88552, abs=1e-4)


@pytest.mark.parametrize(("amperes", "width"), [(1.0, 0.3004), (2.0, 0.7814), (3.0, 1.367)])
def test_width_for_a_current(amperes, width):
    """IPC-2221 formula solved by hand for 35 µm external copper, 10 K."""
    assert width_for(amperes) == pytest.approx(width, rel=1e-3)
    assert current(width_for(amperes)) == pytest.approx(amperes)


@pytest.mark.parametrize(
    ("volts", "where", "mm"),
    [
        (15, Surroundings.BARE, 0.1),
        (48, Surroundings.BARE, 0.6),
        (160, Surroundings.BARE, 1.25),
        (400, Surroundings.COATED, 0.8),
        (100, Surroundings.BARE_HIGH, 1.5),
        (600, Surroundings.BARE, 3.0),
    ],
)
def test_clearance_table(volts, where, mm):
    """IPC-2221 table 6-1 as carried by open CAD programs (secondary source); 600 V worked by rule."""
    assert clearance(volts, where) == pytest.approx(mm)
