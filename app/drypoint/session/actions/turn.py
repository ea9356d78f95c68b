"""Turn the board over: the other copper side, or the legend on the side that is not milled."""

from __future__ import annotations

from dataclasses import dataclass, replace

from drypoint.bits.model import Bit
from drypoint.cuts.model import Cut, CutKind
from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.machine.operator import Request, RequestKind
from drypoint.reference.fit import Fit
from drypoint.reference.registration import Registration, registration
from drypoint.reference.worth import choose_holes
from drypoint.session.actions.find import likely
from drypoint.session.holes import targets
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.session.tooling import HOLES, LEAST_HOLES
from drypoint.session.two_sides import seen_from
from drypoint.wording import say

CAUTIONS = (
    "Spindle off and still, bit raised well clear, before a hand goes near.",
    "Chips lie under the board: clean bed and copper, or it lies askew and hollow.",
)
"""Before the board is turned over."""
_FLIP = {"y": "left over right", "x": "front over back"}


@dataclass(frozen=True, slots=True, eq=False)
class SecondSide:
    """What the second side is found by.

    Attributes
    ----------
    holes : tuple of Cut
        Drilled holes to touch, frame of the side being milled; ``label`` tells them apart.
    expected : tuple of (x, y)
        Where each is likely to be now, work coordinates, mm.
    """

    holes: tuple[Cut, ...]
    expected: tuple[tuple[float, float], ...]


def turn_over(session: Session, station: Station | None, *, axis: str = "y", mill: bool = True) -> None:
    """The board is turned over about an axis of the bed and clamped in the same corner.

    Heights and fit are stale from now on. Nothing that was done on the first side is forgotten.

    Parameters
    ----------
    station : the machine, where somebody is to be asked to do it now
    axis : "y" turns left over right, "x" front over back
    mill : whether the side that comes up is to be milled; else only its legend is marked

    Raises
    ------
    PlanError
        If that side has no copper in the design.
    """
    if axis not in _FLIP:
        raise ValueError(f"no axis {axis!r}")
    snap = session.snapshot
    up = snap.face().other
    designs = session.derived.designs(snap).values()
    lacking = not all(design.other_copper for design in designs)
    if mill and lacking and up is not snap.settings.board.side:
        raise PlanError(
            say("The design has no copper on the {value}.", value=up.value),
            "Second side",
            "Choose its file, or turn the board over for the legend only.",
        )
    if mill:
        session.derived.designs(seen_from(snap, up))  # it must be understood before anything is moved
    if station is not None:
        station.place.raise_to(station.place.clearance * 4)
        station.place.ask(
            Request(
                RequestKind.TURN_OVER,
                "Turn the board over",
                say("Turn it {flip} and clamp it in the same corner of the bed, flat.", flip=_FLIP[axis]),
                CAUTIONS,
                axis=axis,
            )
        )
        station.controller.doubt("z")
    session.keep("setup", {"note": f"turned over, {_FLIP[axis]}", "turned": axis, "face": up.value})
    if mill and snap.settings.board.side is not up:
        session.change(f"Mill the {up.value}", board=replace(snap.settings.board, side=up))


def second_side(session: Session, *, count: int = HOLES) -> SecondSide:
    """The drilled holes to touch after the board was turned over, and where to look for them.

    Those of the board and tooling holes, whichever tell most together.

    Raises
    ------
    PlanError
        If there are fewer than two holes.
    """
    snap = session.snapshot
    board, cuts = session.derived.board(snap), session.derived.cuts(snap)
    if len(board.holes) + len(cuts.tooling) < LEAST_HOLES:
        raise PlanError(
            "The second side is found from at least two drilled holes.",
            "Second side",
            "Have tooling holes drilled while the first side looks up.",
        )
    drills = {cut.path.tobytes(): cut.bit for cut in cuts.holes}
    holes = []
    for number, hole in enumerate(board.holes, 1):
        at = as_points([(hole.x, hole.y)])
        bit: Bit = drills.get(at.tobytes(), snap.settings.bits.vbit)
        holes.append(Cut(CutKind.HOLE, bit, at, (), 0.0, hole.diameter, label=f"H{number}"))
    holes += cuts.tooling
    places = as_points([hole.path[0] for hole in holes])
    believed = snap.settings.reference
    aims = targets(session.derived, snap)
    chosen = choose_holes(places, aims, count, sigma=believed.touch_sigma, hole_sigma=believed.hole_sigma)
    where = likely(session).apply(places[list(chosen)])
    return SecondSide(tuple(holes[k] for k in chosen), tuple((float(x), float(y)) for x, y in where))


def expected_registration(session: Session) -> Registration:
    """How far pads of the side now up may lie from the holes, from the present fit.

    Where the board has no holes: how far the two sides may lie apart at its corners.

    Raises
    ------
    PlanError
        While the board was not found by its holes.
    """
    snap = session.snapshot
    fit = session.derived.fit(snap)
    if not isinstance(fit, Fit):
        raise PlanError("No holes were touched yet.", "Second side", "Touch two drilled holes, better three.")
    believed = snap.settings.reference
    places = targets(session.derived, snap)
    return registration(fit, places, touch=believed.touch_sigma, wander=believed.hole_sigma)
