"""IPC-D-356A netlists: which net lies where.

Columns after IPC-D-356A: code 1-3, net 4-17, reference 21-26, pin 28-31, drilled 33-37, plated 38,
access 39-41, x 42-49, y 50-57, sizes 58-67. Nets are used by position; some programs cut names
to 14 characters, so the names are only used where nothing better is known.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from drypoint.board.model import Side
from drypoint.board.text_source import text_of
from drypoint.errors import InputError
from drypoint.wording import say

MAX_POINTS = 1_000_000
TEST_CODES = ("317", "327", "307", "367", "017", "027")
NO_NET = "N/C"
LONGEST = 200
"""Characters of a record that are looked at; records have 80."""


@dataclass(frozen=True, slots=True)
class NetPoint:
    """One pad or hole of a netlist: net, place (mm, design frame), and what it is.

    ``side`` is None where it can be reached from both; ``net`` is None for a pad of no net.
    """

    net: str | None
    x: float
    y: float
    side: Side | None
    diameter: float | None
    refdes: str
    pin: str
    plated: bool | None = None


@dataclass(frozen=True, slots=True, eq=False)
class Netlist:
    """The points of a netlist and what was odd in it."""

    points: tuple[NetPoint, ...]
    warnings: tuple[str, ...] = ()
    layers: int | None = None

    @property
    def nets(self) -> tuple[str, ...]:
        """Names of nets, in order of appearance."""
        return tuple(dict.fromkeys(point.net for point in self.points if point.net is not None))


@dataclass(slots=True)
class _State:
    name: str
    unit: float | None = None
    aliases: dict[str, str] | None = None
    line: int = 0

    def where(self) -> str:
        return say("{name}, line {line}", name=self.name, line=self.line)


def read_netlist(source: Path | str | bytes, *, name: str = "") -> Netlist:
    """Read an IPC-D-356 or IPC-D-356A netlist.

    Raises
    ------
    InputError
        With file and line: no netlist, units missing, a record that cannot be understood.
    """
    text, name = text_of(source, name)
    state = _State(name, aliases={})
    points: list[NetPoint] = []
    warnings: list[str] = []
    ended = False
    for number, whole in enumerate(text.splitlines(), 1):
        state.line = number
        line = whole[:LONGEST]
        if line.startswith("P"):
            _parameter(line, state)
        elif line[:3] in TEST_CODES:
            points += _record(line, state)
            if len(points) > MAX_POINTS:
                raise InputError(
                    say("The netlist has more than {max_points} points.", max_points=MAX_POINTS),
                    state.where(),
                )
        elif line.startswith("999"):
            ended = True
            break
        elif line.strip() and not re.match(r"C|[0-9]{3}", line):
            if not points and not line.isprintable():
                raise InputError("This is no IPC-D-356 netlist.", state.where())
            warnings.append(
                say("line {number}: “{line}” is not understood and left out", number=number, line=line[:20])
            )
    if not points:
        raise InputError("The netlist has no points.", name, "Export it as IPC-D-356A.")
    if not ended:
        warnings.append("the end mark 999 is missing: the file may be cut short")
    return Netlist(tuple(points), tuple(warnings))


def _parameter(line: str, state: _State) -> None:
    words = line[1:].split()
    if len(words) > 1 and words[0] == "UNITS":
        units = " ".join(words[1:]).upper()
        # CUST 0: 0.0001 inch; CUST 1 and SI: 0.001 mm; CUST 2: 0.0001 inch with angles in radians
        state.unit = 0.001 if units in ("CUST 1", "SI") else 0.00254
    elif len(words) > 1 and re.fullmatch(r"NNAME\d+", words[0]) and state.aliases is not None:
        state.aliases[words[0]] = words[1]


def _record(line: str, state: _State) -> Iterator[NetPoint]:
    if state.unit is None:
        raise InputError(
            "The netlist gives places before its units.",
            state.where(),
            "It needs a line such as “P  UNITS CUST 1”.",
        )
    place = re.search(r"X([+-]? *\d+)Y([+-]? *\d+)", line[40:].replace("\t", " "))
    if place is None:
        if line[:1] == "0":
            return
        raise InputError("The record has no place (X and Y).", state.where())
    unit = state.unit
    x, y = (int(text.replace(" ", "")) * unit for text in place.groups())
    if max(abs(x), abs(y)) > 1e5:
        raise InputError("The place lies more than 100 m out.", state.where())
    net: str | None = line[3:17].strip()
    if net in ("", NO_NET):
        net = None
    elif state.aliases:
        net = state.aliases.get(str(net), net)
    hole = re.match(r"D(\d{4})([PU])?", line[32:38])
    access = re.match(r"A(\d\d)", line[38:41])
    side = None
    if access is not None and hole is None and access[1] != "00":
        side = Side.TOP if access[1] == "01" else Side.BOTTOM  # the last layer has the highest number
    yield NetPoint(
        net,
        x,
        y,
        side,
        int(hole[1]) * unit if hole else None,
        line[20:26].strip(),
        line[27:31].strip(),
        None if hole is None or not hole[2] else hole[2] == "P",
    )
