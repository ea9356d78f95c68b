"""The format statement: how digits become millimetres."""

from __future__ import annotations

import re
from dataclasses import dataclass

from drypoint.errors import InputError
from drypoint.wording import say

COORDINATE_LIMIT = 1.0e6
"""mm. No board is a kilometre long; beyond it float arithmetic would lose the micrometre."""

_DIGIT_LIMIT = 18
_COMMON_LENGTH = 12
_POWERS = tuple(10.0**power for power in range(10))
_SIGNS = ("", "+", "-")
_STATEMENT = re.compile(
    r"FS(?P<zeros>[LTD]?)(?P<mode>[AI]?)(?:[NG]\d+)*"
    r"X(?P<xi>\d)(?P<xd>\d)(?:Y(?P<yi>\d)(?P<yd>\d))?(?:[ZDM]\d+)*\Z"
)


@dataclass(frozen=True, slots=True)
class CoordinateFormat:
    """Digits before and after the decimal point of each axis, and which zeros may be left out.

    ``trailing`` set: zeros at the end may be missing (deprecated); else those at the front.
    """

    x_digits: tuple[int, int]
    y_digits: tuple[int, int]
    trailing: bool = False
    incremental: bool = False

    @classmethod
    def parse(cls, statement: str) -> CoordinateFormat:
        """From ``FSLAX46Y46`` and its older relatives.

        Raises
        ------
        InputError
            If it cannot be understood.
        """
        match = _STATEMENT.match(statement)
        if match is None:
            raise InputError(
                say("The format statement “{statement}” cannot be understood.", statement=statement[:40]),
                hint="It should look like FSLAX46Y46.",
            )
        x_digits = (int(match["xi"]), int(match["xd"]))
        y_digits = x_digits if match["yi"] is None else (int(match["yi"]), int(match["yd"]))
        return cls(x_digits, y_digits, match["zeros"] == "T", match["mode"] == "I")

    def value(self, word: str, digits: tuple[int, int]) -> float:
        """The number of file units that a coordinate word stands for.

        Raises
        ------
        InputError
            If the word is no number or has too many digits.
        """
        if not self.trailing and len(word) <= _COMMON_LENGTH and "." not in word:
            return int(word) / _POWERS[digits[1]] if word not in _SIGNS else _number(word)
        if "." in word:
            return _number(word)
        size = len(word) - (word[:1] in "+-")
        if size > _DIGIT_LIMIT:
            raise InputError(
                say("A coordinate has {size} digits.", size=size), hint="The file may be damaged."
            )
        if self.trailing:
            word = word.ljust(len(word) - size + sum(digits), "0")
            size = len(word)
        return int(_number(word)) / _POWERS[digits[1]]


def _number(word: str) -> float:
    try:
        return float(word)
    except ValueError:
        raise InputError(
            say("“{word}” is not a coordinate.", word=word[:24]), hint="The file may be damaged."
        ) from None
