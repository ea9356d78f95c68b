"""Proof by touch: which neighbouring nets are apart, which are joined, which nobody has asked yet."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

from shapely import Geometry, Point, unary_union

from drypoint.errors import PlanError
from drypoint.machine.islands_plan import (
    OUTER,
    Neighbours,
    Proof,
    Sighting,
    Spot,
    conclude,
    neighbours,
    next_clip,
    onward,
    spots,
)
from drypoint.machine.procedures.proof import island_touch
from drypoint.progress import Progress
from drypoint.session.actions.dust import remove_dust
from drypoint.session.islands import KIND, as_cut, lines_beside, touched_since_pass
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.surface.model import Surface

REACH = 1.0
"""Pieces of copper farther apart than this are no neighbours, mm."""
CLEARED = 10.0
"""The same where copper between them was taken away, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class ProofPlan:
    """What could be joined, and where each piece of copper can be touched."""

    pairs: tuple[Neighbours, ...]
    places: dict[str, Spot]


def plan_proof(session: Session, progress: Progress | None = None) -> ProofPlan:
    """Neighbouring pieces of copper, those most to be feared joined first, and where to touch them."""
    told = progress or Progress()
    snap = session.snapshot
    board = session.derived.board(snap)
    copper = session.derived.standing(snap)
    holes = unary_union([Point(hole.x, hole.y).buffer(hole.diameter / 2 + 0.1) for hole in board.holes])
    within = session.derived.touchable(snap)
    told.look()
    near = neighbours(copper, _reach(session))
    told.look()
    pairs = _as_cut(session, near, copper)
    told.look()
    return ProofPlan(pairs, spots(copper, holes, within=within))


def _reach(session: Session) -> float:
    """How far apart pieces of copper may lie with nothing but cuts between them, mm."""
    cuts = session.derived.cuts(session.snapshot)
    if cuts.grooves.fill:
        return CLEARED
    return max(REACH, 1.25 * float(cuts.top.max(initial=0.0)))


def _as_cut(
    session: Session, pairs: tuple[Neighbours, ...], copper: Mapping[str, Geometry]
) -> tuple[Neighbours, ...]:
    """The pairs with gap and doubt as the passes done have left them; as planned where none was run."""
    snap = session.snapshot
    try:
        plan, surface = session.derived.passes(snap), session.derived.surface(snap)
    except PlanError:  # not touched, or moved since: only the plan is known
        return pairs
    if not plan.done or not isinstance(surface, Surface):
        return pairs
    settings = snap.settings
    under = settings.bits.vbit.slope * settings.blank.copper
    cuts = session.derived.cuts(snap)
    return as_cut(pairs, copper, cuts, plan.reach, under, surface.ripple_length)


def prove(
    session: Session, station: Station, progress: Progress, *, clips: int = 1, afresh: bool = False
) -> Proof:
    """Touch with the clip at up to ``clips`` places, keep what was seen, say what follows.

    It goes on from what was touched since the last pass, unless ``afresh``.

    Raises
    ------
    MachineError
        If the clipped copper itself shows no contact.
    """
    remove_dust(session, station)
    snap = session.snapshot
    plan = plan_proof(session, progress)
    fit, surface = session.derived.fit(snap), session.derived.surface(snap)
    sightings = [] if afresh else list(seen_before(session))
    proof = conclude(plan.pairs, sightings)

    def height(x: float, y: float) -> float:
        return 0.0 if surface is None else float(surface.mean([(x, y)])[0])

    for number in range(clips):
        step = next_clip(plan.pairs, proof, plan.places)
        if step is None:
            break
        part = progress.part(number / clips, (number + 1) / clips)
        sightings += island_touch(
            station.place,
            step,
            fit,
            height,
            hop=station.place.touch.low if isinstance(surface, Surface) else None,
            onward=partial(_onward, plan, step.clip, sightings),
            progress=part,
        )
        proof = conclude(plan.pairs, sightings)
        keep_proof(session, proof, sightings)  # what a fault in the next step must not take away
    return proof


def _onward(
    plan: ProofPlan, clip: Spot, before: Sequence[Sighting], found: Sequence[Sighting]
) -> tuple[Spot, ...]:
    return onward(clip.net, plan.pairs, (*before, *found), plan.places)


def seen_before(session: Session) -> tuple[Sighting, ...]:
    """What was touched since the last pass was run; a pass makes it void."""
    record = touched_since_pass(session.snapshot)
    if record is None:
        return ()
    return tuple(Sighting(clip, net, bool(contact)) for clip, net, contact in record.data["sightings"])


def asked_again(session: Session) -> tuple[tuple[str, str], ...]:
    """Pairs between which a person wants another cut in the next pass."""
    record = touched_since_pass(session.snapshot)
    if record is None:
        return ()
    return tuple((str(a), str(b)) for a, b in record.data.get("asked", ()))


def cut_again(session: Session, nets: tuple[str, str], at: tuple[float, float]) -> None:
    """Have the ground between two pieces of copper cut again in the next pass, as if found joined.

    Raises
    ------
    PlanError
        If no groove runs between them.
    """
    snap = session.snapshot
    cuts = session.derived.cuts(snap)
    if not lines_beside(nets, cuts):
        raise PlanError("No groove runs between these pieces.", " and ".join(nets), "Look at the cuts.")
    record = touched_since_pass(snap)
    data: dict[str, Any] = {"setup": snap.setup, "proved": [], "joined": [], "unproved": []}
    data |= {"sightings": [], "again": [], "asked": []} if record is None else record.data
    asked = [*data.get("asked", ()), list(nets)]
    session.keep(KIND, {**data, "asked": asked})


def keep_proof(session: Session, proof: Proof, sightings: list[Sighting]) -> None:
    """Keep the outcome: pairs proved, joined and unproved, and the grooves to cut again."""
    snap = session.snapshot
    cuts = session.derived.cuts(snap)
    again = sorted({line for pair in proof.joined for line in lines_beside(pair.nets, cuts)})
    before = touched_since_pass(snap)
    asked = [] if before is None else before.data.get("asked", [])
    session.keep(
        KIND,
        {
            "setup": snap.setup,
            "proved": [list(pair.nets) for pair in proof.proved],
            "joined": [
                {"nets": list(pair.nets), "at": list(pair.at), "gap": pair.gap} for pair in proof.joined
            ],
            "unproved": [list(pair.nets) for pair in proof.unproved],
            "asked": asked,
            "sightings": [[one.clip, one.net, one.contact] for one in sightings],
            "again": again,
        },
    )


__all__ = ["OUTER", "ProofPlan", "keep_proof", "plan_proof", "prove"]
