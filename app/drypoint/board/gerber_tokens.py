"""Gerber text to commands: where each begins and ends, nothing about what it means.

A data command ends with a star. An extended command stands between percent signs; several may
share one pair. A percent sign inside a comment is text. Line breaks mean nothing, even inside a
word (The Gerber Layer Format Specification, revision 2021.02, chapter 3).
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator
from typing import NamedTuple

from drypoint.errors import InputError

_BLANK = re.compile(r"[\s\x1a]*")
_EXTENDED_END = re.compile(r"\*\s*%")
_COMMENT = re.compile(r"G0*4(?![0-9])")
_RUN = re.compile(r"(?:X[-+]?\d{1,12}Y[-+]?\d{1,12}D0?1\*\s*){4,}|(?:X[-+]?\d{1,12}Y[-+]?\d{1,12}\*\s*){4,}")
"""Draws to full coordinates, all with their operation or all without: the contours of poured copper."""
_BEFORE_RUN = 4
"""Coordinates behind each other before a run of them is looked for: where most are alone it costs."""
_CUT_OFF_HINT = "The file may be cut off: export or copy it again."


class Command(NamedTuple):
    """One command: ``kind`` is "data", "comment" or "extended"; ``offset`` its place in the text.

    A "run" is many data commands at once, each with X and Y and nothing else but perhaps D01; their
    stars are still in it.
    """

    kind: str
    text: str
    offset: int


class Lines:
    """Line numbers of places in a text."""

    def __init__(self, text: str) -> None:
        mark = "\n" if "\n" in text else "\r"
        self._breaks = [found.start() for found in re.finditer(mark, text)]

    def number(self, offset: int) -> int:
        """Line number (from 1) of the character at ``offset``."""
        return bisect_right(self._breaks, offset - 1) + 1


def commands(text: str) -> Iterator[Command]:
    """The commands of a Gerber text in order, stars and percent signs taken off.

    Raises
    ------
    InputError
        If the last command is not finished; ``where`` holds the offset for the caller to convert.
    """
    position = 0
    size = len(text)
    streak = 0
    blank = _BLANK.match
    find = text.find
    while True:
        found = blank(text, position)
        position = found.end() if found else position
        if position >= size:
            return
        if streak >= _BEFORE_RUN:
            streak = 0
            run = _RUN.match(text, position)
            if run is not None:
                yield Command("run", run[0], position)
                position = run.end()
                continue
        if text[position] == "%":
            streak = 0
            command, position = _extended(text, position)
            if command is not None:
                yield command
            continue
        end = find("*", position)
        if end < 0:
            raise UnfinishedError(position)
        block = text[position:end]
        streak = streak + 1 if block.startswith("X") else 0
        if block.startswith("G") and _COMMENT.match(block):
            command, position = _comment(text, position, end)
            yield command
            continue
        yield Command("data", block, position)
        position = end + 1


class UnfinishedError(InputError):
    """A command that has no end; ``offset`` is where it begins."""

    def __init__(self, offset: int) -> None:
        super().__init__("The last command has no end.", "", _CUT_OFF_HINT)
        self.offset = offset


def _extended(text: str, position: int) -> tuple[Command | None, int]:
    start = position + 1
    found = _BLANK.match(text, start)
    start = found.end() if found else start
    if start < len(text) and text[start] == "%":  # nothing between two percent signs
        return None, start + 1
    end = _EXTENDED_END.search(text, start)
    if end is None:
        closing = text.find("%", start)
        if closing < 0 or text[closing + 1 :].strip():
            raise UnfinishedError(position)
        return Command("extended", text[start:closing], start), closing + 1
    return Command("extended", text[start : end.start()], start), end.end()


def _comment(text: str, position: int, end: int) -> tuple[Command, int]:
    """A comment up to its star; one left open is ended before a line that starts a command."""
    body = text[position:end]
    stop = body.find("\n%")
    if stop >= 0:
        return Command("comment", _COMMENT.sub("", body[:stop], count=1), position), position + stop + 1
    return Command("comment", _COMMENT.sub("", body, count=1), position), end + 1
