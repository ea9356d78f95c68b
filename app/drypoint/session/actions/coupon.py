"""The width coupon: where it goes, its programs, and what it teaches about the V-bit."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import Path

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Geometry, Point, box

from drypoint.bits.width_coupon import Evaluation, Parted, Ridge, Width, evaluate
from drypoint.cuts.coupon import Coupon, plan_coupon
from drypoint.cuts.depth_coupon import plan_depth_coupon
from drypoint.errors import PlanError, StoreError
from drypoint.geometry.points import as_points
from drypoint.program.export import file_name, file_text
from drypoint.program.model import Program
from drypoint.program.place import place_cuts
from drypoint.session.session import Session
from drypoint.session.work import preset_of, program_settings, require_reach, run_seconds
from drypoint.wording import say

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


class Corner(StrEnum):
    """The corner of the blank that a coupon lies nearest to."""

    LOWER_LEFT = "lower left"
    LOWER_RIGHT = "lower right"
    UPPER_LEFT = "upper left"
    UPPER_RIGHT = "upper right"

    def place(self, room: Geometry) -> NDArray[np.float64]:
        """(x, y) of that corner of a shape's extent."""
        x0, y0, x1, y1 = shapely.bounds(room).tolist()
        upper, right = self.startswith("upper"), self.endswith("right")
        return np.array([x1 if right else x0, y1 if upper else y0])


def coupon_work(session: Session, corner: Corner = Corner.LOWER_LEFT, *, flat: bool = False) -> CouponWork:
    """Both coupons in the waste of the blank, as near to a corner as there is room, as programs.

    With ``flat`` copper that was not touched counts as flat at z = 0: for a machine that runs from a card.

    Raises
    ------
    PlanError
        If the waste has no room, or the copper's height is not known.
    """
    snap = session.snapshot
    bit, surface = snap.settings.bits.vbit, session.derived.surface(snap)
    if surface is None and not flat:
        raise PlanError(
            "The copper's height is not known, so depths would mean nothing.",
            "Coupon",
            "Touch the copper first.",
        )
    layout, board = session.derived.layout(snap), session.derived.board(snap)
    marks = [shapely.buffer(Point(mark.path[0]), MARK) for mark in session.derived.cuts(snap).marks]
    room = shapely.difference(layout.workable, shapely.union_all([board.outline, *marks]))
    widths = _settled(plan_coupon(bit), room, corner)
    taken = _extent(widths)
    depths = _settled(plan_depth_coupon(bit), shapely.difference(room, taken), corner)
    shared = program_settings(snap.settings, preset_of(snap.settings))
    cuts = (*widths.cuts, *depths.cuts)
    return CouponWork(widths, depths, place_cuts(cuts, session.derived.fit(snap), surface, shared, first=5))


def export_coupon(session: Session, folder: Path, corner: Corner = Corner.LOWER_LEFT) -> tuple[Path, ...]:
    """Write the coupon's programs and a page that says which line is which.

    Raises
    ------
    PlanError
        If the waste has no room, or a program would leave the machine.
    StoreError
        If the folder cannot be written.
    """
    work = coupon_work(session, corner, flat=True)
    touched = session.derived.surface(session.snapshot) is not None
    name = session.settings.board.name
    made = []
    try:
        folder.mkdir(parents=True, exist_ok=True)
        for program in work.programs:
            require_reach(session.settings, program)
            made.append(folder / f"coupon-{file_name(program)}")
            made[-1].write_text(file_text(program, job=name, seconds=run_seconds(program)), encoding="ascii")
        made.append(folder / "coupon.txt")
        made[-1].write_text("\n".join(legend(work, touched=touched)) + "\n", encoding="utf-8")
    except OSError as error:
        raise StoreError(
            say("The files could not be written ({strerror}).", strerror=error.strerror),
            str(folder),
            "Choose another folder.",
        ) from error
    return tuple(made)


def legend(work: CouponWork, *, touched: bool) -> tuple[str, ...]:
    """Which line of the coupon is which, and what it should be, in work coordinates of the board frame."""
    lines = ["Read widths with a loupe; test with a meter which lines part the copper."]
    if not touched:
        lines.append("The copper was not touched: depths hold only where it lies at z = 0.")
    for title, coupon in (("Widths and ridges", work.widths), ("Depths", work.depths)):
        lines += ["", f"{title}: board x, y of the line's start; what is expected, mm"]
        for cut in coupon.cuts:
            x, y = cut.path[0].tolist()
            lines.append(f"  {x:7.2f}, {y:7.2f}  {cut.label}: {coupon.expected.get(cut.label, 0.0):.3f}")
    return tuple(lines)


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
    """Use the answer from now on: tip and run-out for widths and bite, the offset for depth and reach.

    The offset counts as long as the bit has the shape it was read with, so that undoing the change of
    the bit takes it back too. The shape is rounded to 1 µm and 0.01°, as it can be typed.
    """
    bits, bit = session.settings.bits, found.bit
    angle = math.radians(round(math.degrees(bit.angle), 2))
    bit = replace(bit, tip=round(bit.tip, 3), runout=round(bit.runout, 3), angle=angle)
    shape = {"tip": bit.tip, "runout": bit.runout, "angle": bit.angle}
    session.keep("coupon", {"bit": bit.name, "offset": found.offset, "sigma": found.sigma(2), **shape})
    session.change("V-bit as its coupon says", bits=replace(bits, vbit=bit))


def _extent(coupon: Coupon) -> Geometry:
    """The rectangle a coupon needs."""
    points = np.vstack([cut.path for cut in coupon.cuts])
    reach = max(coupon.expected.values()) / 2.0
    (x0, y0), (x1, y1) = points.min(axis=0) - reach, points.max(axis=0) + reach
    return box(float(x0), float(y0), float(x1), float(y1))


def _settled(coupon: Coupon, room: Geometry, corner: Corner) -> Coupon:
    """The coupon as near to a corner as it fits, lying or standing.

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
            middles = places[fits] + np.array([x1 - x0, y1 - y0]) / 2.0
            nearest = fits[int(np.argmin(((middles - corner.place(room)) ** 2).sum(axis=1)))]
            return _moved(candidate, places[nearest] - (x0, y0))
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
