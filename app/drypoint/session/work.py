"""The order of work: which programs are run, with which bits, and what is done already."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import StrEnum

from shapely import Polygon, box

from drypoint.bits.model import EndMill
from drypoint.cuts.model import CutKind
from drypoint.errors import PlanError
from drypoint.machine.preset import MachinePreset, SpindleKind, load_presets
from drypoint.machine.sender import line_seconds
from drypoint.passes.model import Pass
from drypoint.program.limits import Clamp, extent, require_limits
from drypoint.program.model import Program
from drypoint.program.place import place, place_cuts
from drypoint.program.settings import HeightLike, Motion, ProgramSettings
from drypoint.progress import Progress
from drypoint.session.derive import Derived
from drypoint.session.plans import CarriedSurface, Placing
from drypoint.session.program_cuts import ready_programs
from drypoint.session.settings import MachineSettings, Settings
from drypoint.session.sides import sided, what_is_cut
from drypoint.session.snapshot import Snapshot
from drypoint.session.tooling import drilled_before
from drypoint.wording import say


class WorkKind(StrEnum):
    """What a piece of work is."""

    PATTERN = "test pattern"
    MARKS = "reference holes"
    GROOVES = "grooves"
    HOLES = "holes"
    READY = "ready-made program"
    OUTLINE = "outline"


@dataclass(frozen=True, slots=True, eq=False)
class WorkItem:
    """One program with what it needs and whether it was run.

    ``work`` is the planned pass where the item is one.
    """

    kind: WorkKind
    program: Program
    done: bool
    work: Pass | None = None


def preset_of(settings: Settings) -> MachinePreset:
    """The machine chosen, by name, with what was set otherwise.

    Raises
    ------
    PlanError
        If no preset has that name.
    """
    presets = load_presets()
    for preset in presets:
        if preset.name == settings.machine.preset:
            return _as_set(preset, settings.machine)
    names = ", ".join(preset.name for preset in presets)
    raise PlanError(
        say("There is no machine {preset!r}.", preset=settings.machine.preset),
        "Machine",
        say("Choose one of: {names}.", names=names),
    )


def _as_set(preset: MachinePreset, chosen: MachineSettings) -> MachinePreset:
    """A size class with what a person set otherwise."""
    spindle = preset.spindle
    if chosen.spindle_switched is not None and chosen.spindle_switched != (
        spindle is not SpindleKind.BY_HAND
    ):
        spindle = SpindleKind.ON_OFF if chosen.spindle_switched else SpindleKind.BY_HAND
    return replace(
        preset,
        travel=preset.travel if chosen.travel is None else chosen.travel,
        spindle=spindle,
        contact_input=preset.contact_input if chosen.contact is None else chosen.contact,
        homing=preset.homing if chosen.homing is None else chosen.homing,
    )


SPARE = 20.0
"""Travel that a machine has over the blank's size at least, mm: room to clamp and to find the corner."""


def fitting_preset(width: float, height: float) -> str:
    """The name of the smallest machine that holds a blank, with room to spare.

    Raises
    ------
    PlanError
        If none does.
    """
    presets = [one for one in load_presets() if one.spindle is SpindleKind.VARIABLE]
    for preset in sorted(presets, key=lambda one: one.travel[0] * one.travel[1]):
        if width + SPARE <= preset.travel[0] and height + SPARE <= preset.travel[1]:
            return preset.name
    raise PlanError(
        say(
            "No machine known here holds a blank of {width:.0f} × {height:.0f} mm.",
            width=width,
            height=height,
        ),
        "Machine",
        "Enter yours.",
    )


def require_room(settings: Settings, width: float, height: float) -> None:
    """Refuse a blank that the machine cannot reach all over.

    Raises
    ------
    PlanError
        Says how much is missing.
    """
    preset = preset_of(settings)
    if width > preset.travel[0] or height > preset.travel[1]:
        raise PlanError(
            say(
                "The blank is {width:.0f} × {height:.0f} mm; the machine moves {travel:.0f} × "
                "{travel2:.0f} mm.",
                width=width,
                height=height,
                travel=preset.travel[0],
                travel2=preset.travel[1],
            ),
            say("Machine: {name}", name=preset.name),
            "Choose a larger machine, a smaller blank, or turn the board.",
        )


PLAY_MATTERS = 0.005
"""Play of x or y from which holes and marks are reached from one side, mm."""
LEAST_TAKE_UP = 0.2
"""Holes and marks are reached from this far at least, mm."""


def take_up(settings: Settings) -> float:
    """From how far towards smaller x and y holes and marks are reached, mm; 0 where play does not matter."""
    machine = settings.machine
    play = max(machine.play)
    return max(LEAST_TAKE_UP, 3.0 * play) if machine.one_side and play >= PLAY_MATTERS else 0.0


MOST_TURN = math.radians(5.0)
"""Turned farther than this since it was touched, the board's height is not known well enough to stay low."""


def hole_settings(settings: Settings, surface: HeightLike | None) -> ProgramSettings:
    """What programs of marks, holes and the outline have in common: play is taken up one way."""
    shared = replace(program_settings(settings, preset_of(settings)), take_up=take_up(settings))
    turned = isinstance(surface, CarriedSurface) and surface.turn > MOST_TURN
    return replace(shared, hop=0.0) if turned else shared


def program_settings(settings: Settings, preset: MachinePreset) -> ProgramSettings:
    """What all programs of a job have in common."""
    motion = Motion(preset.max_rate, preset.acceleration, preset.junction_deviation)
    return ProgramSettings(
        clearance=settings.machine.clearance,
        hop=settings.machine.hop,
        obstacles=clamp_shapes(settings),
        spindle_delay=settings.machine.spindle_delay,
        spindle_control=preset.spindle is not SpindleKind.BY_HAND,
        approach_feed=min(300.0, preset.max_rate[2]),
        retract_feed=preset.max_rate[2],
        park=None,
        motion=motion,
    )


def run_seconds(program: Program) -> float:
    """Expected time of one program, s: its motion, or its bytes on the line where those are slower."""
    return max(program.seconds, line_seconds(program.lines))


def marks_work(derived: Derived, snap: Snapshot) -> tuple[WorkItem, ...]:
    """Reference holes: made before anything else, since everything later is found by them."""
    cuts, surface = derived.cuts(snap), derived.surface(snap)
    shared = hole_settings(snap.settings, surface)
    programs = place_cuts(cuts.marks, derived.fit(snap), surface, shared, first=1)
    named = [sided(snap, one) for one in programs]
    return tuple(WorkItem(WorkKind.MARKS, one, is_done(snap, one.name)) for one in named)


def pass_work(derived: Derived, snap: Snapshot, progress: Progress | None = None) -> WorkItem | None:
    """The next pass over grooves; None where none is needed any more."""
    plan = derived.passes(snap, progress)
    return None if plan.next is None else _placed(plan.next, derived, snap, progress)


def passes_work(derived: Derived, snap: Snapshot, progress: Progress | None = None) -> tuple[WorkItem, ...]:
    """All passes that are planned already: the next, and after the wide bit's that of the fine one."""
    plan = derived.passes(snap, progress)
    known = [one for one in (plan.next, plan.then) if one is not None]
    return tuple(_placed(one, derived, snap, progress) for one in known)


def _placed(work: Pass, derived: Derived, snap: Snapshot, progress: Progress | None) -> WorkItem:
    shared = program_settings(snap.settings, preset_of(snap.settings))
    surface = derived.surface(snap)
    first = 10 + work.number
    (program,) = place([work], derived.fit(snap), surface, settings=shared, first=first, progress=progress)
    return WorkItem(WorkKind.GROOVES, sided(snap, program), done=False, work=work)


def waits_for_other_side(snap: Snapshot) -> bool:
    """Whether both sides are to be milled and the board was not turned over yet: it is not cut out before."""
    return snap.settings.board.both and snap.face() is snap.face(1)


TOOLING = 51
"""Number of the program of tooling holes that were asked for once the others had been drilled."""


def later_work(derived: Derived, snap: Snapshot, placing: Placing | None = None) -> tuple[WorkItem, ...]:
    """Holes bit by bit and slots, ready-made programs, the outline; of those, what cuts out comes last.

    ``placing`` is board frame to work coordinates where the board is expected, its height not known; by
    the present fit if not given.
    """
    cuts = derived.cuts(snap)
    fit, surface = (derived.fit(snap), derived.surface(snap)) if placing is None else (placing, None)
    shared = hole_settings(snap.settings, surface)
    apart = drilled_before(snap, cuts.tooling)
    wanted = (*cuts.holes, *(() if apart else cuts.tooling), *cuts.outline)
    items: list[WorkItem] = []
    last: list[WorkItem] = []
    if apart:
        for program in place_cuts(cuts.tooling, fit, surface, shared, first=TOOLING):
            done = is_done(snap, program.name, through=True)
            items.append(WorkItem(WorkKind.HOLES, sided(snap, program), done))
    for program in place_cuts(wanted, fit, surface, shared, first=31):
        tags = {int(tag) for tag in program.moves.tag if tag >= 0}
        outline = any(wanted[tag].kind is CutKind.OUTLINE for tag in tags)
        kind = WorkKind.OUTLINE if outline else WorkKind.HOLES
        done = is_done(snap, program.name, through=True)
        if outline and waits_for_other_side(snap):
            continue
        (last if outline else items).append(WorkItem(kind, sided(snap, program), done))
    chosen, copies = snap.settings.imported, derived.copy_moves(snap)
    for program in ready_programs(derived.ready(snap), copies, fit, surface, shared, chosen, first=61):
        milled, named = isinstance(program.bit, EndMill) and not cuts.outline, sided(snap, program)
        (last if milled else items).append(WorkItem(WorkKind.READY, named, is_done(snap, named.name)))
    return (*items, *last)


def all_work(derived: Derived, snap: Snapshot, progress: Progress | None = None) -> tuple[WorkItem, ...]:
    """Everything still to run and everything that was, in order; grooves only once the surface is known."""
    items = list(marks_work(derived, snap))
    if snap.records["touches"]:
        items += passes_work(derived, snap, progress)
    return (*items, *later_work(derived, snap))


def is_done(snap: Snapshot, name: str, *, through: bool = False) -> bool:
    """Whether a program of this name was run to its end on the side being milled.

    ``through`` cuts count whichever side they were made from, and in whatever order of bits.
    """
    if through:
        return any(what_is_cut(one.data["program"]) == what_is_cut(name) for one in snap.records["done"])
    return any(
        record.data["program"] == name and snap.face(record.data.get("setup", 1)) is snap.settings.board.side
        for record in snap.records["done"]
    )


def clamp_shapes(settings: Settings) -> tuple[Polygon, ...]:
    """The clamps as seen from above, work coordinates, mm."""
    return tuple(box(one.x, one.y, one.x + one.width, one.y + one.height) for one in settings.blank.clamps)


CLAMP_HEIGHT = 12.0
"""How high a clamp is taken to stand above the copper, mm (common practice, no source)."""


def require_reach(settings: Settings, program: Program) -> None:
    """Refuse a placed program that is larger than the machine's travel or meets a clamp.

    Raises
    ------
    PlanError
        Says where.
    """
    preset = preset_of(settings)
    low, high = extent(program)
    for axis, letter in enumerate("XYZ"):
        size = float(high[axis] - low[axis])
        if size > preset.travel[axis]:
            raise PlanError(
                say(
                    "The program needs {size:.1f} mm of {letter}; the machine moves {travel:.0f} mm.",
                    size=size,
                    letter=letter,
                    travel=preset.travel[axis],
                ),
                program.title,
                "Choose a larger machine, or turn the board on the bed.",
            )
    clamps = [
        Clamp(shape, CLAMP_HEIGHT, f"clamp {number}")
        for number, shape in enumerate(clamp_shapes(settings), 1)
    ]
    require_limits([program], None, clamps)
