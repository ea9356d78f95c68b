"""Voltages between nets as they are written down: ``NET=V`` on the command line, or a table in a file."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Iterator, Sequence
from difflib import get_close_matches
from fnmatch import fnmatchcase
from pathlib import Path

from drypoint.errors import InputError
from drypoint.session.settings import Voltage
from drypoint.wording import say

_SPLIT = re.compile(r"\s*[,;\t]\s*")
WILD = frozenset("*?[")
"""Characters that make a name stand for several nets."""
MOST_VOLTS = 100_000.0


def read_voltages(stated: Sequence[str]) -> tuple[Voltage, ...]:
    """Voltages from words: each ``NET=V``, ``NET,OTHER=V``, or the name of a file with a table.

    Raises
    ------
    InputError
        Naming the word, or the line of the file.
    """
    found: list[Voltage] = []
    for word in stated:
        if "=" in word:
            names, _, volts = word.rpartition("=")
            found.append(_voltage([*_SPLIT.split(names.strip()), volts.strip()], word))
        else:
            found += _table(Path(word))
    return tuple(found)


def _table(path: Path) -> Iterator[Voltage]:
    """A line for each: net, the other net if it is one pair, volts; ``#`` begins a remark."""
    try:
        text = path.read_text(encoding="utf-8-sig")
    except OSError as error:
        raise InputError(
            "The table of voltages cannot be read.", str(path), "Give NET=V, or a file that is there."
        ) from error
    except UnicodeDecodeError as error:
        raise InputError("The table of voltages is no text.", str(path), "Save it as UTF-8.") from error
    first = True
    for number, line in enumerate(text.splitlines(), 1):
        cells = _SPLIT.split(line.partition("#")[0].strip())
        if cells == [""]:
            continue
        where = say("{name}, line {number}", name=path.name, number=number)
        if first and len(cells) in (2, 3) and not any(sign.isdigit() for sign in cells[-1]):
            first = False  # a line that names the columns
            continue
        first = False
        yield _voltage(cells, where)


def _voltage(cells: Sequence[str], where: str) -> Voltage:
    if len(cells) not in (2, 3) or not cells[0]:
        raise InputError(
            "A voltage is a net, the other net if it is one pair, and volts.", where, "For example GND,V+=24."
        )
    try:
        volts = float(cells[-1].removesuffix("V").strip())
    except ValueError:
        volts = math.nan
    if not 0.0 <= volts <= MOST_VOLTS:
        raise InputError(
            say("'{text}' is no voltage.", text=cells[-1]), where, "Give volts, direct or peak: 0 or more."
        )
    return Voltage(cells[0], cells[1] if len(cells) == 3 else "", volts)


def of_nets(voltages: Sequence[Voltage], nets: Iterable[str]) -> tuple[Voltage, ...]:
    """The voltages for the nets of a board: ``*`` and ``?`` in a name stand for any characters.

    Raises
    ------
    InputError
        If a name fits no net.
    """
    known = sorted(nets)
    found: dict[tuple[str, str], Voltage] = {}
    for one in voltages:
        others = [""] if not one.other else _fitting(one.other, known)
        for net in _fitting(one.net, known):
            for other in others:
                if other != net:
                    found[net, other] = Voltage(net, other, one.volts)
    return tuple(found.values())


def _fitting(name: str, known: Sequence[str]) -> list[str]:
    if name in known:
        return [name]
    found = [net for net in known if fnmatchcase(net, name)] if WILD & set(name) else []
    if found:
        return found
    near = get_close_matches(name, known, 3, 0.5) or list(known[:6])
    raise InputError(
        say("No net is called '{name}'.", name=name),
        say("voltages"),
        say("Nets are, for example: {names}.", names=", ".join(near)) if near else "",
    )
