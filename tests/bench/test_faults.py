"""Faults come when they are due, and do what their name says."""

from __future__ import annotations

import os

import pytest
import serial

from drypoint.bench.faults import Fault, FaultKind, Injector, draw
from drypoint.errors import MachineError
from drypoint.machine.operator import AnswerKind, Request, RequestKind


def test_a_dropped_line_is_never_answered(terminal):
    Injector(terminal.bench, [Fault(FaultKind.DROPPED_LINE, 2)])
    terminal.link.write(b"G91\nG0X1\nG0X1\n")
    assert terminal.read_all(3.0).count("ok") == 2
    assert terminal.place()[0] == pytest.approx(1.0, abs=2e-3)


def test_a_garbled_byte_is_refused(terminal):
    Injector(terminal.bench, [Fault(FaultKind.GARBLED_BYTE, 1)])
    assert terminal.send("G0X1.25")[-1].startswith("error:")


def test_a_restart_greets_and_forgets_the_position(terminal):
    terminal.send("G0X5")
    terminal.rest()
    Injector(terminal.bench, [Fault(FaultKind.RESET, 1)])
    terminal.link.write(b"G0X6\n")
    assert any(line.startswith("Grbl") for line in terminal.read_all(3.0))
    assert terminal.place() == (0.0, 0.0, 0.0)


def test_a_hard_alarm_stops_and_only_a_reset_helps(terminal):
    Injector(terminal.bench, [Fault(FaultKind.ALARM, 2)])
    terminal.link.write(b"G91G1X50F300\nG0X1\n$X\n")
    answers = terminal.read_all(3.0)
    assert "ALARM:1" in answers
    assert answers.count("ok") == 1
    terminal.link.write(b"\x18")
    terminal.read_all(1.0)
    assert terminal.send("$X")[-1] == "ok"
    assert terminal.place()[0] < 50.0


@pytest.mark.parametrize("kind", [FaultKind.UNPLUGGED, FaultKind.POWER])
def test_a_lost_link_says_so_and_comes_back(terminal, kind):
    bench = terminal.bench
    Injector(bench, [Fault(kind, 2)])
    terminal.link.write(b"G91G1X5F300\nG4P0.01\n")
    with pytest.raises(MachineError) as caught:
        terminal.read_all(5.0)
    assert caught.value.hint
    link = bench.connect()
    assert b"Grbl" in link.read(5.0) + link.read(5.0)
    link.write(b"?")
    assert b"MPos:0.000,0.000,0.000" in link.read(1.0)


def test_faults_drawn_from_a_seed_are_the_same_again():
    drawn = [draw(seed, 1000) for seed in range(60)]
    assert drawn == [draw(seed, 1000) for seed in range(60)]
    assert {fault.kind for fault in drawn} == set(FaultKind)
    assert all(1 <= fault.after_lines < 1000 for fault in drawn)


def test_hands_bring_the_bit_over_a_mark_by_eye(terminal, vbit, zeroed):
    zeroed(terminal, vbit)
    for line in ("M3S10000", "G0Z2", "G0X30Y20", "G1Z-0.2F60", "G0Z2", "M5", "G0X10Y10"):
        terminal.send(line)
    terminal.rest()
    request = Request(RequestKind.JOG_TO, "Over the mark", place=(31.5, 19.0))
    for _ in range(20):
        answer = terminal.bench.operator.ask(request)
        if answer.kind is AnswerKind.DONE:
            break
        x, y, z = answer.jog
        terminal.send(f"$J=G91X{x:.4f}Y{y:.4f}Z{z:.4f}F500")
        terminal.rest()
    assert answer.kind is AnswerKind.DONE
    wco = terminal.bench.controller.parser.offset()
    assert terminal.place()[0] - wco[0] == pytest.approx(30.0, abs=0.15)
    assert terminal.place()[1] - wco[1] == pytest.approx(20.0, abs=0.15)


@pytest.mark.skipif(os.name == "nt", reason="no pseudo-terminals")
def test_a_plain_serial_program_can_talk_to_it(bench):
    from drypoint.bench.pty import BenchPty

    with BenchPty(bench, pace=50.0) as far, serial.Serial(far.device, 115200, timeout=5.0) as port:
        assert port.read_until(b"help]\r\n").endswith(b"help]\r\n")
        port.write(b"$J=G91X2F600\n")
        assert port.read_until(b"ok\r\n").endswith(b"ok\r\n")
        report = b""
        while b"Idle" not in report:
            port.write(b"?")
            report = port.read_until(b">\r\n")
        assert b"MPos:2.000" in report
