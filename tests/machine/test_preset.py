"""Machines by size class, and what differs from them."""

from __future__ import annotations

import pytest

from drypoint.errors import InputError
from drypoint.machine.preset import SpindleKind, compare, load_presets
from drypoint.machine.state import Facts


def facts(preset, **changes):
    values = {100: 800.0, 101: 800.0, 102: 800.0, 13: 0.0, 20: 0.0, 22: float(preset.homing), 32: 0.0}
    for axis in range(3):
        values |= {110 + axis: preset.max_rate[axis], 120 + axis: preset.acceleration[axis]}
        values |= {130 + axis: preset.travel[axis]}
    values[30] = preset.spindle_range[1]
    return Facts(settings=values | {int(name[1:]): value for name, value in changes.items()})


def test_the_presets_load_and_differ():
    presets = load_presets()
    assert len({preset.name for preset in presets}) == len(presets) >= 4
    assert {preset.spindle for preset in presets} == set(SpindleKind)
    assert any(preset.homing for preset in presets)


def test_a_machine_like_its_preset_has_no_findings():
    for preset in load_presets():
        assert compare(facts(preset), preset) == ()


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"s110": 300.0}, "$110"),
        ({"s122": 500.0}, "$122"),
        ({"s131": 10.0}, "$131"),
        ({"s13": 1.0}, "$13"),
        ({"s32": 1.0}, "$32"),
        ({"s22": 1.0}, "$22"),
        ({"s20": 1.0, "s22": 0.0}, "$20"),
        ({"s30": 1000.0}, "$30"),
        ({"s100": 0.0}, "$100"),
    ],
)
def test_what_differs_is_named(change, where):
    preset = next(preset for preset in load_presets() if preset.name == "small")
    found = compare(facts(preset, **change), preset)
    assert [finding.where for finding in found] == [where]
    assert found[0].what.endswith(".")


def test_startup_lines_are_warned_of_word_for_word():
    preset = load_presets()[0]
    found = compare(Facts(startup=("G0X10",)), preset)
    assert len(found) == 1
    assert "G0X10" in found[0].what


def test_settings_that_were_not_told_are_left_out():
    assert compare(Facts(), load_presets()[0]) == ()


@pytest.mark.parametrize("text", ["", "{}", '{"machines": [{"name": "x"}]}', '{"machines": [1]}', "\x00"])
def test_a_broken_file_is_refused(tmp_path, text):
    path = tmp_path / "machines.json"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(InputError):
        load_presets(path)
