"""Settings to forms and back lose nothing; the order of work has honest places and times."""

from __future__ import annotations

import math
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.bits.model import Speeds, VBit
from drypoint.geometry.rigid import Rigid
from drypoint.machine.preset import load_presets
from drypoint.passes.depth import uniform_pass
from drypoint.program.place import place
from drypoint.program.settings import ProgramSettings
from drypoint.program.time import estimate
from drypoint.progress import Progress
from drypoint.session.session import Session
from drypoint.session.settings import BlankSettings, Clamp, CutSettings, MachineSettings, Settings
from drypoint.session.work import preset_of
from drypoint.ui.design_side.new_job import make_plain
from drypoint.ui.design_side.order import order_of_programs
from drypoint.ui.design_side.pictures import Pictures
from drypoint.ui.design_side.remember import MOST, Remembered
from drypoint.ui.design_side.translate import (
    bit_settings,
    bit_values,
    blank_settings,
    blank_values,
    groove_width,
    machine_settings,
    machine_values,
    with_width,
)

size = st.floats(5.0, 300.0).map(lambda value: round(value, 3))
place_mm = st.floats(-20.0, 300.0).map(lambda value: round(value, 3))
clamp = st.builds(Clamp, place_mm, place_mm, size, size)
blank = st.builds(
    BlankSettings,
    width=st.just(0.0) | size,
    height=st.just(0.0) | size,
    thickness=st.floats(0.2, 3.0),
    board_x=place_mm,
    board_y=place_mm,
    centred=st.booleans(),
    clamps=st.lists(clamp, max_size=4).map(tuple),
    clamp_margin=st.floats(0.0, 10.0),
)


@given(blank, size, size)
def test_blank_shown_and_stored_says_the_same(before: BlankSettings, width: float, height: float) -> None:
    board = (width, height)
    shown = blank_values(before, board)
    again = blank_values(blank_settings(shown, before, board), board)
    assert again.width == pytest.approx(shown.width)
    assert again.height == pytest.approx(shown.height)
    assert (again.board_x, again.board_y) == pytest.approx((shown.board_x, shown.board_y))
    for a, b in zip(again.clamps, shown.clamps, strict=True):
        assert a.box == pytest.approx(b.box)


def test_size_that_follows_the_board_goes_on_following_it() -> None:
    usual = BlankSettings()
    stored = blank_settings(blank_values(usual, (70.0, 50.0)), usual, (70.0, 50.0))
    assert (stored.width, stored.height) == (0.0, 0.0)
    assert blank_values(stored, (40.0, 30.0)).width == 56.0


def test_bits_left_alone_are_the_same_bits() -> None:
    bits = Settings().bits
    assert bit_settings(bit_values(bits), bits) == bits


@given(st.floats(0.0, 2.0), st.floats(5.0, 120.0))
def test_bit_is_what_the_form_says(tip: float, angle_deg: float) -> None:
    from dataclasses import replace

    bits = Settings().bits
    made = bit_settings(replace(bit_values(bits), tip=tip, angle_deg=angle_deg), bits)
    assert made.vbit.tip == tip
    assert math.degrees(made.vbit.angle) == pytest.approx(angle_deg)
    assert made.vbit.runout == bits.vbit.runout
    assert made.drills == bits.drills


@given(st.floats(0.12, 0.6))
def test_groove_width_comes_back(width: float) -> None:
    vbit = VBit("v", 0.1, math.radians(60), Speeds(1, 1, 1))
    cuts = with_width(CutSettings(), vbit, width, 0.035)
    assert cuts.depth >= 0.035
    shown = groove_width(cuts, vbit)
    # never narrower than asked, and wider only where the copper would not be cut through
    assert shown == pytest.approx(max(width, vbit.width(0.035)), abs=2e-4)


@pytest.mark.parametrize("preset", [one.name for one in load_presets()])
def test_machine_of_a_class_keeps_only_what_differs(preset: str) -> None:
    from dataclasses import replace

    presets = load_presets()
    before = MachineSettings()
    usual = next(one for one in presets if one.name == preset)
    shown = machine_values(replace(before, preset=preset), usual)
    stored = machine_settings(shown, before, presets)
    assert stored.preset == preset
    assert (stored.travel, stored.contact, stored.spindle_switched, stored.homing) == (None,) * 4
    other = machine_settings(replace(shown, travel=(1.0, 2.0, 3.0), homing=not usual.homing), before, presets)
    found = preset_of(replace(Settings(), machine=other))
    assert found.travel == (1.0, 2.0, 3.0)
    assert found.homing is not usual.homing
    assert found.max_rate == usual.max_rate


def test_order_of_a_square_has_its_length_and_time() -> None:
    square = np.array([(0, 0), (20, 0), (20, 20), (0, 20), (0, 0)], dtype=float)
    vbit = VBit("v", 0.1, math.radians(30), Speeds(10000, 300, 100))
    shared = ProgramSettings()
    turned = Rigid(0.3, (12.0, -4.0))
    programs = place([uniform_pass([square], vbit, 0.06)], turned, None, settings=shared)
    order = order_of_programs(programs, turned, shared)
    # closed grooves run on past their start
    assert order.paths.length == pytest.approx(80.0 + shared.overlap, abs=0.01)
    assert order.paths.bounds == pytest.approx((0, 0, 20, 20), abs=1e-2)  # three decimals in the lines
    assert np.all(np.diff(order.times) >= -1e-9)
    # 80 mm at 300 mm/min are 16 s, a little more for corners
    cutting = order.times[-1] - order.times[0]
    assert 16.0 <= cutting <= 20.0
    assert order.times[-1] <= order.seconds
    assert estimate(programs[0].moves, shared.motion) <= order.seconds + 1e-9


@pytest.fixture(scope="module")
def planned(hive_scale: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Session]:
    session = make_plain(tmp_path_factory.mktemp("plain") / "demo.drypoint", hive_scale, Progress())
    yield session
    session.close()


def test_pictures_of_the_demo_agree_with_the_plan(planned: Session) -> None:
    snap = planned.snapshot
    pictures = Pictures(planned.derived)
    cuts = pictures.cuts(snap, Progress())
    order = pictures.order(snap, Progress())
    assert cuts.grooves.length == pytest.approx(cuts.cuts.length)
    assert order.paths.length >= cuts.cuts.length  # grooves, and outline and bored holes besides
    assert order.seconds > cuts.seconds
    assert pictures.cuts(snap, Progress()) is cuts
    touches = pictures.touches(snap, Progress())
    assert len(touches.planned) == snap.settings.surface.touches
    assert touches.heat is None
    marks = {hole.name for hole in pictures.fit(snap).holes}
    assert {"R1", "R2", "R3", "R4"} <= marks


def test_recent_jobs_are_few_and_there(tmp_path: Path) -> None:
    kept = Remembered(tmp_path / "deep" / "window.json")
    paths = [tmp_path / f"{number}.drypoint" for number in range(MOST + 3)]
    for path in paths:
        path.write_bytes(b"")
        kept.opened(path)
    assert len(kept.recent) == MOST
    assert kept.recent[0] == str(paths[-1])
    paths[-1].unlink()
    assert str(paths[-1]) not in Remembered(tmp_path / "deep" / "window.json").recent


def test_folder_that_cannot_be_written_does_no_harm(tmp_path: Path, caplog: pytest.LogCaptureFixture) -> None:
    (tmp_path / "file").write_text("")
    kept = Remembered(tmp_path / "file" / "window.json")
    kept.keep({"size": [1, 2]}, True)
    assert "could not be kept" in caplog.text
