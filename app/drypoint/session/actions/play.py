"""The play of the axes: measured with guidance, kept with the machine, and what follows from it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from drypoint.cuts.model import Cut
from drypoint.errors import MachineError
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.play import Contacts, GaugeReadings, play_by_contact, play_by_gauge
from drypoint.machine.procedures.sideways import BELOW, go_down
from drypoint.progress import Progress
from drypoint.session.actions.find import go_over
from drypoint.session.actions.touch_off import copper_height
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.wording import say


@dataclass(frozen=True, slots=True)
class PlayFound:
    """Play of one axis.

    Attributes
    ----------
    axis : "x", "y" or "z"
    way : "contact" or "gauge"
    value : mm; ``sigma`` its standard uncertainty
    repeatability : four standard deviations of one reading from one side, mm (ISO 230-2)
    """

    axis: str
    way: str
    value: float
    sigma: float
    repeatability: float
    cycles: int

    @property
    def matters(self) -> bool:
        """Whether it is told apart from none (beyond two standard uncertainties)."""
        return self.value > 2.0 * self.sigma


def by_contact(
    session: Session,
    station: Station,
    axis: str,
    *,
    hole: Cut | None = None,
    expected: tuple[float, float] | None = None,
    sign: int = 1,
    progress: Progress | None = None,
) -> PlayFound:
    """Contact made and broken on one wall: of a hole, or for z on the copper.

    Parameters
    ----------
    hole : a hole in copper that the clip reaches, wider than the bit; not for z
    expected : where it is, or where the copper is to be met, work coordinates, mm

    Raises
    ------
    MachineError
        z is not known, or the contact is not made, not broken or not steady.
    """
    place = station.place
    if "z" not in station.controller.known:
        raise MachineError(
            "The height of the bit is not known.", say("play of {axis}", axis=axis), "Touch off Z first."
        )
    if expected is not None and {"x", "y"} <= station.controller.known:
        go_over(station, expected)
    place.ask(_bring(axis, hole, expected))
    nets = () if hole is None else hole.nets
    check_contact(place, net=nets[0] if nets else "", at=expected if nets else None)
    height = copper_height(session, station.controller.place()[:2])
    if axis != "z":
        go_down(place, height - BELOW)
    try:
        found = play_by_contact(place, axis, sign, progress=progress)
    finally:
        place.raise_to(place.clearance)
    clip_off(place)
    return _keep_contacts(session, found)


def _bring(axis: str, hole: Cut | None, expected: tuple[float, float] | None) -> Request:
    if axis == "z":
        return Request(
            RequestKind.JOG_TO,
            "Over the copper",
            "Bring the bit over clean copper, about 1 mm above it.",
            place=expected,
        )
    if hole is None:
        return Request(
            RequestKind.JOG_TO,
            say("Beside a wall of copper, {upper}", upper=axis.upper()),
            say(
                "Bring the bit beside an edge of the copper that lies towards larger {upper}, "
                "less than 2 mm off it and about 1 mm above the copper's height. Use a drill or "
                "an end mill.",
                upper=axis.upper(),
            ),
        )
    return Request(
        RequestKind.JOG_TO,
        say("Over hole {label}", label=hole.label),
        say(
            "Bring the bit over the middle of hole {label}, about 1 mm above it; it is then "
            "let down into the hole and touches its wall. Use a drill that is thinner than "
            "the hole.",
            label=hole.label,
        ),
        place=expected,
    )


def by_gauge(
    session: Session,
    station: Station,
    axis: str,
    *,
    span: float = 0.0,
    count: int = 1,
    progress: Progress | None = None,
) -> PlayFound:
    """A dial gauge against the head, read at targets come to from both sides."""
    station.place.ask(
        Request(
            RequestKind.CONFIRM,
            say("Dial gauge along {upper}", upper=axis.upper()),
            say(
                "Set the gauge's foot on the bed and its tip against the head, along {upper}, "
                "free for {free:.1f} mm either way. The axis moves by itself between readings.",
                upper=axis.upper(),
                free=span + 1.5,
            ),
            ("Spindle off. Keep hands off the head while it moves.",),
        )
    )
    readings = play_by_gauge(station.place, axis, span=span, count=count, progress=progress)
    return _keep_readings(session, readings)


def _keep_contacts(session: Session, found: Contacts) -> PlayFound:
    play = found.play
    told = PlayFound(found.axis, "contact", play.value, play.sigma, play.repeatability, play.cycles)
    _keep(session, told, {"made": found.made, "broke": found.broke})
    return told


def _keep_readings(session: Session, found: GaugeReadings) -> PlayFound:
    report = found.report
    cycles = len(found.up[0])
    one_side = max(report.repeatability_up, report.repeatability_down)
    sigma = one_side / 4.0 * (2.0 / cycles) ** 0.5
    told = PlayFound(found.axis, "gauge", report.reversal, sigma, one_side, cycles)
    _keep(session, told, {"targets": found.targets, "up": found.up, "down": found.down})
    return told


def _keep(session: Session, found: PlayFound, readings: dict[str, Sequence[object]]) -> None:
    session.keep(
        "play",
        {
            "axis": found.axis,
            "way": found.way,
            "value": found.value,
            "sigma": found.sigma,
            "repeatability": found.repeatability,
            "cycles": found.cycles,
            **{name: [list(v) if isinstance(v, tuple) else v for v in row] for name, row in readings.items()},
        },
    )


def newest(session: Session) -> dict[str, PlayFound]:
    """The newest measurement of each axis."""
    names = ("axis", "way", "value", "sigma", "repeatability", "cycles")
    return {
        record.data["axis"]: PlayFound(*(record.data[name] for name in names))
        for record in session.snapshot.records["play"]
    }


def use(session: Session, found: PlayFound) -> None:
    """Keep a measured play with the machine's settings; z is left, since contacts do not show it all."""
    if found.axis == "z":
        return
    play = list(session.settings.machine.play)
    play["xy".index(found.axis)] = round(max(0.0, found.value), 4)
    machine = replace(session.settings.machine, play=(play[0], play[1]))
    session.change(f"Play of {found.axis.upper()} as measured", machine=machine)
