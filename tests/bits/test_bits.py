"""Bits: handbook geometry, speeds, the library as text, wear."""

import math

import pytest

from drypoint.bits.feeds import MachineLimits, advise, check_speeds, cutting_speed, spindle_for
from drypoint.bits.library import default_library, from_json, to_json
from drypoint.bits.model import Speeds, VBit
from drypoint.bits.wear import Wear
from drypoint.errors import InputError

LIMITS = MachineLimits(1000.0, 10_000.0, 500.0, 100.0)


@pytest.mark.parametrize(("angle", "width"), [(10, 0.1175), (30, 0.1536), (60, 0.2155), (90, 0.3)])
def test_v_bit_width(angle, width):
    """w = t + 2 d tan(α/2) worked by hand for a tip of 0.1 mm at 0.1 mm depth."""
    bit = VBit("V", 0.1, math.radians(angle), Speeds(1, 1, 1))
    assert bit.width(0.1) == pytest.approx(width, abs=5e-5)
    assert bit.depth(bit.width(0.1)) == pytest.approx(0.1)


def test_cutting_speed():
    """v = π d n / 1000 (handbook formula): 1 mm at 24,000 gives 75.398 m/min."""
    assert cutting_speed(1.0, 24_000) == pytest.approx(75.398, abs=1e-3)
    assert spindle_for(1.0, 100.0) == pytest.approx(31_831, abs=1.0)


def test_a_slow_spindle_is_told_of_and_the_feed_follows():
    mill = default_library().mills[1]
    advice = advise(mill, chip=0.01, speed=100.0, limits=LIMITS)
    assert advice.speeds.spindle == 10_000
    assert advice.speeds.feed == pytest.approx(10_000 * 2 * 0.01)
    assert "reaches 10000" in advice.warnings[0]
    assert check_speeds(mill, MachineLimits(20_000, 30_000, 10, 10))


def test_library_round_trip():
    library = default_library()
    assert from_json(to_json(library)) == library
    bit = library.drills[0]
    assert library.without(bit.name).with_bit(bit).find(bit.name) == bit


@pytest.mark.parametrize(
    "text",
    [
        "",
        "[]",
        "{}",
        '{"bits": [{"kind": "saw", "name": "x"}]}',
        '{"bits": [{"kind": "drill"}]}',
        '{"bits": [1]}',
    ],
)
def test_bad_libraries_are_refused(text):
    with pytest.raises(InputError):
        from_json(text)


def test_wear_is_kept_and_told():
    wear = Wear().after("V", length=15_000).after("V", length=4_000)
    assert wear.of("V").length == 19_000
    assert len(wear.hints()) == 1
    assert wear.renewed("V").hints() == ()
