"""Processes of this very program, joined to the one that started them by a pair of pipes."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

POLITE = 5
"""How much a child steps back behind the window where both want the processor (nice value)."""


def start_child(module: str) -> subprocess.Popen[bytes]:
    """``python -m module`` with pipes for input and output, importing this very program."""
    package = str(Path(__file__).resolve().parents[2])
    paths = [package, *filter(None, [os.environ.get("PYTHONPATH")])]
    return subprocess.Popen(
        [sys.executable, "-m", module],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(paths)},
    )


def step_back() -> None:
    """Called in a child: let the window have the processor first."""
    if hasattr(os, "nice"):
        os.nice(POLITE)
