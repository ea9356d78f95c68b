"""The width coupon in a job: it lies in the waste, and its answer is used from then on."""

from __future__ import annotations

import json
from dataclasses import replace

import numpy as np
import pytest
import shapely
from shapely import LineString, Point

from drypoint.__main__ import main
from drypoint.bits.width_coupon import SHALLOWEST, Parted, Width
from drypoint.session.actions import coupon
from drypoint.session.actions.coupon_reading import lines_of
from drypoint.session.actions.pattern_run import pattern_program
from drypoint.session.corner import Corner
from drypoint.session.ground import CLEAR
from drypoint.session.pattern import lay_pattern
from drypoint.session.plans import CLEAR_OF_ZERO, belief_from, taught
from drypoint.session.session import Session
from drypoint.surface.touch import Touch, Touches


@pytest.fixture
def touched(session):
    """The job with a flat copper touched all over."""
    layout = session.derived.layout(session.snapshot)
    xs, ys = np.meshgrid(np.linspace(2, layout.width - 2, 6), np.linspace(2, layout.height - 2, 5))
    places = zip(xs.ravel().tolist(), ys.ravel().tolist(), strict=True)
    session.keep("touches", {"setup": 1, "touches": Touches(tuple(Touch(x, y, 0.0, 0.0) for x, y in places))})
    return session


def test_the_pattern_lies_in_the_waste_clear_of_the_board_and_of_zero(touched):
    snap = touched.snapshot
    pattern = lay_pattern(touched.derived, snap)
    layout, board = touched.derived.layout(snap), touched.derived.board(snap)
    marks = shapely.union_all([LineString(line) for line in pattern.lines])
    assert layout.workable.covers(marks)
    assert board.outline.distance(marks) >= CLEAR
    first = shapely.union_all([LineString(cut.path) for cut in pattern.widths.cuts])
    second = shapely.union_all([LineString(cut.path) for cut in pattern.depths.cuts])
    assert first.distance(second) >= CLEAR
    assert Point(layout.zero_spot).distance(marks) > CLEAR_OF_ZERO
    program = pattern_program(touched.derived, snap, pattern, touched.derived.surface(snap))
    assert program.moves.end[:, 2].min() == pytest.approx(-max(cut.depth for cut in pattern.cuts), abs=1e-3)


def test_the_answer_is_used_from_then_on(touched):
    session = touched
    before = session.derived.cuts(session.snapshot).width
    bit = session.settings.bits.vbit
    widths = [Width(d, bit.width(d) + 0.04, 0.005) for d in (0.04, 0.06, 0.08, 0.1)]
    parted = [Parted(d, d >= 0.03) for d in (0.02, 0.03, 0.04, 0.05)]
    found = coupon.read_coupon(session, widths, parted)
    assert taught(session.snapshot) is None
    coupon.adopt(session, found)
    snap = session.snapshot
    assert snap.settings.bits.vbit.tip == pytest.approx(found.tip, abs=6e-4)
    assert session.derived.cuts(snap).width > before + 0.02
    belief = taught(snap)
    assert belief is not None
    assert belief.offset == pytest.approx(found.offset)
    assert belief.offset > 0.005
    surface = session.derived.surface(snap)
    assert belief_from([], surface, snap.settings, belief) is belief
    shift, _ = belief.at(np.array([[10.0, 10.0]]), np.array([0.003]))
    assert shift[0] == pytest.approx(found.offset)
    assert session.undo() == "V-bit as its coupon says"
    assert session.settings.bits.vbit == bit
    assert taught(session.snapshot) is None
    session.redo()
    again = taught(session.snapshot)
    assert again is not None
    assert (again.offset, again.spread) == (belief.offset, belief.spread)


@pytest.mark.parametrize("corner", list(Corner))
def test_the_coupon_lies_in_the_corner_asked_for_and_is_written(session, tmp_path, corner):
    wide = replace(session.settings.blank, width=0.0, height=0.0, margin=20.0)
    session.change("Room in every corner", blank=wide)
    layout = session.derived.layout(session.snapshot)
    pattern = lay_pattern(session.derived, session.snapshot, corner)
    middle = np.vstack([cut.path for cut in pattern.widths.cuts]).mean(axis=0)
    x0, y0, x1, y1 = layout.workable.bounds
    assert ("right" in corner) == (middle[0] > (x0 + x1) / 2)
    assert ("upper" in corner) == (middle[1] > (y0 + y1) / 2)
    files = coupon.export_coupon(session, tmp_path / "made", corner)
    assert [path.suffix for path in files] == [".nc", ".txt"]
    text = files[1].read_text(encoding="utf-8")
    assert "not touched" in text
    assert all(cut.label in text for cut in pattern.cuts)


def test_readings_on_the_command_line_tell_the_bit_and_are_used(session, capsys):
    path, bit, play = session.job.path, session.settings.bits.vbit, session.settings.passes.play
    session.close()
    words = ["coupon", str(path), "--json", "--use"]
    for depth, expected in lines_of(bit).widths:
        words += ["--width", f"{depth}={expected + 0.03:.3f}"]
    for depth in lines_of(bit).squares:
        words += ["--parted" if depth >= 0.03 else "--joined", str(depth)]
    assert main(words) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["used"]
    truth = bit.tip + bit.runout + 0.03
    both, offset = found["tip_and_runout_mm"], found["deeper_than_set_mm"]
    # squares part from between 0.02 and 0.03 mm on where 0.035 mm of copper lies: their shallowest spots are
    # 5 to 15 µm deeper than set, and lack most of the play that the cutting load takes up
    assert 0.003 < offset["value"] - SHALLOWEST * play < 0.017
    deeper = offset["value"] - play / 2
    assert both["value"] + deeper * bit.slope == pytest.approx(truth, abs=2 * both["sigma"])
    again = Session.open(path)
    assert again.settings.bits.vbit.tip == pytest.approx(found["tip_mm"]["value"], abs=6e-4)
    again.close()


def test_a_command_without_anything_to_do_is_refused(session, capsys):
    path = session.job.path
    session.close()
    assert main(["coupon", str(path)]) == 1
    assert "--width" in capsys.readouterr().err
