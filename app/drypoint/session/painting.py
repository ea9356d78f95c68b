"""What a person paints on the board to be cut again."""

from __future__ import annotations

import shapely
from numpy.typing import ArrayLike
from shapely import Geometry

from drypoint.geometry.points import as_points
from drypoint.session.pass_plan import PAINTED, painted_in
from drypoint.session.session import Session

BESIDE = 0.05
"""A groove is painted this wide where it is chosen whole, mm."""


def stroke(way: ArrayLike, radius: float) -> Geometry:
    """The area of a brush of ``radius`` mm drawn along (N, 2) places, mm."""
    places = as_points(way)
    line = shapely.Point(places[0]) if len(places) == 1 else shapely.LineString(places)
    return line.buffer(radius)


def paint(session: Session, area: Geometry, *, only: bool) -> None:
    """Have an area of the board cut in the next pass, beside what was painted before."""
    _keep(session, [*_areas(session), str(shapely.to_wkt(area, rounding_precision=4))], only=only)


def paint_net(session: Session, net: str, *, only: bool) -> None:
    """Have every groove beside a net cut in the next pass."""
    grooves = session.derived.cuts(session.snapshot).grooves
    lines = [
        shapely.LineString(line)
        for line, nets in zip(grooves.lines, grooves.line_nets, strict=True)
        if net in nets
    ]
    if lines:
        paint(session, shapely.union_all(lines).buffer(BESIDE), only=only)


def paint_only(session: Session, only: bool) -> None:
    """Whether the next pass cuts nothing but what is painted."""
    areas = _areas(session)
    if areas:
        _keep(session, areas, only=only)


def unpaint(session: Session, *, everything: bool) -> None:
    """Take away the last stroke, or all of them."""
    areas = _areas(session)
    if areas:
        _keep(session, [] if everything else areas[:-1], only=is_only(session))


def is_only(session: Session) -> bool:
    """Whether what is painted is all that the next pass cuts."""
    record = session.snapshot.latest(PAINTED)
    return record is not None and bool(record.data["only"])


def _areas(session: Session) -> list[str]:
    snap = session.snapshot
    record = snap.latest(PAINTED)
    return [] if record is None or painted_in(snap) is None else list(record.data["areas"])


def _keep(session: Session, areas: list[str], *, only: bool) -> None:
    session.keep(PAINTED, {"setup": session.snapshot.setup, "areas": areas, "only": only})
