"""Play and ISO 230-2 against published worked data."""

import numpy as np
import pytest

from drypoint.errors import InputError
from drypoint.reference.play import evaluate_axis, play_from_contacts, play_from_sides

# European Spallation Source, ecmc motion test report "ecmc_bifrost_slits_sat", axis 1, 2021-11-02
TARGETS = [15, 25, 35, 45, 55]
FORWARD = [
    [15.00067, 15.00169, 15.0021, 15.00393, 15.00332],
    [24.99964, 24.99964, 24.99862, 25.00005, 24.99924],
    [35.00025, 34.99291, 34.99719, 34.99964, 34.99536],
    [44.9978, 44.99943, 44.9982, 44.99881, 44.99657],
    [55.00289, 55.00085, 55.00717, 55.00819, 55.00044],
]
BACKWARD = [
    [15.00475, 15.00475, 15.00495, 15.00638, 15.00679],
    [24.9974, 24.99842, 24.9974, 24.99822, 24.99862],
    [34.98965, 34.9925, 34.99332, 34.99413, 34.99332],
    [44.9978, 44.99841, 44.99881, 44.99841, 45.00024],
    [55.00268, 55.00289, 55.00696, 55.00574, 55.00289],
]


def test_iso_230_2_worked_data():
    """Results of the same report. Means agree to its five decimals; where standard deviations of
    readings that are themselves rounded to 10 nm are multiplied by four, to two units of the last.
    (It prints E = 0.00845, which contradicts
    the standard's definition, the range of all unidirectional means; that is checked below.)"""
    found = evaluate_axis(TARGETS, FORWARD, BACKWARD)
    assert found.reversal_at == pytest.approx([-0.00318, 0.00143, 0.00449, -0.00057, -0.00033], abs=6e-6)
    assert found.reversal == pytest.approx(0.00449, abs=6e-6)
    assert found.mean_reversal == pytest.approx(0.00037, abs=6e-6)
    assert found.repeatability_at == pytest.approx([0.00775, 0.00366, 0.01404, 0.00457, 0.01434], abs=2e-5)
    assert found.repeatability_up == pytest.approx(0.01434, abs=2e-5)
    assert found.repeatability_down == pytest.approx(0.00794, abs=2e-5)
    assert found.systematic_up == pytest.approx(0.00684, abs=6e-6)
    assert found.systematic_down == pytest.approx(0.01294, abs=6e-6)
    assert found.mean_deviation == pytest.approx(0.00924, abs=6e-6)
    assert found.accuracy_up == pytest.approx(0.02009, abs=2e-5)
    assert found.accuracy_down == pytest.approx(0.01909, abs=2e-5)
    assert found.accuracy == pytest.approx(0.02197, abs=2e-5)


def test_systematic_deviation_follows_the_definition():
    found = evaluate_axis(TARGETS, FORWARD, BACKWARD)
    means = [np.mean(row) - t for rows in (FORWARD, BACKWARD) for row, t in zip(rows, TARGETS, strict=True)]
    assert found.systematic == pytest.approx(max(means) - min(means))
    assert found.systematic > 0.0129


def test_scale_of_the_axis_is_the_slope():
    places = np.array([0.0, 30, 60, 90])
    up = (places * 1.0004)[:, None] + np.array([0.001, -0.001])
    found = evaluate_axis(places, up, up - 0.02)
    assert found.line is not None
    assert found.line.slope == pytest.approx(4e-4)
    assert found.reversal == pytest.approx(0.02)


@pytest.mark.parametrize("sign", [1, -1])
def test_play_from_contacts(sign):
    """Play is what lies between contact made and broken, whatever the axis's direction."""
    rng = np.random.default_rng(3)
    make = sign * rng.normal(0, 0.002, 8)
    broke = make + sign * 0.030 + rng.normal(0, 0.001, 8)
    found = play_from_contacts(make, broke)
    assert abs(found.value - 0.030) < 4 * found.sigma
    assert found.matters
    assert found.cycles == 8


def test_steps_widen_the_uncertainty():
    """A reading rounded to steps is uniform over one: step/sqrt(12) (JCGM 100:2008, 4.3.7)."""
    found = play_from_contacts([0.0, 0.0], [0.03, 0.03], step=0.012)
    assert found.sigma == pytest.approx(0.012 * np.sqrt(2 / 12))


def test_play_from_both_sides():
    found = play_from_sides([10.01, 10.012, 10.008], [9.98, 9.982, 9.978])
    assert found.value == pytest.approx(0.03)
    assert found.sigma == pytest.approx(np.sqrt(2 * 0.002**2 / 3))


def test_one_reading_is_not_enough():
    with pytest.raises(InputError):
        play_from_contacts([0.0], [0.03])
    with pytest.raises(InputError):
        play_from_sides([0.0], [0.03, 0.03])
    with pytest.raises(InputError):
        evaluate_axis([1, 2], [[1], [2]], [[1], [2]])
    with pytest.raises(InputError):
        evaluate_axis([1, 2], [[1, 1]], [[1, 1]])
