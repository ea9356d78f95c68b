"""Simulated hands know the board, not the controller's numbers."""

from __future__ import annotations

import pytest

from drypoint.machine.operator import AnswerKind, Request, RequestKind


def bring(terminal, request):
    """Jog as the hands say until they are content."""
    for _ in range(20):
        answer = terminal.bench.operator.ask(request)
        if answer.kind is AnswerKind.DONE:
            return
        x, y, z = answer.jog
        terminal.send(f"$J=G91X{x:.4f}Y{y:.4f}Z{z:.4f}F500")
        terminal.rest()
    raise AssertionError("never content")


@pytest.mark.parametrize("believed", [True, False])
def test_a_place_is_found_again_after_the_controller_forgot_where_it_is(terminal, vbit, zeroed, believed):
    zeroed(terminal, vbit)
    bench = terminal.bench
    expected = bench.work_to_space((12.0, 9.0))
    if believed:
        bench.operator.ask(Request(RequestKind.CONFIRM, "a run begins"))
    terminal.send("G0Z5")
    terminal.send("G0X40Y30")
    terminal.rest()
    bench.controller.restart()
    terminal.read_all(2.0)
    bring(terminal, Request(RequestKind.JOG_TO, "Over the spot", place=(12.0, 9.0)))
    x, y, _ = bench.tip()
    away = max(abs(x - expected[0]), abs(y - expected[1]))
    assert (away < 0.15) is believed


def test_lost_steps_do_not_mislead_the_eye(terminal, vbit, zeroed):
    zeroed(terminal, vbit)
    bench = terminal.bench
    for line in ("M3S10000", "G0Z2", "G0X30Y20", "G1Z-0.2F60", "G0Z2", "M5"):
        terminal.send(line)
    terminal.rest()
    mark = bench.sheet.to_space([bench.holes()[0][:2]])[0]
    bench.operator.ask(Request(RequestKind.CONFIRM, "a run begins"))
    bench.body.lose_steps((1.5, -1.0, 0.0))
    bring(terminal, Request(RequestKind.JOG_TO, "Over the mark", place=(30.0, 20.0)))
    x, y, _ = bench.tip()
    assert (x, y) == pytest.approx(tuple(mark), abs=0.15)
