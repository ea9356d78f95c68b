"""Prepare, show, export and rehearse on open-hardware boards that lie outside the project."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from drypoint.__main__ import main

pytestmark = pytest.mark.corpus

BOARDS = {
    # name: nets by the files' own attributes or None, holes and slots counted in the drill files
    "motorjst": (6, 12, 0),
    "stepper-lights-driver": (None, 71, 0),
    "gyw-electro": (None, 39, 0),
    "fd1-keyboard": (None, 106, 0),
    "herovco-front": (None, 200, 10),
}


def _run(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> dict[str, object]:
    assert main([*arguments, "--json"]) == 0
    found: dict[str, object] = json.loads(capsys.readouterr().out)
    return found


@pytest.mark.parametrize("name", BOARDS)
def test_prepared_shown_and_exported(
    corpus: Path, name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    job = tmp_path / f"{name}.drypoint"
    found = _run(["prepare", str(corpus / name), "--job", str(job)], capsys)
    board, check = found["board"], found["island_check"]
    nets, holes, slots = BOARDS[name]
    assert (board["holes"], board["slots"]) == (holes, slots)  # type: ignore[index]
    if nets is not None:
        assert board["nets"] == nets  # type: ignore[index]
    if name != "herovco-front":  # that design has two nets on one piece of copper
        assert check["shorts"] == check["opens"] == check["lost"] == []  # type: ignore[index]
    shown = _run(["show", str(job)], capsys)
    assert all(file["why"] for file in shown["files"])  # type: ignore[attr-defined]
    files = _run(["export", str(job), "--to", str(tmp_path / "out")], capsys)["files"]
    assert all(Path(one["path"]).is_file() and one["lines"] > 5 for one in files)  # type: ignore[attr-defined]


@pytest.mark.parametrize("name", ["motorjst", "gyw-electro"])
def test_rehearsed(corpus: Path, name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The larger three take minutes and are rehearsed by hand."""
    job = tmp_path / f"{name}.drypoint"
    _run(["prepare", str(corpus / name), "--job", str(job)], capsys)
    found = _run(["rehearse", str(job), "--touches", "40"], capsys)
    check = found["island_check"]
    assert check["pieces"] == check["nets"]  # type: ignore[index]
    assert check["shorts"] == check["opens"] == check["lost"] == []  # type: ignore[index]
    assert found["findings"] == []
