"""Runs, broken at any moment, and taken up again."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from drypoint.errors import MachineError
from drypoint.machine.controller import Controller
from drypoint.machine.faults import Astray, LinkLost
from drypoint.machine.operator import RequestKind
from drypoint.machine.preset import SpindleKind
from drypoint.machine.procedures.resuming import find_again, resume_program
from drypoint.machine.procedures.running import STOPPED, run_program
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.state import Clip
from drypoint.program.assemble import assemble
from drypoint.program.builder import MoveBuilder
from drypoint.program.settings import ProgramSettings
from drypoint.program.standing_clear import stands_clear


@pytest.fixture
def ready(place, fake):
    place.controller.set_work(x=0.0, y=0.0, z=5.0)
    place.controller.clip = Clip.OFF
    return place


@pytest.fixture
def program(groove):
    spiral = [(10 * np.cos(a) * a / 20, 10 * np.sin(a) * a / 20) for a in np.arange(0.0, 20.0, 0.2)]
    return groove(np.round(spiral, 3), feed=600.0)


def cut(fake):
    """Ends of the moves carried out, work coordinates."""
    return [tuple(np.round(end, 3)) for _, end in fake.executed]


def test_a_run_from_start_to_end(ready, fake, program, journal, hands):
    events = []
    result = run_program(ready, program, journal, on_progress=events.append)
    assert result.finished
    assert result.executed == len(program.lines)
    assert journal.reason == "finished"
    assert journal.counts == dict.fromkeys(journal.counts, len(program.lines))
    assert cut(fake)[-len(program.moves) :] == [tuple(np.round(end, 3)) for end in program.moves.end]
    kinds = [request.kind for request in hands.asked]
    assert kinds == [RequestKind.CONFIRM, RequestKind.SPINDLE_ON, RequestKind.SPINDLE_OFF]
    assert hands.asked[0].cautions
    assert events[-1].total == len(program.lines)


def test_nothing_runs_from_an_unknown_position(ready, program, journal):
    ready.controller.doubt("x")
    with pytest.raises(MachineError, match="position of x"):
        run_program(ready, program, journal)
    assert journal.run is None


def test_the_spindle_does_not_start_before_the_clip_is_off(ready, fake, program, journal, hands):
    fake.clip = True
    ready.controller.clip = Clip.ON
    run_program(ready, program, journal)
    kinds = [request.kind for request in hands.asked]
    assert kinds.index(RequestKind.CLIP_OFF) < kinds.index(RequestKind.SPINDLE_ON)


def test_a_bad_line_is_found_before_anything_moves(ready, fake, program, journal):
    broken = type(program)(
        program.name,
        program.title,
        program.bit,
        program.moves,
        (*program.lines[:20], "BAD", *program.lines[21:]),
        program.line_move,
        1.0,
    )
    before = len(fake.executed)
    with pytest.raises(MachineError, match="does not know"):
        run_program(ready, broken, journal)
    assert len(fake.executed) == before
    assert journal.run is None


def test_stop_ends_the_run_without_an_error(ready, link, fake, program, journal):
    link.at.append((link.clock.now() + 6.0, ready.controller.stop))
    result = run_program(ready, program, journal)
    assert not result.finished
    assert 0 < result.executed < len(program.lines)
    assert journal.reason == "stopped"
    assert not fake.spindle


def resume(ready, link_to, fake, hands, program, journal, new_journal):
    """Connect anew, set zero anew, run the rest."""
    fake.restart(moving=False)
    fake.state = "Idle"
    controller = Controller(link_to(fake))
    controller.connect()
    controller.trust("xyz")
    controller.clip = Clip.OFF
    place = Workplace(controller, hands, ready.preset)
    again = new_journal()
    result = run_program(place, program, again, first=journal.resume_point())
    return result, again


@pytest.mark.parametrize("share", [0.02, 0.3, 0.6, 0.85])
@pytest.mark.parametrize("fault", ["unplug", "reset", "alarm", "swallow", "garble"])
def test_broken_anywhere_and_taken_up_again(
    ready, link, link_to, fake, program, journal, new_journal, hands, fault, share
):
    total = len(program.lines)
    strike = int(share * total)
    count = 0

    def tamper(line):
        nonlocal count
        count += 1
        if count >= strike + 6 and (fault != "garble" or "X" in line):
            count = -(10**6)
            if fault == "unplug":
                link.unplug()
            elif fault == "reset":
                fake.restart()
                return None
            elif fault == "alarm":
                fake.trip(1)
                return None
            elif fault == "swallow":
                return None
            elif fault == "garble" and "X" in line:
                return line.replace("X", "X9")
        return line

    fake.tamper = tamper
    with pytest.raises(MachineError) as caught:
        run_program(ready, program, journal, check_first=False)
    assert caught.value.hint
    assert journal.reason not in (None, "finished")
    point = journal.resume_point()
    fake.tamper = lambda line: line
    done = set(cut(fake))
    result, again = resume(ready, link_to, fake, hands, program, journal, new_journal)
    assert result.finished
    assert again.run.first == point
    wanted = [tuple(np.round(end, 3)) for end in program.moves.end]
    assert set(wanted) <= done | set(cut(fake))
    lines_done = {tuple(np.round(program.moves.end[m], 3)) for m in program.line_move[:point] if m >= 0}
    assert lines_done <= done, "the journal calls lines executed that were not"
    assert min(place[2] for place in cut(fake)) >= min(end[2] for end in wanted) - 1e-9


def test_a_garbled_coordinate_is_noticed_by_the_place(ready, fake, program, journal):
    fake.tamper = lambda line: line.replace("X-2.", "X-8.") if line.startswith("X-2.") else line
    with pytest.raises(Astray):
        run_program(ready, program, journal, check_first=False)


def two_grooves(groove):
    """Two grooves in one program, with a lift between them."""
    one, other = groove([(0.0, 0.0), (5.0, 0.0)]), groove([(0.0, 3.0), (5.0, 3.0)])
    shift, moved = len(one.moves), other.line_move >= 0
    moves = type(one.moves)(
        *(np.concatenate((getattr(one.moves, k), getattr(other.moves, k))) for k in one.moves.__slots__)
    )
    lines = (*one.lines[:-1], *other.lines[4:])
    lead = np.where(moved, other.line_move + shift, -1)[4:]
    return replace(one, moves=moves, lines=lines, line_move=np.concatenate((one.line_move[:-1], lead)))


def test_a_pause_comes_above_the_piece_with_the_spindle_off(ready, fake, groove, journal, hands):
    program = two_grooves(groove)
    down = int(np.flatnonzero(program.moves.end[program.line_move, 2] < 0.0)[-2])
    seen = []
    hands.before = lambda request: seen.append((request.title, *(fake.position - fake.offset), fake.spindle))
    result = run_program(ready, program, journal, pauses=[down])
    paused = [entry[1:] for entry in seen if entry[0] == "Pause"]
    assert paused == [(pytest.approx(0.0), pytest.approx(3.0), pytest.approx(2.0), False)]
    assert any("paused" in text for text in journal.log)
    assert result.finished
    assert journal.counts["executed"] == len(program.lines)
    assert [tuple(np.round(end, 3)) for end in program.moves.end][-3:] == cut(fake)[-3:]
    after = fake.received[fake.received.index("M5") :]
    assert any(line.startswith("M3S8000") for line in after), "the spindle turns again"


@pytest.fixture
def hopping(groove):
    """Two grooves in one program; between them the bit stays low."""
    settings = ProgramSettings(decimals=3)
    builder = MoveBuilder(2.0, settings, low=0.5)
    for tag, y in enumerate((0.0, 3.0)):
        builder.travel(0.0, y)
        builder.enter(0.0, y, 0.0, -0.1, 100.0, tag)
        builder.feed([(5.0, y, -0.1)], 300.0, tag)
    builder.lift()
    bit = groove([(0.0, 0.0), (5.0, 0.0)]).bit
    return assemble(builder, bit, name="01-grooves-pass-1", title="Grooves, pass 1")


def pushed(fake):
    """Every move that the controller is given from now on: its end, work coordinates, and its speed."""
    moves, push = [], fake.push

    def record(end, feed, line=""):
        moves.append((*np.round(end - fake.offset, 3), feed))
        push(end, feed, line)

    fake.push = record
    return moves


def test_a_pause_on_a_hop_lifts_the_bit_and_goes_on_as_if_nothing_was(
    ready, fake, hopping, journal, new_journal, hands
):
    moves = pushed(fake)
    assert run_program(ready, hopping, new_journal()).finished
    wanted = list(moves)
    moves.clear()
    seen = []
    hands.before = lambda request: seen.append((request.title, *(fake.position - fake.offset), fake.spindle))
    clear = stands_clear(hopping.moves)
    low = [line for line, move in enumerate(hopping.line_move) if move >= 0 and not clear[move]]
    down = next(line for line in low if hopping.moves.tag[hopping.line_move[line]] == 1)
    assert run_program(ready, hopping, journal, pauses=[down]).finished
    (paused,) = [entry[1:] for entry in seen if entry[0] == "Pause"]
    assert paused == (pytest.approx(0.0), pytest.approx(3.0), pytest.approx(2.0), False)
    begin = wanted.index(next(one for one in wanted if one[1] == 3.0 and one[2] < 0.5))
    assert moves[-len(wanted[begin:]) :] == wanted[begin:], "the same ways at the same speeds"
    assert (0.0, 3.0, 0.5) in [one[:3] for one in moves[-len(wanted[begin:]) - 2 :]]


def test_a_pause_that_is_declined_is_a_stop_and_can_be_resumed(ready, fake, groove, journal, hands):
    program = two_grooves(groove)
    hands.before = lambda request: hands.refuse.update({request.kind} if request.title == "Pause" else ())
    result = run_program(ready, program, journal, pauses=[6])
    assert not result.finished
    assert journal.reason == STOPPED
    assert 0 < result.executed < len(program.lines)
    assert {"x", "y", "z"} <= ready.controller.known
    assert not fake.spindle


def test_declining_the_cautions_starts_nothing(ready, fake, program, journal, hands):
    hands.refuse = {RequestKind.CONFIRM}
    with pytest.raises(MachineError, match="Declined"):
        run_program(ready, program, journal)
    assert not fake.spindle
    assert journal.run is None


def test_a_spindle_the_controller_switches_is_not_asked_for(ready, fake, program, journal, hands, preset):
    place = Workplace(
        ready.controller,
        hands,
        type(preset)(
            "v", preset.travel, preset.max_rate, preset.acceleration, SpindleKind.VARIABLE, (0.0, 1e4)
        ),
    )
    run_program(place, program, journal)
    assert [request.kind for request in hands.asked] == [RequestKind.CONFIRM]


@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(seconds=st.floats(0.0, 12.0), again=st.floats(0.0, 12.0))
def test_the_plug_pulled_at_any_two_moments(
    new_fake, link_to, hands, preset, new_journal, groove, seconds, again
):
    program = groove([(i % 7 * 1.3, i * 0.4) for i in range(60)], feed=600.0)
    fake = new_fake()
    hands.fake = fake
    first = 0
    wanted = [tuple(np.round(end, 3)) for end in program.moves.end]
    for moment in (seconds, again, None):
        fake.restart(moving=False)
        fake.state = "Idle"
        link = link_to(fake)
        controller = Controller(link)
        controller.connect()
        controller.trust("xyz")
        controller.clip = Clip.OFF
        journal = new_journal()
        if moment is not None:
            link.at.append((link.clock.now() + moment, link.unplug))
        try:
            run_program(
                Workplace(controller, hands, preset), program, journal, first=first, check_first=False
            )
            break
        except LinkLost:
            if journal.run is not None:
                assert journal.reason
                first = journal.resume_point()
                fake.advance(5.0)  # what was buffered is still carried out
                done = set(cut(fake))
                proven = {
                    tuple(np.round(program.moves.end[m], 3)) for m in program.line_move[:first] if m >= 0
                }
                assert proven <= done
    assert set(wanted) <= set(cut(fake))


def test_after_a_fault_the_position_is_found_anew_and_the_rest_is_cut(
    ready, link, fake, program, journal, new_journal, hands
):
    fake.copper = lambda x, y: -5.0
    link.at.append((link.clock.now() + 6.0, fake.restart))
    with pytest.raises(MachineError):
        run_program(ready, program, journal, check_first=False)
    assert not ready.controller.known
    hands.asked.clear()
    again = new_journal()
    fake.position = fake.offset + np.array(
        [0.3, 0.0, 3.0]
    )  # steps were lost; the bit was lifted by hand wheel

    def bring(request):
        if request.title == "Over the reference mark":
            fake.position = np.array([40.0, 30.0, 2.0])  # where the mark truly is, in the machine's frame
        elif request.title == "Over the zero spot":
            fake.position = np.array([40.0, 30.0, -2.0])

    hands.before = bring
    result = resume_program(
        ready, program, again, first=journal.resume_point(), mark=(7.0, 8.0), spot=(7.0, 8.0)
    )
    assert result.finished
    assert fake.offset == pytest.approx([33.0, 22.0, -5.0], abs=0.005)
    kinds = [request.kind for request in hands.asked]
    assert kinds[0] is RequestKind.SPINDLE_OFF
    assert kinds.index(RequestKind.CLIP_OFF) < kinds.index(RequestKind.SPINDLE_ON)
    assert again.run.first == journal.resume_point()


@pytest.mark.parametrize(("depth", "good"), [(-5.0, True), (-5.2, False)])
def test_found_again_it_tells_what_a_believed_position_hides(ready, fake, hands, depth, good):
    fake.copper = lambda x, y: -5.0
    ready.controller.move((7.0, 8.0, 3.0))
    find_again(ready, mark=(7.0, 8.0), spot=(7.0, 8.0))
    fake.copper = lambda x, y: depth  # the bit broke, and the cable went before anybody saw it
    found = find_again(ready, mark=(7.0, 8.0), spot=(7.0, 8.0))
    assert found.good is good
    if not good:
        assert found.away == pytest.approx(-0.2, abs=0.01)
        assert "broke" in found.what


def test_nothing_is_begun_with_a_machine_that_still_moves(ready, fake, hands):
    fake.copper = lambda x, y: -5.0
    ready.controller.jog(3.0, 0.0, 0.0, 300.0)
    moving = []
    hands.before = lambda request: moving.append(fake.state)
    find_again(ready, mark=(7.0, 8.0), spot=(7.0, 8.0))
    assert "Jog" not in moving
    assert "Run" not in moving


def test_stop_with_a_hand_switched_spindle_has_it_switched_off(ready, link, program, journal, hands):
    link.at.append((link.clock.now() + 6.0, ready.controller.stop))
    run_program(ready, program, journal, check_first=False)
    assert hands.asked[-1].kind is RequestKind.SPINDLE_OFF
