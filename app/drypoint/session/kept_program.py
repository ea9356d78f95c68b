"""A program kept in the job file with its run, so that a killed run resumes with exactly its lines."""

from __future__ import annotations

import base64
import io
from typing import Any

import numpy as np

from drypoint.bits.model import Bit, Drill, EndMill, VBit
from drypoint.errors import StoreError
from drypoint.geometry.points import as_points
from drypoint.program.model import Moves, Program
from drypoint.session.codec import from_json, to_json
from drypoint.wording import say

_ARRAYS = ("kind", "end", "feed", "centre", "tag", "dwell")
_BITS: dict[str, type[VBit] | type[EndMill] | type[Drill]] = {
    "VBit": VBit,
    "EndMill": EndMill,
    "Drill": Drill,
}


def pack(program: Program) -> dict[str, Any]:
    """Plain JSON of a program, arrays as compressed base64."""
    buffer = io.BytesIO()
    arrays = {name: getattr(program.moves, name) for name in _ARRAYS}
    np.savez_compressed(buffer, line_move=program.line_move, **arrays)
    return {
        "name": program.name,
        "title": program.title,
        "bit": to_json(program.bit),
        "lines": list(program.lines),
        "seconds": program.seconds,
        "pass_number": program.pass_number,
        "arrays": base64.b64encode(buffer.getvalue()).decode("ascii"),
    }


def unpack(data: Any) -> Program:
    """The program again.

    Raises
    ------
    StoreError
        If the kept text is damaged.
    """
    try:
        held = np.load(io.BytesIO(base64.b64decode(data["arrays"])), allow_pickle=False)
        moves = Moves(
            held["kind"].astype(np.int8),
            as_points(held["end"], 3),
            held["feed"].astype(np.float64),
            held["centre"].astype(np.float64),
            held["tag"].astype(np.int32),
            held["dwell"].astype(np.float64),
        )
        bit: Bit = from_json(_BITS[data["bit"]["type"]], data["bit"], "bit")
        return Program(
            name=data["name"],
            title=data["title"],
            bit=bit,
            moves=moves,
            lines=tuple(data["lines"]),
            line_move=held["line_move"].astype(np.int32),
            seconds=float(data["seconds"]),
            pass_number=int(data["pass_number"]),
        )
    except (KeyError, ValueError, TypeError, OSError) as error:
        raise StoreError(
            say("The program of an earlier run cannot be read ({error}).", error=error),
            "journal",
            "Plan the pass anew.",
        ) from error
