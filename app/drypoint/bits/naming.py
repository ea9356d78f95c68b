"""Names made of a bit's kind and size, sayable in another language; all others are a person's own."""

from __future__ import annotations

import re

from drypoint.wording import Text, say

_NUMBER = r"(\d+(?:\.\d+)?)"
_TIP_FIRST = re.compile(rf"V-bit {_NUMBER} mm {_NUMBER}°")
_ANGLE_FIRST = re.compile(rf"V-bit {_NUMBER}° {_NUMBER}")
_ROUND = re.compile(rf"(Drill|End mill) {_NUMBER}( mm)?")


def named(name: str) -> str:
    """The same name; as a text with its sizes where it is made of nothing else."""
    if isinstance(name, Text):
        return name
    said = next((text for text in _guesses(name) if text == name), name)
    return said if isinstance(said, Text) else str(name)


def _guesses(name: str) -> list[str]:
    """Texts that may be what is meant; a number written otherwise makes another text."""
    if found := _TIP_FIRST.fullmatch(name):
        return [say("V-bit {tip:g} mm {angle:g}°", tip=float(found[1]), angle=float(found[2]))]
    if found := _ANGLE_FIRST.fullmatch(name):
        return [say("V-bit {angle:g}° {tip:.1f}", angle=float(found[1]), tip=float(found[2]))]
    if not (found := _ROUND.fullmatch(name)):
        return []
    size = float(found[2])
    if found[1] == "Drill":
        return [
            say("Drill {size:.1f} mm", size=size),
            say("Drill {size:g} mm", size=size),
            say("Drill {size:.1f}", size=size),
        ]
    return [
        say("End mill {size:.1f} mm", size=size),
        say("End mill {size:g} mm", size=size),
        say("End mill {size:.1f}", size=size),
    ]
