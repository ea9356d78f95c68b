"""Numbers of drill files: units, digits before and after the point, and which zeros are left out."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from drypoint.errors import InputError
from drypoint.wording import say

MM_PER_INCH = 25.4
MAX_DIGITS = 12


@dataclass(frozen=True, slots=True)
class NumberFormat:
    """How a coordinate without a decimal point is read.

    ``keep`` is "leading" where leading zeros are kept and trailing ones left out (LZ), "trailing"
    the other way round (TZ).
    """

    whole: int
    decimals: int
    keep: str

    def value(self, text: str) -> float:
        """The number, in file units.

        Raises
        ------
        InputError
            If it is no number.
        """
        sign = -1.0 if text.startswith("-") else 1.0
        digits = text.lstrip("+-")
        if not _NUMBER.fullmatch(digits) or len(digits) > 2 * MAX_DIGITS:
            raise InputError(say("“{text}” is no number.", text=text[:20]))
        if "." in digits:
            return sign * float(digits)
        if self.keep == "leading":
            digits = digits.ljust(self.whole + self.decimals, "0")
            whole = digits[: self.whole] or "0"
            return sign * float(f"{whole}.{digits[self.whole :] or '0'}")
        return sign * float(int(digits)) / float(10**self.decimals)

    def __str__(self) -> str:
        zeros = "trailing" if self.keep == "leading" else "leading"
        return f"{self.whole}.{self.decimals}, {zeros} zeros left out"


_NUMBER = re.compile(r"[0-9]+\.?[0-9]*|\.[0-9]+")


def usual(metric: bool, keep: str | None) -> NumberFormat:
    """The customary format: 3.3 in millimetres, 2.4 in inches (common practice, no source)."""
    return NumberFormat(3, 3, keep or "trailing") if metric else NumberFormat(2, 4, keep or "trailing")


def candidates(metric: bool, keep: str | None, digits: Iterable[str]) -> Iterator[NumberFormat]:
    """Formats worth trying, the customary one first, for coordinates with these digits."""
    longest = max((len(text.lstrip("+-")) for text in digits), default=0)
    first = usual(metric, keep)
    shapes = [(first.whole, first.decimals)]
    shapes += [(3, 3), (3, 2), (4, 2), (4, 3), (3, 4), (4, 4)] if metric else [(2, 4), (2, 5), (2, 3), (3, 5)]
    shapes += [(longest - 5, 5), (longest - 4, 4), (longest - 3, 3)]
    seen = set()
    for whole, decimals in shapes:
        for zeros in (keep,) if keep else ("trailing", "leading"):
            shape = NumberFormat(whole, decimals, zeros)
            if whole > 0 and longest <= whole + decimals and shape not in seen:
                seen.add(shape)
                yield shape
