"""Moves as RS-274 lines: modal, short, and exactly what the moves say.

Numbers are written with a fixed number of decimals and no trailing zeros. A word that would
repeat the modal state is left out, with two exceptions that make a line safe to read alone: the
first feed move after anything else carries its feed, and arcs carry both end coordinates.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

import numpy as np
from numpy.typing import ArrayLike, NDArray

from drypoint.errors import PlanError
from drypoint.progress import Progress
from drypoint.wording import say

LINE_LIMIT = 80
"""Characters per line with its terminator that a common hobby controller takes."""

OFTEN = 5000
"""Moves between two chances to cancel."""

RAPID, FEED, ARC_CW, ARC_CCW, DWELL = range(5)
"""Kinds of move, as numbers; the codes G0 to G4."""


def number(value: float, decimals: int = 3) -> str:
    """A number as short as RS-274 allows: "1.5", "-0.25", "0"."""
    text = f"{value:.{decimals}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text in {"-0", ""} else text


class _Writer:
    """The modal state while lines are made."""

    def __init__(self, start: Sequence[float | None], decimals: int) -> None:
        self.decimals = decimals
        self.mode: int | None = None
        self.feed: float | None = None
        self.words: list[str | None] = [None if value is None else number(value, decimals) for value in start]

    def axes(self, end: Sequence[float], forced: int = 0) -> str:
        """Axis words that changed; the first ``forced`` ones in any case."""
        text = ""
        for index, value in enumerate(end):
            if math.isnan(value):
                continue
            word = number(value, self.decimals)
            if word != self.words[index] or index < forced:
                text += "XYZ"[index] + word
                self.words[index] = word
        return text

    def move(self, kind: int, end: Sequence[float], feed: float, centre: Sequence[float]) -> str:
        """One rapid, feed or arc line; empty if it would move nothing."""
        arc = kind in {ARC_CW, ARC_CCW}
        axes = self.axes(end, 2 if arc else 0)
        if not axes:
            return ""
        text = axes if kind == self.mode else f"G{kind}{axes}"
        if arc:
            text += f"I{number(centre[0], self.decimals)}J{number(centre[1], self.decimals)}"
        if kind != RAPID and (feed != self.feed or self.mode in {RAPID, None}):
            text += f"F{number(feed, 1)}"
            self.feed = feed
        self.mode = kind
        return text


def write_lines(
    kind: ArrayLike,
    end: ArrayLike,
    feed: ArrayLike,
    centre: ArrayLike | None = None,
    dwell: ArrayLike | None = None,
    *,
    start: Sequence[float | None] = (None, None, None),
    limit: int = LINE_LIMIT,
    decimals: int = 3,
    progress: Progress | None = None,
) -> tuple[tuple[str, ...], NDArray[np.int32]]:
    """Lines for (N,) moves and, for each line, the move it makes.

    Parameters
    ----------
    kind : (N,) 0 rapid, 1 feed, 2 clockwise arc, 3 anticlockwise arc, 4 dwell
    end : (N, 3) absolute end points, mm; an end that is not a number is not written
    feed : (N,) mm/min
    centre : (N, 2) start to centre of arcs, mm
    dwell : (N,) s
    start : position before the first move; None where it is not known
    limit : characters per line with one terminator
    decimals : of coordinates

    Raises
    ------
    PlanError
        A line would be longer than the limit, or a feed move has no feed.
    """
    kinds = np.asarray(kind, dtype=np.int64).tolist()
    ends = np.asarray(end, dtype=np.float64).reshape(-1, 3).tolist()
    feeds = np.asarray(feed, dtype=np.float64).tolist()
    count = len(kinds)
    centres = [(0.0, 0.0)] * count if centre is None else np.asarray(centre, dtype=np.float64).tolist()
    dwells = [0.0] * count if dwell is None else np.asarray(dwell, dtype=np.float64).tolist()
    writer = _Writer(start, decimals)
    lines: list[str] = []
    moves: list[int] = []
    for index, (k, e, f, c, p) in enumerate(zip(kinds, ends, feeds, centres, dwells, strict=True)):
        if progress is not None and index % OFTEN == 0:
            progress.step(index / count, "Writing the lines")
        if k == DWELL:
            text = f"G4P{number(p, decimals)}"
        else:
            if k != RAPID and not f > 0:
                raise PlanError(
                    "A cutting move has no feed.", say("move {index}", index=index), "Set the bit's feed."
                )
            text = writer.move(k, e, f, c)
        if text:
            lines.append(text)
            moves.append(index)
    check_length(lines, limit)
    return tuple(lines), np.array(moves, dtype=np.int32)


def check_length(lines: Iterable[str], limit: int = LINE_LIMIT) -> None:
    """Refuse lines that are longer than a controller takes.

    Raises
    ------
    PlanError
        Naming the first such line.
    """
    for index, line in enumerate(lines):
        if len(line) + 1 > limit:
            raise PlanError(
                say(
                    "A line is {count} characters long; the controller takes {limit}.",
                    count=len(line) + 1,
                    limit=limit,
                ),
                say("line {index}: {line}…", index=index + 1, line=line[:40]),
                "Use fewer decimals.",
            )
