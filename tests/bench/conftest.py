"""A bench, and a person with a plain terminal at it."""

from __future__ import annotations

import math
import re

import pytest

from drypoint.bench.bench import Bench, BenchSetup
from drypoint.bench.imperfect import Faults
from drypoint.bench.truth import Kind
from drypoint.bits.model import Speeds, VBit

PERFECT = Faults(play=(0.0, 0.0, 0.0), lift=0.0, runout=0.0, noise=0.0, chips=0.0, push=0.0)


class Terminal:
    """Sends lines and reads answers."""

    def __init__(self, bench: Bench) -> None:
        self.bench = bench
        self.link = bench.link
        self.read_all(2.0)

    def read_all(self, seconds: float) -> list[str]:
        """Everything that comes within some simulated time."""
        end, got = self.link.clock.now() + seconds, b""
        while self.link.clock.now() < end:
            got += self.link.read(end - self.link.clock.now())
        return [line for line in got.decode().split("\r\n") if line]

    def send(self, line: str, seconds: float = 300.0) -> list[str]:
        """A line, and everything up to its answer."""
        self.link.write(line.encode() + b"\n")
        end, got = self.link.clock.now() + seconds, b""
        while not re.search(rb"(^|\n)(ok|error:\d+)\r\n", got):
            if self.link.clock.now() >= end:
                raise AssertionError(f"no answer to {line!r}: {got!r}")
            got += self.link.read(1.0)
        return [text for text in got.decode().split("\r\n") if text]

    def status(self) -> str:
        """One report."""
        self.link.write(b"?")
        got = b""
        for _ in range(10):
            got += self.link.read(1.0)
            if b">" in got:
                return got.decode()
        raise AssertionError("no report")

    def place(self) -> tuple[float, ...]:
        """Machine position by report."""
        found = re.search(r"MPos:([-\d.,]+)", self.status())
        assert found
        return tuple(float(value) for value in found.group(1).split(","))

    def rest(self) -> str:
        """Ask until it is at rest."""
        for _ in range(10000):
            report = self.status()
            if "<Idle" in report:
                return report
            self.link.clock.sleep(0.1)
        raise AssertionError(report)


@pytest.fixture
def make():
    """Makes benches; perfect and flat unless told otherwise."""

    def make_bench(seed: int = 1, **changes) -> Bench:
        given = {"kind": Kind.FLAT, "loose": (), "faults": PERFECT, "angle": 0.0, "tilt": (0.0, 0.0)}
        return Bench(seed, BenchSetup(**(given | changes)))

    return make_bench


@pytest.fixture
def bench(make):
    return make()


@pytest.fixture
def terminal(bench):
    return Terminal(bench)


@pytest.fixture
def terminal_of():
    return Terminal


@pytest.fixture
def vbit():
    return VBit("30°", 0.1, math.radians(30.0), Speeds(10000.0, 300.0, 100.0))


@pytest.fixture
def zeroed():
    """Puts the bit over the blank's corner and calls that place on the copper zero."""

    def zero(terminal: Terminal, bit) -> None:
        bench = terminal.bench
        bench.put_in(bit)
        x, y = bench.sheet.corner()
        top = float(bench.sheet.top([(x + 2.0, y + 2.0)])[0])
        counted = bench.body.counted((x, y, top))
        offsets = "".join(f"{axis}{value:.4f}" for axis, value in zip("XYZ", counted, strict=True))
        terminal.send(f"G10L2P1{offsets}")

    return zero
