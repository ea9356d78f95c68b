"""Open-hardware boards that lie outside the project: size, holes, nets and roles.

Sizes are read off the corner coordinates of each outline file, hole counts off the drill files (lines
of places counted by hand with a text search, or the counts their programs wrote beside them).
"""

from __future__ import annotations

from pathlib import Path

import pytest

from drypoint.board.load import load_board, recognise
from drypoint.board.model import Board, Role

pytestmark = pytest.mark.corpus

# width, height (None: no outline file), holes, slots, nets (None: not counted elsewhere), their source
FACTS: dict[str, tuple[float | None, float | None, int, int, int | None, str]] = {
    "fd1-keyboard": (55.88, 80.01, 106, 0, None, "touching"),
    "gyw-electro": (62.21, 21.26, 39, 0, None, "touching"),
    "motorjst": (17.5, 19.5, 12, 0, 6, "attributes"),
    "stepper-lights-driver": (45.72, 76.2, 71, 0, None, "touching"),
    "herovco-front": (94.002, 125.002, 200, 10, None, "attributes"),
    "emonpi2c": (None, None, 85, 0, None, "touching"),
    "fd1-mainboard": (85.25, 53.34, 168, 0, None, "touching"),
    "g4-arena-top": (228.6, 228.6, 194, 0, 159, "attributes"),
    "lasmo": (123.0, 70.0, 303, 9, None, "touching"),
    "analog-gyro": (96.962, 97.937, 482, 0, None, "touching"),
    "a64-olinuxino": (90.0, 62.5, 1265, 13, None, "attributes"),
    "minnowmax": (None, None, 1991, 9, None, "netlist"),
}

ROLES: dict[str, dict[Role, set[str]]] = {
    "fd1-keyboard": {
        Role.COPPER_BOTTOM: {"keyboard_Bottom.gbr"},
        Role.OUTLINE: {"keyboard_BoardOutline.gbr"},
        Role.LEGEND_BOTTOM: {"keyboard_BottomSilk.gbr"},
        Role.DRILL: {"keyboard.drl"},
    },
    "stepper-lights-driver": {
        Role.COPPER_BOTTOM: {"driver.bottom.gbr"},
        Role.COPPER_TOP: {"driver.top.gbr"},
        Role.LEGEND_TOP: {"driver.topsilk.gbr"},
        Role.DRILL_PLATED: {"driver.plated-drill.cnc"},
        Role.DRILL_UNPLATED: {"driver.unplated-drill.cnc"},
    },
    "lasmo": {
        Role.COPPER_BOTTOM: {"EtchLayerBottom.gdo"},
        Role.COPPER_TOP: {"EtchLayerTop.gdo"},
        Role.OUTLINE: {"BoardOutlline.gdo"},
        Role.DRILL_PLATED: {"ContourPlated.ncd", "ThruHolePlated.ncd"},
        Role.DRILL_UNPLATED: {"ThruHoleNonPlated.ncd"},
    },
    "minnowmax": {
        Role.COPPER_TOP: {"MinnowMax_lyr1_GAF.art"},
        Role.COPPER_BOTTOM: {"MinnowMax_lyr10_GAF.art"},
        Role.NETLIST: {"MinnowMax_RevA1_IPC356A.ipc"},
        Role.DRILL: {"MinnowMax_RevA1_NCDRILL.drl", "MinnowMax_RevA1_NCROUTE.rou"},
    },
    "emonpi2c": {
        Role.COPPER_TOP: {"emonPi2C_V1.2.GTL"},
        Role.COPPER_BOTTOM: {"emonPi2C_V1.2.GBL"},
        Role.LEGEND_TOP: {"emonPi2C_V1.2.GTO"},
        Role.LEGEND_BOTTOM: {"emonPi2C_V1.2.GBO"},
        Role.DRILL: {"emonPi2C_V1.2.TXT"},
    },
    "analog-gyro": {
        Role.COPPER_TOP: {"combined.gtl"},
        Role.COPPER_BOTTOM: {"combined.gbl"},
        Role.OUTLINE: {"combined.GKO"},
        Role.LEGEND_TOP: {"combined.gto"},
        Role.LEGEND_BOTTOM: {"combined.gbo"},
        Role.DRILL: {"combined.txt"},
    },
}


def board_folder(corpus: Path, name: str) -> Path:
    folder = corpus / name
    if not folder.is_dir():
        pytest.skip(f"{name} is not there")
    return folder


@pytest.mark.parametrize("name", FACTS)
def test_size_holes_and_nets(corpus: Path, name: str) -> None:
    width, height, holes, slots, nets, source = FACTS[name]
    board = load_board([board_folder(corpus, name)])
    if width is None:
        assert "no outline" in {item.kind for item in board.findings}
    else:
        assert (board.width, board.height) == pytest.approx((width, height), abs=0.005)
    assert (len(board.holes), len(board.slots)) == (holes, slots)
    assert board.net_source == source
    if nets is not None:
        assert len(board.nets) == nets
    _plated_holes_lie_on_copper(board)


def _plated_holes_lie_on_copper(board: Board) -> None:
    plated = [hole for hole in board.holes if hole.plated]
    if plated:
        # buried and inner-only copper is not read, so a few may hit nothing
        assert sum(hole.net is not None for hole in plated) >= 0.95 * len(plated)
    assert not [item for item in board.findings if item.kind == "misfit" and "do not fit" in item.what]


@pytest.mark.parametrize("name", ROLES)
def test_roles_of_files_without_attributes(corpus: Path, name: str) -> None:
    found: dict[Role, set[str]] = {}
    for item in recognise([board_folder(corpus, name)]):
        if item.role not in (Role.OTHER, Role.JOB):
            found.setdefault(item.role, set()).add(item.name)
    assert found == ROLES[name]


@pytest.mark.parametrize(
    "name", ["a64-olinuxino", "motorjst", "herovco-front", "g4-arena-top", "gyw-electro"]
)
def test_attributes_and_names_agree(corpus: Path, name: str) -> None:
    """One board's names are an independent witness of its attributes."""
    for item in recognise([board_folder(corpus, name)]):
        base = item.name.lower()
        if "mask" in base or "paste" in base or "map" in base:
            assert item.role is Role.OTHER
        elif "b_cu" in base or "cubottom" in base or "copper_bottom" in base:
            assert item.role is Role.COPPER_BOTTOM
        elif "f_cu" in base or "cutop" in base or "copper_top" in base:
            assert item.role is Role.COPPER_TOP
        elif "edge" in base or "profile" in base:
            assert item.role is Role.OUTLINE


def test_real_faults_of_designs_are_reported(corpus: Path) -> None:
    board = load_board([board_folder(corpus, "herovco-front")])
    shorts = [item for item in board.findings if item.kind == "short"]
    assert [set(item.nets) for item in shorts] == [{"Board_0-GND", "Board_0--12V"}]
