# ruff: noqa: N818 - these say what happened, in our words
"""What can go wrong between us and the machine, each with its own name so that a procedure can tell.

MachineError
├── LinkLost    nothing comes back any more
├── Restarted   the controller started anew by itself
├── Locked      an alarm
├── Refused     one line was refused
├── LineLost    a line or its answer vanished on the way
├── Astray      the machine is not where the program says
├── Declined    the person at the machine does not do what was asked
└── Stopped     somebody pressed Stop
"""

from __future__ import annotations

from drypoint.errors import MachineError
from drypoint.machine.explain import explain_alarm, explain_error
from drypoint.wording import say

RESUME_HINT = "Set zero again at the known spot, check a reference mark, then resume the run."


class LinkLost(MachineError):
    """The other end is gone or silent."""


class Restarted(MachineError):
    """The controller restarted unasked: what it had buffered is gone."""

    def __init__(self, where: str) -> None:
        super().__init__(
            "The controller restarted by itself.",
            where,
            "Power, cable or electrical noise are the usual causes. " + RESUME_HINT,
        )


class Locked(MachineError):
    """The controller locked itself with an alarm."""

    def __init__(self, code: int, where: str) -> None:
        said = explain_alarm(code)
        super().__init__(said.what, where, said.hint)
        self.code = code


class Refused(MachineError):
    """A line was refused; the lines after it that were already buffered may have been executed.

    Attributes
    ----------
    code : int
    index : int
        Which line of those sent, from 0.
    """

    def __init__(self, code: int, line: str, index: int) -> None:
        said = explain_error(code)
        super().__init__(said.what, say("line {index}: {line}", index=index + 1, line=line), said.hint)
        self.code = code
        self.index = index


class LineLost(MachineError):
    """The machine rests although lines are unanswered."""

    def __init__(self, where: str) -> None:
        super().__init__(
            "A line, or the answer to it, was lost on the cable.",
            where,
            "A shorter or better screened cable helps; line by line sending is slower but safer. "
            + RESUME_HINT,
        )


class Astray(MachineError):
    """Reports contradict the program: not its path, or faster than its feeds."""

    def __init__(self, what: str, where: str) -> None:
        super().__init__(say("{what}: a line arrived garbled.", what=what), where, RESUME_HINT)


class Declined(MachineError):
    """What was asked of the person at the machine is not done."""

    def __init__(self, what: str, where: str) -> None:
        super().__init__(say("Declined: {what}.", what=what), where, "Nothing further was done.")


class Stopped(MachineError):
    """Stop was pressed: the machine slowed down, stood still and was reset; the spindle output is off."""

    def __init__(self, where: str = "") -> None:
        super().__init__("Stopped.", where, "The run can be resumed.")
