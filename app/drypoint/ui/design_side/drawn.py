"""Grooves and passes as the canvas draws them. Nothing here knows Qt: it is done where plans are computed."""

from __future__ import annotations

from dataclasses import dataclass

from drypoint.program.place import place
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.session.derive import Derived
from drypoint.session.net_reach import NetReach, net_reaches
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bits import flat
from drypoint.session.work import preset_of, program_settings, run_seconds
from drypoint.ui.canvas.pass_drawing import ReachDrawing, draw_pass, draw_reach
from drypoint.ui.canvas.paths import PathSet, path_set
from drypoint.ui.design_side.order import Order, order_of_programs


@dataclass(frozen=True, slots=True, eq=False)
class GroovePaths:
    """The grooves as they are planned; ``seconds`` is the time of one pass over them.

    ``wide`` are those that the wide bit cuts; None without one.
    """

    all: PathSet
    wide: PathSet | None
    seconds: float


def draw_grooves(derived: Derived, snap: Snapshot, progress: Progress) -> GroovePaths:
    """The grooves at their nominal depth.

    Raises
    ------
    PlanError
        If they cannot be laid.
    """
    grooves = derived.cuts(snap, progress).grooves
    names = [", ".join(nets) for nets in grooves.line_nets]
    shared = program_settings(snap.settings, preset_of(snap.settings))
    passes = flat(grooves, snap.settings)
    seconds = sum(map(run_seconds, place(passes, derived.layout(snap).place, None, settings=shared)))
    count = grooves.wide
    wide = path_set(grooves.lines[:count], labels=names[:count]) if count else None
    return GroovePaths(path_set(grooves.lines, labels=names), wide, seconds)


@dataclass(frozen=True, slots=True, eq=False)
class PassPaths:
    """Passes done, the next one with its order, what they reach, and that by net."""

    earlier: tuple[PathSet, ...]
    current: PathSet | None
    reach: ReachDrawing
    order: Order | None
    nets: tuple[NetReach, ...]


def draw_passes(derived: Derived, snap: Snapshot, progress: Progress) -> PassPaths:
    """The passes as they are planned.

    Raises
    ------
    PlanError
        If the next one cannot be placed.
    """
    plan = derived.passes(snap, progress.part(0.0, 0.2))
    names = derived.cuts(snap).grooves.line_nets
    current = order = None
    if plan.next is not None:
        current = draw_pass(plan.next, names)
        shared = program_settings(snap.settings, preset_of(snap.settings))
        fit = derived.fit(snap)
        programs = place([plan.next], fit, derived.surface(snap), settings=shared)
        order = order_of_programs(programs, fit.rigid if isinstance(fit, Fit) else fit, shared)
    progress.step(0.8)
    reach = plan.reach if plan.done else plan.expected
    earlier = tuple(draw_pass(one, names) for one in plan.done)
    nets = net_reaches(reach, names, plan.by_net)
    return PassPaths(earlier, current, draw_reach(reach, names), order, nets)
