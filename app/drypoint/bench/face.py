"""What those who use a bench need of it, whether it is simulated in this process or in one of its own."""

from __future__ import annotations

from typing import Protocol

from drypoint.bench.eyes import Seen, Sight
from drypoint.geometry.rigid import Rigid
from drypoint.machine.link import Link
from drypoint.machine.operator import Operator


class BenchFace(Protocol):
    """A simulated machine with its sheet of copper and the hands at it."""

    @property
    def operator(self) -> Operator:
        """The simulated hands."""

    @property
    def alive(self) -> bool:
        """Whether there is still a simulation behind it."""

    def connect(self) -> Link:
        """Open the port anew; this resets the controller.

        Raises
        ------
        MachineError
            If the simulation has ended.
        """

    def unplug(self) -> None:
        """Pull the cable: the link fails, the controller runs on with what it has."""

    def set_pace(self, pace: float | None) -> None:
        """Simulated seconds per real second from now on; None: as fast as it can."""

    def clamp_edges(self) -> None:
        """Hold the loose edges of the blank down."""

    def clamp_next_at(self, motion: Rigid) -> None:
        """The hands will clamp the sheet so far (a motion of space) from where it lay, unless told before."""

    def look_at(self, sight: Sight) -> Seen:
        """What a person reads from lines that were cut, given in work coordinates."""

    def close(self) -> None:
        """End the simulation; may be called twice."""
