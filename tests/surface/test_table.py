"""Touches as a table: the way out and back, and clear words for what cannot be read."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.errors import InputError
from drypoint.surface.table import read_csv, write_csv
from drypoint.surface.touch import Touch, Touches

NUMBER = st.floats(-500, 500).map(lambda v: round(v, 4))


@given(st.lists(st.tuples(NUMBER, NUMBER, NUMBER, st.none() | NUMBER), max_size=20))
def test_round_trip(rows):
    touches = Touches(tuple(Touch(*row) for row in rows))
    assert read_csv(write_csv(touches)).touches == touches.touches


def test_units_order_and_separator_are_read():
    found = read_csv("# frame: machine\nz [µm];x [inch];note;y [mm]\n-15;1;edge;2.5\n").touches[0]
    assert (found.x, found.y, found.second, found.first) == (25.4, 2.5, -0.015, None)


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("", "empty"),
        ("x [mm],y [mm]\n1,2\n", "no column z"),
        ("x,y [mm],z [mm]\n1,2,3\n", "unit"),
        ("x [mm],y [mm],z [mm]\n1,two,3\n", "two"),
        ("x [mm],y [mm],z [mm]\n1,nan,3\n", "nan"),
        ("x [mm],y [mm],z [mm]\n1,2\n", "''"),
        ("# frame: board\nx [mm],y [mm],z [mm]\n1,2,3\n", "frame"),
    ],
)
def test_what_cannot_be_read_is_said(text, part):
    with pytest.raises(InputError, match=part):
        read_csv(text)


@given(st.text(max_size=200))
def test_any_text_gives_touches_or_a_clear_error(text):
    try:
        read_csv(text)
    except InputError:
        return
