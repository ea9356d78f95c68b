"""Files say what the program does, and read back as it."""

from dataclasses import replace

import numpy as np
import pytest

from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import PlanError
from drypoint.gcode.reader import read_gcode
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.passes.model import Pass, Run
from drypoint.program.export import file_name, file_text
from drypoint.program.place import place, place_cuts


@pytest.fixture
def program(vbit, waves):
    path = as_points([(0, 0), (20, 0), (20, 15), (0, 0)])
    return place([Pass(1, vbit, (Run(0, path, np.full(4, 0.06)),))], Rigid(0.2, (3, 4)), waves)[0]


def test_the_file_holds_the_very_lines(program):
    text = file_text(program, job="hive scale (second try), 30° bit")
    lines = text.splitlines()
    start = lines.index(program.lines[0])
    assert tuple(lines[start:-1]) == program.lines
    assert lines[-1] == "M2"
    assert all(line.startswith("(") and line.endswith(")") for line in lines[:start])
    assert all(len(line) < 80 and line.isascii() for line in lines)
    assert "second try" in text
    assert file_name(program) == "01-grooves-pass-1.nc"


def test_the_file_reads_back(program, mill):
    bore = Cut(CutKind.BORE, mill, as_points([(10, 10)]), depth=1.8, diameter=3.2)
    for one in (program, *place_cuts([bore], Rigid(0.3, (1, 2)), None)):
        moves = [m for m in read_gcode(file_text(one)) if m.kind != "dwell"]
        assert moves[-1].end[:2] == pytest.approx((0, 0))
        assert min(m.end[2] for m in moves) == pytest.approx(one.moves.end[:, 2].min())
        cutting = [m for m in moves if m.end[2] < 0]
        assert all(m.spindle == "cw" for m in cutting)


def test_a_file_that_reads_otherwise_is_refused(program):
    wrong = replace(program, lines=(*program.lines[:12], "X1Y1", *program.lines[13:]))
    with pytest.raises(PlanError, match="read back"):
        file_text(wrong)
    short = replace(program, lines=(*program.lines[:9], "M5"))
    with pytest.raises(PlanError, match="moves"):
        file_text(short)
