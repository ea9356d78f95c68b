"""Both links with something that keeps to the protocol at the far end."""

from __future__ import annotations

import os
import select
import threading

import pytest

from drypoint.bench.bench import Bench, BenchSetup
from drypoint.bench.remote import RemoteBench
from drypoint.machine.serial_link import SerialLink

BANNER = b"\r\nGrbl 1.1f ['$' for help]\r\n"


class PtyEnd:
    """The far end of a pty: answers every line, tells its status, greets when asked to."""

    def __init__(self) -> None:
        import pty  # not on Windows
        import tty

        self.master, self.slave = pty.openpty()
        tty.setraw(self.slave)
        self.device = os.ttyname(self.slave)
        self._wake_read, self._wake_write = os.pipe()
        self._open = True
        self._line = b""
        self._thread = threading.Thread(target=self._serve, daemon=True)
        self._thread.start()

    def greet(self) -> None:
        os.write(self.master, BANNER)

    def unplug(self) -> None:
        if self._open:
            self._open = False
            os.write(self._wake_write, b"x")
            self._thread.join()
            os.close(self.master)
            os.close(self.slave)

    def close(self) -> None:
        self.unplug()
        os.close(self._wake_read)
        os.close(self._wake_write)

    def _serve(self) -> None:
        while self._open:
            ready, _, _ = select.select([self.master, self._wake_read], [], [])
            if self._wake_read in ready:
                return
            for value in os.read(self.master, 256):
                self._take(bytes([value]))

    def _take(self, byte: bytes) -> None:
        if byte == b"?":
            os.write(self.master, b"<Idle|MPos:0.000,0.000,0.000|FS:0,0|WCO:0.000,0.000,0.000>\r\n")
        elif byte == b"\x18":
            self._line = b""
            self.greet()
        elif byte == b"\n":
            if self._line == b"$I":
                os.write(self.master, b"[VER:1.1f.20170801:]\r\n[OPT:V,15,128]\r\n")
            self._line = b""
            os.write(self.master, b"ok\r\n")
        elif byte >= b"\x80" or byte in b"!~":
            pass
        else:
            self._line += byte


class Ends:
    """A link, and how to pull its plug."""

    def __init__(self, link, unplug) -> None:
        self.link = link
        self.unplug = unplug


def _serial():
    end = PtyEnd()
    link = SerialLink(end.device)
    end.greet()  # opening a real port resets the board; a pty does not notice
    try:
        yield Ends(link, end.unplug)
    finally:
        link.close()
        end.close()


def _bench():
    link = Bench(1).link

    def unplug() -> None:
        link.unplugged = True

    yield Ends(link, unplug)
    link.close()


@pytest.fixture(scope="session")
def remote_bench():
    """One process for all tests: opening its port anew resets it."""
    bench = RemoteBench(1, BenchSetup())
    yield bench
    bench.close()


def _remote(bench):
    link = bench.connect()
    yield Ends(link, bench.unplug)
    link.close()


@pytest.fixture(
    params=[
        pytest.param(_serial, id="serial", marks=pytest.mark.skipif(os.name == "nt", reason="no pty")),
        pytest.param(_bench, id="bench"),
        pytest.param(_remote, id="bench in a process of its own"),
    ]
)
def ends(request):
    if request.param is _remote:
        yield from _remote(request.getfixturevalue("remote_bench"))
    else:
        yield from request.param()
