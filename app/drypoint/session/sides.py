"""Which side a program is for, told by its name where both are milled."""

from __future__ import annotations

import re
from dataclasses import replace

from drypoint.board.model import Side
from drypoint.program.model import Program
from drypoint.session.marks import side_words
from drypoint.session.snapshot import Snapshot
from drypoint.wording import say

_SIDE = re.compile(rf"^([12])-({'|'.join(Side)})-")
_NUMBER = re.compile(r"^\d+-")


def sided(snap: Snapshot, program: Program) -> Program:
    """The program, named after the side that looks up where a job has both: "2-top-11-grooves-pass-1".

    Files then stand in the order of work, and those of one side do not replace those of the other.
    """
    if not snap.settings.board.both:
        return program
    side = snap.settings.board.side
    title = say("{title}, {side} up", title=program.title, side=side_words(side))
    return replace(program, name=f"{prefix(snap, side)}{program.name}", title=title)


def prefix(snap: Snapshot, side: Side) -> str:
    """What names of programs of a side begin with where both are milled; nothing where one is."""
    if not snap.settings.board.both:
        return ""
    return f"{1 if side is snap.face(1) else 2}-{side.value}-"


def of_second_side(name: str) -> bool:
    """Whether a program is run after the board was turned over, by its name."""
    found = _SIDE.match(name)
    return found is not None and found.group(1) == "2"


def side_of(name: str) -> Side | None:
    """The side that looks up for a program, by its name; None where a job has but one."""
    found = _SIDE.match(name)
    return None if found is None else Side(found.group(2))


def what_is_cut(name: str) -> str:
    """The name without side and number: the same from whichever side a hole is made."""
    return _NUMBER.sub("", _SIDE.sub("", name))
