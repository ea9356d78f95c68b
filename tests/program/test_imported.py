"""Ready-made programs are mapped and written anew: same cuts, our travel."""

import math

import numpy as np
import pytest
import shapely

from drypoint.errors import PlanError
from drypoint.gcode.reader import read_gcode
from drypoint.geometry.rigid import Rigid
from drypoint.program.check import check_lines
from drypoint.program.imported import place_imported
from drypoint.program.limits import arc_points
from drypoint.program.model import MoveKind
from drypoint.reference.affine import fit_affine

FILE = """
G21 G90 G17
M3 S8000
G0 Z5
G0 X10 Y10
G0 Z0.2
G1 Z-0.5 F50
G1 X30 F200
G3 X30 Y30 I0 J10
G1 X10
G2 X10 Y10 I0 J-10
G0 Z5
G0 X40 Y5
G1 Z-1 F50
G0 Z5
M5
M2
"""
FIT = Rigid(0.4, (20.0, -3.0))


def _swept(program, tag):
    moves = program.moves
    parts = []
    for i in np.flatnonzero(moves.tag == tag).tolist():
        if moves.kind[i] == MoveKind.FEED:
            parts.append(shapely.LineString(moves.end[i - 1 : i + 1, :2]))
        elif moves.kind[i] in (MoveKind.ARC_CW, MoveKind.ARC_CCW):
            parts.append(shapely.LineString(arc_points(program, i, 400)))
    return shapely.union_all([p.buffer(0.05) for p in parts])


def _wanted(fit):
    """The file's first cut: a stadium with round ends that bulge out at the right, in at the left."""
    t = np.linspace(0, math.pi, 400)
    right = np.column_stack((30 + 10 * np.sin(t), 20 - 10 * np.cos(t)))
    left = np.column_stack((10 + 10 * np.sin(t), 20 + 10 * np.cos(t)))
    path = np.vstack(([(10, 10)], right, left))
    return shapely.LineString(fit.apply(path)).buffer(0.05)


@pytest.mark.parametrize("mirror", [False, True])
def test_cuts_are_mapped_and_arcs_stay_arcs(mill, mirror):
    fit = Rigid(0.4, (20.0, -3.0), mirror)
    (program,) = place_imported(read_gcode(FILE), {0: mill}, fit)
    kinds = program.moves.kind.tolist()
    assert kinds.count(MoveKind.ARC_CW) == 1
    assert kinds.count(MoveKind.ARC_CCW) == 1
    swept, wanted = _swept(program, 0), _wanted(fit)
    assert swept.symmetric_difference(wanted).area < 0.004 * wanted.length
    assert program.moves.end[:, 2].min() == pytest.approx(-1.0)


def test_the_file_s_own_height_is_kept_and_rapids_stay_up(mill):
    (program,) = place_imported(read_gcode(FILE), {0: mill}, FIT)
    assert program.clearance == pytest.approx(5.0)
    check_lines(program.lines, 5.0)
    assert set(program.moves.tag.tolist()) == {-1, 0, 1}


def test_on_a_surface_heights_follow_it(mill, waves):
    (program,) = place_imported(read_gcode(FILE), {0: mill}, FIT, waves)
    moves = program.moves
    cut = np.flatnonzero((moves.tag == 0) & (moves.feed == 200))
    assert len(cut) > 20
    worst = 0.0
    for share in np.linspace(0, 1, 21):
        at = moves.end[cut - 1] + share * (moves.end[cut] - moves.end[cut - 1])
        worst = max(worst, np.abs(at[:, 2] - (waves.mean(at[:, :2]) - 0.5)).max())
    assert worst <= program.chord + 0.0006
    assert _swept(program, 0).symmetric_difference(_wanted(FIT)).area < 0.006 * _wanted(FIT).length


def test_an_affine_fit_turns_arcs_into_chords(mill):
    holes = np.array([(0, 0), (50, 0), (50, 40), (0, 40.0)])
    fit = fit_affine(holes, holes @ np.array([[1.01, 0.0], [0.0, 1.0]]))
    (program,) = place_imported(read_gcode(FILE), {0: mill}, fit)
    assert MoveKind.ARC_CCW not in program.moves.kind.tolist()
    assert _swept(program, 0).symmetric_difference(_wanted(fit)).area < 0.006 * _wanted(fit).length


def test_tools_become_programs_of_their_own(mill, bit08):
    text = "G21G90\nG0Z3\nG0X1Y1\nG1Z-1F60\nG0Z3\nT2M6\nG0X5Y5\nG1Z-1F60\nG0Z3\nM2\n"
    moves = read_gcode(text)
    tools = sorted({move.tool for move in moves})
    programs = place_imported(moves, {tools[0]: mill, tools[1]: bit08}, FIT, first=7)
    assert [p.bit for p in programs] == [mill, bit08]
    assert [p.name[:2] for p in programs] == ["07", "08"]
    with pytest.raises(PlanError, match="No bit"):
        place_imported(moves, {tools[0]: mill}, FIT)


def test_nothing_to_cut_and_no_feed(mill):
    assert place_imported((), {0: mill}, FIT) == ()
    assert place_imported(read_gcode("G21\nG0X1Y1\n"), {0: mill}, FIT) == ()
    with pytest.raises(PlanError, match="no feed"):
        place_imported(read_gcode("G21\nG0Z2\nG1X1\n"), {0: mill}, FIT)


def test_dwells_are_kept(mill):
    (program,) = place_imported(read_gcode("G21\nG0Z2\nG1Z-1F60\nG4P1.5\nG0Z2\n"), {0: mill}, FIT)
    assert "G4P1.5" in program.lines
    assert program.moves.dwell.sum() == pytest.approx(1.5)
