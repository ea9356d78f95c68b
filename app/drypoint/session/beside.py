"""What a job has beside its steps: the second side and the legend by laser. Nothing is computed here."""

from __future__ import annotations

from drypoint.board.model import Board
from drypoint.session.marks import legend_face
from drypoint.session.snapshot import Snapshot
from drypoint.wording import say

LEGEND = "legend"
"""Part of the name of a program that marks the legend."""


def beside(snap: Snapshot, board: Board | None) -> tuple[str, ...]:
    """A line for the second side and one for the legend, where the job has them: short, the tag is narrow."""
    return tuple(line for line in (_second_side(snap), _legend(snap, board)) if line)


def _second_side(snap: Snapshot) -> str:
    if not snap.settings.board.both:
        return ""
    if snap.face() is snap.face(1):
        return say("Second side: to do")
    return say("Second side: looks up now")


def _legend(snap: Snapshot, board: Board | None) -> str:
    chosen = snap.settings.laser
    if board is None or board.legend is None or not (chosen.coating.strip() or chosen.bare):
        return ""
    if any(LEGEND in str(one.data["program"]) for one in snap.records["done"]):
        return say("Legend by laser: marked")
    if snap.face() is not legend_face(board):
        return say("Legend by laser: other side")
    return say("Legend by laser: to do")
