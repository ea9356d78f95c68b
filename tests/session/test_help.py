"""Every setting has its few words, and the words agree with the settings."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import fields, is_dataclass

import pytest

from drypoint.bits.model import EndMill, Speeds
from drypoint.session.clear_settings import ClearArea
from drypoint.session.help import HELP
from drypoint.session.settings import SECTIONS, Clamp, MarkingMaterial, Settings, Voltage


def _parts(prefix: str, value: object) -> Iterator[tuple[str, object]]:
    """Every field below a value, and those of the values in it."""
    assert is_dataclass(value)
    for one in fields(value):
        key, inner = f"{prefix}.{one.name}", getattr(value, one.name)
        yield key, inner
        for item in inner if isinstance(inner, tuple) else (inner,):
            if is_dataclass(item):
                yield from _parts(key, item)


def _all() -> dict[str, list[object]]:
    settings = Settings()
    found: dict[str, list[object]] = {}
    for section in SECTIONS:
        for key, value in _parts(section, getattr(settings, section)):
            found.setdefault(key, []).append(value)
    examples = {
        "blank.clamps": Clamp(1.0, 2.0, 10.0, 10.0),
        "electrical.voltages": Voltage("L", "N", 325.0),
        "laser.materials": MarkingMaterial("paint", 0.3, 0.02),
        "clearing.areas": ClearArea(1.0, 2.0, 10.0, 10.0),
        "clearing.bit": EndMill("End mill 0.8", 0.8, Speeds(10_000, 120, 40), 0.2),
    }
    for section, example in examples.items():
        for key, value in _parts(section, example):
            found.setdefault(key, []).append(value)
    return found


def test_every_setting_has_words_and_none_is_left_over() -> None:
    assert set(HELP) == set(_all())


@pytest.mark.parametrize("key", sorted(HELP))
def test_words_are_whole_and_short(key: str) -> None:
    words = HELP[key]
    for sentence in (words.does, words.wrong):
        assert sentence[0].isupper() or sentence[0].isdigit()
        assert sentence.endswith(".")
        assert "  " not in sentence
    assert len(words.text) < 420
    assert (words.least is None) == (words.most is None)


def test_defaults_lie_in_what_is_called_usual() -> None:
    outside = {}
    for key, values in _all().items():
        words = HELP[key]
        numbers = [
            number
            for value in values
            for number in (value if isinstance(value, tuple) else (value,))
            if isinstance(number, (int, float)) and not isinstance(number, bool)
        ]
        for number in numbers if words.least is not None else []:
            shown = math.degrees(number) if words.unit == "degrees" else number
            assert words.most is not None
            if not words.least <= shown <= words.most:
                outside[key] = shown
        if numbers:
            assert words.least is not None, f"{key} is a number without a range"
    assert not outside


def test_a_stop_in_software_is_never_called_an_emergency_stop() -> None:
    assert not [key for key, words in HELP.items() if "emergency" in words.text.lower()]


def test_text_is_one_paragraph() -> None:
    words = HELP["machine.spindle_delay"]
    assert words.usual == "Usual: 2 to 10 s."
    assert words.text == f"{words.does} {words.usual} {words.wrong}"
    assert HELP["cuts.tabs"].usual == "Usual: 3 to 8."
    assert HELP["board.side"].usual == ""
