"""A broken run taken up again: nothing skipped, never deeper, overlap as wished."""

from __future__ import annotations

import re
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from drypoint.errors import PlanError
from drypoint.gcode.writer import write_lines
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.recovery import plan_resumption, state_lines
from drypoint.passes.model import Pass, Run
from drypoint.program.model import MoveKind, Moves
from drypoint.program.place import place
from drypoint.program.settings import ProgramSettings


def path_of(lines, start=(0.0, 0.0, 2.0)):
    """(kind, x, y, z) after every line that moves, from where the bit stood."""
    at, kind, found = list(start), "", []
    for line in lines:
        if word := re.search(r"G([01])(?!\d)", line):
            kind = "rapid" if word[1] == "0" else "feed"
        words = re.findall(r"([XYZ])(-?[\d.]+)", line)
        for axis, value in words:
            at["XYZ".index(axis)] = float(value)
        if words:
            found.append((kind, *at))
    return found


def test_the_lead_in_starts_before_the_break_at_the_depth_cut_there(groove):
    program = groove([(0.0, 0.0), (50.0, 0.0), (50.0, 30.0)])
    line = program.lines.index("Y30")
    taken = plan_resumption(program, line, lead_in=2.0)
    assert taken.start == pytest.approx((48.0, 0.0, -0.1))
    assert taken.overlap == pytest.approx(2.0)
    assert taken.clear == pytest.approx(2.0)
    kinds = path_of(taken.program.lines, (48.0, 0.0, 2.0))
    assert [kind for kind, *_ in kinds[:3]] == ["rapid", "rapid", "feed"]
    assert kinds[2][1:] == pytest.approx((48.0, 0.0, -0.1))
    assert taken.program.lines[taken.lead + 1 :] == program.lines[line + 1 :]


def test_spindle_its_wait_and_the_feed_are_restored(groove):
    program = groove([(0.0, 0.0), (50.0, 0.0), (50.0, 30.0), (20.0, 30.0)], feed=271.0)
    taken = plan_resumption(program, program.lines.index("Y30"))
    lead = taken.program.lines[: taken.lead]
    assert lead[1:3] == ("M3S8000", "G4P1")
    assert taken.program.lines[taken.lead].endswith("F271")


def test_from_the_start_it_is_the_program_itself(groove):
    program = groove([(0.0, 0.0), (5.0, 0.0)])
    taken = plan_resumption(program, 0)
    assert taken.program.lines == program.lines
    assert taken.original(3) == 3


def test_with_nothing_left_to_move_the_rest_is_sent_plainly(groove):
    program = groove([(0.0, 0.0), (5.0, 0.0)])
    last = len(program.lines) - 1
    taken = plan_resumption(program, last)
    assert taken.program.lines == ("M5",)
    assert taken.original(1) == last + 1


def test_a_line_that_does_not_exist_is_refused(groove):
    with pytest.raises(PlanError):
        plan_resumption(groove([(0.0, 0.0), (5.0, 0.0)]), 99)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60, deadline=None)
@given(data=st.data())
def test_whatever_the_break_all_that_was_left_is_cut_and_no_deeper(groove, data):
    count = data.draw(st.integers(2, 15))
    coordinate = st.integers(-50, 50).map(lambda value: value / 10)
    points = data.draw(
        st.lists(st.tuples(coordinate, coordinate), min_size=count, max_size=count, unique=True)
    )
    program = groove(points, depth=data.draw(st.sampled_from([0.05, 0.1, 0.4])))
    first = data.draw(st.integers(1, len(program.lines)))
    taken = plan_resumption(program, first, lead_in=data.draw(st.sampled_from([0.0, 0.5, 2.0, 100.0])))
    new = path_of(taken.program.lines, taken.start or (0.0, 0.0, 2.0))
    done = path_of(program.lines[:first], (*points[0], 2.0))
    whole = path_of(program.lines, (*points[0], 2.0))
    assert new[len(new) - (len(whole) - len(done)) :] == whole[len(done) :] or not taken.start
    assert min((z for *_, z in new), default=2.0) >= min(z for *_, z in whole) - 1e-9
    moving = [re.search(r"[XYZ]", line) is not None for line in taken.program.lines]
    assert [move >= 0 for move in taken.program.line_move] == moving
    for line, move in zip(taken.program.lines, taken.program.line_move, strict=True):
        for axis, value in re.findall(r"([XYZ])(-?[\d.]+)", line):
            assert float(value) == pytest.approx(taken.program.moves.end[move]["XYZ".index(axis)], abs=6e-4)


def test_counts_map_back_to_the_old_program(groove):
    program = groove([(0.0, 0.0), (50.0, 0.0), (50.0, 30.0)])
    line = program.lines.index("Y30")
    taken = plan_resumption(program, line)
    assert taken.original(0) == taken.original(taken.lead) == line
    assert taken.original(len(taken.program.lines)) == len(program.lines)


class Level:
    """Copper that is flat."""

    def mean(self, points):
        return np.zeros(len(points))


def _hopping(bit, *, hop, take_up):
    """Squares with low ways between them, then two runs that are joined."""
    square = np.array([(0.0, 0.0), (1.2, 0.0), (1.2, 1.2), (0.0, 1.2), (0.0, 0.0)])
    paths = [square + at for at in [(0.0, 0.0), (3.0, 0.5), (6.0, 0.0)]]
    paths += [np.array([(9.0, 0.0), (9.7, 0.0), (9.7, 0.9)]), np.array([(9.7, 0.9), (12.0, 0.9)])]
    runs = tuple(Run(k, as_points(path), np.full(len(path), 0.1)) for k, path in enumerate(paths))
    settings = ProgramSettings(hop=hop, take_up=take_up, park=None)
    return place([Pass(1, bit, runs)], Rigid(), Level(), settings=settings)[0]


def _milled(lines, start):
    """Segments (N, 4) that lie in copper, and those (N, 4) above it, of lines from a place (x, y, z)."""
    spots = np.array([start, *(at for _, *at in path_of(lines, start))])
    ways = np.column_stack((spots[:-1, :2], spots[1:, :2]))
    moved, down = (ways[:, :2] != ways[:, 2:]).any(axis=1), (spots[:-1, 2] < 0) & (spots[1:, 2] < 0)
    return ways[moved & down], ways[moved & ~down]


def _length(ways):
    return float(np.hypot(ways[:, 2] - ways[:, 0], ways[:, 3] - ways[:, 1]).sum())


def _hanging_together(ways, end):
    """Length of the last of the ways that lead to ``end`` without a break."""
    length = 0.0
    for one in ways[::-1]:
        if not np.allclose(one[2:], end):
            break
        end, length = one[:2], length + _length(one[None])
    return length


@pytest.mark.parametrize("hop", [0.0, 0.5])
@pytest.mark.parametrize("take_up", [0.0, 0.2])
@pytest.mark.parametrize("lead_in", [0.7, 2.0, 100.0])
def test_what_is_cut_twice_is_copper_and_no_hop(groove, hop, take_up, lead_in):
    """At every break: as much is cut again as wished, or all that hangs together."""
    program = _hopping(groove([(0.0, 0.0), (1.0, 0.0)]).bit, hop=hop, take_up=take_up)
    began = (0.0, 0.0, 2.0)
    whole = _milled(program.lines, began)[0]
    breaks = [k for k in range(1, len(program.lines)) if program.line_move[k] >= 0]
    for first in breaks:
        taken = plan_resumption(program, first, lead_in=lead_in)
        at = path_of(program.lines[:first], began)
        here = tuple(at[-1][1:]) if at else began
        done, rest = _milled(program.lines[:first], began)[0], _milled(program.lines[first:], here)[0]
        again = _milled(taken.program.lines, (*taken.start[:2], program.clearance))[0]
        assert taken.overlap == pytest.approx(_length(again) - _length(rest), abs=2e-3)
        next_one = _milled(program.lines[first : first + 1], here)[0]
        before = _hanging_together(done, next_one[0, :2]) if len(next_one) else 0.0
        assert taken.overlap == pytest.approx(min(lead_in, before), abs=2e-3)
        assert len(rest) <= len(again) <= len(whole) + 1


@pytest.mark.parametrize(
    ("lines", "state"),
    [
        ((), []),
        (("M3S8000", "G4P1.5", "G1X3"), ["M3S8000", "G4P1.5"]),
        (("M3S8000", "G4P1", "G1X3", "G4P9"), ["M3S8000", "G4P1"]),
        (("M3S8000", "G4P1", "M5"), []),
        (("M3S8000", "G4P1", "M05"), []),
        (("M3S8000", "G4P1", "M5", "M4S900"), ["M4S900"]),
        (("S700", "M03"), ["M03S700"]),
        (("M3S8000", "S500"), ["M3S500"]),
        (("M30", "(M3)"), []),
    ],
)
def test_the_state_is_that_of_the_last_words(lines, state):
    """A spindle that was switched off stays off, and no wait of an earlier start is taken for its own."""
    assert state_lines(lines) == ["G54G17G21G90G94", *state]


def _feeds_in_force(lines):
    """The modal feed after every line."""
    feed, found = None, []
    for line in lines:
        if word := re.search(r"F([\d.]+)", line):
            feed = float(word[1])
        found.append(feed)
    return found


def test_whatever_the_break_every_feed_that_was_left_is_that_of_the_program(groove):
    """A feed word stands only where it changes: what was sent before must be in force again."""
    depths = [(0.0, 0.0), (5.0, 0.0), (10.0, 0.0)]
    kinds, ends, feeds = [MoveKind.RAPID], [(0.0, 0.0, 2.0)], [0.0]
    for x, y in depths:  # drilled: the second and third plunge name no feed
        kinds += [MoveKind.RAPID, MoveKind.FEED, MoveKind.RAPID]
        ends += [(x, y, 2.0), (x, y, -1.7), (x, y, 2.0)]
        feeds += [0.0, 60.0, 0.0]
    drilled = _program(groove, kinds, ends, feeds)
    kinds = [MoveKind.RAPID, *[MoveKind.FEED] * 2, *[MoveKind.RAPID] * 2, *[MoveKind.FEED] * 2]
    ends = [(0.0, 0.0, 2.0), (0.0, 0.0, -0.1), (5.0, 0.0, -0.1), (5.0, 0.0, 2.0), (5.0, 5.0, 2.0)]
    ends += [(9.0, 5.0, -0.1), (15.0, 5.0, -0.1)]
    ramped = _program(groove, kinds, ends, [0.0, 80.0, 300.0, 0.0, 0.0, 300.0, 300.0])
    bare = [re.sub("F300", "", line) if "Y5Z-0.1" in line or "X9" in line else line for line in ramped.lines]
    assert sum("F" in line for line in bare) == 2, "the ramp names no feed: that of the cut before holds"
    ramped = replace(ramped, lines=tuple(bare))
    for program in (drilled, ramped, _hopping(drilled.bit, hop=0.5, take_up=0.2)):
        whole = _feeds_in_force(program.lines)
        for first in range(1, len(program.lines)):
            taken = plan_resumption(program, first)
            if taken.start is None:
                continue
            new = _feeds_in_force(taken.program.lines)
            feeding = [k for k in range(taken.goes_on, len(whole)) if program.line_move[k] >= 0]
            for k in feeding:
                if program.moves.kind[program.line_move[k]] == MoveKind.FEED:
                    assert new[k - len(whole)] == whole[k], (first, program.lines[k])


def _program(groove, kinds, ends, feeds):
    """A program of moves, the first of them where the bit stands."""
    count = len(kinds)
    ends, feeds = np.array(ends), np.array(feeds)
    moves = Moves(
        np.array(kinds, dtype=np.int8),
        ends,
        feeds,
        np.zeros((count, 2)),
        np.zeros(count, dtype=np.int32),
        np.zeros(count),
    )
    lines, made = write_lines(kinds[1:], ends[1:], feeds[1:], start=tuple(ends[0]))
    plain = groove([(0.0, 0.0), (1.0, 0.0)])
    line_move = np.array([-1, *(made + 1)], dtype=np.int32)
    return replace(plain, moves=moves, lines=("M3S8000", *lines), line_move=line_move)


def test_it_goes_down_as_slowly_as_the_last_plunge_did(groove):
    """Not as slowly as the slowest cut: the plunge is 100 mm/min here, the groove 40."""
    program = groove([(0.0, 0.0), (50.0, 0.0), (50.0, 30.0)], feed=40.0)
    taken = plan_resumption(program, program.lines.index("Y30"))
    assert [line for line in taken.program.lines[: taken.lead] if "Z-0.1" in line] == ["G1Z-0.1F100"]


def test_after_a_ramp_it_goes_down_at_the_slowest_feed(groove):
    kinds = [MoveKind.RAPID, *[MoveKind.FEED] * 3]
    ends = [(0.0, 0.0, 2.0), (5.0, 0.0, -0.1), (15.0, 0.0, -0.1), (15.0, 9.0, -0.1)]
    program = _program(groove, kinds, ends, [0.0, 80.0, 300.0, 300.0])
    taken = plan_resumption(program, len(program.lines) - 1, lead_in=1.0)
    assert [line for line in taken.program.lines[: taken.lead] if "Z-0.1" in line] == ["G1Z-0.1F80"]


def test_it_comes_from_the_greatest_height_of_the_whole_program(groove):
    """A program that ends in the copper was high before, if not after."""
    kinds = [MoveKind.RAPID, *[MoveKind.FEED] * 3]
    ends = [(0.0, 0.0, 2.5), (0.0, 0.0, -0.1), (15.0, 0.0, -0.1), (15.0, 9.0, -0.1)]
    program = _program(groove, kinds, ends, [0.0, 80.0, 300.0, 300.0])
    taken = plan_resumption(program, len(program.lines) - 1, lead_in=1.0)
    assert taken.clear == 2.5
    assert "G0Z2.5" in taken.program.lines


def test_what_is_left_takes_its_share_of_the_time(groove):
    program = groove([(0.0, 0.0), (50.0, 0.0), (50.0, 30.0)])
    line = program.lines.index("Y30")
    taken = plan_resumption(program, line)
    assert taken.program.seconds == pytest.approx(60.0 * (1.0 - line / len(program.lines)))


def test_lines_that_only_switch_count_as_done_with_the_first_that_moves(groove):
    program = groove([(0.0, 0.0), (50.0, 0.0), (50.0, 30.0)])
    first = program.lines.index("M3S8000")
    taken = plan_resumption(program, first)
    assert taken.goes_on > first
    assert taken.original(taken.lead) == first
    assert taken.original(taken.lead + 1) == taken.goes_on + 1
