"""The island check of any paths at any depth: our grooves, or those of a ready-made program."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from drypoint.bits.model import Bit, VBit
from drypoint.board.model import Board
from drypoint.cuts.islands import check
from drypoint.cuts.model import IslandCheck
from drypoint.errors import InputError, PlanError
from drypoint.gcode.levels import level_paths
from drypoint.gcode.reader_paths import ToolUse
from drypoint.geometry.points import Points
from drypoint.progress import Progress
from drypoint.session.derive import Derived
from drypoint.session.imported import ReadyProgram
from drypoint.session.snapshot import Snapshot
from drypoint.wording import say

STEPS = 6
"""Halvings of the depth from which as little is joined as at the deepest."""
OWN = ""
"""Name of our own grooves among those of programs."""


@dataclass(frozen=True, slots=True, eq=False)
class DepthCheck:
    """What becomes of the nets.

    Attributes
    ----------
    paths : str
        Name of the program; empty for our own grooves.
    depth : float or None
        Of every path below the copper's top, mm; None: as deep as the program says.
    parted : float or None
        Least depth from which all that these paths can part is parted, mm; None if it was not asked.
    """

    paths: str
    depth: float | None
    check: IslandCheck
    parted: float | None = None


@dataclass(frozen=True, slots=True, eq=False)
class _Paths:
    """Lines in the board frame, how deep each goes at least and at most (mm), and the bit of each.

    Those that are ``fixed`` go as deep as they do whatever depth is asked for.
    """

    lines: tuple[Points, ...]
    least: NDArray[np.float64]
    most: NDArray[np.float64]
    bits: tuple[Bit, ...]
    fixed: NDArray[np.bool_]


def check_at(
    derived: Derived,
    snap: Snapshot,
    *,
    depth: float | None = None,
    program: str = OWN,
    find: bool = False,
    progress: Progress | None = None,
) -> DepthCheck:
    """The island check of the job's grooves, or of a program's engraving, at one depth.

    Separation is judged where a cut is shallowest, with its width at the copper's underside; what is
    bitten off where it is deepest, with its width at the top.

    Parameters
    ----------
    depth : below the copper's top, mm; without one our grooves go as deep as they are planned for, and
        a program as deep as it says
    find : also look for the least depth that parts what these paths can part

    Raises
    ------
    InputError
        If the depth makes no sense or there is no such program.
    PlanError
        If there are no nets to part, or the program engraves nothing.
    """
    if depth is not None and not 0.0 <= depth <= snap.settings.blank.thickness:
        raise InputError("The depth must lie within the laminate.", say("{depth:g} mm", depth=depth))
    board = derived.board(snap)
    if not board.nets:
        raise PlanError("There is no copper data, so nothing says what is to be parted.", "island check")
    told = progress or Progress()
    if program == OWN:
        paths = _own_paths(derived, snap, told.part(0.0, 0.5))
    else:
        paths = _program_paths(derived, snap, program)
    copper = snap.settings.blank.copper
    found = _checked(board, paths, copper, depth, told.part(0.5, 0.7 if find else 1.0))
    parted = _parted(board, paths, copper, depth, told.part(0.7, 1.0)) if find else None
    return DepthCheck(
        program, snap.settings.cuts.depth if program == OWN and depth is None else depth, found, parted
    )


def checkable(ready: Sequence[ReadyProgram]) -> tuple[str, ...]:
    """Names of the programs whose engraving can be checked."""
    return tuple(
        one.name
        for one in ready
        if one.trouble is None and any(tool.use is ToolUse.ENGRAVING for tool in one.tools)
    )


def _own_paths(derived: Derived, snap: Snapshot, progress: Progress) -> _Paths:
    """Our grooves; those of the wide bit keep its depth."""
    grooves, settings = derived.cuts(snap, progress).grooves, snap.settings
    wide = np.arange(len(grooves.lines)) < grooves.wide
    deep = np.where(wide, settings.clearing.depth, settings.cuts.depth)
    fine, other = settings.bits.vbit, settings.clearing.bit or settings.bits.vbit
    return _Paths(grooves.lines, deep, deep, tuple(other if is_wide else fine for is_wide in wide), wide)


def _program_paths(derived: Derived, snap: Snapshot, name: str) -> _Paths:
    ready = derived.ready(snap)
    chosen = next((one for one in ready if one.name == name), None)
    if chosen is None:
        known = ", ".join(one.name for one in ready) or "–"
        raise InputError("There is no such program in the job.", name, say("Known: {known}.", known=known))
    if chosen.trouble is not None:
        raise chosen.trouble
    if name not in checkable(ready):
        raise PlanError("This program engraves nothing.", name, "Choose another.")
    bits = {
        tool.number: tool.bit or snap.settings.bits.vbit
        for tool in chosen.tools
        if tool.use is ToolUse.ENGRAVING
    }
    pieces = [one for one in level_paths(chosen.program.moves) if one.tool in bits]
    places = [chosen.place.then(copy) for copy in derived.copy_moves(snap).get(chosen.board, ())]
    every = [(place.apply(one.path), one) for place in places for one in pieces]
    return _Paths(
        tuple(line for line, _ in every),
        np.array([one.least for _, one in every]),
        np.array([one.most for _, one in every]),
        tuple(bits[one.tool] for _, one in every),
        np.zeros(len(every), dtype=bool),
    )


def _checked(
    board: Board, paths: _Paths, copper: float, depth: float | None, progress: Progress
) -> IslandCheck:
    least, most = paths.least, paths.most
    if depth is not None:
        least, most = np.where(paths.fixed, least, depth), np.where(paths.fixed, most, depth)
    under = [_width(bit, deep - copper) for bit, deep in zip(paths.bits, least, strict=True)]
    top = [_width(bit, deep) for bit, deep in zip(paths.bits, most, strict=True)]
    return check(board.nets, paths.lines, np.array(under), top_width=np.array(top), progress=progress)


def _width(bit: Bit, depth: float) -> float:
    """Width cut ``depth`` mm above the tip; nothing where the tip does not come."""
    if depth <= 0.0:
        return 0.0
    return bit.width(depth) if isinstance(bit, VBit) else bit.diameter


def _parted(
    board: Board, paths: _Paths, copper: float, depth: float | None, progress: Progress
) -> float | None:
    """The least depth that joins no more than the deepest looked at does, to a few µm; by halving."""
    deepest = 2.0 * copper + float(paths.most.max(initial=0.0)) if depth is None else max(depth, 2.0 * copper)

    def joined(deep: float, number: int) -> int:
        part = progress.part(number / (STEPS + 1), (number + 1) / (STEPS + 1))
        return sum(len(one.nets) for one in _checked(board, paths, copper, deep, part).shorts)

    fewest = joined(deepest, 0)
    low, high = copper, deepest
    for number in range(1, STEPS + 1):
        middle = (low + high) / 2.0
        if joined(middle, number) <= fewest:
            high = middle
        else:
            low = middle
    return high
