"""The commands for scripts: prepare, rehearse, export, show, demo; each gives plain values."""

from __future__ import annotations

import math
import tempfile
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

from drypoint.bits.wear import Wear
from drypoint.board.model import Side
from drypoint.cuts.ratings import Surroundings
from drypoint.errors import InputError, PlanError
from drypoint.job.store import job_file
from drypoint.progress import Progress
from drypoint.session.check_facts import check_dict, designed_islands
from drypoint.session.clear_options import ClearOptions, choose_clearing
from drypoint.session.depth_check import check_at
from drypoint.session.edge_settings import EdgeSettings
from drypoint.session.export import export
from drypoint.session.facts import prepared_facts, shown_facts
from drypoint.session.legend_export import legend_notes
from drypoint.session.marks import side_words
from drypoint.session.pictures import carved_picture
from drypoint.session.program_bits import choose_bits
from drypoint.session.rehearsal import Rehearsal, rehearse
from drypoint.session.session import Session
from drypoint.session.settings import CopyPlace, ZeroOfZ
from drypoint.session.sheet_sides import expected_only
from drypoint.session.sides import side_of
from drypoint.session.turn_settings import ToolingUse
from drypoint.session.voltage_table import of_nets, read_voltages
from drypoint.session.wear_book import WearBook
from drypoint.session.whole_file import write_whole
from drypoint.session.work import SPARE, fitting_preset, require_room
from drypoint.shipped import shipped
from drypoint.wording import say

MOST_TOUCHES = 400
"""As many as the window takes."""
MOST_MARGIN = 50.0
"""mm round everything that programs cut; a rectangle farther off is a mistake."""
EXAMPLE = shipped("examples") / "hive-scale"


def prepare(
    paths: Sequence[Path],
    job: Path,
    *,
    side: Side | None = None,
    tip: float | None = None,
    angle_deg: float | None = None,
    depth: float | None = None,
    both_sides: bool = False,
    tooling: ToolingUse | None = None,
    coating: str = "",
    declared_safe: bool = False,
    places: Sequence[tuple[float, float, float]] = (),
    program_bits: Sequence[str] = (),
    program_zero: ZeroOfZ | None = None,
    cut_out: float | None = None,
    clearing: ClearOptions | None = None,
    voltages: Sequence[str] = (),
    surroundings: Surroundings | None = None,
    progress: Progress | None = None,
) -> dict[str, Any]:
    """Import design files into a new job and plan its cuts. An existing job of that name is replaced.

    ``coating`` is what a laser marks the legend on, if its maker declares it safe for that.

    Parameters
    ----------
    tooling : when holes are drilled into the margin to find the second side by
    paths : folders, files and zips; two or more folders or zips that hold the same copper are boards
        of their own
    places : x, y (mm) and turn (degrees) for each board in that order, or for each copy of the only
        one; without them boards lie beside each other
    program_bits : bits for ready-made programs, each as "FILE[:TOOL]=BIT"
    program_zero : what z = 0 of ready-made programs is
    cut_out : where no outline is known, how far outside everything that programs cut its rectangle is
        cut out, mm
    voltages : between nets, each as "NET=V" or "NET,OTHER=V", or the name of a file with such a table
    surroundings : what covers the copper in use

    Raises
    ------
    InputError
        For files that cannot be understood or values that make no sense; no job is left then.
    """
    where = job_file(job)
    for path in paths:
        if not path.exists():
            raise InputError("There is no such file or folder.", str(path), "Check the name.")
    with tempfile.TemporaryDirectory() as folder:
        session = Session.create(Path(folder) / "new.drypoint")
        try:
            settings = session.settings
            board = replace(settings.board, side=side or settings.board.side, both=both_sides)
            turn = settings.turn if tooling is None else replace(settings.turn, tooling=tooling)
            session.change("Choose the side", board=board, turn=turn)
            laser = replace(settings.laser, coating=coating, declared_safe=declared_safe)
            session.change("Choose the coating", laser=laser)
            _set_programs(session, program_zero, cut_out)
            session.import_files(paths, progress=progress)
            _set_places(session, places)
            if both_sides:
                _require_both(session)
            _set_bit(session, tip, angle_deg, depth)
            choose_bits(session, program_bits)
            if clearing is not None:
                choose_clearing(session, clearing)
            _set_voltages(session, voltages, surroundings)
            note = _choose_machine(session)
            facts = prepared_facts(session, progress)
            facts["warnings"] += note
            session.job.copy_to(where)  # the one it replaces is whole until then
        finally:
            session.close()
    facts["job"] = str(where)
    return facts


def _require_both(session: Session) -> None:
    """Refuse two sides where the design has copper on one."""
    designs = session.derived.designs(session.snapshot).values()
    if not all(design.other_copper for design in designs):
        raise InputError(
            say(
                "The design has no copper on the {side}.", side=side_words(session.settings.board.side.other)
            ),
            "--both-sides",
            "Leave it out, or give the file of that copper layer.",
        )


def _choose_machine(session: Session) -> list[str]:
    """The smallest machine that holds the blank, where the usual one is too small."""
    layout, machine = session.derived.layout(session.snapshot), session.settings.machine
    try:
        require_room(session.settings, layout.width + SPARE, layout.height + SPARE)
        return []
    except PlanError as trouble:
        try:
            name = fitting_preset(layout.width, layout.height)
        except PlanError:
            return [f"{trouble.what} {trouble.hint}"]
        session.change("Choose the machine", machine=replace(machine, preset=name))
        return [say("The blank is too large for the usual machine; planned for: {name}.", name=name)]


def _set_programs(session: Session, zero: ZeroOfZ | None, margin: float | None) -> None:
    """Where ready-made programs have their zero, and the rectangle that stands for a missing outline."""
    settings = session.settings
    if zero is not None:
        session.change("Zero of Z in the programs", imported=replace(settings.imported, zero=zero))
    if margin is None:
        return
    if not 0.0 <= margin <= MOST_MARGIN:
        raise InputError(
            say("{value:g} is no sensible value.", value=margin),
            "--cut-out",
            say("Give {least:g} to {most:g}.", least=0.0, most=MOST_MARGIN),
        )
    session.change("Cut the rectangle out", edge=EdgeSettings(cut=True, margin=margin))


def _set_places(session: Session, places: Sequence[tuple[float, float, float]]) -> None:
    """Every board where it was said to be."""
    if not places:
        return
    names = list(dict.fromkeys(source.board for source in session.snapshot.sources))
    if len(names) > 1 and len(places) != len(names):
        raise InputError(
            say("There are {boards} boards and {places} places.", boards=len(names), places=len(places)),
            "--at",
            "Give one place for each.",
        )
    owners = names if len(names) > 1 else names * len(places)
    given = tuple(CopyPlace(*place, board) for place, board in zip(places, owners, strict=True))
    session.change("Place the boards", copies=replace(session.settings.copies, places=given))


def _set_voltages(session: Session, stated: Sequence[str], surroundings: Surroundings | None) -> None:
    """What the nets carry."""
    electrical = session.settings.electrical
    if stated:
        nets = session.derived.board(session.snapshot).nets
        electrical = replace(electrical, voltages=of_nets(read_voltages(stated), nets))
    if surroundings is not None:
        electrical = replace(electrical, surroundings=surroundings)
    if electrical != session.settings.electrical:
        session.change("Enter the voltages", electrical=electrical)


def _set_bit(session: Session, tip: float | None, angle_deg: float | None, depth: float | None) -> None:
    bits, cuts = session.settings.bits, session.settings.cuts
    vbit = bits.vbit
    for name, value, least, most in (
        ("--tip", tip, 0.0, 3.0),
        ("--angle", angle_deg, 1.0, 170.0),
        ("--depth", depth, 0.001, 1.0),
    ):
        if value is not None and not least <= value <= most:
            raise InputError(
                say("{value:g} is no sensible value.", value=value),
                name,
                say("Give {least:g} to {most:g}.", least=least, most=most),
            )
    if tip is not None or angle_deg is not None:
        new_tip = vbit.tip if tip is None else tip
        angle = vbit.angle if angle_deg is None else math.radians(angle_deg)
        name = f"V-bit {new_tip:g} mm {math.degrees(angle):g}°"
        vbit = replace(vbit, name=name, tip=new_tip, angle=angle)
    changed: dict[str, Any] = {}
    if vbit != bits.vbit:
        changed["bits"] = replace(bits, vbit=vbit)
    if depth is not None:
        changed["cuts"] = replace(cuts, depth=depth)
    if changed:
        session.change("Choose the bit", **changed)


def rehearse_job(
    job: Path, *, seed: int = 0, touches: int | None = None, progress: Progress | None = None
) -> dict[str, Any]:
    """Run the whole job on the bench; the job itself is not changed.

    Raises
    ------
    StoreError, PlanError, MachineError
    """
    if touches is not None and not 0 <= touches <= MOST_TOUCHES:
        raise InputError(
            say("{value:g} is no sensible value.", value=touches),
            "--touches",
            say("Give {least:g} to {most:g}.", least=0, most=MOST_TOUCHES),
        )
    session = Session.open(job)
    try:
        with tempfile.TemporaryDirectory() as folder:
            return rehearse(session, Path(folder), seed=seed, touches=touches, progress=progress).as_dict()
    finally:
        session.close()


def check_job(
    job: Path,
    *,
    depth: float | None = None,
    program: str = "",
    find: bool = False,
    progress: Progress | None = None,
) -> dict[str, Any]:
    """The island check of the job's grooves, or of a ready-made program in it, at any depth (mm).

    Raises
    ------
    StoreError, InputError, PlanError
    """
    session = Session.open(job)
    try:
        snap = session.snapshot
        found = check_at(session.derived, snap, depth=depth, program=program, find=find, progress=progress)
        islands = designed_islands(session.derived.board(snap))
    finally:
        session.close()
    facts: dict[str, Any] = {
        "paths": found.paths or "grooves",
        "depth_mm": None if found.depth is None else round(found.depth, 4),
        "island_check": check_dict(found.check, islands),
    }
    return facts | ({} if found.parted is None else {"parted_from_mm": round(found.parted, 4)})


def export_job(
    job: Path, folder: Path, progress: Progress | None = None, wear: Wear | None = None
) -> dict[str, Any]:
    """Write programs, pictures and setup sheet."""
    session = Session.open(job)
    try:
        written = export(session, folder, progress, wear=wear)
        snap = session.snapshot
        names = [Path(one.path).stem for one in written]
        notes = (*expected_only(snap, names), *legend_notes(session.derived, snap))
    finally:
        session.close()
    return {
        "files": [
            {
                "path": one.path,
                "bit": one.bit,
                "side": (side_of(Path(one.path).stem) or snap.face(1)).value,
                "pass": one.pass_number,
                "lines": one.lines,
                "seconds": round(one.seconds, 1),
            }
            for one in written
        ],
        "notes": list(notes),
    }


def worn(
    book: WearBook,
    *,
    renew: str | None = None,
    lengths: Sequence[tuple[str, float]] = (),
    holes: Sequence[tuple[str, float]] = (),
) -> dict[str, Any]:
    """What every bit has cut at the machine over all jobs; ``renew`` puts a new one in.

    ``lengths`` and ``holes`` say after how many mm and holes a bit is to be looked at; 0 is never.

    Raises
    ------
    InputError
        If no bit of that name has cut anything, or a limit makes no sense.
    """
    wear = book.read()
    for name in (*([] if renew is None else [renew]), *(name for name, _ in (*lengths, *holes))):
        if name not in wear.uses:
            known = ", ".join(wear.uses) or "–"
            what = say("No bit named '{name}' has cut anything.", name=name)
            raise InputError(what, "bits", say("Known: {known}.", known=known))
    for name, limit in (*lengths, *holes):
        if not 0.0 <= limit < 1e9:
            raise InputError(say("{value:g} is no sensible value.", value=limit), name, "Give 0 or more.")
    if renew is not None:
        book.renew(renew)
    for name, limit in lengths:
        book.limit(name, length=limit)
    for name, limit in holes:
        book.limit(name, holes=round(limit))
    wear = book.read()
    uses = {
        name: {
            "length_mm": round(use.length, 1),
            "holes": use.holes,
            "worn": round(use.worn, 3),
            "look_at_mm": use.replace_at_mm,
            "look_at_holes": use.replace_at_holes,
        }
        for name, use in wear.uses.items()
    }
    return {"file": str(book.path), "bits": uses, "hints": [str(hint) for hint in wear.hints()]}


def show_job(job: Path, progress: Progress | None = None) -> dict[str, Any]:
    """All facts."""
    session = Session.open(job)
    try:
        return shown_facts(session, progress)
    finally:
        session.close()


def demo(folder: Path, *, seed: int = 0, progress: Progress | None = None) -> dict[str, Any]:
    """The example board from files to proven copper, without a window; leaves everything in ``folder``."""
    told = progress or Progress()
    folder.mkdir(parents=True, exist_ok=True)
    prepared = prepare([EXAMPLE], folder / "hive-scale.drypoint", progress=told.part(0.0, 0.1))
    session = Session.open(Path(prepared["job"]))
    try:
        with tempfile.TemporaryDirectory() as work:
            found = rehearse(session, Path(work), seed=seed, progress=told.part(0.1, 0.85))
            _leave(Path(work), folder, found, told)
    finally:
        session.close()
    return {"folder": str(folder), **prepared, **found.as_dict(), "plan_check": prepared["island_check"]}


def _leave(work: Path, folder: Path, found: Rehearsal, progress: Progress) -> None:
    """Programs, sheet and pictures of the rehearsed job, and the carved copper."""
    shadow = Session.open(work / "rehearsal.drypoint")
    try:
        export(shadow, folder, progress.part(0.85, 0.98), found.programs)
        snap = shadow.snapshot
        board, layout = shadow.derived.board(snap), shadow.derived.layout(snap)
        picture = carved_picture(board, layout, found.carved, found.check)
        write_whole(folder / "carved.svg", picture)
    finally:
        shadow.close()
