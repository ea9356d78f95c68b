"""Titles of runs as the job file keeps them, plain strings, made sayable in any language again."""

from __future__ import annotations

import re

from drypoint.bits.naming import named
from drypoint.wording import as_text, say, strung

_MARKED = re.compile(r"(Burn grid|Legend) on (.+)")
_GROOVES = re.compile(r"Grooves, pass (\d+)")


def run_title(stored: str) -> str:
    """The title with its words looked up again; what is not known stays as it is."""
    grooves = _GROOVES.fullmatch(stored)
    if grooves is not None:
        return say("Grooves, pass {number}", number=int(grooves[1]))
    marked = _MARKED.fullmatch(stored)
    if marked is not None:
        material = as_text(marked[2])
        if marked[1] == "Burn grid":
            return say("Burn grid on {material}", material=material)
        return say("Legend on {material}", material=material)
    what, parted, bit = stored.partition(": ")
    if not parted:
        return as_text(stored)
    return say(
        "{what}: {bit}", what=strung([as_text(word) for word in what.split(", ")], ", "), bit=named(bit)
    )
