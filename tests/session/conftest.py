"""A prepared job of the demo board, made once."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from drypoint.session.commands import prepare
from drypoint.session.session import Session


@pytest.fixture(scope="session")
def prepared(hive_scale: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Job file of the demo board; copy it before changing it."""
    path = tmp_path_factory.mktemp("job") / "hive.drypoint"
    prepare([hive_scale], path)
    return path


@pytest.fixture
def job(prepared: Path, tmp_path: Path) -> Path:
    """A copy of the prepared job."""
    copy = tmp_path / "hive.drypoint"
    shutil.copyfile(prepared, copy)
    return copy


@pytest.fixture
def session(job: Path) -> Iterator[Session]:
    """An open copy of the prepared job."""
    opened = Session.open(job)
    yield opened
    opened.close()


_SMALL = {
    "small-copper-bottom.gbr": "%TF.FileFunction,Copper,L2,Bot*%\n%FSLAX43Y43*%\n%MOMM*%\n%ADD10C,2*%\n"
    "%ADD11C,0.5*%\nG01*\nD10*\nX105000Y55000D03*\nX110000Y55000D03*\nX115000Y55000D03*\n"
    "D11*\nX115000Y55000D02*\nX110000Y55000D01*\nM02*\n",
    "small-outline.gbr": "%TF.FileFunction,Profile,NP*%\n%FSLAX43Y43*%\n%MOMM*%\n%ADD10C,0.1*%\nG01*\n"
    "D10*\nX100000Y50000D02*\nX120000Y50000D01*\nX120000Y60000D01*\nX100000Y60000D01*\n"
    "X100000Y50000D01*\nM02*\n",
    "small.drl": "M48\nMETRIC\nT1C0.8\n%\nT1\nX105.0Y55.0\nX110.0Y55.0\nX115.0Y55.0\nM30\n",
}


@pytest.fixture
def small_design(tmp_path: Path) -> Path:
    """A board of 20 × 10 mm, bottom copper: pads at x 5 and 10 joined, one at 15 alone, all at y 5."""
    folder = tmp_path / "small"
    folder.mkdir()
    for name, text in _SMALL.items():
        (folder / name).write_text(text)
    return folder


@pytest.fixture
def small_job(small_design: Path, tmp_path: Path) -> Path:
    """The small board as a job."""
    prepare([small_design], tmp_path / "small.drypoint")
    return tmp_path / "small.drypoint"
