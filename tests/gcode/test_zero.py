"""Where programs have their z = 0, told from how far they go above and below it."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.gcode.reader import read_program
from drypoint.gcode.reader_paths import ToolUse, cut_paths, use_of
from drypoint.gcode.zero import guess_zero, lowered


def square(depths, *, travel=5.0, feed_travel=False):
    """A square cut at each of these heights."""
    go = "G1 F900" if feed_travel else "G0"
    cut = "".join(f"{go} X2 Y2 Z{travel}\nG1 F100 Z{z}\nX22\nY12\nX2\nY2\n{go} Z{travel}\n" for z in depths)
    return read_program(f"G21 G90\nF100\nG0 Z{travel}\n{cut}M2\n", name="square.nc")


def holes(z):
    text = "".join(f"G0 X{x} Y5 Z5\nG1 F60 Z{z}\nG0 Z5\n" for x in (4, 9, 16))
    return read_program(f"G21 G90\n{text}M2\n", name="holes.nc")


def guessed(*programs):
    return guess_zero([one.moves for one in programs])


@pytest.mark.parametrize("feed_travel", [False, True])
@pytest.mark.parametrize("depths", [(-0.08,), (-0.5, -1.0, -1.8)])
def test_cuts_below_zero_have_it_on_the_copper(depths, feed_travel):
    guess = guessed(square(depths, feed_travel=feed_travel), holes(-1.8))
    assert not guess.on_backing
    assert guess.copper == 0.0


@pytest.mark.parametrize("thickness", [0.8, 1.55, 3.2])
def test_engraving_above_zero_has_it_on_the_backing_and_stays_engraving(thickness):
    program = square((thickness - 0.08,))
    guess = guessed(program, holes(-0.3))
    assert guess.on_backing
    paths = cut_paths(lowered(program, guess.copper).moves)
    assert paths
    assert use_of(paths) is ToolUse.ENGRAVING


def test_an_outline_down_to_the_backing_is_known_by_its_upper_layers():
    assert guessed(square((1.0, 0.5, -0.2))).on_backing


def test_holes_down_to_the_backing_and_no_farther():
    guess = guessed(holes(0.0))
    assert guess.on_backing
    assert len(cut_paths(lowered(holes(0.0), guess.copper).moves)) == 3


def test_low_travel_by_feed_is_not_taken_for_cuts():
    """Between grooves 2 mm apart it goes at 0.5 mm height, driven by feed."""
    lines = "".join(f"G1 X0 Y{y} Z0.5\nZ-0.1\nX30\nZ0.5\nY{y + 2}\nX30\n" for y in range(0, 12, 4))
    program = read_program(f"G21 G90 F200\nG0 Z4\n{lines}G0 Z4\nM2\n", name="low.nc")
    back = read_program(
        f"G21 G90 F200\nG0 Z4\n{lines.replace('Z-0.1', 'Z1.45').replace('Z0.5', 'Z2.05')}G0 Z4\nM2\n",
        name="low.nc",
    )
    assert not guessed(program).on_backing
    assert guessed(back).on_backing


@settings(deadline=None)
@given(by=st.floats(0.0, 5.0), depth=st.floats(0.01, 3.0))
def test_lowering_and_raising_again_changes_nothing(by, depth):
    program = square((-depth,))
    again = lowered(lowered(program, by), -by)
    assert [move.end[2] for move in again.moves] == pytest.approx([move.end[2] for move in program.moves])
