"""Several copies of a job's board on one blank."""

from __future__ import annotations

import math

from drypoint.board.model import Board
from drypoint.board.panel import PlacedBoard, in_rows, panel_of
from drypoint.session.settings import CopySettings


def placed_copies(design: Board, copies: CopySettings) -> tuple[PlacedBoard, ...]:
    """Every copy and its place.

    Raises
    ------
    PlanError
        If their number makes no sense.
    """
    if copies.places:
        return tuple(
            PlacedBoard(design, place.x, place.y, math.radians(place.angle_deg)) for place in copies.places
        )
    return in_rows(design, copies.columns, copies.rows, copies.gap)


def with_copies(design: Board, copies: CopySettings, mill: float) -> Board:
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
    return panel_of(placed_copies(design, copies), gap=mill)
