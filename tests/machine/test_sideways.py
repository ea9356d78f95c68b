"""Walls felt from the side on the bench: the rim of a hole, the blank's edge, the play of the axes."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from drypoint.bench.bench import Bench, BenchSetup
from drypoint.bench.imperfect import Faults
from drypoint.bench.truth import Kind
from drypoint.bits.model import Drill, Speeds
from drypoint.errors import MachineError
from drypoint.machine.controller import Controller
from drypoint.machine.operator import RequestKind
from drypoint.machine.preset import load_presets
from drypoint.machine.procedures.contact import check_contact
from drypoint.machine.procedures.play import play_by_contact, play_by_gauge
from drypoint.machine.procedures.sideways import find_rim, go_down, touch_edge, touch_sideways
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.state import Clip

SPEEDS = Speeds(10000.0, 300.0, 100.0)
HOLE, PIN = Drill("3.0", 3.0, SPEEDS), Drill("0.8", 0.8, SPEEDS)
PLAY = (0.03, 0.018, 0.004)
CORNER = (18.0, 14.0)
"""Where the bench lays the blank's corner, space, mm."""


class Shop:
    """A bench with a blank, work zero at the blank's corner and the copper's top; a hole at 30, 20."""

    def __init__(self, play: tuple[float, float, float] = PLAY, seed: int = 1) -> None:
        faults = Faults(play=play, lift=0.0, runout=0.0, noise=0.0, chips=0.0)
        setup = BenchSetup(kind=Kind.FLAT, loose=(), faults=faults, angle=0.0, tilt=(0.0, 0.0))
        self.bench = Bench(seed, setup)
        controller = Controller(self.bench.link)
        controller.connect()
        self.place = Workplace(controller, self.bench.operator, load_presets()[0])
        self.put_in(HOLE)
        self.place.raise_to(2.0)
        for line in ("G0X29Y19", "G0X30Y20", "G1Z-2F200", "G1Z3F200"):
            controller.command(line)
            if line == "G0X30Y20":
                self.bench.body.turning = True
        controller.drain()
        self.bench.body.flush()
        self.bench.body.turning = False
        self.put_in(PIN)

    def put_in(self, bit: Drill) -> None:
        """A bit, and zero set anew for it as if by a perfect hand."""
        self.bench.put_in(bit)
        controller = self.place.controller
        counted = self.bench.body.counted((*CORNER, float(self.bench.sheet.top([CORNER])[0])))
        controller.command("G10L2P1" + "".join(f"{a}{v:.4f}" for a, v in zip("XYZ", counted, strict=True)))
        controller._offset_changed({"x", "y", "z"})

    def over(self, x: float, y: float, z: float = 1.0) -> None:
        """Where the bit is to stand, come to from smaller x and y."""
        self.place.raise_to(3.0)
        for dx in (-0.5, 0.0):
            self.place.controller.move((x + dx, y + dx, None))
        self.place.controller.move((None, None, z))


@pytest.fixture
def shop():
    made = Shop()
    check_contact(made.place)
    return made


@pytest.mark.parametrize("contacts", [3, 4])
def test_the_centre_of_a_hole_is_found_from_its_rim(shop, contacts):
    shop.over(30.3, 19.8)
    found = find_rim(shop.place, 3.0, 0.8, contacts=contacts)
    truth = shop.bench.holes()[0][:2]
    # opposite walls cancel the play; three contacts do not quite
    assert np.hypot(found.centre[0] - truth[0], found.centre[1] - truth[1]) < (
        0.012 if contacts == 4 else 0.03
    )
    assert found.diameter(0.8) == pytest.approx(3.0 + np.mean(PLAY[:2]), abs=0.02)
    assert shop.place.controller.place()[2] >= 1.0
    assert shop.bench.mishaps == ()


def test_beside_the_hole_the_bit_is_stopped_by_the_copper(shop):
    shop.over(33.0, 20.0)
    with pytest.raises(MachineError, match="met copper on its way down"):
        find_rim(shop.place, 3.0, 0.8)
    assert shop.place.controller.place()[2] > 0.5
    assert shop.bench.mishaps == ()


def test_no_contact_is_felt_for_only_so_far(shop):
    shop.over(30.0, 20.0)
    go_down(shop.place, -0.5)
    shop.bench.body.clip = (1.0, 1.0)
    shop.bench.body.probe_wire = False  # the clip has come off
    with pytest.raises(MachineError, match="No wall was met"):
        touch_sideways(shop.place, (1.0, 0.0), 0.8)
    assert shop.place.controller.place()[0] == pytest.approx(30.0, abs=0.01), "back where it stood"
    with pytest.raises(ValueError, match="no way"):
        touch_sideways(shop.place, (1.0, 0.0), 50.0)


def test_nothing_is_felt_before_the_circuit_was_checked(shop):
    shop.place.controller.clip = Clip.UNKNOWN
    here = shop.place.controller.place()
    for attempt in (
        lambda: find_rim(shop.place, 3.0, 0.8),
        lambda: touch_edge(shop.place, "x", 1, 0.8),
        lambda: touch_sideways(shop.place, (1.0, 0.0), 0.5),
        lambda: play_by_contact(shop.place, "x", 1),
    ):
        with pytest.raises(MachineError, match="not been checked"):
            attempt()
    assert shop.place.controller.place() == here


def test_a_bit_as_wide_as_the_hole_is_refused(shop):
    with pytest.raises(MachineError, match="no room"):
        find_rim(shop.place, 0.8, 0.8)


@pytest.mark.parametrize(("axis", "start"), [("x", (-2.0, 20.0)), ("y", (20.0, -2.0))])
def test_the_edge_of_the_blank_is_found_by_contact(shop, axis, start):
    shop.over(*start, 2.0)
    found = touch_edge(shop.place, axis, 1, 0.8)
    # the reading is half the play too large when it was come to towards larger readings
    assert found == pytest.approx(PLAY["xy".index(axis)] / 2, abs=0.012)


@pytest.mark.parametrize("axis", ["x", "y"])
@pytest.mark.parametrize("sign", [1, -1])
def test_play_from_contact_made_and_broken_on_one_wall(shop, axis, sign):
    shop.over(30.0, 20.0)
    go_down(shop.place, -0.5)
    found = play_by_contact(shop.place, axis, sign)
    assert len(found.made) == len(found.broke) == 5
    play = found.play
    assert play.value == pytest.approx(PLAY["xy".index(axis)], abs=0.006)
    assert play.matters
    assert shop.bench.mishaps == ()


def test_play_of_z_from_contacts_with_the_copper(shop):
    shop.over(20.0, 40.0)
    found = play_by_contact(shop.place, "z", -1)
    assert found.play.value == pytest.approx(PLAY[2], abs=0.004)


def test_an_axis_without_play_shows_none():
    shop = Shop(play=(0.0, 0.0, 0.0))
    check_contact(shop.place)
    shop.over(30.0, 20.0)
    go_down(shop.place, -0.5)
    assert play_by_contact(shop.place, "x", 1).play.value < 0.006


def test_play_by_a_dial_gauge_in_the_terms_of_the_standard(shop):
    shop.over(30.0, 20.0, 3.0)
    found = play_by_gauge(shop.place, "y", span=8.0, count=3)
    report = found.report
    assert len(found.targets) == 3
    assert [len(row) for row in found.up] == [5, 5, 5]
    # come to from below the carriage stays behind: the gauge reads less than from above
    assert abs(report.mean_reversal) == pytest.approx(PLAY[1], abs=0.004)
    assert report.mean_reversal < 0
    assert report.repeatability < 0.04
    assert report.line is not None
    asked = [r for r in shop.bench.operator.requests if r.kind is RequestKind.READ]
    assert len(asked) == 30


def test_a_wall_too_far_off_is_said_and_the_bit_goes_back(shop):
    shop.over(30.0, 20.0)
    with pytest.raises(MachineError, match="No wall was met"):
        play_by_contact(shop.place, "x", 1, farthest=2.0)  # above the copper
    assert shop.place.controller.place()[0] == pytest.approx(30.0, abs=0.01)


def test_a_declined_reading_ends_it(shop):
    shop.bench.operator.declines = {RequestKind.READ}
    with pytest.raises(MachineError, match="Declined"):
        play_by_gauge(shop.place, "x", cycles=2)
    assert replace(shop.place.touch).fast > 0
