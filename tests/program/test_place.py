"""Passes placed on the machine: mapped, bent, safe, and written exactly."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.passes.model import Pass, Run
from drypoint.program.check import check_lines
from drypoint.program.model import MoveKind
from drypoint.program.place import place
from drypoint.program.settings import ProgramSettings
from drypoint.progress import Cancelled, Progress

SQUARE = as_points([(0, 0), (20, 0), (20, 15), (0, 15), (0, 0)])
FIT = Rigid(0.3, (12.0, -4.0))


def _run(path, depth=0.06, groove=0):
    return Run(groove, as_points(path), np.full(len(path), depth))


def _cutting(program, tag=0):
    """(N, 3) ends of the moves along one run, without the way down."""
    moves = program.moves
    index = np.flatnonzero((moves.tag == tag) & (moves.kind == MoveKind.FEED))
    return moves.end[index[1:]]


def test_moves_are_mapped_and_at_depth(vbit, waves):
    path = SQUARE[:4]
    (program,) = place([Pass(1, vbit, (_run(path),))], FIT, waves)
    ends = _cutting(program)
    for corner in FIT.apply(path):
        off = np.hypot(*(ends[:, :2] - corner).T)
        nearest = ends[np.argmin(off)]
        assert off.min() < 1e-3
        assert nearest[2] == pytest.approx(waves.mean([corner])[0] - 0.06, abs=0.0015)


def test_never_beyond_the_chord(vbit, waves):
    """On the written text, half a digit of rounding in x, y and z added to the stated bound."""
    settings = ProgramSettings(chord=0.002)
    (program,) = place([Pass(1, vbit, (_run(SQUARE),))], FIT, waves, settings=settings)
    ends = _cutting(program)
    worst = 0.0
    for share in np.linspace(0, 1, 33):
        at = ends[:-1] + share * np.diff(ends, axis=0)
        worst = max(worst, np.abs(at[:, 2] - (waves.mean(at[:, :2]) - 0.06)).max())
    slope = 0.03 / 2.5 + 0.004
    assert worst <= program.chord + 0.0005 * (1 + 2 * slope)
    assert program.chord <= 0.002


def test_rapids_stay_on_the_clearance_plane(vbit, waves, read):
    runs = tuple(_run(SQUARE + np.array([25.0 * k, 0]), groove=k) for k in range(3))
    (program,) = place([Pass(1, vbit, runs)], FIT, waves, settings=ProgramSettings(clearance=1.5))
    spots = FIT.apply(np.vstack([run.path for run in runs]))
    assert program.clearance >= waves.mean(spots).max() + 1.5
    height = None
    for _, mode, end, feed, _ in read(program.lines):
        if mode == 0:
            assert end[2] == pytest.approx(program.clearance)
            assert height == pytest.approx(program.clearance)
        else:
            assert feed is not None
        height = end[2]


def test_header_spindle_and_park(vbit):
    (program,) = place([Pass(2, vbit, (_run(SQUARE),))], FIT, None, first=4)
    assert program.name == "04-grooves-pass-2"
    assert program.title == "Grooves, pass 2"
    assert program.lines[:5] == ("G21", "G90", "G94", "G17", "G54")
    spindle = program.lines.index("M3S10000")
    assert program.lines[spindle + 1] == "G4P3"
    assert not any("X" in line for line in program.lines[:spindle])
    assert program.lines[-2:] == ("M5", "G0X0Y0")
    assert program.line_move[-2] == -1
    by_hand = ProgramSettings(spindle_control=False, park=None)
    (program,) = place([Pass(2, vbit, (_run(SQUARE),))], FIT, None, settings=by_hand)
    assert not any("M" in line for line in program.lines)
    assert program.lines[-1].startswith("Z")


def test_lines_and_moves_belong_together(vbit, waves, read):
    runs = tuple(_run(SQUARE + np.array([25.0 * k, 0]), groove=k) for k in range(3))
    (program,) = place([Pass(1, vbit, runs)], FIT, waves)
    motions = {index: end for index, _, end, _, _ in read(program.lines)}
    seen = []
    for line, move in enumerate(program.line_move.tolist()):
        if move >= 0:
            assert motions[line] == pytest.approx(program.moves.end[move], abs=1e-9)
            seen.append(move)
    assert seen == list(range(len(program.moves)))
    assert set(program.moves.tag.tolist()) == {-1, 0, 1, 2}


def test_closed_runs_go_on_past_their_start(vbit):
    (program,) = place([Pass(1, vbit, (_run(SQUARE),))], Rigid(), None, settings=ProgramSettings(overlap=0.5))
    assert _cutting(program)[-1] == pytest.approx((0.5, 0.0, -0.06))
    (program,) = place([Pass(1, vbit, (_run(SQUARE[:4]),))], Rigid(), None)
    assert _cutting(program)[-1] == pytest.approx((0.0, 15.0, -0.06))


def test_the_overlap_is_never_deeper(vbit):
    run = Run(0, SQUARE, np.array([0.05, 0.09, 0.05, 0.05, 0.05]))
    (program,) = place([Pass(1, vbit, (run,))], Rigid(), None, settings=ProgramSettings(overlap=25.0))
    first = {tuple(e[:2]): e[2] for e in _cutting(program)[:4].tolist()}
    again = _cutting(program)[5:]
    assert len(again)
    for x, y, z in again.tolist():
        assert z == pytest.approx(first.get((x, y), z))


def test_runs_that_meet_are_joined(vbit):
    runs = (_run([(0, 0), (5, 0)]), _run([(5, 0), (5, 5)]), _run([(9, 9), (5, 9)]))
    (program,) = place([Pass(1, vbit, runs)], Rigid(), None)
    assert int((program.moves.kind == MoveKind.RAPID).sum()) == 3  # to run 0, to run 2, to park


def test_joined_runs_go_down_slowly(vbit):
    """Where a joined run starts deeper, the bit does not jump down at the feed for grooves."""
    runs = (_run([(0, 0), (5, 0)], 0.05), _run([(5, 0), (5, 5)], 0.15))
    (program,) = place([Pass(1, vbit, runs)], Rigid(), None)
    ends, feeds = program.moves.end, program.moves.feed
    down = np.flatnonzero((np.diff(ends[:, 2]) < 0) & (np.hypot(*np.diff(ends[:, :2], axis=0).T) == 0)) + 1
    assert (feeds[down[ends[down, 2] < 0]] == 60).all()


def test_play_is_taken_up_from_one_side(vbit):
    runs = (_run([(5, 5), (9, 5)]), _run([(2, 3), (4, 3)]))
    (program,) = place([Pass(1, vbit, runs)], Rigid(), None, settings=ProgramSettings(take_up=0.2))
    moves = program.moves
    for index in np.flatnonzero(moves.kind == MoveKind.FEED):
        if moves.kind[index - 1] == MoveKind.RAPID:
            assert moves.end[index - 1, :2] - moves.end[index - 2, :2] == pytest.approx((0.2, 0.2))


def test_an_empty_pass_cuts_nothing(vbit):
    (program,) = place([Pass(1, vbit, ())], Rigid(), None)
    assert len(program.moves) == 0
    check_lines(program.lines, program.clearance)
    (program,) = place([Pass(1, vbit, (_run(np.zeros((0, 2))), _run(SQUARE)))], Rigid(), None)
    assert set(program.moves.tag.tolist()) == {-1, 1}


def test_cancelled_at_once(vbit, waves):
    progress = Progress()
    progress.cancel()
    with pytest.raises(Cancelled):
        place([Pass(1, vbit, (_run(SQUARE),))], FIT, waves, progress=progress)


@settings(max_examples=40, deadline=None)
@given(
    angle=st.floats(-3.2, 3.2),
    offset=st.tuples(st.floats(-150, 150), st.floats(-150, 150)),
    mirror=st.booleans(),
    seed=st.integers(0, 1000),
)
def test_text_is_safe_wherever_the_board_lies(vbit_module, angle, offset, mirror, seed):
    rng = np.random.default_rng(seed)
    runs = tuple(_run(rng.uniform(0, 60, (rng.integers(2, 7), 2)), groove=k) for k in range(4))
    (program,) = place([Pass(1, vbit_module, runs)], Rigid(angle, offset, mirror), None)
    check_lines(program.lines, program.clearance, 80)
    want = Rigid(angle, offset, mirror).apply(runs[2].path)
    assert np.abs(_cutting(program, 2)[:, :2] - want).max() <= 5.1e-4


@pytest.fixture(scope="module")
def vbit_module():
    from drypoint.bits.model import Speeds, VBit

    return VBit("V 30", 0.1, 0.52, Speeds(10000, 300, 60))
