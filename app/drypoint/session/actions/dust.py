"""The pause for dust: what a cut leaves in the grooves joins nets and lifts the next bit."""

from __future__ import annotations

from drypoint.machine.operator import Request, RequestKind
from drypoint.session.session import Session
from drypoint.session.snapshot import Snapshot
from drypoint.session.station import Station

CLEAR = 5.0
"""Times the clearance that the bit is raised, so that a nozzle gets at the board."""
CAUTIONS = (
    "Dust of glass-fibre laminate irritates skin, eyes and airways: suck it off or take it up damp, never "
    "blow it about. A fine-dust mask and eye protection help; nobody without them stays near.",
    "The spindle must stand still. The board stays clamped: do not lean on it.",
    "Follow the manuals of machine and material, local rules and qualified practice.",
)
DUSTY = ("groove", "clearing")
"""Words in the names of programs that leave their dust in grooves."""


def dust_lies(snap: Snapshot) -> bool:
    """Whether grooves were cut since the dust was last removed."""
    done, cleaned = snap.latest("done"), snap.latest("dust")
    if done is None or not any(word in str(done.data["program"]) for word in DUSTY):
        return False
    return cleaned is None or cleaned.id < done.id


def remove_dust(session: Session, station: Station) -> None:
    """Have the dust of the last cut removed, once, if it is wanted and any lies there.

    Raises
    ------
    Declined
        If the person does.
    """
    if not session.settings.cuts.dust_pause or not dust_lies(session.snapshot):
        return
    place = station.place
    if "z" in place.controller.known:
        place.raise_to(place.clearance * CLEAR)
    text = "Dust in the grooves joins nets and lifts the bit: clean the board before it goes on."
    place.ask(Request(RequestKind.REMOVE_DUST, "Remove the dust", text, CAUTIONS))
    session.keep("dust", {"setup": session.snapshot.setup})
