"""IPC-D-356A netlists."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.board.model import Side
from drypoint.board.netlist import read_netlist
from drypoint.errors import InputError

# a record shown by artwork.com in its description of IPC-D-356: net +3.3V, J13 pin 2, drilled 0.0400 inch
PUBLISHED = "317+3.3V            J13   -2    D0400PA00X+043550Y+006480"


def test_the_published_record_in_inches() -> None:
    point = read_netlist(f"P  UNITS CUST 0\n{PUBLISHED}\n999\n").points[0]
    assert point.net == "+3.3V"
    assert (point.refdes, point.pin, point.plated) == ("J13", "2", True)
    assert (point.x, point.y) == pytest.approx((4.355 * 25.4, 0.648 * 25.4))
    assert point.diameter == pytest.approx(0.04 * 25.4)
    assert point.side is None


@pytest.mark.parametrize("units", ["CUST 1", "SI"])
def test_the_same_record_in_thousandths_of_a_millimetre(units: str) -> None:
    point = read_netlist(f"P  UNITS {units}\n{PUBLISHED}\n999\n").points[0]
    assert (point.x, point.y, point.diameter) == pytest.approx((43.55, 6.48, 0.4))


def test_sides_and_unconnected_pads() -> None:
    lines = [
        "P  UNITS CUST 1",
        f"327{'A':14}   {'R1':6}-{'1':4} {'':6}A01X+001000Y+002000X0500Y0500R000 S1",
        f"327{'B':14}   {'R1':6}-{'2':4} {'':6}A02X+001000Y+003000X0500Y0500R000 S2",
        f"367{'N/C':14}   {'MH1':6}-{'1':4} D3200UA00X+005000Y+005000X3200Y0000R000 S0",
        "999",
    ]
    a, b, c = read_netlist("\n".join(lines) + "\n").points
    assert (a.side, b.side, c.side) == (Side.TOP, Side.BOTTOM, None)
    assert (c.net, c.plated) == (None, False)


def test_columns_are_used_to_their_last_character() -> None:
    """Net 4 to 17, reference 21 to 26, pin 28 to 31, as in the published record; here all are full."""
    text = "P  UNITS CUST 1\n317ABCDEFGHIJKLMN   REF123-P123MD0800UA00X+001000Y+002000\n999\n"
    (point,) = read_netlist(text).points
    assert (point.net, point.refdes, point.pin) == ("ABCDEFGHIJKLMN", "REF123", "P123")
    assert (point.plated, point.diameter) == (False, pytest.approx(0.8))


def test_access_from_both_sides_and_from_the_last_of_several_layers() -> None:
    rows = [
        f"327{'A':14}   {'R1':6}-{'1':4} {'':6}A{code}X+001000Y+002000" for code in ("00", "01", "02", "04")
    ]
    points = read_netlist("\n".join(["P  UNITS CUST 1", *rows, "999", ""])).points
    assert [one.side for one in points] == [None, Side.TOP, Side.BOTTOM, Side.BOTTOM]


def test_a_continued_record_without_a_place_is_no_fault() -> None:
    text = f"P  UNITS CUST 0\n{PUBLISHED}\n027+3.3V\n999\n"
    assert len(read_netlist(text).points) == 1


def test_long_names_by_their_alias() -> None:
    text = (
        "P  UNITS CUST 1\nP  NNAME1  A_NET_WITH_A_VERY_LONG_NAME\n"
        "317NNAME1            J1    -1    D0800PA00X+001000Y+002000X1500Y0000R000S0\n999\n"
    )
    assert read_netlist(text).nets == ("A_NET_WITH_A_VERY_LONG_NAME",)


def test_a_cut_file_is_said() -> None:
    assert any("999" in text for text in read_netlist(f"P  UNITS CUST 0\n{PUBLISHED}\n").warnings)


@pytest.mark.parametrize(
    ("text", "where"),
    [
        (f"{PUBLISHED}\n999\n", "nets.ipc, line 1"),
        ("P  UNITS CUST 0\n317A\n999\n", "nets.ipc, line 2"),
        ("hello\nworld\n", "nets.ipc"),
    ],
)
def test_errors_name_file_and_line(text: str, where: str) -> None:
    with pytest.raises(InputError) as caught:
        read_netlist(text, name="nets.ipc")
    assert caught.value.where == where


RECORD = st.sampled_from(
    [
        PUBLISHED,
        "P  UNITS CUST 1",
        "P  UNITS",
        "317",
        "999",
        "C x",
        "327A" + " " * 40 + "X+1Y-2",
        "P  NNAME1 B",
    ]
)


@given(st.lists(st.one_of(RECORD, st.text(max_size=90)), max_size=12).map("\n".join))
def test_only_input_errors_leave_the_reader(text: str) -> None:
    try:
        assert read_netlist(text + "\n").points
    except InputError as error:
        said = error.what
    else:
        said = "read"
    assert said
