"""Roles: by attribute, then job file, then name; drawings are not mistaken for layers."""

from __future__ import annotations

import json

import pytest

from drypoint.board.model import Role
from drypoint.board.role_names import role_of_name
from drypoint.board.roles import ASKED, recognise_files

LAYER = b"%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,1*%\nD10*\nX0Y0D03*\nM02*\n"
DRILL = b"M48\nMETRIC\nT1C0.8\n%\nT1\nX1.0Y1.0\nM30\n"


def roles_of(files: dict[str, bytes]) -> dict[str, Role]:
    return {item.name: item.role for item in recognise_files(files)}


@pytest.mark.parametrize(
    ("function", "role"),
    [
        # values of .FileFunction in the Gerber Layer Format Specification, revision 2021.02, 5.6.3
        ("Copper,L1,Top", Role.COPPER_TOP),
        ("Copper,L4,Bot,Signal", Role.COPPER_BOTTOM),
        ("Copper,L2,Inr", Role.COPPER_INNER),
        ("Profile,NP", Role.OUTLINE),
        ("Legend,Top", Role.LEGEND_TOP),
        ("Legend,Bot,1", Role.LEGEND_BOTTOM),
        ("Soldermask,Top", Role.OTHER),
        ("Paste,Bot", Role.OTHER),
        ("Drillmap", Role.OTHER),
        ("Plated,1,2,PTH", Role.DRILL_PLATED),
        ("NonPlated,1,2,NPTH", Role.DRILL_UNPLATED),
    ],
)
@pytest.mark.parametrize("form", ["%TF.FileFunction,{}*%", "G04 #@! TF.FileFunction,{}*"])
def test_attributes_win_over_names(function: str, role: Role, form: str) -> None:
    files = {"soldermask_top.gbr": form.format(function).encode() + b"\n" + LAYER}
    assert roles_of(files) == {"soldermask_top.gbr": role}


def test_the_job_file_wins_over_names() -> None:
    job = {"FilesAttributes": [{"Path": "out/one.gbr", "FileFunction": "Copper,L2,Bot"}]}
    files = {"one.gbr": LAYER, "x.gbrjob": json.dumps(job).encode()}
    assert roles_of(files)["one.gbr"] is Role.COPPER_BOTTOM


@pytest.mark.parametrize("job", [b"{", b'{"FilesAttributes": 3}', b'{"FilesAttributes": [1]}', b"{" * 50_000])
def test_a_damaged_job_file_does_no_harm(job: bytes) -> None:
    assert roles_of({"b.gbl": LAYER, "x.gbrjob": job})["b.gbl"] is Role.COPPER_BOTTOM


@pytest.mark.parametrize(
    ("name", "role"),
    [
        ("board.GTL", Role.COPPER_TOP),
        ("board.gbl", Role.COPPER_BOTTOM),
        ("board-B_Cu.gbr", Role.COPPER_BOTTOM),
        ("board-F_Cu.gbr", Role.COPPER_TOP),
        ("board-In1_Cu.gbr", Role.COPPER_INNER),
        ("board_Bottom.gbr", Role.COPPER_BOTTOM),
        ("board_BottomMask.gbr", Role.OTHER),
        ("board_TopSilk.gbr", Role.LEGEND_TOP),
        ("board_BoardOutline.gbr", Role.OUTLINE),
        ("Edge_Cuts.gbr", Role.OUTLINE),
        ("DrillDrawing.gdo", Role.OTHER),
        ("board-drl_map.gbr", Role.OTHER),
        ("board-PTH-drl_map.gbr", Role.OTHER),
        ("board.fab.gbr", Role.OTHER),
        ("top_assembly.gbr", Role.OTHER),
        ("laptop_bottom.gbr", Role.COPPER_BOTTOM),
        ("bottle_top.gbr", Role.COPPER_TOP),
        ("cube.gbr", None),
        ("fabulous.gbr", None),
    ],
)
def test_names(name: str, role: Role | None) -> None:
    assert role_of_name(name) is role


def test_numbered_layers() -> None:
    found = roles_of({"lyr1.art": LAYER, "lyr2.art": LAYER, "lyr10.art": LAYER})
    assert list(found.values()) == [Role.COPPER_TOP, Role.COPPER_INNER, Role.COPPER_BOTTOM]


def test_kinds_by_content_whatever_the_name() -> None:
    found = roles_of(
        {
            "a.txt": DRILL,
            "b.gbr": DRILL,
            "c.txt": b"P  UNITS CUST 1\n317A                J1    -1    D0800PA00X+001000Y+002000\n999\n",
            "d.txt": b"G21\nG90\nG0 X1 Y1 Z5\nG1 Z-1 F100\n",
            "e.txt": b"The licence of this board is free.\n",
            "f.bin": bytes(range(256)),
            "g.gbl": b"",
        }
    )
    assert list(found.values()) == [
        Role.DRILL, Role.DRILL, Role.NETLIST, Role.GCODE, Role.OTHER, Role.OTHER, Role.OTHER,
    ]  # fmt: skip


def test_of_two_outlines_one_is_chosen_and_the_other_says_so() -> None:
    found = {item.name: item for item in recognise_files({"a.GKO": LAYER, "a.gm1": LAYER})}
    assert found["a.GKO"].role is Role.OUTLINE
    assert found["a.gm1"].role is Role.OTHER
    assert "a.GKO" in found["a.gm1"].reason


def test_what_says_nothing_is_asked() -> None:
    assert recognise_files({"group5.gbr": LAYER})[0].reason == ASKED
