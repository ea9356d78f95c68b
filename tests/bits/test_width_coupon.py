"""The evaluation of a coupon: truth by construction, and intervals that hold what they promise."""

from __future__ import annotations

import math

import numpy as np
import pytest

from drypoint.bits.model import Speeds, VBit
from drypoint.bits.width_coupon import (
    ANGLE_SPREAD,
    EDGE,
    OFFSET_SPREAD,
    RUNOUT_SPREAD,
    TIP_SPREAD,
    Parted,
    Ridge,
    Width,
    evaluate,
)
from drypoint.errors import InputError

BIT = VBit("V", 0.1, math.radians(30.0), Speeds(10000.0, 300.0, 100.0), 0.02)
DEPTHS = (0.04, 0.06, 0.08, 0.10, 0.15)
COPPER = 0.035


def seen(tip, runout, offset, angle, rng, sigma=0.01):
    """What a coupon cut by such a bit would show."""
    slope = 2.0 * math.tan(angle / 2.0)
    widths = [Width(d, tip + runout + slope * (d + offset) + rng.normal(0, sigma), sigma) for d in DEPTHS]
    parted = [
        Parted(d, bool(d + offset - COPPER > EDGE * rng.standard_normal()))
        for d in np.arange(0.01, 0.08, 0.005)
    ]
    wider = tip + runout + slope * (0.08 + offset - COPPER) - BIT.width(0.08)
    ridges = [
        Ridge(0.08, g, bool(g - wider > 2 * EDGE * rng.standard_normal())) for g in (0.0, 0.05, 0.1, 0.15)
    ]
    return widths, parted, ridges


def test_a_coupon_read_without_error_gives_the_truth_back():
    rng = np.random.default_rng(1)
    widths, parted, _ = seen(0.13, 0.02, 0.012, BIT.angle, rng, 0.001)
    found = evaluate(BIT, widths, parted, copper=COPPER)
    assert found.together[0] == pytest.approx(0.15, abs=0.004)
    assert found.offset == pytest.approx(0.012, abs=0.004)
    for depth in DEPTHS:
        assert found.width(depth)[0] == pytest.approx(
            0.15 + 2 * math.tan(BIT.angle / 2) * (depth + 0.012), abs=0.002
        )
    assert found.bit.tip == found.tip


def test_intervals_hold_what_they_promise():
    """Over drawn bits the 90 % intervals hold about 90 % of the truth, for each value and for the width."""
    rng = np.random.default_rng(7)
    inside, total = np.zeros(4), 80
    for _ in range(total):
        tip, runout = BIT.tip + rng.normal(0, TIP_SPREAD), BIT.runout + rng.normal(0, RUNOUT_SPREAD)
        offset, angle = rng.normal(0, OFFSET_SPREAD), BIT.angle + rng.normal(0, ANGLE_SPREAD)
        if tip < 0.0 or runout < 0.0:
            total -= 1
            continue
        found = evaluate(BIT, *seen(tip, runout, offset, angle, rng), copper=COPPER)
        width, spread = found.width(0.07)
        truth = tip + runout + 2 * math.tan(angle / 2) * (0.07 + offset)
        away = np.array(
            [
                abs(found.tip - tip) / found.sigma(0),
                abs(found.runout - runout) / found.sigma(1),
                abs(found.offset - offset) / found.sigma(2),
                abs(width - truth) / spread,
            ]
        )
        inside += away < 1.645
    share = inside / total
    assert (share > 0.83).all(), share
    assert (share[1:] < 0.98).all(), share


def test_play_under_load_is_not_taken_for_a_shallow_cut():
    """Bits that Z's play lifts unevenly: the depth before play comes out, with honest intervals."""
    rng, play, inside, total = np.random.default_rng(11), 0.02, np.zeros(2), 60
    plain = []
    for _ in range(total):
        offset, tip = rng.normal(0, OFFSET_SPREAD), BIT.tip + abs(rng.normal(0, TIP_SPREAD))
        flat, slope = tip + BIT.runout, 2.0 * math.tan(BIT.angle / 2.0)
        lifts = play * rng.uniform(size=(len(DEPTHS), 2)).mean(axis=1)
        widths = [
            Width(d, flat + slope * (d + offset - lift) + rng.normal(0, 0.01), 0.01)
            for d, lift in zip(DEPTHS, lifts, strict=True)
        ]
        parted = [
            Parted(d, bool(d + offset - play * rng.uniform(size=2).max() > COPPER))
            for d in np.arange(0.01, 0.09, 0.005)
        ]
        found = evaluate(BIT, widths, parted, copper=COPPER, play=play)
        plain.append(evaluate(BIT, widths, parted, copper=COPPER).offset - offset)
        truth = flat + slope * (0.07 + offset - play / 2.0)
        width, spread = found.width(0.07)
        inside += [
            abs(found.offset - offset) < 1.645 * found.sigma(2),
            abs(width - truth) < 1.645 * spread,
        ]
    assert (inside / total > 0.8).all(), inside / total
    assert np.mean(plain) < -0.4 * play, "without it the depth would be believed too small"


def test_widths_alone_do_not_pretend_to_know_the_depth():
    rng = np.random.default_rng(2)
    widths, parted, ridges = seen(0.12, 0.02, 0.01, BIT.angle, rng)
    alone = evaluate(BIT, widths, copper=COPPER)
    tested = evaluate(BIT, widths, parted, ridges, copper=COPPER)
    assert alone.sigma(2) > 0.8 * OFFSET_SPREAD
    assert tested.sigma(2) < 0.3 * OFFSET_SPREAD
    assert any("meter" in line for line in alone.facts())
    assert not any("meter" in line for line in tested.facts())
    assert tested.together[1] < alone.together[1]


def test_more_readings_are_worth_more():
    few = evaluate(BIT, [Width(0.06, 0.16)])
    many = evaluate(BIT, [Width(0.06, 0.16)] * 9)
    assert many.width(0.06)[1] < 0.5 * few.width(0.06)[1]


def test_a_width_that_fits_nothing_is_named():
    found = evaluate(BIT, [Width(0.06, 0.15), Width(0.08, 0.16), Width(0.10, 0.40)])
    assert found.misfit > 3.0
    assert any("read it again" in line for line in found.facts())


@pytest.mark.parametrize(
    "given",
    [{}, {"widths": [Width(0.0, 0.1)]}, {"widths": [Width(0.1, -0.1)]}, {"parted": [Parted(-1, True)]}],
)
def test_what_makes_no_sense_is_refused(given):
    with pytest.raises(InputError):
        evaluate(BIT, **given)
