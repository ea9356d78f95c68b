"""What moves bytes, and what tells the time: two small interfaces with a real and a bench version each."""

from __future__ import annotations

from abc import ABC, abstractmethod


class Clock(ABC):
    """Time as an interface, so a rehearsed hour takes seconds."""

    @abstractmethod
    def now(self) -> float:
        """Seconds since some start; never goes back."""

    @abstractmethod
    def sleep(self, seconds: float) -> None:
        """Let time pass."""


class Link(ABC):
    """Moves bytes to and from a controller. Knows nothing of what they mean.

    ``write`` may be called from any thread (real-time bytes bypass every queue);
    ``read`` from one thread at a time.
    """

    name: str
    """For people: "ttyUSB0", "bench"."""

    @property
    @abstractmethod
    def clock(self) -> Clock:
        """The clock that timeouts on this link follow."""

    @abstractmethod
    def write(self, data: bytes) -> None:
        """Hand bytes over.

        Raises
        ------
        MachineError
            If the other end is gone.
        """

    @abstractmethod
    def read(self, timeout: float) -> bytes:
        """Whatever has arrived, waiting at most ``timeout`` seconds for the first byte; b"" if none.

        Raises
        ------
        MachineError
            If the other end is gone.
        """

    @abstractmethod
    def close(self) -> None:
        """Let go of the port. May be called twice."""
