"""What a program cuts, and what its tools are for."""

from __future__ import annotations

import math

import pytest
from shapely import LineString

from drypoint.gcode.reader import read_gcode
from drypoint.gcode.reader_paths import ToolUse, cut_paths, use_of

_HEAD = "G21 G90\nF100\n"


def test_paths_end_at_every_lift_and_change_of_tool() -> None:
    text = (
        _HEAD
        + "T1 M6\nG0 X0 Y0 Z1\nG1 Z-0.1\nX10\nY5\nG0 Z1\nX20 Y0\nG1 Z-0.2\nX30\nG0 Z1\n"
        + "T2 M6\nG0 X5 Y5\nG1 Z-1.8\nG0 Z1\nM2\n"
    )
    paths = cut_paths(read_gcode(text))
    assert [path.path.tolist() for path in paths] == [
        [[0, 0], [10, 0], [10, 5]],
        [[20, 0], [30, 0]],
        [[5, 5]],
    ]
    assert [path.depth for path in paths] == [0.1, 0.2, 1.8]
    assert [path.tool for path in paths] == [1, 1, 2]
    assert use_of(paths[:2]) is ToolUse.ENGRAVING
    assert use_of(paths[2:]) is ToolUse.DRILLING


def test_a_full_circle_has_its_length() -> None:
    paths = cut_paths(read_gcode(_HEAD + "G0 X5 Y0 Z1\nG1 Z-1.7\nG2 X5 Y0 I-5 J0\nG0 Z1\nM2\n"))
    (one,) = paths
    assert LineString(one.path).length == pytest.approx(2 * math.pi * 5, rel=2e-4)
    assert use_of(paths) is ToolUse.MILLING


def test_feeds_above_the_copper_are_no_cuts() -> None:
    assert cut_paths(read_gcode(_HEAD + "G0 Z1\nG1 X10\nG1 Z0\nX0\nM2\n")) == ()


def test_pecks_are_drilling() -> None:
    """Every peck is a path of its own on one spot (canned cycle G83, NISTIR 6556, 3.5.16)."""
    paths = cut_paths(read_gcode(_HEAD + "G0 Z1\nG83 X3 Y4 Z-1.8 R0.5 Q0.5\nM2\n"))
    assert len(paths) > 2
    assert {tuple(path.path[0]) for path in paths} == {(3.0, 4.0)}
    assert use_of(paths) is ToolUse.DRILLING
