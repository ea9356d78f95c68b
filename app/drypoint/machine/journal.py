"""The record of a run that outlives the program: what was sent, taken and executed.

Written by the procedures, kept by the job. All counts are of lines of the program from its start:
``executed(120)`` says that lines 0..119 are proven done.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class RunStart:
    """What is begun.

    Attributes
    ----------
    program : str
        Name of the program.
    first : int
        Line it starts at: 0, or the resume point of the run it carries on.
    total : int
        Lines of the whole program.
    fingerprint : str
        SHA-256 of the lines, so that a resume with other lines is refused.
    """

    program: str
    first: int
    total: int
    fingerprint: str


class RunJournal(ABC):
    """One run's record. Called on the machine's thread, at the rate of status reports."""

    @abstractmethod
    def begin(self, run: RunStart) -> None:
        """A run begins; must be on disk when this returns."""

    @abstractmethod
    def sent(self, first: int, last: int) -> None:
        """Lines ``first`` .. ``last`` - 1 were handed to the link."""

    @abstractmethod
    def acknowledged(self, n: int) -> None:
        """The first ``n`` lines were taken by the controller: buffered, not executed."""

    @abstractmethod
    def executed(self, n: int) -> None:
        """The first ``n`` lines are proven executed."""

    @abstractmethod
    def event(self, text: str) -> None:
        """Something worth knowing later, in plain words."""

    @abstractmethod
    def end(self, reason: str) -> None:
        """The run is over; must be on disk when this returns. ``reason`` is "finished" or says why not."""

    @abstractmethod
    def resume_point(self) -> int:
        """First line not proven executed."""

    def checked(self, what: str) -> None:
        """A check passed: what was cut up to now stands."""
        self.event(f"checked: {what}")

    def suspect(self, why: str) -> None:
        """A check failed: what was cut since the last good check is in doubt."""
        self.event(f"suspect since the last check: {why}")
