"""Everything a machine that runs from a card needs, and the sheet that lies beside it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path

from drypoint.bits.wear import Wear
from drypoint.board.model import Board
from drypoint.errors import PlanError, StoreError
from drypoint.geometry.rigid import Rigid
from drypoint.job.store import Record
from drypoint.program.check import check_lines
from drypoint.program.export import file_name, file_text
from drypoint.program.laser import LaserProgram
from drypoint.program.model import Program
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.session.derive import Derived
from drypoint.session.facts import sentence
from drypoint.session.laser_safety import cautions
from drypoint.session.legend import legend_up
from drypoint.session.legend_export import exported_legend, legend_notes, legend_text
from drypoint.session.pictures import Wide, board_picture, cuts_picture, reach_picture, surface_picture
from drypoint.session.plans import CutPlan, Placing
from drypoint.session.programs import as_turned, programs
from drypoint.session.session import Session
from drypoint.session.sheet import SheetFacts, WorkStep, clock, setup_sheet
from drypoint.session.sheet_sides import (
    expected_only,
    nets_and_holes,
    sides_milled,
    the_turn,
    with_turn,
)
from drypoint.session.sides import of_second_side
from drypoint.session.snapshot import Snapshot
from drypoint.session.speeds import speed_findings
from drypoint.session.surface_rows import surface_rows
from drypoint.session.svg import Speak
from drypoint.session.whole_file import write_whole
from drypoint.session.work import require_reach, run_seconds, waits_for_other_side
from drypoint.wording import say, strung


@dataclass(frozen=True, slots=True)
class Written:
    """One file that was written."""

    path: str
    bit: str
    pass_number: int
    lines: int
    seconds: float
    """Expected, s."""


def export(
    session: Session,
    folder: Path,
    progress: Progress | None = None,
    made: Sequence[Program] | None = None,
    wear: Wear | None = None,
    speak: Speak = str,
) -> tuple[Written, ...]:
    """Write programs, pictures and the setup sheet into a folder.

    ``made`` are programs at hand, such as those of a rehearsal; else all that are still to run. ``wear`` is
    what the bits have done so far; ``speak`` says sheet and pictures in the language of the reader.

    Raises
    ------
    StoreError
        If the folder cannot be written.
    PlanError
        If a program would be unsafe.
    """
    told = progress or Progress()
    made = programs(session, told.part(0.0, 0.7)) if made is None else made
    clearance = session.settings.machine.clearance
    for program in made:
        check_lines(program.lines, clearance)
        require_reach(session.settings, program)
    try:
        folder.mkdir(parents=True, exist_ok=True)
        written = [_write_program(folder, program, session) for program in made]
        legend = exported_legend(session.derived, session.snapshot, told.part(0.7, 0.8))
        written += _write_legend(folder, legend, session)
        told.step(0.8, "Pictures")
        pictures = write_pictures(session, folder, speak)
        told.step(0.95, "Setup sheet")
        sheet = with_legend(sheet_facts(session, made, pictures, wear), legend, session)
        page = setup_sheet(replace(sheet, findings=(*_others(folder, written), *sheet.findings)), speak)
        write_whole(folder / "setup-sheet.html", page)
    except OSError as error:
        raise StoreError(
            say("The files could not be written ({strerror}).", strerror=error.strerror),
            str(folder),
            "Choose another folder.",
        ) from error
    return tuple(written)


def _others(folder: Path, written: Sequence[Written]) -> tuple[str, ...]:
    """What to know of programs in the folder that were not written now, such as those of an earlier plan."""
    ours = {Path(one.path).name for one in written}
    others = sorted(path.name for path in folder.glob("*.nc") if path.name not in ours)
    if not others:
        return ()
    text = say("Other programs lie in this folder too; do not run them: {names}.", names=", ".join(others))
    return (text,)


def _write_program(folder: Path, program: Program, session: Session) -> Written:
    path = folder / file_name(program)
    seconds = run_seconds(program)
    text = file_text(program, job=session.settings.board.name, seconds=seconds)
    write_whole(path, text, "ascii")
    return Written(str(path), program.bit.name, program.pass_number, len(program.lines), seconds)


def _write_legend(folder: Path, legend: LaserProgram | None, session: Session) -> list[Written]:
    if legend is None:
        return []
    path = folder / f"{legend.name}.nc"
    text = legend_text(legend, session.settings.laser, job=session.settings.board.name)
    write_whole(path, text, "ascii")
    return [Written(str(path), "laser", 0, len(legend.lines), legend.seconds)]


def with_legend(sheet: SheetFacts, legend: LaserProgram | None, session: Session) -> SheetFacts:
    """The sheet with the legend's step, its cautions and what to know about it."""
    notes = legend_notes(session.derived, session.snapshot)
    if legend is None:
        return replace(sheet, findings=(*sheet.findings, *notes))
    step = WorkStep(legend.title, say("laser head"), "–", "–", clock(legend.seconds), legend.name)
    snap = session.snapshot
    turned = legend_up(session.derived, snap) or any(of_second_side(one.note) for one in sheet.work)
    turn = () if turned else (the_turn(snap.face().other),)
    return replace(
        sheet,
        work=(*sheet.work, *turn, step),
        findings=(*sheet.findings, *notes),
        light=cautions(session.settings.laser),
    )


def write_pictures(session: Session, folder: Path, speak: Speak = str) -> tuple[tuple[str, str], ...]:
    """Write what there is to see; (words, SVG) of each."""
    snap = session.snapshot
    derived = session.derived
    board, layout = derived.board(snap), derived.layout(snap)
    found = [
        ("board.svg", say("The board on its blank"), board_picture(board, layout, speak)),
        ("grooves.svg", say("Grooves"), _grooves_picture(derived, snap, speak)),
    ]
    if waits_for_other_side(snap):
        picture = _grooves_picture(derived, as_turned(snap), speak)
        found.append(("grooves-second-side.svg", say("Grooves of the second side"), picture))
    surface = derived.surface(snap)
    touched = derived.touches(snap)
    if surface is not None and touched is not None:
        fit = derived.fit_of(snap, touched[1])
        measured = getattr(surface, "surface", surface)
        rigid = fit if isinstance(fit, Rigid) else fit.rigid
        places = rigid.inverse().apply(touched[0].points[:, :2])
        picture = surface_picture(board, layout, lambda at: measured.mean(fit.apply(at)), places, speak)
        found.append(("surface.svg", say("Height of the copper"), picture))
    plan = derived.passes_ready(snap)
    if plan is not None:
        found.append(("reach.svg", say("Reach"), reach_picture(board, layout, plan.expected, "reach", speak)))
    for name, _, picture in found:
        write_whole(folder / name, picture)
    return tuple((words, picture) for _, words, picture in found)


def _grooves_picture(derived: Derived, snap: Snapshot, speak: Speak) -> str:
    board, layout, cuts = derived.board(snap), derived.layout(snap), derived.cuts(snap)
    count = cuts.grooves.wide
    wide = Wide(count, float(cuts.top[0])) if count else None
    return cuts_picture(
        board, layout, cuts.grooves.lines, cuts.width, (*cuts.marks, *cuts.tooling), speak, wide
    )


def sheet_facts(
    session: Session, made: Sequence[Program], pictures: tuple[tuple[str, str], ...], wear: Wear | None = None
) -> SheetFacts:
    """What stands on the setup sheet."""
    snap = session.snapshot
    derived = session.derived
    board, layout, cuts = derived.board(snap), derived.layout(snap), derived.cuts(snap)
    settings = snap.settings
    work = with_turn(snap, [one.name for one in made], [_step(one) for one in made])
    total = sum(map(run_seconds, made))
    x, y = (layout.place.offset[0], layout.place.offset[1])
    clamps = strung(
        [
            say(
                "{number}: {width:g} × {height:g} mm at {x:g}, {y:g}",
                number=number,
                width=clamp.width,
                height=clamp.height,
                x=clamp.x,
                y=clamp.y,
            )
            for number, clamp in enumerate(settings.blank.clamps, 1)
        ],
        "; ",
    )
    facts = (
        (
            say("Board"),
            say(
                "{name}, {width:.1f} × {height:.1f} mm, {value} copper milled",
                name=board.name,
                width=board.width,
                height=board.height,
                value=sides_milled(snap),
            ),
        ),
        (
            say("Nets and holes"),
            nets_and_holes(snap, board),
        ),
        (
            say("Blank"),
            say(
                "{width:.1f} × {height:.1f} × {thickness:g} mm, copper {copper:.0f} µm, "
                "backing {backing:g} mm",
                width=layout.width,
                height=layout.height,
                thickness=settings.blank.thickness,
                copper=settings.blank.copper * 1000,
                backing=settings.blank.backing,
            ),
        ),
        (
            say("Board on the blank"),
            say("lower left of the board at x {x:.1f}, y {y:.1f} mm from the blank's corner", x=x, y=y),
        ),
        (
            say("Clamps"),
            clamps or say("none entered: keep them outside the board and the reference holes"),
        ),
        (
            say("Work zero"),
            say("x, y: lower left corner of the blank; z: on the copper, 3 mm in from that corner"),
        ),
        (
            say("Machine"),
            say(
                "{preset}; moves across at {clearance:g} mm",
                preset=settings.machine.preset,
                clearance=settings.machine.clearance,
            ),
        ),
        (say("Time"), say("{clock} of cutting, without touches and changes of bit", clock=clock(total))),
    )
    return SheetFacts(
        title=say("Setup sheet: {name}", name=board.name),
        when=say("Made {now:%Y-%m-%d %H:%M}", now=datetime.now()),
        facts=facts,
        work=work,
        passes=_pass_rows(session),
        reference=_reference_rows(snap.records["reference"], snap.setup, _fit_if_known(session)),
        surface=surface_rows(session),
        proof=_proof_rows(cuts),
        findings=(
            *expected_only(snap, [one.name for one in made]),
            *worn_bits(made, wear),
            *_findings(board, cuts, layout.warnings),
            *(sentence(one) for one in speed_findings(settings, cuts)),
        ),
        pictures=pictures,
    )


def worn_bits(made: Sequence[Program], wear: Wear | None) -> tuple[str, ...]:
    """Which bits of these programs to look at before they are put in."""
    if wear is None:
        return ()
    names = {program.bit.name for program in made}
    return Wear({name: use for name, use in wear.uses.items() if name in names}).hints()


def _step(program: Program) -> WorkStep:
    speeds = program.bit.speeds
    return WorkStep(
        program.title,
        program.bit.name,
        f"{speeds.spindle:.0f}",
        f"{speeds.feed:.0f}",
        clock(run_seconds(program)),
        program.name,
    )


def _pass_rows(session: Session) -> tuple[tuple[str, ...], ...]:
    plan = session.derived.passes_ready(session.snapshot)
    if plan is None:
        return ()
    reached = say("{share:.1f} %", share=100 * plan.reach_totals.expected) if plan.done else ""
    rows = [
        (
            say("{number}, done", number=one.number),
            say("{deepest:.3f} mm", deepest=one.deepest),
            say("{length:.0f} mm", length=one.length),
            reached if one is plan.done[-1] else "",
        )
        for one in plan.done
    ]
    if plan.next is not None:
        share = plan.expected_totals.expected * 100
        rows.append(
            (
                f"{plan.next.number}",
                say("{deepest:.3f} mm", deepest=plan.next.deepest),
                say("{length:.0f} mm", length=plan.next.length),
                say("{share:.1f} %", share=share),
            )
        )
    return tuple(rows)


def _reference_rows(
    records: Sequence[Record], setup: int, fit: Placing | None
) -> tuple[tuple[str, ...], ...]:
    here = [record.data for record in records if record.data["setup"] == setup]
    known = isinstance(fit, Fit) and len(fit.distances) == len(here)
    off = [float(one) for one in fit.distances] if isinstance(fit, Fit) and known else [None] * len(here)
    rows = [
        (
            data["label"],
            say("{x:.2f}, {y:.2f}", x=data["design"][0], y=data["design"][1]),
            say("{x:.3f}, {y:.3f}", x=data["touched"][0], y=data["touched"][1]),
            "–" if one is None else say("{off:.3f} mm", off=one),
        )
        for data, one in zip(here, off, strict=True)
    ]
    if isinstance(fit, Fit):
        rows.append((say("All, root mean square"), "", "", say("{off:.3f} mm", off=fit.rms)))
    return tuple(rows)


def _fit_if_known(session: Session) -> Placing | None:
    try:
        return session.derived.fit(session.snapshot)
    except PlanError:
        return None


def _proof_rows(cuts: CutPlan) -> tuple[tuple[str, str], ...]:
    check = cuts.check
    if not check.nets:
        return ((say("Island check of the plan"), say("not possible: there is no copper data")),)
    words = say("every net is an island") if check.clean else say("not every net is an island")
    return (
        (
            say("Island check of the plan"),
            say(
                "{words}: {pieces} pieces for {nets} nets", words=words, pieces=check.pieces, nets=check.nets
            ),
        ),
        (say("Shorts, opens, lost"), f"{len(check.shorts)}, {len(check.opens)}, {len(check.lost)}"),
        (say("Traces that are thinned"), f"{len(check.thinned)}"),
        (say("Nets too close for their voltage"), f"{len(cuts.close)}"),
        (say("Gaps too narrow to cut"), f"{len(cuts.grooves.impossible)}"),
        (say("Largest bite"), say("{max_bite:.3f} mm", max_bite=cuts.grooves.max_bite)),
    )


def _findings(board: Board, cuts: CutPlan, warnings: tuple[str, ...]) -> tuple[str, ...]:
    return (*warnings, *(sentence(one) for one in (*board.findings, *cuts.findings)))


def touched_rows(snap: Snapshot) -> tuple[tuple[str, str], ...]:
    """What the island touch has shown since the last pass, pair by pair where it is not proved."""
    record, last = snap.latest("island touch"), snap.latest("pass")
    if record is None:
        return ((say("Island touch"), say("not made")),)
    if last is not None and last.id > record.id:
        return ((say("Island touch"), say("not made since the last pass")),)
    joined = [tuple(one["nets"]) for one in record.data["joined"]]
    unproved = [tuple(nets) for nets in record.data["unproved"]]
    counts = say(
        "{count} pairs proved apart, {count2} joined, {count3} unproved",
        count=len(record.data["proved"]),
        count2=len(joined),
        count3=len(unproved),
    )
    rows = [(say("Island touch"), counts)]
    for word, pairs in ((say("joined"), joined), (say("unproved"), unproved)):
        rows += [(strung((net or say("copper outside") for net in pair), " – "), word) for pair in pairs]
    return tuple(rows)
