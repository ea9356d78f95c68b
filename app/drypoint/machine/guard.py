"""Lines that are refused before they are sent, and when the spindle may start."""

from __future__ import annotations

import re
from collections.abc import Sequence

from drypoint.errors import MachineError
from drypoint.machine.state import Clip, MachineState

_SPINDLE = re.compile(r"M0*[34](?!\d)")
_CONSTANT_BEAM = re.compile(r"M0*3(?!\d)")
_COMMENT = re.compile(r"\([^)]*\)|;.*|\s+")


def bare(line: str) -> str:
    """A line as the controller reads it: no blanks, no comments, capitals."""
    return _COMMENT.sub("", line).upper()


def starts_spindle(lines: Sequence[str]) -> bool:
    """Whether any line switches the spindle output on."""
    return any(_SPINDLE.search(bare(line)) for line in lines)


def refuse_foreign(lines: Sequence[str], *, laser_mode: bool) -> None:
    """Refuse what has no place in a program.

    Raises
    ------
    MachineError
        For a command to the controller itself, or a beam that would stay on when motion stops.
    """
    for number, line in enumerate(lines):
        read = bare(line)
        where = f"line {number + 1}: {line}"
        if read.startswith("$"):
            raise MachineError("A program may not change the controller's settings.", where)
        if laser_mode and _CONSTANT_BEAM.search(read):
            raise MachineError(
                "This would leave the beam on when the machine stands still.",
                where,
                "Power that follows the speed is needed (M4).",
            )


def require_clear(clip: Clip, state: MachineState, name: str) -> None:
    """Refuse a spindle start unless the clip is known to be off and the contact input reads open.

    Raises
    ------
    MachineError
        Saying what to do first.
    """
    if clip is not Clip.OFF:
        raise MachineError(
            "The spindle is locked: the contact clip is not confirmed off.",
            name,
            "Take the clip off and confirm it.",
        )
    if state.contact:
        raise MachineError(
            "The spindle is locked: the contact input reads closed.",
            name,
            "Something connects bit and copper: take the clip off, raise the bit.",
        )
