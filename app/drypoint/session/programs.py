"""All programs of a job in the order of work; those of the second side where the board is expected then."""

from __future__ import annotations

from dataclasses import replace

from drypoint.board.model import Side
from drypoint.job.store import Record
from drypoint.program.model import Program
from drypoint.program.place import place
from drypoint.progress import Progress
from drypoint.session.derive import Derived
from drypoint.session.plans import CarriedSurface, Placing
from drypoint.session.session import Session
from drypoint.session.sides import sided, what_is_cut
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bits import flat
from drypoint.session.two_sides import carried, seen_from
from drypoint.session.work import (
    WorkItem,
    WorkKind,
    later_work,
    marks_work,
    passes_work,
    preset_of,
    program_settings,
    waits_for_other_side,
)

AXIS = "y"
"""The board is expected to be turned left over right."""


def programs(session: Session, progress: Progress | None = None) -> tuple[Program, ...]:
    """All programs of a job in order; grooves at the nominal depth while the copper is not touched.

    Where both sides are milled and the first is up, those of the second follow, placed where the board
    will lie if it is turned left over right into the same corner. Once it was turned, only what is left.
    """
    told = progress or Progress()
    snap, derived = session.snapshot, session.derived
    items: list[WorkItem] = list(marks_work(derived, snap))
    surface = derived.surface(snap, told)
    if isinstance(surface, CarriedSurface) and snap.records["pass"]:
        pass  # moved after the grooves were cut: only holes and outline are left
    elif surface is not None:
        items += passes_work(derived, snap, told)
    else:
        items += _flat_grooves(derived, snap, derived.fit(snap))
    later = later_work(derived, snap)
    turned = snap.settings.board.both and not waits_for_other_side(snap)
    items += [item for item in later if not (turned and item.done)]
    if waits_for_other_side(snap):
        items += second_side_work(derived, snap)
    return tuple(item.program for item in items)


def second_side_work(derived: Derived, snap: Snapshot) -> tuple[WorkItem, ...]:
    """Grooves and outline of the side that looks down, as the board is expected to lie once turned over.

    To about a millimetre, as well as hands turn it: to be made anew once it was found by its holes.
    """
    over = as_turned(snap)
    layout = derived.layout(snap)
    placing = carried(derived.fit_of(over, snap.setup), over, snap.setup, layout)
    before = {what_is_cut(item.program.name) for item in later_work(derived, snap)}
    later = later_work(derived, over, placing)
    left = [item for item in later if what_is_cut(item.program.name) not in before]
    return (*_flat_grooves(derived, over, placing), *left)


def as_turned(snap: Snapshot) -> Snapshot:
    """The same job as if the board had been turned over, left over right, and nothing found since."""
    up: Side = snap.face().other
    turn = Record(-1, "", "setup", {"note": "", "turned": AXIS, "face": up.value})
    records = {**snap.records, "setup": (*snap.records["setup"], turn)}
    return seen_from(replace(snap, records=records), up)


def _flat_grooves(derived: Derived, snap: Snapshot, placing: Placing) -> tuple[WorkItem, ...]:
    """The first pass of every bit at its nominal depth over flat copper; none where nothing is grooved."""
    if not derived.cuts(snap).grooves.lines:
        return ()
    shared = program_settings(snap.settings, preset_of(snap.settings))
    passes = flat(derived.cuts(snap).grooves, snap.settings)
    placed = place(passes, placing, None, settings=shared, first=11)
    return tuple(
        WorkItem(WorkKind.GROOVES, sided(snap, program), done=False, work=work)
        for program, work in zip(placed, passes, strict=True)
    )
