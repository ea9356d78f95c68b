"""The controller against a small, protocol-true counterpart."""

from __future__ import annotations

import pytest

from drypoint.errors import MachineError
from drypoint.machine.controller import Controller
from drypoint.machine.faults import LineLost, LinkLost, Locked, Refused, Restarted, Stopped
from drypoint.machine.state import Activity, Clip


def zigzag(count: int = 200) -> list[str]:
    return ["G1F600X0Y0"] + [f"G1X{i * 0.1:.1f}Y{i % 2 * 0.1:.1f}" for i in range(count)]


def test_connecting_reads_everything_and_moves_nothing(controller, fake):
    assert controller.facts.version.startswith("1.1f")
    assert controller.facts.receive_bytes == 128
    assert controller.facts.planner_blocks == 15
    assert controller.facts.settings[110] == 1000.0
    assert set(fake.received) <= {"$I", "$$", "$#", "$N", "$G"}
    assert fake.executed == []
    assert controller.state.activity is Activity.AT_REST


def test_a_board_that_does_not_greet_is_reset_not_continued(fake, link):
    fake.out.clear()
    fake.rx += b"G1X10"  # half a line of an earlier program
    controller = Controller(link)
    controller.connect()
    assert "G1X10$I" not in fake.received
    assert fake.received[0] == "$I"


def test_a_machine_in_motion_is_not_taken_over(fake, link):
    fake.out.clear()
    fake.feed = 10.0
    fake.motion("G1X10F10")
    with pytest.raises(MachineError, match="in the middle"):
        Controller(link).connect()
    assert b"\x18" not in [byte for _, byte in fake.realtime]


def test_silence_is_said(fake, link, monkeypatch):
    monkeypatch.setattr(fake, "say", lambda text: None)
    fake.out.clear()
    with pytest.raises(MachineError, match="answer"):
        Controller(link).connect()


def test_startup_lines_are_told(new_fake, link_to):
    controller = Controller(link_to(new_fake(startup="G0X10")))
    assert controller.connect().startup == ("G0X10",)


def test_a_stream_is_counted_and_complete(controller, fake):
    events = []
    controller.trust("xyz")
    lines = zigzag()
    controller.stream(lines, on_progress=events.append)
    assert not fake.overflow
    assert fake.received[-len(lines) - 1 : -1] == lines
    assert events[-1].executed == events[-1].sent == len(lines)
    assert all(e.executed <= e.acknowledged <= e.sent for e in events)
    assert {e.state.activity for e in events} >= {Activity.CUTTING}


def test_an_error_stops_sending_and_names_the_line(controller, fake):
    lines = zigzag(40)
    lines[20] = "BAD"
    with pytest.raises(Refused) as caught:
        controller.stream(lines)
    assert caught.value.index == 20
    assert "line 21" in caught.value.where
    assert len(fake.received) < 5 + 1 + len(lines)
    assert fake.moves == type(fake.moves)()
    assert controller.command("G4P0.01") == ()  # counting is sound again


def test_check_mode_moves_nothing_and_finds_the_line(controller, fake):
    with pytest.raises(Refused) as caught:
        controller.check(["G1X10F100", "BAD"])
    assert caught.value.index == 1
    controller.check(["M3S1000", "G1X10F100"])
    assert fake.executed == []
    assert not fake.spindle
    assert controller.state.activity is Activity.AT_REST


def test_unplugging_is_a_lost_link(controller, link):
    link.at.append((link.clock.now() + 1.0, link.unplug))
    with pytest.raises(LinkLost):
        controller.stream(zigzag())
    assert controller.state.activity is Activity.NOT_CONNECTED


def test_a_reset_during_a_stream_is_told_and_doubts_the_position(controller, link, fake):
    controller.trust("xyz")
    link.at.append((link.clock.now() + 1.0, fake.restart))
    with pytest.raises((Restarted, Locked)):
        controller.stream(zigzag())
    assert not controller.known
    controller.unlock()
    assert controller.state.activity is Activity.AT_REST
    controller.stream(["G1X1F100"])


def test_an_alarm_is_explained_and_unlocked(controller, link, fake):
    controller.trust("xyz")
    link.at.append((link.clock.now() + 1.0, lambda: fake.trip(1)))
    with pytest.raises(Locked, match="limit switch") as caught:
        controller.stream(zigzag())
    assert caught.value.hint
    assert controller.state.activity is Activity.NEEDS_YOU
    assert not controller.known
    with pytest.raises(Locked):
        controller.command("G0X1")
    controller.unlock()
    controller.command("G0X1")


def test_a_lost_answer_is_noticed_and_nothing_hangs(controller, fake):
    fake.swallow_answers = 0
    original = fake.tamper
    fake.tamper = lambda line: None if line == "G1X2.0Y0.0" else original(line)
    with pytest.raises(LineLost):
        controller.stream(zigzag(60))
    fake.tamper = original
    controller.command("G4P0.01")


def test_a_late_answer_does_not_count_for_the_next_line(controller, fake):
    fake.swallow_answers = 1
    with pytest.raises(LineLost):
        controller.command("G1X1F100")
    fake.say("ok")  # would come much too late; the reset has flushed what waited
    with pytest.raises(Refused):
        controller.stream(["G1X1F100", "BAD"])


def test_stop_holds_waits_and_resets(controller, link, fake):
    link.at.append((link.clock.now() + 1.0, controller.stop))
    with pytest.raises(Stopped):
        controller.stream(zigzag())
    sent = [byte for _, byte in fake.realtime if byte in b"!\x18"]
    assert sent[0] == b"!"
    assert sent[-1] == b"\x18"
    assert controller.state.activity is Activity.AT_REST  # no alarm: it stood still before the reset
    assert not fake.spindle


def test_hold_and_resume_lose_nothing(controller, link, fake):
    now = link.clock.now()
    seen = []
    controller.listen(lambda state: seen.append(state.activity))
    link.at += [(now + 0.3, controller.hold), (now + 2.0, controller.resume)]
    lines = zigzag(60)
    controller.stream(lines)
    assert fake.received[-len(lines) - 1 : -1] == lines
    assert Activity.HELD in seen


def test_offsets_are_stored_alone_and_known_at_once(controller, fake):
    controller.command("G0X5")
    controller.set_work(x=0.0, y=2.0)
    assert controller.place() == pytest.approx((0.0, 2.0, 0.0))
    assert controller.known == {"x", "y"}


@pytest.mark.parametrize("inches", [0, 1])
@pytest.mark.parametrize("mask", [0, 1])
def test_positions_are_in_mm_however_they_are_reported(new_fake, link_to, inches, mask):
    fake = new_fake()
    fake.settings |= {13: inches, 10: mask}
    controller = Controller(link_to(fake))
    controller.connect()
    controller.move((25.4, 0.0, 12.7))
    controller.set_work(x=0.0)
    state = controller.look()
    assert state.machine == pytest.approx((25.4, 0.0, 12.7), abs=0.02)
    assert state.work == pytest.approx((0.0, 0.0, 12.7), abs=0.02)


def test_the_spindle_is_locked_until_the_clip_is_off_and_the_input_open(controller, fake):
    with pytest.raises(MachineError, match="spindle is locked"):
        controller.command("M3S1000")
    with pytest.raises(MachineError, match="spindle is locked"):
        controller.stream(["G0Z1", "s1000 m 3"])
    controller.clip = Clip.OFF
    fake.opto_stuck = True
    with pytest.raises(MachineError, match="reads closed"):
        controller.command("M03 S1000")
    fake.opto_stuck = False
    controller.command("M3S1000")
    assert fake.spindle


def test_programs_cannot_change_settings_or_smuggle_realtime_bytes(controller, fake):
    with pytest.raises(MachineError, match="settings"):
        controller.stream(["G0X1", "$100=1"])
    with pytest.raises(MachineError, match="at once"):
        controller.stream(["G0X1", "(what?)"])
    assert not fake.executed


def test_a_probe_reports_the_contact_not_the_overshoot(controller, fake):
    fake.copper = lambda x, y: -3.2
    fake.clip = True
    controller.set_work(z=1.0)
    result = controller.probe(-4.0, 60.0)
    assert result.touched
    assert result.machine[2] == pytest.approx(-3.2, abs=0.003)
    assert result.work[2] == pytest.approx(-2.2, abs=0.003)
    assert controller.place()[2] < result.work[2]


def test_a_probe_without_contact_ends_at_its_bound_without_an_alarm(controller):
    result = controller.probe(-1.0, 60.0)
    assert not result.touched
    assert controller.place()[2] == pytest.approx(-1.0)
    assert controller.state.activity is Activity.AT_REST


def test_a_probe_with_the_input_closed_is_refused_before_it_moves(controller, fake):
    fake.opto_stuck = True
    with pytest.raises(MachineError, match="reads closed before"):
        controller.probe(-1.0, 60.0)
    assert not any("G38" in line for line in fake.received)


def test_a_jog_is_cancelled_from_outside_and_commands_wait_for_its_end(controller, link, fake):
    controller.jog(100.0, 0.0, 0.0, 600.0)
    link.at.append((link.clock.now() + 0.5, controller.jog_cancel))
    controller.command("G4P0.01")
    assert 0.0 < controller.place()[0] < 20.0


def test_homing_is_refused_where_there_is_none(controller):
    with pytest.raises(MachineError, match="no homing"):
        controller.home()


def test_a_machine_with_homing_starts_locked_and_homes(new_fake, link_to):
    controller = Controller(link_to(new_fake(homing=True)))
    assert controller.connect().locked
    assert controller.state.activity is Activity.NEEDS_YOU
    controller.home()
    assert controller.state.activity is Activity.AT_REST


def test_status_is_asked_five_to_ten_times_a_second(controller, link, fake):
    fake.realtime.clear()
    start = link.clock.now()
    controller.stream(zigzag(400))
    rate = sum(byte == b"?" for _, byte in fake.realtime) / (link.clock.now() - start)
    assert 5.0 <= rate <= 10.0


def test_an_exception_in_a_listener_leaves_the_machine_stopped(controller, fake):
    class BrokenError(Exception):
        pass

    def broken(event):
        raise BrokenError

    with pytest.raises(BrokenError):
        controller.stream(zigzag(), on_progress=broken)
    assert not fake.moves
    assert not fake.rx
