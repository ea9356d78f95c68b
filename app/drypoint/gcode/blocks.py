"""Lines of RS-274 split into words, with the checks that hold for every line.

Source: NISTIR 6556 (RS274/NGC), 3.3 and tables 4 and 5.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from drypoint.errors import InputError
from drypoint.gcode.expressions import Values
from drypoint.wording import say

LONGEST = 256
"""Characters of a line, comments not counted (NISTIR 6556, 3.3)."""
MOST_M_WORDS = 4
_LETTERS = "ABCDFHIJKLPQRSTXYZ"

_GROUPS: tuple[tuple[str, tuple[float, ...]], ...] = (
    ("motion", (0, 1, 2, 3, 38.2, 80, 81, 82, 83, 84, 85, 86, 87, 88, 89)),
    ("plane", (17, 18, 19)),
    ("distance", (90, 91)),
    ("arc distance", (90.1, 91.1)),
    ("feed mode", (93, 94)),
    ("units", (20, 21)),
    ("cutter radius", (40, 41, 42)),
    ("tool length", (43, 43.1, 49)),
    ("cycle return", (98, 99)),
    ("coordinates", (54, 55, 56, 57, 58, 59, 59.1, 59.2, 59.3)),
    ("path control", (61, 61.1, 64)),
    ("non-modal", (4, 10, 28, 28.1, 30, 30.1, 53, 92, 92.1, 92.2, 92.3)),
)
GROUP_OF = {code: name for name, codes in _GROUPS for code in codes}
M_GROUPS: tuple[tuple[int, ...], ...] = ((0, 1, 2, 30, 60), (6,), (3, 4, 5), (7, 8, 9), (48, 49))
M_CODES = frozenset(code for group in M_GROUPS for code in group)


@dataclass(slots=True)
class Block:
    """The words of one line."""

    words: dict[str, float] = field(default_factory=dict)
    g: dict[str, float] = field(default_factory=dict)
    m: list[int] = field(default_factory=list)
    settings: dict[int, float] = field(default_factory=dict)

    @property
    def empty(self) -> bool:
        """Whether the line says nothing."""
        return not (self.words or self.g or self.m or self.settings)


def bare(line: str) -> str:
    """A line without comments and blanks, in capitals.

    Raises
    ------
    InputError
        A comment that is not closed or that nests, a setting, a real-time character.
    """
    stripped = line.strip().lstrip("\ufeff")
    if stripped.startswith("$"):
        raise InputError(
            "This is a settings or system line of a controller.",
            hint="Remove it; settings are never sent from a file.",
        )
    out, inside = [], False
    for character in stripped:
        if inside:
            if character == "(":
                raise InputError("Comments cannot be nested.")
            inside = character != ")"
        elif character == "(":
            inside = True
        elif character == ";":
            break
        elif character == ")":
            raise InputError("A comment ends that did not begin.")
        elif character not in " \t\r":
            out.append(character)
    if inside:
        raise InputError("A comment is not closed.")
    text = "".join(out).upper()
    if len(text) > LONGEST:
        raise InputError(say("The line is longer than {longest} characters.", longest=LONGEST))
    if any(character in "!~?\x18" for character in text):
        raise InputError("A real-time command does not belong in a file.")
    return text


def block_of(text: str, parameters: dict[int, float]) -> Block:
    """The words of a bare line.

    Raises
    ------
    InputError
        A word that cannot be read, is there twice, or contradicts another.
    """
    values = Values(text.removeprefix("/"), parameters)
    block = Block()
    if values.peek() == "N":
        values.at += 1
        number = values.value()
        if number < 0 or number != int(number):
            raise InputError("A line number must be a whole number.")
    while not values.done:
        letter = values.take()
        if letter == "#":
            index = values.index()
            if values.done or values.take() != "=":
                raise InputError("A parameter is named but not set.")
            block.settings[index] = values.value()
        elif letter == "G":
            _g_word(block, round(values.value(), 4))
        elif letter == "M":
            _m_word(block, values.value())
        elif letter in _LETTERS:
            if letter in block.words:
                raise InputError(say("{letter} is there twice.", letter=letter))
            block.words[letter] = values.value()
        else:
            raise InputError(say("“{letter}” is no word of RS-274.", letter=letter))
    return block


def _g_word(block: Block, code: float) -> None:
    group = GROUP_OF.get(code)
    if group is None:
        raise InputError(say("G{code:g} is not known.", code=code))
    if group in block.g:
        raise InputError(say("G{g:g} and G{code:g} contradict each other.", g=block.g[group], code=code))
    block.g[group] = code


def _m_word(block: Block, value: float) -> None:
    code = round(value)
    if abs(value - code) > 1e-4 or code not in M_CODES:
        raise InputError(
            say("M{value:g} is not known.", value=value), hint="Only M0–M9, M30, M48, M49 and M60 are read."
        )
    group = next(group for group in M_GROUPS if code in group)
    if any(other in group for other in block.m):
        raise InputError(say("M{code} contradicts another M word of the line.", code=code))
    block.m.append(code)
    if len(block.m) > MOST_M_WORDS:
        raise InputError(say("More than {most_m_words} M words.", most_m_words=MOST_M_WORDS))
