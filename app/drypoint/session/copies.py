"""Several copies of a job's board on one blank."""

from __future__ import annotations

import math
from dataclasses import replace

from shapely import Geometry, box

from drypoint.bits.model import EndMill
from drypoint.board.model import Board
from drypoint.board.panel import PlacedBoard, in_rows, panel_of
from drypoint.cuts.model import Cut
from drypoint.cuts.outline import plan_outline
from drypoint.session.settings import CopySettings


def with_copies(board: Board, copies: CopySettings, mill: float) -> Board:
    """The board as often as it is to be made, each copy in its own place.

    Parameters
    ----------
    mill : float
        Diameter of the end mill that runs between the copies, mm.

    Raises
    ------
    PlanError
        If copies lie too close for it, or their number makes no sense.
    """
    if copies.places:
        placed = tuple(
            PlacedBoard(board, place.x, place.y, math.radians(place.angle_deg)) for place in copies.places
        )
    else:
        placed = in_rows(board, copies.columns, copies.rows, copies.gap)
    return panel_of(placed, gap=mill)


def plan_outlines(
    board: Board,
    mill: EndMill,
    *,
    thickness: float,
    through: float,
    tabs: int,
    tab_width: float,
    tab_height: float,
    keepout: Geometry | None = None,
) -> tuple[Cut, ...]:
    """Every board on the blank cut out, one after the other, each with tabs of its own.

    Parameters and errors as those of `plan_outline`.
    """
    cuts: list[Cut] = []
    for number, edge in enumerate(board.outlines, 1):
        found = plan_outline(
            replace(board, outline=edge),
            mill,
            thickness=thickness,
            through=through,
            tabs=tabs,
            tab_width=tab_width,
            tab_height=tab_height,
            keepout=keepout,
        )
        several = len(board.outlines) > 1
        cuts += [replace(cut, label=f"{cut.label} of board {number}") if several else cut for cut in found]
    return tuple(cuts)


def as_one(board: Board) -> Board:
    """The board, or all boards of a blank with the waste between them as one.

    What has to stay until the end, as reference marks, lies outside: waste between boards may come
    loose when they are cut out.
    """
    if len(board.outlines) == 1:
        return board
    return replace(board, outline=box(*board.outline.bounds))
