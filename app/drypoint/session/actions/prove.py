"""Proof by touch: which neighbouring nets are apart, which are joined, which nobody has asked yet."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import shapely
from shapely import Geometry, Point, unary_union

from drypoint.errors import PlanError
from drypoint.machine.islands_plan import (
    OUTER,
    Neighbours,
    Proof,
    Sighting,
    Spot,
    conclude,
    lines_between,
    neighbours,
    next_clip,
    spots,
    standing_copper,
)
from drypoint.machine.procedures.proof import island_touch
from drypoint.progress import Progress
from drypoint.session.plans import touch_region
from drypoint.session.session import Session
from drypoint.session.station import Station

REACH = 1.0
"""Pieces of copper farther apart than this are no neighbours, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class ProofPlan:
    """What could be joined, and where each piece of copper can be touched."""

    pairs: tuple[Neighbours, ...]
    places: dict[str, Spot]


def plan_proof(session: Session) -> ProofPlan:
    """Neighbouring pieces of copper and where to touch them."""
    snap = session.snapshot
    board, cuts, layout = (
        session.derived.board(snap),
        session.derived.cuts(snap),
        session.derived.layout(snap),
    )
    swept = unary_union([shapely.LineString(line).buffer(cuts.width / 2) for line in cuts.grooves.lines])
    copper = standing_copper(board.nets, swept, layout.blank)
    holes = unary_union([Point(hole.x, hole.y).buffer(hole.diameter / 2 + 0.1) for hole in board.holes])
    within = _known_ground(session)
    return ProofPlan(neighbours(copper, REACH), spots(copper, holes, within=within))


def _known_ground(session: Session) -> Geometry:
    snap = session.snapshot
    return touch_region(session.derived.board(snap), session.derived.layout(snap))


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
    snap = session.snapshot
    plan = plan_proof(session)
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
        sightings += island_touch(station.place, step, fit, height, progress=part)
        proof = conclude(plan.pairs, sightings)
    keep_proof(session, proof, sightings)
    return proof


def seen_before(session: Session) -> tuple[Sighting, ...]:
    """What was touched since the last pass was run; a pass makes it void."""
    snap = session.snapshot
    record, last = snap.latest("island touch"), snap.latest("pass")
    if record is None or (last is not None and last.id > record.id):
        return ()
    return tuple(Sighting(clip, net, bool(contact)) for clip, net, contact in record.data["sightings"])


def cut_again(session: Session, nets: tuple[str, str], at: tuple[float, float]) -> None:
    """Have the ground between two pieces of copper cut again in the next pass, as if found joined.

    Raises
    ------
    PlanError
        If no groove runs between them.
    """
    snap = session.snapshot
    cuts = session.derived.cuts(snap)
    if not lines_between(Neighbours(nets, 0.0, at), cuts.grooves.line_nets):
        raise PlanError("No groove runs between these pieces.", " and ".join(nets), "Look at the cuts.")
    record = snap.latest("island touch") if seen_before(session) else None
    data: dict[str, Any] = {"setup": snap.setup, "proved": [], "joined": [], "unproved": []}
    data |= {"sightings": [], "again": []} if record is None else record.data
    pair = {"nets": list(nets), "at": list(at), "gap": 0.0}
    session.keep("island touch", {**data, "joined": [*data["joined"], pair]})


def keep_proof(session: Session, proof: Proof, sightings: list[Sighting]) -> None:
    """Keep the outcome: pairs proved, joined and unproved, and the grooves to cut again."""
    snap = session.snapshot
    cuts = session.derived.cuts(snap)
    again = sorted({line for pair in proof.joined for line in lines_between(pair, cuts.grooves.line_nets)})
    session.keep(
        "island touch",
        {
            "setup": snap.setup,
            "proved": [list(pair.nets) for pair in proof.proved],
            "joined": [
                {"nets": list(pair.nets), "at": list(pair.at), "gap": pair.gap} for pair in proof.joined
            ],
            "unproved": [list(pair.nets) for pair in proof.unproved],
            "sightings": [[one.clip, one.net, one.contact] for one in sightings],
            "again": again,
        },
    )


__all__ = ["OUTER", "ProofPlan", "keep_proof", "plan_proof", "prove"]
