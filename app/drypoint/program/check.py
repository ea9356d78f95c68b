"""A last look at the text that will be sent, by its own small reading of it.

It knows nothing of how the lines were made: words in, a modal state, and rules of safe travel.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from drypoint.errors import PlanError
from drypoint.gcode.writer import LINE_LIMIT
from drypoint.progress import Progress
from drypoint.wording import say

_WORD = re.compile(r"([A-Z])([-+]?(?:\d+\.?\d*|\.\d+))")
_LINE = re.compile(rf"(?:{_WORD.pattern})+")
SLACK = 1e-6
"""Heights are compared with this slack, mm."""
OFTEN = 5000
"""Lines between two chances to cancel."""
ALLOWED_G = {0, 1, 2, 3, 4, 17, 21, 54, 90, 94}
ALLOWED_M = {2, 3, 4, 5, 30}


class _State:
    """What the controller would know at a line."""

    def __init__(self) -> None:
        self.mode: int | None = None
        self.feed: float | None = None
        self.after_rapid = True
        self.height: float | None = None


def check_lines(
    lines: Sequence[str], clearance: float, limit: int = LINE_LIMIT, *, progress: Progress | None = None
) -> None:
    """Refuse a program that could hurt the work.

    - no line longer than ``limit`` with its terminator, none with anything but plain words;
    - only absolute millimetres in the first work frame, and no command outside a short list;
    - no rapid starts or ends below ``clearance`` (mm, absolute), or at an unknown height unless
      it goes straight up or down to the plane or above;
    - the first cutting move after a rapid, and the first of all, carries its feed.

    Raises
    ------
    PlanError
        Naming the line and the rule.
    """
    state = _State()
    for index, line in enumerate(lines):
        if progress is not None and index % OFTEN == 0:
            progress.step(index / len(lines), "Checking the lines")
        where = say("line {index}: {line}", index=index + 1, line=line[:60])
        if len(line) + 1 > limit:
            raise PlanError(
                say(
                    "The line is {count} characters long; the controller takes {limit}.",
                    count=len(line) + 1,
                    limit=limit,
                ),
                where,
            )
        if not _LINE.fullmatch(line):
            raise PlanError("The line holds something other than words of a letter and a number.", where)
        _check_line([(m[0], float(m[1])) for m in _WORD.findall(line)], state, clearance, where)


def _check_line(words: list[tuple[str, float]], state: _State, clearance: float, where: str) -> None:
    letters = dict(words)
    codes = {value for letter, value in words if letter == "G"}
    unknown = codes - ALLOWED_G or {value for letter, value in words if letter == "M"} - ALLOWED_M
    if unknown:
        raise PlanError(say("The command {min:g} has no place in a program.", min=min(unknown)), where)
    for mode in (0, 1, 2, 3):
        if mode in codes:
            state.mode = mode
    if "F" in letters:
        state.feed = letters["F"]
    if 4 in codes or not letters.keys() & set("XYZ"):
        return
    if state.mode is None:
        raise PlanError("The line moves before any kind of move is set.", where)
    end = letters.get("Z", state.height)
    if state.mode == 0:
        _check_rapid(letters, state, end, clearance, where)
    else:
        _check_feed(letters, state, where)
    state.after_rapid = state.mode == 0
    state.height = end


def _check_rapid(
    letters: dict[str, float], state: _State, end: float | None, clearance: float, where: str
) -> None:
    if end is None or end < clearance - SLACK:
        raise PlanError(
            say("A rapid move goes below the clearance height {clearance:g} mm.", clearance=clearance), where
        )
    if state.height is None:
        if letters.keys() & {"X", "Y"}:
            raise PlanError("A rapid move goes sideways before the height is known.", where)
    elif state.height < clearance - SLACK:
        raise PlanError(
            say("A rapid move starts below the clearance height {clearance:g} mm.", clearance=clearance),
            where,
        )


def _check_feed(letters: dict[str, float], state: _State, where: str) -> None:
    if state.after_rapid and "F" not in letters:
        raise PlanError("The first cutting move after a rapid has no feed.", where)
    if state.feed is None or state.feed <= 0:
        raise PlanError("A cutting move has no feed.", where)
    if state.mode in {2, 3} and not letters.keys() & {"I", "J"}:
        raise PlanError("An arc has no centre.", where)
