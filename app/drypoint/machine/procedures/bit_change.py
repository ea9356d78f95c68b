"""Change of bit: raise, stop, ask, and a new zero at the same spot. Spindles that only a hand can switch."""

from __future__ import annotations

from drypoint.bits.model import Bit
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.preset import SpindleKind
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.touching import zero_at_spot, zero_by_paper
from drypoint.machine.procedures.workplace import Workplace
from drypoint.wording import say

CHANGE = ("The spindle must stand still.", "Bits are sharp; wear gloves or use a holder.")
START = ("Eyes protected, no loose sleeves or hair near the spindle.", "The power switch within reach.")


def change_bit(
    place: Workplace,
    bit: Bit,
    *,
    spot: tuple[float, float],
    park: tuple[float, float] | None = None,
    by_paper: bool = False,
) -> float:
    """Raise, stop the spindle, have the bit changed, set a new zero of z at ``spot`` (work, mm).

    Parameters
    ----------
    park : (x, y), optional
        Where the bit is changed, work coordinates, mm.
    by_paper : bool
        Zero with paper, where there is no contact input.

    Returns how much longer the new bit reaches down than the old one did, mm (negative: shorter).
    Leaves the clip confirmed off.
    """
    put_in(place, bit, park=park)
    if {"x", "y"} <= place.controller.known:
        place.controller.move((*spot, None))
    place.ask(
        Request(
            RequestKind.JOG_TO,
            "Over the zero spot",
            "Bring the bit a few millimetres above the copper at the zero spot.",
            place=spot,
        )
    )
    if by_paper or not place.preset.contact_input:
        before = place.controller.place()[2]
        zero_by_paper(place)
        return before - place.controller.place()[2]
    check_contact(place, at=spot)
    longer = zero_at_spot(place)
    clip_off(place)
    return longer


def put_in(place: Workplace, bit: Bit, *, park: tuple[float, float] | None = None) -> None:
    """Raise, stop the spindle and have the bit put in; the zero of z is not known then."""
    change_height = max(place.clearance * 5.0, 10.0)
    if "z" in place.controller.known:
        place.raise_to(change_height)
    else:
        place.ask(
            Request(RequestKind.JOG_TO, "Raise the bit", "Bring the bit well clear of board and clamps.")
        )
    stop_spindle(place)
    if park is not None and {"x", "y"} <= place.controller.known:
        place.controller.move((*park, None))
    place.ask(Request(RequestKind.CHANGE_BIT, say("Put in {name}", name=bit.name), "", CHANGE, bit=bit))
    place.controller.doubt("z")


def start_spindle(place: Workplace, bit: Bit) -> None:
    """Start a spindle that is switched by hand; others are started by the program's own lines.

    Raises
    ------
    MachineError
        If the clip is not confirmed off or the contact input reads closed.
    """
    place.controller.require_clear()
    if place.preset.spindle is SpindleKind.BY_HAND:
        place.ask(
            Request(
                RequestKind.SPINDLE_ON,
                "Spindle on",
                say(
                    "Switch the spindle on, about {spindle:.0f} 1/min; wait until it is up to speed.",
                    spindle=bit.speeds.spindle,
                ),
                START,
                bit=bit,
            )
        )


def stop_spindle(place: Workplace) -> None:
    """Switch the spindle output off; have a spindle that only a hand can switch stopped."""
    place.controller.command("M5")
    spindle_still_on(place)


def spindle_still_on(place: Workplace) -> None:
    """Have a spindle that only a hand can switch stopped; a reset does not do it."""
    if place.preset.spindle is SpindleKind.BY_HAND:
        place.ask(Request(RequestKind.SPINDLE_OFF, "Spindle off", "Switch the spindle off; let it run out."))
