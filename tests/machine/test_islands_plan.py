"""What touches prove: checked against every way in which copper can be joined."""

from __future__ import annotations

import itertools

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Point, box

from drypoint.errors import PlanError
from drypoint.machine.islands_plan import (
    OUTER,
    Neighbours,
    Sighting,
    Spot,
    conclude,
    lines_between,
    neighbours,
    net_of,
    next_clip,
    onward,
    plan_clips,
    spots,
)
from drypoint.machine.standing import standing_copper

NAMES = ("", "a", "b", "c", "d", "e")


def pair(a: str, b: str, gap: float = 0.2) -> Neighbours:
    return Neighbours((min(a, b), max(a, b)), gap, (0.0, 0.0))


def places(names=NAMES):
    return {name: Spot(name, (0.0, 0.0), 1.0) for name in names}


def components(names, bridges):
    """Which names are one piece of copper."""
    group = {name: {name} for name in names}
    for a, b in bridges:
        merged = group[a] | group[b]
        for name in merged:
            group[name] = merged
    return group


def run(steps, group):
    """Touch as planned on copper that is joined as ``group`` says."""
    return [
        Sighting(step.clip.net, spot.net, spot.net in group[step.clip.net])
        for step in steps
        for spot in step.touches
    ]


edges = st.sets(st.sampled_from(list(itertools.combinations(NAMES, 2))), min_size=1)


@given(edges, st.data())
def test_with_the_advised_clips_every_bridge_is_found(chosen, data):
    pairs = [pair(*edge, data.draw(st.sampled_from([0.1, 0.2, 0.4]))) for edge in sorted(chosen)]
    bridges = data.draw(st.sets(st.sampled_from(sorted(chosen))))
    group = components(NAMES, bridges)
    sightings = run(plan_clips(pairs, places()), group)
    for _ in range(10):
        proof = conclude(pairs, sightings)
        step = next_clip(pairs, proof, places())
        if step is None:
            break
        sightings += run([step], group)
    assert not proof.unproved
    assert not proof.doubtful
    joined = {entry.nets for entry in proof.joined}
    assert joined == {entry.nets for entry in pairs if entry.nets[1] in group[entry.nets[0]]}
    assert {tuple(sorted(bridge)) for bridge in bridges} <= joined


@given(edges, st.data())
def test_nothing_is_called_proved_that_is_joined(chosen, data):
    """Any subset of touches, any bridges: proved means truly apart, joined truly one piece."""
    pairs = [pair(*edge) for edge in sorted(chosen)]
    group = components(NAMES, data.draw(st.sets(st.sampled_from(list(itertools.combinations(NAMES, 2))))))
    asked = data.draw(
        st.lists(st.tuples(st.sampled_from(NAMES), st.sampled_from(NAMES)).filter(lambda t: t[0] != t[1]))
    )
    proof = conclude(pairs, [Sighting(c, n, n in group[c]) for c, n in asked])
    assert all(entry.nets[1] not in group[entry.nets[0]] for entry in proof.proved)
    assert all(entry.nets[1] in group[entry.nets[0]] for entry in proof.joined)
    assert len(proof.proved) + len(proof.joined) + len(proof.unproved) == len(pairs)


def test_a_touch_proves_separation_from_the_clipped_copper_only():
    pairs = [pair("", "a"), pair("", "b"), pair("a", "b")]
    proof = conclude(pairs, [Sighting("", "a", False), Sighting("", "b", False)])
    assert [entry.nets for entry in proof.unproved] == [("a", "b")]
    step = next_clip(pairs, proof, places())
    assert step.clip.net in ("a", "b")
    assert [entry.nets for entry in step.would_prove] == [("a", "b")]


def test_a_net_joined_to_the_outside_proves_through_it():
    pairs = [pair("", "a"), pair("", "b"), pair("a", "b")]
    proof = conclude(pairs, [Sighting("", "a", True), Sighting("", "b", False)])
    assert [entry.nets for entry in proof.joined] == [("", "a")]
    assert {entry.nets for entry in proof.proved} == {("", "b"), ("a", "b")}


def test_touches_that_contradict_prove_nothing():
    pairs = [pair("", "a"), pair("a", "b"), pair("", "b")]
    proof = conclude(pairs, [Sighting("", "a", True), Sighting("a", "b", True), Sighting("", "b", False)])
    assert proof.doubtful == (("", "b"),)
    assert len(proof.unproved) == 3
    assert not proof.complete


def test_the_outside_is_clipped_first_and_narrow_gaps_are_touched_first():
    pairs = sorted([pair("", "a", 0.4), pair("", "b", 0.1), pair("a", "b", 0.2)], key=lambda p: p.gap)
    steps = plan_clips(pairs, places())
    assert steps[0].clip.net == OUTER
    assert [spot.net for spot in steps[0].touches] == ["b", "a"]
    assert sum(len(step.would_prove) for step in steps) == 3


def test_small_copper_needs_a_wire_held_by_hand():
    pairs = [pair("a", "b")]
    steps = plan_clips(pairs, {"a": Spot("a", (0, 0), 0.3), "b": Spot("b", (0, 0), 0.4)})
    assert steps[0].clip.net == "b"
    assert steps[0].by_hand


def test_copper_without_a_place_is_refused_with_its_name():
    with pytest.raises(PlanError, match="on a"):
        plan_clips([pair("a", "b")], places(("b",)))


def test_neighbours_have_nothing_between_them():
    copper = {
        "left": box(0, 0, 1, 4),
        "middle": box(1.2, 0, 1.4, 4),
        "right": box(1.6, 0, 3, 4),
        "far": box(9, 0, 10, 4),
    }
    found = neighbours(copper, 1.0)
    assert {entry.nets for entry in found} == {("left", "middle"), ("middle", "right")}
    assert found[0].gap == pytest.approx(0.2)


def test_spots_keep_off_the_holes_and_lie_on_the_copper():
    copper = {"pad": Point(0, 0).buffer(1.0), "track": box(5, 0, 9, 0.4)}
    hole = Point(0, 0).buffer(0.4)
    found = spots(copper, hole)
    assert found["pad"].room == pytest.approx(0.3, abs=0.02)
    for name, spot in found.items():
        assert copper[name].difference(hole).covers(Point(spot.at))
        assert copper[name].difference(hole).covers(Point(spot.again))


def test_scraps_between_grooves_count_as_copper_of_their_own():
    nets = {"a": box(2, 2, 4, 8), "b": box(6, 2, 8, 8)}
    swept = shapely.union_all([shapely.difference(shape.buffer(0.3), shape) for shape in nets.values()])
    wall = shapely.difference(box(4.3, 2, 5.7, 8), box(4.6, 2.3, 5.4, 7.7))
    copper = standing_copper(nets, shapely.union(swept, wall), box(0, 0, 10, 10))
    assert set(copper) == {"a", "b", OUTER, "scrap 1"}
    assert copper["scrap 1"].area == pytest.approx(0.8 * 5.4)


def test_slivers_along_a_net_belong_to_it():
    nets = {"a": box(2, 2, 4, 8)}
    ring = shapely.difference(nets["a"].buffer(0.4), nets["a"].buffer(0.2))
    copper = standing_copper(nets, ring, box(0, 0, 10, 10))
    assert set(copper) == {"a", OUTER}
    assert copper["a"].area == pytest.approx(nets["a"].buffer(0.2).area)


def test_islands_of_one_net_are_pieces_of_their_own_unless_copper_joins_them():
    """Before wires link them, a touch on one island of a net says nothing of the others."""
    nets = {"a": shapely.union_all([box(2, 2, 4, 8), box(6, 2, 7, 8)]), "b": box(8, 2, 9, 8)}
    apart = shapely.union_all([part.buffer(0.3).difference(part) for part in shapely.get_parts(nets["a"])])
    swept = shapely.union(apart, nets["b"].buffer(0.3).difference(nets["b"]))
    copper = standing_copper(nets, swept, box(0, 0, 10, 10))
    assert set(copper) == {"a", "a · 2", "b", OUTER}
    assert copper["a"].area > copper["a · 2"].area
    assert net_of("a · 2") == net_of("a") == "a"
    assert {one.nets for one in neighbours(copper, 3.0)} == {("", "a"), ("", "a · 2"), ("", "b")}
    assert lines_between(pair("a · 2", "b"), [("b",), ("a", "b")]) == (1,)
    moat = shapely.difference(box(1.7, 1.7, 7.3, 8.3), box(2, 2, 7, 8))
    together = standing_copper({"a": nets["a"]}, moat, box(0, 0, 10, 10))
    assert set(together) == {"a", OUTER}
    assert together["a"].area == pytest.approx(30.0)


def test_lines_to_cut_again_are_those_between_the_two():
    line_nets = [("a",), ("a", "b"), ("b",), ("c",)]
    assert lines_between(pair("a", "b"), line_nets) == (1,)
    assert lines_between(pair("", "c"), line_nets) == (3,)


def test_a_loop_round_a_group_does_not_lie_between_two_of_the_group():
    line_nets = [("a", "b"), ("a",), ("b",)]
    assert lines_between(pair("a", "b"), line_nets, 1) == (0, 1, 2)  # nothing is shared: all that is theirs
    assert lines_between(pair("a", "b"), [("a", "b"), ("a", "b"), ("b",)], 1) == (1,)
    assert lines_between(pair("", "a"), line_nets, 1) == (0, 1)


@given(edges, st.data())
def test_touching_onward_finds_every_bridge_of_the_clipped_copper(every, data):
    """Copper in contact may hang on a third piece: all bridges of the clip's group are listed."""
    bridges = data.draw(st.sets(st.sampled_from(sorted(every))))
    pairs = [pair(a, b) for a, b in sorted(every)]
    group = components(NAMES, bridges)
    step = next_clip(pairs, conclude(pairs, ()), places())
    seen = []
    waiting = list(step.touches)
    while waiting:
        seen += [Sighting(step.clip.net, one.net, one.net in group[step.clip.net]) for one in waiting]
        waiting = list(onward(step.clip.net, pairs, seen, places()))
    assert len({one.net for one in seen}) == len(seen)
    joined = {one.nets for one in conclude(pairs, seen).joined}
    reached = {net for one in seen if one.contact for net in (one.net, one.clip)}
    mine = {edge for edge in bridges if edge[0] in group[step.clip.net]}
    assert {edge for edge in mine if set(edge) <= reached} <= joined
    apart = {one.net for one in seen if not one.contact}
    for a, b in every:  # the group found is closed: whatever borders on it was asked
        assert not ({a, b} & reached) or {a, b} <= reached | apart
