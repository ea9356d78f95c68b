"""The check of the demo's outcome notices what it is there for."""

from __future__ import annotations

import importlib.util
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

GOOD = """\
(Zero Z on the copper. Rapid moves stay at Z 2.000 or above.)
G21
G90
G1Z2F800
M3S10000
G4P3
G0X1Y1
G1Z0.3F300
Z-0.05F100
X5
G2X6Y2I1J0
Z2F800
G0X9
G1Z-0.05F100
Z2
M5
M2
"""


@pytest.fixture(scope="module")
def checker(root: Path) -> ModuleType:
    spec = importlib.util.spec_from_file_location("check_demo", root / ".ci" / "check_demo.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_a_good_program_passes(checker: ModuleType, tmp_path: Path) -> None:
    path = tmp_path / "a.nc"
    path.write_text(GOOD)
    assert checker.program(path) == []


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("Z2F800\nG0X9", "Z1F800\nG0X9", "rapid move below"),
        ("G0X9", "G0X9Z1", "rapid move below"),
        ("G1Z2F800\nM3", "M3", "rapid move below"),  # the height is not known
        ("G0X9\nG1Z-0.05F100", "G0X9\nG1Z-0.05", "no feed"),
        ("M3S10000\n", "", "spindle stands"),
        ("M5\n", "", "leaves the spindle on"),
        ("M2\n", "", "does not end"),
        ("X5\n", "X5" + "0" * 78 + "\n", "characters"),
        ("X5\n", "$X\n", "more than words"),
        ("Rapid moves stay", "Moves stay", "not stated"),
    ],
)
def test_an_unsafe_program_is_noticed(
    checker: ModuleType, tmp_path: Path, old: str, new: str, words: str
) -> None:
    assert GOOD.count(old) == 1
    path = tmp_path / "a.nc"
    path.write_text(GOOD.replace(old, new))
    wrong = checker.program(path)
    assert any(words in line for line in wrong), wrong


def _result(**more: Any) -> dict[str, Any]:
    check = {"nets": 29, "pieces": 29, "shorts": [], "opens": [], "lost": []}
    shares = {"predicted_through": 0.99, "actual_through": 0.98}
    return {
        "island_check": check | more.pop("check", {}),
        "passes": [shares | more.pop("shares", {})],
        **more,
    }


def test_the_outcome_is_judged(checker: ModuleType) -> None:
    assert checker.outcome(_result()) == []
    assert checker.outcome(_result(check={"shorts": [{"nets": ["A", "B"], "at": [1, 2]}]}))
    assert checker.outcome(_result(check={"pieces": 28}))
    assert checker.outcome(_result(shares={"actual_through": None}))
    assert checker.outcome(_result(shares={"actual_through": 0.9}))
    assert checker.outcome(_result(passes=[]))


def test_missing_files_are_noticed(checker: ModuleType, tmp_path: Path) -> None:
    assert len(checker.files(tmp_path)) == 6
