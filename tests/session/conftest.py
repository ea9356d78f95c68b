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
