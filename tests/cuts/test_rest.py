"""Two bits: wide loops and the fine grooves that are still needed part what the fine bit parts alone."""

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.islands import check
from drypoint.cuts.rest import CutWidth, assembled, plan_rest, total
from drypoint.errors import InputError

WIDE, FINE = CutWidth(0.8, 0.76), CutWidth(0.16, 0.14)
HALF = 0.9
"""Half of the side of the largest pad drawn, mm: pads on a grid of 2 mm stay 0.2 mm apart."""


@st.composite
def boards(draw):
    """Pads of several sizes on a grid, some joined by traces along a row: gaps from 0.2 mm up."""
    columns, rows = draw(st.integers(2, 4)), draw(st.integers(1, 3))
    nets = {}
    for row in range(rows):
        held = []
        for column in range(columns):
            half = draw(st.sampled_from([0.3, 0.5, 0.8, HALF]))
            held.append(shapely.box(2 * column - half, 2 * row - half, 2 * column + half, 2 * row + half))
            joined = column + 1 < columns and draw(st.booleans())
            if joined:
                held.append(shapely.box(2 * column, 2 * row - 0.1, 2 * column + 2, 2 * row + 0.1))
            else:
                nets[f"N{row}.{column}"] = shapely.union_all(held)
                held = []
    return nets


@settings(max_examples=40, deadline=None)
@given(boards(), st.booleans())
def test_both_bits_part_what_the_fine_one_parts_alone(nets, corners):
    alone = plan_grooves(nets, FINE.top, bite=0.05)
    plan = assembled(plan_rest(nets, alone, WIDE, FINE, corners=corners))
    assert check(nets, alone.lines, FINE.under, top_width=FINE.top).clean
    wide = np.arange(len(plan.lines)) < plan.wide
    under, top = np.where(wide, WIDE.under, FINE.under), np.where(wide, WIDE.top, FINE.top)
    assert check(nets, plan.lines, under, top_width=top).clean
    # a wide loop that does not reach through the copper is cut again along the same line by the fine bit
    assert check(nets, plan.lines, FINE.under, top_width=FINE.top).clean


@settings(max_examples=20, deadline=None)
@given(boards())
def test_the_wide_bit_does_not_bite(nets):
    plan = plan_rest(nets, plan_grooves(nets, FINE.top, bite=0.05), WIDE, FINE)
    copper = shapely.union_all(list(nets.values()))
    for line in plan.wide.lines:
        assert shapely.LineString(line).distance(copper) > WIDE.top / 2 - 4e-3  # the chords of arcs


def test_every_net_beside_a_wide_loop_is_named():
    nets = {"A": shapely.box(0, 0, 4, 4), "B": shapely.box(4.3, 0, 8, 4), "C": shapely.box(20, 0, 24, 4)}
    plan = plan_rest(nets, plan_grooves(nets, FINE.top), WIDE, FINE)
    assert sorted(plan.wide.line_nets) == [("A", "B"), ("C",)]


def test_corners_that_part_nothing_are_left_to_the_wide_bit():
    cross = shapely.union_all([shapely.box(0, 4, 10, 6), shapely.box(4, 0, 6, 10)])
    alone = plan_grooves({"X": cross}, FINE.top)
    assert plan_rest({"X": cross}, alone, WIDE, FINE).fine.lines == ()
    rounded = plan_rest({"X": cross}, alone, WIDE, FINE, corners=True).fine
    assert len(rounded.lines) == 4
    assert 0 < total(rounded.lines) < total(alone.lines) / 4


def test_a_second_bit_that_is_no_wider_is_refused():
    nets = {"A": shapely.box(0, 0, 4, 4)}
    with pytest.raises(InputError, match="wider"):
        plan_rest(nets, plan_grooves(nets, 0.2), CutWidth(0.2, 0.1), CutWidth(0.2, 0.18))


def test_lines_of_the_wide_bit_come_first_and_fill_is_told_apart():
    nets = {"A": shapely.box(0, 0, 4, 4), "B": shapely.box(4.3, 0, 8, 4)}
    rest = plan_rest(nets, plan_grooves(nets, FINE.top), WIDE, FINE)
    more = (np.array([(0.0, 9.0), (4.0, 9.0)]),)
    plan = assembled(rest, more, more)
    assert plan.wide == len(rest.wide.lines) + 1
    assert len(plan.lines) == len(plan.line_nets) == len(rest.wide.lines) + len(rest.fine.lines) + 2
    assert [plan.line_nets[k] for k in sorted(plan.fill)] == [(), ()]
    assert sum(k < plan.wide for k in plan.fill) == 1
    assert sorted(plan.line_nets[: plan.wide]) == sorted([*rest.wide.line_nets, ()])
