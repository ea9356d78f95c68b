"""Gerber layers of open-hardware boards, and a list of cases, that lie outside the project.

They are looked for where DRYPOINT_CORPUS says (a folder with one folder per board), or else in
folders ``shared/boards`` and ``shared/cases`` beside the checkout; absent, these tests are skipped.
"""

from __future__ import annotations

import importlib.util
import json
import os
from pathlib import Path
from types import ModuleType

import pytest
import shapely

from drypoint.board.gerber import read_gerber
from drypoint.board.gerber_arcs import CHORD_TOLERANCE
from drypoint.errors import InputError

pytestmark = pytest.mark.corpus

CHECKOUT = Path(__file__).resolve().parents[2]
BOARDS = Path(os.environ.get("DRYPOINT_CORPUS") or CHECKOUT.parent / "shared" / "boards")
CASES = BOARDS.parent / "cases" / "gerber.json"
OTHER_SUFFIXES = {".drl", ".txt", ".ipc", ".rou", ".log", ".gbrjob", ".xln", ".ncd", ".cnc", ".dri", ".gpi"}
LAYERS = sorted(path for path in BOARDS.glob("*/*") if path.suffix.lower() not in OTHER_SUFFIXES)
THEIRS = [path for path in BOARDS.glob("*/*") if path.suffix.lower() in OTHER_SUFFIXES - {".gbrjob"}]

if not LAYERS:
    pytest.skip("no boards here", allow_module_level=True)


def label(path: Path) -> str:
    return f"{path.parent.name}/{path.name}"


@pytest.mark.parametrize("path", LAYERS, ids=label)
def test_every_layer_is_read(path: Path) -> None:
    layer = read_gerber(path)
    assert len(layer) > 0 or "paste" in path.name.lower()
    assert not [warning for warning in layer.warnings if "ICAS" not in warning]
    for name, copper in layer.nets().items():
        assert copper.is_valid, name
        assert not copper.is_empty, name


@pytest.mark.parametrize("path", THEIRS, ids=label)
def test_other_files_are_refused(path: Path) -> None:
    with pytest.raises(InputError) as caught:
        read_gerber(path)
    assert caught.value.where.startswith(path.name)
    assert caught.value.hint


def cases() -> list[dict[str, object]]:
    return json.loads(CASES.read_text()) if CASES.exists() else []


@pytest.mark.parametrize("case", cases(), ids=lambda case: str(case["name"]))
def test_case(case: dict) -> None:
    shape = read_gerber(case["text"]).shape
    assert shape.area == pytest.approx(case["area_mm2"], abs=CHORD_TOLERANCE * shape.length + 1e-9)
    assert shape.bounds == pytest.approx(tuple(case["bbox"]), abs=CHORD_TOLERANCE)
    assert shape.centroid.coords[0] == pytest.approx(tuple(case["centroid"]), abs=CHORD_TOLERANCE)


@pytest.fixture(scope="module")
def reference() -> ModuleType:
    pytest.importorskip("gerbonara")
    spec = importlib.util.spec_from_file_location(
        "gerber_reference", Path(__file__).with_name("gerber_reference.py")
    )
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


PATTERNS = (
    "fd1-*/*.gbr",
    "g4-*/*_Cu.*",
    "g4-*/*_Mask.*",
    "herovco*/*Cu[TB]*",
    "lasmo/Etch*",
    "stepper*/driver.bottom.gbr",
    "motorjst/*_Cu.*",
    "analog*/combined.gbl",
    "minnowmax/*lyr10*",
)
COMPARED = [path for pattern in PATTERNS for path in sorted(BOARDS.glob(pattern))]
"""Left out: layers with turned regular polygons (gerbonara 1.5.0 turns them by another angle) and
draws with rectangular apertures (it draws them round)."""


@pytest.mark.parametrize("path", COMPARED, ids=label)
def test_agrees_with_an_independent_library(path: Path, reference: ModuleType) -> None:
    fine = 0.0002  # mm: thin lines of two coarser polygonal outlines would differ by more than 0.1 %
    theirs = reference.image(*reference.primitives(reference.parse(path), fine))
    ours = read_gerber(path, tolerance=fine).shape
    assert ours.symmetric_difference(theirs).area <= 0.001 * theirs.area


@pytest.mark.parametrize(
    "path", sorted(BOARDS.glob("motorjst/*_Cu.*")) + sorted(BOARDS.glob("hero*/*Cu[TB]*")), ids=label
)
def test_nets_cover_the_layer(path: Path) -> None:
    layer = read_gerber(path)
    nets = layer.nets()
    assert nets
    together = shapely.union_all([*nets.values(), layer.without_net()])
    assert together.symmetric_difference(layer.shape).area < 1e-6
