"""Play, spring, contact and mishaps of the simulated machine."""

from __future__ import annotations

import re
from dataclasses import replace

import numpy as np
import pytest

from drypoint.bench.sheet import Clamping, turned_over
from drypoint.bench.truth import Kind, Truth
from drypoint.bits.model import Drill, Speeds
from drypoint.geometry.rigid import Rigid

SPEEDS = Speeds(10000.0, 300.0, 100.0)


def probed(answer):
    found = re.search(r"PRB:([-\d.,]+):1", " ".join(answer))
    assert found, answer
    return [float(value) for value in found.group(1).split(",")]


def touch(terminal, x, y, feed=20):
    """Work z of contact at a place."""
    terminal.send("G90G0Z1")
    terminal.send(f"G0X{x}Y{y}")
    z = probed(terminal.send(f"G38.2Z-2F{feed}"))[2]
    terminal.send("G0Z1")
    return z - terminal.bench.controller.parser.offset()[2]


def test_a_perfect_touch_is_the_true_height(make, terminal_of, vbit, zeroed):
    terminal = terminal_of(make(kind=Kind.MIXED))
    zeroed(terminal, vbit)
    bench = terminal.bench
    bench.body.clip = (1.0, 60.0)
    zero = float(bench.sheet.truth.height([(2.0, 2.0)])[0])
    for x, y in [(5.0, 5.0), (60.0, 30.0), (80.0, 65.0)]:
        true = float(bench.sheet.truth.height([(x, y)])[0]) - zero
        assert touch(terminal, x, y) == pytest.approx(true, abs=0.0026)  # two motor steps


def test_a_fast_touch_pushes_a_loose_edge_down_and_clamping_ends_it(make, terminal_of, vbit, zeroed):
    terminal = terminal_of(make(loose=("top",), lift=0.0))
    zeroed(terminal, vbit)
    terminal.bench.body.clip = (1.0, 1.0)
    fast, slow = touch(terminal, 45, 68, 100), touch(terminal, 45, 68, 10)
    assert slow - fast > 0.03
    assert abs(touch(terminal, 45, 5, 100) - touch(terminal, 45, 5, 10)) < 0.005
    terminal.bench.clamp_edges()
    assert abs(touch(terminal, 45, 68, 100) - touch(terminal, 45, 68, 10)) < 0.005


def test_contact_follows_the_copper_that_holds_the_clip(terminal, vbit, zeroed):
    zeroed(terminal, vbit)
    for line in ("M3S10000", "G0Z1", "G0X40Y-2", "G1Z-0.1F100", "G1Y72F600", "G0Z1", "M5"):
        terminal.send(line)
    terminal.bench.body.clip = (1.0, 1.0)
    assert touch(terminal, 20, 30) == pytest.approx(0.0, abs=0.004)
    terminal.send("G0X60Y30")
    assert "[PRB:" in terminal.send("G38.3Z-0.1F20")[0]
    assert terminal.bench.controller.probe_result[1] is False
    terminal.bench.body.clip = (80.0, 30.0)
    assert touch(terminal, 60, 30) == pytest.approx(0.0, abs=0.004)


def test_the_wall_of_a_hole_is_felt_from_inside(terminal, vbit, zeroed):
    zeroed(terminal, Drill("1.0", 1.0, SPEEDS))
    for line in ("M3S10000", "G0Z1", "G0X30Y30", "G1Z-2F60", "G0Z1", "M5"):
        terminal.send(line)
    zeroed(terminal, vbit)
    terminal.send("G0Z1")
    terminal.send("G0X30Y30")
    terminal.send("G1Z-0.1F60")
    terminal.bench.body.clip = (1.0, 1.0)
    left = probed(terminal.send("G91G38.2X-2F20"))[0]
    terminal.send("G90G1X30F60")
    right = probed(terminal.send("G38.2X32F20"))[0]
    reach = 0.1 + 2 * 0.1 * np.tan(np.radians(15))
    assert right - left == pytest.approx(1.0 - reach, abs=0.01)


def test_play_is_found_by_touching_on_and_lifting_off(make, terminal_of, vbit, zeroed):
    perfect = make().setup.faults
    terminal = terminal_of(make(faults=replace(perfect, play=(0.0, 0.0, 0.03))))
    zeroed(terminal, vbit)
    terminal.bench.body.clip = (1.0, 1.0)
    terminal.send("G0X30Y30")
    terminal.send("G0Z0.5")
    make_at = probed(terminal.send("G38.2Z-1F10"))[2]
    terminal.send("G91G1Z-0.05F10")
    break_at = probed(terminal.send("G38.4Z1F10"))[2]
    assert break_at - make_at == pytest.approx(0.03, abs=0.004)


def test_play_leaves_a_closed_loop_open_by_itself(make, terminal_of, vbit, zeroed):
    perfect = make().setup.faults
    terminal = terminal_of(make(faults=replace(perfect, play=(0.04, 0.04, 0.0))))
    zeroed(terminal, vbit)
    for line in ("M3S10000", "G0Z1", "G0X20Y20", "G1Z-0.1F100", "G1X30F600", "Y30", "X20", "Y20", "G0Z1"):
        terminal.send(line)
    terminal.send("M5")
    path = np.vstack([sweep.path for sweep in terminal.bench.copper.sweeps])
    assert path[-1] - path[0] == pytest.approx((0.04, 0.04), abs=0.003)


def test_a_cutting_load_lifts_the_bit_evenly_within_its_slack(make, terminal_of, vbit, zeroed):
    perfect = make().setup.faults
    terminal = terminal_of(make(kind=Kind.FLAT, faults=replace(perfect, lift=0.02)))
    zeroed(terminal, vbit)
    for line in ("M3S10000", "G0Z1", "G0X3Y3", "G1Z-0.1F100"):
        terminal.send(line)
    for row in range(3, 66, 2):
        terminal.send(f"G1Y{row}F1000")
        terminal.send(f"X{85 if row % 4 == 3 else 3}")
    terminal.send("G0Z1")
    terminal.send("M5")
    bench = terminal.bench
    sweep = max(bench.copper.sweeps, key=lambda one: len(one.path))
    path, depth = sweep.path[10:-10], sweep.depth[10:-10]  # without plunge and retract
    truth = bench.sheet.truth.height(path) - bench.sheet.truth.height([(2.0, 2.0)])
    lift = 0.1 + truth - depth
    assert lift.min() > -0.002
    assert lift.max() < 0.022
    shares = np.histogram(lift, bins=4, range=(0.0, 0.02))[0] / len(lift)
    assert shares.min() > 0.12
    assert shares.max() < 0.40


def test_lost_steps_move_the_cut_and_nothing_tells(terminal, vbit, zeroed):
    zeroed(terminal, vbit)
    before = terminal.place()
    tip = terminal.bench.tip()
    terminal.bench.body.lose_steps((0.5, -0.25, 0.0))
    assert terminal.place() == before
    assert terminal.bench.tip() == pytest.approx((tip[0] + 0.5, tip[1] - 0.25, tip[2]))


def test_a_broken_bit_touches_lower(terminal, vbit, zeroed):
    zeroed(terminal, vbit)
    terminal.bench.body.clip = (1.0, 1.0)
    whole = touch(terminal, 30, 30)
    terminal.bench.body.break_bit(0.4)
    assert touch(terminal, 30, 30) == pytest.approx(whole - 0.4, abs=0.004)


@pytest.mark.parametrize(
    ("lines", "what"),
    [
        (("M3S10000", "G0X30Y30", "G0Z-0.2"), "rapid"),
        (("G0X30Y30", "G0Z1", "G1Z-0.1F60", "G1X35"), "dragged"),
        (("G0X500",), "end"),
    ],
)
def test_what_should_never_happen_is_noted(terminal, vbit, zeroed, lines, what):
    zeroed(terminal, vbit)
    terminal.send("G0Z2")
    for line in lines:
        terminal.send(line)
    terminal.rest()
    assert any(what in mishap.what for mishap in terminal.bench.mishaps)


def test_a_spindle_started_with_the_clip_on_is_noted(terminal, vbit):
    terminal.bench.put_in(vbit)
    terminal.bench.body.clip = (1.0, 1.0)
    terminal.send("M3S1000")
    assert terminal.bench.mishaps


def test_clean_work_leaves_no_mishap(terminal, vbit, zeroed):
    zeroed(terminal, vbit)
    for line in ("M3S10000", "G0Z2", "G0X30Y30", "G1Z-0.1F60", "G1X35", "G0Z2", "M5"):
        terminal.send(line)
    assert terminal.bench.mishaps == ()
    assert terminal.bench.copper.grooves()


def test_a_moved_sheet_carries_its_copper_along(terminal, vbit, zeroed):
    zeroed(terminal, vbit)
    for line in ("M3S10000", "G0Z2", "G0X30Y30", "G1Z-0.1F60", "G1X50", "G0Z2", "M5"):
        terminal.send(line)
    bench = terminal.bench
    groove = [np.array([(30.5, 30.0), (49.5, 30.0)])]
    assert bench.through_share(groove) == 1.0
    motion = Rigid(0.03, (1.0, -2.0))
    before = bench.work_to_space((0.0, 0.0))
    bench.reclamp(motion)
    assert bench.through_share(groove) < 0.2

    class Moved:
        def apply(self, points):
            space = np.asarray(points) + before
            return motion.apply(space) - np.asarray(before)

    assert bench.through_share(groove, Moved()) == 1.0


def test_a_sheet_turned_over_shows_its_holes_mirrored(terminal, zeroed):
    zeroed(terminal, Drill("1.0", 1.0, SPEEDS))
    for line in ("M3S10000", "G0Z2", "G0X30Y20", "G1Z-2F60", "G0Z2", "M5"):
        terminal.send(line)
    bench = terminal.bench
    corner = bench.sheet.corner()
    bench.turn_over()
    seen = bench.sheet.to_space([bench.holes()[0][:2]])[0] - corner
    assert seen == pytest.approx((bench.sheet.width - 30.0, 20.0), abs=0.01)


@pytest.mark.parametrize("kind", list(Kind))
def test_a_truth_is_its_seed_alone_and_of_sane_size(kind):
    bounds = (0.0, 0.0, 100.0, 80.0)
    points = np.random.default_rng(0).uniform((0, 0), (100, 80), (500, 2))
    one, two = Truth.draw(7, bounds, kind), Truth.draw(7, bounds, kind)
    assert np.array_equal(one.height(points), two.height(points))
    assert np.abs(one.height(points)).max() < 1.0
    assert not np.array_equal(one.height(points), Truth.draw(8, bounds, kind).height(points))


@pytest.mark.parametrize("axis", ["x", "y"])
def test_a_sheet_is_turned_over_about_either_axis(axis):
    size = (90.0, 70.0)
    clamping = Clamping(Rigid(0.01, (18.0, 14.0)), loose=("top", "left"))
    turned = turned_over(clamping, size, axis=axis)
    # laid back into the same corner: what was at one edge is at the other now
    spots = np.array([(0.0, 0.0), (90.0, 0.0), (0.0, 70.0), (30.0, 20.0)])
    other = spots * (-1, 1) + (90, 0) if axis == "y" else spots * (1, -1) + (0, 70)
    assert np.abs(turned.place.apply(other) - clamping.place.apply(spots)).max() < 1e-9
    assert turned.turned
    assert set(turned.loose) == ({"bottom", "left"} if axis == "x" else {"top", "right"})
