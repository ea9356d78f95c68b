"""Where board, blank and clamps lie: shapes for the planning layers, in the board frame."""

from __future__ import annotations

from dataclasses import dataclass

from shapely import Geometry, MultiPolygon, Polygon, box, union_all
from shapely.affinity import translate

from drypoint.board.model import Board
from drypoint.errors import PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.session.settings import BlankSettings
from drypoint.wording import say

INSET = 3.0
"""Work zero is the lower left corner of the blank; the bit is brought this far in from both of its
edges (mm), so that it stands over copper, and that spot is where z is set to zero."""


@dataclass(frozen=True, slots=True, eq=False)
class Layout:
    """Shapes on the bed, board frame, mm.

    Attributes
    ----------
    place : Rigid
        Board frame to work coordinates while the blank has not been moved.
    clamps : tuple of Polygon
        As they lie; ``keepout`` is their union grown by the margin.
    workable : geometry
        Blank minus the keep-out.
    zero_spot : (x, y)
        Where z is set to zero.
    """

    place: Rigid
    width: float
    height: float
    blank: Polygon
    clamps: tuple[Polygon, ...]
    keepout: Geometry
    workable: Geometry
    zero_spot: tuple[float, float]
    warnings: tuple[str, ...]


def lay_out(board: Board, blank: BlankSettings) -> Layout:
    """Put the board on the blank.

    Raises
    ------
    PlanError
        If the blank is smaller than the board.
    """
    width = blank.width or board.width + 2 * blank.margin
    height = blank.height or board.height + 2 * blank.margin
    if width < board.width or height < board.height:
        raise PlanError(
            say(
                "The blank ({width:.1f} × {height:.1f} mm) is smaller than the board "
                "({width2:.1f} × {height2:.1f} mm).",
                width=width,
                height=height,
                width2=board.width,
                height2=board.height,
            ),
            "Blank",
            "Take a larger blank, or enter its real size.",
        )
    x = (width - board.width) / 2 if blank.centred else blank.board_x
    y = (height - board.height) / 2 if blank.centred else blank.board_y
    if x < 0 or y < 0 or x + board.width > width + 1e-9 or y + board.height > height + 1e-9:
        raise PlanError(
            "The board reaches over the edge of the blank.",
            say("Blank: lower left of the board at {x:.1f}, {y:.1f} mm", x=x, y=y),
            "Move the board, or centre it on the blank.",
        )
    sheet = box(-x, -y, width - x, height - y)
    clamps = tuple(translate(box(c.x, c.y, c.x + c.width, c.y + c.height), -x, -y) for c in blank.clamps)
    keepout = union_all([clamp.buffer(blank.clamp_margin) for clamp in clamps]) if clamps else MultiPolygon()
    return Layout(
        place=Rigid(0.0, (x, y)),
        width=width,
        height=height,
        blank=sheet,
        clamps=clamps,
        keepout=keepout,
        workable=sheet.difference(keepout),
        zero_spot=(INSET - x, INSET - y),
        warnings=tuple(_clamp_warnings(board, clamps, blank.clamp_margin)),
    )


def _clamp_warnings(board: Board, clamps: tuple[Polygon, ...], margin: float) -> list[str]:
    found = []
    for number, clamp in enumerate(clamps, 1):
        gap = float(clamp.distance(board.outline))
        if gap < margin:
            found.append(
                say(
                    "Clamp {number} is {gap:.1f} mm from the outline; {margin:.1f} mm were asked "
                    "for. Move it outwards by {margin2:.1f} mm, or allow less.",
                    number=number,
                    gap=gap,
                    margin=margin,
                    margin2=margin - gap,
                )
            )
    return found
