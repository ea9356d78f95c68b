"""Every setting by itself: changed, kept over a reopening, taken back, made again."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, is_dataclass, replace
from enum import Enum
from pathlib import Path
from typing import Any

import pytest

from drypoint.bits.model import EndMill, Speeds
from drypoint.session.clear_settings import ClearArea
from drypoint.session.session import Session
from drypoint.session.settings import (
    SECTIONS,
    Clamp,
    CopyPlace,
    FileUse,
    MarkingMaterial,
    ProgramUse,
    Settings,
    ToolChoice,
    Voltage,
)

KEYS = sorted(f"{section}.{one.name}" for section in SECTIONS for one in fields(getattr(Settings(), section)))
FIRST = {next(key for key in KEYS if key.startswith(f"{section}.")) for section in SECTIONS}
EXAMPLES: dict[str, Any] = {
    "blank.clamps": (Clamp(1.0, 2.0, 10.0, 8.0),),
    "copies.places": (CopyPlace(0.0, 0.0), CopyPlace(90.0, 1.5, 90.0)),
    "electrical.voltages": (Voltage("L", "N", 325.0),),
    "imported.uses": (FileUse("a.nc", ProgramUse.OUTLINE),),
    "imported.bits": (ToolChoice("a.nc", 3, "Drill 1.0 mm"),),
    "clearing.areas": (ClearArea(1.0, 2.0, 10.0, 8.0),),
    "clearing.bit": EndMill("End mill 0.8", 0.8, Speeds(10_000, 120, 40), 0.2),
    "laser.materials": (MarkingMaterial("paint", 0.3, 0.02),),
    "laser.focus": 12.5,
    "machine.travel": (160.0, 100.0, 45.0),
    "machine.contact": False,
    "machine.spindle_switched": True,
    "machine.homing": True,
    "machine.preset": "medium",
    "reference.way": "rim",
}
"""Where another value does not follow from the default."""


def _other(value: Any) -> Any:
    """Another value of the same kind."""
    if isinstance(value, bool):
        return not value
    if isinstance(value, Enum):
        return next(one for one in type(value) if one is not value)
    if isinstance(value, str):
        return value + "x"
    if isinstance(value, int):
        return value + 1
    if isinstance(value, float):
        return value + 0.125
    if isinstance(value, tuple):
        return value[1:] if is_dataclass(value[0]) else (*value[:-1], _other(value[-1]))
    assert is_dataclass(value)
    assert not isinstance(value, type)
    first = next(one.name for one in fields(value) if isinstance(getattr(value, one.name), float))
    return replace(value, **{first: _other(getattr(value, first))})


@pytest.fixture(scope="module")
def session(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Session]:
    """An empty job; every test leaves it as it was."""
    made = Session.create(tmp_path_factory.mktemp("undo") / "undo.drypoint")
    yield made
    made.close()


def test_there_is_something_to_undo() -> None:
    assert len(KEYS) > 80


@pytest.mark.parametrize("key", KEYS)
def test_every_setting_is_taken_back_and_made_again(session: Session, key: str, tmp_path: Path) -> None:
    section, name = key.split(".")
    before = session.settings
    changed = EXAMPLES[key] if key in EXAMPLES else _other(getattr(getattr(before, section), name))
    after = replace(getattr(before, section), **{name: changed})
    session.change(f"Another {key}", **{section: after})
    assert getattr(getattr(session.settings, section), name) == changed
    assert replace(session.settings, **{section: getattr(before, section)}) == before
    assert session.job.undo_title() == f"Another {key}"
    assert session.undo() == f"Another {key}"
    assert session.settings == before
    assert session.redo() == f"Another {key}"
    assert getattr(session.settings, section) == after
    if key in FIRST:  # a reopening takes a while
        session.job.copy_to(tmp_path / "copy.drypoint")
        again = Session.open(tmp_path / "copy.drypoint")
        assert getattr(again.settings, section) == after
        assert again.undo() == f"Another {key}"
        assert again.settings == before
        again.close()
    assert session.undo() == f"Another {key}"
    assert session.settings == before
