"""The boards of a job: one design or several, each once or more, each in its place on the blank."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely

from drypoint.board.load import load_board_from_bytes
from drypoint.board.model import Board, Finding, Role, Side
from drypoint.board.panel import PlacedBoard, in_rows, moves_of
from drypoint.errors import InputError, PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.job.store import Source
from drypoint.progress import Progress
from drypoint.session.settings import CopyPlace, CopySettings
from drypoint.wording import say


@dataclass(frozen=True, slots=True, eq=False)
class Placed:
    """A design by name, where it lies among the boards, and its size there, mm."""

    design: str
    place: PlacedBoard
    width: float
    height: float

    @property
    def setting(self) -> CopyPlace:
        """The same as it is set."""
        one = self.place
        return CopyPlace(round(one.x, 6), round(one.y, 6), round(math.degrees(one.angle), 6), self.design)


def own_name(source: Source) -> str:
    """The name of a design file within its board."""
    return source.name.removeprefix(f"{source.board}/") if source.board else source.name


def sources_of(boards: Mapping[str, Mapping[str, bytes]], roles: Mapping[str, Role]) -> tuple[Source, ...]:
    """The files of boards as a job keeps them; ``roles`` by the name that the job gives a file."""
    found = []
    for board, files in boards.items():
        for name, content in files.items():
            full = f"{board}/{name}" if board else name
            role = roles.get(full)
            found.append(Source(full, content, "" if role is None else role.value, board))
    return tuple(found)


def named_sources(sources: Sequence[Source], name: str) -> tuple[Source, ...]:
    """The same files with a name for the board that had none."""
    return tuple(
        source if source.board else replace(source, name=f"{name}/{source.name}", board=name)
        for source in sources
    )


def read_designs(
    sources: Sequence[Source],
    side: Side,
    name: str | None,
    progress: Progress | None = None,
    *,
    both: bool = False,
) -> dict[str, Board]:
    """Every design by name; the name is empty where there is but one. ``both``: both sides are milled.

    Raises
    ------
    InputError
        If files cannot be understood; ``where`` begins with the board's name.
    """
    names = list(dict.fromkeys(source.board for source in sources))
    found: dict[str, Board] = {}
    for number, board in enumerate(names):
        told = None if progress is None else progress.part(number / len(names), (number + 1) / len(names))
        own = [source for source in sources if source.board == board]
        try:
            read = load_board_from_bytes(
                {own_name(source): source.content for source in own},
                side=side,
                both=both,
                roles={own_name(source): Role(source.role) for source in own if source.role},
                name=board or name,
                progress=told,
            )
        except InputError as error:
            if not board:
                raise
            where = say("{board}: {where}", board=board, where=error.where)
            raise InputError(error.what, where, error.hint) from error
        found[board] = _named(read, board) if board else read
    return found


def _named(design: Board, board: str) -> Board:
    """A design whose files and findings say of which board they are."""

    def told(finding: Finding) -> Finding:
        return replace(finding, where=f"{board}/{finding.where}" if finding.where else board)

    return replace(
        design,
        files=tuple(replace(file, name=f"{board}/{file.name}") for file in design.files),
        findings=tuple(told(finding) for finding in design.findings),
    )


def placed_designs(designs: Mapping[str, Board], copies: CopySettings) -> tuple[Placed, ...]:
    """Every board on the blank and its place, as the places are stated.

    Raises
    ------
    PlanError
        If their number makes no sense, or a place is for a design that is not there.
    """
    placed = [_placed(designs, one) for one in copies.places]
    have = {one.design for one in placed}
    across = max((one.place.x + one.width for one in placed), default=None)
    for name, design in designs.items():
        if name in have:
            continue
        columns, rows = (1, 1) if copies.places else (copies.columns, copies.rows)
        start = 0.0 if across is None else across + copies.gap
        block = [
            Placed(name, replace(one, x=one.x + start), design.width, design.height)
            for one in in_rows(design, columns, rows, copies.gap)
        ]
        placed += block
        across = max(one.place.x + one.width for one in block)
    return tuple(placed)


def _placed(designs: Mapping[str, Board], place: CopyPlace) -> Placed:
    name = place.board or next(iter(designs))
    if name not in designs:
        raise PlanError(
            say("There is no board “{name}” in the job.", name=name),
            "Boards on the blank",
            "Take its place away.",
        )
    angle = math.radians(place.angle_deg)
    corners = Rigid(angle).apply(shapely.get_coordinates(designs[name].outline))
    width, height = np.ptp(corners, axis=0).tolist()
    return Placed(name, PlacedBoard(designs[name], place.x, place.y, angle), width, height)


def seen_over(placed: Sequence[Placed]) -> tuple[Placed, ...]:
    """The same boards seen from the other side: left is right, and turns go the other way."""
    left = min(one.place.x for one in placed)
    right = max(one.place.x + one.width for one in placed)
    return tuple(
        replace(
            one, place=replace(one.place, x=left + right - one.place.x - one.width, angle=-one.place.angle)
        )
        for one in placed
    )


def moves_by_design(placed: Sequence[Placed]) -> dict[str, tuple[Rigid, ...]]:
    """For each design the ways of its boards to the frame of them all."""
    found: dict[str, tuple[Rigid, ...]] = {}
    for one, move in zip(placed, moves_of([one.place for one in placed]), strict=True):
        found[one.design] = (*found.get(one.design, ()), move)
    return found
