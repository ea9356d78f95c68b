"""The link to a real controller over a serial port. The only place that knows pyserial."""

from __future__ import annotations

import threading
import time
from dataclasses import dataclass

import serial
from serial.tools import list_ports as serial_ports

from drypoint.errors import MachineError
from drypoint.machine.link import Clock, Link
from drypoint.wording import say

BAUD = 115200
"""Speed the protocol's documentation prescribes, 8-N-1."""

_SLICE = 0.02
"""Longest single wait in a read, s; a fixed one, since changing pyserial's reconfigures the port."""

_WRITE_TIMEOUT = 1.0
"""A port that takes no byte for so long is dead, s. In flight are 128 bytes at most: 11 ms."""

_GONE = "Check the cable and the power, then connect again; the run can be resumed."


@dataclass(frozen=True, slots=True)
class Port:
    """A serial port: what to open, and what it is called."""

    device: str
    description: str


def list_ports() -> tuple[Port, ...]:
    """The serial ports of this computer, those on USB first."""
    found = sorted(serial_ports.comports(), key=lambda port: (port.vid is None, port.device))
    return tuple(Port(port.device, _describe(port.description, port.manufacturer)) for port in found)


def _describe(description: str | None, maker: str | None) -> str:
    words = [text for text in (description, maker) if text and text != "n/a"]
    return ", ".join(dict.fromkeys(words)) or "serial port"


class SystemClock(Clock):
    """The computer's own time."""

    def now(self) -> float:
        return time.monotonic()

    def sleep(self, seconds: float) -> None:
        if seconds > 0.0:
            time.sleep(seconds)


class SerialLink(Link):
    """A serial port. Opening it usually restarts the controller.

    Parameters
    ----------
    device : str
        "/dev/ttyUSB0", "COM3", or an address pyserial understands.

    Raises
    ------
    MachineError
        If the port cannot be opened.
    """

    def __init__(self, device: str, baud: int = BAUD) -> None:
        self.name = device.rsplit("/", 1)[-1]
        self._clock = SystemClock()
        self._writing = threading.Lock()  # an overlapped write on Windows is not safe from two threads
        self._closed = False
        try:
            self._port = serial.serial_for_url(
                device, baudrate=baud, timeout=_SLICE, write_timeout=_WRITE_TIMEOUT, exclusive=True
            )
        except (serial.SerialException, OSError, ValueError) as error:
            raise MachineError(
                say("The port cannot be opened ({reason}).", reason=_reason(error)),
                device,
                "Is the machine plugged in and switched on, and no other program using the port?",
            ) from error

    @property
    def clock(self) -> Clock:
        return self._clock

    def write(self, data: bytes) -> None:
        try:
            with self._writing:
                self._port.write(data)
        except (serial.SerialException, OSError, TypeError) as error:  # TypeError: closed meanwhile
            raise MachineError(
                say("The link is lost ({reason}).", reason=_reason(error)), self.name, _GONE
            ) from error

    def read(self, timeout: float) -> bytes:
        deadline = self._clock.now() + timeout
        try:
            while True:
                waiting = self._port.in_waiting
                if waiting or self._clock.now() < deadline:
                    data = bytes(self._port.read(max(1, waiting)))
                    if data:
                        return data + self._rest()
                if self._clock.now() >= deadline:
                    return b""
        except (serial.SerialException, OSError, TypeError) as error:  # TypeError: closed meanwhile
            raise MachineError(
                say("The link is lost ({reason}).", reason=_reason(error)), self.name, _GONE
            ) from error

    def _rest(self) -> bytes:
        waiting = self._port.in_waiting
        return bytes(self._port.read(waiting)) if waiting else b""

    def close(self) -> None:
        if not self._closed:
            self._closed = True
            self._port.close()


def _reason(error: Exception) -> str:
    text = getattr(error, "strerror", None) or str(error)
    return text.strip().rstrip(".") or type(error).__name__
