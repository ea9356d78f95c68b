"""The serial port: real pyserial, on a pty where one is needed."""

from __future__ import annotations

import os
import select
import threading
import time
from types import SimpleNamespace

import pytest
import serial

from drypoint.errors import MachineError
from drypoint.machine import serial_link
from drypoint.machine.controller import Controller
from drypoint.machine.serial_link import SerialLink, list_ports

posix = pytest.mark.skipif(os.name == "nt", reason="no pty")


class RealTime:
    """A counterpart behind a pty, in real time."""

    def __init__(self, fake) -> None:
        import pty
        import tty

        self.fake = fake
        self.master, slave = pty.openpty()
        tty.setraw(slave)
        self.slave = slave
        self.device = os.ttyname(slave)
        self.ended = False
        self.thread = threading.Thread(target=self.serve, daemon=True)

    def serve(self) -> None:
        last = time.monotonic()
        while not self.ended:
            ready, _, _ = select.select([self.master], [], [], 0.001)
            if ready:
                self.fake.take(os.read(self.master, 256))
            now = time.monotonic()
            self.fake.advance(now - last)
            last = now
            if self.fake.out:
                data = bytes(self.fake.out)
                self.fake.out.clear()
                os.write(self.master, data)

    def close(self) -> None:
        self.ended = True
        self.thread.join()
        os.close(self.master)
        os.close(self.slave)


@pytest.fixture
def real(new_fake):
    fake = new_fake()
    end = RealTime(fake)
    link = SerialLink(end.device)
    end.thread.start()
    yield SimpleNamespace(fake=fake, link=link)
    link.close()
    end.close()


@posix
def test_a_stream_through_a_real_port_is_complete(real):
    controller = Controller(real.link)
    controller.connect()
    lines = ["G1F6000X0Y0"] + [f"G1X{i * 0.05:.2f}Y{i % 2 * 0.05:.2f}" for i in range(400)]
    controller.stream(lines)
    assert [line for line in real.fake.received if "X" in line] == lines
    assert not real.fake.overflow
    assert real.fake.deepest_in_flight <= 127


@posix
def test_hold_from_another_thread_arrives_while_streaming(real):
    controller = Controller(real.link)
    controller.connect()
    lines = [f"G1X{i * 0.1:.1f}F600" for i in range(1, 150)]
    asked = []

    def on_progress(event):
        if event.acknowledged > 20 and not asked:
            asked.append(real.fake.time)
            thread = threading.Thread(target=controller.hold)
            thread.start()
            thread.join()
        elif event.state.activity == "held":
            controller.resume()

    controller.stream(lines, on_progress=on_progress)
    held = [at for at, byte in real.fake.realtime if byte == b"!"]
    assert len(held) == 1
    assert [line for line in real.fake.received if "X" in line] == lines


def test_a_port_that_is_not_there_is_said_with_advice():
    with pytest.raises(MachineError) as caught:
        SerialLink("/dev/no-such-port")
    assert caught.value.where == "/dev/no-such-port"
    assert caught.value.hint


@pytest.mark.parametrize(
    "error",
    [serial.SerialException("gone"), serial.SerialTimeoutException("slow"), OSError(5, "Input/output error")],
)
@pytest.mark.parametrize("call", ["write", "read"])
def test_every_exception_of_the_port_is_translated(error, call):
    link = SerialLink("loop://")

    class Port:
        in_waiting = 0

        def write(self, data):
            raise error

        def read(self, size):
            raise error

        def close(self):
            pass

    link._port.close()
    link._port = Port()
    with pytest.raises(MachineError, match="link is lost"):
        link.write(b"?") if call == "write" else link.read(0.1)


def test_ports_are_listed_with_descriptions_usb_first(monkeypatch):
    found = [
        SimpleNamespace(device="/dev/ttyS0", description="n/a", manufacturer=None, vid=None),
        SimpleNamespace(device="/dev/ttyUSB0", description="USB serial", manufacturer="maker", vid=1),
    ]
    monkeypatch.setattr(serial_link.serial_ports, "comports", lambda: found)
    ports = list_ports()
    assert [port.device for port in ports] == ["/dev/ttyUSB0", "/dev/ttyS0"]
    assert ports[0].description == "USB serial, maker"
    assert ports[1].description == "serial port"
