"""Board, blank and clamps on the bed: what fits, what is refused, what is warned of."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Point, box

from drypoint.board.model import Board, Side
from drypoint.errors import PlanError
from drypoint.session.layout import lay_out
from drypoint.session.settings import BlankSettings, Clamp

BOARD = Board("plate", Side.BOTTOM, box(0, 0, 40, 30), {}, "touching")


@given(st.floats(0, 20), st.floats(0, 20), st.floats(60, 120), st.floats(50, 120))
def test_the_blank_lies_where_it_was_said(x: float, y: float, width: float, height: float) -> None:
    layout = lay_out(BOARD, BlankSettings(width, height, board_x=x, board_y=y, centred=False))
    corner = layout.place.apply([(0.0, 0.0)])[0]
    assert corner == pytest.approx((x, y))
    x0, y0, x1, y1 = layout.blank.bounds
    corners = layout.place.apply([(x0, y0), (x1, y1)])
    assert corners.ravel() == pytest.approx([0, 0, width, height])
    assert layout.blank.buffer(1e-9).contains(BOARD.outline)


def test_a_blank_without_size_is_the_board_and_a_margin() -> None:
    layout = lay_out(BOARD, BlankSettings(margin=5.0))
    assert (layout.width, layout.height) == (50.0, 40.0)


@pytest.mark.parametrize(
    "blank",
    [
        BlankSettings(30.0, 60.0),
        BlankSettings(60.0, 60.0, board_x=25.0, board_y=5.0, centred=False),
        BlankSettings(60.0, 60.0, board_x=-1.0, board_y=5.0, centred=False),
    ],
)
def test_what_does_not_fit_is_refused(blank: BlankSettings) -> None:
    with pytest.raises(PlanError) as refused:
        lay_out(BOARD, blank)
    assert refused.value.hint


def test_clamps_keep_out_and_near_ones_are_named() -> None:
    # lower left of the board at 10, 10; the clamp ends 0.6 mm left of it
    clamp = Clamp(2.0, 15.0, 7.4, 8.0)
    blank = BlankSettings(60.0, 50.0, board_x=10.0, board_y=10.0, centred=False, clamps=(clamp,))
    layout = lay_out(BOARD, blank)
    (warning,) = layout.warnings
    assert "Clamp 1 is 0.6 mm" in warning
    assert "1.4 mm" in warning
    assert not layout.workable.contains(Point(-3.0, 8.0))
    assert layout.workable.contains(Point(20.0, 15.0))
