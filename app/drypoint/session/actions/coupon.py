"""The width coupon: where it goes, its programs, and what it teaches about the V-bit."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, Point, box

from drypoint.bits.width_coupon import Evaluation, Parted, Ridge, Width, evaluate
from drypoint.cuts.coupon import Coupon, plan_coupon
from drypoint.cuts.depth_coupon import plan_depth_coupon
from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.program.model import Program
from drypoint.program.place import place_cuts
from drypoint.session.session import Session
from drypoint.session.work import preset_of, program_settings

CLEAR = 0.8
"""mm kept between a coupon and the board, the blank's edge and the clamps."""
MARK = 1.0
"""mm kept from the middle of a reference hole."""
STEP = 0.5
"""mm between the places that are tried."""


@dataclass(frozen=True, slots=True, eq=False)
class CouponWork:
    """What to cut for a coupon: ``widths`` are read with a loupe, ``depths`` tested with a meter."""

    widths: Coupon
    depths: Coupon
    programs: tuple[Program, ...]


def coupon_work(session: Session) -> CouponWork:
    """Both coupons in the waste of the blank, as programs.

    Raises
    ------
    PlanError
        If the waste has no room, or the copper's height is not known.
    """
    snap = session.snapshot
    bit, surface = snap.settings.bits.vbit, session.derived.surface(snap)
    if surface is None:
        raise PlanError(
            "The copper's height is not known, so depths would mean nothing.",
            "Coupon",
            "Touch the copper first.",
        )
    layout, board = session.derived.layout(snap), session.derived.board(snap)
    marks = [shapely.buffer(Point(mark.path[0]), MARK) for mark in session.derived.cuts(snap).marks]
    room = shapely.difference(layout.workable, shapely.union_all([board.outline, *marks]))
    widths = _settled(plan_coupon(bit), room)
    taken = _extent(widths)
    depths = _settled(plan_depth_coupon(bit), shapely.difference(room, taken))
    shared = program_settings(snap.settings, preset_of(snap.settings))
    cuts = (*widths.cuts, *depths.cuts)
    return CouponWork(widths, depths, place_cuts(cuts, session.derived.fit(snap), surface, shared, first=5))


def read_coupon(
    session: Session,
    widths: Sequence[Width] = (),
    parted: Sequence[Parted] = (),
    ridges: Sequence[Ridge] = (),
) -> Evaluation:
    """What was read from a coupon says this of the V-bit; nothing is changed yet."""
    settings = session.settings
    return evaluate(settings.bits.vbit, widths, parted, ridges, copper=settings.blank.copper)


def adopt(session: Session, found: Evaluation) -> None:
    """Use the answer from now on: tip and run-out for widths and bite, the offset for depth and reach."""
    bits = session.settings.bits
    session.change(f"{found.bit.name} as its coupon says", bits=replace(bits, vbit=found.bit))
    session.keep("coupon", {"bit": found.bit.name, "offset": found.offset, "sigma": found.sigma(2)})


def _extent(coupon: Coupon) -> Geometry:
    """The rectangle a coupon needs."""
    points = np.vstack([cut.path for cut in coupon.cuts])
    reach = max(coupon.expected.values()) / 2.0
    (x0, y0), (x1, y1) = points.min(axis=0) - reach, points.max(axis=0) + reach
    return box(float(x0), float(y0), float(x1), float(y1))


def _settled(coupon: Coupon, room: Geometry) -> Coupon:
    """The coupon where the room is first found, lying or standing.

    Raises
    ------
    PlanError
        If there is none.
    """
    for turn in (False, True):
        candidate = _stood(coupon) if turn else coupon
        x0, y0, x1, y1 = shapely.bounds(_extent(candidate)).tolist()
        low_x, low_y, high_x, high_y = shapely.bounds(shapely.buffer(room, -CLEAR)).tolist()
        if not np.isfinite([low_x, low_y]).all():
            break
        xs, ys = np.meshgrid(
            np.arange(low_x, high_x - (x1 - x0) + 1e-9, STEP),
            np.arange(low_y, high_y - (y1 - y0) + 1e-9, STEP),
        )
        places = np.column_stack((xs.ravel(), ys.ravel()))
        boxes = shapely.box(
            places[:, 0] - CLEAR,
            places[:, 1] - CLEAR,
            places[:, 0] + x1 - x0 + CLEAR,
            places[:, 1] + y1 - y0 + CLEAR,
        )
        shapely.prepare(room)
        fits = np.flatnonzero(shapely.covers(room, boxes))
        if len(fits):
            return _moved(candidate, places[fits[0]] - (x0, y0))
    raise PlanError(
        "The waste round the board has no room for the coupon.",
        "Coupon",
        "Use a larger blank, or cut the coupon on a piece of its own.",
    )


def _moved(coupon: Coupon, by: NDArray[np.float64]) -> Coupon:
    cuts = tuple(replace(cut, path=as_points(cut.path + by)) for cut in coupon.cuts)
    return Coupon(cuts, coupon.expected)


def _stood(coupon: Coupon) -> Coupon:
    """Turned by a quarter."""
    cuts = tuple(replace(cut, path=as_points(cut.path[:, ::-1] * (-1.0, 1.0))) for cut in coupon.cuts)
    return Coupon(cuts, coupon.expected)
