"""Small designs made on the spot, and the demo board."""

from __future__ import annotations

import importlib.util
import sys
from collections.abc import Callable
from pathlib import Path
from types import ModuleType

import pytest

from drypoint.board.load import load_board
from drypoint.board.model import Board


@pytest.fixture(scope="session")
def demo(hive_scale: Path) -> Board:
    """The demo board, bottom to be milled."""
    return load_board([hive_scale])


@pytest.fixture(scope="session")
def demo_source(root: Path) -> ModuleType:
    """The generator of the demo board: the design itself."""
    return _loaded(root / "examples" / "make_hive_scale.py")


@pytest.fixture(scope="session")
def two_sided_source(root: Path) -> ModuleType:
    """The generator of the two-sided example."""
    return _loaded(root / "examples" / "make_frost_bell.py")


def _loaded(path: Path) -> ModuleType:
    """A generator, which imports what lies beside it."""
    if str(path.parent) not in sys.path:
        sys.path.append(str(path.parent))
    spec = importlib.util.spec_from_file_location(path.stem, path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[path.stem] = module
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="session")
def gerber() -> Callable[..., str]:
    """A Gerber file in mm, format 4.6, of body lines; places as ``X1.5Y2`` in whole numbers of µm."""

    def make(*body: str, function: str = "", apertures: str = "%ADD10C,1*%\n%ADD11C,0.5*%\n") -> str:
        head = f"%TF.FileFunction,{function}*%\n" if function else ""
        lines = "\n".join(body)
        return f"{head}%FSLAX43Y43*%\n%MOMM*%\n{apertures}G75*\nG01*\n{lines}\nM02*\n"

    return make
