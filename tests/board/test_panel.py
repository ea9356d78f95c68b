"""Several boards on one blank: areas, places and names follow from the single board by construction."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import Point, Polygon, box

from drypoint.board.model import Board, Finding, Hole, LinkWire, Side, Slot
from drypoint.board.panel import PlacedBoard, in_rows, moves_of, panel_of
from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid


@pytest.fixture
def small() -> Board:
    """20 × 10 mm with a cut-out, two nets, and one of everything else."""
    outline = Polygon(box(0, 0, 20, 10).exterior, [box(15, 6, 18, 8).exterior])
    return Board(
        name="small",
        side=Side.BOTTOM,
        outline=outline,
        nets={"GND": box(1, 1, 5, 4), "OUT": Point(9, 5).buffer(1.0)},
        net_source="attributes",
        holes=(Hole(2.0, 2.0, 0.8, True, "GND"), Hole(9.0, 5.0, 1.0)),
        slots=(Slot(as_points([(3, 2), (4, 2)]), 0.6, True, "GND"),),
        other_copper={"GND": box(1, 1, 12, 2)},
        links=(LinkWire("GND", as_points([(2, 2), (9, 5)]), math.dist((2, 2), (9, 5)), True),),
        rivets=(Hole(2.0, 2.0, 0.8, True, "GND"),),
        findings=(Finding("tie", "x", at=(2.0, 3.0), nets=("GND", "OUT")), Finding("note", "y")),
        to_design=Rigid(0.0, (120.0, 30.0), mirror=True),
    )


def test_one_alone_is_the_board_itself(small: Board) -> None:
    assert panel_of(in_rows(small, 1, 1, 3.0)) is small


def test_rows_and_columns(small: Board) -> None:
    panel = panel_of(in_rows(small, 3, 2, 4.0), gap=2.0)
    assert panel.outline.bounds == (0.0, 0.0, 3 * 20 + 2 * 4, 2 * 10 + 4)
    assert len(panel.outlines) == 6
    assert all(len(edge.interiors) == 1 for edge in panel.outlines)
    assert set(panel.nets) == {f"{n}:{net}" for n in range(1, 7) for net in small.nets}
    assert sum(shape.area for shape in panel.nets.values()) == pytest.approx(
        6 * sum(shape.area for shape in small.nets.values())
    )
    assert len(panel.holes) == 12
    assert len(panel.slots) == len(panel.links) == len(panel.rivets) == 6
    # the fifth is the middle one of the second row
    fifth = [hole for hole in panel.holes if hole.net == "5:GND"]
    assert [(hole.x, hole.y) for hole in fifth] == [(26.0, 16.0)]
    assert panel.holes[1].net is None
    assert shapely.equals_exact(panel.nets["5:GND"].normalize(), box(25, 15, 29, 18).normalize(), 1e-9)


def test_what_is_found_is_told_once(small: Board) -> None:
    panel = panel_of(in_rows(small, 2, 2, 4.0))
    assert [finding.nets for finding in panel.findings] == [("1:GND", "1:OUT"), ()]
    assert panel.findings[0].at == (2.0, 3.0)


def test_different_boards_share_a_blank(small: Board) -> None:
    other = replace(small, name="other", outline=box(0, 0, 5, 30), findings=(Finding("note", "z"),))
    panel = panel_of([PlacedBoard(small, 0, 0), PlacedBoard(other, 25, 0)], gap=2.0, name="pair")
    assert panel.name == "pair"
    assert panel.outline.bounds == (0.0, 0.0, 30.0, 30.0)
    assert [finding.what for finding in panel.findings] == ["x", "y", "z"]


def test_too_close_is_refused_with_both_numbers(small: Board) -> None:
    with pytest.raises(PlanError, match=r"Boards 1 and 2 lie 1\.50 mm apart; 2\.00 mm are needed"):
        panel_of(in_rows(small, 2, 1, 1.5), gap=2.0)
    with pytest.raises(PlanError, match="Boards 1 and 2 touch"):
        panel_of(in_rows(small, 2, 1, 0.0))


def test_both_sides_at_once_are_refused(small: Board) -> None:
    with pytest.raises(PlanError, match="one side"):
        panel_of([PlacedBoard(small, 0, 0), PlacedBoard(replace(small, side=Side.TOP), 30, 0)])


@pytest.mark.parametrize(("columns", "rows", "gap"), [(0, 1, 2.0), (1, -1, 2.0), (50, 50, 2.0), (2, 2, -1.0)])
def test_senseless_numbers(small: Board, columns: int, rows: int, gap: float) -> None:
    with pytest.raises(PlanError):
        in_rows(small, columns, rows, gap)


def test_nothing_to_place() -> None:
    with pytest.raises(PlanError):
        panel_of([])


@given(
    x=st.floats(-50, 50),
    y=st.floats(-50, 50),
    quarter=st.floats(-math.pi, math.pi),
)
def test_a_turned_copy_keeps_every_distance(x: float, y: float, quarter: float) -> None:
    """Whatever the place, copper, holes and outline move together, and the whole starts at zero."""
    board = Board("b", Side.TOP, box(0, 0, 20, 10), {"A": box(1, 1, 3, 2)}, "touching", (Hole(2, 8, 1.0),))
    placed = [PlacedBoard(board, 0, 0), PlacedBoard(board, 100 + x, 100 + y, quarter)]
    panel = panel_of(placed)
    assert np.allclose(panel.outline.bounds[:2], 0.0, atol=1e-9)
    second = panel.outlines[1]
    assert second.area == pytest.approx(200.0)
    assert second.bounds[:2] == pytest.approx((100 + x, 100 + y))
    hole = Point(panel.holes[1].x, panel.holes[1].y)
    assert second.exterior.distance(hole) == pytest.approx(2.0)
    assert panel.nets["2:A"].distance(hole) == pytest.approx(6.0)
    move = moves_of(placed)[1]
    assert np.allclose(move.apply([(2, 8)])[0], (hole.x, hole.y))


def test_the_way_back_to_the_design(small: Board) -> None:
    """A place of the first board has the same design coordinates alone and among others."""
    placed = [PlacedBoard(small, 30, 5), PlacedBoard(small, 0, 0)]
    panel = panel_of(placed)
    alone = small.to_design.apply([(2.0, 3.0)])
    among = panel.to_design.apply(moves_of(placed)[0].apply([(2.0, 3.0)]))
    assert np.allclose(alone, among)
