"""Touch off x, y and z: by paper, by contact, or by the rim of a hole.

By paper the bit stands against it already, brought there by hand; by contact the bit stands a little
way off and the program feels for it.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from drypoint.bits.model import VBit
from drypoint.cuts.model import Cut
from drypoint.errors import MachineError, PlanError
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.sideways import find_rim, touch_edge
from drypoint.machine.procedures.touching import zero_at_spot
from drypoint.machine.state import Clip
from drypoint.reference.fit import TOUCH_SIGMA
from drypoint.reference.rim import RimCentre
from drypoint.session.actions.find import go_over, is_mark, keep_hole
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.wording import say

EDGES = {"left": ("x", 1), "right": ("x", -1), "front": ("y", 1), "back": ("y", -1)}
"""Edges of the blank: the axis that is touched off there, and the way in which the edge is met."""


@dataclass(frozen=True, slots=True)
class Edge:
    """An edge of the blank that is touched.

    Attributes
    ----------
    name : "left", "right", "front" or "back"
    at : work coordinate that it gets, mm
    bit : diameter of the bit where it meets the edge, mm
    """

    name: str
    at: float
    bit: float

    @property
    def axis(self) -> str:
        """x or y."""
        return EDGES[self.name][0]

    @property
    def sign(self) -> int:
        """+1 where the edge is met towards larger readings."""
        return EDGES[self.name][1]


def edge_of(session: Session, name: str, bit: float) -> Edge:
    """An edge of the blank as the job has it."""
    layout = session.derived.layout(session.snapshot)
    return Edge(name, {"left": 0.0, "front": 0.0, "right": layout.width, "back": layout.height}[name], bit)


def z_by_paper(station: Station, thickness: float) -> None:
    """The bit stands on paper on the copper: z is the paper's thickness there. Then it is lifted."""
    station.controller.set_work(z=thickness)
    station.place.raise_to(station.place.clearance)


def z_by_contact(station: Station) -> None:
    """Zero of z by contact where the bit stands; the clip is taken off afterwards."""
    _checked(station)
    zero_at_spot(station.place)
    clip_off(station.place)


def side_by_paper(station: Station, edge: Edge, thickness: float) -> None:
    """The bit's flank holds a slip of paper against an edge: x or y is known from that.

    Nothing moves: the person draws the bit off the edge.
    """
    at = edge.at - edge.sign * (edge.bit / 2.0 + thickness)
    station.controller.set_work(**{edge.axis: at})


def side_by_contact(station: Station, edge: Edge) -> float:
    """An edge of the copper by contact; the bit stands beside it, above the copper's height.

    Returns how far the edge was from where it was believed, mm.

    Raises
    ------
    MachineError
        z is not known, the circuit is not as it must be, or no edge is met within reach.
    """
    controller = station.controller
    _require_z(station, "touch off by contact")
    _checked(station)
    found = touch_edge(station.place, edge.axis, edge.sign, edge.bit)
    here = controller.place()["xy".index(edge.axis)]
    controller.set_work(**{edge.axis: here - found + edge.at})
    clip_off(station.place)
    return found - edge.at


def touch_rim(
    session: Session, station: Station, mark: Cut, expected: tuple[float, float], bit: float
) -> RimCentre:
    """A reference hole by contacts with its rim; kept as touched, with the uncertainty that it has.

    Parameters
    ----------
    mark : a hole in copper that the clip can reach, wider than the bit
    bit : its diameter, mm

    Raises
    ------
    MachineError
        Positions are not known, or the rim is not found as a circle.
    """
    centre = _rim(session, station, mark, expected, bit)
    sigma = max(TOUCH_SIGMA["rim"], centre.sigma)
    at = (float(mark.path[0][0]), float(mark.path[0][1]))
    keep_hole(session, mark.label, at, centre.centre, mark=is_mark(mark), way="rim", sigma=sigma)
    return centre


def zero_by_rim(
    session: Session, station: Station, mark: Cut, expected: tuple[float, float], bit: float
) -> RimCentre:
    """x and y set from the rim of a hole: its centre gets the coordinates where it is expected."""
    centre = _rim(session, station, mark, expected, bit)
    x, y, _ = station.controller.place()
    station.controller.set_work(x=x - centre.centre[0] + expected[0], y=y - centre.centre[1] + expected[1])
    return centre


def _rim(
    session: Session, station: Station, mark: Cut, expected: tuple[float, float], bit: float
) -> RimCentre:
    place = station.place
    _require_z(station, say("rim of hole {label}", label=mark.label))
    if {"x", "y"} <= station.controller.known:
        go_over(station, expected)
    place.ask(
        Request(
            RequestKind.JOG_TO,
            say("Over hole {label}", label=mark.label),
            say(
                "Bring the bit over the middle of hole {label}, about 1 mm above it. It is then "
                "let down into the hole and feels for its rim.",
                label=mark.label,
            ),
            place=expected,
        )
    )
    check_contact(place, net=mark.nets[0] if mark.nets else "", at=None if not mark.nets else expected)
    height = copper_height(session, station.controller.place()[:2])
    centre = find_rim(place, mark.diameter, bit, copper=height)
    place.raise_to(place.clearance)
    clip_off(place)
    return centre


def copper_height(session: Session, at: tuple[float, float]) -> float:
    """Height of the copper at a place, work z, mm: from the surface where there is one, else zero."""
    snap = session.snapshot
    try:
        surface = session.derived.surface(snap)
    except PlanError:
        return 0.0
    return 0.0 if surface is None else float(surface.mean(np.array([at]))[0])


def _require_z(station: Station, where: str) -> None:
    if "z" not in station.controller.known:
        raise MachineError(
            "The height of the bit is not known.",
            where,
            "Touch off Z first: the bit is let down by it.",
        )


def _checked(station: Station) -> None:
    if station.controller.clip is not Clip.ON:
        check_contact(station.place)


def usual_diameter(bit: object) -> float:
    """What a bit measures where it meets an edge half a millimetre down, mm; 0 where it is not known."""
    if isinstance(bit, VBit):
        return float(bit.width(0.5))
    return float(getattr(bit, "diameter", 0.0))
