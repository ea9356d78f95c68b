"""Small squares cut round at growing depths: a meter says which of them are islands."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from drypoint.bits.model import VBit
from drypoint.cuts.coupon import Coupon
from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import InputError
from drypoint.geometry.points import as_points

SIDE = 2.0
"""mm, side of a square: room for a probe tip."""
APART = 0.8
"""mm between squares."""


def plan_depth_coupon(
    bit: VBit,
    corner: tuple[float, float] = (0.0, 0.0),
    *,
    depths: Sequence[float] = (0.02, 0.03, 0.04, 0.05, 0.06, 0.08),
) -> Coupon:
    """Squares in a row, lower left at ``corner`` (board frame), shallowest first.

    ``expected`` is the width cut at the top, mm.

    Raises
    ------
    InputError
        If no depth is given or one is not positive.
    """
    if not depths or min(depths) <= 0.0:
        raise InputError("A coupon needs depths above 0.", "coupon")
    square = np.array([(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0), (0.0, 0.0)]) * SIDE
    cuts: list[Cut] = []
    expected: dict[str, float] = {}
    for number, depth in enumerate(sorted(depths)):
        label = f"island {depth:.3f}"
        path = as_points(square + np.array([corner[0] + number * (SIDE + APART), corner[1]]))
        cuts.append(Cut(CutKind.GROOVE, bit, path, (), depth, label=label))
        expected[label] = bit.width(depth)
    return Coupon(tuple(cuts), expected)
