"""Names of bits keep what they say and can be said in another language."""

from __future__ import annotations

import json
import math
import pickle

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.bits.library import bit_to_dict, default_library, from_json, to_json
from drypoint.bits.model import Drill, Speeds, VBit
from drypoint.bits.naming import named
from drypoint.session.settings import BitSettings
from drypoint.wording import Text, told

SPEEDS = Speeds(10_000.0, 100.0, 50.0)


def _german(template: str) -> str:
    return template.replace("V-bit", "Stichel").replace("Drill", "Bohrer").replace("End mill", "Fräser")


def test_every_bit_of_ours_has_a_name_that_can_be_said_otherwise() -> None:
    own = BitSettings()
    for bit in (*default_library().bits, own.vbit, own.mill, *own.drills):
        assert isinstance(bit.name, Text)
        said = told(bit.name, _german, ",")
        assert said.split()[0] in ("Stichel", "Bohrer", "Fräser")
        assert said != bit.name
        assert "." not in said


@pytest.mark.parametrize(
    "name", ["my good one", "Drill 0.80 mm", "V-bit 0.1 mm", "Drill", "End mill 2,0 mm", ""]
)
def test_names_of_a_persons_own_stay_as_they_are(name: str) -> None:
    assert named(name) == name
    assert told(named(name), _german, ",") == name


@given(st.text())
def test_a_name_is_never_changed(name: str) -> None:
    assert named(name) == name


@given(st.floats(0.05, 5.0), st.integers(10, 90))
def test_names_made_of_sizes_are_never_changed(size: float, angle: int) -> None:
    for name in (f"V-bit {size:g} mm {angle}°", f"Drill {size:.1f} mm", f"End mill {size:g} mm"):
        assert named(name) == name


def test_kept_and_sent_as_a_plain_name() -> None:
    bit = VBit("V-bit 0.1 mm 30°", 0.1, math.radians(30.0), SPEEDS)
    assert type(pickle.loads(pickle.dumps(bit.name))) is str
    assert pickle.loads(pickle.dumps(bit)) == bit
    assert json.loads(json.dumps(bit_to_dict(bit)))["name"] == "V-bit 0.1 mm 30°"
    assert from_json(to_json(default_library())) == default_library()
    assert hash(Drill("Drill 0.8 mm", 0.8, SPEEDS)) == hash(Drill("Drill 0.8 mm", 0.8, SPEEDS))
