"""Rows of marks for a legend, from the settings of the laser."""

from __future__ import annotations

from shapely import Geometry

from drypoint.board.model import Board, Role, Side
from drypoint.cuts.legend import Legend, LegendStyle, keep_free, plan_legend
from drypoint.progress import Progress
from drypoint.session.settings import LaserSection
from drypoint.wording import say

PLANNED_BY = (
    "pulses",
    "pitch",
    "spot",
    "widest",
    "single",
    "hatch",
    "hatch_angle",
    "clear",
    "ring",
    "planes",
)
"""Settings of the laser that rows depend on; power, feed and material are not among them."""


def side_words(side: Side) -> str:
    """The side in words."""
    return say("top") if side is Side.TOP else say("bottom")


def legend_face(board: Board) -> Side:
    """The side that the legend belongs on: the component side, by the file it was read from."""
    roles = {file.role for file in board.files}
    return Side.BOTTOM if Role.LEGEND_BOTTOM in roles and Role.LEGEND_TOP not in roles else Side.TOP


def legend_style(chosen: LaserSection) -> LegendStyle:
    """The style of rows that is set."""
    return LegendStyle(
        pulses=chosen.pulses,
        pitch=chosen.pitch,
        spot=chosen.spot,
        widest=chosen.widest,
        single=chosen.single,
        hatch=chosen.hatch,
        hatch_angle=chosen.hatch_angle,
        clear=chosen.clear,
        ring=chosen.ring,
        plane=LegendStyle().plane if chosen.planes else 0.0,
    )


def planned_by(chosen: LaserSection) -> str:
    """Changes when one of the settings that rows depend on does."""
    return repr(tuple(getattr(chosen, name) for name in PLANNED_BY))


def plan_marks(board: Board, chosen: LaserSection, progress: Progress | None = None) -> Legend:
    """Rows of marks, board frame, clear of holes and of the pads on the legend's own side.

    Raises
    ------
    PlanError
        There is no legend, or nothing of it is left beside pads and holes.
    """
    style, free = legend_style(chosen), pads_and_holes(board, chosen)
    return plan_legend(board.legend, style, free=free, inside=board.outline, progress=progress)


def pads_and_holes(board: Board, chosen: LaserSection) -> Geometry:
    """What no mark may lie on: holes, and pads of the legend's own side; board frame."""
    own = legend_face(board) is board.side
    return keep_free(board, legend_style(chosen), board.nets if own else board.other_copper)
