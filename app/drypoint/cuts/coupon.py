"""A test pattern for a corner of the blank: what a bit really cuts, read with a loupe or a meter."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from drypoint.bits.model import VBit
from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import InputError
from drypoint.geometry.points import as_points

LENGTH = 6.0
"""mm of each line."""
APART = 1.5
"""mm between lines of the width pattern."""


@dataclass(frozen=True, slots=True, eq=False)
class Coupon:
    """``cuts`` with their depths, and ``expected`` width (or copper left) in mm for each, by label."""

    cuts: tuple[Cut, ...]
    expected: dict[str, float]


def plan_coupon(
    bit: VBit,
    corner: tuple[float, float] = (0.0, 0.0),
    *,
    depths: Sequence[float] = (0.04, 0.06, 0.08, 0.10, 0.15),
    gaps: Sequence[float] = (0.0, 0.05, 0.10, 0.15, 0.20, 0.30),
) -> Coupon:
    """Lines at several depths, and pairs of lines with less and less copper between them.

    Board frame, lower left at ``corner``. Pairs are cut at the middle depth: the copper ridge
    between them is ``gap`` wide if the bit is what it is said to be.

    Raises
    ------
    InputError
        If no depth is given or one is not positive.
    """
    if not depths or min(depths) <= 0.0 or min(gaps, default=0.0) < 0.0:
        raise InputError("A coupon needs depths above 0 and gaps of 0 or more.", "coupon")
    x, y = corner
    cuts: list[Cut] = []
    expected: dict[str, float] = {}
    for number, depth in enumerate(depths):
        label = f"width {depth:.2f}"
        at = y + number * APART
        cuts.append(Cut(CutKind.GROOVE, bit, as_points([(x, at), (x + LENGTH, at)]), (), depth, label=label))
        expected[label] = bit.width(depth)
    middle = sorted(depths)[len(depths) // 2]
    wide = bit.width(middle)
    low = y + len(depths) * APART
    for gap in gaps:
        label = f"ridge {gap:.2f}"
        for at in (low, low + wide + gap):
            cuts.append(
                Cut(CutKind.GROOVE, bit, as_points([(x, at), (x + LENGTH, at)]), (), middle, label=label)
            )
        expected[label] = gap
        low += 2.0 * wide + gap + APART / 2.0
    return Coupon(tuple(cuts), expected)
