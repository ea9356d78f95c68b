"""Settings survive the job file, added fields and removed ones."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.bits.model import Drill, EndMill, Speeds
from drypoint.board.model import Side
from drypoint.errors import StoreError
from drypoint.session.codec import from_json, to_json
from drypoint.session.settings import BitSettings, BlankSettings, BoardSettings, Clamp, Settings

_number = st.floats(-1e6, 1e6)


@given(st.lists(st.builds(Clamp, _number, _number, _number, _number), max_size=4), _number, st.booleans())
def test_round_trip(clamps: list[Clamp], thickness: float, centred: bool) -> None:
    blank = BlankSettings(clamps=tuple(clamps), thickness=thickness, centred=centred)
    settings = replace(Settings(), blank=blank, board=BoardSettings(Side.TOP, "ü"))
    assert from_json(Settings, json.loads(json.dumps(to_json(settings))), "job") == settings


def test_unions_come_back_as_what_they_were() -> None:
    kind = Drill | EndMill
    for bit in (Drill("a", 1.0, Speeds(1, 2, 3)), EndMill("b", 2.0, Speeds(1, 2, 3), 0.5)):
        assert from_json(kind, to_json(bit), "bit") == bit  # type: ignore[arg-type]


def test_missing_fields_get_their_default_and_unknown_ones_are_dropped() -> None:
    assert from_json(BlankSettings, {"width": 3, "colour of the bed": "green"}, "blank") == BlankSettings(3.0)


@pytest.mark.parametrize(
    "value", [{"width": "wide"}, {"width": True}, {"width": 10**400}, {"clamps": [{"x": 1}]}, 7, None]
)
def test_damaged_settings_are_named(value: object) -> None:
    with pytest.raises(StoreError, match="cannot be read") as caught:
        from_json(BlankSettings, value, "blank")
    assert caught.value.where == "blank"


def test_every_default_section_is_storable() -> None:
    assert from_json(BitSettings, json.loads(json.dumps(to_json(BitSettings()))), "bits") == BitSettings()
