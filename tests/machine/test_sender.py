"""Character counting."""

from __future__ import annotations

from collections import deque

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.errors import MachineError
from drypoint.machine.sender import Flow, Sender, line_seconds, stores


def sized(*sizes: int) -> list[str]:
    """Lines that are so long with their ends."""
    return ["X" * (size - 1) for size in sizes]


def test_the_documented_example():
    """Worked example of the protocol's documentation (interface page, character counting):
    lines of 25, 40, 31, 58 and 20 bytes, a buffer of 128. Ours leaves one byte of it unused, which
    changes nothing here: 71 + 58 is too much either way, 31 + 58 + 20 = 109 fits."""
    sender = Sender(sized(25, 40, 31, 58, 20), 128)
    assert len(sender.take()) == 25 + 40 + 31
    assert sender.take() == b""
    assert sender.answer() == 0
    assert sender.in_flight == 71
    assert sender.take() == b""
    assert sender.answer() == 1
    assert len(sender.take()) == 58 + 20
    assert sender.in_flight == 109


@given(
    st.lists(st.integers(1, 79), max_size=60),
    st.integers(81, 255),
    st.data(),
)
def test_in_flight_never_exceeds_the_buffer_and_all_arrive_in_order(sizes, buffer, data):
    lines = [f"{i % 10}" * (size - 1) for i, size in enumerate(sizes)]
    sender = Sender(lines, buffer)
    held: deque[bytes] = deque()
    arrived = []
    while not sender.done:
        held.extend(part + b"\n" for part in sender.take().split(b"\n")[:-1])
        assert sum(map(len, held)) == sender.in_flight <= buffer - 1
        for _ in range(data.draw(st.integers(1, max(1, len(held))))):
            arrived.append(held.popleft())
            sender.answer()
            if not held:
                break
    assert arrived == [line.encode() + b"\n" for line in lines]


def test_gathering_waits_for_every_answer_and_then_goes_on():
    sender = Sender(sized(*[20] * 12), 128)
    sender.take()
    sender.gather()
    for _ in range(5):
        sender.answer()
        assert sender.take() == b""
        assert sender.complete == 0
    sender.answer()
    assert sender.complete == 6
    assert len(sender.take()) == 120


def test_line_by_line_has_one_line_in_flight():
    sender = Sender(sized(5, 5, 5), 128, Flow.SINGLE)
    assert len(sender.take()) == 5
    assert sender.take() == b""
    sender.answer()
    assert len(sender.take()) == 5


@pytest.mark.parametrize(
    "line",
    ["G10L2P1Z0", "G10 P1 L20 X0", "$100=250", "G28.1", "g30.1", "$N0=G54", "$RST=$", "$I=x", "G010L2P1"],
)
def test_lines_that_write_the_store_travel_alone(line):
    assert stores(line)
    sender = Sender(["G0X1", line, "G0X2"], 128)
    assert sender.take() == b"G0X1\n"
    sender.answer()
    assert sender.take() == line.encode() + b"\n"
    assert sender.take() == b""
    sender.answer()
    assert sender.take() == b"G0X2\n"


@pytest.mark.parametrize(
    "line", ["G0X10", "G28", "G1X28.1", "G38.3Z-1F10", "$$", "$#", "(G10)X1", "$J=X1F10", "G100"]
)
def test_lines_that_do_not(line):
    assert not stores(line)


@pytest.mark.parametrize("line", ["what?", "a!b", "~", "\x18", "G1X1\nG1X2", "µ", "\x85"])
def test_realtime_bytes_inside_lines_are_refused(line):
    with pytest.raises(MachineError):
        Sender([line], 128)


def test_a_line_that_is_too_long_is_refused_with_its_number():
    with pytest.raises(MachineError, match="longer") as caught:
        Sender(["G0", "X" * 80], 128)
    assert caught.value.where == "line 2"


def test_an_answer_too_many_is_ignored():
    sender = Sender(["G0"], 128)
    assert sender.answer() is None
    assert not sender.done


def test_the_wire_is_a_floor_of_the_time():
    """10 bits a byte at 115200 baud (8-N-1): 11520 bytes a second."""
    assert line_seconds(sized(20) * 576) == pytest.approx(1.0)


def test_the_buffer_is_filled_to_its_last_byte_but_one():
    lines = ["G1X1", "G1X22"]  # 5 and 6 bytes with their ends
    assert len(Sender(lines, 12).take()) == 11
    assert len(Sender(lines, 11).take()) == 5


def test_gathering_with_nothing_in_flight_holds_nothing_back():
    sender = Sender(["G1X1", "G1X2"])
    sender.gather()
    assert sender.take() == b"G1X1\nG1X2\n"
