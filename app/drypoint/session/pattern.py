"""The V-bit's test pattern in a job: where it lies in the waste, what it cuts, which line is which."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from shapely import Geometry, box, union_all

from drypoint.bits.model import VBit
from drypoint.cuts.coupon import Coupon, plan_coupon
from drypoint.cuts.depth_coupon import plan_depth_coupon
from drypoint.cuts.model import Cut
from drypoint.geometry.points import Points, as_points
from drypoint.session.corner import Corner
from drypoint.session.derive import Derived
from drypoint.session.ground import Box, Ground, extent_of, ground_of, settle
from drypoint.session.snapshot import Snapshot
from drypoint.wording import say

WHAT = "test pattern"
"""What the records of trial cuts call it."""


@dataclass(frozen=True, slots=True, eq=False)
class Pattern:
    """Where the pattern lies, board frame: ``widths`` are read with a loupe, ``depths`` with a meter."""

    widths: Coupon
    depths: Coupon

    @property
    def cuts(self) -> tuple[Cut, ...]:
        """All of it in the order of cutting."""
        return (*self.widths.cuts, *self.depths.cuts)

    @property
    def lines(self) -> tuple[Points, ...]:
        """Middles of all cuts."""
        return tuple(cut.path for cut in self.cuts)

    @property
    def extents(self) -> tuple[Box, Box]:
        """The ground of each half, mm."""
        return _extent(self.widths), _extent(self.depths)

    @property
    def ground(self) -> Geometry:
        """The same as a shape."""
        return union_all([box(*extent) for extent in self.extents])


def lay_pattern(
    derived: Derived, snap: Snapshot, corner: Corner | None = None, reach: Geometry | None = None
) -> Pattern:
    """Both halves in the free copper of the blank, as near to a corner as there is room; computes.

    Parameters
    ----------
    corner : the one that is set, if not given
    reach : where the machine gets to, board frame, as far as that is known

    Raises
    ------
    PlanError
        If there is no room; says what is in the way.
    """
    bit = snap.settings.bits.vbit
    wanted = corner or snap.settings.coupons.pattern
    ground = ground_of(derived, snap, reach)
    widths = _settled(plan_coupon(bit), ground, wanted)
    taken = {**ground.taken, say("its other half"): box(*_extent(widths))}
    depths = _settled(plan_depth_coupon(bit), replace(ground, taken=taken), wanted)
    return Pattern(widths, depths)


def legend(pattern: Pattern, *, touched: bool) -> tuple[str, ...]:
    """Which line is which, and what it should be, in the board frame."""
    lines = ["Read widths with a loupe; test with a meter which lines part the copper."]
    if not touched:
        lines.append("The copper was not touched: depths hold only where it lies at z = 0.")
    for title, coupon in (("Widths and ridges", pattern.widths), ("Depths", pattern.depths)):
        lines += ["", f"{title}: board x, y of the line's start; what is expected, mm"]
        for cut in coupon.cuts:
            x, y = cut.path[0].tolist()
            lines.append(f"  {x:7.2f}, {y:7.2f}  {cut.label}: {coupon.expected.get(cut.label, 0.0):.3f}")
    return tuple(lines)


def _extent(coupon: Coupon) -> Box:
    """The rectangle a half needs."""
    widest = max(cut.bit.width(cut.depth) for cut in coupon.cuts if isinstance(cut.bit, VBit))
    return extent_of([cut.path for cut in coupon.cuts], widest / 2.0)


def _settled(coupon: Coupon, ground: Ground, corner: Corner) -> Coupon:
    """One half in its place, lying or standing."""
    x0, y0, x1, y1 = _extent(coupon)
    found = settle((x1 - x0, y1 - y0), ground, corner, title=say("Test pattern"))
    turned = _stood(coupon) if found.stands else coupon
    low = np.array(_extent(turned)[:2])
    return _moved(turned, np.array(found.at) - low)


def _moved(coupon: Coupon, by: NDArray[np.float64]) -> Coupon:
    cuts = tuple(replace(cut, path=as_points(cut.path + by)) for cut in coupon.cuts)
    return Coupon(cuts, coupon.expected)


def _stood(coupon: Coupon) -> Coupon:
    """Turned by a quarter."""
    cuts = tuple(replace(cut, path=as_points(cut.path[:, ::-1] * (-1.0, 1.0))) for cut in coupon.cuts)
    return Coupon(cuts, coupon.expected)
