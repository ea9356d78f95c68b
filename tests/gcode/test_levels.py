"""Depths of ready-made programs, piece by piece."""

import numpy as np
import pytest
import shapely

from drypoint.gcode.levels import STRETCH, level_paths
from drypoint.gcode.reader import read_gcode
from drypoint.gcode.reader_paths import cut_paths

HEAD = "G21 G90\nM3 S10000\nG0 Z2\nG0 X0 Y0\n"


def _length(pieces) -> float:
    return sum(float(np.hypot(*np.diff(one.path, axis=0).T).sum()) for one in pieces)


def test_level_moves_behind_each_other_are_one_piece():
    moves = read_gcode(HEAD + "G1 Z-0.06 F60\nX5 F300\nY5\nG2 X10 Y10 I5 J0\nG0 Z2\nM30\n")
    down, level = level_paths(moves)
    assert len(down.path) == 1
    assert (level.least, level.most) == (0.06, 0.06)
    assert _length([level]) == pytest.approx(10 + np.pi * 2.5, abs=0.01)


def test_a_ramp_falls_into_short_stretches_from_where_it_meets_the_copper():
    """From 1 mm above to 1 mm below over 10 mm: it cuts from 5 mm on, as deep as the line is."""
    pieces = level_paths(read_gcode(HEAD + "G1 Z1 F60\nG1 X10 Z-1 F300\nG0 Z2\nM30\n"))
    for one in pieces:
        assert np.hypot(*(one.path[-1] - one.path[0])) <= STRETCH + 1e-9
        line = np.interp(one.path[:, 0], [0, 10], [-1, 1])
        assert one.most == pytest.approx(max(line.max(), 0.0), abs=1e-6)
        assert one.least == pytest.approx(max(line.min(), 0.0), abs=1e-6)
    assert min(one.path[:, 0].min() for one in pieces) == pytest.approx(5.0, abs=STRETCH)


def test_everything_that_is_cut_is_there_and_nothing_else():
    rng = np.random.default_rng(4)
    lines = [
        f"G{kind} X{x:.3f} Y{y:.3f} Z{z:.3f}" + (" F200" if kind else "")
        for kind, x, y, z in zip(
            rng.integers(0, 2, 60),
            rng.uniform(0, 20, 60),
            rng.uniform(0, 20, 60),
            rng.uniform(-0.2, -0.05, 60),
            strict=True,
        )
    ]
    moves = read_gcode(HEAD + "G1 Z-0.1 F60\n" + "\n".join(lines) + "\nG0 Z2\nM30\n")
    pieces, whole = level_paths(moves), cut_paths(moves)
    cut = shapely.union_all([shapely.LineString(one.path) for one in pieces if len(one.path) > 1])
    told = shapely.union_all([shapely.LineString(one.path) for one in whole if len(one.path) > 1])
    assert cut.length == pytest.approx(told.length, rel=1e-6)
    assert max(one.most for one in pieces) == pytest.approx(max(one.depth for one in whole))
