"""What drill sizes are called: metric, inch, fractions of an inch, numbers and letters.

Numbers and letters name the inch sizes of twist drills (ASME B94.11M); the tables here hold those a
board meets and are from memory. 1 in = 25.4 mm exactly.
"""

from __future__ import annotations

import math
import re
from types import MappingProxyType

from drypoint.errors import InputError
from drypoint.wording import say

INCH = 25.4
"""mm."""
ALIKE = 0.004
"""mm; a size this near to a named one is called so: half a step of the finest number drills."""

_NUMBERS = (
    # thousandths of an inch, number 80 down to number 30
    13.5, 14.5, 16, 18, 20, 21, 22.5, 24, 25, 26,
    28, 29.2, 31, 32, 33, 35, 36, 37, 38, 39,
    40, 41, 42, 43, 46.5, 52, 55, 59.5, 63.5, 67,
    70, 73, 76, 78.5, 81, 82, 86, 89, 93.5, 96,
    98, 99.5, 101.5, 104, 106.5, 110, 111, 113, 116, 120,
    128.5,
)  # fmt: skip
_LETTERS = (234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290)

NUMBER_SIZES = MappingProxyType({80 - k: mil * INCH / 1000 for k, mil in enumerate(_NUMBERS)})
"""Diameters, mm, of number drills."""
LETTER_SIZES = MappingProxyType({chr(ord("A") + k): mil * INCH / 1000 for k, mil in enumerate(_LETTERS)})
"""Diameters, mm, of letter drills."""

_PLAIN = re.compile(r"(\d+(?:[.,]\d*)?|[.,]\d+)\s*(mm)?")
_INCH = re.compile(r"(\d+(?:[.,]\d*)?|[.,]\d+)\s*(?:in|inch|\"|″)")
_FRACTION = re.compile(r"(\d+)\s*/\s*(\d+)\s*(?:in|inch|\"|″)?")
_NUMBER = re.compile(r"(?:#|no\.?|nr\.?|number)\s*(\d+)")
_LETTER = re.compile(r"(?:letter\s*)?([a-z])")


def drill_size(text: str) -> float:
    """The diameter, mm, that a person wrote: "0.8", "0.032 in", "1/32 in", "#67" or "letter C".

    Raises
    ------
    InputError
        If it names no size.
    """
    said = text.strip().lower()
    if match := _PLAIN.fullmatch(said):
        found: float | None = _value(match[1])
    elif match := _INCH.fullmatch(said):
        found = _value(match[1]) * INCH
    elif match := _FRACTION.fullmatch(said):
        found = int(match[1]) / int(match[2]) * INCH if int(match[2]) else None
    elif match := _NUMBER.fullmatch(said):
        found = NUMBER_SIZES.get(int(match[1]))
    elif match := _LETTER.fullmatch(said):
        found = LETTER_SIZES.get(match[1].upper())
    else:
        found = None
    if found is None or not math.isfinite(found) or found <= 0.0:
        hint = "Write 0.8 for mm, 0.032 in, 1/32 in, #67 or letter C."
        raise InputError("This is no drill size known here.", text.strip()[:40], hint)
    return found


def _value(text: str) -> float:
    return float(text.replace(",", "."))


def trade_name(diameter: float) -> str:
    """The number or letter of a drill of this diameter, mm; empty where it has none."""
    number = min(NUMBER_SIZES, key=lambda each: abs(NUMBER_SIZES[each] - diameter))
    letter = min(LETTER_SIZES, key=lambda each: abs(LETTER_SIZES[each] - diameter))
    by_number, by_letter = abs(NUMBER_SIZES[number] - diameter), abs(LETTER_SIZES[letter] - diameter)
    if min(by_number, by_letter) > ALIKE:
        return ""
    return (
        say("number {number}", number=number)
        if by_number < by_letter
        else say("letter {letter}", letter=letter)
    )


def size_words(diameter: float) -> str:
    """A diameter, mm, in both units and with the number or letter it has, as people say it."""
    name = trade_name(diameter)
    inch = diameter / INCH
    if not name:
        return say("{size:.4g} mm ({inch:.4f} in)", size=diameter, inch=inch)
    return say("{size:.4g} mm ({inch:.4f} in, {name})", size=diameter, inch=inch, name=name)


_BREAK = re.compile(r"[;\s]+(?!(?:mm|in|inch|\"|″)(?:[;\s]|$))(?<!no\. )(?<!number )(?<!letter )")


def drill_sizes(text: str) -> tuple[float, ...]:
    """Diameters, mm, smallest first, of a list such as "0.8  1.0  1/32 in  #60".

    Raises
    ------
    InputError
        If a part of it names no size.
    """
    parts = [part for part in _BREAK.split(re.sub(r"\s+", " ", text.strip().lower())) if part]
    return tuple(sorted({round(drill_size(part), 6) for part in parts}))
