"""Both sides of a board in one job: which side is up, and how one side's frame becomes the other's.

The frame of a board is always that of the side being milled. A hole touched on the other side, or a
blank laid down before the board was turned over, is carried over here, once.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from drypoint.board.model import Side
from drypoint.geometry.points import Points, as_points
from drypoint.geometry.rigid import Rigid
from drypoint.reference.affine import LEAST_HOLES, stretched
from drypoint.reference.fit import Fit, fit_rigid
from drypoint.reference.registration import across, turned
from drypoint.session.layout import Layout
from drypoint.session.settings import BlankSettings, Clamp, Settings
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bits import seen_from_below


def seen_from(snap: Snapshot, side: Side) -> Snapshot:
    """The same job with another side as the one being milled."""
    board = replace(snap.settings.board, side=side)
    return replace(snap, settings=replace(snap.settings, board=board))


def design_places(snap: Snapshot, touched: Sequence[Mapping[str, Any]], width: float) -> Points:
    """(N, 2) design places of touched holes in the frame of the side being milled.

    ``width`` is that of the board, mm. A record without a side was made while the first side was up.
    """
    side, first = snap.settings.board.side, snap.face(1)
    over = across(width)
    return as_points(
        [
            one["design"] if Side(one.get("side", first)) is side else over.apply([one["design"]])[0]
            for one in touched
        ]
    )


def fit_of_touched(snap: Snapshot, touched: Sequence[Mapping[str, Any]], setup: int, width: float) -> Fit:
    """The fit of a clamping; mirrored where the side being milled looks down in it.

    Scale and squareness are corrected only where that was chosen for the clamping, from four holes on.
    """
    believed = snap.settings.reference
    fit = fit_rigid(
        design_places(snap, touched, width),
        [one["touched"] for one in touched],
        mirror=snap.face(setup) is not snap.settings.board.side,
        sigma=[one["sigma"] for one in touched],
        hole_sigma=[believed.mark_sigma if one.get("mark") else believed.hole_sigma for one in touched],
    )
    return stretched(fit) if stretch_chosen(snap, setup) and len(touched) >= LEAST_HOLES else fit


def stretch_chosen(snap: Snapshot, setup: int) -> bool:
    """Whether scale and squareness are to be corrected in a clamping."""
    said = [bool(one.data["on"]) for one in snap.records["stretch"] if one.data["setup"] == setup]
    return bool(said) and said[-1]


def carried(placing: Fit | Rigid, snap: Snapshot, setup: int, layout: Layout) -> Fit | Rigid:
    """Where ``placing``, of the clamping ``setup``, has come to by turning the board over since."""
    axes = snap.turns(setup)
    if not axes:
        return placing
    motion = placing.rigid if isinstance(placing, Fit) else placing
    for axis in axes:
        motion = motion.then(turned(layout.width, layout.height, axis))
    return motion


def turned_blank(snap: Snapshot, board_width: float, board_height: float) -> BlankSettings:
    """The blank as the side being milled sees it: as set for the first side, or turned over.

    Clamps stay where they are on the bed. Turned about x, the other side's frame lies upside down on
    the bed, so clamps and the board's place are seen from the opposite corner.
    """
    blank = snap.settings.blank
    if snap.settings.board.side is snap.face(1):
        return blank
    width = blank.width or board_width + 2 * blank.margin
    height = blank.height or board_height + 2 * blank.margin
    mirrored = replace(blank, board_x=width - blank.board_x - board_width)
    axes = snap.turns(1)
    if not axes or axes[-1] == "y":
        return mirrored
    clamps = tuple(
        Clamp(width - c.x - c.width, height - c.y - c.height, c.width, c.height) for c in blank.clamps
    )
    return replace(mirrored, clamps=clamps)


def as_seen(snap: Snapshot, width: float) -> Settings:
    """The settings as the side being milled sees them; ``width`` is that of the board, mm."""
    settings = snap.settings
    if settings.board.side is snap.face(1):
        return settings
    return replace(settings, clearing=seen_from_below(settings.clearing, width))
