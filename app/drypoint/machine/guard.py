"""Lines that are refused before they are sent, and when the spindle may start."""

from __future__ import annotations

import re
from collections.abc import Sequence

from drypoint.errors import MachineError, PlanError
from drypoint.machine.state import Clip, MachineState
from drypoint.program.laser_check import check_beam
from drypoint.wording import say

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

    In laser mode a beam of constant power, which stays on when motion stops, is let pass only as
    pulses of a whole program whose every line keeps the rules of `check_beam`.

    Raises
    ------
    MachineError
        For a command to the controller itself, or a beam that could stay on when motion stops.
    """
    flaw = _beam_flaw(lines) if laser_mode else None
    for number, line in enumerate(lines):
        read = bare(line)
        where = say("line {number}: {line}", number=number + 1, line=line)
        if read.startswith("$"):
            raise MachineError("A program may not change the controller's settings.", where)
        if flaw is not None and _CONSTANT_BEAM.search(read):
            raise MachineError(
                say("This could leave the beam on when the machine stands still ({flaw}).", flaw=flaw),
                where,
                "Power that follows the speed is needed (M4), or pulses that are put out each by each.",
            )


def _beam_flaw(lines: Sequence[str]) -> str | None:
    """Why a beam of constant power in these lines is not to be trusted; None where it is."""
    try:
        check_beam(lines)
    except PlanError as flaw:
        return f"{flaw.where}: {flaw.what}"
    return None


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
