"""What every bit has cut, over all jobs: one small file of the user's, counted at the real machine only."""

from __future__ import annotations

import json
import logging
import math
import threading
from dataclasses import asdict, dataclass, fields
from pathlib import Path
from typing import Any

import numpy as np
from platformdirs import user_data_path

from drypoint.bits.wear import Use, Wear
from drypoint.program.model import MoveKind, Program
from drypoint.session.whole_file import write_whole

_log = logging.getLogger(__name__)

PRICK = 1e-6
"""A cut shorter than this seen from above, mm, is a hole."""


def usual_book() -> WearBook:
    """The book in the user's own folder of data."""
    return WearBook(user_data_path("drypoint", appauthor=False) / "bit-wear.json")


class WearBook:
    """A small file of plain values; a missing or damaged one counts as empty, and no run depends on it."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self._lock = threading.Lock()

    def read(self) -> Wear:
        """What is written there."""
        try:
            found = json.loads(self.path.read_text(encoding="utf-8"))
        except FileNotFoundError:
            return Wear()
        except (OSError, ValueError) as error:
            _log.warning("the wear of bits could not be read: %s", error)
            return Wear()
        listed = found.items() if isinstance(found, dict) else ()
        return Wear({str(name): use for name, values in listed if (use := _use(values)) is not None})

    def add(self, name: str, work: Worked) -> None:
        """A bit has worked."""
        if work.length or work.holes:
            with self._lock:
                self._write(self.read().after(name, length=work.length, holes=work.holes))

    def renew(self, name: str) -> None:
        """A new bit of that name was put in."""
        with self._lock:
            self._write(self.read().renewed(name))

    def limit(self, name: str, *, length: float | None = None, holes: int | None = None) -> None:
        """Look at a bit after so many mm or holes."""
        with self._lock:
            self._write(self.read().limited(name, length=length, holes=holes))

    def _write(self, wear: Wear) -> None:
        try:
            self.path.parent.mkdir(parents=True, exist_ok=True)
            plain = {name: asdict(use) for name, use in wear.uses.items()}
            write_whole(self.path, json.dumps(plain, indent=1, ensure_ascii=False))
        except OSError as error:
            _log.warning("the wear of bits could not be kept: %s", error)


def _use(values: Any) -> Use | None:
    """The use in plain values; None if they make no sense."""
    if not isinstance(values, dict):
        return None
    known = {one.name: values[one.name] for one in fields(Use) if one.name in values}
    if not all(isinstance(v, (int, float)) and math.isfinite(v) and v >= 0 for v in known.values()):
        return None
    return Use(**known)


@dataclass(frozen=True, slots=True)
class Worked:
    """What a bit did: mm cut, holes drilled."""

    length: float = 0.0
    holes: int = 0


def worked(program: Program, first: int = 0, stop: int | None = None) -> Worked:
    """What the lines of a program from ``first`` up to ``stop`` do to its bit.

    Places where a bit only goes down count as holes; else the way it cuts, seen from above.
    """
    moves = program.moves
    done = program.line_move[first : len(program.lines) if stop is None else stop]
    made = np.zeros(len(moves), dtype=bool)
    made[done[done >= 0]] = True
    cutting = (moves.tag >= 0) & (moves.kind != MoveKind.RAPID)
    if not cutting.any():
        return Worked()
    begun = cutting & ~np.concatenate(([False], cutting[:-1]))
    ways = np.where(cutting, _ways(program), 0.0)
    pricked = np.add.reduceat(ways, np.flatnonzero(begun)) < PRICK
    return Worked(float(ways[made].sum()), int((made[begun] & pricked).sum()))


def _ways(program: Program) -> np.ndarray[Any, np.dtype[np.float64]]:
    """(N,) length of each move seen from above, mm; arcs followed."""
    moves = program.moves
    ways = np.zeros(len(moves))
    ways[1:] = np.hypot(*np.diff(moves.end[:, :2], axis=0).T)
    arcs = (moves.kind == MoveKind.ARC_CW) | (moves.kind == MoveKind.ARC_CCW)
    for index in np.flatnonzero(arcs).tolist():
        start = moves.end[index - 1, :2] if index else moves.end[index, :2]
        a, b = -moves.centre[index], moves.end[index, :2] - start - moves.centre[index]
        sign = 1.0 if moves.kind[index] == MoveKind.ARC_CCW else -1.0
        turn = sign * math.atan2(a[0] * b[1] - a[1] * b[0], float(a @ b))
        ways[index] = math.hypot(*a) * (turn if turn > 1e-9 else turn + 2.0 * math.pi)
    return ways
