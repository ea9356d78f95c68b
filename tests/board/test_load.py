"""Boards put together from small designs whose truth follows by construction."""

from __future__ import annotations

import zipfile
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.board.load import load_board, load_board_from_bytes, recognise
from drypoint.board.model import Board, Role, Side
from drypoint.errors import InputError
from drypoint.progress import Cancelled, Progress

Make = Callable[..., str]

EDGE = ["D11*", "X100000Y200000D02*", "X140000D01*", "Y230000D01*", "X100000D01*", "Y200000D01*"]


def flash(x: float, y: float) -> str:
    return f"X{round(x * 1000)}Y{round(y * 1000)}D03*"


def track(x0: float, y0: float, x1: float, y1: float) -> list[str]:
    return [
        f"X{round(x0 * 1000)}Y{round(y0 * 1000)}D02*",
        f"X{round(x1 * 1000)}Y{round(y1 * 1000)}D01*",
    ]


def drill(*places: tuple[float, float], plated: bool = True) -> bytes:
    function = "Plated,1,2,PTH" if plated else "NonPlated,1,2,NPTH"
    body = "\n".join(f"X{x:.3f}Y{y:.3f}" for x, y in places)
    return f"M48\n; #@! TF.FileFunction,{function}\nMETRIC\nT1C0.4\n%\nT1\n{body}\nM30\n".encode()


@pytest.fixture
def two_pads(gerber: Make) -> dict[str, bytes]:
    """Two pads joined by a track on the top only, a third alone; board 40 x 30 at (100, 200)."""
    bottom = gerber("D10*", flash(110, 210), flash(130, 210), flash(120, 225), function="Copper,L2,Bot")
    top = gerber("D10*", flash(110, 210), flash(130, 210), "D11*", *track(110, 210, 130, 210),
                 function="Copper,L1,Top")  # fmt: skip
    return {
        "b.gbr": bottom.encode(),
        "t.gbr": top.encode(),
        "e.gbr": gerber(*EDGE, function="Profile,NP").encode(),
        "p.drl": drill((110, 210), (130, 210), (120, 225)),
    }


def kinds(board: Board) -> list[str]:
    return [item.kind for item in board.findings]


def test_the_bottom_is_mirrored_once_with_its_origin_at_the_lower_left(two_pads: dict[str, bytes]) -> None:
    board = load_board_from_bytes(two_pads)
    assert (board.width, board.height) == pytest.approx((40.0, 30.0))
    assert [(h.x, h.y) for h in board.holes] == [
        pytest.approx((30.0, 10.0)), pytest.approx((10.0, 10.0)), pytest.approx((20.0, 25.0)),
    ]  # fmt: skip
    design = board.to_design.apply([(h.x, h.y) for h in board.holes])
    assert design == pytest.approx(np.array([(110.0, 210.0), (130.0, 210.0), (120.0, 225.0)]))


def test_the_top_is_not_mirrored(two_pads: dict[str, bytes]) -> None:
    board = load_board_from_bytes(two_pads, side=Side.TOP)
    assert (board.holes[0].x, board.holes[0].y) == pytest.approx((10.0, 10.0))
    design = board.to_design.apply([(10.0, 10.0)])
    assert design[0] == pytest.approx((110.0, 210.0))
    assert not board.to_design.mirror


def test_touching_copper_joined_by_holes_is_one_net_and_needs_a_link(two_pads: dict[str, bytes]) -> None:
    board = load_board_from_bytes(two_pads)
    assert board.net_source == "touching"
    assert len(board.nets) == 2
    pair, single = board.holes[0].net, board.holes[2].net
    assert board.holes[1].net == pair
    assert single not in (None, pair)
    assert [(wire.net, wire.length) for wire in board.links] == [(pair, pytest.approx(20.0))]
    assert not board.links[0].insulated
    assert "through" in kinds(board)


def test_without_plating_copper_of_the_two_sides_stays_apart(two_pads: dict[str, bytes]) -> None:
    two_pads["p.drl"] = drill((110, 210), (130, 210), (120, 225), plated=False)
    board = load_board_from_bytes(two_pads)
    assert len(board.nets) == 3
    assert board.links == ()


def test_a_link_over_foreign_leads_is_insulated(two_pads: dict[str, bytes], gerber: Make) -> None:
    bottom = gerber("D10*", flash(110, 210), flash(130, 210), flash(120, 210), function="Copper,L2,Bot")
    top = gerber("D11*", *track(110, 210, 110, 215), *track(110, 215, 130, 215), *track(130, 215, 130, 210),
                 function="Copper,L1,Top")  # fmt: skip
    two_pads |= {"b.gbr": bottom.encode(), "t.gbr": top.encode()}
    two_pads["p.drl"] = drill((110, 210), (130, 210), (120, 210))
    (wire,) = load_board_from_bytes(two_pads).links
    assert wire.insulated
    assert wire.length == pytest.approx(20.0)


def test_crossing_links_are_insulated(two_pads: dict[str, bytes], gerber: Make) -> None:
    ends = [(110, 215), (130, 215), (120, 205), (120, 225)]
    bottom = gerber("D10*", *(flash(*end) for end in ends), function="Copper,L2,Bot")
    # a design would go round; two straight tracks drawn as two nets by their attributes
    top = gerber("%TO.N,A*%", "D11*", *track(110, 215, 130, 215), "%TO.N,B*%", *track(120, 205, 120, 225),
                 function="Copper,L1,Top")  # fmt: skip
    named = bottom.replace(flash(*ends[0]), "%TO.N,A*%\n" + flash(*ends[0])).replace(
        flash(*ends[2]), "%TO.N,B*%\n" + flash(*ends[2])
    )
    two_pads |= {"b.gbr": named.encode(), "t.gbr": top.encode(), "p.drl": drill(*ends)}
    board = load_board_from_bytes(two_pads)
    assert {(wire.net, wire.insulated) for wire in board.links} == {("A", True), ("B", True)}


def test_names_from_a_netlist_by_position(two_pads: dict[str, bytes]) -> None:
    record = "317{:<14}   {:<6}-{:<4} D0400PA00X{:+07d}Y{:+07d}X1000Y0000R000 S0"
    lines = [
        "P  UNITS CUST 1",
        record.format("VCC", "J1", "1", 110000, 210000),
        record.format("GND", "J1", "2", 120000, 225000),
        "999",
    ]
    board = load_board_from_bytes(two_pads | {"n.ipc": "\n".join(lines).encode()})
    assert board.net_source == "netlist"
    assert [hole.net for hole in board.holes] == ["VCC", "VCC", "GND"]


def test_two_names_on_one_piece_are_a_short_not_a_guess(two_pads: dict[str, bytes]) -> None:
    record = "317{:<14}   {:<6}-{:<4} D0400PA00X{:+07d}Y{:+07d}X1000Y0000R000 S0"
    lines = [
        "P  UNITS CUST 1",
        record.format("VCC", "J1", "1", 110000, 210000),
        record.format("VDD", "J1", "2", 130000, 210000),
        "999",
    ]
    board = load_board_from_bytes(two_pads | {"n.ipc": "\n".join(lines).encode()})
    (short,) = [item for item in board.findings if item.kind == "short"]
    assert set(short.nets) == {"VCC", "VDD"}


def test_overlapping_nets_of_attributes_are_reported_where_they_meet(
    two_pads: dict[str, bytes], gerber: Make
) -> None:
    body = [
        "D10*",
        "%TO.N,A*%",
        flash(110, 210),
        "%TO.N,B*%",
        flash(110.8, 210),
        "%TO.N,C*%",
        flash(130, 210),
    ]
    two_pads["b.gbr"] = gerber(*body, function="Copper,L2,Bot").encode()
    board = load_board_from_bytes(two_pads)
    (short,) = [item for item in board.findings if item.kind == "short"]
    assert short.nets == ("A", "B")
    assert short.at == pytest.approx((40 - 10.4, 10.0), abs=0.3)


def test_copper_of_no_net_that_joins_two_is_a_tie(two_pads: dict[str, bytes], gerber: Make) -> None:
    body = ["D10*", "%TO.N,A*%", flash(110, 210), "%TO.N,B*%", flash(112, 210), "%TD*%", "D11*",
            *track(110, 210, 112, 210)]  # fmt: skip
    two_pads["b.gbr"] = gerber(*body, function="Copper,L2,Bot").encode()
    board = load_board_from_bytes(two_pads)
    (tie,) = [item for item in board.findings if item.kind == "tie"]
    assert tie.nets == ("A", "B")


def test_other_names_in_a_netlist_beside_attributes_are_reported(hive_scale: Path) -> None:
    files = {path.name: path.read_bytes() for path in hive_scale.iterdir()}
    files["hive-scale-netlist.ipc"] = files["hive-scale-netlist.ipc"].replace(b"317VBAT ", b"317VBUS ")
    findings = [item for item in load_board_from_bytes(files).findings if item.kind == "net name"]
    assert findings
    assert "VBUS" in findings[0].what
    assert findings[0].nets == ("VBAT",)


def test_a_missing_outline_is_offered_round_the_copper(two_pads: dict[str, bytes]) -> None:
    del two_pads["e.gbr"]
    board = load_board_from_bytes(two_pads)
    assert "no outline" in kinds(board)
    assert (board.width, board.height) == pytest.approx((21 + 2, 16 + 2))


def test_drill_files_of_another_board_do_not_fit(two_pads: dict[str, bytes]) -> None:
    two_pads["p.drl"] = drill((111, 211), (131, 211), (121, 226), (90, 190))
    found = [item.what for item in load_board_from_bytes(two_pads).findings if item.kind == "misfit"]
    assert any("0 of 4 holes" in what for what in found)
    assert any("1 holes lie outside" in what for what in found)


@pytest.mark.parametrize("how", ["mirrored", "moved"])
def test_a_layer_that_does_not_lie_on_the_holes_is_told_from_one_that_does(
    two_pads: dict[str, bytes], gerber: Make, how: str
) -> None:
    places = [(105, 205), (112, 222), (118, 209), (131, 215)]
    wrong = [(240 - x, y) for x, y in places] if how == "mirrored" else [(x + 4, y - 3) for x, y in places]
    two_pads["b.gbr"] = gerber("D10*", *(flash(*p) for p in places), function="Copper,L2,Bot").encode()
    two_pads["t.gbr"] = gerber("D10*", *(flash(*p) for p in wrong), function="Copper,L1,Top").encode()
    two_pads["p.drl"] = drill(*places)
    found = [item.what for item in load_board_from_bytes(two_pads).findings if item.kind == "misfit"]
    assert len(found) == 1
    assert "other side" in found[0]
    # seen from the bottom x is mirrored, so back by +4 there and +3 in y
    assert ("mirrored" in found[0]) if how == "mirrored" else ("4.0, 3.0 mm" in found[0])


def test_copper_beyond_the_outline_is_reported(two_pads: dict[str, bytes], gerber: Make) -> None:
    two_pads["b.gbr"] = gerber("D11*", *track(110, 210, 150, 210), function="Copper,L2,Bot").encode()
    assert "misfit" in kinds(load_board_from_bytes(two_pads))


def test_the_number_format_is_decided_by_the_pads_and_said(two_pads: dict[str, bytes]) -> None:
    two_pads["p.drl"] = b"M48\nMETRIC\nT1C0.4\n%\nT1\nX11Y21\nX13Y21\nX12Y225\nM30\n"
    board = load_board_from_bytes(two_pads)
    assert [hole.net is not None for hole in board.holes] == [True] * 3
    (said,) = [item for item in board.findings if item.kind == "number format"]
    assert "proved by the pads" in said.what


def test_drill_files_in_gerber_form(two_pads: dict[str, bytes], gerber: Make) -> None:
    body = ["D11*", flash(110, 210), *track(120, 225, 122, 225)]
    two_pads["p.drl"] = gerber(*body, function="Plated,1,2,PTH").encode()
    board = load_board_from_bytes(two_pads)
    assert [(h.diameter, h.plated) for h in board.holes] == [(0.5, True)]
    assert [(s.diameter, s.plated) for s in board.slots] == [(0.5, True)]


def test_roles_chosen_by_hand_overrule(two_pads: dict[str, bytes]) -> None:
    board = load_board_from_bytes(two_pads, roles={"t.gbr": Role.OTHER})
    assert board.other_copper == {}
    assert {item.name: item.reason for item in board.files}["t.gbr"] == "chosen by hand"


def test_copper_that_is_missing_is_a_clear_error(two_pads: dict[str, bytes]) -> None:
    del two_pads["b.gbr"]
    with pytest.raises(InputError, match="copper of the bottom") as caught:
        load_board_from_bytes(two_pads)
    assert "top" in caught.value.hint


@pytest.mark.parametrize(
    "data",
    [b"", b"\x00\x01", b"%FSLAX43Y43*%\n%MOMM*%\nD99*\nX0Y0D03*\nM02*\n", b"%FSLAX43Y43*%\nX1D"],
)
def test_a_damaged_copper_file_is_a_clear_error(two_pads: dict[str, bytes], data: bytes) -> None:
    with pytest.raises(InputError) as caught:
        load_board_from_bytes(two_pads | {"b.gbr": data}, roles={"b.gbr": Role.COPPER_BOTTOM})
    assert "b.gbr" in caught.value.where


def test_a_folder_its_files_and_a_zip_give_one_board(tmp_path: Path, two_pads: dict[str, bytes]) -> None:
    folder = tmp_path / "feeder"
    folder.mkdir()
    with zipfile.ZipFile(tmp_path / "feeder.zip", "w") as archive:
        for name, data in two_pads.items():
            (folder / name).write_bytes(data)
            archive.writestr(f"out/{name}", data)
    boards = [
        load_board([folder]),
        load_board([tmp_path / "feeder.zip"]),
        load_board(sorted(folder.iterdir())),
    ]
    assert [board.name for board in boards] == ["feeder"] * 3
    for board in boards[1:]:
        assert board.holes == boards[0].holes
        for net, shape in board.nets.items():
            assert shapely.equals_exact(shape, boards[0].nets[net])
    assert [item.role for item in recognise([folder])] == [item.role for item in boards[0].files]


def test_work_can_be_cancelled(hive_scale: Path) -> None:
    progress = Progress()
    progress.cancel()
    with pytest.raises(Cancelled):
        load_board([hive_scale], progress=progress)


@settings(max_examples=40)
@given(st.integers(0, 6), st.floats(0.0, 1.0), st.integers(0, 60), st.binary(max_size=20))
def test_a_damaged_demo_file_ends_in_an_input_error_or_a_board(
    hive_scale: Path, which: int, at: float, cut: int, junk: bytes
) -> None:
    files = {path.name: path.read_bytes() for path in sorted(hive_scale.iterdir())}
    name = sorted(files)[which]
    data = files[name]
    start = int(at * len(data))
    files[name] = data[:start] + junk + data[start + cut :]
    try:
        board = load_board_from_bytes(files)
    except InputError as error:
        said = error.what
    else:
        said = board.name
    assert said
