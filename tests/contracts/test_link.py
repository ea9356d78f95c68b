"""What every link keeps to: run on a serial port over a pty, and on the bench."""

from __future__ import annotations

import threading

import pytest

from drypoint.errors import MachineError
from drypoint.machine.controller import Controller
from drypoint.machine.sender import Flow
from drypoint.machine.state import Activity


def read_until(link, wanted: bytes, seconds: float = 5.0) -> bytes:
    """All bytes up to and with ``wanted``."""
    got = b""
    deadline = link.clock.now() + seconds
    while wanted not in got and link.clock.now() < deadline:
        got += link.read(0.1)
    assert wanted in got
    return got


def talk_on(link) -> None:
    """Ask and listen a few times: whichever notices first may raise."""
    for _ in range(10):
        link.write(b"?")
        link.read(0.1)


def test_it_has_a_name_for_people(ends):
    assert ends.link.name
    assert "/" not in ends.link.name


def test_its_clock_goes_forward_and_sleeps(ends):
    clock = ends.link.clock
    start = clock.now()
    clock.sleep(0.02)
    assert clock.now() >= start + 0.02
    clock.sleep(0.0)
    clock.sleep(-1.0)


def test_a_greeting_follows_the_opening(ends):
    assert b"Grbl 1.1" in read_until(ends.link, b"help]")


def test_a_read_with_nothing_to_come_waits_and_gives_nothing(ends):
    read_until(ends.link, b"help]\r\n")
    start = ends.link.clock.now()
    assert ends.link.read(0.05) == b""
    assert 0.045 <= ends.link.clock.now() - start < 1.0


def test_a_read_without_waiting_returns_at_once(ends):
    read_until(ends.link, b"help]\r\n")
    start = ends.link.clock.now()
    assert ends.link.read(0.0) == b""
    assert ends.link.clock.now() - start < 0.5


def test_a_read_ends_with_the_first_bytes(ends):
    read_until(ends.link, b"help]\r\n")
    ends.link.write(b"$I\n")
    start = ends.link.clock.now()
    assert ends.link.read(60.0)
    assert ends.link.clock.now() - start < 5.0


def test_a_line_is_answered(ends):
    read_until(ends.link, b"help]\r\n")
    ends.link.write(b"$I\n")
    assert b"[OPT:" in read_until(ends.link, b"ok\r\n")


def test_a_realtime_byte_is_answered_without_a_line_end(ends):
    read_until(ends.link, b"help]\r\n")
    ends.link.write(b"?")
    assert read_until(ends.link, b">").lstrip().startswith(b"<Idle|")


def test_nothing_is_lost_or_doubled(ends):
    read_until(ends.link, b"help]\r\n")
    got = b""
    for _ in range(50):
        ends.link.write(b"\n" * 20)
        got += read_until(ends.link, b"ok")
        while got.count(b"ok") % 20:
            got += ends.link.read(0.5)
    assert got.count(b"ok") == 1000
    assert ends.link.read(0.05) == b""


def test_another_thread_may_write_while_one_reads(ends):
    link = ends.link
    read_until(link, b"help]\r\n")
    go = threading.Event()

    def ask() -> None:
        go.wait()
        for _ in range(20):
            link.write(b"?")

    thread = threading.Thread(target=ask)
    thread.start()
    go.set()
    got = b""
    while thread.is_alive() or b">" not in got:
        link.write(b"\n")
        got += link.read(0.05)
    thread.join()
    assert b"ok" in got


def test_a_closed_link_says_so(ends):
    ends.link.close()
    ends.link.close()
    with pytest.raises(MachineError):
        ends.link.write(b"?")
    with pytest.raises(MachineError):
        ends.link.read(0.1)


def test_a_pulled_plug_says_so_with_advice(ends):
    read_until(ends.link, b"help]\r\n")
    ends.unplug()
    with pytest.raises(MachineError) as caught:
        talk_on(ends.link)
    assert caught.value.what
    assert caught.value.hint
    assert ends.link.name in caught.value.where


def test_a_controller_connects_and_sees_the_plug_pulled(ends):
    controller = Controller(ends.link)
    facts = controller.connect()
    assert facts.receive_bytes in (127, 128)
    assert controller.look().activity in (Activity.AT_REST, Activity.NEEDS_YOU)
    ends.unplug()
    with pytest.raises(MachineError):
        controller.look()
    assert controller.state.activity is Activity.NOT_CONNECTED


@pytest.mark.parametrize("flow", list(Flow))
def test_a_stream_is_taken_whole_in_both_ways_of_sending(ends, flow):
    controller = Controller(ends.link, flow=flow)
    controller.connect()
    events = []
    lines = [f"G1X{0.1 * (k % 2):.1f}F600" for k in range(40)]
    controller.stream(lines, on_progress=events.append)
    assert (events[-1].sent, events[-1].acknowledged, events[-1].executed) == (40, 40, 40)
    counts = [(event.executed, event.acknowledged, event.sent) for event in events]
    assert all(done <= taken <= sent for done, taken, sent in counts)
    assert controller.look().activity is Activity.AT_REST
