"""Bits for ready-made programs as they are written on the command line."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from drypoint.bits.drill_sizes import drill_size
from drypoint.bits.model import Bit
from drypoint.errors import InputError
from drypoint.session.imported import ReadyProgram
from drypoint.session.session import Session
from drypoint.session.settings import BitSettings, ToolChoice
from drypoint.wording import say

OPTION = "--bit"
SAME = 1e-3
"""mm; sizes nearer than this are the same drill."""


def choose_bits(session: Session, given: Sequence[str]) -> None:
    """Store bits given as "FILE[:TOOL]=BIT": the name of a bit of the job, or the size of a drill.

    Raises
    ------
    InputError
        If one names no program, no tool of it, or no bit of the job.
    """
    if not given:
        return
    ready = session.derived.ready(session.snapshot)
    bits = session.settings.bits
    made = tuple(choice for one in given for choice in _choices(one, ready, bits))
    chosen = session.settings.imported
    session.change("Choose bits of programs", imported=replace(chosen, bits=(*chosen.bits, *made)))


def _choices(given: str, ready: Sequence[ReadyProgram], bits: BitSettings) -> list[ToolChoice]:
    target, _, bit = given.rpartition("=")
    file, _, tool = target.rpartition(":") if target.rpartition(":")[2].isdecimal() else (target, "", "")
    program = next((one for one in ready if one.name == file), None)
    if program is None:
        names = ", ".join(one.name for one in ready)
        hint = say("There are: {names}.", names=names) if names else "The job has no ready-made program."
        raise InputError(say("There is no program “{file}”.", file=file), OPTION, hint)
    numbers = [one.number for one in program.tools if not tool or one.number == int(tool)]
    if not numbers:
        raise InputError(say("{file} has no tool {tool}.", file=file, tool=tool), OPTION)
    name = _bit_name(bit, bits)
    return [ToolChoice(file, number, name) for number in numbers]


def _bit_name(text: str, bits: BitSettings) -> str:
    every: tuple[Bit, ...] = (bits.vbit, bits.mill, *bits.drills)
    for bit in every:
        if bit.name == text:
            return text
    size = drill_size(text)
    for drill in bits.drills:
        if abs(drill.diameter - size) < SAME:
            return drill.name
    hint = say("The job has: {names}.", names=", ".join(bit.name for bit in every))
    raise InputError(say("The job has no drill of {size:.3f} mm.", size=size), OPTION, hint)
