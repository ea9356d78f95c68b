"""Lines say exactly what the moves say, shortly."""

import re

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.errors import PlanError
from drypoint.gcode.writer import check_length, number, write_lines

WORD = re.compile(r"([A-Z])(-?[\d.]+)")


def read(lines):
    """A minimal modal reading, for the tests: kind, end and feed of every line with axis words."""
    mode, feed, place, found = None, None, [None, None, None], []
    for line in lines:
        words = {}
        for letter, value in WORD.findall(line):
            if letter == "G" and float(value) <= 3:
                mode = int(float(value))
            words[letter] = float(value)
        feed = words.get("F", feed)
        for axis, letter in enumerate("XYZ"):
            place[axis] = words.get(letter, place[axis])
        if words.keys() & set("XYZ"):
            found.append((mode, tuple(place), feed))
    return found


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (1.5, "1.5"),
        (-0.25, "-0.25"),
        (0.0, "0"),
        (-0.0001, "0"),
        (100.0, "100"),
        (2.3456, "2.346"),
        (10, "10"),
    ],
)
def test_numbers_are_short(value, text):
    assert number(value) == text


def test_numbers_without_decimals_keep_their_zeros():
    assert number(12000.0, 0) == "12000"


def test_words_that_repeat_are_left_out():
    lines, moves = write_lines(
        [0, 1, 1, 1, 0, 1],
        [(0, 0, 2), (0, 0, -0.1), (5, 0, -0.1), (5, 5, -0.1), (5, 5, 2), (5, 5, -0.1)],
        [0, 60, 300, 300, 0, 300],
    )
    assert lines == ("G0X0Y0Z2", "G1Z-0.1F60", "X5F300", "Y5", "G0Z2", "G1Z-0.1F300")
    assert moves.tolist() == [0, 1, 2, 3, 4, 5]


def test_the_first_feed_after_a_rapid_carries_its_feed():
    """Even where it is the feed that holds already."""
    lines, _ = write_lines([1, 0, 1], [(1, 0, 0), (2, 0, 0), (3, 0, 0)], [300, 0, 300])
    assert lines[2] == "G1X3F300"


def test_arcs_carry_their_end_and_centre():
    lines, _ = write_lines(
        [1, 3, 3], [(1, 0, -1), (1, 0, -2), (1, 0, -2)], [100, 100, 100], [(0, 0), (-1, 0), (-1, 0)]
    )
    assert lines[1:] == ("G3X1Y0Z-2I-1J0", "X1Y0I-1J0")


def test_dwell_and_moves_that_go_nowhere():
    lines, moves = write_lines(
        [1, 4, 1, 1], [(1, 0, 0)] * 3 + [(2, 0, 0)], [9, 0, 9, 9], dwell=[0, 2.5, 0, 0]
    )
    assert lines == ("G1X1Y0Z0F9", "G4P2.5", "X2")
    assert moves.tolist() == [0, 1, 3]


def test_known_start_and_unknown_ends():
    lines, _ = write_lines([0, 1], [(1, 1, 5), (np.nan, np.nan, 0)], [0, 60], start=(None, None, 5))
    assert lines == ("G0X1Y1", "G1Z0F60")


def test_feed_must_be_there_and_lines_short():
    with pytest.raises(PlanError, match="no feed"):
        write_lines([1], [(1, 1, 1)], [0])
    with pytest.raises(PlanError, match="takes 20"):
        write_lines([1], [(-123.456, -123.456, -123.456)], [1000], limit=20)
    check_length(["X" * 79])
    with pytest.raises(PlanError, match="81 characters"):
        check_length(["X" * 80])


place = st.tuples(*[st.floats(-300, 300)] * 3)


@given(st.lists(st.tuples(st.sampled_from([0, 1]), place, st.floats(1, 2000)), min_size=1, max_size=30))
def test_every_line_reads_back_as_its_move(moves):
    kinds, ends, feeds = [m[0] for m in moves], [m[1] for m in moves], [m[2] for m in moves]
    lines, index = write_lines(kinds, ends, feeds)
    for (mode, end, feed), i in zip(read(lines), index.tolist(), strict=True):
        assert mode == kinds[i]
        assert end == pytest.approx(ends[i], abs=5.1e-4)
        if mode == 1:
            assert feed == pytest.approx(feeds[i], abs=0.051)
    assert all(len(line) < 80 for line in lines)
