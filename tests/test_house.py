"""The house rules that a machine can check: layers, types, style, size."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

CHECKS = ("style", "types", "layers")
"""Those of ``scripts/check`` that do not change with each release of the formatter."""


@pytest.mark.parametrize("name", CHECKS)
def test_static_check(root: Path, name: str) -> None:
    """Style, strict types and the one chain of layers, each as ``scripts/check`` runs it."""
    done = subprocess.run(
        [sys.executable, "scripts/check", name],
        cwd=root,
        capture_output=True,
        text=True,
        check=False,
        timeout=500,
    )
    assert done.returncode == 0, done.stdout + done.stderr


def test_every_static_check_is_run_here(root: Path) -> None:
    done = subprocess.run(
        [sys.executable, "scripts/check", "--list"], cwd=root, capture_output=True, text=True, check=True
    )
    assert set(done.stdout.split()) == {*CHECKS, "form"}


def test_modules_stay_small(root: Path) -> None:
    long = {
        str(path.relative_to(root)): lines
        for path in (root / "app" / "drypoint").rglob("*.py")
        if (lines := len(path.read_text(encoding="utf-8").splitlines())) > 450
    }
    assert not long


def test_time_stands_still_outside_the_serial_link(root: Path) -> None:
    """Nothing sleeps but the clock of the serial link: a rehearsed hour takes seconds."""
    sleepers = [
        path.name
        for path in (root / "app" / "drypoint").rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Attribute)
        and node.attr == "sleep"
        and isinstance(node.value, ast.Name)
        and node.value.id == "time"
    ]
    assert set(sleepers) <= {"serial_link.py", "pty.py"}


@pytest.mark.skipif(
    sys.version_info[:2] != (3, 11), reason="the reference count defect is one of CPython 3.11 builds"
)
def test_installed_qt_is_not_the_broken_one() -> None:
    """6.12.0 on CPython 3.11 loses a reference to None per void call; the project file excludes it."""
    from importlib.metadata import version

    assert version("PySide6-Essentials") != "6.12.0"
