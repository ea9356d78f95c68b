"""Holes that join the two sides of a board whose both sides are milled."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Point, unary_union

from drypoint.board.copper import pieces
from drypoint.board.load import load_board
from drypoint.board.model import Hole, Side, Slot
from drypoint.board.through import joining_holes
from drypoint.geometry.points import as_points

LEAD, VIA = "Plated,PTH,ComponentDrill", "Plated,PTH,ViaDrill"


def pad(x: float, y: float):
    return Point(x, y).buffer(0.9)


def track(*corners: tuple[float, float]):
    return LineString(corners).buffer(0.3)


def hole(x: float, y: float, function: str = VIA, net: str = "A", plated: bool | None = True) -> Hole:
    return Hole(x, y, 0.8, plated, net, function)


def test_a_track_that_changes_sides_at_a_via_needs_it_and_a_lead_that_only_has_pads_does_not() -> None:
    bottom = unary_union([pad(0, 0), track((0, 0), (10, 0)), pad(10, 0), pad(10, 20)])
    top = unary_union([pad(10, 0), track((10, 0), (10, 20)), pad(10, 20)]).union(pad(0, 0))
    found = joining_holes({"A": bottom}, {"A": top}, [hole(0, 0, LEAD), hole(10, 0), hole(10, 20, LEAD)])
    assert [(one.x, one.y) for one in found.others] == [(10, 0)]
    # at 10, 20 the track of the top ends in a pad; the bottom has no more than the ring there
    assert found.leads == ()
    (finding,) = found.findings
    assert finding.kind == "through"
    assert "0 leads" in finding.what
    assert "1 other" in finding.what


def test_of_two_ways_a_lead_is_taken() -> None:
    bottom, top = track((0, 0), (10, 0)), track((0, 0), (10, 0))
    found = joining_holes({"A": bottom}, {"A": top}, [hole(0, 0), hole(5, 0), hole(10, 0, LEAD)])
    assert [one.x for one in found.leads] == [10]
    assert found.others == ()


def test_what_nothing_joins_is_said_with_its_place() -> None:
    bottom, top = track((0, 0), (10, 0)), track((0, 5), (10, 5))
    found = joining_holes({"A": bottom}, {"A": top}, [hole(0, 0), hole(0, 0, plated=False)])
    (finding,) = found.findings
    assert finding.kind == "open"
    assert finding.nets == ("A",)
    assert finding.at is not None


def test_an_unplated_hole_joins_nothing() -> None:
    wide = track((0, 0), (10, 0))
    found = joining_holes({"A": wide}, {"A": wide}, [hole(5, 0, plated=False)])
    assert found.others == found.leads == ()
    assert [one.kind for one in found.findings] == ["open"]


def slot(*corners: tuple[float, float], plated: bool | None = True, net: str | None = "A") -> Slot:
    return Slot(as_points(corners), 1.0, plated, net)


def test_a_plated_slot_joins_both_sides_for_the_lead_in_it() -> None:
    bottom, top = track((0, 0), (10, 0)), track((10, 0), (10, 10))
    found = joining_holes({"A": bottom}, {"A": top}, [], [slot((9, 0), (11, 0))])
    (lead,) = found.leads
    assert (lead.x, lead.y, lead.diameter) == (10.0, 0.0, 1.0)
    assert found.others == ()
    assert [one.kind for one in found.findings] == ["through"]
    assert "1 leads" in found.findings[0].what


def test_a_slot_reaches_as_far_as_its_path() -> None:
    """Its middle lies in neither track: one meets its one end, one the other."""
    bottom, top = track((0, 0), (3, 0)), track((7, 0), (12, 0))
    assert joining_holes({"A": bottom}, {"A": top}, [], [slot((2, 0), (8, 0))]).leads
    assert not joining_holes({"A": bottom}, {"A": top}, [], [slot((4.5, 0), (5.5, 0))]).leads


@pytest.mark.parametrize(("plated", "net"), [(False, "A"), (None, "A"), (True, "B")])
def test_a_cut_out_or_a_slot_of_another_net_joins_nothing(plated: bool | None, net: str) -> None:
    bottom, top = track((0, 0), (10, 0)), track((10, 0), (10, 10))
    found = joining_holes({"A": bottom}, {"A": top}, [], [slot((9, 0), (11, 0), plated=plated, net=net)])
    assert found.leads == found.others == ()
    assert [one.kind for one in found.findings] == ["open"]


def test_where_a_hole_would_do_as_well_a_slot_s_lead_is_there_anyway() -> None:
    bottom, top = track((0, 0), (10, 0)), track((0, 0), (10, 0))
    found = joining_holes({"A": bottom}, {"A": top}, [hole(2, 0)], [slot((8, 0), (9, 0))])
    assert [one.x for one in found.leads] == [8.5]
    assert found.others == ()


@given(st.lists(st.tuples(st.integers(0, 5), st.integers(0, 5), st.booleans()), unique_by=lambda v: v[:2]))
def test_never_more_holes_than_join_and_every_net_is_whole_after(places: list[tuple[int, int, bool]]) -> None:
    """Bars across on the one side and up and down on the other, joined where holes are."""
    bottom = unary_union([track((-1, 3 * k), (16, 3 * k)) for k in range(6)])
    top = unary_union([track((3 * k, -1), (3 * k, 16)) for k in range(6)])
    holes = [hole(3 * x, 3 * y, LEAD if lead else VIA) for x, y, lead in places]
    found = joining_holes({"A": bottom}, {"A": top}, holes)
    groups = 12 - len(found.leads) - len(found.others)
    joined = {(side, k) for side in "xy" for k in range(6)}
    parts = [{one} for one in joined]
    for x, y, _ in places:
        both = [group for group in parts if ("x", x) in group or ("y", y) in group]
        parts = [group for group in parts if group not in both] + [set().union(*both)]
    assert groups == len(parts), "a hole that joins nothing new is not asked for"
    assert bool([one for one in found.findings if one.kind == "open"]) == (len(parts) > 1)


def test_the_two_sided_example_needs_all_its_holes_without_leads(root: Path) -> None:
    folder = root / "examples" / "frost-bell"
    one, both = load_board([folder]), load_board([folder], both=True)
    assert one.links
    assert both.links == ()
    assert sum("Via" in rivet.function for rivet in both.rivets) == 11
    assert not [finding for finding in both.findings if finding.kind == "open"]
    seen_from_top = load_board([folder], side=Side.TOP, both=True)
    places = {(round(both.width - rivet.x, 3), round(rivet.y, 3)) for rivet in both.rivets}
    assert {(round(rivet.x, 3), round(rivet.y, 3)) for rivet in seen_from_top.rivets} == places
    for name, copper in both.nets.items():
        assert pieces(copper), name


@pytest.mark.parametrize("both", [True, False])
def test_a_board_of_one_layer_has_neither(root: Path, tmp_path: Path, both: bool) -> None:
    for path in (root / "examples" / "frost-bell").iterdir():
        if "top" not in path.name:
            (tmp_path / path.name).write_bytes(path.read_bytes())
    board = load_board([tmp_path], both=both)
    assert board.rivets == ()
    assert board.links == ()
