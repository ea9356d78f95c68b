"""What is done at the machine, with hands that do what is asked."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from drypoint.bits.model import Drill, Speeds
from drypoint.errors import MachineError
from drypoint.geometry.rigid import Rigid
from drypoint.machine.islands_plan import ClipStep, Spot
from drypoint.machine.operator import RequestKind
from drypoint.machine.procedures.bit_change import change_bit
from drypoint.machine.procedures.checks import check_between, check_mark, check_zero
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.hover import hover_lap
from drypoint.machine.procedures.proof import island_touch
from drypoint.machine.procedures.touching import touch_points, zero_at_spot, zero_by_paper
from drypoint.machine.state import Activity, Clip


@pytest.fixture
def sheet(fake):
    """Copper at machine z -10, rising with x; the bit stands above it."""
    fake.copper = lambda x, y: -10.0 + 0.01 * x
    fake.position = np.array([0.0, 0.0, -6.0])
    return fake


@pytest.fixture
def clipped(place, sheet):
    place.controller.set_work(x=0.0, y=0.0)
    check_contact(place)
    zero_at_spot(place)
    return place


def test_the_circuit_is_seen_to_change(place, sheet, hands):
    check_contact(place)
    kinds = [request.kind for request in hands.asked]
    assert kinds == [RequestKind.CLIP_OFF, RequestKind.CLIP_TO_BIT, RequestKind.CLIP_ON]
    assert place.controller.clip is Clip.ON


@pytest.mark.parametrize("fault", ["dead", "stuck"])
def test_a_circuit_that_does_not_change_is_not_trusted(place, sheet, hands, fault):
    if fault == "stuck":
        sheet.opto_stuck = True
    else:
        hands.deaf = {RequestKind.CLIP_TO_BIT}
    with pytest.raises(MachineError, match="input"):
        check_contact(place)
    assert place.controller.clip is not Clip.OFF


def test_nothing_is_touched_before_the_check(place, sheet):
    with pytest.raises(MachineError, match="not been checked"):
        touch_points(place, [(1.0, 1.0)])
    with pytest.raises(MachineError, match="not been checked"):
        zero_at_spot(place)


def test_zero_is_where_the_contact_was(clipped, sheet):
    assert sheet.offset[2] == pytest.approx(-10.0, abs=0.005)
    assert clipped.controller.known == {"x", "y", "z"}
    assert clipped.controller.place()[2] >= 1.0


def test_zero_finds_no_copper_within_its_depth(place, sheet):
    place.controller.set_work(x=0.0, y=0.0)
    check_contact(place)
    sheet.copper = lambda x, y: -100.0
    with pytest.raises(MachineError, match="No copper"):
        zero_at_spot(place)
    assert sheet.position[2] == pytest.approx(-6.0)


def test_touches_are_made_twice_and_lifted_between(clipped, sheet):
    found = touch_points(clipped, [(5.0, 0.0), (10.0, 3.0), (0.0, 0.0)])
    assert found.points[:, 2] == pytest.approx([0.05, 0.10, 0.0], abs=0.006)
    assert all(touch.first is not None for touch in found.touches)
    probes = [line for line in sheet.received if line.startswith("G38.3Z")]
    assert len(probes) >= 2 * 3


def test_every_touch_is_bounded(clipped, sheet):
    lowest = []
    clipped.controller.listen(lambda state: lowest.append(state.work[2] if state.work else 0.0))
    sheet.copper = lambda x, y: None if x > 2.0 else -10.0
    found = touch_points(clipped, [(0.0, 0.0), (5.0, 0.0), (0.0, 2.0)])
    assert len(found.touches) == 2
    assert min(lowest) >= -clipped.touch.deepest - 0.01


def test_misses_in_a_row_are_no_accident(clipped, sheet):
    sheet.copper = lambda x, y: None
    with pytest.raises(MachineError, match="in a row"):
        touch_points(clipped, [(i, 0.0) for i in range(6)])


def test_copper_in_the_way_stops_the_move_across(clipped, sheet):
    sheet.copper = lambda x, y: -10.0 if x < 3.0 else -8.4  # a step higher than the travel height
    found = touch_points(clipped, [(0.0, 0.0), (6.0, 0.0)])
    assert found.touches[-1].second == pytest.approx(1.6, abs=0.01)


def test_states_are_told_in_our_words(clipped):
    seen = []
    clipped.controller.listen(lambda state: seen.append(state.activity))
    touch_points(clipped, [(5.0, 0.0)])
    assert Activity.TOUCHING in seen
    assert Activity.CUTTING not in seen


def test_clip_off_is_believed_only_when_the_input_opens(clipped, sheet, hands):
    sheet.opto_stuck = True
    with pytest.raises(MachineError, match="closed"):
        clip_off(clipped)
    assert clipped.controller.clip is Clip.ON


def test_a_bit_change_sets_a_new_zero_at_the_same_spot(clipped, sheet, hands):
    def longer(request):
        if request.kind is RequestKind.CHANGE_BIT:
            assert clipped.controller.place()[2] >= 10.0
            assert not sheet.spindle
            sheet.copper = lambda x, y: -8.5  # the new bit reaches 1.5 mm farther down

    hands.before = longer
    bit = Drill("drill 0.8", 0.8, Speeds(8000.0, 0.0, 60.0))
    hands.jogs = [(0.0, 0.0, -6.0)]
    assert change_bit(clipped, bit, spot=(0.0, 0.0)) == pytest.approx(1.5, abs=0.01)
    assert clipped.controller.clip is Clip.OFF
    assert sheet.offset[2] == pytest.approx(-8.5, abs=0.005)


def test_declining_a_bit_change_leaves_the_height_unknown_but_nothing_cut(clipped, hands):
    hands.refuse = {RequestKind.CHANGE_BIT}
    with pytest.raises(MachineError, match="Declined"):
        change_bit(clipped, Drill("d", 0.8, Speeds(8000.0, 0.0, 60.0)), spot=(0.0, 0.0))


def test_zero_by_paper(place, sheet, hands):
    zero_by_paper(place, 0.1)
    assert sheet.offset[2] == pytest.approx(-6.1)


def test_the_hover_lap_goes_round_at_height_with_the_spindle_off(clipped, sheet):
    hover_lap(clipped, [(0, 0), (30, 0), (30, 20), (0, 20)], height=1.0, surface=lambda x, y: 0.01 * x)
    lap = [place for line, place in sheet.executed if abs(place[2] - 1.3) < 1e-6]
    assert {tuple(np.round(place[:2], 3)) for place in lap} == {(0, 0), (30, 0), (30, 20), (0, 20)}
    assert not sheet.spindle


def test_a_lap_that_does_not_fit_is_refused(clipped):
    with pytest.raises(MachineError, match="travel"):
        hover_lap(clipped, [(0, 0), (300, 0)])


def test_the_zero_check_finds_a_broken_bit(clipped, sheet, journal):
    assert check_zero(clipped, (0.0, 0.0), journal=journal).good
    sheet.copper = lambda x, y: -10.4
    result = check_zero(clipped, (0.0, 0.0), journal=journal)
    assert not result.good
    assert result.away == pytest.approx(-0.4, abs=0.01)
    sheet.copper = lambda x, y: -12.0
    assert check_zero(clipped, (0.0, 0.0), journal=journal).away is None
    assert [entry.split(":")[0] for entry in journal.log] == ["checked"] + [
        "suspect since the last check"
    ] * 2


@pytest.mark.parametrize(("drags_at", "good"), [(0.1, True), (0.13, True), (-0.3, False)])
def test_without_a_contact_input_the_zero_check_goes_by_paper(clipped, sheet, hands, journal, drags_at, good):
    place = replace(clipped, preset=replace(clipped.preset, contact_input=False))

    def bring_down(request):
        if request.kind is RequestKind.PAPER:
            sheet.position = sheet.position * (1, 1, 0) + (0.0, 0.0, sheet.offset[2] + drags_at)

    hands.before = bring_down
    hands.asked.clear()
    result = check_zero(place, (0.0, 0.0), journal=journal)
    assert result.good is good
    assert result.away == pytest.approx(drags_at - 0.1, abs=0.002)
    assert [request.kind for request in hands.asked] == [RequestKind.PAPER]


def test_the_mark_check_finds_lost_steps_and_mends_the_position(clipped, sheet, hands, journal):
    assert check_mark(clipped, (10.0, 10.0), journal=journal).good
    hands.jogs = [(0.4, -0.3, 0.0), None, (0.7, 0.7, -0.3)]
    result = check_mark(clipped, (10.0, 10.0), journal=journal)
    assert not result.good
    assert result.away == pytest.approx(0.5)
    assert clipped.controller.place()[:2] == pytest.approx((10.0, 10.0), abs=0.002)
    assert sheet.offset[:2] == pytest.approx((0.4, -0.3), abs=0.002)
    assert "suspect" in journal.log[-1]


def test_a_mark_that_seems_off_is_looked_at_twice(clipped, sheet, hands, journal):
    hands.jogs = [(0.15, 0.0, 0.0), None, (0.6, 0.7, 0.0)]
    result = check_mark(clipped, (10.0, 10.0), journal=journal)
    assert result.good
    assert result.away == pytest.approx(0.10, abs=0.002)
    assert sheet.offset[:2] == pytest.approx((0.0, 0.0))


def test_both_checks_between_cuts_tell_the_journal(clipped, sheet, hands, journal):
    assert all(
        one.good for one in check_between(clipped, spot=(0.0, 0.0), mark=(10.0, 10.0), journal=journal)
    )
    sheet.copper = lambda x, y: -10.4  # the bit broke
    zero, mark = check_between(clipped, spot=(0.0, 0.0), mark=(10.0, 10.0), journal=journal)
    assert mark.good
    assert not zero.good
    assert [entry.split(":")[0] for entry in journal.log] == ["checked"] * 2 + [
        "suspect since the last check",
        "checked",
    ]


# --- island touch


def step() -> ClipStep:
    return ClipStep(
        Spot("", (0.0, 0.0), 2.0), (Spot("A", (5.0, 0.0), 1.0), Spot("B", (10.0, 0.0), 1.0)), (), False
    )


def test_island_touch_sees_what_is_joined(clipped, sheet):
    sheet.copper = lambda x, y: None if 4.0 < x < 7.0 else -10.0 + 0.01 * x  # A is off the clipped copper
    found = island_touch(clipped, step(), Rigid(), lambda x, y: 0.01 * x)
    assert [(entry.net, entry.contact) for entry in found] == [("A", False), ("B", True)]
    assert clipped.controller.clip is Clip.OFF


def test_island_touch_goes_no_deeper_than_allowed(clipped, sheet):
    lowest = []
    clipped.controller.listen(
        lambda s: lowest.append(s.work[2]) if s.work and 4.0 < s.work[0] < 7.0 else None
    )
    sheet.copper = lambda x, y: None if 4.0 < x < 7.0 else -10.0
    island_touch(clipped, step(), Rigid(), lambda x, y: 0.0)
    assert min(lowest) >= -clipped.touch.proof_depth - 0.002


def test_a_clip_without_contact_voids_the_touches(clipped, sheet, hands):
    sheet.copper = lambda x, y: None
    with pytest.raises(MachineError, match="prove nothing"):
        island_touch(clipped, step(), Rigid(), lambda x, y: 0.0)


def test_one_dirty_spot_does_not_prove_a_separation(clipped, sheet):
    sheet.copper = lambda x, y: None if abs(x - 5.0) < 0.1 else -10.0
    found = island_touch(clipped, step(), Rigid(), lambda x, y: 0.0)
    assert found[0].contact
