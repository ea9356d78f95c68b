"""Programs as files, for machines that run from a card and for the shelf.

The lines are the very ones that are streamed; only remarks before and the end of program after are
added. The file is read back and compared before it is handed out.
"""

from __future__ import annotations

import numpy as np

from drypoint.bits.model import Bit, VBit
from drypoint.errors import PlanError
from drypoint.gcode.reader import read_gcode
from drypoint.program.model import MoveKind, Program

END = "M2"
"""End of program (RS-274/NGC, NISTIR 6556)."""
READ_BACK = 5e-4
"""Coordinates read back may differ by half a written digit, mm."""


def file_name(program: Program) -> str:
    """Name of the file: "02-grooves-pass-1.nc"."""
    return f"{program.name}.nc"


def file_text(program: Program, *, job: str = "", line_limit: int = 80, seconds: float | None = None) -> str:
    """The whole file, checked by reading it back.

    ``seconds`` is the time that is told in it; that of the program's motion if not given.

    Raises
    ------
    PlanError
        What is read back is not what was meant.
    """
    remarks = [
        f"Drypoint: {program.title}",
        *([f"Job: {job}"] if job else []),
        f"Bit: {_describe(program.bit)}",
        f"Expected time: {_minutes(program.seconds if seconds is None else seconds)}",
        f"Zero Z on the copper. Rapid moves stay at Z {program.clearance:.3f} or above.",
        "Clip off? Clamps tight? Eyes and lungs protected? Hand on the power switch.",
    ]
    head = [f"({_plain(text)})"[: line_limit - 1].rstrip(")") + ")" for text in remarks]
    text = "\n".join((*head, *program.lines, END)) + "\n"
    _read_back(text, program)
    return text


def _plain(text: str) -> str:
    """Text that may stand in a remark: ASCII, without brackets."""
    swapped = text.replace("°", " deg").replace("µ", "u").replace("(", "[").replace(")", "]")
    return swapped.encode("ascii", "replace").decode()


def _describe(bit: Bit) -> str:
    if isinstance(bit, VBit):
        return f"{bit.name}, tip {bit.tip:g} mm, {np.degrees(bit.angle):g} deg"
    return f"{bit.name}, {bit.diameter:g} mm"


def _minutes(seconds: float) -> str:
    whole = round(seconds)
    return f"{whole // 60} min {whole % 60:02d} s"


_KINDS = {
    "rapid": MoveKind.RAPID,
    "feed": MoveKind.FEED,
    "arc_cw": MoveKind.ARC_CW,
    "arc_ccw": MoveKind.ARC_CCW,
}


def _read_back(text: str, program: Program) -> None:
    """Compare the moves of the file with those of the program, from its first one on."""
    read = [move for move in read_gcode(text) if move.kind in _KINDS]
    moves = program.moves
    wanted = np.flatnonzero(moves.kind != MoveKind.DWELL)
    # before the program's own moves the file goes up to the clearance plane
    read = read[len(read) - len(wanted) :] if len(read) >= len(wanted) else read
    if len(read) != len(wanted):
        raise PlanError(f"The file has {len(read)} moves, not {len(wanted)}.", program.name)
    for move, index in zip(read, wanted.tolist(), strict=True):
        off = max(abs(a - b) for a, b in zip(move.end, moves.end[index].tolist(), strict=True))
        if _KINDS[move.kind] != moves.kind[index] or off > READ_BACK:
            raise PlanError("The file does not read back as the program.", f"{program.name}, move {index}")
