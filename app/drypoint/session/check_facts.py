"""An island check as plain values, for scripts."""

from __future__ import annotations

from typing import Any

from shapely import get_parts

from drypoint.board.model import Board
from drypoint.cuts.model import IslandCheck


def check_dict(check: IslandCheck, islands: int) -> dict[str, Any]:
    """An island check for scripts.

    ``islands`` is how many pieces the copper of the nets has in the design. Pieces that link wires
    join are counted as one, so that ``pieces`` equals ``nets`` on a good board. Without copper data
    there are no nets, and the check is not ``possible``.
    """

    def flaws(found: tuple[Any, ...]) -> list[dict[str, Any]]:
        return [
            {"nets": list(one.nets), "at": [round(one.at[0], 3), round(one.at[1], 3)], "what": one.what}
            for one in found
        ]

    return {
        "possible": check.nets > 0,
        "nets": check.nets,
        "pieces": max(min(check.pieces, 1), check.pieces - (islands - check.nets)),
        "copper_pieces": check.pieces,
        "shorts": flaws(check.shorts),
        "opens": flaws(check.opens),
        "lost": flaws(check.lost),
    }


def designed_islands(board: Board) -> int:
    """Pieces that the copper of the nets has on the milled side."""
    return sum(len(get_parts(shape)) for shape in board.nets.values())
