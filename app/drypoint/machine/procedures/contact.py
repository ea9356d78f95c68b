"""The contact circuit of bit, copper and clip: checked before use, off before the spindle starts."""

from __future__ import annotations

from drypoint.errors import MachineError
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.state import Clip
from drypoint.wording import say

_TRIES = 3
"""How often the operator is asked again before giving up."""

CIRCUIT = "Contact circuit"
"""Title of the requests that check it."""

OPEN = "Bit in the air, clip off. The other wire sits on the still bit or its collet: bearings conduct badly."

SPINDLE_OFF = "The spindle must stand still and stay off while the clip is on."


def check_contact(place: Workplace, *, net: str = "", at: tuple[float, float] | None = None) -> None:
    """Prove that the input follows the circuit: open in the air, closed at the clip, open again.

    Leaves the clip on the copper, of ``net`` near ``at`` (work, mm) where given.

    Raises
    ------
    MachineError
        If the input does not change as it must.
    """
    place.controller.clip = Clip.ON  # from here on the spindle stays locked
    _expect(
        place,
        Request(
            RequestKind.CLIP_OFF,
            CIRCUIT,
            OPEN,
            (SPINDLE_OFF,),
        ),
        closed=False,
        advice="The input reads closed with the bit in the air: is it inverted, or the wire shorted?",
    )
    _expect(
        place,
        Request(RequestKind.CLIP_TO_BIT, CIRCUIT, "Hold the clip against the bit.", (SPINDLE_OFF,)),
        closed=True,
        advice="The input does not close: look at the wire, the plug and the clip.",
    )
    clip_on(place, net=net, at=at)


def clip_on(place: Workplace, *, net: str = "", at: tuple[float, float] | None = None) -> None:
    """Have the clip put on the copper; the bit is in the air, so the input must read open.

    Raises
    ------
    MachineError
        If it reads closed.
    """
    place.controller.clip = Clip.ON
    where = say("the copper of {net}", net=net) if net else "the copper outside the board's nets"
    _expect(
        place,
        Request(
            RequestKind.CLIP_ON,
            "Clip on the copper",
            say("Put the clip on {where}; the bit stays in the air.", where=where),
            (SPINDLE_OFF,),
            place=at,
            net=net,
        ),
        closed=False,
        advice="The input reads closed although the bit is in the air: does the clip touch the bit?",
    )


def clip_off(place: Workplace) -> None:
    """Have the clip taken off, and confirm that the input reads open; only then may the spindle start.

    Raises
    ------
    MachineError
        If the input still reads closed.
    """
    _expect(
        place,
        Request(RequestKind.CLIP_OFF, "Clip off", "Take the clip off the copper and lay it aside."),
        closed=False,
        advice="The input still reads closed: take the clip off, raise the bit.",
    )
    place.controller.clip = Clip.OFF


def _expect(place: Workplace, request: Request, *, closed: bool, advice: str) -> None:
    """Ask, then look; ask again if the input does not read as it must."""
    for attempt in range(_TRIES):
        place.ask(request)
        if place.controller.look().contact is closed:
            return
        place.note(f"contact input not as expected (try {attempt + 1}): {request.kind}")
    raise MachineError(advice, request.title, "No touch is made before this is right.")
