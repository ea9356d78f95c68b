"""Faults put in by script or drawn from a seed: what goes wrong at a real machine."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from drypoint.bench.bench import Bench


class FaultKind(StrEnum):
    """What goes wrong."""

    DROPPED_LINE = "dropped line"
    GARBLED_BYTE = "garbled byte"
    RESET = "reset"
    ALARM = "alarm"
    UNPLUGGED = "unplugged cable"
    LOST_STEPS = "lost steps"
    BROKEN_BIT = "broken bit"
    POWER = "power lost"


SILENT = frozenset((FaultKind.LOST_STEPS, FaultKind.BROKEN_BIT))
"""Faults of which the controller knows nothing."""


@dataclass(frozen=True, slots=True)
class Fault:
    """One fault.

    Attributes
    ----------
    after_lines : int
        It comes when so many lines have arrived at the controller since it was armed.
    by : (x, y, z)
        Lost steps, mm.
    loss : float
        Length that breaks off a bit, mm.
    """

    kind: FaultKind
    after_lines: int
    by: tuple[float, float, float] = (0.8, -0.5, 0.0)
    loss: float = 0.4


def draw(seed: int, lines: int, kinds: Sequence[FaultKind] = tuple(FaultKind)) -> Fault:
    """A fault of one of ``kinds`` at a random moment of a program of ``lines`` lines."""
    rng = np.random.default_rng((seed, 0xFA17))
    kind = kinds[int(rng.integers(len(kinds)))]
    x, y = rng.choice((-1.0, 1.0), 2) * rng.uniform(0.3, 2.0, 2)
    return Fault(
        kind, int(rng.integers(1, max(2, lines))), (float(x), float(y), 0.0), float(rng.uniform(0.2, 1.0))
    )


class Injector:
    """Arms faults on a bench.

    Parameters
    ----------
    bench : Bench
    faults : sequence of Fault
    """

    def __init__(self, bench: Bench, faults: Sequence[Fault]) -> None:
        self._bench = bench
        self._waiting = sorted(faults, key=lambda fault: fault.after_lines)
        self._lines = 0
        self.done: list[Fault] = []
        """Faults that have come, in order."""
        bench.controller.on_text = self._arrives

    def disarm(self) -> None:
        """No more faults."""
        self._bench.controller.on_text = None

    def _arrives(self, piece: bytes) -> bytes:
        """Text reaches the controller: count it, spoil it if it is time."""
        self._lines += piece.endswith(b"\n")
        while self._waiting and self._waiting[0].after_lines <= self._lines:
            fault = self._waiting.pop(0)
            self.done.append(fault)
            piece = self._happen(fault, piece)
        return piece

    def _happen(self, fault: Fault, piece: bytes) -> bytes:
        bench = self._bench
        controller = bench.controller
        if fault.kind is FaultKind.DROPPED_LINE:
            return b""
        if fault.kind is FaultKind.GARBLED_BYTE:
            middle = len(piece) // 2
            return piece[:middle] + b"#" + piece[middle + 1 :] if middle else piece
        if fault.kind is FaultKind.RESET:
            controller.restart()
            return b""
        if fault.kind is FaultKind.ALARM:
            controller.fail()
            return b""
        if fault.kind is FaultKind.UNPLUGGED:
            bench.unplug()
        elif fault.kind is FaultKind.LOST_STEPS:
            bench.body.lose_steps(fault.by)
        elif fault.kind is FaultKind.BROKEN_BIT:
            bench.body.break_bit(fault.loss)
        else:
            controller.power_off()
            bench.unplug()
            return b""
        return piece
