"""For every test: Qt is out of reach unless the window itself is tested."""

from __future__ import annotations

import os
import sys
from importlib.abc import MetaPathFinder
from pathlib import Path

import pytest
from hypothesis import settings

settings.register_profile("suite", deadline=None, print_blob=True, derandomize=bool(os.environ.get("CI")))
settings.load_profile("suite")


class _NoQt(MetaPathFinder):
    """Refuses to import Qt, as on a machine that has none."""

    def find_spec(self, fullname: str, path: object = None, target: object = None) -> None:
        if fullname.split(".", maxsplit=1)[0] in {"PySide6", "shiboken6", "pyqtgraph"}:
            raise ImportError(f"{fullname} is out of reach in this run: only tests/ui may use Qt")


if os.environ.get("DRYPOINT_TEST_WITHOUT_QT"):
    sys.meta_path.insert(0, _NoQt())


@pytest.fixture(scope="session")
def root() -> Path:
    """Top folder of the project."""
    return Path(__file__).resolve().parents[1]


@pytest.fixture(scope="session")
def corpus(root: Path) -> Path:
    """Folder of open-hardware boards outside the project; skips the test where it is absent."""
    named = os.environ.get("DRYPOINT_CORPUS")
    folder = Path(named) if named else root.parent / "shared" / "boards"
    if not folder.is_dir():
        pytest.skip("no open-hardware boards here (set DRYPOINT_CORPUS)")
    return folder


@pytest.fixture(scope="session")
def hive_scale(root: Path) -> Path:
    """Folder of the demo board's design files."""
    return root / "examples" / "hive-scale"
