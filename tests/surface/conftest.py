"""Sheets and grooves for the surface's tests."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

sys.path.insert(0, str(Path(__file__).parent))
from rda import read_rda


@pytest.fixture
def rippled():
    """A function from (N, 2) places to heights: tilt, bow and two waves, mm."""

    def height(p: NDArray[np.float64]) -> NDArray[np.float64]:
        x, y = p[:, 0], p[:, 1]
        return 0.001 * x - 0.0005 * y + 2e-5 * (x - 50) ** 2 + 0.012 * np.sin(0.5 * x) * np.cos(0.4 * y)

    return height


@pytest.fixture
def loops():
    """Closed round grooves in a 100 × 80 mm board."""
    rng = np.random.default_rng(3)
    angle = np.linspace(0.0, 2.0 * np.pi, 25)
    lines = []
    for centre in rng.random((60, 2)) * (88.0, 68.0) + 6.0:
        line = centre + rng.uniform(1.0, 3.0) * np.column_stack((np.cos(angle), np.sin(angle)))
        line[-1] = line[0]
        lines.append(line)
    return lines


@pytest.fixture(scope="session")
def r_data():
    """Reads a data file of an R package, or skips where it is not installed.

    Looked for where Debian puts R packages, and in the folders that DRYPOINT_R_DATA names (such as
    a package unpacked with ``dpkg-deb -x``); R itself is not needed.
    """
    roots = [Path("/"), *(Path(p) for p in os.environ.get("DRYPOINT_R_DATA", "").split(os.pathsep) if p)]

    def read(package, name):
        for root in roots:
            for library in ("usr/lib/R/site-library", "usr/lib/R/library"):
                file = root / library / package / "data" / name
                if file.exists():
                    return read_rda(file)
        return pytest.skip(f"{name} comes with the R package {package}, which is not installed")

    return read
