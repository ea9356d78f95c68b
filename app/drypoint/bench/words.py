"""A line as the controller reads it: cleaned of comments and blanks, split into words, refused by number."""

from __future__ import annotations

import re


class Refused(Exception):  # noqa: N818 - answered, not raised to people
    """The line is answered with ``error:code`` (codes of the open serial protocol, version 1.1)."""

    def __init__(self, code: int) -> None:
        super().__init__(code)
        self.code = code


LETTER_MISSING, BAD_NUMBER, BAD_STATEMENT, NEGATIVE, NO_HOMING = 1, 2, 3, 4, 5
STEP_PULSE, NOT_IDLE, LOCKED, SOFT_NEEDS_HOMING, TOO_LONG = 6, 8, 9, 10, 11
JOG_TRAVEL, BAD_JOG, LASER_PWM = 15, 16, 17
UNSUPPORTED, GROUP_CLASH, NO_FEED, NEEDS_INTEGER, TWO_AXIS_COMMANDS = 20, 21, 22, 23, 24
REPEATED, NO_AXIS_WORDS, BAD_LINE_NUMBER, VALUE_MISSING, BAD_COORDINATES = 25, 26, 27, 28, 29
G53_MOTION, AXIS_WORDS_G80, NO_PLANE_WORDS, BAD_TARGET, ARC_RADIUS = 30, 31, 32, 33, 34
NO_OFFSETS, UNUSED_WORDS, TOOL_LENGTH_AXIS, BAD_TOOL = 35, 36, 37, 38

_WORD = re.compile(r"([A-Z])([+-]?(?:\d+\.?\d*|\.\d+))")
_LETTER = re.compile(r"[A-Z]")
_COMMENT = re.compile(r"\([^)]*\)?|;.*")


def clean(line: str) -> str:
    """Without comments, blanks and the block-delete mark; upper case."""
    if "(" in line or ";" in line:
        line = _COMMENT.sub("", line)
    return line.replace(" ", "").replace("\t", "").replace("/", "").upper()


def split(line: str) -> list[tuple[str, float]]:
    """Letter and value of every word, in order.

    Raises
    ------
    Refused
        1 where a letter is missing, 2 where its number is none.
    """
    words: list[tuple[str, float]] = []
    at = 0
    while at < len(line):
        found = _WORD.match(line, at)
        if found is None:
            raise Refused(BAD_NUMBER if _LETTER.match(line, at) else LETTER_MISSING)
        words.append((found.group(1), float(found.group(2))))
        at = found.end()
    return words
