"""Where the laminate yields: a loose edge or corner named in words before anything is cut.

The fast touch pushes springy laminate down before it makes contact; after backing off, the slow
touch meets it higher. The difference is the give.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from drypoint.board.model import Finding
from drypoint.surface.touch import Touches
from drypoint.wording import say

LEAST = 0.02
"""mm of give worth a word: about the play of a small machine's Z."""
_BAND = 0.2
"""Share of the board's size that counts as its edge."""
_CLEAR = 4.0
"""Times the usual scatter of the give that stands out."""

_PLACES = {
    (-1, -1): say("The front left corner"),
    (1, -1): say("The front right corner"),
    (-1, 1): say("The back left corner"),
    (1, 1): say("The back right corner"),
    (0, 0): say("The board's middle"),
}
_EDGES = {
    (0, -1): (say("The front long edge at its middle"), say("The front short edge at its middle")),
    (0, 1): (say("The back long edge at its middle"), say("The back short edge at its middle")),
    (-1, 0): (say("The left long edge at its middle"), say("The left short edge at its middle")),
    (1, 0): (say("The right long edge at its middle"), say("The right short edge at its middle")),
}
"""By whether the edge is a long or a short one."""


def give_report(
    touches: Touches, bounds: tuple[float, float, float, float] | None = None
) -> tuple[Finding, ...]:
    """Loose edges and corners, the worst first.

    Parameters
    ----------
    touches : Touches
        Machine frame; those touched only once say nothing.
    bounds : (x0, y0, x1, y1), optional
        Extent of the blank, machine frame, mm; the touches' own extent if not given. Front is
        the side of small y, left that of small x.
    """
    known = [t for t in touches.touches if t.first is not None]
    if not known:
        return ()
    places = np.array([(t.x, t.y) for t in known])
    give = np.array([t.give for t in known])
    x0, y0, x1, y1 = bounds or (*places.min(axis=0), *places.max(axis=0))
    usual = float(np.median(give))
    scatter = 1.4826 * float(np.median(np.abs(give - usual)))
    # where most of the board yields, what yields least is no measure of the usual
    limit = LEAST if usual >= LEAST else max(LEAST, usual + _CLEAR * scatter)
    loose = give >= limit
    size = np.array([max(x1 - x0, 1e-9), max(y1 - y0, 1e-9)])
    share = (places - (x0, y0)) / size
    zone = np.where(share < _BAND, -1, np.where(share > 1.0 - _BAND, 1, 0))
    return _findings(places, give, loose, zone, bool(size[0] >= size[1]))


def _findings(
    places: NDArray[np.float64],
    give: NDArray[np.float64],
    loose: NDArray[np.bool_],
    zone: NDArray[np.int64],
    wide: bool,
) -> tuple[Finding, ...]:
    """One finding for each edge, corner or middle with loose touches."""
    found: list[tuple[float, Finding]] = []
    for key in {(int(a), int(b)) for a, b in zone[loose]}:
        inside = loose & (zone == key).all(axis=1)
        if key == (0, 0) and inside.sum() < 2:
            continue  # one odd touch in the middle is a chip, not a loose board
        worst = int(np.flatnonzero(inside)[np.argmax(give[inside])])
        what = say("{name} gives {give:.2f} mm.", name=_name(key, wide), give=float(give[worst]))
        hint = (
            "Press the board flat on its backing there."
            if key == (0, 0)
            else "Clamp it there, then touch again."
        )
        at = (float(places[worst, 0]), float(places[worst, 1]))
        found.append((float(give[worst]), Finding("give", what, hint=hint, at=at)))
    return tuple(f for _, f in sorted(found, key=lambda pair: -pair[0]))


def _name(key: tuple[int, int], wide: bool) -> str:
    """The place in words; edges are told apart as long or short."""
    if key in _PLACES:
        return _PLACES[key]
    long_edge = (key[0] == 0) == wide
    return _EDGES[key][0 if long_edge else 1]
