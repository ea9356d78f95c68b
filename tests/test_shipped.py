"""What is no code is found in a checkout and where an installer has put it; nothing is left out."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from drypoint import shipped as module
from drypoint.shipped import shipped

ROOT = Path(__file__).resolve().parents[1]


def test_a_checkout_has_them_beside_the_code() -> None:
    assert shipped("resources") == ROOT / "resources"
    assert (shipped("examples") / "hive-scale").is_dir()


def test_all_that_is_read_is_installed() -> None:
    listed = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    rows = listed["tool"]["setuptools"]["data-files"]
    found = {
        f"{folder}/{path.name}": path
        for folder, globs in rows.items()
        for one in globs
        for path in ROOT.glob(one)
    }
    needed = [ROOT / "resources" / "machines.json", *(ROOT / "resources" / "translations").iterdir()]
    needed += [path for path in (ROOT / "examples").glob("*/*") if path.parent.name != "__pycache__"]
    assert found == {f"share/drypoint/{path.relative_to(ROOT).as_posix()}": path for path in needed}


def test_installed_they_are_found_by_what_the_installer_wrote(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    site, share = tmp_path / "lib" / "site", tmp_path / "share" / "drypoint" / "resources"
    notes = site / "drypoint-9.dist-info"
    for folder in (notes, share):
        folder.mkdir(parents=True)
    (notes / "METADATA").write_text("Metadata-Version: 2.1\nName: drypoint\nVersion: 9\n", encoding="utf-8")
    rows = (
        "drypoint/__init__.py",
        "../../share/drypoint/resources/deep/de.ts",
        "../../share/drypoint/resources/m.json",
    )
    (notes / "RECORD").write_text("".join(f"{row},,\n" for row in rows), encoding="utf-8")
    monkeypatch.syspath_prepend(str(site))
    monkeypatch.setattr(module, "_ROOT", site)
    assert shipped("resources") == share
    assert not shipped("examples").exists()
