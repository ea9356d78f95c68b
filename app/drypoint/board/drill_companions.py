"""What some programs write beside a drill file instead of into it: tool sizes, units, digits."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field

from drypoint.board.drill_numbers import MM_PER_INCH

_PLACES = re.compile(r"^[ \t]*(INTEGER|DECIMAL)-PLACES[ \t]+(\d)[ \t\r]*$", re.MULTILINE)
_UNITS = re.compile(r"^[ \t]*OUTPUT-UNITS[ \t]+(ENGLISH|METRIC)[ \t\r]*$", re.MULTILINE)
_TOOL = re.compile(r"^[ \t]*(\d{0,3}\.\d{1,9})[ \t]+T(\d{1,3})[ \t\r]*$", re.MULTILINE)
_SIZE_LIMIT = 200_000


@dataclass(frozen=True, slots=True)
class Companion:
    """Tools (mm), number format (metric, whole, decimals), and the files they were found in."""

    tools: Mapping[int, float] = field(default_factory=dict)
    number_format: tuple[bool, int, int] | None = None
    files: tuple[str, ...] = ()


def companion_of(name: str, files: Mapping[str, bytes]) -> Companion:
    """What the other files say about the drill file ``name``.

    A parameter file states digits and units for all; a log states the tools of the file it names.
    """
    base = name.rsplit("/", 1)[-1]
    shape: tuple[bool, int, int] | None = None
    tools: dict[int, float] = {}
    used = []
    texts = {n: d.decode("latin-1") for n, d in files.items() if n != name and len(d) <= _SIZE_LIMIT}
    for other, text in texts.items():
        places = {kind: int(digits) for kind, digits in _PLACES.findall(text)}
        units = _UNITS.search(text)
        if units is not None and len(places) == 2:
            shape = (units[1] == "METRIC", places["INTEGER"], places["DECIMAL"])
            used.append(other)
    factor = 1.0 if shape is not None and shape[0] else MM_PER_INCH
    for other, text in texts.items():
        if (found := _TOOL.findall(text)) and _names(text, base):
            tools.update({int(number): float(size) * factor for size, number in found})
            used.append(other)
    return Companion(tools, shape, tuple(dict.fromkeys(used)))


_CREATED = re.compile(r"['\"\s]([\w .-]{1,80})\.(\w{3})['\"]")


def _names(text: str, base: str) -> bool:
    """Whether a log speaks of the file, whose name may have got longer since."""
    stem, _, suffix = base.rpartition(".")
    created = {(name.strip(), ext) for name, ext in _CREATED.findall(text)}
    return base in text or any(ext == suffix and stem.startswith(name) for name, ext in created)
