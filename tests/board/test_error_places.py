"""An error in a design file says where on the board the reader had come to."""

from __future__ import annotations

import pytest

from drypoint.board.drill import read_drill
from drypoint.board.gerber import read_gerber
from drypoint.board.load import load_board_from_bytes
from drypoint.board.model import Side
from drypoint.errors import InputError

HEAD = "%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,1.0*%\n"
OUTLINE = (
    "%TF.FileFunction,Profile,NP*%\n%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,0.1*%\nD10*\n"
    "X10000000Y20000000D02*\nX50000000D01*\nY50000000D01*\nX10000000D01*\nY20000000D01*\nM02*\n"
)
"""A board of 40 by 30 mm whose lower left lies at (10, 20)."""
COPPER = "%TF.FileFunction,Copper,L1,{}*%\n" + HEAD + "D10*\nX15000000Y23000000D03*\n{}"


def _trouble(files: dict[str, str], side: Side = Side.TOP) -> InputError:
    with pytest.raises(InputError) as caught:
        load_board_from_bytes({name: text.encode() for name, text in files.items()}, side=side)
    return caught.value


def test_gerber_names_the_last_place_drawn() -> None:
    with pytest.raises(InputError) as caught:
        read_gerber(HEAD + "D10*\nX3000000Y4500000D03*\nD99*\nM02*\n")
    assert caught.value.at == (3.0, 4.5)
    assert "line 6" in str(caught.value.where)


def test_gerber_in_inches_names_it_in_mm() -> None:
    with pytest.raises(InputError) as caught:
        read_gerber("%FSLAX24Y24*%\n%MOIN*%\n%ADD10C,0.05*%\nD10*\nX10000Y20000D03*\nD99*\nM02*\n")
    assert caught.value.at == pytest.approx((25.4, 50.8))


def test_nothing_drawn_has_no_place() -> None:
    with pytest.raises(InputError) as caught:
        read_gerber("%FSLAX46Y46*%\n%MOMM*%\nD99*\nM02*\n")
    assert caught.value.at is None


def test_a_place_inside_a_block_is_none_on_the_board() -> None:
    block = "%ABD12*%\nD10*\nX1000000Y1000000D03*\nD99*\n%AB*%\nM02*\n"
    with pytest.raises(InputError) as caught:
        read_gerber(HEAD + block)
    assert caught.value.at is None


def test_drill_names_where_the_tool_stood() -> None:
    text = "M48\nMETRIC\nT1C0.8\n%\nT1\nX3.5Y7.25\nG83\nM30\n"
    with pytest.raises(InputError) as caught:
        read_drill(text)
    assert caught.value.at == (3.5, 7.25)
    with pytest.raises(InputError) as caught:
        read_drill("M48\nMETRIC\nT1C0.8\n%\nT9\nX3.5Y7.25\nM30\n")
    assert caught.value.at is None


@pytest.mark.parametrize(("side", "x"), [(Side.TOP, 5.0), (Side.BOTTOM, 35.0)])
def test_a_board_puts_it_into_its_own_frame(side: Side, x: float) -> None:
    """(15, 23) of the file is 5 right of and 3 above the corner; mirrored it is 40 - 5."""
    layer = "Top" if side is Side.TOP else "Bot"
    error = _trouble({"copper.gbr": COPPER.format(layer, "D99*\nM02*\n"), "edge.gbr": OUTLINE}, side)
    assert error.at == pytest.approx((x, 3.0))
    assert "copper.gbr" in error.where


def test_without_an_outline_the_frame_is_not_known() -> None:
    assert _trouble({"copper.gbr": COPPER.format("Top", "D99*\nM02*\n")}).at is None


def test_an_outline_that_does_not_close_is_shown_where_it_breaks_off() -> None:
    cut = OUTLINE.replace("X10000000D01*\nY20000000D01*\n", "X30000000D01*\n")
    board = load_board_from_bytes(
        {"copper.gbr": COPPER.format("Top", "M02*\n").encode(), "edge.gbr": cut.encode()}, side=Side.TOP
    )
    found = next(one for one in board.findings if one.kind == "outline open")
    x0, y0 = 15.0 - 0.5 - 1.0, 23.0 - 0.5 - 1.0  # corner of the rectangle round the only pad
    assert found.at is not None
    ends = [(10.0 - x0, 20.0 - y0), (30.0 - x0, 50.0 - y0)]
    assert any(found.at == pytest.approx(end) for end in ends)
