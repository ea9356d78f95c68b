"""Pulses go to the controller burst by burst."""

from __future__ import annotations

import numpy as np
import pytest

from drypoint.errors import MachineError
from drypoint.geometry.points import as_points
from drypoint.geometry.rigid import Rigid
from drypoint.machine.bursts import BurstSender, bursts_of
from drypoint.machine.guard import refuse_foreign
from drypoint.program.laser import line_program, pulse_program

ROW = as_points([(0, 0), (0.1, 0), (0.2, 0)])


def test_the_bursts_read_from_the_text_are_those_of_the_program():
    program = pulse_program([ROW], Rigid())
    assert np.array_equal(bursts_of(program.lines), program.burst)


def test_lines_without_pulses_have_no_bursts():
    assert bursts_of(line_program([ROW], Rigid()).lines) is None
    assert bursts_of(("M3S1000", "G4P3", "G1X1F100", "M5")) is None


def test_nothing_is_sent_while_a_burst_is_unanswered():
    program = pulse_program([ROW], Rigid())
    sender = BurstSender(program.lines, bursts_of(program.lines))
    sent = []
    while not sender.done:
        data = sender.take()
        sent.append(data.decode())
        for _ in range(data.count(b"\n")):
            assert sender.take() == b""
            sender.answer()
    assert "".join(sent) == "".join(line + "\n" for line in program.lines)
    lit = [text for text in sent if "S300" in text]
    assert len(lit) == 3
    assert all(text.count("\n") == 6 and text.startswith("G0X") and text.endswith("S0\nG0\n") for text in lit)


def test_a_burst_that_the_buffer_cannot_hold_is_refused():
    program = pulse_program([ROW], Rigid())
    with pytest.raises(MachineError):
        BurstSender(program.lines, bursts_of(program.lines), buffer=30)


def test_the_guard_lets_checked_pulses_pass_and_nothing_like_them():
    lines = pulse_program([ROW], Rigid()).lines
    refuse_foreign(lines, laser_mode=True)
    for spoilt in (lines[:-3], [line for line in lines if line != "S0"], [*lines, "M3S100"]):
        with pytest.raises(MachineError):
            refuse_foreign(spoilt, laser_mode=True)
    refuse_foreign(["M3S10000", "G1X1F100", "M5"], laser_mode=False)
