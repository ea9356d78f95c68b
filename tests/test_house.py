"""The house rules that a machine can check: layers, types, style, and the set-up script."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest


def _run(command: list[str], root: Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", *command], cwd=root, capture_output=True, text=True, check=False, timeout=500
    )


def test_layers_are_one_strict_chain(root: Path) -> None:
    code = "import sys; from importlinter.cli import lint_imports; sys.exit(lint_imports())"
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=root, capture_output=True, text=True, check=False, timeout=300
    )
    assert done.returncode == 0, done.stdout + done.stderr


def test_types_are_strict(root: Path) -> None:
    done = _run(["mypy"], root)
    assert done.returncode == 0, done.stdout + done.stderr


def test_style(root: Path) -> None:
    done = _run(["ruff", "check", "app", "tests", "examples", "scripts", ".ci"], root)
    assert done.returncode == 0, done.stdout + done.stderr


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


def test_start_script_reads_on_old_pythons(root: Path) -> None:
    """No syntax newer than Python 3.0, so that an old interpreter can say what is missing."""
    tree = ast.parse((root / "app" / "start.py").read_text(encoding="utf-8"), feature_version=(3, 4))
    newer = (ast.JoinedStr, ast.AnnAssign, ast.NamedExpr, ast.AsyncFunctionDef)
    assert not [node for node in ast.walk(tree) if isinstance(node, newer)]


def test_start_script_uses_only_the_standard_library(root: Path) -> None:
    tree = ast.parse((root / "app" / "start.py").read_text(encoding="utf-8"))
    imported = {name.name for node in ast.walk(tree) if isinstance(node, ast.Import) for name in node.names}
    imported |= {node.module or "" for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)}
    assert imported <= set(sys.stdlib_module_names)


@pytest.mark.skipif(
    not (sys.version_info[:2] == (3, 11)), reason="the reference count defect is one of CPython 3.11 builds"
)
def test_installed_qt_is_not_the_broken_one() -> None:
    """6.12.0 on CPython 3.11 loses a reference to None per void call; the project file excludes it."""
    from importlib.metadata import version

    assert version("PySide6-Essentials") != "6.12.0"
